package arrange

import (
	"tuckmark/marking/mark"
	"tuckmark/pdfout/ink"
)

// Rules of this file: what is written at a place of a piece comes before all other text,
// since it cannot stand anywhere else.

// words writes the words and the dimensions of all pieces.
func (s *Sheet) words() {
	for _, p := range s.Pieces {
		for _, w := range p.words {
			s.Near(wordOf(w), Anchor{w.At, w.Out.Unit()})
		}
	}
	for _, p := range s.Pieces {
		for _, d := range p.dimensions {
			s.dimension(p, d)
		}
	}
}

// wordOf sets a word.
func wordOf(w mark.Word) Inscription {
	return InLines([]string{w.Text}, ink.LineName(w.Role))
}
