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
)

// drawnAs lists the lines of one role, in inches, each from its lower or left end.
func drawnAs(m mark.Marking, role mark.Role) []string {
	var all []string
	for _, one := range m.Marks {
		if one.Role == role {
			all = append(all, sketch.Inches(sketch.Ordered(one.Path)))
		}
	}
	return all
}

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
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 1.375, 5.875 to 13", "top"},
		{"stepped", sketch.Bosom + two(below+"end = \"stepped\"\nstep = \"1/4\""),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.375 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.375 0.625,12.5", "0.875,7.375 0.875,12.5"},
			[]string{"0.25,7.625 0.5,7.625 0.625,7.375 0.875,7.375"}, "0 to 1.375, 5.625 to 13", "top"},
		{"follow, where the neck is level", sketch.Bosom + two(below+"end = \"follow\""),
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"},
			[]string{"0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5", "0.625,7.625 0.625,12.5", "0.875,7.625 0.875,12.5"},
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 1.375, 5.875 to 13", "top"},
		{"edge to edge", sketch.Bosom + two(""),
			[]string{"0.375,-0.5 0.375,12.5", "0.75,-0.5 0.75,12.5"},
			[]string{"0.25,-0.5 0.25,12.5", "0.5,-0.5 0.5,12.5", "0.625,-0.5 0.625,12.5", "0.875,-0.5 0.875,12.5"},
			nil, "0 to 1.375, -0.5 to 13", "top bottom"},
		{"near the bottom", sketch.Bosom + two("below = \"neck\"\nlength = \"8 1/2\""),
			[]string{"0.375,1.125 0.375,12.5", "0.75,1.125 0.75,12.5"},
			[]string{"0.25,1.125 0.25,12.5", "0.5,1.125 0.5,12.5", "0.625,1.125 0.625,12.5", "0.875,1.125 0.875,12.5"},
			[]string{"0.25,1.125 0.875,1.125"}, "0 to 1.375, -0.5 to 13", "top bottom"},
		{"a tuck on the centre", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "0", below) + "\n[block]\n",
			[]string{"0.375,7.625 0.375,12.5"},
			[]string{"0.125,7.625 0.125,12.5", "0.25,7.625 0.25,12.5", "0.5,7.625 0.5,12.5"},
			[]string{"0,7.625 0.5,7.625"}, "0 to 1, 5.875 to 13", "top"},
		{"drawn upside down", upsideDown + two(below),
			[]string{"0.375,-12.5 0.375,-7.625", "0.75,-12.5 0.75,-7.625"},
			[]string{"0.25,-12.5 0.25,-7.625", "0.5,-12.5 0.5,-7.625", "0.625,-12.5 0.625,-7.625", "0.875,-12.5 0.875,-7.625"},
			[]string{"0.25,-7.625 0.875,-7.625"}, "0 to 1.375, -13 to -5.875", "top"},
		{"the other half", leftHalf + two(below),
			[]string{"-0.375,7.625 -0.375,12.5", "-0.75,7.625 -0.75,12.5"},
			[]string{"-0.25,7.625 -0.25,12.5", "-0.5,7.625 -0.5,12.5", "-0.625,7.625 -0.625,12.5", "-0.875,7.625 -0.875,12.5"},
			[]string{"-0.875,7.625 -0.25,7.625"}, "-1.375 to 0, 5.875 to 13", "top"},
		{"twin needle", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "sewn = \"twin needle\"\n"+below) + "\n[block]\n",
			[]string{"0.375,7.625 0.375,12.5", "0.75,7.625 0.75,12.5"}, nil,
			[]string{"0.25,7.625 0.875,7.625"}, "0 to 1.375, 5.875 to 13", "top"},
		// The middle of a whole piece, with a tuck of 1/4 in to either side of it. The block
		// is torn at 6 + 1/2 in to both sides; the left one is nearer to the lines.
		{"to both sides of a line", sketch.Bib + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"") + sketch.Swap(sketch.Tucked("middle", "1/4", 1, "2", "side = \"left\""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,-0.5 1,12.5", "-2,-0.5 -2,12.5"},
			[]string{"0.75,-0.5 0.75,12.5", "1.25,-0.5 1.25,12.5", "-2.25,-0.5 -2.25,12.5", "-1.75,-0.5 -1.75,12.5"},
			nil, "-6.5 to 1.75, -0.5 to 13", "top bottom side"},
		// One row hangs from the top, the other from the hem, whose stitch line lies at 3/8 in.
		{"from the top and from the bottom", sketch.Bib + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\"\nbelow = \"top\"\nlength = 2") +
			sketch.Swap(sketch.Tucked("middle", "1/4", 1, "2", "side = \"left\"\nbelow = \"hem\"\nlength = 2"), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,9.625 1,12.5", "-2,-0.5 -2,2.375"},
			[]string{"0.75,9.625 0.75,12.5", "1.25,9.625 1.25,12.5", "-2.25,-0.5 -2.25,2.375", "-1.75,-0.5 -1.75,2.375"},
			[]string{"0.75,9.625 1.25,9.625", "-2.25,2.375 -1.75,2.375"}, "-6.5 to 1.75, -0.5 to 13", "top bottom side"},
		// A tuck in front of it moves the second line 1/2 in outward on the flat block.
		{"beside a second line", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + sketch.Tucked("cf", "1/4", 1, "1", "") + sketch.Swap(sketch.Tucked("rule", "1/4", 1, "1", ""), "tuck.t", "tuck.u") + "\n[block]\n",
			[]string{"1,-0.5 1,12.5", "4.5,-0.5 4.5,12.5"},
			[]string{"0.75,-0.5 0.75,12.5", "1.25,-0.5 1.25,12.5", "4.25,-0.5 4.25,12.5", "4.75,-0.5 4.75,12.5"},
			nil, "0 to 5.25, -0.5 to 13", "top bottom"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			m := tuckSheet(piece, pattern)
			assert.Equal(t, "front: tuck sheet", m.Name)
			assert.ElementsMatch(t, c.folds, drawnAs(m, mark.TuckFold), "fold lines")
			assert.ElementsMatch(t, c.stitching, drawnAs(m, mark.TuckStitch), "stitching")
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
				want = append(want, which+" edge of the block")
			}
			assert.Equal(t, want, torn)
			checkRuler(t, m, tuckRuler(piece, pattern))
		})
	}
}

