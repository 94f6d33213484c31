package piece

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Words are looked for in key and name, each by itself: no word is made of the end of the one and
// the beginning of the other.
func TestWords(t *testing.T) {
	for _, c := range []struct{ key, name, want string }{
		{"front", "Front", "front front"},
		{"side_front", "Skirt_Side", "side front skirt side"},
		{"sub", "Ackroyd", "sub ackroyd"},
	} {
		p := Piece{Key: c.key, Name: c.name}
		assert.Equal(t, c.want, p.Words())
	}
}
