package pdfout

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: text on a sheet is set where it touches no line and no
// other text. The check squares come first, since every page must have one;
// then the pieces' titles, upright and as large as there is room for, each on
// one page if it can be; then the names of lines, along them, read from below
// or from the right. Text smaller than can be read is left out instead.

// label is one line of text on a sheet.
type label struct {
	text   string
	face   *face
	size   float64 // in points
	colour colour
	at     plane.Point // where its base line begins
	u      plane.Point // the direction it runs in, of length 1
	room   slab
	// role is the role of the line the label names; a title names none.
	role    marking.Role
	ofALine bool
}

// letter finds the places for the check squares and all text of the sheet.
func (s *sheet) letter(unit marking.Unit, paper Paper) {
	f := s.field
	for _, p := range s.pieces {
		for _, l := range p.lines {
			for _, h := range l.arrowHeads() {
				f.take(h.room())
			}
		}
	}
	places := squares{squareSize(unit), paper, map[plane.Box][]plane.Point{}}
	for _, c := range s.cells {
		s.squares = append(s.squares, places.find(s, f, c))
	}
	for _, p := range s.pieces {
		s.labels = append(s.labels, p.title(f, s)...)
	}
	for _, p := range s.pieces {
		// Short lines first: a long one has many more places for its name.
		byLength := slices.SortedStableFunc(slices.Values(p.lines), func(a, b line) int {
			return cmp.Compare(a.clip.Length(), b.clip.Length())
		})
		for _, l := range byLength {
			if c, ok := l.caption(f, p, s); ok {
				f.take(c.room)
				s.labels = append(s.labels, c)
			}
		}
	}
}

// Titles.

const (
	// titleRoom is how far a piece's title stays from every line, in mm.
	titleRoom = 3.0
	// smallest is the smallest size of a title or a note, in points.
	smallest = 6.0
	// noteShare is the size of the notes, in sizes of the name.
	noteShare = 0.62
	// trials is how many places a title tries across and up a piece.
	trials = 32
	// closest is the least distance between those places, in mm.
	closest = 2.0
	// modest is the size up to which a title may fill its piece; a larger one
	// takes up no more than modestShare of the piece across and up, and has no
	// more than modestLines lines.
	modest      = 9.0
	modestShare = 0.6
	modestLines = 6
)

// block is a title set in lines, not yet anywhere.
type block struct {
	lines         []label // at the base line's place under the upper left corner
	width, height float64
	broken        bool // within a word
}

// newBlock sets a name and its notes, in lines no longer than limit mm.
func newBlock(name string, notes []string, size, limit float64) block {
	var b block
	add := func(text string, f *face, size float64) {
		for _, line := range f.wrap(text, size, limit) {
			b.height += size * leading * point
			b.width = math.Max(b.width, f.width(line, size))
			b.lines = append(b.lines, label{
				text: line, face: f, size: size, u: plane.Point{X: 1},
				at: plane.Point{Y: -b.height + size*descent*point},
			})
		}
		for _, word := range strings.Fields(text) {
			b.broken = b.broken || f.width(word, size) > limit
		}
	}
	add(name, bold(), size)
	for _, note := range notes {
		add(note, regular(), math.Max(smallest, size*noteShare))
	}
	return b
}

// around returns the room the block takes with its middle at a place.
func (b block) around(middle plane.Point) slab {
	return slab{middle, plane.Point{X: b.width / 2, Y: b.height / 2}, plane.Point{X: 1}}
}

// placed returns the block's lines, each centred, with its middle at a place.
func (b block) placed(middle plane.Point) []label {
	var lines []label
	for _, l := range b.lines {
		w := l.face.width(l.text, l.size)
		l.at = middle.Add(plane.Point{X: -w / 2, Y: l.at.Y + b.height/2})
		l.room = slab{
			plane.Point{X: middle.X, Y: l.at.Y + (ascent-descent)/2*l.size*point},
			plane.Point{X: w / 2, Y: (ascent + descent) / 2 * l.size * point},
			plane.Point{X: 1},
		}
		lines = append(lines, l)
	}
	return lines
}

// title finds the place for the piece's name and notes: inside, as large as
// possible, rather whole on one page. A piece without any such place has its
// name beside it where that is free; the page's header names it in any case.
func (p piece) title(f *field, on *sheet) []label {
	places := p.places(f)
	for _, fits := range []func(plane.Box) bool{on.whole, on.shown} {
		for _, size := range []float64{18, 15, 12, 10.5, modest, 8, 7, smallest} {
			for _, limit := range []float64{math.Inf(1), 60, 40, 25, 18} {
				b := newBlock(p.name, p.notes, size, limit)
				if !b.suits(p, size) {
					continue
				}
				if at, ok := p.roomiest(f, places, b, fits); ok {
					f.take(b.around(at))
					return b.placed(at)
				}
			}
		}
	}
	return p.titleBeside(f, on)
}

// suits reports whether a title of a size looks well in a piece: a large one
// must not crowd it, and only the smallest may break a word.
func (b block) suits(p piece, size float64) bool {
	if size > modest && (b.width > modestShare*p.bounds.Width() || b.height > modestShare*p.bounds.Height() || len(b.lines) > modestLines) {
		return false
	}
	return !b.broken || size == smallest
}

