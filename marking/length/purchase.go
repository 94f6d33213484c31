package length

import (
	"encoding/json"
)

// Rules of this file. Cloth and trimmings are bought to the next 1/8 yd, rounded up
// (Household Arithmetic, page 100; the title is from memory), or to the next 5 cm.

// Purchase is a length to buy.
type Purchase struct {
	mm   float64 // as it was worked out
	unit Unit
}

const (
	eighthsAYard = 8
	eighthYard   = 36 * 25.4 / eighthsAYard // mm
	fiveCentis   = 50.0                     // mm
	inMetres     = 1000.0                   // mm
)

// Buy returns what is bought of a length in mm.
func (u Unit) Buy(mm float64) Purchase { return Purchase{mm: mm, unit: u} }

// Buy returns what is bought of a length, which is no less than what is printed of it.
func (a Amount) Buy() Purchase { return a.Unit.Buy(a.Enough()) }

// String gives it as it is asked for in a shop: "2 3/8 yd", or "1.25 m".
func (p Purchase) String() string {
	if p.unit == Inch {
		return p.yards()
	}
	return p.metres()
}

// Both gives it as it is asked for where cloth is sold by the yard and by the metre.
func (p Purchase) Both() string {
	if p.unit == Inch {
		return p.yards() + " (" + p.metres() + ")"
	}
	return p.metres() + " (" + p.yards() + ")"
}

func (p Purchase) yards() string {
	return mixed(stepsUp(p.mm, eighthYard), eighthsAYard) + " yd"
}

func (p Purchase) metres() string {
	return decimal(upTo(fiveCentis, p.mm)/inMetres) + " m"
}

// upTo returns a length rounded up to whole steps, both in mm.
func upTo(step, mm float64) float64 { return stepsUp(mm, step) * step }

// MarshalJSON gives what is bought, in mm to a hundredth, and as it is asked for.
func (p Purchase) MarshalJSON() ([]byte, error) {
	return json.Marshal(asData{Hundredth(upTo(p.unit.Either(eighthYard, fiveCentis), p.mm)), p.String()})
}
