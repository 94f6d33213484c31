package screen

import (
	"fmt"
	"math"
	"net/url"
	"strconv"

	"tuckmark/marking/length"
)

// Rules of this file: what is measured is given by how far it goes across and up, in mm, and
// said as it is read off a ruler of the file's unit.

// The names of what is measured, in the address.
const (
	acrossName = "across"
	upName     = "up"
)

// mostMeasured bounds what is measured in a picture, in mm: no cloth is a kilometre long.
const mostMeasured = 1e6

// measured is what was measured, in words, and whether an address says it.
func measured(address url.Values, unit length.Unit) (string, bool) {
	across, known := measure(address.Get(acrossName))
	up, both := measure(address.Get(upName))
	if !known || !both {
		return "", false
	}
	return inWords(across, up, unit), true
}

// inWords is how long it is, and of what is aslant how far across and how far up or down:
// "5 in: 3 in across, 4 in up". What a ruler does not show of either is not said.
func inWords(across, up float64, unit length.Unit) string {
	whole := unit.OnRuler(math.Hypot(across, up))
	if math.Min(math.Abs(across), math.Abs(up)) < unit.Ruler()/2 {
		return whole
	}
	way := "up"
	if up < 0 {
		way = "down"
	}
	return fmt.Sprintf("%s: %s across, %s %s", whole, unit.OnRuler(math.Abs(across)), unit.OnRuler(math.Abs(up)), way)
}

// measure reads a length in mm that goes one way or the other.
func measure(text string) (float64, bool) {
	mm, err := strconv.ParseFloat(text, 64)
	return mm, err == nil && math.Abs(mm) < mostMeasured
}
