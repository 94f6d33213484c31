package gauge

import (
	"math"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// edgeShape is an edge as it is held against others.
type edgeShape struct {
	path      *plane.Tree
	length    float64
	allowance float64
	// spans are how far places along the edge lie from its beginning, which most
	// unlike edges differ in.
	spans [shapeSpans]float64
}

// shapeSpans is how many distances are compared before two edges are laid on each
// other. It bounds nothing.
const shapeSpans = 8

func newEdgeShape(e *piece.Edge) edgeShape {
	s := edgeShape{path: plane.NewTree(e.Path), allowance: e.Allowance}
	s.length = s.path.Length()
	for i := range s.spans {
		s.spans[i] = s.path.At(s.length * float64(i+1) / shapeSpans).Distance(e.Path[0])
	}
	return s
}

// alike reports whether one gauge does for both edges: laid on each other as well as
// they go, by turning and moving only, they are nowhere farther apart than sameCard.
func (s *edgeShape) alike(o *edgeShape) bool {
	if math.Abs(s.length-o.length) > sameCard || math.Abs(s.allowance-o.allowance) > sameCard {
		return false
	}
	for i := range s.spans {
		if math.Abs(s.spans[i]-o.spans[i]) > 2*sameCard {
			return false
		}
	}
	// Where either has a corner, by the share of the way along it.
	var a, b plane.Path
	for _, share := range append(s.shares(), o.shares()...) {
		a, b = append(a, s.path.At(share*s.length)), append(b, o.path.At(share*o.length))
	}
	middle := func(p plane.Path) plane.Point {
		var sum plane.Point
		for _, q := range p {
			sum = sum.Add(q)
		}
		return sum.Mul(1 / float64(len(p)))
	}
	ma, mb := middle(a), middle(b)
	// The turn that leaves the least sum of squares between the places (Procrustes).
	var cos, sin float64
	for i := range a {
		p, q := a[i].Sub(ma), b[i].Sub(mb)
		cos += p.Dot(q)
		sin += p.Cross(q)
	}
	u := plane.Point{X: cos, Y: sin}.Unit()
	for i := range a {
		p := a[i].Sub(ma)
		if p.Mul(u.X).Add(p.Left().Mul(u.Y)).Distance(b[i].Sub(mb)) > sameCard {
			return false
		}
	}
	return true
}

// shares returns where the points of the edge lie, in shares of its length.
func (s *edgeShape) shares() []float64 {
	all := make([]float64, len(s.path.Path()))
	for i := range all {
		all[i] = s.path.Along(i) / s.length
	}
	return all
}
