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

// bosom is half a front as it is when finished, 12 in across at its widest, whole,
// and 12 in long. Its neck reaches 2 1/2 in from the centre.
const bosom = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
neck: 0,10 1.5,10 2.5,11 2.5,12
shoulder: 2.5,12 5,11.5
side: 5,11.5 6,0
hem: 6,0 0,0
---

`

// bib is a whole front as it is when finished, with a line down its middle.
const bib = `drawn = "finished"
left: -6,12 -6,0
hem: -6,0 6,0
right: 6,0 6,12
top: 6,12 -6,12
---

[line.middle]
points = [[0, 0], [0, 12]]
kind = "centre"

`

// tucked is a set of touching tucks beside a line.
func tucked(beside, width string, count int, first, rest string) string {
	return fmt.Sprintf("[tuck.t]\nbeside = %q\nwidth = %q\ncount = %d\nfirst = %q\ngap = 0\n%s\n", beside, width, count, first, rest)
}

// blockOf checks a sketch and returns its piece, which has a block.
func blockOf(t *testing.T, text string) (*Piece, *Pattern) {
	t.Helper()
	pattern, err := check("allowance = 0.375\n" + sketch(text))
	require.NoError(t, err)
	piece := &pattern.Pieces[0]
	require.NotNil(t, piece.Block, "the piece has a block")
	return piece, pattern
}

// The width over the widest part of the piece and the length over the piece's own
// are common practice, as SOURCES lists them: 3 in for twelve tucks of 1/8 in, 4 in
// for eight of 1/4 in, and 1 in for the ends. The other sums are derived from
// 2w a tuck (Baldt, Clothing for Women, 1916).
func TestHowLargeABlockIs(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2"
	for _, c := range []struct {
		name, text    string
		width, length float64 // inches
		top           float64
		takeUp        float64
		folds         int
	}{
		{"1/8 in tucks: 3 in wider than the widest part", bosom + tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\n", 12 + 3, 12 + 1, 12, 3, 12},
		{"1/4 in tucks: 4 in wider", bosom + tucked("cf", "1/4", 4, "3/4", below) + "\n[block]\n", 12 + 4, 12 + 1, 12, 4, 8},
		{"a tuck on the centre is one, not two", bosom + tucked("cf", "1/8", 6, "0", below) + "\n[block]\n", 12 + 2.75, 13, 12, 2.75, 11},
		{"the ends as the file has them", bosom + tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\nends = 0\n", 15, 12, 12, 3, 12},
		{"spare cloth at the sides", bosom + tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\nends = 2\nsides = \"3/4\"\n", 15 + 1.5, 12 + 4, 12 + 1.5, 3, 12},
		{"from edge to edge", bosom + tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\n", 15, 13, 12, 3, 12},
		{"a whole piece", bib + tucked("middle", "1/4", 4, "1", "side = \"right\"") + "\n[block]\n", 12 + 2, 13, 12, 2, 4},
		{"a whole piece with a tuck on the middle", bib + tucked("middle", "1/4", 4, "0", "side = \"right\"") + "\n[block]\n", 12 + 2, 13, 12, 2, 4},
		{"two sets, each to one side", bib + tucked("middle", "1/4", 4, "1", "side = \"right\"") +
			strings.Replace(tucked("middle", "1/8", 4, "1", "side = \"left\""), "tuck.t", "tuck.u", 1) + "\n[block]\n", 12 + 3, 13, 12, 3, 8},
		{"tucks that run across a piece on the fold", bosom + tucked("hem", "1/2", 2, "3", "") + "\n[block]\n", 12 + 2, 12 + 1, 12, 2, 2},
		{"the same, drawn as the other half", swap(bosom, "0,0 0,10", "9,0 9,10", "0,10 1.5,10", "9,10 7.5,10", "2.5,11", "6.5,11", "2.5,12", "6.5,12", "5,11.5", "4,11.5", "6,0", "3,0", "0,0\n", "9,0\n") + tucked("hem", "1/2", 2, "3", "") + "\n[block]\n", 12 + 2, 12 + 1, 12, 2, 2},
		{"pleats", bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\ncount = 2\nfirst = 1\n\n[block]\n", 12 + 4, 13, 12, 4, 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := blockOf(t, c.text)
			b := piece.Block
			assert.InDelta(t, c.width, b.Width/25.4, 1e-9, "width")
			assert.InDelta(t, c.length, b.Length/25.4, 1e-9, "length")
			assert.InDelta(t, c.takeUp, b.TakeUp/25.4, 1e-9, "take-up")
			assert.InDelta(t, c.top, b.Top/25.4, 1e-9, "the top edge, stitched")
			assert.InDelta(t, b.Width-b.TakeUp, b.Top, 1e-9, "width less take-up")
			assert.Equal(t, c.folds, b.Folds, "tucks of the whole block")
		})
	}
}

// The bottom edge is drawn in to measure what the top does (common practice).
func TestABlockSaysHowItIsTorn(t *testing.T) {
	piece, pattern := blockOf(t, bosom+tucked("cf", "1/8", 6, "3/8", "")+"\n[block]\nsides = \"1/2\"\n")
	assert.Equal(t, "tear a block 16 in wide and 13 in long", piece.Block.Tear(Inch))
	assert.Equal(t, "tear a block 40.6 cm wide and 33 cm long", piece.Block.Tear(Centimetre))
	assert.Equal(t, []string{
		"tear a block 16 in wide and 13 in long",
		"all tucks together take up 3 in",
		"stitched, its top edge must measure 13 in",
		"draw its bottom edge in to the same",
	}, piece.Block.notes(pattern.Unit))
}

// Every message a maker gets who has measured the block: twelve 1/8 in tucks in a
// block 15 in wide, so that the top edge should measure 12 in.
func TestWhatAStitchedBlockMeasures(t *testing.T) {
	set := bosom + tucked("cf", "1/8", 6, "3/8", "below = \"neck\"\nlength = 2")
	one := func(measured string) string { return set + "\n[block]\nmeasured = \"" + measured + "\"\n" }
	for _, c := range []struct{ name, text, want string }{
		{"exact", one("12"),
			"the top edge measures 12 in, as it should; the 12 tucks took up 3 in, about 6.4 mm each; the piece just fits"},
		{"exact as far as a ruler shows", one("12.01"),
			"the top edge measures 12 in, as it should; the 12 tucks took up 3 in, about 6.3 mm each; the piece just fits"},
		{"exact, with spare cloth", set + "\n[block]\nsides = \"1/2\"\nmeasured = 13\n",
			"the top edge measures 13 in, as it should; the 12 tucks took up 3 in, about 6.4 mm each; the piece fits, with 1/2 in to spare at each side"},
		// 3 - 3/4 = 2 1/4 in over 12: 3/16 in, 4.7625 mm; off by 1/16 in.
		{"too wide", one("12 3/4"),
			"the top edge measures 12 3/4 in and should measure 12 in; the 12 tucks took up 2 1/4 in instead of 3 in, about 4.8 mm each instead of 6.4 mm: " +
				"1/16 in too little on every tuck; the piece fits, with 3/8 in to spare at each side"},
		// 1/4 in over 12 is 1/48 in, 1/16 in on 3.
		{"a little too wide", one("12 1/4"),
			"the top edge measures 12 1/4 in and should measure 12 in; the 12 tucks took up 2 3/4 in instead of 3 in, about 5.8 mm each instead of 6.4 mm: " +
				"1/16 in too little on every 3 tucks; the piece fits, with 1/8 in to spare at each side"},
		{"one step of the ruler too wide", one("12 1/16"),
			"the top edge measures 12 1/16 in and should measure 12 in; the 12 tucks took up 2 15/16 in instead of 3 in, about 6.2 mm each instead of 6.4 mm: " +
				"1/16 in too little on every 12 tucks; the piece fits, with 1/16 in to spare at each side"},
		// 12 - 11 3/4 = 1/4: 1/8 at each side, of 3/8.
		{"too narrow, within the allowance", one("11 3/4"),
			"the top edge measures 11 3/4 in and should measure 12 in; the 12 tucks took up 3 1/4 in instead of 3 in, about 6.9 mm each instead of 6.4 mm: " +
				"1/16 in too much on every 3 tucks; the piece is 1/8 in too wide for it at each side: of the allowance of 3/8 in there, 1/4 in is left"},
		{"just enough of the allowance left", one("11 1/2"),
			"the top edge measures 11 1/2 in and should measure 12 in; the 12 tucks took up 3 1/2 in instead of 3 in, about 7.4 mm each instead of 6.4 mm: " +
				"1/16 in too much on every 2 tucks; the piece is 1/4 in too wide for it at each side: of the allowance of 3/8 in there, 1/8 in is left"},
		{"too narrow, beyond the allowance", one("11 3/8"),
			"the top edge measures 11 3/8 in and should measure 12 in; the 12 tucks took up 3 5/8 in instead of 3 in, about 7.7 mm each instead of 6.4 mm: " +
				"1/16 in too much on every tuck; the piece does not fit: it is 5/16 in too wide for it at each side, and the allowance there is only 3/8 in"},
		{"no allowance at the sides", strings.Replace(one("11 3/4"), "6,0\nhem", "6,0 | allowance = 0\nhem", 1),
			"the top edge measures 11 3/4 in and should measure 12 in; the 12 tucks took up 3 1/4 in instead of 3 in, about 6.9 mm each instead of 6.4 mm: " +
				"1/16 in too much on every 3 tucks; the piece does not fit: it is 1/8 in too wide for it at each side, and has no allowance there"},
		{"spare cloth is used up first", set + "\n[block]\nsides = \"1/2\"\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 13 in; the 12 tucks took up 3 3/4 in instead of 3 in, about 7.9 mm each instead of 6.4 mm: " +
				"1/16 in too much on every tuck; the piece fits, with 1/8 in to spare at each side"},
		// Tucks of two widths: what one of them took cannot be told.
		{"two widths", bib + tucked("middle", "1/4", 4, "1", "side = \"right\"") +
			strings.Replace(tucked("middle", "1/8", 4, "1", "side = \"left\""), "tuck.t", "tuck.u", 1) + "\n[block]\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 12 in; the 8 tucks took up 2 3/4 in instead of 3 in; the piece fits, with 1/8 in to spare at each side"},
		{"a pleat", bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\nmeasured = 12\n",
			"the top edge measures 12 in, as it should; the 2 folds took up 2 in, about 25.4 mm each; the piece just fits"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := blockOf(t, c.text)
			assert.Equal(t, c.want, strings.Join(piece.Block.measured(piece, Inch), "; "))
			at := ""
			for _, r := range pattern.Remarks {
				if r.Text == c.want {
					at = r.Path
				}
			}
			assert.Equal(t, "piece.front.block.measured", at, "it is told at the key that was measured")
		})
	}
	t.Run("in centimetres", func(t *testing.T) {
		piece, _ := blockOf(t, one("12 1/4"))
		assert.Equal(t, "the top edge measures 31.1 cm and should measure 30.5 cm; the 12 tucks took up 7 cm instead of 7.6 cm, about 5.8 mm each instead of 6.4 mm: "+
			"0.1 cm too little on every 2 tucks; the piece fits, with 0.3 cm to spare at each side", strings.Join(piece.Block.measured(piece, Centimetre), "; "))
	})
}

// What is missing at the sides comes off the seam that runs along the tucks there,
// however the other edge at that corner is cut.
func TestTheAllowanceAtTheWidestPlace(t *testing.T) {
	const corner = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
top: 0,10 3,10
armhole: 3,10 4,7 %s6,6 | allowance = "1/8"
side: 6,6 5,0 | allowance = "1/2"
hem: 5,0 0,0 | allowance = "1/4"
---

`
	for _, c := range []struct {
		name, text string
		want       float64 // inches
	}{
		{"a side that slopes in from the armhole", fmt.Sprintf(corner, ""), 1.0 / 2},
		{"an armhole of short pieces", fmt.Sprintf(corner, "5.9,6.01 5.99,6.001 "), 1.0 / 2},
		{"a side that slopes out to the hem", strings.NewReplacer("6,6 5,0", "6,6 7,0", "5,0 0,0", "7,0 0,0").Replace(fmt.Sprintf(corner, "")), 1.0 / 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := blockOf(t, c.text+tucked("cf", "1/8", 2, "3/8", "")+"\n[block]\n")
			assert.InDelta(t, c.want, piece.Block.sideAllowance(piece)/25.4, 1e-9)
		})
	}
	t.Run("the narrower of two sides", func(t *testing.T) {
		text := strings.Replace(bib, "left: -6,12 -6,0", "left: -6,12 -6,0 | allowance = \"1/4\"", 1)
		piece, _ := blockOf(t, text+tucked("middle", "1/4", 4, "1", "side = \"right\"")+"\n[block]\n")
		assert.InDelta(t, 0.25, piece.Block.sideAllowance(piece)/25.4, 1e-9)
	})
}

