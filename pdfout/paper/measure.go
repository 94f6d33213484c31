package paper

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: a length read in inches is a side of the 4 in square, one in cm or
// mm a side of the 100 mm square, unless it is said what it is to be; what could be either is asked. What was read to
// some step of a ruler may be off by half of it.

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

// nearOuter bounds, in mm, how near to the side of the outer frame something read in mm may
// be to be that: half of the smallest step of a ruler.
const nearOuter = 0.5

// FrameFor is the frame of the first page's check square that is measured by who reads a
// ruler in the unit.
func FrameFor(unit length.Unit) CheckSquare {
	if unit == length.Inch {
		return CheckSquare{"4 in", LargeSquare}
	}
	return CheckSquare{"100 mm", InnerSquare}
}

// Measured is what somebody measured of a line that was printed.
type Measured struct {
	Text  string  // as it was written
	Whole string  // what it is to be: "4 in"
	Of    float64 // the same in mm
	Scale float64 // what it is printed at
	ReadTo
}

// ReadTo is a step of a ruler to which something was read.
type ReadTo struct {
	Step  float64 // in mm
	ruler length.Unit
}

// String names the step: "1/16 in".
func (r ReadTo) String() string { return r.ruler.AsWritten(r.Step) }

// Measure reads what was measured of one side of the check square, such as
// "3 15/16", "98.5 mm" or "9.8cm". A number without a unit counts in bare. The
// error is a *fault.Fault without a place.
func Measure(text string, bare length.Unit) (Measured, error) {
	m, unit, mm, err := readMeasured(text, bare)
	if err != nil {
		return m, err
	}
	if unit != length.Inch && math.Abs(mm-LargeSquare) <= nearOuter {
		return m, &fault.Fault{
			Cause: wording.Quoted(text) + " could be the outer frame, measured in mm, or the inner one, printed too large",
			Hint:  `say which was measured: --of "4 in" for the outer frame, --of "100 mm" for the inner one`,
		}
	}
	frame := FrameFor(unit)
	m.Whole, m.Of, m.Scale = frame.Name, frame.Side, mm/frame.Side
	if !m.plausible() {
		hint := "measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; with the rules of the first page say what they are to be, such as --of \"7 x 10\""
		if _, own := length.WrittenUnit(text); !own {
			hint += fmt.Sprintf("; %s is taken for %s", wording.Quoted(text), m.Text)
		}
		err = &fault.Fault{Cause: fmt.Sprintf("a side of %s is no printer's doing", m.Text), Hint: hint}
	}
	return m, err
}

// MeasureOf reads what was measured of a line that is to be so many mm, as Measure does.
func MeasureOf(text string, whole float64, bare length.Unit) (Measured, error) {
	m, unit, mm, err := readMeasured(text, bare)
	if err != nil {
		return m, err
	}
	m.Whole, m.Of, m.Scale = unit.AsWritten(whole), whole, mm/whole
	if !m.plausible() {
		err = &fault.Fault{
			Cause: fmt.Sprintf("%s of %s is no printer's doing", m.Text, m.Whole),
			Hint:  "--of says how long the line is to be that was measured",
		}
	}
	return m, err
}

// readMeasured reads a length that was measured, whatever of, and the unit it was read in.
func readMeasured(text string, bare length.Unit) (Measured, length.Unit, float64, error) {
	unit, own := length.WrittenUnit(text)
	if !own {
		unit = bare
	}
	mm, err := length.Parse(text, unit)
	ruler := unit
	if unit != length.Inch {
		ruler = length.Millimetre
	}
	written := unit.AsWritten(mm)
	if unit != length.Inch && strings.HasSuffix(written, " in") { // 101.6 mm was not read in inches
		written = strconv.FormatFloat(length.Hundredth(mm/unit.MM()), 'f', -1, 64) + " " + unit.String()
	}
	return Measured{Text: written, ReadTo: ReadTo{length.ReadTo(text, unit), ruler}}, unit, mm, err
}

func (m Measured) plausible() bool { return m.Scale >= leastPrinted && m.Scale <= mostPrinted }

// Doubt is how far the scale may lie from Scale, through the reading alone.
func (m Measured) Doubt() float64 { return m.Step / 2 / m.Of }

// Reading is what was measured across the page and down.
type Reading struct{ Across, Down Measured }

// ByOneRuler returns the reading where both were read off one ruler: to the finer step of
// the two, since "4" does not tell it. In inches and in mm they were read off two.
func (r Reading) ByOneRuler() Reading {
	if r.Across.ruler == r.Down.ruler {
		step := min(r.Across.Step, r.Down.Step)
		r.Across.Step, r.Down.Step = step, step
	}
	return r
}

// Scale is what the printer makes of a mm, as far as the reading tells.
func (r Reading) Scale() Scale { return Scale{r.Across.Scale, r.Down.Scale} }

// Doubt is how far the two may be off through the reading alone.
func (r Reading) Doubt() Scale { return Scale{r.Across.Doubt(), r.Down.Doubt()} }

// ReadTo is the coarser of the steps that both were read to.
func (r Reading) ReadTo() ReadTo {
	if r.Down.Step > r.Across.Step {
		return r.Down.ReadTo
	}
	return r.Across.ReadTo
}
