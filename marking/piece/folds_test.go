package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// level is a piece drawn finished, 10 in square, with a line down its middle.
const level = `drawn = "finished"
left: 0,0 0,10
top: 0,10 10,10
right: 10,10 10,0
hem: 10,0 0,0
---

[line.middle]
points = [[5, 0], [5, 10]]
`

// flatEdges writes the flat outline of a piece, edge by edge.
func flatEdges(p *piece.Piece) map[string]string {
	edges := map[string]string{}
	for _, run := range p.Flat.Outline.Runs() {
		key := p.Edges[run.Edge].Key
		if edges[key] != "" {
			edges[key] += " | "
		}
		edges[key] += sketch.Inches(run.Path)
	}
	return edges
}

// flatMarks writes the marks of a piece on the flat cloth that have one role: each
// with its name, where it has one.
func flatMarks(p *piece.Piece, role mark.Role) []string { return marksOf(p.Flat, role) }

// drawnMarks writes those of a piece as it is drawn.
func drawnMarks(p *piece.Piece, role mark.Role) []string { return marksOf(p.AsDrawn, role) }

func marksOf(s *piece.Shape, role mark.Role) []string {
	var all []string
	for _, m := range s.Marks {
		if m.Role == role {
			all = append(all, strings.TrimSpace(m.Name+" "+sketch.Inches(m.Path)))
		}
	}
	return all
}

// seams lists where the stitching of all tucks lies when the piece is finished, in
// inches from their base.
func seams(p *piece.Piece) string {
	var all []string
	for _, t := range p.TuckRows {
		for _, one := range t.Folds {
			all = append(all, sketch.Number(one.Stitching/25.4))
		}
	}
	return strings.Join(all, " ")
}

// A strip whose raw edge lies at x = 0, drawn flat and drawn finished: its tucks
// have the same places. Finished, a tuck k of a set is stitched at f - w - 2wk.
func TestFinishedPlaces(t *testing.T) {
	for _, c := range []struct {
		name, tucks, folds, seams string
		takeUp                    float64
	}{
		// Klickmann (ed.), The Little Girl's Sewing Book, about 1915, pp. 17-19:
		// tucks of 1/4 in, gaps of 1/2, 2 1/2 and 1/4 in; derived.
		{"tucks of 1/4 in with three gaps", sketch.Rows(`tuck a raw 1/4 2 3.5 | gap = 0.5`, `tuck b raw 1/4 2 8 | gap = 0.25`),
			"3.5 4.75 8 9", "3.25 4 6.75 7.25", 2},
		// Krolik, Hand Sewing Lessons, about 1901, Model 6; derived.
		{"touching tucks of 1/2 in", sketch.Rows(`tuck a raw 1/2 3 1.5`), "1.5 3 4.5", "1 1.5 2", 3},
		// McGlauflin, Handicraft for Girls, 1910, pp. 51-52; derived.
		{"a hem tuck and three of 1/8 in", sketch.Rows(`tuck hem raw 1 1 2.25`, `tuck three raw 1/8 3 3.625 | gap = "1/8"`),
			"2.25 3.625 4.125 4.625", "1.25 1.5 1.75 2", 2.75},
		// Kinne and Cooley, Clothing and Health, 1916, p. 101, problem 2; derived.
		{"three of 1/2 in with 1/2 in spaces", sketch.Rows(`tuck a raw 1/2 3 3 | gap = "1/2"`), "3 5 7", "2.5 3.5 4.5", 3},
	} {
		for _, drawn := range []string{"flat", "finished"} {
			t.Run(c.name+", drawn "+drawn, func(t *testing.T) {
				long := 30.0
				if drawn == "finished" {
					long -= c.takeUp
				}
				end := sketch.Number(long)
				piece := sketched(t, "0", "drawn = \""+drawn+"\"\nraw: 0,10 0,0\nbottom: 0,0 "+end+",0\nfar: "+end+",0 "+end+",10\ntop: "+end+",10 0,10\n---\n"+c.tucks)
				folds, _ := creases(piece)
				assert.Equal(t, c.folds, folds, "flat fold lines")
				assert.Equal(t, c.seams, seams(piece), "finished stitchings")
				assert.InDelta(t, 30, piece.Flat.Outline.Path.Bounds().Width()/25.4, 1e-6, "the flat strip")
				assert.InDelta(t, 30-c.takeUp, piece.FinishedOutline.Bounds().Width()/25.4, 1e-6, "the finished strip")
				assert.InDelta(t, (30-c.takeUp)*25.4, piece.Edges[piece.EdgeNumber("top")].FinishedLength, 1e-6, "its edge")
			})
		}
	}
}

