package plane

import "math"

// Rules of this file. A line at a distance from a path is drawn by the middle of a
// disc that rolls along it. Of a path that is rough all over, far finer than the
// distance, the disc touches few points, and what lies in the hollows between them
// cannot matter; but the lines beside every point of it would cross each other by
// the million. So the hollows are bridged first:
//
//   - A bridge over a hollow is an arc of the disc that rests on both its sides, as
//     straight pieces; a short one is a single straight piece.
//   - The path stays to the right of every bridge, so that no line that keeps its
//     distance to the bridge comes nearer to what it hides. Nothing at the distance
//     has room under one.
//   - Only a hollow crowded with points is bridged: any other path is left to the bit.

const (
	// crowded is how many points a hollow must have for each piece of its bridge.
	// It bounds how many lines cross each other beside any one place.
	crowded = 12

	// widestHollow bounds how wide a hollow may be, in distances: the sides of a
	// narrower one are near to every place in it.
	widestHollow = 0.5

	// deepestHollow bounds how far from its beginning a hollow may reach, in
	// distances. A deeper one may be a strap, and is looked at with care.
	deepestHollow = tongueLength - 1
)

// withoutHollows returns the path with its crowded hollows bridged, as a line d mm to
// the left of it sees them; the path itself where it has none. The line beside
// it is no nearer to the path than d, and farther by no more than roundness.
func withoutHollows(p Path, d float64) Path {
	touched := touchedPoints(p, d)
	var q Path
	bridged := false
	for k, j := range touched {
		if k > 0 {
			i := touched[k-1]
			b := newBridge(p[i], p[j], d)
			if j-i > crowded*b.pieces && b.hides(p[i:j+1]) {
				q = append(q, b.between()...)
				bridged = true
			} else {
				q = append(q, p[i+1:j]...)
			}
		}
		q = append(q, p[j])
	}
	if !bridged {
		return p
	}
	return q
}

// touchedPoints returns the indices of the points on which the disc comes to rest,
// the first and the last among them. Each point takes away those before it that lie
// below a bridge from their predecessor to it.
func touchedPoints(p Path, d float64) []int {
	var touched []int
	for i, q := range p {
		for n := len(touched); n > 1 && p[touched[n-2]].Distance(q) <= widestHollow*d; n-- {
			if b := newBridge(p[touched[n-2]], q, d); !b.over(p[touched[n-1]]) {
				break
			}
			touched = touched[:n-1]
		}
		touched = append(touched, i)
	}
	return touched
}

// bridge leads over the hollow between two points of a path.
type bridge struct {
	from, to Point
	d        float64
	centre   Point // of the disc that rests on both
	pieces   int
}

// newBridge makes the bridge between two points less than twice d apart.
func newBridge(from, to Point, d float64) bridge {
	step := to.Sub(from)
	half := step.Length() / 2
	up := step.Left().Unit().Mul(math.Sqrt(max(0, d*d-half*half)))
	// A chord of the disc of this length lies a roundness within it, but for
	// what is far below rounding.
	chord := math.Sqrt(8 * roundness * d)
	return bridge{from, to, d, from.Toward(to, 0.5).Add(up), max(1, int(math.Ceil(2*half/chord)))}
}

// over reports whether the bridge passes over a point or touches it.
func (b bridge) over(q Point) bool {
	if b.pieces == 1 {
		return b.to.Sub(b.from).Unit().Cross(q.Sub(b.from)) <= touch
	}
	return q.Distance(b.centre) >= b.d-touch
}

// hides reports whether the part of a path that it bridges is a hollow: all of it
// below the bridge, and not too wide or too deep.
func (b bridge) hides(hollow Path) bool {
	along := b.to.Sub(b.from).Unit()
	reach := EmptyBox()
	for _, q := range hollow {
		off := q.Sub(b.from)
		if !b.over(q) || off.Length() > deepestHollow*b.d {
			return false
		}
		reach = reach.With(Point{off.Dot(along), 0})
	}
	return along != (Point{}) && reach.Width() <= widestHollow*b.d
}

// between returns the points of the bridge between its ends, which lie on the
// disc.
func (b bridge) between() Path {
	var p Path
	arm, end := b.from.Sub(b.centre), b.to.Sub(b.centre)
	turn := math.Atan2(arm.Cross(end), arm.Dot(end)) / float64(b.pieces)
	for k := 1; k < b.pieces; k++ {
		sin, cos := math.Sincos(turn * float64(k))
		p = append(p, b.centre.Add(Point{arm.X*cos - arm.Y*sin, arm.X*sin + arm.Y*cos}))
	}
	return p
}
