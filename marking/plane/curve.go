package plane

import (
	"math"
)

// flatness bounds how far the straight pieces of a flattened curve lie from
// the curve, in mm: a quarter of the finest line a home printer draws.
const flatness = 0.01

// Curve returns the smooth curve through the points, in their order, as a path
// of short straight pieces that lies within 0.01 mm of it and passes through
// each point exactly.
//
// The curve is a cubic spline of continuous curvature over the distance from
// point to point, so that it follows points measured off a round line closely
// however unevenly they stand. start and end are the directions in which it
// must set out and arrive; a zero step leaves that end free, and there the bend
// of the next point is carried on to the end, as round lines do. (Any text on
// numerical analysis, under cubic splines; the free end is its parabolic
// run-out.) A long step that follows a short one swings out beside it: the
// curve wants more points where it bends, and one more in a long stretch.
//
// Points that repeat their predecessor are passed over. One point, or none,
// gives itself back, and two points with free ends a straight line.
func Curve(points []Point, start, end Point) Path {
	var p Path
	for _, q := range points {
		if len(p) == 0 || q != p[len(p)-1] {
			p = append(p, q)
		}
	}
	n := len(p)
	if n < 3 && start == (Point{}) && end == (Point{}) || n < 2 {
		return p
	}
	h := make([]float64, n-1) // the step of the parameter from point i to i+1
	for i := range h {
		h[i] = p[i+1].Distance(p[i])
	}
	bend := bends(p, h, start.Unit(), end.Unit())
	curve := Path{p[0]}
	for i := range h {
		curve = appendFlat(curve, p[i], p[i+1], bend[i], bend[i+1], h[i])
	}
	return curve
}

// bends returns the second derivative of the spline at every point: the
// solution of its tridiagonal system, by elimination from the first row down.
func bends(p Path, h []float64, start, end Point) []Point {
	n := len(p)
	slope := func(i int) Point { return p[i+1].Sub(p[i]).Mul(1 / h[i]) }
	diagonal, above := make([]float64, n), make([]float64, n)
	right := make([]Point, n)

	diagonal[0], above[0] = 1, -1
	if start != (Point{}) {
		diagonal[0], above[0] = 2*h[0], h[0]
		right[0] = slope(0).Sub(start).Mul(6)
	}
	for i := 1; i < n; i++ {
		below, here, next := -1.0, 1.0, 0.0
		var r Point
		switch {
		case i < n-1:
			below, here, next = h[i-1], 2*(h[i-1]+h[i]), h[i]
			r = slope(i).Sub(slope(i - 1)).Mul(6)
		case end != (Point{}):
			below, here = h[n-2], 2*h[n-2]
			r = end.Sub(slope(n - 2)).Mul(6)
		}
		m := below / diagonal[i-1]
		diagonal[i] = here - m*above[i-1]
		above[i] = next
		right[i] = r.Sub(right[i-1].Mul(m))
	}
	bend := make([]Point, n)
	bend[n-1] = right[n-1].Mul(1 / diagonal[n-1])
	for i := n - 2; i >= 0; i-- {
		bend[i] = right[i].Sub(bend[i+1].Mul(above[i])).Mul(1 / diagonal[i])
	}
	return bend
}

// appendFlat appends the spline piece from a to b, without a itself, as its
// control polygon halved until it is flat.
func appendFlat(curve Path, a, b, bendA, bendB Point, h float64) Path {
	chord := b.Sub(a).Mul(1.0 / 3)
	// A third of the step along the slope at either end; the slopes follow from
	// the bends.
	leave := chord.Sub(bendA.Mul(2).Add(bendB).Mul(h * h / 18))
	arrive := chord.Add(bendA.Add(bendB.Mul(2)).Mul(h * h / 18))
	return appendCubic(curve, a, a.Add(leave), b.Sub(arrive), b, 0)
}

// mostHalvings bounds how often a piece of a curve is halved; a curve that
// comes to a point never gets flat enough there.
const mostHalvings = 12

// mostOfCurve bounds how many points a curve is divided into: beyond them it goes straight from
// each point it is given to the next. It bounds the time and the memory of a curve that runs to and fro over
// many metres at every point.
const mostOfCurve = 400_000

// appendCubic appends the cubic with the control points a, b, c, d, without a
// itself. It lies within flatness of its chord when its control points do, and
// it must not turn by more than a gentle turn, lest it look like a corner to
// whoever draws beside it.
func appendCubic(curve Path, a, b, c, d Point, halvings int) Path {
	chord := d.Sub(a)
	off := max(math.Abs(chord.Cross(b.Sub(a))), math.Abs(chord.Cross(c.Sub(a))))
	leave, arrive := b.Sub(a), d.Sub(c)
	turn := math.Abs(Turn(leave, arrive))
	if off <= flatness*chord.Length() && turn <= gentleTurn || halvings == mostHalvings || len(curve) >= mostOfCurve {
		return append(curve, d)
	}
	ab, bc, cd := a.Toward(b, 0.5), b.Toward(c, 0.5), c.Toward(d, 0.5)
	abc, bcd := ab.Toward(bc, 0.5), bc.Toward(cd, 0.5)
	middle := abc.Toward(bcd, 0.5)
	curve = appendCubic(curve, a, ab, abc, middle, halvings+1)
	return appendCubic(curve, middle, bcd, cd, d, halvings+1)
}
