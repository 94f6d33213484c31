package pdfout

import (
	"cmp"
	"fmt"
	"slices"

	"tuckmark/marking/plane"
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
	texts    []label
	rules    []plane.Path // thin lines that part the page
	square   plane.Point  // lower left corner of the check square
	key      plane.Point  // where the line key begins: upper left
	keyEnd   float64      // how far it may go to the right
	pictures plane.Box    // what is left for the pictures
	foot     float64      // how high the lowest line stands over which there is text
}

// frontBox is what the pages in front are set in.
func (b *book) frontBox() plane.Box { return b.leaf.front() }

// overview is the room for pictures on a page of their own.
func (b *book) overview() plane.Box { return b.leaf.underHeader() }

// addProse sets paragraphs under a heading.
func addProse(t *Lines, heading string, paragraphs []string, width float64) {
	head, style := strong(headingSize), plain(proseSize)
	t.add(wrapShortened(heading, head, width, 1), head)
	for _, text := range paragraphs {
		t.space(paragraph * proseSize * point)
		t.add(wrap(text, style, width), style)
	}
}

// put puts text on the first page, some mm from its left edge.
func (c *cover) put(t Lines, left float64) {
	var moved Lines
	moved.with(t, plane.Point{X: left})
	c.texts = append(c.texts, moved.labels...)
}

// cover plans the first page.
func (b *book) cover() cover {
	box := b.frontBox()
	var c cover
	top := linesFrom(box.Max.Y)
	say := func(t *Lines, text string, s Style, most int) { t.add(wrapShortened(text, s, box.Width(), most), s) }
	rule := func(y float64) {
		c.rules = append(c.rules, plane.Path{{X: box.Min.X, Y: y}, {X: box.Max.X, Y: y}})
	}
	say(&top, b.title(), strong(titleSize), 2)
	say(&top, b.sizeLine(), plain(sizeSize), 2)
	top.space(1)
	say(&top, b.onPaper(), plain(proseSize).in(grey()), 1)
	top.space(2.5)
	rule(top.y())
	top.space(2)
	say(&top, b.printing(), strong(headingSize+1), 2)
	top.space(5.5)
	c.put(top, box.Min.X)

	c.square = plane.Point{X: snapUp(box.Min.X), Y: snapDown(top.y() - largeSquare)}
	c.texts = append(c.texts, b.textInSquare(c.square)...)
	c.key = plane.Point{X: c.square.X + largeSquare + gutter, Y: c.square.Y + largeSquare}
	c.texts = append(c.texts, labelsOfSquare(c.square)...)
	c.keyEnd = box.Max.X
	if box.Width() > box.Height() {
		b.tellBeside(&c, box)
	} else {
		b.tellUnder(&c, box)
	}
	if b.forms == len(b.sheets) || b.paper.WhollyOnOne() {
		return c
	}
	down := linesFrom(c.foot - 3)
	rule(down.y())
	down.space(2)
	say(&down, picturesHeading, strong(headingSize), 1)
	down.space(3)
	c.put(down, box.Min.X)
	c.pictures = plane.Box{Min: box.Min, Max: plane.Point{X: box.Max.X, Y: down.y()}}
	return c
}

// tellBeside sets how to go on, and what to take care of, to the right of the line key.
func (b *book) tellBeside(c *cover, box plane.Box) {
	c.keyEnd = c.key.X + keyWidth
	left := c.keyEnd + gutter
	beside := linesFrom(c.key.Y)
	heading, steps := b.joining()
	addProse(&beside, heading, steps, box.Max.X-left)
	if len(b.set.Cautions) > 0 {
		beside.space(underProse)
		addProse(&beside, careHeading, b.set.Cautions, box.Max.X-left)
	}
	c.put(beside, left)
	c.foot = min(beside.y(), c.square.Y)
}

// tellUnder sets them in two columns under the check square.
func (b *book) tellUnder(c *cover, box plane.Box) {
	half := (box.Width() - gutter) / 2
	left, right := linesFrom(c.square.Y-underSquare), linesFrom(c.square.Y-underSquare)
	heading, steps := b.joining()
	addProse(&left, heading, steps, half)
	if len(b.set.Cautions) > 0 {
		addProse(&right, careHeading, b.set.Cautions, half)
	}
	c.put(left, box.Min.X)
	c.put(right, box.Min.X+half+gutter)
	c.foot = min(left.y(), right.y())
}

// textInSquare sets what to do with the check square in the middle of it.
func (b *book) textInSquare(corner plane.Point) []label {
	const inset = 9.0
	var text, inCorner, inMiddle Lines
	addProse(&text, "Measure this square before you mark any cloth", b.measuring(), innerSquare-2*inset)
	inCorner.with(text, corner)
	inMiddle.with(inCorner, plane.Point{X: inset, Y: (innerSquare + text.height) / 2})
	return inMiddle.labels
}

func (b *book) sizeLine() string {
	kind := cmp.Or(b.set.Kind, "Full-size marking sheets")
	if b.set.size() == "" {
		return kind
	}
	return kind + ", " + b.set.size()
}

