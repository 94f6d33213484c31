package pdfout

import "tuckmark/marking/plane"

// Rules of this file: where two printed pages meet, both print the same join
// line, and on it two join marks at the same places of the sheet: a small
// circle with a cross in it, and the join's number on either side of the line,
// so that the number is still there when one page is cut along it.

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
)

// join is a side that two printed pages share.
type join struct {
	number int
	from   plane.Point // the join line runs from here ...
	to     plane.Point // ... to here, up or to the right
	marks  [2]plane.Point
	a, b   cell
}

// upright reports whether the join line runs up.
func (j join) upright() bool { return j.from.X == j.to.X }

// findJoins numbers the joins of the sheet in reading order and finds places
// for their marks where as few lines as possible run; it takes them.
func (s *sheet) findJoins() {
	for _, c := range s.cells {
		core := s.grid.coreOf(c)
		if right := (cell{c.row, c.column + 1}); s.printed[right] {
			s.addJoin(c, right, plane.Point{X: core.Max.X, Y: core.Min.Y}, core.Max)
		}
		if under := (cell{c.row + 1, c.column}); s.printed[under] {
			s.addJoin(c, under, core.Min, plane.Point{X: core.Max.X, Y: core.Min.Y})
		}
	}
}

func (s *sheet) addJoin(a, b cell, from, to plane.Point) {
	j := join{number: len(s.joins) + 1, from: from, to: to, a: a, b: b}
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
