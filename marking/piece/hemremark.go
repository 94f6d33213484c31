package piece

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: what is remarked of all that lies in what a hem folds back. A placket
// and a facing that are folded back are hems. Distances are square to the edge. With a hem
// of depth h and a turn of t (derived):
//
//   - It is folded t + h from the cut edge. What lies nearer is folded to the wrong side.
//   - There it covers h of the cloth beside its fold, the turn lying inside.
//   - A tuck of width w that is stitched s from that fold, and pressed toward it, has its own
//     fold w - s beyond: it hangs over the finished edge.

const (
	// runsAlong bounds the cosine of the angle between what lies along an edge and the
	// edge (30 degrees). What is steeper runs across the hem, and is folded back with it.
	runsAlong = 0.866
	// marksFold is how near a notch lies to the fold of a hem, or to its turn, to be there
	// for it, in mm: as fine as a ruler is read.
	marksFold = 25.4 / 16
)

// hems remarks on what lies in the hems of the piece, edge by edge.
func (m *remarker) hems() {
	for i := range m.piece.Edges {
		e := &m.piece.Edges[i]
		if e.Hem == 0 {
			continue
		}
		m.foldsAlong(e)
		m.pleatsIn(e)
		m.linesIn(e)
		m.notchesIn(i)
	}
	m.hemEnds()
}

// takes says how much of the cloth a hem takes.
func (m *remarker) takes(e *Edge) string {
	if e.Turn == 0 {
		return "the hem takes " + m.unit.OnRuler(e.Allowance)
	}
	return "hem and turn take " + m.unit.OnRuler(e.Allowance)
}

// endsInHem warns of tucks that end in a hem.
func (m *remarker) endsInHem(t *TuckRow) {
	r := t.FoldRow
	hung := m.piece.hung(r.ends)
	for i, e := range m.piece.Edges {
		if e.Hem == 0 || slices.Contains(hung, i) {
			continue
		}
		edge := plane.NewTree(e.Path)
		way := e.Given[len(e.Given)-1].Sub(e.Given[0]).Unit()
		if math.Abs(r.Base.Along.Dot(way)) >= runsAlong {
			continue // it lies in the hem, or beside it, over its whole length
		}
		for _, f := range r.Folds {
			away := e.Allowance
			for _, v := range f.End.Levels() {
				away = edge.Distance(r.Base.At(m.piece.stitchingDrawn(f), v), away)
			}
			if away < e.Allowance-m.shown() {
				m.say(r.ends.Place(), "%s ends in the hem, %s from the cut edge of %q", r.name(f), m.unit.OnRuler(away), e.Key)
				break
			}
		}
	}
}

// pleatsIn remarks on pleats in other edges that lie in a hem, and on those in its own
// edge that do not come out of it.
func (m *remarker) pleatsIn(e *Edge) {
	edge := plane.NewTree(e.Path)
	way := e.Given[len(e.Given)-1].Sub(e.Given[0]).Unit()
	for _, p := range m.piece.EdgePleats {
		if m.piece.Edges[p.Edge].Key == e.Key {
			if long := p.fold.Length(); long <= e.Allowance+SamePoint {
				m.say(p.Place, "the pleat lies in the hem of %q: it is %s long, and %s", e.Key, m.unit.AsWritten(long), m.takes(e))
			}
			continue
		}
		if math.Abs(p.fold.StartDirection().Dot(way)) < runsAlong {
			continue
		}
		away := e.Allowance
		for _, q := range p.patch {
			away = edge.Distance(q, away)
		}
		if away < e.Allowance-m.shown() {
			m.say(p.Place, "the pleat lies in the hem of %q: it comes within %s of the cut edge, and %s", e.Key, m.unit.OnRuler(away), m.takes(e))
		}
	}
}

// linesIn remarks on centre and placement lines that lie in a hem with all their length.
// Fold and stitch lines may be the hem's own.
func (m *remarker) linesIn(e *Edge) {
	edge := plane.NewTree(e.Path)
	for _, l := range m.piece.Lines {
		if l.Role != mark.Centre && l.Role != mark.Placement {
			continue
		}
		least, most := math.Inf(1), 0.0
		line := plane.NewTree(l.Path)
		for share := range 9 {
			away := edge.Distance(line.At(line.Length()*float64(share)/8), math.Inf(1))
			least, most = min(least, away), max(most, away)
		}
		if most < e.Allowance-m.shown() {
			m.say(l.Place, "the line lies in the hem of %q, which is folded back: it comes within %s of the cut edge, and %s", e.Key, m.unit.OnRuler(least), m.takes(e))
		}
	}
}

// notchesIn remarks on notches in the edge of a hem, and on those in other edges that are
// folded back with it, but for those at its fold or its turn.
func (m *remarker) notchesIn(i int) {
	e := &m.piece.Edges[i]
	edge := plane.NewTree(e.Path)
	for _, n := range m.piece.Notches {
		at := n.path[0]
		if n.Edge == i {
			m.say(n.Place, "the notch lies in the cut edge of the hem of %q, which is folded back: nothing is matched there", e.Key)
			continue
		}
		away := edge.Distance(at, e.Allowance)
		if away < e.Allowance-marksFold && math.Abs(away-e.Turn) > marksFold {
			m.say(n.Place, "the notch lies in the hem of %q, which is folded back: it is %s from the cut edge, and %s", e.Key, m.unit.OnRuler(away), m.takes(e))
		}
	}
}
