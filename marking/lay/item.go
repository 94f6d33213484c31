package lay

import (
	"math"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file: how a thing lies before it has a place.
//
//   - Its grain runs along the cloth. A fold that runs along the grain is taken for it.
//   - A piece on the fold lies there by its half, or is opened out and lies by the
//     whole; then it is its own mirror image.
//   - Of more than one of any other piece on single cloth every second is turned over,
//     so that they are left and right.

// item is something to be cut.
type item struct {
	name string
	// outline is closed, counter-clockwise, as it is drawn flat; half the piece where
	// it has a fold, all of it to one side of that. Without an area it is not laid.
	outline plane.Path
	// grain is the direction of the cloth's length on the outline, of length 1. It has
	// no arrow: the thing may be turned end for end.
	grain plane.Point
	count int        // how many are cut, at least 1
	fold  plane.Path // two points: the straight edge that lies on the fold; nil where none
	torn  bool       // a rectangle that is torn across the whole width of the cloth
}

// isLaid reports whether there is anything to be laid.
func (i item) isLaid() bool { return i.count > 0 && math.Abs(i.outline.Area()) >= piece.LeastArea }

// foldsAlongGrain reports whether the fold runs along the grain.
func (i item) foldsAlongGrain() bool {
	return math.Abs(i.foldDirection().Cross(i.grain)) <= piece.AlongGrain
}

// foldDirection is the direction of the fold, of length 1, with the piece to the right
// of it.
func (i item) foldDirection() plane.Point {
	along := i.fold[1].Sub(i.fold[0]).Unit()
	farthest := 0.0 // to the left
	for _, q := range i.outline {
		if u := q.Sub(i.fold[0]).Dot(along.Left()); math.Abs(u) > math.Abs(farthest) {
			farthest = u
		}
	}
	if farthest > 0 {
		return along.Mul(-1)
	}
	return along
}

// opened returns the whole of a thing, where half of it is drawn the two halves
// together. Its fold runs along the cloth, or its grain where there is none or the two
// are not the same.
func (i item) opened() *pose {
	along := i.grain
	outline := i.outline
	if i.fold != nil {
		outline = i.wholeOutline()
		if i.foldsAlongGrain() {
			along = i.foldDirection()
		}
	}
	return newPose(i.name, outline, along)
}

// wholeOutline returns the outline of the whole of a piece of which the half is drawn.
// What lies between the ends of the fold comes to lie within it.
func (i item) wholeOutline() plane.Path {
	ring := i.outline[:len(i.outline)-1]
	nearest := func(to plane.Point) int {
		best := 0
		for k, q := range ring {
			if q.Distance(to) < ring[best].Distance(to) {
				best = k
			}
		}
		return best
	}
	// With the piece to its right the fold runs against the outline.
	along := i.foldDirection()
	from, to := nearest(i.fold[0]), nearest(i.fold[1])
	if i.fold[1].Sub(i.fold[0]).Dot(along) < 0 {
		from, to = to, from
	}
	return piece.BothHalves(i.outline, from, to, i.fold[0], along.Left())
}