// checkRuler looks whether a ruler has a tick for every line of a tuck sheet, at the
// same places.
func checkRuler(t *testing.T, sheet, ruler mark.Marking) {
	t.Helper()
	places := func(m mark.Marking, role mark.Role) []string {
		var all []string
		for _, one := range m.Marks {
			if one.Role == role {
				assert.InDelta(t, one.Path[0].X, one.Path[1].X, 1e-9, "it stands upright")
				all = append(all, sketch.Number(one.Path[0].X/25.4))
			}
		}
		slices.Sort(all)
		return all
	}
	for _, role := range []mark.Role{mark.TuckFold, mark.TuckStitch, mark.PleatFold, mark.Placement} {
		assert.Equal(t, places(sheet, role), places(ruler, role), "%s", role)
	}
	a, b := sheet.Outline.Bounds(), ruler.Outline.Bounds()
	if slices.ContainsFunc(sheet.Marks, func(m mark.Mark) bool { return m.Name == "side edge of the block" }) {
		assert.True(t, a.Min.X < b.Min.X+1e-9 && b.Max.X < a.Max.X+1e-9, "the sheet goes on to the torn side, the ruler does not")
	} else {
		assert.InDelta(t, a.Min.X, b.Min.X, 1e-9, "sheet and ruler begin at one place")
		assert.InDelta(t, a.Max.X, b.Max.X, 1e-9)
	}
	for _, one := range ruler.Marks {
		box := one.Path.Bounds()
		assert.True(t, box.Min.Y > b.Min.Y-1e-9 && box.Max.Y < b.Max.Y+1e-9, "ticks lie on the ruler")
		switch one.Role {
		case mark.TuckStitch, mark.Placement:
			assert.InDelta(t, 31.75/3, box.Height(), 1e-9, "a tick for stitching is a third of the ruler high")
		case mark.TuckFold, mark.PleatFold:
			assert.InDelta(t, 31.75*2/3, box.Height(), 1e-9, "a tick for a fold is two thirds of the ruler high")
		}
	}
	assert.InDelta(t, 31.75, b.Height(), 1e-9, "the ruler is 1 1/4 in high")
}

