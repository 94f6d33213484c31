package marking

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file:
//
//   - The stitch line of an edge keeps that edge's own allowance from it, and
//     knows nothing of the allowances of other edges.
//   - At a corner of less than two right angles it runs out straight to the
//     cutting line of another edge, or is trimmed there, as it is ruled on cloth.
//   - At a corner that turns the other way, or hardly turns, there is no
//     cutting line ahead of it: it runs to the stitch line of its neighbour, or,
//     where the two do not meet near the corner, ends square to it. So it does
//     where the run-out finds no such cutting line.
//   - An allowance that leaves nothing of the piece along its edge, or that the
//     piece is too narrow for somewhere, is a mistake to be told, not a line to
//     be drawn in part.

const (
	// runOut bounds how far past the end of its edge, in allowances, a stitch
	// line may run to reach the cutting line: as far as it must at a corner
	// that turns by leastTurn.
	runOut = 8

	// leastTurn is how far, in radians (8 degrees), the outline must turn at
	// the end of an edge for it to be a corner whose stitch lines cross. Where
	// it turns less, one seam goes on into the other.
	leastTurn = 8 * math.Pi / 180
)

// checkStitches works out the lines of every edge. It returns false when the
// piece cannot be sewn as it stands.
func checkStitches(piece *Piece, ps PieceSpec, allowance Length, found *findings) bool {
	specs := map[string]EdgeSpec{}
	for _, es := range ps.Edges {
		specs[es.Key] = es
	}
	widest := 0.0
	for i := range piece.Edges {
		e := &piece.Edges[i]
		takeAllowance(e, specs[e.Key], allowance, found)
		widest = math.Max(widest, e.Allowance)
	}
	before := len(found.list)
	run := runOut * widest
	raw := make([]*plane.Tree, len(piece.Edges))
	for i, e := range piece.Edges {
		raw[i] = piece.rawLine(e.inset(i), run, found)
	}
	if len(found.list) > before {
		return false
	}
	beside := make([]stretch, len(piece.Edges)) // the part of each line that is not run out
	for i := range piece.Edges {
		e := &piece.Edges[i]
		e.Line, beside[i] = e.Path, stretch{0, e.Path.Length()}
		if e.Allowance > 0 {
			drawn := piece.drawn(e.inset(i), raw[i], run, raw, found)
			e.Line = raw[i].Path().Between(drawn.from, drawn.to)
			beside[i] = stretch{run - drawn.from, raw[i].Length() - run - drawn.from}
		}
		if e.Turn > 0 {
			turn := inset{i, e.Turn, "a turn", e.place}
			if line := piece.rawLine(turn, run, found); line != nil {
				e.TurnLine = piece.fit(turn, line, run, raw, found)
			}
		}
	}
	if len(found.list) > before {
		return false
	}
	return checkSewn(piece, beside, found)
}

// inset is a line wanted inside an edge.
type inset struct {
	edge  int
	d     float64 // how far inside, in mm
	what  string  // what a maker calls that distance
	place Place   // where the file asks for it
}

// inset returns where the line of edge i lies.
func (e Edge) inset(i int) inset {
	what := "an allowance"
	if e.Hem > 0 {
		what = "a hem (with its turn)"
	}
	return inset{i, e.Allowance, what, e.place}
}

// takeAllowance settles how far the line of an edge lies inside it.
func takeAllowance(e *Edge, es EdgeSpec, allowance Length, found *findings) {
	switch {
	case e.OnFold && (es.Allowance.V > 0 || es.Hem.Given()):
		found.add(es.Place, "leave its allowance and hem out",
			"the edge lies on the fold of the cloth, where nothing is sewn")
	case e.OnFold:
	case es.Hem.Given():
		e.Hem, e.Turn = es.Hem.V, es.Turn.V
		e.Allowance = e.Hem + e.Turn
		if e.Turn > e.Hem {
			found.add(es.Turn.Place, "the turn is folded under inside the hem; a hem turned twice alike has a turn as deep as itself",
				"a turn of %s is deeper than the hem of %s", found.given(e.Turn), found.given(e.Hem))
		}
	case es.Allowance.Given():
		e.Allowance = es.Allowance.V
	default:
		e.Allowance = allowance.V
	}
	sewn := e.Allowance > 0 && e.Hem == 0
	e.Marked = sewn && es.Smooth && e.Path.Straightness() > straightness
	if es.Marked.Given() {
		e.Marked = es.Marked.V
		if e.Marked && !sewn {
			hint := "leave it out, or give the edge an allowance"
			switch {
			case e.OnFold:
				hint = "leave it out: nothing is sewn on the fold of the cloth"
			case e.Hem > 0:
				hint = "leave it out: the fold of a hem has windows in a template as it is"
			}
			found.add(es.Marked.Place, hint, "the edge has no stitch line that could be marked")
		}
	}
}

// rawLine returns the line inside an edge with both ends run out, or notes why
// there is none and returns nil.
func (p *Piece) rawLine(in inset, run float64, found *findings) *plane.Tree {
	line, ok := plane.Offset(p.Edges[in.edge].Path, in.d, run)
	switch {
	case !ok:
		p.nothingLeft(in, found)
		return nil
	case line.Pinched:
		found.meetsItself(in, line.At)
		return nil
	}
	return plane.NewTree(line.Path)
}

