package arrange

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: pieces are laid on sheets; one with a form is left to
// form.go. A piece larger than one page has a sheet of its own, made of as many
// pages as it needs; it is turned by a quarter turn where that saves pages, or
// cuts fewer short marks (gridplace.go). Pieces that fit on one page share pages
// (shelf.go), where that saves a page those of a large piece (share.go); what is cut
// from card shares them only with its kind. No piece
// is scaled, mirrored, or turned by anything but a quarter.

// Spare is kept free between the bounds of a piece's lines and the sides of
// its sheet, in mm: room for half a line's width and for arrow heads.
const Spare = 2.0

// Line is a mark as it lies on its sheet.
type Line struct {
	Role   mark.Role
	Name   string
	Clip   *plane.Tree
	Bounds plane.Box
}

// Piece is a piece as it lies on its sheet.
type Piece struct {
	Name    string
	notes   []string
	Brief   []string // those of the notes that no header says
	Outline *plane.Tree
	Lines   []Line
	Bounds  plane.Box // of all its lines
	Turned  bool      // by a quarter turn to the left
	card    bool      // it is cut out of card
	// Foot is the room kept under the piece for its title, in mm; zero where
	// the title has room inside.
	Foot plane.Point
}

// Sheet is a large imagined sheet of paper, printed as a grid of pages.
type Sheet struct {
	Paper   paper.Paper // it is printed on
	Pieces  []Piece
	Grid    Grid
	Cells   []Cell // those that are printed, in the order of gluing
	printed map[Cell]bool
	Field   *Field // what lies on it so far
	Joins   []Join
	Labels  []text.Label
	// Captions are the names of lines.
	Captions []Caption
	Rules    []plane.Path // the lines to write on, of a form
	// Untitled are the pieces whose titles found no place: the header says
	// their notes.
	Untitled []Piece
	// Squares are the lower left corners of the check squares of the cells' pages,
	// on the page, in mm.
	Squares map[Cell]plane.Point
}

