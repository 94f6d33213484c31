package report

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What is a part has the number of that in a picture; another name of the same part a letter
// behind it, and what is none a letter alone.
func TestSignsOfShapes(t *testing.T) {
	var signs []Signed
	for _, c := range []struct {
		part int
		want string
	}{{2, "2"}, {0, "A"}, {2, "2A"}, {7, "7"}, {0, "B"}, {2, "2B"}} {
		sign := nextSign(c.part, signs)
		assert.Equal(t, c.want, sign)
		signs = append(signs, Signed{sign, sign})
	}
}
