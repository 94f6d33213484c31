package ink

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"strconv"
	"time"
	"unicode/utf16"

	"codeberg.org/go-pdf/fpdf"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: it alone touches the PDF library. Everything it is given is in mm
// with y up, as the PDF's own page is; 1 mm is 72/25.4 units (ISO 32000-1, 8.3.2.3;
// what is quoted of that standard here is from memory of it). Lines are written
// straight into the page: the library would round them to 0.01 units and begin the
// dashes of each anew.

// thousand is how finely a page unit is written: 0.001 units are 0.00035 mm.
const thousand = 1000

// PDF is a PDF being written: a Canvas.
type PDF struct {
	lib    *fpdf.Fpdf
	height float64 // of the page, in units
	buf    []byte  // what is not yet in the page
	layers map[mark.Role]int
	begins map[int][]string // what begins on a page, by its number
	rows   [256]bool        // of Unicode, of 256 letters each: those that the texts are of
	origin plane.Point      // where (0, 0) falls on the page, in mm
	scale  float64          // mm on the page to a mm drawn
}

var _ Canvas = (*PDF)(nil)

const (
	// language is the one that all words of the program are in; what a maker writes may be in
	// another.
	language = "en-GB"
	// family is what the library knows the fonts by.
	family = "go"
)

// Chapter is what a reader of a PDF finds in its contents, and turns to.
type Chapter struct {
	Title string
	Page  int // that it begins on, from 1
}

// NewPDF begins a PDF with one layer (ISO 32000-1, 8.11) for each role, and with chapters in the
// order of their pages; one whose page is not drawn is left out.
func NewPDF(on paper.Paper, title string, roles []mark.Role, chapters []Chapter) *PDF {
	lib := fpdf.NewCustom(&fpdf.InitType{
		UnitStr: "pt",
		Size:    fpdf.SizeType{Wd: on.Width / paper.Pt, Ht: on.Height / paper.Pt},
	})
	// The same input gives the same bytes: nothing of the clock, nothing in
	// the order of a map.
	lib.SetCatalogSort(true)
	lib.SetCreationDate(time.Unix(0, 0).UTC())
	lib.SetModificationDate(time.Unix(0, 0).UTC())
	lib.SetTitle(title, true)
	lib.SetSubject(howToPrint, true)
	lib.SetCreator(producer, true)
	lib.SetProducer(producer, true)
	lib.SetXmpMetadata(metadata(title))
	lib.SetLang(language)
	lib.SetCompression(false) // completed does it
	lib.SetMargins(0, 0, 0)
	lib.SetAutoPageBreak(false, 0)
	for _, f := range faces() {
		lib.AddUTF8FontFromBytes(family, f.name, f.data)
	}
	lib.SetFont(family, "", LeastType) // it writes the titles of chapters as it writes the font's letters
	pdf := &PDF{lib: lib, layers: map[mark.Role]int{}, begins: map[int][]string{}, scale: 1}
	for _, c := range chapters {
		pdf.begins[c.Page] = append(pdf.begins[c.Page], c.Title)
	}
	for _, role := range roles {
		pdf.layers[role] = lib.AddLayer(role.String(), true)
	}
	return pdf
}

// NewPage begins a new page of paper; (0, 0) is its lower left corner as it comes out of
// the printer.
func (pdf *PDF) NewPage(on paper.Paper) {
	pdf.flush()
	media, printed := fpdf.SizeType{Wd: on.Width / paper.Pt, Ht: on.Height / paper.Pt}, on.Printed.OrTrue()
	pdf.lib.AddPageFormat("P", media)
	pdf.lib.SetPageBox("trim", 0, 0, media.Wd, media.Ht) // nothing is cut off a page before it is used
	for _, title := range pdf.begins[pdf.lib.PageNo()] {
		pdf.lib.Bookmark(title, 0, 0)
	}
	pdf.height = media.Ht
	pdf.Place(plane.Point{}, 1)
	if !printed.IsTrue() {
		pdf.matrix(1/printed.Across, 0, 0, 1/printed.Down)
		pdf.do("0 0 cm")
	}
}

// Shift moves (0, 0) of the page, until Restore.
func (pdf *PDF) Shift(to plane.Point) {
	pdf.matrix(1, 0, 0, 1)
	pdf.at(to)
	pdf.do("cm")
}

