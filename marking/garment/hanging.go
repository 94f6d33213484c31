package garment

import (
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file. A ruffle that is sewn along an edge hangs beyond it by its finished
// depth, and lace that lies beyond the edge by its width: so much longer is the garment
// there. Ribbon, cord and braid are laid on.

// Hanging is what hangs beyond an edge to which it is sewn.
type Hanging struct {
	Key   string        // what the file calls it; "" where nothing hangs there
	What  string        // "ruffle" or "lace"
	Depth length.Amount // by how much it hangs beyond
}

// HangsFrom returns what hangs beyond an edge of a piece, of several things the deepest. It is
// all that lies beyond the edge where ends is true: not where several things hang there, and may
// hang one from the other, where a ruffle on a line of the piece may reach lower, or where
// a seam joins another piece.
func (p *Pattern) HangsFrom(one *piece.Piece, edge int) (h Hanging, ends bool) {
	e := edgeOf{one, edge}
	ends = !seams(p.Seams).joins(e)
	add := func(key, what string, depth length.Amount) {
		ends = ends && h.Key == ""
		if h.Key == "" || depth.MM > h.Depth.MM {
			h = Hanging{key, what, depth}
		}
	}
	at := func(on SewnOn) bool { return slices.ContainsFunc(on.Courses, e.isRun) }
	for _, r := range p.Ruffles {
		if at(r.SewnOn) {
			add(r.Key, "ruffle", r.Depth)
		}
		if slices.ContainsFunc(r.Courses, func(c Course) bool { return c.Piece == one && !c.isEdge() }) {
			ends = false
		}
	}
	for _, t := range p.Trims {
		if t.Kind == source.Lace && t.Lies == source.LiesBeyond && t.Width > 0 && at(t.SewnOn) {
			add(t.Key, "lace", p.Unit.Chosen(t.Width))
		}
	}
	return h, ends
}
