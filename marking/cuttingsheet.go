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
// template where it has one.
func cuttingSheet(p *Piece, pattern *Pattern, by transferBy) Marking {
	b := p.Block
	m := Marking{Key: p.Key + " cutting sheet", Name: p.Name + ": cutting sheet", Outline: p.Outline}
	for _, e := range p.Edges {
		switch {
		case !e.OnFold:
			m.add(Cut, e.Key, e.Path)
		case b.onCentre():
			m.add(Centre, e.Key+", and the stitching of tuck 1", e.Path)
		default:
			m.add(Centre, e.Key, e.Path)
		}
	}
	m.Marks = append(m.Marks, p.drawnMarks(pattern.Unit)...)
	if by == withTemplate {
		m.Marks = append(m.Marks, matchMarks(p, templateShapeOf(p))...)
	}
	for _, line := range layingLines(p) {
		_, along := line.At(0)
		for _, at := range crossesOn(line) {
			m.Marks = append(m.Marks, crossAt(at, along)...)
		}
	}
	for number := range b.folding.asDrawn {
		markStitching(&m, p, number)
	}
	m.Notes = cuttingNotes(p, pattern, by)
	if axis := p.foldEdge(); axis >= 0 {
		e := p.Edges[axis].Path
		return p.printed(m, e[0], inward(e))
	}
	return m
}

// markStitching draws the lines under which the stitched folds of one row come to lie,
// and how far each is stitched.
func markStitching(m *Marking, p *Piece, number int) {
	b := p.Block
	r := b.folding.asDrawn[number]
	role := TuckStitch
	if r.kind == pleatFolds {
		role = PleatFold // there its fold lies on the cloth before it
	}
	for k, f := range r.folds {
		stitched, crease := b.stitchedAt(number, f), f.width
		onCentre := b.folding.onAxis && f.about()
		if f.toward && !onCentre { // of one on the centre, half is here either way
			crease = -crease
		}
		if f.end.given {
			m.add(TuckEnd, "", plane.Path{r.base.at(stitched, f.end.v), r.base.at(stitched+crease, f.end.v)})
		}
		if onCentre {
			continue // its stitching is the centre line
		}
		if k > 0 && math.Abs(f.stitching-r.folds[k-1].stitching) < samePoint {
			continue // the folds of an inverted pleat meet on one line
		}
		stretches := r.base.chords(p.tree, stitched)
		if f.end.given {
			stretches, _ = f.end.upTo(stretches)
		}
		for _, s := range stretches {
			m.add(role, "", plane.Path{r.base.at(stitched, s.from), r.base.at(stitched, s.to)})
		}
	}
}

// cuttingNotes says how a cutting sheet is laid and cut by.
func cuttingNotes(p *Piece, pattern *Pattern, by transferBy) []string {
	b := p.Block
	lay := fmt.Sprintf("lay it on the tucked block, with the %s under their lines", b.what())
	if p.OnFold {
		lay = fmt.Sprintf("lay the centre on the centre of the tucked block, and its %s under their lines", b.what())
	}
	notes := append(pattern.heading(), fmt.Sprintf("cut %d", p.Cut), lay, "cut one layer at a time")
	if by == withTemplate {
		notes = append(notes, matchNote)
	}
	switch {
	case p.OnFold && !p.Whole:
		notes = append(notes, "turn it over for the other half")
	case !p.OnFold && p.Cut > 1:
		notes = append(notes, "where one is for the left and one for the right, turn it over for the second, and press its tucks the other way")
	}
	if b.Measure != nil {
		notes = append(notes, fmt.Sprintf("the %s are drawn as they were sewn", b.what()), b.fit(p, pattern.Unit))
	}
	return notes
}

// layingLines returns the lines of the piece by which a sheet is laid on the block: the
// centre, and lines inside that tucks are measured from.
func layingLines(p *Piece) []plane.Path {
	var lines []plane.Path
	if axis := p.foldEdge(); axis >= 0 {
		lines = append(lines, p.Edges[axis].Path)
	}
	for _, l := range p.Lines {
		measured := func(r row) bool { return r.base.edge < 0 && r.base.name == l.Key }
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
func crosses(p *Piece) []plane.Point {
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
