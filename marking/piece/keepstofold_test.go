package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch/made"
)

// Half a ring lies on the fold, and its other end beside it.
const ring = `
unit = "in"
allowance = "1/4"
[piece.frill]
fold = "fold"
[piece.frill.edge.fold]
points = [[0, 2], [0, 5]]
allowance = 0
[piece.frill.edge.outer]
points = [[0, 5], [5, 0], [0, -5]]
centre = [0, 0]
allowance = 0
[piece.frill.edge.seam]
points = [[0, -5], [0, -2]]
[piece.frill.edge.inner]
points = [[0, -2], [2, 0], [0, 2]]
centre = [0, 0]
`

func TestNothingLiesBeyondTheFold(t *testing.T) {
	net := strings.Replace(ring, "fold = \"fold\"\n", "fold = \"fold\"\ndrawn-to = \"stitching\"\n", 1)
	for _, c := range []struct{ name, text, want string }{
		{"as it is cut", ring, ""},
		{"with an allowance outside", net, "pinafore.toml:14: piece.frill.edge.seam: the cutting line of this edge runs 1/4 in past the fold \"fold\", where there is no cloth\n" +
			"hint: give it allowance = 0, or draw the piece whole, without fold"},
		{"without one", strings.Replace(net, "[[0, -5], [0, -2]]", "[[0, -5], [0, -2]]\nallowance = 0", 1), ""},
		{"drawn past it", strings.NewReplacer("[0, -5]", "[\"-1/8\", -5]", "centre = [0, 0]\nallowance", "smooth = true\nallowance").Replace(ring),
			"pinafore.toml:13: piece.frill.edge.seam: the cutting line of this edge runs 1/8 in past the fold \"fold\", where there is no cloth\n" +
				"hint: draw the piece whole, without fold, or keep it to one side"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(c.text)
			if c.want == "" {
				require.NoError(t, err)
				return
			}
			assert.EqualError(t, err, c.want)
		})
	}
}
