package pdfout

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: what is put on a page lies as high as it can there, and then
// as far to the left, so that the rest of the page stays in one part. It is turned,
// by a quarter, only where it would find no room otherwise. What lies there already
// is not moved again.

// apart is how far pieces that share a page lie from each other, in mm: room
// for scissors.
const apart = 6.0

// parcel is what is to be put on a page, as it is to lie there.
type parcel struct {
	piece  *piece      // nil where only room is kept for something else
	size   plane.Point // of the room it takes, in mm
	turned bool        // its piece lies by a quarter turn
	// roomy tells that the check square has a place inside the piece.
	roomy bool
	// number tells parcels apart where that matters.
	number int
}

// parcelOf returns the parcel of a piece as it was drawn.
func parcelOf(p piece) parcel { return parcel{piece: &p, size: p.room()} }

// quarterTurned returns the parcel of a piece as it was drawn turned by a quarter.
func (p parcel) quarterTurned() parcel {
	p.size = p.piece.roomOf(p.piece.bounds.Height(), p.piece.bounds.Width())
	p.turned = true
	return p
}

// ontoFirst puts the parcel of a piece on the first page that takes it: as it was
// drawn if any does, turned if not. It returns the number of the page, and whether
// there is one.
func (p parcel) ontoFirst(pages int, put func(page int, p parcel) bool) (page int, found bool) {
	for _, lies := range []parcel{p, p.quarterTurned()} {
		for i := range pages {
			if put(i, lies) {
				return i, true
			}
		}
	}
	return 0, false
}

// packed is a parcel on its page.
type packed struct {
	parcel
	room plane.Box
}

// moved returns the parcel moved by a step on its page.
func (p packed) moved(step plane.Point) packed {
	p.room = plane.Box{Min: p.room.Min.Add(step), Max: p.room.Max.Add(step)}
	return p
}

// laid returns the piece as it lies on its page.
func (p packed) laid() piece {
	q := *p.piece
	if p.turned {
		q = q.quarterTurned()
	}
	low := p.room.Min.Add(plane.Point{X: spare, Y: spare + q.foot.Y})
	return q.moved(low.Sub(q.bounds.Min))
}

// packing is a page being filled.
type packing struct {
	parcels []packed
	free    []plane.Box // the largest boxes in which nothing lies yet; they overlap
}

// emptyPage is a page of a width and height with nothing on it.
func emptyPage(size plane.Point) packing { return packing{free: []plane.Box{{Max: size}}} }

// places returns where a parcel can lie: the highest place first, and of those
// equally high the leftmost.
func (k packing) places(p parcel) []plane.Box {
	var places []plane.Box
	for _, f := range k.free {
		if f.Width() >= p.size.X && f.Height() >= p.size.Y {
			places = append(places, plane.Box{
				Min: plane.Point{X: f.Min.X, Y: f.Max.Y - p.size.Y},
				Max: plane.Point{X: f.Min.X + p.size.X, Y: f.Max.Y},
			})
		}
	}
	slices.SortStableFunc(places, func(a, b plane.Box) int {
		return cmp.Or(cmp.Compare(b.Min.Y, a.Min.Y), cmp.Compare(a.Min.X, b.Min.X))
	})
	return places
}

// with returns the page with a parcel put at a place.
func (k packing) with(p parcel, at plane.Box) packing {
	return packing{append(slices.Clip(k.parcels), packed{p, at}), without(k.free, at.Grown(apart))}
}

// put puts the parcel where it lies highest, and reports whether there was room.
func (k *packing) put(p parcel) bool {
	places := k.places(p)
	if len(places) > 0 {
		*k = k.with(p, places[0])
	}
	return len(places) > 0
}

// used is the box round all that lies on the page.
func (k packing) used() plane.Box {
	b := plane.EmptyBox()
	for _, p := range k.parcels {
		b = b.Union(p.room)
	}
	return b
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
