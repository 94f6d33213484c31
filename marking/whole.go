package marking

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A piece that lies on the fold is printed as half of it, or
// whole: then the fold is a centre line, and every other line is there twice, but
// for the grain line, of which a piece has one.

// printed returns a marking of half a piece as it is to be printed. The half ends
// on the line through origin, square to out.
func (p *Piece) printed(m Marking, origin, out plane.Point) Marking {
	if !p.Whole {
		return m
	}
	var whole []Mark
	for _, one := range m.Marks {
		if one.Role == FoldEdge {
			one.Role, one.Name = Centre, p.Edges[p.foldEdge()].Key
		}
		whole = append(whole, one)
		// A line on the centre, or square across it, is its own image.
		image := one.Path.Mirrored(origin, out)
		if one.Role != Grain && !lies(one.Path, image) && !lies(one.Path, image.Reversed()) {
			whole = append(whole, Mark{Role: one.Role, Path: directed(one.Role, image)})
		}
	}
	m.Marks = whole
	m.Outline = wholeOutline(m.Outline, origin, out)
	return m
}

// directed returns the mirror image of a line walked as the line is, where that
// tells something: an arrow points to its end.
func directed(role Role, image plane.Path) plane.Path {
	if role == Arrow {
		return image.Reversed()
	}
	return image
}

// wholeOutline returns the outline of both halves of a piece from that of one,
// which ends on the line through origin, square to out.
func wholeOutline(half plane.Path, origin, out plane.Point) plane.Path {
	on := func(q plane.Point) bool { return q.Sub(origin).Dot(out) < samePoint }
	ring := half[:len(half)-1]
	// The half from where it leaves the axis to where it comes back.
	start := slices.IndexFunc(ring, func(q plane.Point) bool { return !on(q) })
	if start < 0 {
		return half
	}
	ring = slices.Concat(ring[start:], ring[:start])
	first, last := -1, -1 // the points on the axis, which follow each other
	for i, q := range ring {
		if on(q) {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	if first < 0 {
		return half
	}
	return bothHalves(slices.Concat(ring[last:], ring[:first+1]), origin, out)
}

// bothHalves closes half an outline, an open path that begins and ends on the line
// through origin, square to out, with its mirror image.
func bothHalves(half plane.Path, origin, out plane.Point) plane.Path {
	whole := slices.Concat(half, half.Mirrored(origin, out)[1:])
	whole[len(whole)-1] = whole[0]
	return whole
}

// inward is the direction from a straight edge into the piece, which lies to its
// left.
func inward(edge plane.Path) plane.Point {
	return edge[len(edge)-1].Sub(edge[0]).Unit().Left()
}
