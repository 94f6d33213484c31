package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// sketchedTemplate returns the template of a sketched piece.
func sketchedTemplate(t testing.TB, allowance, text string) (*piece.Piece, mark.Marking) {
	p := sketched(t, allowance, text)
	return p, templateOf(p, &garment.Pattern{Unit: length.Inch}).Marking
}

// square inches of a closed path.
func squareInches(p plane.Path) float64 { return p.Area() / 25.4 / 25.4 }

// The area of a template by arithmetic: what is cut away along a marked edge is a
// strip as wide as its allowance.
func TestTemplateArea(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       float64 // in square inches
	}{
		{"nothing marked", "top: 0,10 8,10\nrest: 8,10 8,0 0,0 0,10", 80},
		{"a straight edge", "top: 0,10 8,10 | marked = true\nrest: 8,10 8,0 0,0 0,10", 8 * 9.5},
		{"an edge on the fold beside it", "fold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 8,10 | marked = true\nrest: 8,10 8,0 0,0", 8 * 9.5},
		{"two that follow each other", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nrest: 8,0 0,0 0,10", 7.5 * 9.5},
		{"two with unequal allowances", "top: 0,10 8,10 | marked = true; allowance = 1\nright: 8,10 8,0 | marked = true\nrest: 8,0 0,0 0,10", 7.5 * 9},
		{"two apart", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0\nfoot: 8,0 0,0 | marked = true\nleft: 0,0 0,10", 8 * 9},
		{"all round", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nfoot: 8,0 0,0 | marked = true\nleft: 0,0 0,10 | marked = true", 7 * 9},
		{"a notch out of the corner", "top: 3,10 8,10\nrest: 8,10 8,0 0,0 0,7\nlow: 0,7 3,7 | marked = true\nup: 3,7 3,10 | marked = true", 8*10 - 3.5*3.5},
		{"a slanted one", "top: 0,6 8,10 | marked = true\nrest: 8,10 8,0 0,0 0,6", 8*8 - 8*0.5/math.Cos(math.Atan2(4, 8))},
		{"a hem, which is not marked", "top: 0,10 8,10 | hem = 1\nrest: 8,10 8,0 0,0 0,10", 80},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, m := sketchedTemplate(t, "0.5", c.text)
			assert.InDelta(t, c.want, squareInches(m.Outline), 1e-6)
			assert.Equal(t, m.Outline[0], m.Outline[len(m.Outline)-1], "closed")
			assert.LessOrEqual(t, m.Outline.Area(), piece.Outline.Area()+1e-9)
		})
	}
	// A round neck of 3 in leaves, with its allowance, a quarter of a disc of 3 1/2 in.
	var neck []string
	for k := range 31 {
		sin, cos := math.Sincos(float64(k) / 30 * math.Pi / 2)
		neck = append(neck, sketch.Number(3*sin)+","+sketch.Number(10-3*cos))
	}
	_, m := sketchedTemplate(t, "0.5", "fold = \"centre\"\ncentre: 0,0 0,7\nneck: "+strings.Join(neck, " ")+" | smooth = true\nshoulder: 3,10 8,10\nside: 8,10 8,0\nhem: 8,0 0,0")
	assert.InDelta(t, 80-math.Pi/4*3.5*3.5, squareInches(m.Outline), 0.01)
}

// A template lies on its piece: along a marked edge no nearer to the cutting line than
// the allowance, and everywhere else on it.
func TestTemplateLines(t *testing.T) {
	pieces := map[string]*piece.Piece{
		"a curve each way": sketched(t, "0.375", "s: 0,0 1,-1 2,0.5 3,-0.8 4,0 | smooth = true\nrest: 4,0 4,6 0,6 0,0"),
		"tucked": sketched(t, "0.375", "fold = \"centre\"\ndrawn = \"finished\"\ncentre: 0,0 0,10\nneck: 0,10 1,10.1 2,11 2.5,12 | smooth = true\nshoulder: 2.5,12 5,11.5\nside: 5,11.5 6,0\nhem: 6,0 0,0\n---\n\n"+
			"[tuck.yoke]\nbeside = \"centre\"\nwidth = \"1/8\"\ncount = 4\nfirst = \"3/8\"\ngap = \"1/8\"\nbelow = \"neck\"\nlength = 3\n"),
	}
	for _, name := range []string{"linden.toml", "underwaist.toml", "hazel.toml", "rowan.toml"} {
		for _, p := range example(t, name).Pieces {
			pieces[name+" "+p.Key] = &p
		}
	}
	marked := 0
	for name, piece := range pieces {
		shape := templateShapeOf(piece)
		cut := plane.NewTree(piece.Flat.Outline.Path)
		_, _, _, crosses := plane.SelfCrossing(plane.NewTree(shape.outline.Path))
		require.False(t, crosses, name)
		require.Len(t, shape.outline.Edges, len(shape.outline.Path)-1, name)
		assert.Empty(t, shape.parted, name)
		assert.Empty(t, shape.crossed, name)
		for _, run := range shape.outline.Runs() {
			e := piece.Edges[run.Edge]
			if !shape.sewn[run.Edge] {
				for i := 1; i < len(run.Path); i++ {
					require.True(t, cut.Nearer(run.Path[i-1].Toward(run.Path[i], 0.5), 1e-6), "%s: %s lies on the cutting line", name, e.Key)
				}
				continue
			}
			marked++
			if len(piece.TuckRows)+len(piece.PleatRows) > 0 && piece.DrawnFinished {
				continue // there the cutting line zigzags over the folds
			}
			edge := plane.NewTree(e.Path)
			for i := 1; i < len(run.Path)-1; i++ {
				require.Greater(t, edge.Distance(run.Path[i], math.Inf(1)), e.Allowance-2e-6, "%s: %s", name, e.Key)
			}
		}
	}
	assert.GreaterOrEqual(t, marked, 8)
}

