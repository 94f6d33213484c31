package pdfout

import (
	"fmt"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: pieces are laid on sheets. A piece larger than one page
// has a sheet of its own, made of as many pages as it needs; it is turned by a
// quarter turn where that saves pages. Pieces that fit on one page share
// pages. No piece is scaled, mirrored, or turned by anything but a quarter.

// spare is kept free between the bounds of a piece's lines and the sides of
// its sheet, in mm: room for half a line's width and for arrow heads.
const spare = 2.0

// line is a mark as it lies on its sheet.
type line struct {
	role   marking.Role
	name   string
	clip   *plane.Clipper
	bounds plane.Box
}

// piece is a piece as it lies on its sheet.
type piece struct {
	name    string
	notes   []string
	outline *plane.Tree
	within  plane.Box // the bounds of the outline
	lines   []line
	bounds  plane.Box // of all its lines
	turned  bool      // by a quarter turn to the left
}

// sheet is a large imagined sheet of paper, printed as a grid of pages.
type sheet struct {
	pieces  []piece
	grid    grid
	cells   []cell // those that are printed, in reading order
	printed map[cell]bool
	field   *field // what lies on it so far
	joins   []join
	labels  []label
	// squares are the lower left corners of the pages' check squares, in
	// page coordinates, in the order of cells.
	squares []plane.Point
}

// newSheet makes a sheet of which some cells are printed.
func newSheet(pieces []piece, g grid, cells []cell) sheet {
	s := sheet{pieces: pieces, grid: g, cells: cells, printed: map[cell]bool{}, field: newField(pieces)}
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

// whole reports whether a box lies within the join lines of one printed page.
func (s *sheet) whole(b plane.Box) bool {
	at := b.Centre()
	column, _ := s.grid.columnsOf(at.X, at.X)
	row, _ := s.grid.rowsOf(at.Y, at.Y)
	c := cell{row, column}
	core := s.grid.coreOf(c)
	return s.printed[c] && core.Holds(b.Min) && core.Holds(b.Max)
}

// shown reports whether at least the middle of a box is on a printed page.
func (s *sheet) shown(b plane.Box) bool {
	return s.whole(plane.Box{Min: b.Centre(), Max: b.Centre()})
}

// shows reports whether the page of a cell prints a label: the one page it is
// whole on, or every page that shows part of it.
func (s *sheet) shows(l label, c cell) bool {
	b := l.room.bounds()
	if !s.grid.windowOf(c).Meets(b) {
		return false
	}
	return !s.whole(b) || s.grid.coreOf(c).Holds(b.Centre())
}

// newPiece takes the lines of a marking that have some length.
func newPiece(m marking.Marking) piece {
	p := piece{name: m.Name, notes: m.Notes, outline: plane.NewTree(m.Outline), within: m.Outline.Bounds(), bounds: plane.EmptyBox()}
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
	return line{role: role, name: name, clip: plane.NewClipper(p), bounds: p.Bounds()}
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
	p.within = p.outline.Bounds()
	lines := p.lines
	p.lines, p.bounds = nil, plane.EmptyBox()
	for _, l := range lines {
		l = newLine(l.role, l.name, path(l.clip.Path()))
		p.lines = append(p.lines, l)
		p.bounds = p.bounds.Union(l.bounds)
	}
	return p
}

// room is how much of a sheet the piece needs, in mm.
func (p piece) room() plane.Point {
	return plane.Point{X: p.bounds.Width() + 2*spare, Y: p.bounds.Height() + 2*spare}
}

// fits reports whether the piece can be printed on one page.
func (p piece) fits(window plane.Point) bool {
	return p.room().X <= window.X && p.room().Y <= window.Y
}

// arrange lays the pieces on sheets: the large ones each on its own, in the
// order they come in, then the small ones together. It also names the pieces
// that have nothing to draw. More pages than MaxPages are refused. Check squares
// have sides of square mm.
func arrange(markings []marking.Marking, paper Paper, square float64) ([]sheet, []string, error) {
	window := plane.Point{X: paper.window().Width(), Y: paper.window().Height()}
	var sheets []sheet
	var small []piece
	var left []string
	pages, exact := 0, true
	for _, m := range markings {
		upright := newPiece(m)
		switch {
		case len(upright.lines) == 0:
			left = append(left, upright.name)
		case upright.fits(window):
			small = append(small, upright)
		default:
			if turned := upright.quarterTurned(); turned.fits(window) {
				small = append(small, turned)
				continue
			}
			s, n, all := spread(upright, window)
			pages, exact = pages+n, exact && all
			if pages <= MaxPages {
				sheets = append(sheets, s)
			}
		}
	}
	if len(sheets)+len(small) == 0 && pages == 0 {
		return nil, nil, &Refusal{Cause: "there is no line to draw", Hint: "give the file at least one piece with an outline"}
	}
	if pages <= MaxPages {
		shared := pack(small, window, square)
		sheets = append(sheets, shared...)
		pages += len(shared)
	} else {
		pages += len(small) // at most: too many as it is
	}
	if pages > MaxPages {
		need := counted(pages, "page")
		if !exact {
			need = "more than " + need
		}
		return nil, nil, &Refusal{
			Cause: fmt.Sprintf("the pieces need %s of %s; %s is the most", need, paper.shortTitle(), thousands(MaxPages)),
			Hint:  "see whether the file's unit is the one meant, print fewer pieces, or choose larger paper",
		}
	}
	return sheets, left, nil
}

// spread lays a piece too large for a page on a sheet of its own, turned if
// that takes fewer pages. It also says how many pages are printed, and whether
// that count is exact or only so far as it was worth counting; the sheet is
// worth drawing only when they are not too many.
func spread(upright piece, window plane.Point) (sheet, int, bool) {
	g, cells, exact := bestGrid(upright, window)
	if exact {
		turned := upright.quarterTurned()
		if other, fewer, all := bestGrid(turned, window); all && len(fewer) < len(cells) {
			upright, g, cells = turned, other, fewer
		}
	}
	if len(cells) > MaxPages {
		return sheet{}, len(cells), exact
	}
	all := bridged(cells)
	return newSheet([]piece{upright}, g, all), len(all), exact && len(all) <= MaxPages
}
