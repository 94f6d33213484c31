package drawing

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// drawn reads a drawing in which nothing is wrong.
func drawnIn(t *testing.T, text string) *Drawing {
	t.Helper()
	d, err := Read("front.svg", []byte(text))
	require.NoError(t, err)
	return d
}

// boxes gives where every shape lies, in mm: left, bottom, right, top.
func boxes(d *Drawing) string {
	var all []string
	for _, s := range d.Shapes {
		b := s.Path.Bounds()
		all = append(all, fmt.Sprintf("%s %.2f %.2f %.2f %.2f", s.ID, b.Min.X+0, b.Min.Y+0, b.Max.X, b.Max.Y))
	}
	return strings.ReplaceAll(strings.Join(all, "; "), "-0.00", "0.00")
}

// Sizes are derived: 96 units are an inch, 72 points, 6 picas, 101.6 q.
func TestRealSize(t *testing.T) {
	const rect = `<rect id="r" x="1" y="2" width="3" height="4"/>`
	for _, c := range []struct{ name, text, want string }{
		{"mm by the view", `<svg width="100mm" height="50mm" viewBox="0 0 100 50">` + rect + `</svg>`, "r 1.00 44.00 4.00 48.00"},
		{"no size at all", `<svg>` + rect + `</svg>`, "r 0.26 -1.59 1.06 -0.53"},
		{"a view without a size", `<svg viewBox="0 0 96 96">` + rect + `</svg>`, "r 0.26 23.81 1.06 24.87"},
		{"a width alone", `<svg width="10in" viewBox="0 0 10 20">` + rect + `</svg>`, "r 25.40 355.60 101.60 457.20"},
		{"a height alone", `<svg height="10in" viewBox="0 0 20 10">` + rect + `</svg>`, "r 25.40 101.60 101.60 203.20"},
		{"units", `<svg height="0.5in"><rect id="r" x="72pt" y="6pc" width="101.6Q" height="2.54cm"/><rect id="s" width="96" height="25.4mm"/><rect id="p" width="96px" height="1e1px"/></svg>`,
			"r 25.40 -38.10 50.80 -12.70; s 0.00 -12.70 25.40 12.70; p 0.00 10.05 25.40 12.70"},
		{"shares", `<svg width="100mm" height="200mm" viewBox="0 0 300 400"><rect id="r" x="10%" y="10%" width="50%" height="25%"/><circle id="c" cx="50%" cy="50%" r="10%"/></svg>`,
			"r 10.00 120.00 60.00 153.33; c 38.21 88.21 61.79 111.79"},
		{"a view moved and in the middle", `<svg width="100mm" height="100mm" viewBox="-10 -20 200 100"><rect id="r" x="-10" y="-20" width="200" height="100"/></svg>`, "r 0.00 25.00 100.00 75.00"},
		{"at the top", `<svg width="100mm" height="100mm" viewBox="0 0 200 100" preserveAspectRatio="xMinYMin meet"><rect id="r" width="200" height="100"/></svg>`, "r 0.00 50.00 100.00 100.00"},
		{"at the right, filled", `<svg width="100mm" height="100mm" viewBox="0 0 200 100" preserveAspectRatio="xMaxYMax slice"><rect id="r" width="200" height="100"/></svg>`, "r -100.00 0.00 100.00 100.00"},
		{"drawn out", `<svg width="100mm" height="100mm" viewBox="0 0 200 100" preserveAspectRatio="none"><rect id="r" width="200" height="100"/></svg>`, "r 0.00 0.00 100.00 100.00"},
		{"one in the other", `<svg width="100mm" height="100mm" viewBox="0 0 100 100"><svg x="10" y="20" width="50%" height="10" viewBox="0 0 5 1"><rect id="r" width="5" height="1"/></svg></svg>`, "r 10.00 70.00 60.00 80.00"},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, boxes(drawnIn(t, c.text))) })
	}
}

