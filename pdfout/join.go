package pdfout

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: pages are laid together in their order, each on those that
// lie already, cut along the trim lines at its left and at its top. So a trim line
// is printed only on the page to the right of a join, or under it. The other page
// has, where the cut edge will come to lie, a corner at either end of the join. Both
// print two join marks at the same places of the sheet: a small circle with a cross
// in it, and the join's number on either side of the line, so that the number is
// still there when the page is cut. No two joins of a set have the same number.

const (
	markRadius = 2.2 // of a join mark's circle, in mm
	markArm    = 1.3 // of its cross, from the middle, in mm
	markNumber = 6.5 // size of its number, in points
	// markAway is how far from the join line the middle of its number lies,
	// in mm: beyond the circle and short of the window's side.
	markAway = 3.6
	// mostCounted bounds how many lines under a join mark are counted.
	mostCounted = 1000
	// markClear is kept free above and below the circle, in mm.
	markClear = 0.5
	// cornerLength is how long the corners at the ends of a join are, in mm.
	cornerLength = 4.0
)

// join is a side that two printed pages share.
type join struct {
	number int
	from   plane.Point // the trim line runs from here ...
	to     plane.Point // ... to here, up or to the right
	marks  [2]plane.Point
	// a is the page to the left of the trim line, or over it; b is cut along it
	// and laid on a.
	a, b cell
}

// upright reports whether the trim line runs up.
func (j join) upright() bool { return j.from.X == j.to.X }

// findJoins numbers the joins of the sheet from a number on, in the order of its
// pages, and finds places for their marks where as few lines as possible run; it
// takes them. It returns the next number.
func (s *sheet) findJoins(number int) int {
	for _, c := range s.cells {
		core := s.grid.coreOf(c)
		if right := (cell{c.row, c.column + 1}); s.printed[right] {
			s.addJoin(number+len(s.joins), c, right, plane.Point{X: core.Max.X, Y: core.Min.Y}, core.Max)
		}
		if under := (cell{c.row + 1, c.column}); s.printed[under] {
			s.addJoin(number+len(s.joins), c, under, core.Min, plane.Point{X: core.Max.X, Y: core.Min.Y})
		}
	}
	return number + len(s.joins)
}

func (s *sheet) addJoin(number int, a, b cell, from, to plane.Point) {
	j := join{number: number, from: from, to: to, a: a, b: b}
	for i, middle := range []float64{0.25, 0.75} {
		j.marks[i] = from.Toward(to, middle)
		fewest := -1
		for _, aside := range []float64{0, -0.03, 0.03, -0.06, 0.06, -0.09, 0.09, -0.12, 0.12} {
			at := from.Toward(to, middle+aside)
			n := s.field.crossings(j.room(at, s.grid.overlap), mostCounted)
			if fewest < 0 || n < fewest {
				j.marks[i], fewest = at, n
			}
			if n == 0 {
				break
			}
		}
	}
	for _, m := range j.marks {
		s.field.take(j.room(m, s.grid.overlap))
	}
	s.joins = append(s.joins, j)
}

// room is what a join mark at a place takes, its numbers included: all of the
// overlap's width.
func (j join) room(at plane.Point, overlap float64) slab {
	across, along := overlap/2, markRadius+markClear
	half := plane.Point{X: across, Y: along}
	if !j.upright() {
		half = plane.Point{X: along, Y: across}
	}
	return slab{at, half, plane.Point{X: 1}}
}

// corners are short lines from either end of the join along it.
func (j join) corners() []plane.Path {
	along := j.to.Sub(j.from).Unit().Mul(cornerLength)
	return []plane.Path{{j.from, j.from.Add(along)}, {j.to, j.to.Sub(along)}}
}

// gluingOrder returns the cells in the order in which their pages are laid together:
// row by row, but none before one that it can be joined to. The cells hang together
// by their sides; what does not comes last.
func gluingOrder(cells []cell) []cell {
	left := readingOrder(slices.Clone(cells))
	laid := map[cell]bool{}
	touches := func(c cell) bool {
		return laid[cell{c.row, c.column - 1}] || laid[cell{c.row - 1, c.column}] ||
			laid[cell{c.row, c.column + 1}] || laid[cell{c.row + 1, c.column}]
	}
	var order []cell
	for len(left) > 0 {
		next := max(0, slices.IndexFunc(left, touches))
		order = append(order, left[next])
		laid[left[next]] = true
		left = slices.Delete(left, next, next+1)
	}
	return order
}

// slips reports whether a page of the sheet comes after the one that is laid on it:
// it goes under the cut edge of that.
func (s *sheet) slips() bool {
	place := map[cell]int{}
	for k, c := range s.cells {
		place[c] = k
	}
	after := func(c cell, k int) bool {
		at, printed := place[c]
		return printed && at > k
	}
	for k, c := range s.cells {
		if after(cell{c.row, c.column - 1}, k) || after(cell{c.row - 1, c.column}, k) {
			return true
		}
	}
	return false
}
