package mark_test

import (
	"strings"

	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
)

// printedSection is a section of the figures as it is read on the screen, "" where
// there is none of that title.
func printedSection(p *garment.Pattern, title string) string {
	for _, s := range figures.Report(p, figures.OwnUnit).Sections {
		if s.Title == title {
			_, text, _ := strings.Cut(mark.Report{Sections: []mark.Section{s}}.Text(80), strings.Repeat("-", len(title))+"\n")
			return text
		}
	}
	return ""
}

const trimmings = "Trims, ruffles and bindings"
