package pdfout

import (
	"cmp"
	"fmt"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/text"
)

// Rules of this file: the first page proves the scale before any cloth is
// marked, and tells in plain words how to go on. Its check square is two
// frames with one lower left corner: 4 in, which is 288 units, and 100 mm,
// which is 283.465 units.

const (
	titleSize   = 22.0 // sizes in points
	sizeSize    = 13.0
	headingSize = 10.0
	proseSize   = 8.5
	paragraph   = 0.45 // between two paragraphs, in lines
	keySample   = 30.0 // length of a line in the line key, in mm
	keyStep     = 7.0  // the most from one line of the key to the next, in mm
	keyWidth    = 72.0 // of the line key where text stands beside it, in mm
	underSquare = 7.0  // free under the check square, in mm
	underProse  = 4.0  // between two texts with headings, in mm
)

// What stands over the pictures of the sheets, and over what is to be heeded.
const (
	picturesHeading = "How the pages lie"
	careHeading     = "Take care"
)

// cover is the first page as planned.
type cover struct {
	text.Lines             // its texts, and the thin lines that part it
	square     plane.Point // lower left corner of the check square
	key        plane.Point // where the line key begins: upper left
	keyEnd     float64     // how far it may go to the right
	pictures   plane.Box   // what is left for the pictures
	foot       float64     // how high the lowest line stands over which there is text
}

// frontBox is what the pages in front are set in.
func (b *book) frontBox() plane.Box { return b.leaf.Front() }

// overview is the room for pictures on a page of their own.
func (b *book) overview() plane.Box { return b.leaf.UnderHeader() }

// addProse sets paragraphs under a heading.
func addProse(t *text.Lines, heading string, paragraphs []string, width float64) {
	head, style := ink.Strong(headingSize), ink.Plain(proseSize)
	t.Add(text.WrapShortened(heading, head, width, 1), head)
	for _, s := range paragraphs {
		t.Space(style.Ems(paragraph))
		t.Add(text.Wrap(s, style, width), style)
	}
}

// cover plans the first page.
func (b *book) cover() cover {
	box := b.frontBox()
	var c cover
	top := text.LinesFrom(box.Max.Y)
	say := func(t *text.Lines, words string, s ink.Style, most int) {
		t.Add(text.WrapShortened(words, s, box.Width(), most), s)
	}
	rule := func(y float64) {
		c.Rules = append(c.Rules, plane.Path{{X: box.Min.X, Y: y}, {X: box.Max.X, Y: y}})
	}
	say(&top, b.title(), ink.Strong(titleSize), 2)
	say(&top, b.sizeLine(), ink.Plain(sizeSize), 2)
	top.Space(1)
	say(&top, b.onPaper(), ink.Plain(proseSize).In(ink.Grey()), 1)
	top.Space(2.5)
	rule(top.Y())
	top.Space(2)
	say(&top, b.printing(), ink.Strong(headingSize+1), 2)
	top.Space(5.5)
	c.With(top, plane.Point{X: box.Min.X})

	c.square = plane.Point{X: paper.SnapUp(box.Min.X), Y: paper.SnapDown(top.Y() - paper.LargeSquare)}
	b.tellInSquare(&c)
	c.key = plane.Point{X: c.square.X + paper.LargeSquare + text.Gutter, Y: c.square.Y + paper.LargeSquare}
	c.nameSquare()
	c.keyEnd = box.Max.X
	if box.Width() > box.Height() {
		b.tellBeside(&c, box)
	} else {
		b.tellUnder(&c, box)
	}
	if b.forms == len(b.sheets) || b.paper.WhollyOnOne() {
		return c
	}
	down := text.LinesFrom(c.foot - 3)
	rule(down.Y())
	down.Space(2)
	say(&down, picturesHeading, ink.Strong(headingSize), 1)
	down.Space(3)
	c.With(down, plane.Point{X: box.Min.X})
	c.pictures = plane.Box{Min: box.Min, Max: plane.Point{X: box.Max.X, Y: down.Y()}}
	return c
}

