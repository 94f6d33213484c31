package report

import (
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: what a report says is looked at once, before any of it is set.

// Check refuses what the fonts cannot print, and a picture that is none.
func Check(r *mark.Report) error {
	if r == nil {
		return nil
	}
	if err := ink.CheckTexts("a text of the figures", texts(*r)...); err != nil {
		return err
	}
	for _, section := range r.Sections {
		if p := section.Picture; p != nil && !drawable(*p) {
			return &fault.Fault{Cause: "the figures have a picture that leads nowhere on paper"}
		}
	}
	return nil
}

// drawable reports whether a picture has a size, and all its places are some.
func drawable(p mark.Picture) bool {
	if !(p.Width > 0 && p.Height > 0 && ink.IsPlace(plane.Point{X: p.Width, Y: p.Height})) {
		return false
	}
	for _, shape := range p.Shapes {
		if slices.ContainsFunc(shape.Outline, func(q plane.Point) bool { return !ink.IsPlace(q) }) {
			return false
		}
	}
	return !slices.ContainsFunc(p.Bands, func(b mark.Band) bool {
		return !ink.IsPlace(plane.Point{X: b.From, Y: b.To}) || !ink.IsPlace(plane.Point{X: b.Width})
	})
}

// texts returns every text of a report.
func texts(r mark.Report) []string {
	texts := append([]string{r.Title}, r.Notes...)
	say := func(lines []mark.Sentence) {
		for _, line := range lines {
			texts = append(texts, line.Text)
		}
	}
	for _, section := range r.Sections {
		texts = append(texts, section.Title)
		for _, t := range section.Tables {
			texts = append(append(texts, t.Title), t.Heads...)
			for _, row := range t.Rows {
				texts = append(texts, row.Cells...)
			}
			say(t.Lines)
		}
		say(section.Lines)
		if p := section.Picture; p != nil {
			texts = append(texts, p.Caption)
			for _, shape := range p.Shapes {
				texts = append(texts, shape.Name)
			}
			for _, b := range p.Bands {
				texts = append(texts, b.Text)
			}
		}
	}
	return texts
}
