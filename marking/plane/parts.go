package plane

import (
	"cmp"
	"math"
	"slices"
)

// Rules of this file: the distance of the raw line from its path changes between
// enough and too little only where it is cut, so that a part is good or bad as
// a whole; the offset is a way over good parts.

// cut finds every place where the raw line crosses itself or enters the reach
// of the source where no raw line marks that: round its ends and its sharp
// corners, and on its other side, beside which other is drawn. At a place that is
// too near itself nothing changes.
func (r *raw) cut(other *raw, source *Tree) {
	t := NewTreeWithout(r.dead, r.path)
	tooNear := func(at Point) bool { return source.Nearer(at, r.d-rounding) }
	r.cuts = make([][]cut, len(r.dead))
	for i := range r.dead {
		r.crossings(i, r, t, func(j int, at Point, a, b float64) {
			// That the line ends where it began is no crossing.
			closes := i == 0 && j == len(r.dead)-1 &&
				at.Distance(r.path[0]) < rounding && at.Distance(r.path[j+1]) < rounding
			if j > i+1 && !closes && !tooNear(at) {
				node := r.node(at)
				r.cuts[i] = append(r.cuts[i], cut{a, node})
				r.cuts[j] = append(r.cuts[j], cut{b, node})
			}
		})
	}
	for i := range other.dead {
		other.crossings(i, r, t, func(j int, at Point, _, b float64) {
			if !tooNear(at) {
				r.cuts[j] = append(r.cuts[j], cut{b, r.node(at)})
			}
		})
	}
	ends := []Point{r.source[0], r.source[len(r.source)-1]}
	for _, c := range slices.Concat(ends, r.sharp, other.sharp) {
		t.Within(EmptyBox().With(c).Grown(r.d), func(i int) bool {
			if r.dead[i] {
				return true
			}
			for _, s := range crossCircle(r.path[i], r.path[i+1], c, r.d) {
				at := r.path[i].Toward(r.path[i+1], s)
				if !tooNear(at) {
					r.cuts[i] = append(r.cuts[i], cut{s, r.node(at)})
				}
			}
			return true
		})
	}
	r.divide()
}

// crossings calls found for every place where segment i crosses a segment j of
// another raw line, whose tree is t; dead segments do not count.
func (r *raw) crossings(i int, with *raw, t *Tree, found func(j int, at Point, a, b float64)) {
	if r.dead[i] {
		return
	}
	a, b := r.path[i], r.path[i+1]
	t.Within(EmptyBox().With(a).With(b).Grown(touch), func(j int) bool {
		if !with.dead[j] {
			for _, c := range crossSegments(a, b, with.path[j], with.path[j+1]) {
				found(j, a.Toward(b, c.a), c.a, c.b)
			}
		}
		return true
	})
}

func (r *raw) node(at Point) int {
	r.places = append(r.places, at)
	return len(r.places) - 1
}

// divide makes the parts from the cuts.
func (r *raw) divide() {
	var now part
	open := false
	beside := 0
	closeAt := func(node int) {
		if open && len(now.path) > 1 {
			now.to, now.last = node, beside
			r.parts = append(r.parts, now)
		}
		open = false
	}
	begin := func(at Point, node int) {
		now = part{path: Path{at}, from: node, to: noNode, first: beside}
		open = true
	}
	for i := range r.dead {
		if r.beside[i] >= 0 {
			beside = r.beside[i]
		}
		if r.dead[i] {
			closeAt(noNode)
			continue
		}
		if !open {
			begin(r.path[i], noNode)
		}
		slices.SortFunc(r.cuts[i], func(a, b cut) int { return cmp.Compare(a.share, b.share) })
		for _, c := range r.cuts[i] {
			now.path = append(now.path, r.places[c.node])
			closeAt(c.node)
			begin(r.places[c.node], c.node)
		}
		now.path = append(now.path, r.path[i+1])
	}
	closeAt(noNode)
}

// crossCircle returns where the segment ab crosses the circle, as shares of
// the way along it. A segment that only grazes it does not cross.
func crossCircle(a, b, centre Point, radius float64) []float64 {
	u, w := b.Sub(a), a.Sub(centre)
	uu, uw := u.Dot(u), u.Dot(w)
	rest := uw*uw - uu*(w.Dot(w)-radius*radius)
	// rest over uu is the square of half the chord.
	if uu == 0 || rest <= uu*rounding*rounding {
		return nil
	}
	var shares []float64
	for _, s := range []float64{(-uw - math.Sqrt(rest)) / uu, (-uw + math.Sqrt(rest)) / uu} {
		if s > 0 && s < 1 {
			shares = append(shares, s)
		}
	}
	return shares
}

// mostProbes bounds at how many places a part is tested. Between two cuts a
// part keeps its distance everywhere or nowhere, so one would do, were it not
// for rounding beside the cuts themselves. It bounds the work: more tell no more.
const mostProbes = 16

