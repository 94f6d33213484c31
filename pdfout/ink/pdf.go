package ink

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"time"

	"github.com/go-pdf/fpdf"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: it alone touches the PDF library. Everything it is
// given is in mm with y up, as the PDF's own page is; 1 mm is 72/25.4 units
// (ISO 32000-1, 8.3.2.3; what is quoted of that standard here is from memory of it).
// Lines are written straight into the page: the
// library would round them to 0.01 units and begin the dashes of each anew.

// thousand is how finely a page unit is written: 0.001 units are 0.00035 mm.
const thousand = 1000

// PDF is a PDF being written: a Canvas.
type PDF struct {
	lib    *fpdf.Fpdf
	height float64 // of the page, in units
	// printed is what the printer makes of a mm: everything is given as it is to
	// come out, and written so that it does.
	printed paper.Scale
	buf     []byte // what is not yet in the page
	layers  map[mark.Role]int
	origin  plane.Point // where (0, 0) falls on the page, in mm
	scale   float64     // mm on the page to a mm drawn
}

var _ Canvas = (*PDF)(nil)

// NewPDF begins a PDF with one layer (ISO 32000-1, 8.11) for each role.
func NewPDF(p paper.Paper, title string, roles []mark.Role) *PDF {
	pdf := fpdf.NewCustom(&fpdf.InitType{
		UnitStr: "pt",
		Size:    fpdf.SizeType{Wd: p.Width / paper.Pt, Ht: p.Height / paper.Pt},
	})
	// The same input gives the same bytes: nothing of the clock, nothing in
	// the order of a map.
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(time.Unix(0, 0).UTC())
	pdf.SetModificationDate(time.Unix(0, 0).UTC())
	pdf.SetTitle(title, true)
	pdf.SetCreator("tuckmark", true)
	pdf.SetLang("en")
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	for _, f := range faces() {
		pdf.AddUTF8FontFromBytes("go", f.name, f.data)
	}
	d := &PDF{lib: pdf, printed: p.Printed.OrTrue(), layers: map[mark.Role]int{}, scale: 1}
	for _, role := range roles {
		d.layers[role] = pdf.AddLayer(role.String(), true)
	}
	return d
}

// NewPage begins a new page of a size as it comes out of the printer; (0, 0) is its
// lower left corner.
func (d *PDF) NewPage(size plane.Point) {
	d.flush()
	media := fpdf.SizeType{Wd: size.X / d.printed.Across / paper.Pt, Ht: size.Y / d.printed.Down / paper.Pt}
	d.lib.AddPageFormat("P", media)
	d.height = media.Ht
	d.Place(plane.Point{}, 1)
	if !d.printed.IsTrue() {
		d.matrix(1/d.printed.Across, 0, 0, 1/d.printed.Down)
		d.do("0 0 cm")
	}
}

// Shift moves (0, 0) of the page, until Restore.
func (d *PDF) Shift(to plane.Point) {
	d.matrix(1, 0, 0, 1)
	d.at(to)
	d.do("cm")
}

// matrix writes the first four numbers of a matrix.
func (d *PDF) matrix(of ...float64) {
	for _, v := range of {
		d.buf = strconv.AppendFloat(d.buf, math.Round(v*matrixSteps)/matrixSteps, 'f', -1, 64)
		d.buf = append(d.buf, ' ')
	}
}

// Place says where (0, 0) of what is drawn from now on falls on the page, in
// mm, and how many mm on the page a mm drawn is.
func (d *PDF) Place(origin plane.Point, scale float64) {
	d.origin, d.scale = origin, scale
}

// flush hands what is written so far to the page.
func (d *PDF) flush() {
	if len(d.buf) > 0 {
		d.lib.RawWriteBuf(bytes.NewReader(d.buf))
		d.buf = d.buf[:0]
	}
}

// number writes a number, to 0.001, and a space.
func (d *PDF) number(v float64) {
	n := int64(math.Round(v * thousand))
	if n < 0 {
		d.buf = append(d.buf, '-')
		n = -n
	}
	d.buf = strconv.AppendInt(d.buf, n/thousand, 10)
	if part := n % thousand; part > 0 {
		d.buf = append(d.buf, '.')
		for ; part > 0; part = part * 10 % thousand {
			d.buf = append(d.buf, byte('0'+part*10/thousand))
		}
	}
	d.buf = append(d.buf, ' ')
}

// units writes lengths of mm on the page.
func (d *PDF) units(mm ...float64) {
	for _, v := range mm {
		d.number(v / paper.Pt)
	}
}

// at writes a place.
func (d *PDF) at(p plane.Point) {
	d.number((p.X*d.scale + d.origin.X) / paper.Pt)
	d.number((p.Y*d.scale + d.origin.Y) / paper.Pt)
}

// do writes an operator.
func (d *PDF) do(operator string) {
	d.buf = append(append(d.buf, operator...), '\n')
}

// Save keeps pen, ink, clip and shift until Restore.
func (d *PDF) Save() { d.do("q") }

// Restore brings back what the last Save kept.
func (d *PDF) Restore() { d.do("Q") }

// Clip keeps what follows inside the box, until Restore.
func (d *PDF) Clip(b plane.Box) {
	d.Box(b)
	d.do("W n")
}

