package length

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// To the next 1/8 yd, rounded up (Household Arithmetic, p. 100; the title is from
// memory). An eighth of a yard is 4 1/2 in. Cloth sold by the metre is cut to 5 cm
// (common practice).
func TestWhatIsBought(t *testing.T) {
	const inch = 25.4
	for _, c := range []struct {
		name           string
		mm             float64
		yards, metres  string
		yardsAndMetres string
	}{
		{"nothing", 0, "0 yd", "0 m", "0 yd (0 m)"},
		{"a little", 3, "1/8 yd", "0.05 m", "1/8 yd (0.05 m)"},
		{"an eighth", 4.5 * inch, "1/8 yd", "0.15 m", "1/8 yd (0.15 m)"},
		{"a sixteenth more than an eighth", (4.5 + 1.0/16) * inch, "1/4 yd", "0.15 m", "1/4 yd (0.15 m)"},
		{"a thirty-second more than a yard", (36 + 1.0/32) * inch, "1 1/8 yd", "0.95 m", "1 1/8 yd (0.95 m)"},
		{"a quarter of a millimetre more than 5 cm", 50.25, "1/8 yd", "0.1 m", "1/8 yd (0.1 m)"},
		{"a yard", 36 * inch, "1 yd", "0.95 m", "1 yd (0.95 m)"},
		{"41 3/4 in", 41.75 * inch, "1 1/4 yd", "1.1 m", "1 1/4 yd (1.1 m)"}, // 9.28 eighths, 1060.45 mm
		{"135 in", 135 * inch, "3 3/4 yd", "3.45 m", "3 3/4 yd (3.45 m)"},
		{"a metre", 1000, "1 1/8 yd", "1 m", "1 1/8 yd (1 m)"}, // 8.75 eighths
		{"100 m", 100_000, "109 3/8 yd", "100 m", "109 3/8 yd (100 m)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.yards, Inch.Buy(c.mm).String())
			assert.Equal(t, c.metres, Centimetre.Buy(c.mm).String())
			assert.Equal(t, c.metres, Millimetre.Buy(c.mm).String())
			assert.Equal(t, c.yardsAndMetres, Inch.Buy(c.mm).Both())
		})
	}
}

// What is bought holds what is printed of a length, and what was worked out of it.
func TestWhatIsBoughtHoldsWhatIsPrinted(t *testing.T) {
	// 5 x 4 7/16 in = 22 3/16 in as read, 21.9 in as worked out
	five := Inch.AtLeast(4.38 * 25.4).Times(5)
	assert.Equal(t, "22 3/16 in", five.String())
	assert.InDelta(t, 22.1875*25.4, five.Buy().mm, 1e-9)
	// 4 x 1 1/8 in = 4 1/2 in as read, 4.56 in as worked out
	four := Inch.Amount(1.14 * 25.4).Times(4)
	assert.Equal(t, "4 1/2 in", four.String())
	assert.Equal(t, "1/4 yd", four.Buy().String())
}

func TestNoLessIsBoughtAndNoMoreThanAStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.Float64Range(0, 20_000).Draw(t, "mm")
		for unit, step := range map[Unit]float64{Inch: 114.3, Centimetre: 50} {
			bought := shopLength(t, unit.Buy(mm).String())
			require.Greater(t, bought, mm-0.011*step, "a hundredth of a step is not missed")
			require.Less(t, bought, mm+step)
		}
	})
}

// shopLength parses "2 3/8 yd" and "1.25 m" into mm.
func shopLength(t require.TestingT, printed string) float64 {
	for unit, mm := range map[string]float64{" yd": 914.4, " m": 1000} {
		if number, ok := strings.CutSuffix(printed, unit); ok {
			n, err := Parse(number, Millimetre)
			require.NoError(t, err)
			return n * mm
		}
	}
	require.Failf(t, "no length of a shop", "%q", printed)
	return 0
}

// No less is bought than is said to be needed, wherever the length lies between two steps.
func TestNoLessIsBoughtThanIsNeeded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]Unit{Inch, Millimetre}).Draw(t, "unit")
		step := u.Either(eighthYard, fiveCentis)
		mm := float64(rapid.IntRange(0, 100).Draw(t, "steps"))*step + rapid.Float64Range(0, 2).Draw(t, "more")
		assert.GreaterOrEqual(t, upTo(step, mm)+Rounding, u.AtLeast(mm).Enough()-noCloth)
		assert.GreaterOrEqual(t, upTo(step, mm)+Rounding, u.AtLeast(mm).Steps*u.Ruler())
	})
}
