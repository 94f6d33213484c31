package piece

import (
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
)

// Rules of this file:
//
//   - The stitch line of an edge keeps that edge's own allowance from it, and
//     knows nothing of the allowances of other edges. Where it ends is decided
//     at the corners (corner.go).
//   - Past the ends of its edge it is lengthened straight, the way the edge runs
//     there; where that is given in shorter steps than a quarter of the allowance,
//     or than 6 mm, along the chord over so much, for such a step is as rough as
//     the measuring. Where the stitch lines are drawn it is lengthened beside its
//     neighbour, and the allowance of that counts as well.
//   - An allowance that leaves nothing of the piece along its edge, or that the
//     piece is too narrow for somewhere, is a mistake to be told, not a line to
//     be drawn in part.

const (
	// runOut bounds how far past the end of its edge, in allowances, a stitch
	// line may run to reach the cutting line: as far as it must at a corner
	// that turns by LeastTurn.
	runOut = 8

	// sturdy and sturdyStep are how long a step of an edge must be to tell the way in
	// which its line is lengthened: so much of its allowance, or so many mm, whichever
	// is less. What is lengthened is rarely longer than four times as much, and a
	// place that is off by a tenth of a millimetre turns such a step by a degree.
	sturdy     = 0.25
	sturdyStep = 6

	// nearerAtEnd bounds by how much, in mm, the lengthened end of a line may come
	// nearer to its edge than its distance: as much as a last point may be off
	// that was measured to a tenth of a millimetre, and its neighbour with it.
	nearerAtEnd = 0.2
)

// checkStitches works out the lines of every edge. It returns false when the
// piece cannot be sewn as it stands.
func checkStitches(piece *Piece, found *Findings) bool {
	widest := 0.0
	for _, e := range piece.Edges {
		widest = max(widest, e.Allowance)
	}
	before := len(found.List)
	run := runOut * widest
	piece.rulings = make([]ruling, len(piece.Edges))
	for i, e := range piece.Edges {
		if r, ok := piece.rule(e.inset(i), run, found); ok {
			piece.rulings[i] = r
		}
	}
	if len(found.List) > before {
		return false
	}
	for i := range piece.rulings {
		piece.keepWithin(&piece.rulings[i], found)
	}
	if len(found.List) > before || !piece.decideCorners(found) {
		return false
	}
	for i := range piece.Edges {
		if e := &piece.Edges[i]; e.Turn > 0 {
			e.TurnLine = piece.ruledLine(inset{i, e.Turn, "a turn", e.Place, e.Turn, ""}, run, found)
		}
	}
	if len(found.List) > before || !checkSewn(piece, found) {
		return false
	}
	piece.ruleOn()
	for i := range piece.Edges {
		e, drawn := &piece.Edges[i], piece.Drawn(i)
		e.Line = e.Path
		if e.Allowance > 0 {
			e.Line = piece.rulings[i].line.Path().Between(drawn.From, drawn.To)
		}
	}
	return true
}

// inset is a line wanted inside an edge.
type inset struct {
	edge  int
	d     float64     // how far inside its cutting line, in mm
	what  string      // what a maker calls that distance
	place fault.Place // where the file asks for it
	said  float64     // that distance as the file has it, in mm
	usual string      // behind a hint, as usualIn says it
}

// inset returns where the line of edge i lies.
func (e Edge) inset(i int) inset {
	what := "an allowance"
	if e.Hem > 0 {
		what = "a hem (with its turn)"
	}
	return inset{i, e.Allowance, what, e.Place, e.Allowance, usualIn(e)}
}

// ruling is a line inside an edge as far as it could be ruled. Where there is
// nothing between the two, it is the edge itself.
type ruling struct {
	inset
	path       plane.Path  // what lies beside the edge
	start, end plane.Point // the ways in which it sets out and arrives, of length 1
	clear      [2]float64  // how far each end may be lengthened and keep its distance, in mm
	run        float64     // how far both ends are lengthened, in mm
	line       *plane.Tree // with its ends lengthened
	far        float64     // how far an end may be lengthened to come out at the cutting line, in mm
	within     Stretch     // the part of line that counts: all of it, until it is kept within the piece
}

// beside returns the part of the line that is not lengthened.
func (r ruling) beside() Stretch { return Stretch{r.run, r.line.Length() - r.run} }

// lengthened returns the ruling with its ends lengthened by so much.
func (r ruling) lengthened(run float64) ruling {
	line := append(plane.Path{r.path[0].Sub(r.start.Mul(run))}, r.path...)
	line = append(line, r.path[len(r.path)-1].Add(r.end.Mul(run)))
	if r.d > 0 {
		line = line.WithoutStraightPoints()
	}
	r.run, r.line = run, plane.NewTree(line)
	r.within = Stretch{0, r.line.Length()}
	return r
}

