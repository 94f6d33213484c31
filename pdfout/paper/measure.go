package paper

import (
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
)

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
// error is a *fault.Fault without a place.
func Measure(text string, bare length.Unit) (Measured, error) {
	unit, own := length.WrittenUnit(text)
	if !own {
		unit = bare
	}
	mm, err := length.Parse(text, unit)
	if err != nil {
		return Measured{}, err
	}
	m := Measured{Text: unit.AsWritten(mm), frame: FrameFor(unit)}
	m.Scale = mm / m.frame.Side
	if m.Scale >= leastPrinted && m.Scale <= mostPrinted {
		return m, nil
	}
	hint := fmt.Sprintf("measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; %q counts in %s", text, unit)
	return m, &fault.Fault{Cause: fmt.Sprintf("a side of %s is no printer's doing", m.Text), Hint: hint}
}
