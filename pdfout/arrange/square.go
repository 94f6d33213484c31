package arrange

import (
	"cmp"
	"iter"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: a check square is a filled frame whose outside measures
// exactly what it says; a stroked one would be wider by its line. Its corner
// lies on a whole 6 units of the page, which are 25 dots of a 300 dpi printer
// and 50 of a 600 dpi one, so that no side of it is rounded away. (Of a
// page drawn for a printer that is off, on 6 units as they come out.)

const (
	// Clearing is how far a check square stays from lines, in mm.
	Clearing = 2.0
	// largestSquare is the largest SquareSize, in mm.
	largestSquare = 30.0
)

// SquareSize is the side of the small check square, in mm.
func SquareSize(unit length.Unit) float64 {
	if unit == length.Inch {
		return 25.4
	}
	return largestSquare
}

// SquareLabel says how long the side of the small check square is.
func SquareLabel(unit length.Unit) string {
	switch unit {
	case length.Inch:
		return "1 in"
	case length.Centimetre:
		return "3 cm"
	}
	return "30 mm"
}

// squares finds the places of the check squares of one sheet.
type squares struct {
	side  float64
	paper paper.Paper
	// known are the places on a page, by what of the page is clear of join
	// lines; most pages of a sheet have the same.
	known map[plane.Box][]plane.Point
}

func newSquares(side float64, on paper.Paper) squares {
	return squares{side, on, map[plane.Box][]plane.Point{}}
}

// squarePlace is a place for a check square.
type squarePlace struct {
	corner plane.Point // the lower left one, on the page
	room   text.Slab   // on the sheet, with what is kept clear round it
}

// at is the place of a check square whose lower left corner is at a place of the page
// of a cell, and roomAt what it takes up of the sheet itself.
func (q squares) at(s *Sheet, c Cell, corner plane.Point) squarePlace {
	return squarePlace{corner, q.roomAt(s, c, corner).Grown(Clearing)}
}

func (q squares) roomAt(s *Sheet, c Cell, corner plane.Point) text.Slab {
	low := corner.Add(s.Grid.WindowOf(c).Min.Sub(q.paper.Window().Min))
	return text.Upright(plane.Box{Min: low, Max: low.Add(plane.Point{X: q.side, Y: q.side})})
}

// open is what of the page of a cell is clear of join lines.
func (q squares) open(s *Sheet, c Cell) plane.Box {
	return s.Grid.within(c, q.paper.Window(), s.Grid.Overlap/2+Clearing)
}

// corners returns where the corner of a check square may lie on an open box of a
// page, the same for all alike.
func (q squares) corners(open plane.Box) []plane.Point {
	if q.known[open] == nil {
		q.known[open] = squarePlaces(open, q.side, squareSteps)
	}
	return q.known[open]
}

// free leads through those of some places for the check square of a page that are
// free of lines and text, in the order in which the square takes them: rather outside
// the pieces than in the largest of them, rather in a corner.
func (q squares) free(s *Sheet, f *Field, c Cell, corners []plane.Point) iter.Seq[squarePlace] {
	return func(yield func(squarePlace) bool) {
		type inside struct {
			squarePlace
			size float64
		}
		var within []inside
		for _, corner := range corners {
			place := q.at(s, c, corner)
			if size := s.sizeAround(place.room.Centre); size > 0 {
				within = append(within, inside{place, size})
			} else if f.Free(place.room) && !yield(place) {
				return
			}
		}
		slices.SortStableFunc(within, func(a, b inside) int { return cmp.Compare(b.size, a.size) })
		for _, place := range within {
			if f.Free(place.room) && !yield(place.squarePlace) {
				return
			}
		}
	}
}

// find finds the place for the check square of a page and takes it: the first free
// one. On a page without a free place it goes where it crosses the fewest lines, and
// no text if it can. It returns the lower left corner, on the page.
func (q squares) find(s *Sheet, f *Field, c Cell) plane.Point {
	open := q.open(s, c)
	for place := range q.free(s, f, c, q.corners(open)) {
		f.Take(place.room)
		return place.corner
	}
	if len(s.Cells) == 1 {
		// On a page that pieces share there is a gap for it, if a narrow one.
		for place := range q.free(s, f, c, squarePlaces(open, q.side, closeSteps(open))) {
			f.Take(place.room)
			return place.corner
		}
	}
	best, fewest := plane.Point{}, math.MaxInt
	for _, corner := range q.corners(open) {
		room := q.roomAt(s, c, corner)
		if n := f.Crossings(room, fewest) + textWeight*f.texts(room, fewest); n < fewest {
			best, fewest = corner, n
		}
	}
	f.Take(q.at(s, c, best).room)
	return best
}

// SquareNear puts the check square of a sheet of one page where its middle lies
// nearest to a place of the sheet, free of lines and text and outside all pieces. It
// reports whether there is such a place. The side is in mm.
func (s *Sheet) SquareNear(to plane.Point, side float64) bool {
	q, window := newSquares(side, s.Paper), s.Paper.Window()
	best, away := squarePlace{}, math.Inf(1)
	for _, corner := range squarePlaces(window, side, closeSteps(window)) {
		place := q.at(s, Cell{}, corner)
		centre := place.room.Centre
		if d := centre.Distance(to); d < away && s.sizeAround(centre) == 0 && s.Field.Free(place.room) {
			best, away = place, d
		}
	}
	if math.IsInf(away, 1) {
		return false
	}
	s.Field.Take(best.room)
	s.Squares[Cell{}] = best.corner
	return true
}

// textWeight is how many crossed lines are better than one crossed text.
const textWeight = 1000

// squareSteps is how many steps a check square takes across and up a page to
// find its place; where that finds none it looks closer.
const squareSteps = 12

// mostSteps bounds how many steps it takes when it looks closer: on a home printer's
// page every place of the grid, on a large one fewer.
const mostSteps = 240

// closeSteps is how many steps across and up a box are a close look.
func closeSteps(within plane.Box) int {
	return min(mostSteps, int(within.Height()/paper.SquareGrid))
}

// squarePlaces returns the places for the corner of a square in a box of the
// page, those near a corner of the box first.
func squarePlaces(within plane.Box, side float64, steps int) []plane.Point {
	// In steps of the grid.
	low := plane.Point{X: math.Round(paper.SnapUp(within.Min.X) / paper.SquareGrid), Y: math.Round(paper.SnapUp(within.Min.Y) / paper.SquareGrid)}
	high := plane.Point{X: math.Round(paper.SnapDown(within.Max.X-side) / paper.SquareGrid), Y: math.Round(paper.SnapDown(within.Max.Y-side) / paper.SquareGrid)}
	var places []plane.Point
	for i := range steps + 1 {
		for k := range steps + 1 {
			at := plane.Point{
				X: math.Round(low.X + (high.X-low.X)*float64(i)/float64(steps)),
				Y: math.Round(low.Y + (high.Y-low.Y)*float64(k)/float64(steps)),
			}
			places = append(places, at.Mul(paper.SquareGrid))
		}
	}
	fromCorner := func(p plane.Point) float64 {
		dx := math.Min(p.X-low.X*paper.SquareGrid, high.X*paper.SquareGrid-p.X)
		dy := math.Min(p.Y-low.Y*paper.SquareGrid, high.Y*paper.SquareGrid-p.Y)
		return dx + dy
	}
	slices.SortStableFunc(places, func(a, b plane.Point) int { return cmp.Compare(fromCorner(a), fromCorner(b)) })
	return places
}

// sizeAround returns the area of the bounds of the largest piece round a place,
// in mm²; 0 outside all pieces.
func (s *Sheet) sizeAround(at plane.Point) float64 {
	size := 0.0
	for _, p := range s.Pieces {
		if p.Inside(at) {
			size = math.Max(size, p.Bounds.Width()*p.Bounds.Height())
		}
	}
	return size
}
