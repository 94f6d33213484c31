package arrange

import (
	"cmp"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
)

// Rules of this file: pieces are laid on sheets; one with a form is left to who lays
// forms. A piece larger than one page has a sheet of its own, made of as many
// pages as it needs; it is turned by a quarter turn where that saves pages, or
// cuts fewer short marks (place.go). Pieces that fit on one page share pages
// (shelf.go), where that saves a page those of a large piece (share.go); what is cut
// from card shares them only with its kind. Sheets come in the order of their parts,
// that is of their use: a sheet that parts share has the place of the large one, or of
// the first of small ones.

// Arrangement is pieces laid on sheets.
type Arrangement struct {
	Sheets []Sheet        // in the order of their pages
	Forms  []mark.Marking // what has a form, not yet laid
	Left   []string       // names of the pieces that have nothing to draw
	// Least is how many pages the sheets have at least. Where these are more than MaxPages,
	// pieces are not laid any further, and there are no sheets; else they are all the pages.
	Least int
}

// Pages is how many pages of the sheets are printed.
func (a Arrangement) Pages() int {
	n := 0
	for i := range a.Sheets {
		n += len(a.Sheets[i].Cells)
	}
	return n
}

// Arrange lays the pieces on sheets, in the order of their parts: the large ones each on
// its own, the small ones together, and where that saves a page beside the large ones.
// Forms are set aside, in their order.
func Arrange(set Set, p paper.Paper) Arrangement {
	var a Arrangement
	page := PageOf(p)
	var pieces []Piece
	pieces, a.Forms, a.Left = PiecesOf(set)
	for _, one := range pieces {
		a.Least += leastPagesOf(one, p)
	}
	var stages []stage
	work := rasterWork(len(pieces))
	for _, upright := range pieces {
		if a.Least > paper.MaxPages {
			return a
		}
		least := leastPagesOf(upright, p)
		upright = upright.Numbered(page)
		st := stageFor(&stages, upright.Kind)
		if upright.Fits(page.Window) {
			st.small = append(st.small, upright)
			continue
		}
		if turned := upright.QuarterTurned(); turned.Fits(page.Window) {
			st.small = append(st.small, turned)
			continue
		}
		s := spread(upright, p, work)
		st.large = append(st.large, s)
		a.Least += len(s.Cells) - least
	}
	if a.Least > paper.MaxPages {
		return a
	}
	a.Sheets = layStages(stages, page)
	if a.Least = a.Pages(); a.Least > paper.MaxPages {
		a.Sheets = nil
	}
	slices.SortStableFunc(a.Sheets, func(a, b Sheet) int { return cmp.Compare(a.Part, b.Part) })
	for i := range a.Sheets {
		if a.Sheets[i].Paper.Width == 0 { // it has small pieces alone
			a.Sheets[i].Paper = p
		}
	}
	return a
}

// PiecesOf takes up the pieces of a set, in their order. What has a form is set aside,
// and of what has
// no line, and no table to be filled in, the name.
func PiecesOf(set Set) (pieces []Piece, forms []mark.Marking, left []string) {
	for _, m := range set.Pieces {
		p := NewPiece(m)
		switch {
		case len(p.Lines) == 0 && (m.Form == nil || len(m.Form.Columns) == 0):
			left = append(left, p.Name)
		case m.Form != nil:
			forms = append(forms, m)
		default:
			pieces = append(pieces, p)
		}
	}
	return pieces, forms, left
}

// spread lays a piece too large for a page on a sheet of its own, turned if
// that takes fewer pages or cuts fewer short marks; one that is whole on a page that lies
// where the others stand, on that. A sheet of too many pages is of no use but for counting,
// and only that is done. So much work goes into looking for its place (place.go).
func spread(upright Piece, p paper.Paper, work int) Sheet {
	if other, ok := p.OtherWay(); ok && upright.fitsEitherWay(PageOf(other).Window) {
		p = other
	}
	laid, best := spreadOn(upright, PageOf(p), work)
	if len(best.cells) > paper.MaxPages {
		cells := best.cells
		if len(cells) > mostOfPlacing { // other placings may have fewer
			cells = cells[:paper.MaxPages+1]
		}
		return Sheet{Pieces: []Piece{laid}, Part: laid.Part, Grid: best.grid, Cells: cells}
	}
	s := NewSheet([]Piece{laid}, best.grid, best.cells)
	s.Paper = p
	return s
}

// spreadOn lays a piece on pages of one kind, upright or turned.
func spreadOn(upright Piece, page Grid, work int) (laid Piece, best placing) {
	laid = upright
	best = place(upright, page, work)
	if !best.hopeless() {
		turned := upright.QuarterTurned()
		if other := place(turned, page, work); other.worthTurning(best) {
			laid, best = turned, other
		}
	}
	return laid, best
}
