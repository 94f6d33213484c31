package marking

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// skirt is a plain skirt of cloth so wide, in inches: half its front, on the fold, and
// two backs of half that, each 10 in long. Its hem is 4 times half in all.
func skirt(half float64) string {
	return fmt.Sprintf("name = \"Front\"\nfold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 %[1]g,10\nside: %[1]g,10 %[1]g,0\nhem: %[1]g,0 0,0\n", half)
}

func skirtBack(half float64) string {
	return fmt.Sprintf("[piece.back]\nname = \"Back\"\ncut = 2\n[piece.back.edge.hem]\npoints = [[0, 0], [%[1]g, 0]]\n[piece.back.edge.rest]\npoints = [[%[1]g, 0], [%[1]g, 10], [0, 10], [0, 0]]\n", half)
}

// A petticoat's ruffle is one and a half times its edge: a skirt of 2 1/2 yd takes
// 3 3/4 yd (Kinne and Cooley, Clothing and Health, 1916, pp. 102, 105; the answer is
// derived: 90 in, 135 in). Of cloth 36 in wide, without its seams, that is four strips,
// 135 / 36 = 3.75 in whole ones (Baldt, Clothing for Women, 1916); with seams of 1/4 in
// it is 135 / 35 1/2 = 3.8. Ruffle and edge are quartered (Kinne and Cooley, p. 104):
// 90 / 4 = 22 1/2, 135 / 4 = 33 3/4.
func TestPetticoatRuffle(t *testing.T) {
	for _, joining := range []string{"0", "1/4"} {
		r := garment(t, skirt(22.5), "[cloth]\nwidth = 36\n"+skirtBack(22.5)+
			"[ruffle.r]\nalong = [\"front.hem\", \"back.hem\"]\nfullness = \"1 1/2\"\ndepth = 8\nround = true\njoining = \""+joining+"\"\n").Ruffles[0]
		assert.Equal(t, "90 in", r.Edge.String())
		assert.Equal(t, "135 in", r.Length.String())
		assert.Equal(t, "3 3/4 yd", r.Length.buy().String())
		assert.Equal(t, 4, r.Strips)
		assert.Equal(t, "22 1/2 in", r.Edge.quarter().String())
		assert.Equal(t, "33 3/4 in", r.Length.quarter().String())
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
		// 6 mm is 3.78 sixteenths, and is read as 1/4 in
		{"a hem in mm", "hem = \"6 mm\"\nseam = 0", "10 1/4 in", "10 1/4 in deep: 10 in finished, 1/4 in hem", 6 / 25.4},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, err := check("allowance = \"3/8\"\n" + sketch(skirt(20)) + "\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 10\n" + c.ruffle + "\n")
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
			p := garment(t, skirt(10), "[ruffle.r]\nalong = \"front.hem\"\nfullness = \""+c.fullness+"\"\ndepth = 4\n")
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

func TestRufflesInPrint(t *testing.T) {
	const round = "[cloth]\nwidth = 44\n%s[ruffle.hem]\nalong = [\"front.hem\", \"back.hem\"]\nfullness = 2\ndepth = 4\nhem = \"1/2\"\nturn = \"1/4\"\nseam = \"3/8\"\nround = true\n"
	for _, c := range []struct {
		name   string
		half   float64
		beside string
		want   string
	}{
		// 4 x 5 = 20, twice 40, less than 44 - 1/2. It meets itself opposite the front.
		{"one strip, round", 5, fmt.Sprintf(round, skirtBack(5)), `
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
		{"two strips, round", 10, fmt.Sprintf(round, skirtBack(10)), `
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
  joins fall 10 in along the edge, to either side of the fold of Front, where
  the middle of a strip comes
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		// 4 x 12 = 48, twice 96 = 2.2 x 43 1/2: three strips of 16 in of the edge; one
		// join is 24 in from the centre both ways
		{"three strips, round", 12, fmt.Sprintf(round, skirtBack(12)), `
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
  joins fall 8 in along the edge, to either side of the fold of Front, where the
  middle of a strip comes; the last falls halfway round
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
  joins fall 10 in along the edge, to either side of the fold of Front, where
  the middle of a strip comes
  cut one strip 1/2 in longer, and in two, for the two ends
  quarter both and match the marks: the edge every 10 in, the ruffle every 15 in
`},
		// A back alone has no fold: 2 x 20 = 40, twice 80, two strips from the beginning
		{"two strips, from the beginning on", 10, "[cloth]\nwidth = 44\n" + skirtBack(20) + "[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\njoining = 0\n", `
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
		{"two strips, round from the beginning on", 10, "[cloth]\nwidth = 44\n" + skirtBack(20) + "[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\nround = true\n", `
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
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garment(t, skirt(c.half), c.beside), trimmings))
		})
	}
}

// Eight joins are listed, and that there are more is said. 2 x 90 = 180, twice 360; of
// cloth 20 in wide with seams of 1/2 in 360 / 19 = 18.9 strips of 9.47 in of the edge.
func TestManyJoins(t *testing.T) {
	r := garment(t, skirt(90), "[cloth]\nwidth = 20\n[ruffle.hem]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\njoining = \"1/2\"\n").Ruffles[0]
	assert.Equal(t, 19, r.Strips)
	assert.Len(t, r.Joins, 9)
	assert.Equal(t, "joins fall 4 3/4 in, 14 3/16 in, 23 11/16 in, 33 3/16 in, 42 5/8 in, 52 1/8 in, 61 9/16 in, 71 1/16 in and so on "+
		"along the edge, to either side of the fold of Front, where the middle of a strip comes", joinsFall(r, OwnUnit))
}

