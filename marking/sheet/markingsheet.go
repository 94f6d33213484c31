package sheet

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// markingSheet lists every line of the flat piece by role and says what is printed
// with it; with the match marks of its template where that is not nil.
func markingSheet(p *piece.Piece, pattern *garment.Pattern, template *template) mark.Marking {
	m := mark.Marking{Key: p.Key, Name: p.Name, Kind: mark.Piece, Piece: p.Name, Cut: cutHow(p), Side: mark.RightSideUp, Outline: p.Flat.Outline.Path, Notes: pieceNotes(p, pattern)}
	m.Marks = slices.Concat(edgeMarks(p, p.Flat.Outline), p.Flat.Marks, p.FoldMarks())
	if template != nil && len(template.matches) > 0 {
		m.Marks = append(m.Marks, template.matches...)
		m.Steps = append(m.Steps, matchNote)
	}
	tellRows(&m, p, pattern.Unit)
	addGrain(&m, p)
	return openedOut(p, m, p.Flat.Outline)
}

// cutHow says how often a piece is cut from flat cloth.
func cutHow(p *piece.Piece) string {
	cut := fmt.Sprintf("cut %d", p.Cut)
	if p.OnFold && !p.Whole {
		cut += " on the fold"
	}
	return cut
}

// pieceNotes returns what is printed under the name of the piece.
func pieceNotes(p *piece.Piece, pattern *garment.Pattern) []string {
	var notes []string
	for _, parts := range describeFolds(p, pattern.Unit) {
		notes = append(notes, strings.Join(parts, ", "))
	}
	notes = append(notes, endsOnPiece(p, pattern.Unit)...)
	if across, up := p.FoldedSizes(); len(across) > 0 {
		what := "as cut, with its folds in it measures"
		if p.OnFold { // whichever is printed
			what = "as cut, with its folds in this half measures"
		}
		between := ","
		if len(across)+len(up) > 2 {
			between = ";"
		}
		notes = append(notes, fmt.Sprintf("%s %s%s %s", what, describeSizes(across, "across", pattern.Unit), between, describeSizes(up, "up", pattern.Unit)))
	}
	return notes
}
