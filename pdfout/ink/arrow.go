package ink

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: arrow heads are filled triangles at the ends of lines
// whose pen asks for them. The tip is the end of the line itself. A head is
// never longer than a third of its line, and keeps its shape when it is
// shorter than usual, so that no head reaches past its own line or meets the
// one at the other end.

const (
	headLength = 3.0 // of a head on a line long enough for it, in mm
	headWidth  = 2.0
	// headShare is the most of its line that a head may take.
	headShare = 1.0 / 3
)

// ArrowHead is a head with its tip at a place, pointing along U, of length 1.
type ArrowHead struct {
	Tip, U        plane.Point
	Length, Width float64 // in mm
}

// HeadsOf returns the heads that a pen gives a path.
func HeadsOf(p Pen, path plane.Path) []ArrowHead {
	if p.heads == noHeads || len(path) < 2 {
		return nil
	}
	length := math.Min(headLength, headShare*path.Length())
	width := headWidth * length / headLength
	var all []ArrowHead
	if p.heads == bothHeads {
		all = append(all, ArrowHead{path[0], path.StartDirection().Mul(-1), length, width})
	}
	return append(all, ArrowHead{path[len(path)-1], path.EndDirection(), length, width})
}

// triangle is the head's outline.
func (h ArrowHead) triangle() plane.Path {
	back := h.Tip.Sub(h.U.Mul(h.Length))
	half := h.U.Left().Mul(h.Width / 2)
	return plane.Path{h.Tip, back.Add(half), back.Sub(half)}
}

// DrawHeads fills heads with the ink taken up.
func DrawHeads(d Canvas, heads ...ArrowHead) {
	for _, h := range heads {
		d.Path(h.triangle())
		d.Fill()
	}
}
