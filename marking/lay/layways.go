package lay

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/piece"
)

// Rules of this file: what is cut from folded cloth and what from single, in three
// ways.
//
//   - On folded cloth a piece with an edge on the fold lies with it there. Of any other
//     piece two are cut at a time, one out of each layer: a left and a right.
//   - On single cloth a piece with an edge on the fold is opened out, and each is cut
//     by itself.
//   - What is wider than folded cloth is cut from single cloth.

// some is so many of a thing to lay on one part of the cloth, one after another.
type some struct {
	thing *toLay
	count int  // of places it takes, may be 0
	upper bool // they are cut out of the upper layer only
}

// way shares pieces out between folded and single cloth, in their order.
type way func(pieces []cutPiece) (folded, single []some)

// foldedThenSingle lays on single cloth what folded cloth is not for: the odd one of
// three or five, and a piece that is opened out.
func foldedThenSingle(pieces []cutPiece) (folded, single []some) {
	for _, p := range pieces {
		switch {
		case p.half != nil:
			folded = append(folded, some{thing: p.half, count: p.count})
		case p.double != nil && !p.opened:
			folded = append(folded, some{thing: p.double, count: p.count / 2})
			single = append(single, some{thing: p.whole, count: p.count % 2})
		default:
			single = append(single, some{thing: p.whole, count: p.count})
		}
	}
	return folded, single
}

// foldedThroughout lays on folded cloth all that is narrow enough, an odd one on the
// upper layer. Where nothing is cut out of both layers there is no use in folding, and
// it shares out as foldedThenSingle does.
func foldedThroughout(pieces []cutPiece) (folded, single []some) {
	both := false
	for _, p := range pieces {
		switch {
		case p.half != nil:
			folded = append(folded, some{thing: p.half, count: p.count})
			both = true
		case p.double != nil:
			folded = append(folded, some{thing: p.double, count: p.count / 2},
				some{thing: p.double, count: p.count % 2, upper: true})
			both = both || p.count > 1
		default:
			single = append(single, some{thing: p.whole, count: p.count})
		}
	}
	if !both {
		return foldedThenSingle(pieces)
	}
	return folded, single
}

// singleThroughout lays everything on single cloth.
func singleThroughout(pieces []cutPiece) (folded, single []some) {
	for _, p := range pieces {
		single = append(single, some{thing: p.whole, count: p.count})
	}
	return nil, single
}

// longestFirst sorts by length along the cloth. What differs by rounding alone
// stays in order.
func longestFirst(pieces []cutPiece) {
	slices.SortStableFunc(pieces, func(a, b cutPiece) int {
		return cmp.Compare(math.Round(b.whole.length/piece.SamePoint), math.Round(a.whole.length/piece.SamePoint))
	})
}
