package start

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/length"
)

// Rules of this file: lengths are whole steps of a ruler that is easily read, eighths of an
// inch or half centimetres, and written as a maker writes them: bare where that is one
// number, in quotes where it is a fraction.

// inchParts are how many steps an inch has; a centimetre has cmParts.
const (
	inchParts = 8
	cmParts   = 2
)

// stepMM is one step in mm.
func stepMM(u length.Unit) float64 {
	if u == length.Inch {
		return u.MM() / inchParts
	}
	return length.Centimetre.MM() / cmParts
}

// steps is the whole number of steps next to so many mm.
func steps(u length.Unit, mm float64) int { return int(math.Round(mm / stepMM(u))) }

// either is a number of steps that is plain in inches, and another that is in centimetres.
func either(u length.Unit, inch, metric int) int {
	if u == length.Inch {
		return inch
	}
	return metric
}

// written is how a length of so many steps stands in a file.
func written(u length.Unit, n int) string {
	said := strings.TrimSuffix(u.AsWritten(float64(n)*stepMM(u)), " "+u.String())
	if strings.Contains(said, "/") {
		return `"` + said + `"`
	}
	return said
}

// point is a place of an outline: steps across, and steps up.
type point struct{ across, up int }

// mirrored are points turned over on a piece that is so wide.
func mirrored(points []point, wide int) []point {
	over := make([]point, len(points))
	for i, p := range points {
		over[i] = point{wide - p.across, p.up}
	}
	return over
}

// writtenPoints is how points stand in a file.
func writtenPoints(u length.Unit, points []point) string {
	pairs := make([]string, len(points))
	for i, p := range points {
		pairs[i] = fmt.Sprintf("[%s, %s]", written(u, p.across), written(u, p.up))
	}
	return "[" + strings.Join(pairs, ", ") + "]"
}
