package ink

import "tuckmark/marking/plane"

// Rules of this file: a letter, or a number, stands in its line, in a gap of it, so that a line
// is known on every page it crosses. The line itself goes on under the gap: what is measured
// along it is whole.

// Room that a letter keeps free in its line, in mm: along it on either side, and across it.
const (
	letterAlong  = 0.9
	letterAcross = 0.3
	capitals     = 0.72 // how high a capital is, in sizes of its font
)

// Letter is what stands in lines that are drawn with the pen; "" for none.
func (p Pen) Letter() string { return p.letter }

// LetterHalf is half the room that something in a style has in a line, the way it reads and
// square to that, in mm.
func LetterHalf(s Style, letter string) plane.Point {
	return plane.Point{X: s.Width(letter)/2 + letterAlong, Y: s.Ems(capitals)/2 + letterAcross}
}

// DrawLetter sets something in a style into a line about a place of it, reading along u, of
// length 1.
func DrawLetter(d Canvas, s Style, letter string, at, u plane.Point) {
	Clear(d, at, u, LetterHalf(s, letter))
	d.Text(at.Sub(u.Mul(s.Width(letter)/2)).Sub(u.Left().Mul(s.Ems(capitals)/2)), u, s, letter)
}

// Clear takes away what is drawn so far about a place, half a length to either side along u, of
// length 1, and half a height square to it.
func Clear(d Canvas, at, u, half plane.Point) {
	x, y := u.Mul(half.X), u.Left().Mul(half.Y)
	d.Save()
	d.Ink(White())
	d.Path(plane.Path{at.Sub(x).Sub(y), at.Add(x).Sub(y), at.Add(x).Add(y), at.Sub(x).Add(y)})
	d.Fill()
	d.Restore()
}
