package plane

import (
	"math"
	"slices"
)

// Tree finds the segments of a path near a place without looking at all of
// them. It is a hierarchy of boxes over the segments in path order: a path is
// already sorted along itself, so nothing has to be sorted to build it. Only one that
// passes over the same ground again and again, as a spiral does, has a second one, in
// the order in which its leaves lie on the plane (ground.go).
// Segment i runs from point i to point i+1.
type Tree struct {
	path Path
	// along[i] is how far along the path point i lies, in mm.
	along []float64
	// levels[0] holds a box for each leaf of leafSize segments, levels[k+1] a
	// box for each pair of levels[k]; the last level holds one box.
	levels [][]Box
	ground *ground // nil where the order of the path does as well
}

// leafSize is how many segments share the lowest box; fewer makes the tree
// larger, more makes each visit look at more segments. It bounds nothing.
const leafSize = 4

// NewTree builds the tree of a path, in time proportional to its points. The
// path must not change afterwards.
func NewTree(p Path) *Tree { return NewTreeWithout(nil, p) }

// NewTreeWithout builds the tree of a path in which some segments need not be found; dead tells
// which, and is nil for none. They may be found all the same.
func NewTreeWithout(dead []bool, p Path) *Tree {
	t := &Tree{path: p, along: make([]float64, len(p))}
	for i := 1; i < len(p); i++ {
		t.along[i] = t.along[i-1] + p[i].Distance(p[i-1])
	}
	n := len(p) - 1
	if n < 1 {
		return t
	}
	leaves := make([]Box, (n+leafSize-1)/leafSize)
	for k := range leaves {
		b := EmptyBox()
		for i := k * leafSize; i < min((k+1)*leafSize, n); i++ {
			if dead == nil || !dead[i] {
				b = b.With(p[i]).With(p[i+1])
			}
		}
		leaves[k] = b
	}
	t.levels = paired(leaves)
	if t.overlaps() {
		t.ground = newGround(leaves)
	}
	return t
}

// paired returns boxes, and above them a box for each pair, as far as one for all.
func paired(boxes []Box) [][]Box {
	count, above := 1, 0 // levels, and the boxes above the lowest
	for n := len(boxes); n > 1; count++ {
		n = (n + 1) / 2
		above += n
	}
	levels, free := append(make([][]Box, 0, count), boxes), make([]Box, above)
	for top := boxes; len(top) > 1; {
		n := (len(top) + 1) / 2
		next := free[:n]
		free = free[n:]
		for k := range next {
			next[k] = top[2*k]
			if 2*k+1 < len(top) {
				next[k] = next[k].Union(top[2*k+1])
			}
		}
		levels = append(levels, next)
		top = next
	}
	return levels
}

// Along returns how far along the path its point i lies, in mm.
func (t *Tree) Along(i int) float64 { return t.along[i] }

// Path returns the path the tree was built over.
func (t *Tree) Path() Path { return t.path }

// Bounds returns the box of the whole path.
func (t *Tree) Bounds() Box {
	if len(t.levels) == 0 {
		return t.path.Bounds()
	}
	return t.levels[len(t.levels)-1][0]
}

// Length returns the length of the whole path, in mm.
func (t *Tree) Length() float64 {
	if len(t.along) == 0 {
		return 0
	}
	return t.along[len(t.along)-1]
}

// At returns the place d mm along the path; before the start and beyond the
// end it gives the end itself. A path without points gives the zero Point.
func (t *Tree) At(d float64) Point {
	p := t.path
	if len(p) == 0 {
		return Point{}
	}
	i, _ := slices.BinarySearch(t.along, d) // the first point at d or beyond
	switch {
	case i == 0:
		return p[0]
	case i == len(p):
		return p[len(p)-1]
	}
	return p[i-1].Toward(p[i], (d-t.along[i-1])/(t.along[i]-t.along[i-1]))
}

// Holds reports whether q lies inside the closed path, by the even-odd rule.
// A place exactly on the path may fall to either side.
func (t *Tree) Holds(q Point) bool {
	b := t.Bounds()
	if len(t.levels) == 0 || !b.Holds(q) {
		return false
	}
	return t.holds(len(t.levels)-1, 0, q)
}

// holds reports whether a ray from q to the right crosses a part of the path an odd number of
// times. Of a part that lies to the right of q as a whole the ends alone tell that.
func (t *Tree) holds(level, k int, q Point) bool {
	b := &t.levels[level][k]
	if q.Y < b.Min.Y || q.Y > b.Max.Y || q.X > b.Max.X {
		return false
	}
	first, last := (k<<level)*leafSize, min(((k+1)<<level)*leafSize, len(t.path)-1)
	if q.X < b.Min.X {
		return (t.path[first].Y > q.Y) != (t.path[last].Y > q.Y)
	}
	if level > 0 {
		in := t.holds(level-1, 2*k, q)
		return in != (2*k+1 < len(t.levels[level-1]) && t.holds(level-1, 2*k+1, q))
	}
	in := false
	for i := first; i < last; i++ {
		a, c := t.path[i], t.path[i+1]
		if (a.Y > q.Y) != (c.Y > q.Y) && q.X < a.X+(c.X-a.X)*(q.Y-a.Y)/(c.Y-a.Y) {
			in = !in
		}
	}
	return in
}

// Within calls visit for every segment whose own box meets the box b, in path
// order, until visit returns false.
func (t *Tree) Within(b Box, visit func(i int) bool) {
	switch {
	case len(t.levels) == 0 || !t.Bounds().Meets(b):
	case t.ground == nil:
		t.within(len(t.levels)-1, 0, &b, visit)
	default:
		var few [32]int
		for _, leaf := range t.ground.within(few[:], &b) {
			if !t.within(0, leaf, &b, visit) {
				return
			}
		}
	}
}

