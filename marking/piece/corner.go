package piece

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. At each corner one decision is made, for both edges
// together, and all that follows keeps to it:
//
//   - Each stitch line is lengthened past the end of its edge (stitch.go). Where
//     the two first meet, both seams end.
//   - Beyond that place a line is ruled on, as on cloth, to where it comes out at
//     the cutting line of its neighbour; but only where it does come out there,
//     and meets nothing that is sewn before. Otherwise the bottom of a square neck
//     would be ruled on to the armhole, a side under a scooped armhole through the
//     piece to the shoulder, and the hem of a cape over its rounded corner.
//   - Where the outline hardly turns, two lines at unequal distances run beside
//     each other and meet far off, where nobody would look for it, if they meet at
//     all. So it is at the end of a placket. There each line ends square to its
//     edge, and from one to the other leads a step.
//   - Beside an edge that is not sewn, a line must come out at that edge, at every
//     corner that points out of the piece; and there the edge ends that is seen.
//   - Lines that do not meet at a corner that points out of the piece, and a line
//     that does not come out where it must, are a mistake: one allowance passes
//     the other edge by.

const (
	// LeastTurn is how far, in radians (8 degrees), the outline must turn at
	// the end of an edge for it to be a corner that points out of the piece.
	// Where it turns less, one seam goes on into the other, and there is no
	// cutting line ahead of either.
	LeastTurn = 8 * math.Pi / 180

	// sharpTurn is how far it must turn, in radians (29.5 degrees), for two
	// lines at unequal distances to be ruled on to each other wherever they
	// meet: that is never farther from the corner than about twice the wider
	// allowance. It stands below the even thirty degrees of many a draft, so
	// that no rounded number decides there.
	sharpTurn = 29.5 * math.Pi / 180

	// gentleReach is how far from a corner that turns by less than sharpTurn two
	// lines may meet, in the wider of the two allowances: equal ones never meet
	// farther than about a quarter of theirs, and a jog longer than it is deep
	// is seen as a step however it is sewn.
	gentleReach = 1.5

	// hollowReach is how far beyond a corner that points into the piece two lines
	// may meet, in the wider of the two allowances: as far as the line inside one
	// edge keeps its point there. A slash that is sharper, as a gusset is set
	// into, is sewn to its end and no farther.
	hollowReach = 6
)

// CornerKind is what becomes of two stitch lines where their edges meet.
type CornerKind int

// The kinds of corners.
const (
	CornerMet  CornerKind = iota // both seams end at one place
	CornerStep                   // each ends square to its edge, and a step joins them
)

// Corner is what is decided at the corner between two edges that follow each other
// counter-clockwise.
type Corner struct {
	Kind CornerKind
	// Turn is how far the outline turns there, in radians: above 0 where the corner
	// points out of the piece.
	Turn          float64
	Before, After LineEnd // of the line that arrives, and of the one that sets out
}

// LineEnd is where a stitch line ends: how far along it, in mm, with its ends
// lengthened.
type LineEnd struct {
	Seam float64 // where its seam ends
	Line float64 // where it ends as it is drawn, at the end of the seam or beyond
	Out  bool    // it comes out there at the cutting line of its neighbour, at a corner that points out
}

// points reports whether the corner points out of the piece.
func (c Corner) points() bool { return c.Turn > LeastTurn }

// decideCorners decides every corner. It returns false where one cannot be sewn.
func (p *Piece) decideCorners(found *Findings) bool {
	p.Corners = make([]Corner, len(p.Edges))
	ok := true
	for before := range p.Edges {
		_, after := p.Neighbours(before)
		c, decided := p.decideCorner(before, after, found)
		p.Corners[before] = c
		ok = ok && decided
	}
	return ok
}

