package pdfout

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: on a roll, and on one single page, every piece is whole and
// nothing is joined. What would be the first page, the pages of figures and the forms
// are panels: they lie on the first of the large pages beside the pieces, each in a
// frame. What is cut from card lies among the others there. Every large page has its
// strip with the check square. A piece is turned, by a quarter, only where the roll is too narrow for
// it. A single page is as wide as makes it smallest around; a roll is cut into pages
// only where it would be longer than a PDF can show.

const (
	// panelFrame is how far the frame of a panel lies inside the page that the
	// panel was planned as, in mm.
	panelFrame = 4.0
	// frameHeight is how high a page is that would be one of its own, in mm: no printer
	// bounds it, and all in front mostly has room on one.
	frameHeight = 14 * 25.4
	// mostWidths is how many widths are tried for a single page, and wholeTrials
	// about how many pieces and panels are laid for that in all.
	mostWidths  = 24
	wholeTrials = 2000
)

// panel is what would be a page of its own, as it lies on a large page.
type panel struct {
	number int         // of what it is, in the order of the pages it would be
	at     plane.Point // where its lower left corner comes to lie on that page, in mm
}

// panelBox is what of a panel's own page its frame encloses: on the first page, all
// that is above the lowest line of text.
func (b *Book) panelBox(i int) plane.Box {
	box := plane.Box{Max: b.leaf.Size()}.Grown(-panelFrame)
	if i < len(b.front) {
		box.Min.Y = max(box.Min.Y, b.front[i].foot-(paper.FrontMargin-panelFrame))
	}
	return box
}

// floor is a large page being filled, from the top.
type floor struct {
	arrange.Packing
	width float64
}

func newFloor(width, height float64) *floor {
	return &floor{arrange.EmptyPage(plane.Point{X: width, Y: height}), width}
}

// planWhole plans the pages of paper that has every piece whole.
func planWhole(set arrange.Set, p paper.Paper) (*Book, error) {
	leaf := paper.Either() // on any paper it was made for such a panel would fit
	leaf.Title, leaf.Height = p.Title, frameHeight
	b := newBook(set, p, leaf)
	pieces, forms, left := arrange.PiecesOf(set)
	if len(forms)+len(pieces) == 0 {
		return nil, nothingToDraw()
	}
	if p.Cut == paper.Single && fillMoreThanOne(pieces) {
		return nil, b.noPageHolds()
	}
	b.left = left
	if err := b.layLeaves(forms); err != nil {
		return nil, err
	}
	// How many pages there are is told on the panel that is packed on them.
	b.pages = 1
	for range mostLayings {
		told := b.pages
		b.front, b.sheets = b.layFront(), nil
		floors, err := b.layFloors(pieces)
		if err != nil {
			return nil, err
		}
		for _, f := range floors {
			b.addFloor(f)
		}
		b.number()
		if b.pages == told {
			break
		}
	}
	return b, nil
}

// fillMoreThanOne reports whether pieces, none of which is too large itself, need more than the
// largest page however they lie: by the boxes round them, none of which lies on another.
func fillMoreThanOne(pieces []arrange.Piece) bool {
	area := 0.0
	for _, p := range pieces {
		if max(p.Bounds.Width(), p.Bounds.Height()) > paper.LongestSide {
			return false
		}
		area += p.Bounds.Width() * p.Bounds.Height()
	}
	return area > paper.LongestSide*paper.LongestSide
}

// noPageHolds refuses what no single page is large enough for.
func (b *Book) noPageHolds() error {
	return &fault.Fault{
		Cause: fmt.Sprintf("the pieces need a page of more than %s on a side, and not every program shows one that is longer", b.set.Unit.OnRuler(math.Floor(paper.LongestSide))),
		Hint:  "print some of the pieces at a time, with --pieces, or choose a roll or pages",
	}
}

// parcels are those of the panels and, after them, of the pieces, the highest first.
func (b *Book) parcels(pieces []arrange.Piece) []arrange.Parcel {
	var parcels []arrange.Parcel
	for i := range len(b.front) + len(b.figures) + len(b.forms) {
		box := b.panelBox(i)
		// With room to be moved onto the grid of the check squares.
		parcels = append(parcels, arrange.Parcel{Number: i, Size: plane.Point{X: box.Width() + paper.SquareGrid, Y: box.Height() + paper.SquareGrid}})
	}
	window := plane.Point{X: paper.LongestSide, Y: paper.LongestSide}
	first := len(parcels)
	for _, drawn := range pieces {
		p := arrange.KeptParcel(drawn.Numbered(arrange.PageOf(b.paper)), window)
		if b.paper.Cut == paper.Roll && p.Size.X > b.paper.Window().Width() {
			p = p.QuarterTurned()
		}
		parcels = append(parcels, p)
	}
	slices.SortStableFunc(parcels[first:], func(a, b arrange.Parcel) int { return cmp.Compare(b.Size.Y, a.Size.Y) })
	return parcels
}