// What is drawn is what SVG 2 renders (section 5, "Document Structure", and 10, "Basic Shapes").
func TestWhatIsDrawn(t *testing.T) {
	const in = "\n"
	for _, c := range []struct{ name, text, want string }{
		{"shapes", `<line id="l" x1="1" y1="1" x2="3" y2="2"/><polyline id="p" points="0,0 5-5 10,0"/><polygon id="q" points="0 0,10 0 5 8"/><circle id="c" cx="10" cy="10" r="5"/><ellipse id="e" cx="10" cy="10" rx="5" ry="2"/>`,
			"l 1.00 298.00 3.00 299.00; p 0.00 300.00 10.00 305.00; q 0.00 292.00 10.00 300.00; c 5.00 285.00 15.00 295.00; e 5.00 288.00 15.00 292.00"},
		{"round corners", `<rect id="a" width="10" height="8" rx="2"/><rect id="b" width="10" height="8" ry="20"/><rect id="c" width="10" height="8" rx="5" ry="4"/>`,
			"a 0.00 292.00 10.00 300.00; b 0.00 292.00 10.00 300.00; c 0.00 292.00 10.00 300.00"},
		{"one radius of an ellipse", `<ellipse id="e" ry="2"/>`, "e -2.00 298.00 2.00 302.00"},
		{"nothing of no size", `<rect width="10"/><circle/><ellipse rx="0" ry="3"/><path/><polyline points="1 1"/><path d="M 1 1"/>`, ""},
		{"groups, links, styles", `<g transform="translate(10 20)"><a><path id="p" style="fill:none; display : inline" d="M0 0h1"/></a></g>`, "p 10.00 280.00 11.00 280.00"},
		{"not displayed", `<g display="none"><path d="M0 0h1"/></g><path style="/* ; */display:none!important" d="M0 0h1"/>`, ""},
		{"hidden, and seen in it", `<g visibility="hidden"><path d="M0 0h1"/><path id="p" visibility="visible" d="M0 0h1"/></g>`, "p 0.00 300.00 1.00 300.00"},
		{"never by itself", `<defs><path d="M0 0h1"/></defs><symbol><path d="M0 0h1"/></symbol><clipPath><path d="M0 0h1"/></clipPath><marker><path d="M0 0h1"/></marker><mask><path d="M0 0h1"/></mask><pattern><path d="M0 0h1"/></pattern><text>a</text>`, ""},
		{"of another kind", `<x:g xmlns:x="http://example.org"><path d="M0 0h1"/></x:g>`, ""},
		{"a choice", `<switch><foreignObject requiredExtensions="x"/><g><path id="p" d="M0 0h1"/></g><path d="M0 0h1"/></switch>`, "p 0.00 300.00 1.00 300.00"},
		{"used", `<defs><g id="d"><path id="p" transform="scale(2)" d="M0 0h1v1"/></g></defs><use id="u" href="#d" x="5" y="6" transform="rotate(90)"/><use xlink:href="#p"/>`,
			"p -8.00 293.00 -6.00 295.00; p 0.00 298.00 2.00 300.00"},
		{"a symbol", `<symbol id="s" viewBox="0 0 10 10"><path id="p" d="M0 0h10v10"/></symbol><use href="#s" x="10" y="20" width="30" height="30"/>`, "p 10.00 250.00 40.00 280.00"},
		{"a doctype of no declarations", "", ""},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, boxes(drawnIn(t, svg(c.text+in)))) })
	}
	d := drawnIn(t, `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">`+svg(`<path id="p" d="M0 0h1"/>`))
	assert.Len(t, d.Shapes, 1, "a DOCTYPE that declares nothing is passed over")
}

func TestUnder(t *testing.T) {
	d := drawnIn(t, svg(`<g id="front"><path id="front.neck" d="M0 0h1"/><g id="marks"><path d="M0 0h2"/></g></g>`, `<defs><path id="p" d="M0 0h3"/></defs><use id="back" href="#p"/>`))
	long := func(id string) (all []float64) {
		for _, s := range d.Under(id) {
			all = append(all, math.Round(s.Path.Length()))
		}
		return all
	}
	assert.Equal(t, []float64{1, 2}, long("front"))
	assert.Equal(t, []float64{2}, long("marks"))
	assert.Equal(t, []float64{1}, long("front.neck"))
	assert.Equal(t, []float64{3}, long("back"))
	assert.Equal(t, []float64{3}, long("p"))
	assert.Empty(t, long("neck"))
	assert.Equal(t, `front.svg:2: path "front.neck": x`, d.Shapes[0].Place.Before("x"))
}

// Transforms of CSS Transforms 1, section 8: each worked out by hand for the place 10, 0.
func TestTransforms(t *testing.T) {
	for _, c := range []struct {
		text string
		want plane.Point
	}{
		{"", plane.Point{X: 10}},
		{"none", plane.Point{X: 10}},
		{"matrix(1 2 3 4 5 6)", plane.Point{X: 15, Y: 26}},
		{"translate(3)", plane.Point{X: 13}},
		{"translate(3-4)", plane.Point{X: 13, Y: -4}},
		{"scale(2)", plane.Point{X: 20}},
		{"scale ( 2 , 3 ) translate(0,1)", plane.Point{X: 20, Y: 3}},
		{"rotate(90)", plane.Point{Y: 10}},
		{"rotate(-450)", plane.Point{Y: -10}},
		{"rotate(180 10 10)", plane.Point{X: 10, Y: 20}},
		{"skewX(45)", plane.Point{X: 10}},
		{"skewY(45)", plane.Point{X: 10, Y: 10}},
		{"translate(0 1)skewX(45),scale(1 5)translate(0,1)", plane.Point{X: 15, Y: 6}},
	} {
		m, err := readTransform(c.text)
		require.NoError(t, err, c.text)
		got := m.place(plane.Point{X: 10})
		assert.InDelta(t, c.want.X, got.X, 1e-12, c.text)
		assert.InDelta(t, c.want.Y, got.Y, 1e-12, c.text)
	}
}
