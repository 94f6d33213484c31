package marking

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. What is sewn to a garment runs along edges of several
// pieces. An edge counts once for each piece that is cut, and twice where half a
// piece is drawn; its length is that of its stitch line, between those of its neighbours, with
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

// hasEdge reports whether a file has an edge of that name. It looks at the file as it
// is written, so that a piece with a mistake of its own is not reported as missing too.
func (s *Spec) hasEdge(piece, edge string) bool {
	ps := s.piece(piece)
	return ps != nil && slices.ContainsFunc(ps.Edges, func(e EdgeSpec) bool { return e.Key == edge })
}

// hasCourse reports whether a file has an edge or a line of that name.
func (s *Spec) hasCourse(piece, course string) bool {
	ps := s.piece(piece)
	return s.hasEdge(piece, course) ||
		ps != nil && slices.ContainsFunc(ps.Lines, func(l LineSpec) bool { return l.Key == course })
}

// mayName is what a name may stand for.
type mayName int

const (
	edgesOnly mayName = iota
	edgesAndLines
)

// checkEdgeNames looks whether every name stands for an edge of the file, or for a
// line where it may.
func checkEdgeNames(names []Text, spec *Spec, may mayName, found *findings) bool {
	has := spec.hasEdge
	if may == edgesAndLines {
		has = spec.hasCourse
	}
	ok := true
	for _, name := range names {
		if _, _, known := splitName(name.V, has); known {
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
				if may == edgesAndLines {
					edges = append(edges, l.Key)
				}
			}
		}
		switch {
		case !strings.Contains(name.V, "."):
			found.add(name.Place, `write the piece, a dot, and the edge: "front.neck"`, "%q does not say which edge of which piece", name.V)
		case edges == nil:
			found.add(name.Place, meant(piece, pieces), "there is no piece %q", piece)
		case may == edgesAndLines:
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
	pieceKey, edgeKey, isEdge := splitName(name, spec.hasEdge)
	if !isEdge {
		pieceKey, edgeKey, _ = splitName(name, spec.hasCourse)
	}
	c := Course{Piece: pieceKey, Edge: edgeKey, edge: -1}
	for i := range p.Pieces {
		if p.Pieces[i].Key == pieceKey {
			c.piece = &p.Pieces[i]
		}
	}
	var onAxis bool // both halves of a piece on the fold have it together
	if c.edge = c.piece.edge(edgeKey); c.edge >= 0 {
		e := c.piece.Edges[c.edge]
		c.line, c.Length, onAxis = e.Sewn, p.Unit.amount(e.Folded), e.OnFold
	} else {
		line := c.piece.line(edgeKey)
		c.line, c.Length = line.Path, p.Unit.amount(line.Folded)
		onAxis = c.piece.onAxis(c.line)
	}
	c.Times = c.piece.sideTimes()
	if onAxis {
		c.Times = c.piece.times()
	}
	return c
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
