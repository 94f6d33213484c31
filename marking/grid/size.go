package grid

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
)

// Rules of this file: a grid reaches as far as it is asked to, up to the next whole line.

// mostSize is the farthest that a grid reaches, in whole inches or tens of millimetres: some
// 3 m, more than any piece of a child's garment.
const mostSize = 120

// Size is how far a grid reaches across and up, in mm.
type Size struct{ Wide, High float64 }

// Usual is the size of a grid for which none is asked: a child's front, as pages that are
// joined two by three hold it, of letter paper as of A4.
func Usual(unit length.Unit) Size {
	return Size{unit.Either(14*25.4, 350), unit.Either(24*25.4, 600)}
}

// step is from one whole line to the next, in mm: in millimetres they are 10 apart.
func step(unit length.Unit) float64 { return unit.Either(25.4, 10) }

// Reach returns how far a grid reaches that is to reach some mm, in mm: a whole number of
// lines. The error is a *fault.Fault.
func Reach(mm float64, unit length.Unit) (float64, error) {
	most := unit.Either(mostSize, 3*100) * step(unit)
	switch {
	case !(mm > 0):
		return 0, &fault.Fault{Cause: fmt.Sprintf("a grid cannot reach %s", unit.AsWritten(mm)), Hint: "say how far it is to reach, such as " + unit.AsWritten(Usual(unit).Wide)}
	case mm > most+length.Rounding:
		return 0, &fault.Fault{
			Cause: fmt.Sprintf("a grid that reaches %s is larger than any piece", unit.AsWritten(mm)),
			Hint:  fmt.Sprintf("%s is the most; see whether the unit is the one meant", unit.AsWritten(most)),
		}
	}
	return math.Ceil(mm/step(unit)-length.Rounding) * step(unit), nil
}
