package main

import (
	"bytes"
	"math"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
)

// Rules of this file: the pages of every example are counted against those that
// it would take laid naively: every piece upright on a grid of its own that
// begins at its lower left corner, every page of that grid printed, and no page
// shared. Forms are pages of their own either way, and are not counted.

// windowOf is what a page can show of a sheet, and overlap what two pages share;
// here from the paper's margins, 10.58 mm, and a title block of 1 in that begins 1/4 in
// from the upper edge, or up to 2.12 mm further down.
func windowOf(p paper.Paper) (window plane.Point, overlap float64) {
	const above, step = 6.35 + 25.4, 6 * 25.4 / 72
	return plane.Point{X: p.Width - 2*p.Margin, Y: math.Floor((p.Height-above)/step+1e-6)*step - p.Margin}, p.Overlap
}

// naivePages is how many pages the pieces take laid naively.
func naivePages(pieces []mark.Marking, p paper.Paper) int {
	window, overlap := windowOf(p)
	along := func(length, window float64) int {
		return 1 + int(math.Ceil(math.Max(0, length-window)/(window-overlap)))
	}
	pages := 0
	for _, m := range pieces {
		if m.Form != nil {
			continue
		}
		b := plane.EmptyBox()
		for _, mark := range m.Marks {
			b = b.Union(mark.Path.Bounds())
		}
		pages += along(b.Width(), window.X) * along(b.Height(), window.Y)
	}
	return pages
}

// sheetPages is how many pages the sheets of pieces have.
func sheetPages(s pdfout.Summary) int {
	pages := 0
	for _, sheet := range s.Sheets {
		pages += sheet.Last - sheet.First + 1
	}
	return pages
}

// eachExample calls do for every example on letter and A4 paper.
func eachExample[T testing.TB](t T, run func(name string, do func(T)) bool, do func(t T, set arrange.Set, p paper.Paper)) {
	for _, file := range examples(t) {
		_, set := load(t, file)
		for _, name := range []string{"letter", "a4"} {
			p, err := paper.Find(name)
			require.NoError(t, err)
			run(strings.TrimSuffix(filepath.Base(file), ".toml")+" on "+name, func(t T) { do(t, set, p) })
		}
	}
}

// BenchmarkPages draws every example and tells how many pages its sheets have,
// and how many the naive way would have more.
func BenchmarkPages(b *testing.B) {
	eachExample(b, b.Run, func(b *testing.B, set arrange.Set, p paper.Paper) {
		pages := 0
		for b.Loop() {
			var pdf bytes.Buffer
			summary, err := pdfout.Draw(&pdf, set, p)
			require.NoError(b, err)
			pages = sheetPages(summary)
		}
		b.ReportMetric(float64(pages), "pages")
		b.ReportMetric(float64(naivePages(set.Pieces, p)-pages), "saved")
	})
}

// No example takes more pages than laid naively.
func TestExamplesTakeNoMorePagesThanNaively(t *testing.T) {
	eachExample(t, t.Run, func(t *testing.T, set arrange.Set, p paper.Paper) {
		var pdf bytes.Buffer
		summary, err := pdfout.Draw(&pdf, set, p)
		require.NoError(t, err)
		require.LessOrEqual(t, sheetPages(summary), naivePages(set.Pieces, p))
	})
}
