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
//     so that they are left and right. What is cut once for a garment is cut as it is
//     drawn for every one.

// item is something to be cut.
type item struct {
	name string
	// outline is closed, counter-clockwise, as it is drawn flat; half the piece where
	// it has a fold, all of it to one side of that. Without an area it is not laid.
	outline plane.Path
	// grain is the direction of the cloth's length on the outline, of length 1. It has
	// no arrow: the thing may be turned end for end.
	grain plane.Point
	count int        // how many are cut of it for one garment, at least 1
	fold  plane.Path // two points: the straight edge that lies on the fold; nil where none
	torn  bool       // a rectangle that is torn across the whole width of the cloth
	// garments is for how many garments it is cut, at least 1.
	garments int
}

// isLaid reports whether there is anything to be laid.
func (i item) isLaid() bool { return i.count > 0 && math.Abs(i.outline.Area()) >= piece.LeastArea }

// foldsAlongGrain reports whether the fold runs along the grain.
func (i item) foldsAlongGrain() bool {
	return math.Abs(i.foldDirection().Cross(i.grain)) <= piece.BesideGrain
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
	if i.fold == nil {
		return newPose(i.name, i.outline, i.grain)
	}
	along := i.foldDirection()
	whole := piece.WholeOutline(i.outline, i.fold[0], along.Left().Mul(-1))
	if !i.foldsAlongGrain() {
		along = i.grain
	}
	return newPose(i.name, whole, along)
}
