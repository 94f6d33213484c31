package board

import (
	"tuckmark/marking/mark"
	"tuckmark/pdfout/ink"
)

// Rules of this file: views that are laid over each other are told apart by colour and by rhythm, so
// that they are so in grey and by any eye. The first is unbroken, and lies under the others. The
// colours are dark enough to be read on white (4.5 : 1), and no two are a red and a green of one
// lightness.

// viewPens are the pens of views, in their order: a colour, and the role whose rhythm it has.
var viewPens = [...]struct {
	colour ink.Colour
	like   mark.Role
}{
	{ink.Colour{0.00, 0.36, 0.66}, mark.Cut},        // blue, unbroken
	{ink.Colour{0.75, 0.25, 0.04}, mark.Stitch},     // vermilion, dashes
	{ink.Colour{0.45, 0.10, 0.50}, mark.Placement},  // purple, dots
	{ink.Colour{0.00, 0.42, 0.32}, mark.Centre},     // green, long and short
	{ink.Colour{0.42, 0.32, 0.00}, mark.TuckStitch}, // ochre, short dashes
	{ink.Colour{0.15, 0.15, 0.15}, mark.FoldEdge},   // nearly black, long dashes
}

// How wide the lines of views are, in mm: cut edges, others, and the stitching of tucks. More views
// than there are pens have the same ones, half as wide again. Lines that all views have are finer.
const (
	viewEdge      = 0.55
	viewLine      = 0.35
	viewStitching = 0.2
	nextRound     = 1.5
	sharedEdge    = 0.4
	sharedLine    = 0.25
)

// viewPen is the pen of a role in view i, which alone has the line.
func viewPen(i int, role mark.Role) ink.Pen {
	wide := viewLine
	switch role {
	case mark.Cut:
		wide = viewEdge
	case mark.TuckStitch:
		wide = viewStitching
	}
	for range i / len(viewPens) {
		wide *= nextRound
	}
	of := viewPens[i%len(viewPens)]
	return ink.PenOf(of.like).In(wide, of.colour)
}

// sharedPen is the pen of a role for lines that all views have.
func sharedPen(role mark.Role) ink.Pen {
	wide := sharedLine
	if role == mark.Cut {
		wide = sharedEdge
	}
	return pressedPen(role).In(wide, ink.Grey())
}
