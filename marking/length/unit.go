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

// unitNamed returns the unit that String gives this name.
func unitNamed(name string) (Unit, bool) {
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

// Ruler is the smallest step that is read off a ruler in this unit, in mm: 1/16 in, or
// 1 mm also where the unit is the centimetre.
func (u Unit) Ruler() float64 {
	if u == Inch {
		return u.MM() / sixteenths
	}
	return 1
}

// Up returns a length, in mm, rounded up to whole steps of the ruler.
func (u Unit) Up(mm float64) float64 {
	return math.Ceil(mm/u.Ruler()-Rounding) * u.Ruler()
}

// Print gives a length in mm as it is read off a ruler in this unit: to the
// nearest 1/16 in as a reduced fraction, to the nearest 1 mm in centimetres
// and in millimetres. A length that is not 0 but would read as 0 is said to
// be less than the ruler's smallest step, whatever its sign. The length is
// finite.
func (u Unit) Print(mm float64) string {
	steps := math.Round(math.Abs(mm) / u.Ruler())
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
	inches, metric := inchFraction(mm), u.halfMillimetres(mm)
	switch {
	case inches != "" && (u == Inch || metric == ""):
		return inches
	case metric != "":
		return metric
	}
	return strconv.FormatFloat(math.Round(mm/u.MM()*1000)/1000, 'f', -1, 64) + " " + u.String()
}

// IsPlain reports whether somebody may have chosen a length of so many mm: a plain
// fraction of an inch, or a whole number of half millimetres.
func IsPlain(mm float64) bool {
	return inchFraction(mm) != "" || Millimetre.halfMillimetres(mm) != ""
}

// Rounding bounds how far two lengths may lie apart, in mm, and still be one that was
// worked out in two ways: no more than rounding.
const Rounding = 1e-6

// inchFraction prints a length that is a plain fraction of an inch, down to
// 1/64 in or in thirds; "" for any other.
func inchFraction(mm float64) string {
	for _, parts := range []int{1, 2, 4, 8, 16, 32, 64, 3} {
		n := math.Round(mm / Inch.MM() * float64(parts))
		if math.Abs(n*Inch.MM()/float64(parts)-mm) > Rounding {
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

// halfMillimetres prints a length that is a whole number of half millimetres,
// in centimetres where those are the unit; "" for any other.
func (u Unit) halfMillimetres(mm float64) string {
	n := math.Round(mm * 2)
	if math.Abs(n/2-mm) > Rounding {
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
