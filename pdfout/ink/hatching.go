package ink

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: an area is hatched with lines that end where it ends, so that nothing
// needs to be clipped, and that begin with its own outline: two areas of one form are hatched
// alike, and what two pages show of one meets.

// hatchApart is how far hatching lines lie apart, in mm: some lines in a window 2 mm wide,
// and no more ink than a light grey.
const hatchApart = 1.5

// mostHatches bounds how many lines hatch an area: they lie further apart in one over 15 m
// across, which no sheet has room for, but which is to be refused as soon as any other.
const mostHatches = 10_000

// leastHatch bounds what is left out, in mm: a shorter line is a speck.
const leastHatch = 0.1

// Hatching returns the lines, rising to the right by 45 degrees, that hatch what a closed
// path holds (even-odd). An area too small for one has none.
func Hatching(area plane.Path) []plane.Path {
	if len(area) < 3 {
		return nil
	}
	u := plane.Point{X: math.Sqrt2 / 2, Y: math.Sqrt2 / 2}
	// How far each point lies across the lines, counted in lines, and along them.
	bounds := area.Bounds()
	apart := max(hatchApart, bounds.Min.Distance(bounds.Max)/mostHatches)
	across := func(p plane.Point) float64 { return p.Sub(area[0]).Dot(u.Left())/apart + 0.5 }
	crossed := map[int][]float64{} // by line, the places along it where the outline crosses
	low, high := math.MaxInt, math.MinInt
	for i, b := range area {
		a := area[(i+len(area)-1)%len(area)]
		from, to := across(a), across(b)
		for k := int(math.Ceil(min(from, to))); float64(k) < max(from, to); k++ {
			at := a.Toward(b, (float64(k)-from)/(to-from))
			crossed[k] = append(crossed[k], at.Sub(area[0]).Dot(u))
			low, high = min(low, k), max(high, k)
		}
	}
	var lines []plane.Path
	for k := low; k <= high; k++ {
		foot := area[0].Add(u.Left().Mul((float64(k) - 0.5) * apart))
		slices.Sort(crossed[k])
		for i := 0; i+1 < len(crossed[k]); i += 2 {
			if from, to := crossed[k][i], crossed[k][i+1]; to-from > leastHatch {
				lines = append(lines, plane.Path{foot.Add(u.Mul(from)), foot.Add(u.Mul(to))})
			}
		}
	}
	return lines
}

// LinesOf returns the lines that a mark is drawn as: its path, or the hatching of what that
// holds.
func LinesOf(m mark.Mark) []plane.Path {
	if PenOf(m.Role).rhythm.hatched {
		return Hatching(m.Path)
	}
	return []plane.Path{m.Path}
}
