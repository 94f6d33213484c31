package reference

import (
	"cmp"
	"math"
	"math/cmplx"
	"slices"

	"tuckmark/marking/piece"
)

// What becomes of the stitch lines where two edges meet, reckoned from the points of the
// edges and their allowances alone. The rules, as a maker would say them:
//
//   - Each seam ends where the two lines first cross. The drawn line is ruled on to the
//     cutting line of the neighbour where it comes to that before anything else.
//   - Where the outline turns little (8 degrees; 30 between unequal allowances) the
//     crossing counts only near the corner; else both end square to it, with a step.
//   - Beside an edge without allowance the line ends on that edge and cuts it, or passes
//     it by, which cannot be sewn. Where the outline does not turn out of the piece there
//     is no edge ahead of it, and it ends square.
//
// Where the words leave room, each way of making the corner is an option, with the rule
// that allows it.

const (
	gentle, gentleUnequal = 8, 30 // degrees

	// about is by how many degrees a turn may miss these and still be taken either way:
	// a turn between curves is what one takes their directions to be.
	about = 2.0

	// A crossing at a gentle corner counts within nearStep of the wider allowance, does
	// not beyond farStep, and may do either between them; slack bounds how exactly.
	nearStep, farStep, slack = 1.0, 1.5, 0.02

	hollowReach = 6.0 // how far such a crossing counts where the outline turns sharply into the piece

	runOuts = 10 // of the widest allowance; farther than any crossing that counts
)

// The rules that allow what is not expected.
const (
	// A line that ends before it is square to the end of its edge, because that bends more
	// tightly than the allowance, would lead over its own allowance. So it need not be
	// ruled on.
	tight = "an edge that bends more tightly than its allowance at its end"

	// Of a seam only what is ruled on past the end of its edge is left by the allowance of
	// the edge beside it. It may be sewn or refused.
	swallowed = "an edge swallowed by the allowance beside it"

	neverCross    = "lines that never cross"
	laterCrossing = "a later crossing"
	aboutSharp    = "about 8 or 30 degrees"
	betweenSteps  = "a crossing between 1 and 1.5 allowances off"
)

// draft is a piece as it is reckoned: its sides counter-clockwise.
type draft struct {
	sides   []side
	outline ruled
	widest  float64 // the widest allowance
	over    *draft  // turned over
}

// newDraft reckons a piece whose edges are given by these points.
func newDraft(p piece.Piece, given map[string]line) draft {
	var r draft
	for _, e := range p.Edges {
		s := newSide(e, given[e.Key])
		r.sides = append(r.sides, s)
		r.widest = max(r.widest, s.d)
	}
	r.outline = rule(lineOf(p.Outline))
	over := r.mirrored()
	r.over, over.over = &over, &r
	return r
}

// mirrored turns a piece over, so that one end of an edge can be reckoned as the other is.
// Side i becomes side n-1-i, and the corner after it the one before.
func (p draft) mirrored() draft {
	r := draft{outline: mirror(p.outline), widest: p.widest}
	for _, s := range slices.Backward(p.sides) {
		r.sides = append(r.sides, s.mirrored())
	}
	return r
}

// turnedOver walks a line the other way, mirrored.
func turnedOver(l line) line {
	r := l.reversed()
	for i := range r {
		r[i] = cmplx.Conj(r[i])
	}
	return r
}

func (p draft) next(k int) int { return (k + 1) % len(p.sides) }

func (p draft) before(k int) int { return (k + len(p.sides) - 1) % len(p.sides) }

