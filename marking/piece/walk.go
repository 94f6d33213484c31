package piece

import (
	"fmt"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// walk is an edge as a maker measures along it: from the corner with one
// neighbour to the corner with the other.
type walk struct {
	edge     int
	from, to int // the neighbours
	path     plane.Path
	inward   float64 // +1 where the piece lies to the left of the walk, -1 to the right
}

// findWalk finds the edge, and the corner at which distances along it start.
func findWalk(piece *Piece, edge, from source.Text, found *Findings) (walk, bool) {
	i, f := found.findEdge(piece, edge), found.findEdge(piece, from)
	if i < 0 || f < 0 {
		return walk{}, false
	}
	before, after := piece.Neighbours(i)
	path := piece.Edges[i].Given
	switch f {
	case before:
		return walk{i, before, after, path, 1}, true
	case after:
		return walk{i, after, before, path.Reversed(), -1}, true
	}
	found.Add(from.Place, fmt.Sprintf("from is %q or %q", piece.Edges[before].Key, piece.Edges[after].Key),
		"distances along %q start at a corner with an edge next to it, and %q is not", edge.V, from.V)
	return walk{}, false
}

// cutBeside returns where one comes to the cutting line from a place of an edge as it is
// drawn, going against a direction that leads into the piece.
func (p *Piece) cutBeside(edge int, from, in plane.Point) plane.Point {
	if p.Edges[edge].inside == 0 {
		return from
	}
	out := plane.NewTree(plane.Path{from, from.Sub(in.Mul(p.Tree.Bounds().Width() + p.Tree.Bounds().Height()))})
	if c := plane.Crossings(out, p.Tree); len(c) > 0 {
		return c[0].At
	}
	return from
}

// firstAt returns how far along a path, going on from the distance at in the
// given direction (+1 or -1), the first place lies at which away grows to reach.
// away must be 0 at the start and, along any straight line, fall before it
// rises, as a distance does. ok is false when the path ends before.
func firstAt(path plane.Path, at, direction, reach float64, away func(plane.Point) float64) (along float64, ok bool) {
	if direction < 0 {
		along, ok = firstAt(path.Reversed(), path.Length()-at, 1, reach, away)
		return path.Length() - along, ok
	}
	walked := 0.0
	for i := 1; i < len(path); i++ {
		a, b := path[i-1], path[i]
		l := a.Distance(b)
		// The nearer end of what is left of this segment is within reach, so
		// the segment leaves the reach at most once.
		if walked+l > at && away(b) >= reach-Rounding {
			low, high := max(0, at-walked), l
			for range 60 { // halving: below rounding long before that
				if middle := (low + high) / 2; away(a.Toward(b, middle/l)) < reach {
					low = middle
				} else {
					high = middle
				}
			}
			return walked + high, true
		}
		walked += l
	}
	return 0, false
}