// NewSheet makes a sheet of which some cells are printed.
func NewSheet(pieces []Piece, g Grid, cells []Cell) Sheet {
	s := Sheet{Pieces: pieces, Grid: g, Cells: gluingOrder(cells), printed: map[Cell]bool{}, Squares: map[Cell]plane.Point{}, Field: NewField(pieces)}
	for _, c := range cells {
		s.printed[c] = true
	}
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

// Blank is how many pages of the sheet's grid are not printed.
func (s *Sheet) Blank() int { return s.Grid.Rows*s.Grid.Columns - len(s.Cells) }

// Whole reports whether a box lies clear within the trim lines of one printed page.
func (s *Sheet) Whole(b plane.Box) bool {
	c := s.Grid.cellAt(b.Centre())
	clear := s.Grid.within(c, s.Grid.WindowOf(c), s.Grid.Overlap/2+besideTrim)
	return s.printed[c] && clear.Holds(b.Min) && clear.Holds(b.Max)
}

// besideTrim is how far text stays from trim lines, in mm.
const besideTrim = 1.0

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

// NewPiece takes the lines of a marking that have some length.
func NewPiece(m mark.Marking) Piece {
	p := Piece{Name: m.Name, notes: m.Notes, card: m.Card, Outline: plane.NewTree(m.Outline), Bounds: plane.EmptyBox()}
	if p.Name == "" {
		p.Name = m.Key
	}
	for _, mark := range m.Marks {
		if l := NewLine(mark.Role, mark.Name, mark.Path); l.Clip.Length() > 0 {
			p.Lines = append(p.Lines, l)
			p.Bounds = p.Bounds.Union(l.Bounds)
		}
	}
	return p
}

func NewLine(role mark.Role, name string, p plane.Path) Line {
	return Line{Role: role, Name: name, Clip: plane.NewTree(p), Bounds: p.Bounds()}
}

// Moved returns the piece moved by a step.
func (p Piece) Moved(step plane.Point) Piece { return p.laid(step.Add) }

// QuarterTurned returns the piece turned by a quarter turn to the left.
func (p Piece) QuarterTurned() Piece {
	p.Turned = !p.Turned
	return p.laid(plane.Point.Left)
}

// laid returns the piece with every point brought where it is to lie.
func (p Piece) laid(to func(plane.Point) plane.Point) Piece {
	path := func(p plane.Path) plane.Path {
		q := make(plane.Path, len(p))
		for i, at := range p {
			q[i] = to(at)
		}
		return q
	}
	p.Outline = plane.NewTree(path(p.Outline.Path()))
	lines := p.Lines
	p.Lines, p.Bounds = nil, plane.EmptyBox()
	for _, l := range lines {
		l = NewLine(l.Role, l.Name, path(l.Clip.Path()))
		p.Lines = append(p.Lines, l)
		p.Bounds = p.Bounds.Union(l.Bounds)
	}
	return p
}

// Room is how much of a sheet the piece needs, in mm, its foot included.
func (p Piece) Room() plane.Point { return p.roomOf(p.Bounds.Width(), p.Bounds.Height()) }

// roomOf is room for a width and height of the piece's lines.
func (p Piece) roomOf(width, height float64) plane.Point {
	return plane.Point{X: max(width, p.Foot.X) + 2*Spare, Y: height + p.Foot.Y + 2*Spare}
}

// Fits reports whether the piece can be printed on one page.
func (p Piece) Fits(window plane.Point) bool {
	return p.Room().X <= window.X && p.Room().Y <= window.Y
}

// countable is the most pages that are counted before a set is refused; a set
// that needs more is refused with the words "more than".
const countable = 1_000_000

// Arrangement is pieces laid on sheets.
type Arrangement struct {
	Sheets []Sheet
	Forms  []mark.Marking // what has a form, not yet laid
	Left   []string       // names of the pieces that have nothing to draw
	// Exact tells that the sheets' pages are all counted. Where they are too
	// many, sheets of large pieces have only their grids and cells.
	Exact bool
}

// Pages is how many pages of the sheets are printed.
func (a Arrangement) Pages() int {
	n := 0
	for i := range a.Sheets {
		n += len(a.Sheets[i].Cells)
	}
	return n
}

// Arrange lays the pieces on sheets: the large ones each on its own, in the
// order they come in, then the small ones, where that saves a page among the
// large ones, else together. Forms are set aside, in their order.
func Arrange(set Set, p paper.Paper) Arrangement {
	window := PageOf(p).Window
	a := Arrangement{Exact: true}
	var small, cards []Piece
	var largeCards []Sheet
	pages := 0
	var pieces []Piece
	pieces, a.Forms, a.Left = PiecesOf(set)
	for _, upright := range pieces {
		group := &small
		if upright.card {
			group = &cards
		}
		if upright.Fits(window) {
			*group = append(*group, upright)
			continue
		}
		if turned := upright.QuarterTurned(); turned.Fits(window) {
			*group = append(*group, turned)
			continue
		}
		s, all := Sheet{}, false
		if pages <= paper.MaxPages {
			s, all = spread(upright, PageOf(p))
		} else {
			s, all = counting(upright, PageOf(p)) // it is refused anyway
		}
		if upright.card {
			largeCards = append(largeCards, s)
		} else {
			a.Sheets = append(a.Sheets, s)
		}
		a.Exact = a.Exact && all
		if pages += len(s.Cells); pages > countable {
			a.Exact = false
			return a
		}
	}
	square := SquareSize(set.Unit)
	parcels := parcelsOf(small, window, square)
	shelves, all := fewestShelves(parcels, window, square)
	if a.Exact && all && pages <= paper.MaxPages {
		a.Sheets, shelves = shareLarge(a.Sheets, parcels, shelves, set.Unit, p)
	}
	ofCard, allCards := fewestShelves(parcelsOf(cards, window, square), window, square)
	for _, s := range shelves {
		a.Sheets = append(a.Sheets, s.sheet(PageOf(p)))
	}
	a.Sheets = append(a.Sheets, largeCards...)
	for _, s := range ofCard {
		a.Sheets = append(a.Sheets, s.sheet(PageOf(p)))
	}
	a.Exact = a.Exact && all && allCards
	for i := range a.Sheets {
		a.Sheets[i].Paper = p
	}
	return a
}

// PiecesOf takes up the pieces of a set, in their order. What has a form is set aside,
// and of what has no line the name.
func PiecesOf(set Set) (pieces []Piece, forms []mark.Marking, left []string) {
	for _, m := range set.Pieces {
		p := set.Piece(m)
		switch {
		case len(p.Lines) == 0:
			left = append(left, p.Name)
		case m.Form != nil:
			forms = append(forms, m)
		default:
			pieces = append(pieces, p)
		}
	}
	return pieces, forms, left
}

// counting is a sheet of a piece that is of no use but for counting its pages, and
// whether all were counted.
func counting(p Piece, page Grid) (Sheet, bool) {
	g := page.over(p, plane.Point{})
	cells, counted := g.crossed(p.Lines)
	return Sheet{Grid: g, Cells: cells}, counted && connected(cells)
}

// spread lays a piece too large for a page on a sheet of its own, turned if
// that takes fewer pages or cuts fewer short marks. It also says whether all
// its pages were counted. A sheet of too many pages is of no use but for
// counting, and only that is done.
func spread(upright Piece, page Grid) (Sheet, bool) {
	best, exact := place(upright, page)
	if exact {
		turned := upright.QuarterTurned()
		if other, all := place(turned, page); all && other.worthTurning(best) {
			upright, best = turned, other
		}
	}
	if len(best.cells) > paper.MaxPages {
		return Sheet{Grid: best.grid, Cells: best.cells}, exact && connected(best.cells)
	}
	return NewSheet([]Piece{upright}, best.grid, best.cells), exact
}
