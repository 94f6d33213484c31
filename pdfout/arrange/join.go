package arrange

import (
	"strconv"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
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

// Join is a side that two printed pages share.
type Join struct {
	number int
	from   plane.Point // the trim line runs from here ...
	to     plane.Point // ... to here, up or to the right
	marks  [2]plane.Point
	// a is the page to the left of the trim line, or over it; b is cut along it
	// and laid on a.
	a, b Cell
}

// upright reports whether the trim line runs up.
func (j Join) upright() bool { return j.from.X == j.to.X }

// FindJoins numbers the joins of the sheet from a number on, in the order of its
// pages, and finds places for their marks where as few lines as possible run; it
// takes them. It returns the next number.
func (s *Sheet) FindJoins(number int) int {
	for _, c := range s.Cells {
		core := s.Grid.CoreOf(c)
		if right := (Cell{c.Row, c.Column + 1}); s.printed[right] {
			s.addJoin(number+len(s.Joins), c, right, plane.Point{X: core.Max.X, Y: core.Min.Y}, core.Max)
		}
		if under := (Cell{c.Row + 1, c.Column}); s.printed[under] {
			s.addJoin(number+len(s.Joins), c, under, core.Min, plane.Point{X: core.Max.X, Y: core.Min.Y})
		}
	}
	return number + len(s.Joins)
}

func (s *Sheet) addJoin(number int, a, b Cell, from, to plane.Point) {
	j := Join{number: number, from: from, to: to, a: a, b: b}
	for i, middle := range []float64{0.25, 0.75} {
		j.marks[i] = from.Toward(to, middle)
		fewest := -1
		for _, aside := range []float64{0, -0.03, 0.03, -0.06, 0.06, -0.09, 0.09, -0.12, 0.12} {
			at := from.Toward(to, middle+aside)
			n := s.Field.Crossings(j.room(at, s.Grid.Overlap), mostCounted)
			if fewest < 0 || n < fewest {
				j.marks[i], fewest = at, n
			}
			if n == 0 {
				break
			}
		}
	}
	for _, m := range j.marks {
		s.Field.Take(j.room(m, s.Grid.Overlap))
	}
	s.Joins = append(s.Joins, j)
}

// room is what a join mark at a place takes, its numbers included: all of the
// overlap's width.
func (j Join) room(at plane.Point, overlap float64) text.Slab {
	across, along := overlap/2, markRadius+markClear
	half := plane.Point{X: across, Y: along}
	if !j.upright() {
		half = plane.Point{X: along, Y: across}
	}
	return text.Level(at, half)
}

// Draw draws the join on the page of a cell: the trim line where that page is cut
// along it, the corners where the other comes to lie on it, the marks on both; nothing
// on the pages of other cells.
func (j Join) Draw(d ink.Canvas, c Cell) {
	lines := []plane.Path{{j.from, j.to}}
	switch c {
	case j.a:
		along := j.to.Sub(j.from).Unit().Mul(cornerLength)
		lines = []plane.Path{{j.from, j.from.Add(along)}, {j.to, j.to.Sub(along)}}
	case j.b:
	default:
		return
	}
	d.Save()
	d.Pen(ink.JoinPen())
	ink.StrokeEach(d, lines...)
	for _, m := range j.marks {
		DrawJoinMark(d, m)
	}
	d.Restore()
	aside := plane.Point{X: markAway}
	if !j.upright() {
		aside = plane.Point{Y: markAway}
	}
	for _, m := range j.marks {
		for _, at := range []plane.Point{m.Add(aside), m.Sub(aside)} {
			ink.WriteMiddle(d, at, ink.Strong(markNumber).In(ink.Grey()), strconv.Itoa(j.number))
		}
	}
}

// DrawJoinMark draws the circle and cross of a join mark with the pen taken up.
func DrawJoinMark(d ink.Canvas, at plane.Point) {
	d.Circle(at, markRadius)
	for _, arm := range []plane.Point{{X: markArm}, {Y: markArm}} {
		d.Path(plane.Path{at.Sub(arm), at.Add(arm)})
	}
	d.Stroke()
}

// Slips reports whether a page of the sheet comes after the one that is laid on it:
// it goes under the cut edge of that.
func (s *Sheet) Slips() bool {
	place := map[Cell]int{}
	for k, c := range s.Cells {
		place[c] = k
	}
	after := func(c Cell, k int) bool {
		at, printed := place[c]
		return printed && at > k
	}
	for k, c := range s.Cells {
		if after(Cell{c.Row, c.Column - 1}, k) || after(Cell{c.Row - 1, c.Column}, k) {
			return true
		}
	}
	return false
}
