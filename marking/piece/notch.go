package piece

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// notchLength is how far a notch reaches into the piece, in mm; where the
// allowance is narrower, it ends at the stitch line, so that a snip along it
// never cuts the seam (common practice).
const notchLength = 5

// Notch is a short mark square to an edge as it is drawn, from the cutting line inward.
type Notch struct {
	Key   string
	Edge  int     // that it lies in
	From  string  // the key of the neighbour of that edge at whose corner At starts
	At    float64 // along the edge from that corner, as the file has it
	Place fault.Place

	path plane.Path
}

// NotchPlaces returns where notches stand on the cutting line of an edge.
func (p *Piece) NotchPlaces(edge int) []plane.Point {
	var places []plane.Point
	for _, n := range p.Notches {
		if n.Edge == edge {
			places = append(places, n.path[0])
		}
	}
	return places
}

// checkNotches works out the notches of a piece.
func checkNotches(piece *Piece, ps source.PieceSpec, found *Findings) {
	for _, s := range ps.Notches {
		w, ok := findWalk(piece, s.Edge, s.From, found)
		if !ok {
			continue
		}
		if length := w.path.Length(); s.At.V > length+SamePoint {
			found.Add(s.At.Place, "measure from the other corner, or from another edge", "the notch leaves %q: it lies %s from %q, and the edge is %s long",
				s.Edge.V, found.Written(s.At.V), s.From.V, found.length(length))
			continue
		}
		at, along := w.path.At(s.At.V)
		in := along.Left().Mul(w.inward)
		at = piece.cutBeside(w.edge, at, in)
		long := float64(notchLength)
		if a := piece.Edges[w.edge].Allowance; a > 0 && a < long {
			long = a
		}
		snip := plane.Path{at, at.Add(in.Mul(long))}
		// In a sharp corner it must not cut through to the other edge.
		for _, c := range plane.Crossings(plane.NewTree(snip), piece.Tree) {
			if c.A > SamePoint {
				snip = snip.Between(0, c.A/2)
				break
			}
		}
		piece.Notches = append(piece.Notches, Notch{Key: s.Key, Edge: w.edge, From: s.From.V, At: s.At.V, Place: s.Place, path: snip})
	}
}
