package garment

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. At the ends of a seam its neighbours come together (meeting.go). The
// two pieces are laid stitch line on stitch line and matched at one end. Where one line goes
// over the seam, as the neck goes over the shoulder and the hem over the side, it must meet
// there without a jog and without a point. No line goes over it
//
//   - at the centre: on the fold of the cloth, or where another seam joins one of the two
//     with itself;
//   - where another seam joins the two with each other, as the underarm of a kimono sleeve
//     does at the side: they lie on each other there;
//   - where each is sewn to another edge that does not go on into the other's;
//   - where each is sewn, and one goes on as the seam does: what is set into the opening
//     that the seam ends in, as a gusset is, has a corner there;
//   - where nothing says that they belong together: no name, hem, or thing sewn along both.
//     A corner is meant there;
//   - where the two corners make a full turn or more together: they cannot lie flat.

// SeamEnd is where a seam ends, and its two neighbours come together.
type SeamEnd struct {
	Neighbours [2]string // the edges that meet there, of the first and second side
	// GoesOver tells that the two are one line, which goes over the seam.
	GoesOver bool
	// Jog is by how much the finished lines of the two miss each other along the
	// seam, the pieces being laid stitch line on stitch line and matched at the
	// first end: the one whose neighbour in the first side stands first in the file, or,
	// without a file, comes first round the outline.
	// CutJog is the same of their cutting lines; CutJogKnown is false where no line goes
	// over the seam, or one of the two does not reach it.
	Jog, CutJog length.Amount
	CutJogKnown bool
	// Past and CutPast tell which side runs past the other there: 1 the first, -1
	// the second, 0 neither.
	Past, CutPast int
	// Bend is how far the line turns where it goes over the seam, in degrees:
	// above 0 it makes a point, below 0 a dip. It lies between -180 and 180 where a line
	// goes over the seam, and has no meaning elsewhere.
	Bend float64

	edges    [2]edgeOf  // the neighbours
	corner   [2]float64 // what the corner takes of the cutting line of each side, in mm
	atCentre bool
}

// leastBend is from how much on a line that goes over a seam has a point or a dip
// that is seen, in degrees: as much as makes a corner.
const leastBend = piece.LeastTurn * 180 / math.Pi

// Straight reports whether the line goes over the seam without a point or a dip that
// is seen.
func (e SeamEnd) Straight() bool { return math.Abs(e.Bend) < leastBend }

// Alike reports whether the two neighbours have one name.
func (e SeamEnd) Alike() bool { return e.Neighbours[0] == e.Neighbours[1] }

// Meeting is how the ends of two edges come together.
type Meeting struct {
	Ends   []SeamEnd
	ToldBy Telling // what tells that these ends come together
	// Else are the neighbours that would come together at the first end if the edges lay
	// the other way. Matters tells that the lines beside the seam would turn otherwise.
	Else    [2]string
	Matters bool
	// NotchesMiss is how far the notches of the two sides miss each other, in mm, where
	// they would meet if those of one side were measured from its other end; else 0.
	NotchesMiss float64
}

// Undecided reports whether nothing tells which ends come together, though it matters.
func (m Meeting) Undecided() bool { return len(m.Ends) > 0 && m.ToldBy == TellsNothing && m.Matters }

// sewnEnd is one end of an edge as it is sewn.
type sewnEnd struct {
	neighbour edgeOf
	angle     float64 // of the piece between the two sewn lines, in radians
	beyond    float64 // along the stitch line from its sewn end to the cutting line, with folds in
	corner    float64 // along the cutting line, from its end to beside the sewn end
	reaches   bool    // whether it reaches the cutting line of its neighbour
}

func (e sewnEnd) name() string { return e.neighbour.drawn().Key }

// goesOn reports whether the neighbour goes on as the edge does.
func (e sewnEnd) goesOn() bool { return math.Abs(math.Pi-e.angle) < goesOn }

// sewnEnds returns the two ends of an edge, in the direction of the outline.
func sewnEnds(c Course) [2]sewnEnd {
	p, edge := c.Piece, c.edge
	before, after := p.Neighbours(edge)
	e, drawn, sewn := p.Edges[edge], p.Drawn(edge), p.Sewn(edge)
	_, first, _ := e.Path.Nearest(e.Sewn[0])
	_, last, _ := e.Path.Nearest(e.Sewn[len(e.Sewn)-1])
	return [2]sewnEnd{
		{
			neighbour: edgeOf{p, before},
			angle:     plane.TurnLeft(e.Sewn.StartDirection(), p.Edges[before].Sewn.EndDirection().Mul(-1)),
			beyond:    p.FinishedAlong(edge, e.Line.Between(0, sewn.From-drawn.From)),
			corner:    first,
			reaches:   p.Corners[before].After.Out && !p.Edges[before].OnFold,
		},
		{
			neighbour: edgeOf{p, after},
			angle:     plane.TurnLeft(p.Edges[after].Sewn.StartDirection(), e.Sewn.EndDirection().Mul(-1)),
			beyond:    p.FinishedAlong(edge, e.Line.Between(sewn.To-drawn.From, e.Line.Length())),
			corner:    e.Path.Length() - last,
			reaches:   p.Corners[edge].Before.Out && !p.Edges[after].OnFold,
		},
	}
}

