package arrange

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: it answers whether a place on a sheet is free, for
// whoever wants to print something there that is not a line of a piece.

// Field is what lies on a sheet: its lines, and what has found its place
// among them.
type Field struct {
	// tree is over all lines, one after the other. The segments numbered in apart, which rise, are
	// none of its: they only lead from one line to the next, or are slanting.
	tree  *plane.Tree
	apart []int
	// slanting are segments that are long and slant, by the squares they run through: the box of
	// such a one is large, and most of what is asked for would lie in it and not touch the line.
	slanting [][]int
	// taken are the placed slabs, by the squares they reach into: row by row, the lowest first.
	taken [][]taken
	squares
}

// taken is a placed slab and the box round it, which is asked first: most are far off.
type taken struct {
	text.Slab
	box plane.Box
}

// squares cut a sheet into so many columns and rows, from its lower left corner. What lies
// beyond it is counted to the nearest of them.
type squares struct {
	corner        plane.Point
	side          float64 // in mm
	columns, rows int
}

const (
	// leastSquare is the least side of a square, in mm: a few texts wide.
	leastSquare = 60.0
	// mostSquares bounds how many there are side by side, and one over the other.
	mostSquares = 200
)

// squaresOver cuts a box into squares.
func squaresOver(b plane.Box) squares {
	if b.Empty() {
		return squares{side: leastSquare, columns: 1, rows: 1}
	}
	side := max(leastSquare, b.Width()/mostSquares, b.Height()/mostSquares)
	return squares{b.Min, side, 1 + int(b.Width()/side), 1 + int(b.Height()/side)}
}

// under calls visit for every square that a box reaches into, by its number, until visit returns
// false.
func (s squares) under(b plane.Box, visit func(int) bool) {
	index := func(v float64, count int) int { return int(min(max(v/s.side, 0), float64(count-1))) }
	first, last := index(b.Min.X-s.corner.X, s.columns), index(b.Max.X-s.corner.X, s.columns)
	low, high := index(b.Min.Y-s.corner.Y, s.rows), index(b.Max.Y-s.corner.Y, s.rows)
	for row := low; row <= high; row++ {
		for column := first; column <= last; column++ {
			if !visit(row*s.columns + column) {
				return
			}
		}
	}
}

// along calls visit for every square that a segment runs through, and maybe more than once.
func (s squares) along(a, b plane.Point, visit func(int)) {
	if a.Y > b.Y {
		a, b = b, a
	}
	row := func(v float64) float64 { return math.Floor((v - s.corner.Y) / s.side) }
	for from, at := a, row(a.Y); at <= row(b.Y); at++ {
		to := b
		if top := s.corner.Y + (at+1)*s.side; top < b.Y {
			to = a.Toward(b, (top-a.Y)/(b.Y-a.Y))
		}
		s.under(plane.Path{from, to}.Bounds().Grown(roundingOff), func(square int) bool {
			visit(square)
			return true
		})
		from = to
	}
}

// leastSlant is how wide and high the box of a segment is at least, in mm, that is looked for by
// squares: of a few texts. It bounds nothing but time.
const leastSlant = 30.0

// slants reports whether a segment is long and slants.
func slants(a, b plane.Point) bool {
	return math.Abs(a.X-b.X) > leastSlant && math.Abs(a.Y-b.Y) > leastSlant
}

// roundingOff bounds what rounding adds to a few lengths, in mm.
const roundingOff = 1e-9

// NewField looks at the lines of the pieces.
func NewField(pieces []Piece) *Field {
	var all plane.Path
	var slanting []int
	f := &Field{}
	for _, p := range pieces {
		for _, l := range p.Lines {
			path := l.Path()
			for i := 1; i < len(path); i++ {
				if slants(path[i-1], path[i]) {
					slanting = append(slanting, len(all)+i-1)
				}
			}
			all = append(all, path...)
			f.apart = append(f.apart, len(all)-1)
		}
	}
	f.apart = append(f.apart, slanting...)
	slices.Sort(f.apart)
	dead := make([]bool, len(all))
	for _, i := range f.apart {
		if i >= 0 { // a line may have no points
			dead[i] = true
		}
	}
	f.tree = plane.NewTreeWithout(dead, all)
	f.squares = squaresOver(all.Bounds())
	f.taken = make([][]taken, f.columns*f.rows)
	f.slanting = make([][]int, f.columns*f.rows)
	for _, i := range slanting {
		f.along(all[i], all[i+1], func(at int) {
			if in := f.slanting[at]; len(in) == 0 || in[len(in)-1] != i {
				f.slanting[at] = append(in, i)
			}
		})
	}
	return f
}

// Take marks a slab as no longer free.
func (f *Field) Take(s text.Slab) {
	box := s.Bounds()
	f.under(box, func(at int) bool {
		f.taken[at] = append(f.taken[at], taken{s, box.Grown(roundingOff)})
		return true
	})
}

// Free reports whether no line and nothing that was placed touches the slab.
func (f *Field) Free(s text.Slab) bool { return !f.meetsPlaced(s) && f.Crossings(s, 1) == 0 }

// meetsPlaced reports whether anything that was placed touches the slab.
func (f *Field) meetsPlaced(s text.Slab) bool {
	met, box := false, s.Bounds()
	f.under(box, func(at int) bool {
		all := f.taken[at]
		for i := 0; i < len(all) && !met; i++ {
			met = all[i].box.Meets(box) && s.Meets(all[i].Slab)
		}
		return !met
	})
	return met
}

// segmentsIn counts the segments of a line that touch the slab.
func segmentsIn(line *plane.Tree, s text.Slab) int {
	path, n := line.Path(), 0
	line.Meeting(s.Bounds(), func(i int) bool {
		if s.MeetsSegment(path[i], path[i+1]) {
			n++
		}
		return true
	})
	return n
}

// Crossings counts the segments that touch the slab, up to a limit.
func (f *Field) Crossings(s text.Slab, limit int) int {
	n := f.slantingUnder(s, limit)
	if n >= limit {
		return n
	}
	path := f.tree.Path()
	f.tree.Meeting(s.Bounds(), func(i int) bool {
		if s.MeetsSegment(path[i], path[i+1]) {
			if _, apart := slices.BinarySearch(f.apart, i); !apart {
				n++
			}
		}
		return n < limit
	})
	return n
}

// slantingUnder counts those that slant and touch the slab, up to a limit.
func (f *Field) slantingUnder(s text.Slab, limit int) int {
	path := f.tree.Path()
	var found []int // one may run through several of the squares
	f.under(s.Bounds(), func(at int) bool {
		for _, i := range f.slanting[at] {
			if s.MeetsSegment(path[i], path[i+1]) && !slices.Contains(found, i) {
				if found = append(found, i); len(found) >= limit {
					return false
				}
			}
		}
		return true
	})
	return len(found)
}
