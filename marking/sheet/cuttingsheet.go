package sheet

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. The cutting sheet is the finished piece, to be laid on the
// tucked block and cut one layer at a time. Its centre line, and any line inside
// it that tucks are measured from, has a cross at top and at bottom, to be found again
// when the marks on the cloth are washed out; the stitching of every tuck, and the
// fold of every pleat, lies under a line of its own.

// cuttingSheet returns the cutting sheet of a piece, with the match marks of its
// template where that is not nil.
func cuttingSheet(p *piece.Piece, pattern *garment.Pattern, template *template) mark.Marking {
	b := p.Block
	m := mark.Marking{Key: p.Key + " cutting sheet", Name: p.Name + ": cutting sheet", Kind: mark.CuttingSheet, Piece: p.Name, Cut: fmt.Sprintf("cut %d", p.Cut), Side: mark.RightSideUp, Outline: p.Outline}
	for _, e := range p.Edges {
		switch {
		case !e.OnFold:
			m.Add(mark.Cut, e.Key, e.Path)
		case b.OnCentre():
			m.Add(mark.Centre, e.Key+", and the stitching of tuck 1", e.Path)
		default:
			m.Add(mark.Centre, e.Key, e.Path)
		}
	}
	m.Marks = append(m.Marks, p.AsDrawn.Marks...)
	if template != nil {
		m.Marks = append(m.Marks, template.matches...)
	}
	for _, line := range layingLines(p) {
		_, along := line.At(0)
		for _, at := range crossesOn(line) {
			addCross(&m, at, along)
		}
	}
	for _, r := range b.Group.AsDrawn {
		markStitching(&m, p, r)
	}
	m.Steps = cuttingSteps(p, template)
	if b.Measured != nil {
		m.Notes = append(m.Notes, fmt.Sprintf("the %s are drawn as they were sewn", b.What()), b.Fit(p, pattern.Unit))
	}
	if axis := p.EdgeOnFold(); axis >= 0 {
		e := p.Edges[axis].Path
		return p.Printed(m, e[0], piece.Inward(e))
	}
	return m
}

// markStitching draws the lines under which the stitched folds of one row come to lie,
// and how far each is stitched.
func markStitching(m *mark.Marking, p *piece.Piece, r piece.FoldRow) {
	b := p.Block
	role := mark.TuckStitch
	if r.Makes == piece.PleatFolds {
		role = mark.PleatFold // there its fold lies on the cloth before it
	}
	for k, f := range r.Folds {
		stitched, crease := b.StitchedAt(r, f), f.Width
		onCentre := b.Group.OnAxis && f.About()
		if f.Toward && !onCentre { // of one on the centre, half is here either way
			crease = -crease
		}
		if f.End.Given {
			m.Add(mark.TuckEnd, "", r.Base.Crosswise(piece.Stretch{From: stitched, To: stitched + crease}, f.End.V))
		}
		if onCentre {
			continue // its stitching is the centre line
		}
		if k > 0 && math.Abs(f.Stitching-r.Folds[k-1].Stitching) < piece.SamePoint {
			continue // the folds of an inverted pleat meet on one line
		}
		stretches := r.Base.Chords(p.Tree, stitched)
		if f.End.Given {
			stretches, _ = f.End.UpTo(stretches)
		}
		for _, s := range stretches {
			m.Add(role, "", r.Base.Lengthwise(stitched, s))
		}
	}
}

// cuttingSteps says how a cutting sheet is laid and cut by.
func cuttingSteps(p *piece.Piece, template *template) []string {
	b := p.Block
	lay := fmt.Sprintf("lay it on the tucked block, with the %s under their lines", b.What())
	if p.OnFold {
		lay = fmt.Sprintf("lay the centre on the centre of the tucked block, and its %s under their lines", b.What())
	}
	steps := []string{lay, "cut one layer at a time"}
	if template != nil {
		steps = append(steps, matchNote)
	}
	switch {
	case p.OnFold && !p.Whole:
		steps = append(steps, "turn it over for the other half")
	case !p.OnFold && p.Cut > 1:
		steps = append(steps, "where one is for the left and one for the right, turn it over for the second, and press its tucks the other way")
	}
	return steps
}

// layingLines returns the lines of the piece by which a sheet is laid on the block: the
// centre, and lines inside that tucks are measured from.
func layingLines(p *piece.Piece) []plane.Path {
	var lines []plane.Path
	if axis := p.EdgeOnFold(); axis >= 0 {
		lines = append(lines, p.Edges[axis].Path)
	}
	for _, l := range p.Lines {
		measured := func(r piece.FoldRow) bool { return r.Base.Edge < 0 && r.Base.Name == l.Key }
		if l.Role == mark.Centre || slices.ContainsFunc(p.Block.Group.Rows, measured) {
			lines = append(lines, l.Path)
		}
	}
	return lines
}
