package arrange

import (
	"math"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a title, or a name, is set in lines before it has a place: in
// lines under each other, their middles one under the other, or the notes right after
// the name.

// Inscription is a title, or a name, set in lines, not yet anywhere.
type Inscription struct {
	text.Lines
	Width  float64 // of its longest line, in mm
	Broken bool    // within a word
}

// addCentred sets lines under what there is, for their middles to be brought under
// each other, with their base lines some mm over their feet.
func (t *Inscription) addCentred(lines, words []string, s ink.Style, limit, foot float64) {
	t.AddAt(lines, s, 0, foot)
	t.Width = math.Max(t.Width, text.LongestWord(lines, s))
	t.Broken = t.Broken || text.LongestWord(words, s) > limit
}

// centred brings the middles of the lines under each other.
func (t Inscription) centred() Inscription {
	for i, l := range t.Labels {
		t.Labels[i].At.X = (t.Width - l.Style.Width(l.Text)) / 2
	}
	return t
}

// newInscription sets a name and its notes, in lines no longer than limit mm.
func newInscription(name string, notes []string, size, limit float64) Inscription {
	var t Inscription
	add := func(words string, s ink.Style) {
		t.addCentred(text.WrapMeasures(words, s, limit), length.Words(words), s, limit, s.Down())
	}
	add(name, ink.Strong(size))
	for _, note := range notes {
		add(note, ink.Plain(math.Max(Smallest, size*noteShare)))
	}
	return t.centred()
}

// InscriptionOf sets a name in lines no longer than limit mm, as close as its letters are
// high.
func InscriptionOf(name string, s ink.Style, limit float64) Inscription {
	t := Inscription{Lines: tightLines(s)}
	t.addCentred(text.WrapMeasures(name, s, limit), length.Words(name), s, limit, s.Down())
	return t.centred()
}

// tightLines are lines of which the first has nothing free above it.
func tightLines(s ink.Style) text.Lines { return text.Lines{Height: s.Up() + s.Down() - s.Step()} }

// oneLine sets a name and, after it, its notes in one line of one size.
func oneLine(name string, notes []string, size float64) Inscription {
	return runIn(name, notes, size, math.Inf(1))
}

// runIn sets a name and, right after it, its notes in lines of one size no
// longer than limit mm. The name is not broken.
func runIn(name string, notes []string, size, limit float64) Inscription {
	heavy, light := ink.Strong(size), ink.Plain(size)
	t := Inscription{Lines: tightLines(light), Width: heavy.Width(name)}
	t.AddAt([]string{name}, heavy, 0, heavy.Down())
	s := text.JoinedNotes(notes)
	if s == "" {
		return t
	}
	// The first line is shorter than the others by the name.
	left := t.Width + heavy.Width("  ")
	lines := text.WrapMeasures(s, light, limit-left)
	t.Say(lines[0], light, plane.Point{X: left, Y: -light.Up()})
	t.Width = left + light.Width(lines[0])
	if len(lines) > 1 {
		lines = text.WrapMeasures(strings.Join(lines[1:], " "), light, limit)
		t.AddAt(lines, light, 0, light.Down())
		t.Width = math.Max(t.Width, text.LongestWord(lines, light))
	}
	return t
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
	corner := middle.Sub(u.Mul(t.Width / 2)).Add(u.Left().Mul(t.Height / 2))
	var lines []text.Label
	for _, l := range t.Labels {
		l.U = u
		l.At = corner.Add(u.Mul(l.At.X)).Add(u.Left().Mul(l.At.Y))
		lines = append(lines, l.Measured())
	}
	return lines
}

// PlacedInscription is one that has found its place: its middle, and the direction of
// length 1 that it runs in.
type PlacedInscription struct {
	Inscription
	Middle, U plane.Point
}

// trials is how many places a title tries across and up a piece.
const trials = 32

// Places returns the places inside the piece that a title might be put at,
// with room mm round them and step mm or more between them.
func (p Piece) Places(f *Field, room, step float64) []plane.Point {
	dx, dy := math.Max(step, p.Bounds.Width()/trials), math.Max(step, p.Bounds.Height()/trials)
	var places []plane.Point
	middle := p.Bounds.Centre()
	for x := -math.Floor(p.Bounds.Width() / 2 / dx); x <= trials/2; x++ {
		for y := -math.Floor(p.Bounds.Height() / 2 / dy); y <= trials/2; y++ {
			at := middle.Add(plane.Point{X: x * dx, Y: y * dy})
			if p.free(f, at, room) {
				places = append(places, at)
			}
		}
	}
	return places
}

// Roomiest returns the place where the inscription has the most room round it, at
// least some mm; of several, the one nearest the middle of the piece.
func (p Piece) Roomiest(f *Field, places []plane.Point, t Inscription, u plane.Point, least float64, fits func(plane.Box) bool) (PlacedInscription, bool) {
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
