package text

import (
	"math"

	"tuckmark/marking/plane"
)

// Slab is a rectangle that may lie at any angle: the room a text takes.
type Slab struct {
	Centre plane.Point // its middle
	Half   plane.Point // half its length along U, half its height, in mm
	U      plane.Point // the direction of its length, of length 1
}

// Level returns the slab about a centre whose sides run across and up.
func Level(centre, half plane.Point) Slab { return Slab{centre, half, Across()} }

// Upright returns the slab of an upright box.
func Upright(b plane.Box) Slab {
	return Level(b.Centre(), plane.Point{X: b.Width() / 2, Y: b.Height() / 2})
}

// Grown returns the slab with every side moved outward by d mm.
func (s Slab) Grown(d float64) Slab {
	s.Half = s.Half.Add(plane.Point{X: d, Y: d})
	return s
}

// reach is half the extent of the slab in a direction of length 1.
func (s Slab) reach(axis plane.Point) float64 {
	return s.Half.X*math.Abs(s.U.Dot(axis)) + s.Half.Y*math.Abs(s.U.Left().Dot(axis))
}

// Bounds is the upright box round the slab.
func (s Slab) Bounds() plane.Box {
	r := s.Half
	if s.U != Across() { // most lie level, and are asked over and over
		r = plane.Point{X: s.reach(plane.Point{X: 1}), Y: s.reach(plane.Point{Y: 1})}
	}
	return plane.Box{Min: s.Centre.Sub(r), Max: s.Centre.Add(r)}
}

// MeetsSegment reports whether the segment ab touches the slab. Two shapes
// without hollows are apart when a line along a side of one of them keeps them
// apart; that holds for meets as well.
func (s Slab) MeetsSegment(a, b plane.Point) bool {
	v := s.U.Left()
	a, b = a.Sub(s.Centre), b.Sub(s.Centre)
	ax, ay, bx, by := a.Dot(s.U), a.Dot(v), b.Dot(s.U), b.Dot(v)
	if min(ax, bx) > s.Half.X || max(ax, bx) < -s.Half.X ||
		min(ay, by) > s.Half.Y || max(ay, by) < -s.Half.Y {
		return false
	}
	dx, dy := bx-ax, by-ay
	return math.Abs(ax*dy-ay*dx) <= s.Half.X*math.Abs(dy)+s.Half.Y*math.Abs(dx)
}

// Meets reports whether two slabs touch.
func (s Slab) Meets(t Slab) bool {
	between := t.Centre.Sub(s.Centre)
	for _, axis := range [4]plane.Point{s.U, s.U.Left(), t.U, t.U.Left()} {
		if math.Abs(between.Dot(axis)) > s.reach(axis)+t.reach(axis) {
			return false
		}
	}
	return true
}
