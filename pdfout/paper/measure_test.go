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
		{"97", length.Millimetre, 0.97, "100 mm", "97 mm"},
		{"9.7", length.Centimetre, 0.97, "100 mm", "9.7 cm"},
	} {
		t.Run(c.text, func(t *testing.T) {
			m, err := Measure(c.text, c.bare)
			require.NoError(t, err)
			assert.InDelta(t, c.scale, m.Scale, 1e-12)
			assert.Equal(t, c.frame, m.Frame())
			assert.Equal(t, c.shown, m.Text)
		})
	}
}

func TestMeasureThatIsNone(t *testing.T) {
	const hint = "\nhint: measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; "
	for _, c := range []struct {
		text string
		bare length.Unit
		want string
	}{
		{"98", length.Inch, "a side of 98 in is no printer's doing" + hint + `"98" counts in in`},
		{"4", length.Millimetre, "a side of 4 mm is no printer's doing" + hint + `"4" counts in mm`},
		{"0", length.Inch, "a side of 0 in is no printer's doing" + hint + `"0" counts in in`},
		{"-4", length.Inch, "a side of -4 in is no printer's doing" + hint + `"-4" counts in in`},
		{"3,9", length.Inch, "\"3,9\" is written with a comma\nhint: write a decimal with a point: \"3.9\""},
	} {
		_, err := Measure(c.text, c.bare)
		assert.EqualError(t, err, c.want)
	}
}
