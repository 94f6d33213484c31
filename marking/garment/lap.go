package garment

import (
	"fmt"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// Rules of this file. Where a back laps and what it is sewn to does not open, as a skirt cut on the
// fold below a yoke of two halves, the fold comes on the line on which the halves are closed: they
// are laid on each other, centre on centre, and the seam is sewn over both (common practice). So
// such an edge is as long as it is to that line. The file does not tell whether a slit is cut into
// what lies on the fold; what a lap of its own would want there is said, and not reckoned.

// lap is what an edge has beyond the line on which its two halves are closed, in a seam to
// something that does not open there.
type lap struct {
	opening string        // the edge beside it, at which it opens
	closed  string        // the centre line there; "" where it is closed edge to edge
	beyond  length.Amount // sewn, of one half
}

// toCentre makes an edge of a seam, whose other side has a centre more than its own, as long as it is
// to the line on which its halves are closed; and reports whether it laps beyond that.
func (j joiner) toCentre(c *Course) bool {
	l, p := lap{}, panel{edgeOf: c.outlineEdge()}
	before, after := c.Piece.Neighbours(c.edge)
	for i, edge := range []int{before, after} {
		p.sides[i] = side{edge, sideLoose}
		beside := edgeOf{c.Piece, edge}
		closed := beside.closedOn()
		if j.ties.sewn(beside) || !beside.opens() || closed == "" && beside.drawn().Hem == 0 {
			continue
		}
		p.sides[i].kind = sideOpening
		l.opening, l.closed = beside.drawn().Key, closed
		c.lap = &l
	}
	if l.closed == "" {
		return false
	}
	to := p.finished()
	c.Length, l.beyond = j.Unit.Amount(to), j.Unit.Amount(c.drawn().FinishedLength-to)
	return l.beyond.MM > piece.SamePoint
}

// centres counts the ends of edges that lie in the middle of something: at the fold, or at a seam
// with the own mirror image.
func (j joiner) centres(all []Course) (n int) {
	for _, c := range all {
		before, after := c.Piece.Neighbours(c.edge)
		for _, edge := range []int{before, after} {
			if j.ties.atCentre(edgeOf{c.Piece, edge}) {
				n++
			}
		}
	}
	return n
}

// EndsAt names what an edge of a seam is sewn to at a neighbour of that key: the neighbour, or the
// centre line beside it on which the halves are closed.
func (c Course) EndsAt(neighbour string) string {
	if c.lap != nil && c.lap.closed != "" && c.lap.opening == neighbour {
		return c.lap.closed
	}
	return neighbour
}

// Laps says of every edge of the seam that opens, where the other side does not, how it is
// reckoned, and what is not.
func (s Seam) Laps(say func(length.Amount) string) (told []string) {
	for _, c := range s.Courses() {
		switch {
		case c.lap == nil:
		case c.lap.closed != "":
			told = append(told, fmt.Sprintf(
				"the %s of %s is sewn as far as %q: lay its halves on each other, closed on that line, and sew this seam over both; if a slit is cut there into what it is sewn to, that wants %s more in each half to lap as far",
				c.Key, c.Piece.Name, c.lap.closed, say(c.lap.beyond)))
		default:
			told = append(told, fmt.Sprintf(
				"the %s of %s is sewn as far as its finished %s, edge to edge with its other half: the file has no centre line there, which would say how far they lap",
				c.Key, c.Piece.Name, c.lap.opening))
		}
	}
	return told
}
