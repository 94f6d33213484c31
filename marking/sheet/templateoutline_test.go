package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// square inches of a closed path.
func squareInches(p plane.Path) float64 { return p.Area() / 25.4 / 25.4 }

// The area of a template by arithmetic: what is cut away along a marked edge is a
// strip as wide as its allowance.
func TestTemplateArea(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       float64 // in square inches
	}{
		{"nothing marked", "top: 0,10 8,10\nrest: 8,10 8,0 0,0 0,10 | marked = false", 80},
		{"a straight edge", "top: 0,10 8,10 | marked = true\nrest: 8,10 8,0 0,0 0,10 | marked = false", 8 * 9.5},
		{"an edge on the fold beside it", "fold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 8,10 | marked = true\nrest: 8,10 8,0 0,0 | marked = false", 8 * 9.5},
		{"two that follow each other", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nrest: 8,0 0,0 0,10 | marked = false", 7.5 * 9.5},
		{"two with unequal allowances", "top: 0,10 8,10 | marked = true; allowance = 1\nright: 8,10 8,0 | marked = true\nrest: 8,0 0,0 0,10 | marked = false", 7.5 * 9},
		{"two apart", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0\nfoot: 8,0 0,0 | marked = true\nleft: 0,0 0,10", 8 * 9},
		{"all round", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nfoot: 8,0 0,0 | marked = true\nleft: 0,0 0,10 | marked = true", 7 * 9},
		{"a notch out of the corner", "top: 3,10 8,10\nrest: 8,10 8,0 0,0 0,7 | marked = false\nlow: 0,7 3,7 | marked = true\nup: 3,7 3,10 | marked = true", 8*10 - 3.5*3.5},
		{"a slanted one", "top: 0,6 8,10 | marked = true\nrest: 8,10 8,0 0,0 0,6 | marked = false", 8*8 - 8*0.5/math.Cos(math.Atan2(4, 8))},
		// The inner sides of a square neck lie 1/2 in farther out, those of three sides of a
		// box 1/2 in farther in: 80 - 2.5 x 3.5, and 7 x 9.5.
		{"a square neck", "fold = \"centre\"\ncentre: 0,0 0,7\nneck: 0,7 2,7 2,10\nshoulder: 2,10 8,10\nside: 8,10 8,0\nhem: 8,0 0,0", 80 - 2.5*3.5},
		{"a pointed neck", "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 1,10\nshoulder: 1,10 8,10\nside: 8,10 8,0\nhem: 8,0 0,0", 80 - 1},
		{"three sides in one", "top: 0,10 8,10\nsides: 8,10 8,0 0,0 0,10", 7 * 9.5},
		{"a hem, which is not marked", "top: 0,10 8,10 | hem = 1\nrest: 8,10 8,0 0,0 0,10 | marked = false", 80},
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
	pieces := map[string]*piece.Piece{}
	for name, text := range map[string]string{
		"a curve each way": "s: 0,0 1,-1 2,0.5 3,-0.8 4,0 | smooth = true\nrest: 4,0 4,6 0,6 0,0",
		"tucked": "fold = \"centre\"\ndrawn = \"finished\"\ncentre: 0,0 0,10\nneck: 0,10 1,10.1 2,11 2.5,12 | smooth = true\nshoulder: 2.5,12 5,11.5\nside: 5,11.5 6,0\nhem: 6,0 0,0\n---\n\n" +
			"[tuck.yoke]\nbeside = \"centre\"\nwidth = \"1/8\"\ncount = 4\nfirst = \"3/8\"\ngap = \"1/8\"\nbelow = \"neck\"\nlength = 3\n",
	} {
		pieces[name], _ = made.Front(t, "0.375", text)
	}
	for _, name := range []string{"pinafore.toml", "underwaist.toml", "nightgown.toml", "shirt.toml"} {
		for _, p := range made.Example(t, name).Pieces {
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

// Two marked edges whose lines cross before they come to the edge between them: one of
// them stays as it is cut, and the note says why.
func TestMarkedEdgesWhoseLinesCross(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "top: 8,10 0.5,10 | marked = true\nchamfer: 0.5,10 0,9.5\nleft: 0,9.5 0,0 | marked = true\nfoot: 0,0 8,0\nright: 8,0 8,10")
	assert.Regexp(t, `mark the stitch line of (top|left) with a gauge: it crosses another`, strings.Join(m.Told(), "; "))
	assert.NotContains(t, strings.Join(m.Told(), "; "), "folds part")
}

// A step from a stitch line that ends beside its neighbour's edge is no stitch line.
func TestAStepIsNoStitchLine(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "a: 8,10 4,10.1 | marked = true\nb: 4,10.1 0,10\nc: 0,10 0,0\nd: 0,0 8,0\ne: 8,0 8,10")
	found := false
	for _, mark := range m.Marks {
		if mark.Name == "a stitch line, 3/8 in of cloth beyond" {
			found = true
			assert.LessOrEqual(t, mark.Path.Straightness(), 0.05, "it goes round no corner: %s", sketch.Inches(mark.Path))
		}
	}
	assert.True(t, found)
}

// Only edges that bend, round or square, are marked unless the file says otherwise.
func TestMarkedEdges(t *testing.T) {
	piece, _ := made.Front(t, "0.375", "neck: 0,10 2,9.5 4,10 | smooth = true\narm: 4,10 3,8 4,7\nside: 4,7 4,0 | marked = true\n"+
		"hem: 4,0 2,0 0,0\nback: 0,0 0.5,5 0,7 | smooth = true; marked = false\nbent: 0,7 0.5,9 0,10 | allowance = 0")
	got := map[string]bool{}
	for _, e := range piece.Edges {
		got[e.Key] = e.Marked
	}
	assert.Equal(t, map[string]bool{"neck": true, "arm": true, "side": true, "hem": false, "back": false, "bent": false}, got)
}
