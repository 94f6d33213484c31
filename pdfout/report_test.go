package pdfout

import (
	"bytes"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// figurePages are the pages of figures of a PDF.
func (d readDocument) figurePages(s Summary) []readPage { return d.pages[s.Front:inFront(s)] }

// said is all that stands on a page of figures, in its order, without spaces,
// without its header and the signs in the marks of warnings.
func (p readPage) said() string {
	var all []string
	for i, r := range p.texts {
		if i > 1 && !(r.text == report.FlagSign && r.size == report.FlagSignSize) {
			all = append(all, r.text)
		}
	}
	return squeezed(strings.Join(all, ""))
}

// checkFigures: the pages of figures come right after those in front, say what
// they are, and say all that the report does. That nothing on them overlaps or
// leaves what can be printed is checked with all pages.
func checkFigures(t require.TestingT, set arrange.Set, d readDocument, s Summary) {
	first := strings.Join(d.pages[0].words(), "\n")
	if set.Report == nil {
		assert.Zero(t, s.Figures)
		assert.NotContains(t, first, report.Heading)
		return
	}
	assert.Contains(t, first, report.Heading+": "+text.PageRange(s.Front+1, inFront(s), "", "")+".")
	assert.Contains(t, squeezed(first), squeezed("Every full-size page has a square"))
	var all strings.Builder
	var words []string
	for i, p := range d.figurePages(s) {
		assert.True(t, strings.HasPrefix(p.texts[0].text, report.Heading), "page %d is headed %q", s.Front+i+1, p.texts[0].text)
		assert.Equal(t, fmt.Sprintf("page %d of %d", s.Front+i+1, s.Pages), p.texts[1].text)
		all.WriteString(p.said())
		words = append(words, p.words()...)
	}
	for _, text := range report.Texts(*set.Report) {
		assert.Contains(t, all.String(), squeezed(text), "a text of the report")
	}
	for _, section := range set.Report.Sections {
		for _, table := range section.Tables {
			for _, row := range table.Rows {
				for _, number := range row.Cells[min(1, len(row.Cells)):] {
					assert.True(t, number == "" || slices.Contains(words, number), "the number %q stands in one piece", number)
				}
			}
		}
	}
}

// rightEnd is where a text that reads across ends.
func (r readText) rightEnd() float64 { return r.box().Max.X }

// only returns the one text of some pages that has these words, and its page.
func only(t require.TestingT, pages []readPage, text string) (readText, int) {
	var found []readText
	at := -1
	for i, p := range pages {
		for _, r := range p.texts {
			if r.text == text {
				found, at = append(found, r), i
			}
		}
	}
	require.Len(t, found, 1, "%q stands in one place", text)
	return found[0], at
}

// placedTexts are the texts of some pages by their first word, for tables in
// which that is enough to know one.
type placedTexts map[string][]placedText

type placedText struct {
	readText
	page int
}

func placesOfTexts(pages []readPage) placedTexts {
	all := placedTexts{}
	for i, p := range pages {
		for _, r := range p.texts {
			first, _, _ := strings.Cut(r.text, " ")
			all[first] = append(all[first], placedText{r, i})
		}
	}
	return all
}

// only is the one text that begins with a word.
func (p placedTexts) only(t require.TestingT, word string) (readText, int) {
	require.Len(t, p[word], 1, "%q stands in one place", word)
	return p[word][0].readText, p[word][0].page
}

// totalLines returns the lines over totals of a page.
func (p readPage) totalLines() []plane.Path {
	var all []plane.Path
	for _, q := range p.paths {
		if q.painted == "S" && q.stroke == ink.Black() && math.Abs(q.width-report.TotalPen().Width) < 2*written && len(q.dashes) == 0 {
			all = append(all, q.parts...)
		}
	}
	return all
}

// reported draws a report with a small piece.
func reported(t require.TestingT, r *mark.Report, paper string) ([]readPage, Summary) {
	d, s := drawn(t, withFigures(many(1), r), paper)
	return d.figurePages(s), s
}

// checkNothingLast: nothing that heads something is the last on its page.
func checkNothingLast(t require.TestingT, pages []readPage, headings []string) {
	for _, heading := range headings {
		r, page := only(t, pages, heading)
		under := slices.ContainsFunc(pages[page].texts, func(o readText) bool { return o.at.Y < r.at.Y-1 })
		assert.True(t, under || len(pages[page].paths) > 0, "%q stands alone at the foot of a page", heading)
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
			for _, paper := range []string{"letter", "a4"} {
				pages, s := reported(t, r, paper)
				assert.GreaterOrEqual(t, 2*len(pages), c.leastPageCount)
				checkInColumns(t, pages, s, r.Notes)
				columns := columnsOf(pages, s, 2)
				checkTables(t, columns, tables)
				checkNothingLast(t, columns, headings)

				wide := *r
				wide.Sections = append(slices.Clone(r.Sections), mark.Section{Tables: []mark.Table{sample.WideTable()}})
				pages, _ = reported(t, &wide, paper)
				assert.GreaterOrEqual(t, len(pages), c.leastPageCount)
				checkTables(t, pages, tables)
				checkNothingLast(t, pages, headings)
			}
		})
	}
}

