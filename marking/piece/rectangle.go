package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file. A piece that is nothing but a rectangle, along its grain, is torn
// along its threads and not cut round an outline; one on the fold opened out.

// TornWhole returns the outline that is cut of a piece, and reports whether it is a
// rectangle that can be torn along its threads: of one on the fold, the whole.
func (p *Piece) TornWhole() (outline plane.Path, torn bool) {
	outline = p.Flat.Outline.Path
	if axis := p.EdgeOnFold(); axis >= 0 && isRectangle(outline) {
		edge := p.FlatEdge(axis)
		outline = WholeOutline(outline, edge[0], Inward(edge))
	}
	if isRectangle(outline) && squareTo(outline, p.Flat.Grain.Direction) {
		return outline, true
	}
	return p.Flat.Outline.Path, false
}

// FlatEdge returns an edge that is one straight part on the flat cloth.
func (p *Piece) FlatEdge(edge int) plane.Path {
	for _, run := range p.Flat.Outline.Runs() {
		if run.Edge == edge {
			return run.Path
		}
	}
	return nil
}

// isRectangle reports whether an outline has four corners and all of them square.
func isRectangle(outline plane.Path) bool {
	corners := ringCorners(outline)
	if len(corners) != 4 {
		return false
	}
	for i := range corners {
		a, b, c := corners[i], corners[(i+1)%4], corners[(i+2)%4]
		// How far the farther end of one side lies off square to the other.
		if math.Abs(b.Sub(a).Unit().Dot(c.Sub(b))) > Straightness {
			return false
		}
	}
	return true
}

// ringCorners returns the corners of a closed outline, without points on straight
// parts of it.
func ringCorners(outline plane.Path) plane.Path {
	ring := outline[:len(outline)-1]
	n := len(ring)
	var corners plane.Path
	for i, q := range ring {
		before, after := ring[(i+n-1)%n], ring[(i+1)%n]
		if away := math.Abs(after.Sub(before).Unit().Cross(q.Sub(before))); away > Rounding {
			corners = append(corners, q)
		}
	}
	return corners
}

// squareTo reports whether a rectangle lies along a direction.
func squareTo(outline plane.Path, direction plane.Point) bool {
	corners := ringCorners(outline)
	side := corners[1].Sub(corners[0])
	return min(math.Abs(side.Dot(direction)), math.Abs(side.Cross(direction))) < Straightness
}
