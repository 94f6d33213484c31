package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Tucks at 1, 2, 3, 4 and 5 in from the centre, under a neck that is level up to 2 1/2 in and a
// shoulder that falls by one in two from there; the allowance is 1/2 in.
func hungFrom(below, end string) string {
	return "centre: 0,0 0,10\nneck: 0,10 2.5,10\nshoulder: 2.5,10 6.5,8\nside: 6.5,8 6.5,0\nhem: 6.5,0 0,0\n---\n\n" +
		"[tuck.t]\nbeside = \"centre\"\nwidth = 0.125\ncount = 5\nfirst = 1\nspacing = 1\nbelow = " + below + "\nlength = 3\n" + end
}

func TestTucksBelowSeveralEdges(t *testing.T) {
	ends := func(text string) []float64 {
		p := sketched(t, "0.5", text)
		var all []float64
		for _, f := range p.TuckRows[0].Folds {
			all = append(all, p.TuckRows[0].Base.At(0, f.End.V).Y/25.4)
		}
		return all
	}
	both := ends(hungFrom(`["neck", "shoulder"]`, "end = \"follow\""))
	// Square to the stitch lines, 3 in: of the neck level at 10 - 1/2 - 3; of the shoulder,
	// which falls by 1/2 for each inch, (1/2 + 3) x sqrt(5)/2 straight down from the cut edge.
	want := func(x float64) float64 { return min(6.5, 10-(x-2.5)/2-3.5*1.118033988749895) }
	require.Len(t, both, 5)
	for i, end := range both {
		assert.InDelta(t, want(float64(i+1)), end, 0.001, "tuck %d", i+1)
	}
	assert.Less(t, both[4], both[0]-1, "the last hangs from the shoulder")
	assert.Equal(t, both, ends(hungFrom(`["shoulder", "neck"]`, "end = \"follow\"")), "whichever is named first")
	for _, end := range ends(hungFrom(`["neck", "shoulder"]`, "")) {
		assert.InDelta(t, 6.5, end, 1e-6, "level, measured where the centre meets the neck")
	}
	assert.Equal(t, ends(hungFrom(`"neck"`, "")), ends(hungFrom(`["neck"]`, "")), "a list of one is that edge")
}

// Tucks that begin at the other edge they hang from are as they were asked for.
func TestNoRemarkOnTucksBelowSeveralEdges(t *testing.T) {
	remarks := func(below string) string {
		_, pattern := made.Front(t, "0.5", hungFrom(below, ""))
		var all []string
		for _, r := range pattern.Remarks {
			all = append(all, r.String())
		}
		return strings.Join(all, "\n")
	}
	assert.Contains(t, remarks(`"neck"`), `run into "shoulder" instead of "neck"`)
	assert.NotContains(t, remarks(`["neck", "shoulder"]`), `instead of`)
}

func TestFaultsOfTucksBelowSeveralEdges(t *testing.T) {
	const apart = "\nhint: name edges that follow each other round the piece, each once, and not all of them"
	for _, c := range []struct{ name, below, want string }{
		{"no neighbours", `["neck", "side"]`, "25: piece.front.tuck.t.below: \"neck\" and \"side\" do not lie next to each other" + apart},
		{"one twice", `["neck", "neck"]`, "25: piece.front.tuck.t.below: \"neck\" and \"neck\" do not lie next to each other" + apart},
		{"all of them", `["neck", "shoulder", "side", "hem", "centre"]`, "25: piece.front.tuck.t.below: \"neck\", \"shoulder\", \"side\", \"hem\" and \"centre\" do not lie next to each other" + apart},
		{"one that is not there", `["neck", "sholder"]`, "25: piece.front.tuck.t.below: there is no edge \"sholder\" in this piece\nhint: did you mean \"shoulder\"?"},
		{"none meets the centre", `["shoulder", "side"]`, "25: piece.front.tuck.t.below: the stitch line of \"shoulder\" and \"side\" does not meet \"centre\", so nothing can be measured from there\nhint: name the edge at whose stitch line the tucks begin"},
		{"no name", `[]`, "25: piece.front.tuck.t.below: names no edge\nhint: it names an edge, below = \"neck\", or edges that lie next to each other: below = [\"neck\", \"shoulder\"]"},
		{"a number in the list", `["neck", 3]`, "25: piece.front.tuck.t.below: name 2 must be text in quotes, but is 3\nhint: it names an edge, below = \"neck\", or edges that lie next to each other: below = [\"neck\", \"shoulder\"]"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.5\n" + sketch.Front(hungFrom(c.below, "")))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
