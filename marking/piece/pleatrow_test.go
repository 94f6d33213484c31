package piece_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A strip 9 1/2 in long with pleats of 1/2 in, folds at 1, 2 1/2, 4, 5 1/2, 7 and
// 8 1/2: six pleats take 6 in and leave 3 1/2 in (Hapgood, School Needlework, about
// 1892, Plaiting; sums derived). Drawn flat it is finished 3 1/2 in long, drawn
// finished 3 1/2 in long it is cut 9 1/2 in.
func TestPublishedStrip(t *testing.T) {
	for _, c := range []struct{ drawn, long string }{{"flat", "9.5"}, {"finished", "3.5"}} {
		t.Run(c.drawn, func(t *testing.T) {
			piece := sketched(t, "0", strings.ReplaceAll("drawn = \""+c.drawn+"\"\nstart: 0,4 0,0\nbottom: 0,0 L,0\nend: L,0 L,4\nedge: L,4 0,4\n---\n", "L", c.long)+
				sketch.Rows(`pleat side start 1/2 6 1 | press = "toward"`))
			assert.Equal(t, "1 2.5 4 5.5 7 8.5", placesOf(piece, mark.PleatFold))
			assert.Equal(t, "1.5 3 4.5 6 7.5", placesOf(piece, mark.Placement), "each is laid 1 in back, the first to the end of the strip")
			assert.InDelta(t, 6, piece.PleatRows[0].Taken()/25.4, 1e-9, "taken up")
			assert.InDelta(t, 9.5, piece.Flat.Outline.Path.Bounds().Width()/25.4, 1e-6, "flat")
			assert.InDelta(t, 3.5, piece.FinishedOutline.Bounds().Width()/25.4, 1e-6, "pleated")
			assert.InDelta(t, 3.5, piece.Edges[piece.EdgeNumber("edge")].FinishedLength/25.4, 1e-6, "its edge")
		})
	}
}

// placesOf lists where the lines of a role lie across a piece whose folds run up it,
// in inches.
func placesOf(p *piece.Piece, role mark.Role) string { return across(p.FoldMarks(), role) }

// across lists where the lines of a role begin across a piece, in inches.
func across(marks []mark.Mark, role mark.Role) string {
	var all []string
	for _, m := range marks {
		if m.Role == role {
			all = append(all, sketch.Number(m.Path[0].X/25.4))
		}
	}
	return strings.Join(all, " ")
}

// Touching side pleats use three times their finished width (Hapgood).
func TestTouchingPleatsTakeThreeTimes(t *testing.T) {
	for count := 1; count <= 5; count++ {
		// The pleats cover the strip: n depths, finished.
		piece := sketched(t, "0", fmt.Sprintf("drawn = \"finished\"\nleft: 0,0 0,10\ntop: 0,10 %d,10\nright: %d,10 %d,0\nhem: %d,0 0,0\n---\n", count, count, count, count)+
			sketch.Rows(fmt.Sprintf(`pleat a left 1 %d 2 | press = "toward"`, count)))
		assert.InDelta(t, 3*count, piece.Flat.Outline.Path.Bounds().Width()/25.4, 1e-6, "%d pleats 1 in deep", count)
	}
}

// A skirt of which half is 44 in wide, with a half waist of 14 in, hips of 20 in and
// a hem of 27 1/2 in: to pleat are 30, 24 and 16 1/2 in (Conover, A Complete Course
// in Dressmaking, vol. 5, 1922, pp. 63-69). The numbers of pleats are ours.
func TestSkirtToPleat(t *testing.T) {
	for _, c := range []struct {
		name, row        string
		toPleat, pleated float64
	}{
		{"waist", `pleat a left 1 15 2 | press = "toward"; spacing = 2.8`, 30, 14},
		{"hips", `pleat a left 1 12 2 | press = "toward"; gap = 0.25`, 24, 20},
		{"hem", `pleat a left 3/4 11 2 | press = "toward"; gap = 1`, 16.5, 27.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", "left: 0,0 0,10\ntop: 0,10 44,10\nright: 44,10 44,0\nhem: 44,0 0,0\n---\n"+sketch.Rows(c.row))
			assert.InDelta(t, c.toPleat, piece.PleatRows[0].Taken()/25.4, 1e-9)
			assert.InDelta(t, c.pleated, piece.Edges[piece.EdgeNumber("top")].FinishedLength/25.4, 1e-6)
		})
	}
}

