package pdfout

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

func someGrid(t *rapid.T) grid {
	return grid{
		rows: rapid.IntRange(1, 5).Draw(t, "rows"), columns: rapid.IntRange(1, 5).Draw(t, "columns"),
		window: plane.Point{X: 190, Y: 250}, overlap: 10,
		origin: plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")},
	}
}

func (g grid) all() []cell {
	var all []cell
	for row := range g.rows {
		for column := range g.columns {
			all = append(all, cell{row, column})
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
			core, window := g.coreOf(c), g.windowOf(c)
			area += core.Width() * core.Height()
			require.True(t, box.Grown(1e-9).Holds(window.Min) && box.Grown(1e-9).Holds(window.Max))
			require.InDelta(t, 190, window.Width(), 1e-9)
			require.InDelta(t, 250, window.Height(), 1e-9)
			for _, o := range g.all() {
				if o != c {
					require.False(t, core.Grown(-1e-9).Meets(g.coreOf(o).Grown(-1e-9)), "%v and %v", c, o)
				}
			}
		}
		require.InDelta(t, box.Width()*box.Height(), area, 1e-6)
		if g.columns > 1 {
			left, right := g.windowOf(cell{}), g.windowOf(cell{0, 1})
			require.InDelta(t, 10, left.Max.X-right.Min.X, 1e-9)
			require.Less(t, left.Min.X, right.Min.X)
		}
		if g.rows > 1 {
			require.Greater(t, g.windowOf(cell{}).Min.Y, g.windowOf(cell{1, 0}).Min.Y, "row 0 is the topmost")
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
		l := newLine(marking.Cut, "", path)
		cells, exact := g.crossed([]line{l})
		require.True(t, exact)
		found := map[cell]bool{}
		for _, c := range cells {
			found[c] = true
		}
		for _, c := range g.all() {
			near := l.clip.Clip(g.coreOf(c).Grown(rounding))
			// A corner cut off by a line may be long and yet reach less
			// than 0.01 mm into the core.
			if inner := l.clip.Clip(g.coreOf(c).Grown(-0.02)); len(inner) > 0 {
				require.True(t, found[c], "%v", c)
			}
			if len(near) == 0 {
				require.False(t, found[c], "%v", c)
			}
		}
		require.True(t, slices.IsSortedFunc(cells, func(a, b cell) int { return (a.row-b.row)*1000 + a.column - b.column }))
	})
}

