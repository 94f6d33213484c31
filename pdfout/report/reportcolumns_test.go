package report

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// A report stands in two columns where all its tables fit one and say there what they
// say on a whole page, else in one.
func TestColumnsOfAReport(t *testing.T) {
	edges := sample.ColumnFigures().Sections[0].Tables[0]
	section := func(title string, tables ...mark.Table) *mark.Report {
		return &mark.Report{Title: "Linden pinafore", Sections: []mark.Section{{Title: title, Tables: tables}}}
	}
	wordy := func(words string) mark.Table {
		return mark.Table{Rows: sample.Cells([]string{words, "3 in", "17 11/16 in"})}
	}
	titled := func(title string) mark.Table { return mark.Table{Title: title, Rows: edges.Rows} }
	noted := section("Edges", edges)
	noted.Notes = slices.Repeat([]string{"All of it is flat."}, 40)
	for _, c := range []struct {
		name   string
		report *mark.Report
		count  int
	}{
		{"narrow tables", section("Edges", edges, edges), 2},
		{"no table", &mark.Report{Sections: []mark.Section{{Title: "Cautions", Lines: []mark.Sentence{{Text: "Count the pins."}}}}}, 2},
		{"one wide table among narrow ones", section("Edges", edges, sample.WideTable(), edges), 1},
		{"words in three lines", section("Edges", wordy("A skirt panel with growth tucks above a hem that can be let down, in the second summer and in the third")), 2},
		{"words in more lines than three", section("Edges", wordy(strings.Repeat("a skirt panel with growth tucks ", 7))), 1},
		{"a word longer than its column", section("Edges", wordy(strings.Repeat("W", 40))), 1},
		{"a title in three lines", section("Edges", titled(strings.Repeat("the front and back ", 6))), 2},
		{"a title in more", section("Edges", titled(strings.Repeat("the front and back ", 9))), 1},
		{"a heading in more", section(strings.Repeat("the front and back ", 8), edges), 1},
		{"a page full of notes", noted, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			// So much that every column is begun.
			long := mark.Section{Lines: slices.Repeat([]mark.Sentence{{Text: "Measure twice."}}, 100)}
			r := *c.report
			r.Sections = append(slices.Clone(r.Sections), long)
			pages, err := Lay(arrange.Set{Report: &r}, paper.All()[0])
			require.NoError(t, err)
			lefts := map[float64]bool{}
			for _, page := range pages {
				for _, b := range page {
					lefts[b.At.X] = true
				}
			}
			assert.Len(t, lefts, c.count)
		})
	}
}

// In a column no table is set smaller than 8 points, and none smaller than it need be.
func TestSizesInColumns(t *testing.T) {
	for _, c := range []struct {
		name    string
		numbers []string
		size    float64
	}{
		{"small", []string{"3 in", "4 in"}, 9},
		{"three long numbers", slices.Repeat([]string{"17 11/16 in"}, 3), 9},
		{"a little too wide", []string{"17 11/16 in", "17 11/16 in", "hem 2, turn 1/4"}, 8.5},
		{"as wide as may be", []string{"17 11/16 in", "17 11/16 in", "hem 2 1/2, turn 1/4"}, 8},
	} {
		t.Run(c.name, func(t *testing.T) {
			row := append([]string{"Front, centre front"}, c.numbers...)
			p := paper.All()[0]
			s := Setter{Page: p.UnderHeader(), Paper: p}.Halved()
			set, ok := s.inHalf(mark.Table{Rows: sample.Cells(row)})
			require.True(t, ok)
			assert.Equal(t, c.size, set.size)
			assert.LessOrEqual(t, set.ends[len(set.ends)-1], s.width+written)
		})
	}
}
