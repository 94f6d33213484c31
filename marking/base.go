package marking

import (
	"math"

	"tuckmark/marking/plane"
)

// base is the straight line that tucks are measured from, and the side of it
// they lie on. A place on the cloth has two numbers over it: u, how far it lies
// from the line, and v, how far along it.
type base struct {
	name   string
	origin plane.Point
	along  plane.Point // direction of v, of length 1
	out    plane.Point // direction of u, of length 1
	edge   int         // the edge that the line is, or -1 for a line inside the piece
}

func (b base) at(u, v float64) plane.Point {
	return b.origin.Add(b.out.Mul(u)).Add(b.along.Mul(v))
}

func (b base) u(p plane.Point) float64 { return p.Sub(b.origin).Dot(b.out) }
func (b base) v(p plane.Point) float64 { return p.Sub(b.origin).Dot(b.along) }

// findBase finds the line that name stands for, and the side of it the tucks
// lie on: that of the edge named by side, where it is given, else the side the
// piece lies on, or, for a line parallel to an edge, the side away from that.
func findBase(piece *Piece, name, side Text, found *findings) (base, bool) {
	b, ok := findStraight(piece, name, found)
	if !ok {
		return b, false
	}
	line := piece.line(name.V)
	switch {
	case side.Given():
		toward := found.findEdge(piece, side)
		if toward < 0 {
			return b, false
		}
		path := piece.Edges[toward].Path
		if middle, _ := path.At(path.Length() / 2); b.u(middle) < 0 {
			b.out = b.out.Mul(-1)
		}
	case b.edge < 0 && line.Along < 0:
		found.add(name.Place, `add side = "..." with the name of an edge on that side`,
			"%q has cloth on both sides, and nothing says on which of them the tucks lie", name.V)
		return b, false
	}
	return b, true
}

// findStraight finds the edge or line that name stands for, which must be
// straight. Out points to its left.
func findStraight(piece *Piece, name Text, found *findings) (base, bool) {
	b := base{name: name.V, edge: piece.edge(name.V)}
	var path plane.Path
	if b.edge >= 0 {
		path = piece.Edges[b.edge].Path
	} else if line := piece.line(name.V); line != nil {
		path = line.Path
	} else {
		known := edgeKeys(piece)
		for _, l := range piece.Lines {
			known = append(known, l.Key)
		}
		found.unknown(name.Place, "edge or line", name.V, known)
		return b, false
	}
	if bent := path.Straightness(); bent > straightness {
		found.add(name.Place, "name a straight edge, or a straight line of the piece",
			"%q is not straight: it bends by %s, and cloth folds along a straight line only", name.V, found.mm(bent))
		return b, false
	}
	b.origin = path[0]
	b.along = path[len(path)-1].Sub(path[0]).Unit()
	b.out = b.along.Left()
	return b, true
}

// line returns the line with that key, or nil.
func (p *Piece) line(key string) *Line {
	for i := range p.Lines {
		if p.Lines[i].Key == key {
			return &p.Lines[i]
		}
	}
	return nil
}

// chords returns the stretches of v over which the line at distance u from the
// base lies within an outline, in order.
func (b base) chords(outline *plane.Tree, u float64) []stretch {
	// Long enough to cross the outline from wherever the base lies.
	bounds := outline.Bounds()
	reach := bounds.Width() + bounds.Height()
	from, to := math.Inf(1), math.Inf(-1)
	for _, corner := range []plane.Point{bounds.Min, bounds.Max} {
		from, to = math.Min(from, b.v(corner)-reach), math.Max(to, b.v(corner)+reach)
	}
	line := plane.NewTree(plane.Path{b.at(u, from), b.at(u, to)})
	inside := insideStretches(outline, line)
	for i := range inside {
		inside[i].from += from
		inside[i].to += from
	}
	return inside
}

// meets returns where a line meets the base, run out on both sides: how far
// along the base, and how far along the line. An end of the line that lies off
// the base by no more than an edge may bend counts as meeting it. The outline is
// that of the piece.
func (b base) meets(outline, line plane.Path) (v, along float64, ok bool) {
	_, reach := b.extent(outline)
	base := plane.NewTree(plane.Path{b.at(0, reach.from), b.at(0, reach.to)})
	if c := plane.Crossings(plane.NewTree(line), base); len(c) > 0 {
		return b.v(c[0].At), c[0].A, true
	}
	first, last := line[0], line[len(line)-1]
	switch {
	case math.Abs(b.u(first)) <= straightness:
		return b.v(first), 0, true
	case math.Abs(b.u(last)) <= straightness:
		return b.v(last), line.Length(), true
	}
	return 0, 0, false
}

// extent returns the stretches of u and of v over which a path lies.
func (b base) extent(p plane.Path) (us, vs stretch) { return extentOf(p, b.u, b.v) }

// extentOf returns the stretches of two coordinates over which a path lies.
func extentOf(p plane.Path, u, v func(plane.Point) float64) (us, vs stretch) {
	us = stretch{math.Inf(1), math.Inf(-1)}
	vs = us
	for _, q := range p {
		us.from, us.to = min(us.from, u(q)), max(us.to, u(q))
		vs.from, vs.to = min(vs.from, v(q)), max(vs.to, v(q))
	}
	return us, vs
}
