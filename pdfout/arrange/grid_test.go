package arrange

import (
	"math"
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

func someGrid(t *rapid.T) Grid {
	return Grid{
		Rows: rapid.IntRange(1, 5).Draw(t, "rows"), Columns: rapid.IntRange(1, 5).Draw(t, "columns"),
		Window: plane.Point{X: 190, Y: 250}, Overlap: 10,
		origin: plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")},
	}
}

func (g Grid) all() []Cell {
	var all []Cell
	for row := range g.Rows {
		for column := range g.Columns {
			all = append(all, Cell{row, column})
		}
	}
	return all
}

// The cores cover the grid once; a window reaches half the overlap beyond its
// core towards each neighbour.
func TestCoresCoverTheGridOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := someGrid(t)
		box := g.box()
		area := 0.0
		for _, c := range g.all() {
			core, window := g.CoreOf(c), g.WindowOf(c)
			area += core.Width() * core.Height()
			require.True(t, box.Grown(1e-9).Holds(window.Min) && box.Grown(1e-9).Holds(window.Max))
			require.InDelta(t, 190, window.Width(), 1e-9)
			require.InDelta(t, 250, window.Height(), 1e-9)
			for _, o := range g.all() {
				if o != c {
					require.False(t, core.Grown(-1e-9).Meets(g.CoreOf(o).Grown(-1e-9)), "%v and %v", c, o)
				}
			}
		}
		require.InDelta(t, box.Width()*box.Height(), area, 1e-6)
		if g.Columns > 1 {
			left, right := g.WindowOf(Cell{}), g.WindowOf(Cell{0, 1})
			require.InDelta(t, 10, left.Max.X-right.Min.X, 1e-9)
			require.Less(t, left.Min.X, right.Min.X)
		}
		if g.Rows > 1 {
			require.Greater(t, g.WindowOf(Cell{}).Min.Y, g.WindowOf(Cell{1, 0}).Min.Y, "row 0 is the topmost")
		}
	})
}

// rounding bounds how far a point may be beside a core through rounding and
// still count as on its side, in mm.
const rounding = 1e-9

// Which cells a line crosses is found here by clipping it to every core.
func TestCrossedCells(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := someGrid(t)
		box := g.box()
		var path plane.Path
		for range rapid.IntRange(2, 12).Draw(t, "points") {
			path = append(path, plane.Point{
				X: box.Min.X + rapid.Float64Range(0, 1).Draw(t, "x")*box.Width(),
				Y: box.Min.Y + rapid.Float64Range(0, 1).Draw(t, "y")*box.Height(),
			})
		}
		l := NewLine(mark.Cut, "", path)
		cells, exact := g.crossed([]Line{l})
		require.True(t, exact)
		found := map[Cell]bool{}
		for _, c := range cells {
			found[c] = true
		}
		for _, c := range g.all() {
			near := l.Clip.Clip(g.CoreOf(c).Grown(rounding))
			// A corner cut off by a line may be long and yet reach less
			// than 0.01 mm into the core.
			if inner := l.Clip.Clip(g.CoreOf(c).Grown(-0.02)); len(inner) > 0 {
				require.True(t, found[c], "%v", c)
			}
			if len(near) == 0 {
				require.False(t, found[c], "%v", c)
			}
		}
		require.True(t, slices.IsSortedFunc(cells, func(a, b Cell) int { return (a.Row-b.Row)*1000 + a.Column - b.Column }))
	})
}

