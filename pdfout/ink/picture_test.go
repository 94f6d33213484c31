package ink

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// pictureOf is what a picture of 80 by 50 mm says on which something is drawn.
func pictureOf(draw func(d Canvas)) string {
	p := NewPicture("a", plane.Point{X: 80, Y: 50})
	draw(p)
	return p.Elements()
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
`, pictureOf(func(d Canvas) {
		DrawBox(d, LinePen(FineLine, Black()), plane.Box{Min: plane.Point{X: 1, Y: 1}, Max: plane.Point{X: 5, Y: 5}})
		drawMarks(d, "bib", mark.Cut,
			mark.Mark{Name: "left side", Path: plane.Path{{X: 10, Y: 40}, {X: 10, Y: 10}}},
			mark.Mark{Name: "hem", Path: plane.Path{{X: 10, Y: 10}, {X: 30.1234, Y: 10}}})
		d.Layer(mark.Stitch)
		d.Ink(White())
		d.Box(plane.Box{Min: plane.Point{X: 9.1, Y: 17.1}, Max: plane.Point{X: 10.9, Y: 20.0144}})
		d.Fill() // over the lines of its role, though it was drawn before
		d.Pen(PenOf(mark.Stitch))
		d.Mark("bib", "hem stitch line")
		StrokeEach(d, plane.Path{{X: 10, Y: 20}, {X: 30, Y: 20}})
		d.EndMark()
		d.EndLayer()
	}))
}
