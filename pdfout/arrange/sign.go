package arrange

import (
	"fmt"
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: every piece has its sign inside its outline: its name, the number of
// its part, and how often it is cut. It is upright, whole on one page, in the largest of a
// few sizes that looks well there. Only where the outline is too narrow for any upright one
// it runs up. Where it has no room at all the number stands there alone, and the sign
// outside, with a leader to the piece.

const (
	// signRoom is how far a sign or a panel stays from every line, in mm, and
	// narrowRoom the same for a sign that has no more.
	signRoom   = 3.0
	narrowRoom = 1.0
	// closest is the least distance between the places it tries, in mm, and
	// narrowClosest the least in a narrow piece.
	closest       = 2.0
	narrowClosest = 0.6
	// signShare is how much of a piece across and up a sign of more than LeastType takes
	// at most, and signLines the most lines that it has then.
	signShare = 0.6
	signLines = 4
	// cutGap is kept free between the name and what is under it, in mm.
	cutGap = 0.8
)

// partLine says which part the piece is, and how often it is cut.
func (p Piece) partLine() string {
	line := p.Cut
	if p.Part > 0 {
		line = fmt.Sprintf("part %d", p.Part)
		if p.Cut != "" {
			line += ", " + p.Cut
		}
	}
	return line
}

// sign sets the piece's sign, with its name in a style, in lines no longer than limit mm.
func (p Piece) sign(style ink.Style, limit float64) Inscription {
	t := Wrapped(p.Name, style, limit)
	if line := p.partLine(); line != "" {
		t.add(Wrapped(line, ink.Text(), math.Max(limit, ink.Text().Width("part 88,"))), cutGap)
	}
	return t
}

// signs are the ways to set the sign that look well in the piece, the best first.
func (p Piece) signs(u plane.Point) []Inscription {
	var all []Inscription
	last := plane.Point{} // its extent; what is as large is the same
	for _, style := range ink.Names() {
		whole, longest, space := style.Width(p.Name), text.LongestWord(length.Words(p.Name), style), style.Width(" ")
		for _, limit := range []float64{math.Inf(1), 60, 40, 25, 18} {
			if wide := min(limit, signShare*p.along(u)); longest > limit || style.Size > ink.LeastType && whole+space > signLines*(wide+space) {
				continue // a word does not fit a line, or the name that many lines
			}
			t := p.sign(style, limit)
			if e := t.Extent(u); e != last && p.suits(t, style, u) {
				all, last = append(all, t), e
			}
		}
	}
	return all
}

// along is how far the piece reaches along u.
func (p Piece) along(u plane.Point) float64 {
	if u == text.Up() {
		return p.Bounds.Height()
	}
	return p.Bounds.Width()
}

// suits reports whether a sign with its name in a style looks well in the piece.
func (p Piece) suits(t Inscription, style ink.Style, u plane.Point) bool {
	share, most := signShare, signLines
	if style.Size == ink.LeastType {
		share, most = 1, math.MaxInt
	}
	e := t.Extent(u)
	return e.X <= share*p.Bounds.Width() && e.Y <= share*p.Bounds.Height() && !t.Broken && len(t.Labels) <= most
}

// signInside puts the sign in the piece, and reports whether it has room there: well away from
// its lines if it can be, else closer to them.
func (s *Sheet) signInside(p Piece) bool {
	signs, u := p.signs(text.Across()), text.Across()
	if len(signs) == 0 { // narrower than any
		signs, u = p.signs(text.Up()), text.Up()
	}
	if len(signs) == 0 {
		return false
	}
	put := func(step, room float64) bool {
		for _, t := range signs {
			if at, ok := p.Roomiest(s.Field, step, t, u, room, s.Whole); ok {
				s.put(at)
				return true
			}
		}
		return false
	}
	return put(closest, signRoom) || put(narrowClosest, narrowRoom)
}

// besideSign is the sign of a piece that has no room for it inside.
func (p Piece) besideSign() Inscription { return p.sign(ink.StrongText(), signWide) }

// signWide is the most that is wide, in mm.
const signWide = 52.0

// numberInside puts the number of its part into a piece that has no room for more.
func (s *Sheet) numberInside(p Piece) {
	if p.Part == 0 {
		return
	}
	for _, words := range []string{fmt.Sprintf("part %d", p.Part), fmt.Sprint(p.Part)} {
		t := InLines([]string{words}, ink.StrongText())
		if at, ok := p.Roomiest(s.Field, narrowClosest, t, text.Across(), narrowRoom/2, s.Whole); ok {
			s.put(at)
			return
		}
	}
}
