package report

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// checkNothingLast: nothing that heads something is the last on its page.
func checkNothingLast(t require.TestingT, pages []seen.Page, headings []string) {
	for _, heading := range headings {
		r, page := only(t, pages, heading)
		under := slices.ContainsFunc(pages[page].Texts, func(o seen.Text) bool { return o.At.Y < r.At.Y-1 })
		assert.True(t, under || len(pages[page].Paths) > 0, "%q stands alone at the foot of a page", heading)
	}
}

// A report of many tables, each of some rows, breaks at every kind of place.
func TestFiguresBreak(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name           string
		tables, rows   int
		sentences      int
		sectionOfTwo   bool
		leastPageCount int
	}{
		{"one long table", 1, 200, 0, false, 4},
		{"tables of one row", 60, 1, 0, false, 2},
		{"tables of two rows", 60, 2, 0, true, 3},
		{"tables of three rows", 50, 3, 1, false, 4},
		{"tables of seven rows", 40, 7, 2, true, 6},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := &mark.Report{Notes: []string{"All of it is flat."}}
			n := 0
			var tables []mark.Table
			var headings []string
			for k := range c.tables {
				if k == 0 || c.sectionOfTwo && k%2 == 0 {
					heading := fmt.Sprint("Section ", k)
					headings = append(headings, heading)
					r.Sections = append(r.Sections, mark.Section{Title: heading})
				}
				table := mark.Table{Title: fmt.Sprint("Table ", k), Heads: []string{"", "flat", "sewn"}}
				for i := range c.rows {
					n++
					table.Rows = append(table.Rows, mark.Row{
						Cells: []string{fmt.Sprintf("row%d.%d", k, i), fmt.Sprintf("%d1 1/2 in", n), fmt.Sprintf("%d2 11/16 in", n)},
						Total: i == c.rows-1 && i > 0,
					})
				}
				for range c.sentences {
					table.Lines = append(table.Lines, mark.Sentence{Text: "Look at it before you cut.", Warning: true})
				}
				section := &r.Sections[len(r.Sections)-1]
				section.Tables = append(section.Tables, table)
				tables = append(tables, table)
			}
			for _, name := range []string{"letter", "a4"} {
				pages, onPaper := reported(t, r, name)
				assert.GreaterOrEqual(t, 2*len(pages), c.leastPageCount)
				checkInColumns(t, pages, onPaper, r.Notes)
				columns := columnsOn(pages, onPaper, 2)
				checkTables(t, columns, tables)
				checkNothingLast(t, columns, headings)

				wide := *r
				wide.Sections = append(slices.Clone(r.Sections), mark.Section{Tables: []mark.Table{sample.WideTable()}})
				pages, _ = reported(t, &wide, name)
				assert.GreaterOrEqual(t, len(pages), c.leastPageCount)
				checkTables(t, pages, tables)
				checkNothingLast(t, pages, headings)
			}
		})
	}
}

// Texts as long as a file may have them, of long words and of short ones, in every
// part of a report.
func TestLongTextsInFigures(t *testing.T) {
	t.Parallel()
	for name, text := range map[string]string{
		"words":  strings.TrimSpace(strings.Repeat("tucks of 17 11/16 in ", 10)),
		"a word": strings.Repeat("W", 200),
	} {
		t.Run(name, func(t *testing.T) {
			table := mark.Table{Title: text, Heads: []string{text, text, text}, Lines: []mark.Sentence{{Text: text, Warning: true, Blank: true}}}
			for range 9 {
				table.Rows = append(table.Rows, mark.Row{Cells: []string{text, "17 11/16 in", "3 cm"}, Total: true})
			}
			p := mark.Picture{Width: 1000, Height: 5000, Caption: text, Bands: []mark.Band{{From: 0, To: 1000, Width: 500, Text: text}, {From: 1000, To: 5000, Width: 1000, Text: text}}}
			p.Shapes = []mark.Shape{sample.Oblong(text, 0, 0, 1000, 900), sample.Oblong(text+" 2", 0, 1100, 40, 40)}
			section := mark.Section{Title: text, Tables: []mark.Table{table, table}, Picture: &p}
			for _, on := range paper.Names() {
				pages, _ := reported(t, &mark.Report{Title: text, Notes: []string{text}, Sections: []mark.Section{section, section}}, on)
				for _, page := range pages {
					for _, words := range page.Words() {
						assert.NotRegexp(t, brokenMeasure, strings.TrimSuffix(words, " …"), on)
					}
				}
			}
			// A page as low as a page may be has room for what stays together.
			for _, low := range leastPapers(t) {
				pages, err := Lay(&mark.Report{Sections: []mark.Section{section, {Title: text, Picture: &p}}}, low)
				require.NoError(t, err)
				checkRoom(t, pages, low)
			}
		})
	}
}

// textOf draws words, with measures among them.
func textOf(t *rapid.T, most int) string {
	words := []string{"tuck", "a", "hem", "fold", "measured flat", "17 11/16 in", "Donaudampfschifffahrtsgesellschaftskapitänsmütze", "upward,", "½"}
	return strings.Join(rapid.SliceOfN(rapid.SampledFrom(words), 1, most).Draw(t, "words"), " ")
}

// brokenMeasure finds a line that begins or ends in the middle of a measure of
// textOf.
var brokenMeasure = regexp.MustCompile(`^(11/16|in\b)|\b17( 11/16)?$`)

