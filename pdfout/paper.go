package pdfout

import (
	"fmt"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file: lengths in mm, paper upright unless it is asked for lying.
// A home printer cannot print the outer quarter of an inch (6.35 mm) of a sheet,
// so nothing at all is printed nearer than the margin to an edge of the paper.

// usualMargin is how far everything stays from the edge of the paper where no
// other margin is asked for, in mm: a little over 10, so that a check square can
// stand at the very margin.
const usualMargin = 5 * squareGrid

// usualOverlap is the width of the strip that two neighbouring pages share where
// no other is asked for, in mm.
const usualOverlap = 10.0

// headerHeight is the strip above a page's window in which the page says what
// it is, in mm.
const headerHeight = 10.0

// Paper is a size of paper, upright.
type Paper struct {
	Name  string // as it is asked for: "letter"
	Title string // as it is printed: "letter paper, 8 1/2 x 11 in"
	// Width and Height are in mm.
	Width, Height float64
	Margin        float64 // how far everything stays from its edges, in mm
	Overlap       float64 // width of the strip that two pages share, in mm
}

// papers lists what FindPaper finds: sizes of ANSI Y14.1 and ISO 216, and of
// legal paper as it is commonly sold.
func papers() []Paper {
	const inch = 25.4
	return []Paper{
		plainPaper("letter", "letter paper, 8 1/2 x 11 in", 8.5*inch, 11*inch),
		plainPaper("a4", "A4 paper, 210 x 297 mm", 210, 297),
		plainPaper("legal", "legal paper, 8 1/2 x 14 in", 8.5*inch, 14*inch),
		plainPaper("tabloid", "tabloid paper, 11 x 17 in", 11*inch, 17*inch),
		plainPaper("a3", "A3 paper, 297 x 420 mm", 297, 420),
	}
}

func plainPaper(name, title string, width, height float64) Paper {
	return Paper{Name: name, Title: title, Width: width, Height: height, Margin: usualMargin, Overlap: usualOverlap}
}

// Papers returns the names FindPaper knows.
func Papers() []string {
	var names []string
	for _, p := range papers() {
		names = append(names, p.Name)
	}
	return names
}

// FindPaper returns the paper of that name; capitals and spaces around it do
// not matter. The error is a *Refusal.
func FindPaper(name string) (Paper, error) {
	wanted := strings.ToLower(strings.TrimSpace(name))
	for _, p := range papers() {
		if p.Name == wanted {
			return p, nil
		}
	}
	return Paper{}, &Refusal{
		Cause: fmt.Sprintf("no paper is called %q", name),
		Hint:  "the papers are " + listOf(Papers()),
	}
}

// shortTitle is the paper's name as a sentence needs it: "letter paper".
func (p Paper) shortTitle() string {
	short, _, _ := strings.Cut(p.Title, ",")
	return short
}

// printable is what a printer can print of the page, in mm from its lower
// left corner.
func (p Paper) printable() plane.Box {
	return plane.Box{
		Min: plane.Point{X: p.Margin, Y: p.Margin},
		Max: plane.Point{X: p.Width - p.Margin, Y: p.Height - p.Margin},
	}
}

// window is where a tile is drawn on the page: all that is printable under
// the header.
func (p Paper) window() plane.Box {
	w := p.printable()
	w.Max.Y -= headerHeight
	return w
}

// grid is a sheet of one page of the paper, to be made larger by who needs more.
func (p Paper) grid() grid {
	w := p.window()
	return grid{rows: 1, columns: 1, window: plane.Point{X: w.Width(), Y: w.Height()}, overlap: p.Overlap}
}
