package figures

import (
	"strings"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
)

// printedSection is a section of the figures as it is read on the screen, "" where
// there is none of that title.
func printedSection(p *garment.Pattern, title string) string {
	for _, s := range Report(p, OwnUnit).Sections {
		if s.Title == title {
			_, text, _ := strings.Cut(mark.Report{Sections: []mark.Section{s}}.Text(80), strings.Repeat("-", len(title))+"\n")
			return text
		}
	}
	return ""
}

// garment checks the sketch of a front without allowances, and what stands beside the
// pieces.
func garmentOf(t require.TestingT, text, beside string) *garment.Pattern {
	pattern, err := check("allowance = 0\n" + sketch.Front(text) + "\n" + beside)
	require.NoError(t, err)
	return pattern
}
