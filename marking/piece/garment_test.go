package piece_test

import (
	"math"

	"tuckmark/marking/plane"
)

// Outlines as they are drafted for children, of any sensible measures: none of
// them may be refused, and each line is looked at place by place, with nothing
// of the code under test but the points of its lines. The measures are common
// practice.

// sampled returns places along a path, a millimetre or two apart.
func sampled(p plane.Path) plane.Path {
	var places plane.Path
	for i := 1; i < len(p); i++ {
		n := math.Ceil(p[i].Distance(p[i-1]) / 2)
		for k := range int(n) {
			places = append(places, p[i-1].Toward(p[i], float64(k)/n))
		}
	}
	return append(places, p[len(p)-1])
}
