package arrange

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: text on a sheet is set where it touches no line and no
// other text: first the pieces' signs and panels (sign.go, panel.go), then the names of
// lines (caption.go) and the letters in them (lineletter.go). On ruled paper, which is full of
// lines, text stands on them (ruled.go).

// Letter finds the places for all text of the sheet.
func (s *Sheet) Letter() {
	s.TakeHeads()
	if s.isRuled() {
		s.numberLines()
		return
	}
	s.words()
	// The room kept beside a piece is for its own panel.
	for _, kept := range []bool{true, false} {
		for _, p := range s.Pieces {
			if kept == (p.Foot != plane.Point{} || p.Aside > 0) {
				s.tell(p)
			}
		}
	}
	s.captionLines()
	s.tellKeys()
	s.letterLines()
	s.pale()
}

// LetterLines writes all that belongs to single lines of a form, where its text has
// left room.
func (s *Sheet) LetterLines() {
	if s.isRuled() {
		s.numberLines()
		return
	}
	s.words()
	s.captionLines()
	s.tellKeys()
	s.pale()
	s.letterLines()
}

// What is kept free before either end of an arrow, along it and to each side of it, in mm: words
// there look as if it pointed at them, or came from them.
const (
	beforeArrow = 4.5
	besideArrow = 1.5
)

// TakeHeads takes the room of all heads and flags, and before the ends of arrows.
func (s *Sheet) TakeHeads() {
	for _, p := range s.Pieces {
		for _, l := range p.Lines {
			if path := l.Path(); l.Role == mark.Arrow && len(path) > 1 {
				from, to := path[0], path[len(path)-1]
				u := to.Sub(from).Unit()
				for _, beyond := range []plane.Point{from.Sub(u.Mul(beforeArrow / 2)), to.Add(u.Mul(beforeArrow / 2))} {
					s.Field.Take(text.Slab{Centre: beyond, Half: plane.Point{X: beforeArrow / 2, Y: besideArrow}, U: u})
				}
			}
			for _, h := range l.Solids() {
				s.Field.Take(roomOf(h))
			}
		}
	}
}

// roomOf is what a head or a flag takes up.
func roomOf(s ink.Solid) text.Slab {
	box := plane.EmptyBox()
	for _, q := range s.Shape {
		q = q.Sub(s.Shape[0])
		box = box.With(plane.Point{X: q.Dot(s.U), Y: q.Dot(s.U.Left())})
	}
	middle := box.Centre()
	return text.Slab{
		Centre: s.Shape[0].Add(s.U.Mul(middle.X)).Add(s.U.Left().Mul(middle.Y)),
		Half:   plane.Point{X: box.Width() / 2, Y: box.Height() / 2}, U: s.U,
	}
}
