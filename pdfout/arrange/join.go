package arrange

import (
	"fmt"
	"strconv"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: pages are laid together in their order, each on those that
// lie already, cut along the trim lines at its left and at its top. So a trim line
// is printed only on the page to the right of a join, or under it. The other page
// has, where the cut edge will come to lie, a corner at either end of the join. Both
// print two join marks at the same places of the sheet: a small circle with a cross
// in it, and beside it the join's number on either side of the line, so that the number
// is still there when the page is cut. Outside the line, in what is cut off or covered,
// each page names the other. All that is written runs along the line. No two joins of a
// set have the same number. Ruled paper is cleared under all of it; lines of pieces run over it.

const (
	markRadius = 2.2 // of a join mark's circle, in mm
	markArm    = 1.3 // of its cross, from the middle, in mm
	// besideJoin is how far from the join line the middle of what is written along it
	// lies, in mm: clear of the line, and of the sides of the narrowest overlap.
	besideJoin = 2.5
	// mostCounted bounds how many lines under a join mark are counted.
	mostCounted = 1000
	// markClear is kept free before and after a mark and what is written, in mm.
	markClear = 0.5
	// cornerLength is how long the corners at the ends of a join are, in mm.
	cornerLength = 4.0
)

// joinsHere says which page is joined.
func joinsHere(number int) string { return fmt.Sprintf("page %d joins here", number) }

// numberStyle is that of a join's number.
func numberStyle() ink.Style { return ink.StrongText().In(ink.Grey()) }

// Join is a side that two printed pages share.
type Join struct {
	number int
	from   plane.Point // the trim line runs from here ...
	to     plane.Point // ... to here, up or to the right
	marks  [2]plane.Point
	named  plane.Point // beside it stands which page is joined
	// a is the page to the left of the trim line, or over it; b is cut along it
	// and laid on a.
	a, b Cell
}

// along is the direction of the trim line.
func (j Join) along() plane.Point { return j.to.Sub(j.from).Unit() }

// FindJoins numbers the joins of the sheet from a number on, in the order of its
// pages, leaves bridges in the windows across them, and finds places for their marks where
// as few lines as possible run; it takes them. It returns the next number.
func (s *Sheet) FindJoins(number int) int {
	add := func(a, b Cell, from, to plane.Point) {
		s.Joins = append(s.Joins, Join{number: number + len(s.Joins), from: from, to: to, a: a, b: b})
	}
	for _, c := range s.Cells {
		core := s.Grid.CoreOf(c)
		if right := (Cell{c.Row, c.Column + 1}); s.printed[right] {
			add(c, right, plane.Point{X: core.Max.X, Y: core.Min.Y}, core.Max)
		}
		if under := (Cell{c.Row + 1, c.Column}); s.printed[under] {
			add(c, under, core.Min, plane.Point{X: core.Max.X, Y: core.Min.Y})
		}
	}
	s.bridgeWindows()
	for i := range s.Joins {
		s.placeMarks(&s.Joins[i])
	}
	return number + len(s.Joins)
}

// placeMarks finds the places of what is drawn and written on a join.
func (s *Sheet) placeMarks(j *Join) {
	circle := markRadius + markClear
	withNumber := circle + numberStyle().Width(strconv.Itoa(j.number)) + markClear
	take := func(at plane.Point, room text.Slab) plane.Point {
		s.Field.Take(room)
		return at
	}
	on := s.marked(*j)
	j.marks[0] = take(s.besideLines(on, 0.25, 0.03, 3, circle, withNumber))
	j.marks[1] = take(s.besideLines(on, 0.75, 0.03, 3, withNumber, circle))
	half := ink.Caption().Width(joinsHere(paper.MaxPages))/2 + markClear
	named, room := s.besideLines(*j, 0.5, 0.01, 40, half, half)
	if s.isRuled() {
		room.Half.Y = 0 // beside it no page has both this and a number
	}
	j.named = take(named, room)
}

// leastMarked is the least part of a join that has both its marks, in mm.
const leastMarked = 40.0

// marked is the part of a join on which its marks stand: of ruled paper what has lines, if that
// is long enough.
func (s *Sheet) marked(j Join) Join {
	if !s.isRuled() {
		return j
	}
	ruled, part := s.host().Bounds, j
	within := func(q plane.Point) plane.Point {
		return plane.Point{X: min(max(q.X, ruled.Min.X), ruled.Max.X), Y: min(max(q.Y, ruled.Min.Y), ruled.Max.Y)}
	}
	part.from, part.to = within(j.from), within(j.to)
	if part.from.Distance(part.to) < leastMarked {
		return j
	}
	return part
}

// besideLines finds a place on a join for what reaches some mm before and after it, and the
// room of that: the nearest to a share of the join, in steps of it to either side, on which
// the fewest lines run, and where nothing else lies.
func (s *Sheet) besideLines(j Join, share, step float64, steps int, before, after float64) (plane.Point, text.Slab) {
	best, fewest := j.from.Toward(j.to, share), mostCounted
	for k := range 2*steps + 1 {
		aside := step * float64((k+1)/2)
		if k%2 == 1 {
			aside = -aside
		}
		at := j.from.Toward(j.to, share+aside)
		room := j.room(at, before, after, s.Grid.Overlap)
		if s.Field.meetsPlaced(room) {
			continue
		}
		if n := s.Field.Crossings(room, fewest); n < fewest {
			best, fewest = at, n
		}
	}
	return best, j.room(best, before, after, s.Grid.Overlap)
}

// room is what reaches some mm before and after a place of the join: all of the overlap's
// width.
func (j Join) room(at plane.Point, before, after, overlap float64) text.Slab {
	along := j.along()
	return text.Slab{Centre: at.Add(along.Mul((after - before) / 2)), Half: plane.Point{X: (before + after) / 2, Y: overlap / 2}, U: along}
}

// Draw draws the join on the page of a cell: the trim line where that page is cut
// along it, the corners where the other comes to lie on it, on both the marks and the
// number of the other page; nothing on the pages of other cells.
func (j Join) Draw(d ink.Canvas, c Cell, page func(Cell) int) {
	along := j.along()
	out := along.Left().Mul(besideJoin) // from the page on which it is drawn
	lines, other := []plane.Path{{j.from, j.to}}, j.a
	switch c {
	case j.a:
		corner := along.Mul(cornerLength)
		lines, other = []plane.Path{{j.from, j.from.Add(corner)}, {j.to, j.to.Sub(corner)}}, j.b
		out = out.Mul(-1)
	case j.b:
	default:
		return
	}
	d.Save()
	d.Pen(ink.JoinPen())
	ink.StrokeEach(d, lines...)
	for _, m := range j.marks {
		ink.Clear(d, m, along, plane.Point{X: markRadius, Y: markRadius})
		DrawJoinMark(d, m)
	}
	d.Restore()
	number := strconv.Itoa(j.number)
	away := along.Mul(markRadius + markClear + numberStyle().Width(number)/2)
	for _, at := range []plane.Point{j.marks[0].Add(away), j.marks[1].Sub(away)} {
		writeAlong(d, at.Add(out), along, numberStyle(), number)
		writeAlong(d, at.Sub(out), along, numberStyle(), number)
	}
	writeAlong(d, j.named.Add(out), along, ink.Caption(), joinsHere(page(other)))
}

// writeAlong writes text in a direction, with its middle at a place, over what is there.
func writeAlong(d ink.Canvas, at, u plane.Point, s ink.Style, words string) {
	ink.Clear(d, at, u, s.Half(words))
	at = at.Sub(u.Mul(s.Width(words) / 2)).Sub(u.Left().Mul(s.Middle()))
	d.Text(at, u, s, words)
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
