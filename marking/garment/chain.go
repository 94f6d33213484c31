package garment

import (
	"slices"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. Edges of a piece that are neighbours are sewn along in one go, and
// so is an edge that comes to the fold, with its image on the other half. Where a line goes
// on over a seam to another piece (strand.go) it ends here.

// chain is an unbroken line on one piece that something is sewn along.
type chain struct {
	piece *piece.Piece
	times int        // how often it comes where its courses do
	line  plane.Path // as the piece is drawn, on both halves where it goes over the fold; closed where it goes all round
}

// chains joins courses to the lines that they make on their pieces.
func chains(courses []Course) []chain {
	type edge struct {
		piece  *piece.Piece
		number int
	}
	open := map[edge]bool{} // edges that are in no chain yet
	for _, c := range courses {
		if c.isEdge() && !c.drawn().OnFold {
			open[edge{c.Piece, c.edge}] = true
		}
	}
	var all []chain
	for _, c := range courses {
		if !c.isEdge() || c.drawn().OnFold {
			all = append(all, newChain(c.Piece, c.Times, c.line))
			continue
		}
		if !open[edge{c.Piece, c.edge}] {
			continue
		}
		first := c.edge
		for before, _ := c.Piece.Neighbours(first); open[edge{c.Piece, before}] && before != c.edge; before, _ = c.Piece.Neighbours(first) {
			first = before
		}
		var line plane.Path
		for at := first; open[edge{c.Piece, at}]; _, at = c.Piece.Neighbours(at) {
			delete(open, edge{c.Piece, at})
			line = joined(line, c.Piece.Edges[at].Sewn)
		}
		all = append(all, newChain(c.Piece, c.Times, line))
	}
	return all
}

// newChain returns the chain of a line, with its image where it comes to the fold.
func newChain(p *piece.Piece, times int, line plane.Path) chain {
	if fold := p.EdgeOnFold(); fold >= 0 && !p.OnAxis(line) {
		axis := p.Edges[fold].Path
		image := line.Mirrored(axis[0], piece.Inward(axis))
		if p.OnAxis(line[len(line)-1:]) {
			line, times = joined(line, image), times/2
		} else if p.OnAxis(line[:1]) {
			line, times = joined(image, line), times/2
		}
	}
	if n := len(line) - 1; n > 2 && line[0].Distance(line[n]) < piece.SamePoint {
		line = slices.Clone(line)
		line[n] = line[0]
	}
	return chain{p, times, line}
}

// joined returns two lines as one, without the beginning of the second where that is the end
// of the first.
func joined(a, b plane.Path) plane.Path {
	if len(a) > 0 && a[len(a)-1].Distance(b[0]) < piece.SamePoint {
		b = b[1:]
	}
	return slices.Concat(a, b)
}
