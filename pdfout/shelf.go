package pdfout

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: pieces that fit on one page share pages. The tallest is
// placed first; each goes onto the first page that has room for it, and a piece is
// turned only where it would need a new page otherwise.
// Pieces share a page only where that leaves the check square a place: outside
// all of them, or, where that saves a page, inside one. A piece that has no
// room inside for its title brings the room for it, under the piece, along.

// shelf is a page being filled with small pieces.
type shelf struct {
	packing
	square float64 // side of the check square, in mm
	where  squareRule
}

// squareRule says where the check square of a shelf may lie.
type squareRule int

const (
	besidePieces squareRule = iota
	insideOneToo
)

// parcelsOf makes parcels of pieces, each of which fits into the window of a
// page, the tallest first. A check square has sides of square mm.
func parcelsOf(small []piece, window plane.Point, square float64) []parcel {
	parcels := make([]parcel, len(small))
	for i, p := range small {
		f := newField([]piece{p})
		p.foot = footOf(p, f, window)
		parcels[i] = parcelOf(p)
		parcels[i].roomy = p.hasRoom(f, square+squareGrid)
	}
	slices.SortStableFunc(parcels, func(a, b parcel) int { return cmp.Compare(b.size.Y, a.size.Y) })
	return parcels
}

// fewestShelves puts the parcels, in their order, on as few pages as it finds.
// It also reports whether all are laid: it stops when they take more than
// MaxPages.
func fewestShelves(parcels []parcel, window plane.Point, square float64) ([]*shelf, bool) {
	shelves, all := fill(parcels, shelf{emptyPage(window), square, besidePieces})
	if len(shelves) > 1 {
		fewer, every := fill(parcels, shelf{emptyPage(window), square, insideOneToo})
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
		if _, found := p.ontoFirst(len(shelves), func(i int, p parcel) bool { return shelves[i].put(p) }); !found {
			next := empty
			next.put(p)
			shelves = append(shelves, &next)
		}
		if len(shelves) > MaxPages {
			return shelves, false
		}
	}
	return shelves, true
}

// put puts the parcel where it lies highest, and reports whether there was room for
// it, and for the check square beside it. A parcel by itself need leave none.
func (s *shelf) put(p parcel) bool {
	next := *s
	if !next.packing.put(p) || len(s.parcels) > 0 && !next.hasSquare() {
		return false
	}
	*s = next
	return true
}

// hasSquare reports whether the check square has a place in one of the free boxes,
// or inside a roomy piece if it may lie there.
func (s *shelf) hasSquare() bool {
	// Its corner cannot lie everywhere.
	side := s.square + squareGrid
	return slices.ContainsFunc(s.free, func(f plane.Box) bool { return f.Width() >= side && f.Height() >= side }) ||
		s.where == insideOneToo && slices.ContainsFunc(s.parcels, func(p packed) bool { return p.roomy })
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

// sheet makes the filled page a sheet of one page. What lies on it is moved to
// the middle where that leaves the check square its room.
func (s *shelf) sheet(page grid) sheet {
	used := s.used()
	step := plane.Point{}
	if beneath := page.window.Y - used.Height(); beneath > s.square+3*clearing {
		step.X = (page.window.X - used.Width()) / 2
	}
	var pieces []piece
	for _, p := range s.parcels {
		pieces = append(pieces, p.moved(step).laid())
	}
	return newSheet(pieces, page, []cell{{}})
}
