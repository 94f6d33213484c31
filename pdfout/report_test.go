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

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// figurePages are the pages of figures of a PDF.
func (d readDocument) figurePages(s Summary) []readPage { return d.pages[s.Front:inFront(s)] }

// said is all that stands on a page of figures, in its order, without spaces,
// without its header and the signs in the marks of warnings.
func (p readPage) said() string {
	var all []string
	for i, r := range p.texts {
		if i > 1 && !(r.text == flagSign && r.size == flagSignSize) {
			all = append(all, r.text)
		}
	}
	return squeezed(strings.Join(all, ""))
}

// checkFigures: the pages of figures come right after those in front, say what
// they are, and say all that the report does. That nothing on them overlaps or
// leaves what can be printed is checked with all pages.
func checkFigures(t require.TestingT, set Set, d readDocument, s Summary) {
	first := strings.Join(d.pages[0].words(), "\n")
	if set.Report == nil {
		assert.Zero(t, s.Figures)
		assert.NotContains(t, first, figuresHeading)
		return
	}
	assert.Contains(t, first, figuresHeading+": "+pageRange(s.Front+1, inFront(s), "", "")+".")
	assert.Contains(t, squeezed(first), squeezed("Every full-size page has a square"))
	var all strings.Builder
	var words []string
	for i, p := range d.figurePages(s) {
		assert.True(t, strings.HasPrefix(p.texts[0].text, figuresHeading), "page %d is headed %q", s.Front+i+1, p.texts[0].text)
		assert.Equal(t, fmt.Sprintf("page %d of %d", s.Front+i+1, s.Pages), p.texts[1].text)
		all.WriteString(p.said())
		words = append(words, p.words()...)
	}
	for _, text := range textsOfReport(*set.Report) {
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
		if q.painted == "S" && q.stroke == black() && math.Abs(q.width-totalPen().width) < 2*written && len(q.dashes) == 0 {
			all = append(all, q.parts...)
		}
	}
	return all
}

// reported draws a report with a small piece.
func reported(t require.TestingT, r *marking.Report, paper string) ([]readPage, Summary) {
	d, s := drawn(t, withFigures(many(1), r), paper)
	return d.figurePages(s), s
}

// columnsOf takes pages apart into their columns, each as if it were a page, and all
// as if they stood where the first does.
func columnsOf(pages []readPage, s Summary, count int) []readPage {
	room := s.Paper.underHeader()
	width := columnWidth(room.Width(), count)
	var all []readPage
	for _, p := range pages {
		for k := range count {
			left := plane.Point{X: float64(k) * (width + columnsApart)}
			in := func(x float64) bool {
				x -= room.Min.X + left.X
				return x >= -1 && x < width+columnsApart-1
			}
			column := readPage{width: p.width, height: p.height, texts: slices.Clone(p.texts[:2])}
			for _, r := range p.texts[2:] {
				if in(r.at.X) {
					r.at = r.at.Sub(left)
					column.texts = append(column.texts, r)
				}
			}
			for _, q := range p.paths {
				var parts []plane.Path
				for _, part := range q.parts {
					if in(part.Bounds().Min.X) {
						parts = append(parts, shrunk(part, left.Mul(-1)))
					}
				}
				if q.parts = parts; len(parts) > 0 {
					column.paths = append(column.paths, q)
				}
			}
			all = append(all, column)
		}
	}
	return all
}

// checkInColumns: nothing but title and notes, and what stands with a picture, reaches
// from one column into the other.
func checkInColumns(t require.TestingT, pages []readPage, s Summary, over []string) {
	room := s.Paper.underHeader()
	width := columnWidth(room.Width(), 2)
	gap := plane.Box{
		Min: plane.Point{X: room.Min.X + width + 0.1, Y: room.Min.Y},
		Max: plane.Point{X: room.Min.X + width + columnsApart - 0.1, Y: room.Max.Y},
	}
	mayCross := squeezed(strings.Join(over, ""))
	for i, p := range pages {
		for _, r := range p.texts[2:] {
			assert.True(t, !r.box().Meets(gap) || strings.Contains(mayCross, squeezed(r.text)), "page %d: %q", i+1, r.text)
		}
		for _, q := range p.paths {
			for _, part := range q.parts {
				assert.False(t, part.Bounds().Meets(gap), "page %d: a line at %v", i+1, part.Bounds())
			}
		}
	}
}

