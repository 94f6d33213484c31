package pdfout

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
)

// Rules of this file: whether a scale matters is told by the line that comes out
// most off, as it lies on its sheet: over the longest line |m/N - 1| of its length
// where both ways have one scale. A line that runs across has nothing of the scale
// down.

// Verdict is what a scale does to the lines of a set.
type Verdict struct {
	Printed paper.Scale // what the printer makes of a mm
	// Worst is the line that comes out most off; of lines that come out true, the
	// longest.
	Worst Line
	// Off is how much longer it comes out than it is, in mm; less than 0 where it
	// comes out shorter.
	Off float64
}

// Line is a line on the sheets.
type Line struct {
	Piece  string    // the name of its piece
	Name   string    // what stands beside it; may be ""
	Role   mark.Role // what it is for
	Length float64   // in mm
}

// Judge says what becomes of the lines of a set, drawn true on the paper, when they
// are printed at a scale. The error is that of Draw.
func Judge(set arrange.Set, on paper.Paper, printed paper.Scale) (Verdict, error) {
	on.Printed = paper.Scale{}
	b, err := plan(set, on)
	if err != nil {
		return Verdict{}, err
	}
	v := Verdict{Printed: printed.OrTrue()}
	var all []Verdict // of every line by itself
	most := 0.0
	for _, s := range b.all() {
		for _, p := range s.Pieces {
			for _, l := range p.Lines {
				drawn := l.Length()
				off := printedLength(l.Path(), v.Printed) - drawn
				most = math.Max(most, math.Abs(off))
				all = append(all, Verdict{v.Printed, Line{p.Name, l.Name, l.Role, drawn}, off})
			}
		}
	}
	for _, one := range all {
		if math.Abs(one.Off) >= most-sameOff && one.Worst.Length > v.Worst.Length {
			v = one
		}
	}
	return v, nil
}

// sameOff bounds how much less off than the worst a line may be, in mm, to be as bad
// through rounding alone: of such lines the longest is named.
const sameOff = 1e-6

// printedLength is how long a path comes out at a scale.
func printedLength(p plane.Path, s paper.Scale) float64 {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		step := p[i].Sub(p[i-1])
		sum += math.Hypot(step.X*s.Across, step.Y*s.Down)
	}
	return sum
}

// UsualWithin is how far the line that is most off may be off, in mm, for sheets to
// count as true: half of the smallest step of her ruler, which is as near as a line
// can be ruled. It is 1/32 in, or 0.5 mm.
func UsualWithin(unit length.Unit) float64 {
	if unit == length.Inch {
		return unit.MM() / 32
	}
	return 0.5
}

// True reports whether no line is off by more than within mm.
func (v Verdict) True(within float64) bool { return math.Abs(v.Off) <= within }

// Unseen is how far the worst line may be off, in mm, without the check square
// showing it to somebody who reads her ruler to half of its smallest step.
func (v Verdict) Unseen(unit length.Unit) float64 {
	return UsualWithin(unit) / paper.FrameFor(unit).Side * v.Worst.Length
}

// Side is what a side of the check square that is to be 4 in, or 100 mm, measures
// at a scale, in mm.
func Side(scale float64, unit length.Unit) float64 {
	return paper.FrameFor(unit).Side * scale
}
