package pdfout

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// ticksAlong are the places of the ticks of a page that begin at a zero, or on the line from
// there along a direction, and stand square to it, in mm from the zero.
func ticksAlong(p seen.Page, zero, along plane.Point) []float64 {
	var places []float64
	for _, q := range p.Paths {
		if q.Painted != seen.Stroked || q.Layer != "" || math.Abs(q.Width-0.18) > 0.001 {
			continue
		}
		for _, part := range q.Parts {
			from := part[0].Sub(zero)
			if len(part) == 2 && math.Abs(from.Cross(along)) < 0.001 && from.Dot(along) > -0.001 && math.Abs(part[1].Sub(part[0]).Dot(along)) < 0.001 {
				places = append(places, from.Dot(along))
			}
		}
	}
	slices.Sort(places)
	return places
}

// Every tick of a rule lies where its number says, to 0.01 mm: an inch is 25.4 mm.
func TestTicksOfTheRules(t *testing.T) {
	across, up := plane.Point{X: 1}, plane.Point{Y: 1}
	for _, c := range []struct {
		name, paper string
		unit        length.Unit
		step        float64
		foot, edge  float64 // how long the rules are, in mm
	}{
		{"inches on letter paper", "letter", length.Inch, 25.4 / 16, 7 * 25.4, 10 * 25.4},
		{"centimetres on A4 paper", "a4", length.Centimetre, 1, 180, 270},
		{"inches on legal paper", "legal", length.Inch, 25.4 / 16, 7 * 25.4, 13 * 25.4},
	} {
		t.Run(c.name, func(t *testing.T) {
			set := sets.Large()
			set.Unit = c.unit
			d, s := drawn(t, set, c.paper)
			p := d.Pages[0]
			zero, _, _ := (&Book{set: set, leaf: s.Paper}).longRules()
			for _, r := range []struct {
				along plane.Point
				long  float64
			}{{across, c.foot}, {up, c.edge}} {
				places := ticksAlong(p, zero, r.along)
				require.NotEmpty(t, places)
				assert.InDelta(t, 0, places[0], 0.01)
				assert.InDelta(t, r.long, places[len(places)-1], 0.01, "from end to end")
				for i, at := range places {
					assert.InDelta(t, math.Round(at/c.step)*c.step, at, 0.01, "tick %d", i)
					assert.True(t, i < 2 || math.Abs(at-places[i-1]-c.step) < 0.01, "a tick is missing before %.2f mm", at)
				}
			}
			// Those of the check square: sixteenths under it, millimetres beside it.
			corner := p.Frames()[0].Min
			assert.Len(t, ticksAlong(p, corner, across), 65)
			assert.Len(t, ticksAlong(p, corner, up), 101)
			for i, at := range ticksAlong(p, corner, across) {
				assert.InDelta(t, float64(i)*25.4/16, at, 0.01)
			}
			for i, at := range ticksAlong(p, corner, up) {
				assert.InDelta(t, float64(i), at, 0.01)
			}
		})
	}
}
