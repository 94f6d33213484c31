package garment

import (
	"math"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
)

// steps parses a length in print into steps of its ruler: 1/16 in or 1 mm.
func steps(t require.TestingT, unit length.Unit, printed string) int {
	mm, err := length.Parse(printed, unit)
	require.NoError(t, err)
	step := 1.0
	if unit == length.Inch {
		step = 25.4 / 16
	}
	n := math.Round(mm / step)
	require.InDelta(t, n, mm/step, 1e-6, "%q is a whole number of steps", printed)
	return int(n)
}