// notches returns how far the notches of an edge stand from the beginning of its stitch
// line, as it is sewn.
func (c Course) notches() (places []float64) {
	p, edge := c.Piece, c.edge
	e, begins := c.drawn(), p.Sewn(edge).From-p.Drawn(edge).From
	for _, q := range p.NotchPlaces(edge) {
		_, along, _ := e.Line.Nearest(q)
		places = append(places, p.FinishedAlong(edge, e.Line.Between(begins, max(begins, along))))
	}
	return places
}

// laying is two edges laid on each other.
type laying struct {
	sides  [2]Course
	turned bool          // the first end of the one lies on the last of the other
	ends   [2][2]sewnEnd // that lie on each other; matched at the first
	off    length.Amount // by how much the first edge is longer
}

// layings returns the two ways in which edges may be laid on each other: the first end of
// the one on the first of the other, and on its last.
func layings(a, b Course, off length.Amount) (as, turned laying) {
	first, second := sewnEnds(a), sewnEnds(b)
	i, last := 0, 1
	if first[1].neighbour.drawn().Place.Line < first[0].neighbour.drawn().Place.Line {
		i, last = 1, 0
	}
	as = laying{[2]Course{a, b}, false, [2][2]sewnEnd{{first[i], second[i]}, {first[last], second[last]}}, off}
	turned = laying{[2]Course{a, b}, true, [2][2]sewnEnd{{first[i], second[last]}, {first[last], second[i]}}, off}
	return as, turned
}

// end returns how the lines beside the seam meet at one of its ends.
func (l laying) end(n int, t ties) SeamEnd {
	a, b := l.ends[n][0], l.ends[n][1]
	jog, cut := length.Amount{Unit: l.off.Unit}, a.beyond-b.beyond
	if n == 1 {
		jog, cut = l.off, cut+l.off.MM
	}
	cutJog, over := l.off.Unit.Amount(math.Abs(cut)), t.goesOver(a, b)
	return SeamEnd{
		Neighbours: [2]string{a.name(), b.name()},
		GoesOver:   over,
		Jog:        jog.Magnitude(), Past: pastBy(jog.MM, jog),
		CutJog: cutJog, CutPast: pastBy(cut, cutJog),
		CutJogKnown: over && a.reaches && b.reaches,
		Bend:        bend(a, b),
		edges:       [2]edgeOf{a.neighbour, b.neighbour}, corner: [2]float64{a.corner, b.corner},
		atCentre: t.atCentre(a.neighbour) || t.atCentre(b.neighbour),
	}
}

// bend returns how far the line turns from one end to the other, in degrees.
func bend(a, b sewnEnd) float64 { return (math.Pi - a.angle - b.angle) * 180 / math.Pi }

// goesOver reports whether two edges that come together are one line, which goes over the
// seam.
func (t ties) goesOver(a, b sewnEnd) bool {
	x, y := a.neighbour, b.neighbour
	switch {
	case t.atCentre(x) || t.atCentre(y) || bend(a, b) <= leastBend-180:
		return false
	case t.together(x, y):
		return true
	case x != y && t.joined(x, y) || t.setBetween(x, y):
		return false
	case t.sewn(x) && t.sewn(y) && (a.goesOn() || b.goesOn()):
		return false
	}
	return likeness(a.name(), b.name()) > 0 || x.drawn().Hem > 0 && y.drawn().Hem > 0
}

// seamEnds lays two edges along each other and looks at the ends. off is by how much the
// first edge is longer.
func (j joiner) seamEnds(s source.SeamSpec, a, b Course, off length.Amount) (m Meeting) {
	as, turned := layings(a, b, off)
	best, by := j.tells(s, as, turned)
	other := as
	if !best.turned {
		other = turned
	}
	for n := range best.ends {
		m.Ends = append(m.Ends, best.end(n, j.ties))
	}
	m.ToldBy, m.Else = by, other.end(0, j.ties).Neighbours
	if miss := best.notchesApart(); miss > notchTelling && other.notchesApart() < equalNeighbours {
		m.NotchesMiss = miss
	}
	m.Matters = math.Abs(best.sharpest()-other.sharpest()) > leastBend
	return m
}

// sharpest returns how far the line that turns most over the seam does so, in degrees.
func (l laying) sharpest() float64 {
	return max(math.Abs(bend(l.ends[0][0], l.ends[0][1])), math.Abs(bend(l.ends[1][0], l.ends[1][1])))
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
