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
	crossAway = 25.4     // of a cross from the end of its line, in mm: clear of a seam
	crossArm  = 25.4 / 4 // of a cross, in mm
)

// cuttingSheet returns the cutting sheet of a piece, with the match marks of its
// template if it is matched with one.
func (p *Piece) cuttingSheet(pattern *Pattern, matched bool) Marking {
	b := p.Block
	m := Marking{Key: p.Key + " cutting sheet", Name: p.Name + ": cutting sheet", Outline: p.Outline}
	add := func(role Role, name string, path plane.Path) {
		m.Marks = append(m.Marks, Mark{role, name, path})
	}
	for _, e := range p.Edges {
		if !e.OnFold {
			add(Cut, e.Key, e.Path)
			continue
		}
		name := e.Key
		if b.onCentre() {
			name += ", and the stitching of tuck 1"
		}
		add(Centre, name, e.Path)
	}
	m.Marks = append(m.Marks, p.drawnMarks(pattern.Unit)...)
	if matched {
		m.Marks = append(m.Marks, p.matchMarks(p.templateShape())...)
	}
	for _, line := range p.centres() {
		_, along := line.At(0)
		for _, at := range crossesOn(line) {
			m.Marks = append(m.Marks, crossAt(at, along)...)
		}
	}
	for _, r := range b.folding.rows {
		drawn := p.drawnBase(r)
		for k, f := range r.folds {
			seam, crease := b.sewn(r, f), f.width
			onCentre := b.folding.onAxis && f.about()
			if f.toward && !onCentre { // of one on the centre, half is here either way
				crease = -crease
			}
			if f.end.given {
				add(TuckEnd, "", plane.Path{drawn.at(seam, f.end.v), drawn.at(seam+crease, f.end.v)})
			}
			if onCentre {
				continue // its stitching is the centre line
			}
			if k > 0 && math.Abs(f.seam-r.folds[k-1].seam) < samePoint {
				continue // the folds of an inverted pleat meet on one line
			}
			stretches := drawn.chords(p.tree, seam)
			if f.end.given {
				stretches, _ = f.end.upTo(stretches)
			}
			role := TuckStitch
			if r.of != ofTucks {
				role = PleatFold // there its fold lies on the cloth before it
			}
			for _, s := range stretches {
				add(role, "", plane.Path{drawn.at(seam, s.from), drawn.at(seam, s.to)})
			}
		}
	}
	lay := fmt.Sprintf("lay it on the tucked block, with the %s under their lines", b.what())
	if p.OnFold {
		lay = fmt.Sprintf("lay the centre on the centre of the tucked block, and its %s under their lines", b.what())
	}
	m.Notes = append(pattern.heading(), fmt.Sprintf("cut %d", p.Cut), lay, "cut one layer at a time")
	if matched {
		m.Notes = append(m.Notes, matchNote)
	}
	switch {
	case p.OnFold && !p.Whole:
		m.Notes = append(m.Notes, "turn it over for the other half")
	case !p.OnFold && p.Cut > 1:
		m.Notes = append(m.Notes, "where one is for the left and one for the right, turn it over for the second, and press its tucks the other way")
	}
	if b.Measure != nil {
		m.Notes = append(m.Notes, fmt.Sprintf("the %s are drawn as they were sewn", b.what()), b.fit(p, pattern.Unit))
	}
	if axis := p.foldEdge(); axis >= 0 {
		e := p.Edges[axis].Path
		return p.printed(m, e[0], inward(e))
	}
	return m
}

// sewn returns where the seam of a fold lies on the finished piece, from its base:
// where it was asked for, or, once the block is measured, where it has come to lie
// with every fold taking its share of what they took together.
func (b *Block) sewn(r *row, f fold) float64 {
	if b.Measure == nil || f.about() {
		return f.seam
	}
	share := (b.Width - b.Measure.Top) / b.TakeUp
	// By the folds before it: beside its base, and between that and the origin.
	taken := f.near - f.seam + b.folding.side(r)*r.moved.Dot(b.folding.out)
	if r.of == ofTucks {
		taken += f.width // its fold line stays where it was drawn
	}
	return f.seam + (1-share)*taken
}

// centres returns the lines of the piece by which a sheet is laid on the block: the
// centre, and lines inside that tucks are measured from.
func (p *Piece) centres() []plane.Path {
	var lines []plane.Path
	if axis := p.foldEdge(); axis >= 0 {
		lines = append(lines, p.Edges[axis].Path)
	}
	for _, l := range p.Lines {
		measured := func(r *row) bool { return r.base.edge < 0 && r.base.name == l.Key }
		if l.Role == Centre || slices.ContainsFunc(p.Block.folding.rows, measured) {
			lines = append(lines, l.Path)
		}
	}
	return lines
}

// crossesOn returns the places of the two crosses on a line, none where it is too
// short for them.
func crossesOn(line plane.Path) []plane.Point {
	long := line.Length()
	if long < 4*crossAway {
		return nil
	}
	first, _ := line.At(crossAway)
	last, _ := line.At(long - crossAway)
	return []plane.Point{first, last}
}

// crosses returns the places of the crosses on the centre of a piece on the fold.
func (p *Piece) crosses() []plane.Point {
	if axis := p.foldEdge(); axis >= 0 {
		return crossesOn(p.Edges[axis].Path)
	}
	return nil
}

// crossAt returns the two arms of a cross, one of them along a direction.
func crossAt(at, along plane.Point) []Mark {
	var arms []Mark
	for _, arm := range []plane.Point{along, along.Left()} {
		arms = append(arms, Mark{Role: Cross, Path: plane.Path{at.Sub(arm.Mul(crossArm)), at.Add(arm.Mul(crossArm))}})
	}
	return arms
}
