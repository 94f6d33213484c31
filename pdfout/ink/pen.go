package ink

import (
	"slices"
	"sync"

	"tuckmark/marking/mark"
)

// Rules of this file: one table gives every role its pen. There are three widths, each with
// one meaning, and dashed lines of one width differ in the length of their dashes or gaps,
// not in how many dots they have, so that a print in grey, made half as large, can be read.
// Colour only adds, and every colour is dark enough to print well in grey. What is
// measured to is thin, with a flag beside it (flag.go).

// The widths of lines, in mm, each about twice the next. They are of the series of ISO
// 128-2 (second hand, from a drafting course that states it).
const (
	// boldLine is where cloth ends: where it is cut, torn, or folded in two, and where an
	// edge is laid to.
	boldLine = 0.7
	// clothLine is what is sewn or folded on the cloth, and which way its threads run.
	clothLine = 0.35
	// FineLine is what is measured to, and what is on the paper alone.
	FineLine = 0.18
)

// The widths of ruled paper, in mm: each at least twice the next, and none that of a line that is on
// the cloth. The finest are as fine as printers draw, so that a mark in pencil on them is seen.
const (
	wholeRuled = 0.6
	halfRuled  = 0.3
	fineRuled  = 0.1
)

// rhythm is what is seen along a line.
type rhythm struct {
	// dashes is mark, gap, mark, gap, ... in mm; a mark of 0 is a round dot, as wide as
	// the line. A continuous line has none.
	dashes []float64
	// ring is the radius, in mm, of circles round the points of a path, which are
	// drawn in place of it; 0 for a line.
	ring float64
	// hatched says that what the path holds is hatched with the pen, which draws no line
	// along it.
	hatched bool
}

func continuous() rhythm { return rhythm{} }

func dashed(dashes ...float64) rhythm { return rhythm{dashes: dashes} }

func rings() rhythm { return rhythm{ring: 0.7} }

func hatching() rhythm { return rhythm{hatched: true} }

// Pen is how a line is drawn.
type Pen struct {
	rhythm rhythm
	Width  float64 // in mm
	Colour Colour
	ends   ends
	flag   flag
	letter string // stands in it
}

// pens is the table of pens.
func pens() map[mark.Role]Pen {
	ink := Black()
	blue := Colour{0.05, 0.16, 0.55}
	wine := Colour{0.55, 0.05, 0.20}
	green := Colour{0.02, 0.33, 0.18}
	brown := Colour{0.42, 0.22, 0.02}
	slate := Colour{0.18, 0.36, 0.55}
	line := func(width float64, r rhythm, c Colour) Pen { return Pen{rhythm: r, Width: width, Colour: c} }
	lettered := func(p Pen, letter string) Pen {
		p.letter = letter
		return p
	}
	flagged := func(f flag) Pen { return Pen{Width: FineLine, Colour: ink, flag: f} }
	return map[mark.Role]Pen{
		mark.Cut:       line(boldLine, continuous(), ink),
		mark.FoldEdge:  lettered(line(boldLine, dashed(12, 3), ink), "P"),
		mark.BlockEdge: line(boldLine, dashed(4, 1.5, 1.5, 1.5), ink), // as ragged as a torn one
		mark.Placement: line(boldLine, dashed(0, 2.4), green),

		mark.Stitch:     lettered(line(clothLine, dashed(3, 1.5), blue), "S"),
		mark.Fold:       lettered(line(clothLine, dashed(8, 1.5, 2, 1.5), brown), "F"),
		mark.TuckFold:   line(clothLine, dashed(16, 2), wine),
		mark.TuckStitch: line(clothLine, dashed(1.5, 1), wine), // as short as stitches
		mark.PleatFold:  line(clothLine, dashed(5, 1, 5, 4), green),
		mark.Arrow:      {rhythm: continuous(), Width: clothLine, Colour: green, ends: endHead},
		mark.Grain:      {rhythm: continuous(), Width: clothLine, Colour: ink, ends: bothHeads},

		mark.Centre:   lettered(line(FineLine, dashed(10, 1.5, 1, 1.5), ink), "C"),
		mark.TuckEnd:  line(FineLine, continuous(), wine),
		mark.Notch:    flagged(pennant),
		mark.Cross:    flagged(pennants),
		mark.Match:    flagged(bar),
		mark.Window:   line(FineLine, continuous(), brown),
		mark.Waste:    line(FineLine, hatching(), brown),
		mark.DrawHere: {rhythm: continuous(), Width: FineLine, Colour: ink, ends: endHead},
		mark.Laid:     line(clothLine, continuous(), ink),
		mark.Prick:    line(FineLine, rings(), ink),

		mark.RuledWhole: line(wholeRuled, continuous(), slate),
		mark.RuledHalf:  line(halfRuled, continuous(), slate),
		mark.RuledFine:  line(fineRuled, continuous(), slate),
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

// In returns a pen of the same rhythm in another width, in mm, and colour, without heads and
// flags. Dashes become shorter or longer as the line becomes thinner or wider.
func (p Pen) In(width float64, c Colour) Pen {
	other := Pen{rhythm: p.rhythm, Width: width, Colour: c}
	other.rhythm.dashes = slices.Clone(p.rhythm.dashes)
	for i := range other.rhythm.dashes {
		other.rhythm.dashes[i] *= width / p.Width
	}
	return other
}

// Ring is the radius, in mm, of circles round the points of a path, which are drawn in
// place of it; 0 for a line.
func (p Pen) Ring() float64 { return p.rhythm.ring }

// breadth is which of the three widths the pen has, or is nearest to, in a word.
func (p Pen) breadth() string {
	switch {
	case p.Width > (boldLine+clothLine)/2:
		return "bold"
	case p.Width > (clothLine+FineLine)/2:
		return "middle"
	}
	return "fine"
}

// Round reports whether the line needs round ends: dots are nothing else.
func (p Pen) Round() bool {
	for i := 0; i < len(p.rhythm.dashes); i += 2 {
		if p.rhythm.dashes[i] == 0 {
			return true
		}
	}
	return false
}

// Dashes returns the lengths in mm of mark, gap, mark, gap, ...; none for a continuous
// line.
func (p Pen) Dashes() []float64 { return p.rhythm.dashes }

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
