package arrange

import (
	"math"

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
// anyway. A piece without room has it beside it, for which room is kept (titlebeside.go);
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
	// closest is the least distance between the places it tries, in mm, and
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
)

// title puts the piece's title on the sheet.
func (s *Sheet) title(p Piece, f *Field) {
	at, ok := PlacedInscription{}, false
	if p.Foot == (plane.Point{}) {
		at, ok = p.titleInside(f, s.Whole, s.shown)
	}
	for _, notes := range [][]string{p.notes, p.notes} {
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
func (p Piece) titleInside(f *Field, whole, shown func(plane.Box) bool) (PlacedInscription, bool) {
	places := p.Places(f, titleRoom, closest)
	if found, ok := p.linesInside(f, places, whole); ok {
		return found, true
	}
	close := p.Places(f, narrowRoom, narrowClosest)
	for _, notes := range [][]string{p.notes, p.notes} {
		for _, size := range []float64{modest, 8, 7, Smallest} {
			title := oneLine(p.Name, notes, size)
			for _, u := range []plane.Point{text.Across(), text.Up()} {
				if found, ok := p.Roomiest(f, close, title, u, narrowRoom, whole); ok {
					return found, true
				}
			}
		}
	}
	return p.linesInside(f, places, shown)
}

// linesInside finds the largest title of several lines that has a place.
func (p Piece) linesInside(f *Field, places []plane.Point, fits func(plane.Box) bool) (PlacedInscription, bool) {
	for _, size := range []float64{18, 15, 12, 10.5, modest, 8, 7, Smallest} {
		for _, u := range []plane.Point{text.Across(), text.Up()} {
			if u == text.Up() && size >= modest && p.Bounds.Height() < narrow*p.Bounds.Width() {
				continue
			}
			for _, title := range p.inscriptions(size) {
				if !title.suits(p, size, u) {
					continue
				}
				if found, ok := p.Roomiest(f, places, title, u, titleRoom, fits); ok {
					return found, true
				}
			}
		}
	}
	return PlacedInscription{}, false
}

// titleAlong finds a place in the piece for a title with long notes that has
// none anywhere else: in a few small lines, close to the lines of the piece.
func (p Piece) titleAlong(f *Field, fits func(plane.Box) bool) (PlacedInscription, bool) {
	if !wordy(p.notes) {
		return PlacedInscription{}, false
	}
	for _, u := range []plane.Point{text.Across(), text.Up()} {
		places := p.strips(f, narrowRoom, u)
		for _, size := range []float64{8, 7, Smallest} {
			for _, limit := range []float64{230, 170, 140, 110, 80} {
				if ink.Strong(size).Width(p.Name) > limit/2 {
					continue
				}
				if found, ok := p.Roomiest(f, places, runIn(p.Name, p.notes, size, limit), u, narrowRoom, fits); ok {
					return found, true
				}
			}
		}
	}
	return PlacedInscription{}, false
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

// inscriptions returns the ways to set the title in a size, best first.
func (p Piece) inscriptions(size float64) []Inscription {
	inscriptions := []Inscription{newInscription(p.Name, p.notes, size, math.Inf(1))}
	if wordy(p.notes) {
		for _, limit := range []float64{160, 130, 100, 75} {
			inscriptions = append(inscriptions, newInscription(p.Name, []string{text.JoinedNotes(p.notes)}, size, limit))
		}
	}
	for _, limit := range []float64{60, 40, 25, 18} {
		inscriptions = append(inscriptions, newInscription(p.Name, p.notes, size, limit))
	}
	return inscriptions
}

// wordy reports whether notes are too long for a few short lines.
func wordy(notes []string) bool {
	return ink.Plain(Smallest).Width(text.JoinedNotes(notes)) > longLines*besideWidth
}

// suits reports whether a title of a size looks well in a piece: a large one
// must not crowd it, and only the smallest may break a word.
func (title Inscription) suits(p Piece, size float64, u plane.Point) bool {
	e := title.Extent(u)
	if e.X > p.Bounds.Width() || e.Y > p.Bounds.Height() {
		return false
	}
	if size > modest && (e.X > modestShare*p.Bounds.Width() || e.Y > modestShare*p.Bounds.Height() || len(title.Labels) > modestLines) {
		return false
	}
	return !title.Broken || size == Smallest
}
