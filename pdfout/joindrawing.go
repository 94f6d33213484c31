package pdfout

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
)

// Rules of this file: how pages are joined is drawn: at the left a page that lies and the
// next one, with the strip hatched that is cut off; at the right both as they lie on each
// other, the short corners under the cut edge and the halves of a circle made whole.

const (
	joinWide   = 80.0 // of the drawing, at most, in mm
	joinHigh   = 34.0
	joinStrip  = 4.0  // the strip that is cut off, and that both pages share
	joinCorner = 3.0  // a short corner
	joinApart  = 5.0  // between two pages that lie apart
	joinArrow  = 13.0 // between them and the two as they are joined
)

// joinDrawing is that drawing, so many mm wide, with its upper left corner at (0, 0).
type joinDrawing struct{ wide float64 }

// draw draws it.
func (j joinDrawing) draw(d ink.Canvas, at plane.Point) {
	low := at.Sub(plane.Point{Y: joinHigh})
	place := func(x, y float64) plane.Point { return low.Add(plane.Point{X: x, Y: y}) }
	box := func(x, wide float64) plane.Box { return plane.Box{Min: place(x, 0), Max: place(x+wide, joinHigh)} }
	middle := joinHigh / 2
	page := (j.wide - joinApart - joinArrow + 2*joinStrip) / 4 // how wide one is drawn
	next := page + joinApart
	joined := j.wide - 2*(page-joinStrip)

	// Apart: the one that lies, and the next one with its strip.
	drawPaper(d, box(0, page))
	cut := page - joinStrip
	ink.DrawLines(d, ink.JoinPen(),
		plane.Path{place(cut, 0), place(cut, joinCorner)}, plane.Path{place(cut, joinHigh-joinCorner), place(cut, joinHigh)})
	drawJoinMark(d, place(cut, middle))
	drawPaper(d, box(next, page))
	drawHatching(d, box(next, joinStrip), 1)
	ink.DrawLines(d, ink.OutlinePen(), plane.Path{place(next+joinStrip, 0), place(next+joinStrip, joinHigh)})
	drawJoinMark(d, place(next+joinStrip, middle))

	// Joined.
	drawPaper(d, box(joined, cut))
	drawPaper(d, box(joined+cut, cut))
	drawJoinMark(d, place(joined+cut, middle))
	tip := place(joined-joinArrow/4, middle)
	ink.DrawLines(d, ink.OutlinePen(), plane.Path{place(joined-3*joinArrow/4, middle), tip})
	d.Save()
	d.Ink(ink.Black())
	ink.DrawSolids(d, ink.Head(tip, plane.Point{X: 1}, 2.4, 1.6))
	d.Restore()

	for _, one := range []struct {
		x    float64
		text string
	}{{cut / 2, "1"}, {next + joinStrip + cut/2, "2"}, {joined + cut/2, "1"}, {joined + cut*3/2, "2"}} {
		ink.WriteMiddle(d, place(one.x, joinHigh-5), ink.StrongText(), one.text)
	}
}

// drawPaper draws the edges of a page.
func drawPaper(d ink.Canvas, b plane.Box) {
	ink.DrawBox(d, ink.OutlinePen(), b)
}

// drawJoinMark draws a join mark as it is on the pages.
func drawJoinMark(d ink.Canvas, at plane.Point) {
	d.Save()
	d.Pen(ink.JoinPen())
	arrange.DrawJoinMark(d, at)
	d.Restore()
}