// layFloors lays everything on large pages.
func (b *Book) layFloors(pieces []arrange.Piece) ([]*floor, error) {
	window := b.paper.Window()
	parcels := b.parcels(pieces)
	for _, p := range parcels {
		if p.Size.X > window.Width() || p.Size.Y > window.Height() {
			return nil, b.tooLargeFor(p)
		}
	}
	if b.paper.Cut == paper.Roll {
		return fillRoll(parcels, window), nil
	}
	f := onOnePage(parcels, window)
	if f == nil {
		return nil, b.noPageHolds()
	}
	return []*floor{f}, nil
}

// tooLargeFor refuses what is larger than a page can be.
func (b *Book) tooLargeFor(p arrange.Parcel) error {
	if p.Piece == nil {
		return &fault.Fault{
			Cause: fmt.Sprintf("%s is too narrow for the figures and the check square", b.paper.ShortTitle()),
			Hint:  "choose a wider one",
		}
	}
	return &fault.Fault{
		Cause: fmt.Sprintf("piece %q, %s by %s, does not fit on %s", p.Piece.Name,
			b.set.Unit.OnRuler(p.Piece.Bounds.Width()), b.set.Unit.OnRuler(p.Piece.Bounds.Height()), b.paper.ShortTitle()),
		Hint: "choose a wider roll, or pages that are joined, such as --paper letter; not every program shows a page that is longer than 200 in",
	}
}

// fillRoll lays the parcels on pages of the roll's width; a further page begins only
// where one would be longer than a page can be.
func fillRoll(parcels []arrange.Parcel, window plane.Box) []*floor {
	var floors []*floor
	for _, p := range parcels {
		if slices.ContainsFunc(floors, func(f *floor) bool { return f.Put(p) }) {
			continue
		}
		next := newFloor(window.Width(), window.Height())
		next.Put(p)
		floors = append(floors, next)
	}
	return floors
}

// onOnePage returns all parcels on one page whose width and height together are least;
// nil when no page is large enough.
func onOnePage(parcels []arrange.Parcel, window plane.Box) *floor {
	widest, area := 0.0, 0.0
	for _, p := range parcels {
		widest = max(widest, p.Size.X)
		area += (p.Size.X + arrange.Apart) * (p.Size.Y + arrange.Apart)
	}
	widths := max(2, min(mostWidths, wholeTrials/len(parcels)))
	most := min(window.Width(), max(widest, 2*math.Sqrt(area)))
	var best *floor
	least := math.Inf(1)
	for i := range widths + 1 {
		f := newFloor(widest+(most-widest)*float64(i)/float64(widths), window.Height())
		if slices.ContainsFunc(parcels, func(p arrange.Parcel) bool { return !f.Put(p) }) {
			continue
		}
		if used := f.Used(); used.Width()+used.Height() < least {
			best, least = f, used.Width()+used.Height()
		}
	}
	return best
}

// addFloor makes a filled page the next sheet.
func (b *Book) addFloor(f *floor) {
	used := f.Used()
	width := used.Width()
	if b.paper.Cut == paper.Roll {
		width = f.width
	}
	window := plane.Point{X: width, Y: used.Height()}
	around := b.paper.Around(window)
	down := plane.Point{Y: -used.Min.Y}
	corner := around.Window().Min
	var pieces []arrange.Piece
	var panels []panel
	var kept []text.Slab // for what is no piece
	for _, p := range f.Parcels {
		p = p.Moved(down)
		if p.Piece != nil {
			pieces = append(pieces, p.Laid())
			continue
		}
		kept = append(kept, text.Upright(p.Room))
		low := p.Room.Min.Add(corner)
		at := low.Sub(b.panelBox(p.Number).Min)
		if form := p.Number - len(b.front) - len(b.figures); form >= 0 {
			b.forms[form].first = len(b.sheets) + 1
		}
		panels = append(panels, panel{p.Number, plane.Point{X: paper.SnapUp(at.X), Y: paper.SnapUp(at.Y)}})
	}
	sheet := arrange.NewSheet(pieces, arrange.Grid{Rows: 1, Columns: 1, Window: window, Overlap: around.Overlap}, []arrange.Cell{{}})
	sheet.Paper = around
	for _, k := range kept {
		sheet.Field.Take(k)
	}
	b.sheets = append(b.sheets, &laidSheet{Sheet: sheet, first: len(b.sheets) + 1, panels: panels})
}

// drawPanels draws the panels that lie on a sheet, on a page whose number says where it is.
func (b *Book) drawPanels(d ink.Canvas, s *laidSheet, number string) {
	for _, p := range s.panels {
		d.Save()
		d.Shift(p.at)
		b.drawPanel(d, p.number, number)
		d.Restore()
	}
}

// drawPanel draws a panel in its frame, on a page whose number says where it is.
func (b *Book) drawPanel(d ink.Canvas, i int, number string) {
	ink.DrawBox(d, ink.FinePen(), b.panelBox(i))
	switch front, figures := len(b.front), len(b.figures); {
	case i < front:
		b.drawFront(d, i, number)
	case i < front+figures:
		b.drawFigures(d, i-front, number)
	default:
		b.drawPage(d, b.forms[i-front-figures].page(0), number)
	}
}
