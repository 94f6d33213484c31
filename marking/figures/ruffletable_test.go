package figures

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

func TestRufflesInPrint(t *testing.T) {
	const round = "[cloth]\nwidth = 44\n%s[ruffle.hem]\nalong = [\"front.hem\", \"back.hem\"]\nfullness = 2\ndepth = 4\nhem = \"1/2\"\nturn = \"1/4\"\nseam = \"3/8\"\nround = true\n"
	for _, c := range []struct {
		name   string
		half   float64
		beside string
		want   string
	}{
		// 4 x 5 = 20, twice 40, less than 44 - 1/2. It meets itself opposite the front.
		{"one strip, round", 5, fmt.Sprintf(round, sketch.SkirtBack(5)), `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                   5      2        10
  Back, hem                    5      2        10
                                         --------
  the line                                     20
  2 times that, ungathered                     40
  tear strips 5 1/8 in deep: 4 in finished, 1/2 in hem, 1/4 in turned in, 3/8 in
  seam
  1 strip across the cloth is enough; cut it 40 1/2 in long, 1/4 in for a seam
  or a hem at each end included
  the join falls halfway round from the fold of Front, where the middle of the
  strip comes
  quarter both and match the marks: the edge every 5 in, the ruffle every 10 in
`},
		// 4 x 10 = 40, twice 80 = 2 x 43 1/2 less 7: two strips, each on 20 in of the
		// edge, so 10 in to either side of the centre
		{"two strips, round", 10, fmt.Sprintf(round, sketch.SkirtBack(10)), `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                  10      2        20
  Back, hem                   10      2        20
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 5 1/8 in deep: 4 in finished, 1/2 in hem, 1/4 in turned in, 3/8 in
  seam
  2 strips across the cloth; cut each 40 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 10 in along the edge, to either side of the fold of Front; pin the
  middle of a strip there
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		// 4 x 12 = 48, twice 96 = 2.2 x 43 1/2: three strips of 16 in of the edge; one
		// join is 24 in from the centre both ways
		{"three strips, round", 12, fmt.Sprintf(round, sketch.SkirtBack(12)), `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                  12      2        24
  Back, hem                   12      2        24
                                         --------
  the line                                     48
  2 times that, ungathered                     96
  tear strips 5 1/8 in deep: 4 in finished, 1/2 in hem, 1/4 in turned in, 3/8 in
  seam
  3 strips across the cloth; cut each 32 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 8 in along the edge, to either side of the fold of Front; pin the
  middle of a strip there; the last falls halfway round
  quarter both and match the marks: the edge every 12 in, the ruffle every 24 in
`},
		// 2 x 20 = 40, 1 1/2 times 60 = 1.4 x 43 1/2. Open: half a strip at either end
		{"two strips, open", 20, "[cloth]\nwidth = 44\n[ruffle.hem]\nalong = \"front.hem\"\nfullness = 1.5\ndepth = 4\nseam = \"3/8\"\n", `
  hem, ruffle 4 in deep
                                each  times  together
  Front, hem                      20      2        40
                                             --------
  the line                                         40
  1 1/2 times that, ungathered                     60
  tear strips 4 3/8 in deep: 4 in finished, 3/8 in seam
  2 strips across the cloth; cut each 30 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 10 in along the edge, to either side of the fold of Front; pin the
  middle of a strip there
  cut one strip 1/2 in longer, and in two, for the two ends
  quarter both and match the marks: the edge every 10 in, the ruffle every 15 in
`},
		// A back alone has no fold: 2 x 20 = 40, twice 80, two strips from the beginning
		{"two strips, from the beginning on", 10, "[cloth]\nwidth = 44\n" + sketch.SkirtBack(20) + "[seam.back]\njoin = [\"back.rest\", \"back.rest\"]\n[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\njoining = 0\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                   20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  2 strips across the cloth; cut each 40 in long, and join them
  a join falls 20 in along the edge from where it begins
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		// the same round: one join more, where it begins
		{"two strips, round from the beginning on", 10, "[cloth]\nwidth = 44\n" + sketch.SkirtBack(20) + "[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\nround = true\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                   20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  2 strips across the cloth; cut each 40 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 20 in along the edge from where it begins; the last falls where it
  begins
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		// 2 x 5 = 10, twice 20, is one strip. No fold: it meets itself where it begins.
		{"one strip, round from the beginning on", 10, "[cloth]\nwidth = 44\n" + sketch.SkirtBack(5) + "[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\nround = true\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                    5      2        10
                                         --------
  the line                                     10
  2 times that, ungathered                     20
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  1 strip across the cloth is enough; cut it 20 1/2 in long, 1/4 in for a seam
  or a hem at each end included
  the join falls where the edge begins
  quarter both and match the marks: the edge every 2 1/2 in, the ruffle every
  5 in
`},
		// 10 + 20 + 10 = 40, twice 80, and 4 square corners of 2 x 4 in: 112 = 2.6 x 43 1/2,
		// so three strips of 37 3/8. It closes opposite the front.
		{"round square corners", 5, "[cloth]\nwidth = 44\n[ruffle.hem]\nalong = [\"front.hem\", \"front.side\", \"front.top\"]\nfullness = 2\ndepth = 4\nseam = \"3/8\"\nround = true\n", `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                   5      2        10
  Front, side                 10      2        20
  Front, top                   5      2        10
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  square corner of Front       8      4        32
                                         --------
  in all, ungathered                          112
  tear strips 4 3/8 in deep: 4 in finished, 3/8 in seam
  3 strips across the cloth; cut each 37 7/8 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  begin with the middle of a strip at the fold of Front; where joins fall shows
  when it is pinned, for strips go less far where something is added; the last
  falls halfway round
  what is added at a corner is gathered close there, within the depth of the
  ruffle on either side
  quarter both and match the marks: the edge every 10 in, the ruffle every
  20 in, and as much more as is added between two marks
`},
		// 10 + 20, and two corners: 76 = 1.7 x 43 1/2
		{"round square corners, open", 5, "[cloth]\nwidth = 44\n[ruffle.hem]\nalong = [\"front.hem\", \"front.side\"]\nfullness = 2\ndepth = 4\nseam = \"3/8\"\n", `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                   5      2        10
  Front, side                 10      2        20
                                         --------
  the line                                     30
  2 times that, ungathered                     60
  square corner of Front       8      2        16
                                         --------
  in all, ungathered                           76
  tear strips 4 3/8 in deep: 4 in finished, 3/8 in seam
  2 strips across the cloth; cut each 38 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  begin with the middle of a strip at the fold of Front; where joins fall shows
  when it is pinned, for strips go less far where something is added
  cut one strip 1/2 in longer, and in two, for the two ends
  what is added at a corner is gathered close there, within the depth of the
  ruffle on either side
  quarter both and match the marks: the edge every 7 1/2 in, the ruffle every
  15 in, and as much more as is added between two marks
`},
		// Two backs, each 10 + 30 in round with 4 corners: 160 + 64 = 224 = 9.5 x 23 1/2. A
		// back has no fold.
		{"round square corners, from the beginning on", 10, "[cloth]\nwidth = 24\n" + sketch.SkirtBack(10) + "[ruffle.back]\nalong = [\"back.hem\", \"back.rest\"]\nfullness = 2\ndepth = 4\nround = true\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                   10      2        20
  Back, rest                  30      2        60
                                         --------
  the line                                     80
  2 times that, ungathered    80      2       160
  square corner of Back        8      8        64
                            ----  -----  --------
  in all, ungathered         112      2       224
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  10 strips across the cloth for all
  it is 2 ruffles, for no seam joins their lines to each other; what follows is
  of each
  cut 10 strips, each 22 15/16 in long, 1/4 in for a seam or a hem at each end
  included, and join 5 to each ruffle
  begin where the edge does; where joins fall shows when it is pinned, for
  strips go less far where something is added; the last falls where it begins
  what is added at a corner is gathered close there, within the depth of the
  ruffle on either side
  quarter both and match the marks: the edge every 10 in, the ruffle every
  20 in, and as much more as is added between two marks
`},
		// 2 x 20, and twice that in two: 40 in each, quartered each: 5 in of the edge.
		{"on two pieces that lie apart", 5, "[cloth]\nwidth = 44\n" + sketch.SkirtBack(20) + "[piece.band]\n[piece.band.edge.top]\npoints = [[0, 0], [5, 0]]\n[piece.band.edge.rest]\npoints = [[5, 0], [5, 2], [0, 2], [0, 0]]\n" +
			"[seam.top]\njoin = [\"front.top\", \"band.top\"]\ngathered = true\n[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                   20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered    40      2        80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  2 strips across the cloth for all
  it is 2 ruffles, for no seam joins their lines to each other; what follows is
  of each
  cut 2 strips, each 40 1/2 in long, 1/4 in for a seam or a hem at each end
  included
  quarter both and match the marks: the edge every 5 in, the ruffle every 10 in
`},
		{"cloth of no known width", 20, "[ruffle.hem]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\n", `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                  20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
! the width of the cloth is not given, so its strips cannot be counted
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garmentOf(t, sketch.Skirt(c.half), c.beside), trimmings))
		})
	}
}

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
		// 10 mm is 6.3 sixteenths: the hem is what was chosen, and the strip deep enough for it
		{"a hem in mm", "hem = \"10 mm\"\nseam = 0", "10 7/16 in", "10 7/16 in deep: 10 in finished, 10 mm hem", 10 / 25.4},
		// 6 and 7 mm are 8.19 sixteenths together, which 4 and 4 would not hold
		{"a hem and a seam in mm", "hem = \"6 mm\"\nseam = \"7 mm\"", "10 9/16 in", "10 9/16 in deep: 10 in finished, 6 mm hem, 7 mm seam", 13 / 25.4},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "allowance = \"3/8\"\n"+sketch.Front(sketch.Skirt(20))+"\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 10\n"+c.ruffle+"\n")
			r := p.Ruffles[0]
			assert.Equal(t, c.cut, r.CutDepth.String())
			assert.InDelta(t, 10+c.added, r.CutDepth.MM/25.4, 1e-9)
			assert.Equal(t, c.said, ruffleDepths(r, inches))
		})
	}
}

// In brackets stands the nearest step to each length: 2 in, 1/4 in, 1/8 in and 1/4 in are 50.8,
// 6.35, 3.18 and 6.35 mm, together 66.68; 80 mm, 10 mm and 5 mm are 3 1/8 in less 0.06 sixteenths,
// 6.3 and 3.1 sixteenths, and 105 mm 66.1.
func TestWhatIsAddedToARuffleInBoth(t *testing.T) {
	for _, c := range []struct{ name, unit, ruffle, said string }{
		{"inches", "in", "depth = 2\nhem = \"1/4\"\nturn = \"1/8\"\nseam = \"1/4\"", "2 5/8 in (67 mm) deep: 2 in (51 mm) finished, 1/4 in (6 mm) hem, 1/8 in (3 mm) turned in, 1/4 in (6 mm) seam"},
		{"millimetres", "mm", "depth = 80\nhem = 10\nturn = 5\nseam = 10", "105 mm (4 1/8 in) deep: 80 mm (3 1/8 in) finished, 10 mm (3/8 in) hem, 5 mm (3/16 in) turned in, 10 mm (3/8 in) seam"},
		{"chosen in the other system", "in", "depth = 4\nhem = \"10 mm\"\nseam = 0", "4 7/16 in (112 mm) deep: 4 in (102 mm) finished, 3/8 in (10 mm) hem"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, fmt.Sprintf("unit = %q\nallowance = 0\n", c.unit)+sketch.Front(sketch.Skirt(200))+"\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\n"+c.ruffle+"\n")
			assert.Equal(t, c.said, ruffleDepths(p.Ruffles[0], writer{unit: p.Unit, units: AllUnits}))
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
			table := ruffleTable(p.Ruffles[0], 1, inches)
			assert.Equal(t, c.row, table.Rows[2].Cells[0])
			var warnings, remarks []string
			for _, s := range table.Lines {
				if s.Warning && !strings.Contains(s.Text, "the width of the cloth") {
					warnings = append(warnings, s.Text)
				}
			}
			for _, r := range p.Remarks {
				if r.Key == "ruffle.r" {
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
	r := garmentOf(t, sketch.Skirt(90), "[cloth]\nwidth = 20\n[ruffle.hem]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\njoining = \"1/2\"\n").Ruffles[0].Lengths[0]
	assert.Equal(t, 19, r.Strips)
	assert.Len(t, r.JoinPlaces, 9)
	assert.Equal(t, "joins fall 4 3/4 in, 14 3/16 in, 23 11/16 in, 33 3/16 in, 42 5/8 in, 52 1/8 in, 61 9/16 in, 71 1/16 in and so on "+
		"along the edge, to either side of the fold of Front; pin the middle of a strip there", joinsFall(r, inches))
}