// wideTable is a table too wide for a column of any paper.
func wideTable() marking.Table {
	return marking.Table{Rows: cells(slices.Concat([]string{"Skirt"}, slices.Repeat([]string{"17 11/16 in"}, 8)))}
}

// checkTables holds tables against the pages, or against their columns: titles, and
// the first words of all cells that are not empty, are all different, so that each is
// found.
func checkTables(t require.TestingT, pages []readPage, tables []marking.Table) {
	texts := placesOfTexts(pages)
	totals := 0
	for _, p := range pages {
		totals += len(p.totalLines())
	}
	numbersOfTotals := 0
	for _, table := range tables {
		ends := map[int]float64{}
		rowsOn := map[int]int{}
		title, firstPage := only(t, pages, table.Title)
		for i, row := range table.Rows {
			words, page := texts.only(t, strings.Fields(row.Cells[0])[0])
			rowsOn[page]++
			assert.InDelta(t, title.at.X, words.at.X, 2*written, "words of %q begin at the left", table.Title)
			if i == 0 {
				assert.Equal(t, firstPage, page, "the title of %q stands with its first row", table.Title)
				assert.Greater(t, title.at.Y, words.at.Y)
			}
			for c, number := range row.Cells {
				if c == 0 || number == "" {
					continue
				}
				r, on := texts.only(t, strings.Fields(number)[0])
				assert.Equal(t, number, r.text)
				assert.Equal(t, page, on, "row %q is broken", row.Cells[0])
				assert.InDelta(t, words.at.Y, r.at.Y, 2*written, "row %q in one line", row.Cells[0])
				if _, known := ends[c]; !known {
					ends[c] = r.rightEnd()
				}
				assert.InDelta(t, ends[c], r.rightEnd(), 4*written, "column %d of %q has one right end", c, table.Title)
				if row.Total {
					numbersOfTotals++
					over := slices.IndexFunc(pages[page].totalLines(), func(p plane.Path) bool {
						above := p[0].Y - r.box().Max.Y
						return math.Abs(p[1].X-r.rightEnd()) < 4*written && p[0].X <= r.at.X+2*written && p[0].Y == p[1].Y && above > 0 && above < 2
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
			assert.Contains(t, pages[page].words(), table.Title+" (continued)")
			for _, head := range table.Heads {
				assert.Contains(t, pages[page].said(), squeezed(head), "heads of %q come again", table.Title)
			}
		}
	}
	assert.Equal(t, numbersOfTotals, totals, "lines over totals, and over nothing else")
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
			r := &marking.Report{Notes: []string{"All of it is flat."}}
			n := 0
			var tables []marking.Table
			var headings []string
			for k := range c.tables {
				if k == 0 || c.sectionOfTwo && k%2 == 0 {
					heading := fmt.Sprint("Section ", k)
					headings = append(headings, heading)
					r.Sections = append(r.Sections, marking.Section{Title: heading})
				}
				table := marking.Table{Title: fmt.Sprint("Table ", k), Heads: []string{"", "flat", "sewn"}}
				for i := range c.rows {
					n++
					table.Rows = append(table.Rows, marking.Row{
						Cells: []string{fmt.Sprintf("row%d.%d", k, i), fmt.Sprintf("%d1 1/2 in", n), fmt.Sprintf("%d2 11/16 in", n)},
						Total: i == c.rows-1 && i > 0,
					})
				}
				for range c.sentences {
					table.Lines = append(table.Lines, marking.Sentence{Text: "Look at it before you cut.", Warning: true})
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
				wide.Sections = append(slices.Clone(r.Sections), marking.Section{Tables: []marking.Table{wideTable()}})
				pages, _ = reported(t, &wide, paper)
				assert.GreaterOrEqual(t, len(pages), c.leastPageCount)
				checkTables(t, pages, tables)
				checkNothingLast(t, pages, headings)
			}
		})
	}
}

// A report stands in two columns where all its tables fit one and say there what they
// say on a whole page, else in one.
func TestColumnsOfAReport(t *testing.T) {
	edges := columnFigures().Sections[0].Tables[0]
	section := func(title string, tables ...marking.Table) *marking.Report {
		return &marking.Report{Title: "Linden pinafore", Sections: []marking.Section{{Title: title, Tables: tables}}}
	}
	wordy := func(words string) marking.Table {
		return marking.Table{Rows: cells([]string{words, "3 in", "17 11/16 in"})}
	}
	titled := func(title string) marking.Table { return marking.Table{Title: title, Rows: edges.Rows} }
	noted := section("Edges", edges)
	noted.Notes = slices.Repeat([]string{"All of it is flat."}, 40)
	for _, c := range []struct {
		name   string
		report *marking.Report
		count  int
	}{
		{"narrow tables", section("Edges", edges, edges), 2},
		{"no table", &marking.Report{Sections: []marking.Section{{Title: "Cautions", Lines: []marking.Sentence{{Text: "Count the pins."}}}}}, 2},
		{"one wide table among narrow ones", section("Edges", edges, wideTable(), edges), 1},
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
			long := marking.Section{Lines: slices.Repeat([]marking.Sentence{{Text: "Measure twice."}}, 100)}
			r := *c.report
			r.Sections = append(slices.Clone(r.Sections), long)
			pages, err := layReport(withFigures(Set{}, &r), papers()[0])
			require.NoError(t, err)
			lefts := map[float64]bool{}
			for _, page := range pages {
				for _, b := range page {
					lefts[b.at.X] = true
				}
			}
			assert.Len(t, lefts, c.count)
		})
	}
}

