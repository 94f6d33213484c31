package garment

import (
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. At the ends of a seam its neighbours go on into each other: the neck
// over the shoulder, the hem over the side. The two pieces are laid stitch line on stitch
// line and matched at one end; then the lines beside the seam must meet without a jog and
// without a point.

// SeamEnd is where a seam ends, and its two neighbours go on into each other.
type SeamEnd struct {
	Neighbours [2]string // the edges that meet there, of the first and second side
	// Jog is by how much the finished lines of the two miss each other along the
	// seam, the pieces being laid stitch line on stitch line and matched at the
	// first end: the one whose neighbour in the first side stands first in the file, or,
	// without a file, comes first round the outline.
	// CutJog is the same of their cutting lines; CutJogKnown is false where one of
	// them does not reach the seam, or there is none, on the fold of the cloth.
	Jog, CutJog length.Amount
	CutJogKnown bool
	// Past and CutPast tell which side runs past the other there: 1 the first, -1
	// the second, 0 neither.
	Past, CutPast int
	// Bend is how far the line turns where it goes over the seam, in degrees:
	// above 0 it makes a point, below 0 a dip.
	Bend float64
}

// leastBend is from how much on a line that goes over a seam has a point or a dip
// that is seen, in degrees: as much as makes a corner.
const leastBend = piece.LeastTurn * 180 / math.Pi

// Straight reports whether the line goes over the seam without a point or a dip that
// is seen.
func (e SeamEnd) Straight() bool { return math.Abs(e.Bend) < leastBend }

// Alike reports whether the two neighbours are called alike, as two halves of one
// neck are, so that no corner is meant between them.
func (e SeamEnd) Alike() bool { return e.Neighbours[0] == e.Neighbours[1] }

// sewnEnd is one end of an edge as it is sewn.
type sewnEnd struct {
	neighbour string
	angle     float64     // of the piece between the two sewn lines, in radians
	beyond    float64     // along the stitch line from its sewn end to the cutting line, with folds in
	reaches   bool        // whether it reaches the cutting line of its neighbour
	place     fault.Place // of the neighbour
}

// sewnEnds returns the two ends of an edge, in the direction of the outline.
func sewnEnds(c Course) [2]sewnEnd {
	p, edge := c.Piece, c.edge
	before, after := p.Neighbours(edge)
	e, drawn, sewn := p.Edges[edge], p.Drawn(edge), p.Sewn(edge)
	return [2]sewnEnd{
		{
			neighbour: p.Edges[before].Key,
			angle:     turnLeft(e.Sewn.StartDirection(), p.Edges[before].Sewn.EndDirection().Mul(-1)),
			beyond:    p.FinishedAlong(edge, e.Line.Between(0, sewn.From-drawn.From)),
			reaches:   p.Corners[before].After.Out && !p.Edges[before].OnFold,
			place:     p.Edges[before].Place,
		},
		{
			neighbour: p.Edges[after].Key,
			angle:     turnLeft(p.Edges[after].Sewn.StartDirection(), e.Sewn.EndDirection().Mul(-1)),
			beyond:    p.FinishedAlong(edge, e.Line.Between(sewn.To-drawn.From, e.Line.Length())),
			reaches:   p.Corners[edge].Before.Out && !p.Edges[after].OnFold,
			place:     p.Edges[after].Place,
		},
	}
}

// seamEnds lays two edges along each other and looks at the ends. Which end lies on
// which follows from the names of the neighbours; where these do not tell, from how
// the ends meet best. off is by how much the first edge is longer.
func seamEnds(a, b Course, off length.Amount) []SeamEnd {
	first, second := sewnEnds(a), sewnEnds(b)
	drawn := laid(first, second, off)
	turned := laid(first, [2]sewnEnd{second[1], second[0]}, off)
	// An edge that is joined with itself lies on its mirror image. Two pieces drawn
	// side by side, as they are sewn, have their common edge run opposite ways; that
	// is so where nothing else tells.
	if a.Piece == b.Piece && a.edge == b.edge || meetBetter(drawn, turned) {
		return drawn
	}
	return turned
}

// laid returns how two edges meet at their ends, the first end of the one lying on
// the first of the other.
func laid(first, second [2]sewnEnd, off length.Amount) []SeamEnd {
	order := []int{0, 1}
	if first[1].place.Line < first[0].place.Line {
		order = []int{1, 0}
	}
	var ends []SeamEnd
	for n, i := range order {
		jog, cut := length.Amount{Unit: off.Unit}, first[i].beyond-second[i].beyond
		if n == 1 {
			jog, cut = off, cut+off.MM
		}
		cutJog := off.Unit.Amount(math.Abs(cut))
		ends = append(ends, SeamEnd{
			Neighbours: [2]string{first[i].neighbour, second[i].neighbour},
			Jog:        jog.Magnitude(), Past: pastBy(jog.MM, jog),
			CutJog: cutJog, CutPast: pastBy(cut, cutJog),
			CutJogKnown: first[i].reaches && second[i].reaches,
			Bend:        (math.Pi - first[i].angle - second[i].angle) * 180 / math.Pi,
		})
	}
	return ends
}

// pastBy returns which side runs past the other by a length: neither where it is read as
// nothing, or is nothing.
func pastBy(mm float64, read length.Amount) int {
	switch {
	case read.Steps == 0 || math.Abs(mm) <= piece.Rounding:
		return 0
	case mm > 0:
		return 1
	}
	return -1
}

// meetBetter reports whether the first way of laying two edges is the likelier one:
// more neighbours of one name meet, or else the lines bend less, or else the cut edges
// miss each other less.
func meetBetter(a, b []SeamEnd) bool {
	of, than := amiss(a), amiss(b)
	for i := range of {
		if math.Abs(of[i]-than[i]) > piece.Rounding {
			return of[i] < than[i]
		}
	}
	return false
}

// amiss returns what speaks against laying two edges so, the weightiest first: how many
// ends have neighbours of two names, by how much the lines bend at them together, and by
// how much the cut edges miss each other.
func amiss(ends []SeamEnd) (sum [3]float64) {
	for _, e := range ends {
		if !e.Alike() {
			sum[0]++
		}
		sum[1] += math.Abs(e.Bend)
		sum[2] += e.CutJog.MM
	}
	return sum
}

// turnLeft returns the angle from one direction to another, turning left: from 0 to
// a full turn.
func turnLeft(from, to plane.Point) float64 {
	angle := math.Atan2(from.Cross(to), from.Dot(to))
	if angle < 0 {
		angle += 2 * math.Pi
	}
	return angle
}
