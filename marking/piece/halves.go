package piece

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. A piece that lies on the fold is printed as half of it, or
// whole: then the fold is a centre line, and every other line is there twice, but
// for the grain line, of which a piece has one.

// Printed returns a marking of half a piece as it is to be printed. The half ends
// on the line through origin, square to out.
func (p *Piece) Printed(m mark.Marking, origin, out plane.Point) mark.Marking {
	if !p.Whole {
		return m
	}
	m.Marks = WholeMarks(m.Marks, origin, out)
	for _, w := range m.Words[:len(m.Words):len(m.Words)] {
		image := w.Placed(func(q plane.Point) plane.Point { return q.Mirrored(origin, out) })
		if image.At.Distance(w.At) > SamePoint {
			m.Words = append(m.Words, image)
		}
	}
	m.Outline = WholeOutline(m.Outline, origin, out)
	return m
}

// WholeMarks returns the lines of both halves of a piece from those of one, which ends on
// the line through origin, square to out.
func WholeMarks(half []mark.Mark, origin, out plane.Point) []mark.Mark {
	var whole []mark.Mark
	for _, one := range half {
		whole = append(whole, one)
		// A line on the centre, or square across it, is its own image.
		image := one.Path.Mirrored(origin, out)
		if one.Role != mark.Grain && !lies(one.Path, image) && !lies(one.Path, image.Reversed()) {
			whole = append(whole, mark.Mark{Role: one.Role, Key: one.Called(), Path: Directed(one.Role, image)})
		}
	}
	return whole
}

// WholeOutline returns the outline of both halves of a piece from that of one,
// which ends on the line through origin, square to out.
func WholeOutline(half plane.Path, origin, out plane.Point) plane.Path {
	on := func(q plane.Point) bool { return q.Sub(origin).Dot(out) < SamePoint }
	n := len(half) - 1
	start := slices.IndexFunc(half[:n], func(q plane.Point) bool { return !on(q) })
	if start < 0 {
		return half
	}
	back, leave := -1, -1 // the first and the last point on the axis, which follow each other
	for k := start; k < start+n; k++ {
		if on(half[k%n]) {
			if back < 0 {
				back = k % n
			}
			leave = k % n
		}
	}
	if back < 0 {
		return half
	}
	return bothHalves(half, leave, back, origin, out)
}

// bothHalves returns the outline of both halves of a piece from that of one, which ends
// on the line through origin, square to out: from where it leaves that to where it
// comes back, both numbers of its points. What lies between those on the line comes to
// lie within the whole.
func bothHalves(half plane.Path, leave, back int, origin, out plane.Point) plane.Path {
	n := len(half) - 1
	open := slices.Concat(half[leave:n], half[:leave+1])[:(back-leave+n-1)%n+2]
	whole := slices.Concat(open, open.Mirrored(origin, out)[1:])
	whole[len(whole)-1] = whole[0]
	return whole
}

// Inward is the direction from a straight edge into the piece, which lies to its
// left.
func Inward(edge plane.Path) plane.Point {
	return edge[len(edge)-1].Sub(edge[0]).Unit().Left()
}

// Times is how often the piece comes in the garment, and so does what lies on its fold.
// Layers that lie on one another, as a lining does, count as one.
func (p *Piece) Times() int { return p.Cut / p.Layers }

// SideTimes is how often an edge or a line beside the fold comes in the garment: of a
// piece on the fold, on both halves.
func (p *Piece) SideTimes() int {
	if p.OnFold {
		return 2 * p.Times()
	}
	return p.Times()
}

// OnAxis reports whether a line lies on the fold of the cloth, where both halves of the
// piece have it together.
func (p *Piece) OnAxis(line plane.Path) bool {
	axis := p.EdgeOnFold()
	if axis < 0 {
		return false
	}
	return !slices.ContainsFunc(line, func(q plane.Point) bool {
		_, _, away := p.Edges[axis].Path.Nearest(q)
		return away > Straightness
	})
}

// OnFlatFold reports whether a place on the flat piece lies on the fold of the cloth.
func (p *Piece) OnFlatFold(q plane.Point) bool {
	axis := p.EdgeOnFold()
	if axis < 0 {
		return false
	}
	e := p.Edges[axis].Path
	return math.Abs(q.Sub(e[0]).Dot(Inward(e))) <= Straightness
}

// TurnOver says when what is made for the piece as it is drawn is turned over; "" for
// never.
func (p *Piece) TurnOver() string {
	switch {
	case p.OnFold:
		return "turn it over for the other half"
	case p.Cut/p.Layers > 1:
		return "where one is for the left and one for the right, turn it over for the second"
	}
	return ""
}
