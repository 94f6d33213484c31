package screen

import (
	"math"
	"net/url"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
)

func TestWhatIsMeasuredIsReadOffARuler(t *testing.T) {
	for _, c := range []struct {
		unit       length.Unit
		across, up string
		words      string
	}{
		{length.Inch, "25.4", "0", "1 in"},
		{length.Inch, "0", "-50.8", "2 in"},
		{length.Inch, "76.2", "101.6", "5 in: 3 in across, 4 in up"},
		{length.Inch, "-76.2", "-101.6", "5 in: 3 in across, 4 in down"},
		{length.Centimetre, "30", "40", "5 cm: 3 cm across, 4 cm up"},
		{length.Millimetre, "30", "-40", "50 mm: 30 mm across, 40 mm down"},
		{length.Inch, "0", "0", "0 in"},
		{length.Inch, "0.1", "0", "less than 1/16 in"},
		{length.Inch, "387.35", "0.5", "15 1/4 in"},
		{length.Centimetre, "-0.4", "152.4", "15.2 cm"},
		{length.Millimetre, "0.5", "30", "30 mm: 1 mm across, 30 mm up"},
	} {
		words, ok := measured(url.Values{"across": {c.across}, "up": {c.up}}, c.unit)
		assert.True(t, ok)
		assert.Equal(t, c.words, words)
	}
}

func TestWhatIsNoLength(t *testing.T) {
	for _, one := range []string{"", "a", "NaN", "Inf", "-Inf", "1e300", "1e6", "0x", "1,5"} {
		_, ok := measured(url.Values{"across": {one}, "up": {"1"}}, length.Inch)
		assert.False(t, ok, "%q across", one)
		_, ok = measured(url.Values{"across": {"1"}, "up": {one}}, length.Inch)
		assert.False(t, ok, "%q up", one)
	}
}

// What is measured back is as long, and goes the other way.
func TestMeasuredBackIsAsLong(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		across := rapid.Float64Range(0, 5000).Draw(t, "across")
		up := rapid.Float64Range(0, 5000).Draw(t, "up")
		whole := length.Inch.OnRuler(math.Hypot(across, up))
		assert.Regexp(t, "^"+whole, inWords(across, up, length.Inch))
		assert.Regexp(t, "^"+whole, inWords(-across, -up, length.Inch))
	})
}
