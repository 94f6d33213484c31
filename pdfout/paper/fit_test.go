package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

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
