package plane

import (
	"math"
)

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
	// crowded is how many points a hollow must have to the length of one piece of
	// its bridge. It bounds how many lines cross each other beside any one place.
	crowded = 6

	// widestHollow bounds how wide a hollow may be, in distances: the sides of a
	// narrower one are near to every place in it.
	widestHollow = 0.5
)

// withoutHollows returns the path with its crowded hollows bridged, as a line d mm to
// the left of it sees them; the path itself where it has none. The line beside
// it is no nearer to the path than d, and farther by no more than roundness. straps
// tells where the line passes over hollows that reach farther than a corner does.
func withoutHollows(p Path, d float64) (q Path, straps []Point) {
	touched := touchedPoints(p, d)
	bridged := false
	for k, j := range touched {
		if k > 0 {
			hollow := p[touched[k-1] : j+1]
			if b := newBridge(hollow[0], p[j], d); b.hides(hollow) {
				q = append(q, b.between()...)
				bridged = true
				if b.reach(hollow) > tongueLength*d {
					straps = append(straps, b.centre)
				}
			} else {
				q = append(q, hollow[1:len(hollow)-1]...)
			}
		}
		q = append(q, p[j])
	}
	if !bridged {
		return p, nil
	}
	return q, straps
}

// touchedPoints returns the indices of the points on which the disc comes to rest,
// the first and the last among them. Each point takes away those before it that lie
// below a bridge from their predecessor to it.
func touchedPoints(p Path, d float64) []int {
	var touched []int
	for i, q := range p {
		for n := len(touched); n > 1 && p[touched[n-2]].Distance(q) <= widestHollow*d; n-- {
			from, last := touched[n-2], touched[n-1]
			if b := newBridge(p[from], q, d); !b.over(p[last]) || b.cuts(p, from, last) || b.cuts(p, last, i) {
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
	centre   Point   // of the disc that rests on both
	pieces   float64 // how many it has; a short one has less than one
}

// newBridge makes the bridge between two points less than twice d apart.
func newBridge(from, to Point, d float64) bridge {
	step := to.Sub(from)
	half := step.Length() / 2
	up := step.Left().Unit().Mul(math.Sqrt(max(0, d*d-half*half)))
	// A chord of a disc that is much longer than it is high lies h = l²/8d within it.
	piece := math.Sqrt(8 * roundness * d)
	return bridge{from, to, d, from.Toward(to, 0.5).Add(up), 2 * half / piece}
}

// over reports whether the bridge passes over a point or touches it.
func (b bridge) over(q Point) bool {
	if b.pieces <= 1 {
		return b.to.Sub(b.from).Unit().Cross(q.Sub(b.from)) <= touch
	}
	return q.Distance(b.centre) >= b.d-touch
}

// cuts reports whether the bridge, if it is an arc, leads below a straight bridge between
// two points of a path: what that hides it might rest on.
func (b bridge) cuts(p Path, i, j int) bool {
	if b.pieces <= 1 || j == i+1 || newBridge(p[i], p[j], b.d).pieces > 1 {
		return false
	}
	foot, _ := nearestOnSegment(p[i], p[j], b.centre)
	return !b.over(foot)
}

// hides reports whether the part of a path that it bridges is a crowded hollow, all
// of it below the bridge and narrow enough.
func (b bridge) hides(part Path) bool {
	along := b.to.Sub(b.from).Unit()
	if float64(len(part)-1) <= crowded*b.pieces || along == (Point{}) {
		return false
	}
	least, most := 0.0, 0.0
	for _, q := range part {
		if !b.over(q) {
			return false
		}
		at := q.Sub(b.from).Dot(along)
		least, most = min(least, at), max(most, at)
	}
	return len(part) > 2 && most-least <= widestHollow*b.d
}

// reach returns how far from the middle of the disc a hollow goes, in mm.
func (b bridge) reach(hollow Path) float64 {
	most := 0.0
	for _, q := range hollow {
		most = max(most, q.Distance(b.centre))
	}
	return most
}

// between returns the points of the bridge between its ends, which lie on the
// disc.
func (b bridge) between() Path {
	var p Path
	arm, end := b.from.Sub(b.centre), b.to.Sub(b.centre)
	pieces := math.Ceil(b.pieces)
	turn := Turn(arm, end) / pieces
	for k := 1.0; k < pieces; k++ {
		sin, cos := math.Sincos(turn * k)
		p = append(p, b.centre.Add(Point{arm.X*cos - arm.Y*sin, arm.X*sin + arm.Y*cos}))
	}
	return p
}
