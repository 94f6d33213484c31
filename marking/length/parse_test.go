package length

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestParse(t *testing.T) {
	const inch = 25.4 // mm exactly (international inch, 1959)
	tests := []struct {
		name string
		in   string
		bare Unit
		mm   float64
	}{
		{"whole number", "44", Inch, 44 * inch},
		{"whole number of centimetres", "44", Centimetre, 440},
		{"nothing", "0", Inch, 0},
		{"zeros in front", "007", Millimetre, 7},
		{"fraction", "3/8", Inch, 3 * inch / 8},
		{"fraction over one", "9/8", Inch, 9 * inch / 8},
		{"sixteenth", "1/16", Inch, inch / 16},
		{"mixed number", "2 1/8", Inch, 17 * inch / 8},
		{"spaces all around", "  2   1/8  ", Inch, 17 * inch / 8},
		{"no-break space", "2\u00a01/8", Inch, 17 * inch / 8},
		{"fraction slash", "2 1⁄8", Inch, 17 * inch / 8},
		{"fraction of one letter", "⅛", Inch, inch / 8},
		{"mixed number with it", "2⅛", Inch, 17 * inch / 8},
		{"mixed number with it and a space", "2 ⅛", Inch, 17 * inch / 8},
		{"fraction of a centimetre", "½ cm", Inch, 5},
		{"decimal", "2.125", Inch, 2.125 * inch},
		{"decimal that begins with its point", ".5", Inch, inch / 2},
		{"unit of its own", "54 mm", Inch, 54},
		{"unit without a space", "5.4cm", Inch, 54},
		{"inches in a file of millimetres", "2 1/8 in", Millimetre, 17 * inch / 8},
		{"inch mark", `2 1/8"`, Millimetre, 17 * inch / 8},
		{"double prime", "2⅛″", Millimetre, 17 * inch / 8},
		{"negative", "-1/2", Inch, -inch / 2},
		{"negative mixed number", "-2 1/8", Inch, -17 * inch / 8},
		{"minus sign", "−1/2", Inch, -inch / 2},
		{"nothing with a sign", "-0", Inch, 0},
		{"the longest", "100000 mm", Inch, 100_000},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			mm, err := Parse(tt.in, tt.bare)
			require.NoError(t, err)
			assert.InDelta(t, tt.mm, mm, 1e-9)
			assert.False(t, mm == 0 && math.Signbit(mm), "0 has a sign")
		})
	}
}

// The values of the fractions of one letter are those of the Unicode Character
// Database (numeric value and compatibility decomposition).
func TestParseKnowsEveryFractionOfOneLetter(t *testing.T) {
	values := map[rune]float64{
		0xbc: 1. / 4, 0xbd: 1. / 2, 0xbe: 3. / 4,
		0x2150: 1. / 7, 0x2151: 1. / 9, 0x2152: 1. / 10, 0x2153: 1. / 3, 0x2154: 2. / 3,
		0x2155: 1. / 5, 0x2156: 2. / 5, 0x2157: 3. / 5, 0x2158: 4. / 5, 0x2159: 1. / 6,
		0x215a: 5. / 6, 0x215b: 1. / 8, 0x215c: 3. / 8, 0x215d: 5. / 8, 0x215e: 7. / 8,
		0x2189: 0, // three parts of nothing
	}
	for r, want := range values {
		mm, err := Parse("3"+string(r), Millimetre)
		require.NoError(t, err, "%c", r)
		assert.InDelta(t, 3+want, mm, 1e-12, "%c", r)
	}
	for r := rune(0xa0); r < 0x2200; r++ {
		_, known := values[r]
		assert.Equal(t, known, vulgar(r) != "", "%c (U+%04X)", r, r)
	}
}

