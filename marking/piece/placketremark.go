package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: a placket ends where its hem does and the edge goes on, or where its
// fold line ends on the piece. What is remarked is a tuck or pleat that takes up that very
// place: one part of it would lie on the placket and one on the seam below.

// hemEnd is where a hem ends and its edge goes on, as at the foot of a placket, or where
// the line of a fold ends on the piece.
type hemEnd struct {
	at   plane.Point
	way  plane.Point // of the edge, or of the line
	name string      // in a sentence
}

// hemEnds remarks on tucks and pleats that take up the very end of a placket. On a piece
// that is drawn finished they lie on one side of it.
func (m *remarker) hemEnds() {
	if m.piece.DrawnFinished {
		return
	}
	for _, end := range m.placketEnds() {
		for _, r := range m.piece.FoldRows() {
			if math.Abs(r.Base.Out.Dot(end.way)) < runsAlong {
				continue
			}
			for _, f := range r.Folds {
				u := r.Base.U(end.at)
				if u < f.Near+SamePoint || u > f.Far()-SamePoint || !m.reaches(r, f, end.at) {
					continue
				}
				m.say(r.Place, "%s lies on the end of %s: it takes up the cloth from %s to %s from %q, and the end lies at %s",
					r.name(f), end.name, m.unit.OnRuler(max(0, f.Near)), m.unit.OnRuler(f.Far()), r.Base.Name, m.unit.OnRuler(u))
			}
		}
	}
}

// reaches reports whether a fold goes as far along as a place in its strip.
func (m *remarker) reaches(r FoldRow, f Fold, at plane.Point) bool {
	v := r.Base.V(at)
	return slices.ContainsFunc(m.piece.stretches(r, f, f.At), func(s Stretch) bool { return v > s.From-f.Width && v < s.To+f.Width })
}

// placketEnds returns where hems end along an edge that goes on, and where fold lines end
// on the piece.
func (m *remarker) placketEnds() []hemEnd {
	var ends []hemEnd
	p := m.piece
	for i := range p.Edges {
		_, after := p.Neighbours(i)
		a, b := p.Edges[i], p.Edges[after]
		way := a.Given.EndDirection()
		if (a.Hem > 0) == (b.Hem > 0) || way.Dot(b.Given.StartDirection()) < runsAlong {
			continue
		}
		hemmed := a.Key
		if b.Hem > 0 {
			hemmed = b.Key
		}
		ends = append(ends, hemEnd{b.Given[0], way, fmt.Sprintf("the hem of %q", hemmed)})
	}
	for _, l := range p.Lines {
		if l.Role != mark.Fold {
			continue
		}
		for _, way := range []plane.Path{l.Path, l.Path.Reversed()} {
			if !p.Tree.Nearer(way[0], Straightness) {
				ends = append(ends, hemEnd{way[0], way.StartDirection(), fmt.Sprintf("the line %q", l.Key)})
			}
		}
	}
	return ends
}
