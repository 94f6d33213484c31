package length

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestAmountsAreReadOffARuler(t *testing.T) {
	for _, c := range []struct {
		name, want string
		a          Amount
	}{
		{"a fraction", "2 1/8 in", Inch.Amount(2.125 * 25.4)},
		{"the nearest sixteenth", "2 1/8 in", Inch.Amount(2.15 * 25.4)}, // 2.15 x 16 = 34.4 -> 34
		{"the next sixteenth", "2 3/16 in", Inch.AtLeast(2.15 * 25.4)},  // 34.4 -> 35
		{"a hair above a step is that step", "2 1/8 in", Inch.AtLeast(2.125*25.4 + 0.009)},
		{"more than a hair is not", "2 3/16 in", Inch.AtLeast(2.125*25.4 + 0.011)},
		{"nothing", "0 in", Inch.Amount(0)},
		{"at least nothing", "0 in", Inch.AtLeast(0)},
		{"at least nothing, in cm", "0 cm", Centimetre.AtLeast(0)},
		{"a hair below nothing", "0 in", Inch.Amount(-0.1)},
		{"below nothing", "-1/8 in", Inch.Amount(-3.2)},
		{"half a step", "11/16 in", Inch.Amount(21.0 / 32 * 25.4)},
		{"half a step below nothing", "-11/16 in", Inch.Amount(-21.0 / 32 * 25.4)},
		{"millimetres", "54 mm", Millimetre.Amount(53.6)},
		{"centimetres", "5.4 cm", Centimetre.Amount(53.6)},
		{"chosen finer than the ruler", "3/32 in", Inch.Chosen(3.0 / 32 * 25.4)},
		{"chosen in the other system", "10 mm", Inch.Chosen(10)},
		{"chosen in inches in a file in cm", "3/8 in", Centimetre.Chosen(9.525)},
		{"a sum", "1 3/16 in", Inch.Amount(25.4).Plus(Inch.AtLeast(4.0))},
		{"twice as it is read", "4 1/4 in", Inch.Amount(2.14 * 25.4).Times(2)}, // 34.24 -> 34, twice 68
		{"no times", "0 in", Inch.Amount(25.4).Times(0)},
		{"minus no times", "0 in", Inch.Amount(25.4).Times(0).Times(-1)},
		{"less", "-1/2 in", Inch.Amount(25.4).Less(Inch.Amount(38.1))},
		{"half as much again, rounded up", "1 5/8 in", Inch.Amount(1.0625 * 25.4).By(1.5)}, // 17 x 1.5 = 25.5 -> 26
		{"once", "1 1/16 in", Inch.Amount(1.0625 * 25.4).By(1)},
		{"a tenth more, in whole steps", "11 mm", Millimetre.Amount(10).By(1.1)},
		{"a quarter", "1/4 in", Inch.Amount(25.4).Quarter()},
		// Read as 8 x 10 mm, of which 20 is a quarter; worked out as 83.2 mm, a quarter
		// of which would be read as 21.
		{"a quarter of what is read", "20 mm", Millimetre.Amount(10.4).Times(8).Quarter()},
		{"a sum of none", "0 cm", Centimetre.Sum()},
		{"without its sign", "1/2 in", Inch.Amount(-12.7).Magnitude()},
		// 10.4 + 10.4 is worked out as 0.2 more than 20.6, and read as 20 against 21.
		{"without its sign where the print has another one", "1 mm", Millimetre.Amount(10.4).Plus(Millimetre.Amount(10.4)).Less(Millimetre.Amount(20.6)).Magnitude()},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, c.a.String()) })
	}
}

func TestAmountsAsData(t *testing.T) {
	for _, c := range []struct {
		name, want string
		a          any
	}{
		{"a length", `{"mm":53.98,"printed":"2 1/8 in"}`, Inch.Amount(53.975)},
		{"nothing", `{"mm":0,"printed":"0 in"}`, Inch.AtLeast(0)},
		{"a hair below nothing", `{"mm":0,"printed":"0 in"}`, Inch.Amount(-0.001)},
		{"to buy", `{"mm":914.4,"printed":"1 yd"}`, Inch.Buy(900)},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := json.Marshal(c.a)
			require.NoError(t, err)
			assert.Equal(t, c.want, string(got))
		})
	}
}

