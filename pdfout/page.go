package pdfout

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a page shows one window of a sheet, true to scale. Over
// the window, never in it, stand what the page is, where it belongs, and the square that
// says whether it is true (header.go); in it, besides the lines, only what tells how to
// join it: trim lines and join marks.

// page is a page of a sheet.
type page struct {
	*laidSheet
	cell arrange.Cell
}

// page is the page of the sheet's k-th cell, in the order of gluing.
func (s *laidSheet) page(k int) page { return page{s, s.Cells[k]} }

// numberOf is the number of the page of a cell.
func (s *laidSheet) numberOf(c arrange.Cell) int { return s.first + slices.Index(s.Cells, c) }

// window is what of the sheet the page shows, and core what of that lies within its
// joins.
func (p page) window() plane.Box { return p.Grid.WindowOf(p.cell) }

func (p page) core() plane.Box { return p.Grid.CoreOf(p.cell) }

// bleed is how far beyond the window lines are written before the clip takes
// them away, in mm, so that no end of a line shows at the window's side.
const bleed = 2.0

// underStrip is kept free under the strip over the window, in mm: no line is joined there,
// and pieces begin further down.
const underStrip = 1.0

// bridgeNote stands on a page that no line falls on.
const bridgeNote = "No line falls on this page: it is here to join its neighbours."

// drawPage draws a page of a sheet; its number says where it is.
func (b *book) drawPage(d ink.Canvas, p page, number string) {
	b.drawHeader(d, p, number)
	onPaper := p.Paper.Window()
	d.Save()
	shown := onPaper
	shown.Max.Y -= underStrip
	d.Clip(shown)
	d.Place(onPaper.Min.Sub(p.window().Min), 1)
	for _, role := range b.roles {
		if role.OnRuledPaper() {
			p.drawRole(d, role)
		}
	}
	p.drawLabels(d, p.Pale)
	for _, j := range p.Joins {
		j.Draw(d, p.cell, p.numberOf)
	}
	if len(p.Rules) > 0 {
		ink.DrawLines(d, ink.WritingPen(), p.Rules...)
	}
	for _, role := range b.roles {
		if !role.OnRuledPaper() {
			p.drawRole(d, role)
		}
	}
	p.drawThin(d)
	p.drawLabels(d, p.Labels)
	d.Restore()
	d.Place(plane.Point{}, 1)
	if len(p.Cells) > 1 && !p.hasLine() {
		ink.WriteMiddle(d, onPaper.Centre(), ink.Caption(), bridgeNote)
	}
}

// drawLabels writes those of some texts that stand on the page.
func (p page) drawLabels(d ink.Canvas, labels []text.Label) {
	for _, l := range labels {
		if p.Shows(l, p.cell) {
			l.Draw(d)
		}
	}
}

// drawThin draws leaders and dimensions, as far as they lie within the page's joins.
func (p page) drawThin(d ink.Canvas) {
	var lines []plane.Path
	for _, l := range p.Thin {
		if l.Bounds().Meets(p.core()) {
			lines = append(lines, l)
		}
	}
	if len(lines) == 0 {
		return
	}
	d.Save()
	d.Clip(p.core())
	d.Pen(ink.NotePen())
	d.Ink(ink.Black())
	ink.StrokeEach(d, lines...)
	for _, h := range p.Heads {
		if p.core().Holds(h.Shape[0]) {
			ink.DrawSolids(d, h)
		}
	}
	d.Restore()
}

// hasLine reports whether a line shows on the page.
func (p page) hasLine() bool {
	for _, piece := range p.Pieces {
		for _, l := range piece.Lines {
			if l.Bounds().Meets(p.window()) && len(l.Clip(p.window())) > 0 {
				return true
			}
		}
	}
	return false
}

// shownLine is a line as far as it shows on a page.
type shownLine struct {
	arrange.Line
	piece string      // its key
	runs  []plane.Run // none of a line of rings
}

// drawRole draws all lines of a role that show on the page, and their names, in the
// role's layer.
func (p page) drawRole(d ink.Canvas, role mark.Role) {
	lines, names := p.linesOf(role), p.namesOf(role)
	if len(lines)+len(names) == 0 {
		return
	}
	d.Layer(role)
	p.drawLines(d, ink.PenOf(role), lines)
	for _, l := range p.Letters {
		if l.Role == role && p.core().Meets(l.Room.Bounds()) {
			ink.DrawLetter(d, l.Style, l.Text, l.At, l.U)
		}
	}
	for _, name := range names {
		name.Draw(d)
	}
	d.EndLayer()
}

// drawLines draws lines with a pen, as far as they show, with its heads and flags.
func (p page) drawLines(d ink.Canvas, pen ink.Pen, lines []shownLine) {
	if len(lines) == 0 {
		return
	}
	d.Save()
	d.Pen(pen)
	d.Ink(pen.Colour)
	for _, l := range lines {
		d.Mark(l.piece, l.Key)
		if pen.Ring() > 0 {
			ink.DrawRings(d, pen, l.Path(), p.window().Grown(bleed))
		} else {
			ink.DrawRuns(d, pen, l.runs)
		}
		d.EndMark()
		for _, s := range l.Solids() {
			// A head whose tip is on the next page would show its base here, as a bar.
			if p.window().Holds(s.Shape[0]) {
				ink.DrawSolids(d, s)
			}
		}
	}
	d.Restore()
}

// linesOf returns the lines of a role that reach into the page.
func (p page) linesOf(role mark.Role) []shownLine {
	box := p.window().Grown(bleed)
	var lines []shownLine
	for _, piece := range p.Pieces {
		for _, l := range piece.Lines {
			if l.Role != role || !l.Bounds().Meets(box) {
				continue
			}
			if ink.PenOf(role).Ring() > 0 {
				lines = append(lines, shownLine{l, piece.Key, nil})
			} else if runs := l.Clip(box); len(runs) > 0 {
				lines = append(lines, shownLine{l, piece.Key, runs})
			}
		}
	}
	return lines
}

// namesOf returns the names of lines of a role that stand on the page.
func (p page) namesOf(role mark.Role) []arrange.Caption {
	var names []arrange.Caption
	for _, name := range p.Captions {
		if name.Role == role && p.Shows(name.Label, p.cell) {
			names = append(names, name)
		}
	}
	return names
}
