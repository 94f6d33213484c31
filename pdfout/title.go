package pdfout

import (
	"math"
	"slices"
	"strings"

	"tuckmark/marking"
	"tuckmark/marking/plane"
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
	// smallest is the smallest size of a title or a note, in points.
	smallest = 6.0
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

// block is a title, or a name, set in lines, not yet anywhere.
type block struct {
	Lines
	width  float64
	broken bool // within a word
}

// addCentred sets lines under what there is, for their middles to be brought under
// each other, with their base lines some mm over their feet.
func (b *block) addCentred(lines, words []string, s Style, limit, foot float64) {
	b.addAt(lines, s, 0, foot)
	b.width = math.Max(b.width, longestWord(lines, s))
	b.broken = b.broken || longestWord(words, s) > limit
}

// centred brings the middles of the lines under each other.
func (b block) centred() block {
	for i, l := range b.labels {
		b.labels[i].at.X = (b.width - l.style.width(l.text)) / 2
	}
	return b
}

// newBlock sets a name and its notes, in lines no longer than limit mm.
func newBlock(name string, notes []string, size, limit float64) block {
	var b block
	add := func(text string, s Style) {
		b.addCentred(wrap(text, s, limit), strings.Fields(text), s, limit, s.down())
	}
	add(name, strong(size))
	for _, note := range notes {
		add(note, plain(math.Max(smallest, size*noteShare)))
	}
	return b.centred()
}

// nameBlock sets a name in lines no longer than limit mm, as close as its letters are
// high.
func nameBlock(name string, s Style, limit float64) block {
	b := block{Lines: tightLines(s)}
	b.addCentred(wrapMeasures(name, s, limit), marking.Words(name), s, limit, s.down())
	return b.centred()
}

// tightLines are lines of which the first has nothing free above it.
func tightLines(s Style) Lines { return Lines{height: s.up() + s.down() - s.step()} }

// oneLine sets a name and, after it, its notes in one line of one size.
func oneLine(name string, notes []string, size float64) block {
	return runIn(name, notes, size, math.Inf(1))
}

// runIn sets a name and, right after it, its notes in lines of one size no
// longer than limit mm. The name is not broken.
func runIn(name string, notes []string, size, limit float64) block {
	heavy, light := strong(size), plain(size)
	b := block{Lines: tightLines(light), width: heavy.width(name)}
	b.addAt([]string{name}, heavy, 0, heavy.down())
	text := joinedNotes(notes)
	if text == "" {
		return b
	}
	// The first line is shorter than the others by the name.
	left := b.width + heavy.width("  ")
	lines := wrap(text, light, limit-left)
	b.say(lines[0], light, plane.Point{X: left, Y: -light.up()})
	b.width = left + light.width(lines[0])
	if len(lines) > 1 {
		lines = wrap(strings.Join(lines[1:], " "), light, limit)
		b.addAt(lines, light, 0, light.down())
		b.width = math.Max(b.width, longestWord(lines, light))
	}
	return b
}

// extent is how far the block reaches across and up when it runs along u.
func (b block) extent(u plane.Point) plane.Point {
	if u == up() {
		return plane.Point{X: b.height, Y: b.width}
	}
	return plane.Point{X: b.width, Y: b.height}
}

// around returns the room the block takes with its middle at a place.
func (b block) around(middle, u plane.Point) slab {
	return newSlab(middle, plane.Point{X: b.width / 2, Y: b.height / 2}, u)
}

// placed returns the block's lines with its middle at a place.
func (b block) placed(middle, u plane.Point) []label {
	corner := middle.Sub(u.Mul(b.width / 2)).Add(u.Left().Mul(b.height / 2))
	var lines []label
	for _, l := range b.labels {
		l.u = u
		l.at = corner.Add(u.Mul(l.at.X)).Add(u.Left().Mul(l.at.Y))
		lines = append(lines, l.measured())
	}
	return lines
}

// placedBlock is a block that has found its place.
type placedBlock struct {
	block
	middle, u plane.Point
}

// title puts the piece's title on the sheet.
func (s *sheet) title(p piece, f *field) {
	at, ok := placedBlock{}, false
	if p.foot == (plane.Point{}) {
		at, ok = p.titleInside(f, s.whole, s.shown)
	}
	for _, notes := range [][]string{p.notes, p.brief} {
		if !ok {
			at, ok = s.titleBeside(p, f, notes)
		}
	}
	if !ok {
		at, ok = p.titleAlong(f, s.whole)
	}
	if !ok {
		s.untitled = append(s.untitled, p)
		return
	}
	f.take(at.around(at.middle, at.u))
	s.labels = append(s.labels, at.placed(at.middle, at.u)...)
}

// fewer leaves out the notes that the header of every page says anyway.
func fewer(notes []string, set Set) []string {
	return slices.DeleteFunc(slices.Clone(notes), func(note string) bool {
		return note == set.Title || note == set.size()
	})
}

// titleInside finds a place for the title in the piece: for one that is whole
// on a page first, then for one that is at least partly shown.
func (p piece) titleInside(f *field, whole, shown func(plane.Box) bool) (placedBlock, bool) {
	places := p.places(f, titleRoom, closest)
	if found, ok := p.blockInside(f, places, whole); ok {
		return found, true
	}
	close := p.places(f, narrowRoom, narrowClosest)
	for _, notes := range [][]string{p.notes, p.brief} {
		for _, size := range []float64{modest, 8, 7, smallest} {
			b := oneLine(p.name, notes, size)
			for _, u := range []plane.Point{across(), up()} {
				if found, ok := p.roomiest(f, close, b, u, narrowRoom, whole); ok {
					return found, true
				}
			}
		}
	}
	return p.blockInside(f, places, shown)
}

// blockInside finds the largest title of several lines that has a place.
func (p piece) blockInside(f *field, places []plane.Point, fits func(plane.Box) bool) (placedBlock, bool) {
	for _, size := range []float64{18, 15, 12, 10.5, modest, 8, 7, smallest} {
		for _, u := range []plane.Point{across(), up()} {
			if u == up() && size >= modest && p.bounds.Height() < narrow*p.bounds.Width() {
				continue
			}
			for _, b := range p.blocks(size) {
				if !b.suits(p, size, u) {
					continue
				}
				if found, ok := p.roomiest(f, places, b, u, titleRoom, fits); ok {
					return found, true
				}
			}
		}
	}
	return placedBlock{}, false
}

// titleAlong finds a place in the piece for a title with long notes that has
// none anywhere else: in a few small lines, close to the lines of the piece.
func (p piece) titleAlong(f *field, fits func(plane.Box) bool) (placedBlock, bool) {
	if !long(p.brief) {
		return placedBlock{}, false
	}
	for _, u := range []plane.Point{across(), up()} {
		places := p.strips(f, narrowRoom, u)
		for _, size := range []float64{8, 7, smallest} {
			for _, limit := range []float64{230, 170, 140, 110, 80} {
				if strong(size).width(p.name) > limit/2 {
					continue
				}
				if found, ok := p.roomiest(f, places, runIn(p.name, p.brief, size, limit), u, narrowRoom, fits); ok {
					return found, true
				}
			}
		}
	}
	return placedBlock{}, false
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
func (p piece) strips(f *field, room float64, u plane.Point) []plane.Point {
	length, width := p.bounds.Width(), p.bounds.Height()
	if u == up() {
		length, width = width, length
	}
	step := math.Max(stripStep, width/stripMost)
	middle := p.bounds.Centre()
	var places []plane.Point
	for y := -math.Floor(width / 2 / step); y <= width/2/step; y++ {
		for k := range stripTrials {
			at := middle.Add(u.Mul(stepFromMiddle(k) * length / (stripTrials + 1))).Add(u.Left().Mul(y * step))
			if p.inside(at) && f.free(newSlab(at, plane.Point{X: room, Y: room}, across())) {
				places = append(places, at)
			}
		}
	}
	return places
}

// blocks returns the ways to set the title in a size, best first.
func (p piece) blocks(size float64) []block {
	blocks := []block{newBlock(p.name, p.notes, size, math.Inf(1))}
	if long(p.notes) {
		for _, limit := range []float64{160, 130, 100, 75} {
			blocks = append(blocks, newBlock(p.name, []string{joinedNotes(p.notes)}, size, limit))
		}
	}
	for _, limit := range []float64{60, 40, 25, 18} {
		blocks = append(blocks, newBlock(p.name, p.notes, size, limit))
	}
	return blocks
}

// long reports whether notes are too long for a few short lines.
func long(notes []string) bool {
	return plain(smallest).width(joinedNotes(notes)) > longLines*besideWidth
}

// suits reports whether a title of a size looks well in a piece: a large one
// must not crowd it, and only the smallest may break a word.
func (b block) suits(p piece, size float64, u plane.Point) bool {
	e := b.extent(u)
	if e.X > p.bounds.Width() || e.Y > p.bounds.Height() {
		return false
	}
	if size > modest && (e.X > modestShare*p.bounds.Width() || e.Y > modestShare*p.bounds.Height() || len(b.labels) > modestLines) {
		return false
	}
	return !b.broken || size == smallest
}

// places returns the places inside the piece that a title might be put at,
// with room mm round them and step mm or more between them.
func (p piece) places(f *field, room, step float64) []plane.Point {
	dx, dy := math.Max(step, p.bounds.Width()/trials), math.Max(step, p.bounds.Height()/trials)
	var places []plane.Point
	middle := p.bounds.Centre()
	for x := -math.Floor(p.bounds.Width() / 2 / dx); x <= trials/2; x++ {
		for y := -math.Floor(p.bounds.Height() / 2 / dy); y <= trials/2; y++ {
			at := middle.Add(plane.Point{X: x * dx, Y: y * dy})
			if p.inside(at) && f.free(newSlab(at, plane.Point{X: room, Y: room}, across())) {
				places = append(places, at)
			}
		}
	}
	return places
}

// roomiest returns the place where the block has the most room round it, at
// least some mm; of several, the one nearest the middle of the piece.
func (p piece) roomiest(f *field, places []plane.Point, b block, u plane.Point, least float64, fits func(plane.Box) bool) (placedBlock, bool) {
	var best []plane.Point
	for _, more := range []float64{least, 2, 3, 4.5, 6, 12, 20, 30, 45} {
		if more < least {
			continue
		}
		var wider []plane.Point
		for _, at := range places {
			s := b.around(at, u)
			if fits(s.bounds()) && f.free(s.grown(more)) {
				wider = append(wider, at)
			}
		}
		if len(wider) == 0 {
			break
		}
		best, places = wider, wider
	}
	if len(best) == 0 {
		return placedBlock{}, false
	}
	nearest := best[0]
	middle := p.bounds.Centre()
	for _, at := range best {
		if at.Distance(middle) < nearest.Distance(middle) {
			nearest = at
		}
	}
	return placedBlock{b, nearest, u}, true
}

// beside sets a title to stand beside the piece, in the same way when the piece
// is turned: short notes in one.
func (p piece) beside(notes []string) block {
	if long(notes) && math.Max(p.bounds.Width(), p.bounds.Height()) >= besideWide {
		return newBlock(p.name, notes, besideWideSize, besideWide)
	}
	var joined []string
	if len(notes) > 0 {
		joined = []string{joinedNotes(notes)}
	}
	return newBlock(p.name, joined, besideSize, besideWidth)
}

// footOf is the room that the title of a piece takes under it, when it has no
// place inside among the lines of f: the zero point when it has one, and when
// the piece would not go on a page with it.
func footOf(p piece, f *field, window plane.Point) plane.Point {
	anywhere := func(plane.Box) bool { return true }
	if _, ok := p.titleInside(f, anywhere, anywhere); ok {
		return plane.Point{}
	}
	b := p.beside(p.notes)
	p.foot = plane.Point{X: b.width + 2*besideRoom, Y: b.height + besideAway + besideRoom}
	if !p.fits(window) {
		return plane.Point{}
	}
	return p.foot
}

// titleBeside finds a place for the title next to a piece that has no room for
// it: under it, over it, or at a side of it, rather near its middle; never in
// another piece.
func (s *sheet) titleBeside(p piece, f *field, notes []string) (placedBlock, bool) {
	b := p.beside(notes)
	middle := p.bounds.Centre()
	away := func(u plane.Point, b block) plane.Point {
		e := b.extent(u)
		return plane.Point{X: (p.bounds.Width()+e.X)/2 + besideAway, Y: (p.bounds.Height()+e.Y)/2 + besideAway}
	}
	free := func(b block, u plane.Point, steps ...plane.Point) (placedBlock, bool) {
		for _, step := range steps {
			at := middle.Add(step)
			room := b.around(at, u)
			if s.whole(room.bounds()) && f.free(room.grown(besideRoom)) && !s.insideAny(at) {
				return placedBlock{b, at, u}, true
			}
		}
		return placedBlock{}, false
	}
	if p.foot != (plane.Point{}) {
		// The place kept under the piece begins where the piece does.
		kept := math.Max(0, (b.width-p.bounds.Width())/2)
		if found, ok := free(b, across(), plane.Point{X: kept, Y: -away(across(), b).Y}); ok {
			return found, true
		}
	}
	long := oneLine(p.name, notes, besideSize)
	for k := range besideSteps {
		t := stepFromMiddle(k) / (besideSteps - 1)
		along := plane.Point{X: t * p.bounds.Width(), Y: t * p.bounds.Height()}
		if p.bounds.Height() > narrow*p.bounds.Width() {
			// Along the side of a narrow piece, where pieces lie apart.
			side := away(up(), long).X
			if found, ok := free(long, up(), plane.Point{X: side, Y: along.Y}, plane.Point{X: -side, Y: along.Y}); ok {
				return found, true
			}
		}
		step := away(across(), b)
		if found, ok := free(b, across(), plane.Point{X: along.X, Y: -step.Y}, plane.Point{X: along.X, Y: step.Y},
			plane.Point{X: step.X, Y: along.Y}, plane.Point{X: -step.X, Y: along.Y}); ok {
			return found, true
		}
	}
	return placedBlock{}, false
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
func (s *sheet) insideAny(at plane.Point) bool {
	return slices.ContainsFunc(s.pieces, func(p piece) bool { return p.inside(at) })
}
