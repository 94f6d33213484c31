package pdfout

import (
	"fmt"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the strip over a page says what it is on the left and where it
// belongs on the right, so that no page is ever without its place, even one that was
// printed alone. The number of a page that is a panel on a larger one is "".

const (
	headSize   = 10.0  // of the header's first line, in points
	underSize  = 8.0   // of its second line
	headApart  = 6.0   // between left and right, in mm
	placeApart = "   " // between the place of a page on its sheet and how to print it
)

// drawHeader heads a page of a sheet.
func (b *book) drawHeader(d ink.Canvas, p page, number string) {
	strip := p.Paper.Printable()
	head, under := ink.Strong(headSize), ink.Plain(underSize).In(ink.Grey())
	right := b.howToPrint()
	if len(p.Cells) > 1 {
		right = fmt.Sprintf("row %d of %d, column %d of %d", p.cell.Row+1, p.Grid.Rows, p.cell.Column+1, p.Grid.Columns) + placeApart + right
	}
	names := p.headings()
	if len(names) == 0 { // a large page with nothing but panels
		names = []string{b.title()}
	}
	first := strip.Max.Y - head.Up()
	drawHeaderLine(d, strip, first, head, text.NamesWithin(names, head, besideNumber(strip, head, number)), number)
	drawHeaderLine(d, strip, first-head.Step(), under, text.Shorten(b.fullTitle(), under, besideNumber(strip, under, right)), right)
}

// drawFrontHeader heads a page in front, other than the first, and one of figures.
func (b *book) drawFrontHeader(d ink.Canvas, title, number string) {
	strip, style := b.leaf.Front(), ink.Strong(headSize)
	drawHeaderLine(d, strip, strip.Max.Y-style.Up(), style, text.Shorten(title, style, besideNumber(strip, style, number)), number)
}

// besideNumber is how much room what stands on the right leaves, in mm.
func besideNumber(strip plane.Box, s ink.Style, right string) float64 {
	return strip.Width() - headApart - s.Width(right)
}

// drawHeaderLine writes a line of a header at a height of the page.
func drawHeaderLine(d ink.Canvas, strip plane.Box, y float64, s ink.Style, left, right string) {
	ink.Write(d, plane.Point{X: strip.Min.X, Y: y}, s, left)
	ink.WriteBefore(d, plane.Point{X: strip.Max.X, Y: y}, s, right)
}

// headings returns the names of the pieces on the page, with the notes of those that
// have no title on the sheet.
func (p page) headings() []string {
	var names []string
	for _, piece := range p.Pieces {
		if !piece.Bounds.Meets(p.core()) {
			continue
		}
		name := piece.Name
		for _, u := range p.Untitled {
			if u.Name == piece.Name && len(u.Told()) > 0 {
				name = piece.Name + ": " + text.JoinedNotes(u.Told())
			}
		}
		names = append(names, name)
	}
	return names
}

// howToPrint says at what scale the page is to be printed.
func (b *book) howToPrint() string {
	if b.paper.Printed.IsTrue() {
		return "print at 100 %"
	}
	return "drawn for a printer that prints at " + b.paper.Printed.String()
}
