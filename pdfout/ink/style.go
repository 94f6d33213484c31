package ink

import (
	"tuckmark/pdfout/paper"
)

// Style is how letters are drawn.
type Style struct {
	face *Face
	Size float64 // in points
	ink  Colour
}

// Plain is the style of most text: black letters of a size in points. strong is
// plain in bold.
func Plain(size float64) Style { return Style{Regular(), size, Black()} }

func Strong(size float64) Style { return Style{Bold(), size, Black()} }

// In returns the style in another colour.
func (s Style) In(ink Colour) Style {
	s.ink = ink
	return s
}

// Width returns how long the text is, in mm.
func (s Style) Width(text string) float64 { return s.face.Width(text, s.Size) }

// Step is from one line of text to the next, in mm.
func (s Style) Step() float64 { return Leading * s.Size * paper.Point }

// Up and down are how far letters reach above the base line and below it, in mm.
func (s Style) Up() float64 { return Ascent * s.Size * paper.Point }

func (s Style) Down() float64 { return Descent * s.Size * paper.Point }

// Foot is how far the base line lies over the foot of a line of text, in mm, where
// what is free between two lines is shared out above and below each.
func (s Style) Foot() float64 { return (Descent + (Leading-1)/2) * s.Size * paper.Point }
