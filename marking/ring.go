package marking

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. Every segment of an outline belongs to an edge of its piece, and
// goes on belonging to it wherever folds, or the knife, take the outline. A ring begins
// where an edge does.

// ring is an outline, closed and counter-clockwise, or a part of one, which is open,
// with the edges it is made of.
type ring struct {
	path  plane.Path
	edges []int // of each segment of the path, the number of its edge
}

// ringOf returns the outline of a piece as it is drawn.
func ringOf(edges []Edge, outline plane.Path) ring {
	r := ring{path: outline}
	for i, e := range edges {
		for range len(e.Path) - 1 {
			r.edges = append(r.edges, i)
		}
	}
	return r
}

// edgeRun is a part of a ring that belongs to one edge.
type edgeRun struct {
	edge int
	path plane.Path
}

// runs returns the edges in their order round the ring. An edge that the folds part
// comes in several runs.
func (r ring) runs() []edgeRun {
	var runs []edgeRun
	for i, edge := range r.edges {
		if n := len(runs); n > 0 && runs[n-1].edge == edge {
			runs[n-1].path = append(runs[n-1].path, r.path[i+1])
			continue
		}
		runs = append(runs, edgeRun{edge, plane.Path{r.path[i], r.path[i+1]}})
	}
	return runs
}

// toCorner returns a closed ring so turned that it begins where an edge begins.
func (r ring) toCorner() ring {
	n := len(r.edges)
	for i := range r.edges {
		if r.edges[i] != r.edges[(i+n-1)%n] {
			return ring{slices.Concat(r.path[i:n], r.path[:i+1]), slices.Concat(r.edges[i:], r.edges[:i])}
		}
	}
	return r
}

// without returns the ring but for the segments of some edges, as an open one; ok is
// false where these are not one stretch of it.
func (r ring) without(group []int) (rest ring, ok bool) {
	n := len(r.edges)
	in := func(k int) bool { return slices.Contains(group, r.edges[(k+n)%n]) }
	start := -1 // the first segment behind the stretch
	for k := range n {
		if !in(k) && in(k-1) {
			if start >= 0 {
				return ring{}, false
			}
			start = k
		}
	}
	if start < 0 {
		return ring{}, false
	}
	rest.path = plane.Path{r.path[start]}
	for k := start; k < start+n && !in(k); k++ {
		rest.path = append(rest.path, r.path[k%n+1])
		rest.edges = append(rest.edges, r.edges[k%n])
	}
	return rest, true
}

// between returns the part of a ring from one distance along it to another, in mm.
func (r ring) between(from, to float64) ring {
	part := ring{path: r.path.Between(from, to)}
	k, end := 0, r.path[1].Distance(r.path[0]) // a segment of the ring, and how far along it ends
	along := from
	for i := 1; i < len(part.path); i++ {
		long := part.path[i].Distance(part.path[i-1])
		for middle := along + long/2; k+1 < len(r.edges) && end < middle; {
			k++
			end += r.path[k+1].Distance(r.path[k])
		}
		part.edges = append(part.edges, r.edges[k])
		along += long
	}
	return part
}

// add leads an open ring, which shares its path with no other, on to a place by a
// segment of an edge; not where it ends there already.
func (r *ring) add(q plane.Point, edge int) {
	if n := len(r.path); n > 0 {
		if q.Distance(r.path[n-1]) <= samePoint {
			return
		}
		r.edges = append(r.edges, edge)
	}
	r.path = append(r.path, q)
}

// close closes an open ring, which shares its path with no other, by a segment of an
// edge where its ends do not meet.
func (r *ring) close(edge int) {
	first := r.path[0]
	r.add(first, edge)
	r.path[len(r.path)-1] = first
}

// opened returns the ring of both halves of a piece of which this is one, which meet
// at the edge axis: a line through origin, square to out.
func (r ring) opened(axis int, origin, out plane.Point) ring {
	// The ring begins where an edge does, so the axis is one run of it.
	first := slices.Index(r.edges, axis)
	beyond := first
	for beyond < len(r.edges) && r.edges[beyond] == axis {
		beyond++
	}
	edges := slices.Concat(r.edges[beyond:], r.edges[:first])
	for _, edge := range slices.Backward(slices.Clone(edges)) {
		edges = append(edges, edge)
	}
	return ring{bothHalves(r.path, beyond%len(r.edges), first, origin, out), edges}
}