// decideCorner decides the corner between two consecutive edges.
func (p *Piece) decideCorner(before, after int, found *Findings) (Corner, bool) {
	b, a := p.rulings[before], p.rulings[after]
	c := Corner{Kind: CornerMet, Turn: p.turn(before, after)}
	if p.DrawnTo == source.DrawnToStitching {
		return p.asGiven(c, b, a), true
	}
	// Square to the edges, or where the piece ends before that.
	c.Before = endAt(min(b.beside().To, b.within.To))
	c.After = endAt(max(a.beside().From, a.within.From))
	switch {
	case b.d == 0 && a.d == 0:
		c.Before.Out, c.After.Out = c.points(), c.points()
		return c, true
	case c.points() && (b.d == 0 || a.d == 0):
		return p.comesOutAtBare(c, b, a, found)
	}
	meet, ok := b.meets(a, c.Turn)
	switch {
	case ok:
		c.Before, c.After = endAt(meet.A), endAt(meet.B)
		// What is not sewn ends there, but is not lengthened to there.
		if b.d == 0 {
			c.Before = LineEnd{Seam: min(meet.A, b.beside().To), Line: b.beside().To}
		}
		if a.d == 0 {
			c.After = LineEnd{Seam: max(meet.B, a.beside().From), Line: a.beside().From}
		}
	case c.Turn < sharpTurn:
		c.Kind = CornerStep
		return c, true
	default:
		reportMeeting(p, min(before, after), max(before, after), p.Edges[after].Path[0], found)
		return c, false
	}
	return c, true
}

func endAt(at float64) LineEnd { return LineEnd{Seam: at, Line: at} }

// comesOutAtBare decides a corner that points out of the piece between an edge
// that is sewn and one that is not.
func (p *Piece) comesOutAtBare(c Corner, b, a ruling, found *Findings) (Corner, bool) {
	if a.d == 0 {
		along, ok := p.comesOut(b, b.within.To, a.edge)
		if !ok {
			p.passesBy(b, a, found)
			return c, false
		}
		c.Before = LineEnd{Seam: b.within.To, Line: b.within.To, Out: true}
		c.After.Seam, c.After.Out = c.After.Seam+along, true
		return c, true
	}
	along, ok := p.comesOut(a, a.within.From, b.edge)
	if !ok {
		p.passesBy(a, b, found)
		return c, false
	}
	c.After = LineEnd{Seam: a.within.From, Line: a.within.From, Out: true}
	c.Before.Seam, c.Before.Out = b.beside().From+along, true
	return c, true
}

// comesOut reports whether a line leaves the piece through another edge, at one end
// of what of it lies on the piece, and how far along that edge.
func (p *Piece) comesOut(r ruling, at float64, other int) (along float64, ok bool) {
	beside := r.beside()
	if max(beside.From-at, at-beside.To) > r.far || !r.keepsOff(at) {
		return 0, false
	}
	_, along, away := p.Edges[other].Path.Nearest(r.line.At(at))
	return along, away < LeastLine
}

// ruleOn rules the lines on beyond the places where they meet. What is sewn must be
// known.
func (p *Piece) ruleOn() {
	for before := range p.Corners {
		_, after := p.Neighbours(before)
		c, b, a := &p.Corners[before], p.rulings[before], p.rulings[after]
		if c.Kind == CornerMet && c.points() && b.d > 0 && a.d > 0 {
			c.Before = p.ruledOn(c.Before, b, after, b.within.To)
			c.After = p.ruledOn(c.After, a, before, a.within.From)
		}
	}
}

// ruledOn returns the end of a line beyond the place where it meets its neighbour:
// where it comes out at that edge, if it meets nothing that is sewn on the way.
func (p *Piece) ruledOn(end LineEnd, r ruling, neighbour int, out float64) LineEnd {
	if _, ok := p.comesOut(r, out, neighbour); !ok {
		return end
	}
	beyond := r.line.Path().Between(min(end.Seam, out)+LeastLine, max(end.Seam, out)-LeastLine)
	if len(plane.Crossings(plane.NewTree(beyond), p.seams)) > 0 {
		return end
	}
	end.Line, end.Out = out, true
	return end
}

// Drawn returns which part of the line of an edge is drawn.
func (p *Piece) Drawn(edge int) Stretch {
	before, _ := p.Neighbours(edge)
	return Stretch{p.Corners[before].After.Line, p.Corners[edge].Before.Line}
}

// Sewn returns which part of the line of an edge is sewn.
func (p *Piece) Sewn(edge int) Stretch {
	before, _ := p.Neighbours(edge)
	return Stretch{p.Corners[before].After.Seam, p.Corners[edge].Before.Seam}
}

