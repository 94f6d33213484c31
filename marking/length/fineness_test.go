package length

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// How finely somebody read is known from what she wrote, as far as it tells.
func TestReadTo(t *testing.T) {
	for _, c := range []struct {
		text string
		bare Unit
		want float64 // in mm
	}{
		{"4", Inch, 1.5875},
		{"3 15/16", Inch, 1.5875},
		{"3 7/8", Inch, 1.5875}, // fourteen sixteenths
		{"3⅞", Inch, 1.5875},
		{"3.5", Inch, 1.5875},
		{"3 31/32", Inch, 0.79375},
		{"3 30/32", Inch, 0.79375},
		{"4 0/32", Inch, 0.79375},
		{"12 0/64", Inch, 0.396875},
		{"3.96875", Inch, 0.79375},
		{"3.9", Inch, 2.54},
		{"3.94", Inch, 0.254},
		{"3.9372", Inch, 0.254}, // nobody reads print so finely
		{"3 9/10", Inch, 2.54},
		{"98", Millimetre, 1},
		{"98.5", Millimetre, 0.5},
		{"98 1/2 mm", Inch, 0.5},
		{"98.3mm", Inch, 0.1},
		{"98.37mm", Inch, 0.1},
		{"9.8", Centimetre, 1},
		{"9.85", Centimetre, 0.5},
		{"9.83 cm", Inch, 0.1},
		{"wide", Inch, 1.5875},
		{"3/0", Inch, 1.5875},
	} {
		assert.InDelta(t, c.want, ReadTo(c.text, c.bare), 1e-9, c.text)
	}
}
