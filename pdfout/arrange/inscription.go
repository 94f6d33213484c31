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

// trials is how many places an inscription tries across and up a piece.
const trials = 48

// Places returns the places inside the piece, in none of its hems, that an inscription
// might be put at, with room mm round them and step mm or more between them.
func (p Piece) Places(f *Field, room, step float64) []plane.Point {
	dx, dy := math.Max(step, p.Bounds.Width()/trials), math.Max(step, p.Bounds.Height()/trials)
	var places []plane.Point
	middle := p.Bounds.Centre()
	for x := -math.Floor(p.Bounds.Width() / 2 / dx); x <= trials/2; x++ {
		for y := -math.Floor(p.Bounds.Height() / 2 / dy); y <= trials/2; y++ {
			at := middle.Add(plane.Point{X: x * dx, Y: y * dy})
			if p.free(f, at, room) && !p.hemmed(at) {
				places = append(places, at)
			}
		}
	}
	return places
}

// Roomiest returns the place where the inscription has the most room round it, at
// least some mm; of several, the one nearest the middle of the piece.
func (p Piece) Roomiest(f *Field, places []plane.Point, t Inscription, u plane.Point, least float64, fits func(plane.Box) bool) (PlacedInscription, bool) {
	if e, within := t.Extent(u), p.Outline.Bounds(); e.X > within.Width() || e.Y > within.Height() {
		return PlacedInscription{}, false // most panels are refused here, for most small pieces
	}
	var best []plane.Point
	for _, more := range []float64{least, 2, 3, 4.5, 6, 12, 20, 30, 45} {
		if more < least {
			continue
		}
		var wider []plane.Point
		for _, at := range places {
			s := t.Around(at, u)
			if fits(s.Bounds()) && f.Free(s.Grown(more)) {
				wider = append(wider, at)
			}
		}
		if len(wider) == 0 {
			break
		}
		best, places = wider, wider
	}
	if len(best) == 0 {
		return PlacedInscription{}, false
	}
	nearest := best[0]
	middle := p.Bounds.Centre()
	for _, at := range best {
		if at.Distance(middle) < nearest.Distance(middle) {
			nearest = at
		}
	}
	return PlacedInscription{t, nearest, u}, true
}
