package pdfout

import (
	"fmt"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
)

// Rules of this file: the order of the pages. In front goes the page that
// proves the scale, with the pictures of the sheets; pictures that do not fit
// there follow on pages of their own; then come the figures, which are read at
// the cutting table, and the forms, since they are filled in before anything is
// marked, and then the pages of each sheet, row by row.

// book is a set planned to the page.
type book struct {
	set   arrange.Set
	paper paper.Paper
	// leaf is what the pages in front, of figures and with forms are planned for:
	// the paper, or a panel on a larger one.
	leaf     paper.Paper
	sheets   []arrange.Sheet // the forms, and after them those of the pieces
	forms    int             // how many of the sheets are forms
	pictures [][]picture     // of each page in front
	figures  []report.Page
	first    []int // the page number on which each sheet begins
	pages    int
	roles    []mark.Role // that occur, in the order of the line key
	panels   []panel     // of paper that has everything on one page
}

// newBook numbers the pages.
func newBook(set arrange.Set, p paper.Paper, figures []report.Page, forms, sheets []arrange.Sheet) *book {
	b := &book{set: set, paper: p, leaf: p, roles: rolesIn(set), figures: figures, sheets: slices.Concat(forms, sheets), forms: len(forms)}
	b.pictures = b.layPictures(b.cover().pictures)
	next := len(b.pictures) + len(b.figures) + 1
	for i := range b.sheets {
		b.first = append(b.first, next)
		next += len(b.sheets[i].Cells)
	}
	b.pages = next - 1
	return b
}

// pageNumber says where a page is in the book.
func (b *book) pageNumber(n int) string { return fmt.Sprintf("page %d of %d", n, b.pages) }

// howToPrint says in a header at what scale the page is to be printed.
func (b *book) howToPrint() string {
	if b.paper.Printed.IsTrue() {
		return "print at 100 %"
	}
	return "drawn for a printer that prints at " + b.paper.Printed.String()
}

// title is what the set is called on its pages.
func (b *book) title() string {
	if b.set.Title == "" {
		return "Marking sheets"
	}
	return b.set.Title
}

// fullTitle is title and size.
func (b *book) fullTitle() string {
	if b.set.SizeLine() == "" {
		return b.title()
	}
	return b.title() + ", " + b.set.SizeLine()
}

// rolesIn returns the roles of the lines of a set, in the order of the line key.
func rolesIn(set arrange.Set) []mark.Role {
	occurs := map[mark.Role]bool{}
	for _, p := range set.Pieces {
		for _, m := range p.Marks {
			occurs[m.Role] = occurs[m.Role] || m.Path.Length() > 0
		}
	}
	var roles []mark.Role
	for _, role := range mark.Roles() {
		if occurs[role] {
			roles = append(roles, role)
		}
	}
	return roles
}

// joined reports whether any pages are to be joined: those of a sheet always
// hang together.
func (b *book) joined() bool {
	for i := range b.sheets {
		if len(b.sheets[i].Cells) > 1 {
			return true
		}
	}
	return false
}

// blank is how many pages of all sheets are not printed.
func (b *book) blank() int {
	n := 0
	for i := range b.sheets {
		n += b.sheets[i].Blank()
	}
	return n
}

// summary says what the book holds.
func (b *book) summary(left []string) Summary {
	s := Summary{Paper: b.paper, Pages: b.pages, Front: len(b.pictures), Figures: len(b.figures), Blank: b.blank(), Left: left, Unit: b.set.Unit, What: b.set.What}
	if b.paper.WhollyOnOne() {
		s.Paper, s.Front = b.sheets[b.forms].Paper, 0
	}
	for i := range b.forms {
		form := b.sheets[i].Pieces[0]
		s.Forms = append(s.Forms, FormSummary{Piece: form.Name, Page: b.first[i], Turned: form.Turned})
	}
	for i := b.forms; i < len(b.sheets); i++ {
		sheet := &b.sheets[i]
		one := SheetSummary{
			Pieces: sheet.Names(),
			Rows:   sheet.Grid.Rows, Columns: sheet.Grid.Columns,
			First: b.first[i], Last: b.first[i] + len(sheet.Cells) - 1,
			Blank: sheet.Blank(),
		}
		for _, p := range sheet.Pieces {
			if p.Turned {
				one.Turned = append(one.Turned, p.Name)
			}
		}
		s.Sheets = append(s.Sheets, one)
	}
	return s
}

// draw draws all pages.
func (b *book) draw(d ink.Canvas) {
	if b.paper.WhollyOnOne() {
		b.drawWhole(d)
		return
	}
	size := b.paper.Size()
	b.drawFirst(d)
	for i := 1; i < len(b.pictures); i++ {
		d.NewPage(size)
		b.drawOverview(d, i)
	}
	for i := range b.figures {
		d.NewPage(size)
		b.drawFigures(d, i, b.pageNumber(len(b.pictures)+i+1))
	}
	for i := range b.sheets {
		for k := range b.sheets[i].Cells {
			d.NewPage(size)
			b.drawTile(d, i, k, b.pageNumber(b.first[i]+k))
		}
	}
}

// drawFirst draws the first page alone.
func (b *book) drawFirst(d ink.Canvas) {
	d.NewPage(b.paper.Size())
	b.drawFront(d)
}

// drawFigures draws a page of figures, whose number says where it is.
func (b *book) drawFigures(d ink.Canvas, i int, number string) {
	b.drawFrontHeader(d, b.figuresHeader(i), number)
	for _, placed := range b.figures[i] {
		placed.Draw(d)
	}
}

// figuresHeader is what heads a page of figures. The first has the report's title
// under its header.
func (b *book) figuresHeader(i int) string {
	title := b.set.Report.Title
	switch {
	case title == "":
		title = b.fullTitle()
	case i == 0:
		return report.Heading
	}
	return report.Heading + ": " + title
}
