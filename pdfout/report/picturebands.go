package report

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what is said of a band of a picture stands beside it where it is
// narrower than the frame, over it, in its free cloth, or under the picture.

// setBands sets the frames of the bands.
func (d *picture) setBands(p mark.Picture, c pictureScale) {
	for _, b := range p.Bands {
		box := c.box(b, p)
		if box.Empty() {
			continue
		}
		d.bands = append(d.bands, box)
		// Counter-clockwise from the end of the band's left side.
		corners := []plane.Point{{X: box.Min.X, Y: box.Max.Y}, box.Min, {X: box.Max.X, Y: box.Min.Y}, box.Max}
		if c.lying {
			corners = append(corners[3:], corners[:3]...)
		}
		if b.Width < p.Width {
			d.folds = append(d.folds, plane.Path{corners[1], corners[0]})
			d.edges = append(d.edges, plane.Path{corners[1], corners[2], corners[3], corners[0]})
		} else {
			d.edges = append(d.edges, plane.Path{corners[0], corners[1], corners[2], corners[3], corners[0]})
		}
	}
}

// saidOfBand is what is said of a band, and where that is drawn.
type saidOfBand struct {
	text string
	box  plane.Box // empty where nothing is drawn
}

// sayOutside sets what is said of the bands beside them, within some width, and over
// a picture that lies on its side. It returns what has no room there.
func (d *picture) sayOutside(p mark.Picture, c pictureScale, f *arrange.Field, width float64) []saidOfBand {
	var unsaid []saidOfBand
	for _, b := range p.Bands {
		if b.Text == "" {
			continue
		}
		one := saidOfBand{b.Text, c.box(b, p)}
		switch {
		case one.box.Empty():
		case !c.lying && d.sayBeside(one, f, width):
			continue
		case c.lying && (d.sayUnder(one, f) || d.sayOver(one, f)):
			continue
		}
		unsaid = append(unsaid, one)
	}
	return unsaid
}

// sayBeside sets what is said of a band to the right of its frame, at the middle of
// its height, and reports whether there is room.
func (d *picture) sayBeside(one saidOfBand, f *arrange.Field, width float64) bool {
	said, ok := bandText(one.text, width-one.box.Max.X-2*bandTextAway, one.box.Height()-2*bandTextOver)
	return ok && d.say(said, plane.Point{X: one.box.Max.X + bandTextAway, Y: one.box.Centre().Y + said.Height/2}, f)
}

// sayUnder sets what is said of a band that lies on its side under its frame, in
// the frame of the whole.
func (d *picture) sayUnder(one saidOfBand, f *arrange.Field) bool {
	said, ok := bandText(one.text, one.box.Width()-2*bandTextAway, one.box.Min.Y-d.frame.Min.Y-bandTextOver)
	return ok && d.say(said, one.box.Min.Add(plane.Point{X: bandTextAway, Y: -bandTextOver}), f)
}

// sayOver sets what is said of a band that lies on its side over the picture.
func (d *picture) sayOver(one saidOfBand, f *arrange.Field) bool {
	said, ok := bandText(one.text, one.box.Width()-2*bandTextAway, bandLines*ink.Caption().Step())
	if !ok || !d.say(said, plane.Point{X: one.box.Min.X + bandTextAway, Y: bandTextOver + said.Height}, f) {
		return false
	}
	d.over = max(d.over, bandTextOver+said.Height)
	return true
}

// sayInside sets what is said of bands where nothing lies on them, and returns what
// has no room there.
func (d *picture) sayInside(said []saidOfBand, f *arrange.Field, pieces []arrange.Piece) []saidOfBand {
	var unsaid []saidOfBand
	for _, one := range said {
		if one.box.Empty() || !d.sayAmong(one, f, pieces) {
			unsaid = append(unsaid, one)
		}
	}
	return unsaid
}

// sayAmong sets what is said of a band among the shapes on it, and reports whether
// there is room.
func (d *picture) sayAmong(one saidOfBand, f *arrange.Field, pieces []arrange.Piece) bool {
	corners := plane.Path{one.box.Min, {X: one.box.Max.X, Y: one.box.Min.Y}, one.box.Max, {X: one.box.Min.X, Y: one.box.Max.Y}, one.box.Min}
	band := arrange.Piece{Outline: plane.NewTree(corners), Bounds: one.box}
	free := func(b plane.Box) bool {
		return one.box.Holds(b.Min) && one.box.Holds(b.Max) && !inAny(pieces, b.Centre())
	}
	for _, limit := range []float64{bandMost, 0.6 * bandMost, 0.4 * bandMost} {
		said, ok := bandText(one.text, min(limit, one.box.Width()), one.box.Height())
		if !ok {
			continue
		}
		if found, ok := band.Roomiest(f, nameClosest, said, text.Across(), nameRoom, free); ok {
			return d.say(said, found.Middle.Add(plane.Point{X: -said.Width / 2, Y: said.Height / 2}), f)
		}
	}
	return false
}

// bandText sets what is said of a band in lines of limit mm, or of bandMost, and
// reports whether they are long enough and no higher than high.
func bandText(words string, limit, high float64) (arrange.Inscription, bool) {
	limit = min(limit, bandMost)
	if limit < bandLeast {
		return arrange.Inscription{}, false
	}
	said := arrange.InscriptionOf(words, ink.Caption(), limit)
	for i := range said.Labels {
		said.Labels[i].At.X = 0
	}
	return said, !said.Broken && said.Height <= high
}

// say sets a text with its upper left corner at a place, and reports whether that is
// free.
func (d *picture) say(said arrange.Inscription, at plane.Point, f *arrange.Field) bool {
	middle := at.Add(plane.Point{X: said.Width / 2, Y: -said.Height / 2})
	room := said.Around(middle, text.Across())
	if !f.Free(room) {
		return false
	}
	f.Take(room)
	d.labels = append(d.labels, said.Placed(middle, text.Across())...)
	return true
}

// inAny reports whether a place lies within one of some pieces.
func inAny(pieces []arrange.Piece, at plane.Point) bool {
	return slices.ContainsFunc(pieces, func(p arrange.Piece) bool { return p.Inside(at) })
}
