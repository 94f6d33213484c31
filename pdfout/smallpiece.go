package pdfout

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
)

// Rules of this file: how a piece looks from afar, in the drawings of the first page and in
// the pictures of the pages: what bounds it stronger than what lies in it. Of lines that lie
// as close together as those of tucks, some stand for all.

const (
	pictureApart = 0.8 // lines in a piece closer together than this are thinned out, in mm
	pictureLooks = 16  // each is compared with so many drawn before it
)

// drawSmall draws the lines of a piece that reach into an area, at so many mm to the mm.
func drawSmall(d ink.Canvas, piece arrange.Piece, area plane.Box, scale float64) {
	var drawn []arrange.Line // of the lines in the piece, the last few
	for _, l := range piece.Lines {
		// Of an arrow only the shaft would be seen, of the finer lines of ruled paper a grey.
		if l.Role == mark.Arrow || l.Role == mark.RuledFine || l.Role == mark.RuledHalf || !l.Bounds().Meets(area) {
			continue
		}
		d.Pen(ink.OutlinePen())
		if !ink.Bounding(l.Role) {
			if slices.ContainsFunc(drawn, func(o arrange.Line) bool { return closeTogether(l, o, pictureApart/scale) }) {
				continue
			}
			drawn = append(drawn[max(0, len(drawn)-pictureLooks):], l)
			d.Pen(ink.InnerPen())
		}
		d.Path(ink.Coarse(l.Path(), ink.PictureDetail/scale))
		d.Stroke()
	}
}

// closeTogether reports whether two lines run closer than least mm to each other, as far
// as their ends tell.
func closeTogether(l, o arrange.Line, least float64) bool {
	a, b := l.Path(), o.Path()
	return a[0].Distance(b[0]) < least && a[len(a)-1].Distance(b[len(b)-1]) < least
}
