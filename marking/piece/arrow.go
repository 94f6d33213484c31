package piece

import "tuckmark/marking/plane"

// arrowDown is how far down the fold line of a pleat its arrow stands, as a share of
// that: clear of the seam, and of the end.
const arrowDown = 0.6

// Arrow returns the arrow of a pleat, on the piece or on its block: from its fold line
// to its placement line, which lies across from it, both in mm. It points the way the
// pleat is folded.
func Arrow(fold plane.Path, across plane.Point) plane.Path {
	from := fold[0].Toward(fold[1], arrowDown)
	return plane.Path{from, from.Add(across)}
}
