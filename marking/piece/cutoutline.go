package piece

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. Where a file draws the stitch lines of a piece, its cutting line is
// made outside them, and from then on the piece is as any other, but that its stitch lines
// are not worked out again: they are sewn as they are drawn, from corner to corner.
//
//   - The cutting line of an edge keeps its allowance, or its hem and turn, from that
//     edge; of an edge without one, and of one on the fold, it is the edge itself.
//   - Past the ends of its edge it is lengthened straight, as a stitch line is (stitch.go),
//     and ends where it meets that of its neighbour, lengthened as well: on the fold of
//     the cloth, too. Where the outline points into the piece, both are trimmed there.
//     So the ends of a hem run straight on with the sides; they are not trued to lie on a
//     side that slants when the hem is folded up.
//   - A point that would run out beyond mitreLimit is cut off square there.
//   - Where the outline hardly turns and the allowances differ, as at the end of a placket,
//     each ends square to its corner, and a step joins the two.
//   - What joins two cutting lines so belongs to the edge with the lesser allowance, unless
//     that has none.

// mitreLimit bounds how far a corner of the cutting line may run out from that of the
// stitch line, along the middle of the corner, in the wider of the two allowances: a point
// of less than 29 degrees between equal ones is cut off.
const mitreLimit = 4

// cutOutside makes the cutting outline of a piece whose stitch lines are drawn, from them
// and the allowances. It notes why there is none and returns false.
func (p *Piece) cutOutside(found *Findings) bool {
	widest := 0.0
	for _, e := range p.Edges {
		widest = max(widest, e.Allowance)
	}
	cuts := make([]ruling, len(p.Edges))
	all := true
	for i, e := range p.Edges {
		in, ok := e.inset(i), false
		in.d = 0
		cuts[i], ok = p.rule(in, 2*mitreLimit*widest, found)
		all = all && ok
	}
	if !all {
		return false
	}
	ends := make([]cutCorner, len(p.Edges)) // at the end of each edge
	for i := range p.Edges {
		_, after := p.Neighbours(i)
		end, ok := p.cutCorner(cuts[i], cuts[after], found)
		ends[i], all = end, all && ok
	}
	if !all {
		return false
	}
	for i := range p.Edges {
		before, after := p.Neighbours(i)
		from, to := ends[before].after, ends[i].before
		if to-from < LeastLine {
			found.Add(p.Edges[i].Place, "make their allowances narrower, or this edge longer"+usualIn(p.Edges[before], p.Edges[after]),
				"nothing is left of the cutting line of this edge between those of %q and %q", p.Edges[before].Key, p.Edges[after].Key)
			all = false
			continue
		}
		p.Edges[i].Path = apart(cuts[i].line.Path().Between(from, to).WithoutStraightPoints())
	}
	return all && p.closeCut(found)
}

// apart returns a line without those points next to its ends that are one place with them.
func apart(line plane.Path) plane.Path {
	for len(line) > 2 && line[1].Distance(line[0]) <= SamePoint {
		line = slices.Delete(line, 1, 2)
	}
	for n := len(line); n > 2 && line[n-2].Distance(line[n-1]) <= SamePoint; n = len(line) {
		line = slices.Delete(line, n-2, n-1)
	}
	return line
}

// closeCut joins the cutting lines of all edges to the outline that is cut, and looks for
// crossings.
func (p *Piece) closeCut(found *Findings) bool {
	for i := range p.Edges {
		_, after := p.Neighbours(i)
		b, a := &p.Edges[i], &p.Edges[after]
		last, first := b.Path[len(b.Path)-1], a.Path[0]
		switch {
		case last.Distance(first) < Rounding:
			a.Path[0] = last
		case b.Allowance > 0 && (b.Allowance <= a.Allowance || a.Allowance == 0):
			b.Path = append(b.Path, first)
		default:
			a.Path = append(plane.Path{last}, a.Path...)
		}
	}
	p.Outline = outlineOf(p.Edges)
	p.Tree = plane.NewTree(p.Outline)
	at, i, j, crosses := plane.SelfCrossing(p.Tree)
	if !crosses {
		return true
	}
	a, b := p.edgeOfSegment(i), p.edgeOfSegment(j)
	if a == b {
		found.Add(a.Place, "make it narrower"+usualIn(*a), "an allowance of %s is too wide: the cutting line outside this edge crosses or touches itself at %s",
			found.Written(a.Allowance), found.point(at))
		return false
	}
	found.Add(a.Place, "make the allowances narrower, or the gap between the two edges wider"+usualIn(*a, *b),
		"the cutting lines outside %q and %q, for allowances of %s and %s, cross or touch at %s",
		a.Key, b.Key, found.Written(a.Allowance), found.Written(b.Allowance), found.point(at))
	return false
}

