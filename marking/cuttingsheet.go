package marking

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. The cutting sheet is the finished piece, to be laid on the
// tucked block and cut one layer at a time. Its centre line, and any line inside
// it that tucks are measured from, has a cross at top and at bottom, to be found again
// when the marks on the cloth are washed out; the stitching of every tuck, and the
// fold of every pleat, lies under a line of its own.

const (
	crossAway = 25.4 / 2 // of a cross from the end of its line, in mm
	crossArm  = 25.4 / 4 // of a cross, in mm
)

// cuttingSheet returns the cutting sheet of a piece.
func (p *Piece) cuttingSheet(pattern *Pattern) Marking {
	b := p.Block
	m := Marking{Key: p.Key + " cutting sheet", Name: p.Name + ": cutting sheet", Outline: p.Outline}
	add := func(role Role, name string, path plane.Path) {
		m.Marks = append(m.Marks, Mark{role, name, path})
	}
	var centres []plane.Path
	for _, e := range p.Edges {
		if e.OnFold {
			add(Centre, e.Key, e.Path)
			centres = append(centres, e.Path)
		} else {
			add(Cut, e.Key, e.Path)
		}
	}
	for _, l := range p.Lines {
		if l.Role == Centre || slices.ContainsFunc(b.folding.rows, func(r *row) bool { return r.base.edge < 0 && r.base.name == l.Key }) {
			centres = append(centres, l.Path)
		}
	}
	m.Marks = append(m.Marks, p.drawnMarks(pattern.Unit)...)
	for _, line := range centres {
		long := line.Length()
		for _, d := range []float64{crossAway, long - crossAway} {
			if long < 4*crossAway {
				continue // no room for two
			}
			at, along := line.At(d)
			for _, arm := range []plane.Point{along, along.Left()} {
				add(Cross, "", plane.Path{at.Sub(arm.Mul(crossArm)), at.Add(arm.Mul(crossArm))})
			}
		}
	}
	for _, r := range b.folding.rows {
		drawn := r.base
		drawn.origin = drawn.origin.Sub(r.moved)
		for k, f := range r.folds {
			if b.folding.onAxis && f.about() {
				continue // its stitching is the centre line
			}
			if k > 0 && math.Abs(f.seam-r.folds[k-1].seam) < samePoint {
				continue // the folds of an inverted pleat meet on one line
			}
			stretches := drawn.chords(p.tree, f.seam)
			if f.end.given {
				stretches, _ = f.end.upTo(stretches)
			}
			role := TuckStitch
			if r.of != "tuck" {
				role = PleatFold // there its fold lies on the cloth before it
			}
			for _, s := range stretches {
				add(role, "", plane.Path{drawn.at(f.seam, s.from), drawn.at(f.seam, s.to)})
			}
		}
	}
	lay := fmt.Sprintf("lay it on the tucked block, with the %s under their lines", b.what())
	if len(centres) > 0 {
		lay = fmt.Sprintf("lay the centre on the centre of the tucked block, and its %s under their lines", b.what())
	}
	m.Notes = append(p.heading(pattern), lay, "cut one layer at a time")
	if p.OnFold && !p.Whole {
		m.Notes = append(m.Notes, "turn it over for the other half")
	}
	if axis := p.foldEdge(); axis >= 0 {
		e := p.Edges[axis].Path
		return p.printed(m, e[0], e[len(e)-1].Sub(e[0]).Unit().Left())
	}
	return m
}
