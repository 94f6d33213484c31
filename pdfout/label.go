package pdfout

import "tuckmark/marking/plane"

// across and up are the directions a text may run in: it reads from below or from the
// right.
func across() plane.Point { return plane.Point{X: 1} }
func up() plane.Point     { return plane.Point{Y: 1} }

// label is one line of text at a place.
type label struct {
	text  string
	style Style
	at    plane.Point // where its base line begins
	u     plane.Point // the direction it runs in, of length 1
	room  slab
}

// measured returns the label with the room that its letters take.
func (l label) measured() label {
	half := plane.Point{X: l.style.width(l.text) / 2, Y: (ascent + descent) / 2 * l.style.size * point}
	l.room = slab{l.at.Add(l.u.Mul(half.X)).Add(l.u.Left().Mul((ascent - descent) / 2 * l.style.size * point)), half, l.u}
	return l
}

// draw writes the label.
func (l label) draw(d Canvas) { d.Text(l.at, l.u, l.style, l.text) }
