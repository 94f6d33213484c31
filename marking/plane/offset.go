package plane

import (
	"math"
	"slices"
	"sort"
)

// Rules of this file. The offset of a path is what is left of the lines drawn
// beside each of its segments and round each of its corners once everything
// nearer to the path than the wanted distance is taken away:
//
//  1. draw the raw line: every segment moved sideways, joined at the corners;
//  2. cut it wherever it crosses itself, and where it comes into reach of the
//     path's two ends, of its sharp corners or of its other side;
//  3. throw away every part that is nearer to the path than the distance;
//  4. walk from part to part over the places where they meet.

// The tolerances of an offset.
const (
	// nearness bounds by how much any point of an offset may be nearer to its
	// path than the distance asked for, in mm.
	nearness = 1e-6

	// roundness bounds how far outside the true arc the offset round a corner
	// may lie, in mm, and so how far inside another such arc it may begin.
	roundness = 0.005

	// gentleTurn is the turn of a corner, in radians (4 degrees), below which
	// its sharp join lies so near to the round one (less than 0.07 % of the
	// distance beyond it) that there is nothing to choose between them.
	gentleTurn = 4 * math.Pi / 180

	// mitreLimit bounds how far a sharp corner may run out, in distances from
	// the corner of the path; a slit whose sides stand at less than 19 degrees
	// runs out farther and is rounded instead.
	mitreLimit = 6

	// cornerReach is how far from a corner, in distances, the path is looked
	// at to tell a corner from a roughness of the line: seen from there it
	// must still turn half as much.
	cornerReach = 0.25

	// closing bounds how far apart, in mm, the two ends of the line beside a
	// closed path may come to lie and still be one place.
	closing = 1e-6

	// islandLength is how long the parts cut off behind a place where the
	// offset meets itself must be, in distances, to be a region of their own
	// rather than crumbs beside a corner.
	islandLength = 2

	// tongueLength is how far behind such a place the path may run on, in
	// distances, and still be passed by without a word: as far as it does in
	// a corner that is as sharp as the mitre limit allows. Cloth that reaches
	// farther is a strap, not a corner.
	tongueLength = 1.2 * mitreLimit
)

// OffsetLine is the line beside a path.
type OffsetLine struct {
	Path Path
	// Pinched is true when the line meets itself somewhere and passes by what
	// lies behind that place, At, though it is more than a corner: a region
	// that would have a line of its own, or a long strap too narrow for one.
	Pinched bool
	At      Point
}

// Offset returns the line d mm to the left of the path, with both ends run out
// straight by run mm. Beside the path no point of it is nearer to the path than
// d, by more than a millionth of a millimetre (where one rounded corner passes
// into another: by more than 0.005 mm), and none is farther but where the path
// turns a corner away from it: there it stays sharp, up to six distances out,
// and is round beyond that. A roughness of the path much finer than d is no
// corner and is passed round at the distance d. Loops that would appear where
// the path bends tighter than d are gone. What is run out keeps no distance.
//
// At distance 0 it is the path itself with its ends run out. Where the path
// comes so near to one of its own ends that nothing beside that end keeps the
// distance, the line begins or ends where it first does. ok is false when
// nothing is left. d must not be negative.
func Offset(p Path, d, run float64) (line OffsetLine, ok bool) {
	p = withoutRepeats(p)
	if len(p) < 2 {
		return OffsetLine{}, false
	}
	start, end := p.StartDirection(), p.EndDirection()
	if d <= 0 {
		return OffsetLine{Path: runOut(p, start, end, run)}, true
	}
	source := NewTree(p)
	r := drawRaw(source, d)
	r.prune(source)
	other := drawRaw(NewTree(p.Reversed()), d)
	other.prune(source)
	r.cut(other)
	r.test(source)
	line, ok = r.walk()
	if !ok {
		return line, false
	}
	// An end beside the end of the path runs out the way the path does, even
	// where a corner close by has trimmed off all that lay beside its last
	// segment; any other end goes straight on.
	if line.Path[0].Distance(r.path[0]) > closing {
		start = line.Path.StartDirection()
	}
	if line.Path[len(line.Path)-1].Distance(r.path[len(r.path)-1]) > closing {
		end = line.Path.EndDirection()
	}
	line.Path = runOut(line.Path, start, end, run).withoutStraightPoints()
	return line, true
}