// Meeting is Within in no order, which takes less where the path passes over the same ground again
// and again.
func (t *Tree) Meeting(b Box, visit func(i int) bool) {
	if t.ground == nil {
		t.Within(b, visit)
		return
	}
	t.ground.visit(len(t.ground.levels)-1, 0, &b, func(leaf int) bool { return t.within(0, leaf, &b, visit) })
}

// within is Within for a part of the path whose box meets b.
func (t *Tree) within(level, k int, b *Box, visit func(i int) bool) bool {
	if level > 0 {
		below := t.levels[level-1]
		for child := 2 * k; child < min(2*k+2, len(below)); child++ {
			if below[child].Meets(*b) && !t.within(level-1, child, b, visit) {
				return false
			}
		}
		return true
	}
	for i := k * leafSize; i < min((k+1)*leafSize, len(t.path)-1); i++ {
		p, q := t.path[i], t.path[i+1]
		if (p.X <= b.Max.X || q.X <= b.Max.X) && (p.X >= b.Min.X || q.X >= b.Min.X) &&
			(p.Y <= b.Max.Y || q.Y <= b.Max.Y) && (p.Y >= b.Min.Y || q.Y >= b.Min.Y) && !visit(i) {
			return false
		}
	}
	return true
}

// near returns the boxes among which segments are looked for by how near they are, and for
// each of the lowest which leaf it is of; nil where they are in path order.
func (t *Tree) near() (levels [][]Box, leaf []int) {
	if t.ground == nil {
		return t.levels, nil
	}
	return t.ground.levels, t.ground.leaf
}

// leafAt is the leaf of one of the lowest boxes.
func leafAt(leaf []int, k int) int {
	if leaf == nil {
		return k
	}
	return leaf[k]
}

// Distance returns how far q lies from the path, in mm, looking no further
// than limit: where nothing is nearer than limit it returns limit.
func (t *Tree) Distance(q Point, limit float64) float64 {
	if len(t.levels) == 0 {
		if len(t.path) == 1 {
			return min(limit, t.path[0].Distance(q))
		}
		return limit
	}
	if t.Bounds().Distance(q) >= limit {
		return limit
	}
	levels, leaf := t.near()
	return t.distance(levels, leaf, 0, q, limit)
}

// distance is Distance for what lies in box k of the last of some levels.
func (t *Tree) distance(levels [][]Box, leaf []int, k int, q Point, best float64) float64 {
	level := len(levels) - 1
	if level == 0 {
		k = leafAt(leaf, k)
		for i := k * leafSize; i < min((k+1)*leafSize, len(t.path)-1); i++ {
			foot, _ := nearestOnSegment(t.path[i], t.path[i+1], q)
			best = min(best, foot.Distance(q))
		}
		return best
	}
	below := levels[level-1]
	first, second := 2*k, 2*k+1
	if second >= len(below) {
		if below[first].Distance(q) < best {
			best = t.distance(levels[:level], leaf, first, q, best)
		}
		return best
	}
	// The nearer box first: it most likely makes the other one needless.
	df, ds := below[first].Distance(q), below[second].Distance(q)
	if ds < df {
		first, second, df, ds = second, first, ds, df
	}
	if df < best {
		best = t.distance(levels[:level], leaf, first, q, best)
	}
	if ds < best {
		best = t.distance(levels[:level], leaf, second, q, best)
	}
	return best
}

// Nearest returns the place on the path nearest to q and how far along the path
// it lies, in mm; of several equally near places, the first. A path without
// points gives the zero Point.
func (t *Tree) Nearest(q Point) (at Point, along float64) {
	at = t.At(0)
	away, best := t.Distance(q, math.Inf(1)), math.Inf(1)
	t.Within(EmptyBox().With(q).Grown(away+touch), func(i int) bool {
		foot, share := nearestOnSegment(t.path[i], t.path[i+1], q)
		if d := foot.Distance(q); d < best {
			at, along, best = foot, t.along[i]+share*(t.along[i+1]-t.along[i]), d
		}
		return true
	})
	return at, along
}

// Nearer reports whether any of the path lies nearer to q than limit, in mm.
// It stops at the first place it finds, which need not be the nearest.
func (t *Tree) Nearer(q Point, limit float64) bool {
	if limit <= 0 {
		return false
	}
	if len(t.levels) == 0 {
		return len(t.path) == 1 && t.path[0].Distance(q) < limit
	}
	levels, leaf := t.near()
	return t.nearer(levels, leaf, 0, q, limit*limit)
}

// nearer is Nearer for what lies in box k of the last of some levels. It works with squares:
// most of its time would go into square roots.
func (t *Tree) nearer(levels [][]Box, leaf []int, k int, q Point, square float64) bool {
	level := len(levels) - 1
	if levels[level][k].squareDistance(q) >= square {
		return false
	}
	if level > 0 {
		return t.nearer(levels[:level], leaf, 2*k, q, square) ||
			2*k+1 < len(levels[level-1]) && t.nearer(levels[:level], leaf, 2*k+1, q, square)
	}
	k = leafAt(leaf, k)
	for i := k * leafSize; i < min((k+1)*leafSize, len(t.path)-1); i++ {
		foot, _ := nearestOnSegment(t.path[i], t.path[i+1], q)
		if off := foot.Sub(q); off.Dot(off) < square {
			return true
		}
	}
	return false
}
