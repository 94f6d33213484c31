package seen

import (
	"math"
	"strings"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// Rules of this file: all places are in mm from the lower left corner of the page as it
// comes out of the printer.

// Written bounds how far a number read from the page may be off from the one
// meant, in mm: half of 0.001 units.
const Written = 0.0005 * paper.Pt

// Paper is the paper of a name, for a test that fails where there is none.
func Paper(t require.TestingT, name string) paper.Paper {
	p, err := paper.Find(name)
	require.NoError(t, err)
	return p
}

// On is the paper of a set as it lies for a page of it.
func (p Page) On(set paper.Paper) paper.Paper {
	if other, ok := set.OtherWay(); ok && (p.Width > p.Height) != set.IsLying() {
		return other
	}
	return set
}

// Text is a text as it stands on a page.
type Text struct {
	Text  string
	At    plane.Point // where its base line begins
	U     plane.Point // the direction it runs in, of length 1
	Size  float64     // in points
	Bold  bool
	Layer string // "" outside all layers
	// Colour is that of its letters.
	Colour ink.Colour
}

// Faint reports whether the text is only a ground under others.
func (r Text) Faint() bool { return r.Colour[0] > 0.8 }

// Style is what the text is set in, whatever its colour.
func (r Text) Style() ink.Style {
	if r.Bold {
		return ink.Strong(r.Size)
	}
	return ink.Plain(r.Size)
}

// Box is the upright box round the letters.
func (r Text) Box() plane.Box {
	s := r.Style()
	b := plane.EmptyBox()
	for _, x := range []float64{0, s.Width(r.Text)} {
		for _, y := range []float64{-s.Down(), s.Up()} {
			b = b.With(r.At.Add(r.U.Mul(x)).Add(r.U.Left().Mul(y)))
		}
	}
	return b
}

// Painting is how a path is painted.
type Painting int

// The ways to paint: with the pen, with the ink, and with the ink between two boxes.
const (
	Stroked Painting = iota
	Filled
	Framed
)

// Path is what is painted on a page at once.
type Path struct {
	Painted Painting
	Parts   []plane.Path
	Curves  int // how many of its steps are curves
	Boxes   []plane.Box
	Layer   string    // "" outside all layers
	Clip    plane.Box // what of the page it may show on
	Width   float64   // of the pen, in mm
	Round   bool      // the ends of its lines
	Dashes  []float64 // in mm
	Phase   float64   // where in them the line begins, in mm
	Stroke  ink.Colour
	Fill    ink.Colour
}

// Page is a page with all that is on it, in the order in which it was painted.
type Page struct {
	Width, Height float64 // in mm
	Texts         []Text
	Paths         []Path
}

// Whole is the whole page.
func (p Page) Whole() plane.Box { return plane.Box{Max: plane.Point{X: p.Width, Y: p.Height}} }

// Words returns the texts of the page.
func (p Page) Words() []string {
	var all []string
	for _, r := range p.Texts {
		all = append(all, r.Text)
	}
	return all
}

// Squeezed is a text without its spaces: titles are broken into lines, and very long words
// within.
func Squeezed(text string) string { return strings.Join(strings.Fields(text), "") }

// Frames returns the filled frames of the page: the outer boxes of what is
// filled between two boxes.
func (p Page) Frames() []plane.Box {
	var all []plane.Box
	for _, q := range p.Paths {
		if q.Painted == Framed && len(q.Boxes) == 2 {
			all = append(all, q.Boxes[0])
		}
	}
	return all
}

// Drawn returns what is drawn of a layer's lines.
func (p Page) Drawn(layer string) []Path { return p.painted(layer, Stroked) }

func (p Page) painted(layer string, how Painting) []Path {
	var all []Path
	for _, q := range p.Paths {
		if q.Layer == layer && q.Painted == how {
			all = append(all, q)
		}
	}
	return all
}

// BoundsOf is what the lines of a role take up on the page.
func (p Page) BoundsOf(role mark.Role) plane.Box {
	b := plane.EmptyBox()
	for _, q := range p.Drawn(role.String()) {
		for _, part := range q.Parts {
			b = b.Union(part.Bounds())
		}
	}
	return b
}

// Heads returns the triangles the page shows of a layer.
func (p Page) Heads(role mark.Role) []plane.Path {
	var all []plane.Path
	for _, q := range p.painted(role.String(), Filled) {
		all = append(all, q.Parts...)
	}
	return all
}

// ToWriteOn returns the lines to write on of the page.
func (p Page) ToWriteOn() []plane.Path {
	var all []plane.Path
	for _, q := range p.painted("", Stroked) {
		if len(q.Parts) == 1 && math.Abs(q.Width-writingPen) < 2*Written && q.Stroke == writingColour() {
			all = append(all, q.Parts[0])
		}
	}
	return all
}

// writingPen is how wide the lines to write on are, in mm, and writingColour how pale.
const writingPen = 0.35

func writingColour() ink.Colour { return ink.Colour{0.72, 0.72, 0.72} }

// overlap is what two boxes have in common.
func overlap(a, b plane.Box) plane.Box {
	return plane.Box{
		Min: plane.Point{X: max(a.Min.X, b.Min.X), Y: max(a.Min.Y, b.Min.Y)},
		Max: plane.Point{X: min(a.Max.X, b.Max.X), Y: min(a.Max.Y, b.Max.Y)},
	}
}
