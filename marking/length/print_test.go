package length

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestUnitPrint(t *testing.T) {
	tests := []struct {
		name string
		unit Unit
		mm   float64
		want string
	}{
		{"nothing", Inch, 0, "0 in"},
		{"an inch", Inch, 25.4, "1 in"},
		{"a reduced fraction", Inch, 25.4 / 8, "1/8 in"},
		{"a mixed number", Inch, 25.4 * 17 / 8, "2 1/8 in"},
		{"sixteenths", Inch, 25.4 * 45 / 16, "2 13/16 in"},
		{"rounded up to a whole", Inch, 25.4 * 1.99, "2 in"},
		{"just over half a step", Inch, 25.4 / 31, "1/16 in"},
		{"just under half a step", Inch, 25.4 / 33, "less than 1/16 in"},
		{"below zero", Inch, -25.4 * 3 / 8, "-3/8 in"},
		{"hardly below zero", Inch, -0.001, "less than 1/16 in"},
		{"a bolt of cloth", Inch, 25.4 * 44, "44 in"},
		{"a hundred metres", Inch, 100_000, "3937 in"},
		{"centimetres", Centimetre, 54, "5.4 cm"},
		{"whole centimetres", Centimetre, 50, "5 cm"},
		{"no centimetres", Centimetre, 0, "0 cm"},
		{"hardly a centimetre", Centimetre, 0.4, "less than 0.1 cm"},
		{"centimetres below zero", Centimetre, -1.2, "-0.1 cm"},
		{"millimetres", Millimetre, 53.975, "54 mm"},
		{"hardly a millimetre", Millimetre, 0.49, "less than 1 mm"},
		{"no millimetres", Millimetre, 0, "0 mm"},
		{"millimetres below zero", Millimetre, -3, "-3 mm"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.want, tt.unit.OnRuler(tt.mm))
		})
	}
}

// What is printed is read back as the same place on the ruler.
func TestUnitPrintIsReadBack(t *testing.T) {
	for n := -40; n <= 800; n++ {
		mm := float64(n) * 25.4 / 16
		read, err := Parse(Inch.OnRuler(mm), Millimetre)
		require.NoError(t, err)
		assert.InDelta(t, mm, read, 1e-9, "%d/16 in is printed as %s", n, Inch.OnRuler(mm))

		written := fmt.Sprintf("%d/16", n)
		read, err = Parse(written, Inch)
		require.NoError(t, err)
		assert.Equal(t, Inch.OnRuler(mm), Inch.OnRuler(read), "of %s", written)

		for _, u := range []Unit{Centimetre, Millimetre} {
			read, err = Parse(u.OnRuler(float64(n)), Inch)
			require.NoError(t, err)
			assert.InDelta(t, float64(n), read, 1e-9, "%d mm is printed as %s", n, u.OnRuler(float64(n)))
		}
	}
}

// What somebody chose is found again as it was written: in either system, however fine.
func TestUnitNames(t *testing.T) {
	tests := []struct {
		name  string
		mm    float64
		inch  string // in a file in inches
		cm    string
		mms   string
		plain bool
	}{
		{"nothing", 0, "0 in", "0 cm", "0 mm", true},
		{"an inch", 25.4, "1 in", "1 in", "1 in", true},
		{"a sixty-fourth", 25.4 / 64, "1/64 in", "1/64 in", "1/64 in", true},
		{"thirds", 25.4 * 5 / 3, "1 2/3 in", "1 2/3 in", "1 2/3 in", true},
		{"a reduced fraction", 25.4 * 2.625, "2 5/8 in", "2 5/8 in", "2 5/8 in", true},
		{"millimetres", 10, "10 mm", "1 cm", "10 mm", true},
		{"half a millimetre", 2.5, "2.5 mm", "0.25 cm", "2.5 mm", true},
		{"both", 127, "5 in", "12.7 cm", "127 mm", true},
		{"neither", 25.4 / 7, "0.143 in", "0.363 cm", "3.629 mm", false},
		{"a fraction below zero", -25.4 * 1.5, "-1 1/2 in", "-1 1/2 in", "-1 1/2 in", true},
		{"neither, below zero", -25.4 / 7, "-0.143 in", "-0.363 cm", "-3.629 mm", false},
		{"hardly below zero", -1e-9, "0 in", "0 cm", "0 mm", true},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.inch, Inch.AsWritten(tt.mm))
			assert.Equal(t, tt.cm, Centimetre.AsWritten(tt.mm))
			assert.Equal(t, tt.mms, Millimetre.AsWritten(tt.mm))
			assert.Equal(t, tt.plain, IsPlain(tt.mm))
		})
	}
}

func TestFactorsInPrint(t *testing.T) {
	for _, c := range []struct {
		v    float64
		want string
	}{
		{1, "1"}, {2, "2"}, {1.5, "1 1/2"}, {1.25, "1 1/4"}, {2.75, "2 3/4"}, {4.0 / 3, "1 1/3"}, {1.3333, "1 1/3"}, {1.375, "1 3/8"},
		{1.53, "1.53"}, {1.5321, "1.53"}, {1.2, "1.2"}, {1.333, "1.33"}, {20, "20"},
	} {
		assert.Equal(t, c.want, Factor(c.v), "%g", c.v)
	}
}

func TestBare(t *testing.T) {
	for printed, want := range map[string]string{
		"2 1/8 in": "2 1/8", "54 mm": "54", "2 3/8 + 1/64 in": "2 3/8 + 1/64", "less than 1/16 in": "less than 1/16", "2 1/8": "2 1/8", "2": "2",
	} {
		assert.Equal(t, want, Bare(printed))
	}
}
