package pdfout

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
)

// Rules of this file: before anything is planned, what the fonts cannot print, places
// that are no places, and paper that is too small or too large are refused. What
// comes after looks at none of that again. What only planning can show is refused where
// it shows: nothing to draw, and too many pages (draw.go), a form that does not fit its
// page (form.go), a piece too large for a roll or a single page (whole.go), numbers too
// wide for a table (package report).

// check refuses a set that cannot be drawn on the paper, whatever its pages are.
func check(set arrange.Set, on paper.Paper) error {
	if err := on.Check(); err != nil {
		return err
	}
	if err := ink.CheckTexts("the title", set.Title); err != nil {
		return err
	}
	if err := ink.CheckTexts("the size", set.Size); err != nil {
		return err
	}
	if err := ink.CheckTexts("a caution", set.Cautions...); err != nil {
		return err
	}
	if err := report.Check(set.Report); err != nil {
		return err
	}
	for _, piece := range set.Pieces {
		if err := checkMarking(piece); err != nil {
			return err
		}
	}
	return nil
}

// checkMarking refuses a piece that cannot be drawn.
func checkMarking(piece mark.Marking) error {
	texts := slices.Concat([]string{piece.Name, piece.Piece, piece.Cut}, piece.Notes, piece.Steps, piece.Pale)
	for _, w := range piece.Words {
		texts = append(texts, w.Text)
	}
	for _, d := range piece.Dimensions {
		texts = append(texts, d.Text)
	}
	if form := piece.Form; form != nil {
		texts = slices.Concat(texts, form.Blanks, form.Sum)
	}
	if err := ink.CheckTexts(fmt.Sprintf("piece %q", piece.Key), texts...); err != nil {
		return err
	}
	for _, m := range piece.Marks {
		if err := ink.CheckTexts(fmt.Sprintf("a line of piece %q", piece.Key), m.Name); err != nil {
			return err
		}
		for _, p := range m.Path {
			if !ink.IsPlace(p) {
				return &fault.Fault{Cause: fmt.Sprintf("piece %q has a line that leads nowhere on paper", piece.Key)}
			}
		}
	}
	return nil
}
