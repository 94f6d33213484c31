package sheet

import (
	"fmt"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// markingSheet lists every line of the flat piece by role and says what is printed
// with it; with the match marks of its template where that is not nil.
func markingSheet(p *piece.Piece, pattern *garment.Pattern, template *template) mark.Marking {
	m := mark.Marking{
		Key: p.Key, Name: p.Name, Kind: mark.Piece, Piece: p.Name, Cut: CutHow(p), Side: mark.RightSideUp,
		Outline: p.Flat.Outline.Path, Notes: pieceNotes(p, pattern),
	}
	m.Marks = slices.Concat(edgeMarks(p, p.Flat.Outline), p.Flat.Marks, p.FoldMarks())
	if template != nil && len(template.matches) > 0 {
		m.Marks = append(m.Marks, template.matches...)
		m.Steps = append(m.Steps, matchNote)
	}
	m.Words, m.Dimensions = slices.Clone(p.Flat.Words), p.Flat.Dimensions(pattern.Unit)
	tellRows(&m, p, pattern.Unit)
	addGrain(&m, p)
	return openedOut(p, m, p.Flat.Outline)
}

// CutHow says how often a piece is cut from flat cloth.
func CutHow(p *piece.Piece) string {
	cut := fmt.Sprintf("cut %d", p.Cut)
	if p.LiesFolded() {
		cut += " on the fold"
	}
	return cut
}

// pieceNotes returns what is to be known of a piece, fact by fact.
func pieceNotes(p *piece.Piece, pattern *garment.Pattern) []string {
	return append(slices.Concat(describeFolds(p, pattern.Unit)...), DescribeSizes(p, pattern.Unit)...)
}
