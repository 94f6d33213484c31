// Package marking works out what goes on the cloth, and where.
//
// The way of the data: Read takes a file to a Spec, as it is written; Check
// takes a Spec to a Pattern, in which every line has been worked out and found
// to be possible; MarkingsOf takes its pieces to their marks, each a
// finished line with a role. Lengths are in mm, y runs up. Nothing here knows of
// paper.
package marking

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/plane"
)

// MarkingsOf returns the markings of every piece, in the order of the file, as many as
// the ways in which its lines come onto the cloth ask for.
//
// In front of them come the samples to be sewn first. A piece that is cut from a
// tucked block has a tuck sheet, a tuck ruler and a cutting sheet.
func MarkingsOf(p *Pattern) []Marking {
	all := samples(p)
	for i := range p.Pieces {
		all = append(all, sheetsOf(&p.Pieces[i], p)...)
	}
	return all
}

// markingSheet lists every line of the flat piece by role and says what is printed
// with it; with the match marks of its template where it has one.
func markingSheet(p *Piece, pattern *Pattern, by transferBy) Marking {
	m := Marking{Key: p.Key, Name: p.Name, Outline: p.flat.outline.path}
	for _, run := range p.flat.outline.runs() {
		e := p.Edges[run.edge]
		if e.OnFold {
			m.add(FoldEdge, e.Key+": place on the fold", run.path)
		} else {
			m.add(Cut, e.Key, run.path)
		}
	}
	m.Marks = append(m.Marks, p.flat.marks...)
	m.Marks = append(m.Marks, p.foldMarks()...)
	if by == withTemplate {
		m.Marks = append(m.Marks, matchMarks(p, templateShapeOf(p))...)
	}
	if p.GrainLine == nil { // else it is among the marks
		if g := placeGrain(plane.NewTree(m.Outline), p.grainDirection, m.Marks); g != nil {
			m.add(Grain, "", g)
		}
	}
	m.Notes = pieceNotes(p, pattern)
	if by == withTemplate {
		m.Notes = append(m.Notes, matchNote)
	}
	if axis := p.foldEdge(); axis >= 0 && p.Whole {
		for _, run := range p.flat.outline.runs() {
			if run.edge == axis {
				return p.printed(m, run.path[0], inward(run.path))
			}
		}
	}
	return m
}

// letDownStep is how finely it is told what a sampled tuck gives, in mm: no ruler shows
// more than 1/16 in of it.
const letDownStep = 25.4 / 16

// describeTuck says, in parts, what a set of tucks is, since its lines lie too close for
// words beside them.
func describeTuck(t Tuck, length func(float64) string) []string {
	words := fmt.Sprintf("%s: 1 tuck, %s wide", t.Key, length(t.Width))
	switch {
	case t.row.mirrored && t.row.folds[0].about() && t.Count == 1:
		words = fmt.Sprintf("%s: 1 tuck, on the centre, %s wide", t.Key, length(t.Width))
	case t.row.mirrored && t.row.folds[0].about():
		words = fmt.Sprintf("%s: %d tucks, 1 on the centre and %d on each side, each %s wide", t.Key, 2*t.Count-1, t.Count-1, length(t.Width))
	case t.row.mirrored:
		words = fmt.Sprintf("%s: %d tucks, %d on each side, each %s wide", t.Key, 2*t.Count, t.Count, length(t.Width))
	case t.Count > 1:
		words = fmt.Sprintf("%s: %d tucks, each %s wide", t.Key, t.Count, length(t.Width))
	}
	if t.Twin {
		words += ", twin needle"
	}
	parts := []string{words}
	if t.Press != Unpressed {
		parts = append(parts, "pressed "+sideOf(t.Press, t.row.base.name))
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
func sideOf(press Press, line string) string {
	if press == PressedAway {
		return "away from " + line
	}
	return "toward " + line
}

// describePleating says, in parts, what a row of pleats is.
func describePleating(p Pleating, length func(float64) string) []string {
	words := fmt.Sprintf("%s: 1 %s pleat, %s deep", p.Key, p.Kind, length(p.Depth))
	if n := p.row.inAll(); n > 1 {
		words = fmt.Sprintf("%s: %d %s pleats, each %s deep", p.Key, n, p.Kind, length(p.Depth))
		switch {
		case p.row.mirrored && p.row.halved:
			words = fmt.Sprintf("%s: %d %s pleats, 1 on the centre and %d on each side, each %s deep", p.Key, n, p.Kind, p.Count-1, length(p.Depth))
		case p.row.mirrored:
			words = fmt.Sprintf("%s: %d %s pleats, %d on each side, each %s deep", p.Key, n, p.Kind, p.Count, length(p.Depth))
		}
	}
	parts := []string{words}
	if p.Press != Unpressed {
		parts = append(parts, "laid "+sideOf(p.Press, p.row.base.name))
	}
	return parts
}

// pieceNotes returns what is printed under the name of the piece.
func pieceNotes(p *Piece, pattern *Pattern) []string {
	notes := pattern.heading()
	cut := fmt.Sprintf("cut %d", p.Cut)
	if p.OnFold && !p.Whole {
		cut += " on the fold"
	}
	notes = append(notes, cut)
	for _, t := range p.Tucks {
		notes = append(notes, strings.Join(describeTuck(t, pattern.Unit.Names), ", "))
	}
	for _, pleats := range p.Pleatings {
		notes = append(notes, strings.Join(describePleating(pleats, pattern.Unit.Names), ", "))
	}
	if p.folded != nil {
		size := p.folded.Bounds()
		what := "with its folds in it measures"
		if p.OnFold { // whichever is printed
			what = "with its folds in this half measures"
		}
		notes = append(notes, fmt.Sprintf("%s %s across, %s up", what, pattern.Unit.Print(size.Width()), pattern.Unit.Print(size.Height())))
	}
	return notes
}

// heading returns the notes that every sheet has, and every gauge, for it is kept.
func (p *Pattern) heading() []string {
	var notes []string
	if p.Title != "" {
		notes = append(notes, p.Title)
	}
	if p.Size != "" {
		notes = append(notes, "size "+p.Size)
	}
	return notes
}
