package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// Frame is a place on the cloth and two directions square to each other. Over it every
// other place has two numbers: u, how far out it lies, and v, how far along.
type Frame struct {
	Origin plane.Point
	Out    plane.Point // the direction of u, of length 1
	Along  plane.Point // the direction of v, of length 1
}

// At returns the place that lies u out and v along.
func (f Frame) At(u, v float64) plane.Point {
	return f.Origin.Add(f.Out.Mul(u)).Add(f.Along.Mul(v))
}

// U is how far out a place lies.
func (f Frame) U(p plane.Point) float64 { return p.Sub(f.Origin).Dot(f.Out) }

// V is how far along a place lies.
func (f Frame) V(p plane.Point) float64 { return p.Sub(f.Origin).Dot(f.Along) }

// Lengthwise returns a line along the frame, u out.
func (f Frame) Lengthwise(u float64, vs Stretch) plane.Path {
	return plane.Path{f.At(u, vs.From), f.At(u, vs.To)}
}

// Crosswise returns a line across the frame, v along.
func (f Frame) Crosswise(us Stretch, v float64) plane.Path {
	return plane.Path{f.At(us.From, v), f.At(us.To, v)}
}

// Rectangle returns a closed path; counter-clockwise where the direction along is to
// the left of that out.
func (f Frame) Rectangle(us, vs Stretch) plane.Path {
	return plane.Path{f.At(us.From, vs.From), f.At(us.To, vs.From), f.At(us.To, vs.To), f.At(us.From, vs.To), f.At(us.From, vs.From)}
}

// Extent returns the stretches of u and of v over which a path lies.
func (f Frame) Extent(p plane.Path) (us, vs Stretch) {
	us = Stretch{math.Inf(1), math.Inf(-1)}
	vs = us
	for _, q := range p {
		us.From, us.To = min(us.From, f.U(q)), max(us.To, f.U(q))
		vs.From, vs.To = min(vs.From, f.V(q)), max(vs.To, f.V(q))
	}
	return us, vs
}

// Chords returns the stretches of v over which the line at u lies within an outline, in
// order.
func (f Frame) Chords(outline *plane.Tree, u float64) []Stretch {
	// Long enough to cross the outline from wherever the frame lies.
	bounds := outline.Bounds()
	reach := bounds.Width() + bounds.Height()
	from, to := math.Inf(1), math.Inf(-1)
	for _, corner := range []plane.Point{bounds.Min, bounds.Max} {
		from, to = min(from, f.V(corner)-reach), max(to, f.V(corner)+reach)
	}
	inside := InsideStretches(outline, plane.NewTree(f.Lengthwise(u, Stretch{from, to})))
	for i := range inside {
		inside[i].From += from
		inside[i].To += from
	}
	return inside
}
