package piece

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: folds may hang from edges that lie next to each other, as from neck
// and shoulder. Their stitch lines are then joined where they are sewn to each other.

// hung returns the numbers of the edges that folds hang from, in order round the piece: that to or
// from which they run where they run to a line. There are none where one is not there, or they do
// not all lie next to each other, or folds run from edge to edge or from line to line.
func (p *Piece) hung(ends source.EndSpec) []int {
	for _, name := range []source.Text{ends.From, ends.To} {
		if i := p.EdgeNumber(name.V); name.Given() && i >= 0 {
			return []int{i}
		}
	}
	var named []int
	for _, name := range append([]source.Text{ends.Below}, ends.Also...) {
		i := p.EdgeNumber(name.V)
		if i < 0 || slices.Contains(named, i) {
			return nil
		}
		named = append(named, i)
	}
	for _, first := range named {
		order := []int{first}
		for n := len(p.Edges); len(order) < len(named) && slices.Contains(named, (order[len(order)-1]+1)%n); {
			order = append(order, (order[len(order)-1]+1)%n)
		}
		if len(order) == len(named) && len(order) < len(p.Edges) {
			return order
		}
	}
	return nil
}

// namesHung names the edges that folds hang from, for a message.
func (p *Piece) namesHung(ends source.EndSpec) string {
	if hung := p.hung(ends); ends.From.Given() && hung != nil {
		return wording.Quoted(p.Edges[hung[0]].Key)
	}
	return ends.Edges()
}

// checkHung returns the edges that folds hang from, or notes why they cannot.
func (p *Piece) checkHung(ends source.EndSpec, found *Findings) ([]int, bool) {
	ok := true
	for _, name := range append([]source.Text{ends.Below}, ends.Also...) {
		ok = found.findEdge(p, name) >= 0 && ok
	}
	if !ok {
		return nil, false
	}
	from := p.hung(ends)
	if from == nil {
		found.Add(ends.Below.Place, "name edges that follow each other round the piece, each once, and not all of them",
			"%s do not lie next to each other", ends.Edges())
	}
	return from, from != nil
}

// stitchLineOf returns the stitch lines of edges that follow each other as one line.
func (p *Piece) stitchLineOf(edges []int) plane.Path {
	first, last := p.Edges[edges[0]], p.Edges[edges[len(edges)-1]]
	if len(edges) == 1 {
		return first.Line
	}
	_, begins, _ := first.Line.Nearest(first.Sewn[0])
	_, ends, _ := last.Line.Nearest(last.Sewn[len(last.Sewn)-1])
	joined := first.Line.Between(0, begins)
	for _, i := range edges {
		joined = append(joined, p.Edges[i].Sewn...)
	}
	joined = append(joined, last.Line.Between(ends, last.Line.Length())...)
	return slices.CompactFunc(joined, func(a, b plane.Point) bool { return a.Distance(b) <= SamePoint })
}
