package arrange

import (
	"cmp"
	"slices"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Sheet is a large imagined sheet of paper, printed as a grid of pages.
type Sheet struct {
	Paper   paper.Paper // it is printed on
	Pieces  []Piece     // in the order of their parts
	Part    int         // the one for which it is printed, and in whose place
	Grid    Grid        // of its pages
	Cells   []Cell      // those that are printed, in the order of gluing
	printed map[Cell]bool
	Field   *Field // what lies on it so far
	Joins   []Join
	Labels  []text.Label // the pieces' signs and panels, and what is to be read of a form
	Pale    []text.Label // words under the lines
	// Thin are leaders, the lines and the open heads of dimensions, and the rules of panels;
	// Heads are the heads of leaders.
	Thin  []plane.Path
	Heads []ink.Solid
	// measured are the lines of distances and their words.
	measured []text.Slab
	// keys explain the numbers by the places of pieces, by the keys of these.
	keys map[string]*key
	// Looks is at how many places may still be looked for one that is free (looks.go).
	Looks int
	// Letters stand in lines.
	Letters []LineLetter
	// Captions are the names of lines.
	Captions []Caption
	Rules    []plane.Path // the lines to write on, of a form
	// Apart are the panels that have no room on the pages of the sheet.
	Apart []Panel
	// Tells are the names of the pieces whose panels have come here from other pages.
	Tells []string
	// toldRooms are kept clear round the signs and the panels of its pieces where other pieces
	// are put beside these; clear and room are what is free for those, without them and with
	// them. All copies of a sheet share them: it is tried with many others.
	toldRooms, clear, room func() []plane.Box
}

// NewSheet makes a sheet of which some cells are printed.
func NewSheet(pieces []Piece, g Grid, cells []Cell) Sheet {
	pieces = slices.SortedStableFunc(slices.Values(pieces), func(a, b Piece) int { return cmp.Compare(a.Part, b.Part) })
	s := Sheet{Pieces: pieces, Grid: g, Cells: gluingOrder(cells), printed: map[Cell]bool{}, Field: NewField(pieces), Looks: MostLooks}
	for _, c := range cells {
		s.printed[c] = true
	}
	if len(pieces) > 0 {
		s.Part = pieces[0].Part
	}
	s.toldRooms = sync.OnceValue(func() []plane.Box { return toldRooms(pieces, g, cells) })
	s.clear, s.room = sync.OnceValue(s.clearBoxes), sync.OnceValue(s.roomBoxes)
	return s
}

// Names returns the names of the sheet's pieces.
func (s *Sheet) Names() []string {
	var names []string
	for _, p := range s.Pieces {
		names = append(names, p.Name)
	}
	return names
}

// host is the piece for which the sheet is printed: the large one, to which others come, or
// the first of small ones.
func (s *Sheet) host() Piece {
	return s.Pieces[max(0, slices.IndexFunc(s.Pieces, func(p Piece) bool { return p.Part == s.Part }))]
}

// Blank is how many pages of the sheet's grid are not printed.
func (s *Sheet) Blank() int { return s.Grid.Rows*s.Grid.Columns - len(s.Cells) }

// Prints reports whether the page of a cell is printed.
func (s *Sheet) Prints(c Cell) bool { return s.printed[c] }

// Whole reports whether a box lies clear within the trim lines of one printed page.
func (s *Sheet) Whole(b plane.Box) bool {
	clear := s.clearAt(b.Centre())
	return clear.Holds(b.Min) && clear.Holds(b.Max)
}

// clearAt is what lies clear within the trim lines of the page with a place; nothing where
// that is not printed.
func (s *Sheet) clearAt(at plane.Point) plane.Box {
	c := s.Grid.cellAt(at)
	if s.Blank() > 0 && !s.printed[c] {
		return plane.EmptyBox()
	}
	window := s.Grid.WindowOf(c)
	window.Max.Y -= underTop
	return s.Grid.within(c, window, s.Grid.Overlap/2+besideTrim)
}

// besideTrim is how far text stays from trim lines, in mm, and underTop from the top of its
// page, where a strip stands over the pieces.
const (
	besideTrim = 1.0
	underTop   = 1.5
)

// shown reports whether at least the middle of a box is on a printed page.
func (s *Sheet) shown(b plane.Box) bool {
	return s.printed[s.Grid.cellAt(b.Centre())]
}

// Shows reports whether the page of a cell prints a label: the one page it is
// whole on, or every page that shows part of it within its trim lines.
func (s *Sheet) Shows(l text.Label, c Cell) bool {
	b, core := l.Room.Bounds(), s.Grid.CoreOf(c)
	return core.Meets(b) && (!s.Whole(b) || core.Holds(b.Centre()))
}

// insideAny reports whether a place lies inside a piece.
func (s *Sheet) insideAny(at plane.Point) bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return p.Inside(at) })
}

// TakeText puts text on the sheet and takes its room: of a line to write on,
// the height of handwriting over it as well.
func (s *Sheet) TakeText(words text.Lines, at plane.Point) {
	var moved text.Lines
	moved.With(words, at)
	for _, l := range moved.Labels {
		l = l.Measured()
		s.Field.Take(l.Room)
		s.Labels = append(s.Labels, l)
	}
	for _, r := range moved.Rules {
		s.Field.Take(text.Upright(plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: text.WriteStep})}))
		s.Rules = append(s.Rules, r)
	}
}
