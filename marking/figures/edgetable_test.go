package figures

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A skirt of 10 in by 10 in with seams of 1/2 in.
func TestEdgeTable(t *testing.T) {
	const skirt = "name = \"Skirt\"\ncentre: 0,0 0,10\nwaist: 0,10 10,10 | allowance = 0\nside: 10,10 10,0\nhem: 10,0 0,0 | hem = 2"
	for _, c := range []struct{ name, text, want string }{
		// 10 - 2 - 1/4 up and down; across 10 - 1/2, from the fold on.
		{"half of it", sketch.Swap("fold = \"centre\"\n"+skirt, "hem = 2", "hem = 2; turn = 0.25"), `
  Skirt, half of it
          cut   sewn        allowance
  hem      10  9 1/2  hem 2, turn 1/4
  side     10  7 3/4              1/2
  waist    10  9 1/2             none
  centre   10  7 3/4      on the fold
`},
		// 10 - 2 x 1/2 across, less 2 x 2 x 1/4 for two tucks. 5 cm is 1.97 in: 8 1/16 up
		// and down, and it keeps its unit among inches.
		{"with tucks, and a hem in another unit", sketch.Swap(skirt, "hem = 2", `hem = "5 cm"`) + "\n---\n" + sketch.Rows("tuck t centre 1/4 2 3"), `
  Skirt
          cut    sewn  allowance
  hem      10       8  hem 50 mm
  side     10  8 1/16        1/2
  waist    10       8       none
  centre   10  8 1/16        1/2
  sewn: with the tucks and pleats in
`},
		// Half a front of 10 in by 10 in with a seam at the side, of whose width two tucks take 1 in. At
		// the top, where it is cut, they are sewn; at the hem they are open.
		{"cut from a tucked block", "drawn = \"finished\"\nfold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 10,10 | allowance = 0\nside: 10,10 10,0\nhem: 10,0 0,0 | allowance = 0\n---\n" +
			sketch.Rows(`tuck t centre 1/4 2 3 | below = "top"; length = 4`) + "\n[block]\nends = 1\n", `
  front, half of it
          cut    sewn      allowance
  hem      11  10 1/2           none
  side     10      10            1/2
  top      10   9 1/2           none
  centre   10      10  at the centre
  cut: from the tucked block, with the tucks in as far as they are stitched
  sewn: with the tucks and pleats in
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "allowance = \"1/2\"\n"+sketch.Front(c.text))
			assert.Equal(t, c.want, "\n"+printedSection(p, "Edges"))
		})
	}
}
