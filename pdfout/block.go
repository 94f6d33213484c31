package pdfout

import (
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what stands on the pages in front is made of blocks, each set about
// its own upper left corner, and put where there is room for it.

// block is texts and drawings as they lie with its upper left corner at (0, 0); Height is
// what it takes down the page.
type block struct {
	text.Lines
	drawn []placed
}

// drawing is what a block has besides text.
type drawing interface {
	// draw draws it with its corner at a place of the page.
	draw(d ink.Canvas, at plane.Point)
}

// placed is a drawing with the place of its corner.
type placed struct {
	drawing
	at plane.Point
}

// put adds a drawing; the height stays as it is.
func (b *block) put(d drawing, at plane.Point) { b.drawn = append(b.drawn, placed{d, at}) }

// with adds another block, moved by a step; the height stays as it is.
func (b *block) with(other block, step plane.Point) {
	b.With(other.Lines, step)
	for _, one := range other.drawn {
		b.put(one.drawing, one.at.Add(step))
	}
}

// under adds another block under what there is.
func (b *block) under(other block) {
	b.with(other, plane.Point{Y: -b.Height})
	b.Height += other.Height
}

// split parts a block between its lines: at most most mm high, and what is left for the
// next page, which is empty where nothing else can be done.
func (b block) split(most float64) (first, rest block) {
	top := b.Height // how far down the highest line lies that has no room
	for _, l := range b.Labels {
		if low := l.Style.Foot() - l.At.Y; low > most+length.Rounding {
			top = min(top, low-l.Style.Step())
		}
	}
	if top <= 0 || top >= b.Height {
		return b, block{}
	}
	up := plane.Point{Y: top}
	first.Height, rest.Height = top, b.Height-top
	of := func(y float64) (*block, plane.Point) {
		if -y < top-length.Rounding {
			return &first, plane.Point{}
		}
		return &rest, up
	}
	for _, l := range b.Labels {
		part, step := of(l.At.Y)
		l.At = l.At.Add(step)
		part.Labels = append(part.Labels, l)
	}
	for _, r := range b.Rules {
		part, step := of(r[0].Y)
		part.Rules = append(part.Rules, plane.Path{r[0].Add(step), r[1].Add(step)})
	}
	for _, one := range b.drawn {
		part, step := of(one.at.Y)
		part.put(one.drawing, one.at.Add(step))
	}
	return first, rest
}

// say sets a text in lines of a width under what there is.
func (b *block) say(words string, s ink.Style, width float64) {
	b.Add(text.WrapMeasures(words, s, width), s)
}

// draw draws the block as it lies on the page.
func (b block) draw(d ink.Canvas) {
	for _, l := range b.Labels {
		l.Draw(d)
	}
	ink.DrawLines(d, ink.FinePen(), b.Rules...)
	for _, one := range b.drawn {
		one.draw(d, one.at)
	}
}

// underHeading is a block that begins with a heading.
func underHeading(heading string, width float64) block {
	var b block
	b.Add(text.WrapShortened(heading, ink.Heading(), width, 1), ink.Heading())
	b.Space(headingGap)
	return b
}

// paragraphs are a heading and, under it, paragraphs.
func paragraphs(heading string, all []string, width float64) block {
	b := underHeading(heading, width)
	b.sayAll(all, width)
	return b
}

// sayAll sets paragraphs under what there is.
func (b *block) sayAll(all []string, width float64) {
	for i, words := range all {
		if i > 0 {
			b.Space(betweenParagraphs)
		}
		b.say(words, ink.Text(), width)
	}
}

// What is kept free in blocks, in mm.
const (
	headingGap        = 1.2
	betweenParagraphs = 1.4
	betweenBlocks     = 6.0
)
