package length

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestUnitIsMillimetres(t *testing.T) {
	// Inch = 25.4 mm exactly (international inch, 1959).
	assert.Equal(t, 25.4, Inch.MM())
	assert.Equal(t, 10.0, Centimetre.MM())
	assert.Equal(t, 1.0, Millimetre.MM())
}

func TestUnitNamed(t *testing.T) {
	for _, u := range []Unit{Inch, Centimetre, Millimetre} {
		got, ok := unitNamed(u.String())
		assert.True(t, ok, "%s is not found by its own name", u)
		assert.Equal(t, u, got)
	}
	_, ok := unitNamed("inch")
	assert.False(t, ok, "inch is not how a file writes it")
}

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
			assert.Equal(t, tt.want, tt.unit.Print(tt.mm))
		})
	}
}

// What is printed is read back as the same place on the ruler.
func TestUnitPrintIsReadBack(t *testing.T) {
	for n := -40; n <= 800; n++ {
		mm := float64(n) * 25.4 / 16
		read, err := Parse(Inch.Print(mm), Millimetre)
		require.NoError(t, err)
		assert.InDelta(t, mm, read, 1e-9, "%d/16 in is printed as %s", n, Inch.Print(mm))

		written := fmt.Sprintf("%d/16", n)
		read, err = Parse(written, Inch)
		require.NoError(t, err)
		assert.Equal(t, Inch.Print(mm), Inch.Print(read), "of %s", written)

		for _, u := range []Unit{Centimetre, Millimetre} {
			read, err = Parse(u.Print(float64(n)), Inch)
			require.NoError(t, err)
			assert.InDelta(t, float64(n), read, 1e-9, "%d mm is printed as %s", n, u.Print(float64(n)))
		}
	}
}
