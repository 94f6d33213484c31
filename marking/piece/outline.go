package piece

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. The edges of a piece may stand in any order and run
// either way; they are chained by the corners they share, turned to run
// counter-clockwise, and must close to one outline that nowhere crosses itself.

// The tolerances of an outline, in mm unless said.
const (
	// cornerTolerance bounds how far apart the ends of two edges may lie and
	// still be one corner: less than the width of a pencil line, more than
	// the rounding of a point written once in inches and once in millimetres.
	cornerTolerance = 0.05

	// SamePoint bounds how near two neighbouring points of an edge may lie
	// without being the same point written twice. Those of a smooth edge may not
	// lie within cornerTolerance, for a curve swings far out beside two points
	// that miss each other by a rounding.
	SamePoint = 0.001

	// Straightness bounds how far the points of a straight edge may lie off
	// the line from its one end to the other.
	Straightness = 0.05

	// Rounding bounds what a length or a place that is worked out may be off by.
	Rounding = length.Rounding

	// LeastArea bounds, in mm², what an outline goes round to be a piece at
	// all.
	LeastArea = 1
)

// checkOutline finds the outline of a piece and its edges. It returns false
// when there is none.
func checkOutline(piece *Piece, ps source.PieceSpec, spec *source.Spec, found *Findings) bool {
	before := len(found.List)
	for _, es := range ps.Edges {
		checkPoints(es, found)
	}
	ps.Edges = followed(ps.Edges)
	if len(found.List) > before {
		return false
	}
	order, ok := chainEdges(ps, spec, found)
	if !ok {
		return false
	}
	fold := -1
	for i, es := range order {
		if es.spec.Key == ps.Fold.V && ps.Fold.Given() {
			fold = i
		}
	}
	if ps.Fold.Given() && fold < 0 {
		var keys []string
		for _, es := range ps.Edges {
			keys = append(keys, es.Key)
		}
		found.unknown(ps.Fold.Place, "edge", ps.Fold.V, keys)
		return false
	}
	for i, o := range order {
		order[i].points = penStraight(o.points)
		o.points = order[i].points
		last := len(o.points) - 1
		e := Edge{Key: o.spec.Key, Place: o.spec.Place, OnFold: i == fold, Path: o.points,
			steps: [2]float64{o.points[1].Distance(o.points[0]), o.points[last].Distance(o.points[last-1])}}
		switch {
		case o.spec.Smooth:
			e.curve = smoothEdge(order, i, fold, found.enlarged)
			e.Path = e.curve.path()
		case o.spec.Centre.Given():
			e.Path = arcThrough(o.points, o.spec.Centre.V)
		}
		piece.Edges = append(piece.Edges, e)
	}
	if fold >= 0 && piece.Edges[fold].Path.Straightness() > Straightness {
		found.Add(order[fold].spec.Place, "cloth folds along a straight line; give this edge two points",
			"the edge lies on the fold but is not straight")
		return false
	}
	return closeOutline(piece, wrongOrder+spaceMissing(ps), found)
}

// checkPoints looks at the points of one edge by themselves.
func checkPoints(es source.EdgeSpec, found *Findings) {
	points, apart := es.Points.V, SamePoint
	if es.Smooth {
		apart = cornerTolerance
	}
	for i := 1; i < len(points); i++ {
		if points[i].Distance(points[i-1]) <= apart {
			found.Add(es.Points.On(es.Place, i), "take one of them out", "points %d and %d are the same", i, i+1)
		}
	}
	if len(points) > 2 && points[0].Distance(points[len(points)-1]) <= cornerTolerance {
		found.Add(es.Place, "divide it into two edges, so that each has two ends",
			"the edge comes back to its own beginning")
	}
	found.checkArc(es.Points, es.Centre)
}

// orientedEdge is an edge as it is walked: its points from corner to corner.
type orientedEdge struct {
	spec   source.EdgeSpec
	points plane.Path
}