// A point at the very top of the grid may come to lie a rounding step over the
// highest core; its cell is still the topmost.
func TestPointAtTheTopOfTheGrid(t *testing.T) {
	beyond := 0
	for _, y := range []float64{-8.00000000000015, -0.3, 0.1, 17.7, 431.03} {
		g := Grid{Rows: 3, Columns: 2, Window: plane.Point{X: 190, Y: 250}, Overlap: 10, origin: plane.Point{X: 5, Y: y}}
		box := g.box()
		for _, top := range []float64{box.Min.Y + box.Height(), math.Nextafter(box.Max.Y, math.Inf(1)), math.Nextafter(box.Max.Y, math.Inf(-1))} {
			l := NewLine(mark.Cut, "", plane.Path{{X: 20, Y: top}, {X: 60, Y: top}})
			cells, _ := g.crossed([]Line{l})
			assert.Equal(t, []Cell{{}}, cells, "at %v", top)
			assert.NotEmpty(t, l.Clip.Clip(g.CoreOf(Cell{}).Grown(rounding)), "within rounding of the core")
			if top == box.Min.Y+box.Height() && len(l.Clip.Clip(g.CoreOf(Cell{}))) == 0 {
				beyond++
			}
		}
	}
	assert.Positive(t, beyond, "a reckoned top is beyond its core")
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
	best, exact := place(p, page)
	require.True(t, exact)
	g := page.over(p, plane.Point{})
	least, most := math.MaxInt, 0
	slack := g.box().Max.Sub(g.origin).Sub(p.Room())
	for x := 0.1; x < 1; x += 0.1 {
		for y := 0.1; y < 1; y += 0.1 {
			g.origin = p.Bounds.Min.Sub(plane.Point{X: 2 + x*slack.X, Y: 2 + y*slack.Y})
			found, _ := g.crossed(p.Lines)
			least, most = min(least, len(found)), max(most, len(found))
		}
	}
	require.Greater(t, most, 2000, "a placing prints too many")
	assert.LessOrEqual(t, len(best.cells), least)
}

func TestConnected(t *testing.T) {
	assert.True(t, connected(nil))
	assert.True(t, connected([]Cell{{2, 3}}))
	assert.True(t, connected([]Cell{{0, 0}, {0, 1}, {1, 1}}))
	assert.False(t, connected([]Cell{{0, 0}, {1, 1}}), "corner to corner")
}

func TestAlongAJoinOnOnePageOnly(t *testing.T) {
	g := Grid{Rows: 1, Columns: 2, Window: plane.Point{X: 190, Y: 250}, Overlap: 10}
	join := g.CoreOf(Cell{}).Max.X
	for _, c := range []struct {
		name string
		path plane.Path
		want int
	}{
		{"on the join line", plane.Path{{X: join, Y: 10}, {X: join, Y: 90}}, 1},
		{"up to the join line", plane.Path{{X: 20, Y: 10}, {X: join, Y: 10}}, 1},
		{"a sliver beyond it", plane.Path{{X: 20, Y: 10}, {X: join + 0.009, Y: 10}}, 1},
		{"more than a sliver beyond it", plane.Path{{X: 20, Y: 10}, {X: join + 0.011, Y: 10}}, 2},
		{"across it", plane.Path{{X: 20, Y: 10}, {X: join + 1, Y: 10}}, 2},
		{"in the strip beyond it", plane.Path{{X: join + 1, Y: 10}, {X: join + 1, Y: 90}}, 1},
	} {
		cells, _ := g.crossed([]Line{NewLine(mark.Cut, "", c.path)})
		assert.Len(t, cells, c.want, c.name)
	}
}

// A line that would run along the middle of the sheet, where the join of two
// columns is, is kept off the join.
func TestGridKeepsOffLines(t *testing.T) {
	window := plane.Point{X: 190, Y: 250}
	m := sample.Rectangle("p", "P", 300, 200)
	m.Marks = append(m.Marks, sample.Edge(mark.Centre, "centre", plane.Point{X: 150}, plane.Point{X: 150, Y: 200}))
	p := NewPiece(m)
	best, exact := place(p, Grid{Window: window, Overlap: 10})
	assert.True(t, exact)
	assert.Len(t, best.cells, 2)
	g := best.grid
	assert.Zero(t, tenderOf(p.Lines).alongJoins(g), "mm of line along a join")
	// Nothing of the piece falls out of the grid.
	assert.True(t, g.box().Holds(p.Bounds.Grown(2-1e-9).Min) && g.box().Holds(p.Bounds.Grown(2-1e-9).Max))
}