func TestParseSaysWhatIsWrong(t *testing.T) {
	const general = "\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\""
	tests := []struct{ name, in, want string }{
		{"empty", "", "the length is empty" + general},
		{"blank", "  ", "the length is empty" + general},
		{"a word", "two", `"two" is not a length` + general},
		{"only a unit", "in", `"in" is not a length` + general},
		{"only a sign", "-", `"-" is not a length` + general},
		{"two signs", "--2", `"--2" is not a length` + general},
		{"a plus", "+2", `"+2" is not a length` + general},
		{"no number", "NaN", `"NaN" is not a length` + general},
		{"infinity", "inf", `"inf" is not a length` + general},
		{"two fractions", "⅛⅛", `"⅛⅛" is not a length` + general},
		{"half a fraction", "3/", `"3/" is not a length` + general},
		{"fraction of a decimal", "1.5/2", `"1.5/2" is not a length` + general},
		{"decimal and fraction", "2.5 1/8", `"2.5 1/8" is not a length` + general},
		{"point without digits", "2.", `"2." is not a length` + general},
		{"three numbers", "1 2 3", `"1 2 3" is not a length` + general},
		{"spaces in a fraction", "3 / 8", `"3 / 8" is not a length` + general},
		{"decimal comma", "1,5", `"1,5" is written with a comma` + "\n" + `hint: write a decimal with a point: "1.5"`},
		{"decimal comma with a unit", "1,5 cm", `"1,5 cm" is written with a comma` + "\n" + `hint: write a decimal with a point: "1.5 cm"`},
		{"hyphen", "2-1/8", `"2-1/8" joins a whole number and a fraction with a hyphen` + "\n" + `hint: write them with a space: "2 1/8"`},
		{"hyphen and fraction of one letter", "2-⅛ in", `"2-⅛ in" joins a whole number and a fraction with a hyphen` + "\n" + `hint: write them with a space: "2 ⅛ in"`},
		{"hyphen below zero", "-2–1/8", `"-2–1/8" joins a whole number and a fraction with a hyphen` + "\n" + `hint: write them with a space: "-2 1/8"`},
		{"a dash", "2—1/8", `"2—1/8" joins a whole number and a fraction with a hyphen` + "\n" + `hint: write them with a space: "2 1/8"`},
		{"nothing under the stroke", "3/0", `"3/0" has 0 under the stroke` + "\n" + `hint: a fraction divides by the number under its stroke, as in "3/8"`},
		{"fraction over one in a mixed number", "2 9/8", `"2 9/8" has a fraction of 1 or more beside its whole number` + "\n" + `hint: the fraction of a mixed number is less than 1, as in "2 1/8"`},
		{"yards", "5 yd", `"5 yd" is given in yards` + "\n" + `hint: write it in inches, 36 to the yard`},
		{"metres", "101 m", `"101 m" is given in metres` + "\n" + `hint: write it in centimetres, 100 to the metre`},
		{"feet in letters", "2 Ft.", `"2 Ft." is given in feet` + "\n" + `hint: write it in inches, 12 to the foot`},
		{"unknown unit", "5 ells", `"5 ells" has the unit "ells", which is not known` + "\n" + `hint: the units are in, cm and mm; a number alone counts in the unit of the file`},
		{"no-break space in a fraction", "3\u00a0/4", `"3 /4" is not a length: it has a no-break space (U+00A0) behind "3"` + "\n" + `hint: ` + Hint},
		{"narrow space in a fraction", "1 3/\u20094", `"1 3/ 4" is not a length: it has a space of another kind (U+2009) behind "1 3/"` + "\n" + `hint: ` + Hint},
		{"unit spelled out", "5 inches", `"5 inches" has its unit written out` + "\n" + `hint: write "5 in"`},
		{"feet", "3'", `"3'" is given in feet` + "\n" + `hint: write it in inches, 12 to the foot`},
		{"feet and inches", "1' 3\"", `"1' 3\"" is given in feet` + "\n" + `hint: write it in inches, 12 to the foot`},
		{"feet with a prime", "1′ 3″", `"1′ 3″" is given in feet` + "\n" + `hint: write it in inches, 12 to the foot`},
		{"curly inch mark", "2 1/8”", `"2 1/8”" has an inch mark of another kind` + "\n" + `hint: write "2 1/8 in"`},
		{"inch mark of two strokes", "2 1/8 ''", `"2 1/8 ''" has an inch mark of another kind` + "\n" + `hint: write "2 1/8 in"`},
		{"inch mark of two primes", "⅛′′", `"⅛′′" has an inch mark of another kind` + "\n" + `hint: write "⅛ in"`},
		{"two lengths", "2 × 3", `"2 × 3" is more than one length` + "\n" + `hint: give one length; the two of a point stand in brackets, with a comma between: [2, 3]`},
		{"two lengths, with an x", "2x3 in", `"2x3 in" is more than one length` + "\n" + `hint: give one length; the two of a point stand in brackets, with a comma between: [2, 3]`},
		{"a times sign alone", "2 ×", `"2 ×" has the unit "×", which is not known` + "\n" + `hint: the units are in, cm and mm; a number alone counts in the unit of the file`},
		{"a space without width", "1\u200b1/4", `"1\u200b1/4" has a sign behind "1" that cannot be seen (U+200B)` + "\n" + `hint: take it out, or type the length again`},
		{"wide digits", "１０", `"１０" is not a length: it has a wide 1 (U+FF11)` + "\n" + `hint: type it again, with the keyboard set to narrow letters`},
		{"exponent", "1e3", `"1e3" has the unit "e3", which is not known` + "\n" + `hint: the units are in, cm and mm; a number alone counts in the unit of the file`},
		{"too long", "100001 mm", `"100001 mm" is more than 100 m` + "\n" + `hint: check the number and its unit`},
		{"too long the other way", "-4000", `"-4000" is more than 100 m` + "\n" + `hint: check the number and its unit`},
		{"more digits than a number can hold", strings.Repeat("9", 400), `"` + strings.Repeat("9", 40) + `..." is more than 100 m` + "\n" + `hint: check the number and its unit`},
		{"too many digits over too many", strings.Repeat("9", 400) + "/" + strings.Repeat("9", 400), `"` + strings.Repeat("9", 40) + `..." is not a length` + general},
		{"a thousand letters", strings.Repeat("9", 1000), `"` + strings.Repeat("9", 40) + `..." is more than 100 m` + "\n" + `hint: check the number and its unit`},
		{"a letter more", strings.Repeat("¼", 1001), `"` + strings.Repeat("¼", 40) + `..." is written with 1001 letters; a length has at most 1000` + general},
		{"control character", "1\x1b[2J", `"1\x1b[2J" has the unit "\x1b[2J", which is not known` + "\n" + `hint: the units are in, cm and mm; a number alone counts in the unit of the file`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Parse(tt.in, Inch)
			require.Error(t, err)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"2 1/8", "2⅛ in", "-1/2", "−3.5cm", "54 mm", `1"`, "1,5", "2-1/8", "3/0", "99999999999999999999", "5 yd", "½", "1⁄2″", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		mm, err := Parse(s, Millimetre)
		if err != nil {
			require.NotEmpty(t, err.Error())
			require.LessOrEqual(t, strings.Count(err.Error(), "\n"), 1, "a cause and a hint are two lines: %q", err.Error())
			return
		}
		require.LessOrEqual(t, math.Abs(mm), 100_000.0, "100 m is the most")
		require.False(t, mm == 0 && math.Signbit(mm), "0 has a sign")
		for _, u := range []Unit{Inch, Centimetre, Millimetre} {
			printed := u.OnRuler(mm)
			if n, found := strings.CutPrefix(printed, "less than "); found {
				printed = n
			}
			_, err := Parse(printed, u)
			require.NoError(t, err, "%v mm is printed as %q", mm, printed)
		}
		// A length that gives a unit is the same whatever a bare number is.
		in, err := Parse(s, Inch)
		if err != nil {
			return // too long in inches
		}
		if strings.ContainsAny(s, `nm"″`) {
			require.Equal(t, mm, in)
		} else {
			require.InEpsilon(t, 25.4, (in+1e-300)/(mm+1e-300/25.4), 1e-12)
		}
		if n, err := strconv.ParseFloat(s, 64); err == nil && !strings.ContainsAny(s, "eExX_") {
			require.InDelta(t, n, mm, 1e-12*math.Abs(n))
		}
	})
}
