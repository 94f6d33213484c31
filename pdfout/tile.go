package pdfout

import (
	"cmp"
	"maps"
	"math"
	"slices"

	"tuckmark/marking/plane"
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

// cell is a place in the grid; row 0 is the topmost.
type cell struct{ row, column int }

// grid is the windows of a sheet.
type grid struct {
	rows, columns int
	window        plane.Point // width and height of a window
	overlap       float64     // width of the strip that two neighbours share
	origin        plane.Point // lower left corner of the whole
}

// pageOf is a grid of one page of a paper, to be made larger by who needs more.
func pageOf(p Paper) grid {
	w := p.window()
	return grid{rows: 1, columns: 1, window: plane.Point{X: w.Width(), Y: w.Height()}, overlap: p.Overlap}
}

// pitch is the step from one window to the next.
func (g grid) pitch() plane.Point {
	return plane.Point{X: g.window.X - g.overlap, Y: g.window.Y - g.overlap}
}

// box is the whole grid.
func (g grid) box() plane.Box {
	p := g.pitch()
	return plane.Box{Min: g.origin, Max: g.origin.Add(plane.Point{
		X: float64(g.columns)*p.X + g.overlap,
		Y: float64(g.rows)*p.Y + g.overlap,
	})}
}

// windowOf is what the page of a cell shows.
func (g grid) windowOf(c cell) plane.Box {
	p := g.pitch()
	corner := g.origin.Add(plane.Point{X: float64(c.column) * p.X, Y: float64(g.rows-1-c.row) * p.Y})
	return plane.Box{Min: corner, Max: corner.Add(g.window)}
}

// coreOf is what lies within the join lines of the page of a cell.
func (g grid) coreOf(c cell) plane.Box { return g.within(c, g.windowOf(c), g.overlap/2) }

// within is a window without a strip of some width at every side that has a
// neighbour in the grid.
func (g grid) within(c cell, window plane.Box, strip float64) plane.Box {
	if c.column > 0 {
		window.Min.X += strip
	}
	if c.column < g.columns-1 {
		window.Max.X -= strip
	}
	if c.row > 0 {
		window.Max.Y -= strip
	}
	if c.row < g.rows-1 {
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
func (g grid) columnsOf(a, b float64) (first, last int) {
	return span(a-g.origin.X-g.overlap/2, b-g.origin.X-g.overlap/2, g.pitch().X, g.columns)
}

// cellAt is the cell whose core holds a place, or the nearest of the grid.
func (g grid) cellAt(at plane.Point) cell {
	column, _ := g.columnsOf(at.X, at.X)
	row, _ := g.rowsOf(at.Y, at.Y)
	return cell{row, column}
}

// rowsOf is columnsOf for rows; the first is the higher one on paper.
func (g grid) rowsOf(a, b float64) (first, last int) {
	low, high := span(a-g.origin.Y-g.overlap/2, b-g.origin.Y-g.overlap/2, g.pitch().Y, g.rows)
	return g.rows - 1 - high, g.rows - 1 - low
}

func span(a, b, pitch float64, count int) (first, last int) {
	a, b = math.Min(a, b)+sliver, math.Max(a, b)-sliver
	if a > b {
		a = (a + b) / 2
		b = a
	}
	index := func(v float64) int {
		return int(math.Max(0, math.Min(float64(count-1), math.Floor(v/pitch))))
	}
	return index(a), index(b)
}

// mostVisits bounds the work of counting pages that are too many anyway: each
// is a line entering a page. A piece of 100 m by 100 m needs some thousands.
const mostVisits = 500_000

// crossed returns the cells into whose cores lines fall, in reading order,
// and whether it came to the end: it stops when there are more than MaxPages
// and it has looked at mostVisits.
func (g grid) crossed(lines []line) ([]cell, bool) {
	seen := cellSet{has: map[cell]bool{}, last: cell{-1, -1}}
	visits := 0
	for _, l := range lines {
		if !g.walk(l.clip.Path(), func(c cell) bool {
			if visits++; visits > mostVisits && len(seen.has) > MaxPages {
				return false
			}
			seen.add(c)
			return true
		}) {
			return seen.list(), false
		}
	}
	return seen.list(), true
}

// walk calls visit for the cells into whose cores a path falls, for some of
// them several times, until visit returns false. It reports whether it came to
// the end.
func (g grid) walk(p plane.Path, visit func(cell) bool) bool {
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
				left := g.origin.X + g.overlap/2 + float64(column)*g.pitch().X
				if column > first {
					low = a.Toward(b, (left-a.X)/(b.X-a.X)).Y
				}
				if column < last {
					high = a.Toward(b, (left+g.pitch().X-a.X)/(b.X-a.X)).Y
				}
			}
			top, bottom := g.rowsOf(low, high)
			for row := top; row <= bottom; row++ {
				if !visit(cell{row, column}) {
					return false
				}
			}
		}
	}
	return true
}

