package length

import (
	"math"
)

// Up returns a length rounded up to what can be read on a ruler in this unit.
func (u Unit) Up(mm float64) float64 {
	return math.Ceil(mm/u.Ruler()-SameLength) * u.Ruler()
}

// Ruler is the smallest step that Print tells, in mm.
func (u Unit) Ruler() float64 {
	if u == Inch {
		return u.MM() / sixteenths
	}
	return 1
}
