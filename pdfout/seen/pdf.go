package seen

import (
	"bytes"
	"strings"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
	"rsc.io/pdf"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// Rules of this file: rsc.io/pdf takes the file apart, and the few operators of
// ISO 32000-1 that a page is made of are carried out here. Any other operator fails
// the test.

// Document is a whole PDF.
type Document struct {
	Layers   []string  // in their order
	Contents []Chapter // in theirs
	Pages    []Page
	root     pdf.Value
	// joined keeps what JoinUp found, by the first page of each sheet.
	joined map[int]joined
}

// Chapter is what the contents of a PDF turn to.
type Chapter struct {
	Title string
	Page  int // that it leads to, from 1
}

// Root is the catalogue of the PDF.
func (d Document) Root() pdf.Value { return d.root }

// Read reads a PDF as it comes out of a printer that prints at a scale.
func Read(t require.TestingT, data []byte, printed paper.Scale) Document {
	r, err := pdf.NewReader(bytes.NewReader(data), int64(len(data)))
	require.NoError(t, err)
	d := Document{root: r.Trailer().Key("Root"), joined: map[int]joined{}}
	groups := d.root.Key("OCProperties").Key("OCGs")
	for i := range groups.Len() {
		require.Equal(t, "OCG", groups.Index(i).Key("Type").Name())
		d.Layers = append(d.Layers, groups.Index(i).Key("Name").Text())
	}
	pages := d.root.Key("Pages")
	for n := range pages.Key("Kids").Len() {
		var first *Page
		if n > 0 {
			first = &d.Pages[0]
		}
		d.Pages = append(d.Pages, readPage(t, pdf.Page{V: pages.Key("Kids").Index(n)}, printed.OrTrue(), first))
	}
	require.Equal(t, int64(len(d.Pages)), pages.Key("Count").Int64())
	for item := d.root.Key("Outlines").Key("First"); !item.IsNull(); item = item.Key("Next") {
		c := Chapter{Title: item.Key("Title").Text()}
		for n := range d.Pages {
			// What a page is written as names what is on it, which no other has.
			if pages.Key("Kids").Index(n).String() == item.Key("Dest").Index(0).String() {
				c.Page = n + 1
			}
		}
		require.NotZero(t, c.Page, "the page of %s", c.Title)
		d.Contents = append(d.Contents, c)
	}
	return d
}

// isBold reports whether what the PDF calls a font is its bold one: six letters for the choice of
// letters stand before it.
func isBold(font string) bool { return strings.HasSuffix(font, "+Go-Bold") }

// state is what q keeps and Q brings back.
type state struct {
	matrix [6]float64
	path   Path // width, dashes and so on of what is painted
}

func (s state) place(x, y float64) plane.Point {
	m := s.matrix
	return plane.Point{X: m[0]*x + m[2]*y + m[4], Y: m[1]*x + m[3]*y + m[5]}.Mul(paper.Pt)
}

// reader carries out what a page says.
type reader struct {
	t         require.TestingT
	resources pdf.Value
	page      Page
	now       state
	saved     []state
	// What is laid out and not yet painted.
	parts  []plane.Path
	boxes  []plane.Box
	curves int
	layer  string
	// How the next text is set.
	font   string
	size   float64
	textAt plane.Point
	// span is the text that parts of it belong to, which may be set at other sizes and places;
	// nil outside one.
	span *Text
}

// readPage reads a page as it comes out of a printer that prints at a scale.
func readPage(t require.TestingT, p pdf.Page, printed paper.Scale, first *Page) Page {
	box := p.V
	for box.Key("MediaBox").IsNull() { // it may be inherited
		box = box.Key("Parent")
		require.False(t, box.IsNull(), "a page without a MediaBox")
	}
	media := box.Key("MediaBox")
	require.Zero(t, media.Index(0).Float64())
	require.Zero(t, media.Index(1).Float64())
	wide, high := media.Index(2).Float64(), media.Index(3).Float64()
	if first != nil && (wide > high) != (first.Width > first.Height) {
		printed = printed.OtherWay()
	}
	page := Page{Width: wide * printed.Across * paper.Pt, Height: high * printed.Down * paper.Pt}
	r := &reader{t: t, resources: p.Resources(), page: page}
	r.now.matrix = [6]float64{printed.Across, 0, 0, printed.Down, 0, 0}
	r.now.path.Clip = page.Whole()
	pdf.Interpret(p.V.Key("Contents"), func(stk *pdf.Stack, op string) {
		args := make([]pdf.Value, stk.Len())
		for i := len(args) - 1; i >= 0; i-- {
			args[i] = stk.Pop()
		}
		known := r.setState(op, args) || r.layOut(op, args) || r.paint(op) || r.write(op, args)
		require.True(t, known, "an operator this test does not know: %s", op)
	})
	require.Empty(t, r.saved, "q without Q")
	require.Empty(t, r.layer, "a layer that does not end")
	return r.page
}

// setState carries out what says how and where things are drawn, and reports whether the
// operator is one of these; so do the others.
func (r *reader) setState(op string, args []pdf.Value) bool {
	n := func(i int) float64 { return args[i].Float64() }
	path := &r.now.path
	switch op {
	case "q":
		r.saved = append(r.saved, r.now)
	case "Q":
		require.NotEmpty(r.t, r.saved, "Q without q")
		r.now, r.saved = r.saved[len(r.saved)-1], r.saved[:len(r.saved)-1]
	case "cm":
		a, b := r.now.matrix, [6]float64{n(0), n(1), n(2), n(3), n(4), n(5)}
		r.now.matrix = [6]float64{
			b[0]*a[0] + b[1]*a[2], b[0]*a[1] + b[1]*a[3],
			b[2]*a[0] + b[3]*a[2], b[2]*a[1] + b[3]*a[3],
			b[4]*a[0] + b[5]*a[2] + a[4], b[4]*a[1] + b[5]*a[3] + a[5],
		}
	case "w":
		path.Width = n(0) * paper.Pt
	case "J":
		path.Round = n(0) == 1
	case "d":
		path.Dashes = nil
		for i := range args[0].Len() {
			path.Dashes = append(path.Dashes, args[0].Index(i).Float64()*paper.Pt)
		}
		path.Phase = n(1) * paper.Pt
	case "RG":
		path.Stroke = ink.Colour{n(0), n(1), n(2)}
	case "rg":
		path.Fill = ink.Colour{n(0), n(1), n(2)}
	case "g", "G", "j":
	default:
		return false
	}
	return true
}

// layOut carries out what makes a path.
func (r *reader) layOut(op string, args []pdf.Value) bool {
	n := func(i int) float64 { return args[i].Float64() }
	last := len(r.parts) - 1
	switch op {
	case "m":
		r.parts = append(r.parts, plane.Path{r.now.place(n(0), n(1))})
	case "l":
		r.parts[last] = append(r.parts[last], r.now.place(n(0), n(1)))
	case "c":
		r.parts[last] = append(r.parts[last], r.now.place(n(4), n(5)))
		r.curves++
	case "re":
		r.boxes = append(r.boxes, plane.EmptyBox().With(r.now.place(n(0), n(1))).With(r.now.place(n(0)+n(2), n(1)+n(3))))
	case "W":
		require.Len(r.t, r.boxes, 1, "a clip that is not a rectangle")
		r.now.path.Clip = overlap(r.now.path.Clip, r.boxes[0])
	default:
		return false
	}
	return true
}

// paint puts what is laid out on the page, or drops it.
func (r *reader) paint(op string) bool {
	path := r.now.path
	path.Parts, path.Curves, path.Boxes, path.Layer = r.parts, r.curves, r.boxes, r.layer
	switch op {
	case "n":
	case "S":
		path.Painted = Stroked
	case "f":
		path.Painted = Filled
	case "f*":
		path.Painted = Framed
	default:
		return false
	}
	if op != "n" {
		r.page.Paths = append(r.page.Paths, path)
	}
	r.parts, r.boxes, r.curves = nil, nil, 0
	return true
}

// direction is the one in which text runs now.
func (r *reader) direction() plane.Point {
	return r.now.place(1, 0).Sub(r.now.place(0, 0)).Unit()
}

// write carries out what begins and ends layers, and what writes.
func (r *reader) write(op string, args []pdf.Value) bool {
	switch op {
	case "BDC":
		if args[0].Name() == "Span" {
			r.span = &Text{Text: args[1].Key("ActualText").Text(), At: r.now.place(0, 0), U: r.direction(), Size: r.size, Bold: isBold(r.font), Layer: r.layer, Colour: r.now.path.Fill}
			break
		}
		require.Equal(r.t, "OC", args[0].Name())
		require.Empty(r.t, r.layer, "a layer in a layer")
		r.layer = r.resources.Key("Properties").Key(args[1].Name()).Key("Name").Text()
		require.NotEmpty(r.t, r.layer)
	case "EMC":
		if r.span == nil {
			r.layer = ""
			break
		}
		r.page.Texts = append(r.page.Texts, *r.span)
		r.span = nil
	case "BT":
		r.textAt = plane.Point{}
	case "Td":
		r.textAt = plane.Point{X: args[0].Float64(), Y: args[1].Float64()}
	case "Tf":
		r.font, r.size = r.resources.Key("Font").Key(args[0].Name()).Key("BaseFont").Name(), args[1].Float64()
	case "Tj":
		if r.span != nil {
			break // the span says what it reads as
		}
		// Each letter is two bytes, its number in Unicode.
		raw := args[0].RawString()
		var letters []uint16
		for i := 0; i+1 < len(raw); i += 2 {
			letters = append(letters, uint16(raw[i])<<8|uint16(raw[i+1]))
		}
		r.page.Texts = append(r.page.Texts, Text{
			Text: string(utf16.Decode(letters)), At: r.now.place(r.textAt.X, r.textAt.Y), U: r.direction(),
			Size: r.size, Bold: isBold(r.font), Layer: r.layer, Colour: r.now.path.Fill,
		})
	case "ET":
	default:
		return false
	}
	return true
}
