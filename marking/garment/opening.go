package garment

import "tuckmark/marking/piece"

// Rules of this file. A garment opens where a way round it ends at an opening (round.go). What
// goes round at no level that is measured, as a yoke above the skirt, opens as well at an edge
// that is called a centre, a placket or an opening, that no seam joins, and that has a hem or a
// centre line beside it: of a piece in seams that comes as left and right, and is no sleeve, whose
// own edges are closed on each other.

// Opening is an edge at which the garment opens.
type Opening struct {
	Piece *piece.Piece
	Edge  int
	// Closed is the name of the centre line on which it is closed; "" where edge to edge.
	Closed string
}

// Title names it in a sentence: "the centre back of Back"; "" for the zero Opening.
func (o Opening) Title() string {
	if o.Piece == nil {
		return ""
	}
	return edgeOf{o.Piece, o.Edge}.title()
}

// opening is the edge as one at which the garment opens.
func (e edgeOf) opening() Opening { return Opening{e.piece, e.edge, e.closedOn()} }

// Openings are the edges at which a garment opens, each once: those on the ways round it from the
// top down, and then others in the order of the file.
func (p *Pattern) Openings() []Opening {
	var all []Opening
	told := map[edgeOf]bool{}
	add := func(o Opening) {
		if at := (edgeOf{o.Piece, o.Edge}); !told[at] {
			told[at] = true
			all = append(all, o)
		}
	}
	for _, g := range p.Measures.Girths {
		if g.Opens.Piece != nil {
			add(g.Opens)
		}
	}
	joined := seams(p.Seams)
	for i := range p.Pieces {
		one := &p.Pieces[i]
		if one.OnFold || one.Times() != 2 || !joined.isInSeams(one) || calls(one.Words(), onLimbs...) {
			continue
		}
		for k := range one.Edges {
			if at := (edgeOf{one, k}); !joined.joins(at) && at.isOpening() {
				add(at.opening())
			}
		}
	}
	return all
}

// onLimbs are words for pieces of which each arm or leg has one.
var onLimbs = []string{"sleeve", "cuff", "leg"}

// isOpening reports whether an edge that no seam joins is finished by itself, and called an opening.
func (e edgeOf) isOpening() bool {
	return e.opens() && e.called(openings...) && (e.drawn().Hem > 0 || e.closedOn() != "")
}

// closedOn is the name of the centre line on which an opening is closed; "" where edge to edge.
func (e edgeOf) closedOn() string {
	if line := e.piece.CentreBeside(e.edge); line != nil {
		return line.Key
	}
	return ""
}