// matrix writes the first four numbers of a matrix.
func (pdf *PDF) matrix(of ...float64) {
	for _, v := range of {
		pdf.buf = strconv.AppendFloat(pdf.buf, math.Round(v*matrixSteps)/matrixSteps, 'f', -1, 64)
		pdf.buf = append(pdf.buf, ' ')
	}
}

// Place says where (0, 0) of what is drawn from now on falls on the page, in
// mm, and how many mm on the page a mm drawn is.
func (pdf *PDF) Place(origin plane.Point, scale float64) {
	pdf.origin, pdf.scale = origin, scale
}

// flush hands what is written so far to the page.
func (pdf *PDF) flush() {
	if len(pdf.buf) > 0 {
		pdf.lib.RawWriteBuf(bytes.NewReader(pdf.buf))
		pdf.buf = pdf.buf[:0]
	}
}

// number writes a number, to 0.001, and a space.
func (pdf *PDF) number(v float64) {
	n := int64(math.Round(v * thousand))
	if n < 0 {
		pdf.buf = append(pdf.buf, '-')
		n = -n
	}
	pdf.buf = strconv.AppendInt(pdf.buf, n/thousand, 10)
	if part := n % thousand; part > 0 {
		pdf.buf = append(pdf.buf, '.')
		for ; part > 0; part = part * 10 % thousand {
			pdf.buf = append(pdf.buf, byte('0'+part*10/thousand))
		}
	}
	pdf.buf = append(pdf.buf, ' ')
}

// units writes lengths of mm on the page.
func (pdf *PDF) units(mm ...float64) {
	for _, v := range mm {
		pdf.number(v / paper.Pt)
	}
}

// at writes a place.
func (pdf *PDF) at(p plane.Point) {
	pdf.number((p.X*pdf.scale + pdf.origin.X) / paper.Pt)
	pdf.number((p.Y*pdf.scale + pdf.origin.Y) / paper.Pt)
}

// do writes an operator.
func (pdf *PDF) do(operator string) {
	pdf.buf = append(append(pdf.buf, operator...), '\n')
}

// Save keeps pen, ink, clip and shift until Restore.
func (pdf *PDF) Save() { pdf.do("q") }

// Restore brings back what the last Save kept.
func (pdf *PDF) Restore() { pdf.do("Q") }

// Clip keeps what follows inside the box, until Restore.
func (pdf *PDF) Clip(b plane.Box) {
	pdf.Box(b)
	pdf.do("W n")
}

// Ink is the colour of what is filled from now on, and of text.
func (pdf *PDF) Ink(c Colour) {
	for _, v := range c {
		pdf.number(v)
	}
	pdf.do("rg")
}

// Pen takes up a pen. The dashes begin at the start of each path.
func (pdf *PDF) Pen(p Pen) {
	for _, v := range p.Colour {
		pdf.number(v)
	}
	pdf.do("RG")
	pdf.units(p.Width)
	pdf.do("w")
	ends := 0.0
	if p.Round() {
		ends = 1
	}
	pdf.number(ends)
	pdf.do("J 1 j")
	if p.period() > 0 {
		pdf.Dashes(p, 0)
	}
}

// Dashes begins the dashes of a pen phase mm into their pattern.
func (pdf *PDF) Dashes(p Pen, phase float64) {
	pdf.buf = append(pdf.buf, '[')
	pdf.units(p.Dashes()...)
	pdf.buf = append(pdf.buf, "] "...)
	pdf.units(phase)
	pdf.do("d")
}

// Path writes a line from point to point; Stroke or Fill shows it.
func (pdf *PDF) Path(p plane.Path) {
	for i, q := range p {
		pdf.at(q)
		if i == 0 {
			pdf.do("m")
		} else {
			pdf.do("l")
		}
	}
}

// Stroke draws what is written with the pen.
func (pdf *PDF) Stroke() { pdf.do("S") }

// Fill fills it with the ink.
func (pdf *PDF) Fill() { pdf.do("f") }

// Box writes a rectangle; Stroke, Fill or Clip uses it.
func (pdf *PDF) Box(b plane.Box) {
	pdf.at(b.Min)
	pdf.number(b.Width() * pdf.scale / paper.Pt)
	pdf.number(b.Height() * pdf.scale / paper.Pt)
	pdf.do("re")
}

