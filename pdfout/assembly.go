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

// Rules of this file: for every sheet there is a small picture of its pages as
// they lie together, with the pieces on them and the page numbers. Pages that
// are not printed are hatched. All pictures have the same scale, so that large
// pieces look large. A sheet too large for one picture is shown in parts. A
// form has no picture: it is used before the pieces are.

const (
	pictureGap     = 7.0  // between pictures, in mm
	pictureName    = 8.0  // size of the name under a picture, in points
	pictureText    = 7.0  // size of the line that gives its pages
	captionSpace   = 2.0  // between a picture and its name, in mm
	narrowest      = 34.0 // a name gets at least this much room, in mm
	hatching       = 1.6  // between the lines of a hatching, in mm
	pictureApart   = 0.8  // lines in a piece closer together than this are thinned out, in mm
	pictureLooks   = 16   // each is compared with so many drawn before it
	mostNameLines  = 2
	pictureEdge    = 0.2  // a picture shows this much beyond its pages, so that their frame is whole, in mm
	overflowColumn = 13.0 // least width of a page in pictures on pages of their own, in mm
)

// columnWidths are the widths of a page that pictures on the first page may
// have, in mm; the widest that fits is taken.
func columnWidths() []float64 { return []float64{30, 26, 22, 18, 15, 12, 10, 8} }

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
	return p.size.Y + captionSpace + mostNameLines*ink.Strong(pictureName).Step() + ink.Plain(pictureText).Step()
}

// layPictures finds the places of all pictures: on the first page if they fit
// there, else going on on pages of their own. It returns the pictures of each
// page in front, the first page included.
func (b *book) layPictures(onCover plane.Box) [][]picture {
	further := b.leaf.UnderHeader()
	for _, width := range columnWidths() {
		all := b.picturesOf(width, onCover)
		if pages := flow(all, onCover, further); len(pages) == 1 && len(all) == len(b.sheets) {
			return pages
		}
	}
	least := flow(b.picturesOf(overflowColumn, further), onCover, further)
	for _, width := range columnWidths() {
		if pages := flow(b.picturesOf(width, further), onCover, further); width > overflowColumn && len(pages) == len(least) {
			return pages
		}
	}
	return least
}

// picturesOf returns the pictures of all sheets of pieces with pages of a width, in
// parts no larger than the room.
func (b *book) picturesOf(width float64, room plane.Box) []picture {
	var all []picture
	for _, s := range b.sheets {
		if len(s.Pieces) == 0 { // a page of panels
			continue
		}
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

// drawOverview draws a page of the pictures that have no room on the first.
func (b *book) drawOverview(d ink.Canvas, i int) {
	b.drawFrontHeader(d, picturesHeading+": "+b.fullTitle(), b.pageNumber(i+1))
	b.drawPictures(d, i)
}

// drawPictures draws the pictures of a page in front.
func (b *book) drawPictures(d ink.Canvas, i int) {
	for _, p := range b.pictures[i] {
		p.draw(d)
	}
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
	p.drawPieces(d)
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

// drawPieces draws the lines of the sheet's pieces as they look from afar:
// what bounds a piece stronger than what lies in it. Of lines that lie as close
// together as those of tucks, some stand for all.
func (p picture) drawPieces(d ink.Canvas) {
	for _, piece := range p.sheet.Pieces {
		var drawn []arrange.Line // of the lines in the piece, the last few
		for _, l := range piece.Lines {
			if !l.Bounds().Meets(p.area()) {
				continue
			}
			d.Pen(ink.OutlinePen())
			if !ink.Bounding(l.Role) {
				if slices.ContainsFunc(drawn, func(o arrange.Line) bool { return closeTogether(l, o, pictureApart/p.scale) }) {
					continue
				}
				drawn = append(drawn[max(0, len(drawn)-pictureLooks):], l)
				d.Pen(ink.InnerPen())
			}
			d.Path(ink.Coarse(l.Path(), ink.PictureDetail/p.scale))
			d.Stroke()
		}
	}
}

// closeTogether reports whether two lines run closer than least mm to each other, as far
// as their ends tell.
func closeTogether(l, o arrange.Line, least float64) bool {
	a, b := l.Path(), o.Path()
	return a[0].Distance(b[0]) < least && a[len(a)-1].Distance(b[len(b)-1]) < least
}

// drawNumber writes a page number into the picture of a page, given its core: in the
// middle, or near it where that covers fewer lines. It stands on a ground of
// its own.
func (p picture) drawNumber(d ink.Canvas, core plane.Box, n int) {
	size := min(mostNumber, max(leastNumber, p.sheet.Grid.Pitch().X*p.scale/3))
	words, style := strconv.Itoa(n), ink.Strong(size)
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
	leastNumber  = 5.0 // its least size, in points, and its largest
	mostNumber   = 8.0
	numberBeside = 0.6  // beside the number, in mm
	numberAbove  = 0.3  // above and below it, in mm
	numberHalf   = 0.45 // half the height of a number, in sizes
)

// mostCovered bounds how many lines under a page number are counted.
const mostCovered = 20

// drawName writes the names of the pieces and the page numbers under the picture.
func (p picture) drawName(d ink.Canvas) {
	name, style := ink.Strong(pictureName), ink.Plain(pictureText).In(ink.Grey())
	at := plane.Point{X: p.corner.X, Y: p.corner.Y - p.size.Y - captionSpace - name.Up()}
	limit := p.width()
	for _, words := range text.NameLines(p.sheet.Names(), name, limit, mostNameLines) {
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
