package folded_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/figures"
	"tuckmark/marking/folded"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// marksOf writes the lines of one role, in inches, each behind its key.
func marksOf(marks []mark.Mark, role mark.Role) []string {
	var all []string
	for _, m := range marks {
		if m.Role == role {
			all = append(all, strings.TrimSpace(m.Key+" "+sketch.Inches(m.Path)))
		}
	}
	return all
}

// Fold k of a set lies at f on the flat cloth; finished it is stitched at f - w - 2wk, and its
// crease lies w farther out, or nearer. A pleat's crease lies where it is laid to. The flap
// lies to the left of its edge.
func TestFoldsLieWhereTheyLieSewn(t *testing.T) {
	for _, c := range []struct {
		name, rows       string
		stitched, crease []string
	}{
		{"two tucks of 1/4 in pressed away", sketch.Rows(`tuck a centre 1/4 2 1 | spacing = 1` + "\n" + `press = "away"`),
			[]string{"a 1 tuck stitching 0.75,0 0.75,10", "a 2 tuck stitching 1.25,0 1.25,10"},
			[]string{"a 1 tuck fold 1,0 1,10", "a 2 tuck fold 1.5,0 1.5,10"}},
		{"the same pressed toward", sketch.Rows(`tuck a centre 1/4 2 1 | spacing = 1` + "\n" + `press = "toward"`),
			[]string{"a 1 tuck stitching 0.75,0 0.75,10", "a 2 tuck stitching 1.25,0 1.25,10"},
			[]string{"a 1 tuck fold 0.5,10 0.5,0", "a 2 tuck fold 1,10 1,0"}},
		{"so near that each covers the next stitching", sketch.Rows(`tuck a centre 1/2 2 2 | spacing = 1.25` + "\n" + `press = "away"`),
			[]string{"a 1 tuck stitching 1.5,0 1.5,10"},
			[]string{"a 2 tuck fold 2.25,0 2.25,10", "a 1 tuck fold 2,0 2,10"}},
		{"a knife pleat laid away", sketch.Rows(`pleat a centre 1 1 3 | press = "away"`), nil, []string{"a 1 pleat fold 3,0 3,10"}},
		{"a knife pleat laid toward", sketch.Rows(`pleat a centre 1 1 4 | press = "toward"`), nil, []string{"a 1 pleat fold 2,10 2,0"}},
		{"a box pleat", sketch.Rows(`pleat a centre 1 1 5 | kind = "box"`), nil, []string{"a 1 pleat fold 2,10 2,0", "a 1 pleat fold 4,0 4,10"}},
		{"an inverted pleat", sketch.Rows(`pleat a centre 1 1 5 | kind = "inverted"`), nil, []string{"a 1 pleat fold 3,0 3,10", "a 1 pleat fold 3,10 3,0"}},
		{"tucks that end 4 in down", sketch.Rows(`tuck a centre 1/4 1 1 | press = "away"`) + "below = \"top\"\nlength = 4\n",
			[]string{"a 1 tuck stitching 0.75,6 0.75,10"}, []string{"a 1 tuck fold 1,6 1,10"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := front(t, mark.OneHalf, square+c.rows)
			role := mark.TuckFold
			if c.stitched == nil {
				role = mark.PleatFold
			}
			assert.ElementsMatch(t, c.stitched, marksOf(m.Marks, mark.TuckStitch), "stitching")
			assert.ElementsMatch(t, c.crease, marksOf(m.Marks, role), "creases")
		})
	}
}

