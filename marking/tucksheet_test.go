package marking

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// drawnAs lists the lines of one role, in inches, each from its lower or left end.
func drawnAs(m Marking, role Role) []string {
	var all []string
	for _, one := range m.Marks {
		if one.Role == role {
			all = append(all, inches(ordered(one.Path)))
		}
	}
	return all
}

// extent is the rectangle of a marking, in inches: from left to right, from bottom
// to top.
func extent(m Marking) string {
	b := m.Outline.Bounds()
	return fmt.Sprintf("%s to %s, %s to %s", number(b.Min.X/25.4), number(b.Max.X/25.4), number(b.Min.Y/25.4), number(b.Max.Y/25.4))
}

// The front is 12 in long, and 1/2 in of spare cloth lies above it: the block is torn
// at 12 1/2 in and at -1/2 in. Its neck's stitch line meets the centre at 9 5/8 in,
// so tucks of 2 in end at 7 5/8 in. Two touching tucks of 1/8 in have their fold lines
// at 3/8 in and 3/4 in.
func TestWhatATuckSheetHolds(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2\n"
	upsideDown := swap(bosom, ":", ":", "0,10", "0,-10", "1.5,10", "1.5,-10", "2.5,11", "2.5,-11", "2.5,12", "2.5,-12", "5,11.5", "5,-11.5")
	leftHalf := swap(bosom, "1.5,10", "-1.5,10", "2.5,11", "-2.5,11", "2.5,12", "-2.5,12", "5,11.5", "-5,11.5", "6,0", "-6,0")
	two := func(rest string) string { return tucked("cf", "1/8", 2, "3/8", rest) + "\n[block]\n" }
	for _, c := range []struct {
		name, text  string
		folds       []string
		stitching   []string
		end         []string
		extent      string
		top, bottom bool // the torn edges are there
	}{
		{"level", bosom + two(below),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.625 0.625,12.5", "0.875,7.625 0.875,12.5"},
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 1.375, 5.875 to 13", true, false},
		{"stepped", bosom + two(below+"end = \"stepped\"\nstep = \"1/4\""),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.375 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.375 0.625,12.5", "0.875,7.375 0.875,12.5"},
			[]string{"0.25,7.625 0.5,7.625 0.625,7.375 0.875,7.375"}, "0 to 1.375, 5.625 to 13", true, false},
		{"follow, where the neck is level", bosom + two(below+"end = \"follow\""),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.625 0.625,12.5", "0.875,7.625 0.875,12.5"},
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 1.375, 5.875 to 13", true, false},
		{"edge to edge", bosom + two(""),
			[]string{"0.375,-0.5 0.375,12.5", "0.75,-0.5 0.75,12.5"},
			[]string{"0.25,-0.5 0.25,12.5", "0.5,-0.5 0.5,12.5", "0.625,-0.5 0.625,12.5", "0.875,-0.5 0.875,12.5"},
			nil, "0 to 1.375, -0.5 to 13", true, true},
		{"near the bottom", bosom + two("below = \"neck\"\nlength = \"8 1/2\""),
			[]string{"0.375,1.125 0.375,12.5", "0.75,1.125 0.75,12.5"},
			[]string{"0.25,1.125 0.25,12.5", "0.5,1.125 0.5,12.5", "0.625,1.125 0.625,12.5", "0.875,1.125 0.875,12.5"},
			[]string{"0.25,1.125 0.875,1.125"}, "0 to 1.375, -0.5 to 13", true, true},
		{"a tuck on the centre", bosom + tucked("cf", "1/8", 2, "0", below) + "\n[block]\n",
			[]string{"0.375,7.625 0.375,12.5"},
			[]string{"0.125,7.625 0.125,12.5", "0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5"},
			[]string{"0,7.625 0.5,7.625"}, "0 to 1, 5.875 to 13", true, false},
		{"drawn upside down", upsideDown + two(below),
			[]string{"0.375,-12.5 0.375,-7.625", "0.75,-12.5 0.75,-7.625"},
			[]string{"0.25,-12.5 0.25,-7.625", "0.5,-12.5 0.5,-7.625", "0.625,-12.5 0.625,-7.625", "0.875,-12.5 0.875,-7.625"},
			[]string{"0.25,-7.625 0.875,-7.625"}, "0 to 1.375, -13 to -5.875", true, false},
		{"the other half", leftHalf + two(below),
			[]string{"-0.375,7.625 -0.375,12.5", "-0.75,7.625 -0.75,12.5"},
			[]string{"-0.25,7.625 -0.25,12.5", "-0.5,7.625 -0.5,12.5", "-0.625,7.625 -0.625,12.5", "-0.875,7.625 -0.875,12.5"},
			[]string{"-0.875,7.625 -0.25,7.625"}, "-1.375 to 0, 5.875 to 13", true, false},
		{"twin needle", bosom + tucked("cf", "1/8", 2, "3/8", "sewn = \"twin needle\"\n"+below) + "\n[block]\n",
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"}, nil,
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 1.375, 5.875 to 13", true, false},
		// The middle of a whole piece, with a tuck of 1/4 in to either side of it.
		{"to both sides of a line", bib + tucked("middle", "1/4", 1, "1", "side = \"right\"") + swap(tucked("middle", "1/4", 1, "2", "side = \"left\""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,-0.5 1,12.5", "-2,-0.5 -2,12.5"},
			[]string{"0.75,-0.5 0.75,12.5", "1.25,-0.5 1.25,12.5", "-2.25,-0.5 -2.25,12.5", "-1.75,-0.5 -1.75,12.5"},
			nil, "-2.75 to 1.75, -0.5 to 13", true, true},
		// One row hangs from the top, the other from the hem, whose stitch line lies at 3/8 in.
		{"from the top and from the bottom", bib + tucked("middle", "1/4", 1, "1", "side = \"right\"\nbelow = \"top\"\nlength = 2") +
			swap(tucked("middle", "1/4", 1, "2", "side = \"left\"\nbelow = \"hem\"\nlength = 2"), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,9.625 1,12.5", "-2,-0.5 -2,2.375"},
			[]string{"0.75,9.625 0.75,12.5", "1.25,9.625 1.25,12.5", "-2.25,-0.5 -2.25,2.375", "-1.75,-0.5 -1.75,2.375"},
			[]string{"0.75,9.625 1.25,9.625", "-2.25,2.375 -1.75,2.375"}, "-2.75 to 1.75, -0.5 to 13", true, true},
		// A tuck in front of it moves the second line 1/2 in outward on the flat block.
		{"beside a second line", bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + tucked("cf", "1/4", 1, "1", "") + swap(tucked("rule", "1/4", 1, "1", ""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,-0.5 1,12.5", "4.5,-0.5 4.5,12.5"},
			[]string{"0.75,-0.5 0.75,12.5", "1.25,-0.5 1.25,12.5", "4.25,-0.5 4.25,12.5", "4.75,-0.5 4.75,12.5"},
			nil, "0 to 5.25, -0.5 to 13", true, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			m := piece.tuckSheet(pattern)
			assert.Equal(t, "front: tuck sheet", m.Name)
			assert.ElementsMatch(t, c.folds, drawnAs(m, TuckFold), "fold lines")
			assert.ElementsMatch(t, c.stitching, drawnAs(m, TuckStitch), "stitching")
			var ends []string
			for _, one := range m.Marks {
				if one.Role == TuckEnd {
					path := one.Path
					if path[0].X > path[len(path)-1].X {
						path = path.Reversed()
					}
					ends = append(ends, inches(path))
				}
			}
			assert.Equal(t, c.end, ends, "the end line")
			assert.Equal(t, c.extent, extent(m))
			assert.Positive(t, m.Outline.Area(), "counter-clockwise")
			var torn []string
			for _, one := range m.Marks {
				if one.Role == BlockEdge {
					torn = append(torn, one.Name)
				}
			}
			var want []string
			if c.top {
				want = append(want, "top edge of the block")
			}
			if c.bottom {
				want = append(want, "bottom edge of the block")
			}
			assert.Equal(t, want, torn)
			checkRuler(t, m, piece.tuckRuler(pattern))
		})
	}
}

// checkRuler looks whether a ruler has a tick for every line of a tuck sheet, at the
// same places.
func checkRuler(t *testing.T, sheet, ruler Marking) {
	t.Helper()
	places := func(m Marking, role Role) []string {
		var all []string
		for _, one := range m.Marks {
			if one.Role == role {
				assert.InDelta(t, one.Path[0].X, one.Path[1].X, 1e-9, "it stands upright")
				all = append(all, number(one.Path[0].X/25.4))
			}
		}
		slices.Sort(all)
		return all
	}
	for _, role := range []Role{TuckFold, TuckStitch, PleatFold, Placement} {
		assert.Equal(t, places(sheet, role), places(ruler, role), "%s", role)
	}
	a, b := sheet.Outline.Bounds(), ruler.Outline.Bounds()
	assert.InDelta(t, a.Min.X, b.Min.X, 1e-9, "sheet and ruler begin at one place")
	assert.InDelta(t, a.Max.X, b.Max.X, 1e-9)
	for _, one := range ruler.Marks {
		box := one.Path.Bounds()
		assert.True(t, box.Min.Y > b.Min.Y-1e-9 && box.Max.Y < b.Max.Y+1e-9, "ticks lie on the ruler")
	}
}

// What ends along the neck keeps its length from the stitch line of the finished neck,
// though the sheet is flat.
func TestLinesOfATuckSheetFollowTheNeck(t *testing.T) {
	piece, pattern := blockOf(t, swap(bosom, "1.5,10 2.5,11", "1,10.1 2,10.8 2.4,11.3", "2.5,12\nshoulder", "2.5,12 | smooth = true\nshoulder")+
		tucked("cf", "1/8", 8, "3/8", "below = \"neck\"\nlength = 2\nend = \"follow\"")+"\n[block]\n")
	m := piece.tuckSheet(pattern)
	neck := piece.Edges[piece.edge("neck")].Line
	k := 0
	for _, one := range m.Marks {
		if one.Role != TuckFold {
			continue
		}
		low := ordered(one.Path)[0]
		tuck := piece.Tucks[0].Each[k]
		assert.InDelta(t, piece.Tucks[0].Flat(k), low.X, 1e-9, "tuck %d lies at its flat place", k+1)
		low.X = tuck.Seam
		_, _, away := neck.Nearest(low)
		assert.InDelta(t, 2, away/25.4, 0.001, "tuck %d, finished, ends 2 in from the stitch line", k+1)
		k++
	}
	assert.Equal(t, 8, k)
}

func TestATuckSheetOfAWholePiece(t *testing.T) {
	text := bosom + tucked("cf", "1/8", 2, "3/8", "below = \"neck\"\nlength = 2") + "\n[block]\n"
	half, pattern := blockOf(t, text)
	one := half.tuckSheet(pattern)
	whole, pattern := blockOf(t, swap(text, "fold =", "print = \"whole\"\nfold ="))
	both := whole.tuckSheet(pattern)
	assert.Equal(t, "-1.375 to 1.375, 5.875 to 13", extent(both))
	for _, role := range []Role{TuckFold, TuckStitch} {
		var want []string
		for _, line := range drawnAs(one, role) {
			want = append(want, line, "-"+strings.ReplaceAll(line, " ", " -"))
		}
		assert.ElementsMatch(t, want, drawnAs(both, role), "%s: every line on both sides", role)
	}
	assert.Equal(t, []string{"0,5.875 0,13"}, drawnAs(both, Centre), "one centre line")
	assert.ElementsMatch(t, []string{"0.25,7.625 0.875,7.625", "-0.875,7.625 -0.25,7.625"}, drawnAs(both, TuckEnd))
}

// A ruler says which tuck is which, where its end lies, and what lies there.
func TestWhatATuckRulerSays(t *testing.T) {
	const tick = "a tick at every line: tick along the top edge and along the end line, and rule between"
	names := func(m Marking) []string {
		var all []string
		for _, one := range m.Marks {
			if one.Name != "" {
				all = append(all, one.Name)
			}
		}
		return all
	}
	for _, c := range []struct {
		name, text string
		names      []string
		notes      []string
	}{
		{"on the fold", bosom + tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"1", "2", "3"},
			[]string{tick, "its end lies on cf; turn it over for the other half"}},
		{"with a tuck on the fold", bosom + tucked("cf", "1/8", 3, "0", "") + "\n[block]\n", []string{"2", "3"},
			[]string{tick, "its end lies on cf; turn it over for the other half"}},
		{"beside another line of a piece on the fold", bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + tucked("rule", "1/8", 3, "3/8", "") + "\n[block]\n",
			[]string{"rule", "1", "2", "3"}, []string{tick, "its end lies on cf; turn it over for the other half"}},
		{"a whole piece", bib + tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\n", []string{"middle", "1", "2"}, []string{tick}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			ruler := piece.tuckRuler(pattern)
			assert.Equal(t, "front: tuck ruler", ruler.Name)
			assert.Equal(t, c.names, names(ruler))
			assert.Equal(t, c.notes, ruler.Notes)
		})
	}
}

// The sheet has the centre of a piece on the fold even where no tucks are measured
// from it, for the block is folded there; and it says where that is a tuck's fold.
func TestTheCentreOfATuckSheet(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"measured from it", bosom + tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"cf"}},
		{"with a tuck on it", bosom + tucked("cf", "1/8", 3, "0", "") + "\n[block]\n", []string{"cf, and the fold of tuck 1"}},
		{"measured from another line", bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + tucked("rule", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"cf", "rule"}},
		{"a whole piece", bib + tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\n", []string{"middle"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			var got []string
			for _, one := range piece.tuckSheet(pattern).Marks {
				if one.Role == Centre {
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
	text := bosom + tucked("cf", "1/8", 6, "3/8", "press = \"toward\"") + "\n[block]\n"
	piece, pattern := blockOf(t, text)
	notes := piece.tuckSheet(pattern).Notes
	require.Equal(t, append(piece.Block.notes(Inch), "t: 6 tucks, each 1/8 in wide, pressed toward cf"), notes)
	piece, pattern = blockOf(t, text+"measured = 12\n")
	assert.Equal(t, append(notes, piece.Block.measured(piece, Inch)...), piece.tuckSheet(pattern).Notes)
}

func TestPleatsOnATuckSheet(t *testing.T) {
	piece, pattern := blockOf(t, bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\n")
	m := piece.tuckSheet(pattern)
	assert.Equal(t, []string{"1,-0.5 1,12.5"}, drawnAs(m, PleatFold))
	assert.Equal(t, []string{"2,-0.5 2,12.5"}, drawnAs(m, Placement))
	checkRuler(t, m, piece.tuckRuler(pattern))
	assert.Contains(t, m.Notes, "all folds together take up 2 in")
}