// Two strips of 43 1/2 in give 87 in. Open, with one of them cut in two, there is one
// seam more, and they give 86 1/2: a ruffle of 87 in takes three then.
func TestAStripThatIsCutInTwoTakesASeamMore(t *testing.T) {
	const text = "[cloth]\nwidth = 44\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\n"
	for _, c := range []struct {
		half   float64
		more   string
		strips int
	}{{21.625, "", 2}, {21.75, "", 3}, {21.75, "round = true\n", 2}} {
		assert.Equal(t, c.strips, garment(t, skirt(c.half), text+c.more).Ruffles[0].Strips, "%g in, twice, full twice; %s", c.half, c.more)
	}
}

// What is printed of a ruffle has to come out of its strips: twice 21 23/32 in is read as
// 43 1/2 in and is 43 7/16, which is what cloth of 43 15/16 in has between its seams.
func TestStripsHoldWhatIsPrinted(t *testing.T) {
	r := garment(t, skirt(21.71875), "[cloth]\nwidth = \"43 15/16\"\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 1\ndepth = 4\n").Ruffles[0]
	assert.Equal(t, "43 1/2 in", r.Length.String())
	assert.InDelta(t, 43.4375, r.Length.MM/25.4, 1e-9)
	assert.Equal(t, 2, r.Strips)
}

func TestRufflesThatCannotBe(t *testing.T) {
	for _, c := range []struct{ name, beside, want string }{
		{"seams as wide as the cloth", "[cloth]\nwidth = 2\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\njoining = 1\n",
			"linden.toml:24: ruffle.r.joining: joining seams of 1 in leave nothing of cloth that is 2 in wide\nhint: give a narrower joining, or see whether the width of the cloth is in the unit that is meant"},
		{"more strips than anyone tears", "[cloth]\nwidth = 1\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 20\ndepth = 4\n",
			"linden.toml:20: ruffle.r: the ruffle needs more than 500 strips of cloth\nhint: see whether depth, fullness and the width of the cloth are in the units meant"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := check("allowance = 0\n" + sketch(skirt(20)) + "\n" + c.beside)
			assert.EqualError(t, err, c.want)
		})
	}
}

// Whatever the ruffle, its strips can be laid along the edge between the joins that are
// told, no join is nearer the centre front than half a strip, and one strip fewer would
// not do.
func TestStripsFillTheRuffle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		half := float64(rapid.IntRange(16*4, 16*60).Draw(t, "half the front")) / 16
		behind := float64(rapid.IntRange(16*4, 16*60).Draw(t, "a back")) / 16
		cloth := float64(rapid.IntRange(20*4, 60*4).Draw(t, "cloth")) / 4
		joining := float64(rapid.IntRange(0, 8).Draw(t, "joining")) / 16
		fullness := float64(rapid.IntRange(100, 400).Draw(t, "fullness")) / 100
		round, centred := rapid.Bool().Draw(t, "round"), rapid.Bool().Draw(t, "on the front")
		along, edge := `"back.hem"`, 2*behind
		if centred {
			along, edge = `"back.hem", "front.hem"`, 2*behind+2*half
		}
		r := garment(t, skirt(half), fmt.Sprintf("[cloth]\nwidth = %g\n%s[ruffle.r]\nalong = [%s]\nfullness = %g\ndepth = 4\njoining = %g\nround = %t\n",
			cloth, skirtBack(behind), along, fullness, joining, round)).Ruffles[0]
		long := math.Ceil(edge*fullness*16-0.01) / 16
		require.InDelta(t, long, float64(steps(t, Inch, r.Length.String()))/16, 1e-9)

		// Where joins lie on the edge, the centre at 0, or the beginning.
		var at []float64
		for _, join := range r.Joins {
			at = append(at, join.MM/25.4)
			if centred && join.MM/25.4 < edge/2-1e-6 {
				at = append(at, -join.MM/25.4)
			}
		}
		slices.Sort(at)
		ends := 2 // the open ends
		if round {
			ends = 0
		}
		pieces := len(at) + 1 - (2-ends)/2
		if round && len(at) == 0 {
			pieces = 1
		}
		// All the pieces come out of the strips: each strip is cut once at most.
		require.True(t, pieces == r.Strips || pieces == r.Strips+1 && centred && !round && r.Strips%2 == 0, "%d pieces of %d strips, joins at %v", pieces, r.Strips, at)
		gives := float64(r.Strips)*cloth - 2*joining*float64(pieces)
		require.GreaterOrEqual(t, gives, long-1e-6, "%d strips less the seams of %d pieces", r.Strips, pieces)
		strip := edge / float64(r.Strips)
		require.LessOrEqual(t, strip*fullness, cloth-2*joining+1e-6, "one strip, ungathered")
		if centred {
			for _, a := range at {
				require.GreaterOrEqual(t, math.Abs(a), strip/2-1e-6, "a join at %g of strips of %g", a, strip)
			}
		}
		for i := 1; i < len(at); i++ {
			require.InDelta(t, strip, at[i]-at[i-1], 1e-6, "between two joins lies a strip")
		}
		// One strip fewer: all whole, the best there is.
		fewer := float64(r.Strips - 1)
		if centred && !round && r.Strips%2 == 1 && r.Strips > 1 {
			require.Less(t, fewer*cloth-2*joining*(fewer+1), long, "one strip fewer, and one of them cut in two")
		} else {
			require.Less(t, fewer*(cloth-2*joining), long+1e-6, "one strip fewer")
		}
	})
}
