package plane

import (
	"cmp"
	"math"
	"slices"
)

// Rules of this file: a path of the folded plane is unfolded layer by layer.
//
//  1. The path is walked once for every fold. Wherever it crosses the line u =
//     s, the crease of the flap or the v at which the flap ends, it passes a gate.
//  2. The parts between the gates are copied to the flat plane: once for each
//     layer that lies there. A flap has two layers, one of them mirrored.
//  3. The copies are joined: at a crease the two layers of a flap; at u = s a
//     layer and what lies beside the strip, or, where the strip is open, the two
//     parts beside it by a straight line.
//
// A point exactly on one of these lines counts as lying on the side of greater u
// or v, for every fold alike: so no path ever ends in a line that it touches or
// runs along, and a closed path gives closed paths. Only on the rim of the shape,
// where nothing lies on the side of less u, does it count as lying on that side.

// give is how far short of its width a flap is taken to reach, in mm, so that the
// two layers of one that reaches to the very edge of a shape hang together there.
const give = 1e-7

// joined bounds how far off the straight, or off a line that parts are cut at, a joint
// of two layers may lie, in mm: each of them may give way twice.
const joined = 4 * give

// Strand is a part of an unfolded path.
type Strand struct {
	Path Path
	// Source names for each segment of Path the segment of the path it comes
	// from. A straight line over an open strip names the one before it.
	Source []int
}

// Unfolded returns what comes to lie on the path p once the plane is folded: all
// places that Folded brings onto it, where a strip is open the straight line
// across. A closed path, which must not cross itself, gives closed strands, the
// outline of what lies within it. An open path gives one strand where it passes
// through every fold that it meets, and more where it begins, ends or leaves a
// fold under a flap. Without a fold that the path meets it is the path itself, to
// the bit.
func (f *Folding) Unfolded(p Path) []Strand {
	if len(p) < 2 {
		return nil
	}
	un := &unfolding{Folding: f, path: p, closed: p.Closed()}
	for i, q := range p {
		u := f.U(q)
		// A point beside a seam by no more than rounding lies on it: else the two
		// sides of the strip would overlap there.
		for _, s := range f.seam {
			if off := s - u; off != 0 && math.Abs(off) < give {
				if &un.path[0] == &p[0] {
					un.path = slices.Clone(p)
				}
				un.path[i], u = f.moved(q, off), s
			}
		}
		un.u = append(un.u, u)
		un.v = append(un.v, f.V(q))
	}
	var seams []gate
	for k := range f.folds {
		seams = append(seams, un.flap(k)...)
	}
	un.between(seams)
	return un.chain()
}

// unfolding is a path on its way to the flat plane.
type unfolding struct {
	*Folding
	path   Path
	closed bool
	u, v   []float64 // of each point
	layers []layer
	links  []link // of each end: layer i begins with end 2i and stops with end 2i+1
	first  int    // the layer on which the path begins when every flap is lifted
}

// layer is a stretch of the path as it lies on one layer.
type layer struct {
	from, to  gate
	shift     float64 // of u, or
	mirror    float64 // where mirrored is true, what u and the flat u add up to
	mirrored  bool
	wholePath bool // nothing was cut off
}

// link says which end another end is joined to, if any, and how.
type link struct {
	to  int
	how joint
}

// none stands for an end, or a layer, that there is not.
const none = -1

// joint is how two ends are joined.
type joint int

const (
	meeting joint = iota // they lie in one place
	across               // by a straight line from one to the other
)

// gate is a place at which the path passes from layer to layer.
type gate struct {
	segment  int
	share    float64 // of the way along the segment
	at       Point
	kind     gateKind
	fold     int
	outward  bool // the path goes on toward greater u, or v
	a, b     int  // the ends of the flap's two layers here, if any
	sequence int  // keeps the order of the gates of one place
}

type gateKind int

