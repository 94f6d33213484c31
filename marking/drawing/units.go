package drawing

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: lengths of a drawing count in its own units, 96 to the inch, as CSS
// Values and Units 4 has it in section 6.2, "Absolute Lengths". A share of 100 is one of the
// view that it stands in.

// unitMM is how long one of the drawing's units is, in mm, where nothing else is said.
const unitMM = 25.4 / 96

// unitSizes are the units by their names, in the drawing's own.
var unitSizes = map[string]float64{
	"": 1, "px": 1, "in": 96, "cm": 96 / 2.54, "mm": 96 / 25.4, "q": 96 / 101.6, "pt": 96.0 / 72, "pc": 16,
}

// readLength reads a length in the drawing's own units. whole is what 100 % are; below 0
// where there is nothing to take a share of.
func readLength(text string, whole float64) (float64, error) {
	w := &written{text: strings.TrimSpace(text)}
	n, ok := w.number()
	if !ok {
		return 0, &fault.Fault{Cause: wording.Quoted(text) + " is no length", Hint: `a length is a number, with a unit or without: "210mm"`}
	}
	unit := strings.ToLower(strings.TrimSpace(w.text[w.at:]))
	if unit == "%" {
		if whole < 0 {
			return 0, &fault.Fault{Cause: wording.Quoted(text) + " is a share of nothing", Hint: "give the drawing a size: width and height in mm or in"}
		}
		return n / 100 * whole, nil
	}
	size, known := unitSizes[unit]
	if !known {
		return 0, &fault.Fault{Cause: fmt.Sprintf("%s has the unit %s, which is not known here", wording.Quoted(text), wording.Quoted(unit)), Hint: "the units are mm, cm, in, pt, pc, q and px"}
	}
	return n * size, nil
}
