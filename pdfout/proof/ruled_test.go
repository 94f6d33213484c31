package proof

import (
	"image"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sets"
)

// Every whole line of ruled sheets lies where its number says, on every page and over every join,
// at 600 dots to the inch: as far from the first line as so many inches or centimetres are, within
// 0.1 mm.
func TestRuledLinesLieTrue(t *testing.T) {
	for _, c := range []struct {
		on      string
		unit    length.Unit
		step    float64 // from one whole line to the next, in mm
		up, all int     // whole lines that run up, and all
	}{
		{"letter", length.Inch, 25.4, 15, 40},
		{"a4", length.Centimetre, 10, 36, 97},
	} {
		t.Run(c.on, func(t *testing.T) {
			out := printedOn(t, sets.Ruled(c.unit), c.on)
			sheet := out.sheets[len(out.sheets)-1]
			require.Len(t, sheet, 6, "pages that are joined")
			corner := sheet[0].pieces[0].On(plane.Path{{}})[0] // of the first lines, on the joined sheet
			found, worst := map[int]bool{}, 0.0
			for _, p := range sheet {
				worst = max(worst, p.lookAtRuled(t, out.file, corner, c.step, c.up, found))
			}
			assert.Len(t, found, c.all, "whole lines that were looked at")
			t.Logf("%d lines, off by %.4f mm at most", len(found), worst)
		})
	}
}

// lookAtRuled measures the whole lines of a page, notes which those are, and returns how far the
// worst lies from where it belongs, in mm. Lines of the ruled sheet come in order, the first so
// many of them running up.
func (p *tile) lookAtRuled(t *testing.T, file string, corner plane.Point, step float64, up int, found map[int]bool) (worst float64) {
	t.Helper()
	var g *image.Gray
	n := -1
	for _, one := range p.pieces[0].Piece.Marks {
		if one.Role != mark.RuledWhole {
			continue
		}
		n++
		place := corner.Add(plane.Point{X: float64(n) * step})
		u := plane.Point{Y: 1}
		if n >= up {
			place, u = corner.Add(plane.Point{Y: float64(n-up) * step}), plane.Point{X: 1}
		}
		shown := p.Window.Grown(-1)
		from := plane.Point{X: max(shown.Min.X, place.X), Y: max(shown.Min.Y, place.Y)}
		if from.Sub(place).Cross(u) != 0 || !shown.Holds(from) {
			continue // on another page
		}
		if g == nil {
			g = drawFinely(t, file, p.Number)
		}
		var offs []float64
		for along := 0.5; along < 60; along += 0.7 {
			at := from.Add(u.Mul(along))
			if off := balance(g, at.Sub(p.Step), u, p.Height); shown.Holds(at) && !math.IsNaN(off) {
				offs = append(offs, off)
			}
		}
		require.NotEmpty(t, offs, "page %d: no ink at whole line %d", p.Number, n)
		slices.Sort(offs) // lines that cross it, and its number, are off: half of the places must not be
		off := math.Abs(offs[len(offs)/2])
		assert.Less(t, off, offCentre, "page %d: whole line %d", p.Number, n)
		worst = max(worst, off)
		found[n] = true
	}
	return worst
}
