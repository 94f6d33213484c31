package reference

import (
	"math"
	"math/cmplx"

	"tuckmark/marking/piece"
)

// The fold of what is turned in at the edge of a hem, reckoned as a line inside that edge at
// the distance of the turn. It is no seam, and its ends have rules of their own:
//
//   - Where the corner is a step, it ends square to its edge.
//   - Where the outline turns out of the piece it is ruled on to any other cutting line that
//     it comes to within eight turns.
//   - Else it ends at the stitch line of its neighbour, where it meets that, or square.

// turnReach is how far the fold is ruled on at most, in turns.
const turnReach = 8

// turnLine looks at the fold of what is turned in at edge k, whose corners came out as taken.
func (v *verdict) turnLine(p draft, k int, e piece.Edge, given line, taken []option) {
	if e.Turn == 0 {
		return
	}
	drawn := lineOf(e.TurnLine).simple()
	e.Allowance, e.Line = e.Turn, e.TurnLine
	q := draft{sides: append([]side{}, p.sides...), outline: p.outline, widest: p.widest}
	q.sides[k] = newSide(e, given)
	over := q.mirrored()
	n := len(q.sides)
	for _, end := range []struct {
		name string
		may  []complex128
		at   complex128
	}{
		{"end", q.turnEnds(k, taken[k]), drawn[len(drawn)-1]},
		{"begin", conj(over.turnEnds(n-1-k, taken[p.before(k)])), drawn[0]},
	} {
		off := math.Inf(1)
		for _, at := range end.may {
			off = min(off, cmplx.Abs(at-end.at))
		}
		v.same("turns", off, sameLine, "what is turned in at %s should %s at %.3f in, not at %.3f", e.Key, end.name, end.may[0]/inch, end.at/inch)
	}
	apart := drawn.farthest(q.ruledOn(k).line)
	v.same("turns apart", apart, sameLine, "what is turned in at %s lies %.3f mm off where it should", e.Key, apart)
}

func conj(all []complex128) []complex128 {
	for i := range all {
		all[i] = cmplx.Conj(all[i])
	}
	return all
}

// turnEnds returns where the fold inside edge k may end, at the corner after it, which came
// out as taken.
func (p draft) turnEnds(k int, taken option) []complex128 {
	a, b := p.sides[k], p.sides[p.next(k)]
	square := a.main[len(a.main)-1]
	if taken.step {
		return []complex128{square}
	}
	least, most := p.turn(k)
	var ends []complex128
	if most > gentle-about {
		if y := p.leaves(k); y.edge != k && cmplx.Abs(y.at-square) < turnReach*a.d+sameLine {
			ends = append(ends, y.at)
		}
	}
	if len(ends) > 0 && least > gentle+about {
		return ends
	}
	reach := hollowReach
	if least > -gentleUnequal-about {
		reach = farStep
	}
	if most > gentle-about {
		reach = turnReach
	}
	for _, m := range meets(p.ruledOn(k), p.ruledOn(p.next(k))) {
		if cmplx.Abs(m.at-square) < reach*max(a.d, b.d)+sameLine {
			ends = append(ends, m.at)
		}
	}
	if len(ends) == 0 || least < gentleUnequal+about {
		ends = append(ends, square)
	}
	return ends
}
