package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A yoke of two halves is gathered to below its foot, and opens where its edge in the middle is
// finished by itself, though nothing is measured round it.
func TestOpenings(t *testing.T) {
	const (
		yoke  = "cut = 2\nfoot: 0,0 6,0\narmhole: 6,0 6,5\ntop: 6,5 0,5\ncentre back: 0,5 0,0 | hem = 1"
		skirt = "fold = \"left\"\nbottom: 0,0 12,0\nright: 12,0 12,8\ntop: 12,8 0,8\nleft: 0,8 0,0"
		lap   = "\n---\n[piece.yoke.line.middle]\nalong = \"centre back\"\ndistance = 1.5\nkind = \"centre\"\n"
		foot  = "[seam.s]\njoin = [\"skirt.top\", \"yoke.foot\"]\ngathered = true\n"
	)
	for _, c := range []struct {
		name, yoke, more string
		want             []string
	}{
		{"a hem", yoke, foot, []string{"the centre back of yoke"}},
		{"a lap", yoke + lap, foot, []string{"the centre back of yoke on middle"}},
		{"a lap without a hem", sketch.Swap(yoke, " | hem = 1", "") + lap, foot, []string{"the centre back of yoke on middle"}},
		{"raw", sketch.Swap(yoke, " | hem = 1", ""), foot, nil},
		{"sewn to its own image", yoke, foot + "[seam.back]\njoin = [\"yoke.centre back\", \"yoke.centre back\"]\n", nil},
		{"called otherwise", sketch.Swap(yoke, "centre back", "end"), foot, nil},
		{"cut once", sketch.Swap(yoke, "cut = 2", "cut = 1"), foot, nil},
		{"the opening of a sleeve", sketch.Swap(yoke, "cut = 2", "name = \"Sleeve\"\ncut = 2"), foot, nil},
		{"in no seam", yoke, "", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, "unit = \"in\"\nallowance = 0.5\n"+sketch.Piece("yoke", c.yoke)+sketch.Piece("skirt", skirt)+c.more)
			var got []string
			for _, o := range pattern.Openings() {
				text := o.Title()
				if o.Closed != "" {
					text += " on " + o.Closed
				}
				got = append(got, text)
			}
			assert.Equal(t, c.want, got)
		})
	}
}
