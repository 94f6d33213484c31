package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Ease and gathers in one seam are no mistake: 13 1/2 in drawn up to 9 in, of which 1/2 in is
// eased.
func TestRemarksOnEaseAndGathers(t *testing.T) {
	for _, c := range []struct {
		name, wide, seam string
		want             string
		drawnUp          float64 // inches
	}{
		{"gathers alone", "14.5", "gathered = true", "", 4.5},
		{"both", "14.5", "gathered = true\nease = 0.5",
			"ease and gathers in one seam: of the 4 1/2 in by which the top of front is longer, 1/2 in are eased in and 4 in drawn up; notches on both sides show where the gathers begin and end", 4},
		{"ease takes all", "10.5", "gathered = true\nease = 0.5",
			"ease and gathers in one seam: the top of front is no more than 1/2 in longer than the top of back, which the ease takes; leave gathered out", 0},
		{"scant gathers", "10.9", "gathered = true", "the top of front is only 1.1 times as long as the top of back, scant for gathers", 0.9},
		{"ease alone", "10.5", "ease = 0.5", "", 0},
		{"ease as full as gathers", "12.5", "ease = 3",
			"the top of front is 1.28 times as long as the top of back: as full as gathers, and too full to be eased in; gathered = true in place of ease draws it up", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, sketch.Joined("0.5", sketch.Rect(c.wide), sketch.Rect("10"), sketch.Tops+"\n"+c.seam))
			got := ""
			for _, r := range pattern.Remarks {
				assert.Equal(t, "seam.s", r.Key)
				assert.True(t, r.InTable, "the figures say it too")
				got += r.Text
			}
			assert.Equal(t, c.want, got)
			if s := pattern.Seams[0]; s.Gathered {
				assert.InDelta(t, c.drawnUp, s.DrawnUp().MM/25.4, 1e-6)
			}
		})
	}
}