// Title and notes stand over both columns of the first page, and the left one is
// filled before the right.
func TestColumnsAreFilled(t *testing.T) {
	for _, paper := range Papers() {
		r := columnFigures()
		pages, s := reported(t, r, paper)
		room := s.Paper.underHeader()
		right := room.Min.X + columnWidth(room.Width(), 2) + columnsApart
		checkInColumns(t, pages, s, append(slices.Clone(r.Notes), r.Title))
		title, on := only(t, pages, r.Title)
		assert.Zero(t, on)
		for _, text := range pages[0].texts[2:] {
			assert.GreaterOrEqual(t, title.at.Y, text.at.Y, "%q stands under the title", text.text)
		}
		first, on := only(t, pages, "Edges")
		assert.Zero(t, on)
		assert.InDelta(t, room.Min.X, first.at.X, 2*written)
		// In the order of the report, down one column and then down the next.
		place := func(text string) float64 {
			r, on := only(t, pages, text)
			column := 0.0
			if r.at.X >= right-written {
				column = 1
			}
			return (2*float64(on)+column)*1e4 - r.at.Y
		}
		at := place("Edges")
		for _, table := range r.Sections[0].Tables {
			next := place(strings.TrimSpace(table.Title))
			assert.Greater(t, next, at, "%q on %s", table.Title, paper)
			at = next
		}
		for _, text := range []string{"Seams", "Cloth", "Settings to keep"} {
			next := place(text)
			assert.Greater(t, next, at, "%q on %s", text, paper)
			at = next
		}
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
			paper := papers()[0]
			s := setter{page: paper.underHeader(), paper: paper}.halved()
			set, ok := s.inHalf(marking.Table{Rows: cells(row)})
			require.True(t, ok)
			assert.Equal(t, c.size, set.size)
			assert.LessOrEqual(t, set.ends[len(set.ends)-1], s.width+written)
		})
	}
}

// A table that fits a column is broken only where more than about a third of the
// column would stay empty without it; a table longer than a column always is.
func TestTablesAreKeptWhole(t *testing.T) {
	const third = 0.36
	broken, moved := 0, 0
	for n := range 50 {
		before := marking.Section{Title: "Before it"}
		for range n {
			before.Lines = append(before.Lines, marking.Sentence{Text: "Measure it."})
		}
		table := marking.Table{Title: "Seam", Lines: []marking.Sentence{{Text: "They match."}}}
		for i := range 24 {
			table.Rows = append(table.Rows, cells([]string{fmt.Sprint("mark", i), fmt.Sprint(i, " in")})...)
		}
		pages, s := reported(t, &marking.Report{Sections: []marking.Section{before, {Title: "Seams", Tables: []marking.Table{table}}}}, "letter")
		columns := columnsOf(pages, s, 2)
		room := s.Paper.underHeader()
		heading, first := only(t, columns, "Seams")
		_, last := only(t, columns, "They match.")
		if first == last {
			if heading.at.Y > room.Max.Y-10 && first > 0 {
				moved++
				low := room.Max.Y
				for _, text := range columns[first-1].texts {
					low = math.Min(low, text.at.Y)
				}
				assert.LessOrEqual(t, (low-room.Min.Y)/room.Height(), third+0.02, "n = %d: so much stays empty", n)
			}
			continue
		}
		broken++
		assert.Greater(t, (heading.at.Y-room.Min.Y)/room.Height(), third-0.05, "n = %d: it is broken though little would stay empty", n)
	}
	assert.Positive(t, broken)
	assert.Positive(t, moved)
}

