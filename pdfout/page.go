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

// view is what of a sheet is shown at once: one page of it, or all.
type view struct {
	*laidSheet
	window plane.Box      // what is shown
	core   plane.Box      // what of that lies within the joins
	cells  []arrange.Cell // that are shown
}

// page is a page of a sheet.
type page struct {
	view
	cell arrange.Cell
}

// page is the page of the sheet's k-th cell, in the order of gluing.
func (s *laidSheet) page(k int) page {
	c := s.Cells[k]
	return page{view{s, s.Grid.WindowOf(c), s.Grid.CoreOf(c), s.Cells[k : k+1]}, c}
}

// numberOf is the number of the page of a cell.
func (s *laidSheet) numberOf(c arrange.Cell) int { return s.first + slices.Index(s.Cells, c) }

// bleed is how far beyond the window lines are written before the clip takes
// them away, in mm, so that no end of a line shows at the window's side.
const bleed = 2.0

// underStrip is kept free under the strip over the window, in mm: no line is joined there,
// and pieces begin further down.
const underStrip = 1.0

// bridgeNote stands on a page that no line falls on.
const bridgeNote = "No line falls on this page: it is here to join its neighbours."

// drawPage draws a page of a sheet; its number says where it is.
func (b *Book) drawPage(d ink.Canvas, p page, number string) {
	b.drawHeader(d, p, number)
	onPaper := p.Paper.Window()
	d.Save()
	shown := onPaper
	shown.Max.Y -= underStrip
	d.Clip(shown)
	d.Place(onPaper.Min.Sub(p.window.Min), 1)
	p.draw(d, b.roles, func() {
		for _, j := range p.Joins {
			j.Draw(d, p.cell, p.numberOf)
		}
	})
	d.Restore()
	d.Place(plane.Point{}, 1)
	if len(p.Sheet.Cells) > 1 && !p.hasLine() {
		ink.WriteMiddle(d, onPaper.Centre(), ink.Caption(), bridgeNote)
	}
}

// draw draws all that is shown, its lines in some roles; what joins pages lies over ruled paper,
// and under the lines of pieces.
func (v view) draw(d ink.Canvas, roles []mark.Role, joins func()) {
	for _, role := range roles {
		if role.OnRuledPaper() {
			v.drawRole(d, role)
		}
	}
	v.drawLabels(d, v.Pale)
	joins()
	if len(v.Rules) > 0 {
		ink.DrawLines(d, ink.WritingPen(), v.Rules...)
	}
	for _, role := range roles {
		if !role.OnRuledPaper() {
			v.drawRole(d, role)
		}
	}
	v.drawThin(d)
	v.drawLabels(d, v.Labels)
}

// stands reports whether a text stands on what is shown.
func (v view) stands(l text.Label) bool {
	return slices.ContainsFunc(v.cells, func(c arrange.Cell) bool { return v.Shows(l, c) })
}

// drawLabels writes those of some texts that stand on the page.
func (v view) drawLabels(d ink.Canvas, labels []text.Label) {
	for _, l := range labels {
		if v.stands(l) {
			l.Draw(d)
		}
	}
}

// drawThin draws leaders and dimensions, as far as they lie within the page's joins.
func (v view) drawThin(d ink.Canvas) {
	var lines []plane.Path
	for _, l := range v.Thin {
		if l.Bounds().Meets(v.core) {
			lines = append(lines, l)
		}
	}
	if len(lines) == 0 {
		return
	}
	d.Save()
	d.Clip(v.core)
	d.Pen(ink.NotePen())
	d.Ink(ink.Black())
	ink.StrokeEach(d, lines...)
	for _, h := range v.Heads {
		if v.core.Holds(h.Shape[0]) {
			ink.DrawSolids(d, h)
		}
	}
	d.Restore()
}

// hasLine reports whether a line shows on the page.
func (v view) hasLine() bool {
	for _, piece := range v.Pieces {
		for _, l := range piece.Lines {
			if l.Bounds().Meets(v.window) && len(l.Clip(v.window)) > 0 {
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
func (v view) drawRole(d ink.Canvas, role mark.Role) {
	lines, names := v.linesOf(role), v.namesOf(role)
	if len(lines)+len(names) == 0 {
		return
	}
	d.Layer(role)
	v.drawLines(d, ink.PenOf(role), lines)
	for _, l := range v.Letters {
		if l.Role == role && v.core.Meets(l.Room.Bounds()) {
			ink.DrawLetter(d, l.Style, l.Text, l.At, l.U)
		}
	}
	for _, name := range names {
		name.Draw(d)
	}
	d.EndLayer()
}

// drawLines draws lines with a pen, as far as they show, with its heads and flags.
func (v view) drawLines(d ink.Canvas, pen ink.Pen, lines []shownLine) {
	if len(lines) == 0 {
		return
	}
	d.Save()
	d.Pen(pen)
	d.Ink(pen.Colour)
	for _, l := range lines {
		d.Mark(l.piece, l.Key)
		if pen.Ring() > 0 {
			ink.DrawRings(d, pen, l.Path(), v.window.Grown(bleed))
		} else {
			ink.DrawRuns(d, pen, l.runs)
		}
		d.EndMark()
		for _, s := range l.Solids() {
			// A head whose tip is on the next page would show its base here, as a bar.
			if v.window.Holds(s.Shape[0]) {
				ink.DrawSolids(d, s)
			}
		}
	}
	d.Restore()
}

// linesOf returns the lines of a role that reach into the page.
func (v view) linesOf(role mark.Role) []shownLine {
	box := v.window.Grown(bleed)
	var lines []shownLine
	for _, piece := range v.Pieces {
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
func (v view) namesOf(role mark.Role) []arrange.Caption {
	var names []arrange.Caption
	for _, name := range v.Captions {
		if name.Role == role && v.stands(name.Label) {
			names = append(names, name)
		}
	}
	return names
}
