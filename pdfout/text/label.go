package text

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Across is the direction of a text that reads from below.
func Across() plane.Point { return plane.Point{X: 1} }

// Up is the direction of a text that reads from the right.
func Up() plane.Point { return plane.Point{Y: 1} }

// Label is one line of text at a place.
type Label struct {
	Text  string
	Style ink.Style
	At    plane.Point // where its base line begins
	U     plane.Point // the direction it runs in, of length 1
	Room  Slab        // that its letters take; zero until it is measured
}

// Measured returns the label with the room that its letters take.
func (l Label) Measured() Label { return l.MeasuredAs(l.Style.Half(l.Text)) }

// MeasuredAs is Measured where half the room of the letters is known.
func (l Label) MeasuredAs(half plane.Point) Label {
	l.Room = Slab{l.At.Add(l.U.Mul(half.X)).Add(l.U.Left().Mul(l.Style.Middle())), half, l.U}
	return l
}

// Draw writes the label.
func (l Label) Draw(d ink.Canvas) { d.Text(l.At, l.U, l.Style, l.Text) }
