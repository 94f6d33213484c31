package arrange

import (
	"cmp"
	"slices"
	"sync"

	"tuckmark/marking/plane"
)

// Rules of this file: what is put on a page lies as high as it can there, and then
// as far to the left, so that the rest of the page stays in one part. It is turned,
// by a quarter, only where it would find no room otherwise. What lies there already
// is not moved again.

// Apart is how far pieces that share a page lie from each other, in mm: room
// for scissors.
const Apart = 6.0

// Parcel is what is to be put on a page, as it is to lie there.
type Parcel struct {
	Piece  *Piece      // nil where only room is kept for something else
	Size   plane.Point // of the room it takes, in mm
	others []Parcel    // the same with room kept otherwise
	// quarter makes the same turned by a quarter; it is nil in others, and where there is no piece.
	quarter func() Parcel
	// Number tells parcels apart where that matters.
	Number int
}

// ParcelOf returns the parcel of a piece as it was drawn.
func ParcelOf(p Piece) Parcel { return parcelOf(p, func(p Piece) []Piece { return []Piece{p} }) }

// KeptParcel returns the parcel of a piece with the room that is kept on a page for its words,
// its sign and its panel, as it lies there.
func KeptParcel(p Piece, window plane.Point) Parcel {
	return parcelOf(p, func(p Piece) []Piece { return p.kept(window) })
}

// parcelOf returns the parcel of a piece with what is kept for it as it lies, in one or several
// ways.
func parcelOf(drawn Piece, kept func(Piece) []Piece) Parcel {
	lying := func(p Piece) Parcel {
		var all []Parcel
		for _, q := range kept(p) {
			all = append(all, Parcel{Piece: &q, Size: q.Room()})
		}
		first := all[0]
		first.others = all[1:]
		return first
	}
	p := lying(drawn)
	p.quarter = sync.OnceValue(func() Parcel {
		turned := lying(drawn.QuarterTurned())
		turned.quarter = func() Parcel { return p }
		return turned
	})
	return p
}

// QuarterTurned returns the parcel of a piece turned by a quarter: as it was drawn where it
// lies turned. One without a piece has none.
func (p Parcel) QuarterTurned() Parcel {
	turned := p.quarter()
	turned.Number = p.Number
	return turned
}

// ontoFirst puts the parcel of a piece on the first page that takes it: as it lies if any does,
// turned if not. Pages go by their numbers. It returns that of the page, and whether there is one.
func (p Parcel) ontoFirst(pages []int, put func(page int, p Parcel) bool) (page int, found bool) {
	for _, lying := range []func() Parcel{func() Parcel { return p }, p.QuarterTurned} {
		lies := lying()
		for _, way := range append([]Parcel{lies}, lies.others...) {
			way.Number = p.Number
			for _, i := range pages {
				if put(i, way) {
					return i, true
				}
			}
		}
	}
	return 0, false
}

// Packed is a parcel on its page, with the room it takes there.
type Packed struct {
	Parcel
	Room plane.Box
}

// Moved returns the parcel moved by a step on its page.
func (p Packed) Moved(step plane.Point) Packed {
	p.Room = plane.Box{Min: p.Room.Min.Add(step), Max: p.Room.Max.Add(step)}
	return p
}

// Laid returns the piece as it lies on its page.
func (p Packed) Laid() Piece {
	return p.Piece.Moved(p.Room.Min.Sub(p.Piece.Corner()))
}

// Packing is a page being filled.
type Packing struct {
	Parcels []Packed    // in the order in which they were put there
	free    []plane.Box // the largest boxes in which nothing lies yet; they overlap
}

// EmptyPage is a page of a width and height with nothing on it.
func EmptyPage(size plane.Point) Packing { return Packing{free: []plane.Box{{Max: size}}} }

// places returns where a parcel can lie: the highest place first, and of those
// equally high the leftmost.
func (k Packing) places(p Parcel) []plane.Box {
	var places []plane.Box
	for _, f := range k.free {
		if f.Width() >= p.Size.X && f.Height() >= p.Size.Y {
			places = append(places, plane.Box{
				Min: plane.Point{X: f.Min.X, Y: f.Max.Y - p.Size.Y},
				Max: plane.Point{X: f.Min.X + p.Size.X, Y: f.Max.Y},
			})
		}
	}
	slices.SortStableFunc(places, func(a, b plane.Box) int {
		return cmp.Or(cmp.Compare(b.Min.Y, a.Min.Y), cmp.Compare(a.Min.X, b.Min.X))
	})
	return places
}

// with returns the page with a parcel put at a place.
func (k Packing) with(p Parcel, at plane.Box) Packing {
	return Packing{append(slices.Clip(k.Parcels), Packed{p, at}), without(k.free, at.Grown(Apart))}
}

// Put puts the parcel where it lies highest, and reports whether there was room.
func (k *Packing) Put(p Parcel) bool {
	places := k.places(p)
	if len(places) > 0 {
		*k = k.with(p, places[0])
	}
	return len(places) > 0
}

// Used is the box round all that lies on the page.
func (k Packing) Used() plane.Box {
	b := plane.EmptyBox()
	for _, p := range k.Parcels {
		b = b.Union(p.Room)
	}
	return b
}

// without returns the largest boxes that are left of some free boxes, none of which lies in another,
// when a box is taken out of them.
func without(free []plane.Box, b plane.Box) []plane.Box {
	var rest []plane.Box
	var cut []bool // of each, whether it is what is left of a larger one
	for _, f := range free {
		if f.Min.X >= b.Max.X || f.Max.X <= b.Min.X || f.Min.Y >= b.Max.Y || f.Max.Y <= b.Min.Y {
			rest, cut = append(rest, f), append(cut, false)
			continue
		}
		for _, part := range []plane.Box{
			{Min: f.Min, Max: plane.Point{X: b.Min.X, Y: f.Max.Y}},
			{Min: plane.Point{X: b.Max.X, Y: f.Min.Y}, Max: f.Max},
			{Min: f.Min, Max: plane.Point{X: f.Max.X, Y: b.Min.Y}},
			{Min: plane.Point{X: f.Min.X, Y: b.Max.Y}, Max: f.Max},
		} {
			if part.Width() > 0 && part.Height() > 0 {
				rest, cut = append(rest, part), append(cut, true)
			}
		}
	}
	var largest []plane.Box
	for i, f := range rest {
		// One that is whole lies in no other, and so in no part of one.
		if !cut[i] || !covered(rest, i) {
			largest = append(largest, f)
		}
	}
	return largest
}

// covered reports whether a box lies in another; of two that are the same only the second does.
func covered(boxes []plane.Box, i int) bool {
	f := boxes[i]
	for j, o := range boxes {
		if j != i && o.Holds(f.Min) && o.Holds(f.Max) && (o != f || j < i) {
			return true
		}
	}
	return false
}
