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
		// 6 x 0.2625 = 1.575 in, and 13.575 in is torn 13 5/8 in wide: 0.05 in more at the top.
		{"what a sample took, rounded up to the ruler", bosom + withSample("[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 3\nfirst = \"1/2\"\n", "10", "10", "7 3/8") + "\n[block]\n", 13.625, 13, 12.05, 1.575, 6},
		{"spare cloth that no ruler shows", bosom + tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\nends = 0.01\nsides = 0.01\n", 15.0625, 12.0625, 12.0625, 3, 12},
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

// In a file in centimetres a block is torn to a whole millimetre. Here each tuck took
// (10 - 4.87) / 10 = 0.513 cm, and six of them 3.078 cm: 15.078 cm is torn 15.1 cm
// wide. Half an inch at both ends makes 12 + 2.54 = 14.54 cm: 14.6 cm long.
func TestABlockInMillimetres(t *testing.T) {
	pattern, err := check("unit = \"cm\"\nallowance = 0\n" + sketch(bosom+
		withSample("[tuck.t]\nbeside = \"cf\"\nwidth = 0.25\ncount = 3\nfirst = 1\n", "10", "10", "4.87")+"\n[block]\n"))
	require.NoError(t, err)
	b := pattern.Pieces[0].Block
	assert.InDelta(t, 151, b.Width, 1e-9, "width")
	assert.InDelta(t, 146, b.Length, 1e-9, "length")
	assert.InDelta(t, 151-30.78, b.Top, 1e-9, "the top edge")
	assert.Equal(t, "tear a block 15.1 cm wide and 14.6 cm long", b.Tear(pattern.Unit))
}

// The bottom edge is drawn in to measure what the top does (common practice).
func TestABlockSaysHowItIsTorn(t *testing.T) {
	piece, pattern := blockOf(t, bosom+tucked("cf", "1/8", 6, "3/8", "")+"\n[block]\nsides = \"1/2\"\n")
	assert.Equal(t, "tear a block 16 in wide and 13 in long", piece.Block.Tear(Inch))
	assert.Equal(t, "tear a block 40.6 cm wide and 33 cm long", piece.Block.Tear(Centimetre))
	assert.Equal(t, []string{
		"tear a block 16 in wide and 13 in long",
		"all tucks together take up 3 in",
		"with them in, its top edge must measure 13 in",
		"draw its bottom edge in to the same",
	}, piece.Block.notes(pattern.Unit))
	piece, _ = blockOf(t, "cut = 2\n"+bosom+tucked("cf", "1/8", 6, "3/8", "")+"\n[block]\nsides = \"1/2\"\n")
	assert.Equal(t, "tear 2 blocks, each 16 in wide and 13 in long", piece.Block.Tear(Inch))
}

// Every message a maker gets who has measured the block: twelve 1/8 in tucks in a
// block 15 in wide, so that the top edge should measure 12 in.
func TestWhatAStitchedBlockMeasures(t *testing.T) {
	set := bosom + tucked("cf", "1/8", 6, "3/8", "below = \"neck\"\nlength = 2")
	one := func(measured string) string { return set + "\n[block]\nmeasured = \"" + measured + "\"\n" }
	again := func(flat, sewn string) string {
		return fmt.Sprintf("; for the next one: sample = {tucks = 12, flat = %q, sewn = %q}", flat, sewn)
	}
	half := bib + tucked("middle", "1/4", 4, "1", "side = \"right\"")
	for _, c := range []struct{ name, text, want string }{
		{"exact", one("12"),
			"the top edge measures 12 in, as it should; the 12 tucks took up 3 in; the piece just fits"},
		{"exact as far as a ruler shows", one("12.01"),
			"the top edge measures 12 in, as it should; the 12 tucks took up 3 in; the piece just fits"},
		{"exact, with spare cloth", set + "\n[block]\nsides = \"1/2\"\nmeasured = 13\n",
			"the top edge measures 13 in, as it should; the 12 tucks took up 3 in; the piece fits, with 1/2 in to spare at each side"},
		// 15 - 12 3/4 = 2 1/4; 3/4 more than the piece is wide, half of it at each side.
		{"too wide", one("12 3/4"),
			"the top edge measures 12 3/4 in and should measure 12 in; the 12 tucks took up 2 1/4 in instead of 3 in; the piece fits, with 3/8 in to spare at each side" + again("15 in", "12 3/4 in")},
		{"a little too wide", one("12 1/4"),
			"the top edge measures 12 1/4 in and should measure 12 in; the 12 tucks took up 2 3/4 in instead of 3 in; the piece fits, with 1/8 in to spare at each side" + again("15 in", "12 1/4 in")},
		// Half of 1/16 in is read as 1/16 in.
		{"one step of the ruler too wide", one("12 1/16"),
			"the top edge measures 12 1/16 in and should measure 12 in; the 12 tucks took up 2 15/16 in instead of 3 in; the piece fits, with 1/16 in to spare at each side" + again("15 in", "12 1/16 in")},
		// Half of what they should take up is the least that is believed: 1 1/2 in.
		{"as wide as is believed", one("13 1/2"),
			"the top edge measures 13 1/2 in and should measure 12 in; the 12 tucks took up 1 1/2 in instead of 3 in; the piece fits, with 3/4 in to spare at each side" + again("15 in", "13 1/2 in")},
		// 12 - 11 3/4 = 1/4: 1/8 at each side, of 3/8.
		{"too narrow, within the allowance", one("11 3/4"),
			"the top edge measures 11 3/4 in and should measure 12 in; the 12 tucks took up 3 1/4 in instead of 3 in; the piece is 1/8 in too wide for it at each side: of the allowance of 3/8 in there, 1/4 in is left" + again("15 in", "11 3/4 in")},
		{"just enough of the allowance left", one("11 1/2"),
			"the top edge measures 11 1/2 in and should measure 12 in; the 12 tucks took up 3 1/2 in instead of 3 in; the piece is 1/4 in too wide for it at each side: of the allowance of 3/8 in there, 1/8 in is left" + again("15 in", "11 1/2 in")},
		{"too narrow, beyond the allowance", one("11 3/8"),
			"the top edge measures 11 3/8 in and should measure 12 in; the 12 tucks took up 3 5/8 in instead of 3 in; the piece does not fit: it is 5/16 in too wide for it at each side, and the allowance there is only 3/8 in; let out a tuck or two" + again("15 in", "11 3/8 in")},
		{"no allowance at the sides", strings.Replace(one("11 3/4"), "6,0\nhem", "6,0 | allowance = 0\nhem", 1),
			"the top edge measures 11 3/4 in and should measure 12 in; the 12 tucks took up 3 1/4 in instead of 3 in; the piece does not fit: it is 1/8 in too wide for it at each side, and has no allowance there; let out a tuck or two" + again("15 in", "11 3/4 in")},
		// 16 - 12 1/4 = 3 3/4
		{"spare cloth is used up first", set + "\n[block]\nsides = \"1/2\"\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 13 in; the 12 tucks took up 3 3/4 in instead of 3 in; the piece fits, with 1/8 in to spare at each side" + again("16 in", "12 1/4 in")},
		// A whole piece may lie anywhere on the block, so what is over is told in all.
		{"a whole piece, too wide", half + "\n[block]\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 12 in; the 4 tucks took up 1 3/4 in instead of 2 in; the piece fits, with 1/4 in to spare in all; for the next one: sample = {tucks = 4, flat = \"14 in\", sewn = \"12 1/4 in\"}"},
		{"a whole piece, too narrow", half + "\n[block]\nmeasured = \"11 3/4\"\n",
			"the top edge measures 11 3/4 in and should measure 12 in; the 4 tucks took up 2 1/4 in instead of 2 in; the piece is 1/4 in too wide for it in all: of the allowance of 3/8 in there, 1/8 in is left; for the next one: sample = {tucks = 4, flat = \"14 in\", sewn = \"11 3/4 in\"}"},
		// Tucks of two widths: what one of them took cannot be told.
		{"two widths", half +
			strings.Replace(tucked("middle", "1/8", 4, "1", "side = \"left\""), "tuck.t", "tuck.u", 1) + "\n[block]\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 12 in; the 8 tucks took up 2 3/4 in instead of 3 in; the piece fits, with 1/4 in to spare in all"},
		{"a pleat", bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\nmeasured = 12\n",
			"the top edge measures 12 in, as it should; the 2 folds took up 2 in; the piece just fits"},
		// A pleat has no sample.
		{"a pleat that took less", bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 12 in; the 2 folds took up 1 3/4 in instead of 2 in; the piece fits, with 1/8 in to spare at each side"},
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
	// Twelve tucks of 1/4 cm in a block of 12 + 6 cm.
	t.Run("in centimetres", func(t *testing.T) {
		pattern, err := check("unit = \"cm\"\nallowance = 0.5\n" + sketch(bosom+tucked("cf", "0.25", 6, "0.5", "")+"\n[block]\nmeasured = 12.6\n"))
		require.NoError(t, err)
		piece := &pattern.Pieces[0]
		assert.Equal(t, "the top edge measures 12.6 cm and should measure 12 cm; the 12 tucks took up 5.4 cm instead of 6 cm; the piece fits, with 0.3 cm to spare at each side; "+
			"for the next one: sample = {tucks = 12, flat = \"18 cm\", sewn = \"12.6 cm\"}", strings.Join(piece.Block.measured(piece, Centimetre), "; "))
	})
}

// What a measured block says of a sample is read as one: drawn with it, the block is
// torn so wide that the same tucks leave the piece its width.
func TestTheSampleThatAMeasuredBlockGives(t *testing.T) {
	set := "[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 6\nfirst = \"3/8\"\ngap = 0\n"
	piece, _ := blockOf(t, bosom+set+"\n[block]\nmeasured = \"11 1/4\"\n")
	told := piece.Block.measured(piece, Inch)
	_, sample, found := strings.Cut(told[len(told)-1], "for the next one: ")
	require.True(t, found, told)
	next, _ := blockOf(t, bosom+strings.Replace(set, "3/8", "1/2", 1)+sample+"\n[block]\n")
	// They took 15 - 11 1/4 = 3 3/4 in.
	assert.InDelta(t, 3.75, next.Block.TakeUp/25.4, 1e-9)
	assert.InDelta(t, 15.75, next.Block.Width/25.4, 1e-9)
	assert.InDelta(t, 12, next.Block.Top/25.4, 1e-9)
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
			"linden.toml:30: piece.front.block.measured: a block torn 15 in wide measures 15 1/16 in with all its tucks in, which should take up 3 in\nhint: measure the top edge after the tucks are sewn and pressed"},
		// 15 - 13 9/16 = 1 7/16, less than half of 3
		{"measured as if half the tucks were out", "", bosom + set + "\n[block]\nmeasured = \"13 9/16\"\n",
			"linden.toml:30: piece.front.block.measured: a block torn 15 in wide measures 13 9/16 in with all its tucks in, which should take up 3 in\nhint: measure the top edge after the tucks are sewn and pressed"},
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
		sum, torn := 12+2*sides+float64(folds)*takes, b.Width/25.4
		require.True(t, torn > sum-1e-6 && torn < sum+1.0/16, "%g in is torn %g in wide: as wide, and less than 1/16 in more", sum, torn)
		require.InDelta(t, math.Round(16*torn), 16*torn, 1e-6, "%g in can be read on a ruler", torn)
		require.InDelta(t, torn-float64(folds)*takes, b.Top/25.4, 1e-6, "the top edge, stitched")

		sheet, ruler, cutting := tuckSheet(piece, pattern), tuckRuler(piece, pattern), cuttingSheet(piece, pattern, withoutTemplate)
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

// undercut is half a front whose armhole is hollowed out to 5 in from the centre, so
// that the tip of its shoulder, at 6 in, overhangs it.
const undercut = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
neck: 0,10 3,10 3,12
shoulder: 3,12 6,12
armhole: 6,12 5,10 8,9
side: 8,9 8,0
hem: 8,0 0,0
---

`

// Touching tucks of 1/2 in have their stitching at 1/4, 3/4, ... in. The flap of the
// ninth reaches to 4 3/4 in; that of the tenth to 5 1/4 in, past the inmost point of the
// armhole at 5 in: laid flat, both its layers are hollowed out there, and the piece would
// have a hole. From a tucked block such a front can be cut.
func TestTucksUpIntoTheArmhole(t *testing.T) {
	set := func(count int) string { return undercut + tucked("cf", "1/2", count, "3/4", "") }
	const head = "allowance = 0\n"
	_, err := check(head + sketch(set(9)))
	require.NoError(t, err)
	for _, count := range []int{10, 14} {
		_, err = check(head + sketch(set(count)))
		assert.EqualError(t, err, fmt.Sprintf("linden.toml:24: piece.front.tuck.t: the outline cuts into tuck 10 of %d from the side: laid flat, the piece would have a hole or come apart beside its stitching, 4 3/4 in from \"cf\" finished\n"+
			"hint: the first 9 fit; a piece that is cut from a tucked block may have more of them: give it a table for its block", count))
	}
	pattern, err := check(head + sketch(set(14)+"\n[block]\n"))
	require.NoError(t, err)
	piece := &pattern.Pieces[0]
	assert.InDelta(t, 16+28, piece.Block.Width/25.4, 1e-9, "28 tucks take up 1 in each")
	require.Len(t, piece.Tucks[0].Each, 14)
	for k, one := range piece.Tucks[0].Each {
		assert.InDelta(t, 0.25+0.5*float64(k), one.Stitching/25.4, 1e-9, "stitching of tuck %d", k+1)
		assert.Empty(t, one.Fold, "tuck %d is never drawn on the flat piece", k+1)
		assert.Empty(t, one.Sewn, "tuck %d is never drawn on the flat piece", k+1)
	}
	// The twelfth crosses the tip from 11 1/2 in, and what lies under the armhole.
	assert.Contains(t, drawnAs(cuttingSheet(piece, pattern, withoutTemplate), TuckStitch), "5.75,11.5 5.75,12")
	assert.Contains(t, drawnAs(cuttingSheet(piece, pattern, withoutTemplate), TuckStitch), "5.75,0 5.75,9.75")
}