const (
	gateSeam gateKind = iota
	gateCrease
	gateFrom
	gateTo
)

// flap finds the parts of the path that lie under the flap of fold k, and
// returns where the path crosses its line u = s.
func (un *unfolding) flap(k int) []gate {
	w := un.newFlapWalk(k)
	firstLayer, beganUnder := len(un.layers), w.under()
	if beganUnder {
		w.open = un.begin(k, un.start())
	}
	for i := 0; i+1 < len(un.path); i++ {
		for _, c := range w.gates(i) {
			w.pass(c)
		}
	}
	if w.open != none {
		un.stop(w.open, un.finish())
		if un.closed && beganUnder {
			un.link(2*firstLayer, 2*w.open+1, meeting)
			un.link(2*firstLayer+2, 2*w.open+3, meeting)
		}
	}
	if un.closed {
		for _, level := range w.levels {
			un.closeLevel(level)
		}
	}
	return w.seams
}

// flapWalk is a walk along the path past the flap of one fold.
type flapWalk struct {
	*unfolding
	fold    int
	lines   [4]float64 // the s, the crease, From and To, by kind of gate
	greater [4]bool    // whether the path is on the side of greater u or v of each
	open    int        // the first of the two layers that are being walked
	seams   []gate
	levels  [2][]gate // where the layers end at From and at To
}

func (un *unfolding) newFlapWalk(k int) *flapWalk {
	one, s := un.folds[k], un.seam[k]
	crease := s + one.side()*(one.Width-give)
	w := &flapWalk{unfolding: un, fold: k, lines: [4]float64{s, crease, one.From, one.To}, open: none}
	w.greater = w.sides(0)
	return w
}

// sides returns, for each of the lines, whether point i lies on the side of
// greater u or v.
func (w *flapWalk) sides(i int) [4]bool {
	u, v := w.u[i], w.v[i]
	return [4]bool{w.beyond(u, w.fold), u >= w.lines[gateCrease], v >= w.lines[gateFrom], v >= w.lines[gateTo]}
}

// under reports whether the path is under the flap.
func (w *flapWalk) under() bool {
	back, at := w.folds[w.fold].Back, w.greater
	return at[gateSeam] != back && at[gateCrease] == back && at[gateFrom] && !at[gateTo]
}

// gates returns where segment i crosses those of the lines that it lies on both
// sides of, in the order of the path.
func (w *flapWalk) gates(i int) []gate {
	next := w.sides(i + 1)
	var found []gate
	for kind, line := range w.lines {
		if w.greater[kind] == next[kind] {
			continue
		}
		a, b := w.u[i], w.u[i+1]
		if gateKind(kind) >= gateFrom {
			a, b = w.v[i], w.v[i+1]
		}
		share := clampShare((line - a) / (b - a))
		found = append(found, gate{
			segment: i, share: share, at: w.path[i].Toward(w.path[i+1], share),
			kind: gateKind(kind), fold: w.fold, outward: next[kind], a: none, b: none,
		})
	}
	slices.SortStableFunc(found, func(a, b gate) int { return cmp.Compare(a.share, b.share) })
	return found
}

// pass goes through a gate: there the layers under the flap begin or stop, or go on.
func (w *flapWalk) pass(c gate) {
	was := w.open
	w.greater[c.kind] = c.outward
	switch under := w.under(); {
	case was != none && !under:
		w.stop(was, c)
		w.open = none
		c.a = 2*was + 1
	case was == none && under:
		w.open = w.begin(w.fold, c)
		c.a = 2 * w.open
	}
	if c.a != none {
		c.b = c.a + 2 // the second layer is the part after the first
	}
	switch {
	case c.kind == gateSeam:
		w.seams = append(w.seams, c)
	case c.a == none:
	case c.kind == gateCrease:
		w.link(c.a, c.b, meeting)
	default:
		level := c.kind - gateFrom
		w.levels[level] = append(w.levels[level], c)
	}
}

