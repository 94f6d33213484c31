package piece_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// The width over the widest part of the piece and the length over the piece's own
// are common practice: 3 in for twelve tucks of 1/8 in, 4 in for eight of 1/4 in, and
// 1 in for the ends; the counts are derived. So are the other sums, from 2w a tuck
// (Baldt, Clothing for Women, 1916, Self-Trimmings; Kinne and Cooley, Clothing and Health,
// 1916, p. 99).
func TestHowLargeABlockIs(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2"
	for _, c := range []struct {
		name, text    string
		width, length float64 // inches
		top           float64
		takeUp        float64
		folds         int
	}{
		{"1/8 in tucks: 3 in wider than the widest part", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\n", 12 + 3, 12 + 1, 12, 3, 12},
		{"1/4 in tucks: 4 in wider", sketch.Bosom + sketch.Tucked("cf", "1/4", 4, "3/4", below) + "\n[block]\n", 12 + 4, 12 + 1, 12, 4, 8},
		{"a tuck on the centre is one, not two", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "0", below) + "\n[block]\n", 12 + 2.75, 13, 12, 2.75, 11},
		{"the ends as the file has them", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\nends = 0\n", 15, 12, 12, 3, 12},
		{"spare cloth at the sides", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\nends = 2\nsides = \"3/4\"\n", 15 + 1.5, 12 + 4, 12 + 1.5, 3, 12},
		{"from edge to edge", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\n", 15, 13, 12, 3, 12},
		{"a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 4, "1", "side = \"right\"") + "\n[block]\n", 12 + 2, 13, 12, 2, 4},
		{"a whole piece with a tuck on the middle", sketch.Bib + sketch.Tucked("middle", "1/4", 4, "0", "side = \"right\"") + "\n[block]\n", 12 + 2, 13, 12, 2, 4},
		{"two sets, each to one side", sketch.Bib + sketch.Tucked("middle", "1/4", 4, "1", "side = \"right\"") +
			strings.Replace(sketch.Tucked("middle", "1/8", 4, "1", "side = \"left\""), "tuck.t", "tuck.u", 1) + "\n[block]\n", 12 + 3, 13, 12, 3, 8},
		{"tucks that run across a piece on the fold", sketch.Bosom + sketch.Tucked("hem", "1/2", 2, "3", "") + "\n[block]\n", 12 + 2, 12 + 1, 12, 2, 2},
		{"the same, drawn as the other half", sketch.Swap(sketch.Bosom, "0,0 0,10", "9,0 9,10", "0,10 1.5,10", "9,10 7.5,10", "2.5,11", "6.5,11", "2.5,12", "6.5,12", "5,11.5", "4,11.5", "6,0", "3,0", "0,0\n", "9,0\n") + sketch.Tucked("hem", "1/2", 2, "3", "") + "\n[block]\n", 12 + 2, 12 + 1, 12, 2, 2},
		// 6 x 0.2625 = 1.575 in, and 13.575 in is torn 13 5/8 in wide: 0.05 in more at the top.
		{"what a sample took, rounded up to the ruler", sketch.Bosom + withSample("[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 3\nfirst = \"1/2\"\n", "10", "10", "7 3/8") + "\n[block]\n", 13.625, 13, 12.05, 1.575, 6},
		{"spare cloth that no ruler shows", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", below) + "\n[block]\nends = 0.01\nsides = 0.01\n", 15.0625, 12.0625, 12.0625, 3, 12},
		{"pleats", sketch.Bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\ncount = 2\nfirst = 1\n\n[block]\n", 12 + 4, 13, 12, 4, 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := made.Block(t, c.text)
			b := piece.Block
			assert.InDelta(t, c.width, b.Width/25.4, 1e-9, "width")
			assert.InDelta(t, c.length, b.Length/25.4, 1e-9, "length")
			assert.InDelta(t, c.takeUp, b.TakeUp/25.4, 1e-9, "take-up")
			assert.InDelta(t, c.top, b.TopMeasures/25.4, 1e-9, "the top edge, stitched")
			assert.InDelta(t, b.Width-b.TakeUp, b.TopMeasures, 1e-9, "width less take-up")
			assert.Equal(t, c.folds, len(b.Group.Folding.Folds()), "tucks of the whole block")
		})
	}
}

// In a file in centimetres a block is torn to a whole millimetre. Here each tuck took
// (10 - 4.87) / 10 = 0.513 cm, and six of them 3.078 cm: 15.078 cm is torn 15.1 cm
// wide. Half an inch at both ends makes 12 + 2.54 = 14.54 cm: 14.6 cm long.
func TestABlockInMillimetres(t *testing.T) {
	pattern, err := made.Pattern("unit = \"cm\"\nallowance = 0\n" + sketch.Front(sketch.Bosom+
		withSample("[tuck.t]\nbeside = \"cf\"\nwidth = 0.25\ncount = 3\nfirst = 1\n", "10", "10", "4.87")+"\n[block]\n"))
	require.NoError(t, err)
	b := pattern.Pieces[0].Block
	assert.InDelta(t, 151, b.Width, 1e-9, "width")
	assert.InDelta(t, 146, b.Length, 1e-9, "length")
	assert.InDelta(t, 151-30.78, b.TopMeasures, 1e-9, "the top edge")
	assert.Equal(t, "tear a block 15.1 cm wide and 14.6 cm long", b.Tear(pattern.Unit))
}

// The bottom edge is drawn in to measure what the top does (common practice); that a piece
// is tucked first and cut afterwards, Watson, Textiles and Clothing, 1907, p. 185.
func TestABlockSaysHowItIsTorn(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 6, "3/8", "")+"\n[block]\nsides = \"1/2\"\n")
	assert.Equal(t, "tear a block 16 in wide and 13 in long", piece.Block.Tear(length.Inch))
	assert.Equal(t, "tear a block 40.6 cm wide and 33 cm long", piece.Block.Tear(length.Centimetre))
	assert.Equal(t, []string{"all tucks together take up 3 in"}, piece.Block.Notes(pattern.Unit))
	piece, _ = made.Block(t, "cut = 2\n"+sketch.Bosom+sketch.Tucked("cf", "1/8", 6, "3/8", "")+"\n[block]\nsides = \"1/2\"\n")
	assert.Equal(t, "tear 2 blocks, each 16 in wide and 13 in long", piece.Block.Tear(length.Inch))
}

