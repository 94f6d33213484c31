package reference

import (
	"cmp"
	"math"
	"math/cmplx"
	"slices"

	"tuckmark/marking"
)

// What each edge's stitch line must be, reckoned from the points of the edges and their
// allowances alone. The rules, as a maker would say them:
//
//   - A stitch line keeps its allowance from its edge, and is ruled on straight past both
//     ends of it, along a chord of the edge over a quarter of the allowance, so that a
//     rough last step does not turn it.
//   - At a corner each seam ends where the two lines first cross. The drawn line is ruled on
//     to the cutting line of the neighbour where it comes to that before anything else.
//   - Where the outline turns little (8 degrees; 30 between unequal allowances) the
//     crossing counts only near the corner; else both end square to it, with a step.
//   - Beside an edge without allowance the line ends on that edge and cuts it, or passes
//     it by, which cannot be sewn. Where the outline does not turn out of the piece there
//     is no edge ahead of it, and it ends square.

const (
	gentle, gentleUnequal = 8, 30 // degrees

	// about is by how many degrees a turn may miss these and still be taken either way:
	// a turn between curves is what one takes their directions to be.
	about = 2.0

	// A crossing at a gentle corner counts within nearStep of the wider allowance, does
	// not beyond farStep, and may do either between them.
	nearStep, farStep = 1.0, 1.5

	runOuts = 10 // of the widest allowance; farther than any crossing that counts

	sturdy = 0.25 // of an allowance: the chord that a line is ruled on along
)

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

// beside returns the line d to the left of a path: sharp round corners that turn to the
// right, up to six distances out. passed is how long the longest part is that it passes
// by where it meets itself.
func beside(path ruled, d float64) (main line, passed float64) {
	var raw line
	l := path.line
	for i := 1; i < len(l); i++ {
		u := unit(l[i] - l[i-1])
		if i > 1 {
			before := unit(l[i-1] - l[i-2])
			if turn := cmplx.Phase(u / before); turn < 0 {
				if tangent := math.Tan(-turn / 2); tangent < 5.9 {
					raw = append(raw, l[i-1]+times(left(before)+times(before, tangent), d))
				} else {
					raw = append(raw, l[i-1]+times(left(before)+before, d), l[i-1]+times(left(u)-u, d))
				}
			}
		}
		raw = append(raw, l[i-1]+times(left(u), d), l[i]+times(left(u), d))
	}
	raw = raw.simple()
	left := outside(raw, path, d-1e-7)
	// Two stretches that follow each other begin where the other ends, or, where a sharp
	// join sticks out of the round region, cross close by.
	const joint, join = 0.02, 0.5
	for k := 0; k < len(left); {
		part := raw.between(left[k].from, left[k].to)
		if n := len(main); n > 0 && cmplx.Abs(part[0]-main[n-1]) > joint {
			tail := max(main.length()-4*join, 0)
			if all := meets(rule(main.between(tail, main.length())), rule(part.between(0, 4*join))); len(all) > 0 {
				main = main.between(0, tail+all[0].a)
				part = part.between(all[0].b, part.length())
			}
		}
		main = append(main, part...)
		next := len(left)
		for _, reach := range []float64{joint, join} {
			for j := k + 1; j < len(left) && next == len(left); j++ {
				if cmplx.Abs(raw.at(left[j].from)-main[len(main)-1]) < reach {
					next = j
				}
			}
		}
		for j := k + 1; j < next; j++ {
			passed = max(passed, left[j].to-left[j].from)
		}
		k = next
	}
	return main.simple(), passed
}

func newSide(e marking.Edge) side {
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
	if !s.gone {
		s.hookedIn = cmplx.Abs(s.main[0]-l[0]-times(left(s.first), s.d)) > sameLine
		s.hookedOut = cmplx.Abs(s.main[len(s.main)-1]-l[n-1]-times(left(s.last), s.d)) > sameLine
		drawn := lineOf(e.Line).simple()
		s.seenOut = s.seen(drawn, s.out, s.last)
		over := s.mirrored()
		s.seenIn = -cmplx.Conj(over.seen(turnedOver(drawn), over.out, over.last))
	}
	return s
}

