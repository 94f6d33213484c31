package figures

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

// What the figures say of the ends, and of what is worth a warning: a jog of more than the
// tolerance, or a corner, in a line that goes over the seam under one name.
func TestWhatIsSaidOfEnds(t *testing.T) {
	// Corners of 90 and t degrees.
	slant := func(t float64) string {
		return fmt.Sprintf("bottom: 0,0 %.9[1]f,0\nright: %.9[1]f,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0", 10-8/math.Tan(t*math.Pi/180))
	}
	for _, c := range []struct {
		name, front, back, seam string
		want                    []string
	}{
		{"nothing amiss", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops, []string{"at right: no jog, no point", "at left: no jog, no point"}},
		{"a jog that is too small to read", sketch.Rect("10.03"), sketch.Rect("10"), sketch.Tops, []string{"at right: no jog, no point", "at left: no jog, no point"}},
		{"a jog within the tolerance", sketch.Rect("10.0625"), sketch.Rect("10"), sketch.Tops,
			[]string{"at right: no jog, no point", "at left: front runs 1/16 in past back, no point"}},
		{"a jog beyond it", sketch.Rect("10.125"), sketch.Rect("10"), sketch.Tops,
			[]string{"at right: no jog, no point", "! at left: front runs 1/8 in past back, no point"}},
		{"a jog of the cut edges", sketch.Rect("10"), sketch.Swap(sketch.Rect("9.75"), "right: 9.75,0 9.75,8", "right: 9.75,0 9.75,8 | allowance = 0.25"), sketch.Tops,
			[]string{"! at right: the cut edge of front runs 1/4 in past back, no point", "at left: no jog, no point"}},
		{"a point", slant(80), slant(80), sketch.Tops, []string{"! at right: no jog, a point of 20 degrees", "at left: no jog, no point"}},
		{"a dip", slant(100), slant(100), sketch.Tops, []string{"! at right: no jog, a dip of 20 degrees", "at left: no jog, no point"}},
		// A corner of 8 degrees is one that is seen.
		{"a point of 7.8 degrees", slant(86.1), slant(86.1), sketch.Tops, []string{"at right: no jog, no point", "at left: no jog, no point"}},
		{"a point of 8.2 degrees", slant(85.9), slant(85.9), sketch.Tops, []string{"! at right: no jog, a point of 8 degrees", "at left: no jog, no point"}},
		{"a dip of 8.2 degrees", slant(94.1), slant(94.1), sketch.Tops, []string{"! at right: no jog, a dip of 8 degrees", "at left: no jog, no point"}},
		{"under two names a corner is meant", slant(60), sketch.Swap(slant(60), "right:", "r:"), sketch.Tops, []string{"at right and r: no jog, a point of 60 degrees", "at left: no jog, no point"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := theSeam(t, sketch.Joined("0.5", c.front, c.back, c.seam))
			assert.Equal(t, c.want, toldOf(seamEndLines(s, inches)))
		})
	}
}