// A box pleat is two side pleats turned from each other (Hapgood, School
// Needlework, about 1892, Plaiting); an inverted one takes 1w on one side of a seam
// and 3w on the other, 4w together (Baldt, Clothing for Women, 1916, Outer
// Garments; the sum is derived).
func TestKindsOfPleats(t *testing.T) {
	for _, c := range []struct {
		name, piece, row                string
		folds, placements, arrows, edge string
		takeUp                          float64
	}{
		{"a box pleat", level, `pleat a left 1 1 5 | kind = "box"`,
			"4 6", "2 8", "4 2 | 6 8", "hem 0,0 14,0", 4},
		{"two side pleats turned from each other are the same", level, `pleat a left 1 1 4 | press = "toward"` + "\x00" + `pleat b left 1 1 6 | press = "away"`,
			"4 6", "2 8", "4 2 | 6 8", "hem 0,0 14,0", 4},
		{"an inverted pleat, whose folds meet", level, `pleat a left 1 1 5 | kind = "inverted"`,
			"3 7", "5", "3 5 | 7 5", "hem 0,0 14,0", 4},
		{"box pleats that touch", level, `pleat a left 1/2 2 3 | kind = "box"`,
			"2.5 3.5 5.5 6.5", "1.5 4.5 4.5 7.5", "2.5 1.5 | 3.5 4.5 | 5.5 4.5 | 6.5 7.5", "hem 0,0 14,0", 4},
		{"a box pleat on the centre: half of it", sketch.Slope, `pleat a centre 1 1 0 | kind = "box"`,
			"1", "3", "1 3", "neck 6,12 2,10 1,10.5 0,10", 4},
		{"an inverted pleat on the centre, laid to it", sketch.Slope, `pleat a centre 1 1 0 | kind = "inverted"`,
			"2", "", "2 0", "neck 6,12 2,10 1,10.5 0,10", 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", c.piece+sketch.Rows(strings.Split(c.row, "\x00")...))
			assert.Equal(t, c.folds, placesOf(piece, mark.PleatFold), "fold lines")
			assert.Equal(t, c.placements, placesOf(piece, mark.Placement), "placement lines")
			var arrows []string
			for _, m := range piece.FoldMarks() {
				if m.Role == mark.Arrow {
					require.Len(t, m.Path, 2)
					arrows = append(arrows, sketch.Number(m.Path[0].X/25.4)+" "+sketch.Number(m.Path[1].X/25.4))
				}
			}
			sum := 0.0
			for _, p := range piece.PleatRows {
				sum += p.Taken() / 25.4
			}
			assert.Equal(t, c.arrows, strings.Join(arrows, " | "), "from fold to placement")
			key, want, _ := strings.Cut(c.edge, " ")
			assert.Equal(t, want, flatEdges(piece)[key], "the flat edge %q", key)
			assert.InDelta(t, c.takeUp, sum, 1e-9, "take-up of the whole piece")
		})
	}
}

// Lengths in cm whose sums are off by rounding: the first box pleat touches the
// edge and does not lie across it.
func TestPleatThatTouchesTheFold(t *testing.T) {
	_, err := made.Pattern("unit = \"mm\"\nallowance = 0\n" + sketch.Front("drawn = \"finished\"\nfold = \"centre\"\ncentre: 0,0 0,200\ntop: 0,200 60,200\nside: 60,200 60,0\nhem: 60,0 0,0\n---\n"+
		sketch.Rows(`pleat a centre 2.22 1 6.66 | kind = "box"`)))
	require.NoError(t, err)
}

func TestMistakesInPleatings(t *testing.T) {
	for _, c := range []struct{ name, piece, row, want string }{
		{"pleats that overlap", level, `pleat a left 1 2 2 | spacing = 1.5`,
			`20: piece.front.pleat.a: the pleats overlap: they lie 1 1/2 in apart, and each takes up 2 in
hint: pleats that just touch lie 3 in apart`},
		{"a box pleat over the fold, not on its middle", sketch.Slope, `pleat a centre 1 1 1 | kind = "box"`,
			`21: piece.front.pleat.a: the first pleat crosses "centre": it takes up the cloth from 2 in before it
hint: give first at least 3 in`},
		{"an inverted pleat on a line", level, `pleat a middle 1 1 0 | side = "left"; kind = "inverted"`,
			`20: piece.front.pleat.a: the first pleat crosses "middle": it takes up the cloth from 2 in before it
hint: give first at least 2 in, or measure it from an edge`},
		{"a pleat laid off the piece", level, `pleat a left 1 1 0 | press = "away"`,
			`20: piece.front.pleat.a: the pleat hangs over the edge of the piece: finished, it is 1 in wide, and from its placement line to the edge there is nothing
hint: turn it the other way, or move it farther in`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(c.piece+sketch.Rows(c.row)))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
