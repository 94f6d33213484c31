package garment

import (
	"strconv"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. What is sewn to a garment runs along edges of several
// pieces. An edge counts once for each piece that is cut, and twice where half a
// piece is drawn; its length is that of its stitch line, between those of its neighbours, with
// all tucks and pleats in.

// Course is an edge of a piece, or a line inside one, that something is sewn along: a
// trim, a ruffle, a binding, or the other side of a seam.
type Course struct {
	Piece  *piece.Piece
	Key    string        // of the edge or line
	Times  int           // how often it comes in the garment; on a side of a seam, for each time that the seam does
	Length length.Amount // of one, sewn
	Cut    length.Amount // of one as it is cut on the flat cloth; only on a side of a seam

	edge int        // its number in the piece; -1 for a line
	line plane.Path // as the piece is drawn
	lap  *lap       // beyond Length, on a side of a seam; nil for none
}

// Whole returns the length of all of them together.
func (c Course) Whole() length.Amount { return c.Length.Times(c.Times) }

// Title names a course in print: "Front, neck", "Back, neck (2 times)".
func (c Course) Title() string {
	name := c.Piece.Name + ", " + c.Key
	if c.Times > 1 {
		name += " (" + strconv.Itoa(c.Times) + " times)"
	}
	return name
}

// isEdge reports whether it is an edge, and no line inside the piece.
func (c Course) isEdge() bool { return c.edge >= 0 }

// outlineEdge is the edge of a course that is one.
func (c Course) outlineEdge() edgeOf { return edgeOf{c.Piece, c.edge} }

// drawn returns the edge of a course that is one.
func (c Course) drawn() piece.Edge { return c.Piece.Edges[c.edge] }

// course returns what a name stands for that has been checked. Where it can be read
// as an edge and as a line, it is the edge: only that can be joined.
func (j joiner) course(name string) Course {
	key, along, isEdge := splitName(name, j.names.HasEdge)
	if !isEdge {
		key, along, _ = splitName(name, j.names.HasCourse)
	}
	c := Course{Key: along}
	for i := range j.Pieces {
		if j.Pieces[i].Key == key {
			c.Piece = &j.Pieces[i]
		}
	}
	if i := c.Piece.EdgeNumber(along); i >= 0 {
		return j.edgeCourse(c.Piece, i)
	}
	line := c.Piece.Line(along)
	c.edge, c.line, c.Length = -1, line.Path, j.Unit.Amount(line.FinishedLength)
	c.Times = times(c.Piece, c.Piece.OnAxis(c.line))
	return c
}

// edgeCourse returns an edge of a piece as a course.
func (j joiner) edgeCourse(p *piece.Piece, edge int) Course {
	e := p.Edges[edge]
	return Course{Piece: p, Key: e.Key, Times: times(p, e.OnFold), Length: j.Unit.Amount(e.FinishedLength), edge: edge, line: e.Sewn}
}

// times returns how often an edge or line of a piece comes in the garment; one on the axis
// is there once in both halves of a piece on the fold.
func times(p *piece.Piece, onAxis bool) int {
	if onAxis {
		return p.Times()
	}
	return p.SideTimes()
}

// courses returns what names stand for that have been checked.
func (j joiner) courses(names []source.Text) []Course {
	var all []Course
	for _, name := range names {
		all = append(all, j.course(name.V))
	}
	return all
}

// together returns the length of courses together, as it is printed.
func (j joiner) together(courses []Course) length.Amount {
	total := length.Amount{Unit: j.Unit}
	for _, c := range courses {
		total = total.Plus(c.Whole())
	}
	return total
}

// SewnOn is what trims, ruffles and bindings have in common.
type SewnOn struct {
	Key        string        // what the file calls it
	Courses    []Course      // that it runs along
	LineLength length.Amount // of all of them together, each as often as it comes

	place fault.Place
}

// printedShort is how much shorter the edges may be, as they are printed and added up, in steps of
// the ruler, and what is cut by that still go round: every end of it has more.
const printedShort = 2

// Unprinted is by how much the edges are longer than they are as printed and added up, which many
// that are rounded down come to; nothing where that is too little to matter.
func (s SewnOn) Unprinted() length.Amount {
	line := s.LineLength
	more := line.MM - line.Steps*line.Unit.Ruler()
	if more <= printedShort*line.Unit.Ruler()+length.Rounding {
		return length.Amount{Unit: line.Unit}
	}
	return line.Unit.AtLeast(more)
}

// sewnOn finds what something runs along.
func (j joiner) sewnOn(key string, place fault.Place, along []source.Text) SewnOn {
	courses := j.courses(along)
	return SewnOn{Key: key, Courses: courses, LineLength: j.together(courses), place: place}
}