// places returns the places inside the piece that a title might be put at.
func (p piece) places(f *field) []plane.Point {
	step := plane.Point{
		X: math.Max(closest, p.bounds.Width()/trials),
		Y: math.Max(closest, p.bounds.Height()/trials),
	}
	var places []plane.Point
	middle := p.bounds.Centre()
	for x := -math.Floor(p.bounds.Width() / 2 / step.X); x <= trials/2; x++ {
		for y := -math.Floor(p.bounds.Height() / 2 / step.Y); y <= trials/2; y++ {
			at := middle.Add(plane.Point{X: x * step.X, Y: y * step.Y})
			if p.inside(at) && f.free(slab{at, plane.Point{X: titleRoom, Y: titleRoom}, plane.Point{X: 1}}) {
				places = append(places, at)
			}
		}
	}
	return places
}

// roomiest returns the place where the block has the most room round it; of
// several, the one nearest the middle of the piece.
func (p piece) roomiest(f *field, places []plane.Point, b block, fits func(plane.Box) bool) (plane.Point, bool) {
	var best []plane.Point
	for _, more := range []float64{titleRoom, 6, 12, 20, 30, 45} {
		var wider []plane.Point
		for _, at := range places {
			s := b.around(at)
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
		return plane.Point{}, false
	}
	nearest := best[0]
	middle := p.bounds.Centre()
	for _, at := range best {
		if at.Distance(middle) < nearest.Distance(middle) {
			nearest = at
		}
	}
	return nearest, true
}

// titleBeside puts the name, and the notes in one, next to a piece that has no
// room for them.
func (p piece) titleBeside(f *field, on *sheet) []label {
	var notes []string
	if len(p.notes) > 0 {
		notes = []string{strings.Join(p.notes, ", ")}
	}
	b := newBlock(p.name, notes, 8, 60)
	middle := p.bounds.Centre()
	aside := plane.Point{
		X: p.bounds.Width()/2 + b.width/2 + titleRoom/2,
		Y: p.bounds.Height()/2 + b.height/2 + titleRoom/2,
	}
	for _, step := range []plane.Point{{Y: -aside.Y}, {Y: aside.Y}, {X: aside.X}, {X: -aside.X}} {
		at := middle.Add(step)
		if s := b.around(at); on.whole(s.bounds()) && f.free(s.grown(titleRoom/3)) {
			f.take(s)
			return b.placed(at)
		}
	}
	return nil
}

// Names of lines.

const (
	// captionAway is how far a name stays from its line, in mm.
	captionAway = 0.9
	// captionRoom is how far it stays from everything else, in mm.
	captionRoom = 0.6
	// captionPlaces is how many places along a line a name tries.
	captionPlaces = 24
	// straight is how far a line may stray from under its name, in mm.
	straight = 0.6
	// tilt lets nearly upright names lean a little past upright, in
	// radians, so that they all read from the right.
	tilt = 0.05
)

// caption finds the place for the name of a line, if it has a name.
func (l line) caption(f *field, p piece, on *sheet) (label, bool) {
	if l.name == "" {
		return label{}, false
	}
	for _, size := range []float64{6.5, 5.75, 5} {
		var second *label
		for _, c := range l.captionPlaces(size) {
			if !f.free(c.room.grown(captionRoom)) || !p.inside(c.room.centre) {
				continue
			}
			b := c.room.bounds()
			if on.whole(b) {
				return c, true
			}
			if second == nil && on.shown(b) {
				second = &c
			}
		}
		if second != nil {
			return *second, true
		}
	}
	return label{}, false
}

// captionPlaces returns where the name may stand along its line, best first:
// from the middle of the line outward, over the line before under it. The name
// of a line that bounds the piece stands inside. The name of a line too short
// for it stands across its end.
func (l line) captionPlaces(size float64) []label {
	f := regular()
	w := f.width(l.name, size)
	length := l.clip.Length()
	up, down := ascent*size*point, descent*size*point
	set := func(centre, reads plane.Point) label {
		return label{
			text: l.name, face: f, size: size, colour: penOf(l.role).colour, u: reads,
			at:   centre.Add(reads.Left().Mul((down - up) / 2)).Sub(reads.Mul(w / 2)),
			room: slab{centre, plane.Point{X: w / 2, Y: (up + down) / 2}, reads},
			role: l.role, ofALine: true,
		}
	}
	if w > length {
		end := l.clip.Path().EndDirection()
		centre := l.clip.At(length).Add(end.Mul(captionAway + (up+down)/2))
		return []label{set(centre, readable(end.Left()))}
	}
	var found []label
	for k := range captionPlaces {
		// 0, +1, -1, +2, -2, ... steps from the middle.
		step := float64((k+1)/2) * (length - w) / captionPlaces
		if k%2 == 0 {
			step = -step
		}
		start := (length-w)/2 + step
		a, b := l.clip.At(start), l.clip.At(start+w)
		u := b.Sub(a).Unit()
		if b.Distance(a) < w-straight || !l.staysBy(start, w, a, u) {
			continue
		}
		reads := readable(u)
		for _, side := range []plane.Point{reads.Left(), reads.Left().Mul(-1)} {
			if bounding(l.role) && side.Dot(u.Left()) < 0 {
				continue
			}
			centre := a.Toward(b, 0.5).Add(side.Mul(captionAway + (up+down)/2))
			found = append(found, set(centre, reads))
		}
	}
	return found
}

// readable turns the direction of a text so that it reads from below or from
// the right.
func readable(u plane.Point) plane.Point {
	if angle := math.Atan2(u.Y, u.X); angle > math.Pi/2+tilt || angle <= -math.Pi/2+tilt {
		return u.Mul(-1)
	}
	return u
}

// staysBy reports whether the line stays near the straight from a along u for
// the w mm from start.
func (l line) staysBy(start, w float64, a, u plane.Point) bool {
	const looks = 8
	for i := 1; i < looks; i++ {
		if math.Abs(l.clip.At(start+w*float64(i)/looks).Sub(a).Cross(u)) > straight {
			return false
		}
	}
	return true
}
