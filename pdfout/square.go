package pdfout

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: a check square is a filled frame whose outside measures
// exactly what it says; a stroked one would be wider by its line. Its corner
// lies on a whole 6 units of the page, which are 25 dots of a 300 dpi printer
// and 50 of a 600 dpi one, so that no side of it is rounded away. (Of a
// page drawn for a printer that is off, on 6 units as they come out.)

const (
	// clearing is how far a check square stays from lines, in mm.
	clearing = 2.0
	// largestSquare is the largest squareSize, in mm.
	largestSquare = 30.0
)

// squareSize is the side of the small check square, in mm.
func squareSize(unit marking.Unit) float64 {
	if unit == marking.Inch {
		return 25.4
	}
	return largestSquare
}

// squareLabel says how long the side of the small check square is.
func squareLabel(unit marking.Unit) string {
	switch unit {
	case marking.Inch:
		return "1 in"
	case marking.Centimetre:
		return "3 cm"
	}
	return "30 mm"
}

// squares finds the places of the check squares of one sheet.
type squares struct {
	side  float64
	paper Paper
	// known are the places on a page, by what of the page is clear of join
	// lines; most pages of a sheet have the same.
	known map[plane.Box][]plane.Point
}

// aroundOn tells what of the sheet a check square takes up whose lower left
// corner is at a place of the page of a cell.
func (q squares) aroundOn(s *sheet, c cell) func(corner plane.Point) slab {
	toSheet := s.grid.windowOf(c).Min.Sub(q.paper.window().Min)
	return func(corner plane.Point) slab {
		low := corner.Add(toSheet)
		return upright(plane.Box{Min: low, Max: low.Add(plane.Point{X: q.side, Y: q.side})})
	}
}

// find finds the place for the check square of a page and takes it: free of
// lines and text, rather outside the pieces than in the largest of them,
// rather in a corner. On a page without a free place it goes where it crosses
// the fewest lines, and no text if it can. It returns the lower left corner,
// on the page.
func (q squares) find(s *sheet, f *field, c cell) plane.Point {
	around := q.aroundOn(s, c)
	open := s.grid.within(c, q.paper.window(), s.grid.overlap/2+clearing)
	if q.known[open] == nil {
		q.known[open] = squarePlaces(open, q.side, squareSteps)
	}
	best, found := plane.Point{}, false
	largest := 0.0 // piece in which a free place was found
	look := func(corners []plane.Point) bool {
		for _, corner := range corners {
			room := around(corner).grown(clearing)
			size := s.sizeAround(room.centre)
			if found && size > 0 && size <= largest || !f.free(room) {
				continue
			}
			best, found, largest = corner, true, size
			if size == 0 {
				return true
			}
		}
		return false
	}
	if !look(q.known[open]) && len(s.cells) == 1 {
		// On a page that pieces share there is a gap for it, if a narrow one.
		look(squarePlaces(open, q.side, closeSteps(open)))
	}
	if !found {
		fewest := math.MaxInt
		for _, corner := range q.known[open] {
			n := f.crossings(around(corner), fewest) + textWeight*f.texts(around(corner), fewest)
			if n < fewest {
				best, fewest = corner, n
			}
		}
	}
	f.take(around(best).grown(clearing))
	return best
}

// nearest finds the place for the check square of a sheet of one page whose
// middle lies nearest to a place of the sheet, free of lines and text and
// outside all pieces, and takes it. It returns the lower left corner, on the
// page, and whether there is such a place.
func (q squares) nearest(s *sheet, f *field, to plane.Point) (plane.Point, bool) {
	window, around := q.paper.window(), q.aroundOn(s, cell{})
	best, away := plane.Point{}, math.Inf(1)
	for _, corner := range squarePlaces(window, q.side, closeSteps(window)) {
		room := around(corner)
		if d := room.centre.Distance(to); d < away && s.sizeAround(room.centre) == 0 && f.free(room.grown(clearing)) {
			best, away = corner, d
		}
	}
	if math.IsInf(away, 1) {
		return best, false
	}
	f.take(around(best).grown(clearing))
	return best, true
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
	return min(mostSteps, int(within.Height()/squareGrid))
}

// squarePlaces returns the places for the corner of a square in a box of the
// page, those near a corner of the box first.
func squarePlaces(within plane.Box, side float64, steps int) []plane.Point {
	low := plane.Point{X: math.Ceil(within.Min.X/squareGrid - onGrid), Y: math.Ceil(within.Min.Y/squareGrid - onGrid)}
	high := plane.Point{X: math.Floor((within.Max.X-side)/squareGrid + onGrid), Y: math.Floor((within.Max.Y-side)/squareGrid + onGrid)}
	var places []plane.Point
	for i := range steps + 1 {
		for k := range steps + 1 {
			at := plane.Point{
				X: math.Round(low.X + (high.X-low.X)*float64(i)/float64(steps)),
				Y: math.Round(low.Y + (high.Y-low.Y)*float64(k)/float64(steps)),
			}
			places = append(places, at.Mul(squareGrid))
		}
	}
	fromCorner := func(p plane.Point) float64 {
		dx := math.Min(p.X-low.X*squareGrid, high.X*squareGrid-p.X)
		dy := math.Min(p.Y-low.Y*squareGrid, high.Y*squareGrid-p.Y)
		return dx + dy
	}
	slices.SortStableFunc(places, func(a, b plane.Point) int { return cmp.Compare(fromCorner(a), fromCorner(b)) })
	return places
}

// sizeAround returns the area of the bounds of the largest piece round a place,
// in mm²; 0 outside all pieces.
func (s *sheet) sizeAround(at plane.Point) float64 {
	size := 0.0
	for _, p := range s.pieces {
		if p.inside(at) {
			size = math.Max(size, p.bounds.Width()*p.bounds.Height())
		}
	}
	return size
}
