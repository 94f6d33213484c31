package sheet

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. A cross on a line of the tuck sheet is laid on the same one of the
// cutting sheet. A line has one near either end.

const (
	crossAway = 25.4     // of a cross from the end of its line, in mm: clear of a seam
	crossArm  = 25.4 / 4 // of a cross, in mm
)

// crossesOn returns the places of the two crosses on a line, none where it is too
// short for them.
func crossesOn(line plane.Path) []plane.Point {
	long := line.Length()
	if long < 4*crossAway {
		return nil
	}
	first, _ := line.At(crossAway)
	last, _ := line.At(long - crossAway)
	return []plane.Point{first, last}
}

// addCross adds the two arms of a cross, one of them along a direction.
func addCross(m *mark.Marking, at, along plane.Point) {
	for _, arm := range []plane.Point{along.Mul(crossArm), along.Left().Mul(crossArm)} {
		m.Add(mark.Cross, "", plane.Path{at.Sub(arm), at.Add(arm)})
	}
}
