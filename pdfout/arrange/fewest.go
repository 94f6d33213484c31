package arrange

import (
	"cmp"
	"iter"
	"math"
	"math/rand/v2"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: where parcels may go on fewer pages than they do the tallest first, they are
// tried lying as they take the least room, and then in other orders, some of them turned. The first
// way that takes as few pages as any is kept, and another than the tallest first only where it saves
// a page. The orders are drawn at random, but the same for the same parcels every time.

const (
	// mostLaidAnew bounds the work of one filling: how many parcels are laid anew at most, and so
	// how often all of them.
	mostLaidAnew = 1000
	// mixing is how far orders go from the tallest first: a parcel may come before one that is
	// higher by as much as exp(mixing) times.
	mixing = 0.5
	// oneTurnedOf is of how many parcels one is turned.
	oneTurnedOf = 3
)

// fill puts the parcels, the tallest first, on as few pages as it finds. It also reports whether
// all are laid: it stops when they take more than MaxPages.
func fill(parcels []Parcel, window plane.Point) ([]Packing, bool) {
	best, all := inOrder(parcels, window)
	if !all || len(best) <= 1 {
		return best, all // nothing has to be turned for that
	}
	least := leastPages(parcels, window)
	for order := range orders(parcels, window, smallest(parcels, window)) {
		if len(best) <= least {
			break
		}
		if other, ok := inOrder(order, window); ok && len(other) < len(best) {
			best = other
		}
	}
	return best, true
}

// orders are those in which parcels are laid anew, as many as are tried at most: some that are
// given, and then others.
func orders(parcels []Parcel, window plane.Point, given ...[]Parcel) iter.Seq[[]Parcel] {
	return func(yield func([]Parcel) bool) {
		random := rand.New(rand.NewPCG(0, 0))
		for k := range mostLaidAnew / max(1, len(parcels)) {
			var order []Parcel
			if k < len(given) {
				order = given[k]
			} else {
				order = otherOrder(parcels, window, random)
			}
			if !yield(order) {
				return
			}
		}
	}
}

// least is the least room that a parcel takes as it lies, in mm², with what keeps parcels apart at
// two of its sides.
func (p Parcel) least() float64 {
	least := math.Inf(1)
	for _, way := range append([]Parcel{p}, p.others...) {
		least = min(least, (way.Size.X+Apart)*(way.Size.Y+Apart))
	}
	return least
}

// goes reports whether a parcel goes on a page as it lies.
func (p Parcel) goes(window plane.Point) bool { return p.Size.X <= window.X && p.Size.Y <= window.Y }

// smallest returns the parcels each lying as it takes the least room, the tallest first.
func smallest(parcels []Parcel, window plane.Point) []Parcel {
	all := slices.Clone(parcels)
	for i, p := range all {
		if turned := p.QuarterTurned(); turned.goes(window) && turned.least() < p.least() {
			all[i] = turned
		}
	}
	tallestFirst(all)
	return all
}

// leastPages is how many pages the parcels need at least, by their areas however they lie: each has
// what keeps parcels apart at two of its sides, and so has the page.
func leastPages(parcels []Parcel, window plane.Point) int {
	area := 0.0
	for _, p := range parcels {
		area += min(p.least(), p.QuarterTurned().least())
	}
	return int(math.Ceil(area / ((window.X + Apart) * (window.Y + Apart))))
}

// otherOrder returns the parcels in another order, about the tallest first, some of them turned.
func otherOrder(parcels []Parcel, window plane.Point, random *rand.Rand) []Parcel {
	type ranked struct {
		Parcel
		rank float64
	}
	order := make([]ranked, len(parcels))
	for i, p := range parcels {
		if random.IntN(oneTurnedOf) == 0 {
			if turned := p.QuarterTurned(); turned.goes(window) {
				p = turned
			}
		}
		order[i] = ranked{p, p.Size.Y * math.Exp(mixing*random.Float64())}
	}
	slices.SortStableFunc(order, func(a, b ranked) int { return cmp.Compare(b.rank, a.rank) })
	all := make([]Parcel, len(order))
	for i, r := range order {
		all[i] = r.Parcel
	}
	return all
}