// cutCorner is where the cutting lines of two edges that follow each other end: how far
// along each, with its ends lengthened, in mm.
type cutCorner struct{ before, after float64 }

// cutCorner finds where two cutting lines end at their corner. It notes where one passes by
// the fold of the cloth, and returns false.
func (p *Piece) cutCorner(b, a ruling, found *Findings) (cutCorner, bool) {
	square := cutCorner{b.beside().To, a.beside().From}
	widest := max(p.Edges[b.edge].Allowance, p.Edges[a.edge].Allowance)
	if widest == 0 {
		return square, true
	}
	turn, reach := plane.Turn(b.end, a.start), math.Inf(1)
	onFold := p.Edges[b.edge].OnFold || p.Edges[a.edge].OnFold
	if math.Abs(turn) < sharpTurn && !onFold {
		reach = gentleReach * widest
	}
	meet, ok := b.meetsOutside(a, reach)
	corner := p.Edges[a.edge].Given[0]
	out := b.end.Sub(a.start).Unit() // along the middle of a corner that points out
	limit := mitreLimit * widest
	switch {
	// A corner that turns less never runs out so far.
	case turn > math.Pi/2 && (!ok || meet.At.Sub(corner).Dot(out) > limit):
		upTo := func(from, way plane.Point) float64 { return (limit - from.Sub(corner).Dot(out)) / way.Dot(out) }
		return cutCorner{square.before + upTo(b.line.At(square.before), b.end), square.after - upTo(a.line.At(square.after), a.start.Mul(-1))}, true
	case ok:
		return cutCorner{meet.A, meet.B}, true
	case onFold:
		fold, other := p.Edges[b.edge], p.Edges[a.edge]
		if other.OnFold {
			fold, other = other, fold
		}
		found.Add(other.Place, "make the allowance narrower, or lead the edge to the fold more squarely",
			"the cutting line outside this edge, for an allowance of %s, does not come to %q, which lies on the fold of the cloth", found.Written(other.Allowance), fold.Key)
		return square, false
	}
	return square, true
}

// meetsOutside returns where the cutting lines of two edges meet at their corner: of all such
// places between the other ends of the two, and within reach of the corner along either, the
// nearest as one walks along them.
func (r ruling) meetsOutside(next ruling, reach float64) (meet plane.Crossing, ok bool) {
	at, there := r.beside().To, next.beside().From
	// Two that go on into each other end to end.
	if q := r.line.At(at); q.Distance(next.line.At(there)) < Rounding {
		return plane.Crossing{At: q, A: at, B: there}, true
	}
	off := math.Inf(1)
	for _, c := range plane.Crossings(r.line, next.line) {
		a, b := math.Abs(c.A-at), math.Abs(c.B-there)
		past := c.A < r.beside().From || next.beside().To < c.B // it is lengthened for another corner
		if a < reach && b < reach && a+b < off && !past && r.keepsOff(c.A) && next.keepsOff(c.B) {
			meet, off, ok = c, a+b, true
		}
	}
	return meet, ok
}

// Beside returns the line that keeps its allowance from the cutting line of an edge, all the
// way along that and no farther; ok is false where there is none.
func (p *Piece) Beside(edge int) (line plane.Path, ok bool) {
	e := p.Edges[edge]
	if e.inside == 0 {
		line, ok := plane.Offset(e.Path, e.Allowance, 0)
		return line.Path, ok
	}
	r, last := p.rulings[edge], len(e.Path)-1
	before := max(0, e.Given[0].Sub(e.Path[0]).Dot(r.start))
	after := max(0, e.Path[last].Sub(e.Given[len(e.Given)-1]).Dot(r.end))
	return r.line.Path().Between(r.beside().From-before, r.beside().To+after), true
}

// asGiven decides a corner of a piece whose stitch lines are drawn: there both seams end.
// Where a line comes out beyond that is decided later (ruleOn).
func (p *Piece) asGiven(c Corner, b, a ruling) Corner {
	c.Turn = plane.Turn(b.end, a.start) // less rough than their last steps
	bare := b.d == 0 || a.d == 0
	c.Before = LineEnd{Seam: b.beside().To, Line: b.beside().To, Out: bare && c.points()}
	c.After = LineEnd{Seam: a.beside().From, Line: a.beside().From, Out: bare && c.points()}
	if b.d == 0 {
		path := p.Edges[b.edge].Path
		_, c.Before.Line = b.line.Nearest(path[len(path)-1])
	}
	if a.d == 0 {
		_, c.After.Line = a.line.Nearest(p.Edges[a.edge].Path[0])
	}
	return c
}

// turn returns how far the outline turns at the corner between two consecutive
// edges, in radians: positive where the corner points out of the piece.
func (p *Piece) turn(before, after int) float64 {
	return plane.Turn(p.Edges[before].Given.EndDirection(), p.Edges[after].Given.StartDirection())
}