// tellBeside sets how to go on, and what to take care of, to the right of the line key.
func (b *book) tellBeside(c *cover, box plane.Box) {
	c.keyEnd = c.key.X + keyWidth
	left := c.keyEnd + text.Gutter
	beside := text.LinesFrom(c.key.Y)
	heading, steps := b.joining()
	addProse(&beside, heading, steps, box.Max.X-left)
	if len(b.set.Cautions) > 0 {
		beside.Space(underProse)
		addProse(&beside, careHeading, b.set.Cautions, box.Max.X-left)
	}
	c.With(beside, plane.Point{X: left})
	c.foot = min(beside.Y(), c.square.Y)
}

// tellUnder sets them in two columns under the check square.
func (b *book) tellUnder(c *cover, box plane.Box) {
	half := (box.Width() - text.Gutter) / 2
	left, right := text.LinesFrom(c.square.Y-underSquare), text.LinesFrom(c.square.Y-underSquare)
	heading, steps := b.joining()
	addProse(&left, heading, steps, half)
	if len(b.set.Cautions) > 0 {
		addProse(&right, careHeading, b.set.Cautions, half)
	}
	c.With(left, plane.Point{X: box.Min.X})
	c.With(right, plane.Point{X: box.Min.X + half + text.Gutter})
	c.foot = min(left.Y(), right.Y())
}

// tellInSquare sets what to do with the check square in the middle of it.
func (b *book) tellInSquare(c *cover) {
	const inset = 9.0
	var s, inCorner text.Lines
	addProse(&s, "Measure this square before you mark any cloth", b.measuring(), paper.InnerSquare-2*inset)
	inCorner.With(s, c.square)
	c.With(inCorner, plane.Point{X: inset, Y: (paper.InnerSquare + s.Height) / 2})
}

func (b *book) sizeLine() string {
	kind := cmp.Or(b.set.Kind, "Full-size marking sheets")
	if b.set.SizeLine() == "" {
		return kind
	}
	return kind + ", " + b.set.SizeLine()
}

// measuring says what to do with the check square.
func (b *book) measuring() []string {
	other := "other"
	if len(b.figures) > 0 {
		other = "full-size" // figures are read, not measured
	}
	off := "Should it measure less or more, turn off “fit to page” and every other scaling where you print, and print this page again."
	if s := b.paper.Printed; !s.IsTrue() {
		off = "These sheets are drawn for a printer that prints at " + s.String() + ", and come out true only on that one. Should the square be off, measure the page that was not corrected once more."
	}
	small := fmt.Sprintf("Every %s page has a square of %s, to be measured in the same way.", other, arrange.SquareLabel(b.set.Unit))
	if b.paper.WhollyOnOne() {
		small = fmt.Sprintf("The small square is to measure %s in the same way.", arrange.SquareLabel(b.set.Unit))
	}
	return []string{
		"Lay a ruler across it, and then upward, each time from outside edge to outside edge. The outer frame is 4 in, the inner one 100 mm; both begin in the lower left corner.",
		off,
		"Mark no cloth until it measures true both ways.",
		small,
	}
}

// printing says at what scale the pages are to be printed.
func (b *book) printing() string {
	if b.paper.Printed.IsTrue() {
		return "Print at 100 %, on one side of the paper, with no “fit to page”."
	}
	return "Print with the settings, and on the paper, of the page that was measured."
}

// onPaper says how many pages there are, and of what paper.
func (b *book) onPaper() string {
	if b.paper.Cut == paper.Single {
		return "one page for all"
	}
	return fmt.Sprintf("%s on %s", text.Counted(b.pages, "page"), b.paper.Title)
}

