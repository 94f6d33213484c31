package pdfout

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
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
	tasks := make([]string, 0, 2*len(set.Work))
	for _, t := range set.Work {
		tasks = append(tasks, t.Do, t.Number)
	}
	for _, one := range []struct {
		whose string
		texts []string
	}{
		{"the title", []string{set.Title}},
		{"the size", []string{set.Size}},
		{"what the pieces are called", []string{set.What, set.Kind, set.FormsFor}},
		{"what is said of the allowances", []string{set.Included}},
		{"the order of work", tasks},
		{"a caution", set.Cautions},
	} {
		if err := ink.CheckTexts(one.whose, one.texts...); err != nil {
			return err
		}
	}
	if err := report.Check(set.Report); err != nil {
		return err
	}
	if mark.Dots(set.Pieces) > mark.MostDots {
		return &fault.Fault{
			Cause: fmt.Sprintf("the lines have more than %s dots to be pricked where they cross and along them, and no more are drawn at once", wording.Thousands(mark.MostDots)),
			Hint:  "prick them farther apart with --dots, or print fewer pieces at once, with --pieces",
		}
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
	if err := ink.CheckTexts(fmt.Sprintf("piece %q", piece.Key), textsIn(piece)...); err != nil {
		return err
	}
	for _, m := range piece.Marks {
		if err := ink.CheckTexts(fmt.Sprintf("a line of piece %q", piece.Key), m.Name); err != nil {
			return err
		}
		if slices.ContainsFunc(m.Path, isNowhere) {
			return &fault.Fault{Cause: fmt.Sprintf("piece %q has a line that leads nowhere on paper", piece.Key)}
		}
	}
	if slices.ContainsFunc(placesIn(piece), isNowhere) {
		return &fault.Fault{Cause: fmt.Sprintf("piece %q has something at a place that is nowhere on paper", piece.Key)}
	}
	return nil
}

func isNowhere(p plane.Point) bool { return !ink.IsPlace(p) }

// textsIn are all texts of a piece but the names of its lines.
func textsIn(piece mark.Marking) []string {
	texts := slices.Concat([]string{piece.Name, piece.Piece, piece.Cut}, piece.Alike, piece.Notes, piece.Steps, piece.Pale)
	for _, w := range piece.Words {
		texts = append(texts, w.Text)
	}
	for _, d := range piece.Dimensions {
		texts = append(texts, d.Text)
	}
	if sketch := piece.Sketch; sketch != nil {
		for _, l := range sketch.Labels {
			texts = append(texts, l.Text)
		}
	}
	if form := piece.Form; form != nil {
		texts = slices.Concat(texts, form.Blanks, form.Sum, form.Listing, form.Columns)
	}
	return texts
}

// placesIn are all places of a piece but those of its lines.
func placesIn(piece mark.Marking) []plane.Point {
	places := slices.Clone([]plane.Point(piece.Outline))
	for _, w := range piece.Words {
		places = append(places, w.At, w.Out)
	}
	for _, d := range piece.Dimensions {
		places = append(places, d.From, d.To)
	}
	if sketch := piece.Sketch; sketch != nil {
		places = append(places, plane.Point{X: sketch.Width, Y: sketch.Height})
		for _, line := range sketch.Lines {
			places = append(places, line...)
		}
		for _, l := range sketch.Labels {
			places = append(places, l.At)
		}
	}
	return places
}