// measuredWords is all that is said of a block that was measured, and of its sample.
func measuredWords(p *piece.Piece, unit length.Unit) string {
	told := p.Block.MeasuredNotes(p, unit)
	if next := p.Block.SampleForNext(unit); next != "" {
		told = append(told, next)
	}
	return strings.Join(told, "; ")
}

// Every message a maker gets who has measured the block: twelve 1/8 in tucks in a
// block 15 in wide, so that the top edge should measure 12 in.
func TestWhatAStitchedBlockMeasures(t *testing.T) {
	set := sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "below = \"neck\"\nlength = 2")
	one := func(measured string) string { return set + "\n[block]\nmeasured = \"" + measured + "\"\n" }
	again := func(flat, sewn string) string {
		return fmt.Sprintf("; for the next one: sample = {tucks = 12, flat = %q, sewn = %q}", flat, sewn)
	}
	half := sketch.Bib + sketch.Tucked("middle", "1/4", 4, "1", "side = \"right\"")
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
			strings.Replace(sketch.Tucked("middle", "1/8", 4, "1", "side = \"left\""), "tuck.t", "tuck.u", 1) + "\n[block]\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 12 in; the 8 tucks took up 2 3/4 in instead of 3 in; the piece fits, with 1/4 in to spare in all"},
		{"a pleat", sketch.Bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\nmeasured = 12\n",
			"the top edge measures 12 in, as it should; the 2 folds took up 2 in; the piece just fits"},
		// At the top one tuck is open, which hangs from the hem: 16 1/2 - 4 = 12 1/2. As those above took
		// 1/8 more than they should, it takes 9/16, and below the piece is drawn in to 11 7/16.
		{"as wide as the piece, where a tuck hangs from the bottom", sketch.Bib + sketch.Tucked("left", "1/4", 8, "1", "below = \"top\"\nlength = 4") +
			strings.Replace(sketch.Tucked("right", "1/4", 1, "1", "below = \"hem\"\nlength = 4"), "tuck.t", "tuck.u", 1) + "\n[block]\nmeasured = 12\n",
			"the top edge measures 12 in and should measure 12 1/2 in; the tucks at the top took up 4 1/2 in instead of 4 in; the piece does not fit: it is 9/16 in too wide for it in all, and the allowance there is only 3/8 in; let out a tuck or two"},
		// A pleat has no sample.
		{"a pleat that took less", sketch.Bosom + "[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 1\n\n[block]\nmeasured = \"12 1/4\"\n",
			"the top edge measures 12 1/4 in and should measure 12 in; the 2 folds took up 1 3/4 in instead of 2 in; the piece fits, with 1/8 in to spare at each side"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			assert.Equal(t, c.want, measuredWords(piece, length.Inch))
			at := ""
			for _, r := range pattern.Remarks {
				if r.Text == c.want {
					at = r.Key
				}
			}
			assert.Equal(t, "piece.front.block.measured", at, "it is told at the key that was measured")
		})
	}
	// Twelve tucks of 1/4 cm in a block of 12 + 6 cm.
	t.Run("in centimetres", func(t *testing.T) {
		pattern, err := made.Pattern("unit = \"cm\"\nallowance = 0.5\n" + sketch.Front(sketch.Bosom+sketch.Tucked("cf", "0.25", 6, "0.5", "")+"\n[block]\nmeasured = 12.6\n"))
		require.NoError(t, err)
		piece := &pattern.Pieces[0]
		assert.Equal(t, "the top edge measures 12.6 cm and should measure 12 cm; the 12 tucks took up 5.4 cm instead of 6 cm; the piece fits, with 0.3 cm to spare at each side; "+
			"for the next one: sample = {tucks = 12, flat = \"18 cm\", sewn = \"12.6 cm\"}", measuredWords(piece, length.Centimetre))
	})
}

