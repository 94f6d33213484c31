package piece

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A curve that is read point by point bends to and fro where a point is
// misread. Such a point lies beside the curve that goes through all others, farther than
// careful reading explains, and without it the curve changes the sense of its bend at least
// twice less. A curve that is meant to change it, such as the cap of a sleeve, goes on to do so
// without any one point. Of each edge the worst point is named.

const (
	// besideCurve bounds how far a point that was read to 1/16 in lies beside the curve through
	// the others, in mm: its own number and those that the curve goes by are each off by up to
	// 1/32 in, and seldom all of them by so much and away from each other (derived).
	besideCurve = 25.4 * 3 / 32
	// leastStepRead and mostStepRead bound how far apart points stand, in mm, that are read
	// one by one and close enough to tell how the curve goes: a pen that is led along brings
	// in more, and where they stand far apart, as on either side of the top of a cap, each
	// tells what no other does.
	leastStepRead, mostStepRead = 5, 25.4 * 2
	// fewestRead is how many points a curve has at least of which one can be told to be wrong.
	fewestRead = 6
	// straightOn bounds how far a point lies, in mm, beside a curve that runs straight on there:
	// what a number in a file is rounded by.
	straightOn = 0.1
	// curveReach is how many points to each side of it a place of a smooth curve goes by: what
	// one does to the curve falls to about a quarter from each to the next (derived).
	curveReach = 5
)

// misread is a point that is likely wrong.
type misread struct {
	point int     // in the order walked
	off   float64 // in mm
}

// bendsToAndFro says of a smooth edge which of its points may be misread.
func (m *remarker) bendsToAndFro(e *Edge) {
	c := e.curve
	if c == nil || len(c.points) < fewestRead {
		return
	}
	worst := misread{}
	for i := 1; i < len(c.points)-1; i++ {
		if off := c.misreadBy(i); off > worst.off {
			worst = misread{i, off}
		}
	}
	if worst.point == 0 {
		return
	}
	from, at, to := c.number(worst.point-2), c.number(worst.point), c.number(worst.point+2)
	m.say(c.given.On(e.Place, at-1), "the curve bends to and fro between points %d and %d; point %d may be misread by about %s",
		min(from, to), max(from, to), at, m.unit.OnRuler(worst.off/c.enlarged))
}

// misreadBy returns how far an inner point lies beside the curve through the others, in mm,
// where it is likely wrong; else 0.
func (c *smoothCurve) misreadBy(i int) float64 {
	before, after := c.points[i].Distance(c.points[i-1]), c.points[i+1].Distance(c.points[i])
	if min(before, after) < leastStepRead || max(before, after) > mostStepRead*c.enlarged {
		return 0
	}
	near, k := c.around(i)
	without := near
	without.points = slices.Delete(slices.Clone(near.points), k, k+1)
	if near.changes()-without.changes() < 2 {
		return 0
	}
	curve := plane.NewTree(without.path())
	if off := curve.Distance(c.points[i], math.Inf(1)); off > besideCurve*c.enlarged {
		return off
	}
	return 0
}

// around returns the part of a curve near a point, and the number of the point in it.
func (c *smoothCurve) around(i int) (near smoothCurve, at int) {
	first, end := max(0, i-curveReach), min(len(c.points), i+curveReach+1)
	near = smoothCurve{points: c.points[first:end]}
	if first == 0 {
		near.start = c.start
	}
	if end == len(c.points) {
		near.end = c.end
	}
	return near, i - first
}

// changes counts how often a curve changes the sense of its bend.
func (c *smoothCurve) changes() int {
	n, last := 0, 0.0
	bend := func(from, to plane.Point) {
		by := plane.Turn(from, to) * min(from.Length(), to.Length()) / 2
		if math.Abs(by) < straightOn {
			return
		}
		if by*last < 0 {
			n++
		}
		last = by
	}
	p := c.points
	for i := 1; i < len(p)-1; i++ {
		bend(p[i].Sub(p[i-1]), p[i+1].Sub(p[i]))
	}
	return n
}
