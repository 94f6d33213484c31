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
		box := g.Box()
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
		box := g.Box()
		var path plane.Path
		for range rapid.IntRange(2, 12).Draw(t, "points") {
			path = append(path, plane.Point{
				X: box.Min.X + rapid.Float64Range(0, 1).Draw(t, "x")*box.Width(),
				Y: box.Min.Y + rapid.Float64Range(0, 1).Draw(t, "y")*box.Height(),
			})
		}
		l := NewLine(mark.Cut, "", path)
		cells := g.crossed([]Line{l}, mostOfPlacing)
		found := map[Cell]bool{}
		for _, c := range cells {
			found[c] = true
		}
		for _, c := range g.all() {
			near := l.Clip(g.CoreOf(c).Grown(rounding))
			// A corner cut off by a line may be long and yet reach less
			// than 0.01 mm into the core.
			if inner := l.Clip(g.CoreOf(c).Grown(-0.02)); len(inner) > 0 {
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
		box := g.Box()
		for _, top := range []float64{box.Min.Y + box.Height(), math.Nextafter(box.Max.Y, math.Inf(1)), math.Nextafter(box.Max.Y, math.Inf(-1))} {
			l := NewLine(mark.Cut, "", plane.Path{{X: 20, Y: top}, {X: 60, Y: top}})
			cells := g.crossed([]Line{l}, mostOfPlacing)
			assert.Equal(t, []Cell{{}}, cells, "at %v", top)
			assert.NotEmpty(t, l.Clip(g.CoreOf(Cell{}).Grown(rounding)), "within rounding of the core")
			if top == box.Min.Y+box.Height() && len(l.Clip(g.CoreOf(Cell{}))) == 0 {
				beyond++
			}
		}
	}
	assert.Positive(t, beyond, "a reckoned top is beyond its core")
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
		cells := g.crossed([]Line{NewLine(mark.Cut, "", c.path)}, mostOfPlacing)
		assert.Len(t, cells, c.want, c.name)
	}
}

func TestWindowsForALength(t *testing.T) {
	assert.Equal(t, 1, windowsFor(190, 190, 10))
	assert.Equal(t, 2, windowsFor(190.001, 190, 10))
	assert.Equal(t, 2, windowsFor(190+180, 190, 10))
	assert.Equal(t, 3, windowsFor(190+180+0.001, 190, 10))
	assert.Equal(t, 1, windowsFor(0, math.Inf(1), 10))
}
