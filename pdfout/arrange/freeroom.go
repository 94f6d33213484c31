package arrange

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: it finds the room that large pieces leave free on a page,
// as boxes. The page is cut into bins; a bin is taken when a line comes nearer to
// it than pieces lie apart, or when it lies inside a piece. Every free box is made
// of whole bins and cannot be made larger.

// roomBin is the least width and height of a bin, in mm: by as much less than
// there is may be found, on either side.
const roomBin = 3.0

// obstacles returns what nothing may come near to: the sheet's lines, and the
// outlines of its pieces, which need not all be drawn.
func (s *Sheet) obstacles() []Line {
	var all []Line
	for _, p := range s.Pieces {
		all = append(all, p.Lines...)
		all = append(all, NewLine(0, "", p.Outline.Path()))
	}
	return all
}

// bins is a part of a page in bins, with as many around it as lie nearer to it
// than pieces lie apart.
type bins struct {
	grid   Grid
	around int    // columns and rows of bins at every side of the part
	taken  []bool // row by row, the lowest first
}

// newBins cuts an area into free bins; nil where it has not even one.
func newBins(area plane.Box) *bins {
	columns, rows := int(area.Width()/roomBin), int(area.Height()/roomBin)
	if columns < 1 || rows < 1 {
		return nil
	}
	b := &bins{around: int(math.Ceil(Apart / roomBin))}
	size := plane.Point{X: area.Width() / float64(columns), Y: area.Height() / float64(rows)}
	b.grid = Grid{Columns: columns + 2*b.around, Rows: rows + 2*b.around, Window: size}
	b.grid.origin = area.Min.Sub(size.Mul(float64(b.around)))
	b.taken = make([]bool, b.grid.Columns*b.grid.Rows)
	return b
}

// take takes the bins into which a line falls.
func (b *bins) take(l Line) {
	for _, run := range l.Clip(b.grid.Box()) {
		b.grid.walk(run.Path, func(c Cell) bool {
			b.taken[(b.grid.Rows-1-c.Row)*b.grid.Columns+c.Column] = true
			return true
		})
	}
}

// spread takes all bins that pieces must not come into for the bins taken: first
// along the rows, then along the columns.
func (b *bins) spread() {
	for _, stride := range []int{1, b.grid.Columns} {
		before := b.taken
		b.taken = make([]bool, len(before))
		for i, taken := range before {
			if !taken {
				continue
			}
			// What goes beyond the end of a row comes into bins around
			// the part, which nothing is put into.
			for k := -b.around; k <= b.around; k++ {
				if j := i + k*stride; j >= 0 && j < len(before) {
					b.taken[j] = true
				}
			}
		}
	}
}

// middle is the middle of a bin; row 0 is the lowest.
func (b *bins) middle(column, row int) plane.Point {
	return b.grid.origin.Add(plane.Point{
		X: (float64(column) + 0.5) * b.grid.Window.X,
		Y: (float64(row) + 0.5) * b.grid.Window.Y,
	})
}

// takeInside takes the bins that lie inside a piece. Bins side by side that no
// outline runs between lie all inside, or all outside.
func (b *bins) takeInside(s *Sheet) {
	for row := range b.grid.Rows {
		line := b.taken[row*b.grid.Columns : (row+1)*b.grid.Columns]
		inside, begins := false, true // whether a run of free bins begins here
		for column := range line {
			if line[column] {
				begins = true
				continue
			}
			if begins {
				inside, begins = s.insideAny(b.middle(column, row)), false
			}
			line[column] = inside
		}
	}
}

// freeBoxes returns the largest boxes in a part of a page that are clear of
// obstacles and outside all pieces of the sheet.
func (s *Sheet) freeBoxes(obstacles []Line, area plane.Box) []plane.Box {
	b := newBins(area)
	if b == nil {
		return nil
	}
	for _, l := range obstacles {
		if l.Bounds().Meets(b.grid.Box()) {
			b.take(l)
		}
	}
	b.spread()
	b.takeInside(s)
	return b.largest()
}

// largest returns the largest boxes of free bins.
func (b *bins) largest() []plane.Box {
	low, columns, rows := b.around, b.grid.Columns-b.around, b.grid.Rows-b.around
	free := func(column, row int) bool {
		return column >= low && column < columns && row >= low && row < rows && !b.taken[row*b.grid.Columns+column]
	}
	var all []plane.Box
	heights := make([]int, columns+1) // of the free bins from a row downwards, by columns
	for row := low; row < rows; row++ {
		type step struct{ from, height int }
		var stairs []step
		blocked := low - 1 // the last column before this one over which the next row is taken
		for column := low; column <= columns; column++ {
			if free(column, row) {
				heights[column]++
			} else {
				heights[column] = 0
			}
			from := column
			for len(stairs) > 0 && stairs[len(stairs)-1].height >= heights[column] {
				top := stairs[len(stairs)-1]
				stairs = stairs[:len(stairs)-1]
				from = top.from
				// Where the next row is free all along, the box can be
				// made higher.
				if top.height > heights[column] && blocked >= top.from {
					half := b.grid.Window.Mul(0.5)
					all = append(all, plane.Box{
						Min: b.middle(top.from, row-top.height+1).Sub(half),
						Max: b.middle(column-1, row).Add(half),
					})
				}
			}
			if heights[column] > 0 {
				stairs = append(stairs, step{from, heights[column]})
			}
			if !free(column, row+1) {
				blocked = column
			}
		}
	}
	return all
}