// Between fills what lies between two boxes, the inner one inside the outer.
func (pdf *PDF) Between(outer, inner plane.Box) {
	pdf.Box(outer)
	pdf.Box(inner)
	pdf.do("f*")
}

// roundness is how far the handles of a quarter circle's curve reach, in
// radii (the usual value, off by less than 0.03 % of the radius).
const roundness = 0.5523

// Circle writes a circle; Stroke or Fill shows it.
func (pdf *PDF) Circle(centre plane.Point, radius float64) {
	step := plane.Point{X: radius}
	pdf.at(centre.Add(step))
	pdf.do("m")
	for range 4 {
		next := step.Left()
		pdf.at(centre.Add(step).Add(next.Mul(roundness)))
		pdf.at(centre.Add(next).Add(step.Mul(roundness)))
		pdf.at(centre.Add(next))
		pdf.do("c")
		step = next
	}
}

// matrixSteps is how finely the direction of a text and the scale of a page are
// written: 5 m are off by 0.0001 mm at most.
const matrixSteps = 1e8

// Text writes one line of text. Its size is in points on the page, whatever the scale.
func (pdf *PDF) Text(at, u plane.Point, s Style, text string) {
	if text == "" {
		return
	}
	pdf.Save()
	pdf.Ink(s.Colour)
	// The library writes text at a place of its own reckoning; the page is
	// moved and turned under it instead.
	pdf.matrix(u.X, u.Y, -u.Y, u.X)
	pdf.at(at)
	pdf.do("cm")
	pdf.flush()
	for _, r := range text {
		pdf.rows[r>>8] = true
	}
	cut := faces()[s.Weight]
	pdf.lib.SetFont(family, cut.name, s.Size)
	if parts, _ := cut.partsOf(text); len(parts) == 1 {
		pdf.lib.Text(0, pdf.height, text)
	} else {
		pdf.writeParts(parts, s, text)
	}
	pdf.Restore()
}

// writeParts writes a text of several parts, and what it reads as where it is searched for or
// copied (ISO 32000-1, 14.9.4).
func (pdf *PDF) writeParts(parts []part, s Style, text string) {
	pdf.buf = append(pdf.buf, "/Span <</ActualText <FEFF"...)
	for _, letter := range utf16.Encode([]rune(text)) {
		pdf.buf = fmt.Appendf(pdf.buf, "%04X", letter)
	}
	pdf.do(">>> BDC")
	pdf.flush()
	for _, p := range parts {
		for _, r := range p.text {
			pdf.rows[r>>8] = true
		}
		pdf.lib.SetFont(family, faces()[s.Weight].name, s.Size*p.size)
		pdf.lib.Text(s.Size*p.right, pdf.height-s.Size*p.up, p.text)
	}
	pdf.do("EMC")
}

// Layer puts what follows into the layer of a role, until EndLayer.
func (pdf *PDF) Layer(role mark.Role) {
	pdf.flush()
	pdf.lib.BeginLayer(pdf.layers[role])
}

// EndLayer ends the layer.
func (pdf *PDF) EndLayer() {
	pdf.flush()
	pdf.lib.EndLayer()
}

// Mark does nothing: lines of a PDF have no names.
func (pdf *PDF) Mark(piece, line string) {}

// EndMark does nothing either.
func (pdf *PDF) EndMark() {}

// Finish ends the PDF and writes it.
func (pdf *PDF) Finish(w io.Writer) error {
	pdf.flush()
	if err := pdf.lib.Output(completing{pdf, w}); err != nil {
		return fmt.Errorf("the pdf could not be made: %w", err)
	}
	return nil
}

// completing is where the library writes a PDF, which it does at once: it is completed before it
// goes on to where it is wanted.
type completing struct {
	pdf *PDF
	to  io.Writer
}

// Write completes a PDF, and writes that.
func (c completing) Write(data []byte) (int, error) {
	whole, err := completed(data, len(c.pdf.layers) > 0, c.pdf.rows)
	if err != nil {
		return 0, err
	}
	if _, err := c.to.Write(whole); err != nil {
		return 0, err
	}
	return len(data), nil
}
