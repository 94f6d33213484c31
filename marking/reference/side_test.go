package reference

import (
	"math"
	"math/cmplx"

	"tuckmark/marking/piece"
)

// The line inside one edge, reckoned from the points of the edge and its allowance alone. It
// keeps its allowance from the edge, and is ruled on straight past both ends of it: the way
// the edge runs there, or, where its points stand close, along a chord, so that a rough last
// step does not turn it.

// side is one edge of a piece as it is reckoned here.
type side struct {
	key       string
	d         float64
	path      ruled
	main      line // beside the edge
	gone      bool // nothing keeps the allowance
	passed    float64
	in, out   complex128 // the directions in which it is ruled on, at its beginning and its end
	first     complex128 // the direction of the first step
	last      complex128
	hookedIn  bool // the edge bends so tightly that its line does not begin beside its end
	hookedOut bool
}

// sturdy returns how long the steps of an edge must be, in mm, for its last one to tell the
// direction in which a line d inside it is ruled on: a quarter of that, or 6 mm.
func sturdy(d float64) float64 { return min(d/4, 6) }

// newSide reckons the side along an edge whose points the file gives.
func newSide(e piece.Edge, given line) side {
	s := side{key: e.Key, d: e.Allowance, path: rule(lineOf(e.Path).simple())}
	l := s.path.line
	n := len(l)
	s.first, s.last = unit(l[1]-l[0]), unit(l[n-1]-l[n-2])
	s.in, s.out = s.first, s.last
	s.main = l
	if s.d > 0 {
		s.main, s.passed = beside(s.path, s.d)
		s.gone = len(s.main) < 2
	}
	if s.gone || s.d == 0 {
		return s
	}
	if cmplx.Abs(given[0]-l[0]) > cmplx.Abs(given[0]-l[n-1]) {
		given = given.reversed()
	}
	const square = 0.01 // mm
	s.hookedIn = cmplx.Abs(s.main[0]-l[0]-times(left(s.first), s.d)) > square
	s.hookedOut = cmplx.Abs(s.main[len(s.main)-1]-l[n-1]-times(left(s.last), s.d)) > square
	// Where an edge bends so tightly, its line is ruled on the way it runs itself.
	along := func(hooked bool) (of, steps line) {
		if hooked {
			return s.main, s.main
		}
		return l, given
	}
	of, steps := along(s.hookedOut)
	s.out = ruledWay(of, steps, sturdy(s.d))
	of, steps = along(s.hookedIn)
	s.in = -ruledWay(of.reversed(), steps.reversed(), sturdy(s.d))
	return s
}

// ruledWay returns the direction in which a line is ruled on past its last place: its own,
// or, where the steps it was given in are shorter than reach there, that of the chord over
// so much of it.
func ruledWay(l, given line, reach float64) complex128 {
	end, n := l[len(l)-1], len(given)
	if cmplx.Abs(given[n-1]-given[n-2]) >= reach {
		return unit(end - l[len(l)-2])
	}
	return unit(end - l.at(l.length()-reach))
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

// mirrored is the side walked the other way round the piece turned over.
func (s side) mirrored() side {
	back := func(q complex128) complex128 { return -cmplx.Conj(q) }
	s.path, s.main = rule(turnedOver(s.path.line)), turnedOver(s.main)
	s.in, s.out, s.first, s.last = back(s.out), back(s.in), back(s.last), back(s.first)
	s.hookedIn, s.hookedOut = s.hookedOut, s.hookedIn
	return s
}