func (p *Piece) nothingLeft(in inset, found *findings) {
	hint := "make it narrower"
	// A corner rounded more tightly than the allowance has no line of its own.
	if path := p.Edges[in.edge].Path; path.Length() < 2*in.d && path.Straightness() > straightness {
		hint = "make it narrower, or make this curve part of the edge beside it"
	}
	found.add(in.place, hint, "%s of %s leaves nothing of the piece along this edge", in.what, found.given(in.d))
}

func (f *findings) meetsItself(in inset, at plane.Point) {
	f.add(in.place, "make it narrower, or the piece wider there",
		"%s of %s is too wide: the line inside this edge meets itself at %s", in.what, f.given(in.d), f.point(at))
}

// fit returns the part of a raw line that is drawn, nil where there is none.
func (p *Piece) fit(in inset, line *plane.Tree, run float64, raw []*plane.Tree, found *findings) plane.Path {
	drawn := p.drawn(in, line, run, raw, found)
	return line.Path().Between(drawn.from, drawn.to)
}

// drawn returns where the part of a raw line that is drawn lies: it must lie on
// the piece in one stretch. Where it does not, that is noted and the stretch
// has no length. raw holds the raw lines of the neighbours' own insets.
func (p *Piece) drawn(in inset, line *plane.Tree, run float64, raw []*plane.Tree, found *findings) stretch {
	// What lies beside the edge is what has not been run out.
	first, last := run, line.Length()-run
	var own []stretch // what lies beside the edge, not on a run-out end
	for _, s := range insideStretches(p.tree, line) {
		if math.Min(s.to, last)-math.Max(s.from, first) > leastLine {
			own = append(own, s)
		}
	}
	switch {
	case len(own) == 0:
		p.nothingLeft(in, found)
		return stretch{}
	case len(own) > 1:
		found.add(in.place, "make it narrower, or the piece wider there",
			"%s of %s is wider than the piece: the line inside this edge leaves it at %s",
			in.what, found.given(in.d), found.point(line.At(own[0].to)))
		return stretch{}
	}
	before, after := p.neighbours(in.edge)
	from, to := own[0].from, own[0].to
	if from < first && !(p.runsOut(before, in.edge, first-from, in.d) && p.reachesOther(in.edge, line.At(from))) {
		reach := cornerReach(p.turn(before, in.edge), in.d, p.Edges[before].Allowance)
		from = math.Max(from, meeting(line, raw[before], first, raw[before].Length()-run, reach))
	}
	if to > last && !(p.runsOut(in.edge, after, to-last, in.d) && p.reachesOther(in.edge, line.At(to))) {
		reach := cornerReach(p.turn(in.edge, after), in.d, p.Edges[after].Allowance)
		to = math.Min(to, meeting(line, raw[after], last, run, reach))
	}
	return stretch{from, to}
}

// runsOut reports whether, at the corner between two consecutive edges, a
// stitch line at distance d would be ruled on by the given length.
func (p *Piece) runsOut(before, after int, by, d float64) bool {
	return p.turn(before, after) > leastTurn && by <= runOut*d
}

// reachesOther reports whether a line inside an edge has come to the cutting
// line of another edge at q: the run-out beside a deep hollow, as in a collar,
// may end within the piece, or lead across it to the edge it belongs to.
func (p *Piece) reachesOther(edge int, q plane.Point) bool {
	if _, _, away := p.Edges[edge].Path.Nearest(q); away < leastLine {
		return false
	}
	return p.tree.Nearer(q, leastLine)
}

// turn returns how far the outline turns at the corner between two consecutive
// edges, in radians: positive where the corner points out of the piece.
func (p *Piece) turn(before, after int) float64 {
	in, out := p.Edges[before].Path.EndDirection(), p.Edges[after].Path.StartDirection()
	return math.Atan2(in.Cross(out), in.Dot(out))
}

// cornerReach returns how far from a corner, in mm along either of them, the
// lines at a and b inside its two edges may meet: half as far again as beside
// two straight edges, both at the greater distance. Where the corner points out
// of the piece they run out to the cutting line and meet on the way, however
// far that is. Where it hardly turns or points into the piece, lines at unequal
// distances may meet much farther off, where nobody would look for it; their
// seams have a step at the corner instead.
func cornerReach(turn, a, b float64) float64 {
	widest, far := max(a, b), 1.5*math.Tan(math.Abs(turn)/2)
	if turn > leastTurn {
		return widest * max(runOut, far)
	}
	return widest * min(max(1, far), runOut)
}

// meeting returns how far along a line it meets its neighbour's line within
// reach of their corner, which lies beside the place at of the one and the
// place there of the other; or at, when they do not meet: when the two are
// parallel, or in one, as beside a seam that goes straight on.
func meeting(line, neighbour *plane.Tree, at, there, reach float64) float64 {
	if neighbour.Nearer(line.At(at), rounding) {
		return at
	}
	if c, ok := nearestCrossing(line, neighbour, at, there, reach); ok {
		return c.A
	}
	return at
}

// nearestCrossing returns where two lines cross nearest to the place at of the
// one and the place there of the other, as one walks along them: within reach
// of both. Elsewhere they may come nearer, as the two sides of a thumb do.
func nearestCrossing(line, neighbour *plane.Tree, at, there, reach float64) (nearest plane.Crossing, ok bool) {
	off := 2 * reach
	for _, c := range plane.Crossings(line, neighbour) {
		a, b := math.Abs(c.A-at), math.Abs(c.B-there)
		if a < reach && b < reach && a+b < off {
			nearest, off, ok = c, a+b, true
		}
	}
	return nearest, ok
}