func TestBlocksThatCannotBe(t *testing.T) {
	set := tucked("cf", "1/8", 6, "3/8", "")
	const narrow = "take wider cloth, fewer or narrower tucks, or less spare cloth at the sides; or make the block of two, joined under a tuck"
	for _, c := range []struct{ name, cloth, text, want string }{
		{"drawn flat", "", strings.Replace(bosom, "finished", "flat", 1) + set + "\n[block]\n",
			"linden.toml:29: piece.front.block: a block is tucked before the piece is cut, so the piece is drawn finished\nhint: draw the outline as the finished piece lies, and write drawn = \"finished\""},
		{"without tucks", "", bosom + "[block]\n",
			"linden.toml:21: piece.front.block: a block is for a piece with tucks or pleats across it\nhint: leave it out, or give the piece its tucks"},
		{"folds both ways", "", bosom + set + strings.Replace(tucked("hem", "1/2", 1, "2", ""), "tuck.t", "tuck.u", 1) + "\n[block]\n",
			"linden.toml:36: piece.front.block: the folds run two ways, and a block is torn for folds that run one way\nhint: tuck the block one way, and draw the growth tucks after it is cut"},
		{"measured wider than it was torn", "", bosom + set + "\n[block]\nmeasured = \"15 1/16\"\n",
			"linden.toml:30: piece.front.block.measured: the tucked block measures 15 1/16 in, and was torn only 15 in wide\nhint: measure the top edge after the tucks are sewn and pressed"},
		{"cloth too narrow", "14 3/4", bosom + set + "\n[block]\n",
			"linden.toml:31: piece.front.block: the block is 15 in wide, and the cloth is 14 3/4 in between the selvages: 1/4 in too narrow\nhint: " + narrow},
		{"the grain runs across the tucks", "12", strings.Replace(bosom, "drawn", "grain = \"hem\"\ndrawn", 1) + set + "\n[block]\n",
			"linden.toml:32: piece.front.block: the tucks run across the grain, so the block of 15 in by 13 in lies with its length across the cloth, which is 12 in between the selvages: 1 in too narrow\n" +
				"hint: take wider cloth, or less spare cloth at the ends; or turn the grain, so that the block lies along the cloth"},
		{"across the fold, and ending on the piece", "", bosom + tucked("hem", "1/2", 1, "3", "below = \"side\"\nlength = 2") + "\n[block]\n",
			"linden.toml:28: piece.front.tuck.t.length: the tucks run across the fold of the cloth and end on the piece, so a block cannot say where their other ends are\nhint: draw the whole piece, or have them run from edge to edge"},
	} {
		t.Run(c.name, func(t *testing.T) {
			head := "allowance = 0.375\n"
			if c.cloth != "" {
				head += "[cloth]\nwidth = \"" + c.cloth + "\"\n"
			}
			_, err := check(head + sketch(c.text))
			assert.EqualError(t, err, c.want)
		})
	}
}

