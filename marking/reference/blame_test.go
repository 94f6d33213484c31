package reference

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"
)

// What keeps a piece from being sewn, reckoned from the regions.

const (
	leastSeam = 2.0 // mm; nobody sews a shorter one

	doubtful = 0.01 // mm; what lies in an allowance by less is rounding

	nothingLeft = "nothing keeps the allowance"

	looking = 2.0 // mm between the places of a seam that are looked at
)

// blame is a reason why a piece cannot be sewn, and the edges it lies with.
type blame struct {
	edges []int
	why   string
	by    float64 // mm; what is over the agreement is beyond doubt
}

// ring is what is sewn: the seam of each edge, end to end.
type ring struct{ seams []line }

// sewn returns the seams between the corners as they come out by the options, one for each
// corner. A seam whose ends pass each other is none.
func (p draft) sewn(options []option) ring {
	var r ring
	for k, s := range p.sides {
		before, after := options[p.before(k)], options[k]
		l, long := s.main, 0.0
		if s.d > 0 {
			long = runOuts * p.widest
			l = append(append(line{l[0] - times(before.in, long)}, l...), l[len(l)-1]+times(after.out, long))
		}
		on := rule(l)
		from, to := on.along(before.b), on.along(after.a)
		if to-from < 1e-6 {
			r.seams = append(r.seams, nil)
			continue
		}
		r.seams = append(r.seams, l.between(from, to))
	}
	return r
}

// along returns how far along a line a place on it lies.
func (r ruled) along(q complex128) float64 {
	f := r.nearest(q, math.Inf(1))
	return line(r.line[:f.segment+1]).length() + f.share*cmplx.Abs(r.line[f.segment+1]-r.line[f.segment])
}

// closed returns the whole ring as one line whose last place is its first again.
func (r ring) closed() line {
	var all line
	for _, s := range r.seams {
		all = append(all, s...)
	}
	if len(all) == 0 {
		return nil
	}
	all = all.simple()
	if n := len(all); cmplx.Abs(all[n-1]-all[0]) < 1e-6 {
		all = all[:n-1]
	}
	return append(all, all[0])
}

// places returns places of a line to look at: its corners, and more between them.
func (l line) places() line {
	var all line
	for i := 1; i < len(l); i++ {
		n := math.Ceil(cmplx.Abs(l[i]-l[i-1]) / looking)
		for k := range int(n) {
			all = append(all, l[i-1]+times(l[i]-l[i-1], float64(k)/n))
		}
	}
	return append(all, l[len(l)-1])
}

// intrusion returns how deep at most, in mm, a seam of edge i lies in the allowance of edge
// j: cloth to the left of it, not past its ends. Beside a corner that the two share and
// that hardly turns out of the piece there may be a step.
func (p draft) intrusion(i, j int, seam line) (deep float64, at complex128) {
	s := p.sides[j]
	if s.d == 0 || len(seam) == 0 || !boxOf(seam...).grown(s.d).meets(s.path.whole) {
		return 0, 0
	}
	var steps line
	for _, k := range []int{i, j} {
		if other := i + j - k; p.next(k) == other {
			if least, _ := p.turn(k); least < gentleUnequal+about {
				steps = append(steps, p.sides[other].path.line[0])
			}
		}
	}
	reach := 1.6 * max(p.sides[i].d, s.d)
	for _, q := range seam.places() {
		f := s.path.nearest(q, s.d-deep)
		if f.segment < 0 || s.path.atEnd(f) && i != j || !s.path.onLeft(q, f) ||
			slices.ContainsFunc(steps, func(c complex128) bool { return cmplx.Abs(c-q) < reach }) {
			continue
		}
		deep, at = s.d-f.away, q
	}
	return deep, at
}

// blames returns all that keeps the piece from being sewn when its corners come out as the
// options have it.
func (p draft) blames(r ring) []blame {
	var all []blame
	for k, s := range p.sides {
		around := []int{p.before(k), k, p.next(k)}
		if long := s.path.length(); r.seams[k].length() < min(leastSeam, long-0.05) {
			all = append(all, blame{around, "nothing to be sewn", min(leastSeam, long) - r.seams[k].length()})
		}
		for j := range p.sides {
			if deep, at := p.intrusion(k, j, r.seams[k]); deep > doubtful {
				all = append(all, blame{[]int{k, j}, fmt.Sprintf("a seam in an allowance at %.2f", at), deep})
			}
		}
	}
	return append(all, r.tangles()...)
}

// reach is a part of the ring: a seam, or the step from one to the next.
type reach struct {
	ruled
	edges []int
}

// reaches returns all parts of the ring in their order.
func (r ring) reaches() []reach {
	var all []reach
	for k, s := range r.seams {
		next := (k + 1) % len(r.seams)
		if len(s) < 2 || len(r.seams[next]) < 2 {
			continue
		}
		all = append(all, reach{rule(s), []int{k}})
		if step := (line{s[len(s)-1], r.seams[next][0]}); step.length() > sameLine {
			all = append(all, reach{rule(step), []int{k, next}})
		}
	}
	return all
}

// tangles returns which parts of the ring cross themselves or each other.
func (r ring) tangles() []blame {
	var all []blame
	reaches := r.reaches()
	for i, a := range reaches {
		for _, b := range reaches[i:] {
			for _, m := range meets(a.ruled, b.ruled) {
				aEnd, bEnd := min(m.a, a.length()-m.a), min(m.b, b.length()-m.b)
				itself := a.edges[0] == b.edges[0] && len(a.edges) == len(b.edges)
				if aEnd < sameLine && bEnd < sameLine || itself && math.Abs(m.a-m.b) < sameLine {
					continue // where one goes on into the other
				}
				edges := slices.Compact(slices.Sorted(slices.Values(append(slices.Clone(a.edges), b.edges...))))
				all = append(all, blame{edges, fmt.Sprintf("seams cross at %.2f", m.at), 1})
				break
			}
		}
	}
	return all
}

// lonely returns what is wrong with the edges each by itself.
func (p draft) lonely() []blame {
	var all []blame
	for k, s := range p.sides {
		switch {
		case s.gone:
			all = append(all, blame{[]int{k}, nothingLeft, 1})
		case s.passed > 0.5*s.d:
			all = append(all, blame{[]int{k}, "its line meets itself", s.passed})
		}
		if s.gone {
			continue
		}
		// What of the line lies outside the piece, between two places within it.
		outs := 0
		for j, o := range p.sides {
			if j != k {
				outs += len(meets(rule(s.main), o.path))
			}
		}
		if outs > 2 {
			all = append(all, blame{[]int{k}, "its line leaves the piece", 1})
		}
	}
	return all
}
