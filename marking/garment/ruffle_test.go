package garment_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A petticoat's ruffle is one and a half times its edge: a skirt of 2 1/2 yd takes
// 3 3/4 yd (Kinne and Cooley, Clothing and Health, 1916, pp. 102, 105; the answer is
// derived: 90 in, 135 in). Of cloth 36 in wide, without its seams, that is four strips,
// 135 / 36 = 3.75 in whole ones (Baldt, Clothing for Women, 1916); with seams of 1/4 in
// it is 135 / 35 1/2 = 3.8. Ruffle and edge are quartered (Kinne and Cooley, p. 104):
// 90 / 4 = 22 1/2, 135 / 4 = 33 3/4.
func TestPetticoatRuffle(t *testing.T) {
	for _, joining := range []string{"0", "1/4"} {
		r := garmentOf(t, sketch.Skirt(22.5), "[cloth]\nwidth = 36\n"+sketch.SkirtBack(22.5)+
			"[ruffle.r]\nalong = [\"front.hem\", \"back.hem\"]\nfullness = \"1 1/2\"\ndepth = 8\nround = true\njoining = \""+joining+"\"\n").Ruffles[0]
		assert.Equal(t, "90 in", r.LineLength.String())
		assert.Equal(t, "135 in", r.Length.String())
		assert.Equal(t, "3 3/4 yd", r.Length.Buy().String())
		assert.Equal(t, 4, r.Strips)
		assert.Equal(t, "22 1/2 in", r.LineLength.Quarter().String())
		assert.Equal(t, "33 3/4 in", r.Length.Quarter().String())
	}
}

// A petticoat of 32 by 10 in, whole, the frill along its hem.
func TestARuffleDeeperThanItsPiece(t *testing.T) {
	text := func(depth, along string) string {
		return "unit = \"in\"\nallowance = 0.25\n" + sketch.Piece("petticoat", sketch.Swap(sketch.Skirt(16), "top:", along+":", "hem:", "foot:")) +
			"[ruffle.flounce]\nalong = [\"petticoat." + map[bool]string{true: "foot", false: along}[along == "top"] + "\"]\nfullness = 2\ndepth = " + depth + "\n"
	}
	assert.Equal(t, []string{`pinafore.toml:19: ruffle.flounce: the ruffle is 40 in deep, and "petticoat", the largest piece that it hangs from, is 32 in by 10 in: is the depth right?`},
		saidOf(t, text("40", "top")))
	assert.Empty(t, saidOf(t, text("32", "top")))
	assert.Contains(t, saidOf(t, text("32.0625", "top"))[0], `the ruffle is 32 1/16 in deep`)
	assert.Empty(t, saidOf(t, text("40", "waist")), "a skirt hung from a waist")
}