// Of a piece that is drawn flat what lies under a flap, or in it, is hidden.
func TestWhatIsUnderAFlapIsHidden(t *testing.T) {
	flat := strings.Replace(square, "finished", "flat", 1)
	tuck := sketch.Rows(`tuck a centre 1 1 4 | press = "away"`) // 3 to 5, stitched at 3, over 3 to 4
	for _, c := range []struct {
		name, line string
		want       []string
	}{
		{"a line across the tuck", "points = [[1, 5], [9, 5]]", []string{"x fold line 1,5 3,5", "x fold line 3,5 4,5", "x fold line 4,5 7,5"}},
		{"one along it, on the upper side of the flap", "points = [[3.5, 1], [3.5, 9]]", []string{"x fold line 3.5,1 3.5,9"}},
		{"one on its under side", "points = [[4.5, 1], [4.5, 9]]", nil},
		{"one under the flap", "points = [[5.5, 1], [5.5, 9]]", nil},
		{"one beyond", "points = [[6.5, 1], [6.5, 9]]", []string{"x fold line 4.5,1 4.5,9"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := front(t, mark.OneHalf, flat+tuck+"\n[line.\"x fold line\"]\n"+c.line+"\n")
			assert.ElementsMatch(t, c.want, marksOf(m.Marks, mark.Fold))
		})
	}
}

// The flap lies to the left of its free edge, two layers more than on the cloth it lies on.
func TestEdgesOfFlapsHaveTheFlapToTheirLeft(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := randomField(t)
		p := f.piece(t, "finished")
		m := folded.Of(p, length.Millimetre, mark.BothHalves)
		for _, one := range m.Marks {
			if one.Role != mark.TuckFold && one.Role != mark.PleatFold {
				continue
			}
			middle, along := one.Path.At(one.Path.Length() / 2)
			left, right := middle.Add(along.Left().Mul(0.01)), middle.Sub(along.Left().Mul(0.01))
			outline := plane.NewTree(m.Outline)
			if outline.Holds(left) && outline.Holds(right) && !crowded(m, middle) {
				assert.Equal(t, 2, layersAt(m, left)-layersAt(m, right), "layers left and right of %s", one.Key)
			}
		}
		for _, s := range m.Shadows {
			assert.Positive(t, s.Area(), "a shadow goes round its area")
		}
	})
}

// crowded reports whether other layers begin or end at a place than the two that meet in a crease.
func crowded(m mark.Pressed, middle plane.Point) bool {
	near := 0
	for _, l := range m.Layers {
		if plane.NewTree(l.Path).Nearer(middle, 0.02) {
			near++
		}
	}
	return near > 2
}

// Soft lines are drawn where a fold ends on the piece, below its end, inside the outline, and the
// note says how much cloth is let go there.
func TestClothThatIsLetGoIsHintedAt(t *testing.T) {
	rows := sketch.Rows(`tuck a centre 1/4 3 1 | press = "away"`)
	m := front(t, mark.OneHalf, square+rows)
	assert.Empty(t, m.Fullness, "of tucks from edge to edge")
	assert.Empty(t, m.Notes)
	m = front(t, mark.OneHalf, square+rows+"below = \"top\"\nlength = 4\n")
	require.Len(t, m.Fullness, 9, "three lines for each tuck")
	for _, rows := range []string{
		sketch.Rows(`tuck a centre 1/4 3 1 | press = "toward"`),
		sketch.Rows(`pleat a centre 1/4 3 1 | kind = "knife"`),
		sketch.Rows(`pleat a centre 1/4 3 1 | kind = "inverted"`),
	} {
		other := front(t, mark.OneHalf, square+rows+"below = \"top\"\nlength = 4\n")
		require.Len(t, other.Fullness, 9, "three lines for each fold of %s", rows)
		for i, soft := range other.Fullness {
			assert.Len(t, soft, 3, "line %d is whole", i)
		}
	}
	for _, soft := range m.Fullness {
		box := soft.Bounds()
		assert.Less(t, box.Max.Y, 6*25.4, "below the end line")
		assert.Greater(t, box.Min.Y, 0.0, "on the piece")
	}
	assert.Equal(t, []string{"beyond the ends of its tucks the cloth is let go: there it is 1 1/2 in wider than it is drawn"}, m.Notes)
}

