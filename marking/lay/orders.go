package lay

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/piece"
)

// Rules of this file: which pieces are laid before others. What a maker cuts for several
// children is laid child by child as well as piece by piece: what lies between the pieces
// of one is then of use for the next.

// order is a measure, in mm, of what is laid: what has most of it is laid first.
type order func(*pose) float64

// The orders.
var (
	longestFirst order = func(p *pose) float64 { return p.length }
	widestFirst  order = func(p *pose) float64 { return p.width }
	largestFirst order = func(p *pose) float64 { return math.Sqrt(math.Abs(p.path.Area())) }
)

// mostReordered bounds how many things are laid in every order: more of them only with the
// longest first, so that the lay for a class does not take a maker's patience.
const mostReordered = 100

// ordersFor returns the orders that are tried for pieces, at least one.
func ordersFor(pieces []poses) []order {
	things := 0
	for _, p := range pieces {
		things += p.total()
	}
	if things > mostReordered {
		return []order{longestFirst}
	}
	return []order{longestFirst, largestFirst, widestFirst}
}

// of returns pieces in this order. What differs by rounding alone stays as it stands.
func (o order) of(pieces []poses) []poses {
	sorted := slices.Clone(pieces)
	slices.SortStableFunc(sorted, func(a, b poses) int {
		return cmp.Compare(math.Round(o(b.whole)/piece.SamePoint), math.Round(o(a.whole)/piece.SamePoint))
	})
	return sorted
}

// deals returns the shares as they are, and dealt out in rounds where that is another
// order.
func (s shares) deals() []shares {
	folded, single := rounds(s.folded), rounds(s.single)
	if folded == 1 && single == 1 {
		return []shares{s}
	}
	return []shares{s, {folded: dealt(s.folded, folded), single: dealt(s.single, single)}}
}

// rounds returns in how many rounds batches can be dealt out evenly, with some of each in
// every one; 1 where that changes nothing.
func rounds(all []batch) int {
	evenly, several := 0, 0
	for _, b := range all {
		evenly = commonDivisor(evenly, b.count)
		if b.count > 0 {
			several++
		}
	}
	if several < 2 {
		return 1
	}
	return evenly
}

// dealt returns batches dealt out in so many rounds.
func dealt(all []batch, rounds int) []batch {
	var dealt []batch
	for k := range rounds {
		for _, b := range all {
			b.count /= rounds
			b.before = k * b.count
			dealt = append(dealt, b)
		}
	}
	return dealt
}

// commonDivisor returns the greatest number that goes into both, neither below 0, evenly;
// of 0 and another that other.
func commonDivisor(a, b int) int {
	for b > 0 {
		a, b = b, a%b
	}
	return a
}
