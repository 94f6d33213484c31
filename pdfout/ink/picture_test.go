package ink_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// small is the size of a picture, in mm.
var small = plane.Point{X: 80, Y: 50}

// pictureOf is what a picture of that size says on which something is drawn.
func pictureOf(draw func(d ink.Canvas)) string {
	p := ink.NewPicture("a", small)
	draw(p)
	return p.Elements()
}

// drawLine draws a line of a piece with the pen of its role, inside the layer of that.
func drawLine(d ink.Canvas, role mark.Role, piece, line string, p plane.Path) {
	d.Pen(ink.PenOf(role))
	d.Mark(piece, line)
	ink.StrokeEach(d, p)
	d.EndMark()
}

func TestPictureWhole(t *testing.T) {
	assert.Equal(t, `<g fill="none" stroke-linejoin="round" font-family="Go, Arial, Helvetica, sans-serif">
<g class="fine" stroke="#000000" stroke-width="0.18">
<path d="M1 49l4 0 0-4-4 0z"/>
</g>
<g data-role="cutting line">
<g class="bold" stroke="#000000" stroke-width="0.7">
<path data-piece="bib" data-line="left side" d="M10 10l0 30"/>
<path data-piece="bib" data-line="hem" d="M10 40l20.12 0"/>
</g>
</g>
<g data-role="stitch line">
<g class="middle" stroke="#0d298c" stroke-width="0.35" stroke-dasharray="3 1.5">
<path data-piece="bib" data-line="hem stitch line" d="M10 30l20 0"/>
</g>
<path d="M9.1 32.9l1.8 0 0-2.91-1.8 0z" fill="#ffffff"/>
</g>
</g>
`, pictureOf(func(d ink.Canvas) {
		ink.DrawBox(d, ink.LinePen(ink.FineLine, ink.Black()), plane.Box{Min: plane.Point{X: 1, Y: 1}, Max: plane.Point{X: 5, Y: 5}})
		d.Layer(mark.Cut)
		drawLine(d, mark.Cut, "bib", "left side", plane.Path{{X: 10, Y: 40}, {X: 10, Y: 10}})
		drawLine(d, mark.Cut, "bib", "hem", plane.Path{{X: 10, Y: 10}, {X: 30.1234, Y: 10}})
		d.EndLayer()
		d.Layer(mark.Stitch)
		d.Ink(ink.White())
		d.Box(plane.Box{Min: plane.Point{X: 9.1, Y: 17.1}, Max: plane.Point{X: 10.9, Y: 20.0144}})
		d.Fill() // over the lines of its role, though it was drawn before
		drawLine(d, mark.Stitch, "bib", "hem stitch line", plane.Path{{X: 10, Y: 20}, {X: 30, Y: 20}})
		d.EndLayer()
	}))
}

