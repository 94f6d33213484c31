package sheet

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Finished, the stitching of tuck k lies at f - w - 2wk, here with w = 1/8 and touching
// tucks: f = 3/8 + 3/8 k gives 1/4 + 1/8 k. It runs from the cut edge of the neck down to
// 7 5/8 in, 2 in below the stitch line.
func TestWhatACuttingSheetHolds(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2\n"
	upsideDown := sketch.Swap(sketch.Bosom, "0,10", "0,-10", "1.5,10", "1.5,-10", "2.5,11", "2.5,-11", "2.5,12", "2.5,-12", "5,11.5", "5,-11.5")
	leftHalf := sketch.Swap(sketch.Bosom, "1.5,10", "-1.5,10", "2.5,11", "-2.5,11", "2.5,12", "-2.5,12", "5,11.5", "-5,11.5", "6,0", "-6,0")
	for _, c := range []struct {
		name, text string
		tucks      []string // the stitching of each
		crosses    []string
		centre     []string
	}{
		{"on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", below) + "\n[block]\n",
			[]string{"0.25,7.625 0.25,10", "0.375,7.625 0.375,10", "0.5,7.625 0.5,10"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25"}, []string{"0,0 0,10"}},
		{"on the slant of the neck", sketch.Bosom + sketch.Tucked("cf", "1/8", 1, "2 1/8", below) + "\n[block]\n",
			[]string{"2,7.625 2,10.5"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25"}, []string{"0,0 0,10"}},
		// f = 0, 3/8, 3/4; the tuck on the centre takes half of 2w from this half:
		// 3/8 - 1/8 - 1/8 and 3/4 - 1/8 - 3/8.
		{"with a tuck on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", below) + "\n[block]\n",
			[]string{"0.125,7.625 0.125,10", "0.25,7.625 0.25,10"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25"}, []string{"0,0 0,10"}},
		{"stepped", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", below+"end = \"stepped\"\nstep = \"1/4\"") + "\n[block]\n",
			[]string{"0.25,7.625 0.25,10", "0.375,7.375 0.375,10", "0.5,7.125 0.5,10"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25"}, []string{"0,0 0,10"}},
		{"whole", sketch.Swap(sketch.Bosom, "fold =", "print = \"whole\"\nfold =") + sketch.Tucked("cf", "1/8", 2, "3/8", below) + "\n[block]\n",
			[]string{"0.25,7.625 0.25,10", "0.375,7.625 0.375,10", "-0.25,7.625 -0.25,10", "-0.375,7.625 -0.375,10"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25"}, []string{"0,0 0,10"}},
		{"drawn upside down", upsideDown + sketch.Tucked("cf", "1/8", 2, "3/8", below) + "\n[block]\n",
			[]string{"0.25,-10 0.25,-7.625", "0.375,-10 0.375,-7.625"},
			[]string{"-0.25,-9 0.25,-9", "0,-9.25 0,-8.75", "-0.25,-1 0.25,-1", "0,-1.25 0,-0.75"}, []string{"0,-10 0,0"}},
		{"the other half", leftHalf + sketch.Tucked("cf", "1/8", 2, "3/8", below) + "\n[block]\n",
			[]string{"-0.25,7.625 -0.25,10", "-0.375,7.625 -0.375,10"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25"}, []string{"0,0 0,10"}},
		// w = 1/4: f = 1 and 1 3/4 on one side, 2 on the other.
		{"beside a line in the middle of a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 2, "1", "side = \"right\"") + sketch.Swap(sketch.Tucked("middle", "1/4", 1, "2", "side = \"left\""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"0.75,0 0.75,12", "1,0 1,12", "-1.75,0 -1.75,12"},
			[]string{"-0.25,1 0.25,1", "0,0.75 0,1.25", "-0.25,11 0.25,11", "0,10.75 0,11.25"}, []string{"0,0 0,12"}},
		{"a tuck on the middle of a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 2, "0", "side = \"right\"") + "\n[block]\n",
			[]string{"0,0 0,12", "0.25,0 0.25,12"}, // 0.75 - 0.25 - 0.25
			[]string{"-0.25,1 0.25,1", "0,0.75 0,1.25", "-0.25,11 0.25,11", "0,10.75 0,11.25"}, []string{"0,0 0,12"}},
		{"beside a fold line in the middle", sketch.Swap(sketch.Bib, "kind = \"centre\"\n", "") + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"") + "\n[block]\n",
			[]string{"0.75,0 0.75,12"},
			[]string{"-0.25,1 0.25,1", "0,0.75 0,1.25", "-0.25,11 0.25,11", "0,10.75 0,11.25"}, nil},
		// Finished, the second line lies where it is drawn, whatever is taken up before it.
		{"beside a second line", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\nkind = \"placement\"\n\n" + sketch.Tucked("cf", "1/4", 1, "1", "") + sketch.Swap(sketch.Tucked("rule", "1/4", 1, "1", ""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"0.75,0 0.75,10", "3.75,0 3.75,11.75"},
			[]string{"-0.25,9 0.25,9", "0,8.75 0,9.25", "-0.25,1 0.25,1", "0,0.75 0,1.25", "2.75,1 3.25,1", "3,0.75 3,1.25", "2.75,10.9 3.25,10.9", "3,10.65 3,11.15"}, []string{"0,0 0,10"}},
		{"a line just long enough for two crosses", sketch.Swap(sketch.Bib, "[[0, 0], [0, 12]]", "[[0, 4], [0, 8.1]]") + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"") + "\n[block]\n",
			[]string{"0.75,0 0.75,12"},
			[]string{"-0.25,5 0.25,5", "0,4.75 0,5.25", "-0.25,7.1 0.25,7.1", "0,6.85 0,7.35"}, []string{"0,4 0,8.1"}},
		{"a line too short for two crosses", sketch.Swap(sketch.Bib, "[[0, 0], [0, 12]]", "[[0, 4], [0, 7.9]]") + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"") + "\n[block]\n",
			[]string{"0.75,0 0.75,12"}, nil, []string{"0,4 0,7.9"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			m := cuttingSheet(piece, pattern, nil)
			assert.Equal(t, "front: cutting sheet", m.Name)
			assert.ElementsMatch(t, c.tucks, orderedLinesOf(m, mark.TuckStitch), "the finished stitching")
			assert.ElementsMatch(t, c.crosses, orderedLinesOf(m, mark.Cross), "the crosses")
			assert.ElementsMatch(t, c.centre, orderedLinesOf(m, mark.Centre), "the centre")
			assert.Empty(t, orderedLinesOf(m, mark.TuckFold), "what is folded is out of sight")
			assert.Positive(t, m.Outline.Area(), "counter-clockwise")
			area := piece.Outline.Area()
			if piece.Whole {
				area *= 2
			}
			assert.InDelta(t, area, m.Outline.Area(), 1e-6, "the finished outline")
			for _, one := range m.Marks {
				assert.NotEqual(t, mark.FoldEdge, one.Role, "it is laid on the centre of the block, not on a fold")
			}
		})
	}
}

// The stitch lines, the hem and all other lines are where the finished piece has
// them.
func TestACuttingSheetHasTheLinesOfTheFinishedPiece(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Swap(sketch.Bosom, "6,0 0,0", "6,0 0,0 | hem = 1; turn = 0.25")+sketch.Tucked("cf", "1/8", 3, "3/8", "")+
		"\n[line.pocket]\npoints = [[3, 4], [5, 4]]\nkind = \"placement\"\n\n[notch.n]\nedge = \"side\"\nfrom = \"shoulder\"\nat = 2\n\n[block]\n")
	m := cuttingSheet(piece, pattern, nil)
	assert.Equal(t, []string{"3,4 5,4"}, orderedLinesOf(m, mark.Placement))
	assert.Len(t, orderedLinesOf(m, mark.Stitch), 3, "neck, shoulder and side")
	assert.Len(t, orderedLinesOf(m, mark.Fold), 2, "hem and turn")
	assert.Len(t, orderedLinesOf(m, mark.Notch), 1)
	assert.Equal(t, []string{"cut 1", "lay the centre on the centre of the tucked block, and its tucks under their lines", "lay crosses A and B on those of the block", "mark round it", "turn it over for the other half", "cut one layer at a time"}, m.Told())
	whole, pattern := made.Block(t, sketch.Swap(sketch.Bosom, "fold =", "print = \"whole\"\nfold =")+sketch.Tucked("cf", "1/8", 3, "3/8", "")+"\n[block]\n")
	assert.NotContains(t, cuttingSheet(whole, pattern, nil).Told(), "turn it over for the other half")
}

// How the sheet is laid depends on whether the piece has a centre, and on what is
// folded.
func TestHowACuttingSheetIsLaid(t *testing.T) {
	noMiddle, _, _ := strings.Cut(sketch.Bib, "[line")
	for _, c := range []struct {
		name, text string
		notes      []string
	}{
		{"on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n",
			[]string{"cut 1", "lay the centre on the centre of the tucked block, and its tucks under their lines", "lay crosses A and B on those of the block", "mark round it", "turn it over for the other half", "cut one layer at a time"}},
		{"on the fold, with tucks across it", sketch.Bosom + sketch.Tucked("hem", "1/2", 1, "3", "") + "\n[block]\n",
			[]string{"cut 1", "lay the centre on the centre of the tucked block, and its tucks under their lines", "lay crosses A and B on cf of the block", "mark round it", "turn it over for the other half", "cut one layer at a time"}},
		{"with a middle", sketch.Bib + sketch.Tucked("middle", "1/8", 3, "3/8", "side = \"right\"") + "\n[block]\n",
			[]string{"cut 1", "lay it on the tucked block, with the tucks under their lines", "lay crosses A and B on middle of the block", "mark round it", "cut one layer at a time"}},
		{"two, on the fold", "cut = 2\n" + sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n",
			[]string{"cut 2", "lay the centre on the centre of the tucked block, and its tucks under their lines", "lay crosses A and B on those of the block", "mark round it", "turn it over for the other half", "cut one layer at a time"}},
		{"two, not on the fold", "cut = 2\n" + sketch.Bib + sketch.Tucked("middle", "1/8", 3, "3/8", "side = \"right\"") + "\n[block]\n",
			[]string{"cut 2", "lay it on the tucked block, with the tucks under their lines", "lay crosses A and B on middle of the block", "mark round it",
				"where one is for the left and one for the right, turn it over for the second, and press its tucks the other way", "cut one layer at a time"}},
		{"beside an edge, without a middle", noMiddle + sketch.Tucked("left", "1/8", 3, "3/8", "") + "\n[block]\n",
			[]string{"cut 1", "lay it on the tucked block, with the tucks under their lines", "mark round it", "cut one layer at a time"}},
		{"pleated", noMiddle + "[pleat.p]\nbeside = \"left\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\n",
			[]string{"cut 1", "lay it on the tucked block, with the folds under their lines", "mark round it", "cut one layer at a time"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			assert.Equal(t, c.notes, cuttingSheet(piece, pattern, nil).Told())
		})
	}
}

// Every tuck has its end over its flap: 1/8 in from its stitching, on the side to which
// it is pressed.
func TestEndsOfTheTucksOnACuttingSheet(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2\n"
	for _, c := range []struct {
		name, text string
		ends       []string
	}{
		{"level", sketch.Tucked("cf", "1/8", 3, "3/8", below), []string{"0.25,7.625 0.375,7.625", "0.375,7.625 0.5,7.625", "0.5,7.625 0.625,7.625"}},
		{"pressed toward", sketch.Tucked("cf", "1/8", 2, "3/8", "press = \"toward\"\n"+below), []string{"0.125,7.625 0.25,7.625", "0.25,7.625 0.375,7.625"}},
		{"stepped", sketch.Tucked("cf", "1/8", 2, "3/8", below+"end = \"stepped\"\nstep = \"1/4\""), []string{"0.25,7.625 0.375,7.625", "0.375,7.375 0.5,7.375"}},
		{"edge to edge", sketch.Tucked("cf", "1/8", 2, "3/8", ""), nil},
		// 12 in and 4 x 1/4 in: torn 13 in, they took 3/4 in, 3/16 in each. 3/8 - 3/32 and
		// 3/4 - 3 x 3/32.
		{"as they were sewn", sketch.Tucked("cf", "1/8", 2, "3/8", below) + "\n[block]\nmeasured = \"12 1/4\"\n", []string{"0.281,7.625 0.406,7.625", "0.469,7.625 0.594,7.625"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := sketch.Bosom + c.text
			if !strings.Contains(text, "[block]") {
				text += "\n[block]\n"
			}
			piece, pattern := made.Block(t, text)
			assert.Equal(t, c.ends, orderedLinesOf(cuttingSheet(piece, pattern, nil), mark.TuckEnd))
		})
	}
}

// Of a tuck on the centre, the stitching is the centre line.
func TestTheNameOfTheCentreOfACuttingSheet(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"beside it", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", ""), "cf"},
		{"with a tuck on it", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", ""), "cf, and the stitching of tuck 1"},
		{"with tucks across it", sketch.Bosom + sketch.Tucked("hem", "1/2", 1, "3", ""), "cf"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text+"\n[block]\n")
			var names []string
			for _, one := range cuttingSheet(piece, pattern, nil).Marks {
				if one.Role == mark.Centre {
					names = append(names, one.Name)
				}
			}
			assert.Equal(t, []string{c.want}, names)
		})
	}
}

// Once the block is measured, each tuck is drawn with its share T of what they took:
// its fold line stays where it was ruled, at f, and its stitching has come to lie at
// f - T/2 less what those before it took.
func TestACuttingSheetOfAMeasuredBlock(t *testing.T) {
	const drawn = "the tucks are drawn as they were sewn"
	for _, c := range []struct {
		name, text string
		role       mark.Role
		lines      []string
		notes      []string
	}{
		// Torn 13 1/2 in, six took 1 1/8 in: T = 3/16. f = 3/8, 3/4, 1 1/8.
		{"less than they should", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\nmeasured = \"12 3/8\"\n", mark.TuckStitch,
			[]string{"0.281,0 0.281,10", "0.469,0 0.469,10", "0.656,0 0.656,10"},
			[]string{drawn, "the piece fits, with 3/16 in to spare at each side"}},
		// T = 1 7/8 / 6 = 5/16.
		{"more than they should", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\nmeasured = \"11 5/8\"\n", mark.TuckStitch,
			[]string{"0.219,0 0.219,10", "0.281,0 0.281,10", "0.344,0 0.344,10"},
			[]string{drawn, "the piece is 3/16 in too wide for it at each side: of the allowance of 3/8 in there, 3/16 in is left"}},
		{"as they should", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "") + "\n[block]\nmeasured = 12\n", mark.TuckStitch,
			[]string{"0.25,0 0.25,10", "0.375,0 0.375,10"}, []string{drawn, "the piece just fits"}},
		// Torn 13 1/4 in, five took 1 in: T = 1/5. 3/8 - 1/5 and 3/4 - 2/5.
		{"with a tuck on the centre", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", "") + "\n[block]\nmeasured = \"12 1/4\"\n", mark.TuckStitch,
			[]string{"0.175,0 0.175,10", "0.35,0 0.35,10"}, []string{drawn, "the piece fits, with 1/8 in to spare at each side"}},
		// Torn 16 in, four took 3 1/2 in: T = 7/8. The fold of a pleat lies where its
		// strip begins: at 1, and at 2 1/2 less 7/8.
		{"pleats", sketch.Bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\ncount = 2\nfirst = 1\ngap = 0\n\n[block]\nmeasured = \"12 1/2\"\n", mark.PleatFold,
			[]string{"1,0 1,10", "1.625,0 1.625,10.125"}, []string{"the folds are drawn as they were sewn", "the piece fits, with 1/4 in to spare at each side"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			m := cuttingSheet(piece, pattern, nil)
			assert.Equal(t, c.lines, orderedLinesOf(m, c.role))
			assert.Equal(t, c.notes, m.Notes)
		})
	}
}

// A pleat is not stitched: where its fold comes to lie is drawn as its fold.
func TestPleatsOnACuttingSheet(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\n")
	m := cuttingSheet(piece, pattern, nil)
	assert.Empty(t, orderedLinesOf(m, mark.TuckStitch))
	assert.Equal(t, []string{"1,0 1,10"}, orderedLinesOf(m, mark.PleatFold))
	piece, pattern = made.Block(t, sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\nkind = \"inverted\"\ndepth = \"1/4\"\nfirst = 2\n\n[block]\n")
	assert.Equal(t, []string{"1.5,0 1.5,10"}, orderedLinesOf(cuttingSheet(piece, pattern, nil), mark.PleatFold), "the two folds of an inverted pleat meet")
}

// Two rows of one 1/4 in tuck on each side, one beside the centre and one beside a line
// 3 in from it. Torn 12 + 4 x 1/2 = 14 in wide and measured 12 1/2, the four took 1 1/2 in,
// 3/8 each: the flat fold of the second lies at 3 + 1/2 + 1 = 4 1/2 in, less 3/16 for its
// own half and 3/8 for the first tuck that is 3 15/16 in.
func TestTucksBesideASecondLineOnceMeasured(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+"[line.rule]\nalong = \"cf\"\ndistance = 3\n"+
		sketch.Tucked("cf", "1/4", 1, "1", "")+strings.Replace(sketch.Tucked("rule", "1/4", 1, "1", ""), "[tuck.t]", "[tuck.u]", 1)+
		"\n[block]\nmeasured = \"12 1/2\"\n")
	var at []string
	for _, line := range orderedLinesOf(cuttingSheet(piece, pattern, nil), mark.TuckStitch) {
		x, _, _ := strings.Cut(line, ",")
		at = append(at, x)
	}
	// 13/16 and 3 15/16 in end in half a thousandth, which may be written either way.
	require.Len(t, at, 2)
	for i, want := range []float64{13. / 16, 3 + 15./16} {
		got, err := strconv.ParseFloat(at[i], 64)
		require.NoError(t, err)
		assert.InDelta(t, want, got, 0.00051, "stitching %d", i+1)
	}
}

// undercut is half a front whose armhole is hollowed out to 5 in from the centre, so
// that the tip of its shoulder, at 6 in, overhangs it.
const undercut = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
neck: 0,10 3,10 3,12
shoulder: 3,12 6,12
armhole: 6,12 5,10 8,9
side: 8,9 8,0
hem: 8,0 0,0
---

`

// Touching tucks of 1/2 in have their stitching at 1/4, 3/4, ... in. The flap of the
// ninth reaches to 4 3/4 in; that of the tenth to 5 1/4 in, past the inmost point of the
// armhole at 5 in: laid flat, both its layers are hollowed out there, and the piece would
// have a hole. From a tucked block such a front can be cut.
func TestTucksUpIntoTheArmhole(t *testing.T) {
	set := func(count int) string { return undercut + sketch.Tucked("cf", "1/2", count, "3/4", "") }
	const head = "allowance = 0\n"
	made.Of(t, head+sketch.Front(set(9)))
	for _, count := range []int{10, 14} {
		_, err := made.Pattern(head + sketch.Front(set(count)))
		assert.EqualError(t, err, fmt.Sprintf("pinafore.toml:24: piece.front.tuck.t: the outline cuts into tuck 10 of %d from the side: laid flat, the piece would have a hole or come apart beside its stitching, 4 3/4 in from \"cf\" finished\n"+
			"hint: the first 9 fit; a piece that is cut from a tucked block may have more of them: give it a table for its block", count))
	}
	pattern := made.Of(t, head+sketch.Front(set(14)+"\n[block]\n"))
	piece := &pattern.Pieces[0]
	assert.InDelta(t, 16+28, piece.Block.Width/25.4, 1e-9, "28 tucks take up 1 in each")
	require.Len(t, piece.TuckRows[0].Folds, 14)
	for k, one := range piece.TuckRows[0].Folds {
		assert.InDelta(t, 0.25+0.5*float64(k), one.Stitching/25.4, 1e-9, "stitching of tuck %d", k+1)
		for _, line := range one.Lines {
			assert.Empty(t, line.Flat, "tuck %d is never drawn on the flat piece", k+1)
		}
	}
	// The twelfth crosses the tip from 11 1/2 in, and what lies under the armhole.
	assert.Contains(t, orderedLinesOf(cuttingSheet(piece, pattern, nil), mark.TuckStitch), "5.75,11.5 5.75,12")
	assert.Contains(t, orderedLinesOf(cuttingSheet(piece, pattern, nil), mark.TuckStitch), "5.75,0 5.75,9.75")
}