// What a template says of itself, whole.
func TestTemplateNotes(t *testing.T) {
	const cut = "a template: join its pages, then cut it out with a sharp blade on a cutting mat, the fingers well behind the blade"
	const pins = "count your pins: none may stay in the cloth"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"a neck", "neck: 0,10 4,9 8,10 | smooth = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10",
			[]string{cut, "lay it on the cut piece, right side up, with left, foot and right on the edge and match marks on match marks", "draw along neck: that is the stitch line", pins}},
		{"all round", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nrest: 8,0 0,0 0,10 | marked = true",
			[]string{cut, "lay it on the cut piece, right side up", "fewer than two of its edges are left to lay it by: hold it by its centre or its grain line as well, and pin it",
				"draw along rest, right and top: that is the stitch line", pins}},
		{"one edge left", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nfoot: 8,0 0,0\nleft: 0,0 0,10 | marked = true",
			[]string{cut, "lay it on the cut piece, right side up, with foot on the edge and match marks on match marks",
				"fewer than two of its edges are left to lay it by: hold it by its centre or its grain line as well, and pin it", "draw along right, top and left: that is the stitch line", pins}},
		{"windows and ticks", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n[line.far]\nalong = \"left\"\ndistance = 4\n[line.near]\nalong = \"right\"\ndistance = \"1/4\"\n",
			[]string{cut, "lay it on the cut piece, right side up, with left, foot, right and top on the edge and match marks on match marks",
				"cut the windows out, and draw along the side of each on which its line goes on over the paper between them",
				"where a line comes out at the edge, tick the cloth, and lay a ruler from tick to tick", pins}},
		{"a bent line without room", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n[line.wave]\npoints = [[0.1, 1], [0.3, 5], [0.1, 9]]\nsmooth = true\n",
			[]string{cut, "lay it on the cut piece, right side up, with left, foot, right and top on the edge and match marks on match marks", "there is no room for a window along \"wave\": prick through it", pins}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, m := sketchedTemplate(t, "0.5", c.text)
			got := append([]string(nil), m.Notes...)
			assert.Equal(t, c.want, got)
		})
	}
}

// Both the sheet the piece is cut by and its template have the match marks, in the
// same places.
func TestMatchMarksMatch(t *testing.T) {
	for _, name := range []string{"linden.toml", "underwaist.toml", "hazel.toml", "rowan.toml"} {
		pattern := Transferred(example(t, name), []source.Transfer{source.Trace, source.Template})
		byKey := map[string]mark.Marking{}
		for _, m := range Of(pattern) {
			byKey[m.Key] = m
		}
		for _, piece := range pattern.Pieces {
			cut, found := byKey[piece.Key]
			if piece.Block != nil {
				cut, found = byKey[piece.Key+" cutting sheet"]
			}
			require.True(t, found, piece.Key)
			matches := func(m mark.Marking) []string {
				var all []string
				for _, theMark := range m.Marks {
					if theMark.Role == mark.Match {
						all = append(all, sketch.Inches(theMark.Path))
					}
				}
				return all
			}
			if !templateOf(&piece, pattern).useful {
				continue // a strip with nothing to mark has none
			}
			want := matches(cut)
			assert.NotEmpty(t, want, "%s %s", name, piece.Key)
			assert.Equal(t, want, matches(byKey[piece.Key+" template"]), "%s %s", name, piece.Key)
		}
	}
	for _, m := range Of(Transferred(example(t, "linden.toml"), []source.Transfer{source.Trace})) {
		for _, theMark := range m.Marks {
			assert.NotEqual(t, mark.Match, theMark.Role, "there is no template to match")
		}
	}
}

