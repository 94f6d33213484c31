package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

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
