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
func (p PieceSpec) FullSize() PieceSpec {
	by := p.Enlarge.Or(1)
	p.Enlarge = Factor{}
	p.Edges, p.Lines = slices.Clone(p.Edges), slices.Clone(p.Lines)
	for i := range p.Edges {
		p.Edges[i].Points = p.Edges[i].Points.enlarged(by)
		p.Edges[i].Centre.V = p.Edges[i].Centre.V.Mul(by)
	}
	for i := range p.Lines {
		p.Lines[i].Points = p.Lines[i].Points.enlarged(by)
		p.Lines[i].Centre.V = p.Lines[i].Centre.V.Mul(by)
	}
	p.GrainPoints = p.GrainPoints.enlarged(by)
	return p
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
func (p PieceSpec) refuseEnlarged() error {
	if !p.Enlarge.Given() {
		return nil
	}
	full := p.FullSize()
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
