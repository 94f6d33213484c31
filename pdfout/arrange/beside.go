package arrange

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: a piece too large for a page, such as a band, is laid beside another
// one, on pages that are printed anyway, where it has room there: outside that piece, clear
// of its lines, its sign and its panel, and on no page that is left out. Both are joined at once, and
// all its own pages are saved. The smallest is tried first.

// besideEachOther returns the sheets of large pieces, one each, without those whose piece
// finds room on another.
func besideEachOther(sheets []Sheet) []Sheet {
	pages := 0
	bySize := make([]int, len(sheets))
	for i, s := range sheets {
		bySize[i] = i
		pages += len(s.Cells)
	}
	if pages > mostShared {
		return sheets
	}
	area := func(i int) float64 { return sheets[i].Pieces[0].Bounds.Width() * sheets[i].Pieces[0].Bounds.Height() }
	slices.SortStableFunc(bySize, func(a, b int) int { return cmp.Compare(area(a), area(b)) })
	with := slices.Clone(sheets)
	gone := make([]bool, len(sheets))
	for _, own := range bySize {
		if len(with[own].Pieces) > 1 {
			continue // others lie beside it
		}
		guest := ParcelOf(with[own].Pieces[0].upright())
		for _, i := range nearestTo(*guest.Piece, sheets, func(s Sheet) Piece { return s.Pieces[0] }) {
			if i == own || gone[i] {
				continue
			}
			if p, found := with[i].placeFor(guest); found {
				with[i] = with[i].with([]Packed{p})
				gone[own] = true
				break
			}
		}
	}
	var left []Sheet
	for i, s := range with {
		if !gone[i] {
			left = append(left, s)
		}
	}
	return left
}

// placeFor returns where a parcel of a large piece lies on a sheet that has room: as it was
// drawn rather than turned, where the fewest of its short marks are cut by joins.
func (s *Sheet) placeFor(p Parcel) (best Packed, found bool) {
	lying := []Parcel{p, p.QuarterTurned()}
	unlettered := Packing{free: s.clear()}
	if !slices.ContainsFunc(lying, func(p Parcel) bool { return len(unlettered.places(p)) > 0 }) {
		return best, false // most are, and nothing has to be lettered for them
	}
	k := Packing{free: s.room()}
	for _, lies := range lying {
		fewest := math.MaxInt
		for _, at := range k.places(lies) {
			one := Packed{lies, at}
			if n := tenderOf(one.Laid().Lines).cuts(s.Grid); n < fewest {
				best, fewest, found = one, n, true
			}
		}
		if found {
			break
		}
	}
	return best, found
}

// clearBoxes are what is free of lines and pieces on the pages of the sheet that are printed.
func (s *Sheet) clearBoxes() []plane.Box {
	free := s.freeBoxes(s.obstacles(), s.Grid.Box())
	for _, c := range s.Grid.Cells() {
		if !s.printed[c] {
			free = without(free, s.Grid.CoreOf(c))
		}
	}
	return free
}

// roomBoxes are what of that is free of signs and panels as well.
func (s *Sheet) roomBoxes() []plane.Box {
	free := s.clear()
	for _, told := range s.toldRooms() {
		free = without(free, told)
	}
	return free
}

// with returns the sheet with more on it, in the place where it was.
func (s *Sheet) with(more []Packed) Sheet {
	pieces := slices.Clone(s.Pieces)
	for _, p := range more {
		pieces = append(pieces, p.Laid())
	}
	next := NewSheet(pieces, s.Grid, s.Cells)
	next.Part, next.Paper = s.Part, s.Paper
	return next
}

// nearestTo returns the numbers of pages, each with a piece, in the order in which another
// piece is put on them: those of its own stage first, of these that of its own piece of
// cloth, of others the one that is used soonest before or behind it.
func nearestTo[T any](p Piece, pages []T, piece func(T) Piece) []int {
	type nearness struct{ stage, of, parts int } // each less where it is nearer
	away := make([]nearness, len(pages))
	for i := range pages {
		q := piece(pages[i])
		away[i].parts = max(q.Part-p.Part, p.Part-q.Part)
		if stageOf(q.Kind) != stageOf(p.Kind) {
			away[i].stage = 1
		}
		if q.Of != p.Of {
			away[i].of = 1
		}
	}
	order := make([]int, len(pages))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		x, y := away[a], away[b]
		return cmp.Or(cmp.Compare(x.stage, y.stage), cmp.Compare(x.of, y.of), cmp.Compare(x.parts, y.parts))
	})
	return order
}
