package seen

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a canvas that keeps what is drawn on it, in the order in which it
// is drawn, as Read finds it in a PDF.

// Canvas is an ink.Canvas that nothing is printed from.
type Canvas struct {
	pages  []Page
	now    drawing
	saved  []drawing
	parts  []plane.Path
	boxes  []plane.Box
	curves int
	layer  string
	origin plane.Point // where (0, 0) falls on the page
	scale  float64
}

// drawing is what Save keeps and Restore brings back.
type drawing struct {
	path  Path // pen, ink and clip
	shift plane.Point
}

var _ ink.Canvas = (*Canvas)(nil)

// Pages are the pages drawn so far.
func (c *Canvas) Pages() []Page { return c.pages }

func (c *Canvas) page() *Page { return &c.pages[len(c.pages)-1] }

// at is the place on the page of a place that is drawn.
func (c *Canvas) at(p plane.Point) plane.Point {
	return p.Mul(c.scale).Add(c.origin).Add(c.now.shift)
}

// box is the same for a box.
func (c *Canvas) box(b plane.Box) plane.Box { return plane.Box{Min: c.at(b.Min), Max: c.at(b.Max)} }

// NewPage begins a page of paper, with nothing set and nothing drawn.
func (c *Canvas) NewPage(on paper.Paper) {
	size := on.Size()
	c.pages = append(c.pages, Page{Width: size.X, Height: size.Y})
	c.now = drawing{path: Path{Clip: plane.Box{Max: size}}}
	c.Place(plane.Point{}, 1)
}

// Place sets where (0, 0) falls on the page, and how much larger things are there.
func (c *Canvas) Place(origin plane.Point, scale float64) { c.origin, c.scale = origin, scale }

// Layer begins the layer of a role.
func (c *Canvas) Layer(role mark.Role) { c.layer = role.String() }

// EndLayer ends the layer.
func (c *Canvas) EndLayer() { c.layer = "" }

// Mark does nothing: what is read back from a PDF has no names.
func (c *Canvas) Mark(piece, line string) {}

// EndMark does nothing either.
func (c *Canvas) EndMark() {}

// Save keeps pen, ink, clip and shift.
func (c *Canvas) Save() { c.saved = append(c.saved, c.now) }

// Restore brings back what was saved last.
func (c *Canvas) Restore() {
	c.now, c.saved = c.saved[len(c.saved)-1], c.saved[:len(c.saved)-1]
}

// Shift moves all that follows, in mm on the page.
func (c *Canvas) Shift(to plane.Point) { c.now.shift = c.now.shift.Add(to) }

// Clip lets what follows show in a box alone, and in the clip there is.
func (c *Canvas) Clip(b plane.Box) { c.now.path.Clip = overlap(c.now.path.Clip, c.box(b)) }

// Pen takes a pen, whose dashes begin with the line.
func (c *Canvas) Pen(p ink.Pen) {
	q := &c.now.path
	q.Width, q.Stroke, q.Round, q.Dashes, q.Phase = p.Width, p.Colour, p.Round(), p.Dashes(), 0
}

// Dashes takes the dashes of a pen from some mm along them.
func (c *Canvas) Dashes(p ink.Pen, phase float64) {
	c.now.path.Dashes, c.now.path.Phase = p.Dashes(), phase
}

// Ink takes what is filled with.
func (c *Canvas) Ink(colour ink.Colour) { c.now.path.Fill = colour }

// Path lays out a path, to be stroked or filled.
func (c *Canvas) Path(p plane.Path) {
	var part plane.Path
	for _, q := range p {
		part = append(part, c.at(q))
	}
	c.parts = append(c.parts, part)
}

// Box lays out a box.
func (c *Canvas) Box(b plane.Box) { c.boxes = append(c.boxes, c.box(b)) }

// Circle lays out a circle as a PDF has it: four curves.
func (c *Canvas) Circle(centre plane.Point, radius float64) {
	step := plane.Point{X: radius}
	ring := plane.Path{c.at(centre.Add(step))}
	for range 4 {
		step = step.Left()
		ring = append(ring, c.at(centre.Add(step)))
		c.curves++
	}
	c.parts = append(c.parts, ring)
}

// Stroke draws along what is laid out.
func (c *Canvas) Stroke() { c.paint(Stroked) }

// Fill fills what is laid out.
func (c *Canvas) Fill() { c.paint(Filled) }

// Between fills what lies between two boxes, one in the other.
func (c *Canvas) Between(outer, inner plane.Box) {
	c.Box(outer)
	c.Box(inner)
	c.paint(Framed)
}

// paint puts what is laid out on the page.
func (c *Canvas) paint(how Painting) {
	path := c.now.path
	path.Painted, path.Parts, path.Curves, path.Boxes, path.Layer = how, c.parts, c.curves, c.boxes, c.layer
	c.page().Paths = append(c.page().Paths, path)
	c.parts, c.boxes, c.curves = nil, nil, 0
}

// Text writes a text whose base line begins at a place and runs along u.
func (c *Canvas) Text(at, u plane.Point, s ink.Style, text string) {
	if text != "" {
		c.page().Texts = append(c.page().Texts, Text{text, c.at(at), u, s.Size, s.Weight == ink.Bold, c.layer, s.Colour})
	}
}
