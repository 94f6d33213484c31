package piece

import (
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: a line may be asked to run from an edge, or to one. There it goes on
// straight, the way it arrives, or is cut off, so that it ends at the cutting line as it
// would be ruled. It must come to that edge before any other.

// runsTo is one end of a line that is to lie at an edge.
type runsTo struct {
	edge int // its number, or -1 for an end that is left where it is
	name source.Text
}

// findEnds returns the edges that a line runs from and to, and whether all that is named
// is there.
func (p *Piece) findEnds(ls source.LineSpec, found *Findings) (ends [2]runsTo, ok bool) {
	ok = true
	for i, name := range [...]source.Text{ls.From, ls.To} {
		ends[i] = runsTo{-1, name}
		if name.Given() {
			ends[i].edge = found.findEdge(p, name)
			ok = ok && ends[i].edge >= 0
		}
	}
	return ends, ok
}

// runToEdges returns a line with its ends at the edges that it is to run from and to, or
// notes why it does not come to them and returns nil. An end without an edge stays.
func (p *Piece) runToEdges(line plane.Path, ends [2]runsTo, ls source.LineSpec, found *Findings) plane.Path {
	run := p.Tree.Bounds().Union(line.Bounds())
	far := run.Width() + run.Height()
	given := Stretch{0, line.Length()}
	if ends[0].edge >= 0 {
		line = append(plane.Path{line[0].Sub(line.StartDirection().Mul(far))}, line...)
		given = Stretch{far, far + given.To}
	}
	if ends[1].edge >= 0 {
		line = append(line[:len(line):len(line)], line[len(line)-1].Add(line.EndDirection().Mul(far)))
	}
	tree := plane.NewTree(line)
	var own []Stretch // of the line on the piece, what holds some of what is given
	for _, s := range p.stretchesOn(tree) {
		if min(s.To, given.To)-max(s.From, given.From) > LeastLine {
			own = append(own, s)
		}
	}
	switch {
	case len(own) == 0:
		found.Add(ls.Place, "a line has two points on the piece, or one on each side of it", "nothing of the line lies on the piece between its points")
		return nil
	case len(own) > 1:
		_, out := p.toEdge(line.Between(own[0].To, own[1].From))
		found.leavesPiece(ls, out)
		return nil
	}
	drawn := given
	for i, at := range [...]float64{own[0].From, own[0].To} {
		if ends[i].edge < 0 {
			continue
		}
		if !p.comesTo(ends[i], tree.At(at), found) {
			return nil
		}
		if i == 0 {
			drawn.From = at
		} else {
			drawn.To = at
		}
	}
	return line.Between(drawn.From, drawn.To)
}

// stretchesOn returns the parts of a line that lie on the piece, or so near outside that
// they are brought to its edge.
func (p *Piece) stretchesOn(line *plane.Tree) []Stretch {
	var on []Stretch
	for _, s := range divide(p.Tree, line) {
		if p.outside(line.At((s.From+s.To)/2)) > LeastLine {
			continue
		}
		on = joinedOn(on, s)
	}
	return on
}

// comesTo reports whether the place at which a line leaves the piece lies on the edge it is
// to run to, or notes where it lies.
func (p *Piece) comesTo(end runsTo, at plane.Point, found *Findings) bool {
	e := p.Edges[end.edge]
	_, _, away := e.Path.Nearest(at)
	if away < LeastLine {
		return true
	}
	found.Add(end.name.Place, "name the edge that it is to end at, or move its points",
		"the line does not come to %q: it comes to %q first, at %s, %s from %q",
		e.Key, p.edgeNear(at), found.point(at), found.length(away), e.Key)
	return false
}

// leavesPiece notes that a line leaves the piece and comes back, so far from it.
func (f *Findings) leavesPiece(ls source.LineSpec, far float64) {
	f.Add(ls.Place, "let it run round the gap, or make it two lines", "the line leaves the piece between its points, by %s", f.length(far))
}
