package reference

import (
	"cmp"
	"math"
	"math/cmplx"
	"slices"

	"tuckmark/marking/plane"
)

// Region arithmetic with nothing but half-planes and discs. A place is a complex number,
// in mm. The allowance region of an edge is the union of capsules: all that is nearer than
// the allowance to one of its segments. A capsule and a straight line meet in one
// stretch, because it is convex; so what is left of a line outside of a region is found by
// taking stretches out of its segments, exactly, without looking for crossings of offsets.

// line is a path from place to place.
type line []complex128

func lineOf(p plane.Path) line {
	l := make(line, len(p))
	for i, q := range p {
		l[i] = complex(q.X, q.Y)
	}
	return l
}

func dot(a, b complex128) float64   { return real(a)*real(b) + imag(a)*imag(b) }
func cross(a, b complex128) float64 { return real(a)*imag(b) - imag(a)*real(b) }

// unit returns a step of length 1, or none for none.
func unit(a complex128) complex128 {
	if a == 0 {
		return 0
	}
	return a / complex(cmplx.Abs(a), 0)
}

// times makes a step longer.
func times(a complex128, by float64) complex128 { return a * complex(by, 0) }

// left is a step turned left by a right angle.
func left(a complex128) complex128 { return a * 1i }

func (l line) length() float64 {
	long := 0.0
	for i := 1; i < len(l); i++ {
		long += cmplx.Abs(l[i] - l[i-1])
	}
	return long
}

// area is what the line goes round when it is closed, in mm².
func (l line) area() float64 {
	twice := 0.0
	for i := range l {
		twice += cross(l[i]-l[0], l[(i+1)%len(l)]-l[0])
	}
	return twice / 2
}

func (l line) reversed() line {
	r := slices.Clone(l)
	slices.Reverse(r)
	return r
}

// simple returns the line without steps shorter than a millionth of a millimetre.
func (l line) simple() line {
	var s line
	for _, q := range l {
		if len(s) == 0 || cmplx.Abs(q-s[len(s)-1]) > 1e-6 {
			s = append(s, q)
		}
	}
	return s
}

// between returns the part of the line from one length along it to another.
func (l line) between(from, to float64) line {
	var part line
	along := 0.0
	for i := 1; i < len(l); i++ {
		long := cmplx.Abs(l[i] - l[i-1])
		a, b := max(from-along, 0), min(to-along, long)
		if a <= b && long > 0 {
			step := (l[i] - l[i-1]) / complex(long, 0)
			if len(part) == 0 {
				part = append(part, l[i-1]+times(step, a))
			}
			part = append(part, l[i-1]+times(step, b))
		}
		along += long
	}
	return part
}

// at returns the place so far along the line.
func (l line) at(along float64) complex128 {
	for i := 1; i < len(l); i++ {
		long := cmplx.Abs(l[i] - l[i-1])
		if along <= long && long > 0 {
			return l[i-1] + times(l[i]-l[i-1], max(along, 0)/long)
		}
		along -= long
	}
	return l[len(l)-1]
}

// box is a rectangle along the axes.
type box struct{ low, high complex128 }

func boxOf(places ...complex128) box {
	b := box{places[0], places[0]}
	for _, q := range places[1:] {
		b = b.with(box{q, q})
	}
	return b
}

func (b box) with(c box) box {
	return box{complex(min(real(b.low), real(c.low)), min(imag(b.low), imag(c.low))),
		complex(max(real(b.high), real(c.high)), max(imag(b.high), imag(c.high)))}
}

func (b box) grown(by float64) box {
	return box{b.low - complex(by, by), b.high + complex(by, by)}
}

func (b box) meets(c box) bool {
	return real(b.low) <= real(c.high) && real(c.low) <= real(b.high) &&
		imag(b.low) <= imag(c.high) && imag(c.low) <= imag(b.high)
}

