package piece

import "tuckmark/marking/plane"

// Rules of this file: what is remarked of all that lies in what a hem folds back.

// hem warns of tucks that lie in a hem, or end in one.
func (m *remarker) hem(t *TuckRow) {
	r := t.FoldRow
	if i := r.Base.Edge; i >= 0 && m.piece.Edges[i].Hem > 0 {
		if e, near := m.piece.Edges[i], t.first-t.Width; near < e.Allowance-SamePoint {
			m.say(r.place, "the first tuck lies in the hem: its stitching comes within %s of the cut edge, and hem and turn take %s",
				m.unit.OnRuler(near), m.unit.OnRuler(e.Allowance))
		}
	}
	for _, e := range m.piece.Edges {
		if e.Hem == 0 || e.Key == r.ends.Below.V {
			continue
		}
		edge := plane.NewTree(e.Path)
		for _, f := range r.Folds {
			if !f.End.Given {
				continue
			}
			if away := edge.Distance(r.Base.At(m.drawn(f), f.End.V), e.Allowance); away < e.Allowance-SamePoint {
				m.say(r.ends.Place(), "%s ends in the hem, %s from the cut edge of %q", r.name(f), m.unit.OnRuler(away), e.Key)
				break
			}
		}
	}
}