// measuring says what to do with the check square.
func (b *book) measuring() []string {
	other := "other"
	if len(b.figures) > 0 {
		other = "full-size" // figures are read, not measured
	}
	off := "Should it measure less or more, turn off “fit to page” and every other scaling where you print, and print this page again."
	if s := b.paper.Printed; !s.isTrue() {
		off = "These sheets are drawn for a printer that prints at " + s.String() + ", and come out true only on that one. Should the square be off, measure the page that was not corrected once more."
	}
	small := fmt.Sprintf("Every %s page has a square of %s, to be measured in the same way.", other, squareLabel(b.set.Unit))
	if b.paper.WhollyOnOne() {
		small = fmt.Sprintf("The small square is to measure %s in the same way.", squareLabel(b.set.Unit))
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
	if b.paper.Printed.isTrue() {
		return "Print at 100 %, on one side of the paper, with no “fit to page”."
	}
	return "Print with the settings, and on the paper, of the page that was measured."
}

// onPaper says how many pages there are, and of what paper.
func (b *book) onPaper() string {
	if b.paper.cut == single {
		return "one page for all"
	}
	return fmt.Sprintf("%s on %s", counted(b.pages, "page"), b.paper.Title)
}

// joining says which pages come first and how to put the others together.
func (b *book) joining() (string, []string) {
	// What names pages is too short to be broken: the room for pictures does
	// not hang on the page numbers, which are not known before they are laid.
	var steps []string
	if b.paper.WhollyOnOne() {
		if len(b.figures) > 0 {
			steps = append(steps, figuresHeading+": in frames beside this one.")
		}
		if b.forms > 0 {
			steps = append(steps, "To be sewn and filled in first: what is in the frames with steps to follow.")
		}
		return "The pages", append(steps, "Every piece is whole: there is nothing to join.")
	}
	front := len(b.pictures)
	if n := len(b.figures); n > 0 {
		steps = append(steps, figuresHeading+": "+pageRange(front+1, front+n, "", "")+".")
		front += n
	}
	if b.forms > 0 {
		pages := pageRange(front+1, front+b.forms, "", "")
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
	if slices.ContainsFunc(b.sheets, func(s sheet) bool { return s.slips() }) {
		steps = append(steps, "A page that belongs above one that lies already, or to its left, goes under that one's cut edge.")
	}
	if b.blank() > 0 {
		steps = append(steps, "Hatched pages have no line on them and are not printed.")
	}
	return "Join the pages", steps
}

// labelsOfSquare names the two frames, each beside its own upper side.
func labelsOfSquare(corner plane.Point) []label {
	const away = 1.2
	style := strong(8)
	outer := label{text: "4 in", style: style, u: across()}
	outer.at = corner.Add(plane.Point{X: largeSquare - style.width(outer.text), Y: largeSquare + away})
	inner := label{text: "100 mm", style: style, u: across()}
	inner.at = corner.Add(plane.Point{
		X: innerSquare - away - frameWidth - style.width(inner.text),
		Y: innerSquare - away - frameWidth - style.up(),
	})
	return []label{outer, inner}
}

// drawFront draws the first page.
func (b *book) drawFront(d Canvas) {
	c := b.cover()
	for _, l := range c.texts {
		l.draw(d)
	}
	drawLines(d, finePen(), c.rules...)
	drawCheckSquare(d, c.square, largeSquare)
	drawCheckSquare(d, c.square, innerSquare)
	b.drawKey(d, c.key, c.keyEnd)
	if front := len(b.pictures); front > 1 {
		// Beside the heading of the pictures, the last text of the page.
		at := c.texts[len(c.texts)-1].at.Add(plane.Point{X: strong(headingSize).width(picturesHeading) + 3})
		where := "on " + pageRange(2, front, "", "")
		if len(b.pictures[0]) > 0 {
			where = "here and " + where
		}
		write(d, at, plain(proseSize).in(grey()), where)
	}
	b.drawPictures(d, 0)
}

// drawOverview draws a page of the pictures that have no room on the first.
func (b *book) drawOverview(d Canvas, i int) {
	b.drawFrontHeader(d, picturesHeading+": "+b.fullTitle(), b.pageNumber(i+1))
	b.drawPictures(d, i)
}

func (b *book) drawPictures(d Canvas, i int) {
	for _, p := range b.pictures[i] {
		b.drawPicture(d, p)
	}
}

// drawFrontHeader heads a page in front, other than the first. Its number may be
// "".
func (b *book) drawFrontHeader(d Canvas, title, number string) {
	box := b.frontBox()
	style := strong(headSize)
	y := box.Max.Y - style.up()
	write(d, plane.Point{X: box.Min.X, Y: y}, style, shorten(title, style, box.Width()-6-style.width(number)))
	writeBefore(d, plane.Point{X: box.Max.X, Y: y}, style, number)
}

// drawKey draws the line key: every role that occurs, with its own pen. It is
// no higher than the check square beside it, and goes no further to the right than
// its end.
func (b *book) drawKey(d Canvas, corner plane.Point, end float64) {
	write(d, corner.Sub(plane.Point{Y: strong(headingSize).up()}), strong(headingSize), "Lines")
	rows := len(b.roles)
	if b.joined() {
		rows++
	}
	const underHeading = 1.5
	step := min(keyStep, (largeSquare-underHeading)/float64(rows))
	at := corner.Sub(plane.Point{Y: step + underHeading})
	for _, role := range b.roles {
		p := penOf(role)
		sample := plane.Path{at, at.Add(plane.Point{X: keySample})}
		d.Save()
		d.Pen(p)
		if p.kind.ring > 0 {
			drawRings(d, p, ringSample(sample), sample.Bounds())
		} else {
			strokeEach(d, sample)
		}
		d.Ink(p.colour)
		drawHeads(d, headsOf(p, sample)...)
		d.Restore()
		b.writeKey(d, at, role.String(), end)
		at.Y -= step
	}
	if b.joined() {
		d.Save()
		d.Pen(joinPen())
		strokeEach(d, plane.Path{at, at.Add(plane.Point{X: keySample})})
		drawJoinMark(d, at.Add(plane.Point{X: keySample / 2}))
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
func (b *book) writeKey(d Canvas, at plane.Point, name string, end float64) {
	at = at.Add(plane.Point{X: keySample + 4, Y: -ascent / 2 * proseSize * point})
	write(d, at, plain(proseSize), shorten(name, plain(proseSize), end-at.X))
}
