package piece

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. A pleat, in an edge or across a piece, on the piece or on its block,
// has one arrow. It points the way the pleat is folded, and goes on doing so when the
// piece is turned over.

// arrowDown is how far down the fold line of a pleat its arrow stands, as a share of
// that: clear of the seam, and of the end.
const arrowDown = 0.6

// Arrow returns the arrow of a pleat, on the piece or on its block: from its fold line
// to its placement line, which lies across from it, both in mm.
func Arrow(fold plane.Path, across plane.Point) plane.Path {
	from := fold[0].Toward(fold[1], arrowDown)
	return plane.Path{from, from.Add(across)}
}

// Directed returns the mirror image of a line walked as the line is, where that
// tells something: an arrow points to its end.
func Directed(role mark.Role, image plane.Path) plane.Path {
	if role == mark.Arrow {
		return image.Reversed()
	}
	return image
}