// Where a fold meets a sloping edge, the edge is cut as though through the folded
// cloth. Worked by hand: a crease is as high as the finished edge is where the
// crease comes to lie.
func TestTrueing(t *testing.T) {
	for _, c := range []struct{ name, row, edge, want string }{
		// Stitched at 7/8 in: the crease lies at 1 in or at 3/4 in.
		{"a tuck on a sloping neck, pressed away", `tuck a centre 1/8 1 1 | press = "away"`, "neck",
			"4.25,12.4 1.125,10.525 1,10.6 0,10"},
		{"the same, pressed toward the centre", `tuck a centre 1/8 1 1 | press = "toward"`, "neck",
			"4.25,12.4 1,10.45 0.875,10.525 0,10"},
		// Laid away from the centre, the fold at 6 in goes to 8 in; the cloth
		// beneath it turns at 7 in, which comes to lie at 5 in.
		{"a knife pleat on a steep shoulder, laid away", `pleat a centre 1 1 6 | press = "away"`, "shoulder",
			"10,9 7,11.55 6,10.7 4,12.4"},
		{"the same, laid toward the centre", `pleat a centre 1 1 8 | press = "toward"`, "shoulder",
			"10,9 8,10.7 7,9.85 4,12.4"},
		// A hem square to the folds stays straight.
		{"a hem", `tuck a centre 1/8 1 1 | press = "away"`, "hem", "0,0 8.25,0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			// The neck rises by 6 to 10, the shoulder falls by 17 to 20.
			steep := strings.ReplaceAll(sketch.Slope, "4,12", "4,12.4")
			assert.Equal(t, c.want, flatEdges(sketched(t, "0", steep+sketch.Rows(c.row)))[c.edge])
		})
	}
}

// A knife pleat of 1 in is folded at 4 in and laid to 2 in, where it covers the
// cloth from 2 to 3 in. A line comes to lie on every layer that it is sewn or cut
// through; the longest part keeps its name.
func TestLinesAreCarried(t *testing.T) {
	pleat := sketch.Rows(`pleat a left 1 1 4 | press = "toward"`)
	for _, c := range []struct {
		name, line string
		role       mark.Role
		want       []string
	}{
		{"a line across the pleat", `[line.x]` + "\npoints = [[1, 5], [9, 5]]", mark.Fold, []string{"middle 7,0 7,10", "x 1,5 11,5"}},
		{"a slanted line, which turns with the cloth", `[line.x]` + "\npoints = [[1, 2], [9, 6]]", mark.Fold, []string{"middle 7,0 7,10", "x 1,2 3,3 4,2.5 11,6"}},
		{"a line that ends on the pleat", `[line.x]` + "\npoints = [[0.5, 5], [2.5, 5]]", mark.Fold,
			[]string{"middle 7,0 7,10", "x 0.5,5 2.5,5", "4.5,5 3.5,5"}},
		{"a line along the pleat, through all three layers", `[line.x]` + "\npoints = [[2.5, 1], [2.5, 3]]", mark.Fold,
			[]string{"middle 7,0 7,10", "x 4.5,1 4.5,3", "2.5,1 2.5,3", "3.5,1 3.5,3"}},
		{"a notch before the pleat", `[notch.n]` + "\nedge = \"top\"\nfrom = \"left\"\nat = 1", mark.Notch, []string{"n 1,10 1,9.803"}},
		{"a notch beyond it", `[notch.n]` + "\nedge = \"top\"\nfrom = \"left\"\nat = 6", mark.Notch, []string{"n 8,10 8,9.803"}},
		{"a pleat in an edge beyond it", `[pleat.edge]` + "\nedge = \"top\"\nfrom = \"left\"\nat = 6\ndepth = 0.5\ntoward = \"left\"\nlength = 2", mark.PleatFold,
			[]string{"fold here 8,10 8,8"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, flatMarks(sketched(t, "0", level+"\n"+c.line+"\n"+pleat), c.role))
		})
	}
}

