package pdfout

import (
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
