package figures

import (
	"fmt"
	"slices"

	"tuckmark/marking/garment"
)

// Rules of this file: a side that is gathered and runs over another seam, or is closed to a ring
// by it, is gathered when that seam is sewn: gathers are drawn up along the whole of their line
// (common practice). Where no seam meets it, as a skirt that ends at an armhole, it is gathered
// first, while it lies flat. A seam that runs over the gathers, as a side seam in one with that
// of the skirt, comes after them in any case. Other seams stand in the order of the file.

// seamed adds the seams, and which sides are gathered.
func (w *work) seamed() {
	rounds := roundsOf(w.pattern.Seams)
	for round := range slices.Max(append(rounds, 0)) + 1 {
		var seams []garment.Seam
		for i, s := range w.pattern.Seams {
			if rounds[i] == round {
				seams = append(seams, s)
			}
		}
		w.gathered(seams)
		for some := range slices.Chunk(gathersFirst(seams), mostInStep) { // none is left out
			w.joined(some)
		}
	}
}

// gathersFirst returns seams with those that run over gathers behind all others.
func gathersFirst(seams []garment.Seam) []garment.Seam {
	var first, then []garment.Seam
	for _, s := range seams {
		if !s.Gathered && slices.ContainsFunc(seams, func(other garment.Seam) bool { return other.Gathered && runsOver(s, other) }) {
			then = append(then, s)
		} else {
			first = append(first, s)
		}
	}
	return append(first, then...)
}

// gathered adds that the sides are gathered that some seams draw up.
func (w *work) gathered(seams []garment.Seam) {
	for _, s := range seams {
		if !s.Gathered {
			continue
		}
		longer, shorter := s.Longer(s.Difference)
		do := fmt.Sprintf("Gather %s to %s", longer.Title(), shorter.Title())
		if s.OfHalves() {
			do += ", in each half"
		}
		w.add(do, longer.Sewn.String()+" to "+shorter.Sewn.String(), nil)
		w.last().Section = seamsTitle
	}
}

// joined adds that some seams are sewn, and how far from the cut edge.
func (w *work) joined(seams []garment.Seam) {
	var names, allowances []string
	for _, s := range seams {
		names = append(names, s.Key)
		for _, c := range s.Courses() {
			allowances = append(allowances, w.pattern.Unit.AsWritten(c.Piece.Edges[c.Piece.EdgeNumber(c.Key)].Allowance))
		}
	}
	do, on := "Sew the seams: ", ", each on its stitch line"
	if len(names) == 1 {
		do, on = "Sew the seam: ", ", on its stitch line"
	}
	do += namesOf(names)
	slices.Sort(allowances)
	if allowances = slices.Compact(allowances); len(allowances) == 1 {
		w.add(do, allowances[0]+" from the cut edge", nil)
	} else {
		w.add(do+on, "", nil)
	}
	w.last().Section = seamsTitle
}

// roundsOf returns for every seam in which round of gathering and sewing it comes, from 0. Of two
// seams of which each runs over the other, as an armhole and a side seam in one with the
// underarm, one that is gathered does not wait for the other.
func roundsOf(seams []garment.Seam) []int {
	over := make([][]bool, len(seams))
	for i, s := range seams {
		for k, other := range seams {
			over[i] = append(over[i], i != k && runsOver(s, other))
		}
	}
	rounds := make([]int, len(seams))
	for range seams { // as often as one may wait for another, and of a circle of them no longer
		before := slices.Clone(rounds)
		for i, s := range seams {
			for k := range seams {
				switch {
				case !over[i][k]:
				case !s.Gathered:
					rounds[i] = max(rounds[i], rounds[k])
				case !over[k][i]:
					rounds[i] = max(rounds[i], min(rounds[k]+1, len(seams)))
				}
			}
		}
		if slices.Equal(rounds, before) {
			break
		}
	}
	return rounds
}

// runsOver reports whether a side of a seam goes on over another seam, from one of its edges to
// the next, or its ends come together there.
func runsOver(s, other garment.Seam) bool {
	return slices.ContainsFunc(s.Sides[:], func(side garment.SeamSide) bool {
		var beside []edgeName
		for _, c := range side.Courses {
			before, after := c.Piece.Neighbours(c.Piece.EdgeNumber(c.Key))
			beside = append(beside, edgeName{c.Piece.Key, c.Piece.Edges[before].Key}, edgeName{c.Piece.Key, c.Piece.Edges[after].Key})
		}
		isBeside := func(c garment.Course) bool { return slices.Contains(beside, edgeName{c.Piece.Key, c.Key}) }
		return slices.ContainsFunc(other.Sides[0].Courses, isBeside) && slices.ContainsFunc(other.Sides[1].Courses, isBeside)
	})
}

// edgeName is an edge by the keys of its piece and its own: pieces of a set for another transfer
// are copies.
type edgeName struct{ piece, edge string }