// What ends along the neck keeps its length from the stitch line of the finished neck,
// though the sheet is flat.
func TestLinesOfATuckSheetFollowTheNeck(t *testing.T) {
	piece, pattern := blockOf(t, sketch.Swap(sketch.Bosom, "1.5,10 2.5,11", "1,10.1 2,10.8 2.4,11.3", "2.5,12\nshoulder", "2.5,12 | smooth = true\nshoulder")+
		sketch.Tucked("cf", "1/8", 8, "3/8", "below = \"neck\"\nlength = 2\nend = \"follow\"")+"\n[block]\n")
	m := tuckSheet(piece, pattern)
	neck := piece.Edges[piece.Edge("neck")].Line
	k := 0
	for _, one := range m.Marks {
		if one.Role != mark.TuckFold {
			continue
		}
		low := sketch.Ordered(one.Path)[0]
		tuck := piece.TuckRows[0].Each[k]
		assert.InDelta(t, piece.TuckRows[0].Flat(k), low.X, 1e-9, "tuck %d lies at its flat place", k+1)
		low.X = tuck.Stitching
		_, _, away := neck.Nearest(low)
		assert.InDelta(t, 2, away/25.4, 0.001, "tuck %d, finished, ends 2 in from the stitch line", k+1)
		k++
	}
	assert.Equal(t, 8, k)
}

func TestATuckSheetOfAWholePiece(t *testing.T) {
	text := sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "below = \"neck\"\nlength = 2") + "\n[block]\n"
	half, pattern := blockOf(t, text)
	one := tuckSheet(half, pattern)
	whole, pattern := blockOf(t, sketch.Swap(text, "fold =", "print = \"whole\"\nfold ="))
	both := tuckSheet(whole, pattern)
	assert.Equal(t, "-1.375 to 1.375, 5.875 to 13", extent(both))
	for _, role := range []mark.Role{mark.TuckFold, mark.TuckStitch} {
		var want []string
		for _, line := range drawnAs(one, role) {
			want = append(want, line, "-"+strings.ReplaceAll(line, " ", " -"))
		}
		assert.ElementsMatch(t, want, drawnAs(both, role), "%s: every line on both sides", role)
	}
	assert.Equal(t, []string{"0,5.875 0,13"}, drawnAs(both, mark.Centre), "one centre line")
	assert.ElementsMatch(t, []string{"0.25,7.625 0.875,7.625", "-0.875,7.625 -0.25,7.625"}, drawnAs(both, mark.TuckEnd))
}

