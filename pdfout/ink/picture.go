package ink

import (
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a picture is written as SVG elements that stand in the page of a browser,
// among those of others. It is short, since it is sent anew whenever its file is saved: places
// are to 0.01 mm, counted from point to point, and a pen is told once for all lines in a row
// that are drawn with it. It has no style of its own (CSP): a style sheet may go by these.
//
//	g[data-role]            all that belongs to a role: lines, names, letters, flags
//	g.bold, g.middle, g.fine  lines of one pen, by how wide it is: none is lost from afar
//	path[data-piece][data-line]  a line, whole: by piece and line as the file has them, or ""
//
// The d of a path has M, with a place, and then l, with steps, which z may follow; rings are M
// and two arcs. Lines of one name in a row may be one path, with more than one M.

// Picture is such a picture being drawn: a Canvas.
type Picture struct {
	svgDrawing
	out         strings.Builder // elements
	words       strings.Builder // of the role's layer: over its lines
	inLayer     bool
	pen         string // the beginning of the group of lines that is open; "" for none
	piece, line string // of the line that has begun
	begun       bool   // it has
	path        string // the beginning of the path that is open; "" for none
}

var _ Canvas = (*Picture)(nil)

// NewPicture begins a picture of a size in mm; (0, 0) is its lower left corner. Its ids have a
// prefix, which no other picture of the same page has.
func NewPicture(prefix string, size plane.Point) *Picture {
	p := &Picture{}
	p.svgDrawing = svgDrawing{put: p.put, pathOf: svgShape.steps, prefix: prefix + "-"}
	p.begin(size)
	return p
}

// NewPage gives the picture the size of paper, and begins anew.
func (p *Picture) NewPage(on paper.Paper) {
	p.out.Reset()
	p.clips = nil
	p.begin(on.Size())
}

// Size is how large the picture is, in mm.
func (p *Picture) Size() plane.Point { return p.size }

// Layer begins the group of a role.
func (p *Picture) Layer(role mark.Role) {
	p.endLines()
	p.inLayer = true
	p.out.WriteString(svgElement("g", "data-role", role.String()) + ">\n")
}

// EndLayer ends it.
func (p *Picture) EndLayer() {
	p.endLines()
	p.inLayer = false
	p.out.WriteString(p.words.String())
	p.words.Reset()
	p.out.WriteString("</g>\n")
}

// Mark begins a line of a piece.
func (p *Picture) Mark(piece, line string) { p.piece, p.line, p.begun = piece, line, true }

// EndMark ends it.
func (p *Picture) EndMark() { p.begun = false }

// Stroke draws along what is laid out.
func (p *Picture) Stroke() {
	shape, pen := p.takeShape(), p.now.pen
	if group := svgElement("g", "class", pen.breadth()) + svgStroke(pen) + ">\n"; group != p.pen {
		p.endLines()
		p.out.WriteString(group)
		p.pen = group
	}
	path := "<path"
	if p.begun {
		path += svgAttributes("data-piece", p.piece, "data-line", p.line)
	}
	path += svgPhase(p.now.phase) + p.clipped(shape.bounds().Grown(pen.Width/2))
	if path != p.path {
		p.endPath()
		p.out.WriteString(path + ` d="`)
		p.path = path
	}
	p.out.WriteString(p.pathOf(shape, p.size.Y))
}

// endPath ends the path that is open.
func (p *Picture) endPath() {
	if p.path != "" {
		p.out.WriteString("\"/>\n")
		p.path = ""
	}
}

// endLines ends the group of lines that is open.
func (p *Picture) endLines() {
	p.endPath()
	if p.pen != "" {
		p.out.WriteString("</g>\n")
		p.pen = ""
	}
}

// put adds an element that is no line.
func (p *Picture) put(element string) {
	out := &p.words
	if !p.inLayer {
		p.endLines()
		out = &p.out
	}
	out.WriteString(element)
	out.WriteByte('\n')
}

// Elements are the elements of the picture, in a group, with y counted down from its upper edge.
func (p *Picture) Elements() string {
	p.endLines()
	return svgElement("g", "fill", "none", "stroke-linejoin", "round", "font-family", svgFonts) + ">\n" + p.clipPaths() + p.out.String() + "</g>\n"
}
