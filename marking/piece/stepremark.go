package piece

import (
	"fmt"
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file. A piece drawn flat has its edges drawn straight on over its folds. An
// edge that crosses a fold at a slant has a step when that is stitched: its two ends meet on
// the stitching, and lie as far apart, along the fold, as the edge rises over the strip
// that is taken up: two widths times its slope. A piece drawn finished has none: its edges
// are trued through the folds. Below its end a fold is open and leaves none.

// leastStep is from how much on a step in a seam is worth a word, in mm: where it reads as
// more than the 1/16 in by which two sides of a seam may differ.
const leastStep = 25.4 * 3 / 32

// StepRemarks returns what is to be said of the steps that folds leave in the edges of a
// piece, of those edges that are sewn to others.
func (p *Piece) StepRemarks(unit length.Unit, sewn func(edge int) bool) []Remark {
	if p.DrawnFinished {
		return nil
	}
	m := &remarker{piece: p, unit: unit}
	for _, r := range p.FoldRows() {
		for i, e := range p.Edges {
			if !e.OnFold && sewn(i) {
				m.stepped(r, i)
			}
		}
	}
	return m.list
}

// stepped warns of the folds of a row that leave a step in an edge.
func (m *remarker) stepped(r FoldRow, edge int) {
	sewn := plane.NewTree(m.piece.Edges[edge].Sewn)
	least, most := math.Inf(1), 0.0
	stepping := map[int]bool{} // tucks or pleats
	for _, f := range r.Folds {
		near, inNear := r.crossedAt(sewn, f, f.Near)
		far, inFar := r.crossedAt(sewn, f, f.Far())
		if rise := math.Abs(far - near); inNear && inFar && rise > leastStep-length.Rounding {
			least, most = min(least, rise), max(most, rise)
			stepping[f.Number] = true
		}
	}
	n := len(stepping)
	if n == 0 {
		return
	}
	crosses := "they cross"
	which, step := fmt.Sprintf("each of the %d %ss leaves a step of ", n, r.Makes), m.unit.OnRuler(most)
	switch {
	case r.Count == 1:
		which, crosses = fmt.Sprintf("the %s leaves a step of ", r.Makes), "it crosses"
	case n == 1:
		which, crosses = fmt.Sprintf("one of the %d %ss leaves a step of ", r.Count, r.Makes), "it crosses"
	case n < r.Count:
		which = fmt.Sprintf("%d of the %d %ss leave a step of ", n, r.Count, r.Makes)
	}
	if m.unit.OnRuler(least) != step {
		step = m.unit.OnRuler(least) + " to " + step
	}
	m.say(r.Place, "sewn as it is drawn, %s%s in %q, which %s at a slant: true that edge before it is sewn; or draw the piece as it is with its folds in, and write drawn = \"finished\": then the edge is trued through them",
		which, step, m.piece.Edges[edge].Key, crosses)
}

// crossedAt returns how far along the base an edge crosses a line beside it, where the fold
// is stitched; ok is false where it does not cross it there, or more than once.
func (r FoldRow) crossedAt(edge *plane.Tree, f Fold, u float64) (v float64, ok bool) {
	_, reach := r.Base.Extent(edge.Path())
	reach = Stretch{reach.From - leastStep, reach.To + leastStep}
	crossings := plane.Crossings(edge, plane.NewTree(r.Base.Lengthwise(u, reach)))
	if len(crossings) != 1 {
		return 0, false
	}
	v = r.Base.V(crossings[0].At)
	return v, f.End.stitched(v)
}
