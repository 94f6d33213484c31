package length

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestMistyped(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"O alone", "O", `"O" is the letter O, not the figure 0` + "\n" + `hint: write "0"`},
		{"l alone", " l ", `" l " is the letter l, not the figure 1` + "\n" + `hint: write "1"`},
		{"O behind a figure", "1O mm", `"1O mm" has the letter O for the figure 0` + "\n" + `hint: write "10 mm"`},
		{"a small o", "1.o5", `"1.o5" has the letter o for the figure 0` + "\n" + `hint: write "1.05"`},
		{"l in a fraction", "1 l/2", `"1 l/2" has the letter l for the figure 1` + "\n" + `hint: write "1 1/2"`},
		{"l before a fraction", "l 1/2", `"l 1/2" has the letter l for the figure 1` + "\n" + `hint: write "1 1/2"`},
		{"a large I", "I/2 in", `"I/2 in" has the letter I for the figure 1` + "\n" + `hint: write "1/2 in"`},
		{"both", "lO", `"lO" has the letter O for the figure 0 and the letter l for the figure 1` + "\n" + `hint: write "10"`},
		{"and", "1 and 1/2", `"1 and 1/2" has "and" between its whole number and its fraction` + "\n" + `hint: write "1 1/2"`},
		{"and, with a fraction of one letter", "1 and ½ in", `"1 and ½ in" has "and" between its whole number and its fraction` + "\n" + `hint: write "1 ½ in"`},
		{"and, with its unit written out", "1 and 1/2 inches", `"1 and 1/2 inches" has "and" between its whole number and its fraction` + "\n" + `hint: write "1 1/2 in"`},
		{"l before its unit written out", "l inch", `"l inch" has the letter l for the figure 1` + "\n" + `hint: write "1 in"`},
		{"a unit written out", "2 inches", `"2 inches" has its unit written out` + "\n" + `hint: write "2 in"`},
		{"a plus", "1 + 1/2", `"1 + 1/2" has "+" between its whole number and its fraction` + "\n" + `hint: write "1 1/2"`},
		{"a backslash", `1 1\2`, `"1 1\2" has a \ for the stroke /` + "\n" + `hint: write "1 1/2"`},
		{"a word", "old", `"old" is not a length` + "\nhint: " + Hint},
		{"and before a whole number", "1 and 2", `"1 and 2" has the unit "and 2", which is not known` + "\n" + `hint: the units are in, cm and mm; a number alone counts in the unit of the file`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Parse(c.in, Inch)
			assert.EqualError(t, err, c.want)
		})
	}
}

// Whatever slips into a length, what is told to be written is that length.
func TestMistypedIsReadAsMeant(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		unit := rapid.SampledFrom([]Unit{Inch, Centimetre, Millimetre}).Draw(t, "unit")
		right := unit.OnRuler(rapid.Float64Range(10, 900).Draw(t, "length"))
		want, err := Parse(right, unit)
		require.NoError(t, err)
		wrong := right
		for _, slip := range []struct {
			is  string
			was []string
		}{{"0", []string{"0", "O", "o"}}, {"1", []string{"1", "l", "I"}}, {"/", []string{"/", `\`}}} {
			wrong = strings.ReplaceAll(wrong, slip.is, rapid.SampledFrom(slip.was).Draw(t, "for "+slip.is))
		}
		if wrong == right {
			return
		}
		m, ok := FindMistyped(wrong)
		require.True(t, ok, wrong)
		got, err := Parse(m.Meant, unit)
		require.NoError(t, err)
		require.Equal(t, want, got, wrong)
	})
}

// FuzzMistyped asks of any text that what is told to be written is read.
func FuzzMistyped(f *testing.F) {
	for _, s := range []string{"O", "l 1/2", "1 and 1/2", `1 1\2`, "1 + ½ in", "lO cm", "-l,5"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		if m, ok := FindMistyped(s); ok {
			_, err := Parse(m.Meant, Millimetre)
			require.NoError(t, err)
			_, err = Parse(s, Millimetre)
			require.ErrorContains(t, err, "hint: write ", "a text that is read has no slip")
		}
	})
}
