package paper

import (
	"cmp"
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file: lengths in mm, paper upright unless it is asked for lying.
// A home printer cannot print the outer quarter of an inch (6.35 mm) of a sheet,
// so nothing at all is printed nearer than the margin to an edge of the paper. A
// page is planned as it comes out of the printer: on paper for a printer that does
// not print true, every length here but Width and Height is one on the printed
// sheet.

// Pt is a typographer's point in mm: 1/72 of an inch of 25.4 mm, the unit
// of the page as well (ISO 32000-1, 8.3.2.3, from memory).
const Pt = 25.4 / 72

const (
	// usualMargin is how far everything stays from the edge of the paper where no
	// other margin is asked for, in mm: a little over 10, so that a check square
	// can stand at the very margin.
	usualMargin = 5 * SquareGrid
	// usualOverlap is the width of the strip that two neighbouring pages share
	// where no other is asked for, in mm.
	usualOverlap = 10.0
	// leastOverlap is the least such strip, in mm: it has room for a join mark
	// with its number on both pages.
	leastOverlap = 9.0
	// mostOverlap is the widest, in mm: 2 in. A wider one is a wrong unit.
	mostOverlap = 50.8
	// headerHeight is the strip above a page's window in which the page says what
	// it is, in mm.
	headerHeight = 10.0
	// FrontMargin is that of the pages in front, in mm.
	FrontMargin = 7 * SquareGrid
	// LongestSide is the longest side that every reader of a PDF can show, in mm:
	// 14,400 units, which are 200 in (ISO 32000-1, annex
	// C, from memory).
	LongestSide = 14_400 * Pt
	// The least room the first page needs inside its margins, in mm: for a page
	// higher than wide, and for a lying one.
	leastUprightWidth, leastUprightHeight = 170.0, 240.0
	leastLyingWidth, leastLyingHeight     = 245.0, 180.0
)

// MaxPages is the most pages that one PDF may have, the pages in front and those
// of figures included. A set that needs more is refused before anything is drawn.
const MaxPages = 2000

// Cut says how paper is cut into pages.
type Cut int

// The ways of cutting paper into pages.
const (
	Pages  Cut = iota // all of one size
	Roll              // of one width, each as long as it needs to be
	Single            // one, as large as the pattern
)

// Paper is what is printed on.
type Paper struct {
	Name  string // as it is asked for: "letter"
	Title string // as it is printed: "letter paper, 8 1/2 x 11 in"
	// Width and Height are in mm; of a roll and of a single page, the most they
	// may be.
	Width, Height float64
	Margin        float64 // how far everything stays from its edges, in mm
	Overlap       float64 // width of the strip that two pages share, in mm
	// Printed is what the printer makes of what is drawn; the zero Scale prints
	// true.
	Printed Scale

	// Cut is how it is cut into pages.
	Cut Cut
}

// ShortTitle is the paper's name as a sentence needs it: "letter paper".
func (p Paper) ShortTitle() string {
	for i, r := range p.Title {
		if r == ',' {
			return p.Title[:i]
		}
	}
	return p.Title
}

// WhollyOnOne reports whether the paper has everything on one page, or on pages
// as long as they need to be, with nothing to be joined.
func (p Paper) WhollyOnOne() bool { return p.Cut != Pages }

// Lying returns the paper turned so that it is wider than high. The error is a
// *marking.Fault.
func (p Paper) Lying() (Paper, error) {
	if p.Cut != Pages {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("%s cannot be turned", p.Name),
			Hint:  "leave the turning out: its pages are as large as they need to be",
		}
	}
	if p.Width < p.Height {
		p.Width, p.Height = p.Height, p.Width
		p.Title += ", lying"
	}
	return p, nil
}

// WithMargin returns the paper with a margin of mm, which may be 0. The error is a
// *marking.Fault.
func (p Paper) WithMargin(mm float64) (Paper, error) {
	if !(mm >= 0) {
		return p, &fault.Fault{Cause: "a margin cannot be less than nothing"}
	}
	p.Margin = mm
	if !p.holdsFront() {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("a margin of %s leaves too little of %s for the first page", length.Inch.Names(mm), p.ShortTitle()),
			Hint:  "most printers need 1/4 in; without a margin given it is a little over 10 mm",
		}
	}
	return p, nil
}

// WithOverlap returns the paper with pages that share a strip of mm. The error is
// a *marking.Fault.
func (p Paper) WithOverlap(mm float64) (Paper, error) {
	if p.WhollyOnOne() {
		return p, &fault.Fault{Cause: "on " + p.ShortTitle() + " no pages are joined", Hint: "leave the overlap out"}
	}
	if !(mm >= leastOverlap && mm <= mostOverlap) {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("an overlap of %s is too narrow or too wide", length.Inch.Names(mm)),
			Hint:  "it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50 mm",
		}
	}
	p.Overlap = mm
	return p, nil
}

