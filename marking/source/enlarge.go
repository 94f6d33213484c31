package source

import (
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file: what enlarges a piece enlarges its points, and nothing else: every
// length of it, such as an allowance, a tuck or a distance, is full size as it is written.

// FullSize returns the piece with its points at full size, to be enlarged no more.
func (s PieceSpec) FullSize() PieceSpec {
	by := s.Enlarge.Or(1)
	s.Enlarge = Factor{}
	s.Edges, s.Lines = slices.Clone(s.Edges), slices.Clone(s.Lines)
	for i := range s.Edges {
		s.Edges[i].Points = s.Edges[i].Points.enlarged(by)
		s.Edges[i].Centre.V = s.Edges[i].Centre.V.Mul(by)
	}
	for i := range s.Lines {
		s.Lines[i].Points = s.Lines[i].Points.enlarged(by)
		s.Lines[i].Centre.V = s.Lines[i].Centre.V.Mul(by)
	}
	s.GrainPoints = s.GrainPoints.enlarged(by)
	return s
}

func (p Points) enlarged(by float64) Points {
	p.V = slices.Clone(p.V)
	for i := range p.V {
		p.V[i] = p.V[i].Mul(by)
	}
	others := make(map[int][]Other, len(p.others))
	for i, all := range p.others {
		for _, o := range all {
			others[i] = append(others[i], Other{V: o.V.Mul(by), By: o.By})
		}
	}
	p.others = others
	return p
}

// refuseEnlarged refuses a piece that is larger than a length may be.
func (s PieceSpec) refuseEnlarged() error {
	if !s.Enlarge.Given() {
		return nil
	}
	full := s.FullSize()
	all := [][]plane.Point{full.GrainPoints.V}
	for _, e := range full.Edges {
		all = append(all, e.Points.V, []plane.Point{e.Centre.V})
	}
	for _, l := range full.Lines {
		all = append(all, l.Points.V, []plane.Point{l.Centre.V})
	}
	for _, q := range slices.Concat(all...) {
		for _, mm := range []float64{q.X, q.Y} {
			if _, err := length.Bounded("the piece, enlarged so,", mm); err != nil {
				return &fault.Fault{Cause: fault.At(fault.Place{}, err).Cause, Hint: enlargements.hint}
			}
		}
	}
	return nil
}
