package garment

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. Lace, ribbon, cord or braid lies on a stitch line. It takes the
// length of that line, times its fullness; at every outside corner a little more, so
// that its outer side reaches round; and what its joins take.
//
// Round a square outside corner it is two widths of the lace more where it lies flat
// (Hapgood, School Needlework, about 1892), and two and a half where it is gathered
// half as full again (McGlauflin, Handicraft for Girls, 1910, page 88). Other
// fullnesses lie on the straight line through these two, (1 + fullness) x width. A
// corner that turns by another angle takes as much more or less as a mitre there is
// longer or shorter: the tangent of half the angle, which is 1 at a square one.

// Trim is what is sewn on along stitch lines and bought by length.
type Trim struct {
	SewnOn
	Kind      source.TrimKind
	Width     float64       // 0 where the file does not say
	Fullness  float64       // how many times as long as its line; 1 where it lies flat
	Gathered  length.Amount // the line times the fullness
	Corners   []TrimCorner  // round which it reaches on the outside
	Joins     int           // how many times its ends are joined or turned in
	JoinTakes length.Amount // each
	Total     length.Amount // to be cut
}

// TrimCorner is an outside corner of the line, as often as it comes.
type TrimCorner struct {
	Piece string        // its name
	Turn  float64       // by which the line turns, in degrees
	Times int           // how often it comes in the garment
	Takes length.Amount // each
}

const (
	// leastCorner is how far a line must turn, in radians (30 degrees), for the
	// trim to be laid in a corner rather than eased round.
	leastCorner = 30 * math.Pi / 180
	// mostCorner is the sharpest turn that is reckoned with, in radians (150
	// degrees): a mitre there is nearly four times as long as a square one, and
	// beyond it nobody would lay one.
	mostCorner = 150 * math.Pi / 180
	// cornerWithin bounds the length of line, in mm, over which a corner may turn
	// that is drawn with more points than one.
	cornerWithin = 2
	// sameTurn bounds by how much two corners may differ in their turn, in degrees, and be
	// listed as one.
	sameTurn = 0.5
)

// CornersLeftOut reports whether the line has corners, and what they take is not known.
func (t Trim) CornersLeftOut() bool { return len(t.Corners) > 0 && t.Width == 0 }

// Square reports whether the line turns square there.
func (c TrimCorner) Square() bool { return math.Abs(c.Turn-90) < sameTurn }

// trim works out a trim.
func (j joiner) trim(s source.TrimSpec) Trim {
	t := Trim{
		SewnOn: j.sewnOn(s.Key, s.Place, s.Along), Kind: s.Kind.V, Width: s.Width.V, Fullness: s.Fullness.Or(1),
		Joins: s.Joins.Or(1), JoinTakes: j.Unit.Chosen(2 * usualJoining(j.Unit)),
	}
	if s.JoinTakes.Given() {
		t.JoinTakes = j.Unit.AtLeast(s.JoinTakes.V)
	}
	t.Gathered = t.LineLength.By(t.Fullness)
	t.Total = t.Gathered.Plus(t.JoinTakes.Times(t.Joins))
	side := 1.0 // the sign of a turn round which the trim is on the outside
	if s.Lies.V == source.LiesOn {
		side = -1
	}
	for _, c := range corners(t.Courses) {
		if turn := side * c.turn; turn >= leastCorner {
			takes := j.Unit.AtLeast((1 + t.Fullness) * t.Width * math.Tan(math.Min(turn, mostCorner)/2))
			t.addCorner(TrimCorner{Piece: c.piece, Turn: turn * 180 / math.Pi, Times: c.times, Takes: takes})
			t.Total = t.Total.Plus(takes.Times(c.times))
		}
	}
	return t
}

// addCorner lists a corner; together with one of the same piece that is like it.
func (t *Trim) addCorner(c TrimCorner) {
	for i := range t.Corners {
		one := &t.Corners[i]
		if one.Piece == c.Piece && one.Takes.Steps == c.Takes.Steps && math.Abs(one.Turn-c.Turn) < sameTurn {
			one.Times += c.Times
			return
		}
	}
	t.Corners = append(t.Corners, c)
}

// lineCorner is a place where a line turns sharply; left is above 0, as at a corner
// that points out of the piece.
type lineCorner struct {
	piece string
	turn  float64
	times int
}

// corners finds the corners of courses: inside each, where it meets its mirror image
// on the fold, and where two that are neighbours meet.
func corners(courses []Course) []lineCorner {
	var all []lineCorner
	type edge struct {
		piece  *piece.Piece
		number int
	}
	taken := map[edge]bool{} // what stands in the list
	for _, c := range courses {
		taken[edge{c.Piece, c.edge}] = true
	}
	for _, c := range courses {
		for _, turn := range sharpTurns(c.line) {
			all = append(all, lineCorner{c.Piece.Name, turn, c.Times})
		}
		if !c.isEdge() {
			continue
		}
		before, after := c.Piece.Neighbours(c.edge)
		ends := sewnEnds(c)
		for i, other := range []int{before, after} {
			if c.Piece.Edges[other].OnFold {
				all = append(all, lineCorner{c.Piece.Name, math.Pi - 2*ends[i].angle, c.Piece.Times()})
			}
		}
		if after != c.edge && !c.drawn().OnFold && !c.Piece.Edges[after].OnFold && taken[edge{c.Piece, after}] {
			all = append(all, lineCorner{c.Piece.Name, math.Pi - ends[1].angle, c.Times})
		}
	}
	return all
}

// sharpTurns returns by how much a line turns at each of its corners, in radians, left
// above 0.
func sharpTurns(p plane.Path) []float64 {
	var turns []float64
	walked, last := 0.0, math.Inf(-1)
	for i := 1; i+1 < len(p); i++ {
		walked += p[i].Distance(p[i-1])
		in, out := p[i].Sub(p[i-1]).Unit(), p[i+1].Sub(p[i]).Unit()
		turn := math.Atan2(in.Cross(out), in.Dot(out))
		if walked-last <= cornerWithin {
			turns[len(turns)-1] += turn
			continue
		}
		turns, last = append(turns, turn), walked
	}
	var sharp []float64
	for _, turn := range turns {
		if math.Abs(turn) >= leastCorner {
			sharp = append(sharp, turn)
		}
	}
	return sharp
}