// The note names every kind of fold that ends where it tells how much cloth is let go, and no other.
func TestNoteNamesTheFoldsThatEndThere(t *testing.T) {
	tucks := sketch.Rows(`tuck a centre 1/4 3 1 | press = "away"`)
	pleats := sketch.Rows(`pleat b centre 1/4 2 4 | kind = "knife"; press = "away"`)
	ending := func(edge string) string { return "below = \"" + edge + "\"\nlength = 4\n" }
	for name, c := range map[string]struct{ rows, folds, wider string }{
		"tucks, then pleats":            {tucks + ending("top") + pleats + ending("top"), "tucks and pleats", "2 1/2 in"},
		"pleats, then tucks":            {pleats + ending("top") + tucks + ending("top"), "tucks and pleats", "2 1/2 in"},
		"pleats from edge to edge":      {tucks + ending("top") + pleats, "tucks", "1 1/2 in"},
		"pleats that end the other way": {tucks + ending("top") + pleats + ending("hem"), "tucks", "1 1/2 in"},
	} {
		t.Run(name, func(t *testing.T) {
			m := front(t, mark.OneHalf, square+c.rows)
			assert.Equal(t, []string{"beyond the ends of its " + c.folds + " the cloth is let go: there it is " + c.wider + " wider than it is drawn"}, m.Notes)
		})
	}
}

// A piece whose folds share cloth has no one shape: it is drawn as it lies flat, and a note says so.
func TestFoldsWithoutOneShape(t *testing.T) {
	p, pattern := made.Front(t, "0", strings.Replace(square, "finished", "flat", 1)+
		"\n[tuck.a]\nbeside = \"centre\"\nwidth = 1\ncount = 1\nfirst = 3\nbelow = \"top\"\nlength = 3\n"+
		"\n[tuck.b]\nbeside = \"centre\"\nwidth = 1\ncount = 1\nfirst = 3.5\nbelow = \"hem\"\nlength = 3\n")
	require.Nil(t, p.FinishedOutline)
	m := folded.Of(p, pattern.Unit, mark.OneHalf)
	assert.Equal(t, p.Outline, m.Outline)
	assert.Len(t, m.Layers, 1)
	require.Len(t, m.Notes, 1)
	assert.Contains(t, m.Notes[0], "drawn flat")
}

// A pleat in an edge is laid over on the piece as it lies: three layers of the depth over its length, beside the
// placement line, on which its crease lies.
func TestPleatInAnEdge(t *testing.T) {
	m := front(t, mark.OneHalf, strings.Replace(square, "finished", "flat", 1)+
		"\n[pleat.dart]\nedge = \"top\"\nfrom = \"centre\"\nat = 3\ndepth = \"1/2\"\ntoward = \"right\"\nlength = 2\n")
	assert.Equal(t, []string{"dart pleat fold 4,8 4,10"}, marksOf(m.Marks, mark.PleatFold), "the flap lies to the left of its crease")
	assert.Equal(t, []int{1, 3}, m.Counts)
	assert.InDelta(t, (100+2*0.5*2)*25.4*25.4, areaOf(m), 1e-3, "the area of all layers")
	assert.Equal(t, 3, layersAt(m, plane.Point{X: 3.75 * 25.4, Y: 9 * 25.4}), "beside the crease")
	assert.Equal(t, 1, layersAt(m, plane.Point{X: 4.1 * 25.4, Y: 9 * 25.4}), "beyond it")
	assert.Len(t, m.Notes, 1)
}