// Windows keep what is said of them, whatever lines a piece has.
func TestWindowsKeepTheirWidths(t *testing.T) {
	windows, ticked := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		wide, high := rapid.Float64Range(60, 400).Draw(t, "width"), rapid.Float64Range(60, 400).Draw(t, "height")
		ring := plane.Path{{}, {X: wide}, {X: wide, Y: high}, {Y: high}, {}}
		outline := plane.NewTree(ring)
		at := func(name string) plane.Point {
			return plane.Point{X: rapid.Float64Range(0, wide).Draw(t, name+" x"), Y: rapid.Float64Range(0, high).Draw(t, name+" y")}
		}
		var lines []mark.Mark
		for k := range rapid.IntRange(1, 5).Draw(t, "lines") {
			path := plane.Path{at("from"), at("to")}
			if rapid.Bool().Draw(t, "bent") { // an arc
				centre, radius := at("centre"), rapid.Float64Range(15, 120).Draw(t, "radius")
				path = arc(centre, radius, 2, 40)
			}
			lines = append(lines, insideOf(outline, mark.Mark{Role: mark.Fold, Name: sketch.Number(float64(k)), Path: path})...)
		}
		open := openingsFor(outline, lines)
		ticked += len(open.ticks)
		var trees []*plane.Tree
		of := make([]int, len(open.windows)) // the line each window is of
		for k, w := range open.windows {
			windows++
			tree := plane.NewTree(w.Path)
			trees = append(trees, tree)
			require.Equal(t, w.Path[0], w.Path[len(w.Path)-1], "closed")
			_, _, _, crosses := plane.SelfCrossing(tree)
			require.False(t, crosses)
			long := 0.0
			of[k] = -1
			for i, line := range lines {
				on := plane.NewTree(line.Path)
				beside := 0
				farthest := 0.0
				for _, q := range w.Path {
					away := on.Distance(q, math.Inf(1))
					farthest = math.Max(farthest, away)
					if away < 1e-6 {
						beside++
					}
				}
				if beside >= 2 && farthest < 3 {
					of[k] = i
					require.InDelta(t, 2, farthest, 0.05, "width of a window, in mm")
				}
			}
			require.GreaterOrEqual(t, of[k], 0, "one side lies on a line")
			long = w.Path.Length() / 2
			require.LessOrEqual(t, long, 50*1.2+2, "length of a window, in mm; round a bend its outer side is longer")
			for _, q := range w.Path {
				require.GreaterOrEqual(t, outline.Distance(q, math.Inf(1)), 8-1e-6, "clear of the template's edge")
				require.True(t, outline.Holds(q))
			}
		}
		for i := range trees {
			for k := range i {
				least := 10.0
				if of[i] == of[k] {
					least = 7.5 // round a bend the inner sides come nearer
				}
				for _, q := range open.windows[i].Path {
					require.GreaterOrEqual(t, trees[k].Distance(q, math.Inf(1)), least-1e-6, "windows of lines %d and %d", of[i], of[k])
				}
			}
		}
		for _, tick := range open.ticks {
			require.True(t, outline.Nearer(tick.Path[0], 1e-6), "a tick begins at the edge")
			require.InDelta(t, 6, tick.Path.Length(), 1e-6)
		}
	})
	assert.Positive(t, windows)
	assert.Positive(t, ticked)
}

// Tucks of 1/8 in, 3/8 in apart, lie too close for windows: each of their lines is
// ticked where it comes out, at the top and at the foot.
func TestCloseTucksAreTicked(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"+
		"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 3\nfirst = 2\nspacing = \"3/8\"\nsewn = \"twin needle\"\n")
	var ticks []string
	for _, theMark := range m.Marks {
		require.NotEqual(t, mark.Window, theMark.Role)
		if theMark.Role == mark.TuckFold && theMark.Path.Length() < 10 {
			ticks = append(ticks, sketch.Inches(theMark.Path))
		}
	}
	assert.ElementsMatch(t, []string{
		"2,10 2,9.764", "2,0 2,0.236", "2.375,10 2.375,9.764", "2.375,0 2.375,0.236", "2.75,10 2.75,9.764", "2.75,0 2.75,0.236",
	}, ticks)
	// Twice as far apart there is room.
	_, m = sketchedTemplate(t, "0.375", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"+
		"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 3\nfirst = 2\nspacing = \"3/4\"\nsewn = \"twin needle\"\n")
	windows := 0
	for _, theMark := range m.Marks {
		if theMark.Role == mark.Window {
			windows++
		}
	}
	assert.Equal(t, 3*5, windows, "five in each of three lines of 10 in")
}
