package pdfout

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: on a roll, and on one single page, every piece is whole and
// nothing is joined. What would be the first page, the pages of figures and the
// forms are panels: they lie on the first of the large pages beside the pieces,
// each in a frame. What is cut from card lies among the others there. Every large page has its check square. A piece is turned, by a
// quarter, only where the roll is too narrow for it. A single page is as wide as
// makes it smallest around; a roll is cut into pages only where it would be longer
// than a PDF can show.

const (
	// panelFrame is how far the frame of a panel lies inside the page that the
	// panel was planned as, in mm.
	panelFrame = 7.0
	// mostWidths is how many widths are tried for a single page, and wholeTrials
	// about how many pieces and panels are laid for that in all.
	mostWidths  = 24
	wholeTrials = 2000
)

// panel is what would be a page of its own, as it lies on a large page.
type panel struct {
	on int         // the number of the sheet it lies on
	at plane.Point // where its lower left corner comes to lie on that page, in mm
}

// panelBox is what of a panel's own page its frame encloses: on the first page, all
// that is above the lowest line of text.
func (b *book) panelBox(i int) plane.Box {
	box := plane.Box{Max: b.leaf.size()}.Grown(-panelFrame)
	if i == 0 {
		box.Min.Y = b.cover().foot - (frontMargin - panelFrame)
	}
	return box
}

// item is what is laid on a large page: a piece, a panel, or the check square.
type item struct {
	piece *piece
	panel int         // its number, where it has no piece
	size  plane.Point // as it is laid, in mm
	// turned tells that a piece is laid by a quarter turn.
	turned bool
}

// spot is an item as it lies on its page.
type spot struct {
	item
	box plane.Box
}

// floor is a large page being filled, from the top.
type floor struct {
	width float64
	spots []spot
	free  []plane.Box // the largest boxes in which nothing lies; they overlap
}

func newFloor(width, height float64) *floor {
	return &floor{width: width, free: []plane.Box{{Max: plane.Point{X: width, Y: height}}}}
}

// used is the box round all that lies on the floor.
func (f *floor) used() plane.Box {
	b := plane.EmptyBox()
	for _, s := range f.spots {
		b = b.Union(s.box)
	}
	return b
}

// lay puts the item as high, and then as far to the left, as it can lie, and
// reports whether there was room.
func (f *floor) lay(it item) bool {
	box, found := highestIn(f.free, it.size)
	if found {
		f.spots = append(f.spots, spot{it, box})
		f.free = without(f.free, box.Grown(apart))
	}
	return found
}

// planWhole plans the pages of paper that has every piece whole.
func planWhole(set Set, paper Paper) (*book, []string, error) {
	leaf := eitherPaper() // on any paper it was made for such a panel would fit
	leaf.Title = paper.Title
	b := &book{set: set, paper: paper, leaf: leaf, roles: rolesIn(set), pictures: [][]picture{nil}}
	pieces, forms, left := piecesOf(set)
	if len(forms)+len(pieces) == 0 {
		return nil, nil, nothingToDraw()
	}
	var err error
	if b.sheets, err = layForms(forms, set, leaf); err != nil {
		return nil, nil, err
	}
	for i := range b.sheets {
		b.sheets[i].paper = leaf
		b.first = append(b.first, 1)
	}
	b.forms = len(b.sheets)
	if b.figures, err = layReport(set, leaf); err != nil {
		return nil, nil, err
	}
	floors, err := b.layFloors(pieces)
	if err != nil {
		return nil, nil, err
	}
	for i, f := range floors {
		b.addFloor(i, f)
	}
	b.pages = len(floors)
	return b, left, nil
}

// items are the panels and, after them, the pieces, the highest first.
func (b *book) items(pieces []piece) []item {
	var items []item
	for i := range 1 + len(b.figures) + b.forms {
		box := b.panelBox(i)
		// With room to be moved onto the grid of the check squares.
		items = append(items, item{panel: i, size: plane.Point{X: box.Width() + squareGrid, Y: box.Height() + squareGrid}})
	}
	items = append(items, b.squareItem())
	window := plane.Point{X: longestSide, Y: longestSide}
	first := len(items)
	for _, p := range pieces {
		p.foot = footOf(p, newField([]piece{p}), window)
		it := item{piece: &p, size: p.room()}
		if b.paper.cut == roll && it.size.X > b.paper.window().Width() {
			it.size, it.turned = p.roomOf(p.bounds.Height(), p.bounds.Width()), true
		}
		items = append(items, it)
	}
	slices.SortStableFunc(items[first:], func(a, b item) int { return cmp.Compare(b.size.Y, a.size.Y) })
	return items
}

// squareItem is the room for the check square of a page, wherever its corner falls
// on the grid.
func (b *book) squareItem() item {
	side := squareSize(b.set.Unit) + 2*clearing + squareGrid
	return item{panel: -1, size: plane.Point{X: side, Y: side}}
}

// layFloors lays everything on large pages.
func (b *book) layFloors(pieces []piece) ([]*floor, error) {
	window := b.paper.window()
	items := b.items(pieces)
	for _, it := range items {
		if it.size.X > window.Width() || it.size.Y > window.Height() {
			return nil, b.tooLargeFor(it)
		}
	}
	if b.paper.cut == roll {
		return b.fillRoll(items, window), nil
	}
	f := onOnePage(items, window)
	if f == nil {
		return nil, &Refusal{
			Cause: fmt.Sprintf("the pieces need a page of more than %s on a side, which is as much as a PDF can show", b.set.Unit.Print(math.Floor(longestSide))),
			Hint:  "print some of the pieces at a time, with --pieces, or choose a roll or pages",
		}
	}
	return []*floor{f}, nil
}