// away returns a length than which nothing in the box is nearer to q.
func (b box) away(q complex128) float64 {
	x := max(real(b.low)-real(q), real(q)-real(b.high), 0)
	y := max(imag(b.low)-imag(q), imag(q)-imag(b.high), 0)
	return math.Hypot(x, y)
}

// blockLength is how many segments share a box.
const blockLength = 8

// ruled is a line whose segments are found by boxes over several of them.
type ruled struct {
	line
	blocks []box
	whole  box
}

func rule(l line) ruled {
	r := ruled{line: l, whole: boxOf(l...)}
	for i := 0; i+1 < len(l); i += blockLength {
		r.blocks = append(r.blocks, boxOf(l[i:min(i+blockLength+1, len(l))]...))
	}
	return r
}

// each visits the segments whose boxes meet b.
func (r ruled) each(b box, visit func(i int)) {
	if !r.whole.meets(b) {
		return
	}
	for k, block := range r.blocks {
		if !block.meets(b) {
			continue
		}
		for i := k * blockLength; i < min((k+1)*blockLength, len(r.line)-1); i++ {
			if boxOf(r.line[i], r.line[i+1]).meets(b) {
				visit(i)
			}
		}
	}
}

// foot is the place on a line nearest to another.
type foot struct {
	away    float64
	segment int
	share   float64 // of the way along the segment
}

// nearest looks no farther than limit.
func (r ruled) nearest(q complex128, limit float64) foot {
	best := foot{away: limit, segment: -1}
	for k, block := range r.blocks {
		if block.away(q) >= best.away {
			continue
		}
		for i := k * blockLength; i < min((k+1)*blockLength, len(r.line)-1); i++ {
			step := r.line[i+1] - r.line[i]
			share := 0.0
			if square := dot(step, step); square > 0 {
				share = min(max(dot(q-r.line[i], step)/square, 0), 1)
			}
			if away := cmplx.Abs(q - r.line[i] - times(step, share)); away < best.away {
				best = foot{away, i, share}
			}
		}
	}
	return best
}

// atEnd tells that the nearest place is an end of the line.
func (r ruled) atEnd(f foot) bool {
	return f.segment == 0 && f.share == 0 || f.segment == len(r.line)-2 && f.share == 1
}

// holds tells whether a closed line goes round q.
func (r ruled) holds(q complex128) bool {
	inside := false
	for i := 1; i < len(r.line); i++ {
		a, b := r.line[i-1], r.line[i]
		if (imag(a) > imag(q)) != (imag(b) > imag(q)) &&
			real(q) < real(a)+(imag(q)-imag(a))/(imag(b)-imag(a))*real(b-a) {
			inside = !inside
		}
	}
	return inside
}

// farthest returns how far at most a place of the line lies from another.
func (l line) farthest(other line) float64 {
	on, most := rule(other), 0.0
	for _, q := range l {
		most = max(most, on.nearest(q, math.Inf(1)).away)
	}
	return most
}

// onLeft tells that a place lies to the left of the line where that is nearest to it.
func (r ruled) onLeft(q complex128, f foot) bool {
	a, b := r.line[f.segment], r.line[f.segment+1]
	step := unit(b - a)
	foot := a + times(b-a, f.share)
	switch { // on a corner the middle of its two directions tells
	case f.share == 0 && f.segment > 0:
		step += unit(a - r.line[f.segment-1])
	case f.share == 1 && f.segment+2 < len(r.line):
		step += unit(r.line[f.segment+2] - b)
	}
	return cross(step, q-foot) > 0
}

// stretch is a part of a line, in mm along it, or of a segment, in shares.
type stretch struct{ from, to float64 }

