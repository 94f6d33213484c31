package length

import (
	"math"
)

// Rules of this file: a place that lies on no step of the ruler is told by the nearest step
// and what is beyond it, so that it can be marked all the same.

// Hair is how far, in mm, a line may lie off a step of the ruler and still be read as
// lying on it: 1/128 in, half of what can be ruled (common practice).
const Hair = 25.4 / 128

// off is how far a length lies beyond what a ruler shows of it.
func (a Amount) off() float64 { return a.MM - a.Steps*a.Unit.Ruler() }

// IsOff reports whether it lies off that by more than a hair.
func (a Amount) IsOff() bool { return math.Abs(a.off()) >= Hair }

// Reading gives a place as it is found on a ruler, without its unit: "2 3/8", or
// "2 3/8 + 1/64" where it lies off, to 1/64 in or to 0.1 mm.
func (a Amount) Reading() string {
	step := Bare(a.Unit.printSteps(a.Steps))
	if !a.IsOff() {
		return step
	}
	sign, off := "+", a.off()
	if off < 0 {
		sign, off = "-", -off
	}
	if a.Unit == Inch {
		return step + " " + sign + " " + mixed(math.Round(off/Inch.MM()*64), 64)
	}
	return step + " " + sign + " " + decimal(thousandth(math.Round(off*10)/10/a.Unit.MM()))
}

// AsRead returns the place as it is found on a ruler, in print as well.
func (a Amount) AsRead() Amount {
	if a.IsOff() {
		a.named = a.Reading() + " " + a.Unit.String()
	}
	return a
}
