package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A back of two halves, each 6 in wide from its folded edge, which is 1 in inside the cut edge,
// to the stitch line 1/2 in inside the side; the centre lies 3/8 in inside the folded edge. What
// is cut on the fold is sewn to 5 5/8 in of it, what opens as well to all 6 in.
func TestSeamsToABackThatLaps(t *testing.T) {
	const (
		back = "cut = 2\nfoot: 0,0 7.5,0\nside: 7.5,0 7.5,5\ntop: 7.5,5 0,5\nplacket: 0,5 0,0 | hem = 1\n---\n"
		lap  = "\n[line.middle]\nbeside = \"placket\"\nat = 1.375\nkind = \"centre\"\n"
		fold = "fold = \"middle\"\nbottom: 0,0 W,0\nside: W,0 W,8\ntop: W,8 0,8\nmiddle: 0,8 0,0"
		open = "cut = 2\nbottom: 0,0 W,0\nside: W,0 W,8\ntop: W,8 0,8\nmiddle: 0,8 0,0"
		join = "[seam.s]\njoin = [\"skirt.top\", \"back.foot\"]\n"
		laid = `the foot of back is sewn as far as "middle": lay its halves on each other, closed on that line, and sew this seam over both; ` +
			"if a slit is cut there into what it is sewn to, that wants 3/8 in more in each half to lap as far"
	)
	for _, c := range []struct {
		name, back, skirt, seam string
		want                    float64 // inches
		told                    []string
	}{
		{"gathered on the fold", back + lap, sketch.Swap(fold, "W", "12"), join + "gathered = true", 5.625, []string{laid}},
		{"plain on the fold", back + lap, sketch.Swap(fold, "W", "6.125"), join, 5.625, []string{laid}},
		{"to a seam in the middle", back + lap, sketch.Swap(open, "W", "12"), join + "gathered = true\n[seam.middle]\njoin = [\"skirt.middle\", \"skirt.middle\"]", 5.625, []string{laid}},
		{"to what opens too", back + lap, sketch.Swap(open, "W", "12"), join + "gathered = true", 6, nil},
		{"without a centre line", back, sketch.Swap(fold, "W", "12"), join + "gathered = true", 6, []string{
			"the foot of back is sewn as far as its finished placket, edge to edge with its other half: the file has no centre line there, which would say how far they lap"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, "unit = \"in\"\nallowance = 0.5\n"+sketch.Piece("back", c.back)+sketch.Piece("skirt", c.skirt)+c.seam+"\n")
			s := pattern.Seams[0]
			assert.InDelta(t, c.want, s.Sides[1].Sewn.MM/25.4, 1e-6)
			assert.True(t, s.Matches(), "they can be sewn together")
			assert.Equal(t, c.told, s.Laps(length.Amount.String))
			at := "placket"
			if c.want < 6 {
				at = "middle"
			}
			assert.Equal(t, at, s.Sides[1].Courses[0].EndsAt("placket"))
			assert.Equal(t, "side", s.Sides[1].Courses[0].EndsAt("side"))
		})
	}
}