func TestSentences(t *testing.T) {
	long := "it takes up " + strings.Repeat("more and more ", 8)
	said := mark.Section{Lines: []mark.Sentence{
		{Text: "Plain."},
		{Text: "The seam catches tuck 6.", Warning: true},
		{Text: "measured by:", Blank: true},
		{Blank: true},
		{Text: long, Blank: true},
		{Text: "not sewn yet:", Blank: true, Warning: true},
		{},
	}}
	half := report.ColumnWidth(paper.All()[0].UnderHeader().Width(), 2)
	t.Run("in a column", func(t *testing.T) { checkSentences(t, said, long, half) })
	said.Tables = []mark.Table{sample.WideTable()}
	t.Run("across the page", func(t *testing.T) { checkSentences(t, said, long, report.MostMeasure) })
}

// checkSentences holds the sentences of TestSentences against what they are to look
// like in some measure.
func checkSentences(t *testing.T, section mark.Section, long string, measure float64) {
	pages, _ := reported(t, &mark.Report{Sections: []mark.Section{section}}, "letter")
	require.Len(t, pages, 1)
	page := pages[0]

	plain, _ := only(t, pages, "Plain.")
	assert.False(t, plain.bold())
	var flags []plane.Path
	for _, q := range page.paths {
		if q.painted == "f" {
			flags = append(flags, q.parts...)
		}
	}
	require.Len(t, flags, 2, "marks of warnings")
	for i, text := range []string{"The seam catches tuck 6.", "not sewn yet:"} {
		warning, _ := only(t, pages, text)
		assert.True(t, warning.bold(), text)
		b := flags[i].Bounds()
		assert.Less(t, b.Max.X, warning.at.X, "the mark stands in front of %q", text)
		assert.InDelta(t, warning.at.Y, b.Min.Y, 1, "the mark stands beside %q", text)
	}

	lines := page.toWriteOn()
	require.Len(t, lines, 4)
	behind, _ := only(t, pages, "measured by:")
	assert.InDelta(t, behind.rightEnd()+text.RuleAway, lines[0][0].X, 4*written, "behind its words")
	assert.InDelta(t, behind.at.Y, lines[0][0].Y, 1)
	assert.InDelta(t, plain.at.X, lines[1][0].X, 2*written, "a whole line where nothing is said")
	assert.InDelta(t, measure, lines[1].Length(), 4*written)
	assert.Contains(t, page.said(), squeezed(long))
	for i, r := range lines {
		assert.GreaterOrEqual(t, r.Length(), text.LeastToWrite-4*written)
		// Handwriting of 6 mm stands on the line and meets nothing.
		hand := plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: 6})}.Grown(-2 * written)
		for _, text := range page.texts {
			assert.False(t, hand.Meets(text.box()), "%q stands where is written: line %d", text.text, i)
		}
		for k, o := range lines {
			assert.True(t, k == i || !text.Upright(hand).MeetsSegment(o[0], o[1]), "lines %d and %d", i, k)
		}
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
				set := withFigures(many(1), &mark.Report{Title: text, Notes: []string{text}, Sections: []mark.Section{section, section}})
				d, s := drawn(t, set, on)
				checkMargins(t, set, d, s)
				checkFront(t, set, d, s)
				for _, page := range d.figurePages(s) {
					for _, words := range page.words() {
						assert.NotRegexp(t, brokenMeasure, strings.TrimSuffix(words, " …"), on)
					}
				}
			}
			// A page as low as a page may be has room for what stays together.
			for _, low := range leastPapers(t) {
				pages, err := report.Lay(withFigures(arrange.Set{}, &mark.Report{Sections: []mark.Section{section, {Title: text, Picture: &p}}}), low)
				require.NoError(t, err)
				checkRoom(t, pages, low)
			}
		})
	}
}

