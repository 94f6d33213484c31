package plane

import (
	"math"
)

// Rules of this file: the raw line beside a path is drawn without looking at
// anything but a corner and its two sides; what that gets wrong is set aside
// later.

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
		turn := Turn(a, b)
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
		r.dead[i] = k == insideJoin || k >= 0 && step.Dot(dir[k]) < -rounding
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
	corner, reach := source.path[i], cornerReach*d
	atEnd := min(source.along[i], source.Length()-source.along[i]) < reach
	if math.Cos(turn/2)*mitreLimit < 1 || atEnd && turn > sharpAtEnd {
		return false
	}
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
// is too near over its whole length. It bounds the work and nothing else: what is not
// told here comes out when the parts are tested.
const mostParts = 16

// tooNear reports whether every place between a and b is nearer to the source
// than the distance: whether the middle is by so much more that the rest must
// be, or both halves are, each looked at in half as many parts.
func (r *raw) tooNear(source *Tree, a, b Point, parts int) bool {
	middle := a.Toward(b, 0.5)
	half := middle.Distance(a)
	reach := r.d - rounding
	switch {
	case reach > half && source.Nearer(middle, reach-half):
		return true
	case parts <= 1 || !source.Nearer(middle, reach):
		return false
	}
	return r.tooNear(source, a, middle, parts/2) && r.tooNear(source, middle, b, parts/2)
}
