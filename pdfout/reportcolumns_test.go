package pdfout

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
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/sample"
)

// columnsOf takes pages apart into their columns, each as if it were a page, and all
// as if they stood where the first does.
func columnsOf(pages []readPage, s Summary, count int) []readPage {
	room := s.Paper.UnderHeader()
	width := report.ColumnWidth(room.Width(), count)
	var all []readPage
	for _, p := range pages {
		for k := range count {
			left := plane.Point{X: float64(k) * (width + report.ColumnsApart)}
			in := func(x float64) bool {
				x -= room.Min.X + left.X
				return x >= -1 && x < width+report.ColumnsApart-1
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
						parts = append(parts, sample.Moved(part, left.Mul(-1)))
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
	room := s.Paper.UnderHeader()
	width := report.ColumnWidth(room.Width(), 2)
	gap := plane.Box{
		Min: plane.Point{X: room.Min.X + width + 0.1, Y: room.Min.Y},
		Max: plane.Point{X: room.Min.X + width + report.ColumnsApart - 0.1, Y: room.Max.Y},
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

// Title and notes stand over both columns of the first page, and the left one is
// filled before the right.
func TestColumnsAreFilled(t *testing.T) {
	t.Parallel()
	for _, p := range paper.Names() {
		r := sample.ColumnFigures()
		pages, s := reported(t, r, p)
		room := s.Paper.UnderHeader()
		right := room.Min.X + report.ColumnWidth(room.Width(), 2) + report.ColumnsApart
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
		pages, s := reported(t, r, "letter")
		said := len(pages[len(pages)-1].texts) - 2
		assert.Greater(t, said, 2, "n = %d: lines on the last page", n)
		bands, err := report.Setter{Page: s.Paper.UnderHeader(), Paper: s.Paper}.Halved().Report(*r)
		require.NoError(t, err)
		if len((report.ColumnPages{Room: s.Paper.UnderHeader(), Count: 2, Gaps: 1}).Pages(nil, bands)) > len(pages) {
			tight++
		}
	}
	assert.Positive(t, tight, "narrower gaps saved a page")
}

// checkRoom: nothing reaches below the room that a page has.
func checkRoom(t require.TestingT, pages []report.Page, p paper.Paper) {
	for i, page := range pages {
		for _, b := range page {
			require.GreaterOrEqual(t, b.At.Y-b.Height, p.UnderHeader().Min.Y-written, "page %d of %v", i+1, p)
		}
	}
}
