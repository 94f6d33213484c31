package arrange

import (
	"cmp"
	"maps"
	"slices"

	"tuckmark/pdfout/paper"
)

// Rules of this file: cells are pages by their places in a grid. Those of a sheet hang
// together by their sides, so that every page can be joined to one laid before it.

// Cell is a place in the grid; row 0 is the topmost.
type Cell struct{ Row, Column int }

// InReadingOrder returns the cells of a set, row by row.
func InReadingOrder(set map[Cell]bool) []Cell { return readingOrder(slices.Collect(maps.Keys(set))) }

// readingOrder brings cells into reading order, in place.
func readingOrder(cells []Cell) []Cell {
	slices.SortFunc(cells, func(a, b Cell) int {
		return cmp.Or(cmp.Compare(a.Row, b.Row), cmp.Compare(a.Column, b.Column))
	})
	return cells
}

// steps is how many sides a way from one cell to another crosses.
func steps(a, b Cell) int {
	abs := func(n int) int { return max(n, -n) }
	return abs(a.Row-b.Row) + abs(a.Column-b.Column)
}

// connected reports whether the cells, in reading order, hang together by
// their sides.
func connected(cells []Cell) bool {
	if len(cells) == 0 {
		return true
	}
	left := make(map[Cell]bool, len(cells))
	for _, c := range cells {
		left[c] = true
	}
	delete(left, cells[0])
	for queue := []Cell{cells[0]}; len(queue) > 0 && len(left) > 0; queue = queue[1:] {
		for _, d := range []Cell{{0, 1}, {0, -1}, {1, 0}, {-1, 0}} {
			next := Cell{queue[0].Row + d.Row, queue[0].Column + d.Column}
			if left[next] {
				delete(left, next)
				queue = append(queue, next)
			}
		}
	}
	return len(left) == 0
}

// bridged adds the cells without which some of the cells could not be joined
// to the others: a line in the middle of a large piece may lie on a page none
// of whose neighbours has a line. Cells grow together by the shortest gap
// first. It gives up when there are more than MaxPages.
func bridged(cells []Cell) []Cell {
	if len(cells) == 0 {
		return nil
	}
	type loose struct {
		Cell
		nearest Cell // of those joined
	}
	var joined []Cell
	left := make([]loose, len(cells))
	for i, c := range cells {
		left[i] = loose{c, cells[0]}
	}
	join := func(c Cell) {
		joined = append(joined, c)
		for i, l := range left {
			if steps(l.Cell, c) < steps(l.Cell, l.nearest) {
				left[i].nearest = c
			}
		}
	}
	for join(cells[0]); len(left) > 0 && len(joined) <= paper.MaxPages; {
		next := 0
		for i, l := range left {
			if steps(l.Cell, l.nearest) < steps(left[next].Cell, left[next].nearest) {
				next = i
			}
		}
		to, at := left[next].Cell, left[next].nearest
		left = slices.Delete(left, next, next+1)
		if to == at {
			continue // a bridge already led over it
		}
		for at != to && len(joined) <= paper.MaxPages {
			if at.Column != to.Column {
				at.Column += cmp.Compare(to.Column, at.Column)
			} else {
				at.Row += cmp.Compare(to.Row, at.Row)
			}
			join(at)
		}
	}
	for _, l := range left {
		joined = append(joined, l.Cell)
	}
	return readingOrder(joined)
}

// gluingOrder returns the cells in the order in which their pages are laid together:
// row by row, but none before one that it can be joined to. The cells hang together
// by their sides; what does not comes last.
func gluingOrder(cells []Cell) []Cell {
	left := readingOrder(slices.Clone(cells))
	laid := map[Cell]bool{}
	touches := func(c Cell) bool {
		return laid[Cell{c.Row, c.Column - 1}] || laid[Cell{c.Row - 1, c.Column}] ||
			laid[Cell{c.Row, c.Column + 1}] || laid[Cell{c.Row + 1, c.Column}]
	}
	var order []Cell
	for len(left) > 0 {
		next := max(0, slices.IndexFunc(left, touches))
		order = append(order, left[next])
		laid[left[next]] = true
		left = slices.Delete(left, next, next+1)
	}
	return order
}
