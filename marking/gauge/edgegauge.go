package gauge

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file:
//
//   - An edge gauge is the strip between the cutting line of an edge, as it is drawn,
//     and the line that keeps its allowance from that. Where the edge curves more
//     tightly than the allowance the inner side has a corner, as the stitch line has.
//   - It is cut off square to the cutting line, at the ends of the edge too: it knows
//     nothing of the neighbours, past which the stitch line may run on.
//   - A long one is divided into parts of nearly one length, which overlap. At a join
//     both parts have a tick across them at the same place of the edge.
//   - It is divided only where the inner side lies square to the cutting line, at the
//     allowance; so a join moves back a little from a corner.
//   - An edge that another one could be laid on, turned about but not turned over,
//     needs no gauge of its own.
//   - A gauge lies level on its sheet, with the cutting line below.

const (
	// squareCut bounds how much farther than the allowance from the cutting line, in
	// mm, the inner side may lie where a gauge is cut off: no more than the corners
	// between the chords of a curve make, and too little to be seen.
	squareCut = 0.001
	// joinStep is how finely a place for a join is looked for, in mm along the edge.
	joinStep = 0.5
)

// partOverlap returns how much of the edge two parts share, in mm.
func partOverlap(u length.Unit) float64 { return u.Either(25.4*3/4, 20) }

// narrowCard returns the width, in mm, below which a strip of card does not keep its
// shape.
func narrowCard(u length.Unit) float64 { return u.Either(25.4/8, 3) }

// gaugedEdge is an edge that has a gauge, and those it does for as well.
type gaugedEdge struct {
	piece *piece.Piece
	index int
	like  []string // the others, as notes say them
	shape edgeShape
	turns []string // what the notes say of turning it over
}

func (g *gaugedEdge) edge() *piece.Edge { return &g.piece.Edges[g.index] }

// gaugedEdges returns the marked edges of the pattern, those that are alike once.
func gaugedEdges(p *garment.Pattern) []*gaugedEdge {
	var all []*gaugedEdge
	byLength := map[int][]*gaugedEdge{} // by the whole mm
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		for k := range piece.Edges {
			e := &piece.Edges[k]
			if !e.Marked || e.Allowance <= 0 || e.Path.Length() == 0 {
				continue
			}
			g := &gaugedEdge{piece: piece, index: k, shape: newEdgeShape(e)}
			turn := piece.TurnOver()
			mm := int(g.shape.long)
			var same *gaugedEdge
			for _, near := range []int{mm - 1, mm, mm + 1} {
				for _, other := range byLength[near] {
					if same == nil && other.shape.alike(g.shape) {
						same = other
					}
				}
			}
			if same == nil {
				all = append(all, g)
				byLength[mm] = append(byLength[mm], g)
				same = g
			} else {
				same.like = append(same.like, fmt.Sprintf("the %s of %s", e.Key, piece.Name))
			}
			if turn != "" && !slices.Contains(same.turns, turn) {
				same.turns = append(same.turns, turn)
			}
		}
	}
	return all
}

// foldsRunInto reports whether tucks, or pleats across the piece, run into an edge: its
// line is longer on the flat cloth than when they are in.
func foldsRunInto(p *piece.Piece, edge int) bool {
	drawn, flat := p.Edges[edge].Line.Length(), 0.0
	for _, line := range p.Flat.Lines[edge] {
		flat += line.Length()
	}
	return math.Abs(drawn-flat) > sameCard || math.Abs(drawn-p.FinishedLength(p.Edges[edge].Line)) > sameCard
}

// edgeGauges returns the gauges of the marked edges, in the order of the file.
func edgeGauges(p *garment.Pattern) []mark.Marking {
	var all []mark.Marking
	for _, g := range gaugedEdges(p) {
		all = append(all, g.markings(p)...)
	}
	return all
}

