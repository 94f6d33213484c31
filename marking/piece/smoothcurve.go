package piece

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: a smooth edge goes through its points, and comes to the fold of the
// cloth square where it nearly does.

// squareAtFold is how far, in radians (20 degrees), the first step of a
// smooth edge may stand from square to the fold it begins at and still
// be drawn square to it, as a neck must be to open without a point.
const squareAtFold = 20 * math.Pi / 180

// smoothCurve is what a smooth edge was drawn through, as the outline is walked.
type smoothCurve struct {
	points     plane.Path
	start, end plane.Point // directions in which it must set out and arrive, as plane.Curve takes them
	given      source.Points
	enlarged   float64 // how many times the points in the file
}

// path is the curve as it is drawn.
func (c *smoothCurve) path() plane.Path { return plane.Curve(c.points, c.start, c.end) }

// number is that of a point in the file, from 1 on; one beyond either end stands for that end.
func (c *smoothCurve) number(i int) int {
	at := c.points[min(max(i, 0), len(c.points)-1)]
	nearest := 0
	for k, q := range c.given.V {
		if at.Distance(q) < at.Distance(c.given.V[nearest]) {
			nearest = k
		}
	}
	return nearest + 1
}

// smoothEdge returns the curve of edge i. Where it begins or ends on the fold
// and nearly square to it, it is made square.
func smoothEdge(order []orientedEdge, i, fold int, enlarged float64) *smoothCurve {
	points := order[i].points
	n := len(order)
	var start, end plane.Point
	if fold >= 0 && fold != i {
		along := order[fold].points.StartDirection()
		if fold == (i+n-1)%n {
			start = squareStep(along, points[1].Sub(points[0]))
		}
		if fold == (i+1)%n {
			end = squareStep(along, points[len(points)-1].Sub(points[len(points)-2]))
		}
	}
	return &smoothCurve{points: points, start: start, end: end, given: order[i].spec.Points, enlarged: enlarged}
}

// squareStep returns the direction square to the fold that the step nearly
// has, or the zero step when it is too far from it.
func squareStep(fold, step plane.Point) plane.Point {
	square := fold.Left()
	if square.Dot(step) < 0 {
		square = square.Mul(-1)
	}
	if square.Dot(step.Unit()) < math.Cos(squareAtFold) {
		return plane.Point{}
	}
	return square
}
