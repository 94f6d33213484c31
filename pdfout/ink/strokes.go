package ink

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: what is drawn more than once is drawn by the canvas alone, so that
// it looks the same on whatever it is drawn.

// StrokeEach draws lines with the pen taken up, each for itself.
func StrokeEach(d Canvas, lines ...plane.Path) {
	for _, line := range lines {
		d.Path(line)
		d.Stroke()
	}
}

// DrawLines draws lines with a pen, and leaves the canvas as it was.
func DrawLines(d Canvas, p Pen, lines ...plane.Path) {
	d.Save()
	d.Pen(p)
	StrokeEach(d, lines...)
	d.Restore()
}

// DrawBox draws the sides of a box with a pen, and leaves the canvas as it was.
func DrawBox(d Canvas, p Pen, b plane.Box) {
	d.Save()
	d.Pen(p)
	d.Box(b)
	d.Stroke()
	d.Restore()
}

// DrawRuns draws the parts of a line that show, with the pen taken up. Dashes begin
// where the line begins, not where the page does, so that they are the same on both
// sides of a join.
func DrawRuns(d Canvas, p Pen, runs []plane.Run) {
	period := p.period()
	for _, run := range runs {
		if period > 0 {
			d.Dashes(p, math.Mod(run.Start, period))
		}
		StrokeEach(d, run.Path)
	}
}

// DrawRings draws a circle round every point of a path that shows in a window, with
// the pen taken up.
func DrawRings(d Canvas, p Pen, points plane.Path, window plane.Box) {
	near := window.Grown(p.Ring())
	for _, q := range points {
		if near.Holds(q) {
			d.Circle(q, p.Ring())
			d.Stroke()
		}
	}
}

// FrameWidth is how thick a check square's frame is, in mm.
const FrameWidth = clothLine

// DrawMark draws a mark whole, as it is drawn on a page, but for what is written at it.
func DrawMark(d Canvas, m mark.Mark) {
	p := PenOf(m.Role)
	d.Save()
	d.Pen(p)
	d.Ink(p.Colour)
	if p.Ring() > 0 {
		DrawRings(d, p, m.Path, m.Path.Bounds())
	} else {
		StrokeEach(d, LinesOf(m)...)
	}
	DrawSolids(d, SolidsOf(p, m.Path)...)
	d.Restore()
}

// DrawCheckSquare draws the frame of a check square with its lower left corner at a
// place. It is filled: a stroked one would be wider by its line.
func DrawCheckSquare(d Canvas, corner plane.Point, side float64) {
	outer := plane.Box{Min: corner, Max: corner.Add(plane.Point{X: side, Y: side})}
	d.Save()
	d.Ink(Black())
	d.Between(outer, outer.Grown(-FrameWidth))
	d.Restore()
}
