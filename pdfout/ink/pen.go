package ink

import (
	"sync"

	"tuckmark/marking/mark"
)

// Rules of this file: one table gives every role its pen. No two roles share
// both line type and width, so that a print in black and white can be read;
// colour only adds, and every colour is dark enough to print well in grey.

// lineType is one of the line types of ISO 128-2 (2020, table 1: the numbers and names
// second hand, from a drafting course that states them).
type lineType struct {
	number string // as the standard numbers it
	// pattern is mark, gap, mark, gap, ... in line widths; a mark of 0 is a
	// dot. A continuous line has none.
	pattern []float64
	// ring is the radius, in mm, of circles round the points of a path, which are
	// drawn in place of it; 0 for a line.
	ring float64
	// hatched says that what the path holds is hatched with the pen, which draws no line
	// along it.
	hatched bool
}

// The line types of the standard. That a gap is 3 line widths and a long dash 24 is
// second hand, from DIN EN ISO 128-20; that a dash is 12 and a short dash 6 is from
// memory of ISO 128-2. The standard's dot is half a line width long; here it is round
// and one line width across, so that a home printer shows it. Between the dots of a
// dotted line the gap is 2.5 line widths, which keeps them as far apart, from middle to
// middle, as the standard's.
func continuous() lineType { return lineType{number: "01"} }

func dashed() lineType { return lineType{number: "02", pattern: []float64{12, 3}} }

func longDashedDotted() lineType { return lineType{number: "04", pattern: []float64{24, 3, 0, 3}} }

func longDashedTwiceDotted() lineType {
	return lineType{number: "05", pattern: []float64{24, 3, 0, 3, 0, 3}}
}

func dotted() lineType { return lineType{number: "07", pattern: []float64{0, 2.5}} }

func longDashedShortDashed() lineType { return lineType{number: "08", pattern: []float64{24, 3, 6, 3}} }

func longDashedTwiceShort() lineType {
	return lineType{number: "09", pattern: []float64{24, 3, 6, 3, 6, 3}}
}

// rings are circles, for which the standard has no number.
func rings() lineType { return lineType{number: "rings", ring: 0.7} }

// hatching is for areas, for which the standard has no number among its lines.
func hatching() lineType { return lineType{number: "hatching", hatched: true} }

// heads says which ends of a line carry an arrow head.
type heads int

const (
	noHeads heads = iota
	endHead
	bothHeads
)

// Pen is how a line is drawn.
type Pen struct {
	kind   lineType
	Width  float64 // in mm
	Colour Colour
	heads  heads
}

// pens is the table of pens. The widths are of the standard's series (ISO 128-2,
// second hand as above): 0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1 mm.
func pens() map[mark.Role]Pen {
	ink := Black()
	blue := Colour{0.05, 0.16, 0.55}
	wine := Colour{0.55, 0.05, 0.20}
	green := Colour{0.02, 0.33, 0.18}
	brown := Colour{0.42, 0.22, 0.02}
	return map[mark.Role]Pen{
		mark.Cut:        {continuous(), 0.5, ink, noHeads},
		mark.FoldEdge:   {longDashedDotted(), 0.5, ink, noHeads},
		mark.Stitch:     {dashed(), 0.35, blue, noHeads},
		mark.Fold:       {longDashedShortDashed(), 0.25, brown, noHeads},
		mark.Centre:     {longDashedDotted(), 0.18, ink, noHeads},
		mark.TuckFold:   {longDashedTwiceDotted(), 0.25, wine, noHeads},
		mark.TuckStitch: {dashed(), 0.18, wine, noHeads},
		mark.TuckEnd:    {continuous(), 0.18, wine, noHeads},
		mark.PleatFold:  {longDashedTwiceDotted(), 0.5, green, noHeads},
		mark.Placement:  {dotted(), 0.5, green, noHeads},
		mark.Arrow:      {continuous(), 0.25, green, endHead},
		mark.Notch:      {continuous(), 0.35, ink, noHeads},
		// Twice as wide as the centre line: on a page in the middle of a
		// long grain line no head tells the two apart.
		mark.Grain: {longDashedDotted(), 0.35, ink, bothHeads},
		// As wide as the other edges, and as ragged as a torn one.
		mark.BlockEdge: {longDashedTwiceShort(), 0.5, ink, noHeads},
		// Short, and laid on the thin centre line: only its width shows it.
		mark.Cross: {continuous(), 0.7, ink, noHeads},
		// Short as well, and at an edge: wider than that.
		mark.Match: {continuous(), 1, ink, noHeads},
		// Cut along, so as fine as a line can be.
		mark.Window: {continuous(), 0.13, brown, noHeads},
		// Under what is written or cut, so as light as it can be.
		mark.Waste: {hatching(), 0.18, brown, noHeads},
		mark.Prick: {rings(), 0.18, ink, noHeads},
	}
}

// knownPens is the table, made once.
var knownPens = sync.OnceValue(pens)

// PenOf returns the pen of a role.
func PenOf(role mark.Role) Pen {
	if p, known := knownPens()[role]; known {
		return p
	}
	return strangePen()
}

// strangePen draws a role that the table lacks, so that nobody can overlook
// it: wide, red and of no type that another role has.
func strangePen() Pen { return LinePen(1, Colour{0.8, 0, 0}) }

// In returns a pen of the same line type in another width, in mm, and colour, without
// arrow heads.
func (p Pen) In(width float64, c Colour) Pen { return Pen{kind: p.kind, Width: width, Colour: c} }

// Ring is the radius, in mm, of circles round the points of a path, which are drawn in
// place of it; 0 for a line.
func (p Pen) Ring() float64 { return p.kind.ring }

// Round reports whether the line needs round ends: dots are nothing else.
func (p Pen) Round() bool {
	for i := 0; i < len(p.kind.pattern); i += 2 {
		if p.kind.pattern[i] == 0 {
			return true
		}
	}
	return false
}

// Dashes returns the lengths in mm of mark, gap, mark, gap, ...; none for a
// continuous line. Round ends make every mark one line width longer, which is
// taken off here, so that what is seen has the standard's proportions.
func (p Pen) Dashes() []float64 {
	var lengths []float64
	for i, n := range p.kind.pattern {
		if p.Round() {
			if i%2 == 1 {
				n++
			} else if n > 0 {
				n--
			}
		}
		lengths = append(lengths, n*p.Width)
	}
	return lengths
}

// period is the length in mm after which the dashes repeat; 0 for a
// continuous line.
func (p Pen) period() float64 {
	sum := 0.0
	for _, d := range p.Dashes() {
		sum += d
	}
	return sum
}

// Bounding reports whether a line of the role bounds the piece, so that what is
// written along it belongs on its left, where the piece is.
func Bounding(role mark.Role) bool {
	return role == mark.Cut || role == mark.FoldEdge || role == mark.BlockEdge
}
