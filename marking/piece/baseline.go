package piece

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// BaseLine is the straight line that tucks are measured from, and the side of it
// they lie on. A place on the cloth has two numbers over it: u, how far it lies
// from the line, and v, how far along it.
type BaseLine struct {
	Name   string
	origin plane.Point
	Along  plane.Point // direction of v, of length 1
	Out    plane.Point // direction of u, of length 1
	Edge   int         // the edge that the line is, or -1 for a line inside the piece
}

func (b BaseLine) At(u, v float64) plane.Point {
	return b.origin.Add(b.Out.Mul(u)).Add(b.Along.Mul(v))
}

func (b BaseLine) u(p plane.Point) float64 { return p.Sub(b.origin).Dot(b.Out) }

func (b BaseLine) v(p plane.Point) float64 { return p.Sub(b.origin).Dot(b.Along) }

// findBase finds the line that name stands for, and the side of it the tucks
// lie on: that of the edge named by side, where it is given, else the side the
// piece lies on, or, for a line parallel to an edge, the side away from that.
func findBase(piece *Piece, name, side source.Text, found *Findings) (BaseLine, bool) {
	b, ok := findStraight(piece, name, found)
	if !ok {
		return b, false
	}
	line := piece.Line(name.V)
	switch {
	case side.Given():
		toward := found.findEdge(piece, side)
		if toward < 0 {
			return b, false
		}
		path := piece.Edges[toward].Path
		if middle, _ := path.At(path.Length() / 2); b.u(middle) < 0 {
			b.Out = b.Out.Mul(-1)
		}
	case b.Edge < 0 && line.Along < 0:
		found.Add(name.Place, `add side = "..." with the name of an edge on that side`,
			"%q has cloth on both sides, and nothing says on which of them the tucks lie", name.V)
		return b, false
	}
	return b, true
}

// findStraight finds the edge or line that name stands for, which must be
// straight. Out points to its left.
func findStraight(piece *Piece, name source.Text, found *Findings) (BaseLine, bool) {
	b := BaseLine{Name: name.V, Edge: piece.Edge(name.V)}
	var path plane.Path
	if b.Edge >= 0 {
		path = piece.Edges[b.Edge].Path
	} else if line := piece.Line(name.V); line != nil {
		path = line.Path
	} else {
		known := edgeKeys(piece)
		for _, l := range piece.Lines {
			known = append(known, l.Key)
		}
		found.unknown(name.Place, "edge or line", name.V, known)
		return b, false
	}
	if bent := path.Straightness(); bent > Straightness {
		found.Add(name.Place, "name a straight edge, or a straight line of the piece",
			"%q is not straight: it bends by %s, and cloth folds along a straight line only", name.V, found.Length(bent))
		return b, false
	}
	b.origin = path[0]
	b.Along = path[len(path)-1].Sub(path[0]).Unit()
	b.Out = b.Along.Left()
	return b, true
}

// Line returns the line with that key, or nil.
func (p *Piece) Line(key string) *Line {
	for i := range p.Lines {
		if p.Lines[i].Key == key {
			return &p.Lines[i]
		}
	}
	return nil
}

// Chords returns the stretches of v over which the line at distance u from the
// base lies within an outline, in order.
func (b BaseLine) Chords(outline *plane.Tree, u float64) []Stretch {
	// Long enough to cross the outline from wherever the base lies.
	bounds := outline.Bounds()
	reach := bounds.Width() + bounds.Height()
	from, to := math.Inf(1), math.Inf(-1)
	for _, corner := range []plane.Point{bounds.Min, bounds.Max} {
		from, to = math.Min(from, b.v(corner)-reach), math.Max(to, b.v(corner)+reach)
	}
	line := plane.NewTree(plane.Path{b.At(u, from), b.At(u, to)})
	inside := InsideStretches(outline, line)
	for i := range inside {
		inside[i].From += from
		inside[i].To += from
	}
	return inside
}

// meets returns where a line meets the base, run out on both sides: how far
// along the base, and how far along the line. An end of the line that lies off
// the base by no more than an edge may bend counts as meeting it. The outline is
// that of the piece.
func (b BaseLine) meets(outline, line plane.Path) (v, along float64, ok bool) {
	_, reach := b.Extent(outline)
	base := plane.NewTree(plane.Path{b.At(0, reach.From), b.At(0, reach.To)})
	if c := plane.Crossings(plane.NewTree(line), base); len(c) > 0 {
		return b.v(c[0].At), c[0].A, true
	}
	first, last := line[0], line[len(line)-1]
	switch {
	case math.Abs(b.u(first)) <= Straightness:
		return b.v(first), 0, true
	case math.Abs(b.u(last)) <= Straightness:
		return b.v(last), line.Length(), true
	}
	return 0, 0, false
}

// Extent returns the stretches of u and of v over which a path lies.
func (b BaseLine) Extent(p plane.Path) (us, vs Stretch) { return extentOf(p, b.u, b.v) }

// extentOf returns the stretches of two coordinates over which a path lies.
func extentOf(p plane.Path, u, v func(plane.Point) float64) (us, vs Stretch) {
	us = Stretch{math.Inf(1), math.Inf(-1)}
	vs = us
	for _, q := range p {
		us.From, us.To = min(us.From, u(q)), max(us.To, u(q))
		vs.From, vs.To = min(vs.From, v(q)), max(vs.To, v(q))
	}
	return us, vs
}
