package paper

import (
	"fmt"
	"math"
	"strconv"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
)

// Rules of this file: a square drawn N long that measures m is printed at m/N. What
// is to come out true is drawn at N/m in that direction. Across and down are those
// of the page as it is read, and have each their own scale. A length read in inches
// is one of the 4 in square, a length in cm or mm one of the 100 mm square.

// Scale is what a printer makes of a mm across and down the page: 1 where it prints
// true. The zero Scale has not been measured and counts as true.
type Scale struct{ Across, Down float64 }

// The most a printed square may be off before it is rather a wrong unit, or another
// thing that was measured, than a printer's doing; as a scale.
const (
	leastPrinted = 2.0 / 3
	mostPrinted  = 1.5
)

// The sides of the two frames of the first page's check square, in mm.
const (
	LargeSquare = 101.6 // 4 in
	InnerSquare = 100.0
)

// LargeFrame is a frame of the first page's check square.
type LargeFrame struct {
	name string
	Side float64 // in mm
}

// FrameFor is the frame that is measured by who reads a ruler in the unit.
func FrameFor(unit length.Unit) LargeFrame {
	if unit == length.Inch {
		return LargeFrame{"4 in", LargeSquare}
	}
	return LargeFrame{"100 mm", InnerSquare}
}

// Measured is what somebody measured of one side of the first page's check square.
type Measured struct {
	Text  string  // as it was written
	Scale float64 // what the side is printed at
	frame LargeFrame
}

// Frame names the frame of the square that was measured: "4 in".
func (m Measured) Frame() string { return m.frame.name }

// Measure reads what was measured of one side of the check square, such as
// "3 15/16", "98.5 mm" or "9.8cm". A number without a unit counts in bare. The
// error is a *marking.Fault without a place.
func Measure(text string, bare length.Unit) (Measured, error) {
	unit, own := length.WrittenUnit(text)
	if !own {
		unit = bare
	}
	mm, err := length.Parse(text, unit)
	if err != nil {
		return Measured{}, err
	}
	m := Measured{Text: unit.Names(mm), frame: FrameFor(unit)}
	m.Scale = mm / m.frame.Side
	if m.Scale >= leastPrinted && m.Scale <= mostPrinted {
		return m, nil
	}
	hint := fmt.Sprintf("measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; %q counts in %s", text, unit)
	return m, &fault.Fault{Cause: fmt.Sprintf("a side of %s is no printer's doing", m.Text), Hint: hint}
}

// OrTrue returns the scale, true where it was not measured.
func (s Scale) OrTrue() Scale {
	if s == (Scale{}) {
		return Scale{1, 1}
	}
	return s
}

// tooLittle is how far a scale may lie from 1 and count as true: a twentieth of a
// percent, which is 1/100 in over 20 in, and reads as 100 %.
const tooLittle = 0.0005

// IsTrue reports whether nothing is to be corrected.
func (s Scale) IsTrue() bool {
	s = s.OrTrue()
	return math.Abs(s.Across-1) < tooLittle && math.Abs(s.Down-1) < tooLittle
}

// String says it in percent: "98.4 % across and 100 % down", "97 % both ways".
func (s Scale) String() string {
	s = s.OrTrue()
	across, down := Percent(s.Across), Percent(s.Down)
	if across == down {
		return across + " both ways"
	}
	return across + " across and " + down + " down"
}

// Percent gives a scale to a tenth of a percent: "98.4 %".
func Percent(scale float64) string {
	return strconv.FormatFloat(math.Round(scale*1000)/10, 'f', -1, 64) + " %"
}
