package garment

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what is sewn along a line is worked out from point to point of it, each time
// anew. How many points that comes to is reckoned before any of it is done.

// mostSewnAlong bounds how many points the edges and lines have together that seams, trims, ruffles
// and bindings name, each as often as it is named. A gown of 100 edges, each traced with 200 points
// and named by four of them, has 80,000.
const mostSewnAlong = 500_000

// within reports whether what joins the pieces can be worked out, or notes why not.
func (j joiner) within() bool {
	points := 0
	count := func(at fault.Place, names []source.Text) {
		was := points
		for _, c := range j.courses(names) {
			points += len(c.line)
		}
		if was <= mostSewnAlong && points > mostSewnAlong { // it is told once
			j.found.Add(at, source.ThinnedPoints+"; or divide the file",
				"the edges and lines that seams, trims, ruffles and bindings name have, as far as those of this one, %s points; at most %s are worked out",
				wording.Thousands(points), wording.Thousands(mostSewnAlong))
		}
	}
	for _, s := range j.spec.Seams {
		count(s.Place, s.Sides[0])
		count(s.Place, s.Sides[1])
	}
	for _, s := range j.spec.Trims {
		count(s.Place, s.Along)
	}
	for _, s := range j.spec.Ruffles {
		count(s.Place, s.Along)
	}
	for _, s := range j.spec.Bindings {
		count(s.Place, s.Along)
	}
	return points <= mostSewnAlong
}
