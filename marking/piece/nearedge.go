package piece

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: a point is no truer than it was read. What a file draws a little
// outside the piece was meant to lie on its edge: a line that ends there ends at the
// cutting line, and one that runs there runs along it. Nothing that is drawn leaves the
// piece.

const (
	// nearEdge bounds how far outside the piece, in mm, what is drawn on it may lie and be
	// meant to lie on its edge: 1/32 in, half of the smallest step of a ruler.
	nearEdge = 25.4 / 32
	// shortEnd bounds how long an end of a line may be, in mm, that lies outside and is cut
	// off: one that leaves over a slanting edge is longer than it is far out. What leaves
	// still flatter runs along the edge.
	shortEnd = 4 * nearEdge
	// sampled is how far apart, in mm, places of a line are looked at that lies outside,
	// and those at which it is brought to the edge, besides its own points: on the tightest
	// curve of an outline that leaves no more than a hundredth of a millimetre between them.
	// There are no more than mostSampled of them: so long a line is near no edge.
	sampled     = 0.5
	mostSampled = 20_000
)

// outside returns how far outside the piece a place lies, in mm; 0 for one within.
func (p *Piece) outside(q plane.Point) float64 {
	if p.Tree.Holds(q) {
		return 0
	}
	at, _ := p.Tree.Nearest(q)
	return at.Distance(q)
}

// toEdge returns a line with every place of it brought to the edge of the piece, and how far
// outside, in mm, the farthest lay.
func (p *Piece) toEdge(line plane.Path) (on plane.Path, farthest float64) {
	apart := max(sampled, line.Length()/mostSampled)
	for k, to := range line {
		from := line[max(0, k-1)]
		steps := max(1, math.Ceil(from.Distance(to)/apart))
		for j := range int(steps) {
			q := from.Toward(to, float64(j+1)/steps)
			at, _ := p.Tree.Nearest(q)
			on, farthest = append(on, at), max(farthest, p.outside(q))
		}
	}
	return on, farthest
}

// onPiece returns a line as it is drawn on the piece, and how far outside, in mm, it
// reaches as it is given. Where that is more than nearEdge nothing of the kind was meant.
func (p *Piece) onPiece(line plane.Path) (on plane.Path, farthest float64) {
	tree := plane.NewTree(line)
	parts := divide(p.Tree, tree)
	for i, s := range parts {
		part := line.Between(s.From, s.To)
		if !p.Tree.Holds(tree.At((s.From + s.To) / 2)) {
			along, out := p.toEdge(part)
			farthest = max(farthest, out)
			switch end := i == 0 || i == len(parts)-1; {
			case out < LeastLine: // it stays as it is
			case end && len(parts) > 1 && s.To-s.From <= shortEnd:
				part = nil
			default:
				part = along
			}
		}
		for _, q := range part {
			if len(on) == 0 || q != on[len(on)-1] {
				on = append(on, q)
			}
		}
	}
	switch {
	case farthest < LeastLine:
		return line, 0
	case on.Length() < LeastLine: // both its ends are outside, beyond a corner
		return p.toEdge(line)
	}
	return on, farthest
}

// checkPlace looks whether point i of some lies on the piece, or near enough to its edge.
// more is what helps besides looking at its numbers.
func (p *Piece) checkPlace(points source.Points, i int, more string, found *Findings) bool {
	q := points.V[i]
	out := p.outside(q)
	if out <= nearEdge {
		return true
	}
	found.Add(points.On(points.Place, i), "is a number wrong? x comes first, then y"+more,
		"point %d, %s, lies outside the piece by %s", i+1, found.point(q), found.length(out))
	return false
}

// edgeNear returns the key of the edge that is nearest to a place.
func (p *Piece) edgeNear(q plane.Point) string {
	nearest, key := math.Inf(1), ""
	for _, e := range p.Edges {
		if _, _, away := e.Path.Nearest(q); away < nearest {
			nearest, key = away, e.Key
		}
	}
	return key
}
