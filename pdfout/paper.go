package pdfout

import (
	"fmt"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file: lengths in mm, paper upright. A home printer cannot
// print the outer quarter of an inch (6.35 mm) of a sheet, so nothing at all
// is printed nearer than printMargin to an edge of the paper.

// printMargin is how far everything stays from the edge of the paper, in mm:
// a little over 10, so that a check square can stand at the very margin.
const printMargin = 5 * squareGrid

// headerHeight is the strip above a page's window in which the page says what
// it is, in mm.
const headerHeight = 10.0

// Paper is a size of paper, upright.
type Paper struct {
	Name  string // as it is asked for: "letter"
	Title string // as it is printed: "letter paper, 8 1/2 x 11 in"
	// Width and Height are in mm.
	Width, Height float64
}

// papers lists what FindPaper finds: sizes of ANSI Y14.1 and ISO 216, and of
// legal paper as it is commonly sold.
func papers() []Paper {
	const inch = 25.4
	return []Paper{
		{"letter", "letter paper, 8 1/2 x 11 in", 8.5 * inch, 11 * inch},
		{"a4", "A4 paper, 210 x 297 mm", 210, 297},
		{"legal", "legal paper, 8 1/2 x 14 in", 8.5 * inch, 14 * inch},
		{"tabloid", "tabloid paper, 11 x 17 in", 11 * inch, 17 * inch},
		{"a3", "A3 paper, 297 x 420 mm", 297, 420},
	}
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
		Min: plane.Point{X: printMargin, Y: printMargin},
		Max: plane.Point{X: p.Width - printMargin, Y: p.Height - printMargin},
	}
}

// window is where a tile is drawn on the page: all that is printable under
// the header.
func (p Paper) window() plane.Box {
	w := p.printable()
	w.Max.Y -= headerHeight
	return w
}
