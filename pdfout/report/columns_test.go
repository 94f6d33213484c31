package report

import (
	"fmt"
	"math"
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
	count, width := columnsOf(onPaper)
	mayCross := seen.Squeezed(strings.Join(over, ""))
	for k := range count - 1 {
		left := room.Min.X + float64(k)*(width+apart) + width
		gap := plane.Box{
			Min: plane.Point{X: left + 0.1, Y: room.Min.Y},
			Max: plane.Point{X: left + apart - 0.1, Y: room.Max.Y},
		}
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
}

// Title and notes stand over both columns of the first page, and the left one is
// filled before the right.
func TestColumnsAreFilled(t *testing.T) {
	t.Parallel()
	for _, p := range paper.Names() {
		r := sample.ColumnFigures()
		pages, onPaper := reported(t, r, p)
		room := onPaper.UnderHeader()
		_, width := columnsOf(onPaper)
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
			column := math.Floor((r.At.X - room.Min.X + seen.Written) / (width + apart))
			return (10*float64(on)+column)*1e4 - r.At.Y
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

// Wherever a report ends, its last page is a quarter full at least, narrower gaps save a
// page where they can, and the columns of the last page end at about one height.
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
		room := onPaper.UnderHeader()
		lows := []float64{}
		for _, column := range columnsOn(pages[len(pages)-1:], onPaper, 2) {
			low := room.Max.Y
			for _, text := range column.Texts {
				low = min(low, text.Box().Min.Y)
			}
			lows = append(lows, low)
		}
		if len(pages) > 1 {
			filled := (2*room.Max.Y - lows[0] - lows[1]) / (2 * room.Height())
			assert.GreaterOrEqual(t, filled, 0.25, "n = %d: so much of the last page is filled", n)
		}
		assert.InDelta(t, lows[0], lows[1], 15, "n = %d: the feet of the columns", n)
		bands, err := inColumns(onPaper, 2).sections(*r)
		require.NoError(t, err)
		if len((columnPages{onPaper.UnderHeader(), 2, 1}).pages(nil, bands)) > len(pages) {
			tight++
		}
	}
	assert.Positive(t, tight, "narrower gaps saved a page")
}

// A report stands in several columns where all its tables fit one and say there what they
// say on a whole page, else in one.
func TestColumnsOfAReport(t *testing.T) {
	edges := sample.ColumnFigures().Sections[0].Tables[0]
	section := func(title string, tables ...mark.Table) *mark.Report {
		return &mark.Report{Title: "Sunday pinafore", Sections: []mark.Section{{Title: title, Tables: tables}}}
	}
	wordy := func(words string) mark.Table {
		return mark.Table{Rows: sample.Cells([]string{words, "3", "17 11/16"})}
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
		{"words in three lines", section("Edges", wordy("A skirt panel with growth tucks above a hem that can be let down, in summer")), 2},
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

// The numbers of all tables of a report end at stops as far apart as others, and the first
// of them stand under each other where nothing asks for more room.
func TestNumbersStandOnOneGrid(t *testing.T) {
	t.Parallel()
	for name, r := range map[string]*mark.Report{"figures in columns": sample.ColumnFigures(), "figures of a dress": sample.DressFigures()} {
		for _, on := range paper.Names() {
			pages, onPaper := reported(t, r, on)
			count, width := columnsOf(onPaper)
			if name == "figures of a dress" {
				count, width = 1, onPaper.UnderHeader().Width()
			}
			step := width / math.Round(width/14.5) / 2
			numbers := map[string]bool{}
			for _, section := range r.Sections {
				for _, table := range section.Tables {
					for _, row := range table.Rows {
						for _, number := range row.Cells[1:] {
							numbers[number] = number != ""
						}
					}
				}
			}
			for _, column := range columnsOn(pages, onPaper, count) {
				for _, text := range column.Texts {
					if numbers[text.Text] && !text.Bold {
						at := (rightEnd(text) - onPaper.UnderHeader().Min.X) / step
						assert.InDelta(t, math.Round(at), at, 0.01, "%s on %s: %q ends between two stops", name, on, text.Text)
					}
				}
			}
		}
	}
}

// Nothing of a report is smaller than 9 points.
func TestNothingIsSmall(t *testing.T) {
	t.Parallel()
	for name, r := range map[string]*mark.Report{
		"figures of a dress": sample.DressFigures(), "figures in columns": sample.ColumnFigures(),
		"a picture across": sample.ScrapFigures(), "long figures": sample.LongFigures(),
	} {
		for _, on := range paper.Names() {
			pages, _ := reported(t, r, on)
			for _, p := range pages {
				for _, text := range p.Texts {
					assert.GreaterOrEqual(t, text.Size, 9.0, "%s on %s: %q", name, on, text.Text)
				}
			}
		}
	}
}
