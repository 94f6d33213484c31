package length

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Half of what can be ruled, 1/128 in or 0.198 mm, is not seen (common practice).
func TestAmountReading(t *testing.T) {
	tests := []struct {
		name    string
		a       Amount
		off     bool
		reading string
		printed string
	}{
		{"on a step", Inch.Amount(25.4 * 2.375), false, "2 3/8", "2 3/8 in"},
		{"a hair off", Inch.Amount(25.4*2.375 + 0.19), false, "2 3/8", "2 3/8 in"},
		{"beyond a step", Inch.Amount(25.4 * (2.375 + 1.0/64)), true, "2 3/8 + 1/64", "2 3/8 + 1/64 in"},
		{"before a step", Inch.Amount(25.4 * (2.375 - 1.0/64)), true, "2 3/8 - 1/64", "2 3/8 - 1/64 in"},
		{"half a step", Inch.Amount(25.4 * (2.375 + 1.0/32)), true, "2 7/16 - 1/32", "2 7/16 - 1/32 in"},
		{"below nothing", Inch.Amount(-25.4 * (0.375 + 1.0/64)), true, "-3/8 - 1/64", "-3/8 - 1/64 in"},
		{"millimetres", Millimetre.Amount(54.3), true, "54 + 0.3", "54 + 0.3 mm"},
		{"centimetres", Centimetre.Amount(53.7), true, "5.4 - 0.03", "5.4 - 0.03 cm"},
		{"a hair off a millimetre", Centimetre.Amount(54.19), false, "5.4", "5.4 cm"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.off, tt.a.IsOff())
			assert.Equal(t, tt.reading, tt.a.Reading())
			assert.Equal(t, tt.printed, tt.a.AsRead().String())
		})
	}
}
