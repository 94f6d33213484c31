package plane

import "math"

// arcEnd is how long the first and the last piece of an arc are at most, in mm, so that it
// sets out and arrives as the circle does: within 1/4 degree where the radius is 50 mm.
const arcEnd = 0.4

// Arc returns the arc about a centre from one point to another, turned by so many radians,
// to the left where they are more than 0, as a path of short straight pieces within 0.01 mm
// of it. The turn must lead from the way of the first point to that of the other. Where the
// two are not equally far from the centre, the radius goes evenly from the one to the other.
// No turn gives the straight line from point to point.
//
// A piece that turns by h strays from its curve by h²/8 of the second derivative at most
// (any text on numerical analysis, under linear interpolation), which here is the radius
// and twice what it changes by for each radian.
func Arc(from, to, centre Point, turn float64) Path {
	a, b := from.Sub(centre), to.Sub(centre)
	start, radius := math.Atan2(a.Y, a.X), a.Length()
	grows := b.Length() - radius
	pieces := 1.0
	if turn != 0 {
		bend := max(radius, b.Length()) + 2*math.Abs(grows/turn)
		pieces = max(1, math.Ceil(math.Abs(turn)*math.Sqrt(bend/(8*flatness))), math.Ceil(math.Abs(turn)/gentleTurn))
	}
	ks := make([]float64, 0, int(pieces)+2) // the places between, in pieces
	for k := 1.0; k < pieces; k++ {
		ks = append(ks, k)
	}
	if end := arcEnd * pieces / (math.Abs(turn) * max(radius, b.Length())); end < 0.5 {
		ks = append(append([]float64{end}, ks...), pieces-end)
	}
	arc := Path{from}
	for _, k := range ks {
		sin, cos := math.Sincos(start + turn*k/pieces)
		arc = append(arc, centre.Add(Point{cos, sin}.Mul(radius+grows*k/pieces)))
	}
	return append(arc, to)
}
