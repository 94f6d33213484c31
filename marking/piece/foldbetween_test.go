package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// square is a piece 10 in each way, with lines across it 8 in and 3 in up, and one that slants
// from 3 in at its left to 5 in at its right.
const square = "left: 0,10 0,0\nbottom: 0,0 10,0\nright: 10,0 10,10\ntop: 10,10 0,10\n---\n" + `
[line.yoke]
points = [[0, 8], [10, 8]]
[line.waist]
points = [[0, 3], [10, 3]]
[line.slant]
points = [[0, 3], [10, 5]]
[line.bow]
points = [[0, 2], [5, 7], [10, 2]]
smooth = true
[line.short]
points = [[0, 6], [3, 6]]
[line.upright]
points = [[2.5, 1], [2.5, 9]]
`

// Two tucks of 1/4 in, folded 2 in and 3 1/4 in from the left on the flat cloth; finished they
// are stitched at 1 3/4 in and 2 1/2 in. All derived.
func TestTucksBetweenTwoLines(t *testing.T) {
	const two = `tuck a left 1/4 2 2 | gap = "1/2"; press = "away"; `
	for _, c := range []struct{ name, drawn, rest, folds, end, begin string }{
		{"flat", "flat", `from = "yoke"; to = "waist"`, "2,3 2,8 | 3.25,3 3.25,8", "1.75,3 3.5,3", "1.75,8 3.5,8"},
		{"finished", "finished", `from = "yoke"; to = "waist"`, "2,3 2,8 | 3.25,3 3.25,8", "1.75,3 3.5,3", "1.75,8 3.5,8"},
		{"upward", "finished", `from = "waist"; to = "yoke"`, "2,3 2,8 | 3.25,3 3.25,8", "1.75,8 3.5,8", "1.75,3 3.5,3"},
		// 3 in and a fifth of how far out the fold line lies, or the stitching.
		{"to a slanting line, flat", "flat", `from = "yoke"; to = "slant"`, "2,3.4 2,8 | 3.25,3.65 3.25,8", "1.75,3.4 2.25,3.4 3,3.65 3.5,3.65", "1.75,8 3.5,8"},
		{"to a slanting line, finished", "finished", `from = "yoke"; to = "slant"`, "2,3.35 2,8 | 3.25,3.5 3.25,8", "1.75,3.35 2.25,3.35 3,3.5 3.5,3.5", "1.75,8 3.5,8"},
		{"from an edge to a line", "finished", `from = "top"; to = "waist"`, "2,3 2,10 | 3.25,3 3.25,10", "1.75,3 3.5,3", ""},
		{"from a line to an edge", "finished", `from = "waist"; to = "bottom"`, "2,0 2,3 | 3.25,0 3.25,3", "1.75,3 3.5,3", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := sketched(t, "0", "drawn = \""+c.drawn+"\"\n"+square+sketch.Rows(two+c.rest))
			assert.Equal(t, c.folds, each(p, mark.TuckFold), "fold lines")
			ends := p.TuckRows[0].FlatEnds
			assert.Equal(t, c.end, sketch.Inches(ends[0]), "where they end")
			if c.begin == "" {
				require.Len(t, ends, 1)
			} else {
				require.Len(t, ends, 2)
				assert.Equal(t, c.begin, sketch.Inches(ends[1]), "where they begin")
			}
		})
	}
}

