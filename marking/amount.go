package marking

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"
)

// Rules of this file. What a maker reads she also adds up, so whatever is printed
// is rounded before it is added: a total is the sum of the parts as they are
// printed. The length that was worked out is kept beside that; what stands in
// brackets, in the other system, is converted from it.
//
// A length of the file that was written in the other system is repeated as it was
// written, with its unit, also among numbers that have none.

// Amount is a length, with what a ruler shows of it: to 1/16 in or to 1 mm.
type Amount struct {
	MM float64 // as it was worked out

	unit  Unit
	steps float64 // a whole number of the ruler's smallest steps
	up    bool    // less would not do: it was rounded up
	named string  // a length that somebody chose, as it may have been written
}

// amount returns a length as it is read off a ruler, which shows the nearest step; never
// a 0 with a sign.
func (u Unit) amount(mm float64) Amount {
	return Amount{MM: mm, unit: u, steps: nearestStep(mm / u.ruler())}
}

// atLeast returns a length of which less would not do: the step at or above it.
func (u Unit) atLeast(mm float64) Amount {
	return Amount{MM: mm, unit: u, steps: stepsUp(mm / u.ruler()), up: true}
}

// chosen returns a length that stands in the file, which is printed as it was
// chosen.
func (u Unit) chosen(mm float64) Amount {
	a := u.amount(mm)
	a.named = u.Names(mm)
	return a
}

// sameStep bounds how far a length may lie above a step of the ruler, as a share of
// the step, and still be that step: a hair that is no cloth.
const sameStep = 0.01

// stepsUp never returns a 0 with a sign, which would be printed.
// nearestStep rounds to the nearest step, halves up. Equal lengths that were worked out in
// two ways differ by rounding, and must be read alike.
func nearestStep(steps float64) float64 { return math.Floor(steps+0.5+sameLength) + 0 }

func stepsUp(steps float64) float64 { return math.Ceil(steps-sameStep) + 0 }

// enough returns the length in mm, or what is printed of it where that is more: whoever
// cuts by the print has to find it.
func (a Amount) enough() float64 { return math.Max(a.MM, a.steps*a.unit.ruler()) }

// Plus returns the sum of two lengths, as it is worked out and as it is read.
func (a Amount) Plus(b Amount) Amount {
	return Amount{MM: a.MM + b.MM, unit: a.unit, steps: a.steps + b.steps, up: a.up || b.up}
}

// Less returns the difference of two lengths, as it is worked out and as it is read.
func (a Amount) Less(b Amount) Amount { return a.Plus(b.Times(-1)) }

// Times returns n times the length, as it is worked out and as it is read.
func (a Amount) Times(n int) Amount {
	by := float64(n)
	return Amount{MM: by * a.MM, unit: a.unit, steps: by*a.steps + 0, up: a.up}
}

// by returns the length times a factor, rounded up as it is read.
func (a Amount) by(factor float64) Amount {
	return Amount{MM: a.MM * factor, unit: a.unit, steps: stepsUp(a.steps * factor), up: true}
}

// quarter returns a quarter of a length, as it is read.
func (a Amount) quarter() Amount {
	return Amount{MM: a.MM / 4, unit: a.unit, steps: nearestStep(a.steps / 4)}
}

// sum returns the sum of lengths in a unit; nothing for none.
func (u Unit) sum(all ...Amount) Amount {
	total := Amount{unit: u}
	for _, a := range all {
		total = total.Plus(a)
	}
	return total
}

// magnitude returns the length without its sign. As worked out and as read it may have
// two: of lengths that are nearly equal, the longer may be read as the shorter.
func (a Amount) magnitude() Amount {
	return Amount{MM: math.Abs(a.MM), unit: a.unit, steps: math.Abs(a.steps), up: a.up, named: a.named}
}

// String gives the length as it is read in the file's unit: "2 1/8 in".
func (a Amount) String() string {
	if a.named != "" {
		return a.named
	}
	return read(a.unit, a.steps)
}

// foreign reports whether it was chosen in the other system, and is repeated so.
func (a Amount) foreign() bool {
	return a.named != "" && strings.HasSuffix(a.named, " in") != (a.unit == Inch)
}