// markings returns the parts of one gauge.
func (g *gaugedEdge) markings(pattern *garment.Pattern) []mark.Marking {
	e := g.edge()
	s, ok := newStrip(e)
	if !ok {
		return nil
	}
	parts := s.divide(widestCard(pattern.Unit), partOverlap(pattern.Unit))
	var all []mark.Marking
	for k, part := range parts {
		var joins []float64
		if k > 0 {
			at, _ := s.tick(part.From, parts[k-1].To)
			joins = append(joins, at)
		}
		if k+1 < len(parts) {
			at, _ := s.tick(parts[k+1].From, part.To)
			joins = append(joins, at)
		}
		m, ok := s.part(part, joins)
		if !ok {
			continue
		}
		m.Key = g.piece.Key + " " + e.Key + " gauge"
		m.Name = g.piece.Name + " " + e.Key + ": gauge"
		if len(parts) > 1 {
			m.Key += fmt.Sprintf(" %d", k+1)
			m.Name += fmt.Sprintf(" %d of %d", k+1, len(parts))
		}
		m.Notes = g.notes(pattern, parts, k)
		all = append(all, m)
	}
	return all
}

// notes says what part k is for and how it is used.
func (g *gaugedEdge) notes(pattern *garment.Pattern, parts []piece.Stretch, k int) []string {
	e, unit := g.edge(), pattern.Unit
	before, after := g.piece.Neighbours(g.index)
	from, to := g.piece.Edges[before].Key, g.piece.Edges[after].Key
	notes := append(pattern.Heading(),
		fmt.Sprintf("for the %s of %s: allowance %s", e.Key, g.piece.Name, unit.Names(e.Allowance)))
	if len(g.like) > 0 {
		notes = append(notes, "the same for "+wording.Listed(g.like, "and"))
	}
	notes = append(notes, "lay the side called cutting line on the cut edge, and draw along the side called stitch line")
	if foldsRunInto(g.piece, g.index) {
		when := "before the tucks and pleats that run into the edge are in"
		if g.piece.DrawnFinished {
			when = "when the tucks and pleats that run into the edge are in"
		}
		notes = append(notes, "lay it on "+when)
	}
	begins := fmt.Sprintf("begins %s along the edge from the corner with %s: lay its ", unit.Print(parts[k].From), from)
	switch last := len(parts) - 1; {
	case last == 0:
		notes = append(notes, fmt.Sprintf("reaches from the corner with %s to the corner with %s", from, to))
	case k == 0:
		notes = append(notes, fmt.Sprintf("begins at the corner with %s; draw its tick on the cloth, for the next", from))
	case k < last:
		notes = append(notes, begins+fmt.Sprintf("first tick on the last of gauge %d, and draw its other one", k))
	default:
		notes = append(notes, begins+fmt.Sprintf("tick on the last of gauge %d", k), fmt.Sprintf("ends at the corner with %s", to))
	}
	notes = append(notes, g.turns...)
	if e.Allowance < narrowCard(unit)-piece.Rounding {
		notes = append(notes, "its strip is narrow: paste it on stiff card before it is cut out")
	}
	return notes
}

// cardStrip is the whole gauge of an edge, before it is divided. The two sides run the same
// way; where they are square to each other they are the allowance apart.
type cardStrip struct {
	outer, inner *plane.Tree
	d            float64 // the allowance, in mm
}

// newStrip returns the strip of an edge; ok is false where no line keeps the allowance.
func newStrip(e *piece.Edge) (s cardStrip, ok bool) {
	line, ok := plane.Offset(e.Path, e.Allowance, 0)
	if !ok {
		return s, false
	}
	return cardStrip{plane.NewTree(e.Path), plane.NewTree(line.Path), e.Allowance}, true
}

// clear reports whether the strip can be cut off at a place of the cutting line: a
// place of the inner side lies square to it at the allowance. Nothing else of the
// edge is as near to that place, so the cut meets neither side a second time.
func (s cardStrip) clear(at float64) bool {
	return s.inner.Nearer(s.outer.At(at), s.d+squareCut)
}

