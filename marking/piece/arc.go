package piece

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. An edge, or a line, with a centre is the circle's arc about that from
// its first point to its last: the shorter way round, or the way on which a third point lies.
// Points are rounded when they are read off, so that they are rarely equally far from the
// centre: the radius then goes evenly from one to the next, and all of them are met.

const (
	// unevenRadius bounds how unequally far, in mm, points of an arc may lie from its centre:
	// as much as two of them that were read off to 1/16 in, each up to 1/32 in off across and
	// up, may differ by. On a draft that is enlarged they must be nearer, for what is off
	// there is so many times as far off on the piece.
	unevenRadius = 2 * math.Sqrt2 * 25.4 / 32

	// nearHalf bounds, in radians (3 degrees), how near to a half circle an arc of two points
	// may come: beyond that the way round would be chosen by what its points are rounded by.
	nearHalf = 3 * math.Pi / 180
)

// checkArc looks whether points lie on a circle about a centre, and tell one way round it.
func (f *Findings) checkArc(points source.Points, centre source.Point) {
	if !centre.Given() {
		return
	}
	near, far := 0, 0
	radius := func(i int) float64 { return points.V[i].Distance(centre.V) }
	for i := range points.V {
		if radius(i) < radius(near) {
			near = i
		}
		if radius(i) > radius(far) {
			far = i
		}
	}
	first, last := min(near, far), max(near, far)
	switch turn := plane.Turn(points.V[0].Sub(centre.V), points.V[len(points.V)-1].Sub(centre.V)); {
	case radius(near) <= SamePoint:
		f.Add(centre.Place, "the centre is the middle of the circle, as far from one point as from the other", "the centre is point %d itself", near+1)
	case radius(far)-radius(near) > unevenRadius:
		f.Add(centre.Place, "is a number wrong? x comes first, then y",
			"points %d and %d are %s and %s from the centre%s, and an arc is equally far from it all the way",
			first+1, last+1, f.length(radius(first)), f.length(radius(last)), f.fullSize())
	case len(points.V) == 2 && math.Abs(turn) > math.Pi-nearHalf:
		f.Add(centre.Place, "make it two edges, or give a third point, on the arc between the two",
			"the arc is half a circle, and may run round either side of the centre")
	}
}

// arcThrough returns the arc about a centre through two points, or three.
func arcThrough(points plane.Path, centre plane.Point) plane.Path {
	step := func(i int) plane.Point { return points[i].Sub(centre) }
	if len(points) == 2 {
		return plane.Arc(points[0], points[1], centre, plane.Turn(step(0), step(1)))
	}
	first, whole := plane.TurnLeft(step(0), step(1)), plane.TurnLeft(step(0), step(2))
	second := whole - first
	if second < 0 { // the third point lies on the other way round
		first -= 2 * math.Pi
	}
	arc := plane.Arc(points[0], points[1], centre, first)
	return append(arc, plane.Arc(points[1], points[2], centre, second)[1:]...)
}
