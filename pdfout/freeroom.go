package pdfout

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
func (s *sheet) obstacles() []line {
	var all []line
	for _, p := range s.pieces {
		all = append(all, p.lines...)
		all = append(all, newLine(0, "", p.outline.Path()))
	}
	return all
}

// bins is a part of a page in bins, with as many around it as lie nearer to it
// than pieces lie apart.
type bins struct {
	grid   grid
	around int    // columns and rows of bins at every side of the part
	taken  []bool // row by row, the lowest first
}

// newBins cuts an area into free bins; nil where it has not even one.
func newBins(area plane.Box) *bins {
	columns, rows := int(area.Width()/roomBin), int(area.Height()/roomBin)
	if columns < 1 || rows < 1 {
		return nil
	}
	b := &bins{around: int(math.Ceil(apart / roomBin))}
	size := plane.Point{X: area.Width() / float64(columns), Y: area.Height() / float64(rows)}
	b.grid = grid{columns: columns + 2*b.around, rows: rows + 2*b.around, window: size}
	b.grid.origin = area.Min.Sub(size.Mul(float64(b.around)))
	b.taken = make([]bool, b.grid.columns*b.grid.rows)
	return b
}

// take takes the bins into which a line falls.
func (b *bins) take(l line) {
	for _, run := range l.clip.Clip(b.grid.box()) {
		b.grid.walk(run.Path, func(c cell) bool {
			b.taken[(b.grid.rows-1-c.row)*b.grid.columns+c.column] = true
			return true
		})
	}
}

// spread takes all bins that pieces must not come into for the bins taken: first
// along the rows, then along the columns.
func (b *bins) spread() {
	for _, stride := range []int{1, b.grid.columns} {
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
		X: (float64(column) + 0.5) * b.grid.window.X,
		Y: (float64(row) + 0.5) * b.grid.window.Y,
	})
}

// takeInside takes the bins that lie inside a piece. Bins side by side that no
// outline runs between lie all inside, or all outside.
func (b *bins) takeInside(s *sheet) {
	for row := range b.grid.rows {
		line := b.taken[row*b.grid.columns : (row+1)*b.grid.columns]
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
func (s *sheet) freeBoxes(obstacles []line, area plane.Box) []plane.Box {
	b := newBins(area)
	if b == nil {
		return nil
	}
	for _, l := range obstacles {
		if l.bounds.Meets(b.grid.box()) {
			b.take(l)
		}
	}
	b.spread()
	b.takeInside(s)
	return b.largest()
}

// largest returns the largest boxes of free bins.
func (b *bins) largest() []plane.Box {
	low, columns, rows := b.around, b.grid.columns-b.around, b.grid.rows-b.around
	free := func(column, row int) bool {
		return column >= low && column < columns && row >= low && row < rows && !b.taken[row*b.grid.columns+column]
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
					half := b.grid.window.Mul(0.5)
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
