package arrange

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

func letterPage() Grid { return PageOf(paper.All()[0]) }

// somePiece is a piece of a few lines that may go anywhere, with short marks
// among them, larger than a page.
func somePiece(t *rapid.T) Piece {
	w := rapid.Float64Range(30, 1200).Draw(t, "w")
	h := rapid.Float64Range(300, 1200).Draw(t, "h")
	m := mark.Marking{Key: "p", Name: "P"}
	at := func() plane.Point {
		return plane.Point{X: w * rapid.Float64Range(0, 1).Draw(t, "x"), Y: h * rapid.Float64Range(0, 1).Draw(t, "y")}
	}
	m.Marks = append(m.Marks, sample.Edge(mark.Cut, "", plane.Point{}, plane.Point{X: w, Y: h}))
	for range rapid.IntRange(0, 5).Draw(t, "lines") {
		m.Marks = append(m.Marks, sample.Edge(mark.Stitch, "", at(), at()))
	}
	for range rapid.IntRange(0, 6).Draw(t, "notches") {
		q := at()
		m.Marks = append(m.Marks, sample.Edge(mark.Notch, "", q, q.Add(plane.Point{X: 8, Y: 5})))
	}
	if rapid.Bool().Draw(t, "box") {
		m.Marks = append(m.Marks, sample.Ruled("", "", w, h).Marks...)
	}
	m.Outline = sample.Ruled("", "", w, h).Outline
	return NewPiece(m)
}

// evenly is the smallest grid with what it has more than the piece needs shared
// out evenly, and what is printed of it, bridges included. It keeps 2 mm free round
// the piece.
func evenly(t require.TestingT, p Piece, page Grid) []Cell {
	room := p.Room()
	g := page
	g.Columns = windowsFor(room.X, g.Window.X, g.Overlap)
	g.Rows = windowsFor(room.Y, g.Window.Y, g.Overlap)
	slack := g.Box().Max.Sub(g.origin).Sub(room)
	g.origin = p.Bounds.Min.Sub(plane.Point{X: 2, Y: 2}).Sub(slack.Mul(0.5))
	cells := g.crossed(p.Lines, mostOfPlacing)
	return bridged(cells)
}

// No piece takes more pages than under the smallest grid with its slack halved,
// nor than on all pages of a grid of its own; every row and column of its grid
// has a page, all hang together, and none lacks a line that falls on it.
func TestPlaceTakesTheFewestPages(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, page := somePiece(t), letterPage()
		if rapid.Bool().Draw(t, "narrow overlap") {
			page.Overlap = 9
		}
		if p.Fits(page.Window) {
			t.Skip("fits a page")
		}
		best := place(p, page, rasterOne)
		before := evenly(t, p, page)
		require.LessOrEqual(t, len(best.cells), len(before))
		naive := windowsFor(p.Room().X, page.Window.X, page.Overlap) * windowsFor(p.Room().Y, page.Window.Y, page.Overlap)
		require.LessOrEqual(t, len(best.cells), naive)

		g := best.grid
		require.True(t, g.Box().Grown(1e-9).Holds(p.Bounds.Grown(2).Min) && g.Box().Grown(1e-9).Holds(p.Bounds.Grown(2).Max), "the piece leaves its grid")
		require.True(t, connected(best.cells))
		rows, columns := map[int]bool{}, map[int]bool{}
		for _, c := range best.cells {
			rows[c.Row], columns[c.Column] = true, true
		}
		require.Len(t, rows, g.Rows, "a row without a page")
		require.Len(t, columns, g.Columns, "a column without a page")
		crossed := g.crossed(p.Lines, mostOfPlacing)
		for _, c := range crossed {
			require.Contains(t, best.cells, c)
		}
	})
}

// What the raster says of a place is what the grid itself says.
func TestRasterCountsAsTheGridDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, page := somePiece(t), letterPage()
		r := newRaster(p, page, tenderOf(p.Lines), rasterOne)
		x, y := rapid.IntRange(0, r.n-1).Draw(t, "across"), rapid.IntRange(0, r.n-1).Draw(t, "up")
		g := page.over(p, r.step(x, y))
		crossed := g.crossed(p.Lines, mostOfPlacing)
		counted := r.pages(nil, g, r.strips(nil, g, x), y)
		// A line that cuts off a corner by less than 0.01 mm may count for
		// one of them and not for the other.
		for _, c := range crossed {
			if inner := clipped(p, g.CoreOf(c).Grown(-0.02)); inner && !slices.Contains(counted, c) {
				require.Fail(t, "a page is not counted", "%v", c)
			}
		}
		for i, c := range counted {
			require.True(t, clipped(p, g.CoreOf(c).Grown(rounding)), "a page too many: %v", c)
			require.NotContains(t, counted[:i], c, "counted twice")
		}
	})
}

