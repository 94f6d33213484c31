package pdfout

import (
	"fmt"
	"strconv"

	"tuckmark/marking"
	"tuckmark/marking/plane"
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
func (b *book) drawTile(d Canvas, i, k int, number string) {
	s := &b.sheets[i]
	c := s.cells[k]
	b.drawHeader(d, i, k, number)
	paperWindow := s.paper.window()
	window := s.grid.windowOf(c)
	d.Save()
	d.Clip(paperWindow)
	d.Place(paperWindow.Min.Sub(window.Min), 1)
	drawJoins(d, s, c)
	if len(s.rules) > 0 {
		drawLines(d, writingPen(), s.rules...)
	}
	for _, role := range b.roles {
		drawRole(d, s, role, c)
	}
	for _, l := range s.labels {
		if s.shows(l, c) {
			l.draw(d)
		}
	}
	d.Restore()
	d.Place(plane.Point{}, 1)
	if len(s.cells) > 1 && !hasLine(s, c) {
		writeMiddle(d, paperWindow.Centre(), plain(textSize).in(grey()), bridgeNote)
	}
	b.drawSquare(d, s.squares[k])
}

// bridgeNote stands on a page that no line falls on.
const bridgeNote = "No line falls on this page: it is here to join its neighbours."

// hasLine reports whether a line shows on the page of a cell.
func hasLine(s *sheet, c cell) bool {
	window := s.grid.windowOf(c)
	for _, p := range s.pieces {
		for _, l := range p.lines {
			if l.bounds.Meets(window) && len(l.clip.Clip(window)) > 0 {
				return true
			}
		}
	}
	return false
}

// drawHeader writes what the page is on the left and where it belongs on the
// right.
func (b *book) drawHeader(d Canvas, i, k int, page string) {
	s := &b.sheets[i]
	c := s.cells[k]
	strip := s.paper.printable()
	head, under := strong(headSize), plain(textSize).in(grey())
	first := strip.Max.Y - head.up()
	second := first - head.step()
	right := b.howToPrint()
	if len(s.cells) > 1 {
		right = fmt.Sprintf("row %d of %d, column %d of %d   ", c.row+1, s.grid.rows, c.column+1, s.grid.columns) + right
	}
	const space = 6.0 // between left and right, in mm
	names := headings(s, c)
	if len(names) == 0 { // a large page with nothing but panels
		names = []string{b.title()}
	}
	write(d, plane.Point{X: strip.Min.X, Y: first}, head, namesWithin(names, head, strip.Width()-space-head.width(page)))
	writeBefore(d, plane.Point{X: strip.Max.X, Y: first}, head, page)
	write(d, plane.Point{X: strip.Min.X, Y: second}, under, shorten(b.fullTitle(), under, strip.Width()-space-under.width(right)))
	writeBefore(d, plane.Point{X: strip.Max.X, Y: second}, under, right)
}

// headings returns the names of the pieces on the page of a cell, with the notes of
// those that have no title on the sheet.
func headings(s *sheet, c cell) []string {
	core := s.grid.coreOf(c)
	var names []string
	for _, p := range s.pieces {
		if !p.bounds.Meets(core) {
			continue
		}
		name := p.name
		for _, u := range s.untitled {
			if u.name == p.name && len(u.brief) > 0 {
				name = p.name + ": " + joinedNotes(u.brief)
			}
		}
		names = append(names, name)
	}
	return names
}

// shownLine is a line as far as it shows on a page.
type shownLine struct {
	line
	runs []plane.Run // none of a line of rings
}

// drawRole draws all lines of a role that show on the page of a cell, and their names,
// in the role's layer.
func drawRole(d Canvas, s *sheet, role marking.Role, c cell) {
	p := penOf(role)
	window := s.grid.windowOf(c)
	lines, names := linesOn(s, role, window.Grown(bleed)), namesOn(s, role, c)
	if len(lines)+len(names) == 0 {
		return
	}
	d.Layer(role)
	if len(lines) > 0 {
		d.Save()
		d.Pen(p)
		d.Ink(p.colour)
		for _, l := range lines {
			if p.kind.ring > 0 {
				drawRings(d, p, l.clip.Path(), window.Grown(bleed))
				continue
			}
			drawRuns(d, p, l.runs)
			for _, h := range l.arrowHeads() {
				// A head whose tip is on the next page would show its
				// base here, as a bar.
				if window.Holds(h.tip) {
					drawHeads(d, h)
				}
			}
		}
		d.Restore()
	}
	for _, name := range names {
		name.draw(d)
	}
	d.EndLayer()
}

// linesOn returns the lines of a role that reach into a box of the sheet.
func linesOn(s *sheet, role marking.Role, box plane.Box) []shownLine {
	var lines []shownLine
	for _, p := range s.pieces {
		for _, l := range p.lines {
			if l.role != role || !l.bounds.Meets(box) {
				continue
			}
			if penOf(role).kind.ring > 0 {
				lines = append(lines, shownLine{l, nil})
			} else if runs := l.clip.Clip(box); len(runs) > 0 {
				lines = append(lines, shownLine{l, runs})
			}
		}
	}
	return lines
}

// namesOn returns the names of lines of a role that stand on the page of a cell.
func namesOn(s *sheet, role marking.Role, c cell) []caption {
	var names []caption
	for _, name := range s.captions {
		if name.role == role && s.shows(name.label, c) {
			names = append(names, name)
		}
	}
	return names
}

// drawJoins draws the joins of a page: the trim lines it is cut along, the corners
// where others come to lie, and the marks of both.
func drawJoins(d Canvas, s *sheet, c cell) {
	for _, j := range s.joins {
		lines := []plane.Path{{j.from, j.to}}
		switch c {
		case j.a:
			lines = j.corners()
		case j.b:
		default:
			continue
		}
		d.Save()
		d.Pen(joinPen())
		strokeEach(d, lines...)
		for _, m := range j.marks {
			drawJoinMark(d, m)
		}
		d.Restore()
		aside := plane.Point{X: markAway}
		if !j.upright() {
			aside = plane.Point{Y: markAway}
		}
		for _, m := range j.marks {
			for _, at := range []plane.Point{m.Add(aside), m.Sub(aside)} {
				writeMiddle(d, at, strong(markNumber).in(grey()), strconv.Itoa(j.number))
			}
		}
	}
}

// drawJoinMark draws the circle and cross of a join mark.
func drawJoinMark(d Canvas, at plane.Point) {
	d.Circle(at, markRadius)
	for _, arm := range []plane.Point{{X: markArm}, {Y: markArm}} {
		d.Path(plane.Path{at.Sub(arm), at.Add(arm)})
	}
	d.Stroke()
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
func (b *book) drawSquare(d Canvas, corner plane.Point) {
	side := squareSize(b.set.Unit)
	drawCheckSquare(d, corner, side)
	middle := corner.Add(plane.Point{X: side / 2, Y: side / 2})
	writeMiddle(d, middle.Add(plane.Point{Y: squareLabelUp}), strong(squareLabelSize).in(grey()), squareLabel(b.set.Unit))
	writeMiddle(d, middle.Sub(plane.Point{Y: squareHintDown}), plain(squareHintSize).in(grey()), "outside to outside")
}
