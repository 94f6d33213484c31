package pdfout

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the key on the first page has every kind of line that occurs on
// the sheets, drawn with the pen it is drawn with there.

const (
	keySample = 18.0 // length of a line in the line key, in mm
	keyStep   = 5.4  // from one line of the key to the next, in mm
)

// keyBlock is the line key, of a width in mm.
func (b *book) keyBlock(width float64) block {
	key := underHeading("Lines", width)
	key.put(lineKey{b, width}, plane.Point{Y: -key.Height})
	rows := len(b.roles)
	if b.joined() {
		rows++
	}
	key.Height += float64(rows) * keyStep
	return key
}

// lineKey is the key as it is drawn.
type lineKey struct {
	*book
	width float64
}

// draw draws every role that occurs, with its own pen.
func (b lineKey) draw(d ink.Canvas, corner plane.Point) {
	const step = keyStep
	end := corner.X + b.width
	at := corner.Sub(plane.Point{Y: step / 2})
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
	at = at.Add(plane.Point{X: keySample + 3, Y: -ink.Text().Up() / 2})
	ink.Write(d, at, ink.Text(), text.Shorten(name, ink.Text(), end-at.X))
}
