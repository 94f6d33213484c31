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
	"tuckmark/pdfout/report"
)

// Rules of this file: the order of pages that are printed one by one; that of paper
// which has everything whole is in whole.go. In front goes the page that proves the
// scale, with the pictures of the sheets; pictures that do not fit there follow on
// pages of their own; then come the figures, which are read at the cutting table, and
// the forms, since they are filled in before anything is marked, and then the sheets, in
// the order in which their parts are used, each with its pages in the order of gluing.

// Book is a set planned to the page.
type Book struct {
	set   arrange.Set
	paper paper.Paper
	// leaf is what the pages in front, of figures and with forms are planned for:
	// the paper, or a panel on a larger one.
	leaf    paper.Paper
	roles   []mark.Role // that occur, in the order of the line key
	front   []frontPage
	figures []report.Page
	forms   []*laidSheet
	sheets  []*laidSheet // of the pieces
	pages   int
	left    []string               // the names of the pieces that have no line
	drawn   []miniature            // what is drawn of the set in front, without its pages
	laid    map[string][]laidPiece // by the key of the piece
}

// laidSheet is a sheet with its place in the book.
type laidSheet struct {
	arrange.Sheet
	first  int          // the number of its first page
	panels []panel      // that lie on it, of paper that has everything on one page
	told   []*laidSheet // the pages of what has no room on it
}

// laidPiece is a piece with the sheet that it lies on.
type laidPiece struct {
	piece arrange.Piece
	sheet *laidSheet
	cores []plane.Box   // of the pages of the sheet: what lies within their joins
	cells map[int][]int // of the sheet, by the line that lies on them, as far as they were asked for
}

// newBook is a book of a set without any page.
func newBook(set arrange.Set, on, leaf paper.Paper) *Book {
	return &Book{set: set, paper: on, leaf: leaf, roles: rolesIn(set), drawn: madeOf(set)}
}

// number numbers the pages, and lays those in front. How many these are hangs on the
// numbers that stand on them, though hardly: they are numbered for as many as there were,
// and laid again until there are no others. More of them give no smaller numbers, and
// smaller numbers no more of them: that comes to an end.
func (b *Book) number() {
	if b.paper.WhollyOnOne() {
		for i, s := range b.sheets {
			s.first = i + 1
		}
		b.pages = len(b.sheets)
		return
	}
	b.findPieces()
	if len(b.front) == 0 {
		b.front = make([]frontPage, usualFront)
	}
	for range mostLayings {
		before := len(b.front)
		b.numberBehind(before)
		b.front = b.layFront()
		if len(b.front) == before {
			return
		}
	}
	b.numberBehind(len(b.front))
}

const (
	// mostLayings bounds how often the pages in front are laid.
	mostLayings = 6
	// usualFront is how many of them there are mostly: where it is so, they are laid once.
	usualFront = 2
)

// numberBehind numbers the pages behind so many in front.
func (b *Book) numberBehind(front int) {
	b.pages = front + len(b.figures)
	for _, s := range b.all() {
		s.first = b.pages + 1
		b.pages += len(s.Cells)
	}
}

// asWide is what is added to the number of a page so that it has as many digits as that of any page:
// what is set in front has room for such numbers, for its own are not known before it is laid.
func (b *Book) asWide() int {
	widest := 9
	for widest < b.pages {
		widest = 10*widest + 9
	}
	return widest - b.pages
}

// findPieces notes on which sheet each piece lies.
func (b *Book) findPieces() {
	b.laid = map[string][]laidPiece{}
	for _, s := range b.all() {
		var cores []plane.Box
		for k := range s.Cells {
			cores = append(cores, s.page(k).core)
		}
		for _, p := range s.Pieces {
			b.laid[p.Key] = append(b.laid[p.Key], laidPiece{p, s, cores, map[int][]int{}})
		}
	}
}

// all are the sheets in the order of their pages.
func (b *Book) all() []*laidSheet { return slices.Concat(b.forms, b.sheets) }

