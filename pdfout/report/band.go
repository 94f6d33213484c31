package report

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what is set in bands, one under the other, is broken only
// between two bands, and never where the upper one has to stay with the lower.
// Whoever sets bands sees to it that what has to stay together is no higher than a
// page. A band may bring others with it that come again where a column begins with
// it.

// band is a strip of the figures that is not broken, as it lies with its upper
// left corner at (0, 0).
type band struct {
	text.Lines
	above float64 // left free above it, but for the top of a column, in mm
	keep  bool    // it stays with the band after it
	// section is the heading that it stands under; "" for none.
	section string
	// again are the bands that come again where a column begins with this one.
	again []band
	// across are bands that stand across all columns at the foot of the page this
	// one falls on, or at the head of the next. This one then has nothing itself.
	across  []band
	totals  []plane.Path // lines over a total
	flags   []plane.Path // the marks of warnings, filled
	picture *picture
}

// placedBand is a band on its page.
type placedBand struct {
	*band
	at plane.Point // its upper left corner
}

// bandsOf sets lines of a text, each as a band, beginning some mm to the right.
func bandsOf(lines []string, s ink.Style, left float64) []band {
	var bands []band
	for _, line := range lines {
		var b band
		b.AddAt([]string{line}, s, left, s.Foot())
		bands = append(bands, b)
	}
	keepEnds(bands)
	return bands
}

// keepAll keeps bands together.
func keepAll(bands []band) {
	for i := range bands {
		bands[i].keep = i < len(bands)-1
	}
}

// keepEnds keeps the first two bands and the last two together.
func keepEnds(bands []band) {
	for i := range bands {
		bands[i].keep = i == 0 && len(bands) > 1 || i == len(bands)-2
	}
}

// headingOf sets a heading as one band that stays with what follows.
func headingOf(lines []string, s ink.Style) band {
	return band{Lines: text.LinesOf(lines, s), keep: true}
}

// totalPen draws the lines over totals.
func totalPen() ink.Pen { return ink.LinePen(ink.FineLine, ink.Black()) }

// Page is a page of figures as it is laid: its bands, without a header.
type Page []placedBand

// Tells reports whether something stands on the page that belongs under a heading.
func (p Page) Tells(section string) bool {
	return slices.ContainsFunc(p, func(b placedBand) bool { return b.section == section })
}

// Draw draws the page.
func (p Page) Draw(d ink.Canvas) {
	for _, b := range p {
		b.draw(d)
	}
}

func (b placedBand) draw(d ink.Canvas) {
	if b.picture != nil {
		b.picture.draw(d, b.at)
	}
	d.Place(b.at, 1)
	if len(b.totals) > 0 {
		ink.DrawLines(d, totalPen(), b.totals...)
	}
	if len(b.Rules) > 0 {
		ink.DrawLines(d, ink.WritingPen(), b.Rules...)
	}
	for _, flag := range b.flags {
		d.Save()
		d.Ink(ink.Black())
		d.Path(flag)
		d.Fill()
		d.Restore()
	}
	for _, l := range b.Labels {
		l.Draw(d)
	}
	d.Place(plane.Point{}, 1)
}
