package ink

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: whoever sets text asks its style how much room the letters
// take, and never reckons with shares of a size.

// Shares of the size of a font: how far its letters reach above the base line
// and below it, and from one line to the next.
const (
	ascent  = 0.74
	descent = 0.22
	leading = 1.25
)

// Style is how letters are drawn.
type Style struct {
	Weight Weight
	Size   float64 // in points
	Colour Colour
}

// Plain is the style of most text: black letters of a size in points.
func Plain(size float64) Style { return Style{Regular, size, Black()} }

// Strong is Plain in bold.
func Strong(size float64) Style { return Style{Bold, size, Black()} }

// In returns the style in another colour.
func (s Style) In(c Colour) Style {
	s.Colour = c
	return s
}

// Width returns how long the text is, in mm.
func (s Style) Width(text string) float64 { return faces()[s.Weight].width(text, s.Size) }

// Line is a line of text that grows, with how long it is.
type Line struct {
	style Style
	line  line
}

// Line returns a line of a text.
func (s Style) Line(text string) Line { return Line{s, line{plain: true}}.Grown(text) }

// Grown returns the line as it is with a longer text, which begins with its own. What the line
// has already is not measured again unless it, or what is new, may have a fraction.
func (l Line) Grown(text string) Line {
	l.line = faces()[l.style.Weight].longer(l.line, text)
	return l
}

// Text returns the text of the line.
func (l Line) Text() string { return l.line.text }

// Width returns how long the line is, in mm, as Style.Width gives it for its text.
func (l Line) Width() float64 { return l.line.ems * l.style.Size * paper.Pt }

// Ems returns so many times the size of the letters, in mm.
func (s Style) Ems(n float64) float64 { return n * s.Size * paper.Pt }

// Step is from one line of text to the next, in mm.
func (s Style) Step() float64 { return s.Ems(leading) }

// Up is how far letters reach above the base line, in mm.
func (s Style) Up() float64 { return s.Ems(ascent) }

// Down is how far letters reach below the base line, in mm.
func (s Style) Down() float64 { return s.Ems(descent) }

// Half is half the room that a text takes: half its length, and half the height of
// its letters from the lowest to the highest, in mm.
func (s Style) Half(text string) plane.Point {
	return plane.Point{X: s.Width(text) / 2, Y: s.Ems((ascent + descent) / 2)}
}

// Middle is how far the middle of that height lies over the base line, in mm.
func (s Style) Middle() float64 { return s.Ems((ascent - descent) / 2) }

// Foot is how far the base line lies over the foot of a line of text, in mm, where
// what is free between two lines is shared out above and below each.
func (s Style) Foot() float64 { return s.Ems(descent + (leading-1)/2) }

// Write puts text at a place of a page, from left to right.
func Write(d Canvas, at plane.Point, s Style, text string) {
	d.Text(at, plane.Point{X: 1}, s, text)
}

// WriteMiddle is Write with the middle of the text's letters at a place.
func WriteMiddle(d Canvas, at plane.Point, s Style, text string) {
	at.X -= s.Width(text) / 2
	at.Y -= s.Ems((ascent - descent/2) / 2)
	Write(d, at, s, text)
}
