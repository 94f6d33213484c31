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

func TestScaleInWords(t *testing.T) {
	for want, s := range map[string]Scale{
		"98.4 % across and 100 % down": {0.984375, 1},
		"97 % both ways":               {0.97, 0.97},
		"100 % both ways":              {},
		"97.3 % both ways":             {210 / 215.9, 210 / 215.9},
		"99.9 % both ways":             {0.9994, 0.9994},
		"101.6 % across and 99 % down": {1.016, 0.99},
	} {
		assert.Equal(t, want, s.String())
	}
}

// ISO 216 and ANSI/ASME Y14.1: letter 215.9 x 279.4 mm on A4 210 x 297 mm is held by
// its width, 210/215.9; A4 on letter by its height, 279.4/297. Paper of 210 x
// 279.4 mm fits on both as it is.
func TestFitToPage(t *testing.T) {
	for _, c := range []struct {
		paper string
		on    string
		scale float64
		text  string
	}{
		{"letter", "A4 paper", 210 / 215.9, "97.3 %"},
		{"a4", "letter paper", 279.4 / 297, "94.1 %"},
		{"legal", "letter paper", 279.4 / 355.6, "78.6 %"},
	} {
		f, differs := found(t, c.paper).OtherFit()
		assert.True(t, differs, c.paper)
		assert.InDelta(t, c.scale, f.Scale, 1e-12, c.paper)
		assert.Equal(t, c.text, Percent(f.Scale))
		assert.Equal(t, c.on, f.On)
	}
	for _, name := range []string{"letter", "a4", "either"} {
		upright, lying := found(t, name), found(t, name)
		lying, err := lying.Lying()
		require.NoError(t, err)
		one, _ := upright.OtherFit()
		other, _ := lying.OtherFit()
		assert.Equal(t, one, other, "%s: it is turned in the printer as well", name)
	}
	for _, name := range []string{"single", "roll:36in"} {
		_, differs := found(t, name).OtherFit()
		assert.False(t, differs, name)
		assert.Empty(t, found(t, name).Recognised(Scale{0.9727, 0.9727}), name)
	}
	_, differs := found(t, "either").OtherFit()
	assert.False(t, differs, "either fits on both")
}

func TestWhatAScaleIsRecognisedAs(t *testing.T) {
	for _, c := range []struct {
		name, paper string
		printed     Scale
		want        []Fit
	}{
		{"letter on A4", "letter", Scale{0.97266, 0.97266}, []Fit{{210 / 215.9, "A4 paper", false}}},
		{"as a ruler in sixteenths shows it", "letter", Scale{0.96875, 0.9765625}, []Fit{{210 / 215.9, "A4 paper", false}}},
		{"A4 on letter, or inside the margins of A4", "a4", Scale{0.9375, 0.9375}, []Fit{{279.4 / 297, "letter paper", false}, {(210 - 12.7) / 210, "A4 paper", true}}},
		{"letter inside its margins", "letter", Scale{0.9412, 0.9412}, []Fit{{(215.9 - 12.7) / 215.9, "letter paper", true}}},
		{"letter on tabloid", "letter", Scale{1.294, 1.294}, []Fit{{279.4 / 215.9, "tabloid paper", false}}},
		{"nothing known", "letter", Scale{0.99, 0.99}, nil},
		{"true", "letter", Scale{1, 1}, nil},
		{"one way only", "letter", Scale{0.9727, 1}, nil},
		{"a sheet for either, on either", "either", Scale{0.9727, 0.9727}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := found(t, c.paper).Recognised(c.printed)
			require.Len(t, got, len(c.want))
			for i, f := range got {
				assert.InDelta(t, c.want[i].Scale, f.Scale, 1e-12)
				assert.Equal(t, c.want[i].On, f.On)
				assert.Equal(t, c.want[i].Inside, f.Inside)
			}
		})
	}
}
