package ink

import "tuckmark/marking/plane"

// Rules of this file: a letter stands in its line, in a gap of it, so that a line is known on
// every page it crosses. The line itself goes on under the gap: what is measured along it is
// whole.

// Room that a letter keeps free in its line, in mm: along it on either side, and across it.
const (
	letterAlong  = 0.9
	letterAcross = 0.3
	capitals     = 0.72 // how high a capital is, in sizes of its font
)

// Letter is what stands in lines that are drawn with the pen; "" for none.
func (p Pen) Letter() string { return p.letter }

// letterStyle is what it is set in.
func (p Pen) letterStyle() Style { return StrongText().In(p.Colour) }

// LetterHalf is half the room of the letter, along its line and across it, in mm.
func (p Pen) LetterHalf() plane.Point {
	s := p.letterStyle()
	return plane.Point{X: s.Width(p.letter)/2 + letterAlong, Y: s.Ems(capitals)/2 + letterAcross}
}

// DrawLetter sets the letter of a pen into a line about a place of it, reading along u, of
// length 1.
func DrawLetter(d Canvas, p Pen, at, u plane.Point) {
	half, s := p.LetterHalf(), p.letterStyle()
	x, y := u.Mul(half.X), u.Left().Mul(half.Y)
	d.Save()
	d.Ink(White())
	d.Path(plane.Path{at.Sub(x).Sub(y), at.Add(x).Sub(y), at.Add(x).Add(y), at.Sub(x).Add(y)})
	d.Fill()
	d.Restore()
	d.Text(at.Sub(u.Mul(s.Width(p.letter)/2)).Sub(u.Left().Mul(s.Ems(capitals)/2)), u, s, p.letter)
}
