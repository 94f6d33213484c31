package pdfout

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
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
	box := b.leaf.Front()
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
	if len(b.sheets) == 0 || b.paper.WhollyOnOne() {
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