// Wherever a report ends, its last page has more than two lines on it.
func TestLastPageIsWorthIt(t *testing.T) {
	tight := 0
	for n := 80; n < 150; n++ {
		section := marking.Section{Title: "Before you cut"}
		for i := range n {
			section.Lines = append(section.Lines, marking.Sentence{Text: fmt.Sprintf("Measure %d.", i)})
		}
		r := &marking.Report{Sections: []marking.Section{section}}
		pages, s := reported(t, r, "letter")
		said := len(pages[len(pages)-1].texts) - 2
		assert.Greater(t, said, 2, "n = %d: lines on the last page", n)
		bands, err := setter{page: s.Paper.underHeader(), paper: s.Paper}.halved().report(*r)
		require.NoError(t, err)
		if len((columnPages{s.Paper.underHeader(), 2, 1}).pages(nil, bands)) > len(pages) {
			tight++
		}
	}
	assert.Positive(t, tight, "narrower gaps saved a page")
}

// A table without a title that goes on says the title of its section.
func TestTableWithoutTitleGoesOn(t *testing.T) {
	var rows []marking.Row
	for i := range 100 {
		rows = append(rows, cells([]string{fmt.Sprint("tuck ", i), "1/8 in"})...)
	}
	pages, s := reported(t, &marking.Report{Sections: []marking.Section{{Title: "Tucks", Tables: []marking.Table{{Rows: rows}}}}}, "letter")
	require.Len(t, pages, 1)
	columns := columnsOf(pages, s, 2)
	assert.Contains(t, columns[1].words(), "Tucks (continued)")
	assert.NotContains(t, columns[0].words(), "Tucks (continued)")
}

func TestTableFits(t *testing.T) {
	row := func(words, number string, n int) marking.Row {
		r := marking.Row{Cells: []string{words}}
		for i := range n {
			r.Cells = append(r.Cells, strings.Replace(number, "#", fmt.Sprint(i), 1))
		}
		return r
	}
	for _, c := range []struct {
		name        string
		row         marking.Row
		least, most float64 // of the size of its numbers, in points
		words       string  // a text in the first column
	}{
		{"seven columns of measures", row("Front, on the fold", "17 #/16 in", 6), 9, 9, "Front, on the fold"},
		{"long words are set in lines", row("A skirt panel with five growth tucks above a hem that can be let down twice or three times", "17 #/16 in", 6), 9, 9, "A skirt panel with five growth tucks above a hem that"},
		{"long numbers are set smaller", row("A skirt panel with five growth tucks above a hem that can be let down", "less than # 11/16 in", 6), 6, 8.5, "A skirt panel with five growth tucks above a hem"},
		{"words are shortened in the end", row(strings.Repeat("a skirt panel ", 14), "no less than 10 1#/16 in", 6), 6, 6, "skirt panel a skirt …"},
	} {
		t.Run(c.name, func(t *testing.T) {
			pages, _ := reported(t, &marking.Report{Sections: []marking.Section{{Tables: []marking.Table{{Rows: []marking.Row{c.row}}}}}}, "letter")
			number, _ := only(t, pages, c.row.Cells[1])
			assert.GreaterOrEqual(t, number.size, c.least)
			assert.LessOrEqual(t, number.size, c.most)
			only(t, pages, c.words)
		})
	}
	wide := withFigures(many(1), &marking.Report{Sections: []marking.Section{{Tables: []marking.Table{{Rows: []marking.Row{row("a", "very much less than # 11/16 in of cloth", 6)}}}}}})
	var out bytes.Buffer
	_, err := Draw(&out, wide, papers()[0])
	require.EqualError(t, err, "the figures have a table whose numbers alone are wider than letter paper\nhint: choose larger paper")
	assert.IsType(t, &Refusal{}, err)
	assert.Zero(t, out.Len(), "nothing is written")
}

