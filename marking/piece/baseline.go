package piece

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// BaseLine is the straight line that a row of folds is measured from. Out is the side of
// it on which the row lies.
type BaseLine struct {
	Frame
	Name string // the key of the edge, or of the line; of an edge whose stitch line it is, that of this
	Edge int    // the edge that the line is, or -1 for a line inside the piece
}

// findBase finds the line that name stands for, and the side of it the tucks
// lie on: that of the edge named by side, where it is given, else the side the
// piece lies on, or, for a line parallel to an edge, the side away from that.
func findBase(piece *Piece, name, side source.Text, found *Findings) (BaseLine, bool) {
	b, ok := findStraight(piece, name, found)
	if !ok {
		return b, false
	}
	line := piece.Line(name.V)
	switch {
	case side.Given():
		toward := found.findEdge(piece, side)
		if toward < 0 {
			return b, false
		}
		path := piece.Edges[toward].Given
		if middle, _ := path.At(path.Length() / 2); b.U(middle) < 0 {
			b.Out = b.Out.Mul(-1)
		}
	case b.Edge < 0 && line.Along < 0:
		found.Add(name.Place, `add side = "..." with the name of an edge on that side`,
			"%q has cloth on both sides, and nothing says on which of them the tucks lie", name.V)
		return b, false
	}
	return b, true
}

// findStraight finds the edge or line that name stands for, which must be
// straight. Out points to its left.
func findStraight(piece *Piece, name source.Text, found *Findings) (BaseLine, bool) {
	b := BaseLine{Name: name.V, Edge: piece.EdgeNumber(name.V)}
	var path plane.Path
	if b.Edge >= 0 {
		e := piece.Edges[b.Edge]
		path = e.Given
		if e.inside > 0 { // or a ruler would be laid to the cut edge
			b.Name = e.GivenName()
		}
	} else if line := piece.Line(name.V); line != nil {
		path = line.Path
	} else {
		found.noCourse(piece, name)
		return b, false
	}
	if bent := path.Straightness(); bent > Straightness {
		found.Add(name.Place, "name a straight edge, or a straight line of the piece",
			"%q is not straight: it bends by %s, and cloth folds along a straight line only", name.V, found.length(bent))
		return b, false
	}
	b.Origin = path[0]
	b.Along = path[len(path)-1].Sub(path[0]).Unit()
	b.Out = b.Along.Left()
	return b, true
}

// meets returns where a line meets the base, run out on both sides: how far
// along the base, and how far along the line. An end of the line that lies off
// the base by no more than an edge may bend counts as meeting it. The outline is
// that of the piece.
func (b BaseLine) meets(outline, line plane.Path) (v, along float64, ok bool) {
	_, reach := b.Extent(outline)
	base := plane.NewTree(b.Lengthwise(0, reach))
	if c := plane.Crossings(plane.NewTree(line), base); len(c) > 0 {
		return b.V(c[0].At), c[0].A, true
	}
	first, last := line[0], line[len(line)-1]
	switch {
	case math.Abs(b.U(first)) <= Straightness:
		return b.V(first), 0, true
	case math.Abs(b.U(last)) <= Straightness:
		return b.V(last), line.Length(), true
	}
	return 0, 0, false
}

// metAt returns where the line at u meets a path, along the base. Where it does not, an end of
// the path that lies no farther than near off it counts as meeting it.
func (b BaseLine) metAt(path *plane.Tree, u, near float64) []float64 {
	_, reach := b.Extent(path.Path())
	line := plane.NewTree(b.Lengthwise(u, Stretch{reach.From - 1, reach.To + 1}))
	var at []float64
	for _, c := range plane.Crossings(path, line) {
		at = append(at, b.V(c.At))
	}
	first, last := path.Path()[0], path.Path()[len(path.Path())-1]
	for _, end := range []plane.Point{first, last} {
		if len(at) == 0 && math.Abs(b.U(end)-u) <= near {
			at = append(at, b.V(end))
		}
	}
	return at
}
