package pdfout

import (
	"math"

	"tuckmark/marking/plane"
)

// slab is a rectangle that may lie at any angle: the room a text takes.
type slab struct {
	centre plane.Point
	half   plane.Point // half its length along u, half its height
	u      plane.Point // the direction of its length, of length 1
}

// newSlab returns a slab about a centre that reaches half its length along u.
func newSlab(centre, half, u plane.Point) slab { return slab{centre, half, u} }

// upright returns the slab of an upright box.
func upright(b plane.Box) slab {
	return slab{b.Centre(), plane.Point{X: b.Width() / 2, Y: b.Height() / 2}, plane.Point{X: 1}}
}

// grown returns the slab with every side moved outward by d mm.
func (s slab) grown(d float64) slab {
	s.half = s.half.Add(plane.Point{X: d, Y: d})
	return s
}

// reach is half the extent of the slab in a direction of length 1.
func (s slab) reach(axis plane.Point) float64 {
	return s.half.X*math.Abs(s.u.Dot(axis)) + s.half.Y*math.Abs(s.u.Left().Dot(axis))
}

// bounds is the upright box round the slab.
func (s slab) bounds() plane.Box {
	r := plane.Point{X: s.reach(plane.Point{X: 1}), Y: s.reach(plane.Point{Y: 1})}
	return plane.Box{Min: s.centre.Sub(r), Max: s.centre.Add(r)}
}

// meetsSegment reports whether the segment ab touches the slab. Two shapes
// without hollows are apart when a line along a side of one of them keeps them
// apart; that holds for meets as well.
func (s slab) meetsSegment(a, b plane.Point) bool {
	v := s.u.Left()
	a, b = a.Sub(s.centre), b.Sub(s.centre)
	ax, ay, bx, by := a.Dot(s.u), a.Dot(v), b.Dot(s.u), b.Dot(v)
	if math.Min(ax, bx) > s.half.X || math.Max(ax, bx) < -s.half.X ||
		math.Min(ay, by) > s.half.Y || math.Max(ay, by) < -s.half.Y {
		return false
	}
	dx, dy := bx-ax, by-ay
	return math.Abs(ax*dy-ay*dx) <= s.half.X*math.Abs(dy)+s.half.Y*math.Abs(dx)
}

// meets reports whether two slabs touch.
func (s slab) meets(t slab) bool {
	between := t.centre.Sub(s.centre)
	for _, axis := range [4]plane.Point{s.u, s.u.Left(), t.u, t.u.Left()} {
		if math.Abs(between.Dot(axis)) > s.reach(axis)+t.reach(axis) {
			return false
		}
	}
	return true
}