// Ink is the colour of what is filled from now on, and of text.
func (d *PDF) Ink(c Colour) {
	for _, v := range c {
		d.number(v)
	}
	d.do("rg")
}

// Pen takes up a pen. The dashes begin at the start of each path.
func (d *PDF) Pen(p Pen) {
	for _, v := range p.Colour {
		d.number(v)
	}
	d.do("RG")
	d.units(p.Width)
	d.do("w")
	ends := 0.0
	if p.Round() {
		ends = 1
	}
	d.number(ends)
	d.do("J 1 j")
	if p.period() > 0 {
		d.Dashes(p, 0)
	}
}

// Dashes begins the dashes of a pen phase mm into their pattern.
func (d *PDF) Dashes(p Pen, phase float64) {
	d.buf = append(d.buf, '[')
	d.units(p.Dashes()...)
	d.buf = append(d.buf, "] "...)
	d.units(phase)
	d.do("d")
}

// Path writes a line from point to point; Stroke or Fill shows it.
func (d *PDF) Path(p plane.Path) {
	for i, q := range p {
		d.at(q)
		if i == 0 {
			d.do("m")
		} else {
			d.do("l")
		}
	}
}

// Stroke draws what is written with the pen.
func (d *PDF) Stroke() { d.do("S") }

// Fill fills it with the ink.
func (d *PDF) Fill() { d.do("f") }

// Box writes a rectangle; Stroke, Fill or Clip uses it.
func (d *PDF) Box(b plane.Box) {
	d.at(b.Min)
	d.number(b.Width() * d.scale / paper.Pt)
	d.number(b.Height() * d.scale / paper.Pt)
	d.do("re")
}

// Between fills what lies between two boxes, the inner one inside the outer.
func (d *PDF) Between(outer, inner plane.Box) {
	d.Box(outer)
	d.Box(inner)
	d.do("f*")
}

// roundness is how far the handles of a quarter circle's curve reach, in
// radii (the usual value, off by less than 0.03 % of the radius).
const roundness = 0.5523

// Circle writes a circle; Stroke or Fill shows it.
func (d *PDF) Circle(centre plane.Point, radius float64) {
	step := plane.Point{X: radius}
	d.at(centre.Add(step))
	d.do("m")
	for range 4 {
		next := step.Left()
		d.at(centre.Add(step).Add(next.Mul(roundness)))
		d.at(centre.Add(next).Add(step.Mul(roundness)))
		d.at(centre.Add(next))
		d.do("c")
		step = next
	}
}

// matrixSteps is how finely the direction of a text and the scale of a page are
// written: 5 m are off by 0.0001 mm at most.
const matrixSteps = 1e8

// Text writes one line of text. Its size is in points on the page, whatever the scale.
func (d *PDF) Text(at, u plane.Point, s Style, text string) {
	if text == "" {
		return
	}
	d.Save()
	d.Ink(s.Colour)
	// The library writes text at a place of its own reckoning; the page is
	// moved and turned under it instead.
	d.matrix(u.X, u.Y, -u.Y, u.X)
	d.at(at)
	d.do("cm")
	d.flush()
	d.lib.SetFont("go", faces()[s.Weight].name, s.Size)
	d.lib.Text(0, d.height, text)
	d.Restore()
}

// Layer puts what follows into the layer of a role, until EndLayer.
func (d *PDF) Layer(role mark.Role) {
	d.flush()
	d.lib.BeginLayer(d.layers[role])
}

// EndLayer ends the layer.
func (d *PDF) EndLayer() {
	d.flush()
	d.lib.EndLayer()
}

// Finish ends the PDF and writes it.
func (d *PDF) Finish(w io.Writer) error {
	d.flush()
	var out bytes.Buffer
	if err := d.lib.Output(&out); err != nil {
		return fmt.Errorf("the pdf could not be made: %w", err)
	}
	whole, err := withoutScaling(out.Bytes())
	if err != nil {
		return err
	}
	_, err = w.Write(whole)
	return err
}

// withoutScaling asks whoever prints the PDF to leave its size alone: it adds
// the viewer preference PrintScaling (ISO 32000-1, 12.2, table 150), for
// which the library has no call. The preference is from PDF 1.6, so the
// header must say so. The catalogue is the last object before the table of
// cross-references: nothing but that table moves, and only startxref says
// where it is.
func withoutScaling(pdf []byte) ([]byte, error) {
	const (
		oldHeader, newHeader = "%PDF-1.5", "%PDF-1.6"
		catalogueEnd         = ">>\nendobj\nxref\n"
		startMark            = "startxref\n"
		preference           = "/ViewerPreferences <</PrintScaling /None>>\n"
	)
	end := bytes.LastIndex(pdf, []byte(catalogueEnd))
	start := bytes.LastIndex(pdf, []byte(startMark))
	if !bytes.HasPrefix(pdf, []byte(oldHeader)) || end < 0 || start < end {
		return nil, errors.New("the pdf is not laid out as expected")
	}
	table := end + len(catalogueEnd) - len("xref\n")
	var out bytes.Buffer
	out.WriteString(newHeader)
	out.Write(pdf[len(oldHeader):end])
	out.WriteString(preference)
	out.Write(pdf[end : start+len(startMark)])
	fmt.Fprintf(&out, "%d\n%%%%EOF\n", table+len(preference))
	return out.Bytes(), nil
}
