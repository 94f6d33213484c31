package reference

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/tdewolff/canvas"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/source"
)

// sameArea bounds how much the areas of two templates may differ, in mm²: the other
// library works on a grid.
const sameArea = 0.1

// runOut is how far a strip is made longer at both ends than its edge, in mm: farther
// than any stitch line runs out to the next cutting line.
const runOut = 60.0

// A template is the piece without the strip along each marked edge that is its
// allowance wide, run out straight at both ends. Here that strip is the stroke of
// the edge by the other library, twice as wide as the allowance, and the difference
// is taken by it as well.
func TestTemplatesAgainstStrokes(t *testing.T) {
	files, err := filepath.Glob("../../examples/*.toml")
	require.NoError(t, err)
	compared := 0
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		spec, err := source.Read(filepath.Base(file), data, func(rune) bool { return true })
		require.NoError(t, err)
		pattern, err := garment.Check(spec)
		require.NoError(t, err)
		all := sheet.Of(sheet.Transferred(pattern, []source.Transfer{source.Template}))
		for _, one := range pattern.Pieces {
			marked := slices.ContainsFunc(one.Edges, func(e piece.Edge) bool { return e.Marked })
			flat := !one.DrawnFinished || len(one.TuckRows)+len(one.PleatRows) == 0 || one.Block != nil
			if !marked || !flat || one.Whole {
				continue
			}
			left := toCanvas(one.Outline)
			for _, e := range one.Edges {
				if e.Marked {
					long := slices.Concat(
						plane.Path{e.Path[0].Sub(e.Path.StartDirection().Mul(runOut))},
						e.Path,
						plane.Path{e.Path[len(e.Path)-1].Add(e.Path.EndDirection().Mul(runOut))})
					strip := openCanvas(long).Stroke(2*e.Allowance, canvas.ButtCap, canvas.MiterJoin, canvas.Tolerance).Settle(canvas.NonZero)
					left = left.Not(strip)
				}
			}
			want := largest(left)
			// Pieces that are alike have one template.
			i := slices.IndexFunc(all, func(m mark.Marking) bool { return m.Kind == mark.Template && m.IsOf(one.Name) })
			require.GreaterOrEqual(t, i, 0, "%s: a template of %s", filepath.Base(file), one.Key)
			assert.InDelta(t, want, all[i].Outline.Area(), sameArea, "%s: %s", filepath.Base(file), one.Key)
			compared++
		}
	}
	assert.GreaterOrEqual(t, compared, 6, "pieces compared")
}

// largest is the area of the largest part of a path, in mm².
func largest(p *canvas.Path) float64 {
	most := 0.0
	for _, part := range p.Split() {
		area := 0.0
		coords := part.Coords()
		for i := range coords {
			a, b := coords[i], coords[(i+1)%len(coords)]
			area += a.X*b.Y - a.Y*b.X
		}
		most = max(most, area/2, -area/2)
	}
	return most
}

// openCanvas returns an open path as canvas has it.
func openCanvas(p plane.Path) *canvas.Path {
	c := &canvas.Path{}
	c.MoveTo(p[0].X, p[0].Y)
	for _, q := range p[1:] {
		c.LineTo(q.X, q.Y)
	}
	return c
}