// saidIn reports whether a text is said, perhaps in two parts: what stands across a
// page may come between.
func saidIn(all, text string) bool {
	for k := range len(text) + 1 {
		if strings.Contains(all, text[:k]) && strings.Contains(all, text[k:]) {
			return true
		}
	}
	return false
}

// TestAnyReport draws reports nobody would make.
func TestAnyReport(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		count := rapid.SampledFrom([]int{1, 2}).Draw(t, "columns of a page")
		r := &mark.Report{Title: textOf(t, 12)}
		for range rapid.IntRange(0, 3).Draw(t, "notes") {
			r.Notes = append(r.Notes, textOf(t, 30))
		}
		sentences := func() []mark.Sentence {
			var all []mark.Sentence
			for range rapid.IntRange(0, 4).Draw(t, "sentences") {
				all = append(all, mark.Sentence{
					Text:    textOf(t, 60),
					Warning: rapid.Bool().Draw(t, "warning"), Blank: rapid.Bool().Draw(t, "blank"),
				})
			}
			return all
		}
		n := 0
		var tables []mark.Table
		var headings []string
		for k := range rapid.IntRange(1, 4).Draw(t, "sections") {
			section := mark.Section{Title: fmt.Sprintf("Section %d", k+1)}
			headings = append(headings, section.Title)
			for range rapid.IntRange(1, 3).Draw(t, "tables") {
				table := mark.Table{Title: fmt.Sprintf("Table %d", len(tables)+1)}
				columns := rapid.IntRange(1, 3).Draw(t, "columns")
				if count == 1 {
					columns = rapid.IntRange(1, 7).Draw(t, "more columns")
				}
				for i := range rapid.IntRange(0, columns).Draw(t, "heads") {
					table.Heads = append(table.Heads, []string{"", "flat", "before it is sewn", "from the start of the seam"}[(i+k)%4])
				}
				for range rapid.IntRange(1, 50).Draw(t, "rows") {
					n++
					row := mark.Row{Cells: []string{fmt.Sprintf("row%d", n)}, Total: rapid.IntRange(0, 5).Draw(t, "total") == 0}
					if count == 1 && (n == 1 || rapid.IntRange(0, 4).Draw(t, "long") == 0) {
						row.Cells[0] += " " + strings.Repeat("W", 60)
					}
					for c := 1; c < columns; c++ {
						number := fmt.Sprintf("%d%d 11/16 in", n, c)
						if rapid.IntRange(0, 6).Draw(t, "empty") == 0 {
							number = ""
						}
						row.Cells = append(row.Cells, number)
					}
					table.Rows = append(table.Rows, row)
				}
				table.Lines = sentences()
				tables = append(tables, table)
				section.Tables = append(section.Tables, table)
			}
			section.Lines = sentences()
			if rapid.Bool().Draw(t, "picture") {
				section.Picture = pictureOf(t)
			}
			r.Sections = append(r.Sections, section)
		}
		pages, onPaper := reported(t, r, rapid.SampledFrom(paper.Names()).Draw(t, "paper"))
		if count > 1 {
			count, _ = columnsOf(onPaper)
		}
		columns := columnsOn(pages, onPaper, count)
		checkTables(t, columns, tables)
		checkNothingLast(t, columns, headings)
		var all strings.Builder
		for _, p := range pages {
			all.WriteString(said(p))
			for _, text := range p.Words() {
				require.NotRegexp(t, brokenMeasure, text)
			}
		}
		for _, section := range r.Sections {
			for _, line := range section.Lines {
				require.True(t, saidIn(all.String(), seen.Squeezed(line.Text)), "%q", line.Text)
			}
		}
	})
}

// A report that says nothing has no pages.
func TestEmptyReports(t *testing.T) {
	for name, r := range map[string]*mark.Report{
		"none":                  nil,
		"nothing":               {},
		"a title alone":         {Title: "Sunday pinafore"},
		"a section of nothing":  {Title: "Sunday pinafore", Sections: []mark.Section{{Title: "Tucks"}}},
		"tables of nothing":     {Sections: []mark.Section{{Title: "Tucks", Tables: []mark.Table{{}, {Title: "Front", Heads: []string{"a", "b"}}}}}},
		"a sentence of nothing": {Sections: []mark.Section{{Lines: []mark.Sentence{{}, {Warning: true}}}}},
	} {
		pages, err := Lay(r, paper.All()[0])
		require.NoError(t, err)
		assert.Empty(t, pages, name)
	}
}

// The pages say all that a report does, and every number in one piece.
func TestPagesSayAll(t *testing.T) {
	for name, r := range map[string]*mark.Report{
		"figures of a dress": sample.DressFigures(), "figures in columns": sample.ColumnFigures(),
		"a picture across": sample.ScrapFigures(), "long figures": sample.LongFigures(),
	} {
		for _, on := range paper.Names() {
			pages, _ := reported(t, r, on)
			var all strings.Builder
			var words []string
			for _, p := range pages {
				all.WriteString(said(p))
				words = append(words, p.Words()...)
			}
			for _, text := range texts(*r) {
				assert.Contains(t, all.String(), seen.Squeezed(text), "%s on %s", name, on)
			}
			for _, section := range r.Sections {
				for _, table := range section.Tables {
					for _, row := range table.Rows {
						for _, number := range row.Cells[min(1, len(row.Cells)):] {
							assert.True(t, number == "" || slices.Contains(words, number), "%s on %s: the number %q stands in one piece", name, on, number)
						}
					}
				}
			}
		}
	}
}
