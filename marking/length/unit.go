package length

import (
	"fmt"
	"math"
	"slices"
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

var unitWords = [...]string{Inch: "in", Centimetre: "cm", Millimetre: "mm"}

// String gives the unit as a file writes it: in, cm or mm.
func (u Unit) String() string { return unitWords[u] }

// UnitNamed returns the unit that String gives this name.
func UnitNamed(name string) (Unit, bool) {
	i := slices.Index(unitWords[:], name)
	return Unit(max(0, i)), i >= 0
}

// Either returns a length that is one plain number in inches and another in
// millimetres, both in mm: the one of this unit's ruler.
func (u Unit) Either(inch, metric float64) float64 {
	if u == Inch {
		return inch
	}
	return metric
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

// Names gives a length in mm that somebody chose, as they may have written it:
// exactly, where it is a plain fraction of an inch or a plain number of
// millimetres, else to three decimals. Sheets and messages that repeat a
// length use it, so that it is found again in the file and on the ruler.
func (u Unit) Names(mm float64) string {
	readings := []func(float64) string{InchFraction, u.HalfMillimetres}
	if u != Inch {
		readings[0], readings[1] = readings[1], readings[0]
	}
	for _, reading := range readings {
		if s := reading(mm); s != "" {
			return s
		}
	}
	return strconv.FormatFloat(math.Round(mm/u.MM()*1000)/1000, 'f', -1, 64) + " " + u.String()
}

// SameLength bounds how far a length may lie off a plain number, in mm, and
// still be that number: no more than rounding.
const SameLength = 1e-6

// InchFraction prints a length that is a plain fraction of an inch, down to
// 1/64 in or in thirds; "" for any other.
func InchFraction(mm float64) string {
	for _, parts := range []int{1, 2, 4, 8, 16, 32, 64, 3} {
		n := math.Round(mm / Inch.MM() * float64(parts))
		if math.Abs(n*Inch.MM()/float64(parts)-mm) > SameLength {
			continue
		}
		whole, rest := int(n)/parts, int(n)%parts
		switch {
		case rest == 0:
			return fmt.Sprintf("%d in", whole)
		case whole == 0:
			return fmt.Sprintf("%d/%d in", rest, parts)
		}
		return fmt.Sprintf("%d %d/%d in", whole, rest, parts)
	}
	return ""
}

// HalfMillimetres prints a length that is a whole number of half millimetres,
// in centimetres where those are the unit; "" for any other.
func (u Unit) HalfMillimetres(mm float64) string {
	n := math.Round(mm * 2)
	if math.Abs(n/2-mm) > SameLength {
		return ""
	}
	if u == Centimetre {
		return strconv.FormatFloat(n/20, 'f', -1, 64) + " cm"
	}
	return strconv.FormatFloat(n/2, 'f', -1, 64) + " mm"
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