// What a measured block says of a sample is read as one: drawn with it, the block is
// torn so wide that the same tucks leave the piece its width.
func TestTheSampleThatAMeasuredBlockGives(t *testing.T) {
	set := "[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 6\nfirst = \"3/8\"\ngap = 0\n"
	piece, _ := made.Block(t, sketch.Bosom+set+"\n[block]\nmeasured = \"11 1/4\"\n")
	told := piece.Block.SampleForNext(length.Inch)
	_, sample, found := strings.Cut(told, "for the next one: ")
	require.True(t, found, told)
	next, _ := made.Block(t, sketch.Bosom+strings.Replace(set, "3/8", "1/2", 1)+sample+"\n[block]\n")
	// They took 15 - 11 1/4 = 3 3/4 in.
	assert.InDelta(t, 3.75, next.Block.TakeUp/25.4, 1e-9)
	assert.InDelta(t, 15.75, next.Block.Width/25.4, 1e-9)
	assert.InDelta(t, 12, next.Block.TopMeasures/25.4, 1e-9)
}

func TestBlocksThatCannotBe(t *testing.T) {
	set := sketch.Tucked("cf", "1/8", 6, "3/8", "")
	const narrow = "take wider cloth, fewer or narrower tucks, or less spare cloth at the sides; or make the block of two, joined under a tuck"
	for _, c := range []struct{ name, cloth, text, want string }{
		{"drawn flat", "", strings.Replace(sketch.Bosom, "finished", "flat", 1) + set + "\n[block]\n",
			"pinafore.toml:29: piece.front.block: a block is tucked before the piece is cut, so the piece is drawn finished\nhint: draw the outline as the finished piece lies, and write drawn = \"finished\""},
		{"without tucks", "", sketch.Bosom + "[block]\n",
			"pinafore.toml:21: piece.front.block: a block is for a piece with tucks or pleats across it\nhint: leave it out, or give the piece its tucks"},
		{"folds both ways", "", sketch.Bosom + set + strings.Replace(sketch.Tucked("hem", "1/2", 1, "2", ""), "tuck.t", "tuck.u", 1) + "\n[block]\n",
			"pinafore.toml:36: piece.front.block: the folds run two ways, and a block is torn for folds that run one way\nhint: tuck the block one way, and draw the growth tucks after it is cut"},
		{"measured wider than it was torn", "", sketch.Bosom + set + "\n[block]\nmeasured = \"15 1/16\"\n",
			"pinafore.toml:30: piece.front.block.measured: a block torn 15 in wide measures 15 1/16 in with all its tucks in, which should take up 3 in\nhint: measure the top edge after the tucks are sewn and pressed"},
		// 15 - 13 9/16 = 1 7/16, less than half of 3
		{"measured as if half the tucks were out", "", sketch.Bosom + set + "\n[block]\nmeasured = \"13 9/16\"\n",
			"pinafore.toml:30: piece.front.block.measured: a block torn 15 in wide measures 13 9/16 in with all its tucks in, which should take up 3 in\nhint: measure the top edge after the tucks are sewn and pressed"},
		{"cloth too narrow", "14 3/4", sketch.Bosom + set + "\n[block]\n",
			"pinafore.toml:31: piece.front.block: the block is 15 in wide, and the cloth is 14 3/4 in between the selvages: 1/4 in too narrow\nhint: " + narrow},
		{"the grain runs across the tucks", "12", strings.Replace(sketch.Bosom, "drawn", "grain = \"hem\"\ndrawn", 1) + set + "\n[block]\n",
			"pinafore.toml:32: piece.front.block: the tucks run across the grain, so the block of 15 in by 13 in lies with its length across the cloth, which is 12 in between the selvages: 1 in too narrow\n" +
				"hint: take wider cloth, or less spare cloth at the ends; or turn the grain, so that the block lies along the cloth"},
		{"across the fold, and ending on the piece", "", sketch.Bosom + sketch.Tucked("hem", "1/2", 1, "3", "below = \"side\"\nlength = 2") + "\n[block]\n",
			"pinafore.toml:28: piece.front.tuck.t.length: the tucks run across the fold of the cloth and end on the piece, so a block cannot say where their other ends are\nhint: draw the whole piece, or have them run from edge to edge"},
	} {
		t.Run(c.name, func(t *testing.T) {
			head := "allowance = 0.375\n"
			if c.cloth != "" {
				head += "[cloth]\nwidth = \"" + c.cloth + "\"\n"
			}
			_, err := made.Pattern(head + sketch.Front(c.text))
			assert.EqualError(t, err, c.want)
		})
	}
}

