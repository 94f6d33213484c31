package pdfout

import (
	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: pieces are laid on sheets; one with a form is left to
// form.go. A piece larger than one page has a sheet of its own, made of as many
// pages as it needs; it is turned by a quarter turn where that saves pages, or
// cuts fewer short marks (gridplace.go). Pieces that fit on one page share pages
// (shelf.go), where that saves a page those of a large piece (share.go); what is cut
// from card shares them only with its kind. No piece
// is scaled, mirrored, or turned by anything but a quarter.

// spare is kept free between the bounds of a piece's lines and the sides of
// its sheet, in mm: room for half a line's width and for arrow heads.
const spare = 2.0

// line is a mark as it lies on its sheet.
type line struct {
	role   marking.Role
	name   string
	clip   *plane.Tree
	bounds plane.Box
}

// piece is a piece as it lies on its sheet.
type piece struct {
	name    string
	notes   []string
	brief   []string // those of the notes that no header says
	outline *plane.Tree
	lines   []line
	bounds  plane.Box // of all its lines
	turned  bool      // by a quarter turn to the left
	card    bool      // it is cut out of card
	// foot is the room kept under the piece for its title, in mm; zero where
	// the title has room inside.
	foot plane.Point
}

// sheet is a large imagined sheet of paper, printed as a grid of pages.
type sheet struct {
	paper   Paper // it is printed on
	pieces  []piece
	grid    grid
	cells   []cell // those that are printed, in the order of gluing
	printed map[cell]bool
	field   *field // what lies on it so far
	joins   []join
	labels  []label
	// captions are the names of lines.
	captions []caption
	rules    []plane.Path // the lines to write on, of a form
	// untitled are the pieces whose titles found no place: the header says
	// their notes.
	untitled []piece
	// squares are the lower left corners of the pages' check squares, in
	// page coordinates, in the order of cells.
	squares []plane.Point
}

// newSheet makes a sheet of which some cells are printed.
func newSheet(pieces []piece, g grid, cells []cell) sheet {
	s := sheet{pieces: pieces, grid: g, cells: gluingOrder(cells), printed: map[cell]bool{}, field: newField(pieces)}
	for _, c := range cells {
		s.printed[c] = true
	}
	return s
}

// names returns the names of the sheet's pieces.
func (s *sheet) names() []string {
	var names []string
	for _, p := range s.pieces {
		names = append(names, p.name)
	}
	return names
}

// blank is how many pages of the sheet's grid are not printed.
func (s *sheet) blank() int { return s.grid.rows*s.grid.columns - len(s.cells) }

// whole reports whether a box lies clear within the trim lines of one printed page.
func (s *sheet) whole(b plane.Box) bool {
	c := s.grid.cellAt(b.Centre())
	clear := s.grid.within(c, s.grid.windowOf(c), s.grid.overlap/2+besideTrim)
	return s.printed[c] && clear.Holds(b.Min) && clear.Holds(b.Max)
}

// besideTrim is how far text stays from trim lines, in mm.
const besideTrim = 1.0

// shown reports whether at least the middle of a box is on a printed page.
func (s *sheet) shown(b plane.Box) bool {
	return s.printed[s.grid.cellAt(b.Centre())]
}

// shows reports whether the page of a cell prints a label: the one page it is
// whole on, or every page that shows part of it within its trim lines.
func (s *sheet) shows(l label, c cell) bool {
	b, core := l.room.bounds(), s.grid.coreOf(c)
	return core.Meets(b) && (!s.whole(b) || core.Holds(b.Centre()))
}

// newPiece takes the lines of a marking that have some length.
func newPiece(m marking.Marking) piece {
	p := piece{name: m.Name, notes: m.Notes, card: m.Card, outline: plane.NewTree(m.Outline), bounds: plane.EmptyBox()}
	if p.name == "" {
		p.name = m.Key
	}
	for _, mark := range m.Marks {
		if l := newLine(mark.Role, mark.Name, mark.Path); l.clip.Length() > 0 {
			p.lines = append(p.lines, l)
			p.bounds = p.bounds.Union(l.bounds)
		}
	}
	return p
}

func newLine(role marking.Role, name string, p plane.Path) line {
	return line{role: role, name: name, clip: plane.NewTree(p), bounds: p.Bounds()}
}

// moved returns the piece moved by a step.
func (p piece) moved(step plane.Point) piece { return p.laid(step.Add) }

// quarterTurned returns the piece turned by a quarter turn to the left.
func (p piece) quarterTurned() piece {
	p.turned = !p.turned
	return p.laid(plane.Point.Left)
}

// laid returns the piece with every point brought where it is to lie.
func (p piece) laid(to func(plane.Point) plane.Point) piece {
	path := func(p plane.Path) plane.Path {
		q := make(plane.Path, len(p))
		for i, at := range p {
			q[i] = to(at)
		}
		return q
	}
	p.outline = plane.NewTree(path(p.outline.Path()))
	lines := p.lines
	p.lines, p.bounds = nil, plane.EmptyBox()
	for _, l := range lines {
		l = newLine(l.role, l.name, path(l.clip.Path()))
		p.lines = append(p.lines, l)
		p.bounds = p.bounds.Union(l.bounds)
	}
	return p
}

// room is how much of a sheet the piece needs, in mm, its foot included.
func (p piece) room() plane.Point { return p.roomOf(p.bounds.Width(), p.bounds.Height()) }

// roomOf is room for a width and height of the piece's lines.
func (p piece) roomOf(width, height float64) plane.Point {
	return plane.Point{X: max(width, p.foot.X) + 2*spare, Y: height + p.foot.Y + 2*spare}
}

// fits reports whether the piece can be printed on one page.
func (p piece) fits(window plane.Point) bool {
	return p.room().X <= window.X && p.room().Y <= window.Y
}

// countable is the most pages that are counted before a set is refused; a set
// that needs more is refused with the words "more than".
const countable = 1_000_000

// arrangement is pieces laid on sheets.
type arrangement struct {
	sheets []sheet
	forms  []marking.Marking // what has a form, not yet laid
	left   []string          // names of the pieces that have nothing to draw
	// exact tells that the sheets' pages are all counted. Where they are too
	// many, sheets of large pieces have only their grids and cells.
	exact bool
}

// pages is how many pages of the sheets are printed.
func (a arrangement) pages() int {
	n := 0
	for i := range a.sheets {
		n += len(a.sheets[i].cells)
	}
	return n
}

// arrange lays the pieces on sheets: the large ones each on its own, in the
// order they come in, then the small ones, where that saves a page among the
// large ones, else together. Forms are set aside, in their order.
func arrange(set Set, paper Paper) arrangement {
	window := pageOf(paper).window
	a := arrangement{exact: true}
	var small, cards []piece
	var largeCards []sheet
	pages := 0
	var pieces []piece
	pieces, a.forms, a.left = piecesOf(set)
	for _, upright := range pieces {
		group := &small
		if upright.card {
			group = &cards
		}
		if upright.fits(window) {
			*group = append(*group, upright)
			continue
		}
		if turned := upright.quarterTurned(); turned.fits(window) {
			*group = append(*group, turned)
			continue
		}
		s, all := sheet{}, false
		if pages <= MaxPages {
			s, all = spread(upright, pageOf(paper))
		} else {
			s, all = counting(upright, pageOf(paper)) // it is refused anyway
		}
		if upright.card {
			largeCards = append(largeCards, s)
		} else {
			a.sheets = append(a.sheets, s)
		}
		a.exact = a.exact && all
		if pages += len(s.cells); pages > countable {
			a.exact = false
			return a
		}
	}
	square := squareSize(set.Unit)
	parcels := parcelsOf(small, window, square)
	shelves, all := fewestShelves(parcels, window, square)
	if a.exact && all && pages <= MaxPages {
		a.sheets, shelves = shareLarge(a.sheets, parcels, shelves, set.Unit, paper)
	}
	ofCard, allCards := fewestShelves(parcelsOf(cards, window, square), window, square)
	for _, s := range shelves {
		a.sheets = append(a.sheets, s.sheet(pageOf(paper)))
	}
	a.sheets = append(a.sheets, largeCards...)
	for _, s := range ofCard {
		a.sheets = append(a.sheets, s.sheet(pageOf(paper)))
	}
	a.exact = a.exact && all && allCards
	return a
}

// piecesOf takes up the pieces of a set, in their order. What has a form is set aside,
// and of what has no line the name.
func piecesOf(set Set) (pieces []piece, forms []marking.Marking, left []string) {
	for _, m := range set.Pieces {
		p := newPiece(m)
		p.brief = fewer(m.Notes, set)
		switch {
		case len(p.lines) == 0:
			left = append(left, p.name)
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
func counting(p piece, page grid) (sheet, bool) {
	g := page.over(p, plane.Point{})
	cells, counted := g.crossed(p.lines)
	return sheet{grid: g, cells: cells}, counted && connected(cells)
}

// spread lays a piece too large for a page on a sheet of its own, turned if
// that takes fewer pages or cuts fewer short marks. It also says whether all
// its pages were counted. A sheet of too many pages is of no use but for
// counting, and only that is done.
func spread(upright piece, page grid) (sheet, bool) {
	best, exact := place(upright, page)
	if exact {
		turned := upright.quarterTurned()
		if other, all := place(turned, page); all && other.worthTurning(best) {
			upright, best = turned, other
		}
	}
	if len(best.cells) > MaxPages {
		return sheet{grid: best.grid, cells: best.cells}, exact && connected(best.cells)
	}
	return newSheet([]piece{upright}, best.grid, best.cells), exact
}