// bare gives the length as it is read among others of the file's unit: "2 1/8". One
// that was chosen in the other system keeps its unit.
func (a Amount) bare() string {
	if a.foreign() {
		return a.named
	}
	return bare(a.String())
}

// read gives a whole number of a ruler's smallest steps; one below 0 has its sign.
func read(u Unit, steps float64) string {
	if steps < 0 {
		return "-" + u.printSteps(-steps)
	}
	return u.printSteps(steps)
}

// Both gives the length in the file's unit and, in brackets, in the other system:
// "2 1/8 in (54 mm)".
func (a Amount) Both() string { return a.inUnit() + " (" + a.other() + ")" }

// inUnit gives the length as it is read in the file's unit, also where it was chosen in
// the other system.
func (a Amount) inUnit() string {
	if a.foreign() {
		return read(a.unit, a.steps)
	}
	return a.String()
}

func (a Amount) other() string {
	if a.foreign() {
		return a.named
	}
	other := Inch
	if a.unit == Inch {
		other = Millimetre
	}
	if a.up {
		return read(other, stepsUp(a.MM/other.ruler()))
	}
	return read(other, nearestStep(a.MM/other.ruler()))
}

// MarshalJSON gives the length in mm, to a hundredth, and as it is printed.
func (a Amount) MarshalJSON() ([]byte, error) {
	return json.Marshal(struct {
		MM      float64 `json:"mm"`
		Printed string  `json:"printed"`
	}{hundredth(a.MM), a.String()})
}

// hundredth rounds a number to two decimals, with no sign at 0.
func hundredth(v float64) float64 {
	return math.Round(v*100)/100 + 0
}

// bare takes the unit off a printed length: "2 1/8".
func bare(printed string) string {
	number, unit, found := strings.Cut(printed, " ")
	for found {
		if _, known := unitNamed(unit); known {
			break
		}
		var more string
		more, unit, found = strings.Cut(unit, " ")
		number += " " + more
	}
	return number
}

// sameFactor bounds how far a factor may lie off a plain fraction and still be that: no
// more than what was rounded when somebody worked it out to four decimals.
const sameFactor = 5e-5

// factor prints how many times as long something is: "2", "1 1/3" or "1.53".
func factor(v float64) string {
	for _, parts := range []float64{1, 2, 3, 4, 8} {
		if n := math.Round(v * parts); math.Abs(n/parts-v) < sameFactor {
			return bare(inchFraction(n / parts * Inch.MM()))
		}
	}
	return strconv.FormatFloat(hundredth(v), 'f', -1, 64)
}

// hair is how far, in mm, a line may lie off a step of the ruler and still be read as
// lying on it: 1/128 in, half of what can be ruled (common practice).
const hair = 25.4 / 128

// off is how far a length lies beyond what a ruler shows of it.
func (a Amount) off() float64 { return a.MM - a.steps*a.unit.ruler() }

// isOff reports whether it lies off that by more than a hair.
func (a Amount) isOff() bool { return math.Abs(a.off()) >= hair }

// reading gives a place as it is found on a ruler: "2 3/8", or "2 3/8 + 1/64".
func (a Amount) reading() string {
	steps := a.steps
	if !a.isOff() {
		return bare(read(a.unit, steps))
	}
	off, fine, sign := a.off(), Inch.MM()/64, "+"
	if a.unit != Inch {
		fine = 0.1
	}
	if off < 0 {
		sign = "-"
	}
	rest := math.Round(math.Abs(off)/fine) * fine
	printed := strconv.FormatFloat(math.Round(rest/a.unit.MM()*1000)/1000, 'f', -1, 64)
	if a.unit == Inch {
		printed = bare(inchFraction(rest))
	}
	return bare(read(a.unit, steps)) + " " + sign + " " + printed
}

// asRead returns the place as it is found on a ruler, in print as well.
func (a Amount) asRead() Amount {
	if a.isOff() {
		a.named = a.reading() + " " + a.unit.String()
	}
	return a
}
