package ink

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"

	"tuckmark/marking/mark"
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

// SVG is an SVG being drawn: a Canvas of one page.
type SVG struct {
	title       string
	pages       int
	page, words []string // elements, in the order in which they are drawn
	marks       svgMarks
	layer       *mark.Role // nil outside of all
	svgDrawing
}

var _ Canvas = (*SVG)(nil)

// NewSVG begins an SVG with a title.
func NewSVG(title string) *SVG {
	s := &SVG{title: title, marks: newSVGMarks(svgPage, svgWords)}
	s.svgDrawing = svgDrawing{put: s.put, pathOf: svgShape.d}
	return s
}

// NewPage begins the page, of paper as it comes out of a printer. A second one makes the SVG
// one that cannot be written.
func (s *SVG) NewPage(on paper.Paper) {
	s.pages++
	s.begin(on.Size())
}

// Layer begins the layer of a role: what is no line of a piece in it goes to the words.
func (s *SVG) Layer(role mark.Role) { s.layer = &role }

// EndLayer ends the layer.
func (s *SVG) EndLayer() { s.layer = nil }

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
	s.put(svgElement("path", "d", s.pathOf(shape, s.size.Y)) + svgStroke(s.now.pen) + svgPhase(s.now.phase) + clip + "/>")
}

// put adds an element that is no line of a piece.
func (s *SVG) put(element string) {
	if s.layer != nil {
		s.words = append(s.words, element)
	} else {
		s.page = append(s.page, element)
	}
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
	out.WriteString(s.clipPaths())
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
