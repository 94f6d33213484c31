package plane

import (
	"math"
)

// Path is a line from point to point. It is closed when its last point is its
// first again; there is no other sign of closing. A path of fewer than two
// points has no length and no direction.
type Path []Point

// Length returns the length of the whole path, in mm.
func (p Path) Length() float64 {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		sum += p[i].Distance(p[i-1])
	}
	return sum
}

// Bounds returns the smallest box that holds the path; the empty box for a
// path without points.
func (p Path) Bounds() Box {
	b := EmptyBox()
	for _, q := range p {
		b = b.With(q)
	}
	return b
}

// Reversed returns the path walked the other way.
func (p Path) Reversed() Path {
	r := make(Path, len(p))
	for i, q := range p {
		r[len(p)-1-i] = q
	}
	return r
}

// Moved returns the path as it lies a step further.
func (p Path) Moved(step Point) Path {
	there := make(Path, len(p))
	for i, q := range p {
		there[i] = q.Add(step)
	}
	return there
}

// Closed reports whether the last point is the first again.
func (p Path) Closed() bool { return len(p) > 2 && p[0] == p[len(p)-1] }

// Area returns the area a closed path goes round, in mm²: positive when it
// goes counter-clockwise. An open path counts as closed by a straight line.
func (p Path) Area() float64 {
	if len(p) < 3 {
		return 0
	}
	// Measured from the first point, so that a piece far from the origin
	// loses no digits.
	sum := 0.0
	for i := 2; i < len(p); i++ {
		sum += p[i-1].Sub(p[0]).Cross(p[i].Sub(p[0]))
	}
	return sum / 2
}

// At returns the place d mm along the path and the direction of the path
// there, a step of length 1. Before the start and beyond the end it gives the
// end itself. On a corner it gives the direction of the part that follows.
func (p Path) At(d float64) (Point, Point) {
	if len(p) == 0 {
		return Point{}, Point{}
	}
	for i := 1; i < len(p); i++ {
		step := p[i].Sub(p[i-1])
		l := step.Length()
		if d < l && l > 0 {
			return p[i-1].Toward(p[i], max(0, d)/l), step.Unit()
		}
		d -= l
	}
	return p[len(p)-1], p.EndDirection()
}

// StartDirection returns the direction in which the path sets out, a step of
// length 1; the zero step when all its points are one.
func (p Path) StartDirection() Point {
	for i := 1; i < len(p); i++ {
		if p[i] != p[0] {
			return p[i].Sub(p[0]).Unit()
		}
	}
	return Point{}
}

// EndDirection returns the direction in which the path arrives, a step of
// length 1; the zero step when all its points are one.
func (p Path) EndDirection() Point {
	return p.Reversed().StartDirection().Mul(-1)
}

// Between returns the part of the path from a mm to b mm along it. Both are
// brought into the path; when b is not beyond a the part has no points.
func (p Path) Between(a, b float64) Path {
	a, b = max(0, a), min(p.Length(), b)
	if len(p) < 2 || b <= a {
		return nil
	}
	start, _ := p.At(a)
	end, _ := p.At(b)
	part := Path{start}
	walked := 0.0
	for i := 1; i < len(p)-1; i++ {
		walked += p[i].Distance(p[i-1])
		// A corner that is one of the two ends is not given twice.
		if walked > a+touch && walked < b-touch {
			part = append(part, p[i])
		}
	}
	return append(part, end)
}

// Nearest returns the place on the path nearest to q, how far along the path
// it lies and how far from q, all in mm. Of several equally near places it
// gives the first. A path without points is infinitely far.
func (p Path) Nearest(q Point) (at Point, along, away float64) {
	away = math.Inf(1)
	if len(p) > 0 {
		at, away = p[0], p[0].Distance(q)
	}
	walked := 0.0
	for i := 1; i < len(p); i++ {
		foot, t := nearestOnSegment(p[i-1], p[i], q)
		l := p[i].Distance(p[i-1])
		if d := foot.Distance(q); d < away {
			at, along, away = foot, walked+t*l, d
		}
		walked += l
	}
	return at, along, away
}

// nearestOnSegment returns the place on the segment ab nearest to q and its
// share t of the way from a to b.
func nearestOnSegment(a, b, q Point) (Point, float64) {
	ab := b.Sub(a)
	l2 := ab.Dot(ab)
	if l2 == 0 {
		return a, 0
	}
	t := min(1, max(0, q.Sub(a).Dot(ab)/l2))
	return a.Toward(b, t), t
}

// Straightness returns how far, in mm, the path strays from the straight line
// through its first and its last point; 0 for fewer than three points. Where
// the two are the same place it is the distance from that place.
func (p Path) Straightness() float64 {
	most := 0.0
	if len(p) < 3 {
		return 0
	}
	along := p[len(p)-1].Sub(p[0]).Unit()
	for _, q := range p {
		off := q.Sub(p[0])
		if along != (Point{}) {
			most = max(most, math.Abs(along.Cross(off)))
		} else {
			most = max(most, off.Length())
		}
	}
	return most
}
