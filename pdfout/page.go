package pdfout

import (
	"fmt"
	"math"
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
func (b *book) drawTile(d *document, i, k int, number string) {
	s := &b.sheets[i]
	c := s.cells[k]
	b.drawHeader(d, i, k, number)
	paperWindow := s.paper.window()
	window := s.grid.windowOf(c)
	d.save()
	d.clip(paperWindow)
	d.place(paperWindow.Min.Sub(window.Min), 1)
	s.drawJoins(d, c)
	s.drawRules(d)
	for _, role := range b.roles {
		s.drawRole(d, role, c)
	}
	for _, l := range s.labels {
		if !l.ofALine && s.shows(l, c) {
			l.draw(d)
		}
	}
	d.restore()
	d.place(plane.Point{}, 1)
	if len(s.cells) > 1 && !s.hasLine(c) {
		writeMiddle(d, paperWindow.Centre(), regular(), textSize, grey(), bridgeNote)
	}
	b.drawSquare(d, s.squares[k])
}

// bridgeNote stands on a page that no line falls on.
const bridgeNote = "No line falls on this page: it is here to join its neighbours."

// hasLine reports whether a line shows on the page of a cell.
func (s *sheet) hasLine(c cell) bool {
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
func (b *book) drawHeader(d *document, i, k int, page string) {
	s := &b.sheets[i]
	c := s.cells[k]
	strip := s.paper.printable()
	first := strip.Max.Y - headSize*ascent*point
	second := first - headSize*leading*point
	right := b.howToPrint()
	if len(s.cells) > 1 {
		right = fmt.Sprintf("row %d of %d, column %d of %d   ", c.row+1, s.grid.rows, c.column+1, s.grid.columns) + right
	}
	const space = 6.0 // between left and right, in mm
	names := s.headings(c)
	if len(names) == 0 { // a large page with nothing but panels
		names = []string{b.title()}
	}
	write(d, plane.Point{X: strip.Min.X, Y: first}, bold(), headSize, black(),
		namesWithin(bold(), names, headSize, strip.Width()-space-bold().width(page, headSize)))
	writeBefore(d, plane.Point{X: strip.Max.X, Y: first}, bold(), headSize, black(), page)
	write(d, plane.Point{X: strip.Min.X, Y: second}, regular(), textSize, grey(),
		regular().shorten(b.fullTitle(), textSize, strip.Width()-space-regular().width(right, textSize)))
	writeBefore(d, plane.Point{X: strip.Max.X, Y: second}, regular(), textSize, grey(), right)
}

// headings returns the names of the pieces on the page of a cell, with the notes of
// those that have no title on the sheet.
func (s *sheet) headings(c cell) []string {
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

// namesWithin joins names in limit mm; those that do not fit are counted.
func namesWithin(f *face, names []string, size, limit float64) string {
	for shown := len(names); shown > 0; shown-- {
		if text := someNames(names, shown); f.width(text, size) <= limit {
			return text
		}
	}
	return f.shorten(someNames(names, 1), size, limit)
}

// drawRole draws all lines of a role that show on the page of a cell, in the
// role's layer.
func (s *sheet) drawRole(d *document, role marking.Role, c cell) {
	window := s.grid.windowOf(c)
	beyond := window.Grown(bleed)
	begun := false
	begin := func() {
		if !begun {
			d.layer(role)
			d.save()
			d.pen(penOf(role))
			d.fillColour(penOf(role).colour)
			begun = true
		}
	}
	for _, p := range s.pieces {
		for _, l := range p.lines {
			if l.role != role || !l.bounds.Meets(beyond) {
				continue
			}
			if p := penOf(role); p.kind.ring > 0 {
				begin()
				drawRings(d, p, l.clip.Path(), beyond)
				continue
			}
			if runs := l.clip.Clip(beyond); len(runs) > 0 {
				begin()
				drawRuns(d, penOf(role), runs)
				for _, h := range l.arrowHeads() {
					// A head whose tip is on the next page would show its
					// base here, as a bar.
					if window.Holds(h.tip) {
						d.path(h.triangle())
						d.fill()
					}
				}
			}
		}
	}
	if begun {
		d.restore()
	}
	for _, l := range s.labels {
		if l.ofALine && l.role == role && s.shows(l, c) {
			if !begun {
				d.layer(role)
				begun = true
			}
			l.draw(d)
		}
	}
	if begun {
		d.endLayer()
	}
}

// drawRuns draws the parts of a line. Dashes begin where the line begins, not
// where the page does, so that they are the same on both sides of a join.
func drawRuns(d *document, p pen, runs []plane.Run) {
	period := p.period()
	for _, run := range runs {
		if period > 0 {
			d.dashes(p, math.Mod(run.Start, period))
		}
		d.path(run.Path)
		d.stroke()
	}
}

// drawRings draws a circle round every point of a path that shows in a window.
func drawRings(d *document, p pen, points plane.Path, window plane.Box) {
	near := window.Grown(p.kind.ring)
	for _, q := range points {
		if near.Holds(q) {
			d.circle(q, p.kind.ring)
			d.stroke()
		}
	}
}

// drawRules draws the lines to write on.
func (s *sheet) drawRules(d *document) {
	if len(s.rules) == 0 {
		return
	}
	d.save()
	d.pen(writingPen())
	for _, r := range s.rules {
		d.path(r)
		d.stroke()
	}
	d.restore()
}

// draw writes a label.
func (l label) draw(d *document) {
	d.text(l.at, l.u, l.face, l.size, l.colour, l.text)
}

// drawJoins draws the joins of a page: the trim lines it is cut along, the corners
// where others come to lie, and the marks of both.
func (s *sheet) drawJoins(d *document, c cell) {
	for _, j := range s.joins {
		lines := []plane.Path{{j.from, j.to}}
		switch c {
		case j.a:
			lines = j.corners()
		case j.b:
		default:
			continue
		}
		d.save()
		d.pen(joinPen())
		for _, line := range lines {
			d.path(line)
			d.stroke()
		}
		for _, m := range j.marks {
			drawJoinMark(d, m)
		}
		d.restore()
		aside := plane.Point{X: markAway}
		if !j.upright() {
			aside = plane.Point{Y: markAway}
		}
		for _, m := range j.marks {
			writeMiddle(d, m.Add(aside), bold(), markNumber, grey(), strconv.Itoa(j.number))
			writeMiddle(d, m.Sub(aside), bold(), markNumber, grey(), strconv.Itoa(j.number))
		}
	}
}

// drawJoinMark draws the circle and cross of a join mark.
func drawJoinMark(d *document, at plane.Point) {
	d.circle(at, markRadius)
	for _, arm := range []plane.Point{{X: markArm}, {Y: markArm}} {
		d.path(plane.Path{at.Sub(arm), at.Add(arm)})
	}
	d.stroke()
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
func (b *book) drawSquare(d *document, corner plane.Point) {
	side := squareSize(b.set.Unit)
	d.checkSquare(corner, side)
	middle := corner.Add(plane.Point{X: side / 2, Y: side / 2})
	writeMiddle(d, middle.Add(plane.Point{Y: squareLabelUp}), bold(), squareLabelSize, grey(), squareLabel(b.set.Unit))
	writeMiddle(d, middle.Sub(plane.Point{Y: squareHintDown}), regular(), squareHintSize, grey(), "outside to outside")
}
