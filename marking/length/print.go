package length

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Rules of this file: a fraction is reduced, and a sign stands before the whole number.
// What a ruler shows is printed to its smallest step; what somebody chose is printed as
// they may have written it, so that it is found again in the file.

// OnRuler gives a length in mm as it is read off a ruler in this unit: to the
// nearest 1/16 in as a reduced fraction, to the nearest 1 mm in centimetres
// and in millimetres. A length that is not 0 but would read as 0 is said to
// be less than the ruler's smallest step, whatever its sign. The length is
// finite.
func (u Unit) OnRuler(mm float64) string {
	steps := nearestStep(mm / u.Ruler())
	if steps == 0 && mm != 0 {
		return "less than " + u.printSteps(1)
	}
	return u.printSteps(steps)
}

// printSteps prints a whole number of the ruler's smallest steps.
func (u Unit) printSteps(steps float64) string {
	switch u {
	case Centimetre:
		return decimal(steps/10) + " cm"
	case Millimetre:
		return decimal(steps) + " mm"
	}
	return mixed(steps, sixteenths) + " in"
}

// AsWritten gives a length in mm that somebody chose, as they may have written it:
// exactly, where it is a plain fraction of an inch or a plain number of
// millimetres, else to three decimals. Sheets and messages that repeat a
// length use it, so that it is found again in the file and on the ruler.
func (u Unit) AsWritten(mm float64) string {
	inches, metric := inchFraction(mm), u.halfMillimetres(mm)
	switch {
	case inches != "" && (u == Inch || metric == ""):
		return inches
	case metric != "":
		return metric
	}
	return decimal(thousandth(mm/u.MM())) + " " + u.String()
}

// IsPlain reports whether somebody may have chosen a length of so many mm: a plain
// fraction of an inch, or a whole number of half millimetres.
func IsPlain(mm float64) bool {
	return inchFraction(mm) != "" || Millimetre.halfMillimetres(mm) != ""
}

// Rounding bounds how far two lengths may lie apart, in mm, and still be one that was
// worked out in two ways: no more than rounding.
const Rounding = 1e-6

// inchFraction prints a length that is a plain fraction of an inch, down to
// 1/64 in or in thirds; "" for any other.
func inchFraction(mm float64) string {
	for _, parts := range []int{64, 3} {
		part := Inch.MM() / float64(parts)
		if n := math.Round(mm / part); math.Abs(n*part-mm) <= Rounding {
			return mixed(n, parts) + " in"
		}
	}
	return ""
}

// halfMillimetres prints a length that is a whole number of half millimetres,
// in centimetres where those are the unit; "" for any other.
func (u Unit) halfMillimetres(mm float64) string {
	n := math.Round(mm * 2)
	if math.Abs(n/2-mm) > Rounding {
		return ""
	}
	if u == Centimetre {
		return decimal(n/20) + " cm"
	}
	return decimal(n/2) + " mm"
}

// sameFactor bounds how far a factor may lie off a plain fraction and still be that: no
// more than what was rounded when somebody worked it out to four decimals.
const sameFactor = 5e-5

// Factor prints how many times as long something is: "2", "1 1/3" or "1.53".
func Factor(v float64) string {
	for _, parts := range []int{8, 3} {
		if n := math.Round(v * float64(parts)); math.Abs(n/float64(parts)-v) < sameFactor {
			return mixed(n, parts)
		}
	}
	return decimal(Hundredth(v))
}

// mixed gives a whole number of halves, thirds, quarters and so on as a mixed number, its
// fraction reduced by twos: "2 1/8".
func mixed(n float64, parts int) string {
	if n < 0 {
		return "-" + mixed(-n, parts)
	}
	whole := decimal(math.Floor(n / float64(parts)))
	over, under := int(math.Mod(n, float64(parts))), parts
	for over%2 == 0 && under%2 == 0 {
		over, under = over/2, under/2
	}
	switch {
	case over == 0:
		return whole
	case whole == "0":
		return fmt.Sprintf("%d/%d", over, under)
	}
	return fmt.Sprintf("%s %d/%d", whole, over, under)
}

// decimal prints a number with as many decimals as it has; never a 0 with a sign.
func decimal(v float64) string { return strconv.FormatFloat(v+0, 'f', -1, 64) }

// thousandth rounds a number to three decimals.
func thousandth(v float64) float64 { return math.Round(v*1000) / 1000 }

// Hundredth rounds a number to two decimals, with no sign at 0.
func Hundredth(v float64) float64 { return math.Round(v*100)/100 + 0 }

// Bare takes the unit off a printed length: "2 1/8".
func Bare(printed string) string {
	if space := strings.LastIndexByte(printed, ' '); space >= 0 {
		if _, known := unitNamed(printed[space+1:]); known {
			return printed[:space]
		}
	}
	return printed
}
