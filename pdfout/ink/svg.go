package ink

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: an SVG (Scalable Vector Graphics 1.1, from memory) is one page, in mm:
// its width and its height are, and the viewBox counts them, so that whatever opens it has
// its real size. What is drawn has its y turned over here; nothing stands under a transform
// but a text that is turned. All is in presentation attributes, which more programs read than
// style sheets.
//
// The lines of the pieces are by themselves (svgmarks.go): each is there once and whole. All
// else is in two groups, to be hidden or left where only lines are wanted: the page, under
// the lines, and over them the words that stand at lines, with heads and flags.

// The ids of those groups.
const (
	svgPage  = "page"
	svgWords = "words"
)

// svgFonts are the family that texts are set in, and what stands in for it.
const svgFonts = "Go, Arial, Helvetica, sans-serif"

// SVG is an SVG being drawn: a Canvas of one page.
type SVG struct {
	title       string
	pages       int
	size        plane.Point // of the page, in mm
	page, words []string    // elements, in the order in which they are drawn
	marks       svgMarks
	clips       []plane.Box // on the page, that hide part of something
	layer       *mark.Role  // nil outside of all
	origin      plane.Point // where (0, 0) falls on the page, in mm
	scale       float64     // mm on the page to a mm drawn
	now         svgState
	saved       []svgState
	shape       svgShape // what is laid out
}

// svgState is what Save keeps and Restore brings back.
type svgState struct {
	pen   Pen
	phase float64 // of its dashes, in mm
	ink   Colour
	clip  plane.Box // on the page
	shift plane.Point
}

var _ Canvas = (*SVG)(nil)

// NewSVG begins an SVG with a title.
func NewSVG(title string) *SVG {
	return &SVG{title: title, marks: newSVGMarks(svgPage, svgWords)}
}

// NewPage begins the page, of paper as it comes out of a printer. A second one makes the SVG
// one that cannot be written.
func (s *SVG) NewPage(on paper.Paper) {
	s.pages++
	s.size = on.Size()
	everywhere := plane.Point{X: math.Inf(1), Y: math.Inf(1)}
	s.now = svgState{clip: plane.Box{Min: everywhere.Mul(-1), Max: everywhere}}
	s.Place(plane.Point{}, 1)
}

// Place says where (0, 0) of what is drawn from now on falls on the page, in mm, and how many
// mm on the page a mm drawn is.
func (s *SVG) Place(origin plane.Point, scale float64) { s.origin, s.scale = origin, scale }

// Layer begins the layer of a role: what is no line of a piece in it goes to the words.
func (s *SVG) Layer(role mark.Role) { s.layer = &role }

// EndLayer ends the layer.
func (s *SVG) EndLayer() { s.layer = nil }

// Save keeps pen, ink, clip and shift.
func (s *SVG) Save() { s.saved = append(s.saved, s.now) }

// Restore brings back what was saved last.
func (s *SVG) Restore() {
	s.now, s.saved = s.saved[len(s.saved)-1], s.saved[:len(s.saved)-1]
}

// Shift moves all that follows, in mm on the page.
func (s *SVG) Shift(to plane.Point) { s.now.shift = s.now.shift.Add(to) }

// Clip lets what follows show in a box alone, and in the clip there is.
func (s *SVG) Clip(b plane.Box) {
	c := &s.now.clip
	low, high := s.at(b.Min), s.at(b.Max)
	c.Min = plane.Point{X: max(c.Min.X, low.X), Y: max(c.Min.Y, low.Y)}
	c.Max = plane.Point{X: min(c.Max.X, high.X), Y: min(c.Max.Y, high.Y)}
}

// Pen takes up a pen, whose dashes begin with the line.
func (s *SVG) Pen(p Pen) { s.now.pen, s.now.phase = p, 0 }

// Dashes takes the dashes of a pen from some mm into them.
func (s *SVG) Dashes(_ Pen, phase float64) { s.now.phase = phase }

// Ink takes what is filled with.
func (s *SVG) Ink(c Colour) { s.now.ink = c }

// at is the place on the page, y up, of a place that is drawn.
func (s *SVG) at(p plane.Point) plane.Point {
	return p.Mul(s.scale).Add(s.origin).Add(s.now.shift)
}

// Path lays out a line; one that comes back to its beginning is closed.
func (s *SVG) Path(p plane.Path) {
	on := make(plane.Path, len(p))
	for i, q := range p {
		on[i] = s.at(q)
	}
	s.shape.paths = append(s.shape.paths, on)
}

// Box lays out a rectangle.
func (s *SVG) Box(b plane.Box) { s.Path(b.Outline()) }

// Circle lays out a circle.
func (s *SVG) Circle(centre plane.Point, radius float64) {
	s.shape.rings = append(s.shape.rings, svgRing{s.at(centre), radius * s.scale})
}

// Mark begins a line of a piece.
func (s *SVG) Mark(piece, line string) {
	if s.layer != nil {
		s.marks.begin(piece, *s.layer, line)
	}
}

// EndMark ends it.
func (s *SVG) EndMark() { s.marks.end() }

// Stroke draws along what is laid out.
func (s *SVG) Stroke() {
	shape := s.takeShape()
	clip := s.clipped(shape.bounds().Grown(s.now.pen.Width / 2))
	if s.marks.begun() {
		s.marks.stroke(shape, s.now.pen, s.now.phase, clip)
		return
	}
	s.put(svgElement("path", "d", shape.d(s.size.Y)) + svgStroke(s.now.pen) + svgPhase(s.now.phase) + clip + "/>")
}

