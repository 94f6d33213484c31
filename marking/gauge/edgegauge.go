package gauge

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
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
//   - An edge that another one could be laid on, turned about but not turned over,
//     needs no gauge of its own.
//   - A gauge lies level on its sheet, with the cutting line below.

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
	laid  []string // and of when it is laid on
}

func (g *gaugedEdge) edge() *piece.Edge { return &g.piece.Edges[g.index] }

// gaugedEdges returns the marked edges of the pattern, those that are alike once.
func gaugedEdges(pattern *garment.Pattern) []*gaugedEdge {
	var all []*gaugedEdge
	for i := range pattern.Pieces {
		p := &pattern.Pieces[i]
		for k := range p.Edges {
			e := &p.Edges[k]
			if !e.Marked || e.Allowance <= 0 || e.Path.Length() == 0 {
				continue
			}
			g := &gaugedEdge{piece: p, index: k, shape: newEdgeShape(e)}
			if same := slices.IndexFunc(all, func(other *gaugedEdge) bool { return other.shape.alike(&g.shape) }); same >= 0 {
				g = all[same]
				g.like = append(g.like, fmt.Sprintf("the %s of %s", e.Key, p.Name))
			} else {
				all = append(all, g)
			}
			if turn := p.TurnOver(); turn != "" && !slices.Contains(g.turns, turn) {
				g.turns = append(g.turns, turn)
			}
			if when := laidOn(p, k); when != "" && !slices.Contains(g.laid, when) {
				g.laid = append(g.laid, when)
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
		for _, m := range g.cards(p) {
			m.Steps = g.steps(p)
			all = append(all, m)
		}
	}
	return all
}

// cards returns the parts of one gauge that can be cut. Each has the number that it has among all,
// and says of one beside it that cannot.
func (g *gaugedEdge) cards(p *garment.Pattern) []mark.Marking {
	var all []mark.Marking
	parts := g.strips(p)
	for k, m := range parts {
		if !isCut(m) {
			continue
		}
		m = finished(m, g.edge().Allowance, g.ends(k, len(parts)))
		for _, beside := range []int{k - 1, k + 1} {
			if beside >= 0 && beside < len(parts) && !isCut(parts[beside]) {
				m.Notes = append(m.Notes, fmt.Sprintf("gauge %d cannot be cut, for its sides would meet: measure with a ruler there", beside+1))
			}
		}
		all = append(all, m)
	}
	return all
}

// isCut reports whether a part of a gauge can be cut.
func isCut(part mark.Marking) bool { return part.Outline != nil }

// ends returns what lies at the beginning and at the end of one of several parts.
func (g *gaugedEdge) ends(k, parts int) [2]string {
	before, after := g.piece.Neighbours(g.index)
	ends := [2]string{g.piece.Edges[before].Key + " end", g.piece.Edges[after].Key + " end"}
	if k > 0 {
		ends[0] = fmt.Sprintf("to gauge %d", k)
	}
	if k+1 < parts {
		ends[1] = fmt.Sprintf("to gauge %d", k+2)
	}
	return ends
}

// strips returns the parts of one gauge, bare: between the cutting line and the stitch line. One
// whose sides would meet has no outline, nor anything else.
func (g *gaugedEdge) strips(pattern *garment.Pattern) []mark.Marking {
	e := g.edge()
	s, ok := newStrip(g.piece, g.index)
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
			all = append(all, mark.Marking{})
			continue
		}
		m.Key = edgeKey(g.piece, e)
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

// edgeKey is the key of the gauge of an edge, where it has one and that is in one part; else of its
// parts, before the number of each.
func edgeKey(p *piece.Piece, e *piece.Edge) string { return p.Key + " " + e.Key + " gauge" }

// IsOfEdge reports whether a marking is the gauge of an edge, or a part of it.
func IsOfEdge(m mark.Marking, p *piece.Piece, e *piece.Edge) bool {
	part, is := strings.CutPrefix(m.Key, edgeKey(p, e))
	_, err := strconv.Atoi(strings.TrimPrefix(part, " "))
	return m.Kind == mark.Gauge && is && (part == "" || err == nil)
}

// laidOn says when a gauge is laid on an edge, where that matters.
func laidOn(p *piece.Piece, edge int) string {
	switch {
	case !foldsRunInto(p, edge):
		return ""
	case p.DrawnFinished:
		return "lay it on when the tucks and pleats that run into the edge are in"
	}
	return "lay it on before the tucks and pleats that run into the edge are in"
}

// notes says what part k is of.
func (g *gaugedEdge) notes(pattern *garment.Pattern, parts []piece.Stretch, k int) []string {
	e, unit := g.edge(), pattern.Unit
	before, after := g.piece.Neighbours(g.index)
	from, to := g.piece.Edges[before].Key, g.piece.Edges[after].Key
	notes := []string{fmt.Sprintf("for the %s of %s: allowance %s", e.Key, g.piece.Name, unit.AsWritten(e.Allowance))}
	if len(g.like) > 0 {
		notes = append(notes, "the same for "+wording.Listed(g.like, "and"))
	}
	switch last := len(parts) - 1; {
	case last == 0:
		return append(notes, fmt.Sprintf("reaches from the corner with %s to the corner with %s", from, to))
	case k == 0:
		return append(notes, fmt.Sprintf("begins at the corner with %s", from))
	case k < last:
		return append(notes, fmt.Sprintf("begins %s along the edge from the corner with %s", unit.OnRuler(parts[k].From), from))
	}
	return append(notes, fmt.Sprintf("begins %s along the edge from the corner with %s, and ends at the corner with %s", unit.OnRuler(parts[k].From), from, to))
}

// steps says what is done with this gauge, besides what is done with all.
func (g *gaugedEdge) steps(pattern *garment.Pattern) []string {
	var steps []string
	if g.edge().Allowance < narrowCard(pattern.Unit)-piece.Rounding {
		steps = []string{"paste it on stiff card before it is cut out, for its strip is narrow"}
	}
	turns := g.turns
	if len(turns) > 1 { // of a half, and of one that is cut for left and right
		turns = []string{"turn it over for the other half, and for the second where one is for the left and one for the right"}
	}
	return slices.Concat(steps, g.laid, turns)
}