// rule returns the line inside an edge, or notes why there is none.
func (p *Piece) rule(in inset, run float64, found *Findings) (ruling, bool) {
	e := p.Edges[in.edge]
	d := in.d - e.inside
	line, ok := lineBeside(e.Given, d)
	switch {
	case !ok:
		p.nothingLeft(in, found)
		return ruling{}, false
	case line.Pinched:
		found.meetsItself(in, p.lineSide(in), line.At)
		return ruling{}, false
	}
	r := ruling{inset: in, clear: [2]float64{math.Inf(1), math.Inf(1)}, path: line.Path, start: e.Given.StartDirection(), end: e.Given.EndDirection()}
	before, after := p.Neighbours(in.edge)
	reach := func(beside int) float64 {
		return min(sturdy*max(math.Abs(d), e.inside, p.Edges[beside].inside), sturdyStep)
	}
	own, edge := plane.NewTree(line.Path), plane.NewTree(e.Given)
	last := len(line.Path) - 1
	if line.Path[0].Distance(e.Given[0].Add(r.start.Left().Mul(d))) > Rounding {
		r.start = wayOut(own, line.Path[1].Distance(line.Path[0]), line.Path.StartDirection(), reach(before))
		r.clear[0] = clearWay(edge, line.Path[0], r.start.Mul(-1), math.Abs(d), run)
	} else {
		r.start = wayOut(edge, e.steps[0], r.start, reach(before))
	}
	if line.Path[last].Distance(e.Given[len(e.Given)-1].Add(r.end.Left().Mul(d))) > Rounding {
		r.end = wayIn(own, line.Path[last-1].Distance(line.Path[last]), line.Path.EndDirection(), reach(after))
		r.clear[1] = clearWay(edge, line.Path[last], r.end, math.Abs(d), run)
	} else {
		r.end = wayIn(edge, e.steps[1], r.end, reach(after))
	}
	if r.far = runOut * in.d; e.inside > 0 { // it may have to run on past a wider hem
		r.far = run
	}
	return r.lengthened(run), true
}

// lineBeside returns the line at a distance inside an edge, in mm; below 0, outside it.
func lineBeside(edge plane.Path, d float64) (plane.OffsetLine, bool) {
	if d >= 0 {
		return plane.Offset(edge, d, 0)
	}
	line, ok := plane.Offset(edge.Reversed(), -d, 0)
	line.Path = line.Path.Reversed()
	return line, ok
}

// clearWay returns how far one may go from a place straight on and keep a distance
// from an edge, and run at most. Where an edge bends more tightly than that at its
// end, its line falls short of it, and straight on leads over the very cloth that is
// to be kept off.
func clearWay(edge *plane.Tree, from, way plane.Point, d, run float64) float64 {
	for gone := 0.0; gone < run; {
		spare := edge.Distance(from.Add(way.Mul(gone)), d+run) - (d - nearerAtEnd)
		if spare <= 0 {
			return gone
		}
		gone += max(spare, LeastLine) // nothing can lie nearer before that
	}
	return run
}

// wayOut returns the way in which a path sets out, of length 1: its own, where the
// step it is given in there is no shorter than reach; else that of the chord to the
// place so far along it.
func wayOut(path *plane.Tree, step float64, own plane.Point, reach float64) plane.Point {
	chord := path.At(reach).Sub(path.At(0)).Unit()
	if step >= reach || chord == (plane.Point{}) {
		return own
	}
	return chord
}

// wayIn returns the way in which a path arrives, as wayOut does.
func wayIn(path *plane.Tree, step float64, own plane.Point, reach float64) plane.Point {
	end := path.Length()
	chord := path.At(end).Sub(path.At(end - reach)).Unit()
	if step >= reach || chord == (plane.Point{}) {
		return own
	}
	return chord
}

func (p *Piece) nothingLeft(in inset, found *Findings) {
	hint := "make it narrower"
	// A corner rounded more tightly than the allowance has no line of its own.
	if path := p.Edges[in.edge].Given; path.Length() < 2*in.said && path.Straightness() > Straightness {
		hint = "make it narrower, or make this curve part of the edge beside it"
	}
	left := "nothing of the piece along"
	if p.lineSide(in) == outsideEdge {
		left = "no line outside"
	}
	found.Add(in.place, hint+in.usual+p.tiny(found), "%s of %s leaves %s this edge", in.what, found.Written(in.said), left)
}

// The sides of an edge, as it is drawn, on which a line may lie.
const (
	insideEdge  = "inside"
	outsideEdge = "outside"
)

// lineSide returns on which side of its edge a line lies.
func (p *Piece) lineSide(in inset) string {
	if in.d < p.Edges[in.edge].inside {
		return outsideEdge
	}
	return insideEdge
}

func (f *Findings) meetsItself(in inset, side string, at plane.Point) {
	wider := "the piece"
	if side == outsideEdge {
		wider = "the hollow"
	}
	f.Add(in.place, "make it narrower, or "+wider+" wider there"+in.usual,
		"%s of %s is too wide: the line %s this edge meets itself at %s", in.what, f.Written(in.said), side, f.point(at))
}

// keepWithin finds the part of a line that lies on the piece: it must lie there in
// one stretch. Where it does not, that is noted. An edge lies on it as it is.
func (p *Piece) keepWithin(r *ruling, found *Findings) bool {
	if r.d == 0 {
		return true
	}
	beside := r.beside()
	var own []Stretch // what lies beside the edge, not on a lengthened end
	for _, s := range InsideStretches(p.Tree, r.line) {
		if min(s.To, beside.To)-max(s.From, beside.From) > LeastLine {
			own = append(own, s)
		}
	}
	switch {
	case len(own) == 0:
		p.nothingLeft(r.inset, found)
		return false
	case len(own) > 1:
		found.Add(r.place, "make it narrower, or the piece wider there"+r.usual,
			"%s of %s is wider than the piece: the line inside this edge leaves it at %s",
			r.what, found.Written(r.said), found.point(r.line.At(own[0].To)))
		return false
	}
	r.within = own[0]
	return true
}

// ruledLine returns another line inside an edge, such as the fold of what is turned
// in, as it is drawn, or notes why there is none and returns nil.
func (p *Piece) ruledLine(in inset, run float64, found *Findings) plane.Path {
	r, ok := p.rule(in, run, found)
	if !ok || !p.keepWithin(&r, found) {
		return nil
	}
	drawn := p.ruledEnds(r)
	return r.line.Path().Between(drawn.From, drawn.To)
}
