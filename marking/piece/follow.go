package piece

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: where an edge is drawn anew, as another neck over that of a piece or of
// a file, the edges beside it follow. One on which it ends is cut off there, and one that
// points to its end runs on straight to it; so nothing but the neck need be written. Edges
// that do neither stay, and the outline is open; so does an arc, which does not run on straight.

const (
	// followReach bounds how far, in mm, from the course of an edge the end of one drawn
	// anew may lie for that edge to follow: what a point may be off that was read to the
	// nearest 1/16 in.
	followReach = 1.6

	// curvePins is at how many places between its last point and its new end a curve that
	// is cut off is held to its course. A curve through its ends alone would bend anew.
	curvePins = 4

	// leastSpan bounds, in mm, how near to its new end a point of an edge may lie and stay.
	leastSpan = 1
)

// endsOnNone is the hint for an edge drawn anew that no other follows.
const endsOnNone = "let the edge that is drawn anew end on the one beside it, or where that points to, and it follows; or draw that one anew too"

// followed returns the edges of a piece, with those that follow their neighbours.
func followed(edges []source.EdgeSpec) []source.EdgeSpec {
	if !slices.ContainsFunc(edges, func(e source.EdgeSpec) bool { return e.Redrawn }) {
		return edges
	}
	edges = slices.Clone(edges)
	for i, anew := range edges {
		if !anew.Redrawn || len(anew.Points.V) < 2 {
			continue
		}
		for _, to := range []plane.Point{anew.Points.V[0], anew.Points.V[len(anew.Points.V)-1]} {
			if meetsAnother(edges, i, to) {
				continue
			}
			best, course := followReach, -1
			var led plane.Path
			for k, e := range edges {
				if e.Redrawn || len(e.Points.V) < 2 {
					continue
				}
				if path, off := ledTo(e, to, openEnds(edges, k)); path != nil && off <= best {
					best, course, led = off, k, path
				}
			}
			if course >= 0 {
				edges[course].Points = edges[course].Points.Through(led)
			}
		}
	}
	return edges
}

// meetsAnother reports whether an end of another edge than edge i lies at a place.
func meetsAnother(edges []source.EdgeSpec, i int, at plane.Point) bool {
	return slices.ContainsFunc(edges, func(e source.EdgeSpec) bool {
		n := len(e.Points.V)
		return e.Key != edges[i].Key && n > 1 && min(e.Points.V[0].Distance(at), e.Points.V[n-1].Distance(at)) <= cornerTolerance
	})
}

// openEnds tells of the first and the last point of an edge whether no other edge ends there.
func openEnds(edges []source.EdgeSpec, k int) [2]bool {
	points := edges[k].Points.V
	return [2]bool{!meetsAnother(edges, k, points[0]), !meetsAnother(edges, k, points[len(points)-1])}
}

// ledTo returns an edge with one of its open ends at a place, and how far that lay off its
// course; nil where it has none.
func ledTo(e source.EdgeSpec, to plane.Point, open [2]bool) (led plane.Path, off float64) {
	points := plane.Path(e.Points.V)
	switch {
	case open[0] && open[1]: // the nearer one
		open[0] = points[0].Distance(to) <= points[len(points)-1].Distance(to)
	case !open[0] && !open[1]:
		return nil, 0
	}
	if !open[0] {
		return endingAt(points, e, to)
	}
	if led, off = endingAt(points.Reversed(), e, to); led != nil {
		led = led.Reversed()
	}
	return led, off
}

// endingAt returns the points of an edge with its last end at a place, and how far that lay off
// its course; nil where nothing is left of it.
func endingAt(points plane.Path, e source.EdgeSpec, to plane.Point) (plane.Path, float64) {
	course := points
	switch {
	case e.Centre.Given() && len(points) <= 3:
		course = arcThrough(points, e.Centre.V)
	case e.Smooth:
		course = plane.Curve(points, plane.Point{}, plane.Point{})
	}
	end, way := course[len(course)-1], course.EndDirection()
	_, along, off := course.Nearest(to)
	if ahead := to.Sub(end).Dot(way); ahead > 0 && !e.Centre.Given() {
		if aside := to.Sub(end.Add(way.Mul(ahead))).Length(); aside < off || along >= course.Length() {
			return append(slices.Clone(points), to), aside
		}
	}
	var kept plane.Path
	for _, q := range points {
		if _, at, _ := course.Nearest(q); at < along-leastSpan {
			kept = append(kept, q)
		}
	}
	if e.Smooth && len(kept) > 0 {
		_, from, _ := course.Nearest(kept[len(kept)-1])
		for n := 1; n <= curvePins; n++ {
			q, _ := course.At(from + (along-from)*float64(n)/(curvePins+1))
			kept = append(kept, q)
		}
	}
	if len(kept) == 0 {
		return nil, 0
	}
	return append(kept, to), off
}
