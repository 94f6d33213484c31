package sheet

import (
	"fmt"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// markingSheet lists every line of the flat piece by role and says what is printed
// with it; with the match marks of its template where that is not nil.
func markingSheet(p *piece.Piece, pattern *garment.Pattern, template *template) mark.Marking {
	m := mark.Marking{Key: p.Key, Name: p.Name, Outline: p.Flat.Outline.Path}
	for _, run := range p.Flat.Outline.Runs() {
		e := p.Edges[run.Edge]
		if e.OnFold {
			m.Add(mark.FoldEdge, e.Key+": place on the fold", run.Path)
		} else {
			m.Add(mark.Cut, e.Key, run.Path)
		}
	}
	m.Marks = append(m.Marks, p.Flat.Marks...)
	m.Marks = append(m.Marks, p.FoldMarks()...)
	if template != nil {
		m.Marks = append(m.Marks, template.matches...)
	}
	if !p.Flat.Grain.Drawn { // else it is among the marks
		if g := piece.PlaceGrain(plane.NewTree(m.Outline), p.Flat.Grain.Direction, m.Marks); g != nil {
			m.Add(mark.Grain, "", g)
		}
	}
	m.Notes = pieceNotes(p, pattern)
	if template != nil {
		m.Notes = append(m.Notes, matchNote)
	}
	if axis := p.EdgeOnFold(); axis >= 0 && p.Whole {
		for _, run := range p.Flat.Outline.Runs() {
			if run.Edge == axis {
				return p.Printed(m, run.Path[0], piece.Inward(run.Path))
			}
		}
	}
	return m
}

// pieceNotes returns what is printed under the name of the piece.
func pieceNotes(p *piece.Piece, pattern *garment.Pattern) []string {
	notes := pattern.Heading()
	cut := fmt.Sprintf("cut %d", p.Cut)
	if p.OnFold && !p.Whole {
		cut += " on the fold"
	}
	notes = append(notes, cut)
	for _, parts := range describeFolds(p, pattern.Unit) {
		notes = append(notes, strings.Join(parts, ", "))
	}
	if p.FinishedOutline != nil {
		size := p.FinishedOutline.Bounds()
		what := "with its folds in it measures"
		if p.OnFold { // whichever is printed
			what = "with its folds in this half measures"
		}
		notes = append(notes, fmt.Sprintf("%s %s across, %s up", what, pattern.Unit.Print(size.Width()), pattern.Unit.Print(size.Height())))
	}
	return notes
}
