package drawing

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: an arc is given by its ends, and its centre is found as SVG 2 says in its
// appendix B.2.4, "Conversion from endpoint to center parameterization", with radii that are
// too small made as large as they must be (B.2.5).

// mostTurn is the most that one cubic turns of an ellipse, in radians: a cubic of so much lies
// within a thousand-millionth of the radius of it.
const mostTurn = math.Pi / 16

// arcLength tells which of the two parts of an ellipse between two places is meant, arcSense which
// way round it runs: the flags of an SVG arc, by their numbers there.
type (
	arcLength int
	arcSense  int
)

const (
	shorterArc arcLength = iota
	longerArc
)

const (
	fallingAngles arcSense = iota
	risingAngles
)

// arc returns the part of an ellipse from one place to another, as cubics: never none. The
// radii count without their signs, the turn of the ellipse's own axes is in degrees. Without a
// radius it is straight, from a place to itself, and where its numbers are so large or small that
// its centre cannot be reckoned.
func arc(from, to plane.Point, rx, ry, degrees float64, long arcLength, sense arcSense) []leg {
	rx, ry = math.Abs(rx), math.Abs(ry)
	if rx == 0 || ry == 0 || from == to {
		return []leg{straight(from, to)}
	}
	sin, cos := math.Sincos(math.Mod(degrees, 360) * math.Pi / 180)
	half := from.Sub(to).Mul(0.5)
	// In the ellipse's own axes, halfway between the ends.
	x, y := cos*half.X+sin*half.Y, -sin*half.X+cos*half.Y
	if wide := math.Hypot(x/rx, y/ry); wide > 1 {
		rx, ry = rx*wide, ry*wide
	}
	// On the unit circle, where the ends are u and -u before the centre is known.
	u := plane.Point{X: x / rx, Y: y / ry}
	away := math.Sqrt(max(0, 1/u.Dot(u)-1))
	if (long == longerArc) == (sense == risingAngles) {
		away = -away
	}
	centre := plane.Point{X: u.Y, Y: -u.X}.Mul(away)
	first, last := u.Sub(centre), u.Mul(-1).Sub(centre)
	start := math.Atan2(first.Y, first.X)
	turn := math.Mod(math.Atan2(last.Y, last.X)-start+4*math.Pi, 2*math.Pi)
	if sense == fallingAngles {
		turn -= 2 * math.Pi
	}
	if !(centre.Length() < math.Inf(1)) || math.IsNaN(turn) {
		return []leg{straight(from, to)}
	}
	middle := from.Toward(to, 0.5)
	place := func(p plane.Point) plane.Point {
		p = p.Add(centre)
		p.X, p.Y = p.X*rx, p.Y*ry
		return middle.Add(plane.Point{X: cos*p.X - sin*p.Y, Y: sin*p.X + cos*p.Y})
	}
	legs := circular(start, turn, place)
	if len(legs) == 0 {
		return []leg{straight(from, to)}
	}
	legs[0].a, legs[len(legs)-1].d = from, to
	return legs
}

// circular returns an arc of the unit circle as cubics, each place where it comes to lie.
func circular(start, turn float64, place func(plane.Point) plane.Point) []leg {
	n := int(math.Ceil(math.Abs(turn) / mostTurn))
	legs := make([]leg, 0, n)
	step := turn / float64(n)
	// How long the arms of a cubic are that follows a circle.
	arm := 4.0 / 3 * math.Tan(step/4)
	for i := range n {
		a, d := onCircle(start+step*float64(i)), onCircle(start+step*float64(i+1))
		legs = append(legs, cubic(place(a), place(a.Add(a.Left().Mul(arm))), place(d.Sub(d.Left().Mul(arm))), place(d)))
	}
	return legs
}

func onCircle(angle float64) plane.Point {
	sin, cos := math.Sincos(angle)
	return plane.Point{X: cos, Y: sin}
}

// ellipse returns a whole one, closed, from its right side by way of rising angles, as SVG 2
// has it in section 10.4.
func ellipse(centre plane.Point, rx, ry float64) stroke {
	place := func(p plane.Point) plane.Point { return centre.Add(plane.Point{X: p.X * rx, Y: p.Y * ry}) }
	return stroke{circular(0, 2*math.Pi, place), true}
}