// option is one way in which a corner may come out.
type option struct {
	rule         string       // that allows it; none for what is expected
	a, b         complex128   // where the seams of the two edges end and begin
	lineA, lineB []complex128 // where their drawn lines may; the first of them is expected
	in, out      complex128   // the directions in which the lines are ruled on
	step         bool         // both end square, and from one to the other leads a step
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
func (p draft) turn(k int) (least, most float64) {
	a, b := p.sides[k], p.sides[p.next(k)]
	reach := max(sturdy(max(a.d, b.d)), 1) // beside two bare edges, a millimetre
	chord := func(l line) complex128 { return unit(l.at(min(reach, l.length())) - l[0]) }
	out, in := -chord(a.path.reversed()), chord(b.path.line)
	degrees := func(turn complex128) float64 { return cmplx.Phase(turn) * 180 / math.Pi }
	x, y, z := degrees(b.first/a.last), degrees(in/out), degrees(b.in/a.out)
	return min(x, y, z), max(x, y, z)
}

// ruledOn returns the line of edge k ruled on past both ends.
func (p draft) ruledOn(k int) ruled {
	s, long := p.sides[k], runOuts*p.widest
	first, last := s.main[0], s.main[len(s.main)-1]
	return rule(slices.Concat(line{first - times(s.in, long)}, s.main, line{last + times(s.out, long)}))
}

// exit is where a line meets the outline, and on which edge.
type exit struct {
	meet
	edge int
}

// exits returns where the line of edge k meets the outline, in its order. In a corner it
// meets two edges, of which the next is told.
func (p draft) exits(k int, on ruled) []exit {
	var all []exit
	for i, s := range p.sides {
		for _, m := range meets(on, s.path) {
			if f := p.sides[p.next(k)].path.nearest(m.at, sameLine); f.segment >= 0 {
				all = append(all, exit{m, p.next(k)})
			} else {
				all = append(all, exit{m, i})
			}
		}
	}
	slices.SortFunc(all, func(x, y exit) int { return cmp.Compare(x.a, y.a) })
	return all
}

// exit returns where the line of edge k first meets the outline past a place along it; where
// it does not, that is on edge k itself.
func (p draft) exit(k int, on ruled, from float64) exit {
	for _, y := range p.exits(k, on) {
		if y.a > from+1e-4 {
			return y
		}
	}
	return exit{meet{a: math.Inf(1)}, k}
}

// leaves returns where the line of edge k leaves the piece at its end: before that, where a
// sharp corner cuts off what lies beside the end of the edge.
func (p draft) leaves(k int) exit {
	on := p.ruledOn(k)
	end := runOuts*p.widest + p.sides[k].main.length() - sameLine/2
	if p.outline.holds(on.at(end)) {
		return p.exit(k, on, end-1e-4)
	}
	last := exit{edge: k}
	for _, y := range p.exits(k, on) {
		if y.a <= end {
			last = y
		}
	}
	return last
}

// corner returns the ways in which the corner after edge k may come out, the expected one
// first; none where the line of one edge passes a bare one by.
func (p draft) corner(k int) []option {
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
	return p.crossing(k)
}

// besideBare reckons a corner whose second edge has no allowance.
func (p draft) besideBare(k int) []option {
	a, b := p.sides[k], p.sides[p.next(k)]
	end, start := a.main[len(a.main)-1], b.path.line[0]
	least, most := p.turn(k)
	var options []option
	if most > gentle-about {
		if y := p.leaves(k); y.edge == p.next(k) {
			options = append(options, option{a: y.at, b: y.at, lineA: line{y.at}, lineB: line{start}, out: a.out})
		}
	}
	if least < gentle+about {
		o := option{a: end, b: start, lineA: line{end}, lineB: line{start}, out: a.out}
		if len(options) > 0 {
			o.rule = aboutSharp
		}
		options = append(options, o)
		// A bare edge that bends round comes before the line after all.
		for _, m := range meets(p.ruledOn(k), b.path) {
			far := max(cmplx.Abs(m.at-end), m.b) / a.d
			o := option{rule: betweenSteps, a: m.at, b: m.at, lineA: line{m.at}, lineB: line{start}, out: a.out}
			switch {
			case far < nearStep-slack:
				o.rule = ""
				options = append([]option{o}, options...)
			case far < farStep+slack:
				options = append(options, o)
			}
		}
	}
	return options
}

// sharpness tells how far the corner after edge k turns: gently, sharply, or by so much that
// it may be taken for either.
func (p draft) sharpness(k int) (mild, sharp bool) {
	least, most := p.turn(k)
	small, great := min(math.Abs(least), math.Abs(most)), max(math.Abs(least), math.Abs(most))
	if least < 0 && most > 0 {
		small = 0
	}
	limit := float64(gentle)
	if math.Abs(p.sides[k].d-p.sides[p.next(k)].d) > 0.01 {
		limit = gentleUnequal
	}
	return great < limit-about, small > limit+about
}

// crossing reckons a corner between two allowances.
func (p draft) crossing(k int) []option {
	a, b := p.sides[k], p.sides[p.next(k)]
	mild, sharp := p.sharpness(k)
	square := func(rule string) option {
		end, start := a.main[len(a.main)-1], b.main[0]
		return option{rule: rule, a: end, b: start, lineA: line{end}, lineB: line{start}, out: a.out, in: b.in, step: true}
	}
	long := runOuts * p.widest
	onA, onB := p.ruledOn(k), p.ruledOn(p.next(k))
	endA, endB := long+a.main.length(), long // where the lines are square to the corner
	all := meets(onA, onB)
	if len(all) == 0 && !mild {
		return []option{square(neverCross)}
	}
	// The nearest to the corner as one walks along the lines; between their middles, if there
	// is one.
	slices.SortStableFunc(all, func(x, y meet) int {
		off := func(m meet) float64 { return math.Abs(m.a-endA) + math.Abs(m.b-endB) }
		beyond := func(m meet) int {
			if m.a > long+a.main.length()/2 && m.b < long+b.main.length()/2 {
				return 0
			}
			return 1
		}
		return cmp.Or(cmp.Compare(beyond(x), beyond(y)), cmp.Compare(off(x), off(y)))
	})
	var options []option
	for i, x := range all {
		far := max(math.Abs(x.a-endA), math.Abs(x.b-endB)) / max(a.d, b.d)
		counts := sharp || !mild || far < farStep+slack
		mayStep := !sharp && far > nearStep-slack
		rule := ""
		if i > 0 {
			rule = laterCrossing
		}
		if x.a < long+leastSeam || x.b > long+b.main.length()-leastSeam {
			rule = swallowed
			if sharp {
				options = append(options, square(swallowed))
			} else {
				options = append(options, square(""))
			}
		}
		switch {
		case mayStep && far > farStep:
			rule = aboutSharp
		case mayStep:
			rule = betweenSteps
		}
		if counts {
			o := option{rule: rule, a: x.at, b: x.at, out: a.out, in: b.in}
			o.lineA, o.lineB = p.drawn(k, onA, onB, x), p.drawnBack(k, onA, onB, x)
			switch {
			case !sharp: // some do not rule it on there
				o.lineA, o.lineB = append(line{x.at}, o.lineA...), append(line{x.at}, o.lineB...)
			case a.hookedOut || b.hookedIn:
				o.lineA, o.lineB = append(o.lineA, x.at), append(o.lineB, x.at)
			}
			options = append(options, o)
		}
		if mayStep && i == 0 {
			options = append(options, square(""))
		}
	}
	if a.hookedOut || b.hookedIn {
		options = append(options, square(tight))
	}
	if len(options) == 0 {
		options = append(options, square(""))
	}
	return options
}

func mirror(r ruled) ruled { return rule(turnedOver(r.line)) }

// drawn returns where the drawn line of edge k, whose seam ends at the crossing x with the
// next, may end: at the cutting line of that edge where it comes to it before anything
// else, or else at the crossing.
func (p draft) drawn(k int, onA, onB ruled, x meet) line {
	y := p.exit(k, onA, x.a)
	if y.edge != p.next(k) {
		return line{x.at}
	}
	next := p.sides[p.next(k)].path
	if f := next.nearest(y.at, math.Inf(1)); next.atEnd(f) || cmplx.Abs(next.line[0]-y.at) < sameLine ||
		cmplx.Abs(next.line[len(next.line)-1]-y.at) < sameLine {
		return line{x.at, y.at} // in a corner it comes to two edges at once
	}
	for _, m := range meets(onA, onB) {
		if m.a > x.a+1e-3 && m.a < y.a && m.b > x.b {
			return line{x.at} // it meets the neighbour's seam again
		}
	}
	return line{y.at}
}

// drawnBack does so for the line of the next edge.
func (p draft) drawnBack(k int, onA, onB ruled, x meet) line {
	n := len(p.sides)
	over := meet{onB.length() - x.b, onA.length() - x.a, cmplx.Conj(x.at)}
	return turnedOver(p.over.drawn((2*n-2-k)%n, mirror(onB), mirror(onA), over)).reversed()
}
