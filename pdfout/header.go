package pdfout

import (
	"cmp"
	"fmt"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: every page but the first has a title block in the same corner, ruled
// into cells: what is on the page at the left, the page's number at the right. On a page of
// a sheet it is as high as the check square at its right end, and each cell says always the
// same. The names of pieces are never left out in silence: where so many share a page that
// the block cannot hold their names, it has the numbers of their parts, and says that each
// is named in its place.

const (
	rightCells = 58.0 // the most that the cells at the right of a block are wide, in mm
	rightShare = 0.36 // the most of the block that they take
	cellInset  = 1.5  // between the side of a cell and its text, in mm
	nameCell   = 10.8 // the height of the cell for the name, in mm: two lines of a heading
	partCell   = 5.4  // that of the cell for part, cut or side: one line of text
	partWidth  = 27.0 // the width of the cell for the part
	nameLines  = 2    // the most lines of a name, and of title and size
	shareLines = 3    // the most lines of the names of pieces that share a page
	// shareColumns is in how many columns those names stand.
	shareColumns = 2
)

// noPiece heads a page that has none, before the names of those it tells of.
const noPiece = "Notes and steps"

// inCell draws a cell of a title block, with text in it.
func inCell(d ink.Canvas, cell plane.Box, words text.Lines) {
	ink.DrawBox(d, ink.FinePen(), cell)
	var placed text.Lines
	placed.With(words, plane.Point{X: cell.Min.X + cellInset, Y: cell.Centre().Y + words.Height/2})
	for _, l := range placed.Labels {
		l.Draw(d)
	}
}

// rightOf is where the cells at the right of a block begin.
func rightOf(block plane.Box) float64 {
	return block.Max.X - min(rightCells, rightShare*block.Width())
}

// drawFrontHeader heads a page in front, other than the first, and one of figures.
func (b *Book) drawFrontHeader(d ink.Canvas, title, number string) {
	block := b.leaf.Header()
	left, right := block, block
	if number != "" {
		left.Max.X = block.Max.X - ink.Heading().Width("page 888 of 888") - 2*cellInset
	}
	inCell(d, left, frontName(title, left.Width()-2*cellInset))
	if right.Min.X = left.Max.X; number != "" {
		inCell(d, right, text.LinesOf([]string{number}, ink.Heading()))
	}
}

// frontName sets what heads a page in front in a width: in text where a heading is too wide, and
// in two lines of it where one is too short.
func frontName(title string, width float64) text.Lines {
	if head := ink.Heading(); head.Width(title) <= width {
		return text.LinesOf([]string{title}, head)
	}
	return text.LinesOf(text.WithinLines(title, ink.StrongText(), width, nameLines), ink.StrongText())
}

// drawHeader heads a page of a sheet, whose number says where it is.
func (b *Book) drawHeader(d ink.Canvas, p page, number string) {
	block := p.Paper.Strip()
	side := paper.SmallSquare(b.set.Unit).Side
	corner := plane.Point{X: paper.SnapDown(block.Max.X - side), Y: block.Min.Y}
	block.Max.X = corner.X - paper.SquareGrid
	left, right := block, block
	left.Max.X = rightOf(block)
	right.Min.X = left.Max.X
	pieces := p.onPage()
	b.drawPieceCells(d, left, p, pieces)
	b.drawPageCells(d, right, p, pieces, number)
	b.drawSmallSquare(d, corner)
}

// drawPieceCells draws the cells at the left of a block: name, part and cut of the piece,
// or those of all pieces that share the page, and under them what is made.
func (b *Book) drawPieceCells(d ink.Canvas, cells plane.Box, p page, pieces []arrange.Piece) {
	name, part, made := cells, cells, cells
	name.Min.Y = cells.Max.Y - nameCell
	part.Max.Y, part.Min.Y = name.Min.Y, name.Min.Y-partCell
	made.Max.Y = part.Min.Y
	width := cells.Width() - 2*cellInset
	switch len(pieces) {
	case 0:
		name.Min.Y = part.Min.Y
		inCell(d, name, nameOf(noPiece+": "+text.JoinedNotes(p.Tells), width))
	case 1:
		cut := part
		part.Max.X = part.Min.X + partWidth
		cut.Min.X = part.Max.X
		inCell(d, name, nameOf(pieces[0].Name, width))
		inCell(d, part, text.LinesOf([]string{b.partsOf(pieces)}, ink.Text()))
		inCell(d, cut, text.LinesOf([]string{text.Shorten(pieces[0].Cut, ink.Text(), cut.Width()-2*cellInset)}, ink.Text()))
	default:
		name.Min.Y = part.Min.Y
		inCell(d, name, b.sharedNames(pieces, width))
	}
	inCell(d, made, b.madeLines(width))
}

// nameOf sets a name in the cell for it, as large as it can be.
func nameOf(name string, width float64) text.Lines {
	if ink.Part().Width(name) <= width {
		return text.LinesOf([]string{name}, ink.Part())
	}
	style := ink.Heading()
	if len(text.WrapMeasures(name, style, width)) > nameLines {
		style = ink.StrongText()
	}
	return text.LinesOf(text.WithinLines(name, style, width, nameLines), style)
}

// madeLines says what is made, and its size.
func (b *Book) madeLines(width float64) text.Lines {
	style := ink.Text()
	if size := b.set.SizeLine(); size != "" && style.Width(size) <= width {
		return text.LinesOf([]string{text.Shorten(b.title(), style, width), size}, style)
	}
	return text.LinesOf(text.WithinLines(b.fullTitle(), style, width, nameLines), style)
}

// drawPageCells draws the cells at the right of a block: the page's number and its place
// on the sheet, the side that lies up, and how to print it.
func (b *Book) drawPageCells(d ink.Canvas, cells plane.Box, p page, pieces []arrange.Piece, number string) {
	where, side, scale := cells, cells, cells
	where.Min.Y = cells.Max.Y - nameCell
	side.Max.Y, side.Min.Y = where.Min.Y, where.Min.Y-partCell
	scale.Max.Y = side.Min.Y
	if number == "" {
		side.Max.Y = cells.Max.Y
	} else {
		words := text.LinesOf([]string{number}, ink.Heading())
		if place := p.place(); place != "" {
			words.Add([]string{place}, ink.Text())
		}
		inCell(d, where, words)
	}
	inCell(d, side, text.LinesOf([]string{text.Shorten(p.toldOn(sideOf(pieces)), ink.Text(), side.Width()-2*cellInset)}, ink.Text()))
	inCell(d, scale, text.LinesOf(text.WrapMeasures(b.howToPrint(), ink.Text(), scale.Width()-2*cellInset), ink.Text()))
}

// onPage returns the pieces that reach into the page, in the order of their parts.
func (p page) onPage() []arrange.Piece {
	here := slices.DeleteFunc(slices.Clone(p.Pieces), func(piece arrange.Piece) bool { return !piece.Bounds.Meets(p.core) })
	slices.SortStableFunc(here, func(a, b arrange.Piece) int { return cmp.Compare(a.Part, b.Part) })
	return here
}

// place says where on its sheet a page belongs; "" where there is no other.
func (p page) place() string {
	var place string
	if p.Grid.Rows > 1 {
		place = fmt.Sprintf("row %d of %d", p.cell.Row+1, p.Grid.Rows)
	}
	if p.Grid.Columns > 1 {
		if place != "" {
			place += ", "
		}
		place += fmt.Sprintf("column %d of %d", p.cell.Column+1, p.Grid.Columns)
	}
	return place
}

// toldOn adds to words on which pages that is told for which the sheet has no room.
func (p page) toldOn(words string) string {
	if len(p.told) == 0 {
		return words
	}
	var pages []int
	for _, s := range p.told {
		pages = append(pages, s.first)
	}
	notes := "notes: " + text.Numbers("page", pages)
	if words == "" {
		return notes
	}
	return words + ", " + notes
}

// partsOf numbers the pieces among all parts; "" where they have no numbers.
func (b *Book) partsOf(pieces []arrange.Piece) string {
	var numbers []int
	for _, p := range pieces {
		if p.Part > 0 {
			numbers = append(numbers, p.Part)
		}
	}
	if len(numbers) == 0 {
		return ""
	}
	slices.Sort(numbers)
	return fmt.Sprintf("%s of %d", text.Numbers("part", numbers), max(len(b.set.Pieces), numbers[len(numbers)-1]))
}

// sharedNames sets the numbers and the names of pieces that share a page, in a heading as large
// as the cell has room for.
func (b *Book) sharedNames(pieces []arrange.Piece, width float64) text.Lines {
	names := namesOf(pieces, width)
	head := ink.Heading()
	if head.Step()+names.Height > nameCell+partCell {
		head = ink.StrongText()
	}
	words := text.LinesOf([]string{text.Shorten(b.partsOf(pieces), head, width)}, head)
	words.With(names, plane.Point{Y: -words.Height})
	words.Space(names.Height)
	return words
}

// namesOf sets the names of pieces with their parts and cuts: one to a line, or else in running
// text without their cuts, or else only that they have them.
func namesOf(pieces []arrange.Piece, width float64) text.Lines {
	style := ink.Text()
	column := (width - text.Gutter/2) / shareColumns
	var lines, short []string
	for _, p := range pieces {
		name := p.Name
		if p.Part > 0 {
			name = fmt.Sprintf("%d  %s", p.Part, name)
		}
		short = append(short, name)
		if p.Cut != "" {
			name += ", " + p.Cut
		}
		lines = append(lines, name)
	}
	var words text.Lines
	if len(lines) <= shareLines*shareColumns && text.LongestWord(lines, style) <= column {
		down := len(lines) // in each column
		if down > shareLines {
			down = (down + shareColumns - 1) / shareColumns
		}
		for i := 0; i < len(lines); i += down {
			words.With(text.LinesOf(lines[i:min(i+down, len(lines))], style),
				plane.Point{X: float64(i/down) * (column + text.Gutter/2)})
		}
		words.Space(float64(down) * style.Step())
		return words
	}
	running := text.Wrap(text.JoinedNotes(short), style, width)
	if len(running) > shareLines {
		running = []string{"Each has its name in it, or beside it."}
	}
	words.Add(running, style)
	return words
}

// sideOf says which side of the pieces lies up.
func sideOf(pieces []arrange.Piece) string {
	var sides []mark.Side
	for _, p := range pieces {
		sides = append(sides, p.Side)
	}
	slices.Sort(sides)
	sides = slices.Compact(sides)
	switch len(sides) {
	case 0:
		return ""
	case 1:
		return sides[0].String()
	}
	return "each piece says which side is up"
}

// howToPrint says at what scale the page is to be printed.
func (b *Book) howToPrint() string {
	if b.paper.Printed.IsTrue() {
		return "1 : 1, print at 100 %"
	}
	return "drawn for a printer that prints at " + b.paper.Printed.String()
}

// drawSmallSquare draws the page's check square, with what it is to measure.
func (b *Book) drawSmallSquare(d ink.Canvas, corner plane.Point) {
	square := paper.SmallSquare(b.set.Unit)
	ink.DrawCheckSquare(d, corner, square.Side)
	words := text.LinesOf([]string{square.Name}, ink.Heading())
	words.Add([]string{"both ways,", "from outside", "to outside"}, ink.Text())
	middle := corner.Add(plane.Point{X: square.Side / 2, Y: (square.Side + words.Height) / 2})
	for _, l := range words.Labels {
		ink.Write(d, middle.Add(l.At).Sub(plane.Point{X: l.Style.Width(l.Text) / 2}), l.Style, l.Text)
	}
}
