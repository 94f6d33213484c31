package length

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: a length is written as it is read off a ruler, so a
// fraction is as good as a decimal; whatever could be read in two ways (a
// decimal comma, 2-1/8) is refused and the plain way of writing it shown.

// maxLength is the longest length a file may give, in mm: 100 m. It is more
// than any bolt of cloth holds; what is longer was given in a wrong unit.
const maxLength = 100_000

// mostWritten is how many letters a length may be written with. It bounds the time of looking at
// them.
const mostWritten = 1000

// refuseLong refuses what is written with more.
func refuseLong(s string) error {
	if n := utf8.RuneCountInString(s); n > mostWritten {
		return &fault.Fault{Cause: fmt.Sprintf("%s is written with %d letters; a length has at most %d", wording.Quoted(s), n, mostWritten), Hint: Hint}
	}
	return nil
}

var (
	wholeForm    = wording.FormOf(`^[0-9]+$`)
	decimalForm  = wording.FormOf(`^[0-9]*\.[0-9]+$`)
	fractionForm = wording.FormOf(`^([0-9]+)/([0-9]+)$`)
	commaForm    = wording.FormOf(`^[0-9]*,[0-9]+$`)
	hyphenForm   = wording.FormOf(`^[0-9]+ ?[-‐–—] ?[0-9]+/[0-9]+$`)
	hyphenInside = wording.FormOf(`([0-9])\s*[-‐–—]\s*([0-9¼-¾⅐-⅞])`)
)

// Parse reads a length such as "3/8", "2 1/8", "2⅛", "2.125", "54 mm"
// or `2"` and returns it in mm. Without a unit of its own the number counts in
// bare. A minus sign (- or −) is read; whether a negative length makes sense
// is for the caller to say, as it is for 0. The error is a *fault.Fault
// without a place.
func Parse(s string, bare Unit) (float64, error) {
	mm, err := parse(s, bare)
	if err != nil {
		if m, ok := FindMistyped(s); ok {
			return 0, m.fault(s)
		}
	}
	return mm, err
}

// parse reads a length in which no slip is looked for.
func parse(s string, bare Unit) (float64, error) {
	if err := refuseLong(s); err != nil {
		return 0, err
	}
	number, unit := splitUnit(strings.TrimSpace(s))
	own, known := unitSigned(unit)
	switch {
	case unit == "":
	case known:
		bare = own
	default:
		if number == "" {
			return 0, noLength(s)
		}
		if err := signFault(s, strings.TrimSpace(number), unit); err != nil {
			return 0, err
		}
		if meant, spelled := UnitSpelled(unit); spelled {
			return 0, &fault.Fault{
				Cause: fmt.Sprintf("%s has its unit written out", wording.Quoted(s)),
				Hint:  "write " + wording.Quoted(strings.TrimSpace(number)+" "+meant.String()),
			}
		}
		for _, large := range largerUnits {
			if slices.Contains(large.signs, strings.ToLower(strings.TrimSuffix(unit, "."))) {
				return 0, large.fault(s)
			}
		}
		return 0, &fault.Fault{
			Cause: fmt.Sprintf("%s has the unit %s, which is not known", wording.Quoted(s), wording.Quoted(unit)),
			Hint:  `the units are in, cm and mm; a number alone counts in the unit of the file`,
		}
	}
	negative := false
	for _, sign := range []string{"-", "−"} {
		if rest, ok := strings.CutPrefix(number, sign); ok {
			number, negative = rest, true
			break
		}
	}
	n, err := parseNumber(s, number)
	if err != nil {
		return 0, err
	}
	if negative {
		n = -n
	}
	return Bounded(wording.Quoted(s), n*bare.MM())
}

// inchMarks are signs that stand for inches on paper, beside those that are read.
var inchMarks = []string{"”", "“", "„", "''", "’’", "′′", "´´"}

// largeUnit is one in which cloth is bought, and no line of a garment is measured.
type largeUnit struct {
	signs []string
	name  string // as a length is given in them
	hint  string
}

var feet = largeUnit{[]string{"ft", "foot", "feet"}, "feet", "write it in inches, 12 to the foot"}

var largerUnits = []largeUnit{
	feet,
	{[]string{"yd", "yds", "yard", "yards"}, "yards", "write it in inches, 36 to the yard"},
	{[]string{"m", "metre", "metres", "meter", "meters"}, "metres", "write it in centimetres, 100 to the metre"},
}