// tooLargeFor refuses what is larger than a page can be.
func (b *book) tooLargeFor(it item) error {
	if it.piece == nil {
		return &Refusal{
			Cause: fmt.Sprintf("%s is too narrow for the figures and the check square", b.paper.ShortTitle()),
			Hint:  "choose a wider one",
		}
	}
	return &Refusal{
		Cause: fmt.Sprintf("piece %q, %s by %s, does not fit on %s", it.piece.name,
			b.set.Unit.Print(it.piece.bounds.Width()), b.set.Unit.Print(it.piece.bounds.Height()), b.paper.ShortTitle()),
		Hint: "choose a wider roll, or pages that are joined, such as --paper letter; no page of a PDF can be longer than 200 in",
	}
}

// fillRoll lays the items on pages of the roll's width; a further page begins, with
// a check square, only where one would be longer than a page can be.
func (b *book) fillRoll(items []item, window plane.Box) []*floor {
	var floors []*floor
	for _, it := range items {
		if slices.ContainsFunc(floors, func(f *floor) bool { return f.lay(it) }) {
			continue
		}
		next := newFloor(window.Width(), window.Height())
		if len(floors) > 0 {
			next.lay(b.squareItem())
		}
		next.lay(it)
		floors = append(floors, next)
	}
	return floors
}

// onOnePage returns all items on one page whose width and height together are least;
// nil when no page is large enough.
func onOnePage(items []item, window plane.Box) *floor {
	widest, area := 0.0, 0.0
	for _, it := range items {
		widest = max(widest, it.size.X)
		area += (it.size.X + apart) * (it.size.Y + apart)
	}
	widths := max(2, min(mostWidths, wholeTrials/len(items)))
	most := min(window.Width(), max(widest, 2*math.Sqrt(area)))
	var best *floor
	least := math.Inf(1)
	for i := range widths + 1 {
		f := newFloor(widest+(most-widest)*float64(i)/float64(widths), window.Height())
		if slices.ContainsFunc(items, func(it item) bool { return !f.lay(it) }) {
			continue
		}
		if used := f.used(); used.Width()+used.Height() < least {
			best, least = f, used.Width()+used.Height()
		}
	}
	return best
}

// addFloor makes a filled page the next sheet.
func (b *book) addFloor(number int, f *floor) {
	used := f.used()
	width := used.Width()
	if b.paper.cut == roll {
		width = f.width
	}
	window := plane.Point{X: width, Y: used.Height()}
	paper := b.paper.around(window)
	down := plane.Point{Y: -used.Min.Y}
	corner := paper.window().Min
	var pieces []piece
	square := plane.Point{}
	for _, s := range f.spots {
		low := s.box.Min.Add(down)
		switch {
		case s.piece != nil:
			pieces = append(pieces, s.laid(low))
		case s.panel < 0:
			at := low.Add(plane.Point{X: clearing, Y: clearing}).Add(corner)
			square = plane.Point{X: snapUp(at.X), Y: snapUp(at.Y)}
		default:
			at := low.Add(corner).Sub(b.panelBox(s.panel).Min)
			b.panels = append(b.panels, panel{on: b.forms + number, at: plane.Point{X: snapUp(at.X), Y: snapUp(at.Y)}})
		}
	}
	sh := newSheet(pieces, grid{rows: 1, columns: 1, window: window, overlap: paper.Overlap}, []cell{{}})
	sh.paper = paper
	sh.squares = []plane.Point{square}
	for _, s := range f.spots {
		if s.piece == nil {
			box := s.box
			box.Min, box.Max = box.Min.Add(down), box.Max.Add(down)
			sh.field.take(upright(box))
		}
	}
	b.sheets = append(b.sheets, sh)
	b.first = append(b.first, number+1)
}

// laid returns the spot's piece as it lies with the lower left corner of its room
// at a place.
func (s spot) laid(low plane.Point) piece {
	p := *s.piece
	if s.turned {
		p = p.quarterTurned()
	}
	return p.moved(low.Add(plane.Point{X: spare, Y: spare + p.foot.Y}).Sub(p.bounds.Min))
}

// drawWhole draws the large pages, with the panels on them.
func (b *book) drawWhole(d Canvas) {
	for i := b.forms; i < len(b.sheets); i++ {
		s := &b.sheets[i]
		d.NewPage(s.paper.size())
		b.drawTile(d, i, 0, b.pageNumber(b.first[i]))
		for k, p := range b.panels {
			if p.on == i {
				d.Save()
				d.Shift(p.at)
				b.drawPanel(d, k)
				d.Restore()
			}
		}
	}
}

// drawPanel draws a panel in its frame.
func (b *book) drawPanel(d Canvas, i int) {
	d.Save()
	d.Pen(finePen())
	d.Box(b.panelBox(i))
	d.Stroke()
	d.Restore()
	switch figures := len(b.figures); {
	case i == 0:
		b.drawFront(d)
	case i <= figures:
		b.drawFigures(d, i-1, "")
	default:
		b.drawTile(d, i-1-figures, 0, "")
	}
}
