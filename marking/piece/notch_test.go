package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// A notch reaches 5 mm into the piece (0.197 in), square to its edge; never past the
// stitch line, which a snip along it would cut, nor through to another edge.
func TestNotches(t *testing.T) {
	const wedge = "base: 0,0 10,0\nslant: 10,0 0,1\nup: 0,1 0,0\n---\n\n"
	notch := func(edge, from, at string) string {
		return "[notch.n]\nedge = \"" + edge + "\"\nfrom = \"" + from + "\"\nat = " + at + "\n"
	}
	boxWith := func(right string) string {
		return "top: 0,3 4,3\nright: 4,3 4,0" + right + "\nfoot: 4,0 0,0\nleft: 0,0 0,3\n---\n\n"
	}
	for _, c := range []struct {
		name, allowance, text, want string
	}{
		{"in a wide allowance", "0.375", boxWith("") + notch("right", "top", "1"), "4,2 3.803,2"},
		{"in a narrow one", "0.125", boxWith("") + notch("right", "top", "1"), "4,2 3.875,2"},
		{"in one as wide as it is long", "\"5 mm\"", boxWith("") + notch("right", "top", "1"), "4,2 3.803,2"},
		{"beside a narrow one", "0.125", boxWith(" | allowance = 0.375") + notch("right", "top", "1"), "4,2 3.803,2"},
		{"in an edge without one", "0", boxWith("") + notch("right", "top", "1"), "4,2 3.803,2"},
		{"in a hem", "0.25", boxWith(" | hem = 1") + notch("right", "top", "1"), "4,2 3.803,2"},
		{"in a narrow hem", "0.25", boxWith(" | hem = 0.125") + notch("right", "top", "1"), "4,2 3.875,2"},
		{"measured from the other corner", "0.125", boxWith("") + notch("right", "foot", "2"), "4,2 3.875,2"},
		{"in a point, half way to the other edge", "0", wedge + notch("base", "slant", "0.5"), "9.5,0 9.5,0.025"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, c.allowance, c.text)
			assert.Equal(t, []string{"n " + c.want}, drawnMarks(piece, mark.Notch))
		})
	}
}