// steps parses a length in print into steps of its ruler: 1/16 in or 1 mm.
func steps(t require.TestingT, unit Unit, printed string) int {
	mm, err := Parse(printed, unit)
	require.NoError(t, err)
	step := 1.0
	if unit == Inch {
		step = 25.4 / 16
	}
	n := math.Round(mm / step)
	require.InDelta(t, n, mm/step, 1e-6, "%q is a whole number of steps", printed)
	return int(n)
}

// Whatever is added, the print adds up, and never shows a 0 with a sign.
func TestAmountsAddUpInPrint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		unit := rapid.SampledFrom([]Unit{Inch, Centimetre, Millimetre}).Draw(t, "unit")
		lengths := rapid.SliceOfN(rapid.Float64Range(0, 3000), 0, 8).Draw(t, "lengths")
		total, want, mm := unit.Sum(), 0, 0.0
		for i, l := range lengths {
			a := unit.Amount(l)
			if rapid.Bool().Draw(t, "rounded up") {
				a = unit.AtLeast(l)
			}
			n := rapid.IntRange(0, 5).Draw(t, "times")
			require.Equal(t, n*steps(t, unit, a.String()), steps(t, unit, a.Times(n).String()), "%d times part %d", n, i)
			total, want, mm = total.Plus(a.Times(n)), want+n*steps(t, unit, a.String()), mm+float64(n)*l
		}
		require.Equal(t, want, steps(t, unit, total.String()))
		require.InDelta(t, mm, total.MM, 1e-6, "what was worked out is kept beside it")
		quarter := 4 * steps(t, unit, total.Quarter().String())
		require.LessOrEqual(t, math.Abs(float64(quarter-want)), 2.0, "a quarter of %d steps", want)
		require.GreaterOrEqual(t, total.Enough(), total.MM)
		for _, text := range []string{total.Both(), total.Less(total).Both(), total.Times(-1).Times(0).Both()} {
			require.False(t, strings.HasPrefix(text, "-0"), text)
			require.NotContains(t, text, "(-0 ", text)
		}
	})
}

// The same exact length has the same words in brackets wherever it is printed and however it is
// rounded in the file's unit; a length that a maker chose in the other system is repeated.
func TestALengthHasTheSameWordsInBrackets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]Unit{Inch, Centimetre, Millimetre}).Draw(t, "unit")
		mm := float64(rapid.IntRange(0, 64*100).Draw(t, "sixty-fourths")) * 25.4 / 64
		if rapid.Bool().Draw(t, "in tenths of a millimetre") {
			mm = float64(rapid.IntRange(0, 30_000).Draw(t, "tenths")) / 10
		}
		want := u.Amount(mm).Other()
		half := u.Amount(mm / 2)
		for how, a := range map[string]Amount{
			"rounded up": u.AtLeast(mm), "a sum": u.Sum(half, u.AtLeast(mm/2)), "twice": u.AtLeast(mm / 2).Times(2),
			"gathered": half.By(2), "a quarter": u.AtLeast(mm * 4).Quarter(), "its magnitude": u.AtLeast(-mm).Magnitude(),
		} {
			assert.Equal(t, want, a.Other(), how)
		}
		if chosen := u.Chosen(mm); !chosen.Foreign() {
			assert.Equal(t, want, chosen.Other(), "chosen")
		}
	})
}

// A length reads alike wherever it is printed, also halfway between two steps and however it was
// worked out; what is less than the ruler's smallest step is told as that where it stands alone.
func TestALengthReadsAlike(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]Unit{Inch, Centimetre, Millimetre}).Draw(t, "unit")
		halves := rapid.IntRange(-2000, 2000).Draw(t, "halves")
		off := rapid.SampledFrom([]float64{0, 1e-9, -1e-9, 0.3, -0.3}).Draw(t, "off")
		mm := (float64(halves)/2 + off) * u.Ruler()
		if a := u.Amount(mm); a.Steps != 0 {
			assert.Equal(t, a.String(), u.OnRuler(mm))
			assert.Equal(t, a.Steps, -u.Amount(-mm).Steps, "the other way round")
		} else if mm != 0 {
			assert.Equal(t, "less than "+u.printSteps(1), u.OnRuler(mm))
		}
	})
}
