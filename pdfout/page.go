package pdfout

import (
	"fmt"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a page shows one window of a sheet, true to scale. Over
// the window, never in it, stands what the page is and where it belongs; in
// it, besides the lines, only what tells how to join it and whether it is
// true: trim lines, join marks and the check square.

const (
	headSize = 10.0 // of the header's first line, in points
	textSize = 8.0  // of its second line
)

// bleed is how far beyond the window lines are written before the clip takes
// them away, in mm, so that no end of a line shows at the window's side.
const bleed = 2.0

// drawTile draws the page of cell k of sheet i, whose number says where it is.
func (b *book) drawTile(d ink.Canvas, i, k int, number string) {
	s := &b.sheets[i]
	c := s.Cells[k]
	b.drawHeader(d, i, k, number)
	paperWindow := s.Paper.Window()
	window := s.Grid.WindowOf(c)
	d.Save()
	d.Clip(paperWindow)
	d.Place(paperWindow.Min.Sub(window.Min), 1)
	for _, j := range s.Joins {
		j.Draw(d, c)
	}
	if len(s.Rules) > 0 {
		ink.DrawLines(d, ink.WritingPen(), s.Rules...)
	}
	for _, role := range b.roles {
		drawRole(d, s, role, c)
	}
	for _, l := range s.Labels {
		if s.Shows(l, c) {
			l.Draw(d)
		}
	}
	d.Restore()
	d.Place(plane.Point{}, 1)
	if len(s.Cells) > 1 && !hasLine(s, c) {
		ink.WriteMiddle(d, paperWindow.Centre(), ink.Plain(textSize).In(ink.Grey()), bridgeNote)
	}
	b.drawSquare(d, s.Squares[c])
}

// bridgeNote stands on a page that no line falls on.
const bridgeNote = "No line falls on this page: it is here to join its neighbours."

// hasLine reports whether a line shows on the page of a cell.
func hasLine(s *arrange.Sheet, c arrange.Cell) bool {
	window := s.Grid.WindowOf(c)
	for _, p := range s.Pieces {
		for _, l := range p.Lines {
			if l.Bounds.Meets(window) && len(l.Clip.Clip(window)) > 0 {
				return true
			}
		}
	}
	return false
}

// drawHeader writes what the page is on the left and where it belongs on the
// right.
func (b *book) drawHeader(d ink.Canvas, i, k int, page string) {
	s := &b.sheets[i]
	c := s.Cells[k]
	strip := s.Paper.Printable()
	head, under := ink.Strong(headSize), ink.Plain(textSize).In(ink.Grey())
	first := strip.Max.Y - head.Up()
	second := first - head.Step()
	right := b.howToPrint()
	if len(s.Cells) > 1 {
		right = fmt.Sprintf("row %d of %d, column %d of %d   ", c.Row+1, s.Grid.Rows, c.Column+1, s.Grid.Columns) + right
	}
	const space = 6.0 // between left and right, in mm
	names := headings(s, c)
	if len(names) == 0 { // a large page with nothing but panels
		names = []string{b.title()}
	}
	ink.Write(d, plane.Point{X: strip.Min.X, Y: first}, head, text.NamesWithin(names, head, strip.Width()-space-head.Width(page)))
	ink.WriteBefore(d, plane.Point{X: strip.Max.X, Y: first}, head, page)
	ink.Write(d, plane.Point{X: strip.Min.X, Y: second}, under, text.Shorten(b.fullTitle(), under, strip.Width()-space-under.Width(right)))
	ink.WriteBefore(d, plane.Point{X: strip.Max.X, Y: second}, under, right)
}

// headings returns the names of the pieces on the page of a cell, with the notes of
// those that have no title on the sheet.
func headings(s *arrange.Sheet, c arrange.Cell) []string {
	core := s.Grid.CoreOf(c)
	var names []string
	for _, p := range s.Pieces {
		if !p.Bounds.Meets(core) {
			continue
		}
		name := p.Name
		for _, u := range s.Untitled {
			if u.Name == p.Name && len(u.Brief) > 0 {
				name = p.Name + ": " + text.JoinedNotes(u.Brief)
			}
		}
		names = append(names, name)
	}
	return names
}

// shownLine is a line as far as it shows on a page.
type shownLine struct {
	arrange.Line
	runs []plane.Run // none of a line of rings
}

// drawRole draws all lines of a role that show on the page of a cell, and their names,
// in the role's layer.
func drawRole(d ink.Canvas, s *arrange.Sheet, role mark.Role, c arrange.Cell) {
	p := ink.PenOf(role)
	window := s.Grid.WindowOf(c)
	lines, names := linesOn(s, role, window.Grown(bleed)), namesOn(s, role, c)
	if len(lines)+len(names) == 0 {
		return
	}
	d.Layer(role)
	if len(lines) > 0 {
		d.Save()
		d.Pen(p)
		d.Ink(p.Colour)
		for _, l := range lines {
			if p.Ring() > 0 {
				ink.DrawRings(d, p, l.Clip.Path(), window.Grown(bleed))
				continue
			}
			ink.DrawRuns(d, p, l.runs)
			for _, h := range l.ArrowHeads() {
				// A head whose tip is on the next page would show its
				// base here, as a bar.
				if window.Holds(h.Tip) {
					ink.DrawHeads(d, h)
				}
			}
		}
		d.Restore()
	}
	for _, name := range names {
		name.Draw(d)
	}
	d.EndLayer()
}

// linesOn returns the lines of a role that reach into a box of the sheet.
func linesOn(s *arrange.Sheet, role mark.Role, box plane.Box) []shownLine {
	var lines []shownLine
	for _, p := range s.Pieces {
		for _, l := range p.Lines {
			if l.Role != role || !l.Bounds.Meets(box) {
				continue
			}
			if ink.PenOf(role).Ring() > 0 {
				lines = append(lines, shownLine{l, nil})
			} else if runs := l.Clip.Clip(box); len(runs) > 0 {
				lines = append(lines, shownLine{l, runs})
			}
		}
	}
	return lines
}

// namesOn returns the names of lines of a role that stand on the page of a cell.
func namesOn(s *arrange.Sheet, role mark.Role, c arrange.Cell) []arrange.Caption {
	var names []arrange.Caption
	for _, name := range s.Captions {
		if name.Role == role && s.Shows(name.Label, c) {
			names = append(names, name)
		}
	}
	return names
}

// The two lines of text in a check square: sizes in points, and how far from
// its middle they stand, in mm.
const (
	squareLabelSize = 9.0
	squareLabelUp   = 1.6
	squareHintSize  = 5.5
	squareHintDown  = 2.0
)

// drawSquare draws the page's check square with its label.
func (b *book) drawSquare(d ink.Canvas, corner plane.Point) {
	side := arrange.SquareSize(b.set.Unit)
	ink.DrawCheckSquare(d, corner, side)
	middle := corner.Add(plane.Point{X: side / 2, Y: side / 2})
	ink.WriteMiddle(d, middle.Add(plane.Point{Y: squareLabelUp}), ink.Strong(squareLabelSize).In(ink.Grey()), arrange.SquareLabel(b.set.Unit))
	ink.WriteMiddle(d, middle.Sub(plane.Point{Y: squareHintDown}), ink.Plain(squareHintSize).In(ink.Grey()), "outside to outside")
}
