package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// fieldFront is half a front that is 2 x 7 1/4 = 14 1/2 in across at its widest, with eight tucks of
// 1/8 in on each side, and 1/4 in to spare beside it: what its block is told by hand, before it
// is sewn and when its top edge is measured. All derived.
const fieldFront = `drawn = "finished"
fold = "centre front"
centre front: 0,0 0,13
neck: 0,13 2.5,13 2.5,15
shoulder: 2.5,15 4.5,14.5
armhole: 4.5,14.5 4.25,12.5 5.5,11
side: 5.5,11 7.25,0
hem: 7.25,0 0,0 | allowance = 0
---

[tuck.field]
beside = "centre front"
width = "1/8"
count = 8
first = "3/8"
spacing = "3/8"
below = "neck"
length = "2 1/2"

[block]
ends = "1/2"
sides = "1/4"
`

func TestAFieldOfTucksBeforeAndAfterItsBlockIsMeasured(t *testing.T) {
	for _, c := range []struct{ name, measured, want, note string }{
		// Fold lines at 3/8, 3/4, ... 3 in, and tuck k, from 0, is stitched finished at
		// 3/8 - 1/8 + k/8 = 1/4, 3/8, ... 1 1/8 in.
		{"before", "", "1/4 3/8 1/2 5/8 3/4 7/8 1 1 1/8", ""},
		{"as it should", "measured = 15\n", "1/4 3/8 1/2 5/8 3/4 7/8 1 1 1/8", "; the piece fits, with 1/4 in to spare at each side"},
		// They took 4 1/4 in for 4: a sixteenth more each, so that before the stitching of tuck k
		// the cloth is shorter by 1/16 of 1/8 + k/4 in. 0.242, 0.352, 0.461, 0.570, 0.680, 0.789,
		// 0.898 and 1.008 in.
		{"measured 14 3/4 in", "measured = \"14 3/4\"\n", "1/4 3/8 7/16 9/16 11/16 13/16 7/8 1",
			"the top edge measures 14 3/4 in and should measure 15 in; the 16 tucks took up 4 1/4 in instead of 4 in; the piece fits, with 1/8 in to spare at each side"},
		// They took 3 3/4 in: a sixteenth less. 0.258, 0.398, 0.539, ... 1.242 in.
		{"measured 15 1/4 in", "measured = \"15 1/4\"\n", "1/4 3/8 9/16 11/16 13/16 15/16 1 1/8 1 1/4",
			"the top edge measures 15 1/4 in and should measure 15 in; the 16 tucks took up 3 3/4 in instead of 4 in; the piece fits, with 3/8 in to spare at each side"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "unit = \"in\"\nallowance = 0.375\n"+sketch.Front(fieldFront+c.measured))
			front := asData(t, p).each("pieces")[0]
			block, tucks := read(front["block"].(map[string]any)), front.each("tucks")[0]
			assert.Equal(t, []string{"19 in", "16 in", "4 in", "15 in"},
				[]string{block.printed("width"), block.printed("length"), block.printed("take_up"), block.printed("top_when_sewn")})
			var folds, sewn []string
			for _, one := range tucks.each("each") {
				folds = append(folds, strings.TrimSuffix(one.printed("fold"), " in"))
				sewn = append(sewn, strings.TrimSuffix(one.printed("when_sewn"), " in"))
			}
			assert.Equal(t, "3/8 3/4 1 1/8 1 1/2 1 7/8 2 1/4 2 5/8 3", strings.Join(folds, " "))
			assert.Equal(t, c.want, strings.Join(sewn, " "))
			said := ""
			for _, r := range p.Remarks {
				said += r.Text
			}
			assert.Contains(t, said, c.note)
			printed := strings.Join(strings.Fields(printedSection(p, tucksAndPleats)), " ")
			assert.Equal(t, c.measured != "", strings.Contains(printed, "when sewn: by what the top edge of the block measured; what they take up and what shows is as planned"))
		})
	}
}
