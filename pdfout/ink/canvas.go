package ink

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: all that is ever drawn is drawn with these few strokes and
// letters, whatever the pages are made of in the end. Lengths are in mm, y is up. A
// shape is laid out first, in one part or more, and then stroked, filled or clipped
// to, all its parts at once.

// Canvas is what pages are drawn on, one after the other.
type Canvas interface {
	// NewPage begins a page of a size as it comes out of the printer; (0, 0) is its
	// lower left corner.
	NewPage(size plane.Point)
	// Place says where (0, 0) of what is drawn from now on falls on the page, and how
	// many mm on the page a mm drawn is. Pens and letters keep their sizes.
	Place(origin plane.Point, scale float64)
	// Layer puts what follows into the layer of a role, until EndLayer. A layer may
	// be hidden on a screen.
	Layer(role mark.Role)
	EndLayer()

	// Save keeps the pen, the ink, the clip and the shift until Restore.
	Save()
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

// StrokeEach draws lines with the pen taken up, each for itself.
func StrokeEach(d Canvas, lines ...plane.Path) {
	for _, line := range lines {
		d.Path(line)
		d.Stroke()
	}
}

// DrawLines draws lines with a pen, and leaves the canvas as it was.
func DrawLines(d Canvas, p Pen, lines ...plane.Path) {
	d.Save()
	d.Pen(p)
	StrokeEach(d, lines...)
	d.Restore()
}

// DrawRuns draws the parts of a line that show, with the pen taken up. Dashes begin
// where the line begins, not where the page does, so that they are the same on both
// sides of a join.
func DrawRuns(d Canvas, p Pen, runs []plane.Run) {
	period := p.period()
	for _, run := range runs {
		if period > 0 {
			d.Dashes(p, math.Mod(run.Start, period))
		}
		StrokeEach(d, run.Path)
	}
}

// DrawRings draws a circle round every point of a path that shows in a window, with
// the pen taken up.
func DrawRings(d Canvas, p Pen, points plane.Path, window plane.Box) {
	near := window.Grown(p.Ring())
	for _, q := range points {
		if near.Holds(q) {
			d.Circle(q, p.Ring())
			d.Stroke()
		}
	}
}

// Write puts text at a place of a page, from left to right.
func Write(d Canvas, at plane.Point, s Style, text string) {
	d.Text(at, plane.Point{X: 1}, s, text)
}

// WriteBefore is write with the text ending at a place.
func WriteBefore(d Canvas, at plane.Point, s Style, text string) {
	at.X -= s.Width(text)
	Write(d, at, s, text)
}

// WriteMiddle is write with the middle of the text's letters at a place.
func WriteMiddle(d Canvas, at plane.Point, s Style, text string) {
	at.X -= s.Width(text) / 2
	at.Y -= s.Ems((ascent - descent/2) / 2)
	Write(d, at, s, text)
}

// FrameWidth is how thick a check square's frame is, in mm.
const FrameWidth = 0.3

// DrawCheckSquare draws the frame of a check square with its lower left corner at a
// place. It is filled: a stroked one would be wider by its line.
func DrawCheckSquare(d Canvas, corner plane.Point, side float64) {
	outer := plane.Box{Min: corner, Max: corner.Add(plane.Point{X: side, Y: side})}
	d.Save()
	d.Ink(Black())
	d.Between(outer, outer.Grown(-FrameWidth))
	d.Restore()
}

// farthest bounds the coordinates of a piece, in mm: 1,000 km. Beyond it the
// arithmetic would lose parts of a millimetre.
const farthest = 1e9

// IsPlace reports whether a place is one, and not beyond farthest.
func IsPlace(p plane.Point) bool {
	return math.Abs(p.X) <= farthest && math.Abs(p.Y) <= farthest
}