// edgeEnd is one end of an edge: the first point, or the last.
type edgeEnd struct {
	edge int
	last bool
}

// chainEdges puts the edges in the order in which they follow each other. It
// gives corners that nearly meet the very same point.
func chainEdges(ps source.PieceSpec, spec *source.Spec, found *Findings) ([]orientedEdge, bool) {
	partner, ok := pairEnds(ps, spec, found)
	if !ok {
		return nil, false
	}
	var order []orientedEdge
	for at := (edgeEnd{0, false}); ; {
		es := ps.Edges[at.edge]
		points := plane.Path(es.Points.V)
		if at.last {
			points = points.Reversed()
		}
		points = append(plane.Path{}, points...)
		if n := len(order); n > 0 {
			points[0] = order[n-1].points[len(order[n-1].points)-1]
		}
		order = append(order, orientedEdge{es, points})
		at = partner[edgeEnd{at.edge, !at.last}]
		if at.edge == 0 {
			points[len(points)-1] = order[0].points[0]
			break
		}
	}
	if len(order) < len(ps.Edges) {
		walked := map[string]bool{}
		for _, o := range order {
			walked[o.spec.Key] = true
		}
		for _, es := range ps.Edges {
			if !walked[es.Key] {
				found.Add(es.Place, "a piece has one outline; make the other one a piece of its own",
					"the edge does not belong to the outline that %q belongs to", ps.Edges[0].Key)
				return nil, false
			}
		}
	}
	return order, true
}

// pairEnds finds for every end the end it shares a corner with.
func pairEnds(ps source.PieceSpec, spec *source.Spec, found *Findings) (map[edgeEnd]edgeEnd, bool) {
	var ends []edgeEnd
	for i := range ps.Edges {
		ends = append(ends, edgeEnd{i, false}, edgeEnd{i, true})
	}
	place := func(e edgeEnd) plane.Point {
		points := ps.Edges[e.edge].Points.V
		if e.last {
			return points[len(points)-1]
		}
		return points[0]
	}
	partner := map[edgeEnd]edgeEnd{}
	var open []edgeEnd
	ok := true
	for _, e := range ends {
		var meets []edgeEnd
		for _, o := range ends {
			if o.edge != e.edge && place(o).Distance(place(e)) <= cornerTolerance {
				meets = append(meets, o)
			}
		}
		switch len(meets) {
		case 0:
			open = append(open, e)
		case 1:
			partner[e] = meets[0]
		default:
			if e.edge < meets[0].edge { // once for the corner, not for each edge
				found.Add(ps.Edges[e.edge].Place, "every corner is shared by two edges",
					"more than two edges meet in the corner at %s: %q, %q and %q", found.point(place(e)),
					ps.Edges[e.edge].Key, ps.Edges[meets[0].edge].Key, ps.Edges[meets[1].edge].Key)
			}
			ok = false
		}
	}
	reportGaps(ps, spec, open, place, found)
	return partner, ok && len(open) == 0
}