// capsule returns the stretch of the segment pq, in shares, that is nearer than d to the
// segment ab.
func capsule(p, q, a, b complex128, d float64) (stretch, bool) {
	found := stretch{math.Inf(1), math.Inf(-1)}
	step := q - p
	square := dot(step, step)
	for _, centre := range []complex128{a, b} { // the two discs
		middle := dot(centre-p, step) / square
		height := cross(step, centre-p)
		if half := d*d*square - height*height; half > 0 {
			half = math.Sqrt(half) / square
			found = stretch{min(found.from, middle-half), max(found.to, middle+half)}
		}
	}
	along := b - a
	long := cmplx.Abs(along)
	if long > 0 { // the rectangle between them: four half-planes
		u := times(along, 1/long)
		s := stretch{0, 1}
		s = s.halfPlane(dot(p-a, u), dot(q-a, u))
		s = s.halfPlane(long-dot(p-a, u), long-dot(q-a, u))
		s = s.halfPlane(d-cross(u, p-a), d-cross(u, q-a))
		s = s.halfPlane(d+cross(u, p-a), d+cross(u, q-a))
		if s.from < s.to {
			found = stretch{min(found.from, s.from), max(found.to, s.to)}
		}
	}
	found = stretch{max(found.from, 0), min(found.to, 1)}
	return found, found.from < found.to
}

// halfPlane keeps the part of a segment where a height that is a at its beginning and b at
// its end is above nought.
func (s stretch) halfPlane(a, b float64) stretch {
	switch {
	case a <= 0 && b <= 0:
		return stretch{1, 0}
	case a < 0:
		return stretch{max(s.from, a/(a-b)), s.to}
	case b < 0:
		return stretch{s.from, min(s.to, a/(a-b))}
	}
	return s
}

// outside returns the stretches of a line, in mm along it, that keep the distance d from
// a path. Stretches that touch are one.
func outside(l line, path ruled, d float64) []stretch {
	var kept []stretch
	along := 0.0
	for i := 1; i < len(l); i++ {
		p, q := l[i-1], l[i]
		long := cmplx.Abs(q - p)
		if long == 0 {
			continue
		}
		var taken []stretch
		path.each(boxOf(p, q).grown(d), func(k int) {
			if s, ok := capsule(p, q, path.line[k], path.line[k+1], d); ok {
				taken = append(taken, s)
			}
		})
		slices.SortFunc(taken, func(a, b stretch) int { return cmp.Compare(a.from, b.from) })
		free := 0.0
		keep := func(from, to float64) {
			if (to-from)*long < 1e-7 {
				return
			}
			s := stretch{along + from*long, along + to*long}
			if n := len(kept); n > 0 && s.from-kept[n-1].to < 1e-6 {
				kept[n-1].to = s.to
				return
			}
			kept = append(kept, s)
		}
		for _, s := range append(taken, stretch{1, 1}) {
			if s.from > free {
				keep(free, s.from)
			}
			free = max(free, s.to)
		}
		along += long
	}
	return kept
}

// meet is where two lines cross, in mm along each.
type meet struct {
	a, b float64
	at   complex128
}

// meets returns where two lines cross, in the order of the first.
func meets(a, b ruled) []meet {
	var all []meet
	before := make([]float64, len(b.line))
	for i := 1; i < len(b.line); i++ {
		before[i] = before[i-1] + cmplx.Abs(b.line[i]-b.line[i-1])
	}
	along := 0.0
	for i := 1; i < len(a.line); i++ {
		p, q := a.line[i-1], a.line[i]
		b.each(boxOf(p, q), func(k int) {
			r, s := b.line[k], b.line[k+1]
			turn := cross(q-p, s-r)
			if turn == 0 {
				return
			}
			t, u := cross(r-p, s-r)/turn, cross(r-p, q-p)/turn
			const slack = 1e-9 // a crossing at a corner is found by one of its two segments at least
			if t > -slack && t < 1+slack && u > -slack && u < 1+slack {
				all = append(all, meet{along + t*cmplx.Abs(q-p), before[k] + u*cmplx.Abs(s-r), p + times(q-p, t)})
			}
		})
		along += cmplx.Abs(q - p)
	}
	slices.SortFunc(all, func(x, y meet) int { return cmp.Compare(x.a, y.a) })
	return slices.CompactFunc(all, func(x, y meet) bool { return math.Abs(x.a-y.a) < 1e-5 && math.Abs(x.b-y.b) < 1e-5 })
}
