package arrange

import (
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a distance is drawn as a thin line between two small open heads, from
// place to place, with its words upright right by it. Heads that have no room between the
// places stand outside of them and point inward. Where something lies along the line, or its
// words have no room by it, it is drawn beside the places, and thin lines lead there from
// them. Words and lines of two distances keep apart, so that none is read for another. Only
// where nothing of all that has room a leader runs from the words to the line.

const (
	// dimensionHead is the length of its heads, in mm; where the places are less than
	// dimensionInside apart these stand outside, on tails of dimensionTail.
	dimensionHead   = 1.8
	dimensionInside = 7.7
	dimensionTail   = 6.6
	// dimensionSteps is how many places it tries, and dimensionStep how far it moves aside
	// at once, in mm.
	dimensionSteps = 32
	dimensionStep  = 5.0
	// dimensionOff is how far beside its places it is drawn outside of its piece at most, in mm.
	dimensionOff = 25.0
	// dimensionOver is how far what leads to it reaches over it, in mm.
	dimensionOver = 1.0
	// dimensionApart is what its words keep free to those and the lines of others, in mm.
	dimensionApart = 4.0
)

// dimensionWidths are the widths its words are set in, in mm, the best first.
func dimensionWidths() []float64 { return []float64{62, 44, 32, 18} }

// measure is a distance on its sheet: the ends of its line, and of its tails.
type measure struct{ from, to, a, b, u plane.Point }

// measureOf is a distance drawn by some mm aside.
func measureOf(d mark.Dimension, aside plane.Point) measure {
	from, to := d.From.Add(aside), d.To.Add(aside)
	u := to.Sub(from).Unit()
	if u == (plane.Point{}) {
		u = text.Up()
	}
	m := measure{from, to, from, to, u}
	if from.Distance(to) < dimensionInside {
		m.a, m.b = from.Sub(u.Mul(dimensionTail)), to.Add(u.Mul(dimensionTail))
	}
	return m
}

// anchors are the places of its line that words may stand by, the best first.
func (m measure) anchors() []Anchor {
	var all []Anchor
	for _, t := range []float64{0.5, 0.35, 0.65, 0.2, 0.8} {
		for _, side := range []plane.Point{m.u.Left().Mul(-1), m.u.Left()} {
			all = append(all, Anchor{At: m.from.Toward(m.to, t), Out: side})
		}
	}
	return append(all, Anchor{At: m.b, Out: m.u}, Anchor{At: m.a, Out: m.u.Mul(-1)})
}

// dimension draws a distance of a piece, and writes its words.
func (s *Sheet) dimension(p Piece, d mark.Dimension) {
	u, words := measureOf(d, plane.Point{}).u, dimensionWords(d.Text)
	for _, within := range []func(at plane.Point) bool{
		p.Inside,
		func(at plane.Point) bool { return s.belongs(p, at) && p.Bounds.Grown(dimensionOff).Holds(at) },
	} {
		for k := range dimensionSteps {
			m := measureOf(d, u.Left().Mul(stepFromMiddle(k)*dimensionStep))
			if k > 0 && !within(m.from.Toward(m.to, 0.5)) || !s.open(m) {
				continue
			}
			if put, ok := s.wordsBy(p, m, words); ok {
				s.drawMeasure(d, m)
				s.put(put)
				s.measured = append(s.measured, put.Around(put.Middle, put.U))
				return
			}
		}
	}
	m := measureOf(d, s.aside(d, u))
	s.drawMeasure(d, m)
	anchors := m.anchors()
	for i, a := range anchors { // clear of the line itself, so that a leader finds there
		anchors[i].At = a.At.Add(a.Out.Mul(2 * leaderRoom))
	}
	s.near(p, d.Text, ink.Text(), nearAway, anchors)
}

// open reports whether a distance may be drawn there.
func (s *Sheet) open(m measure) bool {
	return s.shown(plane.Box{Min: m.from, Max: m.from}) && s.shown(plane.Box{Min: m.to, Max: m.to}) &&
		!s.liesAlong(m.from, m.to) && s.apart(strip(m.a, m.b, leaderRoom))
}

// apart reports whether a room keeps away from the words and lines of other distances.
func (s *Sheet) apart(room text.Slab) bool {
	return !slices.ContainsFunc(s.measured, room.Grown(dimensionApart).Meets)
}

// dimensionWords are the words of a distance as they may be set, the best first: in none of its
// widths that breaks a word.
func dimensionWords(words string) []Inscription {
	longest := text.LongestWord(length.Words(words), ink.Text())
	var all []Inscription
	for _, width := range dimensionWidths() {
		if longest <= width {
			all = append(all, Wrapped(words, ink.Text(), width))
		}
	}
	return all
}

// wordsBy returns the words of a distance, as they may be set, where they stand right by its line.
func (s *Sheet) wordsBy(p Piece, m measure, words []Inscription) (PlacedInscription, bool) {
	by, line := turned(nearAway, 0), strip(m.a, m.b, leaderRoom)
	for _, beside := range []float64{roomy, nearRoom} { // close to a line they are taken for the distance of that
		for _, t := range words {
			for _, a := range m.anchors() {
				room := by.by(a, t)
				if s.apart(room) && !room.Meets(line) && s.hasRoom(p, room, beside, s.clearAt(a.At)) {
					return PlacedInscription{t, room.Centre, text.Across()}, true
				}
			}
		}
	}
	return PlacedInscription{}, false
}

// drawMeasure draws the line of a distance with its heads, and what leads to it.
func (s *Sheet) drawMeasure(d mark.Dimension, m measure) {
	if aside := m.from.Sub(d.From); aside.Length() > 0 {
		over := aside.Unit().Mul(dimensionOver)
		s.thin(plane.Path{d.From, m.from.Add(over)})
		s.thin(plane.Path{d.To, m.to.Add(over)})
	}
	s.thin(plane.Path{m.a, m.b})
	s.measured = append(s.measured, strip(m.a, m.b, leaderRoom))
	out := m.u
	if m.a != m.from {
		out = out.Mul(-1)
	}
	for _, h := range []ink.Solid{ink.Head(m.from, out.Mul(-1), dimensionHead, dimensionHead*2/3), ink.Head(m.to, out, dimensionHead, dimensionHead*2/3)} {
		s.Field.Take(roomOf(h))
		s.Thin = append(s.Thin, plane.Path{h.Shape[1], h.Shape[0], h.Shape[2]})
	}
}

// aside is by how much a distance is drawn beside its places, so that it lies along no line
// and on no text: by as little as can be, and rather within a piece.
func (s *Sheet) aside(d mark.Dimension, u plane.Point) plane.Point {
	best, found := plane.Point{}, false
	for k := range dimensionSteps {
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
	if !s.look() || s.Field.meetsPlaced(strip(from, to, half)) {
		return true
	}
	n := 0
	for i := range looks {
		at := from.Toward(to, (float64(i)+0.5)/looks)
		n += s.Field.Crossings(text.Level(at, plane.Point{X: math.Min(half, from.Distance(to)/looks/3), Y: half}), 1)
	}
	return n > most
}
