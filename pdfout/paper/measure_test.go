package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
)

func TestMeasure(t *testing.T) {
	for _, c := range []struct {
		text  string
		bare  length.Unit
		scale float64
		frame string
		shown string
	}{
		{"4", length.Inch, 1, "4 in", "4 in"},
		{"3 15/16", length.Inch, 0.984375, "4 in", "3 15/16 in"},
		{"3⅞", length.Inch, 0.96875, "4 in", "3 7/8 in"},
		{`4 1/32"`, length.Millimetre, 1.0078125, "4 in", "4 1/32 in"},
		{"98.5 mm", length.Inch, 0.985, "100 mm", "98.5 mm"},
		{"9.85cm", length.Inch, 0.985, "100 mm", "9.85 cm"},
		{"101 mm", length.Inch, 1.01, "100 mm", "101 mm"}, // neither frame is near: it is the inner one
		{"102.2 mm", length.Inch, 1.022, "100 mm", "102.2 mm"},
		{"97", length.Millimetre, 0.97, "100 mm", "97 mm"},
		{"9.7", length.Centimetre, 0.97, "100 mm", "9.7 cm"},
	} {
		t.Run(c.text, func(t *testing.T) {
			m, err := Measure(c.text, c.bare)
			require.NoError(t, err)
			assert.InDelta(t, c.scale, m.Scale, 1e-12)
			assert.Equal(t, c.frame, m.Whole)
			assert.Equal(t, c.shown, m.Text)
		})
	}
}

func TestMeasureThatIsNone(t *testing.T) {
	const hint = "\nhint: measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; with the rules of the first page say what they are to be, such as --of \"7 x 10\""
	const either = " the outer frame, measured in mm, or the inner one, printed too large" +
		"\nhint: say which was measured: --of \"4 in\" for the outer frame, --of \"100 mm\" for the inner one"
	for _, c := range []struct {
		text string
		bare length.Unit
		want string
	}{
		{"98", length.Inch, "a side of 98 in is no printer's doing" + hint + `; "98" is taken for 98 in`},
		{"4", length.Millimetre, "a side of 4 mm is no printer's doing" + hint + `; "4" is taken for 4 mm`},
		{"0", length.Inch, "a side of 0 in is no printer's doing" + hint + `; "0" is taken for 0 in`},
		{"-4", length.Inch, "a side of -4 in is no printer's doing" + hint + `; "-4" is taken for -4 in`},
		{"40 mm", length.Inch, "a side of 40 mm is no printer's doing" + hint},
		{"101.6 mm", length.Inch, `"101.6 mm" could be` + either},
		{"101.1", length.Millimetre, `"101.1" could be` + either},
		{"10.2cm", length.Inch, `"10.2cm" could be` + either},
		{"3,9", length.Inch, "\"3,9\" is written with a comma\nhint: write a decimal with a point: \"3.9\""},
	} {
		_, err := Measure(c.text, c.bare)
		assert.EqualError(t, err, c.want)
	}
}

// What is to be so long is measured as the square is.
func TestMeasureOf(t *testing.T) {
	m, err := MeasureOf("12 7/16", 317.5, length.Inch)
	require.NoError(t, err)
	assert.InDelta(t, 0.995, m.Scale, 1e-12)
	assert.Equal(t, "12 7/16 in", m.Text)
	assert.Equal(t, "12 1/2 in", m.Whole)
	assert.Equal(t, "1/16 in", m.ReadTo.String())
	assert.InDelta(t, 1.0/400, m.Doubt(), 1e-12, "1/32 of 12 1/2")

	m, err = MeasureOf("23.95cm", 240, length.Inch)
	require.NoError(t, err)
	assert.InDelta(t, 239.5/240, m.Scale, 1e-12)
	assert.Equal(t, "24 cm", m.Whole)
	assert.Equal(t, "0.5 mm", m.ReadTo.String())
	assert.InDelta(t, 0.25/240, m.Doubt(), 1e-12)

	for text, want := range map[string]string{"101.6 mm": "101.6 mm", "10.16cm": "10.16 cm", "4 in": "4 in"} {
		m, err = MeasureOf(text, 100, length.Inch)
		require.NoError(t, err)
		assert.Equal(t, want, m.Text, "in the unit in which it was read")
	}

	_, err = MeasureOf("4", 317.5, length.Inch)
	assert.EqualError(t, err, "4 in of 12 1/2 in is no printer's doing\nhint: --of says how long the line is to be that was measured")
	_, err = MeasureOf("wide", 317.5, length.Inch)
	assert.ErrorContains(t, err, `"wide" is not a length`)
}

// One ruler reads both ways to the same step.
func TestReadingsByOneRuler(t *testing.T) {
	read := func(across, down string) Reading {
		a, err := Measure(across, length.Inch)
		require.NoError(t, err)
		d, err := Measure(down, length.Inch)
		require.NoError(t, err)
		return Reading{a, d}.ByOneRuler()
	}
	for _, c := range []struct {
		across, down, to string
		a, d             float64 // what may be off of the scale
	}{
		{"4", "4", "1/16 in", 1.0 / 128, 1.0 / 128},
		{"3 31/32", "4", "1/32 in", 1.0 / 256, 1.0 / 256},
		{"4", "3 63/64", "1/64 in", 1.0 / 512, 1.0 / 512},
		{"98.5mm", "99mm", "0.5 mm", 1.0 / 400, 1.0 / 400},
		{"4", "98.5mm", "1/16 in", 1.0 / 128, 1.0 / 400},
		{"98.5mm", "4", "1/16 in", 1.0 / 400, 1.0 / 128},
	} {
		r := read(c.across, c.down)
		assert.Equal(t, c.to, r.ReadTo().String(), "%s, %s", c.across, c.down)
		assert.InDelta(t, c.a, r.Doubt().Across, 1e-12, "%s, %s", c.across, c.down)
		assert.InDelta(t, c.d, r.Doubt().Down, 1e-12, "%s, %s", c.across, c.down)
	}
	assert.InDelta(t, 0.984375, read("3 15/16", "4").Scale().Across, 1e-12)
	assert.InDelta(t, 1, read("3 15/16", "4").Scale().Down, 1e-12)
}
