package ink

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// smallPage is a page of 80 by 50 mm.
func smallPage() paper.Paper { return paper.Paper{Width: 80, Height: 50} }

// svgOf is what an SVG of a page says on which something is drawn.
func svgOf(t require.TestingT, draw func(d Canvas)) string {
	s := NewSVG("Bib & <tucker>")
	s.NewPage(smallPage())
	draw(s)
	var out bytes.Buffer
	require.NoError(t, s.Finish(&out))
	return out.String()
}

// inside is what an SVG has between its first group and its end.
func inside(svg string) string {
	return strings.TrimSuffix(svg[strings.Index(svg, `<g id="page">`):], "</svg>\n")
}

// drawMarks draws lines of a piece in a role.
func drawMarks(d Canvas, piece string, role mark.Role, lines ...mark.Mark) {
	d.Layer(role)
	d.Save()
	d.Pen(PenOf(role))
	for _, l := range lines {
		d.Mark(piece, l.Called())
		StrokeEach(d, l.Path)
		d.EndMark()
	}
	d.Restore()
	d.EndLayer()
}

func TestSVGWhole(t *testing.T) {
	// y is counted from the upper edge: 50 mm is 0.
	assert.Equal(t, `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" xml:lang="en" width="80mm" height="50mm" viewBox="0 0 80 50" fill="none" stroke-linejoin="round" font-family="Go, Arial, Helvetica, sans-serif">
<title>Bib &amp; &lt;tucker&gt;</title>
<g id="page">
<path d="M1 49L5 49 5 45 1 45Z" stroke="#000000" stroke-width="0.18"/>
</g>
<g id="bib">
<g id="bib.cutting-line" fill="none" stroke="#000000" stroke-width="0.7">
<path id="bib.left-side" d="M10 10L10 40"/>
<path id="bib.hem" d="M10 40L30.123 40"/>
</g>
<g id="bib.stitch-line" fill="none" stroke="#0d298c" stroke-width="0.35" stroke-dasharray="3 1.5">
<path id="bib.hem-stitch-line" d="M10 30L30 30"/>
</g>
</g>
<g id="words">
<path d="M9.1 32.9L10.9 32.9 10.9 29.986 9.1 29.986Z" fill="#ffffff"/>
</g>
</svg>
`, svgOf(t, func(d Canvas) {
		DrawBox(d, LinePen(FineLine, Black()), plane.Box{Min: plane.Point{X: 1, Y: 1}, Max: plane.Point{X: 5, Y: 5}})
		drawMarks(d, "bib", mark.Cut,
			mark.Mark{Name: "left side", Path: plane.Path{{X: 10, Y: 40}, {X: 10, Y: 10}}},
			mark.Mark{Name: "hem", Path: plane.Path{{X: 10, Y: 10}, {X: 30.1234, Y: 10}}})
		drawMarks(d, "bib", mark.Stitch, mark.Mark{Name: "hem stitch line, 3/8 in", Key: "hem stitch line", Path: plane.Path{{X: 10, Y: 20}, {X: 30, Y: 20}}})
		d.Layer(mark.Stitch)
		d.Ink(White())
		d.Box(plane.Box{Min: plane.Point{X: 9.1, Y: 17.1}, Max: plane.Point{X: 10.9, Y: 20.0144}})
		d.Fill()
		d.EndLayer()
	}))
}

