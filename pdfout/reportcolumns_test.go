package pdfout

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

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
	t.Parallel()
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

// Wherever a report ends, its last page has more than two lines on it.
func TestLastPageIsWorthIt(t *testing.T) {
	t.Parallel()
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

// checkRoom: nothing reaches below the room that a page has.
func checkRoom(t require.TestingT, pages []figurePage, paper Paper) {
	for i, page := range pages {
		for _, b := range page {
			require.GreaterOrEqual(t, b.at.Y-b.height, paper.underHeader().Min.Y-written, "page %d of %v", i+1, paper)
		}
	}
}
