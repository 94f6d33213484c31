package report

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a picture is drawn in the room there is for it, and what has no room in it
// is handed back in words, to be set under it, on paper in bands and elsewhere in any other way.

// Drawing is a picture as it is drawn, and what is to be said under it.
type Drawing struct {
	*picture
	Unsaid []string // what is said of bands that have no room for it
	Signed []Signed // the names of shapes that have a sign instead
	Left   string   // which shapes are too small even for that, in a sentence; "" for none
	left   int      // how many those are
}

// DrawingOf draws a picture by itself in a room of some mm, in which something long lies on its
// side. It refuses what the fonts cannot print, and a picture that is none.
func DrawingOf(p mark.Picture, width, height float64) (Drawing, error) {
	if err := Check(&mark.Report{Sections: []mark.Section{{Picture: &p}}}); err != nil {
		return Drawing{}, err
	}
	return room{width, height, true}.draw(p), nil
}

// room is what there is for a picture.
type room struct {
	width, height float64 // in mm
	across        bool    // it is that of a whole page, across which something long lies on its side
}

// draw draws a picture.
func (r room) draw(p mark.Picture) Drawing {
	if len(p.Bands) == 0 {
		p.Bands = []mark.Band{{To: p.Height, Width: p.Width}}
	}
	c := r.scaleOf(p)
	d := Drawing{picture: &picture{frame: c.frame}}
	d.setBands(p, c)
	pieces := d.setShapes(p, c)
	f := d.newField(pieces)
	unsaid := d.sayOutside(p, c, f, r.width)
	var left []string
	d.Signed, left = d.nameShapes(pieces, f)
	for _, one := range d.sayInside(unsaid, f, pieces) {
		d.Unsaid = append(d.Unsaid, one.text)
	}
	if d.left = len(left); d.left > 0 {
		d.Left = "Too small to be marked here: " + wording.Listed(left, "and") + "."
	}
	return d
}

// Height is how high it is with what is said over its frame, in mm.
func (d *picture) Height() float64 { return d.over + d.frame.Height() }

// Draw draws it with its upper left corner at a place.
func (d Drawing) Draw(c ink.Canvas, at plane.Point) { d.picture.draw(c, at) }
