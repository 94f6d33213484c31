package pdfout

import "tuckmark/marking/plane"

// Rules of this file: arrow heads are filled triangles at the ends of lines
// whose pen asks for them. The tip is the end of the line itself.

const (
	headLength = 3.0 // in mm
	headWidth  = 2.0
)

// arrowHead is a head with its tip at a place, pointing along u.
type arrowHead struct{ tip, u plane.Point }

// arrowHeads returns the heads of a line.
func (l line) arrowHeads() []arrowHead {
	return headsOf(penOf(l.role), l.clip.Path())
}

func headsOf(p pen, path plane.Path) []arrowHead {
	var all []arrowHead
	if p.heads == noHeads || len(path) < 2 {
		return nil
	}
	if p.heads == bothHeads {
		all = append(all, arrowHead{path[0], path.StartDirection().Mul(-1)})
	}
	return append(all, arrowHead{path[len(path)-1], path.EndDirection()})
}

// triangle is the head's outline.
func (h arrowHead) triangle() plane.Path {
	back := h.tip.Sub(h.u.Mul(headLength))
	half := h.u.Left().Mul(headWidth / 2)
	return plane.Path{h.tip, back.Add(half), back.Sub(half)}
}

// room is what the head takes up.
func (h arrowHead) room() slab {
	return slab{h.tip.Sub(h.u.Mul(headLength / 2)), plane.Point{X: headLength / 2, Y: headWidth / 2}, h.u}
}
