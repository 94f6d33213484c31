package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch/made"
)

// apron is 10 in wide and 12 in long.
const apron = "hem: 0,0 10,0\nside: 10,0 10,12\ntop: 10,12 0,12\nleft: 0,12 0,0\n---\n"

// threeOf is three tucks of 1/4 in beside an edge that hang 3 in from another.
func threeOf(key, beside, from string) string {
	return "\n[tuck." + key + "]\nbeside = \"" + beside + "\"\nwidth = \"1/4\"\ncount = 3\nfirst = 2\ngap = \"1/4\"\npress = \"away\"\nbelow = \"" + from + "\"\nlength = 3\n"
}

// endOf returns the words along the end line of the tucks of a sheet, and those at its
// dimension.
func endOf(t *testing.T, m mark.Marking) (line, dimension string) {
	for _, one := range m.Marks {
		if one.Role == mark.TuckEnd && one.Name != "" {
			line = one.Name
		}
	}
	require.Len(t, m.Dimensions, 1)
	d := m.Dimensions[0]
	assert.InDelta(t, 3, d.From.Distance(d.To)/25.4, 1e-9, "drawn as long as the words say")
	return line, d.Text
}

// Tucks are open on the side to which they run out of their ends.
func TestWordsOfTucksThatHangFromAnyEdge(t *testing.T) {
	for _, c := range []struct{ name, tucks, line, depth, note string }{
		{"from the top", threeOf("t", "side", "top"), "t tucks end here, open below", "t tucks end 3 in below the cut edge", "the t tucks end 3 in below the cut edge"},
		{"from the hem", threeOf("t", "left", "hem"), "t tucks end here, open above", "t tucks end 3 in above the cut edge", "the t tucks end 3 in above the cut edge"},
		{"from the side", threeOf("t", "hem", "left"), "t tucks end here, open beyond", "t tucks end 3 in from the cut edge", "the t tucks end 3 in from the cut edge"},
	} {
		t.Run(c.name, func(t *testing.T) {
			flat, pattern := made.Front(t, "0", apron+c.tucks)
			m := markingSheet(flat, pattern, nil)
			line, depth := endOf(t, m)
			assert.Equal(t, c.line, line)
			assert.Equal(t, c.depth, depth)
			block, pattern := made.Front(t, "0", "drawn = \"finished\"\n"+apron+c.tucks+"\n[block]\nends = 0\n")
			line, depth = endOf(t, tuckSheet(block, pattern))
			assert.Equal(t, c.line, line)
			assert.Equal(t, strings.Replace(c.depth, "cut", "torn", 1), depth)
		})
	}
	assert.Equal(t, piece.HangsDown, piece.FoldRow{Folds: make([]piece.Fold, 1)}.Hangs(), "from edge to edge")
}