func TestSentences(t *testing.T) {
	long := "it takes up " + strings.Repeat("more and more ", 8)
	said := marking.Section{Lines: []marking.Sentence{
		{Text: "Plain."},
		{Text: "The seam catches tuck 6.", Warning: true},
		{Text: "measured by:", Blank: true},
		{Blank: true},
		{Text: long, Blank: true},
		{Text: "not sewn yet:", Blank: true, Warning: true},
		{},
	}}
	half := columnWidth(papers()[0].underHeader().Width(), 2)
	t.Run("in a column", func(t *testing.T) { checkSentences(t, said, long, half) })
	said.Tables = []marking.Table{wideTable()}
	t.Run("across the page", func(t *testing.T) { checkSentences(t, said, long, mostMeasure) })
}

// checkSentences holds the sentences of TestSentences against what they are to look
// like in some measure.
func checkSentences(t *testing.T, section marking.Section, long string, measure float64) {
	pages, _ := reported(t, &marking.Report{Sections: []marking.Section{section}}, "letter")
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
	assert.InDelta(t, behind.rightEnd()+ruleAway, lines[0][0].X, 4*written, "behind its words")
	assert.InDelta(t, behind.at.Y, lines[0][0].Y, 1)
	assert.InDelta(t, plain.at.X, lines[1][0].X, 2*written, "a whole line where nothing is said")
	assert.InDelta(t, measure, lines[1].Length(), 4*written)
	assert.Contains(t, page.said(), squeezed(long))
	for i, r := range lines {
		assert.GreaterOrEqual(t, r.Length(), leastToWrite-4*written)
		// Handwriting of 6 mm stands on the line and meets nothing.
		hand := plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: 6})}.Grown(-2 * written)
		for _, text := range page.texts {
			assert.False(t, hand.Meets(text.box()), "%q stands where is written: line %d", text.text, i)
		}
		for k, o := range lines {
			assert.True(t, k == i || !upright(hand).meetsSegment(o[0], o[1]), "lines %d and %d", i, k)
		}
	}
}

// Texts as long as a file may have them, of long words and of short ones, in every
// part of a report.
func TestLongTextsInFigures(t *testing.T) {
	for name, text := range map[string]string{
		"words":  strings.TrimSpace(strings.Repeat("tucks of 17 11/16 in ", 10)),
		"a word": strings.Repeat("W", 200),
	} {
		t.Run(name, func(t *testing.T) {
			table := marking.Table{Title: text, Heads: []string{text, text, text}, Lines: []marking.Sentence{{Text: text, Warning: true, Blank: true}}}
			for range 9 {
				table.Rows = append(table.Rows, marking.Row{Cells: []string{text, "17 11/16 in", "3 cm"}, Total: true})
			}
			p := marking.Picture{Width: 1000, Height: 5000, Caption: text, Bands: []marking.Band{{From: 0, To: 1000, Width: 500, Text: text}, {From: 1000, To: 5000, Width: 1000, Text: text}}}
			p.Shapes = []marking.Shape{oblong(text, 0, 0, 1000, 900), oblong(text+" 2", 0, 1100, 40, 40)}
			section := marking.Section{Title: text, Tables: []marking.Table{table, table}, Picture: &p}
			for _, paper := range Papers() {
				set := withFigures(many(1), &marking.Report{Title: text, Notes: []string{text}, Sections: []marking.Section{section, section}})
				d, s := drawn(t, set, paper)
				checkMargins(t, set, d, s)
				checkFront(t, set, d, s)
				for _, page := range d.figurePages(s) {
					for _, words := range page.words() {
						assert.NotRegexp(t, brokenMeasure, strings.TrimSuffix(words, " …"), paper)
					}
				}
			}
			// A page as low as a page may be has room for what stays together.
			low := Paper{Title: "low", Width: leastWidth, Height: leastHeight}
			pages, err := layReport(withFigures(Set{}, &marking.Report{Sections: []marking.Section{section, {Title: text, Picture: &p}}}), low)
			require.NoError(t, err)
			checkRoom(t, pages, low)
		})
	}
}

