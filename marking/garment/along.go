package garment

import (
	"strconv"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. What is sewn to a garment runs along edges of several
// pieces. An edge counts once for each piece that is cut, and twice where half a
// piece is drawn; its length is that of its stitch line, between those of its neighbours, with
// all tucks and pleats in.

// Course is a part of what a trim, ruffle or binding runs along.
type Course struct {
	Piece  string        // key
	Edge   string        // key of the edge, or of a line inside the piece
	Times  int           // how often it comes in the garment
	Length length.Amount // of one

	Of   *piece.Piece
	At   int           // -1 for a line inside the piece
	line plane.Path    // as the piece is drawn
	Cut  length.Amount // one side of a seam: its length on the flat cloth
}

// Whole returns the length of all of them together.
func (c Course) Whole() length.Amount { return c.Length.Times(c.Times) }

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

// mayName is what a name may stand for.
type mayName int

const (
	edgesOnly mayName = iota
	edgesAndLines
)

// checkEdgeNames looks whether every name stands for an edge of the file, or for a
// line where it may.
func checkEdgeNames(names []source.Text, spec *source.Spec, may mayName, found *piece.Findings) bool {
	has := spec.HasEdge
	if may == edgesAndLines {
		has = spec.HasCourse
	}
	ok := true
	for _, name := range names {
		if _, _, known := splitName(name.V, has); known {
			continue
		}
		ok = false
		// The name of the piece may have points too; the one that is there was meant.
		p, edge, _ := splitName(name.V, func(piece, _ string) bool { return spec.Piece(piece) != nil })
		var pieces, edges []string
		isLine := false
		for _, ps := range spec.Pieces {
			pieces = append(pieces, ps.Key)
			if ps.Key != p {
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
			found.Add(name.Place, `write the piece, a dot, and the edge: "front.neck"`, "%q does not say which edge of which piece", name.V)
		case edges == nil:
			found.Add(name.Place, piece.Meant(p, pieces), "there is no piece %q", p)
		case may == edgesAndLines:
			found.Add(name.Place, piece.Meant(edge, edges), "there is no edge or line %q in the piece %q", edge, p)
		case isLine:
			found.Add(name.Place, "name the edges that are sewn together", "%q is a line inside the piece %q, and only edges are joined", edge, p)
		default:
			found.Add(name.Place, piece.Meant(edge, edges), "there is no edge %q in the piece %q", edge, p)
		}
	}
	return ok
}

// course returns what a name stands for that has been checked. Where it can be read
// as an edge and as a line, it is the edge: only that can be joined.
func (p *Pattern) course(name string, spec *source.Spec) Course {
	pieceKey, edgeKey, isEdge := splitName(name, spec.HasEdge)
	if !isEdge {
		pieceKey, edgeKey, _ = splitName(name, spec.HasCourse)
	}
	c := Course{Piece: pieceKey, Edge: edgeKey, At: -1}
	for i := range p.Pieces {
		if p.Pieces[i].Key == pieceKey {
			c.Of = &p.Pieces[i]
		}
	}
	var onAxis bool // both halves of a piece on the fold have it together
	if c.At = c.Of.Edge(edgeKey); c.At >= 0 {
		e := c.Of.Edges[c.At]
		c.line, c.Length, onAxis = e.Sewn, p.Unit.Amount(e.FinishedLength), e.OnFold
	} else {
		line := c.Of.Line(edgeKey)
		c.line, c.Length = line.Path, p.Unit.Amount(line.FinishedLength)
		onAxis = c.Of.OnAxis(c.line)
	}
	c.Times = c.Of.SideTimes()
	if onAxis {
		c.Times = c.Of.Times()
	}
	return c
}

// courses returns what names stand for that have been checked.
func (p *Pattern) courses(names []source.Text, spec *source.Spec) []Course {
	var all []Course
	for _, name := range names {
		all = append(all, p.course(name.V, spec))
	}
	return all
}

// length returns the length of courses together, as it is printed.
func (p *Pattern) length(courses []Course) length.Amount {
	total := length.Amount{Unit: p.Unit}
	for _, c := range courses {
		total = total.Plus(c.Whole())
	}
	return total
}

// Title names a course in print: "Front, neck", "Back, neck (2 times)".
func (c Course) Title() string {
	name := c.Of.Name + ", " + c.Edge
	if c.Times > 1 {
		name += " (" + strconv.Itoa(c.Times) + " times)"
	}
	return name
}
