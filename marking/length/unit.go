package length

import (
	"math"
	"slices"
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