// Open above and below, both edges are spread by all that the tucks take, 1 in, and joined
// straight; between the lines the piece is as wide as it is drawn finished.
func TestBothEdgesAreSpreadBeyondFreeTucks(t *testing.T) {
	p := sketched(t, "0", "drawn = \"finished\"\n"+square+sketch.Rows(`tuck a left 1/4 2 2 | gap = "1/2"; from = "yoke"; to = "waist"`))
	assert.Equal(t, map[string]string{"left": "0,10 0,0", "bottom": "0,0 11,0", "right": "11,0 11,10", "top": "11,10 0,10"}, flatEdges(p))
	across, _ := p.FoldedSizes()
	require.Len(t, across, 3)
	assert.InDelta(t, 10, across[0].MM/25.4, 1e-6, "between their ends")
	assert.InDelta(t, 11, across[1].MM/25.4, 1e-6)
	assert.Equal(t, []string{"bottom"}, across[1].Open)
	assert.InDelta(t, 11, across[2].MM/25.4, 1e-6)
	assert.Equal(t, []string{"top"}, across[2].Open)
	for _, edge := range []string{"top", "bottom"} {
		assert.InDelta(t, 11, p.Edges[p.EdgeNumber(edge)].FinishedLength/25.4, 1e-6, edge)
	}
	depths := p.Depths(p.TuckRows[0].FoldRow)
	require.Len(t, depths, 2)
	assert.InDelta(t, 7, depths[1].Cut/25.4, 1e-6)
	assert.InDelta(t, 5, depths[1].Long/25.4, 1e-6)
}

func TestMistakesBetweenLines(t *testing.T) {
	for _, c := range []struct{ name, rest, want string }{
		{"one line", `from = "yoke"; to = "yoke"`, "pinafore.toml:38: piece.front.tuck.a.to: the tucks would end where they begin\nhint: name two lines that lie apart"},
		{"two edges", `from = "top"; to = "bottom"`, "pinafore.toml:37: piece.front.tuck.a.from: \"top\" and \"bottom\" are both edges\nhint: leave from and to out, and they run from edge to edge"},
		{"an edge beside them", `from = "left"; to = "waist"`, "pinafore.toml:37: piece.front.tuck.a.from: none of the tucks runs into \"left\"\nhint: name the edge that they run into, or a second line"},
		{"a line that there is not", `from = "yoek"; to = "waist"`, "pinafore.toml:37: piece.front.tuck.a.from: there is no edge or line \"yoek\" in this piece\nhint: did you mean \"yoke\"?"},
		{"a line that ends before the last", `from = "short"; to = "waist"`, "pinafore.toml:37: piece.front.tuck.a.from: tuck 2 of 2 does not meet \"short\": it lies 3 1/4 in from \"left\"\nhint: only the first fits; have the line run across all of them"},
		{"a line along them", `from = "yoke"; to = "upright"`, "pinafore.toml:38: piece.front.tuck.a.to: tuck 1 of 2 does not meet \"upright\": it lies 2 in from \"left\"\nhint: not even the first fits; have the line run across all of them"},
		{"lines that cross between them", `from = "cross"; to = "waist"`, "pinafore.toml:38: piece.front.tuck.a.to: \"cross\" and \"waist\" come together at tuck 2 of 2\nhint: name two lines that lie apart over all tucks"},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := square
			if c.name == "lines that cross between them" {
				text = sketch.Swap(square, "points = [[2.5, 1], [2.5, 9]]", "points = [[0, 8], [4, 0]]", "[line.upright]", "[line.cross]")
			}
			_, err := made.Pattern("unit = \"in\"\nallowance = 0\n" + sketch.Front(text+sketch.Rows(`tuck a left 1/4 2 2 | gap = "1/2"; `+c.rest)))
			require.Error(t, err)
			assert.Equal(t, c.want, err.Error())
		})
	}
	// Tucks along the bottom meet a bow twice.
	_, err := made.Pattern("unit = \"in\"\nallowance = 0\n" + sketch.Front(square+sketch.Rows(`tuck a bottom 1/4 1 4 | from = "bow"; to = "upright"`)))
	require.Error(t, err)
	assert.Contains(t, err.Error(), "the tuck meets \"bow\" 2 times, so nothing says where it ends\nhint: name a line that each of them meets once")
}

