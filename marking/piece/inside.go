package piece

import (
	"tuckmark/marking/plane"
)

// LeastLine is the length, in mm, below which a stretch of a line, or of cloth
// between two lines, is nothing but rounding.
const LeastLine = 0.05

// Stretch is the part of a line from one distance along it to another, in mm.
type Stretch struct{ From, To float64 }

// InsideStretches returns the parts of a line that lie inside an outline, in
// order. Parts that only touch it, or run along it, are not inside.
func InsideStretches(outline, line *plane.Tree) []Stretch {
	var inside []Stretch
	for _, s := range divide(outline, line) {
		middle := line.At((s.From + s.To) / 2)
		if s.To-s.From < SamePoint || !outline.Holds(middle) ||
			outline.Nearer(middle, min(SamePoint, (s.To-s.From)/1000)) {
			continue
		}
		inside = joinedOn(inside, s)
	}
	return inside
}

// joinedOn returns stretches in order with one more at their end: the last goes on where it
// begins at that.
func joinedOn(all []Stretch, s Stretch) []Stretch {
	if n := len(all); n > 0 && s.From-all[n-1].To < SamePoint {
		all[n-1].To = s.To
		return all
	}
	return append(all, s)
}

// keeps reports whether a line stays on the piece. It may run along the
// outline, as the placement line of a pleat at the very end of a strip does.
func (p *Piece) keeps(line plane.Path) bool {
	tree := plane.NewTree(line)
	for _, s := range divide(p.Tree, tree) {
		middle := tree.At((s.From + s.To) / 2)
		if !p.Tree.Holds(middle) && !p.Tree.Nearer(middle, LeastLine) {
			return false
		}
	}
	return true
}

// divide cuts a line wherever it meets an outline.
func divide(outline, line *plane.Tree) []Stretch {
	var parts []Stretch
	from := 0.0
	for _, c := range plane.Crossings(line, outline) {
		parts = append(parts, Stretch{from, c.A})
		from = c.A
	}
	return append(parts, Stretch{from, line.Length()})
}