// checkRoom: nothing reaches below the room that a page has.
func checkRoom(t require.TestingT, pages []figurePage, paper Paper) {
	for i, page := range pages {
		for _, b := range page {
			require.GreaterOrEqual(t, b.at.Y-b.height, paper.underHeader().Min.Y-written, "page %d of %v", i+1, paper)
		}
	}
}

// A report that says nothing has no pages.
func TestEmptyReports(t *testing.T) {
	for name, r := range map[string]*marking.Report{
		"none":                  nil,
		"nothing":               {},
		"a title alone":         {Title: "Linden pinafore"},
		"a section of nothing":  {Title: "Linden pinafore", Sections: []marking.Section{{Title: "Tucks"}}},
		"tables of nothing":     {Sections: []marking.Section{{Title: "Tucks", Tables: []marking.Table{{}, {Title: "Front", Heads: []string{"a", "b"}}}}}},
		"a sentence of nothing": {Sections: []marking.Section{{Lines: []marking.Sentence{{}, {Warning: true}}}}},
	} {
		d, s := drawn(t, withFigures(many(1), r), "a4")
		assert.Zero(t, s.Figures, name)
		assert.Len(t, d.pages, 2, name)
		assert.NotContains(t, strings.Join(d.pages[0].words(), "\n"), figuresHeading, name)
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
		r := longFigures()
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
	narrow := (Paper{Width: leastWidth, Height: leastHeight}).front().Width()
	assert.Less(t, regular().width(figuresHeading+": pages 1999 to 2000.", proseSize), (narrow-gutter)/2)
}

func TestFiguresCountAsPages(t *testing.T) {
	section := marking.Section{Title: "Tucks", Tables: []marking.Table{wideTable()}}
	for i := range 120_000 {
		section.Lines = append(section.Lines, marking.Sentence{Text: fmt.Sprint("Look at tuck ", i)})
	}
	var out bytes.Buffer
	_, err := Draw(&out, withFigures(many(1), &marking.Report{Sections: []marking.Section{section}}), papers()[0])
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
	rapid.Check(t, func(t *rapid.T) {
		count := rapid.SampledFrom([]int{1, 2}).Draw(t, "columns of a page")
		r := &marking.Report{Title: textOf(t, 12)}
		for range rapid.IntRange(0, 3).Draw(t, "notes") {
			r.Notes = append(r.Notes, textOf(t, 30))
		}
		sentences := func() []marking.Sentence {
			var all []marking.Sentence
			for range rapid.IntRange(0, 4).Draw(t, "sentences") {
				all = append(all, marking.Sentence{
					Text:    textOf(t, 60),
					Warning: rapid.Bool().Draw(t, "warning"), Blank: rapid.Bool().Draw(t, "blank"),
				})
			}
			return all
		}
		n := 0
		var tables []marking.Table
		var headings []string
		for k := range rapid.IntRange(1, 4).Draw(t, "sections") {
			section := marking.Section{Title: fmt.Sprintf("Section %d", k+1)}
			headings = append(headings, section.Title)
			for range rapid.IntRange(1, 3).Draw(t, "tables") {
				table := marking.Table{Title: fmt.Sprintf("Table %d", len(tables)+1)}
				columns := rapid.IntRange(1, 3).Draw(t, "columns")
				if count == 1 {
					columns = rapid.IntRange(1, 7).Draw(t, "more columns")
				}
				for i := range rapid.IntRange(0, columns).Draw(t, "heads") {
					table.Heads = append(table.Heads, []string{"", "flat", "before it is sewn", "from the start of the seam"}[(i+k)%4])
				}
				for range rapid.IntRange(1, 50).Draw(t, "rows") {
					n++
					row := marking.Row{Cells: []string{fmt.Sprintf("row%d", n)}, Total: rapid.IntRange(0, 5).Draw(t, "total") == 0}
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
		d, s := drawn(t, set, rapid.SampledFrom(Papers()).Draw(t, "paper"))
		checkMargins(t, set, d, s)
		checkFront(t, set, d, s)
		laid, err := layReport(set, s.Paper)
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