// clearBefore returns the last clear place at or before a place, not before least.
func (s cardStrip) clearBefore(at, least float64) (float64, bool) {
	for ; at >= least; at -= joinStep {
		if s.clear(at) {
			return at, true
		}
	}
	return 0, false
}

// divide returns the parts of the strip, each no longer than most along the cutting
// line, by as much over as the one before it ends beyond its beginning: overlap, or
// more where a join had to move. A part is longer only where corners of the inner side
// leave no room for a join.
func (s cardStrip) divide(most, overlap float64) []piece.Stretch {
	end := s.outer.Length()
	var parts []piece.Stretch
	for from := 0.0; ; {
		rest := end - from
		n := math.Ceil((rest-overlap)/(most-overlap) - piece.Rounding)
		if n <= 1 {
			return append(parts, piece.Stretch{From: from, To: end})
		}
		to, next, ok := s.nextJoin(from, (rest+(n-1)*overlap)/n, overlap)
		if !ok {
			return append(parts, piece.Stretch{From: from, To: end})
		}
		parts = append(parts, piece.Stretch{From: from, To: to})
		from = next
	}
}

// nextJoin returns where a part of about this length ends, and where the next begins:
// rather shorter than longer, and rather with a place for the tick well within the
// overlap. A part never begins before a quarter of the one before it.
func (s cardStrip) nextJoin(from, long, overlap float64) (to, next float64, ok bool) {
	for _, within := range []bool{true, false} {
		try := func(at float64) bool {
			if at > s.outer.Length() || !s.clear(at) {
				return false
			}
			to = at
			if next, ok = s.clearBefore(at-overlap, from+long/4); ok && within {
				_, ok = s.tick(next, to)
			}
			return ok
		}
		for at := from + long; at > from+long/2; at -= joinStep {
			if try(at) {
				return to, next, true
			}
		}
		for at := from + long; at < from+2*long; at += joinStep {
			if try(at) {
				return to, next, true
			}
		}
	}
	return 0, 0, false
}

// tick returns the clear place nearest to the middle of an overlap. within is false where
// there is none in its middle half; then it is the end, where the earlier part is
// cut off.
func (s cardStrip) tick(from, to float64) (at float64, within bool) {
	middle := (from + to) / 2
	for away := 0.0; away <= (to-from)/4; away += joinStep {
		for _, at := range []float64{middle - away, middle + away} {
			if s.clear(at) {
				return at, true
			}
		}
	}
	return to, false
}

// part returns the card of one part, with ticks at its joins. An end of the edge may
// not be clear, and a hair past a sharp corner one may seem so; where the card would
// meet itself there, it begins or ends at the next clear place instead. ok is false where
// no card is left.
func (s cardStrip) part(part piece.Stretch, joins []float64) (m mark.Marking, ok bool) {
	if m, ok = s.between(part, joins); ok {
		return m, true
	}
	from, to := part.From, part.To-joinStep
	for from < to && !s.clear(from) {
		from += joinStep
	}
	for to > from && !s.clear(to) {
		to -= joinStep
	}
	if m, ok = s.between(piece.Stretch{From: from, To: to}, joins); ok {
		return m, true
	}
	return s.between(piece.Stretch{From: from + joinStep, To: to}, joins)
}

// between returns the card between two places of the cutting line; ok is false where
// its outline would meet itself.
func (s cardStrip) between(part piece.Stretch, joins []float64) (m mark.Marking, ok bool) {
	outer := s.outer.Path().Between(part.From, part.To)
	if len(outer) < 2 {
		return m, false
	}
	last := len(outer) - 1
	_, begin := s.inner.Nearest(outer[0])
	_, end := s.inner.Nearest(outer[last])
	if part.From <= 0 && !s.clear(0) {
		begin = 0
	}
	if part.To >= s.outer.Length() && !s.clear(s.outer.Length()) {
		end = s.inner.Length()
	}
	inner := s.inner.Path().Between(begin, end).Reversed()
	if len(inner) < 2 {
		return m, false
	}
	m = card([]mark.Mark{
		{Role: mark.Cut, Name: "cutting line", Path: outer},
		cutSide("", outer[last], inner[0]),
		{Role: mark.Cut, Name: "stitch line", Path: inner},
		cutSide("", inner[len(inner)-1], outer[0]),
	})
	if _, _, _, crosses := plane.SelfCrossing(plane.NewTree(m.Outline)); crosses || m.Outline.Area() <= 0 {
		return mark.Marking{}, false
	}
	for _, at := range joins {
		from := s.outer.At(at)
		to, _ := s.inner.Nearest(from)
		m.Marks = append(m.Marks, mark.Mark{Role: mark.Match, Name: "", Path: plane.Path{from, to}})
	}
	return levelled(m, outer[0], outer[last]), true
}

