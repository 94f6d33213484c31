package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
)

// A strip is as deep as the ruffle with all that is added to it: 3 1/2 in of hem, a turn
// and a seam of 1/4 in each are 4 in (Kinne and Cooley, p. 36); 1/2 in of turn, 5 in of
// hem and 1/2 in of seam are 6 in (Ontario Teachers' Manuals, Household Science in Rural
// Schools, 1918, pp. 130-133).
func TestWhatIsAddedToARuffle(t *testing.T) {
	for _, c := range []struct {
		name, ruffle, cut, said string
		added                   float64 // inches
	}{
		{"a hem of 3 1/2 in", "hem = \"3 1/2\"\nturn = \"1/4\"\nseam = \"1/4\"", "14 in", "14 in deep: 10 in finished, 3 1/2 in hem, 1/4 in turned in, 1/4 in seam", 4},
		{"a hem of 5 in", "hem = 5\nturn = \"1/2\"\nseam = \"1/2\"", "16 in", "16 in deep: 10 in finished, 5 in hem, 1/2 in turned in, 1/2 in seam", 6},
		{"its seam alone, as all others", "", "10 3/8 in", "10 3/8 in deep: 10 in finished, 3/8 in seam", 0.375},
		{"nothing", "seam = 0", "10 in", "10 in deep: 10 in finished, nothing for a hem or a seam", 0},
		// 6 mm is 3.78 sixteenths, and is read as 1/4 in
		{"a hem in mm", "hem = \"6 mm\"\nseam = 0", "10 1/4 in", "10 1/4 in deep: 10 in finished, 1/4 in hem", 6 / 25.4},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, err := check("allowance = \"3/8\"\n" + sketch.Front(sketch.Skirt(20)) + "\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 10\n" + c.ruffle + "\n")
			require.NoError(t, err)
			r := p.Ruffles[0]
			assert.Equal(t, c.cut, r.CutDepth.String())
			assert.InDelta(t, 10+c.added, r.CutDepth.MM/25.4, 1e-9)
			assert.Equal(t, c.said, ruffleDepths(r, OwnUnit))
		})
	}
}

// A dust ruffle is 1 1/4 to 1 1/3 times its edge (Baldt, Petticoats), and is not warned
// of. More than three times is told (common practice).
func TestFullnessThatIsWarnedOf(t *testing.T) {
	for _, c := range []struct{ fullness, row, warning string }{
		{"1", "as long as that, ungathered", "a ruffle no longer than its edge hangs flat; 1 1/4 times its edge is the least that hangs in folds"},
		{"1 1/5", "1.2 times that, ungathered", "1.2 times its edge is scant for a ruffle; 1 1/4 is the least that hangs in folds"},
		{"1 1/4", "1 1/4 times that, ungathered", ""},
		{"1 1/3", "1 1/3 times that, ungathered", ""},
		{"2", "2 times that, ungathered", ""},
		{"3", "3 times that, ungathered", ""},
		{"3 1/8", "3 1/8 times that, ungathered", "3 1/8 times its edge is much for a ruffle; 3 is the most that draws up well"},
	} {
		t.Run(c.fullness, func(t *testing.T) {
			p := garmentOf(t, sketch.Skirt(10), "[ruffle.r]\nalong = \"front.hem\"\nfullness = \""+c.fullness+"\"\ndepth = 4\n")
			table := ruffleTable(p.Ruffles[0], OwnUnit)
			assert.Equal(t, c.row, table.Rows[2].Cells[0])
			var warnings, remarks []string
			for _, s := range table.Lines {
				if s.Warning && !strings.Contains(s.Text, "the width of the cloth") {
					warnings = append(warnings, s.Text)
				}
			}
			for _, r := range p.Remarks {
				if r.Path == "ruffle.r" {
					remarks = append(remarks, r.Text)
				}
			}
			assert.Equal(t, c.warning, strings.Join(warnings, "\n"), "in the figures")
			assert.Equal(t, c.warning, strings.Join(remarks, "\n"), "as a remark")
		})
	}
}

// Eight joins are listed, and that there are more is said. 2 x 90 = 180, twice 360; of
// cloth 20 in wide with seams of 1/2 in 360 / 19 = 18.9 strips of 9.47 in of the edge.
func TestManyJoins(t *testing.T) {
	r := garmentOf(t, sketch.Skirt(90), "[cloth]\nwidth = 20\n[ruffle.hem]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\njoining = \"1/2\"\n").Ruffles[0]
	assert.Equal(t, 19, r.Strips)
	assert.Len(t, r.Joins, 9)
	assert.Equal(t, "joins fall 4 3/4 in, 14 3/16 in, 23 11/16 in, 33 3/16 in, 42 5/8 in, 52 1/8 in, 61 9/16 in, 71 1/16 in and so on "+
		"along the edge, to either side of the fold of Front, where the middle of a strip comes", joinsFall(r, OwnUnit))
}
