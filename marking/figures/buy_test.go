package figures

import (
	"strings"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
)

// shopLength parses "2 3/8 yd" and "1.25 m" into mm.
func shopLength(t require.TestingT, printed string) float64 {
	for unit, mm := range map[string]float64{" yd": 914.4, " m": 1000} {
		if number, ok := strings.CutSuffix(printed, unit); ok {
			n, err := length.Parse(number, length.Millimetre)
			require.NoError(t, err)
			return n * mm
		}
	}
	require.Failf(t, "no length of a shop", "%q", printed)
	return 0
}