func TestPictureElements(t *testing.T) {
	line := plane.Path{{X: 10, Y: 10}, {X: 20, Y: 10}}
	pen := ink.LinePen(1, ink.Black())
	for _, c := range []struct {
		name string
		draw func(ink.Canvas)
		want string
	}{
		{"numbers are as short as they can be", func(d ink.Canvas) {
			ink.StrokeEach(d, plane.Path{{X: 0.004, Y: 50}, {X: 0.5, Y: 49.5}, {X: 0.25, Y: 49.75}, {X: -0.05, Y: 50.05}})
		}, `d="M0 0l.5 .5-.25-.25-.3-.3"`},
		{"lines of one name in a row are one path", func(d ink.Canvas) {
			d.Layer(mark.Cut)
			drawLine(d, mark.Cut, "card", "", line)
			drawLine(d, mark.Cut, "card", "", plane.Path{{X: 20, Y: 10}, {X: 20, Y: 15}})
			drawLine(d, mark.Cut, "other card", "", line)
			d.EndLayer()
		}, `<path data-piece="card" data-line="" d="M10 40l10 0M20 40l0-5"/>` + "\n" + `<path data-piece="other card" data-line="" d="M10 40l10 0"/>`},
		{"rings", func(d ink.Canvas) {
			d.Circle(plane.Point{X: 10, Y: 10}, 0.7)
			d.Stroke()
		}, `d="M9.3 40a.7 .7 0 0 1 1.4 0a.7 .7 0 0 1-1.4 0z"`},
		{"dashes that have begun", func(d ink.Canvas) {
			d.Pen(ink.PenOf(mark.Stitch))
			d.Dashes(ink.PenOf(mark.Stitch), 1.25)
			ink.StrokeEach(d, line)
		}, `<path stroke-dashoffset="1.25" d="M10 40l10 0"/>`},
		{"dots are round", func(d ink.Canvas) { ink.DrawLines(d, ink.PenOf(mark.Placement), line) },
			`<g class="bold" stroke="#05542e" stroke-width="0.7" stroke-dasharray="0 2.4" stroke-linecap="round">`},
		{"names are escaped", func(d ink.Canvas) {
			d.Layer(mark.Cut)
			drawLine(d, mark.Cut, `"a" & <b>`, "c<d", line)
			ink.Write(d, plane.Point{}, ink.Plain(9), `</text><script>`)
			d.EndLayer()
		}, `data-piece="&#34;a&#34; &amp; &lt;b&gt;" data-line="c&lt;d"`},
		{"texts are escaped", func(d ink.Canvas) { ink.Write(d, plane.Point{}, ink.Plain(9), `</text><script>`) },
			`>&lt;/text&gt;&lt;script&gt;</text>`},
		{"a clip that cuts", func(d ink.Canvas) {
			d.Clip(plane.Box{Min: plane.Point{X: 5, Y: 5}, Max: plane.Point{X: 15, Y: 15}})
			ink.DrawLines(d, pen, line)
		}, `<clipPath id="a-clip-1"><path d="M5 45l10 0 0-10-10 0z"/></clipPath>` + "\n" + `<g class="bold" stroke="#000000" stroke-width="1">` + "\n" + `<path clip-path="url(#a-clip-1)" d="M10 40l10 0"/>`},
		{"between two boxes", func(d ink.Canvas) {
			d.Between(plane.Box{Max: plane.Point{X: 9, Y: 9}}, plane.Box{Min: plane.Point{X: 1, Y: 1}, Max: plane.Point{X: 8, Y: 8}})
		}, `<path d="M0 50l9 0 0-9-9 0zM1 49l7 0 0-7-7 0z" fill="#000000" fill-rule="evenodd"/>`},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Contains(t, pictureOf(c.draw), c.want) })
	}
}

// The three widths that CSS may keep from being lost; those of ruled paper among them.
func TestBreadthsOfLines(t *testing.T) {
	for role, want := range map[mark.Role]string{
		mark.Cut: "bold", mark.BlockEdge: "bold", mark.RuledWhole: "bold", mark.Stitch: "middle", mark.Grain: "middle", mark.RuledHalf: "middle",
		mark.Centre: "fine", mark.Notch: "fine", mark.RuledFine: "fine",
	} {
		picture := pictureOf(func(d ink.Canvas) { ink.DrawLines(d, ink.PenOf(role), plane.Path{{}, {X: 9}}) })
		assert.Contains(t, picture, `<g class="`+want+`"`, role)
	}
}

// A new page is a picture anew, as large as the paper.
func TestPictureOfAPage(t *testing.T) {
	p := ink.NewPicture("a", small)
	ink.Write(p, plane.Point{}, ink.Plain(9), "before")
	p.NewPage(paper.Paper{Width: 100, Height: 200})
	ink.Write(p, plane.Point{}, ink.Plain(9), "behind")
	assert.Equal(t, plane.Point{X: 100, Y: 200}, p.Size())
	read := seen.ReadPicture(t, p.Elements(), p.Size())
	require.Equal(t, []string{"behind"}, read.Words())
	assert.Equal(t, plane.Point{}, read.Texts[0].At)
}