// test finds the parts that keep the distance.
func (r *raw) test(source *Tree) {
	for k := range r.parts {
		p := &r.parts[k]
		segments := len(p.path) - 1
		stride := (segments + mostProbes - 1) / mostProbes
		p.good = true
		for i := stride / 2; i < segments && p.good; i += stride {
			middle := p.path[i].Toward(p.path[i+1], 0.5)
			p.good = !source.Nearer(middle, r.d-rounding)
		}
	}
}

// walk joins good parts to the longest way there is. Mostly it leads from the
// first to the last; where the source comes round to its own end, what lies
// beside the end may be cut off.
func (r *raw) walk() (OffsetLine, bool) {
	leaving := map[int][]int{} // the good parts that leave each node
	for k, p := range r.parts {
		if p.good && p.from != noNode {
			leaving[p.from] = append(leaving[p.from], k)
		}
	}
	cameFrom := map[int]int{} // for every part reached so far
	end, longest := -1, 0.0
	for k, p := range r.parts {
		if _, reached := cameFrom[k]; !p.good || reached {
			continue
		}
		last := r.reach(k, leaving, cameFrom)
		long := 0.0
		for m := last; m >= 0; m = cameFrom[m] {
			long += r.parts[m].path.Length()
		}
		if long > longest {
			end, longest = last, long
		}
	}
	if end < 0 {
		return OffsetLine{}, false
	}
	return r.join(cameFrom, end), true
}

// reach notes in cameFrom how every part that a part leads to is reached by
// the fewest parts, and returns the last of them. Parts branch only where the
// line touches itself.
func (r *raw) reach(first int, leaving map[int][]int, cameFrom map[int]int) (last int) {
	cameFrom[first] = -1
	queue := []int{first}
	last = first
	for len(queue) > 0 {
		k := queue[0]
		queue = queue[1:]
		last = max(last, k)
		if r.parts[k].to == noNode {
			continue
		}
		for _, next := range leaving[r.parts[k].to] {
			if _, seen := cameFrom[next]; !seen {
				cameFrom[next] = k
				queue = append(queue, next)
			}
		}
	}
	return last
}

// join puts the parts of the way together and looks at what it passes by.
func (r *raw) join(cameFrom map[int]int, last int) OffsetLine {
	var way []int
	for k := last; k >= 0; k = cameFrom[k] {
		way = append(way, k)
	}
	var line OffsetLine
	for i := len(way) - 1; i >= 0; i-- {
		k := way[i]
		line.Path = append(line.Path, r.parts[k].path...)
		if i == 0 {
			continue
		}
		passed := 0.0
		for j := k + 1; j < way[i-1]; j++ {
			if r.parts[j].good {
				passed += r.parts[j].path.Length()
			}
		}
		at := r.places[r.parts[k].to]
		if passed > islandLength*r.d || r.strays(at, r.parts[k].last, r.parts[way[i-1]].first) {
			line.Pinched, line.At = true, at
		}
	}
	line.Path = withoutRepeats(line.Path).WithoutStraightPoints()
	// So may what lies before the beginning of the line, or beyond its end.
	if first := line.Path[0]; r.strays(first, -1, r.parts[way[len(way)-1]].first) {
		line.Pinched, line.At = true, first
	}
	if end := line.Path[len(line.Path)-1]; r.strays(end, r.parts[last].last, len(r.source)-1) {
		line.Pinched, line.At = true, end
	}
	return line
}

// strays reports whether the source between two of its segments goes farther
// from a place than a corner does.
func (r *raw) strays(at Point, first, last int) bool {
	far := 0.0
	between := r.source[min(first+1, len(r.source)):max(first+1, min(last+1, len(r.source)))]
	for _, q := range between {
		far = max(far, q.Distance(at))
	}
	if first < 0 || last >= len(r.source)-1 {
		return far > tongueLength*r.d
	}
	return far > tongueLength*r.d || far > tabLength*r.d && r.blunt(at, first, last, between)
}

// blunt reports whether what the source goes round between two of its segments
// is about as wide in its middle as at its mouth beside a place, as a tab is; a
// corner is half as wide there, and a chamber behind a neck wider.
func (r *raw) blunt(at Point, first, last int, between Path) bool {
	from, _ := nearestOnSegment(r.source[first], r.source[first+1], at)
	to, _ := nearestOnSegment(r.source[last], r.source[last+1], at)
	// Where the place lies to one side, so does its foot; the mouth is narrower.
	round := append(Path{}, between...)
	if n := len(between); n == 0 || from.Distance(to) < between[0].Distance(to) {
		round = append(Path{from}, round...)
	}
	if from = round[0]; from.Distance(to) < from.Distance(round[len(round)-1]) || len(round) == 1 {
		round = append(round, to)
	}
	quarter := round.Length() / 4
	one, _ := round.At(quarter)
	other, _ := round.At(3 * quarter)
	mouth, middle := from.Distance(round[len(round)-1]), one.Distance(other)
	return mouth > tabMouth*r.d && tabWidth*mouth < middle && tabWidth*middle < mouth
}
