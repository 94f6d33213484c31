package board

import (
	"tuckmark/marking/mark"
	"tuckmark/pdfout/ink"
)

// Rules of this file: views that are laid over each other are told apart by rhythm, in grey and by
// any eye, and by colour. The first is unbroken, and lies under the others. A rhythm is the same
// however wide its line is, and short enough that it is seen along a short edge. The colours are
// dark enough to be read on white (4.5 : 1), and one after the other they go from blue to red and
// back, which every eye tells apart.

// viewPens are the pens of views, in their order: a colour, and marks and gaps in mm.
var viewPens = [...]struct {
	colour ink.Colour
	dashes []float64
}{
	{ink.Colour{0.00, 0.36, 0.66}, nil},                         // blue, unbroken
	{ink.Colour{0.75, 0.25, 0.04}, []float64{7, 3}},             // vermilion, dashes
	{ink.Colour{0.10, 0.10, 0.10}, []float64{0, 2.6}},           // nearly black, dots
	{ink.Colour{0.72, 0.06, 0.52}, []float64{9, 2, 1.5, 2}},     // magenta, dash and dot
	{ink.Colour{0.00, 0.42, 0.32}, []float64{2.5, 2}},           // green, short dashes
	{ink.Colour{0.42, 0.32, 0.00}, []float64{9, 2, 2, 2, 2, 2}}, // ochre, a dash and two short ones
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

// ViewPen is the pen of a role in view i, counted from 0, which alone has the line.
func ViewPen(i int, role mark.Role) ink.Pen {
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
	return ink.DashedPen(wide, of.colour, of.dashes...)
}

// SharedPen is the pen of a role for lines that all views have.
func SharedPen(role mark.Role) ink.Pen {
	wide := sharedLine
	if role == mark.Cut {
		wide = sharedEdge
	}
	return pressedPen(role).In(wide, ink.Grey())
}
