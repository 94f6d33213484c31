package report

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// columnsOn takes pages apart into their columns, each as if it were a page, and all
// as if they stood where the first does.
func columnsOn(pages []seen.Page, onPaper paper.Paper, count int) []seen.Page {
	room := onPaper.UnderHeader()
	width := (room.Width()+apart)/float64(count) - apart
	var all []seen.Page
	for _, p := range pages {
		for k := range count {
			left := plane.Point{X: float64(k) * (width + apart)}
			in := func(x float64) bool {
				x -= room.Min.X + left.X
				return x >= -1 && x < width+apart-1
			}
			column := seen.Page{Width: p.Width, Height: p.Height}
			for _, r := range p.Texts {
				if in(r.At.X) {
					r.At = r.At.Sub(left)
					column.Texts = append(column.Texts, r)
				}
			}
			for _, q := range p.Paths {
				var parts []plane.Path
				for _, part := range q.Parts {
					if in(part.Bounds().Min.X) {
						parts = append(parts, part.Moved(left.Mul(-1)))
					}
				}
				if q.Parts = parts; len(parts) > 0 {
					column.Paths = append(column.Paths, q)
				}
			}
			all = append(all, column)
		}
	}
	return all
}

// checkInColumns: nothing but title and notes, and what stands with a picture, reaches
// from one column into the other.
func checkInColumns(t require.TestingT, pages []seen.Page, onPaper paper.Paper, over []string) {
	room := onPaper.UnderHeader()
	width := half(onPaper)
	gap := plane.Box{
		Min: plane.Point{X: room.Min.X + width + 0.1, Y: room.Min.Y},
		Max: plane.Point{X: room.Min.X + width + apart - 0.1, Y: room.Max.Y},
	}
	mayCross := seen.Squeezed(strings.Join(over, ""))
	for i, p := range pages {
		for _, r := range p.Texts {
			assert.True(t, !r.Box().Meets(gap) || strings.Contains(mayCross, seen.Squeezed(r.Text)), "page %d: %q", i+1, r.Text)
		}
		for _, q := range p.Paths {
			for _, part := range q.Parts {
				assert.False(t, part.Bounds().Meets(gap), "page %d: a line at %v", i+1, part.Bounds())
			}
		}
	}
}

// Title and notes stand over both columns of the first page, and the left one is
// filled before the right.
func TestColumnsAreFilled(t *testing.T) {
	t.Parallel()
	for _, p := range paper.Names() {
		r := sample.ColumnFigures()
		pages, onPaper := reported(t, r, p)
		room := onPaper.UnderHeader()
		right := room.Min.X + half(onPaper) + apart
		checkInColumns(t, pages, onPaper, append(slices.Clone(r.Notes), r.Title))
		title, on := only(t, pages, r.Title)
		assert.Zero(t, on)
		for _, text := range pages[0].Texts {
			assert.GreaterOrEqual(t, title.At.Y, text.At.Y, "%q stands under the title", text.Text)
		}
		first, on := only(t, pages, "Edges")
		assert.Zero(t, on)
		assert.InDelta(t, room.Min.X, first.At.X, 2*seen.Written)
		// In the order of the report, down one column and then down the next.
		place := func(text string) float64 {
			r, on := only(t, pages, text)
			column := 0.0
			if r.At.X >= right-seen.Written {
				column = 1
			}
			return (2*float64(on)+column)*1e4 - r.At.Y
		}
		at := place("Edges")
		for _, table := range r.Sections[0].Tables {
			next := place(strings.TrimSpace(table.Title))
			assert.Greater(t, next, at, "%q on %s", table.Title, p)
			at = next
		}
		for _, text := range []string{"Seams", "Cloth", "Settings to keep"} {
			next := place(text)
			assert.Greater(t, next, at, "%q on %s", text, p)
			at = next
		}
	}
}

// Wherever a report ends, its last page has more than two lines on it.
func TestLastPageIsWorthIt(t *testing.T) {
	t.Parallel()
	tight := 0
	for n := 80; n < 150; n++ {
		section := mark.Section{Title: "Before you cut"}
		for i := range n {
			section.Lines = append(section.Lines, mark.Sentence{Text: fmt.Sprintf("Measure %d.", i)})
		}
		r := &mark.Report{Sections: []mark.Section{section}}
		pages, onPaper := reported(t, r, "letter")
		said := len(pages[len(pages)-1].Texts)
		assert.Greater(t, said, 2, "n = %d: lines on the last page", n)
		bands, err := inColumns(onPaper).sections(*r)
		require.NoError(t, err)
		if len((columnPages{onPaper.UnderHeader(), 2, 1}).pages(nil, bands)) > len(pages) {
			tight++
		}
	}
	assert.Positive(t, tight, "narrower gaps saved a page")
}

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
			pages, err := Lay(&r, paper.All()[0])
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

// In a column no table is set smaller than 8 points, and none smaller than it need be.
func TestSizesInColumns(t *testing.T) {
	for _, c := range []struct {
		name    string
		numbers []string
		size    float64
	}{
		{"small", []string{"3 in", "4 in"}, 9},
		{"three long numbers", slices.Repeat([]string{"17 11/16 in"}, 3), 9},
		{"a little too wide", []string{"17 11/16 in", "17 11/16 in", "hem 2, turn in 1/4"}, 8.5},
		{"as wide as may be", []string{"17 11/16 in", "17 11/16 in", "hem 2 1/2, turn 1/4 in"}, 8},
	} {
		t.Run(c.name, func(t *testing.T) {
			row := append([]string{"Front, centre front"}, c.numbers...)
			p := paper.All()[0]
			s := inColumns(p)
			set, ok := s.inHalf(mark.Table{Rows: sample.Cells(row)})
			require.True(t, ok)
			assert.Equal(t, c.size, set.size)
			assert.LessOrEqual(t, set.ends[len(set.ends)-1], s.width+seen.Written)
		})
	}
}