// fault says that a length is given in it.
func (u largeUnit) fault(written string) error {
	return &fault.Fault{Cause: fmt.Sprintf("%s is given in %s", wording.Quoted(written), u.name), Hint: u.hint}
}

// signFault says what is wrong with a sign, behind a number, that is no unit; nil where
// nothing is known of it.
func signFault(written, number, sign string) error {
	first, _ := utf8.DecodeRuneInString(sign)
	switch {
	case slices.Contains(inchMarks, sign):
		return &fault.Fault{
			Cause: fmt.Sprintf("%s has an inch mark of another kind", wording.Quoted(written)),
			Hint:  "write " + wording.Quoted(number+" in"),
		}
	case strings.ContainsRune("'’′´", first):
		return feet.fault(written)
	case strings.ContainsRune("×*xX", first) && strings.ContainsAny(sign, "0123456789"):
		return &fault.Fault{
			Cause: fmt.Sprintf("%s is more than one length", wording.Quoted(written)),
			Hint:  "give one length; the two of a point stand in brackets, with a comma between: [2, 3]",
		}
	case unicode.Is(unicode.Cf, first):
		return &fault.Fault{
			Cause: fmt.Sprintf("%s has a sign behind %s that cannot be seen (U+%04X)", wording.Quoted(written), wording.Quoted(number), first),
			Hint:  "take it out, or type the length again",
		}
	}
	return nil
}

// WrittenUnit returns the unit that a length is written with, and whether it has
// one that is known.
func WrittenUnit(s string) (Unit, bool) {
	_, unit := splitUnit(strings.TrimSpace(s))
	return unitSigned(unit)
}

// unitSigned returns the unit that stands behind a number.
func unitSigned(sign string) (Unit, bool) {
	if sign == `"` || sign == "″" {
		return Inch, true
	}
	return unitNamed(sign)
}

// UnitSpelled returns the unit that a word stands for, whole or short: "inches", "cm".
func UnitSpelled(word string) (Unit, bool) {
	switch strings.ToLower(strings.TrimSuffix(word, ".")) {
	case "in", "inch", "inches":
		return Inch, true
	case "cm", "centimetre", "centimetres", "centimeter", "centimeters":
		return Centimetre, true
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return Millimetre, true
	}
	return 0, false
}

// Bounded returns a length in mm as it is: without a sign where it is 0. Refused is what is
// no number at all, and what is longer than 100 m either way; the message calls it as it
// was written.
func Bounded(written string, mm float64) (float64, error) {
	if math.IsNaN(mm) {
		return 0, &fault.Fault{Cause: written + " is not a length", Hint: Hint}
	}
	if math.Abs(mm) > maxLength {
		return 0, &fault.Fault{Cause: written + " is more than 100 m", Hint: "check the number and its unit"}
	}
	if mm == 0 {
		return 0, nil
	}
	return mm, nil
}

// splitUnit cuts a length where its number ends. What a number is written
// with is a digit, a sign, a stroke, a fraction of one letter or a space.
func splitUnit(s string) (number, unit string) {
	end := strings.IndexFunc(s, func(r rune) bool {
		return !strings.ContainsRune("0123456789.,/⁄-‐–—−", r) && !unicode.IsSpace(r) && vulgar(r) == ""
	})
	if end < 0 {
		return s, ""
	}
	return strings.TrimSpace(s[:end]), s[end:]
}

// parseNumber reads a number without sign and unit. The whole length as it
// was written is for the messages.
func parseNumber(written, number string) (float64, error) {
	number = spelledOut(number)
	if number == "" {
		return 0, noLength(written)
	}
	if commaForm.MatchString(number) {
		return 0, &fault.Fault{
			Cause: fmt.Sprintf("%s is written with a comma", wording.Quoted(written)),
			Hint:  "write a decimal with a point: " + wording.Quoted(strings.Replace(strings.TrimSpace(written), ",", ".", 1)),
		}
	}
	if hyphenForm.MatchString(number) {
		return 0, &fault.Fault{
			Cause: fmt.Sprintf("%s joins a whole number and a fraction with a hyphen", wording.Quoted(written)),
			Hint:  "write them with a space: " + wording.Quoted(WithoutHyphen(strings.TrimSpace(written))),
		}
	}
	whole, fraction, mixed := strings.Cut(number, " ")
	if mixed {
		if !wholeForm.MatchString(whole) || !fractionForm.MatchString(fraction) {
			return 0, noLength(written)
		}
		n, err := parseFraction(written, fraction)
		if err == nil && n >= 1 {
			err = &fault.Fault{
				Cause: fmt.Sprintf("%s has a fraction of 1 or more beside its whole number", wording.Quoted(written)),
				Hint:  `the fraction of a mixed number is less than 1, as in "2 1/8"`,
			}
		}
		if err != nil {
			return 0, err
		}
		return digits(whole) + n, nil
	}
	if wholeForm.MatchString(number) || decimalForm.MatchString(number) {
		return digits(number), nil
	}
	return parseFraction(written, number)
}