// A field of 10 in with allowances of 1/2 in has 9 by 9 in inside its seams; drawn finished, 6 tucks of
// 1/4 in make that 3 in wider where it lies flat.
func TestSeamsOfTheFlatPiece(t *testing.T) {
	for _, c := range []struct {
		name, drawn, rows string
		area              float64
	}{
		{"finished, from edge to edge", "finished", sketch.Rows(`tuck a centre 1/4 6 1 | gap = "1/8"`), 9*9 + 3*9},
		{"both ways", "finished", sketch.Rows(`tuck a centre 1/4 6 1 | gap = "1/8"`, `tuck b hem 1/2 1 2`), (9 + 3) * (9 + 1)},
		{"flat", "flat", sketch.Rows(`tuck a centre 1/4 6 1 | gap = "1/8"`), 9 * 9},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, pattern := made.Front(t, "0.5", strings.Replace(square, "finished", c.drawn, 1)+c.rows)
			m := folded.Of(p, pattern.Unit, mark.OneHalf)
			assert.InDelta(t, c.area, m.Flat.Sewn.Area()/25.4/25.4, 1e-6, "square inches inside the seams, flat")
			p, pattern = made.Front(t, "0.5", "fold = \"centre\"\n"+strings.Replace(square, "finished", c.drawn, 1)+c.rows)
			half, whole := folded.Of(p, pattern.Unit, mark.OneHalf), folded.Of(p, pattern.Unit, mark.BothHalves)
			assert.InDelta(t, 2*half.Flat.Sewn.Area(), whole.Flat.Sewn.Area(), 1e-3, "both halves")
			assert.InDelta(t, 2*half.Sewn.Area(), whole.Sewn.Area(), 1e-3, "both halves, folded")
		})
	}
}

// A tuck on the centre is one tuck of the whole piece, and its flap lies to one side.
func TestTuckOnTheCentre(t *testing.T) {
	p, pattern := made.Front(t, "0", "fold = \"centre\"\n"+square+sketch.Rows(`tuck a centre 1/2 1 0 | press = "away"`))
	m := folded.Of(p, pattern.Unit, mark.BothHalves)
	assert.Equal(t, []string{"a 1 tuck stitching 0,0 0,10"}, marksOf(m.Marks, mark.TuckStitch))
	assert.Equal(t, []string{"a 1 tuck fold 0.5,0 0.5,10"}, marksOf(m.Marks, mark.TuckFold))
	assert.Equal(t, []string{"centre 0,10 0,0"}, marksOf(m.Marks, mark.Centre))
	half := folded.Of(p, pattern.Unit, mark.OneHalf)
	assert.Equal(t, []string{"centre 0,10 0,0"}, marksOf(half.Marks, mark.FoldEdge))
	assert.Equal(t, 3, layersAt(half, plane.Point{X: 5, Y: 50}))
}

// A piece from a tucked block looks as one that is cut flat, and its block lies beside it.
func TestPieceFromABlock(t *testing.T) {
	rows := sketch.Rows(`tuck a centre 1/4 3 1 | press = "away"`)
	flat := front(t, mark.BothHalves, "fold = \"centre\"\n"+square+rows)
	cut := front(t, mark.BothHalves, "fold = \"centre\"\n"+square+rows+"\n[block]\nends = 1\nsides = 2\n")
	assert.Equal(t, flat.Outline, cut.Outline)
	assert.Equal(t, flat.Counts, cut.Counts)
	assert.InDelta(t, areaOf(flat), areaOf(cut), 1e-3, "the area of all layers")
	assert.ElementsMatch(t, marksOf(flat.Marks, mark.TuckFold), marksOf(cut.Marks, mark.TuckFold))
	box := cut.Flat.Outline.Bounds()
	assert.InDelta(t, 20+3+4, box.Width()/25.4, 1e-9, "the block: the piece, its take-ups, and what is spare")
	assert.InDelta(t, 12, box.Height()/25.4, 1e-9)
	assert.Len(t, marksOf(cut.Flat.Marks, mark.TuckFold), 6)
	assert.Len(t, marksOf(cut.Flat.Marks, mark.BlockEdge), 6, "four sides, two of them in halves")
}

// A piece on the fold whose folds run at a slant to that is not opened out: a note says so.
func TestFoldsAtASlantToTheFold(t *testing.T) {
	p, pattern := made.Front(t, "0", "fold = \"centre\"\n"+strings.Replace(square, "finished", "flat", 1)+
		"\n[line.slant]\npoints = [[0, 3], [10, 7]]\n\n[tuck.a]\nbeside = \"slant\"\nside = \"top\"\nwidth = \"1/4\"\ncount = 2\nfirst = 1\n")
	m := folded.Of(p, pattern.Unit, mark.BothHalves)
	assert.Equal(t, mark.OneHalf, m.Halves)
	assert.Equal(t, []int{1, 3}, m.Counts)
	assert.InDelta(t, 100*25.4*25.4, areaOf(m), 1e-3, "the area of all layers")
	require.Len(t, m.Notes, 1)
	assert.Contains(t, m.Notes[0], "slant")
}

