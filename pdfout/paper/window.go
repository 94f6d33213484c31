package paper

import (
	"tuckmark/marking/plane"
)

// Rules of this file: a home printer cannot print the outer quarter of an inch
// (6.35 mm) of a sheet, so nothing at all is printed there, and no line of a piece nearer
// than the margin to an edge of the paper. Across the top of a page of a sheet there is a strip for the check square
// and, beside it, what the page is: there the square is on no line, and in no piece. A page
// is planned as it comes out of the printer: on paper for a
// printer that does not print true, every length here but Width and Height is one on
// the printed sheet.

const (
	// headerHeight is the strip above what stands on a page in front, in which the page
	// says what it is, in mm.
	headerHeight = 10.0
	// headerGap is what of that is free, in mm.
	headerGap = 2.0
	// StripHeight is that of a page of a sheet, in mm: as high as a check square of 1 in,
	// which is 12 steps of its grid, and no higher.
	StripHeight = 12 * SquareGrid
	// mostStrip is the most of a page's width that the strip takes, in mm: on large paper
	// what stands in it stays together.
	mostStrip = 260.0
	// FrontMargin is that of the pages in front, in mm.
	FrontMargin = 7 * SquareGrid
)

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
		X: margin + max(0, s.Across-1)*p.Width,
		Y: margin + max(0, s.Down-1)*p.Height,
	}
	return plane.Box{Min: keep, Max: size.Sub(keep)}
}

// Printable is what a printer can print of the page, in mm from its lower
// left corner.
func (p Paper) Printable() plane.Box { return p.inside(p.Margin) }

// Strip is the strip across the top of a page of a sheet, from its left. Its upper and
// its lower side lie on the grid of the check squares. It begins where printers begin to
// print, if that is nearer to the edge than the margin: no line of a piece is in it, and
// a square that is cut short shows it.
func (p Paper) Strip() plane.Box {
	box := p.Printable()
	box.Max.Y = SnapDown(p.inside(min(p.Margin, unprintableEdge)).Max.Y)
	box.Min.Y = box.Max.Y - StripHeight
	box.Max.X = min(box.Max.X, box.Min.X+mostStrip)
	return box
}

// Window is where a page shows its part of a sheet: all that is printable under the
// strip.
func (p Paper) Window() plane.Box {
	w := p.Printable()
	w.Max.Y = p.Strip().Min.Y
	return w
}

// Around returns the paper in the size in which its window is one of a size.
func (p Paper) Around(window plane.Point) Paper {
	// Of a page made larger, its own growth is kept free at both sides.
	side := func(length, scale float64) float64 {
		if scale > 1 {
			scale = 2 - scale
		}
		return length / scale
	}
	s := p.Printed.OrTrue()
	p.Width = side(window.X+2*p.Margin, s.Across)
	// What the strip gives up to lie on the grid is one step at most.
	over := min(p.Margin, unprintableEdge) + SquareGrid + StripHeight
	// Renderers count dots from the upper edge: check squares, whose places are
	// counted from the lower one, lie on whole dots only where the height does.
	p.Height = SnapUp(side(p.Margin+window.Y+over, s.Down))
	return p
}

// Front is what a page in front is set in: it stays a little further from the
// edges than a page of a sheet, which looks better, and no printer minds.
func (p Paper) Front() plane.Box {
	box := p.Printable()
	if !p.Printed.IsTrue() {
		return box // a page made smaller has no room to spare
	}
	least := plane.Box{Max: p.Size()}.Grown(-FrontMargin)
	box.Min.X, box.Min.Y = max(box.Min.X, least.Min.X), max(box.Min.Y, least.Min.Y)
	box.Max.X, box.Max.Y = min(box.Max.X, least.Max.X), min(box.Max.Y, least.Max.Y)
	return box
}

// Header is the strip above that.
func (p Paper) Header() plane.Box {
	box := p.Front()
	box.Min.Y = box.Max.Y - headerHeight + headerGap
	return box
}

// UnderHeader is what a page in front has under its header.
func (p Paper) UnderHeader() plane.Box {
	box := p.Front()
	box.Max.Y -= headerHeight
	return box
}