// ParseNumber reads a number without a sign and a unit, in any of the ways in which that
// of a length is written. The error is a *fault.Fault without a place.
func ParseNumber(s string) (float64, error) {
	if err := refuseLong(s); err != nil {
		return 0, err
	}
	return parseNumber(s, s)
}

// parseFraction reads "3/8".
func parseFraction(written, fraction string) (float64, error) {
	m := fractionForm().FindStringSubmatch(fraction)
	if m == nil {
		return 0, noLength(written)
	}
	over, under := digits(m[1]), digits(m[2])
	if under == 0 {
		return 0, &fault.Fault{
			Cause: fmt.Sprintf("%s has 0 under the stroke", wording.Quoted(written)),
			Hint:  `a fraction divides by the number under its stroke, as in "3/8"`,
		}
	}
	return over / under, nil
}

// digits returns the value of a number that has one of the forms above:
// infinity when it is too large to be held, which bounded refuses.
func digits(s string) float64 {
	n, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return math.Inf(1)
	}
	return n
}

// spelledOut writes every fraction of one letter as a fraction with a stroke,
// and every run of spaces as one.
func spelledOut(number string) string {
	var b strings.Builder
	for _, r := range number {
		switch {
		case r == '⁄':
			b.WriteByte('/')
		case vulgar(r) != "":
			b.WriteString(" " + vulgar(r) + " ")
		default:
			b.WriteRune(r)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// WithoutHyphen writes a space in place of the hyphen that joins a whole number and its
// fraction: 2-1/8 becomes 2 1/8.
func WithoutHyphen(s string) string { return hyphenInside().ReplaceAllString(s, "$1 $2") }

// vulgar returns what a fraction of one letter stands for, as the Unicode
// Character Database spells it out, "" for any other letter.
func vulgar(r rune) string {
	over, under, _ := strings.Cut(norm.NFKC.String(string(r)), "⁄")
	if over == "" || under == "" {
		return ""
	}
	return over + "/" + under
}

// Hint is what to advise somebody who wrote something that is no length.
const Hint = `a length is a whole number, a fraction or a decimal, such as "2", "3/8", "2 1/8" or "2.125"`

func noLength(written string) error {
	if strings.TrimSpace(written) == "" {
		return &fault.Fault{Cause: "the length is empty", Hint: Hint}
	}
	wide := func(c rune) bool { _, is := wording.Narrow(c); return is }
	if i := strings.IndexFunc(written, wide); i >= 0 {
		c, _ := utf8.DecodeRuneInString(written[i:])
		return &fault.Fault{Cause: wording.Quoted(written) + " is not a length: it has " + wording.StrangeLetter(c), Hint: wording.WideHint}
	}
	if i := strings.IndexFunc(written, wording.IsStrange); i > 0 {
		c, _ := utf8.DecodeRuneInString(written[i:])
		return &fault.Fault{
			Cause: fmt.Sprintf("%s is not a length: it has %s behind %s", quotedPlainly(written), wording.StrangeLetter(c), wording.Quoted(strings.TrimSpace(written[:i]))),
			Hint:  Hint,
		}
	}
	return &fault.Fault{Cause: wording.Quoted(written) + " is not a length", Hint: Hint}
}

// quotedPlainly repeats what was written as it looks on a screen.
func quotedPlainly(written string) string {
	return wording.Quoted(strings.Map(func(c rune) rune {
		switch {
		case !wording.IsStrange(c):
			return c
		case unicode.Is(unicode.Zs, c):
			return ' '
		}
		return -1
	}, written))
}
