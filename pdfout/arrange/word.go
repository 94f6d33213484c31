package arrange

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what is written at a place of a piece comes before all other text,
// since it cannot stand anywhere else. The head of a row stands beside its last word. Where the
// words stand in a column it stands over them in short lines, and begins where they do.

// words writes the words and the dimensions of all pieces.
func (s *Sheet) words() {
	for _, p := range s.Pieces {
		for _, w := range p.words {
			t := wordOf(w)
			a := anchorOf(w, t)
			a.Within = p.Kind.CutOut() && !w.Calls && w.Head == nil // these stand at both ends
			if at, ok := s.nearest(p, t, nearAway, []Anchor{a}, math.Inf(1)); ok {
				s.putNear(at)
			} else {
				s.near(p, w.Text, styleOf(w), nearAway, []Anchor{a})
			}
		}
	}
	for _, p := range s.Pieces {
		for _, d := range p.dimensions {
			s.dimension(p, d)
		}
	}
}

// styleOf is how a word looks: what a line is called by unlike what is measured.
func styleOf(w mark.Word) ink.Style {
	if w.Calls {
		return ink.LineNumber(w.Role)
	}
	return ink.LineName(w.Role)
}

// wordOf sets a word; the head of a column in lines that are no wider than it may be, but for
// a longer word.
func wordOf(w mark.Word) Inscription {
	style := styleOf(w)
	if w.Head == nil || math.Abs(w.Head.Along.X) < math.Abs(w.Head.Along.Y) {
		return InLines([]string{w.Text}, style)
	}
	return Wrapped(w.Text, style, max(w.Head.Wide, text.LongestWord(length.Words(w.Text), style)))
}

// anchorOf is the place of a word that is set; of a head at the side of the last word of its row,
// so that both begin equally far from the place of that.
func anchorOf(w mark.Word, t Inscription) Anchor {
	out := w.Out.Unit()
	if w.Head == nil {
		return Anchor{At: w.At, Out: out}
	}
	last := InLines([]string{w.Head.Last}, ink.LineName(w.Role))
	along := w.Head.Along.Mul(nearAway + t.reach(w.Head.Along))
	return Anchor{At: w.At.Add(along).Add(out.Mul(last.reach(out))), Out: out}
}

// reach is how far a block reaches from its middle to a side, in mm.
func (t Inscription) reach(u plane.Point) float64 {
	return (math.Abs(u.X)*t.Width + math.Abs(u.Y)*t.Height) / 2
}
