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

// Three tucks of 1/4 in take up 1 1/2 in. Of a block torn 13 in for a piece of 10 in, with
// three that hang from the top and three from the hem, either edge measures 13 - 1 1/2 in, and
// is drawn in by that again. Derived.
func TestABlockWithTucksFromBothEnds(t *testing.T) {
	block, pattern := made.Front(t, "0", "drawn = \"finished\"\n"+apron+threeOf("low", "left", "hem")+threeOf("high", "side", "top")+"\n[block]\nends = 0\n")
	b := block.Block
	assert.InDelta(t, 13, b.Width/25.4, 1e-9, "as torn")
	assert.InDelta(t, 11.5, b.TopMeasures/25.4, 1e-9, "the top edge, stitched")
	assert.InDelta(t, 1.5, b.OpenBelow()/25.4, 1e-9)
	assert.InDelta(t, 1.5, b.OpenAtTop()/25.4, 1e-9)
	assert.Equal(t, "measure the top edge: it must be 11 1/2 in", blockSteps(block, pattern.Unit)[4])
	m := cuttingSheet(block, pattern, nil)
	assert.Nil(t, m.Sketch, "the sketch is of a block that is open at its bottom alone")
	assert.Equal(t, "beyond the end of the tucks draw the block in, by folds that run on or by gathers, until it is 10 in across there", m.Steps[0])
	assert.Equal(t, []string{"open below: draw in to 10 in", "open above: draw in to 10 in"}, []string{m.Words[len(m.Words)-2].Text, m.Words[len(m.Words)-1].Text})
	// Measured at 11 3/4 in, those at the top took 1 1/4 in, and all six take 2 1/2 in.
	block, pattern = made.Front(t, "0", "drawn = \"finished\"\n"+apron+threeOf("low", "left", "hem")+threeOf("high", "side", "top")+"\n[block]\nmeasured = \"11 3/4\"\n")
	assert.InDelta(t, 10.5, block.Block.DrawnIn()/25.4, 1e-9)
	assert.Contains(t, block.Block.MeasuredNotes(block, pattern.Unit), "the tucks at the top took up 1 1/4 in instead of 1 1/2 in")
}

// Tucks that run across take up of the height of the piece, not of its width.
func TestSizesWhereTheTucksRunAcross(t *testing.T) {
	block, pattern := made.Front(t, "0", "drawn = \"finished\"\n"+apron+threeOf("t", "hem", "left")+"\n[block]\n")
	notes := cuttingSheet(block, pattern, nil).Notes
	assert.Contains(t, notes, "cut and let go, the piece is 13 1/2 in long at the side, where they are open")
}
