package arrange

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: text that belongs together is set in lines before it has a place, and
// is moved, and never set smaller, until it finds one.

// Inscription is text set in lines, with nothing free around it, not yet anywhere.
type Inscription struct {
	text.Lines
	Width  float64 // of its longest line, in mm
	Broken bool    // within a word
}

// InLines sets lines of a style under each other, all beginning at the left.
func InLines(lines []string, s ink.Style) Inscription {
	t := Inscription{Lines: text.Lines{Height: s.Up() + s.Down() - s.Step()}, Width: text.LongestWord(lines, s)}
	t.AddAt(lines, s, 0, s.Down())
	return t
}

// Wrapped is InLines of a text in lines no longer than limit mm.
func Wrapped(words string, s ink.Style, limit float64) Inscription {
	t := InLines(text.WrapMeasures(words, s, limit), s)
	t.Broken = text.LongestWord(length.Words(words), s) > limit
	return t
}

// InscriptionOf is Wrapped with the middles of the lines under each other.
func InscriptionOf(name string, s ink.Style, limit float64) Inscription {
	t := Wrapped(name, s, limit)
	for i, l := range t.Labels {
		t.Labels[i].At.X = (t.Width - l.Style.Width(l.Text)) / 2
	}
	return t
}

// add sets other text under what there is, with some mm between them.
func (t *Inscription) add(other Inscription, gap float64) {
	t.Space(gap)
	t.Under(other.Lines)
	t.Width = math.Max(t.Width, other.Width)
	t.Broken = t.Broken || other.Broken
}

// Extent is how far the inscription reaches across and up when it runs along u.
func (t Inscription) Extent(u plane.Point) plane.Point {
	if u == text.Up() {
		return plane.Point{X: t.Height, Y: t.Width}
	}
	return plane.Point{X: t.Width, Y: t.Height}
}

// Around returns the room the inscription takes with its middle at a place.
func (t Inscription) Around(middle, u plane.Point) text.Slab {
	return text.Slab{Centre: middle, Half: plane.Point{X: t.Width / 2, Y: t.Height / 2}, U: u}
}

// Placed returns the inscription's lines with its middle at a place.
func (t Inscription) Placed(middle, u plane.Point) []text.Label {
	to := t.to(middle, u)
	var lines []text.Label
	for _, l := range t.Labels {
		l.U = u
		l.At = to(l.At)
		lines = append(lines, l.Measured())
	}
	return lines
}

// to brings places of the inscription where they lie with its middle at a place.
func (t Inscription) to(middle, u plane.Point) func(plane.Point) plane.Point {
	corner := middle.Sub(u.Mul(t.Width / 2)).Add(u.Left().Mul(t.Height / 2))
	return func(p plane.Point) plane.Point { return corner.Add(u.Mul(p.X)).Add(u.Left().Mul(p.Y)) }
}

// PlacedInscription is one that has found its place: its middle, and the direction of
// length 1 that it runs in.
type PlacedInscription struct {
	Inscription
	Middle, U plane.Point
}

// put puts an inscription on the sheet, with its rules, and takes its room.
func (s *Sheet) put(t PlacedInscription) {
	s.Field.Take(t.Around(t.Middle, t.U))
	s.Labels = append(s.Labels, t.Placed(t.Middle, t.U)...)
	to := t.to(t.Middle, t.U)
	for _, r := range t.Rules {
		s.Thin = append(s.Thin, plane.Path{to(r[0]), to(r[1])})
	}
}
