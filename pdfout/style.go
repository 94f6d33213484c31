package pdfout

// Style is how letters are drawn.
type Style struct {
	face *Face
	size float64 // in points
	ink  Colour
}

// plain is the style of most text: black letters of a size in points. strong is
// plain in bold.
func plain(size float64) Style  { return Style{regular(), size, black()} }
func strong(size float64) Style { return Style{bold(), size, black()} }

// in returns the style in another colour.
func (s Style) in(ink Colour) Style {
	s.ink = ink
	return s
}

// width returns how long the text is, in mm.
func (s Style) width(text string) float64 { return s.face.width(text, s.size) }

// step is from one line of text to the next, in mm.
func (s Style) step() float64 { return leading * s.size * point }

// up and down are how far letters reach above the base line and below it, in mm.
func (s Style) up() float64   { return ascent * s.size * point }
func (s Style) down() float64 { return descent * s.size * point }

// foot is how far the base line lies over the foot of a line of text, in mm, where
// what is free between two lines is shared out above and below each.
func (s Style) foot() float64 { return (descent + (leading-1)/2) * s.size * point }
