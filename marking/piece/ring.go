package piece

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. Every segment of an outline belongs to an edge of its piece, and
// goes on belonging to it wherever folds, or the knife, take the outline. A ring begins
// where an edge does.

// Ring is an outline, closed and counter-clockwise, or a part of one, which is open,
// with the edges it is made of.
type Ring struct {
	Path  plane.Path
	Edges []int // of each segment of the path, the number of its edge
}

// outlineOf returns the edges of a piece, as they are cut, as one closed path.
func outlineOf(edges []Edge) plane.Path {
	var outline plane.Path
	for _, e := range edges {
		outline = append(outline, e.Path[:len(e.Path)-1]...)
	}
	return append(outline, outline[0])
}

// ringOf returns the outline of a piece as it is drawn.
func ringOf(edges []Edge, outline plane.Path) Ring {
	r := Ring{Path: outline}
	for i, e := range edges {
		for range len(e.Path) - 1 {
			r.Edges = append(r.Edges, i)
		}
	}
	return r
}

// EdgeRun is a part of a ring that belongs to one edge.
type EdgeRun struct {
	Edge int
	Path plane.Path
}

// Runs returns the edges in their order round the ring. An edge that the folds part
// comes in several runs.
func (r Ring) Runs() []EdgeRun {
	var runs []EdgeRun
	for i, edge := range r.Edges {
		if n := len(runs); n > 0 && runs[n-1].Edge == edge {
			runs[n-1].Path = append(runs[n-1].Path, r.Path[i+1])
			continue
		}
		runs = append(runs, EdgeRun{edge, plane.Path{r.Path[i], r.Path[i+1]}})
	}
	return runs
}

// toCorner returns a closed ring so turned that it begins where an edge begins.
func (r Ring) toCorner() Ring {
	n := len(r.Edges)
	for i := range r.Edges {
		if r.Edges[i] != r.Edges[(i+n-1)%n] {
			return Ring{slices.Concat(r.Path[i:n], r.Path[:i+1]), slices.Concat(r.Edges[i:], r.Edges[:i])}
		}
	}
	return r
}

// Without returns the ring but for the segments of some edges, as an open one; ok is
// false where these are not one stretch of it.
func (r Ring) Without(group []int) (rest Ring, ok bool) {
	n := len(r.Edges)
	in := func(k int) bool { return slices.Contains(group, r.Edges[(k+n)%n]) }
	start := -1 // the first segment behind the stretch
	for k := range n {
		if !in(k) && in(k-1) {
			if start >= 0 {
				return Ring{}, false
			}
			start = k
		}
	}
	if start < 0 {
		return Ring{}, false
	}
	rest.Path = plane.Path{r.Path[start]}
	for k := start; k < start+n && !in(k); k++ {
		rest.Path = append(rest.Path, r.Path[k%n+1])
		rest.Edges = append(rest.Edges, r.Edges[k%n])
	}
	return rest, true
}

// Between returns the part of a ring from one distance along it to another, in mm.
func (r Ring) Between(from, to float64) Ring {
	part := Ring{Path: r.Path.Between(from, to)}
	k, end := 0, r.Path[1].Distance(r.Path[0]) // a segment of the ring, and how far along it ends
	along := from
	for i := 1; i < len(part.Path); i++ {
		long := part.Path[i].Distance(part.Path[i-1])
		for middle := along + long/2; k+1 < len(r.Edges) && end < middle; {
			k++
			end += r.Path[k+1].Distance(r.Path[k])
		}
		part.Edges = append(part.Edges, r.Edges[k])
		along += long
	}
	return part
}

// Add leads an open ring, which shares its path with no other, on to a place by a
// segment of an edge; not where it ends there already.
func (r *Ring) Add(q plane.Point, edge int) {
	if n := len(r.Path); n > 0 {
		if q.Distance(r.Path[n-1]) <= SamePoint {
			return
		}
		r.Edges = append(r.Edges, edge)
	}
	r.Path = append(r.Path, q)
}

// Close closes an open ring, which shares its path with no other, by a segment of an
// edge where its ends do not meet.
func (r *Ring) Close(edge int) {
	first := r.Path[0]
	r.Add(first, edge)
	r.Path[len(r.Path)-1] = first
}

// opened returns the ring of both halves of a piece of which this is one, which meet
// at the edge axis: a line through origin, square to out.
func (r Ring) opened(axis int, origin, out plane.Point) Ring {
	// The ring begins where an edge does, so the axis is one run of it.
	first := slices.Index(r.Edges, axis)
	beyond := first
	for beyond < len(r.Edges) && r.Edges[beyond] == axis {
		beyond++
	}
	edges := slices.Concat(r.Edges[beyond:], r.Edges[:first])
	for _, edge := range slices.Backward(slices.Clone(edges)) {
		edges = append(edges, edge)
	}
	return Ring{bothHalves(r.Path, beyond%len(r.Edges), first, origin, out), edges}
}
