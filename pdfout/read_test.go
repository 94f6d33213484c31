package pdfout

import (
	"bytes"
	"math"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
	"rsc.io/pdf"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// The PDF is read back here with a reader that is not its writer: rsc.io/pdf
// takes the file apart, and the few operators of ISO 32000-1 that a page is
// made of are carried out below. All places are in mm from the page's lower
// left corner.

// readText is a text as it stands on a page.
type readText struct {
	text  string
	at    plane.Point
	u     plane.Point // the direction it runs in
	size  float64
	font  string
	layer string
}

// box is the upright box round the text's letters.
func (r readText) box() plane.Box {
	s := r.style()
	b := plane.EmptyBox()
	for _, x := range []float64{0, s.Width(r.text)} {
		for _, y := range []float64{-s.Down(), s.Up()} {
			b = b.With(r.at.Add(r.u.Mul(x)).Add(r.u.Left().Mul(y)))
		}
	}
	return b
}

// style is what the text is set in.
func (r readText) style() ink.Style {
	if r.bold() {
		return ink.Strong(r.size)
	}
	return ink.Plain(r.size)
}

func (r readText) bold() bool { return r.font == "utf8goB" }

// readPath is a path as it is painted on a page.
type readPath struct {
	painted string // the operator: S, f or f*
	parts   []plane.Path
	curves  int // how many of its steps are curves
	boxes   []plane.Box
	layer   string
	clip    plane.Box
	width   float64
	round   bool
	dashes  []float64
	phase   float64
	stroke  ink.Colour
	fill    ink.Colour
}

type readPage struct {
	width, height float64 // in units
	texts         []readText
	paths         []readPath
}

// readDocument is a whole PDF.
type readDocument struct {
	reader *pdf.Reader
	layers []string
	pages  []readPage
	// laid keeps what joinUp found, by the first page of each sheet.
	laid map[int]joined
}

// joined is a sheet put together.
type joined struct{ laid, apart []laidPage }

// readPDF reads a PDF as it comes out of a printer that prints at a scale.
func readPDF(t require.TestingT, data []byte, printed paper.Scale) readDocument {
	r, err := pdf.NewReader(bytes.NewReader(data), int64(len(data)))
	require.NoError(t, err)
	d := readDocument{reader: r, laid: map[int]joined{}}
	groups := r.Trailer().Key("Root").Key("OCProperties").Key("OCGs")
	for i := range groups.Len() {
		require.Equal(t, "OCG", groups.Index(i).Key("Type").Name())
		d.layers = append(d.layers, groups.Index(i).Key("Name").Text())
	}
	pages := r.Trailer().Key("Root").Key("Pages")
	for n := range pages.Key("Kids").Len() {
		d.pages = append(d.pages, readOnePage(t, pdf.Page{V: pages.Key("Kids").Index(n)}, printed.OrTrue()))
	}
	require.Equal(t, int64(len(d.pages)), pages.Key("Count").Int64())
	return d
}

// state is what q keeps and Q brings back.
type state struct {
	matrix [6]float64
	path   readPath // width, dashes and so on of what is painted
}

func (s state) place(x, y float64) plane.Point {
	m := s.matrix
	return plane.Point{X: m[0]*x + m[2]*y + m[4], Y: m[1]*x + m[3]*y + m[5]}.Mul(paper.Pt)
}

func readOnePage(t require.TestingT, p pdf.Page, printed paper.Scale) readPage {
	box := p.V
	for box.Key("MediaBox").IsNull() { // it may be inherited
		box = box.Key("Parent")
		require.False(t, box.IsNull(), "a page without a MediaBox")
	}
	media := box.Key("MediaBox")
	require.Zero(t, media.Index(0).Float64())
	require.Zero(t, media.Index(1).Float64())
	page := readPage{width: media.Index(2).Float64() * printed.Across, height: media.Index(3).Float64() * printed.Down}
	resources := p.Resources()

	now := state{matrix: [6]float64{printed.Across, 0, 0, printed.Down, 0, 0}}
	now.path.clip = plane.Box{Max: plane.Point{X: page.width, Y: page.height}.Mul(paper.Pt)}
	var saved []state
	var parts []plane.Path
	var boxes []plane.Box
	curves := 0
	font, size, layer := "", 0.0, ""
	var textAt plane.Point
	paint := func(op string) {
		path := now.path
		path.painted, path.parts, path.curves, path.boxes, path.layer = op, parts, curves, boxes, layer
		page.paths = append(page.paths, path)
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
			now.path.width = n(0) * paper.Pt
		case "J":
			now.path.round = n(0) == 1
		case "d":
			now.path.dashes = nil
			for i := range args[0].Len() {
				now.path.dashes = append(now.path.dashes, args[0].Index(i).Float64()*paper.Pt)
			}
			now.path.phase = n(1) * paper.Pt
		case "RG":
			now.path.stroke = ink.Colour{n(0), n(1), n(2)}
		case "rg":
			now.path.fill = ink.Colour{n(0), n(1), n(2)}
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
			clip := &now.path.clip
			clip.Min.X, clip.Min.Y = math.Max(clip.Min.X, boxes[0].Min.X), math.Max(clip.Min.Y, boxes[0].Min.Y)
			clip.Max.X, clip.Max.Y = math.Min(clip.Max.X, boxes[0].Max.X), math.Min(clip.Max.Y, boxes[0].Max.Y)
		case "n":
			parts, boxes, curves = nil, nil, 0
		case "S", "f", "f*":
			paint(op)
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
			page.texts = append(page.texts, readText{
				text: string(utf16.Decode(letters)), at: at,
				u:    now.place(textAt.X+1, textAt.Y).Sub(at).Unit(),
				size: size, font: font, layer: layer,
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

// words returns the texts of the page.
func (p readPage) words() []string {
	var all []string
	for _, r := range p.texts {
		all = append(all, r.text)
	}
	return all
}

// frames returns the filled frames of the page: the outer boxes of what is
// filled between two boxes.
func (p readPage) frames() []plane.Box {
	var all []plane.Box
	for _, q := range p.paths {
		if q.painted == "f*" && len(q.boxes) == 2 {
			all = append(all, q.boxes[0])
		}
	}
	return all
}

// drawn returns what is drawn of a layer's lines.
func (p readPage) drawn(layer string) []readPath {
	var all []readPath
	for _, q := range p.paths {
		if q.layer == layer && q.painted == "S" {
			all = append(all, q)
		}
	}
	return all
}
