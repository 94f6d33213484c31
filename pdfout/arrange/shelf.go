package arrange

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: pieces that fit on one page share pages. The tallest is
// placed first; each goes onto the first page that has room for it, and a piece is
// turned only where it would need a new page otherwise.
// Pieces share a page only where that leaves the check square a place: outside
// all of them, or, where that saves a page, inside one. A piece that has no
// room inside for its title brings the room for it, under the piece, along.

// shelf is a page being filled with small pieces.
type shelf struct {
	Packing
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
func parcelsOf(small []Piece, window plane.Point, square float64) []Parcel {
	parcels := make([]Parcel, len(small))
	for i, p := range small {
		f := NewField([]Piece{p})
		p.Foot = FootOf(p, f, window)
		parcels[i] = ParcelOf(p)
		parcels[i].roomy = p.hasRoom(f, square+paper.SquareGrid)
	}
	slices.SortStableFunc(parcels, func(a, b Parcel) int { return cmp.Compare(b.Size.Y, a.Size.Y) })
	return parcels
}

// fewestShelves puts the parcels, in their order, on as few pages as it finds.
// It also reports whether all are laid: it stops when they take more than
// MaxPages.
func fewestShelves(parcels []Parcel, window plane.Point, square float64) ([]*shelf, bool) {
	shelves, all := fill(parcels, shelf{EmptyPage(window), square, besidePieces})
	if len(shelves) > 1 {
		fewer, every := fill(parcels, shelf{EmptyPage(window), square, insideOneToo})
		if len(fewer) < len(shelves) {
			shelves, all = fewer, every
		}
	}
	return shelves, all
}

// fill puts the parcels, in their order, on as many pages as they need, and
// reports whether it came to the end.
func fill(parcels []Parcel, empty shelf) ([]*shelf, bool) {
	var shelves []*shelf
	for _, p := range parcels {
		if _, found := p.ontoFirst(len(shelves), func(i int, p Parcel) bool { return shelves[i].put(p) }); !found {
			next := empty
			next.put(p)
			shelves = append(shelves, &next)
		}
		if len(shelves) > paper.MaxPages {
			return shelves, false
		}
	}
	return shelves, true
}

// put puts the parcel where it lies highest, and reports whether there was room for
// it, and for the check square beside it. A parcel by itself need leave none.
func (s *shelf) put(p Parcel) bool {
	next := *s
	if !next.Packing.Put(p) || len(s.Parcels) > 0 && !next.hasSquare() {
		return false
	}
	*s = next
	return true
}

// hasSquare reports whether the check square has a place in one of the free boxes,
// or inside a roomy piece if it may lie there.
func (s *shelf) hasSquare() bool {
	// Its corner cannot lie everywhere.
	side := s.square + paper.SquareGrid
	return slices.ContainsFunc(s.free, func(f plane.Box) bool { return f.Width() >= side && f.Height() >= side }) ||
		s.where == insideOneToo && slices.ContainsFunc(s.Parcels, func(p Packed) bool { return p.roomy })
}

// roomSteps is how many places a piece is looked at, across and up, for room
// inside it.
const roomSteps = 12

// hasRoom reports whether a square fits inside the piece, clear of its lines,
// which are those of f.
func (p Piece) hasRoom(f *Field, side float64) bool {
	half := side/2 + Clearing
	for i := range roomSteps {
		for k := range roomSteps {
			at := p.Bounds.Min.Add(plane.Point{
				X: p.Bounds.Width() * (float64(i) + 0.5) / roomSteps,
				Y: p.Bounds.Height() * (float64(k) + 0.5) / roomSteps,
			})
			if p.free(f, at, half) {
				return true
			}
		}
	}
	return false
}

// sheet makes the filled page a sheet of one page. What lies on it is moved to
// the middle where that leaves the check square its room.
func (s *shelf) sheet(page Grid) Sheet {
	used := s.Used()
	step := plane.Point{}
	if beneath := page.Window.Y - used.Height(); beneath > s.square+3*Clearing {
		step.X = (page.Window.X - used.Width()) / 2
	}
	var pieces []Piece
	for _, p := range s.Parcels {
		pieces = append(pieces, p.Moved(step).Laid())
	}
	return NewSheet(pieces, page, []Cell{{}})
}
