package pdfout

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: pieces that fit on one page share pages. The tallest is
// placed first; each goes onto the first page that has room for it, as high
// and then as far to the left as it can, so that the rest of the page stays in
// one part. A piece is turned only where it would need a new page otherwise.
// Pieces share a page only where that leaves the check square a place: outside
// all of them, or, where that saves a page, inside one.

// apart is how far pieces that share a page lie from each other, in mm: room
// for scissors.
const apart = 6.0

// shelf is a page being filled.
type shelf struct {
	pieces []piece
	square float64 // side of the check square, in mm
	inside bool    // the square may lie inside a piece
	// free are the largest boxes in which nothing lies yet; they overlap.
	free []plane.Box
}

// pack lays the pieces, each of which fits into the window, on as few sheets
// of one page as it finds. The page's check square has sides of square mm.
func pack(small []piece, window plane.Point, square float64) []sheet {
	tallestFirst := slices.Clone(small)
	slices.SortStableFunc(tallestFirst, func(a, b piece) int {
		return cmp.Compare(b.bounds.Height(), a.bounds.Height())
	})
	shelves := fill(tallestFirst, shelf{square: square, free: []plane.Box{{Max: window}}})
	fewer := fill(tallestFirst, shelf{square: square, inside: true, free: []plane.Box{{Max: window}}})
	if len(fewer) < len(shelves) {
		shelves = fewer
	}
	var sheets []sheet
	for _, s := range shelves {
		sheets = append(sheets, s.sheet(window))
	}
	return sheets
}

// fill puts the pieces, in their order, on as many pages as they need.
func fill(pieces []piece, empty shelf) []*shelf {
	var shelves []*shelf
	for _, p := range pieces {
		if !placeOnAny(shelves, p) {
			next := empty
			next.place(p)
			shelves = append(shelves, &next)
		}
	}
	return shelves
}

// placeOnAny places the piece on the first page with room for it, upright if
// any has, turned if not.
func placeOnAny(shelves []*shelf, p piece) bool {
	for _, s := range shelves {
		if s.place(p) {
			return true
		}
	}
	turned := p.quarterTurned()
	for _, s := range shelves {
		if s.place(turned) {
			return true
		}
	}
	return false
}

// place puts the piece into the free box where it lies highest, and leftmost
// among those, and reports whether there was one.
func (s *shelf) place(p piece) bool {
	room := p.room()
	var best plane.Box
	found := false
	for _, f := range s.free {
		if f.Width() < room.X || f.Height() < room.Y {
			continue
		}
		taken := plane.Box{
			Min: plane.Point{X: f.Min.X, Y: f.Max.Y - room.Y},
			Max: plane.Point{X: f.Min.X + room.X, Y: f.Max.Y},
		}
		if !found || taken.Min.Y > best.Min.Y || taken.Min.Y == best.Min.Y && taken.Min.X < best.Min.X {
			best, found = taken, true
		}
	}
	if !found {
		return false
	}
	rest := without(s.free, best.Grown(apart))
	if len(s.pieces) > 0 && !s.hasSquare(rest, p) {
		return false
	}
	corner := plane.Point{X: best.Min.X + spare, Y: best.Min.Y + spare}
	s.pieces = append(s.pieces, p.moved(corner.Sub(p.bounds.Min)))
	s.free = rest
	return true
}

// hasSquare reports whether the check square has a place in one of the boxes,
// or inside one of the pieces, the next one included, if it may lie there.
func (s *shelf) hasSquare(free []plane.Box, next piece) bool {
	// Its corner cannot lie everywhere.
	side := s.square + squareGrid
	for _, f := range free {
		if f.Width() >= side && f.Height() >= side {
			return true
		}
	}
	return s.inside && (next.hasRoom(side) || slices.ContainsFunc(s.pieces, func(p piece) bool { return p.hasRoom(side) }))
}

// roomSteps is how many places a piece is looked at, across and up, for room
// inside it.
const roomSteps = 12

// hasRoom reports whether a square fits inside the piece, clear of its lines.
func (p piece) hasRoom(side float64) bool {
	half := side/2 + clearing
	f := newField([]piece{p})
	for i := range roomSteps {
		for k := range roomSteps {
			at := p.bounds.Min.Add(plane.Point{
				X: p.bounds.Width() * (float64(i) + 0.5) / roomSteps,
				Y: p.bounds.Height() * (float64(k) + 0.5) / roomSteps,
			})
			if p.inside(at) && f.free(slab{at, plane.Point{X: half, Y: half}, plane.Point{X: 1}}) {
				return true
			}
		}
	}
	return false
}

// without returns the largest boxes that are left of some free boxes when a
// box is taken out of them.
func without(free []plane.Box, b plane.Box) []plane.Box {
	var rest []plane.Box
	for _, f := range free {
		if f.Min.X >= b.Max.X || f.Max.X <= b.Min.X || f.Min.Y >= b.Max.Y || f.Max.Y <= b.Min.Y {
			rest = append(rest, f)
			continue
		}
		for _, part := range []plane.Box{
			{Min: f.Min, Max: plane.Point{X: b.Min.X, Y: f.Max.Y}},
			{Min: plane.Point{X: b.Max.X, Y: f.Min.Y}, Max: f.Max},
			{Min: f.Min, Max: plane.Point{X: f.Max.X, Y: b.Min.Y}},
			{Min: plane.Point{X: f.Min.X, Y: b.Max.Y}, Max: f.Max},
		} {
			if part.Width() > 0 && part.Height() > 0 {
				rest = append(rest, part)
			}
		}
	}
	var largest []plane.Box
	for i, f := range rest {
		covered := false
		for j, o := range rest {
			// Of two that are the same the first stays.
			covered = covered || j != i && o.Holds(f.Min) && o.Holds(f.Max) && (o != f || j < i)
		}
		if !covered {
			largest = append(largest, f)
		}
	}
	return largest
}

// sheet makes the filled page a sheet of one page. What lies on it is moved to
// the middle where that leaves the check square its room.
func (s *shelf) sheet(window plane.Point) sheet {
	bounds := plane.EmptyBox()
	for _, p := range s.pieces {
		bounds = bounds.Union(p.bounds.Grown(spare))
	}
	step := plane.Point{}
	if beneath := window.Y - bounds.Height(); beneath > s.square+3*clearing {
		step.X = (window.X - bounds.Width()) / 2
	}
	var pieces []piece
	for _, p := range s.pieces {
		pieces = append(pieces, p.moved(step))
	}
	return newSheet(pieces, grid{rows: 1, columns: 1, window: window}, []cell{{}})
}