// A block as wide as the cloth can be torn, and one whose tucks run across the grain
// may be wider: its length is what lies between the selvages.
func TestTheSideOfABlockThatMustFitTheCloth(t *testing.T) {
	set := tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\n"
	for _, c := range []struct{ name, cloth, text string }{
		{"as wide as the cloth", "15", bosom + set},
		{"wider than the cloth, tucked across the grain", "13", strings.Replace(bosom, "drawn", "grain = \"hem\"\ndrawn", 1) + set},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := check("allowance = 0.375\n[cloth]\nwidth = " + c.cloth + "\n" + sketch(c.text))
			assert.NoError(t, err)
		})
	}
}

// Whatever tucks a front has, its three sheets say one thing: the block is wider than
// the piece by what they take; every line of the tuck sheet has its tick; and folded
// where the tuck sheet has them, the tucks are stitched where the cutting sheet says.
func TestTheSheetsOfABlockAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := float64(rapid.IntRange(4, 32).Draw(t, "width")) / 64 // inches
		takes := 2 * width
		sample := ""
		if rapid.Bool().Draw(t, "sampled") {
			takes *= float64(rapid.IntRange(90, 110).Draw(t, "percent")) / 100
			sample = fmt.Sprintf("sample = {tucks = 1, flat = 6, sewn = %g}\n", 6-takes)
		}
		gap := float64(rapid.IntRange(0, 16).Draw(t, "gap")) / 64
		count := rapid.IntRange(1, 6).Draw(t, "count")
		first, centred := 0.0, rapid.Bool().Draw(t, "a tuck on the centre")
		if !centred {
			first = max(width, takes/2) + float64(rapid.IntRange(0, 32).Draw(t, "first"))/64
		}
		whole := rapid.Bool().Draw(t, "whole")
		change := []string{}
		if whole {
			change = []string{"fold =", "print = \"whole\"\nfold ="}
		}
		sides := float64(rapid.IntRange(0, 8).Draw(t, "sides")) / 8
		pattern, err := check("allowance = 0\n" + sketch(swap(bosom, change...)+fmt.Sprintf(
			"[tuck.t]\nbeside = \"cf\"\nwidth = %g\ncount = %d\nfirst = %g\ngap = %g\n%s\n[block]\nsides = %g\n", width, count, first, gap, sample, sides)))
		require.NoError(t, err)
		piece := &pattern.Pieces[0]
		b := piece.Block

		folds := 2 * count
		if centred {
			folds--
		}
		require.Equal(t, folds, b.Folds)
		require.InDelta(t, float64(folds)*takes, b.TakeUp/25.4, 1e-6)
		require.InDelta(t, 12+2*sides+float64(folds)*takes, b.Width/25.4, 1e-6)

		sheet, ruler, cutting := piece.tuckSheet(pattern), piece.tuckRuler(pattern), piece.cuttingSheet(pattern)
		places := func(m Marking, role Role) []float64 {
			var all []float64
			for _, one := range m.Marks {
				if one.Role == role && one.Path[0].X > samePoint {
					all = append(all, one.Path[0].X/25.4)
				}
			}
			slices.Sort(all)
			return slices.CompactFunc(all, func(a, b float64) bool { return math.Abs(b-a) < 1e-6 })
		}
		var flat, seams []float64
		for k := range count {
			at := first + float64(k)*(takes+width+gap)
			seam := at - takes/2 - float64(k)*takes
			if centred {
				seam += takes / 2 // half of the first lies on the other side
			}
			if at > 1e-6 {
				flat = append(flat, at)
			}
			if seam > 1e-6 && (!centred || k > 0) {
				seams = append(seams, seam)
			}
		}
		requireSame := func(want, got []float64, what string) {
			t.Helper()
			require.Len(t, got, len(want), what)
			for i := range want {
				require.InDelta(t, want[i], got[i], 1e-6, what)
			}
		}
		requireSame(flat, places(sheet, TuckFold), "fold lines of the tuck sheet")
		requireSame(flat, places(ruler, TuckFold), "ticks of the fold lines")
		requireSame(places(sheet, TuckStitch), places(ruler, TuckStitch), "ticks of the stitching")
		requireSame(seams, places(cutting, TuckStitch), "stitching of the cutting sheet")
	})
}