// withoutRepeats returns the path without points that repeat their
// predecessor: a segment needs a direction.
func withoutRepeats(p Path) Path {
	var q Path
	for _, a := range p {
		if len(q) == 0 || a.Distance(q[len(q)-1]) > touch {
			q = append(q, a)
		}
	}
	return q
}

// runOut returns the path with both ends run out straight, in the directions in
// which it sets out and arrives.
func runOut(p Path, start, end Point, run float64) Path {
	if run <= 0 {
		return p
	}
	q := make(Path, 0, len(p)+2)
	q = append(q, p[0].Sub(start.Mul(run)))
	q = append(q, p...)
	return append(q, p[len(p)-1].Add(end.Mul(run)))
}

// raw is the line before anything is taken away. Segment i runs from point i
// to point i+1 of its path.
type raw struct {
	source Path
	d      float64
	path   Path
	beside []int   // which source segment each segment lies beside, or a join
	sharp  []Point // corners of the source outside whose reach the joins run on
	dead   []bool  // segments known to be too near from how they were made
	cuts   [][]cut // where each segment is cut
	places []Point // where the parts meet, by node
	parts  []part  // in the order of the path
}

// What a segment is that lies beside no segment of the source.
const (
	roundJoin  = -1 // a piece of the arc about a corner that turns away
	insideJoin = -2 // the short way across the inside of a corner
)

// cut is a place on a segment, as a share of the way along it. Segments that
// cross have a node in common.
type cut struct {
	share float64
	node  int
}

// part is a stretch of the raw line between two cuts.
type part struct {
	path     Path
	from, to int // nodes; noNode at the ends of the line and beside dead segments
	// first and last are the source segments it begins and ends beside.
	first, last int
	good        bool
}

const noNode = -1

// drawRaw moves every segment sideways and joins them.
func drawRaw(source *Tree, d float64) *raw {
	p, along := source.path, source.along
	r := &raw{source: p, d: d}
	n := len(p) - 1
	dir := make([]Point, n)
	for i := range dir {
		dir[i] = p[i+1].Sub(p[i]).Unit()
	}
	r.path = Path{p[0].Add(dir[0].Left().Mul(d))}
	for i := 1; i < n; i++ {
		a, b := dir[i-1], dir[i]
		before, after := along[i]-along[i-1], along[i+1]-along[i]
		turn := math.Atan2(a.Cross(b), a.Dot(b))
		if turn == math.Pi {
			turn = -turn // the path turns back on itself: round its tip
		}
		trim := d * math.Tan(turn/2)
		from, to := p[i].Add(a.Left().Mul(d)), p[i].Add(b.Left().Mul(d))
		switch {
		case turn == 0:
			r.to(from, i-1)
		case turn > 0 && trim <= before && trim <= after:
			// What this trims off one side lies beside the other side, nearer
			// to it than d.
			r.to(from.Sub(a.Mul(trim)), i-1)
		case turn > 0:
			r.to(from, i-1)
			r.to(to, insideJoin)
		case -turn <= gentleTurn:
			r.to(from.Sub(a.Mul(trim)), i-1)
		case sharp(source, i, d, -turn):
			r.to(from.Sub(a.Mul(trim)), i-1)
			r.sharp = append(r.sharp, p[i])
		default:
			r.to(from, i-1)
			r.round(p[i], from, -turn)
			r.to(to, roundJoin)
		}
	}
	r.to(p[n].Add(dir[n-1].Left().Mul(d)), n-1)

	r.dead = make([]bool, len(r.beside))
	for i, k := range r.beside {
		step := r.path[i+1].Sub(r.path[i])
		// A segment that runs against its source has been trimmed at both
		// ends by more than there was: each of its points lies beside one
		// neighbour or the other, too near.
		r.dead[i] = k == insideJoin || k >= 0 && step.Dot(dir[k]) < -nearness
	}
	return r
}

// to draws the next stretch of the raw line.
func (r *raw) to(q Point, beside int) {
	r.path = append(r.path, q)
	r.beside = append(r.beside, beside)
}

// round draws the arc about the corner c that begins at from and turns right:
// as a polygon whose sides touch the true arc, so that none of it is too near.
func (r *raw) round(c, from Point, turn float64) {
	half := math.Acos(r.d / (r.d + roundness))
	pieces := math.Ceil(turn / (2 * half))
	arm, step := from.Sub(c), turn/pieces
	out := 1 / math.Cos(step/2)
	for k := range int(pieces) {
		sin, cos := math.Sincos(-step * (float64(k) + 0.5))
		r.to(c.Add(Point{arm.X*cos - arm.Y*sin, arm.X*sin + arm.Y*cos}.Mul(out)), roundJoin)
	}
}

