package paper

import (
	"math"
	"strconv"
)

// Rules of this file: a square drawn N long that measures m is printed at m/N. What
// is to come out true is drawn at N/m in that direction. Across and down are those
// of the page as it is read, and have each their own scale. A length read in inches
// is one of the 4 in square, a length in cm or mm one of the 100 mm square.

// Scale is what a printer makes of a mm across and down the page: 1 where it prints
// true. The zero Scale has not been measured and counts as true.
type Scale struct{ Across, Down float64 }

// OrTrue returns the scale, true where it was not measured.
func (s Scale) OrTrue() Scale {
	if s == (Scale{}) {
		return Scale{1, 1}
	}
	return s
}

// OtherWay is the scale of pages that lie where those that were measured stand.
func (s Scale) OtherWay() Scale { return Scale{Across: s.Down, Down: s.Across} }

// tooLittle is how far a scale may lie from 1 and count as true: a twentieth of a
// percent, which is 1/100 in over 20 in, and reads as 100 %.
const tooLittle = 0.0005

// IsTrue reports whether nothing is to be corrected.
func (s Scale) IsTrue() bool {
	s = s.OrTrue()
	return math.Abs(s.Across-1) < tooLittle && math.Abs(s.Down-1) < tooLittle
}

// String says it in percent: "98.4 % across and 100 % down", "97 % both ways".
func (s Scale) String() string {
	s = s.OrTrue()
	across, down := Percent(s.Across), Percent(s.Down)
	if across == down {
		return across + " both ways"
	}
	return across + " across and " + down + " down"
}

// Percent gives a scale to a tenth of a percent: "98.4 %".
func Percent(scale float64) string {
	return strconv.FormatFloat(math.Round(scale*1000)/10, 'f', -1, 64) + " %"
}
