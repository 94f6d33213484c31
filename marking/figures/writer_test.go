package figures

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
)

func TestAmountsInBothSystems(t *testing.T) {
	for _, c := range []struct {
		name, both, cell, plain string
		a                       length.Amount
	}{
		{"inches", "2 1/8 in (54 mm)", "2 1/8 (54)", "2 1/8", length.Inch.Amount(2.125 * 25.4)},
		{"centimetres", "5.4 cm (2 1/8 in)", "5.4 (2 1/8)", "5.4", length.Centimetre.Amount(54)},
		{"millimetres", "54 mm (2 1/8 in)", "54 (2 1/8)", "54", length.Millimetre.Amount(54)},
		// 1/4 in = 6.35 mm, also where less than 1/4 in would not do
		{"rounded up, on a step", "1/4 in (6 mm)", "1/4 (6)", "1/4", length.Inch.AtLeast(6.35)},
		// Among inches 10 mm would be read as 10 in without its unit.
		{"chosen in mm among inches", "3/8 in (10 mm)", "3/8 (10)", "10 mm", length.Inch.Chosen(10)},
		{"chosen in inches among mm", "6 mm (1/4 in)", "6 (1/4)", "1/4 in", length.Millimetre.Chosen(6.35)},
		{"nothing at all", "0 in (0 mm)", "0 (0)", "0", length.Inch.AtLeast(0)},
		// Exactly 1 mm apart, and read as equal.
		{"read as nothing", "0 in (1 mm)", "0 (1)", "0", length.Inch.Amount(0.6)},
		{"below nothing", "-1/8 in (-3 mm)", "-1/8 (-3)", "-1/8", length.Inch.Amount(-3.175)},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.both, c.a.Both())
			assert.Equal(t, c.cell, writer{units: AllUnits}.cell(c.a))
			assert.Equal(t, c.plain, writer{units: OwnUnit}.cell(c.a))
		})
	}
}

func TestReadingsOffARuler(t *testing.T) {
	for _, c := range []struct {
		want string
		a    length.Amount
	}{
		{"2 3/8", length.Inch.Amount(2.375 * 25.4)},
		{"2 3/8", length.Inch.Amount((2.375 + 1.0/256) * 25.4)}, // less than half of 1/64
		{"2 3/8 + 1/64", length.Inch.Amount((2.375 + 1.0/64) * 25.4)},
		{"2 3/8 - 1/64", length.Inch.Amount((2.375 - 1.0/64) * 25.4)},
		{"2 3/8 + 1/64", length.Inch.Amount((2.375 + 1.0/48) * 25.4)}, // 1.3/64
		{"2 7/16 - 1/32", length.Inch.Amount((2.375 + 1.0/32) * 25.4)},
		{"0 + 1/64", length.Inch.Amount(25.4 / 64)},
		{"12", length.Millimetre.Amount(12.1)},
		{"12 + 0.3", length.Millimetre.Amount(12.3)},
		{"13 - 0.4", length.Millimetre.Amount(12.6)},
		{"1.3 - 0.04", length.Centimetre.Amount(12.6)},
	} {
		assert.Equal(t, c.want, c.a.Reading(), "%g mm", c.a.MM)
	}
}
