package arrange

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a sheet is cut into a grid of windows, one to a page.
// Neighbouring windows overlap. In the middle of the overlap both pages print
// the same join line; what lies within a page's join lines is its core, and
// the cores cover the sheet once. A page is printed when a line of a piece
// falls into its core. Lines run on past the join line to the window's side,
// so that a page that lies a little off shows it.

// sliver is how much of a line, in mm, may reach past a join line without
// needing a page of its own: less than a printer can show, and its neighbour
// prints it anyway. It also keeps rounding from making pages.
const sliver = 0.01

// Grid is the windows of a sheet.
type Grid struct {
	Rows, Columns int
	Window        plane.Point // width and height of a window
	Overlap       float64     // width of the strip that two neighbours share
	origin        plane.Point // lower left corner of the whole
}

// PageOf is a grid of one page of a paper, to be made larger by who needs more.
func PageOf(p paper.Paper) Grid {
	w := p.Window()
	return Grid{Rows: 1, Columns: 1, Window: plane.Point{X: w.Width(), Y: w.Height()}, Overlap: p.Overlap}
}

// Pitch is the step from one window to the next.
func (g Grid) Pitch() plane.Point {
	return plane.Point{X: g.Window.X - g.Overlap, Y: g.Window.Y - g.Overlap}
}

// Box is the whole grid.
func (g Grid) Box() plane.Box {
	p := g.Pitch()
	return plane.Box{Min: g.origin, Max: g.origin.Add(plane.Point{
		X: float64(g.Columns)*p.X + g.Overlap,
		Y: float64(g.Rows)*p.Y + g.Overlap,
	})}
}

// WindowOf is what the page of a cell shows.
func (g Grid) WindowOf(c Cell) plane.Box {
	p := g.Pitch()
	corner := g.origin.Add(plane.Point{X: float64(c.Column) * p.X, Y: float64(g.Rows-1-c.Row) * p.Y})
	return plane.Box{Min: corner, Max: corner.Add(g.Window)}
}

// Cells are those of the grid, in reading order.
func (g Grid) Cells() []Cell {
	var all []Cell
	for row := range g.Rows {
		for column := range g.Columns {
			all = append(all, Cell{row, column})
		}
	}
	return all
}

// CoreOf is what lies within the join lines of the page of a cell.
func (g Grid) CoreOf(c Cell) plane.Box { return g.within(c, g.WindowOf(c), g.Overlap/2) }

// within is a window without a strip of some width at every side that has a
// neighbour in the grid.
func (g Grid) within(c Cell, window plane.Box, strip float64) plane.Box {
	if c.Column > 0 {
		window.Min.X += strip
	}
	if c.Column < g.Columns-1 {
		window.Max.X -= strip
	}
	if c.Row > 0 {
		window.Max.Y -= strip
	}
	if c.Row < g.Rows-1 {
		window.Min.Y += strip
	}
	return window
}

// windowsFor is how many windows in a row cover a length of mm.
func windowsFor(length, window, overlap float64) int {
	return 1 + int(math.Ceil(math.Max(0, length-window)/(window-overlap)))
}

// columnsOf returns the first and last column whose core holds part of the
// span from a to b, leaving out slivers.
func (g Grid) columnsOf(a, b float64) (first, last int) {
	return span(a-g.origin.X-g.Overlap/2, b-g.origin.X-g.Overlap/2, g.Pitch().X, g.Columns)
}

// cellAt is the cell whose core holds a place, or the nearest of the grid.
func (g Grid) cellAt(at plane.Point) Cell {
	column, _ := g.columnsOf(at.X, at.X)
	row, _ := g.rowsOf(at.Y, at.Y)
	return Cell{row, column}
}

// rowsOf is columnsOf for rows; the first is the higher one on paper.
func (g Grid) rowsOf(a, b float64) (first, last int) {
	low, high := span(a-g.origin.Y-g.Overlap/2, b-g.origin.Y-g.Overlap/2, g.Pitch().Y, g.Rows)
	return g.Rows - 1 - high, g.Rows - 1 - low
}

func span(a, b, pitch float64, count int) (first, last int) {
	if count == 1 { // as on most sheets
		return 0, 0
	}
	a, b = min(a, b)+sliver, max(a, b)-sliver
	if a > b {
		a = (a + b) / 2
		b = a
	}
	index := func(v float64) int {
		return int(max(0, min(float64(count-1), math.Floor(v/pitch))))
	}
	return index(a), index(b)
}

// crossed returns the cells into whose cores lines fall, in reading order. It stops when
// there are more than most.
func (g Grid) crossed(lines []Line, most int) []Cell {
	seen := map[Cell]bool{}
	last := Cell{-1, -1} // a line mostly stays where it is
	for _, l := range lines {
		if !g.walk(l.Path(), func(c Cell) bool {
			if c != last {
				seen[c], last = true, c
			}
			return len(seen) <= most
		}) {
			break
		}
	}
	return InReadingOrder(seen)
}

// walk calls visit for the cells into whose cores a path falls, for some of
// them several times, until visit returns false. It reports whether it came to
// the end.
func (g Grid) walk(p plane.Path, visit func(Cell) bool) bool {
	for i := 1; i < len(p); i++ {
		a, b := p[i-1], p[i]
		if a == b {
			continue
		}
		if a.X > b.X {
			a, b = b, a
		}
		first, last := g.columnsOf(a.X, b.X)
		for column := first; column <= last; column++ {
			low, high := a.Y, b.Y
			if first != last {
				// Only the part of the segment in this column.
				left := g.origin.X + g.Overlap/2 + float64(column)*g.Pitch().X
				if column > first {
					low = a.Toward(b, (left-a.X)/(b.X-a.X)).Y
				}
				if column < last {
					high = a.Toward(b, (left+g.Pitch().X-a.X)/(b.X-a.X)).Y
				}
			}
			top, bottom := g.rowsOf(low, high)
			for row := top; row <= bottom; row++ {
				if !visit(Cell{row, column}) {
					return false
				}
			}
		}
	}
	return true
}
