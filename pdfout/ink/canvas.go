package ink

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: all that is ever drawn is drawn with these few strokes and
// letters, whatever the pages are made of in the end. Lengths are in mm, y is up. A
// shape is laid out first, in one part or more, and then stroked, filled or clipped
// to, all its parts at once.
//
// An output is added as a type with these methods and Finish, in a file beside pdf.go, and a
// function beside onPDF in pdfout/draw.go, which begins it: how a document begins and ends is no
// Canvas's affair.

// Canvas is what pages are drawn on, one after the other.
type Canvas interface {
	// NewPage begins a page of paper; (0, 0) is its lower left corner as it comes out of
	// the printer.
	NewPage(on paper.Paper)
	// Place says where (0, 0) of what is drawn from now on falls on the page, and how
	// many mm on the page a mm drawn is. Pens and letters keep their sizes.
	Place(origin plane.Point, scale float64)
	// Layer puts what follows into the layer of a role, until EndLayer. A layer may
	// be hidden on a screen.
	Layer(role mark.Role)
	// EndLayer ends the layer. Layers do not lie in one another.
	EndLayer()
	// Mark says that what is stroked until EndMark is a line of a piece in the layer's role,
	// and what piece and line are known by: the line may have "" for that. An output that
	// has no names leaves them.
	Mark(piece, line string)
	// EndMark ends the line.
	EndMark()

	// Save keeps the pen, the ink, the clip and the shift until Restore.
	Save()
	// Restore brings back what the last Save kept. The two come in pairs.
	Restore()
	// Shift moves (0, 0) of the page to a place of it.
	Shift(to plane.Point)
	// Clip keeps what follows inside a box.
	Clip(b plane.Box)
	// Pen takes up a pen; its dashes begin with each line.
	Pen(p Pen)
	// Dashes lets the dashes of a pen begin some mm into their pattern.
	Dashes(p Pen, phase float64)
	// Ink is the colour of what is filled.
	Ink(c Colour)

	// Path lays out a line from point to point.
	Path(p plane.Path)
	// Box lays out a rectangle.
	Box(b plane.Box)
	// Circle lays out a circle.
	Circle(centre plane.Point, radius float64)
	// Stroke draws what is laid out with the pen.
	Stroke()
	// Fill fills it with the ink.
	Fill()
	// Between fills what lies between two boxes, the inner one inside the outer.
	Between(outer, inner plane.Box)

	// Text draws one line of text. Its base line begins at a place and runs along the
	// step u of length 1.
	Text(at, u plane.Point, s Style, text string)
}

// farthest bounds the coordinates of a piece, in mm: 1,000 km. Beyond it the
// arithmetic would lose parts of a millimetre.
const farthest = 1e9

// IsPlace reports whether a place is one, and not beyond farthest.
func IsPlace(p plane.Point) bool {
	return math.Abs(p.X) <= farthest && math.Abs(p.Y) <= farthest
}
