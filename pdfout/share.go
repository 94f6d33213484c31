package pdfout

import (
	"cmp"
	"slices"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: pieces that fit on one page are put beside large pieces,
// on pages that are printed anyway, where that saves a page. Beside a large piece
// means outside its outline and clear of its lines by what keeps pieces apart,
// short of the strips that are joined, so that the piece is whole on one page,
// and where neither the large piece's title nor the page's check square loses its
// place. As few pieces as can be are taken from the others: a maker would rather
// have the small ones together. A page with a form is not shared.

// mostShared bounds the work of looking for room: on how many pages at most.
const mostShared = 200

// opening is a page of a large piece's sheet with room for a small one.
type opening struct {
	sheet int
	cell  cell
	// free are the largest boxes in which nothing lies yet; they overlap.
	free []plane.Box
	// squares are the places for the page's check square, in the order in
	// which they are taken.
	squares []squarePlace
	titles  []plane.Box // of the large piece
	parcels []packed
}

// squarePlace is a place for a check square, with what is kept clear round it.
type squarePlace struct {
	room plane.Box
	size float64 // of the piece it lies in, as sizeAround says
}

// mostGivenBack is how many parcels are tried to be given back to the pages that small
// pieces share: each packs all of those anew.
const mostGivenBack = 60

// shareLarge puts parcels beside the large pieces of sheets where they then need
// fewer shelves than they fill. It returns the sheets and the shelves.
func shareLarge(sheets []sheet, parcels []parcel, shelves []*shelf, unit marking.Unit, paper Paper) ([]sheet, []*shelf) {
	if len(shelves) == 0 {
		return sheets, shelves
	}
	all := openings(sheets, parcels, squareSize(unit), paper)
	beside := make([]*opening, len(parcels)) // where each parcel is put; nil where it is not
	for i, p := range parcels {
		beside[i] = putOnAny(all, i, p)
	}
	// rest packs the parcels that are put nowhere, and the one of a number.
	rest := func(and int) []*shelf {
		var left []parcel
		for i, p := range parcels {
			if beside[i] == nil || i == and {
				left = append(left, p)
			}
		}
		fewer, _ := fewestShelves(left, paper.grid().window, squareSize(unit))
		return fewer
	}
	fewer := rest(-1)
	if len(fewer) >= len(shelves) {
		return sheets, shelves
	}
	for i, tried := len(parcels)-1, 0; i >= 0 && len(fewer) > 0 && tried < mostGivenBack; i-- {
		if beside[i] == nil {
			continue
		}
		tried++
		if more := rest(i); len(more) == len(fewer) && beside[i].giveBack(i) {
			beside[i], fewer = nil, more
		}
	}
	shared := slices.Clone(sheets)
	for _, o := range all {
		if len(o.parcels) == 0 {
			continue
		}
		s := &shared[o.sheet]
		pieces := slices.Clone(s.pieces)
		for _, p := range o.parcels {
			pieces = append(pieces, p.laid(plane.Point{}))
		}
		*s = newSheet(pieces, s.grid, s.cells)
	}
	return shared, fewer
}

// openings finds the pages of sheets that have room for one of the parcels.
func openings(sheets []sheet, parcels []parcel, square float64, paper Paper) []*opening {
	holds := func(b plane.Box) bool {
		return slices.ContainsFunc(parcels, func(p parcel) bool {
			_, upright := topLeft(b, p.room(false))
			_, turned := topLeft(b, p.room(true))
			return upright || turned
		})
	}
	var all []*opening
	pages := 0
	for i := range sheets {
		s := &sheets[i]
		if pages+len(s.cells) > mostShared {
			continue
		}
		pages += len(s.cells)
		var onSheet []*opening
		around := s.obstacles()
		for _, c := range s.cells {
			o := opening{sheet: i, cell: c, free: s.freeBoxes(around, s.clearOf(c))}
			o.free = slices.DeleteFunc(o.free, func(b plane.Box) bool { return !holds(b) })
			if len(o.free) > 0 {
				onSheet = append(onSheet, &o)
			}
		}
		if len(onSheet) > 0 {
			s.reserve(onSheet, square, paper)
		}
		all = append(all, onSheet...)
	}
	return all
}

// clearOf is what of a page lies short of the strips it shares with others.
func (s *sheet) clearOf(c cell) plane.Box {
	return s.grid.within(c, s.grid.windowOf(c), s.grid.overlap)
}

// reserve letters a copy of the sheet as it is, and tells its openings which
// places there are for the check square and where the large piece's title is.
func (s *sheet) reserve(all []*opening, square float64, paper Paper) {
	alone := newSheet(s.pieces, s.grid, s.cells)
	alone.findJoins(1)
	alone.takeHeads()
	places := squares{square, paper, map[plane.Box][]plane.Point{}}
	for _, o := range all {
		around := places.aroundOn(&alone, o.cell)
		open := s.grid.within(o.cell, paper.window(), s.grid.overlap/2+clearing)
		for _, corner := range squarePlaces(open, square, squareSteps) {
			if room := around(corner).grown(clearing); alone.field.free(room) {
				o.squares = append(o.squares, squarePlace{room.bounds(), alone.sizeAround(room.centre)})
			}
		}
		// Outside all pieces first, then in the largest.
		slices.SortStableFunc(o.squares, func(a, b squarePlace) int {
			if (a.size == 0) != (b.size == 0) {
				return cmp.Compare(a.size, b.size)
			}
			return cmp.Compare(b.size, a.size)
		})
	}
	for _, c := range alone.cells {
		places.find(&alone, alone.field, c)
	}
	for _, p := range alone.pieces {
		alone.title(p, alone.field)
	}
	for _, o := range all {
		for _, l := range alone.labels {
			if title := l.room.bounds().Grown(besideRoom); title.Meets(s.grid.windowOf(o.cell)) {
				o.titles = append(o.titles, title)
				o.free = without(o.free, title)
			}
		}
	}
}

// putOnAny puts the parcel of a number on the first page with room for it,
// upright if any has, turned if not. It returns that page, nil where none has.
func putOnAny(all []*opening, number int, p parcel) *opening {
	p.number = number
	for _, turned := range []bool{false, true} {
		for _, o := range all {
			if o.put(p, turned) {
				return o
			}
		}
	}
	return nil
}

// put puts the parcel where it lies highest, and leftmost among those places,
// and leaves the page's check square a place. It reports whether there is one.
func (o *opening) put(p parcel, turned bool) bool {
	var places []plane.Box
	for _, f := range o.free {
		if taken, ok := topLeft(f, p.room(turned)); ok {
			places = append(places, taken)
		}
	}
	slices.SortStableFunc(places, func(a, b plane.Box) int {
		return cmp.Or(cmp.Compare(b.Min.Y, a.Min.Y), cmp.Compare(a.Min.X, b.Min.X))
	})
	before := o.parcels
	for _, at := range places {
		o.parcels = append(slices.Clone(before), packed{p, turned, at})
		if o.hasSquare() {
			o.free = without(o.free, at.Grown(apart))
			return true
		}
	}
	o.parcels = before
	return false
}

// giveBack takes the parcel of a number off the page, if the check square does
// not move on the large piece's title then; it reports whether it does not.
func (o *opening) giveBack(number int) bool {
	before := o.parcels
	o.parcels = slices.DeleteFunc(slices.Clone(before), func(p packed) bool { return p.number == number })
	if o.hasSquare() {
		return true
	}
	o.parcels = before
	return false
}

// hasSquare reports whether the check square has a place among the parcels, and
// the one that it takes is not that of the title.
func (o *opening) hasSquare() bool {
	for _, q := range o.squares {
		if !slices.ContainsFunc(o.parcels, func(p packed) bool { return p.room.Meets(q.room) }) {
			return !slices.ContainsFunc(o.titles, q.room.Meets)
		}
	}
	return false
}