// A collar's outer edge of 10 in, without allowances, is 15 in at one and a half times; a square
// corner adds two depths, 4 in. A front has 28 in of other edges, and no corner of them turns
// outward but two: 42 + 8.
func TestRufflesThatLieApart(t *testing.T) {
	text := func(head, along, seams string) string {
		return "unit = \"in\"\nallowance = 0\n" + sketch.Piece("collar", head+"neck: 0,0 10,0\nfront: 10,0 10,3\nouter: 10,3 0,3\nback: 0,3 0,0") +
			sketch.Piece("front", "neck: 0,0 10,0\nrest: 10,0 10,9 0,9 0,0") + seams + "[ruffle.frill]\nalong = " + along + "\nfullness = 1.5\ndepth = 2\n"
	}
	const neck = "[seam.neck]\njoin = [\"collar.neck\", \"front.neck\"]\n"
	const outer = `["collar.outer"]`
	for _, c := range []struct{ name, text, want string }{
		{"two collars", text("cut = 2\n", outer, neck), "2 x 15 in"},
		{"two of two layers", text("cut = 4\nlayers = 2\n", outer, neck), "2 x 15 in"},
		{"round three edges of both", text("cut = 2\n", `["collar.front", "collar.outer", "collar.back"]`, neck), "2 x 32 in"},
		{"one collar", text("", outer, neck), "1 x 15 in"},
		{"on the fold, one", text("fold = \"back\"\n", outer, neck), "1 x 30 in"},
		{"on the fold, two", text("cut = 2\nfold = \"back\"\n", outer, neck), "2 x 30 in"},
		{"joined at the back", text("cut = 2\n", outer, neck+"[seam.back]\njoin = [\"collar.back\", \"collar.back\"]\n"), "1 x 30 in"},
		{"without any seam", text("cut = 2\n", outer, ""), "2 x 15 in"},
		{"round, as the file says", text("cut = 2\n", outer, neck) + "round = true\n", "1 x 30 in"},
		{"on two pieces", text("cut = 2\n", `["collar.outer", "front.rest"]`, neck), "2 x 15 in, 1 x 50 in"},
		{"on two pieces, without any seam", text("cut = 2\n", `["collar.outer", "front.rest"]`, ""), "1 x 80 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var all []string
			for _, l := range made.Of(t, c.text).Ruffles[0].Lengths {
				all = append(all, fmt.Sprintf("%d x %s", l.Times, l.Length))
			}
			assert.Equal(t, c.want, strings.Join(all, ", "))
		})
	}
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
		assert.Equal(t, c.strips, garmentOf(t, sketch.Skirt(c.half), text+c.more).Ruffles[0].Strips, "%g in, twice, full twice; %s", c.half, c.more)
	}
}

// What is printed of a ruffle has to come out of its strips: twice 21 23/32 in is read as
// 43 1/2 in and is 43 7/16, which is what cloth of 43 15/16 in has between its seams.
func TestStripsHoldWhatIsPrinted(t *testing.T) {
	r := garmentOf(t, sketch.Skirt(21.71875), "[cloth]\nwidth = \"43 15/16\"\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 1\ndepth = 4\n").Ruffles[0]
	assert.Equal(t, "43 1/2 in", r.Length.String())
	assert.InDelta(t, 43.4375, r.Length.MM/25.4, 1e-9)
	assert.Equal(t, 2, r.Strips)
}

// bib is 7 in wide and 8 in deep, whole: 8 + 7 + 8 = 23 in of edge to be frilled.
const bib = "outer: 0,8 0,0 7,0 7,8\ntop: 7,8 0,8\n"

// A frill's outer edge reaches round a corner as that of lace does, at any fullness: by two
// of its depths at a square one (McGlauflin, Handicraft for Girls, 1910, p. 88, of lace).
// Round a curve it needs its depth times the angle of the turn, in radians (plane geometry;
// derived), of which gathers give what they have along it. At a neck it needs nothing.
func TestAFrillRoundCornersAndCurves(t *testing.T) {
	for _, c := range []struct {
		name, piece, ruffle string
		corners, curves     string
		gathered, length    string
		strips              int // of cloth 24 in wide, 23 1/2 without seams
	}{
		// 46 in are two strips; with 2 x 2 x 2 in they are three
		{"two square corners", bib, `along = "front.outer"; fullness = 2; depth = 2`, "90 x 2: 4.00", "", "46 in", "54 in", 3},
		{"fuller", bib, `along = "front.outer"; fullness = 3; depth = 2`, "90 x 2: 4.00", "", "69 in", "77 in", 4},
		{"deeper", bib, `along = "front.outer"; fullness = 2; depth = 4`, "90 x 2: 8.00", "", "46 in", "62 in", 3},
		{"all round", bib, `along = ["front.outer", "front.top"]; fullness = 2; depth = 2; round = true`, "90 x 4: 4.00", "", "60 in", "76 in", 4},
		{"inside corners", sketch.SquareNeck, `along = "front.neck"; fullness = 2; depth = 2`, "", "", "16 in", "16 in", 1},
		// 3 in x pi = 9.42, half of it is 4.71; 1 in x pi is less
		{"a half circle, gathered enough", half, `along = "front.outer"; fullness = 1.5; depth = 1`, "", "180 x 1: 0.00", "14 3/16 in", "14 3/16 in", 1},
		// 3 in x pi is 4.71 more than that
		{"the same, deeper", half, `along = "front.outer"; fullness = 1.5; depth = 3`, "", "180 x 1: 4.71", "14 3/16 in", "18 15/16 in", 1},
		// 4 11/16 in on either half, 9 3/8 together
		{"at a neck", roundNeck, `along = "front.neck"; fullness = 1.5; depth = 4`, "", "", "14 1/16 in", "14 1/16 in", 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := garmentOf(t, c.piece, "[cloth]\nwidth = 24\n[ruffle.r]\n"+strings.ReplaceAll(c.ruffle, "; ", "\n")+"\n").Ruffles[0]
			assert.Equal(t, c.corners, bends(r.Corners), "corners")
			assert.Equal(t, c.curves, bends(r.Curves), "curves")
			assert.Equal(t, c.gathered, r.Gathered.String())
			assert.Equal(t, c.length, r.Length.String())
			assert.Equal(t, c.strips, r.Strips)
			assert.Equal(t, c.gathered != c.length, r.Lengths[0].Uneven)
		})
	}
}

