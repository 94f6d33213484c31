package sheet

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Of returns the markings of every piece, in the order of the file, as many as
// the ways in which its lines come onto the cloth ask for.
//
// In front of them come the samples to be sewn first. A piece that is cut from a
// tucked block has a tuck sheet, a tuck ruler and a cutting sheet.
func Of(p *garment.Pattern) []mark.Marking {
	all := samples(p)
	for i := range p.Pieces {
		all = append(all, sheetsOf(&p.Pieces[i], p)...)
	}
	return all
}

// markingSheet lists every line of the flat piece by role and says what is printed
// with it; with the match marks of its template where it has one.
func markingSheet(p *piece.Piece, pattern *garment.Pattern, by transferBy) mark.Marking {
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
	if by == withTemplate {
		m.Marks = append(m.Marks, matchMarks(p, templateShapeOf(p))...)
	}
	if p.GrainLine == nil { // else it is among the marks
		if g := piece.PlaceGrain(plane.NewTree(m.Outline), p.GrainDirection, m.Marks); g != nil {
			m.Add(mark.Grain, "", g)
		}
	}
	m.Notes = pieceNotes(p, pattern)
	if by == withTemplate {
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

// letDownStep is how finely it is told what a sampled tuck gives, in mm: no ruler shows
// more than 1/16 in of it.
const letDownStep = 25.4 / 16

// DescribeTuck says, in parts, what a set of tucks is, since its lines lie too close for
// words beside them.
func DescribeTuck(t piece.TuckRow, length func(float64) string) []string {
	words := fmt.Sprintf("%s: 1 tuck, %s wide", t.Key, length(t.Width))
	switch {
	case t.Row.Mirrored && t.Row.Folds[0].About() && t.Count == 1:
		words = fmt.Sprintf("%s: 1 tuck, on the centre, %s wide", t.Key, length(t.Width))
	case t.Row.Mirrored && t.Row.Folds[0].About():
		words = fmt.Sprintf("%s: %d tucks, 1 on the centre and %d on each side, each %s wide", t.Key, 2*t.Count-1, t.Count-1, length(t.Width))
	case t.Row.Mirrored:
		words = fmt.Sprintf("%s: %d tucks, %d on each side, each %s wide", t.Key, 2*t.Count, t.Count, length(t.Width))
	case t.Count > 1:
		words = fmt.Sprintf("%s: %d tucks, each %s wide", t.Key, t.Count, length(t.Width))
	}
	if t.Twin {
		words += ", twin needle"
	}
	parts := []string{words}
	if t.Press != source.Unpressed {
		parts = append(parts, "pressed "+sideOf(t.Press, t.Row.Base.Name))
	}
	if t.LetDown > 0 {
		gives := "gives " + length(t.LetDown) + " let down"
		if t.Sampled { // half a thread is no more than a ruler shows
			gives = "gives about " + length(math.Round(t.LetDown/letDownStep)*letDownStep) + " let down"
		}
		if t.Count > 1 {
			gives += " for each"
		}
		parts = append(parts, gives)
	}
	return parts
}

// sideOf says to which side of a line something is pressed: "away from centre front".
func sideOf(press source.Press, line string) string {
	if press == source.PressedAway {
		return "away from " + line
	}
	return "toward " + line
}

// DescribePleating says, in parts, what a row of pleats is.
func DescribePleating(p piece.PleatRow, length func(float64) string) []string {
	words := fmt.Sprintf("%s: 1 %s pleat, %s deep", p.Key, p.Kind, length(p.Depth))
	if n := p.Row.InAll(); n > 1 {
		words = fmt.Sprintf("%s: %d %s pleats, each %s deep", p.Key, n, p.Kind, length(p.Depth))
		switch {
		case p.Row.Mirrored && p.Row.Halved:
			words = fmt.Sprintf("%s: %d %s pleats, 1 on the centre and %d on each side, each %s deep", p.Key, n, p.Kind, p.Count-1, length(p.Depth))
		case p.Row.Mirrored:
			words = fmt.Sprintf("%s: %d %s pleats, %d on each side, each %s deep", p.Key, n, p.Kind, p.Count, length(p.Depth))
		}
	}
	parts := []string{words}
	if p.Press != source.Unpressed {
		parts = append(parts, "laid "+sideOf(p.Press, p.Row.Base.Name))
	}
	return parts
}

// pieceNotes returns what is printed under the name of the piece.
func pieceNotes(p *piece.Piece, pattern *garment.Pattern) []string {
	notes := pattern.Heading()
	cut := fmt.Sprintf("cut %d", p.Cut)
	if p.OnFold && !p.Whole {
		cut += " on the fold"
	}
	notes = append(notes, cut)
	for _, t := range p.TuckRows {
		notes = append(notes, strings.Join(DescribeTuck(t, pattern.Unit.Names), ", "))
	}
	for _, pleats := range p.PleatRows {
		notes = append(notes, strings.Join(DescribePleating(pleats, pattern.Unit.Names), ", "))
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
