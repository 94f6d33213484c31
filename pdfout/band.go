package pdfout

import "tuckmark/marking/plane"

// Rules of this file: what is set in bands, one under the other, is broken only
// between two bands, and never where the upper one has to stay with the lower.
// Whoever sets bands sees to it that what has to stay together is no higher than a
// page. A band may bring others with it that come again where a column begins with
// it.

// figurePage is a page of figures.
type figurePage []placedBand

// band is a strip of the figures that is not broken, as it lies with its upper
// left corner at (0, 0).
type band struct {
	part
	above float64 // left free above it, but for the top of a column, in mm
	keep  bool    // it stays with the band after it
	// whole is how many bands, from this one on, are rather moved to the next
	// column than broken; 0 for a band that nothing begins with.
	whole int
	// again are the bands that come again where a column begins with this one.
	again []band
	// across are bands that stand across all columns at the foot of the page this
	// one falls on, or at the head of the next. This one then has nothing itself.
	across  []band
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
