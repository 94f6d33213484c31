package screen

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/pdfout/board"
)

// Every part that has a name can be looked at alone, also one that is of no piece; a key cannot.
func TestLinksToParts(t *testing.T) {
	of := []board.Part{{Name: "Front", Keys: []string{"front"}}, {Name: "Notes and steps"}, {}}
	var texts, to []string
	for _, l := range parts(of, Choice{}).Links {
		texts, to = append(texts, l.Text), append(to, l.To)
	}
	assert.Equal(t, []string{"All", "Front", "Notes and steps"}, texts)
	assert.Equal(t, []string{"./", "./?part=1", "./?part=2"}, to)
}
