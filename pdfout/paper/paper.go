package paper

import (
	"cmp"
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
)

// Rules of this file: lengths in mm, paper upright unless it is asked for lying. Which
// papers there are is in papers.go, what a page keeps free in window.go.

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
	// LongestSide is the longest side that every reader of a PDF can show, in mm:
	// 14,400 units, which are 200 in (ISO 32000-1, annex C, from memory).
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
	Cut     Cut // how it is cut into pages
}

// newPaper is paper of a size in mm, with the usual margin and overlap.
func newPaper(name, title string, width, height float64) Paper {
	return Paper{Name: name, Title: title, Width: width, Height: height, Margin: usualMargin, Overlap: usualOverlap}
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

// Lying returns the paper turned so that it is wider than high; as it is where it lies already.
// The error is a *fault.Fault.
func (p Paper) Lying() (Paper, error) {
	if p.Cut != Pages {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("%s cannot be turned", p.Name),
			Hint:  "leave the turning out: its pages are as large as they need to be",
		}
	}
	if p.Width == p.Height {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("%s has no long side to lie on", p.ShortTitle()),
			Hint:  "leave the turning out: its sides are equal",
		}
	}
	if p.Width < p.Height {
		p.Width, p.Height = p.Height, p.Width
		p.Title += ", lying"
	}
	return p, nil
}

// OtherWay returns the paper turned by a quarter in the printer's tray, as one page of a
// set may lie where the others stand; ok is false where that is nothing else. What the
// printer makes of a mm across the one is what it makes of one down the other.
func (p Paper) OtherWay() (turned Paper, ok bool) {
	if p.WhollyOnOne() || p.Width == p.Height {
		return p, false
	}
	p.Width, p.Height = p.Height, p.Width
	p.Printed = p.Printed.OtherWay()
	return p, true
}

// IsLying reports whether the paper is wider than high.
func (p Paper) IsLying() bool { return p.Width > p.Height }

// WithMargin returns the paper with a margin of mm, which may be 0. The error is a
// *fault.Fault.
func (p Paper) WithMargin(mm float64) (Paper, error) {
	if !(mm >= 0) {
		return p, &fault.Fault{Cause: "a margin cannot be less than nothing"}
	}
	p.Margin = mm
	if !p.holdsFront() {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("a margin of %s leaves too little of %s for the first page", length.Inch.AsWritten(mm), p.ShortTitle()),
			Hint:  "most printers need 1/4 in; without a margin given it is a little over 10 mm",
		}
	}
	return p, nil
}

// WithOverlap returns the paper with pages that share a strip of mm. The error is
// a *fault.Fault.
func (p Paper) WithOverlap(mm float64) (Paper, error) {
	if p.WhollyOnOne() {
		return p, &fault.Fault{Cause: "on " + p.ShortTitle() + " no pages are joined", Hint: "leave the overlap out"}
	}
	if !(mm >= leastOverlap && mm <= mostOverlap) {
		return p, &fault.Fault{
			Cause: fmt.Sprintf("an overlap of %s is too narrow or too wide", length.Inch.AsWritten(mm)),
			Hint:  "it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50.8 mm",
		}
	}
	p.Overlap = mm
	return p, nil
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

// holdsFront reports whether the first page fits on the paper.
func (p Paper) holdsFront() bool {
	box := p.Front()
	return box.Width() >= leastUprightWidth && box.Height() >= leastUprightHeight ||
		box.Width() >= leastLyingWidth && box.Height() >= leastLyingHeight
}
