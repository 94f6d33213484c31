package pdfout

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: the key on the first page has every kind of line that occurs on
// the sheets, drawn with the pen it is drawn with there.

const (
	keySample = 30.0 // length of a line in the line key, in mm
	keyStep   = 7.0  // the most from one line of the key to the next, in mm
)

// drawKey draws the line key: every role that occurs, with its own pen. It is
// no higher than the check square beside it, and goes no further to the right than
// its end.
func (b *book) drawKey(d ink.Canvas, corner plane.Point, end float64) {
	ink.Write(d, corner.Sub(plane.Point{Y: ink.Strong(headingSize).Up()}), ink.Strong(headingSize), "Lines")
	rows := len(b.roles)
	if b.joined() {
		rows++
	}
	const underHeading = 1.5
	step := min(keyStep, (paper.LargeSquare-underHeading)/float64(rows))
	at := corner.Sub(plane.Point{Y: step + underHeading})
	for _, role := range b.roles {
		p := ink.PenOf(role)
		sample := plane.Path{at, at.Add(plane.Point{X: keySample})}
		d.Save()
		d.Pen(p)
		if p.Ring() > 0 {
			ink.DrawRings(d, p, ringSample(sample), sample.Bounds())
		} else {
			ink.StrokeEach(d, sampleOf(role, sample)...)
		}
		d.Ink(p.Colour)
		ink.DrawSolids(d, ink.SolidsOf(p, sample)...)
		d.Restore()
		b.writeKey(d, at, role.String(), end)
		at.Y -= step
	}
	if b.joined() {
		d.Save()
		d.Pen(ink.JoinPen())
		ink.StrokeEach(d, plane.Path{at, at.Add(plane.Point{X: keySample})})
		arrange.DrawJoinMark(d, at.Add(plane.Point{X: keySample / 2}))
		d.Restore()
		b.writeKey(d, at, "trim line and join mark", end)
	}
}

// sampleOf are the lines of a sample of a role.
func sampleOf(role mark.Role, sample plane.Path) []plane.Path {
	if role == mark.Waste || role == mark.Laid {
		sample = sample.Bounds().Grown(1).Outline()
	}
	return ink.LinesOf(mark.Mark{Role: role, Path: sample})
}

// ringSample are places for rings along a sample of the line key.
func ringSample(sample plane.Path) plane.Path {
	const rings = 5
	var at plane.Path
	for k := range rings {
		at = append(at, sample[0].Toward(sample[1], float64(k)/(rings-1)))
	}
	return at
}

// writeKey names a line of the key.
func (b *book) writeKey(d ink.Canvas, at plane.Point, name string, end float64) {
	at = at.Add(plane.Point{X: keySample + 4, Y: -ink.Plain(proseSize).Up() / 2})
	ink.Write(d, at, ink.Plain(proseSize), text.Shorten(name, ink.Plain(proseSize), end-at.X))
}