// ruledEnds returns which part of another line inside an edge is drawn. It is no
// seam: at a corner that points out of the piece it is ruled on to any cutting line
// it comes to, or else to the stitch line of its neighbour.
func (p *Piece) ruledEnds(r ruling) Stretch {
	before, after := p.Neighbours(r.edge)
	beside, drawn := r.beside(), r.within
	if drawn.From < beside.From {
		switch c := p.Corners[before]; {
		case c.Kind == CornerStep:
			drawn.From = beside.From
		case c.points() && p.comesToOther(r, drawn.From):
		default:
			if meet, ok := p.rulings[before].lengthened(r.run).meets(r, c.Turn); ok {
				drawn.From = max(drawn.From, meet.B)
			} else {
				drawn.From = beside.From
			}
		}
	}
	if drawn.To > beside.To {
		switch c := p.Corners[r.edge]; {
		case c.Kind == CornerStep:
			drawn.To = beside.To
		case c.points() && p.comesToOther(r, drawn.To):
		default:
			if meet, ok := r.meets(p.rulings[after].lengthened(r.run), c.Turn); ok {
				drawn.To = min(drawn.To, meet.A)
			} else {
				drawn.To = beside.To
			}
		}
	}
	return drawn
}

// comesToOther reports whether a line comes to the cutting line of any edge but its
// own at one end of what of it lies on the piece.
func (p *Piece) comesToOther(r ruling, at float64) bool {
	beside, q := r.beside(), r.line.At(at)
	if max(beside.From-at, at-beside.To) > r.far {
		return false
	}
	_, _, away := p.Edges[r.edge].Path.Nearest(q)
	return away >= LeastLine && p.Tree.Nearer(q, LeastLine)
}

// meets returns where two lines meet at the corner where the second follows the
// first: of all such places, within reach of the corner and on the piece, the
// nearest as one walks along them. Elsewhere they may come nearer, as the two sides
// of a thumb do.
func (r ruling) meets(next ruling, turn float64) (meet plane.Crossing, ok bool) {
	at, there := r.beside().To, next.beside().From
	// Two that go on into each other end to end.
	if q := r.line.At(at); q.Distance(next.line.At(there)) < Rounding {
		return plane.Crossing{At: q, A: at, B: there}, true
	}
	reach := meetingReach(turn, r.d, next.d)
	off := 2 * reach
	for _, c := range plane.Crossings(r.line, next.line) {
		a, b := math.Abs(c.A-at), math.Abs(c.B-there)
		// Past its other end a line is lengthened for another corner; and an edge that
		// is not sewn ends where it is cut.
		past := c.A < r.beside().From || next.beside().To < c.B ||
			r.d == 0 && c.A > at+LeastLine || next.d == 0 && c.B < there-LeastLine
		if a < reach && b < reach && a+b < off && !past && r.within.holds(c.A) && next.within.holds(c.B) &&
			r.keepsOff(c.A) && next.keepsOff(c.B) {
			meet, off, ok = c, a+b, true
		}
	}
	return meet, ok
}

// keepsOff reports whether a line that is lengthened to a place keeps its distance
// from its own edge on the way there.
func (r ruling) keepsOff(at float64) bool {
	beside := r.beside()
	return beside.From-at <= r.clear[0] && at-beside.To <= r.clear[1]
}

// holds reports whether a place along a line lies in the stretch.
func (s Stretch) holds(at float64) bool { return s.From-LeastLine < at && at < s.To+LeastLine }

// meetingReach returns how far from a corner, in mm along either of them, the lines
// at a and b inside its two edges may meet. A sharp corner that points out of the
// piece holds them together however far that is: half as far again as beside two
// straight edges, both at the greater distance.
func meetingReach(turn, a, b float64) float64 {
	widest, far := max(a, b), 1.5*math.Tan(math.Abs(turn)/2)
	switch {
	case turn > sharpTurn:
		return widest * max(runOut, far)
	case turn < -sharpTurn:
		return widest * hollowReach
	}
	return widest * gentleReach
}

// passesBy notes that the line of an edge does not come out at the edge beside it,
// which is not sewn.
func (p *Piece) passesBy(r, bare ruling, found *Findings) {
	e, o := p.Edges[r.edge], p.Edges[bare.edge]
	found.Add(e.Place, "make it narrower, or the piece wider there"+usualIn(e),
		"the allowance of %q, %s, runs past %q: its line does not come out at that edge", e.Key, found.Written(e.Allowance), o.Key)
}