func (un *unfolding) start() gate { return gate{at: un.path[0]} }

func (un *unfolding) finish() gate {
	last := len(un.path) - 2
	return gate{segment: last, share: 1, at: un.path[last+1]}
}

// begin adds the two layers of the flap of fold k from a gate on and returns the
// number of the first; the second follows it.
func (un *unfolding) begin(k int, from gate) int {
	one, s := un.folds[k], un.seam[k]
	near := layer{from: from, shift: one.At - s}
	far := layer{from: from, mirror: one.End() + s, mirrored: true}
	if one.Back { // the flap's first layer is the mirrored one
		near = layer{from: from, mirror: one.At + s, mirrored: true}
		far = layer{from: from, shift: one.End() - s}
	}
	un.add(near)
	un.add(far)
	return len(un.layers) - 2
}

func (un *unfolding) stop(first int, to gate) {
	un.layers[first].to, un.layers[first+1].to = to, to
}

func (un *unfolding) add(p layer) int {
	un.layers = append(un.layers, p)
	un.links = append(un.links, link{to: none}, link{to: none})
	return len(un.layers) - 1
}

func (un *unfolding) link(a, b int, how joint) {
	un.links[a], un.links[b] = link{b, how}, link{a, how}
}

// closeLevel joins the ends of layers along the line at which a flap ends: there
// the outline runs along that line, between every two ends that follow each
// other.
func (un *unfolding) closeLevel(gates []gate) {
	type end struct {
		u  float64
		id int
	}
	var ends []end
	for _, c := range gates {
		for _, id := range []int{c.a, c.b} {
			ends = append(ends, end{un.U(un.lay(un.layers[id/2], c.at)), id})
		}
	}
	slices.SortStableFunc(ends, func(a, b end) int { return cmp.Compare(a.u, b.u) })
	for i := 0; i+1 < len(ends); i += 2 {
		un.link(ends[i].id, ends[i+1].id, across)
	}
}

// between adds the parts of the path that lie in no strip, and joins them to the
// layers of the flaps, or to each other over open strips.
func (un *unfolding) between(seams []gate) {
	for i := range seams {
		seams[i].sequence = seams[i].fold
		if !seams[i].outward {
			seams[i].sequence = -seams[i].fold
		}
	}
	slices.SortStableFunc(seams, func(a, b gate) int {
		return cmp.Or(cmp.Compare(a.segment, b.segment), cmp.Compare(a.share, b.share), cmp.Compare(a.sequence, b.sequence))
	})
	k := 0 // the strip that lies next beyond
	for k < len(un.seam) && un.beyond(un.u[0], k) {
		k++
	}
	un.first = un.add(layer{from: un.start(), shift: un.shift[k]})
	now := un.first
	for _, c := range seams {
		un.layers[now].to = c
		k = c.fold
		if c.outward {
			k++
		}
		next := un.add(layer{from: c, shift: un.shift[k]})
		low, high := 2*now+1, 2*next
		if !c.outward {
			low, high = high, low
		}
		if c.a != none {
			un.link(low, c.a, meeting)
			un.link(c.b, high, meeting)
		} else {
			un.link(low, high, across)
		}
		now = next
	}
	un.layers[now].to = un.finish()
	un.layers[now].wholePath = now == un.first
	if un.closed {
		un.link(2*un.first, 2*now+1, meeting)
	}
}

// lay returns where a place of the folded plane lies on the layer of a part.
func (un *unfolding) lay(p layer, q Point) Point {
	if p.mirrored {
		return un.moved(q, p.mirror-2*un.U(q))
	}
	return un.moved(q, p.shift)
}