// reportGaps says of every open end which other open end it is nearest to, and
// how far apart they are. A gap between two ends is told once.
func reportGaps(ps source.PieceSpec, spec *source.Spec, open []edgeEnd, place func(edgeEnd) plane.Point, found *Findings) {
	asks := "" // edges under a misspelt key make a piece of their own
	if len(open) == 0 {
		return
	}
	if like := likePiece(spec, ps.Key); like != "" {
		asks = fmt.Sprintf("; is this piece meant to be %q?", like)
	}
	told := map[edgeEnd]bool{}
	for _, e := range open {
		if told[e] {
			continue
		}
		es := ps.Edges[e.edge]
		at := placeOf(es, e)
		apart := func(o edgeEnd) string {
			os := ps.Edges[o.edge]
			return fmt.Sprintf(openBetween, es.Key, os.Key, found.point(place(e)), elsewhere(at, placeOf(os, o)), found.point(place(o)),
				found.length(place(o).Distance(place(e))), found.fullSize())
		}
		told[e] = true
		if o, by, ok := metWithASpace(ps, e, open, told); ok {
			told[o] = true
			found.AddBetween(at, placeOf(ps.Edges[o.edge], o), "a space may be missing: with "+by+" the two ends meet"+asks, "%s", apart(o))
			continue
		}
		var nearest edgeEnd
		gap := math.Inf(1)
		for _, o := range open {
			if d := place(o).Distance(place(e)); o.edge != e.edge && !told[o] && d < gap {
				nearest, gap = o, d
			}
		}
		if math.IsInf(gap, 1) {
			found.Add(at, "every corner is shared by two edges"+asks,
				"the outline is open: no other edge ends at %s", found.point(place(e)))
			continue
		}
		told[nearest] = true
		hint := "give both edges the same point for their corner, or add the edge that is missing between them"
		if es.Redrawn || ps.Edges[nearest.edge].Redrawn {
			hint = endsOnNone
		}
		found.AddBetween(at, placeOf(ps.Edges[nearest.edge], nearest), hint+asks, "%s", apart(nearest))
	}
}

const openBetween = "the outline is open between %q and %q: their ends at %s and%s %s are %s apart%s"

// placeOf returns where the point stands that an edge ends at.
func placeOf(es source.EdgeSpec, e edgeEnd) fault.Place {
	if e.last {
		return es.Points.On(es.Place, len(es.Points.V)-1)
	}
	return es.Points.On(es.Place, 0)
}

// elsewhere says in which line a second thing stands, and in which file where that is another; ""
// where it is the line of the first, or is not known.
func elsewhere(first, second fault.Place) string {
	switch {
	case second.Line == 0 || first.File == second.File && first.Line == second.Line:
		return ""
	case first.File == second.File:
		return fmt.Sprintf(", in line %d,", second.Line)
	}
	return ", in " + second.InFile() + ","
}

// closeOutline joins the edges to an outline, turns it counter-clockwise and
// looks for crossings; the hint is for those.
func closeOutline(piece *Piece, ifItCrosses string, found *Findings) bool {
	piece.Outline = outlineOf(piece.Edges)
	if piece.Outline.Area() < 0 {
		for i, j := 0, len(piece.Edges)-1; i < j; i, j = i+1, j-1 {
			piece.Edges[i], piece.Edges[j] = piece.Edges[j], piece.Edges[i]
		}
		for i := range piece.Edges {
			e := &piece.Edges[i]
			e.Path, e.steps = e.Path.Reversed(), [2]float64{e.steps[1], e.steps[0]}
		}
		piece.Outline = outlineOf(piece.Edges)
	}
	piece.Tree = plane.NewTree(piece.Outline)
	if at, i, j, crosses := plane.SelfCrossing(piece.Tree); crosses {
		a, b := piece.edgeOfSegment(i), piece.edgeOfSegment(j)
		if a == b {
			found.Add(a.Place, ifItCrosses, "the edge crosses or touches itself at %s", found.point(at))
		} else {
			found.Add(a.Place, ifItCrosses, "the outline crosses or touches itself: %q and %q meet at %s", a.Key, b.Key, found.point(at))
		}
		return false
	}
	if !(piece.Outline.Area() >= LeastArea) { // nor where it is no number
		found.Add(piece.Edges[0].Place, "is the unit the right one?", "the outline goes round nothing")
		return false
	}
	return true
}

const wrongOrder = "a number may be wrong, or two points stand in the wrong order"

// edgeOfSegment returns the edge that segment i of the outline belongs to.
func (p *Piece) edgeOfSegment(i int) *Edge {
	for k := range p.Edges {
		if i -= len(p.Edges[k].Path) - 1; i < 0 {
			return &p.Edges[k]
		}
	}
	return &p.Edges[len(p.Edges)-1]
}