// A report that says nothing has no pages.
func TestEmptyReports(t *testing.T) {
	for name, r := range map[string]*mark.Report{
		"none":                  nil,
		"nothing":               {},
		"a title alone":         {Title: "Linden pinafore"},
		"a section of nothing":  {Title: "Linden pinafore", Sections: []mark.Section{{Title: "Tucks"}}},
		"tables of nothing":     {Sections: []mark.Section{{Title: "Tucks", Tables: []mark.Table{{}, {Title: "Front", Heads: []string{"a", "b"}}}}}},
		"a sentence of nothing": {Sections: []mark.Section{{Lines: []mark.Sentence{{}, {Warning: true}}}}},
	} {
		d, s := drawn(t, withFigures(many(1), r), "a4")
		assert.Zero(t, s.Figures, name)
		assert.Len(t, d.pages, 2, name)
		assert.NotContains(t, strings.Join(d.pages[0].words(), "\n"), report.Heading, name)
	}
}

func TestFiguresAreHeaded(t *testing.T) {
	for _, c := range []struct {
		name, title string
		want        []string
	}{
		{"with a title", "Linden pinafore, size 2", []string{"Figures for the cutting table", "Figures for the cutting table: Linden pinafore, size 2"}},
		{"without", "", []string{"Figures for the cutting table: Small things, size 12 in doll", "Figures for the cutting table: Small things, size 12 in doll"}},
	} {
		r := sample.LongFigures()
		r.Title = c.title
		set := withFigures(many(1), r)
		set.Title = "Small things"
		d, s := drawn(t, set, "letter")
		for i, want := range c.want {
			assert.Equal(t, want, d.figurePages(s)[i].texts[0].text, c.name)
		}
	}
	// The first page names them in one line, whatever their numbers are: the room
	// for its pictures is found before those are known.
	narrow := leastPapers(t)[0].Front().Width()
	assert.Less(t, ink.Plain(proseSize).Width(report.Heading+": pages 1999 to 2000."), (narrow-text.Gutter)/2)
}

// leastPapers are the smallest papers the pages in front fit on, which have 170 x 240 mm
// inside margins of 42 points upright, or 245 x 180 mm lying.
func leastPapers(t require.TestingT) []paper.Paper {
	return []paper.Paper{found(t, "199.634x269.634mm"), found(t, "274.634x209.634mm")}
}

func TestFiguresCountAsPages(t *testing.T) {
	t.Parallel()
	section := mark.Section{Title: "Tucks", Tables: []mark.Table{sample.WideTable()}}
	for i := range 4_000 {
		section.Lines = append(section.Lines, mark.Sentence{Text: fmt.Sprint("Look at tuck ", i)})
	}
	set := arrange.Set{Pieces: []mark.Marking{sample.Sail(97_000)}}
	book, _, err := plan(set, paper.All()[0])
	require.NoError(t, err)
	require.InDelta(t, 1_980, book.pages, 19, "without figures it is nearly as much as can be drawn")
	var out bytes.Buffer
	_, err = Draw(&out, withFigures(set, &mark.Report{Sections: []mark.Section{section}}), paper.All()[0])
	require.ErrorContains(t, err, "the pieces and the figures need 2,")
	require.ErrorContains(t, err, " pages of letter paper; 2,000 is the most\nhint: see whether")
	assert.Zero(t, out.Len())
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
		set := withFigures(many(1), r)
		d, s := drawn(t, set, rapid.SampledFrom(paper.Names()).Draw(t, "paper"))
		checkMargins(t, set, d, s)
		checkFront(t, set, d, s)
		laid, err := report.Lay(set, s.Paper)
		require.NoError(t, err)
		checkRoom(t, laid, s.Paper)
		pages := d.figurePages(s)
		columns := columnsOf(pages, s, count)
		checkTables(t, columns, tables)
		checkNothingLast(t, columns, headings)
		var all strings.Builder
		for _, p := range pages {
			all.WriteString(p.said())
			for _, text := range p.words() {
				require.NotRegexp(t, brokenMeasure, text)
			}
		}
		for _, section := range r.Sections {
			for _, line := range section.Lines {
				require.True(t, saidIn(all.String(), squeezed(line.Text)), "%q", line.Text)
			}
		}
	})
}
