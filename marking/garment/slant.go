package garment

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file. Lace that lies with its middle on a line ends there as the edge runs: where
// that slants or bends, one border of the lace is longer than its middle (plane geometry).

// Slant is by how much the longer borders are longer than the middle at the two ends of a length
// that lies on lines inside pieces; nothing where it lies along edges, or no width is known.
func (l TrimLength) Slant(width float64) length.Amount {
	more := 0.0
	for _, c := range l.Courses {
		if c.isEdge() {
			return length.Amount{Unit: l.Line.Unit}
		}
		for i, edge := range c.ends() {
			if edge < 0 || c.Piece.Edges[edge].OnFold {
				continue
			}
			q, out := c.line[0], c.line.StartDirection().Mul(-1)
			if i == 1 {
				q, out = c.line[len(c.line)-1], c.line.EndDirection()
			}
			more += float64(c.Times) * slantAt(c.Piece.Edges[edge].Line, q, out, width)
		}
	}
	return l.Line.Unit.AtLeast(more)
}

// slantAt is by how much the longer border of something so wide reaches farther out than its middle,
// where that comes to an edge near q; 0 where a border comes to another edge.
func slantAt(edge plane.Path, q, out plane.Point, width float64) float64 {
	tree := plane.NewTree(edge)
	reach := func(aside float64) (float64, bool) {
		from := q.Add(out.Left().Mul(aside))
		crossings := plane.Crossings(plane.NewTree(plane.Path{from.Sub(out.Mul(slantReach)), from.Add(out.Mul(slantReach))}), tree)
		farthest := math.Inf(-1)
		for _, c := range crossings {
			farthest = max(farthest, c.A)
		}
		return farthest, len(crossings) > 0
	}
	middle, ok := reach(0)
	if !ok {
		return 0
	}
	more := 0.0
	for _, aside := range []float64{width / 2, -width / 2} {
		if at, ok := reach(aside); ok {
			more = max(more, at-middle)
		}
	}
	return more
}

// slantReach is how far before and behind the end of a line its edge is looked for, in mm: more than
// an allowance, and less than a piece is long.
const slantReach = 60
