package piece

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A line of a pleat in an edge that begins in the allowance of the edge beside
// it, or crosses the stitch line of its own edge beyond the end of what is sewn, lies where the
// seam of the other edge runs over it. In a hem, or on the fold of the cloth, it lies on purpose.

// pleatsInSeams warns of pleats in edges that the seam of the edge beside them takes in, once for
// each such edge of a set.
func (m *remarker) pleatsInSeams() {
	type of struct {
		key  string
		edge int
	}
	var told []of
	for _, p := range m.piece.EdgePleats {
		for i, line := range []plane.Path{p.fold, p.placement} {
			in, ok := m.piece.takenInBeside(p.Edge, line, m.shown())
			if e := m.piece.Edges[in]; ok && e.Allowance > 0 && e.Hem == 0 && !slices.Contains(told, of{p.Key, in}) {
				told = append(told, of{p.Key, in})
				_, _, away := e.Path.Nearest(line[0])
				m.say(p.Place, "the pleat lies in the allowance of %q: its %s line begins %s from the cut edge, and the seam takes %s",
					e.Key, [...]string{"fold", "placement"}[i], m.unit.OnRuler(away), m.unit.AsWritten(e.Allowance))
			}
		}
	}
}

// takenInBeside returns the neighbour of an edge in whose allowance a line lies that runs from the
// edge into the piece, by more than within.
func (p *Piece) takenInBeside(edge int, line plane.Path, within float64) (neighbour int, ok bool) {
	before, after := p.Neighbours(edge)
	for _, n := range []int{before, after} {
		if _, _, away := p.Edges[n].Path.Nearest(line[0]); away < p.Edges[n].Allowance-within {
			return n, true
		}
	}
	e := p.Edges[edge]
	crossed := plane.Crossings(plane.NewTree(line), plane.NewTree(e.Line))
	if len(crossed) == 0 {
		return 0, false
	}
	at := crossed[0].At
	if _, _, away := e.Sewn.Nearest(at); away <= within {
		return 0, false
	}
	if at.Distance(e.Sewn[0]) < at.Distance(e.Sewn[len(e.Sewn)-1]) {
		return before, true
	}
	return after, true
}
