package start

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Heights and chests of boys: Holt, The Care and Feeding of Children, 1907. What lies between
// its years is derived.
func TestChildOf(t *testing.T) {
	for _, c := range []struct {
		size          string
		height, chest float64 // in
		how           known
	}{
		{"1 year", 29, 18, ofSize},
		{"12 months", 29, 18, ofSize},
		{"12m", 29, 18, ofSize},
		{"2 years", 32.5, 19, ofSize},
		{"2T", 32.5, 19, ofSize},
		{"2", 32.5, 19, ofSize},
		{"24 Months", 32.5, 19, ofSize},
		{"18-24 months", 32.5, 19, ofSize},
		{"3 yrs", 35, 20, ofSize},
		{"size 4", 38, 20.75, ofSize},
		{"18 months", 30.75, 18.5, ofSize},
		{"1 1/2 years", 30.75, 18.5, ofSize},
		{"2.5 years", 33.75, 19.5, ofSize},
		{"92 cm", 36.220, 20.305, ofSize}, // 1.2205 in above 3 years, of 3 in to 4
		{"86/92", 36.220, 20.305, ofSize},
		{"6 months", 25.5, 16.5, ofSize}, // from memory
		{"6 to 9 months", 27.25, 17.25, ofSize},
		{"6–9 mths", 27.25, 17.25, ofSize},
		{"9 months old", 27.25, 17.25, ofSize},
		{"1/2 year", 25.5, 16.5, ofSize},
		{"½ yr", 25.5, 16.5, ofSize},
		{"half a year", 32.5, 19, middleSize},
		{"3/4 of a year", 27.25, 17.25, ofSize},
		{"3/4 years", 38, 20.75, ofSize}, // from the third to the fourth
		{"1 3/4 years", 31.625, 18.75, ofSize},
		{"1¼ years", 29.875, 18.25, ofSize},
		{"1/0 year", 32.5, 19, middleSize},
		{"newborn", 25.5, 16.5, nearestSize},
		{"New-born", 25.5, 16.5, nearestSize},
		{"Anna", 32.5, 19, middleSize},
		{"2 years, wide", 32.5, 19, middleSize},
		{"3 months", 25.5, 16.5, nearestSize},
		{"0 months", 25.5, 16.5, nearestSize},
		{"10 years", 44, 23, nearestSize},
		{"999", 44, 23, nearestSize},
	} {
		got, how := childOf(c.size)
		assert.InDelta(t, c.height*25.4, got.height, 0.1, "height, %s", c.size)
		assert.InDelta(t, c.chest*25.4, got.chest, 0.1, "chest, %s", c.size)
		assert.Equal(t, c.how, how, c.size)
	}
}