// Twelve tucks of 1/8 in take 3 in of a block that is torn 15 in wide. None is stitched at its
// top, so it is measured across them, where it must be 12 in; once it measures 12 1/4, each took
// 11/12 of what it should. Derived.
func TestABlockWhoseTucksAreFree(t *testing.T) {
	text := sketch.Swap(sketch.Bosom, "---\n", "---\n\n[line.yoke]\npoints = [[0, 8], [5, 8]]\n[line.waist]\npoints = [[0, 3], [5, 3]]\n") +
		sketch.Tucked("cf", "1/8", 6, "3/8", "from = \"yoke\"\nto = \"waist\"") + "\n[block]\n"
	p, _ := made.Block(t, text)
	b := p.Block
	assert.InDelta(t, 15, b.Width/25.4, 1e-9)
	assert.InDelta(t, 12, b.TopMeasures/25.4, 1e-9)
	assert.Zero(t, b.TakenAtTop())
	assert.Equal(t, "across the tucks", b.WhereMeasured())
	assert.InDelta(t, 3, b.OpenBelow()/25.4, 1e-9)
	assert.InDelta(t, 3, b.OpenAtTop()/25.4, 1e-9)
	// The block is 13 in long: its top edge lies 4 1/2 in above the yoke line.
	row, first := b.Group.Rows[0], b.Group.Rows[0].Folds[0]
	assert.InDelta(t, 4.5, (b.UpperEdge()-b.First(row, first))/25.4, 1e-9)
	assert.InDelta(t, 5, (b.First(row, first)-b.Level(row, first))/25.4, 1e-9)
	measured, pattern := made.Block(t, sketch.Swap(text, "[block]\n", "[block]\nmeasured = \"12 1/4\"\n"))
	assert.Equal(t, []string{"across the tucks it measures 12 1/4 in and should measure 12 in", "the 12 tucks took up 2 3/4 in instead of 3 in", "the piece fits, with 1/8 in to spare at each side"},
		measured.Block.MeasuredNotes(measured, pattern.Unit))
}

func TestFreeTucksThatNoRulerIsLaidAcross(t *testing.T) {
	text := sketch.Swap(sketch.Bosom, "---\n", "---\n\n[line.a]\npoints = [[0, 8], [5, 8]]\n[line.b]\npoints = [[0, 5], [5, 5]]\n[line.c]\npoints = [[0, 2], [5, 2]]\n") +
		sketch.Rows(`tuck t cf 1/8 2 3/8 | from = "a"; to = "b"`, `tuck u cf 1/8 2 2 | from = "b"; to = "c"`) + "\n[block]\n"
	_, err := made.Pattern("unit = \"in\"\nallowance = 0\n" + sketch.Front(text))
	require.Error(t, err)
	assert.Equal(t, "pinafore.toml:44: piece.front.tuck.u.to: nowhere on the block all tucks are sewn, so nothing says what it must measure\n"+
		"hint: leave the block out, and mark the piece flat; or have some of them begin at the top", err.Error())
}

// Below the crotch of a romper a line across it meets two legs, and what lies between them is no
// cloth: the leg with the tucks is measured, 3 in less their 3/4, and of tucks in both legs nothing.
func TestWhatIsMeasuredWhereLegsPart(t *testing.T) {
	const romper = "left: 0,0 0,10\ntop: 0,10 10,10\nright: 10,10 10,0\nfoot: 10,0 7,0\ninseam: 7,0 7,6\ncrotch: 7,6 3,6\nother inseam: 3,6 3,0\nother foot: 3,0 0,0\n"
	for _, c := range []struct {
		name, tucks string
		want        []float64 // in inches, at their ends
	}{
		{"in one leg", `tuck a left 1/8 3 1 | below = "top"; length = 5`, []float64{2.25}},
		{"in both", `tuck a left 1/8 2 1 | spacing = 7; below = "top"; length = 5`, nil},
		{"above", `tuck a left 1/8 3 1 | below = "top"; length = 3`, []float64{9.25}},
	} {
		t.Run(c.name, func(t *testing.T) {
			across, _ := sketched(t, "0", romper+"---\n"+sketch.Rows(c.tucks)).FoldedSizes()
			var got []float64
			for _, at := range across {
				if at.Open == nil {
					got = append(got, at.MM/25.4)
				}
			}
			require.Len(t, got, len(c.want))
			for i := range got {
				assert.InDelta(t, c.want[i], got[i], 1e-6)
			}
		})
	}
}