// Whatever is drawn, with whatever names: it is well formed, without any style, its ids are those
// of no other picture, and every line is where it was drawn, with its names.
func TestRandomPictures(t *testing.T) {
	// What XML has no letter for comes out as U+FFFD.
	letters := rapid.StringMatching(`[ -~À-ž“”<>&"']*`)
	rapid.Check(t, func(t *rapid.T) {
		var ids []string
		for _, prefix := range []string{"sheet-1", "sheet-2"} {
			p := ink.NewPicture(prefix, small)
			place := rapid.Custom(func(t *rapid.T) plane.Point {
				return plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")}
			})
			var want []seen.PictureLine
			var words []string
			for range rapid.IntRange(0, 6).Draw(t, "layers") {
				role := mark.Role(rapid.IntRange(0, int(mark.RuledWhole)).Draw(t, "role"))
				p.Layer(role)
				p.Save()
				if rapid.Bool().Draw(t, "clipped") {
					at := place.Draw(t, "clip")
					p.Clip(plane.Box{Min: at, Max: at.Add(plane.Point{X: 30, Y: 30})})
				}
				for range rapid.IntRange(0, 4).Draw(t, "lines") {
					one := seen.PictureLine{Piece: letters.Draw(t, "piece"), Line: letters.Draw(t, "line")}
					one.Path.Layer, one.Path.Parts = role.String(), []plane.Path{rapid.SliceOfN(place, 2, 9).Draw(t, "path")}
					drawLine(p, role, one.Piece, one.Line, one.Path.Parts[0])
					want = append(want, one)
				}
				said := letters.Draw(t, "text")
				ink.Write(p, place.Draw(t, "at"), ink.Strong(9), said)
				words = append(words, said)
				p.Restore()
				p.EndLayer()
			}
			read := seen.ReadPicture(t, p.Elements(), small)
			checkLines(t, want, read.Lines)
			for _, said := range words {
				if said != "" && !strings.Contains(said, "/") {
					assert.Contains(t, read.Words(), said)
				}
			}
			assert.NotContains(t, read.Names, "style")
			for _, id := range read.IDs {
				assert.True(t, strings.HasPrefix(id, prefix+"-"), id)
				assert.NotContains(t, ids, id)
				ids = append(ids, id)
			}
		}
	})
}

// checkLines holds the lines of a picture against those drawn, in their order; those of one name
// in a row are one.
func checkLines(t *rapid.T, want, got []seen.PictureLine) {
	type named struct{ layer, piece, line string }
	flat := func(all []seen.PictureLine) (names []named, paths []plane.Path) {
		for _, l := range all {
			for _, part := range l.Path.Parts {
				names, paths = append(names, named{l.Path.Layer, l.Piece, l.Line}), append(paths, part)
			}
		}
		return names, paths
	}
	names, paths := flat(want)
	found, drawn := flat(got)
	require.Equal(t, names, found)
	for i := range paths {
		require.Len(t, drawn[i], len(paths[i]))
		for k := range paths[i] {
			require.LessOrEqual(t, paths[i][k].Distance(drawn[i][k]), 0.0071+1e-9, "rounded to 0.01 mm both ways (derived: half of that times the root of two)")
		}
	}
}

// However many steps a line has, no rounding adds up along it.
func TestNoRoundingAddsUp(t *testing.T) {
	var line plane.Path
	for i := range 5001 {
		line = append(line, plane.Point{X: float64(i) * 0.0149, Y: float64(i) * 0.0051})
	}
	read := seen.ReadPicture(t, pictureOf(func(d ink.Canvas) { ink.StrokeEach(d, line) }), small)
	drawn := read.Paths[0].Parts[0]
	require.Len(t, drawn, len(line))
	assert.LessOrEqual(t, line[5000].Distance(drawn[5000]), 0.0071)
	assert.True(t, slices.IsSortedFunc(drawn, func(a, b plane.Point) int { return int(100*a.X+0.5) - int(100*b.X+0.5) }), fmt.Sprint(drawn[:5]))
}