func TestSVGMarks(t *testing.T) {
	to := func(x, y float64) plane.Path { return plane.Path{{X: x, Y: y}, {X: x + 5, Y: y}} }
	for _, c := range []struct {
		name  string
		role  mark.Role
		piece string
		lines []mark.Mark
		want  []string // what the lines are
	}{
		{"names that are alike", mark.TuckStitch, "front", []mark.Mark{{Key: "yoke 1", Path: to(1, 1)}, {Key: "yoke 1", Path: to(1, 2)}, {Key: "yoke 1", Path: to(1, 3)}},
			[]string{`id="front.yoke-1"`, `id="front.yoke-1-2"`, `id="front.yoke-1-3"`}},
		{"ids that are taken", mark.Cut, "page", []mark.Mark{{Key: "cutting line", Path: to(1, 1)}},
			[]string{`id="page-2.cutting-line"`}}, // its group is called something more
		{"signs that no id has", mark.Cut, `2 "ply" & <lining>`, []mark.Mark{{Key: "hem/2 ½", Path: to(1, 1)}},
			[]string{`id="_2-ply-lining.hem-2"`}},
		{"letters of other languages", mark.Cut, "Ärmel", []mark.Mark{{Key: "boční šev", Path: to(1, 1)}},
			[]string{`id="Ärmel.boční-šev"`}},
		{"a point in a name", mark.Stitch, "a.b", []mark.Mark{{Key: "c.d", Path: to(1, 1)}},
			[]string{`id="a-b.c-d"`}},
		{"sides without names are one line", mark.Cut, "card", []mark.Mark{{Path: to(1, 1)}, {Path: plane.Path{{X: 6, Y: 1}, {X: 6, Y: 9}}}, {Path: plane.Path{{X: 6, Y: 9}, {X: 1, Y: 1}}}, {Path: to(1, 1)}},
			[]string{`id="card.cutting-line.1" d="M1 49L6 49 6 41Z"`, `id="card.cutting-line.2" d="M1 49L6 49"`}},
		{"sides with names are several", mark.Cut, "card", []mark.Mark{{Key: "a", Path: to(1, 1)}, {Path: plane.Path{{X: 6, Y: 1}, {X: 6, Y: 9}}}},
			[]string{`id="card.a" d="M1 49L6 49"`, `id="card.cutting-line.2" d="M6 49L6 41"`}},
		{"dashed ones too", mark.Stitch, "card", []mark.Mark{{Path: to(1, 1)}, {Path: plane.Path{{X: 6, Y: 1}, {X: 6, Y: 9}}}},
			[]string{`id="card.stitch-line.1"`, `id="card.stitch-line.2"`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			svg := svgOf(t, func(d Canvas) { drawMarks(d, c.piece, c.role, c.lines...) })
			lines := regexp.MustCompile(`<path id.*/>`).FindAllString(svg, -1)
			require.Len(t, lines, len(c.want))
			for i, line := range lines {
				assert.Contains(t, line, c.want[i])
			}
		})
	}
}

func TestSVGPricks(t *testing.T) {
	svg := svgOf(t, func(d Canvas) {
		pen := PenOf(mark.Prick)
		d.Layer(mark.Prick)
		d.Pen(pen)
		for range 2 { // both called so, and two lines nevertheless
			d.Mark("front", "neck")
			DrawRings(d, pen, plane.Path{{X: 10, Y: 10}, {X: 20, Y: 10}}, plane.Box{Max: plane.Point{X: 80, Y: 50}})
			d.EndMark()
		}
		d.EndLayer()
	})
	rings := `d="M9.3 40A0.7 0.7 0 0 1 10.7 40A0.7 0.7 0 0 1 9.3 40ZM19.3 40A0.7 0.7 0 0 1 20.7 40A0.7 0.7 0 0 1 19.3 40Z"/>`
	assert.Contains(t, svg, `<path id="front.neck" `+rings)
	assert.Contains(t, svg, `<path id="front.neck-2" `+rings)
}

func TestSVGPage(t *testing.T) {
	line := plane.Path{{X: 10, Y: 10}, {X: 20, Y: 10}}
	for _, c := range []struct {
		name string
		draw func(Canvas)
		want string // in the page
	}{
		{"a text", func(d Canvas) { Write(d, plane.Point{X: 10, Y: 10}, Plain(9).In(Colour{1, 0, 0}), "neck & <hem>") },
			// Nine points are 3.175 mm.
			`<text x="10" y="40" font-size="3.175" fill="#ff0000" textLength="` + svgNumber(Plain(9).Width("neck & <hem>")) + `" lengthAdjust="spacingAndGlyphs">neck &amp; &lt;hem&gt;</text>`},
		{"a turned text", func(d Canvas) { d.Text(plane.Point{X: 10, Y: 10}, plane.Point{Y: 1}, Strong(9), "i") },
			`fill="#000000" font-weight="bold" transform="rotate(-90 10 40)" textLength=`},
		{"a pen with dashes that have begun", func(d Canvas) {
			d.Pen(PenOf(mark.Stitch))
			d.Dashes(PenOf(mark.Stitch), 1.25)
			StrokeEach(d, line)
		}, `<path d="M10 40L20 40" stroke="#0d298c" stroke-width="0.35" stroke-dasharray="3 1.5" stroke-dashoffset="1.25"/>`},
		{"dots are round", func(d Canvas) { DrawLines(d, PenOf(mark.Placement), line) },
			`<path d="M10 40L20 40" stroke="#05542e" stroke-width="0.7" stroke-dasharray="0 2.4" stroke-linecap="round"/>`},
		{"moved and drawn small", func(d Canvas) {
			d.Save()
			d.Shift(plane.Point{X: 1, Y: 2})
			d.Place(plane.Point{X: 10, Y: 20}, 0.5)
			StrokeEach(d, line)
			d.Restore()
			StrokeEach(d, line)
		}, `<path d="M16 23L21 23" stroke="#000000" stroke-width="0"/>` + "\n" + `<path d="M15 25L20 25" stroke="#000000" stroke-width="0"/>`},
		{"between two boxes", func(d Canvas) {
			d.Between(plane.Box{Max: plane.Point{X: 9, Y: 9}}, plane.Box{Min: plane.Point{X: 1, Y: 1}, Max: plane.Point{X: 8, Y: 8}})
		}, `<path d="M0 50L9 50 9 41 0 41ZM1 49L8 49 8 42 1 42Z" fill="#000000" fill-rule="evenodd"/>`},
		{"what a clip does not touch", func(d Canvas) {
			d.Clip(plane.Box{Min: plane.Point{X: 5, Y: 5}, Max: plane.Point{X: 25, Y: 15}})
			StrokeEach(d, line)
		}, `<path d="M10 40L20 40" stroke="#000000" stroke-width="0"/>`},
		{"what a clip cuts", func(d Canvas) {
			d.Save()
			d.Clip(plane.Box{Min: plane.Point{X: 5, Y: 5}, Max: plane.Point{X: 60, Y: 15}})
			d.Clip(plane.Box{Min: plane.Point{X: 0, Y: 8}, Max: plane.Point{X: 15, Y: 40}})
			StrokeEach(d, line)
			d.Restore()
			StrokeEach(d, line)
		}, `<path d="M10 40L20 40" stroke="#000000" stroke-width="0" clip-path="url(#clip-1)"/>` + "\n" + `<path d="M10 40L20 40" stroke="#000000" stroke-width="0"/>`},
	} {
		t.Run(c.name, func(t *testing.T) {
			svg := svgOf(t, c.draw)
			assert.Contains(t, inside(svg), c.want)
			if strings.Contains(c.want, "clip-1") {
				assert.Contains(t, svg, `<clipPath id="clip-1"><path d="M5 42L15 42 15 35 5 35Z"/></clipPath>`)
			}
		})
	}
}