// joining says which pages come first and how to put the others together.
func (b *book) joining() (string, []string) {
	// What names pages is too short to be broken: the room for pictures does
	// not hang on the page numbers, which are not known before they are laid.
	var steps []string
	if b.paper.WhollyOnOne() {
		if len(b.figures) > 0 {
			steps = append(steps, report.Heading+": in frames beside this one.")
		}
		if b.forms > 0 {
			steps = append(steps, "To be sewn and filled in first: what is in the frames with steps to follow.")
		}
		return "The pages", append(steps, "Every piece is whole: there is nothing to join.")
	}
	front := len(b.pictures)
	if n := len(b.figures); n > 0 {
		steps = append(steps, report.Heading+": "+text.PageRange(front+1, front+n, "", "")+".")
		front += n
	}
	if b.forms > 0 {
		pages := text.PageRange(front+1, front+b.forms, "", "")
		if b.forms == len(b.sheets) {
			return "The pages", append(steps, "To be sewn and filled in: "+pages+".")
		}
		steps = append(steps, "To be sewn and filled in first: "+pages+".")
	}
	if !b.joined() {
		return "The pages", append(steps, "Every piece is whole on its page: there is nothing to join.")
	}
	steps = append(steps,
		"Take the pages of a piece in their order. The first stays as it is; cut each other one along the trim lines at its left and at its top, where it has them.",
		"Lay it on those that lie already, its cut edge on their short corners and its half circles on the circles of the same number. Paste or tape it down.",
	)
	if slices.ContainsFunc(b.sheets, func(s arrange.Sheet) bool { return s.Slips() }) {
		steps = append(steps, "A page that belongs above one that lies already, or to its left, goes under that one's cut edge.")
	}
	if b.blank() > 0 {
		steps = append(steps, "Hatched pages have no line on them and are not printed.")
	}
	return "Join the pages", steps
}

// nameSquare names the two frames, each beside its own upper side.
func (c *cover) nameSquare() {
	const away, outer, inner = 1.2, "4 in", "100 mm"
	style := ink.Strong(8)
	c.Say(outer, style, c.square.Add(plane.Point{X: paper.LargeSquare - style.Width(outer), Y: paper.LargeSquare + away}))
	c.Say(inner, style, c.square.Add(plane.Point{
		X: paper.InnerSquare - away - ink.FrameWidth - style.Width(inner),
		Y: paper.InnerSquare - away - ink.FrameWidth - style.Up(),
	}))
}

// drawFront draws the first page.
func (b *book) drawFront(d ink.Canvas) {
	c := b.cover()
	for _, l := range c.Labels {
		l.Draw(d)
	}
	ink.DrawLines(d, ink.FinePen(), c.Rules...)
	ink.DrawCheckSquare(d, c.square, paper.LargeSquare)
	ink.DrawCheckSquare(d, c.square, paper.InnerSquare)
	b.drawKey(d, c.key, c.keyEnd)
	if front := len(b.pictures); front > 1 {
		// Beside the heading of the pictures, the last text of the page.
		at := c.Labels[len(c.Labels)-1].At.Add(plane.Point{X: ink.Strong(headingSize).Width(picturesHeading) + 3})
		where := "on " + text.PageRange(2, front, "", "")
		if len(b.pictures[0]) > 0 {
			where = "here and " + where
		}
		ink.Write(d, at, ink.Plain(proseSize).In(ink.Grey()), where)
	}
	b.drawPictures(d, 0)
}

// drawOverview draws a page of the pictures that have no room on the first.
func (b *book) drawOverview(d ink.Canvas, i int) {
	b.drawFrontHeader(d, picturesHeading+": "+b.fullTitle(), b.pageNumber(i+1))
	b.drawPictures(d, i)
}

func (b *book) drawPictures(d ink.Canvas, i int) {
	for _, p := range b.pictures[i] {
		b.drawPicture(d, p)
	}
}

// drawFrontHeader heads a page in front, other than the first. Its number may be
// "".
func (b *book) drawFrontHeader(d ink.Canvas, title, number string) {
	box := b.frontBox()
	style := ink.Strong(headSize)
	y := box.Max.Y - style.Up()
	ink.Write(d, plane.Point{X: box.Min.X, Y: y}, style, text.Shorten(title, style, box.Width()-6-style.Width(number)))
	ink.WriteBefore(d, plane.Point{X: box.Max.X, Y: y}, style, number)
}

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
			ink.StrokeEach(d, sample)
		}
		d.Ink(p.Colour)
		ink.DrawHeads(d, ink.HeadsOf(p, sample)...)
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
