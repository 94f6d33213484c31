package arrange

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: a piece without room inside for its title brings room for it
// along, under it; it is packed with that. Whatever stands beside a piece stands in no
// other.

const (
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

// FootOf is the room that the title of a piece takes under it, when it has no
// place inside among the lines of f: the zero point when it has one, and when
// the piece would not go on a page with it.
func FootOf(p Piece, f *Field, window plane.Point) plane.Point {
	anywhere := func(plane.Box) bool { return true }
	if _, ok := p.titleInside(f, anywhere, anywhere); ok {
		return plane.Point{}
	}
	title := p.beside(p.notes)
	p.Foot = plane.Point{X: title.Width + 2*besideRoom, Y: title.Height + besideAway + besideRoom}
	if !p.Fits(window) {
		return plane.Point{}
	}
	return p.Foot
}

// beside sets a title to stand beside the piece, in the same way when the piece
// is turned: short notes in one.
func (p Piece) beside(notes []string) Inscription {
	if wordy(notes) && math.Max(p.Bounds.Width(), p.Bounds.Height()) >= besideWide {
		return newInscription(p.Name, notes, besideWideSize, besideWide)
	}
	var joined []string
	if len(notes) > 0 {
		joined = []string{text.JoinedNotes(notes)}
	}
	return newInscription(p.Name, joined, besideSize, besideWidth)
}

// titleBeside finds a place for the title next to a piece that has no room for
// it: under it, over it, or at a side of it, rather near its middle; never in
// another piece.
func (s *Sheet) titleBeside(p Piece, f *Field, notes []string) (PlacedInscription, bool) {
	title := p.beside(notes)
	middle := p.Bounds.Centre()
	away := func(u plane.Point, title Inscription) plane.Point {
		e := title.Extent(u)
		return plane.Point{X: (p.Bounds.Width()+e.X)/2 + besideAway, Y: (p.Bounds.Height()+e.Y)/2 + besideAway}
	}
	free := func(title Inscription, u plane.Point, steps ...plane.Point) (PlacedInscription, bool) {
		for _, step := range steps {
			at := middle.Add(step)
			room := title.Around(at, u)
			if s.Whole(room.Bounds()) && f.Free(room.Grown(besideRoom)) && !s.insideAny(at) {
				return PlacedInscription{title, at, u}, true
			}
		}
		return PlacedInscription{}, false
	}
	if p.Foot != (plane.Point{}) {
		// The place kept under the piece begins where the piece does.
		kept := math.Max(0, (title.Width-p.Bounds.Width())/2)
		if found, ok := free(title, text.Across(), plane.Point{X: kept, Y: -away(text.Across(), title).Y}); ok {
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
		step := away(text.Across(), title)
		if found, ok := free(title, text.Across(), plane.Point{X: along.X, Y: -step.Y}, plane.Point{X: along.X, Y: step.Y},
			plane.Point{X: step.X, Y: along.Y}, plane.Point{X: -step.X, Y: along.Y}); ok {
			return found, true
		}
	}
	return PlacedInscription{}, false
}
