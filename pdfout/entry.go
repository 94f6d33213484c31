package pdfout

import (
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what stands on the pages in front is made of entries, each set about
// its own upper left corner, and put where there is room for it.

// entry is texts and drawings as they lie with its upper left corner at (0, 0); Height is
// what it takes down the page.
type entry struct {
	text.Lines
	drawn []placed
}

// drawing is what an entry has besides text.
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
func (e *entry) put(d drawing, at plane.Point) { e.drawn = append(e.drawn, placed{d, at}) }

// with adds another entry, moved by a step; the height stays as it is.
func (e *entry) with(other entry, step plane.Point) {
	e.With(other.Lines, step)
	for _, one := range other.drawn {
		e.put(one.drawing, one.at.Add(step))
	}
}

// under adds another entry under what there is.
func (e *entry) under(other entry) {
	e.with(other, plane.Point{Y: -e.Height})
	e.Height += other.Height
}

// split parts an entry between its lines: at most most mm high, and what is left for the
// next page, which is empty where nothing else can be done.
func (e entry) split(most float64) (first, rest entry) {
	top := e.Height // how far down the highest line lies that has no room
	for _, l := range e.Labels {
		if low := l.Style.Foot() - l.At.Y; low > most+length.Rounding {
			top = min(top, low-l.Style.Step())
		}
	}
	if top <= 0 || top >= e.Height {
		return e, entry{}
	}
	up := plane.Point{Y: top}
	first.Height, rest.Height = top, e.Height-top
	of := func(y float64) (*entry, plane.Point) {
		if -y < top-length.Rounding {
			return &first, plane.Point{}
		}
		return &rest, up
	}
	for _, l := range e.Labels {
		part, step := of(l.At.Y)
		l.At = l.At.Add(step)
		part.Labels = append(part.Labels, l)
	}
	for _, r := range e.Rules {
		part, step := of(r[0].Y)
		part.Rules = append(part.Rules, plane.Path{r[0].Add(step), r[1].Add(step)})
	}
	for _, one := range e.drawn {
		part, step := of(one.at.Y)
		part.put(one.drawing, one.at.Add(step))
	}
	return first, rest
}

// say sets a text in lines of a width under what there is.
func (e *entry) say(words string, s ink.Style, width float64) {
	e.Add(text.WrapMeasures(words, s, width), s)
}

// clipped returns the entry for more to be added to it: the entry itself stays as it is.
func (e entry) clipped() entry {
	e.Labels, e.Rules, e.drawn = slices.Clip(e.Labels), slices.Clip(e.Rules), slices.Clip(e.drawn)
	return e
}

// apart are entries with some mm between each and the next.
func apart(all []entry, mm float64) []entry {
	for i := 1; i < len(all); i++ {
		one := entry{Lines: text.Lines{Height: mm}}
		one.under(all[i])
		all[i] = one
	}
	return all
}

// draw draws the entry as it lies on the page.
func (e entry) draw(d ink.Canvas) {
	for _, l := range e.Labels {
		l.Draw(d)
	}
	ink.DrawLines(d, ink.FinePen(), e.Rules...)
	for _, one := range e.drawn {
		one.draw(d, one.at)
	}
}

// underHeading is an entry that begins with a heading.
func underHeading(heading string, width float64) entry {
	var e entry
	e.Add(text.WrapShortened(heading, ink.Heading(), width, 1), ink.Heading())
	e.Space(headingGap)
	return e
}

// paragraphs are a heading with, under it, the first of some paragraphs, and the others: a column
// ends between two of them.
func paragraphs(heading string, all []string, width float64) []entry {
	var entries []entry
	for i, words := range all {
		e := underHeading(heading, width)
		if i > 0 {
			e = entry{}
		}
		e.say(words, ink.Text(), min(width, mostText))
		entries = append(entries, e)
	}
	return apart(entries, betweenParagraphs)
}

// sayAll sets paragraphs under what there is.
func (e *entry) sayAll(all []string, width float64) {
	for i, words := range all {
		if i > 0 {
			e.Space(betweenParagraphs)
		}
		e.say(words, ink.Text(), width)
	}
}

// mostText is how wide paragraphs are set at most, in mm.
const mostText = 190.0

// What is kept free in entries, in mm.
const (
	headingGap        = 1.2
	betweenParagraphs = 1.4
	betweenEntries    = 6.0
)
