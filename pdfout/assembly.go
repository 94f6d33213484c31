package pdfout

import (
	"maps"
	"math"
	"slices"
	"strconv"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: for every sheet of several pages there is a small picture of them as
// they lie together, with the pieces on them and the page numbers. Pages that
// are not printed are hatched. All pictures have the same scale, so that large
// pieces look large. A sheet too large for one picture is shown in parts. What is whole on
// its page has none: the page is told under the drawing of the piece.

const (
	pictureGap     = 7.0  // between pictures, in mm
	captionSpace   = 2.0  // between a picture and its name, in mm
	mostSheetLines = 2    // of the names under a picture
	narrowest      = 34.0 // a name gets at least this much room, in mm
	hatching       = 1.6  // between the lines of a hatching, in mm
	pictureEdge    = 0.2  // a picture shows this much beyond its pages, so that their frame is whole, in mm
	overflowColumn = 13.0 // least width of a page in pictures on pages of their own, in mm
)

// columnWidths are the widths of a page that pictures on the first page may
// have, in mm; the widest that fits is taken.
func columnWidths() []float64 {
	return []float64{80, 70, 60, 55, 50, 45, 40, 35, 30, 26, 22, 18, 15, 12, 10, 8}
}

// picture shows part of a sheet, mostly all of it.
type picture struct {
	sheet       *laidSheet
	first, last arrange.Cell // the part shown: upper left and lower right cell
	scale       float64      // mm in the picture to a mm of the sheet
	size        plane.Point  // of what is drawn, without its name, in mm
	corner      plane.Point  // upper left, on its page
}

// area is the part of the sheet the picture shows.
func (p picture) area() plane.Box {
	return p.sheet.Grid.CoreOf(p.first).Union(p.sheet.Grid.CoreOf(p.last))
}

// whole reports whether the picture shows all of its sheet.
func (p picture) whole() bool {
	g := p.sheet.Grid
	return p.first == arrange.Cell{} && p.last == arrange.Cell{Row: g.Rows - 1, Column: g.Columns - 1}
}

// shows reports whether the picture shows the page of a cell.
func (p picture) shows(c arrange.Cell) bool {
	return c.Row >= p.first.Row && c.Row <= p.last.Row && c.Column >= p.first.Column && c.Column <= p.last.Column
}

// width and height are the room the picture takes with its name.
func (p picture) width() float64 { return max(narrowest, p.size.X) }

func (p picture) height() float64 {
	return p.size.Y + captionSpace + mostSheetLines*ink.StrongText().Step() + ink.Text().Step()
}

// joinedSheets are the sheets of several pages.
func (b *book) joinedSheets() []*laidSheet {
	return slices.DeleteFunc(slices.Clone(b.sheets), func(s *laidSheet) bool { return len(s.Cells) == 1 })
}

// picturesIn are the pictures of all sheets in a room, as large as they fit there, and
// whether they do with pages no narrower than least mm.
func (b *book) picturesIn(room plane.Box, least float64) ([]picture, bool) {
	if len(b.joinedSheets()) == 0 {
		return nil, true
	}
	for _, width := range columnWidths() {
		if width < least || !b.areaFits(width, room) {
			continue
		}
		all := b.picturesOf(width, room)
		if pages := flow(all, room, room); len(pages) == 1 && len(all) == len(b.joinedSheets()) {
			return pages[0], true
		}
	}
	return nil, false
}

// areaFits reports whether pictures with pages of a width are not larger than a room, all
// together and each for itself.
func (b *book) areaFits(width float64, room plane.Box) bool {
	if room.Height() <= 0 {
		return false
	}
	area := 0.0
	for _, s := range b.joinedSheets() {
		pitch := s.Grid.Pitch()
		size := plane.Point{X: float64(s.Grid.Columns) * width, Y: float64(s.Grid.Rows) * width * pitch.Y / pitch.X}
		if size.X > room.Width() || size.Y > room.Height() {
			return false
		}
		area += size.X * size.Y
	}
	return area <= room.Width()*room.Height()
}

// layPictures finds the places of all pictures: in a room if they fit there, else going on
// on pages of their own. It returns the pictures of each page, that with the room first.
func (b *book) layPictures(room, further plane.Box) [][]picture {
	if all, ok := b.picturesIn(room, 0); ok {
		return [][]picture{all}
	}
	least := flow(b.picturesOf(overflowColumn, further), room, further)
	for _, width := range columnWidths() {
		if pages := flow(b.picturesOf(width, further), room, further); width > overflowColumn && len(pages) == len(least) {
			return pages
		}
	}
	return least
}

// picturesOf returns the pictures of all sheets of pieces with pages of a width, in
// parts no larger than the room.
func (b *book) picturesOf(width float64, room plane.Box) []picture {
	var all []picture
	for _, s := range b.joinedSheets() {
		g := s.Grid
		scale := width / g.Pitch().X
		caption := picture{}.height()
		columns := int((room.Width() - g.Overlap*scale) / width)
		rows := int((room.Height() - caption - g.Overlap*scale) / (g.Pitch().Y * scale))
		columns, rows = max(1, columns), max(1, rows)
		// The parts with a page that is printed, in reading order.
		parts := map[arrange.Cell]bool{}
		for _, c := range s.Cells {
			parts[arrange.Cell{Row: c.Row / rows, Column: c.Column / columns}] = true
		}
		for _, c := range arrange.InReadingOrder(parts) {
			p := picture{sheet: s, scale: scale, first: arrange.Cell{Row: c.Row * rows, Column: c.Column * columns}}
			p.last = arrange.Cell{Row: min(p.first.Row+rows, g.Rows) - 1, Column: min(p.first.Column+columns, g.Columns) - 1}
			area := p.area()
			p.size = plane.Point{X: area.Width() * scale, Y: area.Height() * scale}
			all = append(all, p)
		}
	}
	return all
}

// flow puts pictures in rows from left to right, top to bottom, into the first
// room, and then into as many further rooms as they need.
func flow(all []picture, first, further plane.Box) [][]picture {
	room := first
	pages := [][]picture{nil}
	at := plane.Point{X: room.Min.X, Y: room.Max.Y}
	tallest := 0.0
	for _, p := range all {
		if at.X > room.Min.X && at.X+p.width() > room.Max.X {
			at = plane.Point{X: room.Min.X, Y: at.Y - tallest - pictureGap}
			tallest = 0
		}
		if at.Y-p.height() < room.Min.Y || p.width() > room.Width() {
			room = further
			pages = append(pages, nil)
			at = plane.Point{X: room.Min.X, Y: room.Max.Y}
			tallest = 0
		}
		p.corner = at
		pages[len(pages)-1] = append(pages[len(pages)-1], p)
		at.X += p.width() + pictureGap
		tallest = max(tallest, p.height())
	}
	return pages
}

// draw draws a picture and what it is called.
func (p picture) draw(d ink.Canvas) {
	grid, area := p.sheet.Grid, p.area()
	d.Save()
	d.Place(p.corner.Sub(plane.Point{X: area.Min.X * p.scale, Y: area.Max.Y * p.scale}), p.scale)
	d.Clip(area.Grown(pictureEdge / p.scale))
	numbers := p.numbers()
	for row := p.first.Row; row <= p.last.Row; row++ {
		for column := p.first.Column; column <= p.last.Column; column++ {
			c := arrange.Cell{Row: row, Column: column}
			if numbers[c] == 0 {
				drawHatching(d, grid.CoreOf(c), p.scale)
			}
			d.Pen(ink.FinePen())
			d.Box(grid.CoreOf(c))
			d.Stroke()
		}
	}
	for _, piece := range p.sheet.Pieces {
		drawSmall(d, piece, area, p.scale)
	}
	for _, c := range p.sheet.Cells {
		if p.shows(c) {
			p.drawNumber(d, grid.CoreOf(c), numbers[c])
		}
	}
	d.Restore()
	d.Place(plane.Point{}, 1)
	p.drawName(d)
}

// drawHatching fills a box of the sheet with slanting lines.
func drawHatching(d ink.Canvas, b plane.Box, scale float64) {
	d.Pen(ink.FinePen())
	step := hatching / scale
	slant := b.Height()
	for x := b.Min.X - slant + step; x < b.Max.X; x += step {
		// From the lower side or the left one, up to the upper or the right.
		from := plane.Point{X: math.Max(x, b.Min.X), Y: b.Min.Y + math.Max(0, b.Min.X-x)}
		end := math.Min(x+slant, b.Max.X)
		d.Path(plane.Path{from, {X: end, Y: from.Y + end - from.X}})
	}
	d.Stroke()
}

// drawNumber writes a page number into the picture of a page, given its core: in the
// middle, or near it where that covers fewer lines. It stands on a ground of
// its own.
func (p picture) drawNumber(d ink.Canvas, core plane.Box, n int) {
	words, style := strconv.Itoa(n), ink.StrongText()
	half := plane.Point{X: style.Width(words)/2 + numberBeside, Y: style.Ems(numberHalf) + numberAbove}.Mul(1 / p.scale)
	middle := core.Centre()
	at, fewest := middle, -1
	for _, share := range []plane.Point{{}, {Y: 1}, {Y: -1}, {X: 1}, {X: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}} {
		near := middle.Add(plane.Point{X: share.X * core.Width() / 5, Y: share.Y * core.Height() / 5})
		lines := p.sheet.Field.Crossings(text.Level(near, half), mostCovered)
		if fewest < 0 || lines < fewest {
			at, fewest = near, lines
		}
		if lines == 0 {
			break
		}
	}
	d.Save()
	d.Ink(ink.White())
	d.Box(plane.Box{Min: at.Sub(half), Max: at.Add(half)})
	d.Fill()
	d.Restore()
	at.X -= style.Width(words) / 2 / p.scale
	at.Y -= style.Up() / 2 / p.scale
	ink.Write(d, at, style, words)
}

// A page number in a picture, and the ground it stands on.
const (
	numberBeside = 0.6  // beside the number, in mm
	numberAbove  = 0.3  // above and below it, in mm
	numberHalf   = 0.45 // half the height of a number, in sizes
)

// mostCovered bounds how many lines under a page number are counted.
const mostCovered = 20

// drawName writes the names of the pieces and the page numbers under the picture.
func (p picture) drawName(d ink.Canvas) {
	name, style := ink.StrongText(), ink.Text().In(ink.Grey())
	at := plane.Point{X: p.corner.X, Y: p.corner.Y - p.size.Y - captionSpace - name.Up()}
	limit := p.width()
	for _, words := range text.NameLines(p.sheet.Names(), name, limit, mostSheetLines) {
		ink.Write(d, at, name, words)
		at.Y -= name.Step()
	}
	pages := text.Numbers("page", slices.Sorted(maps.Values(p.numbers())))
	if !p.whole() {
		part := pages + ": " + text.FromTo("row", p.first.Row, p.last.Row) + ", " + text.FromTo("column", p.first.Column, p.last.Column)
		if style.Width(part) <= limit {
			pages = part
		}
	}
	ink.Write(d, at, style, text.Shorten(pages, style, limit))
}

// numbers are the numbers of the pages that the picture shows, by their cells.
func (p picture) numbers() map[arrange.Cell]int {
	numbers := map[arrange.Cell]int{}
	for k, c := range p.sheet.Cells {
		if p.shows(c) {
			numbers[c] = p.sheet.first + k
		}
	}
	return numbers
}
