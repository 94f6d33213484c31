package length

import (
	"testing"

	"github.com/stretchr/testify/assert"
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

// A ruler in inches is read to its sixteenths, one in centimetres to its millimetres.
func TestUnitUp(t *testing.T) {
	tests := []struct {
		name     string
		unit     Unit
		mm, want float64
	}{
		{"a step stays", Inch, 25.4 * 3 / 16, 25.4 * 3 / 16},
		{"more than a step", Inch, 25.4*3/16 + 0.01, 25.4 / 4},
		{"a step but for rounding", Inch, 25.4*3/16 + 1e-9, 25.4 * 3 / 16},
		{"centimetres", Centimetre, 53.2, 54},
		{"millimetres", Millimetre, 54, 54},
		{"nothing", Millimetre, 0, 0},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.InDelta(t, tt.want, tt.unit.Up(tt.mm), 1e-9)
		})
	}
}