// Where joins fall along the edge is not known of a ruffle that is fuller at its corners,
// but for the one where it closes: where it begins.
func TestJoinsOfAnUnevenRuffle(t *testing.T) {
	for round, want := range map[bool]string{false: "", true: "30 in"} {
		r := garmentOf(t, bib, fmt.Sprintf("[cloth]\nwidth = 24\n[ruffle.r]\nalong = [\"front.outer\", \"front.top\"]\nfullness = 2\ndepth = 2\nround = %t\n", round)).Ruffles[0]
		var places []string
		for _, at := range r.Lengths[0].JoinPlaces {
			places = append(places, at.String())
		}
		assert.Equal(t, want, strings.Join(places, ", "), "round: %t", round)
	}
}

func TestRufflesThatCannotBe(t *testing.T) {
	for _, c := range []struct{ name, beside, want string }{
		{"seams as wide as the cloth", "[cloth]\nwidth = 2\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\njoining = 1\n",
			"pinafore.toml:24: ruffle.r.joining: joining seams of 1 in leave nothing of cloth that is 2 in wide\nhint: give a narrower joining, or see whether the width of the cloth is in the unit that is meant"},
		{"more strips than anyone tears", "[cloth]\nwidth = 1\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 20\ndepth = 4\n",
			"pinafore.toml:20: ruffle.r: the ruffle needs more than 500 strips of cloth\nhint: see whether depth, fullness and the width of the cloth are in the units meant"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(sketch.Skirt(20)) + "\n" + c.beside)
			assert.EqualError(t, err, c.want)
		})
	}
}

// printed returns a length in inches as it is read.
func printed(t require.TestingT, a length.Amount) float64 {
	mm, err := length.Parse(a.String(), length.Inch)
	require.NoError(t, err)
	return mm / 25.4
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
		along, edge, seam := `"back.hem"`, 2*behind, "[seam.back]\njoin = [\"back.rest\", \"back.rest\"]\n"
		if centred {
			along, edge, seam = `"back.hem", "front.hem"`, 2*behind+2*half, ""
		}
		r := garmentOf(t, sketch.Skirt(half), fmt.Sprintf("[cloth]\nwidth = %g\n%s[ruffle.r]\nalong = [%s]\nfullness = %g\ndepth = 4\njoining = %g\nround = %t\n",
			cloth, sketch.SkirtBack(behind)+seam, along, fullness, joining, round)).Ruffles[0]
		long := math.Ceil(edge*fullness*16-0.01) / 16
		require.InDelta(t, long, printed(t, r.Length), 1e-9)

		// Where joins lie on the edge, the centre at 0, or the beginning.
		var at []float64
		for _, join := range r.Lengths[0].JoinPlaces {
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
