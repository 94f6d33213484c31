package marking

import (
	"math"

	"tuckmark/marking/plane"
)

// leastLine is the length, in mm, below which a stretch of a line, or of cloth
// between two lines, is nothing but rounding.
const leastLine = 0.05

// stretch is the part of a line from one distance along it to another, in mm.
type stretch struct{ from, to float64 }

// insideStretches returns the parts of a line that lie inside an outline, in
// order. Parts that only touch it, or run along it, are not inside.
func insideStretches(outline, line *plane.Tree) []stretch {
	var inside []stretch
	for _, s := range divide(outline, line) {
		middle := line.At((s.from + s.to) / 2)
		if s.to-s.from < samePoint || !outline.Holds(middle) ||
			outline.Nearer(middle, math.Min(samePoint, (s.to-s.from)/1000)) {
			continue
		}
		if n := len(inside); n > 0 && s.from-inside[n-1].to < samePoint {
			inside[n-1].to = s.to
		} else {
			inside = append(inside, s)
		}
	}
	return inside
}

// keeps reports whether a line stays on the piece. It may run along the
// outline, as the placement line of a pleat at the very end of a strip does.
func (p *Piece) keeps(line plane.Path) bool {
	tree := plane.NewTree(line)
	for _, s := range divide(p.tree, tree) {
		middle := tree.At((s.from + s.to) / 2)
		if !p.tree.Holds(middle) && !p.tree.Nearer(middle, leastLine) {
			return false
		}
	}
	return true
}

// divide cuts a line wherever it meets an outline.
func divide(outline, line *plane.Tree) []stretch {
	var parts []stretch
	from := 0.0
	for _, c := range plane.Crossings(line, outline) {
		parts = append(parts, stretch{from, c.A})
		from = c.A
	}
	return append(parts, stretch{from, line.Length()})
}
