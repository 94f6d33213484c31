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

// Block is a title, or a name, set in lines, not yet anywhere.
type Block struct {
	text.Lines
	Width  float64 // of its longest line, in mm
	Broken bool    // within a word
}

// addCentred sets lines under what there is, for their middles to be brought under
// each other, with their base lines some mm over their feet.
func (b *Block) addCentred(lines, words []string, s ink.Style, limit, foot float64) {
	b.AddAt(lines, s, 0, foot)
	b.Width = math.Max(b.Width, text.LongestWord(lines, s))
	b.Broken = b.Broken || text.LongestWord(words, s) > limit
}

// centred brings the middles of the lines under each other.
func (b Block) centred() Block {
	for i, l := range b.Labels {
		b.Labels[i].At.X = (b.Width - l.Style.Width(l.Text)) / 2
	}
	return b
}

// newBlock sets a name and its notes, in lines no longer than limit mm.
func newBlock(name string, notes []string, size, limit float64) Block {
	var b Block
	add := func(words string, s ink.Style) {
		b.addCentred(text.Wrap(words, s, limit), strings.Fields(words), s, limit, s.Down())
	}
	add(name, ink.Strong(size))
	for _, note := range notes {
		add(note, ink.Plain(math.Max(Smallest, size*noteShare)))
	}
	return b.centred()
}

// NameBlock sets a name in lines no longer than limit mm, as close as its letters are
// high.
func NameBlock(name string, s ink.Style, limit float64) Block {
	b := Block{Lines: tightLines(s)}
	b.addCentred(text.WrapMeasures(name, s, limit), length.Words(name), s, limit, s.Down())
	return b.centred()
}

// tightLines are lines of which the first has nothing free above it.
func tightLines(s ink.Style) text.Lines { return text.Lines{Height: s.Up() + s.Down() - s.Step()} }

// oneLine sets a name and, after it, its notes in one line of one size.
func oneLine(name string, notes []string, size float64) Block {
	return runIn(name, notes, size, math.Inf(1))
}

// runIn sets a name and, right after it, its notes in lines of one size no
// longer than limit mm. The name is not broken.
func runIn(name string, notes []string, size, limit float64) Block {
	heavy, light := ink.Strong(size), ink.Plain(size)
	b := Block{Lines: tightLines(light), Width: heavy.Width(name)}
	b.AddAt([]string{name}, heavy, 0, heavy.Down())
	s := text.JoinedNotes(notes)
	if s == "" {
		return b
	}
	// The first line is shorter than the others by the name.
	left := b.Width + heavy.Width("  ")
	lines := text.Wrap(s, light, limit-left)
	b.Say(lines[0], light, plane.Point{X: left, Y: -light.Up()})
	b.Width = left + light.Width(lines[0])
	if len(lines) > 1 {
		lines = text.Wrap(strings.Join(lines[1:], " "), light, limit)
		b.AddAt(lines, light, 0, light.Down())
		b.Width = math.Max(b.Width, text.LongestWord(lines, light))
	}
	return b
}

// Extent is how far the block reaches across and up when it runs along u.
func (b Block) Extent(u plane.Point) plane.Point {
	if u == text.Up() {
		return plane.Point{X: b.Height, Y: b.Width}
	}
	return plane.Point{X: b.Width, Y: b.Height}
}

// Around returns the room the block takes with its middle at a place.
func (b Block) Around(middle, u plane.Point) text.Slab {
	return text.Slab{Centre: middle, Half: plane.Point{X: b.Width / 2, Y: b.Height / 2}, U: u}
}

// Placed returns the block's lines with its middle at a place.
func (b Block) Placed(middle, u plane.Point) []text.Label {
	corner := middle.Sub(u.Mul(b.Width / 2)).Add(u.Left().Mul(b.Height / 2))
	var lines []text.Label
	for _, l := range b.Labels {
		l.U = u
		l.At = corner.Add(u.Mul(l.At.X)).Add(u.Left().Mul(l.At.Y))
		lines = append(lines, l.Measured())
	}
	return lines
}

// PlacedBlock is a block that has found its place: its middle, and the direction of
// length 1 that it runs in.
type PlacedBlock struct {
	Block
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

// Roomiest returns the place where the block has the most room round it, at
// least some mm; of several, the one nearest the middle of the piece.
func (p Piece) Roomiest(f *Field, places []plane.Point, b Block, u plane.Point, least float64, fits func(plane.Box) bool) (PlacedBlock, bool) {
	var best []plane.Point
	for _, more := range []float64{least, 2, 3, 4.5, 6, 12, 20, 30, 45} {
		if more < least {
			continue
		}
		var wider []plane.Point
		for _, at := range places {
			s := b.Around(at, u)
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
		return PlacedBlock{}, false
	}
	nearest := best[0]
	middle := p.Bounds.Centre()
	for _, at := range best {
		if at.Distance(middle) < nearest.Distance(middle) {
			nearest = at
		}
	}
	return PlacedBlock{b, nearest, u}, true
}