// seen returns the direction in which a drawn line is ruled on past the end of its edge, if
// it is one between the last step, the chord, and what a bend that grows tighter gives.
func (s side) seen(drawn line, chord, last complex128) complex128 {
	if len(drawn) < 2 || s.d == 0 {
		return chord
	}
	end := s.main[len(s.main)-1]
	past := drawn[len(drawn)-1] - end
	if cmplx.Abs(past) < 1e-3 || dot(past, last) < 0 || s.path.length() == 0 {
		return chord
	}
	l := s.path.line
	reach := min(sturdy*s.d, l.length())
	a, b, c := l.at(l.length()-reach), l.at(l.length()-reach/2), l[len(l)-1]
	bend := cmplx.Phase((c - b) / (b - a))
	least, most := 0.0, 0.0 // from the chord, in radians
	turns := []float64{cmplx.Phase(last / chord), bend, -bend, cmplx.Phase((c - b) / chord)}
	if s.hookedOut {
		turns = append(turns, cmplx.Phase(unit(end-s.main[len(s.main)-2])/chord))
	}
	for _, turn := range turns {
		least, most = min(least, turn), max(most, turn)
	}
	const slack = 0.2 * math.Pi / 180
	if turn := cmplx.Phase(past / chord); turn < least-slack || turn > most+slack {
		return chord
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

// piece is a piece as it is reckoned: its sides counter-clockwise.
type piece struct {
	sides  []side
	widest float64 // the widest allowance
	over   *piece  // turned over
}

func newPiece(p marking.Piece) piece {
	var r piece
	for _, e := range p.Edges {
		s := newSide(e)
		r.sides = append(r.sides, s)
		r.widest = max(r.widest, s.d)
	}
	over := r.mirrored()
	r.over, over.over = &over, &r
	return r
}

// mirrored turns a piece over, so that one end of an edge can be reckoned as the other is.
// Side i becomes side n-1-i, and the corner after it the one before.
func (p piece) mirrored() piece {
	r := piece{widest: p.widest}
	for _, s := range slices.Backward(p.sides) {
		r.sides = append(r.sides, s.mirrored())
	}
	return r
}

func turnedOver(l line) line {
	r := l.reversed()
	for i := range r {
		r[i] = cmplx.Conj(r[i])
	}
	return r
}

func (p piece) next(k int) int { return (k + 1) % len(p.sides) }

func (p piece) before(k int) int { return (k + len(p.sides) - 1) % len(p.sides) }

// ruledOtherwise is the rule of a line that is ruled on in a direction that the edge has at
// its end, but not along the chord.
const ruledOtherwise = "ruled on between the last step and the chord"

// swallowed is the rule of a seam of which only what is ruled on past the end of its edge
// is left by the allowance of the edge beside it. It may be sewn or refused.
const swallowed = "an edge swallowed by the allowance beside it"

// neverCross is the rule of a corner whose lines do not meet where they must.
const neverCross = "lines that never cross"

// option is one way in which a corner may come out.
type option struct {
	rule         string       // that allows it; none for what is expected
	a, b         complex128   // where the seams of the two edges end and begin
	lineA, lineB []complex128 // where their drawn lines may; the first of them is expected
	in, out      complex128   // the directions in which the lines are ruled on
}

func (o option) mirrored() option {
	o.a, o.b = cmplx.Conj(o.b), cmplx.Conj(o.a)
	o.lineA, o.lineB = turnedOver(o.lineB), turnedOver(o.lineA)
	slices.Reverse(o.lineA)
	slices.Reverse(o.lineB)
	o.in, o.out = -cmplx.Conj(o.out), -cmplx.Conj(o.in)
	return o
}

// turn returns the least and the most degrees, positive out of the piece, that the outline
// may be said to turn by after edge k: by last steps, or by chords of the edges.
func (p piece) turn(k int) (least, most float64) {
	a, b := p.sides[k], p.sides[p.next(k)]
	reach := max(sturdy*max(a.d, b.d), 1) // beside two bare edges, a millimetre
	chord := func(l line) complex128 { return unit(l.at(min(reach, l.length())) - l[0]) }
	out, in := -chord(a.path.reversed()), chord(b.path.line)
	degrees := func(turn complex128) float64 { return cmplx.Phase(turn) * 180 / math.Pi }
	x, y, z := degrees(b.first/a.last), degrees(in/out), degrees(b.in/a.out)
	return min(x, y, z), max(x, y, z)
}

// ruledOn returns the line of edge k ruled on past both ends.
func (p piece) ruledOn(k int, in, out complex128) ruled {
	main, long := p.sides[k].main, runOuts*p.widest
	first, last := main[0], main[len(main)-1]
	return rule(slices.Concat(line{first - times(in, long)}, main, line{last + times(out, long)}))
}

// exit returns where the line of edge k first meets the outline, past a place along it,
// and whether that is on the next edge; in a corner it is on both.
func (p piece) exit(k int, on ruled, from float64) (y meet, atNext bool) {
	y.a = math.Inf(1)
	for i, s := range p.sides {
		for _, m := range meets(on, s.path) {
			if m.a > from+1e-4 && m.a < y.a {
				y, atNext = m, i == p.next(k)
			}
		}
	}
	if f := p.sides[p.next(k)].path.nearest(y.at, sameLine); f.segment >= 0 && !math.IsInf(y.a, 1) {
		atNext = true
	}
	return y, atNext
}

// corner returns the ways in which the corner after edge k may come out, the expected one
// first; none where the line of one edge passes a bare one by.
func (p piece) corner(k int) []option {
	a, b := p.sides[k], p.sides[p.next(k)]
	switch {
	case a.d == 0 && b.d == 0:
		q := b.path.line[0]
		return []option{{a: q, b: q, lineA: line{q}, lineB: line{q}}}
	case a.d == 0:
		n := len(p.sides)
		options := p.over.corner((2*n - 2 - k) % n)
		for i := range options {
			options[i] = options[i].mirrored()
		}
		return options
	case b.d == 0:
		return p.besideBare(k)
	}
	var options []option
	for _, out := range a.ways() {
		for _, in := range b.mirrored().ways() {
			way := ""
			if in = -cmplx.Conj(in); out != a.out || in != b.in {
				way = ruledOtherwise
			}
			options = append(options, p.crossing(k, out, in, way)...)
		}
	}
	return options
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

// besideBare reckons a corner whose second edge has no allowance.
func (p piece) besideBare(k int) []option {
	a, b := p.sides[k], p.sides[p.next(k)]
	end, start := a.main[len(a.main)-1], b.path.line[0]
	least, most := p.turn(k)
	var options []option
	if most > gentle-about {
		for _, out := range a.ways() {
			y, atNext := p.exit(k, p.ruledOn(k, a.in, out), runOuts*p.widest+a.main.length()/2)
			if atNext {
				o := option{a: y.at, b: y.at, lineA: line{y.at}, lineB: line{start}, out: out}
				if out != a.out {
					o.rule = ruledOtherwise
				}
				options = append(options, o)
			}
		}
	}
	if least < gentle+about {
		o := option{a: end, b: start, lineA: line{end}, lineB: line{start}, out: a.out}
		if len(options) > 0 {
			o.rule = "about 8 degrees"
		}
		options = append(options, o)
		// Or where the bare edge would come in, were it ruled on into the piece.
		back := rule(line{start - times(b.first, runOuts*p.widest), start})
		for _, m := range meets(p.ruledOn(k, a.in, a.out), back) {
			if cmplx.Abs(m.at-end) < farStep*a.d {
				options = append(options, option{rule: "a bare edge ruled into a hollow", a: m.at, b: start, lineA: line{m.at}, lineB: line{start}, out: a.out})
			}
		}
	}
	return options
}

// crossing reckons a corner between two allowances whose lines are ruled on in the given
// directions. way is the rule that allows these.
func (p piece) crossing(k int, out, in complex128, way string) []option {
	next := p.next(k)
	a, b := p.sides[k], p.sides[next]
	least, most := p.turn(k)
	small, great := min(math.Abs(least), math.Abs(most)), max(math.Abs(least), math.Abs(most))
	if least < 0 && most > 0 {
		small = 0
	}
	limit := float64(gentle)
	if math.Abs(a.d-b.d) > 0.01 {
		limit = gentleUnequal
	}
	mild, sharp := great < limit-about, small > limit+about
	named := func(rules ...string) string {
		for _, r := range append([]string{way}, rules...) {
			if r != "" {
				return r
			}
		}
		return ""
	}

	long := runOuts * p.widest
	onA, onB := p.ruledOn(k, a.in, out), p.ruledOn(next, in, b.out)
	endA := long + a.main.length()
	end, start := a.main[len(a.main)-1], b.main[0]
	step := option{a: end, b: start, lineA: line{end}, lineB: line{start}, out: out, in: in}
	all := meets(onA, onB)
	if len(all) == 0 {
		step.rule = way
		if !mild {
			step.rule = named(neverCross)
		}
		return []option{step}
	}
	// The nearest to the corner as one walks along the lines, if it can be between the middles.
	off := func(x meet) float64 { return math.Abs(x.a-endA) + math.Abs(x.b-long) }
	beyond := func(x meet) int {
		if x.a > long+a.main.length()/2 && x.b < long+b.main.length()/2 {
			return 0
		}
		return 1
	}
	slices.SortStableFunc(all, func(x, y meet) int {
		return cmp.Or(cmp.Compare(beyond(x), beyond(y)), cmp.Compare(off(x), off(y)))
	})
	var options []option
	for i, x := range all {
		o := option{a: x.at, b: x.at, out: out, in: in}
		o.lineA = p.drawn(k, onA, onB, x)
		n := len(p.sides)
		back := p.over.drawn((2*n-2-k)%n, mirror(onB), mirror(onA), meet{onB.length() - x.b, onA.length() - x.a, cmplx.Conj(x.at)})
		for _, q := range back {
			o.lineB = append(o.lineB, cmplx.Conj(q))
		}
		if !sharp { // some do not rule it on there
			o.lineA, o.lineB = append(line{x.at}, o.lineA...), append(line{x.at}, o.lineB...)
		}
		far := max(math.Abs(x.a-endA), math.Abs(x.b-long)) / max(a.d, b.d)
		const slack = 0.02
		counts, mayNot := sharp || !mild || far < farStep+slack, !sharp && far > nearStep-slack
		if i > 0 {
			o.rule = "a later crossing"
		}
		if x.a < long+leastSeam || x.b > long+b.main.length()-leastSeam {
			// All that lies beside one edge lies in the allowance of the other.
			o.rule = swallowed
			step.rule = swallowed
			if !sharp {
				step.rule = way
			}
			options = append(options, step)
		}
		o.rule = named(o.rule)
		if mayNot && !mild && far > farStep {
			o.rule = named("about 8 or 30 degrees")
		} else if mayNot {
			o.rule = named("a crossing between 1 and 1.5 allowances off")
		}
		if counts {
			options = append(options, o)
		}
		if mayNot && i == 0 {
			step.rule = way
			options = append(options, step)
		}
	}
	if len(options) == 0 {
		step.rule = way
		return []option{step}
	}
	return options
}

func mirror(r ruled) ruled { return rule(turnedOver(r.line)) }

// drawn returns where the drawn line of edge k, whose seam ends at the crossing x with the
// next, may end: at the cutting line of that edge where it comes to it before anything
// else, or else at the crossing.
func (p piece) drawn(k int, onA, onB ruled, x meet) line {
	y, atNext := p.exit(k, onA, x.a)
	if !atNext {
		return line{x.at}
	}
	for _, end := range []complex128{p.sides[p.next(k)].path.line[0], p.sides[p.next(k)].path.line[len(p.sides[p.next(k)].path.line)-1]} {
		if cmplx.Abs(y.at-end) < sameLine {
			return line{x.at, y.at} // in a corner it comes to two edges
		}
	}
	for _, m := range meets(onA, onB) {
		if m.a > x.a+1e-3 && m.a < y.a && m.b > x.b {
			return line{x.at} // it meets the neighbour's seam again
		}
	}
	return line{y.at}
}