// sharp reports whether the offset keeps the corner at point i sharp.
func sharp(source *Tree, i int, d, turn float64) bool {
	if math.Cos(turn/2)*mitreLimit < 1 {
		return false
	}
	corner, reach := source.path[i], cornerReach*d
	in := corner.Sub(source.At(source.along[i] - reach))
	out := source.At(source.along[i] + reach).Sub(corner)
	return math.Atan2(-in.Cross(out), in.Dot(out)) >= turn/2
}

// prune sets aside the segments at joins that are too near over their whole
// length. On a rough path nearly all are, and each would cross many others;
// where a path is smooth it has no joins to look at. A path of many fine waves
// is smooth too, but each wave sends out an arc of its own: there, as the
// length of the raw line tells, all segments are looked at.
func (r *raw) prune(source *Tree) {
	wavy := r.path.Length() > 2*source.Length()+4*math.Pi*r.d
	join := func(i int) bool { return i >= 0 && i < len(r.beside) && r.beside[i] < 0 }
	for i := range r.dead {
		if !r.dead[i] && (wavy || join(i-1) || join(i) || join(i+1)) {
			r.dead[i] = r.tooNear(source, r.path[i], r.path[i+1], mostParts)
		}
	}
}

// mostParts bounds into how many parts a segment is divided to tell whether it
// is too near over its whole length.
const mostParts = 16

// tooNear reports whether every place between a and b is nearer to the source
// than the distance: whether the middle is by so much more that the rest must
// be, or both halves are, each looked at in half as many parts.
func (r *raw) tooNear(source *Tree, a, b Point, parts int) bool {
	middle := a.Toward(b, 0.5)
	half := middle.Distance(a)
	reach := r.d - nearness
	switch {
	case reach > half && source.Nearer(middle, reach-half):
		return true
	case parts <= 1 || !source.Nearer(middle, reach):
		return false
	}
	return r.tooNear(source, a, middle, parts/2) && r.tooNear(source, middle, b, parts/2)
}

// cut finds every place where the raw line crosses itself or enters the reach
// of the source where no raw line marks that: round its ends and its sharp
// corners, and on its other side, beside which other is drawn.
func (r *raw) cut(other *raw) {
	t := NewTree(r.path)
	r.cuts = make([][]cut, len(r.dead))
	for i := range r.dead {
		r.crossings(i, r, t, func(j int, at Point, a, b float64) {
			// That the line ends where it began is no crossing.
			closes := i == 0 && j == len(r.dead)-1 &&
				at.Distance(r.path[0]) < closing && at.Distance(r.path[j+1]) < closing
			if j > i+1 && !closes {
				node := r.node(at)
				r.cuts[i] = append(r.cuts[i], cut{a, node})
				r.cuts[j] = append(r.cuts[j], cut{b, node})
			}
		})
	}
	for i := range other.dead {
		other.crossings(i, r, t, func(j int, at Point, _, b float64) {
			r.cuts[j] = append(r.cuts[j], cut{b, r.node(at)})
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
				r.cuts[i] = append(r.cuts[i], cut{s, r.node(at)})
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
		sort.Slice(r.cuts[i], func(a, b int) bool { return r.cuts[i][a].share < r.cuts[i][b].share })
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
	if uu == 0 || rest <= uu*nearness*nearness {
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
// for rounding beside the cuts themselves.
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
			p.good = !source.Nearer(middle, r.d-nearness)
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
	line.Path = withoutRepeats(line.Path).withoutStraightPoints()
	return line
}

// strays reports whether the source between two of its segments goes farther
// from a place than a corner does.
func (r *raw) strays(at Point, first, last int) bool {
	for _, q := range r.source[min(first+1, len(r.source)):max(first+1, min(last+1, len(r.source)))] {
		if q.Distance(at) > tongueLength*r.d {
			return true
		}
	}
	return false
}

// withoutStraightPoints returns the path without points that lie on the line
// between their neighbours, as the cuts of straight segments do.
func (p Path) withoutStraightPoints() Path {
	if len(p) < 3 {
		return p
	}
	q := Path{p[0]}
	for i := 1; i+1 < len(p); i++ {
		a, b := q[len(q)-1], p[i+1]
		if foot, _ := nearestOnSegment(a, b, p[i]); foot.Distance(p[i]) > touch {
			q = append(q, p[i])
		}
	}
	return append(q, p[len(p)-1])
}
