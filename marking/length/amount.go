package length

import (
	"encoding/json"
	"math"
	"strings"
)

// Rules of this file. What a maker reads she also adds up, so whatever is printed
// is rounded before it is added: a total is the sum of the parts as they are
// printed. The length that was worked out is kept beside that; what stands in
// brackets, in the other system, is the step nearest to it, also of a length that is rounded
// up in the file's unit: so one length has the same words in brackets wherever it stands, and
// what a maker chose has there the nearest that her ruler shows. By how much one length is more than
// another is no total: it is what has to be cut off or eased in, and rounded once.
//
// A length of the file that was written in the other system is repeated as it was
// written, with its unit, also among numbers that have none.

// Amount is a length, with what a ruler shows of it: to 1/16 in or to 1 mm.
type Amount struct {
	MM    float64 // as it was worked out
	Unit  Unit    // of the ruler
	Steps float64 // what the ruler shows: a whole number of its smallest steps
	named string  // a length that somebody chose, as it may have been written
}

// Amount returns a length as it is read off a ruler, which shows the nearest step; never
// a 0 with a sign.
func (u Unit) Amount(mm float64) Amount {
	return Amount{MM: mm, Unit: u, Steps: nearestStep(mm / u.Ruler())}
}

// AtLeast returns a length of which less would not do: the step at or above it.
func (u Unit) AtLeast(mm float64) Amount {
	return Amount{MM: mm, Unit: u, Steps: stepsUp(mm, u.Ruler())}
}

// Chosen returns a length that stands in the file, which is printed as it was
// chosen.
func (u Unit) Chosen(mm float64) Amount {
	a := u.Amount(mm)
	a.named = u.AsWritten(mm)
	return a
}

// noCloth bounds how far a length may lie above a step, in mm, and still be that step: too little
// to be cloth. It is the same for every step, so that no less is bought than is said to be needed.
const noCloth = 0.01

// nearestStep rounds to the nearest step, halves away from 0, and never to a 0 with a sign, which
// would be printed. Equal lengths that were worked out in two ways differ by rounding,
// and must be read alike.
func nearestStep(steps float64) float64 {
	return math.Copysign(math.Floor(math.Abs(steps)+0.5+Rounding), steps) + 0
}

// stepsUp returns how many steps a length comes to, rounded up, both in mm; never a 0 with a sign.
func stepsUp(mm, step float64) float64 { return math.Ceil((mm-noCloth)/step) + 0 }

// Enough returns the length in mm, or what is printed of it where that is more: whoever
// cuts by the print has to find it.
func (a Amount) Enough() float64 { return max(a.MM, a.Steps*a.Unit.Ruler()) }

// Plus returns the sum of two lengths, as it is worked out and as it is read.
func (a Amount) Plus(b Amount) Amount {
	return Amount{MM: a.MM + b.MM, Unit: a.Unit, Steps: a.Steps + b.Steps}
}

// Less returns the difference of two lengths, as it is worked out and as it is read.
func (a Amount) Less(b Amount) Amount { return a.Plus(b.Times(-1)) }

// Beyond returns by how much the length is more than another: the nearest step to what was
// worked out, which may be one or more off the difference of the two as they are read.
func (a Amount) Beyond(b Amount) Amount { return a.Unit.Amount(a.MM - b.MM) }

// Times returns n times the length, as it is worked out and as it is read.
func (a Amount) Times(n int) Amount {
	by := float64(n)
	return Amount{MM: by * a.MM, Unit: a.Unit, Steps: by*a.Steps + 0}
}

// By returns the length times a factor, rounded up as it is read.
func (a Amount) By(factor float64) Amount {
	return Amount{MM: a.MM * factor, Unit: a.Unit, Steps: stepsUp(a.Steps*factor*a.Unit.Ruler(), a.Unit.Ruler())}
}

// Quarter returns a quarter of a length, as it is read.
func (a Amount) Quarter() Amount {
	return Amount{MM: a.MM / 4, Unit: a.Unit, Steps: nearestStep(a.Steps / 4)}
}

// Sum returns the sum of lengths in a unit; nothing for none.
func (u Unit) Sum(all ...Amount) Amount {
	total := Amount{Unit: u}
	for _, a := range all {
		total = total.Plus(a)
	}
	return total
}

// Magnitude returns the length without its sign.
func (a Amount) Magnitude() Amount {
	return Amount{MM: math.Abs(a.MM), Unit: a.Unit, Steps: math.Abs(a.Steps), named: a.named}
}

// String gives the length as it is read in the file's unit: "2 1/8 in".
func (a Amount) String() string {
	if a.named != "" {
		return a.named
	}
	return a.Unit.printSteps(a.Steps)
}

// Foreign reports whether it was chosen in the other system, and is repeated so.
func (a Amount) Foreign() bool {
	return a.named != "" && strings.HasSuffix(a.named, " in") != (a.Unit == Inch)
}

// Bare gives the length as it is read among others of the file's unit: "2 1/8". One
// that was chosen in the other system keeps its unit.
func (a Amount) Bare() string {
	if a.Foreign() {
		return a.named
	}
	return Bare(a.String())
}

// Both gives the length in the file's unit and, in brackets, in the other system:
// "2 1/8 in (54 mm)".
func (a Amount) Both() string { return a.InUnit() + " (" + a.Other() + ")" }

// InUnit gives the length as it is read in the file's unit, also where it was chosen in
// the other system.
func (a Amount) InUnit() string {
	if a.Foreign() {
		return a.Unit.printSteps(a.Steps)
	}
	return a.String()
}

// Other gives the length in the other system, the nearest step to what was worked out: in
// inches, or in millimetres where the file is in inches. One that was chosen in that is repeated.
func (a Amount) Other() string {
	if a.Foreign() {
		return a.named
	}
	other := Inch
	if a.Unit == Inch {
		other = Millimetre
	}
	return other.Amount(a.MM).String()
}

// MarshalJSON gives the length in mm, to a hundredth, and as it is printed.
func (a Amount) MarshalJSON() ([]byte, error) {
	return json.Marshal(asData{Hundredth(a.MM), a.String()})
}

// asData is a length as scripts read it.
type asData struct {
	MM      float64 `json:"mm"`
	Printed string  `json:"printed"`
}
