package seen

import (
	"bytes"
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
	Layers []string // in their order
	Pages  []Page
	root   pdf.Value
	// joined keeps what JoinUp found, by the first page of each sheet.
	joined map[int]joined
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
		d.Pages = append(d.Pages, readPage(t, pdf.Page{V: pages.Key("Kids").Index(n)}, printed.OrTrue()))
	}
	require.Equal(t, int64(len(d.Pages)), pages.Key("Count").Int64())
	return d
}

// boldFont is what the PDF calls its bold font.
const boldFont = "utf8goB"

// state is what q keeps and Q brings back.
type state struct {
	matrix [6]float64
	path   Path // width, dashes and so on of what is painted
}

func (s state) place(x, y float64) plane.Point {
	m := s.matrix
	return plane.Point{X: m[0]*x + m[2]*y + m[4], Y: m[1]*x + m[3]*y + m[5]}.Mul(paper.Pt)
}

func readPage(t require.TestingT, p pdf.Page, printed paper.Scale) Page {
	box := p.V
	for box.Key("MediaBox").IsNull() { // it may be inherited
		box = box.Key("Parent")
		require.False(t, box.IsNull(), "a page without a MediaBox")
	}
	media := box.Key("MediaBox")
	require.Zero(t, media.Index(0).Float64())
	require.Zero(t, media.Index(1).Float64())
	page := Page{Width: media.Index(2).Float64() * printed.Across * paper.Pt, Height: media.Index(3).Float64() * printed.Down * paper.Pt}
	resources := p.Resources()

	now := state{matrix: [6]float64{printed.Across, 0, 0, printed.Down, 0, 0}}
	now.path.Clip = page.Whole()
	var saved []state
	var parts []plane.Path
	var boxes []plane.Box
	curves := 0
	font, size, layer := "", 0.0, ""
	var textAt plane.Point
	paint := func(how Painting) {
		path := now.path
		path.Painted, path.Parts, path.Curves, path.Boxes, path.Layer = how, parts, curves, boxes, layer
		page.Paths = append(page.Paths, path)
		parts, boxes, curves = nil, nil, 0
	}
	pdf.Interpret(p.V.Key("Contents"), func(stk *pdf.Stack, op string) {
		args := make([]pdf.Value, stk.Len())
		for i := len(args) - 1; i >= 0; i-- {
			args[i] = stk.Pop()
		}
		n := func(i int) float64 { return args[i].Float64() }
		switch op {
		case "q":
			saved = append(saved, now)
		case "Q":
			require.NotEmpty(t, saved, "Q without q")
			now, saved = saved[len(saved)-1], saved[:len(saved)-1]
		case "cm":
			a, b := now.matrix, [6]float64{n(0), n(1), n(2), n(3), n(4), n(5)}
			now.matrix = [6]float64{
				b[0]*a[0] + b[1]*a[2], b[0]*a[1] + b[1]*a[3],
				b[2]*a[0] + b[3]*a[2], b[2]*a[1] + b[3]*a[3],
				b[4]*a[0] + b[5]*a[2] + a[4], b[4]*a[1] + b[5]*a[3] + a[5],
			}
		case "w":
			now.path.Width = n(0) * paper.Pt
		case "J":
			now.path.Round = n(0) == 1
		case "d":
			now.path.Dashes = nil
			for i := range args[0].Len() {
				now.path.Dashes = append(now.path.Dashes, args[0].Index(i).Float64()*paper.Pt)
			}
			now.path.Phase = n(1) * paper.Pt
		case "RG":
			now.path.Stroke = ink.Colour{n(0), n(1), n(2)}
		case "rg":
			now.path.Fill = ink.Colour{n(0), n(1), n(2)}
		case "m":
			parts = append(parts, plane.Path{now.place(n(0), n(1))})
		case "l":
			parts[len(parts)-1] = append(parts[len(parts)-1], now.place(n(0), n(1)))
		case "c":
			parts[len(parts)-1] = append(parts[len(parts)-1], now.place(n(4), n(5)))
			curves++
		case "re":
			boxes = append(boxes, plane.EmptyBox().With(now.place(n(0), n(1))).With(now.place(n(0)+n(2), n(1)+n(3))))
		case "W":
			require.Len(t, boxes, 1, "a clip that is not a rectangle")
			now.path.Clip = overlap(now.path.Clip, boxes[0])
		case "n":
			parts, boxes, curves = nil, nil, 0
		case "S":
			paint(Stroked)
		case "f":
			paint(Filled)
		case "f*":
			paint(Framed)
		case "BDC":
			require.Equal(t, "OC", args[0].Name())
			require.Empty(t, layer, "a layer in a layer")
			layer = resources.Key("Properties").Key(args[1].Name()).Key("Name").Text()
			require.NotEmpty(t, layer)
		case "EMC":
			layer = ""
		case "BT":
			textAt = plane.Point{}
		case "Td":
			textAt = plane.Point{X: n(0), Y: n(1)}
		case "Tf":
			font, size = resources.Key("Font").Key(args[0].Name()).Key("BaseFont").Name(), n(1)
		case "Tj":
			// Each letter is two bytes, its number in Unicode.
			raw := args[0].RawString()
			var letters []uint16
			for i := 0; i+1 < len(raw); i += 2 {
				letters = append(letters, uint16(raw[i])<<8|uint16(raw[i+1]))
			}
			at := now.place(textAt.X, textAt.Y)
			page.Texts = append(page.Texts, Text{
				Text: string(utf16.Decode(letters)), At: at,
				U:    now.place(textAt.X+1, textAt.Y).Sub(at).Unit(),
				Size: size, Bold: font == boldFont, Layer: layer,
			})
		case "g", "G", "j", "ET":
		default:
			require.Fail(t, "an operator this test does not know: "+op)
		}
	})
	require.Empty(t, saved, "q without Q")
	require.Empty(t, layer, "a layer that does not end")
	return page
}