// Size is the paper as it comes out of the printer, in mm of the printed sheet.
func (p Paper) Size() plane.Point {
	s := p.Printed.OrTrue()
	return plane.Point{X: p.Width * s.Across, Y: p.Height * s.Down}
}

// inside is what lies a margin or more inside the printed sheet. What a printer
// makes larger moves outward, from whichever corner it begins in: that is kept
// free as well, so that it stays on the sheet.
func (p Paper) inside(margin float64) plane.Box {
	s, size := p.Printed.OrTrue(), p.Size()
	keep := plane.Point{
		X: margin + math.Max(0, s.Across-1)*p.Width,
		Y: margin + math.Max(0, s.Down-1)*p.Height,
	}
	return plane.Box{Min: keep, Max: size.Sub(keep)}
}

// Printable is what a printer can print of the page, in mm from its lower
// left corner.
func (p Paper) Printable() plane.Box { return p.inside(p.Margin) }

// Window is where a tile is drawn on the page: all that is printable under
// the header.
func (p Paper) Window() plane.Box {
	w := p.Printable()
	w.Max.Y -= headerHeight
	return w
}

// Around returns the paper in the size in which its window is one of a size.
func (p Paper) Around(window plane.Point) Paper {
	// Of a page made larger, its own growth is kept free at both sides.
	side := func(length, scale float64) float64 {
		if scale > 1 {
			scale = 2 - scale
		}
		return (length + 2*p.Margin) / scale
	}
	s := p.Printed.OrTrue()
	p.Width = side(window.X, s.Across)
	// Renderers count dots from the upper edge: check squares, whose places are
	// counted from the lower one, lie on whole dots only where the height does.
	p.Height = SnapUp(side(window.Y+headerHeight, s.Down))
	return p
}

// Front is what a page in front is set in: it stays a little further from the
// edges than a tile, which looks better, and no printer minds.
func (p Paper) Front() plane.Box {
	box := p.Printable()
	if !p.Printed.IsTrue() {
		return box // a page made smaller has no room to spare
	}
	least := plane.Box{Max: p.Size()}.Grown(-FrontMargin)
	box.Min.X, box.Min.Y = math.Max(box.Min.X, least.Min.X), math.Max(box.Min.Y, least.Min.Y)
	box.Max.X, box.Max.Y = math.Min(box.Max.X, least.Max.X), math.Min(box.Max.Y, least.Max.Y)
	return box
}

// UnderHeader is what a page in front has under its header.
func (p Paper) UnderHeader() plane.Box {
	box := p.Front()
	box.Max.Y -= headerHeight
	return box
}

// holdsFront reports whether the first page fits on the paper.
func (p Paper) holdsFront() bool {
	box := p.Front()
	return box.Width() >= leastUprightWidth && box.Height() >= leastUprightHeight ||
		box.Width() >= leastLyingWidth && box.Height() >= leastLyingHeight
}

// Check refuses paper that is too small or too large. A size that is no number is
// too small.
func (p Paper) Check() error {
	name := cmp.Or(p.Title, fmt.Sprintf("paper of %.0f x %.0f mm", p.Width, p.Height))
	if p.Width > LongestSide || p.Height > LongestSide {
		return &fault.Fault{
			Cause: name + " has a side of more than 200 in",
			Hint:  "that is 14,400 units of 1/72 in, and no reader of a PDF has to show a page with a longer side; print on pages that are joined, such as --paper letter",
		}
	}
	if s := p.Printed; !s.IsTrue() && !p.holdsFront() {
		if p.Printed = (Scale{}); p.holdsFront() {
			return &fault.Fault{
				Cause: fmt.Sprintf("sheets for a printer that prints at %s would have no room for the first page on %s", s, p.ShortTitle()),
				Hint:  "turn off “fit to page” where you print, or choose larger paper",
			}
		}
	}
	if !p.holdsFront() {
		return &fault.Fault{
			Cause: name + " has no room for the first page",
			Hint: fmt.Sprintf("inside its margins it must have at least %.0f x %.0f mm upright, or %.0f x %.0f mm lying",
				leastUprightWidth, leastUprightHeight, leastLyingWidth, leastLyingHeight),
		}
	}
	return nil
}

// What the corners of check squares lie on.
const (
	// SquareGrid is what they are multiples of, in mm on the page.
	SquareGrid = 6 * Pt
	// onGrid bounds how far a place may be off the grid through rounding and
	// still count as on it, in steps of the grid.
	onGrid = 1e-6
)

// SnapUp and snapDown bring a length on the page to a multiple of squareGrid.
func SnapUp(mm float64) float64 { return math.Ceil(mm/SquareGrid-onGrid) * SquareGrid }

func SnapDown(mm float64) float64 { return math.Floor(mm/SquareGrid+onGrid) * SquareGrid }
