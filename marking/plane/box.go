package plane

import (
	"math"
)

// Box is an upright rectangle, its sides included. The zero Box is the single
// place (0, 0); EmptyBox holds nothing.
type Box struct{ Min, Max Point }

// EmptyBox returns the box that holds no place; any box extended by a place
// holds that place alone.
func EmptyBox() Box {
	inf := math.Inf(1)
	return Box{Point{inf, inf}, Point{-inf, -inf}}
}

// Empty reports whether the box holds no place.
func (b Box) Empty() bool { return b.Min.X > b.Max.X || b.Min.Y > b.Max.Y }

// Width returns the extent in x, in mm. It is not meaningful for an empty box.
func (b Box) Width() float64 { return b.Max.X - b.Min.X }

// Height returns the extent in y, in mm. It is not meaningful for an empty box.
func (b Box) Height() float64 { return b.Max.Y - b.Min.Y }

// Outline returns the sides of the box as a closed path, counter-clockwise from its lower
// left corner. It is not meaningful for an empty box.
func (b Box) Outline() Path {
	return Path{b.Min, {b.Max.X, b.Min.Y}, b.Max, {b.Min.X, b.Max.Y}, b.Min}
}

// Centre returns the middle of the box.
func (b Box) Centre() Point { return b.Min.Toward(b.Max, 0.5) }

// With returns the smallest box that holds b and p.
func (b Box) With(p Point) Box {
	return Box{
		Point{min(b.Min.X, p.X), min(b.Min.Y, p.Y)},
		Point{max(b.Max.X, p.X), max(b.Max.Y, p.Y)},
	}
}

// Union returns the smallest box that holds both.
func (b Box) Union(c Box) Box {
	if c.Empty() {
		return b
	}
	return b.With(c.Min).With(c.Max)
}

// Grown returns the box with every side moved outward by d mm.
func (b Box) Grown(d float64) Box {
	return Box{Point{b.Min.X - d, b.Min.Y - d}, Point{b.Max.X + d, b.Max.Y + d}}
}

// Holds reports whether p lies in the box; its sides count as inside.
func (b Box) Holds(p Point) bool {
	return p.X >= b.Min.X && p.X <= b.Max.X && p.Y >= b.Min.Y && p.Y <= b.Max.Y
}

// Meets reports whether the two boxes share a place; touching sides count.
func (b Box) Meets(c Box) bool {
	return b.Min.X <= c.Max.X && c.Min.X <= b.Max.X && b.Min.Y <= c.Max.Y && c.Min.Y <= b.Max.Y
}

// Distance returns how far p lies from the box, in mm: 0 inside and on the
// sides.
func (b Box) Distance(p Point) float64 { return math.Sqrt(b.squareDistance(p)) }

func (b Box) squareDistance(p Point) float64 {
	dx := max(0, b.Min.X-p.X, p.X-b.Max.X)
	dy := max(0, b.Min.Y-p.Y, p.Y-b.Max.Y)
	return dx*dx + dy*dy
}