// Every line that is drawn is told of, where somebody points at it, as a line of its piece.
func TestEveryLineIsTold(t *testing.T) {
	for _, name := range []string{"pinafore.toml", "shirt.toml", "nightgown.toml", "smock.toml", "underwaist.toml"} {
		pattern := made.Example(t, name)
		told := map[mark.At]bool{}
		for _, one := range figures.Told(pattern, sheet.Of(pattern), figures.OwnUnit) {
			told[one.At] = true
		}
		for _, m := range folded.All(pattern, mark.BothHalves) {
			for _, one := range slices.Concat(m.Marks, m.Flat.Marks) {
				if at := (mark.At{Piece: m.Key, Line: one.Called()}); one.Called() != "" {
					assert.True(t, told[at], "%s: %v", name, at)
				}
			}
		}
	}
}

// The layers of every example lie in its outline, and each piece has its lines.
func TestExamples(t *testing.T) {
	for _, name := range []string{"pinafore.toml", "shirt.toml", "nightgown.toml", "smock.toml", "underwaist.toml"} {
		pattern := made.Example(t, name)
		for _, halves := range []mark.Halves{mark.OneHalf, mark.BothHalves} {
			all := folded.All(pattern, halves)
			require.Len(t, all, len(pattern.Pieces))
			for i, m := range all {
				p := &pattern.Pieces[i]
				assert.Equal(t, p.Key, m.Key)
				assert.Equal(t, len(p.Folded) > 0 || len(p.EdgePleats) > 0, len(m.Counts) > 1, "%s %s: more than one layer", name, p.Key)
				assert.NotEmpty(t, m.Flat.Outline)
				cut := marksOf(m.Marks, mark.Cut)
				for _, e := range p.Edges {
					has := slices.ContainsFunc(cut, func(s string) bool { return strings.HasPrefix(s, e.Key) })
					assert.Equal(t, !e.OnFold, has, "%s %s: the cut edge %s", name, p.Key, e.Key)
				}
				box := m.Outline.Bounds().Grown(60)
				for _, l := range m.Layers {
					for _, q := range l.Path {
						require.True(t, box.Holds(q) && !math.IsNaN(q.X), "%s %s: %v", name, p.Key, q)
					}
				}
			}
		}
	}
}

// Tucks that all run different ways are folded one after the other, and the flap of each lies on
// the cloth, however many there are: its crease and its stitching are seen whole.
func TestManyTucksAtManyAngles(t *testing.T) {
	const count = 30
	text := strings.Replace(square, "finished", "flat", 1)
	for i := range count {
		text += fmt.Sprintf("\n[line.l%d]\npoints = [[0, %.3f], [10, %.3f]]\n", i, 0.3+0.3*float64(i), 0.2+0.307*float64(i))
	}
	for i := range count {
		text += fmt.Sprintf("\n[tuck.t%d]\nbeside = \"l%d\"\nside = \"top\"\nwidth = \"1/16\"\ncount = 1\nfirst = \"1/8\"\n", i, i)
	}
	p, pattern := made.Front(t, "0", text)
	require.Len(t, p.Folded, count, "no two of them run the same way")
	m := folded.Of(p, pattern.Unit, mark.OneHalf)
	for _, role := range []mark.Role{mark.TuckFold, mark.TuckStitch} {
		seen := map[string]float64{}
		for _, one := range m.Marks {
			if one.Role == role {
				seen[one.Key] += one.Path.Length()
			}
		}
		assert.Len(t, seen, count, "a %s of each tuck", role)
		for key, long := range seen {
			assert.Greater(t, long, 9.9*25.4, "%s, all the way across 10 in", key)
		}
	}
}
