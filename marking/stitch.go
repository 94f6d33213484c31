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
//     cutting line, or is trimmed there, as it is ruled on cloth.
//   - At a corner that turns the other way, or hardly turns, there is no
//     cutting line ahead of it: it runs to the stitch line of its neighbour, or,
//     where the two do not meet near the corner, ends square to it.
//   - Allowances that leave no cloth between them are a mistake to be told, not
//     a line to be drawn in part: a strap that is all seam cannot be sewn.

const (
	// runOut bounds how far past the end of its edge, in allowances, a stitch
	// line may run to reach the cutting line. Corners of up to 172 degrees
	// lie within it.
	runOut = 8

	// leastLine is the length, in mm, below which a stretch of a line, or of
	// cloth between two lines, is nothing but rounding.
	leastLine = 0.05

	// leastSeam is the length, in mm, below which nobody could sew a seam.
	leastSeam = 2
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
		raw[i] = piece.rawLine(inset{i, e.Allowance, "an allowance", e.place}, run, found)
	}
	if len(found.list) > before {
		return false
	}
	for i := range piece.Edges {
		e := &piece.Edges[i]
		e.Line = e.Path
		if e.Allowance > 0 {
			e.Line = piece.fit(inset{i, e.Allowance, "an allowance", e.place}, raw[i], run, raw, found)
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
	return checkSewn(piece, found)
}

// inset is a line wanted inside an edge.
type inset struct {
	edge  int
	d     float64 // how far inside, in mm
	what  string  // what a maker calls that distance
	place Place   // where the file asks for it
}

// takeAllowance settles how far the line of an edge lies inside it.
func takeAllowance(e *Edge, es EdgeSpec, allowance Length, found *findings) {
	switch {
	case e.OnFold && (es.Allowance.MM > 0 || es.Hem.Given()):
		found.add(es.Place, "leave its allowance and hem out",
			"the edge lies on the fold of the cloth, where nothing is sewn")
	case e.OnFold:
	case es.Hem.Given():
		e.Hem, e.Turn = es.Hem.MM, es.Turn.MM
		e.Allowance = e.Hem + e.Turn
		if e.Turn > e.Hem {
			found.add(es.Turn.Place, "the turn is folded under inside the hem; a hem turned twice alike has a turn as deep as itself",
				"a turn of %s is deeper than the hem of %s", found.given(e.Turn), found.given(e.Hem))
		}
	case es.Allowance.Given():
		e.Allowance = es.Allowance.MM
	default:
		e.Allowance = allowance.MM
	}
}

// rawLine returns the line inside an edge with both ends run out, or notes why
// there is none and returns nil.
func (p *Piece) rawLine(in inset, run float64, found *findings) *plane.Tree {
	line, ok := plane.Offset(p.Edges[in.edge].Path, in.d, run)
	switch {
	case !ok:
		found.nothingLeft(in)
		return nil
	case line.Pinched:
		found.add(in.place, "make it narrower, or the piece wider there",
			"%s of %s is too wide: the line inside this edge meets itself at %s", in.what, found.given(in.d), found.point(line.At))
		return nil
	}
	return plane.NewTree(line.Path)
}

func (f *findings) nothingLeft(in inset) {
	f.add(in.place, "make it narrower", "%s of %s leaves nothing of the piece along this edge", in.what, f.given(in.d))
}

// stretch is the part of a line from one distance along it to another, in mm.
type stretch struct{ from, to float64 }

// insideStretches returns the parts of a line that lie inside the outline, in
// order. Parts that only touch it, or run along it, are not inside.
func (p *Piece) insideStretches(line *plane.Tree) []stretch {
	path := line.Path()
	stops := []float64{0}
	for _, c := range plane.Crossings(line, p.tree) {
		stops = append(stops, c.A)
	}
	stops = append(stops, path.Length())
	var inside []stretch
	for k := 1; k < len(stops); k++ {
		from, to := stops[k-1], stops[k]
		if to-from < samePoint {
			continue
		}
		middle, _ := path.At((from + to) / 2)
		if !p.Outline.Holds(middle) || p.tree.Nearer(middle, math.Min(samePoint, (to-from)/1000)) {
			continue
		}
		if n := len(inside); n > 0 && from-inside[n-1].to < samePoint {
			inside[n-1].to = to
		} else {
			inside = append(inside, stretch{from, to})
		}
	}
	return inside
}

// fit returns the part of a raw line that is drawn: it must lie on the piece in
// one stretch. raw holds the raw lines of the neighbours' own insets.
func (p *Piece) fit(in inset, line *plane.Tree, run float64, raw []*plane.Tree, found *findings) plane.Path {
	length := line.Path().Length()
	// Where the line lies beside the two ends of its edge.
	first, last := math.Min(run, length/2), math.Max(length-run, length/2)
	var own []stretch // what lies beside the edge, not on a run-out end
	for _, s := range p.insideStretches(line) {
		if math.Min(s.to, last)-math.Max(s.from, first) > leastLine {
			own = append(own, s)
		}
	}
	switch {
	case len(own) == 0:
		found.nothingLeft(in)
		return nil
	case len(own) > 1:
		at, _ := line.Path().At(own[0].to)
		found.add(in.place, "make it narrower, or the piece wider there",
			"%s of %s is wider than the piece: the line inside this edge leaves it at %s", in.what, found.given(in.d), found.point(at))
		return nil
	}
	before, after := p.neighbours(in.edge)
	from, to := own[0].from, own[0].to
	if from < first && !p.runsOut(before, in.edge, first-from, in.d) {
		from = math.Max(from, meeting(line, raw[before], first, p.cornerReach(before, in.edge, in.d)))
	}
	if to > last && !p.runsOut(in.edge, after, to-last, in.d) {
		to = math.Min(to, meeting(line, raw[after], last, p.cornerReach(in.edge, after, in.d)))
	}
	return line.Path().Between(from, to)
}

// runsOut reports whether, at the corner between two consecutive edges, a
// stitch line at distance d that must go on by the given length reaches a
// cutting line that a maker would rule it to.
func (p *Piece) runsOut(before, after int, by, d float64) bool {
	in, out := p.Edges[before].Path.EndDirection(), p.Edges[after].Path.StartDirection()
	return in.Cross(out) > 0 && by <= runOut*d
}

// cornerReach returns how far from the corner between two consecutive edges, in
// mm, a line at distance d may meet its neighbour's line: as far as two lines
// at the greater of the two distances would, and half as far again. Lines of
// unequal distances at a corner that hardly turns meet much farther off, where
// nobody would look for it; their seams have a step at the corner instead.
func (p *Piece) cornerReach(before, after int, d float64) float64 {
	in, out := p.Edges[before].Path.EndDirection(), p.Edges[after].Path.StartDirection()
	half := math.Abs(math.Atan2(in.Cross(out), in.Dot(out))) / 2
	widest := max(d, p.Edges[before].Allowance, p.Edges[after].Allowance)
	return widest * max(1, 1.5*math.Tan(half))
}

// meeting returns how far along a line it meets its neighbour's line within
// reach of the place at, or that place when it does not: when the two are
// parallel, or in one, as beside a seam that goes straight on.
func meeting(line, neighbour *plane.Tree, at, reach float64) float64 {
	if here, _ := line.Path().At(at); neighbour.Nearer(here, rounding) {
		return at
	}
	best, off := at, reach
	for _, c := range plane.Crossings(line, neighbour) {
		if away := math.Abs(c.A - at); away < off {
			best, off = c.A, away
		}
	}
	return best
}

// checkSewn finds the sewn part of every line, and the places where the
// allowances of two edges leave nothing between them.
func checkSewn(piece *Piece, found *findings) bool {
	n := len(piece.Edges)
	lines := make([]*plane.Tree, n)
	for i, e := range piece.Edges {
		lines[i] = plane.NewTree(e.Line)
	}
	sewn := make([]stretch, n)
	ok := true
	for i := range piece.Edges {
		e := &piece.Edges[i]
		before, after := piece.neighbours(i)
		sewn[i] = stretch{0, e.Line.Length()}
		// Next to a neighbour that is not sewn the line counts to its end.
		if c := plane.Crossings(lines[i], lines[before]); len(c) > 0 {
			sewn[i].from = c[0].A
		}
		if c := plane.Crossings(lines[i], lines[after]); len(c) > 0 {
			sewn[i].to = c[len(c)-1].A
		}
		if sewn[i].to-sewn[i].from < leastSeam {
			found.add(e.place, "make their allowances narrower, or this edge longer, or one edge of it and its neighbour",
				"nothing of this edge is left to sew: the allowances of %q and %q take up all %s of it",
				piece.Edges[before].Key, piece.Edges[after].Key, found.mm(e.Path.Length()))
			ok = false
			continue
		}
		e.Sewn = e.Line.Between(sewn[i].from, sewn[i].to)
	}
	if !ok {
		return false
	}
	for i := range piece.Edges {
		for j := i + 1; j < n; j++ {
			if c, meet := within(plane.Crossings(lines[i], lines[j]), sewn[i], sewn[j]); meet {
				reportMeeting(piece, i, j, c.At, found)
				ok = false
			}
		}
	}
	return ok
}

// within returns the first crossing that lies inside both stretches, not at
// their ends.
func within(crossings []plane.Crossing, a, b stretch) (plane.Crossing, bool) {
	for _, c := range crossings {
		if c.A > a.from+leastLine && c.A < a.to-leastLine && c.B > b.from+leastLine && c.B < b.to-leastLine {
			return c, true
		}
	}
	return plane.Crossing{}, false
}

func reportMeeting(piece *Piece, i, j int, at plane.Point, found *findings) {
	a, b := piece.Edges[i], piece.Edges[j]
	width := math.Inf(1)
	other := plane.NewTree(b.Path)
	for _, q := range a.Path {
		width = other.Distance(q, width)
	}
	found.add(a.place, "make the allowances narrower, or the piece wider there",
		"the stitch lines of %q and %q meet at %s: the edges come within %s of each other, their allowances are %s and %s",
		a.Key, b.Key, found.point(at), found.mm(width), found.given(a.Allowance), found.given(b.Allowance))
}