// A ruler says which tuck is which, where its end lies, and what lies there.
func TestWhatATuckRulerSays(t *testing.T) {
	const tick = "a tick at every line: tick along the torn edge and along the end line, and rule between"
	names := func(m mark.Marking) []string {
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
		{"on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"1", "2", "3"},
			[]string{tick, "its end lies on cf; turn it over for the other half"}},
		{"with a tuck on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", "") + "\n[block]\n", []string{"2", "3"},
			[]string{tick, "its end lies on cf; turn it over for the other half"}},
		{"beside another line of a piece on the fold", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + sketch.Tucked("rule", "1/8", 3, "3/8", "") + "\n[block]\n",
			[]string{"rule", "1", "2", "3"}, []string{tick, "its end lies on cf; turn it over for the other half"}},
		{"a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\n", []string{"middle", "1", "2"}, []string{tick}},
		// Torn at 12 1/2 in, ending at 7 5/8 in.
		{"ending on the piece", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "below = \"neck\"\nlength = 2") + "\n[block]\n", []string{"1", "2", "3"},
			[]string{tick, "the t tucks end 4 7/8 in from the torn edge", "its end lies on cf; turn it over for the other half"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			ruler := tuckRuler(piece, pattern)
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
		{"measured from it", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"cf"}},
		{"with a tuck on it", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", "") + "\n[block]\n", []string{"cf, and the fold of tuck 1"}},
		{"measured from another line", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + sketch.Tucked("rule", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"cf", "rule"}},
		{"a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\n", []string{"middle"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
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
	piece, pattern := blockOf(t, text)
	notes := tuckSheet(piece, pattern).Notes
	require.Equal(t, append(piece.Block.Notes(length.Inch), "t: 12 tucks, 6 on each side, each 1/8 in wide", "pressed toward cf"), notes)
	piece, pattern = blockOf(t, text+"measured = 12\n")
	assert.Equal(t, append(notes, piece.Block.MeasuredNotes(piece, length.Inch)...), tuckSheet(piece, pattern).Notes)
}

func TestPleatsOnATuckSheet(t *testing.T) {
	piece, pattern := blockOf(t, sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\n")
	m := tuckSheet(piece, pattern)
	assert.Equal(t, []string{"1,-0.5 1,12.5"}, drawnAs(m, mark.PleatFold))
	assert.Equal(t, []string{"2,-0.5 2,12.5"}, drawnAs(m, mark.Placement))
	// Six tenths of the way down from 12 1/2 in to -1/2 in, from the fold line to where
	// it is laid.
	var arrows []string
	for _, one := range m.Marks {
		if one.Role == mark.Arrow {
			arrows = append(arrows, sketch.Inches(one.Path))
		}
	}
	assert.Equal(t, []string{"1,4.7 2,4.7"}, arrows)
	checkRuler(t, m, tuckRuler(piece, pattern))
	assert.Contains(t, m.Notes, "all folds together take up 2 in")
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
			piece, pattern := blockOf(t, sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\n"+c.pleat+"\n[block]\n")
			var got []string
			for _, one := range tuckSheet(piece, pattern).Marks {
				if one.Role == mark.Arrow {
					got = append(got, sketch.Inches(one.Path))
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// The centre has its crosses at the heights at which the cutting sheet has them, 1 in
// from its ends: at 9 in and at 1 in, where the sheet reaches so far.
func TestCrossesOfATuckSheet(t *testing.T) {
	const below = "below = \"neck\"\nlength = "
	high, low := []string{"-0.25,9 0.25,9", "0,8.75 0,9.25"}, []string{"-0.25,1 0.25,1", "0,0.75 0,1.25"}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"the upper part of the block", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", below+"2"), high},
		{"the whole length", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", ""), append(append([]string{}, high...), low...)},
		{"printed whole", sketch.Swap(sketch.Bosom, "fold =", "print = \"whole\"\nfold =") + sketch.Tucked("cf", "1/8", 2, "3/8", below+"2"), high},
		{"not on the fold", sketch.Bib + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\""), nil},
		{"tucks across the fold", sketch.Bosom + sketch.Tucked("hem", "1/2", 1, "3", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text+"\n[block]\n")
			got := drawnAs(tuckSheet(piece, pattern), mark.Cross)
			assert.ElementsMatch(t, c.want, got)
			if len(got) > 0 {
				assert.Subset(t, drawnAs(cuttingSheet(piece, pattern, nil), mark.Cross), got, "they are laid on each other")
			}
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
		{"the right one", sketch.Bib + right + "\n[block]\n", []string{"6.5,-0.5 6.5,13"}, []string{"middle lies 6 1/2 in from the torn side"}},
		{"the left one", sketch.Bib + sketch.Swap(right, "right", "left") + "\n[block]\n", []string{"-6.5,-0.5 -6.5,13"}, []string{"middle lies 6 1/2 in from the torn side"}},
		{"with spare cloth", sketch.Bib + right + "\n[block]\nsides = \"3/4\"\n", []string{"7.25,-0.5 7.25,13"}, []string{"middle lies 7 1/4 in from the torn side"}},
		// 8 11/16 + 1/2 - 1 1/4 = 7 15/16
		{"just near enough", wide("8.6875") + right + "\n[block]\n", []string{"9.188,-0.5 9.188,13"}, []string{"middle lies 9 3/16 in from the torn side"}},
		{"too far away", wide("8.8125") + right + "\n[block]\n", nil, nil},
		{"on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "") + "\n[block]\n", nil, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			m := tuckSheet(piece, pattern)
			var side, note []string
			for _, one := range m.Marks {
				if one.Name == "side edge of the block" {
					assert.Equal(t, mark.BlockEdge, one.Role)
					side = append(side, sketch.Inches(sketch.Ordered(one.Path)))
				}
			}
			for _, one := range m.Notes {
				if strings.Contains(one, "torn side") {
					note = append(note, one)
				}
			}
			assert.Equal(t, c.side, side)
			assert.Equal(t, c.note, note)
		})
	}
}

// How far down the tucks end is told from the torn edge, which lies at 12 1/2 in.
func TestHowFarDownATuckRulerSaysTheTucksEnd(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"level", sketch.Tucked("cf", "1/8", 2, "3/8", below), []string{"the t tucks end 4 7/8 in from the torn edge"}},
		{"stepped", sketch.Tucked("cf", "1/8", 3, "3/8", below+"end = \"stepped\"\nstep = \"1/4\""),
			[]string{"the t tucks end, measured from the torn edge, first to last: 4 7/8 in, 5 1/8 in, 5 3/8 in"}},
		{"follow, where the neck is level", sketch.Tucked("cf", "1/8", 2, "3/8", below+"end = \"follow\""), []string{"the t tucks end 4 7/8 in from the torn edge"}},
		// The two folds of a box pleat end at one height, told once.
		{"box pleats", "[pleat.p]\nbeside = \"cf\"\nkind = \"box\"\ndepth = \"1/8\"\nfirst = \"1/2\"\n" + below, []string{"the p pleats end 4 7/8 in from the torn edge"}},
		{"edge to edge", sketch.Tucked("cf", "1/8", 2, "3/8", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, sketch.Bosom+c.text+"\n[block]\n")
			var got []string
			for _, one := range tuckRuler(piece, pattern).Notes {
				if strings.Contains(one, "from the torn edge") {
					got = append(got, one)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// On the fold a set is told as it is on the whole block.
func TestHowManyTucksATuckSheetCounts(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"one on each side", sketch.Bosom + sketch.Tucked("cf", "1/8", 1, "3/8", ""), "t: 2 tucks, 1 on each side, each 1/8 in wide"},
		{"seven on each side", sketch.Bosom + sketch.Tucked("cf", "1/8", 7, "3/8", ""), "t: 14 tucks, 7 on each side, each 1/8 in wide"},
		{"one on the centre", sketch.Bosom + sketch.Tucked("cf", "1/8", 1, "0", ""), "t: 1 tuck, on the centre, 1/8 in wide"},
		{"on the centre and on each side", sketch.Bosom + sketch.Tucked("cf", "1/8", 7, "0", ""), "t: 13 tucks, 1 on the centre and 6 on each side, each 1/8 in wide"},
		{"not on the fold", sketch.Bib + sketch.Tucked("middle", "1/8", 7, "3/8", "side = \"right\""), "t: 7 tucks, each 1/8 in wide"},
		{"across the fold", sketch.Bosom + sketch.Tucked("hem", "1/2", 2, "3", ""), "t: 2 tucks, each 1/2 in wide"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text+"press = \"away\"\n\n[block]\n")
			notes := tuckSheet(piece, pattern).Notes
			assert.Contains(t, notes, c.want)
		})
	}
}

// The tuck ruler is a strip 1 1/4 in high with one tick for every line, each from its
// lower edge: of a fold line two thirds of its height, of a stitching one third. Three
// touching tucks of 1/4 in from 3/4 in on have their folds 3/4 in apart (3w: Kinne &
// Cooley, Clothing and Health, 1916, p. 99), and stitching 1/4 in before and behind each.
// The strip lies where the centre line has its upper end, at 10 in.
func TestTicksOfTheTuckRuler(t *testing.T) {
	piece, pattern := blockOf(t, sketch.Bosom+sketch.Tucked("cf", "1/4", 3, "3/4", "")+"\n[block]\n")
	ruler := tuckRuler(piece, pattern)
	assert.ElementsMatch(t, []string{
		"0.75,10 0.75,10.833", "1.5,10 1.5,10.833", "2.25,10 2.25,10.833",
	}, drawnAs(ruler, mark.TuckFold), "one tick for each fold line")
	assert.ElementsMatch(t, []string{
		"0.5,10 0.5,10.417", "1,10 1,10.417", "1.25,10 1.25,10.417",
		"1.75,10 1.75,10.417", "2,10 2,10.417", "2.5,10 2.5,10.417",
	}, drawnAs(ruler, mark.TuckStitch), "one tick for each stitching")
}
