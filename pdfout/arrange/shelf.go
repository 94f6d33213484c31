package arrange

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: pieces that fit on one page share pages. The tallest is placed first, and
// each goes onto the first page that has room for it; it is turned only where it would need a new
// page otherwise. Where that takes fewer pages they come in another order, and lie otherwise
// (fewest.go). A piece that has no room inside for its sign or its panel brings the room for them,
// under or beside it, along. What shares a page lies as far from each other as one of a few steps
// allows without another page. None lies alone on the last page while another has several more.

// parcelsOf makes parcels of pieces, each of which fits into the window of a
// page, the tallest first.
func parcelsOf(small []Piece, window plane.Point) []Parcel {
	parcels := make([]Parcel, len(small))
	for i, p := range small {
		parcels[i] = KeptParcel(p, window)
	}
	tallestFirst(parcels)
	return parcels
}

// tallestFirst sorts parcels by their heights; those as high as each other stay in order.
func tallestFirst(parcels []Parcel) {
	slices.SortStableFunc(parcels, func(a, b Parcel) int { return cmp.Compare(b.Size.Y, a.Size.Y) })
}

// inOrder puts the parcels, in their order, on as many pages as they need; a parcel lies
// where it lies highest. It also reports whether all are laid: it stops when they take
// more than MaxPages.
func inOrder(parcels []Parcel, window plane.Point) ([]Packing, bool) {
	var shelves []Packing
	for _, p := range parcels {
		if _, found := p.ontoFirst(nearestTo(*p.Piece, shelves, func(k Packing) Piece { return *k.Parcels[0].Piece }), func(i int, p Parcel) bool { return shelves[i].Put(p) }); !found {
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

// spread returns the page with more room between its parcels, if all of them still find
// room on it; else as it is.
func (k Packing) spread(window plane.Point) Packing {
	for _, more := range []float64{3 * Apart, 2 * Apart, Apart} {
		step := plane.Point{X: more, Y: more}
		wide, all := EmptyPage(window.Add(step)), true
		for _, p := range k.Parcels {
			p.Size = p.Size.Add(step)
			all = all && wide.Put(p.Parcel)
		}
		if !all {
			continue
		}
		for i, p := range k.Parcels {
			wide.Parcels[i].Size = p.Size
			wide.Parcels[i].Room.Max = wide.Parcels[i].Room.Min.Add(p.Size)
		}
		return wide
	}
	return k
}

// evened returns pages of which the last holds one parcel alone with some more on that, of those
// that the fullest page took last, until that has at most one more; others as they are.
func evened(shelves []Packing) []Packing {
	if len(shelves) == 0 || len(shelves[len(shelves)-1].Parcels) > 1 {
		return shelves
	}
	all := slices.Clone(shelves)
	last := &all[len(all)-1]
	fullest := &all[0]
	for i := range all {
		if len(all[i].Parcels) > len(fullest.Parcels) {
			fullest = &all[i]
		}
	}
	for n := len(fullest.Parcels); n > len(last.Parcels)+1; n = len(fullest.Parcels) {
		if !last.Put(fullest.Parcels[n-1].Parcel) {
			break
		}
		fullest.Parcels = fullest.Parcels[:n-1]
	}
	return all
}

// sheet makes the filled page a sheet of one page, spread out, what lies on it in the middle.
func (k Packing) sheet(page Grid) Sheet {
	k = k.spread(page.Window)
	step := plane.Point{X: (page.Window.X - k.Used().Width()) / 2}
	var pieces []Piece
	for _, p := range k.Parcels {
		pieces = append(pieces, p.Moved(step).Laid())
	}
	return NewSheet(pieces, page, []Cell{{}})
}
