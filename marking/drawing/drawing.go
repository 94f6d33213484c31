package drawing

import (
	"fmt"

	"tuckmark/marking/fault"
)

// Rules of this file: what is drawn is what SVG 2 says is rendered, whether it has a colour or
// not. What is never drawn by itself (defs, symbol, clipPath and the like), what is not
// displayed, and what is no line has no shape.

const (
	// MaxSize is how large a drawing may be, in bytes.
	MaxSize = 10 << 20
	// mostLegs bounds what is drawn, with what is drawn again by use.
	mostLegs = 200_000
	// mostPoints bounds the points of the straight parts that curves become.
	mostPoints = 2_000_000
	// mostVisits bounds how many elements are drawn, with those that are drawn again by use. One
	// whose attributes are long counts once more for each so many bytes.
	mostVisits    = 4 * mostElements
	bytesForVisit = 256
	// mostUses bounds how deep uses stand in each other.
	mostUses = 20
	// farthest bounds, in mm, how far from the corner of a drawing anything may lie: 100 m.
	farthest = 100_000
)

// Drawing is what is drawn in an SVG: in mm, real size, from the lower left corner of the
// drawing, x to the right and y up.
type Drawing struct {
	File   string  // as messages call it
	Shapes []Shape // in the order in which they are drawn
	// other says what an id stands for that has no shape, and where.
	other map[string]*element
}

// Shape is one line of a drawing. A path that is drawn in several strokes has as many.
type Shape struct {
	ID    string // "" where it has none
	Place fault.Place
	Line
	plain  string // its id, as it is compared
	within *scope
}

// scope is an element with an id, and those around it.
type scope struct {
	id     string
	around *scope
}

// In reports whether a shape has an id, or stands in something that has it: a group, an svg,
// or a use.
func (s Shape) In(id string) bool {
	if s.ID == id {
		return true
	}
	for at := s.within; at != nil; at = at.around {
		if at.id == id {
			return true
		}
	}
	return false
}

// Under returns every shape that has an id, or stands in what has it, in the order in which
// they are drawn.
func (d *Drawing) Under(id string) []Shape {
	var all []Shape
	for _, s := range d.Shapes {
		if s.In(id) {
			all = append(all, s)
		}
	}
	return all
}

// Read draws what stands in an SVG file; file is what messages call it. Nothing outside of the
// bytes is looked at. The error is a fault.List: what is no XML, or too large, ends it, and
// else it has all that is wrong.
func Read(file string, data []byte) (*Drawing, error) { return new(Reader).Read(file, data) }

// walk draws all that stands in the outermost element of a file.
func walk(file string, root *element) *walker {
	w := &walker{drawing: &Drawing{File: file, other: map[string]*element{}}, file: fault.Place{File: file}, ids: map[string]*element{}, told: map[string]bool{}, legs: mostLegs, points: mostPoints, visits: mostVisits}
	w.learn(root)
	w.page(root)
	return w
}

// TooLarge is the mistake of a drawing of more than MaxSize bytes.
func TooLarge(file string) *fault.Fault {
	return &fault.Fault{Place: fault.Place{File: file}, Cause: fmt.Sprintf("the drawing has more than %d MB", MaxSize>>20), Hint: "take pictures and what belongs to no piece out of it"}
}

func tooMuch() error {
	return &fault.Fault{Cause: "there is too much in the drawing", Hint: fmt.Sprintf("at most %d lines and curves are drawn, with those that are used again; take out what belongs to no piece", mostLegs)}
}