// Fill fills what is laid out.
func (s *SVG) Fill() { s.fill() }

// Between fills what lies between two boxes, one in the other.
func (s *SVG) Between(outer, inner plane.Box) {
	s.Box(outer)
	s.Box(inner)
	s.fill("fill-rule", "evenodd")
}

// fill fills what is laid out, with more attributes.
func (s *SVG) fill(more ...string) {
	shape := s.takeShape()
	s.put(svgElement("path", "d", shape.d(s.size.Y), "fill", s.now.ink.svg()) + svgAttributes(more...) + s.clipped(shape.bounds()) + "/>")
}

// takeShape takes what is laid out.
func (s *SVG) takeShape() svgShape {
	shape := s.shape
	s.shape = svgShape{}
	return shape
}

// clipped is the attribute that clips what has some bounds on the page; "" where all shows.
func (s *SVG) clipped(bounds plane.Box) string {
	clip := s.now.clip
	if bounds.Empty() || clip.Holds(bounds.Min) && clip.Holds(bounds.Max) {
		return ""
	}
	n := slices.Index(s.clips, clip)
	if n < 0 {
		n, s.clips = len(s.clips), append(s.clips, clip)
	}
	return fmt.Sprintf(` clip-path="url(#%s)"`, svgClip(n))
}

// svgClip is the id of a clip.
func svgClip(n int) string { return "clip-" + strconv.Itoa(n+1) }

// put adds an element that is no line of a piece.
func (s *SVG) put(element string) {
	if s.layer != nil {
		s.words = append(s.words, element)
	} else {
		s.page = append(s.page, element)
	}
}

// Text writes a line of text. Programs that can let it have the length it is planned with,
// whatever font they set it in.
func (s *SVG) Text(at, u plane.Point, style Style, text string) {
	if text == "" {
		return
	}
	on := s.at(at)
	x, y, size := on.X, s.size.Y-on.Y, style.Size*paper.Pt
	face := faces()[style.Weight]
	parts, ems := face.partsOf(text)
	along, up := u.Mul(ems*size), u.Left().Mul(size)
	bounds := plane.Box{Min: on, Max: on}.With(on.Add(along)).With(on.Add(up)).With(on.Add(along).Add(up))
	attributes := []string{"x", svgNumber(x), "y", svgNumber(y), "font-size", svgNumber(size), "fill", style.Colour.svg()}
	if style.Weight == Bold {
		attributes = append(attributes, "font-weight", "bold")
	}
	if u != (plane.Point{X: 1}) {
		turn := math.Round(math.Atan2(-u.Y, u.X)*180/math.Pi*1e4) / 1e4
		attributes = append(attributes, "transform", fmt.Sprintf("rotate(%v %s %s)", turn+0, svgNumber(x), svgNumber(y)))
	}
	if len(parts) == 1 {
		attributes = append(attributes, "textLength", svgNumber(ems*size), "lengthAdjust", "spacingAndGlyphs")
		s.put(svgElement("text", attributes...) + s.clipped(bounds) + ">" + svgEscaped(text) + "</text>")
		return
	}
	whole := svgElement("text", append(attributes, "xml:space", "preserve")...) + s.clipped(bounds) + ">"
	var before part
	end := 0.0
	for _, p := range parts {
		// By steps from where the part before ends: in another font they must not meet.
		whole += svgElement("tspan", "dx", svgNumber((p.right-end)*size), "dy", svgNumber((before.up-p.up)*size), "font-size", svgNumber(p.size*size)) +
			">" + svgEscaped(p.text) + "</tspan>"
		before, end = p, p.right+p.size*face.ems(p.text)
	}
	s.put(whole + "</text>")
}

// Finish writes the SVG.
func (s *SVG) Finish(w io.Writer) error {
	if s.pages != 1 {
		return fmt.Errorf("an svg is one page, and %d were drawn", s.pages)
	}
	var out bytes.Buffer
	width, height := svgNumber(s.size.X), svgNumber(s.size.Y)
	out.WriteString(xml.Header)
	fmt.Fprintln(&out, svgElement("svg", "xmlns", "http://www.w3.org/2000/svg", "version", "1.1", "xml:lang", "en",
		"width", width+"mm", "height", height+"mm", "viewBox", "0 0 "+width+" "+height,
		"fill", "none", "stroke-linejoin", "round", "font-family", svgFonts)+">")
	fmt.Fprintf(&out, "<title>%s</title>\n", svgEscaped(s.title))
	for i, c := range s.clips {
		box := svgShape{paths: []plane.Path{c.Outline()}}
		fmt.Fprintf(&out, "%s>%s/></clipPath>\n", svgElement("clipPath", "id", svgClip(i)), svgElement("path", "d", box.d(s.size.Y)))
	}
	writeSVGGroup(&out, svgPage, s.page)
	s.marks.write(&out, s.size.Y)
	writeSVGGroup(&out, svgWords, s.words)
	out.WriteString("</svg>\n")
	_, err := w.Write(out.Bytes())
	return err
}

// writeSVGGroup writes elements in a group.
func writeSVGGroup(out *bytes.Buffer, id string, elements []string) {
	fmt.Fprintln(out, svgElement("g", "id", id)+">")
	for _, e := range elements {
		fmt.Fprintln(out, e)
	}
	fmt.Fprintln(out, "</g>")
}