// levelled returns the card turned and moved so that one place lies at the origin, and
// another to the right of it.
func levelled(m mark.Marking, from, to plane.Point) mark.Marking {
	u := to.Sub(from).Unit()
	if u == (plane.Point{}) {
		u = plane.Point{X: 1}
	}
	laid := func(p plane.Path) plane.Path {
		q := make(plane.Path, len(p))
		for i, at := range p {
			step := at.Sub(from)
			q[i] = plane.Point{X: step.Dot(u), Y: step.Dot(u.Left())}
		}
		return q
	}
	m.Outline = laid(m.Outline)
	for i := range m.Marks {
		m.Marks[i].Path = laid(m.Marks[i].Path)
	}
	return m
}

// edgeShape is an edge as it is held against others.
type edgeShape struct {
	path      *plane.Tree
	long      float64
	allowance float64
	// spans are how far places along the edge lie from its beginning, which most
	// unlike edges differ in.
	spans [shapeSpans]float64
}

// shapeSpans is how many distances are compared before two edges are laid on each
// other. It bounds nothing.
const shapeSpans = 8

func newEdgeShape(e *piece.Edge) edgeShape {
	s := edgeShape{path: plane.NewTree(e.Path), allowance: e.Allowance}
	s.long = s.path.Length()
	for i := range s.spans {
		s.spans[i] = s.path.At(s.long * float64(i+1) / shapeSpans).Distance(e.Path[0])
	}
	return s
}

// alike reports whether one gauge does for both edges: laid on each other as well as
// they go, by turning and moving only, they are nowhere farther apart than sameCard.
func (s edgeShape) alike(o edgeShape) bool {
	if math.Abs(s.long-o.long) > sameCard || math.Abs(s.allowance-o.allowance) > sameCard {
		return false
	}
	for i := range s.spans {
		if math.Abs(s.spans[i]-o.spans[i]) > 2*sameCard {
			return false
		}
	}
	// Where either has a corner, by the share of the way along it.
	var a, b plane.Path
	for _, share := range append(shares(s.path.Path(), s.long), shares(o.path.Path(), o.long)...) {
		a, b = append(a, s.path.At(share*s.long)), append(b, o.path.At(share*o.long))
	}
	middle := func(p plane.Path) plane.Point {
		var sum plane.Point
		for _, q := range p {
			sum = sum.Add(q)
		}
		return sum.Mul(1 / float64(len(p)))
	}
	ma, mb := middle(a), middle(b)
	// The turn that leaves the least sum of squares between the places (Procrustes).
	var cos, sin float64
	for i := range a {
		p, q := a[i].Sub(ma), b[i].Sub(mb)
		cos += p.Dot(q)
		sin += p.Cross(q)
	}
	u := plane.Point{X: cos, Y: sin}.Unit()
	for i := range a {
		p := a[i].Sub(ma)
		if p.Mul(u.X).Add(p.Left().Mul(u.Y)).Distance(b[i].Sub(mb)) > sameCard {
			return false
		}
	}
	return true
}

// shares returns where the points of a path lie, in shares of its length.
func shares(p plane.Path, long float64) []float64 {
	all := make([]float64, len(p))
	walked := 0.0
	for i := 1; i < len(p); i++ {
		walked += p[i].Distance(p[i-1])
		all[i] = walked / long
	}
	return all
}
