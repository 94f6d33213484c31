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
// all of them, or, where that saves a page, inside one. A piece that has no
// room inside for its title brings the room for it, under the piece, along.

// apart is how far pieces that share a page lie from each other, in mm: room
// for scissors.
const apart = 6.0

// parcel is a piece to be packed, with what is worked out once for it.
type parcel struct {
	piece piece
	// roomy tells that the check square has a place inside the piece.
	roomy bool
	// number tells parcels apart that are put beside large pieces.
	number int
}

// room is how much of a page the parcel takes.
func (p parcel) room(turned bool) plane.Point {
	if turned {
		return p.piece.roomOf(p.piece.bounds.Height(), p.piece.bounds.Width())
	}
	return p.piece.room()
}

// packed is a parcel on its page.
type packed struct {
	parcel
	turned bool
	room   plane.Box
}

// shelf is a page being filled.
type shelf struct {
	parcels []packed
	square  float64 // side of the check square, in mm
	inside  bool    // the square may lie inside a piece
	roomy   bool    // and one of the pieces has room for it
	// free are the largest boxes in which nothing lies yet; they overlap.
	free []plane.Box
}

// parcelsOf makes parcels of pieces, each of which fits into the window of a
// page, the tallest first. A check square has sides of square mm.
func parcelsOf(small []piece, window plane.Point, square float64) []parcel {
	parcels := make([]parcel, len(small))
	for i, p := range small {
		f := newField([]piece{p})
		p.foot = footOf(p, f, window)
		parcels[i] = parcel{piece: p, roomy: p.hasRoom(f, square+squareGrid)}
	}
	slices.SortStableFunc(parcels, func(a, b parcel) int {
		return cmp.Compare(b.room(false).Y, a.room(false).Y)
	})
	return parcels
}

// fewestShelves puts the parcels, in their order, on as few pages as it finds.
// It also reports whether all are laid: it stops when they take more than
// MaxPages.
func fewestShelves(parcels []parcel, window plane.Point, square float64) ([]*shelf, bool) {
	shelves, all := fill(parcels, shelf{square: square, free: []plane.Box{{Max: window}}})
	if len(shelves) > 1 {
		fewer, every := fill(parcels, shelf{square: square, inside: true, free: []plane.Box{{Max: window}}})
		if len(fewer) < len(shelves) {
			shelves, all = fewer, every
		}
	}
	return shelves, all
}

// fill puts the parcels, in their order, on as many pages as they need, and
// reports whether it came to the end.
func fill(parcels []parcel, empty shelf) ([]*shelf, bool) {
	var shelves []*shelf
	for _, p := range parcels {
		if !placeOnAny(shelves, p) {
			next := empty
			next.place(p, false)
			shelves = append(shelves, &next)
		}
		if len(shelves) > MaxPages {
			return shelves, false
		}
	}
	return shelves, true
}

// placeOnAny places the parcel on the first page with room for it, upright if
// any has, turned if not.
func placeOnAny(shelves []*shelf, p parcel) bool {
	for _, turned := range []bool{false, true} {
		for _, s := range shelves {
			if s.place(p, turned) {
				return true
			}
		}
	}
	return false
}

// place puts the parcel into the free box where it lies highest, and leftmost
// among those, and reports whether there was one.
func (s *shelf) place(p parcel, turned bool) bool {
	room := p.room(turned)
	best, found := highestIn(s.free, room)
	if !found {
		return false
	}
	rest := without(s.free, best.Grown(apart))
	roomy := s.roomy || p.roomy
	if len(s.parcels) > 0 && !s.hasSquare(rest, roomy) {
		return false
	}
	s.parcels = append(s.parcels, packed{p, turned, best})
	s.free, s.roomy = rest, roomy
	return true
}

// highestIn returns the place for a box of a size in one of the free boxes that lies
// highest, and leftmost among those, and whether there is one.
func highestIn(free []plane.Box, size plane.Point) (best plane.Box, found bool) {
	for _, f := range free {
		if taken, ok := topLeft(f, size); ok && (!found || higher(taken, best)) {
			best, found = taken, true
		}
	}
	return best, found
}

// topLeft returns the box of a size in the upper left corner of a free box, if
// it has room for it.
func topLeft(free plane.Box, size plane.Point) (plane.Box, bool) {
	return plane.Box{
		Min: plane.Point{X: free.Min.X, Y: free.Max.Y - size.Y},
		Max: plane.Point{X: free.Min.X + size.X, Y: free.Max.Y},
	}, free.Width() >= size.X && free.Height() >= size.Y
}

// higher reports whether a box lies higher than another, or as high and farther
// to the left.
func higher(a, b plane.Box) bool {
	return a.Min.Y > b.Min.Y || a.Min.Y == b.Min.Y && a.Min.X < b.Min.X
}

// hasSquare reports whether the check square has a place in one of the boxes,
// or inside a roomy piece if it may lie there.
func (s *shelf) hasSquare(free []plane.Box, roomy bool) bool {
	// Its corner cannot lie everywhere.
	side := s.square + squareGrid
	for _, f := range free {
		if f.Width() >= side && f.Height() >= side {
			return true
		}
	}
	return s.inside && roomy
}

// roomSteps is how many places a piece is looked at, across and up, for room
// inside it.
const roomSteps = 12

// hasRoom reports whether a square fits inside the piece, clear of its lines,
// which are those of f.
func (p piece) hasRoom(f *field, side float64) bool {
	half := side/2 + clearing
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
func (s *shelf) sheet(page grid) sheet {
	bounds := plane.EmptyBox()
	for _, p := range s.parcels {
		bounds = bounds.Union(p.room)
	}
	step := plane.Point{}
	if beneath := page.window.Y - bounds.Height(); beneath > s.square+3*clearing {
		step.X = (page.window.X - bounds.Width()) / 2
	}
	var pieces []piece
	for _, p := range s.parcels {
		pieces = append(pieces, p.laid(step))
	}
	return newSheet(pieces, page, []cell{{}})
}

// laid returns the piece as it lies on its page, moved by a step.
func (p packed) laid(step plane.Point) piece {
	low := plane.Point{X: p.room.Min.X + spare, Y: p.room.Min.Y + spare + p.piece.foot.Y}.Add(step)
	b := p.piece.bounds
	if !p.turned {
		return p.piece.moved(low.Sub(b.Min))
	}
	// The upper left corner comes to lie at the lower left.
	low = low.Sub(plane.Point{X: b.Min.X, Y: b.Max.Y}.Left())
	turned := p.piece.laid(func(q plane.Point) plane.Point { return q.Left().Add(low) })
	turned.turned = !turned.turned
	return turned
}
