package marking

import (
	"fmt"
	"math"
	"strconv"
)

// Unit is the unit a file is written in and its sheets are read in.
type Unit int

// The units. Inch is the zero value: a file that names none is in inches.
const (
	Inch Unit = iota
	Centimetre
	Millimetre
)

// MM returns how many millimetres the unit is. The inch is 25.4 mm exactly
// (international inch, 1959).
func (u Unit) MM() float64 {
	switch u {
	case Centimetre:
		return 10
	case Millimetre:
		return 1
	default:
		return 25.4
	}
}

// String gives the unit as a file writes it: in, cm or mm.
func (u Unit) String() string {
	switch u {
	case Centimetre:
		return "cm"
	case Millimetre:
		return "mm"
	default:
		return "in"
	}
}

// unitNamed returns the unit that String gives this name.
func unitNamed(name string) (Unit, bool) {
	for _, u := range []Unit{Inch, Centimetre, Millimetre} {
		if u.String() == name {
			return u, true
		}
	}
	return Inch, false
}

// sixteenths is how finely a ruler in inches is read: to 1/16 in.
const sixteenths = 16

// Print gives a length in mm as it is read off a ruler in this unit: to the
// nearest 1/16 in as a reduced fraction, to the nearest 1 mm in centimetres
// and in millimetres. A length that is not 0 but would read as 0 is said to
// be less than the ruler's smallest step, whatever its sign. The length is
// finite.
func (u Unit) Print(mm float64) string {
	steps := math.Abs(mm) // of 1 mm
	if u == Inch {
		steps = math.Abs(mm) / u.MM() * sixteenths
	}
	steps = math.Round(steps)
	if steps == 0 && mm != 0 {
		return "less than " + u.printSteps(1)
	}
	if mm < 0 {
		return "-" + u.printSteps(steps)
	}
	return u.printSteps(steps)
}

// printSteps prints a whole number of the ruler's smallest steps.
func (u Unit) printSteps(steps float64) string {
	switch u {
	case Centimetre:
		return strconv.FormatFloat(steps/10, 'f', -1, 64) + " cm"
	case Millimetre:
		return strconv.FormatFloat(steps, 'f', -1, 64) + " mm"
	}
	whole := strconv.FormatFloat(math.Floor(steps/sixteenths), 'f', -1, 64)
	num, den := int(math.Mod(steps, sixteenths)), sixteenths
	if num == 0 {
		return whole + " in"
	}
	for num%2 == 0 {
		num, den = num/2, den/2
	}
	if whole == "0" {
		return fmt.Sprintf("%d/%d in", num, den)
	}
	return fmt.Sprintf("%s %d/%d in", whole, num, den)
}
