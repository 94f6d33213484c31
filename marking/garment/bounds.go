package garment

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what is sewn along a line is worked out from point to point of it, each time
// anew. How many points that comes to is counted while the ties are found, before any of it is done.

// mostSewnAlong bounds how many points the edges and lines have together that seams, trims, ruffles
// and bindings name, each as often as it is named. A gown of 100 edges, each traced with 200 points
// and named by four of them, has 80,000.
const mostSewnAlong = 500_000

// counted returns what names that have been checked stand for, as courses does, and counts their
// points. That there are too many is told once.
func (j *joiner) counted(at fault.Place, names []source.Text) []Course {
	all, was := j.courses(names), j.points
	for _, c := range all {
		j.points += len(c.line)
	}
	if was <= mostSewnAlong && j.points > mostSewnAlong {
		j.found.Add(at, source.ThinnedPoints+"; or divide the file",
			"the edges and lines that seams, trims, ruffles and bindings name have, as far as those of this one, %s points; at most %s are worked out",
			wording.Thousands(j.points), wording.Thousands(mostSewnAlong))
	}
	return all
}
