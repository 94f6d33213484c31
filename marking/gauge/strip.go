package gauge

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A strip is divided only where its inner side lies square to the
// cutting line, at the allowance; so a join moves back a little from a corner. Its parts
// overlap, and at a join both have a tick across them at the same place of the edge.

const (
	// squareCut bounds how much farther than the allowance from the cutting line, in
	// mm, the inner side may lie where a gauge is cut off: no more than the corners
	// between the chords of a curve make, and too little to be seen.
	squareCut = 0.001
	// joinStep is how finely a place for a join is looked for, in mm along the edge.
	joinStep = 0.5
)

// strip is the whole gauge of an edge, before it is divided. The two sides run the same
// way; where they are square to each other they are the allowance apart.
type strip struct {
	outer, inner *plane.Tree
	allowance    float64 // in mm
}

// newStrip returns the strip of an edge; ok is false where no line keeps the allowance.
func newStrip(p *piece.Piece, edge int) (s strip, ok bool) {
	line, ok := p.Beside(edge)
	if !ok {
		return s, false
	}
	e := p.Edges[edge]
	return strip{plane.NewTree(e.Path), plane.NewTree(line), e.Allowance}, true
}

// clear reports whether the strip can be cut off at a place of the cutting line: a
// place of the inner side lies square to it at the allowance. Nothing else of the
// edge is as near to that place, so the cut meets neither side a second time.
func (s strip) clear(at float64) bool {
	return s.inner.Nearer(s.outer.At(at), s.allowance+squareCut)
}

// clearBefore returns the last clear place at or before a place, not before least.
func (s strip) clearBefore(at, least float64) (float64, bool) {
	for ; at >= least; at -= joinStep {
		if s.clear(at) {
			return at, true
		}
	}
	return 0, false
}

// divide returns the parts of the strip, each no longer than most along the cutting
// line, by as much over as the one before it ends beyond its beginning: overlap, or
// more where a join had to move. A part is longer only where corners of the inner side
// leave no room for a join.
func (s strip) divide(most, overlap float64) []piece.Stretch {
	end := s.outer.Length()
	var parts []piece.Stretch
	for from := 0.0; ; {
		rest := end - from
		n := math.Ceil((rest-overlap)/(most-overlap) - piece.Rounding)
		if n <= 1 {
			return append(parts, piece.Stretch{From: from, To: end})
		}
		to, next, ok := s.nextJoin(from, (rest+(n-1)*overlap)/n, overlap)
		if !ok {
			return append(parts, piece.Stretch{From: from, To: end})
		}
		parts = append(parts, piece.Stretch{From: from, To: to})
		from = next
	}
}

// nextJoin returns where a part of about this size ends, and where the next begins:
// rather shorter than longer, and rather with a place for the tick well within the
// overlap. A part never begins before a quarter of the one before it.
func (s strip) nextJoin(from, size, overlap float64) (to, next float64, ok bool) {
	for _, within := range []bool{true, false} {
		try := func(at float64) bool {
			if at > s.outer.Length() || !s.clear(at) {
				return false
			}
			to = at
			if next, ok = s.clearBefore(at-overlap, from+size/4); ok && within {
				_, ok = s.tick(next, to)
			}
			return ok
		}
		for at := from + size; at > from+size/2; at -= joinStep {
			if try(at) {
				return to, next, true
			}
		}
		for at := from + size; at < from+2*size; at += joinStep {
			if try(at) {
				return to, next, true
			}
		}
	}
	return 0, 0, false
}

// tick returns the clear place nearest to the middle of an overlap. within is false where
// there is none in its middle half; then it is the end, where the earlier part is
// cut off.
func (s strip) tick(from, to float64) (at float64, within bool) {
	middle := (from + to) / 2
	for away := 0.0; away <= (to-from)/4; away += joinStep {
		for _, at := range []float64{middle - away, middle + away} {
			if s.clear(at) {
				return at, true
			}
		}
	}
	return to, false
}

// part returns the card of one part, with ticks at its joins. An end of the edge may
// not be clear, and a hair past a sharp corner one may seem so; where the card would
// meet itself there, it begins or ends at the next clear place instead. ok is false where
// no card is left.
func (s strip) part(part piece.Stretch, joins []float64) (m mark.Marking, ok bool) {
	if m, ok = s.between(part, joins); ok {
		return m, true
	}
	from, to := part.From, part.To-joinStep
	for from < to && !s.clear(from) {
		from += joinStep
	}
	for to > from && !s.clear(to) {
		to -= joinStep
	}
	if m, ok = s.between(piece.Stretch{From: from, To: to}, joins); ok {
		return m, true
	}
	return s.between(piece.Stretch{From: from + joinStep, To: to}, joins)
}

// between returns the card between two places of the cutting line; ok is false where
// its outline would meet itself.
func (s strip) between(part piece.Stretch, joins []float64) (m mark.Marking, ok bool) {
	outer := s.outer.Path().Between(part.From, part.To)
	if len(outer) < 2 {
		return m, false
	}
	last := len(outer) - 1
	_, begin := s.inner.Nearest(outer[0])
	_, end := s.inner.Nearest(outer[last])
	if part.From <= 0 && !s.clear(0) {
		begin = 0
	}
	if part.To >= s.outer.Length() && !s.clear(s.outer.Length()) {
		end = s.inner.Length()
	}
	inner := s.inner.Path().Between(begin, end).Reversed()
	if len(inner) < 2 {
		return m, false
	}
	m = card([]mark.Mark{
		{Role: mark.Cut, Name: "cutting line", Path: outer},
		cutSide("", outer[last], inner[0]),
		{Role: mark.Cut, Name: stitchSide, Path: inner},
		cutSide("", inner[len(inner)-1], outer[0]),
	})
	if _, _, _, crosses := plane.SelfCrossing(plane.NewTree(m.Outline)); crosses || m.Outline.Area() <= 0 {
		return mark.Marking{}, false
	}
	for _, at := range joins {
		from := s.outer.At(at)
		to, _ := s.inner.Nearest(from)
		m.Marks = append(m.Marks, mark.Mark{Role: mark.Match, Name: "", Path: plane.Path{from, to}})
	}
	return levelled(m, outer[0], outer[last]), true
}

// levelled returns the card turned and moved so that one place lies at the origin, and
// another to the right of it.
func levelled(m mark.Marking, from, to plane.Point) mark.Marking {
	u := to.Sub(from).Unit()
	if u == (plane.Point{}) {
		u = plane.Point{X: 1}
	}
	laid := func(p plane.Path) plane.Path {
		q := make(plane.Path, len(p))
		for i, at := range p {
			step := at.Sub(from)
			q[i] = plane.Point{X: step.Dot(u), Y: step.Dot(u.Left())}
		}
		return q
	}
	m.Outline = laid(m.Outline)
	for i := range m.Marks {
		m.Marks[i].Path = laid(m.Marks[i].Path)
	}
	return m
}
