package reference

import (
	"math"
	"math/cmplx"
	"slices"

	"tuckmark/marking/piece"
)

// The line inside one edge, reckoned from the points of the edge and its allowance alone. It
// keeps its allowance from the edge, and is ruled on straight past both ends of it, along a
// chord of the edge over a quarter of the allowance, so that a rough last step does not turn it.

// side is one edge of a piece as it is reckoned here.
type side struct {
	key     string
	d       float64
	path    ruled
	main    line // beside the edge
	gone    bool // nothing keeps the allowance
	passed  float64
	in, out complex128 // the directions of the chords in which it sets out and arrives
	first   complex128 // the direction of the first step
	last    complex128
	// What the line that is held against this is seen to be ruled on along at its ends;
	// the chords where that does not tell, or where it is no direction the edge has there.
	seenIn, seenOut complex128
	hookedIn        bool // the edge bends so tightly that its line does not begin beside its end
	hookedOut       bool
}

// sturdy is how much of the end of an edge, in allowances, tells the direction in which its
// line is ruled on.
const sturdy = 0.25

func newSide(e piece.Edge) side {
	s := side{key: e.Key, d: e.Allowance, path: rule(lineOf(e.Path).simple())}
	l := s.path.line
	n := len(l)
	s.first, s.last = unit(l[1]-l[0]), unit(l[n-1]-l[n-2])
	s.in, s.out = s.first, s.last
	s.main = l
	if s.d > 0 {
		chord := min(sturdy*s.d, l.length())
		s.in, s.out = unit(l.at(chord)-l[0]), unit(l[n-1]-l.at(l.length()-chord))
		s.main, s.passed = beside(s.path, s.d)
		s.gone = len(s.main) < 2
	}
	if s.gone {
		return s
	}
	const square = 0.01 // mm
	s.hookedIn = cmplx.Abs(s.main[0]-l[0]-times(left(s.first), s.d)) > square
	s.hookedOut = cmplx.Abs(s.main[len(s.main)-1]-l[n-1]-times(left(s.last), s.d)) > square
	drawn := lineOf(e.Line).simple()
	s.seenOut = s.seen(drawn)
	s.seenIn = -cmplx.Conj(s.mirrored().seen(turnedOver(drawn)))
	return s
}

// beside returns the line d to the left of a path: sharp round corners that turn to the
// right, up to six distances out. passed is how long the longest part is that it passes
// by where it meets itself.
func beside(path ruled, d float64) (main line, passed float64) {
	raw := shifted(path.line, d)
	kept := outside(raw, path, d-1e-7)
	// Of two stretches that follow each other the second begins where the first ends, or,
	// where a sharp join sticks out of the round region, they cross close by.
	const joint, join = 0.02, 0.5
	for k := 0; k < len(kept); {
		part := raw.between(kept[k].from, kept[k].to)
		if n := len(main); n > 0 && cmplx.Abs(part[0]-main[n-1]) > joint {
			tail := max(main.length()-4*join, 0)
			if all := meets(rule(main.between(tail, main.length())), rule(part.between(0, 4*join))); len(all) > 0 {
				main = main.between(0, tail+all[0].a)
				part = part.between(all[0].b, part.length())
			}
		}
		main = append(main, part...)
		next := len(kept)
		for _, reach := range []float64{joint, join} {
			for j := k + 1; j < len(kept) && next == len(kept); j++ {
				if cmplx.Abs(raw.at(kept[j].from)-main[len(main)-1]) < reach {
					next = j
				}
			}
		}
		for j := k + 1; j < next; j++ {
			passed = max(passed, kept[j].to-kept[j].from)
		}
		k = next
	}
	return main.simple(), passed
}

// shifted returns every segment of a line moved to the left by d, with sharp joins where
// it turns to the right, up to six distances out, and blunt ones beyond.
func shifted(l line, d float64) line {
	const sharpest = 5.9 // the tangent of half the turn
	var raw line
	for i := 1; i < len(l); i++ {
		u := unit(l[i] - l[i-1])
		if i > 1 {
			before := unit(l[i-1] - l[i-2])
			if turn := cmplx.Phase(u / before); turn < 0 {
				if tangent := math.Tan(-turn / 2); tangent < sharpest {
					raw = append(raw, l[i-1]+times(left(before)+times(before, tangent), d))
				} else {
					raw = append(raw, l[i-1]+times(left(before)+before, d), l[i-1]+times(left(u)-u, d))
				}
			}
		}
		raw = append(raw, l[i-1]+times(left(u), d), l[i]+times(left(u), d))
	}
	return raw.simple()
}

// seen returns the direction in which a drawn line is ruled on past the end of the edge, if
// it is one between the last step, the chord, and what its bend makes of that; else the
// chord.
func (s side) seen(drawn line) complex128 {
	if len(drawn) < 2 || s.d == 0 {
		return s.out
	}
	end := s.main[len(s.main)-1]
	past := drawn[len(drawn)-1] - end
	if cmplx.Abs(past) < 1e-3 || dot(past, s.last) < 0 {
		return s.out
	}
	l := s.path.line
	reach := min(sturdy*s.d, l.length())
	a, b, c := l.at(l.length()-reach), l.at(l.length()-reach/2), l[len(l)-1]
	bend := cmplx.Phase((c - b) / (b - a))
	turns := []float64{0, cmplx.Phase(s.last / s.out), bend, -bend, cmplx.Phase((c - b) / s.out)}
	if s.hookedOut {
		turns = append(turns, cmplx.Phase((end-s.main[len(s.main)-2])/s.out))
	}
	const about = 0.2 * math.Pi / 180
	if turn := cmplx.Phase(past / s.out); turn < slices.Min(turns)-about || turn > slices.Max(turns)+about {
		return s.out
	}
	return unit(past)
}

// mirrored is the side walked the other way round the piece turned over.
func (s side) mirrored() side {
	back := func(q complex128) complex128 { return -cmplx.Conj(q) }
	s.path, s.main = rule(turnedOver(s.path.line)), turnedOver(s.main)
	s.in, s.out, s.first, s.last = back(s.out), back(s.in), back(s.last), back(s.first)
	s.seenIn, s.seenOut, s.hookedIn, s.hookedOut = back(s.seenOut), back(s.seenIn), s.hookedOut, s.hookedIn
	return s
}

// ways returns the directions in which the line of an edge may be ruled on past its end: the
// chord first, what is seen, and the last step.
func (s side) ways() []complex128 {
	ways := []complex128{s.out}
	for _, way := range []complex128{s.seenOut, s.last} {
		if !slices.ContainsFunc(ways, func(w complex128) bool { return cmplx.Abs(w-way) < 1e-6 }) {
			ways = append(ways, way)
		}
	}
	return ways
}
