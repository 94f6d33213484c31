package terminal

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
)

func TestReportsAsText(t *testing.T) {
	r := mark.Report{
		Title: "A frock, size 2",
		Notes: []string{"Lengths are in inches."},
		Sections: []mark.Section{
			{Title: "Tables", Tables: []mark.Table{
				{Title: "sums", Heads: []string{"", "how much", "across the cloth"}, Rows: []mark.Row{
					{Cells: []string{"one", "1 1/2", "3"}},
					{Cells: []string{"the second of them", "12", "4"}},
					{Cells: []string{"together", "", "7"}, Total: true},
				}, Lines: []mark.Sentence{{Text: "said under it, in words that go on and on and on"}, {Text: "look at this before you cut: it is 17 11/16 in", Warning: true}}},
				{Rows: []mark.Row{{Cells: []string{"alone"}}}},
			}, Lines: []mark.Sentence{{Text: "said after all"}}},
			{Title: "Blanks", Lines: []mark.Sentence{{Text: "needle:", Blank: true}, {Text: "thread: silk"}, {Text: "it is odd", Place: "line 7, needle"}, {Entry: "write needle = 70"}, {Text: "the tension of the upper thread:", Blank: true}}},
			{Title: "A heading that is longer than the lines", Lines: []mark.Sentence{{Text: "!", Warning: true}}},
		},
	}
	assert.Equal(t, `A frock, size 2
Lengths are in inches.

Tables
------
  sums
                            across the
                 how much        cloth
  one               1 1/2            3
  the second of
  them                 12            4
                           -----------
  together                           7
  said under it, in words that go on
  and on and on
! look at this before you cut: it is
  17 11/16 in

  alone

  said after all

Blanks
------
  needle:
  ______________________________
  thread: silk
  line 7, needle: it is odd
  write needle = 70
  the tension of the upper thread:
  ______________________________

A heading that is longer than the
lines
--------------------------------------
! !
`, Text(r, 38))
}

// Whatever a text is, wrapping keeps every word and every length, and no line is longer
// than it may be, but for one that is a single word.
func TestWrapping(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		limit := rapid.IntRange(5, 60).Draw(t, "limit")
		lengths := []string{"17 11/16 in", "3/8 in,", "2 yd.", "1.5 cm;", "5 mm)", "(12 3/4 in)", "7/8"}
		parts := rapid.SliceOf(rapid.OneOf(rapid.SampledFrom(lengths), rapid.StringMatching(`[a-zäß]{1,12}[,:]?`))).Draw(t, "parts")
		lines := Wrapped(strings.Join(parts, " "), limit)
		require.Equal(t, strings.Join(parts, " "), strings.Join(lines, " "))
		for i, line := range lines {
			if utf8.RuneCountInString(line) > limit {
				require.Len(t, length.Words(line), 1, "line %q is longer than %d", line, limit)
			}
			if i > 0 {
				first := length.Words(line)[0]
				require.Greater(t, utf8.RuneCountInString(lines[i-1])+1+utf8.RuneCountInString(first), limit, "%q would have had room for %q", lines[i-1], first)
			}
		}
		for _, length := range parts {
			if strings.ContainsAny(length, "0123456789") {
				require.Contains(t, strings.Join(lines, "\n"), length, "a length stays in one line")
			}
		}
	})
}