// chain joins the parts to strands: those with open ends first, then rings.
func (un *unfolding) chain() []Strand {
	used := make([]bool, len(un.layers))
	var strands []Strand
	n := len(un.layers)
	for _, openOnly := range []bool{true, false} {
		for i := range n {
			for side := range 2 {
				from := 2*((un.first+i)%n) + side
				if used[from/2] || openOnly && un.links[from].to != none {
					continue
				}
				// A line along a seam lies on the flap and beside it alike.
				if s := un.walk(from, used); len(s.Path) > 1 && !slices.ContainsFunc(strands, s.same) {
					strands = append(strands, s)
				}
			}
		}
	}
	return strands
}

// same reports whether two strands lie on each other, point by point.
func (s Strand) same(other Strand) bool {
	if len(s.Path) != len(other.Path) {
		return false
	}
	for i, q := range s.Path {
		if q.Distance(other.Path[i]) > touch {
			return false
		}
	}
	return true
}

// walk follows the parts from an end of one of them, to an open end or back to
// where it began.
func (un *unfolding) walk(from int, used []bool) Strand {
	var w strandWalk
	first, how := from, meeting
	for {
		used[from/2] = true
		un.copyLayer(&w, from, how)
		next := un.links[from^1]
		switch next.to {
		case none:
			return w.Strand
		case first:
			w.close(next.how)
			return w.Strand
		}
		from, how = next.to, next.how
	}
}

// copyLayer lays the points of a part, from one of its ends to the other.
func (un *unfolding) copyLayer(w *strandWalk, from int, how joint) {
	p := un.layers[from/2]
	if p.wholePath && p.shift == 0 {
		w.Path = append(w.Path, un.path...)
		for i := range len(un.path) - 1 {
			w.Source = append(w.Source, i)
		}
		return
	}
	type step struct {
		at      Point
		segment int
	}
	steps := []step{{p.from.at, p.from.segment}}
	for i := p.from.segment + 1; i <= p.to.segment; i++ {
		steps = append(steps, step{un.path[i], i - 1})
	}
	steps = append(steps, step{p.to.at, p.to.segment})
	if from%2 == 0 {
		w.join(un.lay(p, steps[0].at), how)
		for _, s := range steps[1:] {
			w.add(un.lay(p, s.at), s.segment)
		}
		return
	}
	last := len(steps) - 1
	w.join(un.lay(p, steps[last].at), how)
	for i := last; i > 0; i-- {
		w.add(un.lay(p, steps[i-1].at), steps[i].segment)
	}
}

// strandWalk is a strand while it grows.
type strandWalk struct {
	Strand
	joint bool // the last point is where two parts are joined
}

// join begins the next part, which begins where the last one stopped, or, over
// an open strip, straight across from there.
func (w *strandWalk) join(at Point, how joint) {
	switch {
	case len(w.Path) == 0:
		w.Path = Path{at}
	case how == across:
		source := 0
		if n := len(w.Source); n > 0 {
			source = w.Source[n-1]
		}
		w.joint = true // where the line across begins
		w.add(at, source)
	}
	w.joint = true
}

// add goes on to a point. A joint on the straight line to it is no corner and is
// left out.
func (w *strandWalk) add(at Point, source int) {
	n := len(w.Path)
	if at.Distance(w.Path[n-1]) <= touch {
		return
	}
	if m := len(w.Source); w.joint && m > 0 && w.Source[m-1] == source {
		if foot, _ := nearestOnSegment(w.Path[n-2], at, w.Path[n-1]); foot.Distance(w.Path[n-1]) <= joined {
			w.Path[n-1], w.joint = at, false
			return
		}
	}
	w.Path = append(w.Path, at)
	w.Source = append(w.Source, source)
	w.joint = false
}

// close joins the end to the beginning.
func (w *strandWalk) close(how joint) {
	n := len(w.Path)
	if n < 2 {
		return
	}
	if how == across || w.Path[n-1].Distance(w.Path[0]) > touch {
		w.add(w.Path[0], w.Source[len(w.Source)-1])
		n = len(w.Path)
	}
	w.Path[n-1] = w.Path[0]
}