// A point at the very top of the grid may come to lie a rounding step over the
// highest core; its cell is still the topmost.
func TestPointAtTheTopOfTheGrid(t *testing.T) {
	beyond := 0
	for _, y := range []float64{-8.00000000000015, -0.3, 0.1, 17.7, 431.03} {
		g := grid{rows: 3, columns: 2, window: plane.Point{X: 190, Y: 250}, overlap: 10, origin: plane.Point{X: 5, Y: y}}
		box := g.box()
		for _, top := range []float64{box.Min.Y + box.Height(), math.Nextafter(box.Max.Y, math.Inf(1)), math.Nextafter(box.Max.Y, math.Inf(-1))} {
			l := newLine(marking.Cut, "", plane.Path{{X: 20, Y: top}, {X: 60, Y: top}})
			cells, _ := g.crossed([]line{l})
			assert.Equal(t, []cell{{}}, cells, "at %v", top)
			assert.NotEmpty(t, l.clip.Clip(g.coreOf(cell{}).Grown(rounding)), "within rounding of the core")
			if top == box.Min.Y+box.Height() && len(l.clip.Clip(g.coreOf(cell{}))) == 0 {
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
	m := sail(69_579)
	m.Marks = append(m.Marks, edge(marking.Stitch, "", m.Outline[0], m.Outline[2]))
	p := newPiece(m)
	window := plane.Point{X: papers()[0].window().Width(), Y: papers()[0].window().Height()}
	page := grid{window: window, overlap: 10}
	best, exact := place(p, page)
	require.True(t, exact)
	g := page.over(p, plane.Point{})
	least, most := math.MaxInt, 0
	slack := g.box().Max.Sub(g.origin).Sub(p.room())
	for x := 0.1; x < 1; x += 0.1 {
		for y := 0.1; y < 1; y += 0.1 {
			g.origin = p.bounds.Min.Sub(plane.Point{X: 2 + x*slack.X, Y: 2 + y*slack.Y})
			found, _ := g.crossed(p.lines)
			least, most = min(least, len(found)), max(most, len(found))
		}
	}
	require.Greater(t, most, 2000, "a placing prints too many")
	assert.LessOrEqual(t, len(best.cells), least)
}

func TestConnected(t *testing.T) {
	assert.True(t, connected(nil))
	assert.True(t, connected([]cell{{2, 3}}))
	assert.True(t, connected([]cell{{0, 0}, {0, 1}, {1, 1}}))
	assert.False(t, connected([]cell{{0, 0}, {1, 1}}), "corner to corner")
}

func TestAlongAJoinOnOnePageOnly(t *testing.T) {
	g := grid{rows: 1, columns: 2, window: plane.Point{X: 190, Y: 250}, overlap: 10}
	join := g.coreOf(cell{}).Max.X
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
		cells, _ := g.crossed([]line{newLine(marking.Cut, "", c.path)})
		assert.Len(t, cells, c.want, c.name)
	}
}

// A line that would run along the middle of the sheet, where the join of two
// columns is, is kept off the join.
func TestGridKeepsOffLines(t *testing.T) {
	window := plane.Point{X: 190, Y: 250}
	m := rectangle("p", "P", 300, 200)
	m.Marks = append(m.Marks, edge(marking.Centre, "centre", plane.Point{X: 150}, plane.Point{X: 150, Y: 200}))
	p := newPiece(m)
	best, exact := place(p, grid{window: window, overlap: 10})
	assert.True(t, exact)
	assert.Len(t, best.cells, 2)
	g := best.grid
	assert.Zero(t, tenderOf(p.lines).alongJoins(g), "mm of line along a join")
	// Nothing of the piece falls out of the grid.
	assert.True(t, g.box().Holds(p.bounds.Grown(2-1e-9).Min) && g.box().Holds(p.bounds.Grown(2-1e-9).Max))
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
		p := newPiece(rectangle("p", "P", c.w, c.h))
		s, exact := spread(p, grid{window: window, overlap: 10})
		assert.True(t, exact, c.name)
		assert.Len(t, s.cells, c.pages, c.name)
		assert.Equal(t, c.turned, s.pieces[0].turned, c.name)
	}
}

func TestBridged(t *testing.T) {
	for _, c := range []struct {
		name  string
		cells []cell
		want  []cell
	}{
		{"none", nil, nil},
		{"one", []cell{{2, 3}}, []cell{{2, 3}}},
		{"side by side", []cell{{0, 0}, {0, 1}}, []cell{{0, 0}, {0, 1}}},
		{"corner to corner", []cell{{0, 0}, {1, 1}}, []cell{{0, 0}, {0, 1}, {1, 1}}},
		{"far apart", []cell{{0, 0}, {0, 3}}, []cell{{0, 0}, {0, 1}, {0, 2}, {0, 3}}},
	} {
		assert.Equal(t, c.want, bridged(c.cells), c.name)
	}
	rapid.Check(t, func(t *rapid.T) {
		seen := map[cell]bool{}
		for range rapid.IntRange(1, 15).Draw(t, "cells") {
			seen[cell{rapid.IntRange(0, 8).Draw(t, "row"), rapid.IntRange(0, 8).Draw(t, "column")}] = true
		}
		var cells []cell
		for c := range seen {
			cells = append(cells, c)
		}
		all := bridged(readingOrder(cells))
		has := map[cell]int{}
		for _, c := range all {
			has[c]++
			require.Equal(t, 1, has[c], "twice: %v", c)
		}
		for c := range seen {
			require.Contains(t, has, c)
		}
		// All can be reached from the first, side by side.
		reached := map[cell]bool{all[0]: true}
		for queue := []cell{all[0]}; len(queue) > 0; queue = queue[1:] {
			for _, d := range []cell{{0, 1}, {0, -1}, {1, 0}, {-1, 0}} {
				next := cell{queue[0].row + d.row, queue[0].column + d.column}
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
	m := marking.Marking{Key: "p", Name: "P"}
	for i := range 2500 {
		at := plane.Point{X: 800 * float64(i%50), Y: 800 * float64(i/50)}
		m.Marks = append(m.Marks, edge(marking.Placement, "", at, at.Add(plane.Point{X: 1})))
	}
	s, exact := spread(newPiece(m), grid{window: plane.Point{X: 190, Y: 250}, overlap: 10})
	assert.GreaterOrEqual(t, len(s.cells), 2500)
	assert.False(t, exact)
}