func TestPieceIsTurnedWhereThatSavesPages(t *testing.T) {
	window := plane.Point{X: 190, Y: 250}
	for _, c := range []struct {
		name   string
		w, h   float64
		pages  int
		turned bool
	}{
		{"a strip up", 100, 480, 2, false},
		{"a strip across", 480, 100, 2, true},
		{"as many either way", 300, 300, 4, false},
	} {
		p := NewPiece(sample.Rectangle("p", "P", c.w, c.h))
		s, exact := spread(p, Grid{Window: window, Overlap: 10})
		assert.True(t, exact, c.name)
		assert.Len(t, s.Cells, c.pages, c.name)
		assert.Equal(t, c.turned, s.Pieces[0].Turned, c.name)
	}
}

func TestBridged(t *testing.T) {
	for _, c := range []struct {
		name  string
		cells []Cell
		want  []Cell
	}{
		{"none", nil, nil},
		{"one", []Cell{{2, 3}}, []Cell{{2, 3}}},
		{"side by side", []Cell{{0, 0}, {0, 1}}, []Cell{{0, 0}, {0, 1}}},
		{"corner to corner", []Cell{{0, 0}, {1, 1}}, []Cell{{0, 0}, {0, 1}, {1, 1}}},
		{"far apart", []Cell{{0, 0}, {0, 3}}, []Cell{{0, 0}, {0, 1}, {0, 2}, {0, 3}}},
	} {
		assert.Equal(t, c.want, bridged(c.cells), c.name)
	}
	rapid.Check(t, func(t *rapid.T) {
		seen := map[Cell]bool{}
		for range rapid.IntRange(1, 15).Draw(t, "cells") {
			seen[Cell{rapid.IntRange(0, 8).Draw(t, "row"), rapid.IntRange(0, 8).Draw(t, "column")}] = true
		}
		var cells []Cell
		for c := range seen {
			cells = append(cells, c)
		}
		all := bridged(readingOrder(cells))
		has := map[Cell]int{}
		for _, c := range all {
			has[c]++
			require.Equal(t, 1, has[c], "twice: %v", c)
		}
		for c := range seen {
			require.Contains(t, has, c)
		}
		// All can be reached from the first, side by side.
		reached := map[Cell]bool{all[0]: true}
		for queue := []Cell{all[0]}; len(queue) > 0; queue = queue[1:] {
			for _, d := range []Cell{{0, 1}, {0, -1}, {1, 0}, {-1, 0}} {
				next := Cell{queue[0].Row + d.Row, queue[0].Column + d.Column}
				if has[next] > 0 && !reached[next] {
					reached[next] = true
					queue = append(queue, next)
				}
			}
		}
		require.Len(t, reached, len(all))
	})
}

func TestWindowsForALength(t *testing.T) {
	assert.Equal(t, 1, windowsFor(190, 190, 10))
	assert.Equal(t, 2, windowsFor(190.001, 190, 10))
	assert.Equal(t, 2, windowsFor(190+180, 190, 10))
	assert.Equal(t, 3, windowsFor(190+180+0.001, 190, 10))
	assert.Equal(t, 1, windowsFor(0, math.Inf(1), 10))
}

// Pages that do not hang together need others to join them; of too many these
// are not counted, and the count is not said to be exact.
func TestCountOfScatteredPages(t *testing.T) {
	m := mark.Marking{Key: "p", Name: "P"}
	for i := range 2500 {
		at := plane.Point{X: 800 * float64(i%50), Y: 800 * float64(i/50)}
		m.Marks = append(m.Marks, sample.Edge(mark.Placement, "", at, at.Add(plane.Point{X: 1})))
	}
	s, exact := spread(NewPiece(m), Grid{Window: plane.Point{X: 190, Y: 250}, Overlap: 10})
	assert.GreaterOrEqual(t, len(s.Cells), 2500)
	assert.False(t, exact)
}
