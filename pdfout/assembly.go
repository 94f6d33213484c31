package pdfout

import (
	"maps"
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
	pictureEdge    = 0.2  // a picture shows this much beyond its pages, so that their frame is whole, in mm
	overflowColumn = 13.0 // least width of a page in pictures on pages of their own, in mm
)

// picturesHeading stands over the pictures of the pages.
const picturesHeading = "How the pages lie"

// columnWidths are the widths of a page that pictures on one page may
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
func (b *Book) joinedSheets() []*laidSheet {
	return slices.DeleteFunc(slices.Clone(b.sheets), func(s *laidSheet) bool { return len(s.Cells) == 1 })
}

// pictureSection are the pictures of all sheets, in rows: as large as have room in a height,
// over the cautions or else without them; where they are too small for that, in parts.
func (b *Book) pictureSection(width, height float64) []entry {
	if !b.joined() {
		return nil
	}
	room := plane.Point{X: width, Y: height - underHeading(picturesHeading, width).Height}
	for _, most := range []float64{height - stacked(b.careSection(width, height)) - betweenEntries, height} {
		for _, page := range columnWidths() {
			if !b.areaFits(page, room) {
				continue
			}
			all := b.picturesOf(page, room)
			if rows := pictureRows(all, width); len(all) == len(b.joinedSheets()) && stacked(rows) <= most {
				return rows
			}
		}
	}
	return pictureRows(b.picturesOf(overflowColumn, room), width)
}

// careUnderPictures are the pictures of all sheets with the cautions under them.
func (b *Book) careUnderPictures(width, height float64) []entry {
	pictures, care := b.pictureSection(width, height), b.careSection(width, height)
	if len(pictures) > 0 && len(care) > 0 {
		gap := entry{Lines: text.Lines{Height: betweenEntries}}
		gap.under(care[0])
		care[0] = gap
	}
	return append(pictures, care...)
}

// careBesidePictures are the same with the cautions beside them, where both have room in a height
// so; else under them.
func (b *Book) careBesidePictures(width, height float64) []entry {
	for _, share := range []float64{1. / 2, 1. / 3, 1. / 4} {
		left := share * (width - text.Gutter)
		right := width - text.Gutter - left
		pictures, care := b.pictureSection(left, height), b.careSection(right, height)
		if high := max(stacked(pictures), stacked(care)); len(pictures) > 0 && len(care) > 0 && high <= height {
			both, words := entry{}, entry{}
			for _, one := range pictures {
				both.under(one)
			}
			for _, one := range care {
				words.under(one)
			}
			both.with(words, plane.Point{X: left + text.Gutter})
			both.Height = high
			return []entry{both}
		}
	}
	return b.careUnderPictures(width, height)
}

// areaFits reports whether pictures with pages of a width are not larger than a room, all
// together and each for itself.
func (b *Book) areaFits(width float64, room plane.Point) bool {
	if room.Y <= 0 {
		return false
	}
	area := 0.0
	for _, s := range b.joinedSheets() {
		pitch := s.Grid.Pitch()
		size := plane.Point{X: float64(s.Grid.Columns) * width, Y: float64(s.Grid.Rows) * width * pitch.Y / pitch.X}
		if size.X > room.X || size.Y > room.Y {
			return false
		}
		area += size.X * size.Y
	}
	return area <= room.X*room.Y
}

// picturesOf returns the pictures of all sheets of pieces with pages of a width, in
// parts no larger than the room.
func (b *Book) picturesOf(width float64, room plane.Point) []picture {
	var all []picture
	for _, s := range b.joinedSheets() {
		g := s.Grid
		scale := width / g.Pitch().X
		caption := picture{}.height()
		columns := int((room.X - g.Overlap*scale) / width)
		rows := int((room.Y - caption - g.Overlap*scale) / (g.Pitch().Y * scale))
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

// pictureRows puts pictures in rows of a width, from left to right, with a heading over the
// first.
func pictureRows(all []picture, width float64) []entry {
	var rows []entry
	x := width
	for _, p := range all {
		if x+p.width() > width {
			rows, x = append(rows, entry{}), 0
		}
		row := &rows[len(rows)-1]
		row.put(p, plane.Point{X: x})
		row.Height = max(row.Height, p.height())
		x += p.width() + pictureGap
	}
	heading := underHeading(picturesHeading, width)
	heading.under(rows[0])
	rows[0] = heading
	return apart(rows, pictureGap)
}

// draw draws a picture, with its upper left corner at a place, and what it is called.
func (p picture) draw(d ink.Canvas, corner plane.Point) {
	grid, area := p.sheet.Grid, p.area()
	d.Save()
	d.Place(corner.Sub(plane.Point{X: area.Min.X, Y: area.Max.Y}.Mul(p.scale)), p.scale)
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
	p.drawName(d, corner)
}

// drawHatching fills a box with the hatching of what is cut away, at so many mm to the mm.
func drawHatching(d ink.Canvas, b plane.Box, scale float64) {
	lines := ink.Hatching(plane.Box{Min: b.Min.Mul(scale), Max: b.Max.Mul(scale)}.Outline())
	d.Pen(ink.FinePen())
	for _, l := range lines {
		d.Path(plane.Path{l[0].Mul(1 / scale), l[1].Mul(1 / scale)})
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
func (p picture) drawName(d ink.Canvas, corner plane.Point) {
	name, style := ink.StrongText(), ink.Text().In(ink.Grey())
	at := plane.Point{X: corner.X, Y: corner.Y - p.size.Y - captionSpace - name.Up()}
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
