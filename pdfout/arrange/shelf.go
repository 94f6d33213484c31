package arrange

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: pieces that fit on one page share pages. The tallest is placed
// first; each goes onto the first page that has room for it, and a piece is turned only
// where it would need a new page otherwise. Pieces share a page only where that leaves
// the check square a place: outside all of them, or, where that saves a page, inside
// one. A piece that has no room inside for its title brings the room for it, under the
// piece, along.

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
func fewestShelves(parcels []Parcel, window plane.Point, square float64) ([]Packing, bool) {
	side := square + paper.SquareGrid // its corner cannot lie everywhere
	besidePieces := func(k Packing) bool {
		return slices.ContainsFunc(k.free, func(f plane.Box) bool { return f.Width() >= side && f.Height() >= side })
	}
	insideOneToo := func(k Packing) bool {
		return besidePieces(k) || slices.ContainsFunc(k.Parcels, func(p Packed) bool { return p.roomy })
	}
	shelves, all := fill(parcels, window, besidePieces)
	if len(shelves) > 1 {
		if fewer, every := fill(parcels, window, insideOneToo); len(fewer) < len(shelves) {
			return fewer, every
		}
	}
	return shelves, all
}

// fill puts the parcels, in their order, on as many pages as they need, and
// reports whether it came to the end. A parcel lies where it lies highest, if that
// leaves the check square a place; by itself it need leave none.
func fill(parcels []Parcel, window plane.Point, hasSquare func(Packing) bool) ([]Packing, bool) {
	var shelves []Packing
	for _, p := range parcels {
		if _, found := p.ontoFirst(len(shelves), func(i int, p Parcel) bool {
			next := shelves[i]
			if !next.Put(p) || !hasSquare(next) {
				return false
			}
			shelves[i] = next
			return true
		}); !found {
			next := EmptyPage(window)
			next.Put(p)
			shelves = append(shelves, next)
		}
		if len(shelves) > paper.MaxPages {
			return shelves, false
		}
	}
	return shelves, true
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
// the middle where that leaves a check square with sides of square mm its room.
func (k Packing) sheet(page Grid, square float64) Sheet {
	used := k.Used()
	step := plane.Point{}
	if beneath := page.Window.Y - used.Height(); beneath > square+3*Clearing {
		step.X = (page.Window.X - used.Width()) / 2
	}
	var pieces []Piece
	for _, p := range k.Parcels {
		pieces = append(pieces, p.Moved(step).Laid())
	}
	slices.SortStableFunc(pieces, func(a, b Piece) int { return cmp.Compare(a.Part, b.Part) })
	return NewSheet(pieces, page, []Cell{{}})
}