// letter finds the places of the joins, numbered through all sheets, and of all that
// is written on the sheets. What has no room there is on pages after them; paper that has
// everything on one page grows instead. Sheets are lettered at the same time: but for the
// numbers of its joins nothing on one depends on another.
func (b *Book) letter() {
	next := 1
	for _, s := range b.sheets {
		next = s.FindJoins(next)
	}
	for _, s := range b.sheets {
		s.Looks /= len(b.sheets)
	}
	atOnce(b.sheets, b.letterSheet)
	var all []*laidSheet
	for _, s := range b.sheets {
		all = append(append(all, s), s.told...)
	}
	if len(all) > len(b.sheets) {
		b.sheets = all
		b.number()
	}
}

// letterSheet finds the places of all that is written on a sheet whose joins have been found.
func (b *Book) letterSheet(s *laidSheet) {
	s.Letter()
	if b.paper.WhollyOnOne() {
		s.GrowForPanels(b.paper.Window().Height())
	}
	for _, panels := range s.PanelPages() {
		panels.Letter()
		s.told = append(s.told, &laidSheet{Sheet: panels})
	}
}

// DrawPage draws a page by its number, which is one of those that Pages tells, on a new page of
// the canvas.
func (b *Book) DrawPage(d ink.Canvas, n int) {
	number := b.pageNumber(n)
	if s, k := b.sheetOf(n); s != nil {
		d.NewPage(s.Paper)
		b.drawPage(d, s.page(k), number)
		b.drawPanels(d, s, number)
		return
	}
	d.NewPage(b.paper)
	if n <= len(b.front) {
		b.drawFront(d, n-1, number)
	} else {
		b.drawFigures(d, n-1-len(b.front), number)
	}
}

// drawAll draws all pages.
func (b *Book) drawAll(d ink.Canvas) {
	for n := range b.pages {
		b.DrawPage(d, n+1)
	}
}

// drawFirst draws the first page alone.
func (b *Book) drawFirst(d ink.Canvas) { b.DrawPage(d, 1) }

// sheetOf is the sheet whose k-th page has a number; nil of a page in front, and of figures.
func (b *Book) sheetOf(n int) (s *laidSheet, k int) {
	for _, s := range b.printed() {
		if k := n - s.first; k >= 0 && k < len(s.Cells) {
			return s, k
		}
	}
	return nil, 0
}

// printed are the sheets that have pages of their own, in the order of these: on paper that has
// everything whole, forms have none.
func (b *Book) printed() []*laidSheet {
	if b.paper.WhollyOnOne() {
		return b.sheets
	}
	return b.all()
}

// drawFigures draws a page of figures, whose number says where it is.
func (b *Book) drawFigures(d ink.Canvas, i int, number string) {
	b.drawFrontHeader(d, b.figuresHeader(i), number)
	b.figures[i].Draw(d)
}

// figuresHeader is what heads a page of figures. The first has the report's title
// under its header.
func (b *Book) figuresHeader(i int) string {
	title := b.set.Report.Title
	switch {
	case title == "":
		title = b.fullTitle()
	case i == 0:
		return report.Heading
	}
	return report.Heading + ": " + title
}

// otherWay reports whether the pages of a sheet lie where the first page stands, or stand
// where that lies. Of a roll and of a single page nothing does: their width is across the
// printer, however long the page.
func (b *Book) otherWay(s *laidSheet) bool {
	return !b.paper.WhollyOnOne() && s.Paper.IsLying() != b.paper.IsLying()
}

// pageNumber says where a page is in the book; "" where it is the only one.
func (b *Book) pageNumber(n int) string {
	if b.pages == 1 && b.paper.WhollyOnOne() {
		return ""
	}
	return fmt.Sprintf("page %d of %d", n, b.pages)
}

// title is what the set is called on its pages.
func (b *Book) title() string { return cmp.Or(b.set.Title, "Marking sheets") }

// fullTitle is title and size.
func (b *Book) fullTitle() string {
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
	return slices.DeleteFunc(mark.Roles(), func(role mark.Role) bool { return !occurs[role] })
}

// joined reports whether any pages are to be joined: those of a sheet always
// hang together.
func (b *Book) joined() bool {
	return slices.ContainsFunc(b.sheets, func(s *laidSheet) bool { return len(s.Cells) > 1 })
}

// blank is how many pages of all sheets are not printed.
func (b *Book) blank() int {
	n := 0
	for _, s := range b.sheets {
		n += s.Blank()
	}
	return n
}
