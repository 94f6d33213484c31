package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// extent is the rectangle of a marking, in inches: from left to right, from bottom
// to top.
func extent(m mark.Marking) string {
	b := m.Outline.Bounds()
	return fmt.Sprintf("%s to %s, %s to %s", sketch.Number(b.Min.X/25.4), sketch.Number(b.Max.X/25.4), sketch.Number(b.Min.Y/25.4), sketch.Number(b.Max.Y/25.4))
}

// The front is 12 in long, and 1/2 in of spare cloth lies above it: the block is torn
// at 12 1/2 in and at -1/2 in. Its neck's stitch line meets the centre at 9 5/8 in,
// so tucks of 2 in end at 7 5/8 in. Two touching tucks of 1/8 in have their fold lines
// at 3/8 in and 3/4 in.
func TestWhatATuckSheetHolds(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2\n"
	upsideDown := sketch.Swap(sketch.Bosom, ":", ":", "0,10", "0,-10", "1.5,10", "1.5,-10", "2.5,11", "2.5,-11", "2.5,12", "2.5,-12", "5,11.5", "5,-11.5")
	leftHalf := sketch.Swap(sketch.Bosom, "1.5,10", "-1.5,10", "2.5,11", "-2.5,11", "2.5,12", "-2.5,12", "5,11.5", "-5,11.5", "6,0", "-6,0")
	two := func(rest string) string { return sketch.Tucked("cf", "1/8", 2, "3/8", rest) + "\n[block]\n" }
	for _, c := range []struct {
		name, text string
		folds      []string
		stitching  []string
		end        []string
		extent     string
		torn       string // the torn edges that are there
	}{
		{"level", sketch.Bosom + two(below),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.625 0.625,12.5", "0.875,7.625 0.875,12.5"},
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 2.125, 5.875 to 13.125", "top"},
		{"stepped", sketch.Bosom + two(below+"end = \"stepped\"\nstep = \"1/4\""),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.375 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.375 0.625,12.5", "0.875,7.375 0.875,12.5"},
			[]string{"0.25,7.625 0.5,7.625 0.625,7.375 0.875,7.375"}, "0 to 2.125, 5.625 to 13.125", "top"},
		{"follow, where the neck is level", sketch.Bosom + two(below+"end = \"follow\""),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.625 0.625,12.5", "0.875,7.625 0.875,12.5"},
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 2.125, 5.875 to 13.125", "top"},
		{"edge to edge", sketch.Bosom + two(""),
			[]string{"0.375,-0.5 0.375,12.5", "0.75,-0.5 0.75,12.5"},
			[]string{"0.25,-0.5 0.25,12.5", "0.5,-0.5 0.5,12.5", "0.625,-0.5 0.625,12.5", "0.875,-0.5 0.875,12.5"},
			nil, "0 to 2.125, -1.125 to 13.125", "top bottom"},
		{"near the bottom", sketch.Bosom + two("below = \"neck\"\nlength = \"8 1/2\""),
			[]string{"0.375,1.125 0.375,12.5", "0.75,1.125 0.75,12.5"},
			[]string{"0.25,1.125 0.25,12.5", "0.5,1.125 0.5,12.5", "0.625,1.125 0.625,12.5", "0.875,1.125 0.875,12.5"},
			[]string{"0.25,1.125 0.875,1.125"}, "0 to 2.125, -1.125 to 13.125", "top bottom"},
		{"a tuck on the centre", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "0", below) + "\n[block]\n",
			[]string{"0.375,7.625 0.375,12.5"},
			[]string{"0.125,7.625 0.125,12.5", "0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5"},
			[]string{"0,7.625 0.5,7.625"}, "0 to 1.75, 5.875 to 13.125", "top"},
		{"drawn upside down", upsideDown + two(below),
			[]string{"0.375,-12.5 0.375,-7.625", "0.75,-12.5 0.75,-7.625"},
			[]string{"0.25,-12.5 0.25,-7.625", "0.5,-12.5 0.5,-7.625", "0.625,-12.5 0.625,-7.625", "0.875,-12.5 0.875,-7.625"},
			[]string{"0.25,-7.625 0.875,-7.625"}, "0 to 2.125, -13.125 to -5.875", "top"},
		{"the other half", leftHalf + two(below),
			[]string{"-0.375,7.625 -0.375,12.5", "-0.75,7.625 -0.75,12.5"},
			[]string{"-0.25,7.625 -0.25,12.5", "-0.5,7.625 -0.5,12.5", "-0.625,7.625 -0.625,12.5", "-0.875,7.625 -0.875,12.5"},
			[]string{"-0.875,7.625 -0.25,7.625"}, "-2.125 to 0, 5.875 to 13.125", "top"},
		{"twin needle", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "sewn = \"twin needle\"\n"+below) + "\n[block]\n",
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"}, nil,
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 2.125, 5.875 to 13.125", "top"},
		// The middle of a whole piece, with a tuck of 1/4 in to either side of it. The block
		// is torn at 6 + 1/2 in to both sides; the left one is nearer to the lines.
		{"to both sides of a line", sketch.Bib + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"") + sketch.Swap(sketch.Tucked("middle", "1/4", 1, "2", "side = \"left\""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,-0.5 1,12.5", "-2,-0.5 -2,12.5"},
			[]string{"0.75,-0.5 0.75,12.5", "1.25,-0.5 1.25,12.5", "-2.25,-0.5 -2.25,12.5", "-1.75,-0.5 -1.75,12.5"},
			nil, "-6.5 to 2.5, -1.125 to 13.125", "top bottom side"},
		// One row hangs from the top, the other from the hem, whose stitch line lies at 3/8 in.
		{"from the top and from the bottom", sketch.Bib + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"\nbelow = \"top\"\nlength = 2") +
			sketch.Swap(sketch.Tucked("middle", "1/4", 1, "2", "side = \"left\"\nbelow = \"hem\"\nlength = 2"), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,9.625 1,12.5", "-2,-0.5 -2,2.375"},
			[]string{"0.75,9.625 0.75,12.5", "1.25,9.625 1.25,12.5", "-2.25,-0.5 -2.25,2.375", "-1.75,-0.5 -1.75,2.375"},
			[]string{"0.75,9.625 1.25,9.625", "-2.25,2.375 -1.75,2.375"}, "-6.5 to 2.5, -1.125 to 13.125", "top bottom side"},
		// A tuck in front of it moves the second line 1/2 in outward on the flat block.
		{"beside a second line", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + sketch.Tucked("cf", "1/4", 1, "1", "") + sketch.Swap(sketch.Tucked("rule", "1/4", 1, "1", ""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,-0.5 1,12.5", "4.5,-0.5 4.5,12.5"},
			[]string{"0.75,-0.5 0.75,12.5", "1.25,-0.5 1.25,12.5", "4.25,-0.5 4.25,12.5", "4.75,-0.5 4.75,12.5"},
			nil, "0 to 6, -1.125 to 13.125", "top bottom"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			m := tuckSheet(piece, pattern)
			assert.Equal(t, "front: tuck sheet", m.Name)
			assert.ElementsMatch(t, c.folds, orderedLinesOf(m, mark.TuckFold), "fold lines")
			assert.ElementsMatch(t, c.stitching, orderedLinesOf(m, mark.TuckStitch), "stitching")
			var ends []string
			for _, one := range m.Marks {
				if one.Role == mark.TuckEnd {
					path := one.Path
					if path[0].X > path[len(path)-1].X {
						path = path.Reversed()
					}
					ends = append(ends, sketch.Inches(path))
				}
			}
			assert.Equal(t, c.end, ends, "the end line")
			assert.Equal(t, c.extent, extent(m))
			assert.Positive(t, m.Outline.Area(), "counter-clockwise")
			var torn []string
			for _, one := range m.Marks {
				if one.Role == mark.BlockEdge {
					torn = append(torn, one.Name)
				}
			}
			var want []string
			for _, which := range strings.Fields(c.torn) {
				want = append(want, "torn "+strings.Replace(which+" edge", "side edge", "side", 1))
			}
			assert.Equal(t, want, torn)
			checkRuler(t, m, tuckRuler(piece, pattern))
		})
	}
}

// What ends along the neck keeps its length from the stitch line of the finished neck,
// though the sheet is flat.
func TestLinesOfATuckSheetFollowTheNeck(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Swap(sketch.Bosom, "1.5,10 2.5,11", "1,10.1 2,10.8 2.4,11.3", "2.5,12\nshoulder", "2.5,12 | smooth = true\nshoulder")+
		sketch.Tucked("cf", "1/8", 8, "3/8", "below = \"neck\"\nlength = 2\nend = \"follow\"")+"\n[block]\n")
	m := tuckSheet(piece, pattern)
	neck := piece.Edges[piece.EdgeNumber("neck")].Line
	k := 0
	for _, one := range m.Marks {
		if one.Role != mark.TuckFold {
			continue
		}
		low := sketch.Ordered(one.Path)[0]
		tuck := piece.TuckRows[0].Folds[k]
		assert.InDelta(t, piece.TuckRows[0].Folds[k].At, low.X, 1e-9, "tuck %d lies at its flat place", k+1)
		low.X = tuck.Stitching
		_, _, away := neck.Nearest(low)
		assert.InDelta(t, 2, away/25.4, 0.001, "tuck %d, finished, ends 2 in from the stitch line", k+1)
		k++
	}
	assert.Equal(t, 8, k)
}

func TestATuckSheetOfAWholePiece(t *testing.T) {
	text := sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "below = \"neck\"\nlength = 2") + "\n[block]\n"
	half, pattern := made.Block(t, text)
	one := tuckSheet(half, pattern)
	whole, pattern := made.Block(t, sketch.Swap(text, "fold =", "print = \"whole\"\nfold ="))
	both := tuckSheet(whole, pattern)
	assert.Equal(t, "-2.125 to 2.125, 5.875 to 13.125", extent(both))
	for _, role := range []mark.Role{mark.TuckFold, mark.TuckStitch} {
		var want []string
		for _, line := range orderedLinesOf(one, role) {
			want = append(want, line, "-"+strings.ReplaceAll(line, " ", " -"))
		}
		assert.ElementsMatch(t, want, orderedLinesOf(both, role), "%s: every line on both sides", role)
	}
	assert.Equal(t, []string{"0,5.875 0,13.125"}, orderedLinesOf(both, mark.Centre), "one centre line")
	assert.ElementsMatch(t, []string{"0.25,7.625 0.875,7.625", "-0.875,7.625 -0.25,7.625"}, orderedLinesOf(both, mark.TuckEnd))
}

// The sheet has the centre of a piece on the fold even where no tucks are measured
// from it, for the block is folded there; and it says where that is a tuck's fold.
func TestTheCentreOfATuckSheet(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"measured from it", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"cf"}},
		{"with a tuck on it", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", "") + "\n[block]\n", []string{"cf, and the fold of tuck 1"}},
		{"measured from another line", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + sketch.Tucked("rule", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"cf", "rule"}},
		{"a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\n", []string{"middle"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			var got []string
			for _, one := range tuckSheet(piece, pattern).Marks {
				if one.Role == mark.Centre {
					got = append(got, one.Name)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// The notes tell how to tear, what to hold the stitched block against, and what the
// tucks are; once it is measured, also what follows from that.
func TestNotesOfATuckSheet(t *testing.T) {
	text := sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "press = \"toward\"") + "\n[block]\n"
	piece, pattern := made.Block(t, text)
	notes := tuckSheet(piece, pattern).Told()
	require.Equal(t, []string{
		"all tucks together take up 3 in", "t: 12 tucks, 6 on each side, each 1/8 in wide", "no cloth shows between tucks when sewn: they touch", "pressed toward cf",
		"tear a block 15 in wide and 13 in long", "mark its centre, the lines of the tucks, cross A (3 1/2 in from the torn top edge) and cross B (11 1/2 in from the torn top edge)",
	}, notes)
	piece, pattern = made.Block(t, text+"measured = 12\n")
	assert.Equal(t, slices.Concat([]string{"torn 15 in wide and 13 in long, its tucks are sewn"}, notes[1:4], piece.Block.MeasuredNotes(piece, length.Inch)), tuckSheet(piece, pattern).Notes)
	piece, pattern = made.Block(t, text+"measured = \"12 3/4\"\n")
	assert.NotContains(t, strings.Join(tuckSheet(piece, pattern).Told(), " "), "sample =", "what goes into the file is told on the screen")
}

// Once its block is measured nothing of a piece is torn, ruled or sewn any more: its tuck sheet is
// there to measure the block by, and to find the marks again that the cutting sheet is laid on,
// whichever way other lines come onto the cloth.
func TestSheetsOfATuckedBlock(t *testing.T) {
	onFold := sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "below = \"neck\"\nlength = 2\npress = \"away\"") + "\n[block]\nmeasured = 12\n"
	whole := sketch.Bib + sketch.Tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\nmeasured = 12\n"
	again := "mark again what is washed out: its centre and cross A (3 1/2 in from the torn top edge)"
	for _, c := range []struct {
		name, text string
		ways       []source.Transfer
		names      []string
		steps      []string
	}{
		{"as it is", onFold, nil, []string{"front: tuck sheet", "front: cutting sheet"}, []string{"measure the top edge once more: it was 12 in", again}},
		{"pricked", onFold, []source.Transfer{source.Prick}, []string{"front: tuck sheet", "front: cutting sheet"}, []string{"measure the top edge once more: it was 12 in", again}},
		{"mirrored, and a template", onFold, []source.Transfer{source.Mirror, source.Template}, []string{"front: tuck sheet", "front: cutting sheet", "front: template"}, []string{"measure the top edge once more: it was 12 in", again}},
		{"a whole piece", whole, nil, []string{"front: tuck sheet", "front: cutting sheet"}, []string{"measure the top edge once more: it was 12 in"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, "allowance = \"1/4\"\n"+sketch.Front(c.text))
			if c.ways != nil {
				pattern = Transferred(pattern, c.ways)
			}
			var names []string
			all := Of(pattern)
			for _, m := range all {
				names = append(names, m.Name)
			}
			assert.Equal(t, c.names, names)
			assert.Equal(t, c.steps, all[0].Steps)
		})
	}
}

func TestPleatsOnATuckSheet(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\n")
	m := tuckSheet(piece, pattern)
	assert.Equal(t, []string{"1,-0.5 1,12.5"}, orderedLinesOf(m, mark.PleatFold))
	assert.Equal(t, []string{"2,-0.5 2,12.5"}, orderedLinesOf(m, mark.Placement))
	// Six tenths of the way down from 12 1/2 in to -1/2 in, from the fold line to where
	// it is laid.
	assert.Equal(t, []string{"1,4.7 2,4.7"}, linesOf(m, mark.Arrow))
	checkRuler(t, m, tuckRuler(piece, pattern))
	assert.Contains(t, m.Told(), "all folds together take up 2 in")
}

// Which way each pleat is laid can be seen from its arrow.
func TestArrowsOfATuckSheet(t *testing.T) {
	for _, c := range []struct {
		name, pleat string
		want        []string
	}{
		// The strip lies from 1 to 2 in; pressed toward, its fold is the far side of it.
		{"toward", "press = \"toward\"\nfirst = 2\n", []string{"2,4.7 1,4.7"}},
		// Two strips of 1 in that meet at 3 in, both folds laid on that line.
		{"inverted", "kind = \"inverted\"\nfirst = 3\n", []string{"2,4.7 3,4.7", "4,4.7 3,4.7"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\n"+c.pleat+"\n[block]\n")
			assert.Equal(t, c.want, linesOf(tuckSheet(piece, pattern), mark.Arrow))
		})
	}
}

// A block that is not laid on the fold has no centre to begin at: the sheet goes on to
// the nearer torn side, where that is no more than 8 in from the lines. One tuck of
// 1/4 in to the right of the middle moves the right side 1/2 in outward; its lines
// reach 1 1/4 in.
func TestTheTornSideOfATuckSheet(t *testing.T) {
	wide := func(half string) string { return sketch.Swap(sketch.Bib, "6,", half+",") }
	right := sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"")
	for _, c := range []struct {
		name, text string
		side, note []string
	}{
		{"the right one", sketch.Bib + right + "\n[block]\n", []string{"6.5,-0.5 6.5,12.5"}, []string{"middle lies 6 1/2 in from the torn side"}},
		{"the left one", sketch.Bib + sketch.Swap(right, "right", "left") + "\n[block]\n", []string{"-6.5,-0.5 -6.5,12.5"}, []string{"middle lies 6 1/2 in from the torn side"}},
		{"with spare cloth", sketch.Bib + right + "\n[block]\nsides = \"3/4\"\n", []string{"7.25,-0.5 7.25,12.5"}, []string{"middle lies 7 1/4 in from the torn side"}},
		// 8 11/16 + 1/2 - 1 1/4 = 7 15/16
		{"just near enough", wide("8.6875") + right + "\n[block]\n", []string{"9.188,-0.5 9.188,12.5"}, []string{"middle lies 9 3/16 in from the torn side"}},
		{"too far away", wide("8.8125") + right + "\n[block]\n", nil, nil},
		{"on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "") + "\n[block]\n", nil, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			m := tuckSheet(piece, pattern)
			var side, note []string
			for _, one := range m.Marks {
				if one.Name == "torn side" {
					assert.Equal(t, mark.BlockEdge, one.Role)
					side = append(side, sketch.Inches(sketch.Ordered(one.Path)))
				}
			}
			for _, one := range m.Told() {
				if strings.Contains(one, "torn side") {
					note = append(note, one)
				}
			}
			assert.Equal(t, c.side, side)
			assert.Equal(t, c.note, note)
		})
	}
}
