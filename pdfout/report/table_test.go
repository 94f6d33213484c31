package report

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// checkTables holds tables against the pages, or against their columns: titles, and
// the first words of all cells that are not empty, are all different, so that each is
// found.
func checkTables(t require.TestingT, pages []seen.Page, tables []mark.Table) {
	texts := placesOfTexts(pages)
	totals := 0
	for _, p := range pages {
		totals += len(totalLines(p))
	}
	numbersOfTotals := 0
	for _, table := range tables {
		ends := map[int]float64{}
		rowsOn := map[int]int{}
		title, firstPage := only(t, pages, table.Title)
		for i, row := range table.Rows {
			words, page := texts.only(t, strings.Fields(row.Cells[0])[0])
			rowsOn[page]++
			assert.InDelta(t, title.At.X, words.At.X, 2*seen.Written, "words of %q begin at the left", table.Title)
			if i == 0 {
				assert.Equal(t, firstPage, page, "the title of %q stands with its first row", table.Title)
				assert.Greater(t, title.At.Y, words.At.Y)
			}
			for c, number := range row.Cells {
				if c == 0 || number == "" {
					continue
				}
				r, on := texts.only(t, strings.Fields(number)[0])
				assert.Equal(t, number, r.Text)
				assert.Equal(t, page, on, "row %q is broken", row.Cells[0])
				assert.InDelta(t, words.At.Y, r.At.Y, 2*seen.Written, "row %q in one line", row.Cells[0])
				if _, known := ends[c]; !known {
					ends[c] = rightEnd(r)
				}
				assert.InDelta(t, ends[c], rightEnd(r), 4*seen.Written, "column %d of %q has one right end", c, table.Title)
				if row.Total {
					numbersOfTotals++
					over := slices.IndexFunc(totalLines(pages[page]), func(p plane.Path) bool {
						above := p[0].Y - r.Box().Max.Y
						return math.Abs(p[1].X-rightEnd(r)) < 4*seen.Written && p[0].X <= r.At.X+2*seen.Written && p[0].Y == p[1].Y && above > 0 && above < 2
					})
					assert.GreaterOrEqual(t, over, 0, "no line over %q", number)
				}
			}
		}
		for page, rows := range rowsOn {
			assert.True(t, rows > 1 || len(table.Rows) == 1, "one row of %q alone on a page", table.Title)
			if page == firstPage {
				continue
			}
			assert.Contains(t, pages[page].Words(), table.Title+", continued")
			for _, head := range table.Heads {
				assert.Contains(t, said(pages[page]), seen.Squeezed(head), "heads of %q come again", table.Title)
			}
		}
	}
	assert.Equal(t, numbersOfTotals, totals, "lines over totals, and over nothing else")
}

// A table with what is said under it is never broken but where it is longer than a column.
func TestTablesAreKeptWhole(t *testing.T) {
	t.Parallel()
	moved := 0
	for n := range 50 {
		before := mark.Section{Title: "Before it"}
		for range n {
			before.Lines = append(before.Lines, mark.Sentence{Text: "Measure it."})
		}
		for _, rows := range []int{3, 24, 44} {
			table := mark.Table{Title: "Seam", Lines: []mark.Sentence{{Text: "They match."}}}
			for i := range rows {
				table.Rows = append(table.Rows, sample.Cells([]string{fmt.Sprint("mark", i), fmt.Sprint(i, " in")})...)
			}
			pages, onPaper := reported(t, &mark.Report{Sections: []mark.Section{before, {Title: "Seams", Tables: []mark.Table{table}}}}, "letter")
			columns := columnsOn(pages, onPaper, 2)
			_, first := only(t, columns, "Seams")
			_, last := only(t, columns, "They match.")
			assert.Equal(t, first, last, "n = %d: a table of %d rows stands in one column", n, rows)
			moved += first
		}
	}
	assert.Positive(t, moved)
}

// A table without a title that goes on says the title of its section.
func TestTableWithoutTitleGoesOn(t *testing.T) {
	var rows []mark.Row
	for i := range 100 {
		rows = append(rows, sample.Cells([]string{fmt.Sprint("tuck ", i), "1/8 in"})...)
	}
	pages, onPaper := reported(t, &mark.Report{Sections: []mark.Section{{Title: "Tucks", Tables: []mark.Table{{Rows: rows}}}}}, "letter")
	require.Len(t, pages, 1)
	columns := columnsOn(pages, onPaper, 2)
	assert.Contains(t, columns[1].Words(), "Tucks, continued")
	assert.NotContains(t, columns[0].Words(), "Tucks, continued")
}

func TestTableFits(t *testing.T) {
	row := func(words, number string, n int) mark.Row {
		r := mark.Row{Cells: []string{words}}
		for i := range n {
			r.Cells = append(r.Cells, strings.Replace(number, "#", fmt.Sprint(i), 1))
		}
		return r
	}
	for _, c := range []struct {
		name  string
		row   mark.Row
		words string // a text in the first column
	}{
		{"five columns of measures", row("Front, on the fold", "17 #/16 in", 4), "Front, on the fold"},
		{"long words are set in lines", row("A skirt panel with five growth tucks above a hem that can be let down twice or three times", "17 #/16 in", 6), "let down twice or three times"},
		{"long numbers are set closer", row("A skirt panel with five growth tucks above a hem that can be let down", "less than # in", 6), "a hem that can be let down"},
		{"words are shortened in the end", row(strings.Repeat("a skirt panel ", 24), "10 1#/16 in", 8), "skirt panel…"},
	} {
		t.Run(c.name, func(t *testing.T) {
			// Another table that is too wide for a column has the report set across the page.
			wide := mark.Section{Tables: []mark.Table{sample.WideTable()}}
			pages, _ := reported(t, &mark.Report{Sections: []mark.Section{{Tables: []mark.Table{{Rows: []mark.Row{c.row}}}}, wide}}, "letter")
			number, _ := only(t, pages, c.row.Cells[1])
			assert.Equal(t, 9.0, number.Size)
			assert.Contains(t, said(pages[0]), seen.Squeezed(c.words))
		})
	}
	_, err := Lay(&mark.Report{Sections: []mark.Section{{Tables: []mark.Table{{Rows: []mark.Row{row("a", "very much less than # 11/16 in of cloth", 6)}}}}}}, seen.Paper(t, "letter"))
	require.EqualError(t, err, "the figures have a table whose numbers alone are wider than letter paper\nhint: choose larger paper")
	assert.IsType(t, &fault.Fault{}, err)
}