// clipped reports whether a line of the piece runs in a box.
func clipped(p Piece, b plane.Box) bool {
	return slices.ContainsFunc(p.Lines, func(l Line) bool { return len(l.Clip(b)) > 0 })
}

// A tall frame over a bar as wide as two pages: the smallest grid has its join
// in the frame, all the way up; one with a column more has one at either side of
// it, and prints the frame on three pages and the ends of the bar on two.
func TestOneColumnMoreAndFewerPages(t *testing.T) {
	page := letterPage() // 194.7 by 237.1 mm
	m := mark.Marking{Key: "p", Name: "P", Marks: []mark.Mark{
		sample.Edge(mark.Cut, "", plane.Point{X: 0, Y: 50}, plane.Point{X: 370, Y: 50}),
		sample.Edge(mark.Cut, "", plane.Point{X: 100}, plane.Point{X: 100, Y: 670}),
		sample.Edge(mark.Cut, "", plane.Point{X: 270}, plane.Point{X: 270, Y: 670}),
	}}
	p := NewPiece(m)
	assert.Equal(t, 2, page.over(p, plane.Point{}).Columns)
	assert.Len(t, evenly(t, p, page), 6)
	best := place(p, page, rasterOne)
	assert.Equal(t, 3, best.grid.Columns)
	assert.Equal(t, 3, best.grid.Rows)
	assert.Len(t, best.cells, 5)
}

// A short mark that lies on the join of the smallest grid is not cut where a
// shift of the grid keeps clear of it.
func TestShortMarksAreNotCut(t *testing.T) {
	page := letterPage()
	smallest := page.over(NewPiece(sample.Ruled("p", "P", 300, 200)), plane.Point{})
	even := smallest
	even.origin = even.origin.Sub(smallest.Box().Max.Sub(smallest.origin).Sub(plane.Point{X: 304, Y: 204}).Mul(0.5))
	for _, c := range []struct {
		name  string
		half  float64 // of a mark across a join
		short bool
	}{
		{"a notch across the join", 5, true},
		{"a short arrow of 20 mm across the join", 10, true},
		{"a line longer than a short mark", 10.1, false},
	} {
		m := sample.Ruled("p", "P", 300, 200)
		naive := []Grid{smallest, even}
		for i, g := range naive {
			at := plane.Point{X: g.CoreOf(Cell{}).Max.X, Y: 60 + 40*float64(i)}
			m.Marks = append(m.Marks, sample.Edge(mark.Notch, "", at.Sub(plane.Point{X: c.half}), at.Add(plane.Point{X: c.half})))
		}
		p := NewPiece(m)
		for _, g := range naive {
			if c.short {
				assert.Equal(t, 1, tenderOf(p.Lines).cuts(g), "%s: the naive grid cuts it", c.name)
			} else {
				assert.Zero(t, tenderOf(p.Lines).cuts(g), "%s: it is none", c.name)
			}
		}
		best := place(p, page, rasterOne)
		assert.Zero(t, tenderOf(p.Lines).cuts(best.grid), c.name)
		assert.Equal(t, tenderOf(p.Lines).cuts(best.grid), best.cut, c.name)
		assert.Len(t, best.cells, 2, c.name)
	}

	// Notches all along a side, one every 4 mm: they are cut whatever is done,
	// and the fewest are.
	m := sample.Ruled("p", "P", 300, 200)
	for x := 4.0; x < 296; x += 4 {
		m.Marks = append(m.Marks, sample.Edge(mark.Notch, "", plane.Point{X: x, Y: 20}, plane.Point{X: x + 6, Y: 20}))
	}
	best := place(NewPiece(m), page, rasterOne)
	assert.Equal(t, 1, best.cut)
}

