package arrange

import (
	"cmp"
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: of some places in a piece, in rows and columns about its middle, that one is
// found where an inscription has the most room round it. A block of places is asked as a whole, then
// its quarters: what lies in the way of an inscription smaller by half a block, in the middle of
// that, is in its way at every place of the block.

// trials is how many steps of a piece there are across and up at most, half of them to each side
// of its middle.
const trials = 48

// Roomiest returns the place inside the piece, and in none of its hems, where the inscription has
// the most room round it, at least some mm; of several, the one nearest the middle of the piece,
// and of those as near the leftmost, then the lowest. Places lie step mm or more apart. It must
// fit in its box there; of two boxes that no line runs through, one in the other, the outer one
// fits only where the inner one does. It runs along u, which is across or up.
func (p Piece) Roomiest(f *Field, step float64, t Inscription, u plane.Point, least float64, fits func(plane.Box) bool) (PlacedInscription, bool) {
	if e, within := t.Extent(u), p.Outline.Bounds(); e.X > within.Width() || e.Y > within.Height() {
		return PlacedInscription{}, false // most panels are refused here, for most small pieces
	}
	r := roomiest{Field: f, piece: p, of: t, u: u, rooms: []float64{least}, fits: fits, has: -1}
	for _, more := range []float64{2, 3, 4.5, 6, 12, 20, 30, 45} {
		if more > least {
			r.rooms = append(r.rooms, more)
		}
	}
	r.middle = p.Bounds.Centre()
	r.step = plane.Point{X: math.Max(step, p.Bounds.Width()/trials), Y: math.Max(step, p.Bounds.Height()/trials)}
	r.ask(reach{-trials / 2, trials / 2}, reach{-trials / 2, trials / 2})
	return PlacedInscription{t, r.best, u}, r.has >= 0
}

// roomiest is a search for the roomiest place.
type roomiest struct {
	*Field
	piece  Piece
	of     Inscription
	u      plane.Point
	rooms  []float64 // that are asked for, the least first
	fits   func(plane.Box) bool
	middle plane.Point // of the piece
	step   plane.Point // from one place to the next
	best   plane.Point // so far
	has    int         // which of the rooms that has; -1 where there is none yet
}

// reach is all steps from one to another, counted from the middle of a piece.
type reach struct{ from, to int }

// halves are its two halves, the one nearer to the middle first; a single step is whole.
func (s reach) halves() []reach {
	if s.from == s.to {
		return []reach{s}
	}
	mid := (s.from + s.to) >> 1 // of two in the middle the lower
	low, high := reach{s.from, mid}, reach{mid + 1, s.to}
	if s.from+s.to < 0 {
		return []reach{high, low}
	}
	return []reach{low, high}
}

// ask asks the places of a block, so many steps across and so many up.
func (r *roomiest) ask(across, up reach) {
	if across.from == across.to && up.from == up.to {
		if at := r.at(across.from, up.from); r.piece.Bounds.Holds(at) {
			r.try(at)
		}
		return
	}
	block := plane.Box{Min: r.at(across.from, up.from), Max: r.at(across.to, up.to)}
	if !block.Meets(r.piece.Bounds) || r.isHopeless(block) {
		return
	}
	for _, a := range across.halves() {
		for _, u := range up.halves() {
			r.ask(a, u)
		}
	}
}

// at is the place so many steps from the middle one.
func (r *roomiest) at(across, up int) plane.Point {
	return r.middle.Add(plane.Point{X: float64(across) * r.step.X, Y: float64(up) * r.step.Y})
}

// isHopeless reports whether no place of a block can be the best one: it would need the room that
// has, or where all of it is further off, the next one.
func (r *roomiest) isHopeless(block plane.Box) bool {
	needs := r.has + 1
	if r.has >= 0 && block.Distance(r.middle) <= r.best.Distance(r.middle) {
		needs = r.has
	}
	if needs == len(r.rooms) {
		return true
	}
	less := plane.Point{X: block.Width() / 2, Y: block.Height() / 2}
	if r.u == text.Up() {
		less.X, less.Y = less.Y, less.X
	}
	s := r.of.Around(block.Centre(), r.u)
	s.Half = s.Half.Sub(less).Sub(plane.Point{X: roundingOff, Y: roundingOff})
	around := s.Grown(r.rooms[needs])
	if around.Half.X <= 0 || around.Half.Y <= 0 {
		return false
	}
	return !r.Free(around) || s.Half.X > 0 && s.Half.Y > 0 && !r.fits(s.Bounds())
}

// try makes a place the best one if it is. It is asked only for what would make it that, and only
// where it has that whether it lies in a hem, which is far more work than all else.
func (r *roomiest) try(at plane.Point) {
	needs := r.has + 1
	if r.has >= 0 && r.isBefore(at) {
		needs = r.has
	}
	s := r.of.Around(at, r.u)
	if needs == len(r.rooms) || !r.fits(s.Bounds()) || !r.Free(s.Grown(r.rooms[needs])) || !r.piece.Inside(at) || r.piece.hemmed(at) {
		return
	}
	for r.best, r.has = at, needs; r.has+1 < len(r.rooms) && r.Free(s.Grown(r.rooms[r.has+1])); {
		r.has++
	}
}

// isBefore reports whether a place comes before the best one where both have the same room.
func (r *roomiest) isBefore(at plane.Point) bool {
	return cmp.Or(cmp.Compare(at.Distance(r.middle), r.best.Distance(r.middle)), cmp.Compare(at.X, r.best.X), cmp.Compare(at.Y, r.best.Y)) < 0
}
