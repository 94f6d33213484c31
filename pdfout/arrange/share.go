package arrange

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: pieces that fit on one page are put beside large pieces,
// on pages that are printed anyway, where that saves a page. Beside a large piece
// means outside its outline and clear of its lines by what keeps pieces apart,
// short of the strips that are joined, so that the piece is whole on one page,
// and where the large piece's sign and panel do not lose their places. As few pieces as can
// be are taken from the others: a maker would rather have the small ones together. A page
// with a form is not shared.

// mostShared bounds the work of looking for room: on how many pages at most.
const mostShared = 200

// opening is a page of a large piece's sheet with room for a small one.
type opening struct {
	Packing
	sheet int
	cell  Cell
}

// guest is a small piece's parcel and the opening it is put on; nil where it is
// put on none.
type guest struct {
	Parcel
	host *opening
}

// mostGivenBack is how many parcels are tried to be given back to the pages that small
// pieces share: each packs all of those anew.
const mostGivenBack = 60

// shareLarge puts parcels beside the large pieces of sheets where they then need
// fewer shelves than they fill. It returns the sheets and the shelves.
func shareLarge(sheets []Sheet, parcels []Parcel, shelves []Packing, window plane.Point) ([]Sheet, []Packing) {
	if len(shelves) == 0 {
		return sheets, shelves
	}
	numbered := slices.Clone(parcels)
	for i := range numbered {
		numbered[i].Number = i
	}
	all, guests := invitedMost(numbered, openings(sheets, parcels), sheets, window)
	others := func() []Packing {
		fewer, _ := fill(uninvited(guests), window)
		return fewer
	}
	fewer := others()
	if len(fewer) >= len(shelves) {
		return sheets, shelves
	}
	for i, tried := len(guests)-1, 0; i >= 0 && len(fewer) > 0 && tried < mostGivenBack; i-- {
		host := guests[i].host
		if host == nil {
			continue
		}
		tried++
		guests[i].host = nil
		if more := others(); len(more) == len(fewer) {
			host.Parcels = slices.DeleteFunc(host.Parcels, func(p Packed) bool { return p.Number == guests[i].Number })
			fewer = more
		} else {
			guests[i].host = host
		}
	}
	return shared(sheets, all), fewer
}

// invitedMost puts parcels into openings, the tallest first or in another order: so that the fewest
// pages are needed for those that have no room there.
func invitedMost(parcels []Parcel, free []*opening, sheets []Sheet, window plane.Point) ([]*opening, []guest) {
	all, guests := invited(parcels, free, sheets)
	if len(free) == 0 {
		return all, guests
	}
	pages := func(guests []guest) int {
		shelves, _ := inOrder(uninvited(guests), window)
		return len(shelves)
	}
	least := pages(guests)
	for order := range orders(parcels, window) {
		if least == 0 {
			break
		}
		with, others := invited(order, free, sheets)
		if n := pages(others); n < least {
			all, guests, least = with, others, n
		}
	}
	return all, guests
}

// uninvited are the parcels that are put into no opening.
func uninvited(guests []guest) []Parcel {
	var left []Parcel
	for _, g := range guests {
		if g.host == nil {
			left = append(left, g.Parcel)
		}
	}
	return left
}

// invited puts parcels, in their order, into openings, each into the nearest with room. It returns
// the openings with them, and all parcels.
func invited(parcels []Parcel, free []*opening, sheets []Sheet) ([]*opening, []guest) {
	all := make([]*opening, len(free))
	for i, o := range free {
		with := *o
		all[i] = &with
	}
	guests := make([]guest, len(parcels))
	for i, p := range parcels {
		guests[i].Parcel = p
		if page, found := p.ontoFirst(nearestTo(*p.Piece, all, func(o *opening) Piece { return sheets[o.sheet].host() }), func(page int, p Parcel) bool { return all[page].Put(p) }); found {
			guests[i].host = all[page]
		}
	}
	return all, guests
}

// shared returns the sheets with what their openings hold.
func shared(sheets []Sheet, all []*opening) []Sheet {
	with := slices.Clone(sheets)
	for _, o := range all {
		if len(o.Parcels) == 0 {
			continue
		}
		with[o.sheet] = with[o.sheet].with(o.Parcels)
	}
	return with
}

// openings finds the pages of sheets that have room for one of the parcels.
func openings(sheets []Sheet, parcels []Parcel) []*opening {
	tooSmall := func(b plane.Box) bool {
		one := Packing{free: []plane.Box{b}}
		return !slices.ContainsFunc(parcels, func(p Parcel) bool {
			return len(one.places(p)) > 0 || len(one.places(p.QuarterTurned())) > 0
		})
	}
	var all []*opening
	pages := 0
	for i := range sheets {
		s := &sheets[i]
		if pages+len(s.Cells) > mostShared {
			continue
		}
		pages += len(s.Cells)
		var onSheet []*opening
		around := s.obstacles()
		for _, c := range s.Cells {
			o := opening{sheet: i, cell: c}
			o.free = slices.DeleteFunc(s.freeBoxes(around, s.clearOf(c)), tooSmall)
			if len(o.free) > 0 {
				onSheet = append(onSheet, &o)
			}
		}
		if len(onSheet) > 0 {
			for _, told := range s.toldRooms() {
				for _, o := range onSheet {
					if told.Meets(s.Grid.WindowOf(o.cell)) {
						o.free = without(o.free, told)
					}
				}
			}
		}
		all = append(all, onSheet...)
	}
	return all
}

// clearOf is what of a page lies short of the strips it shares with others.
func (s *Sheet) clearOf(c Cell) plane.Box {
	return s.Grid.within(c, s.Grid.WindowOf(c), s.Grid.Overlap)
}

// toldRooms letters a sheet of its own of the pieces, and returns what is kept clear round
// the signs and the panels of these.
func toldRooms(pieces []Piece, g Grid, cells []Cell) []plane.Box {
	alone := NewSheet(pieces, g, cells)
	alone.FindJoins(1)
	alone.TakeHeads()
	for _, p := range alone.Pieces {
		alone.tell(p)
	}
	var rooms []plane.Box
	for _, l := range alone.Labels {
		rooms = append(rooms, l.Room.Bounds().Grown(besideRoom))
	}
	return rooms
}