// cellSet is a set of cells of one grid that remembers the last one, since a
// line mostly stays where it is.
type cellSet struct {
	has  map[cell]bool
	last cell
}

func (s *cellSet) add(c cell) {
	if c != s.last {
		s.has[c] = true
		s.last = c
	}
}

// list returns the cells in reading order.
func (s *cellSet) list() []cell { return readingOrder(slices.Collect(maps.Keys(s.has))) }

func readingOrder(cells []cell) []cell {
	slices.SortFunc(cells, func(a, b cell) int {
		return cmp.Or(cmp.Compare(a.row, b.row), cmp.Compare(a.column, b.column))
	})
	return cells
}

// bridged adds the cells without which some of the cells could not be joined
// to the others: a line in the middle of a large piece may lie on a page none
// of whose neighbours has a line. Cells grow together by the shortest gap
// first. It gives up when there are more than MaxPages.
func bridged(cells []cell) []cell {
	if len(cells) == 0 {
		return nil
	}
	type loose struct {
		cell
		nearest cell // of those joined
	}
	var joined []cell
	left := make([]loose, len(cells))
	for i, c := range cells {
		left[i] = loose{c, cells[0]}
	}
	join := func(c cell) {
		joined = append(joined, c)
		for i, l := range left {
			if steps(l.cell, c) < steps(l.cell, l.nearest) {
				left[i].nearest = c
			}
		}
	}
	for join(cells[0]); len(left) > 0 && len(joined) <= MaxPages; {
		next := 0
		for i, l := range left {
			if steps(l.cell, l.nearest) < steps(left[next].cell, left[next].nearest) {
				next = i
			}
		}
		to, at := left[next].cell, left[next].nearest
		left = slices.Delete(left, next, next+1)
		if to == at {
			continue // a bridge already led over it
		}
		for at != to && len(joined) <= MaxPages {
			if at.column != to.column {
				at.column += cmp.Compare(to.column, at.column)
			} else {
				at.row += cmp.Compare(to.row, at.row)
			}
			join(at)
		}
	}
	for _, l := range left {
		joined = append(joined, l.cell)
	}
	return readingOrder(joined)
}

// connected reports whether the cells, in reading order, hang together by
// their sides.
func connected(cells []cell) bool {
	if len(cells) == 0 {
		return true
	}
	left := make(map[cell]bool, len(cells))
	for _, c := range cells {
		left[c] = true
	}
	delete(left, cells[0])
	for queue := []cell{cells[0]}; len(queue) > 0 && len(left) > 0; queue = queue[1:] {
		for _, d := range []cell{{0, 1}, {0, -1}, {1, 0}, {-1, 0}} {
			next := cell{queue[0].row + d.row, queue[0].column + d.column}
			if left[next] {
				delete(left, next)
				queue = append(queue, next)
			}
		}
	}
	return len(left) == 0
}

// steps is how many sides a way from one cell to another crosses.
func steps(a, b cell) int {
	abs := func(n int) int { return max(n, -n) }
	return abs(a.row-b.row) + abs(a.column-b.column)
}
