package arrange

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a distance is drawn as a thin line between two heads, from place to
// place, with its words upright beside it. Heads that have no room between the places stand
// outside of them and point inward. Where something lies along the line it is drawn beside
// the places, and thin lines lead there from them.

const (
	// dimensionHead is the length of its heads, in mm; where the places are less than
	// dimensionInside apart these stand outside, on tails of dimensionTail.
	dimensionHead   = 2.2
	dimensionInside = 3.5 * dimensionHead
	dimensionTail   = 3.0 * dimensionHead
	// dimensionStep is how far it moves aside at once, in mm.
	dimensionStep = 5.0
	// dimensionOver is how far what leads to it reaches over it, in mm.
	dimensionOver = 1.0
	// dimensionWide is the most its words are wide, in mm.
	dimensionWide = 62.0
)

// dimension draws a distance, and writes its words.
func (s *Sheet) dimension(d mark.Dimension) {
	u := d.To.Sub(d.From).Unit()
	if u == (plane.Point{}) {
		u = text.Up()
	}
	aside := s.aside(d, u)
	from, to := d.From.Add(aside), d.To.Add(aside)
	if aside != (plane.Point{}) {
		over := aside.Unit().Mul(dimensionOver)
		s.thin(plane.Path{d.From, from.Add(over)})
		s.thin(plane.Path{d.To, to.Add(over)})
	}
	anchors := s.arrows(from, to, u)
	s.Near(Wrapped(d.Text, ink.Text(), dimensionWide), anchors...)
}

// arrows draws the line of a distance with its heads, and returns where its words may stand.
func (s *Sheet) arrows(from, to, u plane.Point) []Anchor {
	a, b, out := from, to, u
	if from.Distance(to) < dimensionInside {
		a, b, out = from.Sub(u.Mul(dimensionTail)), to.Add(u.Mul(dimensionTail)), u.Mul(-1)
	}
	s.thin(plane.Path{a, b})
	for _, h := range []ink.Solid{ink.Head(from, out.Mul(-1), dimensionHead, dimensionHead/2), ink.Head(to, out, dimensionHead, dimensionHead/2)} {
		s.Field.Take(roomOf(h))
		s.Heads = append(s.Heads, h)
	}
	var anchors []Anchor
	for _, t := range []float64{0.5, 0.35, 0.65, 0.2, 0.8} {
		for _, side := range []plane.Point{u.Left().Mul(-1), u.Left()} {
			anchors = append(anchors, Anchor{from.Toward(to, t), side})
		}
	}
	return append(anchors, Anchor{b, u}, Anchor{a, u.Mul(-1)})
}

// aside is by how much a distance is drawn beside its places, so that it lies along no line
// and on no text: by as little as can be, and rather within a piece.
func (s *Sheet) aside(d mark.Dimension, u plane.Point) plane.Point {
	best, found := plane.Point{}, false
	for k := range 16 {
		step := u.Left().Mul(stepFromMiddle(k) * dimensionStep)
		from, to := d.From.Add(step), d.To.Add(step)
		if !s.shown(plane.Box{Min: from, Max: from}) || !s.shown(plane.Box{Min: to, Max: to}) || s.liesAlong(from, to) {
			continue
		}
		if k == 0 || s.insideAny(from.Toward(to, 0.5)) {
			return step
		}
		if !found {
			best, found = step, true
		}
	}
	return best
}

// liesAlong reports whether a line from place to place would lie on a text or on a line for
// more than where it crosses it.
func (s *Sheet) liesAlong(from, to plane.Point) bool {
	const looks, most, half = 7, 2, 0.4
	if s.Field.texts(strip(from, to, half), 1) > 0 {
		return true
	}
	n := 0
	for i := range looks {
		at := from.Toward(to, (float64(i)+0.5)/looks)
		n += s.Field.Crossings(text.Level(at, plane.Point{X: math.Min(half, from.Distance(to)/looks/3), Y: half}), 1)
	}
	return n > most
}
