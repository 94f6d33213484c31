package pdfout

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/text"
)

// Rules of this file: what a book holds is told, page by page and sheet by sheet, to whoever
// shows it elsewhere than on paper. A sheet is drawn there whole, as it lies when its pages are
// joined: each line once, and nothing that is on the paper only for the joining.

// PagePlan is a page of a book.
type PagePlan struct {
	Number int         // from 1
	Title  string      // what is on it: "First page", "Figures", the names of its pieces
	Size   plane.Point // of the paper, in mm
}

// SheetPlan is a sheet of a book: one page, or several that are joined. Places on it are in mm
// from its lower left corner, y up.
type SheetPlan struct {
	Title string      // the names of its pieces
	Parts []PartPlan  // what lies on it, in the order of the parts
	First int         // the number of its first page
	Size  plane.Point // of all of it, in mm
	Pages []CellPlan  // that are printed, in the order of gluing
	Blank []plane.Box // what lies within the joins of those that are not
}

// PartPlan is a piece on a sheet.
type PartPlan struct {
	Key string // that its lines are known by
	Box plane.Box
}

// CellPlan is a page of a sheet, where it lies there.
type CellPlan struct {
	Number int       // of the page
	Core   plane.Box // what lies within its joins: the cores cover a sheet once
	Window plane.Box // all that it shows
}

// Pages are the pages of the book, in their order.
func (b *Book) Pages() []PagePlan {
	all := make([]PagePlan, b.pages)
	for i := range all {
		all[i] = PagePlan{i + 1, report.Heading, b.paper.Size()}
	}
	if !b.paper.WhollyOnOne() {
		for i := range b.front {
			all[i].Title = workTitle
		}
		all[0].Title = "First page"
	}
	for _, s := range b.printed() {
		for k := range s.Cells {
			p := &all[s.first+k-1]
			p.Size = s.Paper.Size()
			p.Title = s.page(k).title()
		}
	}
	return all
}

// chapters are what a reader of the book turns to: what goes in front, the figures, and each piece
// where it begins. A single page has none.
func (b *Book) chapters() []ink.Chapter {
	if b.pages == 1 {
		return nil
	}
	var all []ink.Chapter
	inFront := len(b.front) + len(b.figures)
	if b.paper.WhollyOnOne() {
		inFront = 0 // they lie on the pages of the pieces
	}
	for i, p := range b.Pages()[:inFront] {
		if i == 0 || all[len(all)-1].Title != p.Title {
			all = append(all, ink.Chapter{Title: p.Title, Page: p.Number})
		}
	}
	for _, s := range b.printed() {
		begun := map[string]bool{}
		for k := range s.Cells {
			for _, piece := range s.page(k).onPage() {
				if !begun[piece.Key] {
					begun[piece.Key] = true
					all = append(all, ink.Chapter{Title: piece.Name, Page: s.first + k})
				}
			}
		}
	}
	return all
}

// Sheets are the sheets of the book, in the order of their pages: forms as well, but for those
// that are panels on a large page.
func (b *Book) Sheets() []SheetPlan {
	var all []SheetPlan
	for _, s := range b.printed() {
		whole := s.whole().window
		placed := func(box plane.Box) plane.Box {
			return plane.Box{Min: box.Min.Sub(whole.Min), Max: box.Max.Sub(whole.Min)}
		}
		one := SheetPlan{Title: s.title(), First: s.first, Size: placed(whole).Max}
		for _, p := range s.Pieces {
			one.Parts = append(one.Parts, PartPlan{p.Key, placed(p.Bounds)})
		}
		for k := range s.Cells {
			p := s.page(k)
			one.Pages = append(one.Pages, CellPlan{s.first + k, placed(p.core), placed(p.window)})
		}
		for _, c := range s.Grid.Cells() {
			if !s.Prints(c) {
				one.Blank = append(one.Blank, placed(s.Grid.CoreOf(c)))
			}
		}
		all = append(all, one)
	}
	return all
}

// DrawSheet draws a sheet whole, by its place among Sheets, on a page of the canvas that is as
// large as it.
func (b *Book) DrawSheet(d ink.Canvas, i int) {
	s := b.printed()[i]
	v := s.whole()
	d.NewPage(paper.Paper{Width: v.window.Width(), Height: v.window.Height()})
	d.Place(v.window.Min.Mul(-1), 1)
	v.draw(d, b.roles, func() {})
	d.Place(plane.Point{}, 1)
	if len(s.panels) > 0 {
		d.Save()
		d.Shift(s.Paper.Window().Min.Mul(-1))
		b.drawPanels(d, s, b.pageNumber(s.first))
		d.Restore()
	}
}

// whole is all of the sheet.
func (s *laidSheet) whole() view {
	all := s.Grid.Box()
	return view{s, all, all, s.Sheet.Cells}
}

// title is what a page is called: by the pieces that reach into it, and its place on the sheet.
func (p page) title() string {
	var names []string
	for _, piece := range p.onPage() {
		names = append(names, piece.Name)
	}
	title := text.JoinedNotes(names)
	if title == "" {
		title = p.laidSheet.title()
	}
	if place := p.place(); place != "" {
		title += ", " + place
	}
	return title
}

// title is what the sheet is called: by the pieces on it, or those it tells of.
func (s *laidSheet) title() string {
	if len(s.Pieces) == 0 {
		return noPiece + ": " + text.JoinedNotes(s.Tells)
	}
	return text.JoinedNotes(s.Names())
}
