package marking

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. What is sewn to a garment runs along edges of several
// pieces. An edge counts once for each piece that is cut, and twice where half a
// piece is drawn; its length is that of its stitch line, from seam to seam, with
// all tucks and pleats in.

// Course is a part of what a trim, ruffle or binding runs along.
type Course struct {
	Piece  string // key
	Edge   string // key of the edge, or of a line inside the piece
	Times  int    // how often it comes in the garment
	Length Amount // of one

	piece *Piece
	edge  int        // -1 for a line inside the piece
	line  plane.Path // as the piece is drawn
	cut   Amount     // one side of a seam: its length on the flat cloth
}

// Whole returns the length of all of them together.
func (c Course) Whole() Amount { return c.Length.Times(c.Times) }

// times is how often an edge or a line of the piece comes in the garment; axial tells
// that it lies on the fold, where both halves have it together. Layers that lie on one
// another, as a lining does, count as one.
func (p *Piece) times(axial bool) int {
	if p.OnFold && !axial {
		return 2 * p.Cut / p.Layers
	}
	return p.Cut / p.Layers
}

// splitName parts "front.centre back" into the key of a piece and that of an edge,
// either of which may have points of its own. Where nothing fits, ok is false and
// the parts are those at the first point.
func splitName(name string, known func(piece, edge string) bool) (piece, edge string, ok bool) {
	for i, r := range name {
		if r == '.' && known(name[:i], name[i+1:]) {
			return name[:i], name[i+1:], true
		}
	}
	piece, edge, _ = strings.Cut(name, ".")
	return piece, edge, false
}

// piece returns what a file says of the piece of that key; nil where it has none.
func (s *Spec) piece(key string) *PieceSpec {
	if s.byKey == nil {
		s.byKey = map[string]*PieceSpec{}
		for i := range s.Pieces {
			s.byKey[s.Pieces[i].Key] = &s.Pieces[i]
		}
	}
	return s.byKey[key]
}

// edgeKnown reports whether a file has an edge, or where lines count a line, of
// that name. It looks at the file as it is written, so that a piece with a mistake
// of its own is not reported as missing too.
func (s *Spec) edgeKnown(lines bool) func(piece, edge string) bool {
	return func(piece, edge string) bool {
		ps := s.piece(piece)
		return ps != nil && (slices.ContainsFunc(ps.Edges, func(e EdgeSpec) bool { return e.Key == edge }) ||
			lines && slices.ContainsFunc(ps.Lines, func(l LineSpec) bool { return l.Key == edge }))
	}
}

// checkEdgeNames looks whether every name stands for an edge of the file, or, where
// lines count, for a line.
func checkEdgeNames(names []Text, spec *Spec, lines bool, found *findings) bool {
	ok := true
	for _, name := range names {
		if _, _, known := splitName(name.V, spec.edgeKnown(lines)); known {
			continue
		}
		ok = false
		// The name of the piece may have points too; the one that is there was meant.
		piece, edge, _ := splitName(name.V, func(piece, _ string) bool { return spec.piece(piece) != nil })
		var pieces, edges []string
		isLine := false
		for _, ps := range spec.Pieces {
			pieces = append(pieces, ps.Key)
			if ps.Key != piece {
				continue
			}
			for _, e := range ps.Edges {
				edges = append(edges, e.Key)
			}
			for _, l := range ps.Lines {
				isLine = isLine || l.Key == edge
				if lines {
					edges = append(edges, l.Key)
				}
			}
		}
		switch {
		case !strings.Contains(name.V, "."):
			found.add(name.Place, `write the piece, a dot, and the edge: "front.neck"`, "%q does not say which edge of which piece", name.V)
		case edges == nil:
			found.add(name.Place, meant(piece, pieces), "there is no piece %q", piece)
		case lines:
			found.add(name.Place, meant(edge, edges), "there is no edge or line %q in the piece %q", edge, piece)
		case isLine:
			found.add(name.Place, "name the edges that are sewn together", "%q is a line inside the piece %q, and only edges are joined", edge, piece)
		default:
			found.add(name.Place, meant(edge, edges), "there is no edge %q in the piece %q", edge, piece)
		}
	}
	return ok
}

// course returns what a name stands for that has been checked. Where it can be read
// as an edge and as a line, it is the edge: only that can be joined.
func (p *Pattern) course(name string, spec *Spec) Course {
	pieceKey, edgeKey, isEdge := splitName(name, spec.edgeKnown(false))
	if !isEdge {
		pieceKey, edgeKey, _ = splitName(name, spec.edgeKnown(true))
	}
	c := Course{Piece: pieceKey, Edge: edgeKey, edge: -1}
	for i := range p.Pieces {
		if p.Pieces[i].Key == pieceKey {
			c.piece = &p.Pieces[i]
		}
	}
	if c.edge = c.piece.edge(edgeKey); c.edge >= 0 {
		e := c.piece.Edges[c.edge]
		c.line, c.Length, c.Times = e.Sewn, p.Unit.amount(e.Folded), c.piece.times(e.OnFold)
	} else {
		c.line = c.piece.line(edgeKey).Path
		c.Length, c.Times = p.Unit.amount(c.piece.lineLength(edgeKey)), c.piece.times(c.piece.onAxis(c.line))
	}
	return c
}

// lineLength returns how long a line of the piece is from seam to seam, with folds in. It
// is worked out once, for a line may be named many times.
func (p *Piece) lineLength(key string) float64 {
	line := p.line(key)
	if line.measured {
		return line.length
	}
	for _, part := range p.betweenSeams(line.Path) {
		line.length += p.foldedLength(part)
	}
	line.measured = true
	return line.length
}

// onAxis reports whether a line lies on the fold of the cloth, where both halves of the
// piece have it together.
func (p *Piece) onAxis(line plane.Path) bool {
	axis := p.foldEdge()
	if axis < 0 {
		return false
	}
	return !slices.ContainsFunc(line, func(q plane.Point) bool {
		_, _, away := p.Edges[axis].Path.Nearest(q)
		return away > straightness
	})
}

// betweenSeams returns the parts of a line of the piece that lie inside all of its stitch
// lines: what is seen of it when it is sewn. A line that lies in the allowances alone is
// returned whole.
func (p *Piece) betweenSeams(line plane.Path) []plane.Path {
	var parts []plane.Path
	for _, s := range insideStretches(p.seams, plane.NewTree(line)) {
		parts = append(parts, line.Between(s.from, s.to))
	}
	if len(parts) == 0 {
		return []plane.Path{line}
	}
	return parts
}

// courses returns what names stand for that have been checked.
func (p *Pattern) courses(names []Text, spec *Spec) []Course {
	var all []Course
	for _, name := range names {
		all = append(all, p.course(name.V, spec))
	}
	return all
}

// length returns the length of courses together, as it is printed.
func (p *Pattern) length(courses []Course) Amount {
	total := Amount{unit: p.Unit}
	for _, c := range courses {
		total = total.Plus(c.Whole())
	}
	return total
}

// title names a course in print: "Front, neck", "Back, neck (2 times)".
func (c Course) title() string {
	name := c.piece.Name + ", " + c.Edge
	if c.Times > 1 {
		name += " (" + strconv.Itoa(c.Times) + " times)"
	}
	return name
}
