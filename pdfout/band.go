package pdfout

import "tuckmark/marking/plane"

// Rules of this file: what is set in bands, one under the other, is broken into
// pages only between two bands, and never where the upper one has to stay with the
// lower. Whoever sets bands sees to it that what has to stay together is no higher
// than a page. A band may bring others with it that come again where a page begins
// with it.

// figurePage is a page of figures.
type figurePage []placedBand

// band is a strip of the figures that is not broken, as it lies with its upper
// left corner at (0, 0).
type band struct {
	part
	above float64 // left free above it, but for the top of a page, in mm
	keep  bool    // it stays with the band after it
	// again are the bands that come again where a page begins with this one.
	again   []band
	totals  []plane.Path // lines over a total
	flags   []plane.Path // the marks of warnings, filled
	picture *clothPicture
}

// placedBand is a band on its page.
type placedBand struct {
	band
	at plane.Point // its upper left corner
}

// write sets a text in the band with its base line at a place.
func (b *band) write(text string, f *face, size float64, ink colour, at plane.Point) {
	if text != "" {
		b.labels = append(b.labels, label{text: text, face: f, size: size, colour: ink, at: at, u: across()})
	}
}

// bandsOf sets lines of a text, each as a band.
func bandsOf(lines []string, f *face, size, indent float64, ink colour) []band {
	var bands []band
	for _, line := range lines {
		var b band
		b.height = leading * size * point
		b.write(line, f, size, ink, plane.Point{X: indent, Y: -b.height + footOfLine(size)})
		bands = append(bands, b)
	}
	keepEnds(bands)
	return bands
}

// keepEnds keeps the first two bands and the last two together.
func keepEnds(bands []band) {
	for i := range bands {
		bands[i].keep = i == 0 && len(bands) > 1 || i == len(bands)-2
	}
}

// headingOf sets a heading as one band that stays with what follows.
func headingOf(lines []string, f *face, size float64, ink colour) band {
	b := band{keep: true}
	for _, line := range lines {
		b.height += leading * size * point
		b.write(line, f, size, ink, plane.Point{Y: -b.height + footOfLine(size)})
	}
	return b
}

// pagesOfBands breaks bands into pages of a room, in time proportional to their
// number.
func pagesOfBands(bands []band, room plane.Box) []figurePage {
	var pages []figurePage
	y := room.Min.Y
	put := func(b band) {
		page := &pages[len(pages)-1]
		if len(*page) > 0 {
			y -= b.above
		}
		*page = append(*page, placedBand{b, plane.Point{X: room.Min.X, Y: y}})
		y -= b.height
	}
	for len(bands) > 0 {
		n, height := 1, bands[0].above+bands[0].height
		for ; n < len(bands) && bands[n-1].keep; n++ {
			height += bands[n].above + bands[n].height
		}
		if len(pages) == 0 || y-height < room.Min.Y {
			pages = append(pages, nil)
			y = room.Max.Y
			for _, b := range bands[0].again {
				put(b)
			}
		}
		for _, b := range bands[:n] {
			put(b)
		}
		bands = bands[n:]
	}
	return pages
}

// totalPen draws the lines over totals.
func totalPen() pen { return pen{continuous(), fineLine, black(), noHeads} }

func (b placedBand) draw(d *document) {
	if b.picture != nil {
		b.picture.draw(d, b.at)
	}
	d.place(b.at, 1)
	for _, set := range []struct {
		pen   pen
		lines []plane.Path
	}{{totalPen(), b.totals}, {writingPen(), b.rules}} {
		if len(set.lines) == 0 {
			continue
		}
		d.save()
		d.pen(set.pen)
		for _, line := range set.lines {
			d.path(line)
			d.stroke()
		}
		d.restore()
	}
	for _, flag := range b.flags {
		d.save()
		d.fillColour(black())
		d.path(flag)
		d.fill()
		d.restore()
	}
	for _, l := range b.labels {
		l.draw(d)
	}
	d.place(plane.Point{}, 1)
}