// A piece is turned where that keeps a short mark whole and takes no more pages.
func TestTurnedForAShortMark(t *testing.T) {
	a := placing{cells: make([]Cell, 4), cut: 1}
	assert.True(t, placing{cells: make([]Cell, 4)}.worthTurning(a), "a mark fewer")
	assert.True(t, placing{cells: make([]Cell, 3), cut: 9}.worthTurning(a), "a page fewer")
	assert.False(t, placing{cells: make([]Cell, 5)}.worthTurning(a), "a page more")
	assert.False(t, placing{cells: make([]Cell, 4), cut: 1}.worthTurning(placing{cells: make([]Cell, 4), cut: 1, along: 80}), "a line along a join")
}

// BenchmarkPlace places a piece of 100,000 points.
func BenchmarkPlace(b *testing.B) {
	for _, c := range []struct {
		w, h float64
	}{{900, 700}, {3000, 3000}} {
		m := sample.Wave("w", c.w, c.h, 100_000)
		r := rand.New(rand.NewPCG(1, 1))
		for range 200 {
			q := plane.Point{X: r.Float64() * c.w, Y: r.Float64() * c.h}
			m.Marks = append(m.Marks, sample.Edge(mark.Notch, "", q, q.Add(plane.Point{X: 6})))
		}
		p := NewPiece(m)
		b.Run(fmt.Sprintf("%.0f by %.0f", c.w, c.h), func(b *testing.B) {
			pages := math.MaxInt
			for b.Loop() {
				best := place(p, letterPage(), rasterOne)
				pages = len(best.cells)
			}
			b.ReportMetric(float64(pages), "pages")
		})
	}
}

// The least number of pages is taken, even where some placings of the grid print
// too many: 9 x 9 placings are counted here, one by one.
func TestGridPrintsTheLeast(t *testing.T) {
	t.Parallel()
	m := sample.Sail(69_579)
	m.Marks = append(m.Marks, sample.Edge(mark.Stitch, "", m.Outline[0], m.Outline[2]))
	p := NewPiece(m)
	window := plane.Point{X: paper.All()[0].Window().Width(), Y: paper.All()[0].Window().Height()}
	page := Grid{Window: window, Overlap: 10}
	best := place(p, page, rasterOne)
	g := page.over(p, plane.Point{})
	least, most := math.MaxInt, 0
	slack := g.Box().Max.Sub(g.origin).Sub(p.Room())
	for x := 0.1; x < 1; x += 0.1 {
		for y := 0.1; y < 1; y += 0.1 {
			g.origin = p.Bounds.Min.Sub(plane.Point{X: 2 + x*slack.X, Y: 2 + y*slack.Y})
			found := g.crossed(p.Lines, mostOfPlacing)
			least, most = min(least, len(found)), max(most, len(found))
		}
	}
	require.Greater(t, most, 2000, "a placing prints too many")
	assert.LessOrEqual(t, len(best.cells), least)
}

// A line that would run along the middle of the sheet, where the join of two
// columns is, is kept off the join.
func TestGridKeepsOffLines(t *testing.T) {
	window := plane.Point{X: 190, Y: 250}
	m := sample.Rectangle("p", "P", 300, 200)
	m.Marks = append(m.Marks, sample.Edge(mark.Centre, "centre", plane.Point{X: 150}, plane.Point{X: 150, Y: 200}))
	p := NewPiece(m)
	best := place(p, Grid{Window: window, Overlap: 10}, rasterOne)
	assert.Len(t, best.cells, 2)
	g := best.grid
	assert.Zero(t, tenderOf(p.Lines).alongJoins(g), "mm of line along a join")
	// Nothing of the piece falls out of the grid.
	assert.True(t, g.Box().Holds(p.Bounds.Grown(2-1e-9).Min) && g.Box().Holds(p.Bounds.Grown(2-1e-9).Max))
}

// A line that rises by 1 in 60, or runs by that, counts as running along a join; one
// of 1 in 40 does not.
func TestWhatRunsAlongAJoin(t *testing.T) {
	for _, c := range []struct {
		name       string
		to         plane.Point
		up, across int
	}{
		{"straight up", plane.Point{Y: 120}, 1, 0},
		{"nearly up", plane.Point{X: 2, Y: 120}, 1, 0},
		{"less nearly up", plane.Point{X: 3, Y: 120}, 0, 0},
		{"nearly across", plane.Point{X: 120, Y: -2}, 0, 1},
		{"less nearly across", plane.Point{X: 120, Y: -3}, 0, 0},
	} {
		found := tenderOf([]Line{NewLine(mark.Cut, "", plane.Path{{}, c.to})})
		assert.Len(t, found.up, c.up, c.name)
		assert.Len(t, found.across, c.across, c.name)
	}
}
