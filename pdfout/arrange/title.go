package arrange

import (
	"math"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the title of a piece is its name and its notes, such as
// how often it is cut; it is on the paper for every piece. It stands inside
// the piece, upright and as large as there is room for, and on one page if it
// can be. Long notes that find no place under each other follow each other in
// wide lines. In a narrow piece the title runs along it, if need be in one
// small line close to the lines of the piece and without what the header says
// anyway. A piece without room has it beside it, for which pack keeps a place;
// failing that, long notes fill a strip of the piece in small lines, and short
// ones stand in the header of the page.

const (
	// titleRoom is how far a piece's title stays from every line, in mm.
	titleRoom = 3.0
	// narrowRoom is titleRoom for the title of a piece that has no more.
	narrowRoom = 1.0
	// Smallest is the smallest size of a title or a note, in points.
	Smallest = 6.0
	// noteShare is the size of the notes, in sizes of the name.
	noteShare = 0.62
	// trials is how many places a title tries across and up a piece.
	trials = 32
	// closest is the least distance between those places, in mm, and
	// narrowClosest the least in a narrow piece.
	closest       = 2.0
	narrowClosest = 0.4
	// modest is the size up to which a title may fill its piece; a larger one
	// takes up no more than modestShare of the piece across and up, and has no
	// more than modestLines lines.
	modest      = 9.0
	modestShare = 0.6
	modestLines = 7
	// narrow is how many times as high as wide a piece is in which larger
	// titles run up, too.
	narrow = 2.0
	// besideSize is the size of a title beside its piece, in points, and
	// besideWidth the most its lines may be long, in mm.
	besideSize  = 8.0
	besideWidth = 60.0
	// longLines is how many lines of besideWidth, in the smallest size, notes
	// may fill before they are long. Beside a piece whose longer side is
	// besideWide mm or more long notes stay under each other, in lines of up
	// to that width, and the title has besideWideSize.
	longLines      = 4
	besideWide     = 110.0
	besideWideSize = 11.5
	// besideAway is how far it stays from its piece, in mm, and besideRoom
	// how far from everything else.
	besideAway = 1.5
	besideRoom = 1.0
	// besideSteps is how many places it tries along each side of the piece.
	besideSteps = 33
)

// Block is a title, or a name, set in lines, not yet anywhere.
type Block struct {
	text.Lines
	Width  float64
	Broken bool // within a word
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

// PlacedBlock is a block that has found its place.
type PlacedBlock struct {
	Block
	Middle, U plane.Point
}

// title puts the piece's title on the sheet.
func (s *Sheet) title(p Piece, f *Field) {
	at, ok := PlacedBlock{}, false
	if p.Foot == (plane.Point{}) {
		at, ok = p.titleInside(f, s.Whole, s.shown)
	}
	for _, notes := range [][]string{p.notes, p.Brief} {
		if !ok {
			at, ok = s.titleBeside(p, f, notes)
		}
	}
	if !ok {
		at, ok = p.titleAlong(f, s.Whole)
	}
	if !ok {
		s.Untitled = append(s.Untitled, p)
		return
	}
	f.Take(at.Around(at.Middle, at.U))
	s.Labels = append(s.Labels, at.Placed(at.Middle, at.U)...)
}

// titleInside finds a place for the title in the piece: for one that is whole
// on a page first, then for one that is at least partly shown.
func (p Piece) titleInside(f *Field, whole, shown func(plane.Box) bool) (PlacedBlock, bool) {
	places := p.Places(f, titleRoom, closest)
	if found, ok := p.blockInside(f, places, whole); ok {
		return found, true
	}
	close := p.Places(f, narrowRoom, narrowClosest)
	for _, notes := range [][]string{p.notes, p.Brief} {
		for _, size := range []float64{modest, 8, 7, Smallest} {
			b := oneLine(p.Name, notes, size)
			for _, u := range []plane.Point{text.Across(), text.Up()} {
				if found, ok := p.Roomiest(f, close, b, u, narrowRoom, whole); ok {
					return found, true
				}
			}
		}
	}
	return p.blockInside(f, places, shown)
}

// blockInside finds the largest title of several lines that has a place.
func (p Piece) blockInside(f *Field, places []plane.Point, fits func(plane.Box) bool) (PlacedBlock, bool) {
	for _, size := range []float64{18, 15, 12, 10.5, modest, 8, 7, Smallest} {
		for _, u := range []plane.Point{text.Across(), text.Up()} {
			if u == text.Up() && size >= modest && p.Bounds.Height() < narrow*p.Bounds.Width() {
				continue
			}
			for _, b := range p.blocks(size) {
				if !b.suits(p, size, u) {
					continue
				}
				if found, ok := p.Roomiest(f, places, b, u, titleRoom, fits); ok {
					return found, true
				}
			}
		}
	}
	return PlacedBlock{}, false
}

// titleAlong finds a place in the piece for a title with long notes that has
// none anywhere else: in a few small lines, close to the lines of the piece.
func (p Piece) titleAlong(f *Field, fits func(plane.Box) bool) (PlacedBlock, bool) {
	if !long(p.Brief) {
		return PlacedBlock{}, false
	}
	for _, u := range []plane.Point{text.Across(), text.Up()} {
		places := p.strips(f, narrowRoom, u)
		for _, size := range []float64{8, 7, Smallest} {
			for _, limit := range []float64{230, 170, 140, 110, 80} {
				if ink.Strong(size).Width(p.Name) > limit/2 {
					continue
				}
				if found, ok := p.Roomiest(f, places, runIn(p.Name, p.Brief, size, limit), u, narrowRoom, fits); ok {
					return found, true
				}
			}
		}
	}
	return PlacedBlock{}, false
}

// stripTrials is how many places lines along a strip try along it; across it
// they lie stripStep mm apart or more, and are stripMost at most.
const (
	stripTrials = 9
	stripStep   = 0.5
	stripMost   = 600
)

// strips returns the places inside the piece, with room mm round them, that
// are looked at for a strip along u which is free: few along it, many across.
func (p Piece) strips(f *Field, room float64, u plane.Point) []plane.Point {
	length, width := p.Bounds.Width(), p.Bounds.Height()
	if u == text.Up() {
		length, width = width, length
	}
	step := math.Max(stripStep, width/stripMost)
	middle := p.Bounds.Centre()
	var places []plane.Point
	for y := -math.Floor(width / 2 / step); y <= width/2/step; y++ {
		for k := range stripTrials {
			at := middle.Add(u.Mul(stepFromMiddle(k) * length / (stripTrials + 1))).Add(u.Left().Mul(y * step))
			if p.free(f, at, room) {
				places = append(places, at)
			}
		}
	}
	return places
}

// blocks returns the ways to set the title in a size, best first.
func (p Piece) blocks(size float64) []Block {
	blocks := []Block{newBlock(p.Name, p.notes, size, math.Inf(1))}
	if long(p.notes) {
		for _, limit := range []float64{160, 130, 100, 75} {
			blocks = append(blocks, newBlock(p.Name, []string{text.JoinedNotes(p.notes)}, size, limit))
		}
	}
	for _, limit := range []float64{60, 40, 25, 18} {
		blocks = append(blocks, newBlock(p.Name, p.notes, size, limit))
	}
	return blocks
}

// long reports whether notes are too long for a few short lines.
func long(notes []string) bool {
	return ink.Plain(Smallest).Width(text.JoinedNotes(notes)) > longLines*besideWidth
}

// suits reports whether a title of a size looks well in a piece: a large one
// must not crowd it, and only the smallest may break a word.
func (b Block) suits(p Piece, size float64, u plane.Point) bool {
	e := b.Extent(u)
	if e.X > p.Bounds.Width() || e.Y > p.Bounds.Height() {
		return false
	}
	if size > modest && (e.X > modestShare*p.Bounds.Width() || e.Y > modestShare*p.Bounds.Height() || len(b.Labels) > modestLines) {
		return false
	}
	return !b.Broken || size == Smallest
}

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

// beside sets a title to stand beside the piece, in the same way when the piece
// is turned: short notes in one.
func (p Piece) beside(notes []string) Block {
	if long(notes) && math.Max(p.Bounds.Width(), p.Bounds.Height()) >= besideWide {
		return newBlock(p.Name, notes, besideWideSize, besideWide)
	}
	var joined []string
	if len(notes) > 0 {
		joined = []string{text.JoinedNotes(notes)}
	}
	return newBlock(p.Name, joined, besideSize, besideWidth)
}

// FootOf is the room that the title of a piece takes under it, when it has no
// place inside among the lines of f: the zero point when it has one, and when
// the piece would not go on a page with it.
func FootOf(p Piece, f *Field, window plane.Point) plane.Point {
	anywhere := func(plane.Box) bool { return true }
	if _, ok := p.titleInside(f, anywhere, anywhere); ok {
		return plane.Point{}
	}
	b := p.beside(p.notes)
	p.Foot = plane.Point{X: b.Width + 2*besideRoom, Y: b.Height + besideAway + besideRoom}
	if !p.Fits(window) {
		return plane.Point{}
	}
	return p.Foot
}

// titleBeside finds a place for the title next to a piece that has no room for
// it: under it, over it, or at a side of it, rather near its middle; never in
// another piece.
func (s *Sheet) titleBeside(p Piece, f *Field, notes []string) (PlacedBlock, bool) {
	b := p.beside(notes)
	middle := p.Bounds.Centre()
	away := func(u plane.Point, b Block) plane.Point {
		e := b.Extent(u)
		return plane.Point{X: (p.Bounds.Width()+e.X)/2 + besideAway, Y: (p.Bounds.Height()+e.Y)/2 + besideAway}
	}
	free := func(b Block, u plane.Point, steps ...plane.Point) (PlacedBlock, bool) {
		for _, step := range steps {
			at := middle.Add(step)
			room := b.Around(at, u)
			if s.Whole(room.Bounds()) && f.Free(room.Grown(besideRoom)) && !s.insideAny(at) {
				return PlacedBlock{b, at, u}, true
			}
		}
		return PlacedBlock{}, false
	}
	if p.Foot != (plane.Point{}) {
		// The place kept under the piece begins where the piece does.
		kept := math.Max(0, (b.Width-p.Bounds.Width())/2)
		if found, ok := free(b, text.Across(), plane.Point{X: kept, Y: -away(text.Across(), b).Y}); ok {
			return found, true
		}
	}
	long := oneLine(p.Name, notes, besideSize)
	for k := range besideSteps {
		t := stepFromMiddle(k) / (besideSteps - 1)
		along := plane.Point{X: t * p.Bounds.Width(), Y: t * p.Bounds.Height()}
		if p.Bounds.Height() > narrow*p.Bounds.Width() {
			// Along the side of a narrow piece, where pieces lie apart.
			side := away(text.Up(), long).X
			if found, ok := free(long, text.Up(), plane.Point{X: side, Y: along.Y}, plane.Point{X: -side, Y: along.Y}); ok {
				return found, true
			}
		}
		step := away(text.Across(), b)
		if found, ok := free(b, text.Across(), plane.Point{X: along.X, Y: -step.Y}, plane.Point{X: along.X, Y: step.Y},
			plane.Point{X: step.X, Y: along.Y}, plane.Point{X: -step.X, Y: along.Y}); ok {
			return found, true
		}
	}
	return PlacedBlock{}, false
}

// stepFromMiddle counts 0, 1, -1, 2, -2, ...
func stepFromMiddle(k int) float64 {
	step := float64((k + 1) / 2)
	if k%2 == 0 {
		return -step
	}
	return step
}

// insideAny reports whether a place lies inside a piece.
func (s *Sheet) insideAny(at plane.Point) bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return p.Inside(at) })
}