// The lines of an edge go with it: the hem's folds, and a stitch line that turns as
// its edge does.
func TestEdgeLinesAreCarried(t *testing.T) {
	text := strings.Replace(sketch.Slope, "hem: 8,0 0,0", "hem: 8,0 0,0 | hem = 1; turn = 0.25\n", 1)
	text = strings.Replace(text, "neck: 0,10 4,12", "neck: 0,10 4,12 | allowance = 1", 1)
	piece := sketched(t, "0", text+sketch.Rows(`tuck a centre 1/8 1 1 | press = "away"`))
	assert.Equal(t, []string{"turn 0,0.25 8.25,0.25", "hem fold 0,1.25 8.25,1.25"}, flatMarks(piece, mark.Fold))
	// 1 in square to a slope of a half is 1.118 in straight down; it meets the
	// shoulder at (4.894, 11.329), 1/4 in further out on the flat cloth.
	assert.Equal(t, []string{"neck stitch line, 1 in 5.144,11.329 1.125,9.319 1,9.382 0,8.882"}, flatMarks(piece, mark.Stitch))
}

// each writes the flat places of all lines of a role that tucks and pleats have, in
// inches from left to right or from below, whichever way they are parted.
func each(p *piece.Piece, role mark.Role) string {
	var all []string
	for _, m := range p.FoldMarks() {
		if m.Role == role {
			all = append(all, sketch.Inches(sketch.Ordered(m.Path)))
		}
	}
	return strings.Join(all, " | ")
}

func TestFormsOfRows(t *testing.T) {
	for _, c := range []struct {
		name, piece string
		rows        []string
		folds       string // tucks
		outline     map[string]string
	}{
		{"two sets beside one line, told in either order", level,
			[]string{`tuck b left 1/2 1 4`, `tuck a left 1/4 2 1`},
			"4,0 4,10 | 1,0 1,10 | 1.75,0 1.75,10",
			map[string]string{"hem": "0,0 12,0", "top": "12,10 0,10"}},
		{"on both sides of a line, which stays where it is", level,
			[]string{`tuck a middle 1/4 2 1 | side = "left"`, `tuck b middle 1/4 1 1 | side = "right"`},
			"4,0 4,10 | 3.25,0 3.25,10 | 6,0 6,10",
			map[string]string{"hem": "-1,0 10.5,0"}},
		{"from two parallel lines, each from its own", level,
			[]string{`tuck a left 1/4 2 1`, `tuck b right 1/4 2 1`, `tuck c middle 1/4 1 1 | side = "right"`},
			// The left edge stays; the middle moves by the 1 in before it, the
			// right edge by all 2 1/2 in.
			"1,0 1,10 | 1.75,0 1.75,10 | 11.5,0 11.5,10 | 10.75,0 10.75,10 | 7,0 7,10",
			map[string]string{"hem": "0,0 12.5,0"}},
		{"a tuck on a line", level, []string{`tuck a middle 1/4 2 0 | side = "left"`},
			"5,0 5,10 | 4.25,0 4.25,10",
			map[string]string{"hem": "-0.75,0 10.25,0"}},
		{"a tuck on the centre of a piece on the fold", sketch.Slope, []string{`tuck a centre 1/2 2 0`},
			// Half of the first tuck is on this half: it is stitched at 1/2 in,
			// which lies on the centre when it is finished, and its crease is as
			// high as the neck 1/2 in from there.
			"1.5,0 1.5,10.5",
			map[string]string{"neck": "5.5,12 2,10.25 1.5,10.5 0.5,10 0,10.25", "centre": "0,10.25 0,0"}},
		{"mirrored: a flap that reaches over the centre", sketch.Slope, []string{`tuck a centre 1/2 1 0.75 | press = "toward"`},
			// Stitched at 1/4 in, its crease lies 1/4 in beyond the centre, where
			// the neck is as high as at 1/4 in.
			"0.75,0 0.75,10.125",
			map[string]string{"neck": "5,12 1,10 0.75,10.125 0.5,10 0.25,10.125 0,10"}},
		{"growth tucks, and a yoke across them", sketch.Slope, []string{`tuck yoke centre 1/8 1 1 | below = "neck"; length = 2`, `tuck grow hem 1/2 1 3`},
			// The yoke is 1 in higher for the growth tuck.
			"1,9 1,11.5 | 0,3 8.25,3",
			map[string]string{"hem": "0,0 8.25,0", "side": "8.25,0 8.25,10", "centre": "0,11 0,0"}},
		{"the same in the other order", sketch.Slope, []string{`tuck grow hem 1/2 1 3`, `tuck yoke centre 1/8 1 1 | below = "neck"; length = 2`},
			"0,3 8.25,3 | 1,9 1,11.5",
			map[string]string{"hem": "0,0 8.25,0", "side": "8.25,0 8.25,10", "centre": "0,11 0,0"}},
		// A side that leans as 3 to 4. The tuck takes 1 in square to it, and what
		// lies beyond moves by that: by (-4/5, -3/5).
		{"beside a slanted side", "drawn = \"finished\"\nbottom: 0,0 9,0\nside: 9,0 3,8\ntop: 3,8 0,8\nleft: 0,8 0,0\n---\n", []string{`tuck a side 1/2 1 1`},
			"7.75,0 1.75,8",
			map[string]string{"bottom": "-0.8,-0.6 7.575,-0.6 7.75,0 9,0", "side": "9,0 3,8", "top": "3,8 1.75,8 1.575,7.4 -0.8,7.4"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", c.piece+sketch.Rows(c.rows...))
			assert.Equal(t, c.folds, each(piece, mark.TuckFold), "fold lines")
			got := flatEdges(piece)
			for edge, want := range c.outline {
				assert.Equal(t, want, got[edge], "the flat edge %q", edge)
			}
		})
	}
}