// A block as wide as the cloth can be torn, and one whose tucks run across the grain
// may be wider: its length is what lies between the selvages.
func TestTheSideOfABlockThatMustFitTheCloth(t *testing.T) {
	set := sketch.Tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\n"
	for _, c := range []struct{ name, cloth, text string }{
		{"as wide as the cloth", "15", sketch.Bosom + set},
		{"wider than the cloth, tucked across the grain", "13", strings.Replace(sketch.Bosom, "drawn", "grain = \"hem\"\ndrawn", 1) + set},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.375\n[cloth]\nwidth = " + c.cloth + "\n" + sketch.Front(c.text))
			assert.NoError(t, err)
		})
	}
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
			front, _ := made.Block(t, c.text+sketch.Tucked("cf", "1/8", 2, "3/8", "")+"\n[block]\n")
			assert.InDelta(t, c.want, piece.SideAllowance(front)/25.4, 1e-9)
		})
	}
	t.Run("the narrower of two sides", func(t *testing.T) {
		text := strings.Replace(sketch.Bib, "left: -6,12 -6,0", "left: -6,12 -6,0 | allowance = \"1/4\"", 1)
		front, _ := made.Block(t, text+sketch.Tucked("middle", "1/4", 4, "1", "side = \"right\"")+"\n[block]\n")
		assert.InDelta(t, 0.25, piece.SideAllowance(front)/25.4, 1e-9)
	})
}
