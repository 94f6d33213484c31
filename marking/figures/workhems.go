package figures

import (
	"math"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file: when a hem is folded in hangs on what its ends run into. Of those of one
// turn the hems that run up a piece come first, as at an opening: the one at the foot goes over
// their lower end (common practice).

// turn is when a hem is folded in.
type turn int

// A hem that goes on over a seam is folded in when that is sewn; one that ends in a seam, at what
// is gathered, or at what something is sewn along, before, one that runs up a piece and comes to
// no seam while that lies flat, and so is one that something is sewn along
// itself: it is counted with the hem folded.
// One of a piece that no seam joins is folded in before that is sewn in its place.
const (
	beforeGathers turn = iota
	ofItsOwn
	beforeTrims
	atLast
)

// hemmed adds the hems that are folded in at a turn.
func (w *work) hemmed(now turn) {
	var up, across []step
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		for k, e := range p.Edges {
			switch {
			case e.Hem == 0 || w.turnOf(p, k) != now:
			case runsUp(e):
				up = append(up, w.hem(p, e))
			default:
				across = append(across, w.hem(p, e))
			}
		}
	}
	w.addSteps(append(up, across...))
}

// hem is the step in which a hem is folded in.
func (w *work) hem(p *piece.Piece, e piece.Edge) step {
	turn, fold := e.FoldNames()
	number := w.pattern.Unit.AsWritten(e.Hem) + " deep"
	if e.Turn > 0 {
		number += ", " + w.pattern.Unit.AsWritten(e.Turn) + " turned in"
	}
	return step{do: "Fold in and sew the " + strings.TrimPrefix(e.Key, "the ") + " of",
		number: number, piece: p.Name, roles: []mark.Role{mark.Fold}, lines: []string{turn, fold}}
}

// turnOf is when the hem of an edge is folded in.
func (w *work) turnOf(p *piece.Piece, edge int) turn {
	if w.isUnjoined(p) {
		return ofItsOwn
	}
	n := len(p.Edges)
	ends := []string{p.Edges[(edge+n-1)%n].Key, p.Edges[(edge+1)%n].Key}
	meets := func(courses []garment.Course, edges ...string) bool {
		return slices.ContainsFunc(courses, func(c garment.Course) bool { return c.Piece.Key == p.Key && slices.Contains(edges, c.Key) })
	}
	seamed, held := false, false
	for _, s := range w.pattern.Seams {
		for i, side := range s.Sides {
			meeting := meets(side.Courses, ends...)
			lies := s.Gathered || w.endsIn(s, i, p.Edges[edge].Key)
			seamed = seamed || meeting && !lies
			held = held || meeting && lies
		}
	}
	if held && !seamed {
		return beforeGathers
	}
	for _, on := range w.pattern.AllSewnOn() {
		if meets(on.Courses, append(ends, p.Edges[edge].Key)...) {
			return beforeTrims
		}
	}
	if !seamed && runsUp(p.Edges[edge]) {
		return beforeGathers
	}
	return atLast
}

// endsIn reports whether a hem beside one side of a seam ends in it, since what goes on beyond is
// no hem: a placket in a waist. Where that is not known it goes over the seam, as that at the foot
// of a skirt does.
func (w *work) endsIn(s garment.Seam, side int, hem string) bool {
	other := s.Sides[1-side].Courses
	for _, end := range s.Ends {
		if end.Neighbours[side] != hem || len(other) != 1 {
			continue
		}
		p := other[0].Piece
		if beyond := p.EdgeNumber(end.Neighbours[1-side]); beyond >= 0 {
			return p.Edges[beyond].Hem == 0
		}
	}
	return false
}

// runsUp reports whether an edge runs up its piece, more than across it.
func runsUp(e piece.Edge) bool {
	run := e.Given[len(e.Given)-1].Sub(e.Given[0])
	return math.Abs(run.Y) > math.Abs(run.X)
}