// The tuck on the centre makes the whole piece's count odd: three here, which take
// 3 in of it; half of that is this half's.
func TestTuckOnTheCentreTakesHalf(t *testing.T) {
	piece := sketched(t, "0", sketch.Slope+sketch.Rows(`tuck a centre 1/2 2 0`))
	assert.InDelta(t, 3, tookUp(piece), 1e-9)
	assert.InDelta(t, 9.5, piece.Flat.Outline.Path.Bounds().Width()/25.4, 1e-6)
}

// Rows of a piece drawn flat that lean toward each other are folded one after the
// other: the second goes where the first takes it.
func TestFlatRowsThatLean(t *testing.T) {
	piece := sketched(t, "0", "raw: 0,10 0,0\nbottom: 0,0 10,0\nfar: 10,0 9,10\ntop: 9,10 0,10\n---\n"+
		sketch.Rows(`tuck a raw 1 1 2`, `tuck b far 1 1 2`))
	// The far edge leans by 1 in 10: along the bottom its tuck takes
	// 2 in x sqrt(1.01) = 2.010 in.
	assert.InDelta(t, 10-2-2.010, piece.Edges[piece.EdgeNumber("bottom")].FinishedLength/25.4, 0.0005)
}

func TestMistakesInFolds(t *testing.T) {
	for _, c := range []struct {
		name, piece string
		rows        []string
		want        string
	}{
		{"tucks that leave the piece", level, []string{`tuck a left 1/2 12 2 | gap = 1`},
			`20: piece.front.tuck.a: tuck 7 of 12 leaves the piece: finished, its stitching lies 10 1/2 in from "left", and the piece ends at 10 in
hint: the first 6 fit`},
		{"a tuck that hangs over the edge", level, []string{`tuck a left 1/2 1 3/4 | press = "toward"`},
			`20: piece.front.tuck.a: the tuck hangs over the edge of the piece: finished, it is 1/2 in wide, and from its stitching to the edge there is 1/4 in
hint: turn it the other way, or move it farther in`},
		{"two sets in one place", level, []string{`tuck a left 1/2 3 2`, `tuck b left 1/4 1 3`},
			`27: piece.front.tuck.b: the tuck takes up cloth that tuck 2 of "a" takes up already
hint: move one of the two, or make it smaller`},
		{"two rows on one line", level, []string{`tuck a middle 1/4 1 0 | side = "left"`, `tuck b middle 1/4 2 0 | side = "right"`},
			`27: piece.front.tuck.b: tuck 1 of 2 takes up cloth that the tuck "a" takes up already
hint: move one of the two, or make it smaller`},
		{"pleats over tucks", level, []string{`tuck a left 1/2 3 2`, `pleat b left 1 2 2`},
			`27: piece.front.pleat.b: pleat 1 of 2 takes up cloth that tuck 1 of "a" takes up already
hint: move one of the two, or make it smaller`},
		{"rows from two lines that interleave", level, []string{`tuck a left 1/4 2 6`, `tuck b right 1/4 2 6`},
			`27: piece.front.tuck.b: the tucks of "b" lie between "left" and the tucks of "a", which are measured from there
hint: measure both rows from the same line`},
		{"rows neither parallel nor square", level + "\n[line.slant]\npoints = [[1, 1], [4, 8]]\n", []string{`tuck a left 1/8 2 1/2`, `tuck b slant 1/8 1 1 | side = "right"`},
			`30: piece.front.tuck.b: the tucks of "b" run neither along those of "a" nor square to them, so nothing says how the flat piece lies
hint: draw the piece flat, with the room its folds take, and write drawn = "flat"`},
		{"a slanted row over the fold", sketch.Slope + "\n[line.slant]\npoints = [[1, 3], [6, 4]]\n", []string{`tuck a slant 1/8 1 1 | side = "neck"`},
			`24: piece.front.tuck.a: the folds cross "centre", which lies on the fold of the cloth, at a slant: it would not be straight
hint: run the tucks along the fold or square to it, or draw the whole piece`},
		{"a pleat in an edge under tucks", level + "\n[pleat.in]\nedge = \"top\"\nfrom = \"left\"\nat = 2.5\ndepth = 0.5\ntoward = \"left\"\nlength = 2\n", []string{`tuck a left 1/2 3 2`},
			`20: piece.front.pleat.in: the pleat lies under or across the tucks of "a"
hint: move one of the two`},
		{"a first tuck across a line", level, []string{`tuck a middle 1/2 3 1/4 | side = "left"`},
			`20: piece.front.tuck.a: tuck 1 of 3 lies across "middle", but not on the middle of it
hint: give first 0 to have it on the line, or at least half of what it takes up`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(c.piece+sketch.Rows(c.rows...)))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}

// Tucks one above the other share what lies between them with nothing that has one
// finished place; rows across them are laid all the same.
func TestTucksOneAboveTheOther(t *testing.T) {
	piece := sketched(t, "0", "c: 0,0 0,12\nneck: 0,12 8,12\nside: 8,12 8,0\nhem: 8,0 0,0\n---\n"+`
[tuck.up]
beside = "c"
width = "1/4"
count = 1
first = 1
below = "neck"
length = 2

[tuck.low]
beside = "c"
width = "1/4"
count = 1
first = "1 1/8"
below = "hem"
length = 2

[tuck.grow]
beside = "hem"
width = "1/4"
count = 1
first = 5
`)
	require.Len(t, piece.TuckRows, 3)
	assert.NotEmpty(t, linesOf(piece.TuckRows[2].Folds[0], mark.TuckFold), "the growth tuck is laid")
}

// Of two rows square to each other the later one's end line is carried with its folds:
// it ends where they do.
func TestEndLineOfALaterRow(t *testing.T) {
	piece := sketched(t, "0", "drawn = \"finished\"\nc: 0,0 0,12\nneck: 0,12 8,12\nside: 8,12 8,0\nhem: 8,0 0,0\n---\n"+`
[tuck.v]
beside = "c"
width = "1/4"
count = 4
first = 1

[tuck.h]
beside = "hem"
width = "1/4"
count = 2
first = 4
below = "side"
length = 2
`)
	h := piece.TuckRows[1]
	require.NotNil(t, h.FlatEnds[0])
	for k, one := range h.Folds {
		require.Len(t, linesOf(one, mark.TuckFold), 1)
		assert.Less(t, plane.NewTree(h.FlatEnds[0]).Distance(linesOf(one, mark.TuckFold)[0][0], 99)*plane.NewTree(h.FlatEnds[0]).Distance(linesOf(one, mark.TuckFold)[0][1], 99), 1e-6, "an end of tuck %d lies on the end line", k+1)
	}
	// 8 in and four take-ups of 1/2 in, less 2 in below the side.
	assert.InDelta(t, 8, h.FlatEnds[0][0].X/25.4, 1e-6)
}
