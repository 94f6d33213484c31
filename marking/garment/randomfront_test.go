package garment

import (
	"fmt"
	"strings"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// A random front, in mm: the centre at x = 0, the hem at y = 0, a smooth neck, a
// slanted shoulder and a slanted side, with tucks or pleats beside the centre, and
// perhaps growth tucks beside the hem. All of it is turned by some angle. What its
// folds do is worked out here again, from the rule that a strip of two widths comes
// to lie as a flap of one beside the line its sides meet on.

// pointsOf writes points of an edge, turned by an angle.
func pointsOf(angle float64, all ...plane.Point) string {
	var words []string
	for _, q := range all {
		q = sketch.Turned(q, angle)
		words = append(words, fmt.Sprintf("%.9f,%.9f", q.X, q.Y))
	}
	return strings.Join(words, " ")
}