// A fraction is set in parts, each a step from where the one before ends, so that no font
// makes two of them meet.
func TestSVGFraction(t *testing.T) {
	svg := svgOf(t, func(d Canvas) { Write(d, plane.Point{X: 10, Y: 10}, Plain(10), "17 11/16 in") })
	text := svg[strings.Index(svg, "<text"):strings.Index(svg, "</text>")]
	parts := regexp.MustCompile(`>([^<>]+)</tspan>`).FindAllStringSubmatch(text, -1)
	var read string
	for _, p := range parts {
		read += p[1]
	}
	assert.Equal(t, "17¹¹⁄₁₆ in", read)
	assert.NotContains(t, text, "textLength", "parts that are moved cannot be stretched")
	assert.Contains(t, text, `xml:space="preserve"`, "or the space before the unit is lost")
	assert.NotContains(t, strings.TrimPrefix(text, `<text x="10"`), ` x="`)
}

func TestSVGHasOnePage(t *testing.T) {
	s := NewSVG("none")
	assert.EqualError(t, s.Finish(io.Discard), "an svg is one page, and 0 were drawn")
	s.NewPage(smallPage())
	s.NewPage(smallPage())
	assert.EqualError(t, s.Finish(io.Discard), "an svg is one page, and 2 were drawn")
}

// Whatever letters a title, a piece and its lines have, what is written can be read, and
// every id is there once.
func TestSVGIsWellFormed(t *testing.T) {
	name := regexp.MustCompile(`^[\pL_][\pL\pN_.-]*$`)
	rapid.Check(t, func(t *rapid.T) {
		s := NewSVG(rapid.String().Draw(t, "title"))
		s.NewPage(smallPage())
		for range rapid.IntRange(1, 4).Draw(t, "lines") {
			role := mark.Role(rapid.IntRange(0, int(mark.Laid)).Draw(t, "role"))
			drawMarks(s, rapid.String().Draw(t, "piece"), role, mark.Mark{Key: rapid.String().Draw(t, "line"), Path: plane.Path{{X: 1}, {X: 2}}})
			Write(s, plane.Point{}, Plain(9), rapid.String().Draw(t, "text"))
		}
		var out bytes.Buffer
		require.NoError(t, s.Finish(&out))
		taken := map[string]bool{}
		for d := xml.NewDecoder(&out); ; {
			token, err := d.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			require.NoError(t, err)
			start, _ := token.(xml.StartElement)
			for _, a := range start.Attr {
				if a.Name.Local == "id" {
					assert.False(t, taken[a.Value], "%q is there twice", a.Value)
					assert.Regexp(t, name, a.Value)
					taken[a.Value] = true
				}
			}
		}
	})
}
