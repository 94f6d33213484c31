package length

import (
	"math"
	"strconv"
	"strings"
)

// Rules of this file: how finely a length was read off a ruler is told by how it is
// written, as far as that tells. "4" may have been read off any ruler: it counts as read
// to the usual step. Whoever reads more finely can say so: "4 0/32".

// finestInch and finestMetric bound how finely print on paper can be read, in mm, whatever
// is written: 1/100 in, or 0.1 mm (common practice).
const (
	finestInch   = 25.4 / 100
	finestMetric = 0.1
)

// ReadTo returns to how many mm a length was read that Parse understands in that unit: to
// the ruler's smallest step, or the half or the quarter of it, the coarsest of these that it
// is a whole number of; more finely where it is written in finer parts, as 32nds. What is no
// whole number of any of them was read to its last place: 3.94 in to 1/100 in.
func ReadTo(s string, bare Unit) float64 {
	unit, own := WrittenUnit(s)
	if !own {
		unit = bare
	}
	mm, err := Parse(s, unit)
	if err != nil {
		return unit.Ruler()
	}
	step := lastPlace(s) * unit.MM()
	for _, parts := range []float64{1, 2, 4} {
		ruled := unit.Ruler() / parts
		if math.Abs(math.Remainder(mm, ruled)) > Rounding {
			continue
		}
		if !strings.ContainsRune(spelledOut(s), '/') || step > ruled {
			step = ruled
		}
		break
	}
	return max(step, unit.Either(finestInch, finestMetric))
}

// lastPlace is what one of the last place of a number counts: 1/32 in "3 30/32", 0.01 in
// "3.94", 1 in "4".
func lastPlace(s string) float64 {
	number, _ := splitUnit(strings.TrimSpace(s))
	number = spelledOut(number)
	if _, under, ok := strings.Cut(number, "/"); ok {
		n, _ := strconv.Atoi(under) // Parse has seen that it is a number, and not 0
		return 1 / float64(max(n, 1))
	}
	_, decimals, _ := strings.Cut(number, ".")
	return math.Pow10(-len(decimals))
}
