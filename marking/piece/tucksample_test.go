package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// withSample writes a set of tucks with what its sample took.
func withSample(set, tucks, flat, sewn string) string {
	return set + "sample = {tucks = " + tucks + ", flat = \"" + flat + "\", sewn = \"" + sewn + "\"}\n"
}

// Ten tucks of 1/8 in should take 10 x 2 x 1/8 = 2 1/2 in. The strip measured 10 in
// flat and 7 3/8 in sewn: they took 2 5/8 in, so each takes 2 5/8 / 10 = 0.2625 in,
// and that stands for 2w = 0.25 in.
//
//	tuck                              1        2        3
//	flat fold line, first + 3/8 k     0.5      0.875    1.25
//	finished stitching, f - T/2 - kT  0.36875  0.48125  0.59375   (T = 0.2625)
//
// Three tucks take 0.7875 in, six of them 1.575 in; a block for a piece 12 in wide
// is 13.575 in wide, and torn 13 5/8 in.
func TestWhatASampleTookStandsForTwiceTheWidth(t *testing.T) {
	set := "[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 3\nfirst = \"1/2\"\nspacing = \"3/8\"\n"
	piece, _ := made.Block(t, sketch.Bosom+withSample(set, "10", "10", "7 3/8")+"\n[block]\n")
	tucks := piece.TuckRows[0]
	assert.True(t, tucks.Sampled)
	assert.InDelta(t, 0.2625, tucks.Takes/25.4, 1e-9, "by one tuck")
	assert.InDelta(t, 0.7875, tucks.Taken()/25.4/2, 1e-9, "by three, on either half")
	for k, want := range []float64{0.36875, 0.48125, 0.59375} {
		assert.InDelta(t, want, tucks.Folds[k].Stitching/25.4, 1e-9, "finished stitching of tuck %d", k+1)
	}
	assert.InDelta(t, 1.575, piece.Block.TakeUp/25.4, 1e-9)
	assert.InDelta(t, 13.625, piece.Block.Width/25.4, 1e-9)
	assert.InDelta(t, 12.05, piece.Block.TopMeasures/25.4, 1e-9)
	// A flat piece has that much more cloth for each half.
	flat := sketched(t, "0.375", sketch.Bosom+withSample(set, "10", "10", "7 3/8"))
	assert.InDelta(t, 6+0.7875, flat.Flat.Outline.Path.Bounds().Width()/25.4, 1e-9)
}

// The lines are drawn where the file has them: w beside the fold, and as far apart
// as spacing says. Where a gap is asked for, the gap is kept and the lines move.
func TestWhichLinesASampleMoves(t *testing.T) {
	set := "[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 3\nfirst = \"1/2\"\n"
	for _, c := range []struct {
		name, text       string
		folds, stitching string // inches from the centre, flat
		gap              float64
	}{
		{"spacing, without a sample", set + "spacing = \"3/8\"\n", "0.5 0.875 1.25", "0.375 0.625 0.75 1 1.125 1.375", 0},
		{"spacing, with one", withSample(set+"spacing = \"3/8\"\n", "10", "10", "7 3/8"), "0.5 0.875 1.25", "0.375 0.625 0.75 1 1.125 1.375", -0.0125},
		{"gap, without a sample", set + "gap = \"1/8\"\n", "0.5 1 1.5", "0.375 0.625 0.875 1.125 1.375 1.625", 0.125},
		// 0.2625 + 0.125 + 0.125 = 0.5125 from fold line to fold line
		{"gap, with one", withSample(set+"gap = \"1/8\"\n", "10", "10", "7 3/8"), "0.5 1.013 1.525", "0.375 0.625 0.888 1.138 1.4 1.65", 0.125},
		{"neither, with one", withSample(set, "10", "10", "7 3/8"), "0.5 0.888 1.275", "0.375 0.625 0.763 1.013 1.15 1.4", 0},
	} {
		for _, drawn := range []string{"finished", "flat"} {
			t.Run(c.name+", drawn "+drawn, func(t *testing.T) {
				piece := sketched(t, "0.375", strings.Replace(sketch.Bosom, "finished", drawn, 1)+c.text)
				folds, stitching := creases(piece)
				assert.Equal(t, c.folds, folds, "fold lines")
				assert.Equal(t, c.stitching, stitching, "stitching")
				assert.InDelta(t, c.gap, piece.TuckRows[0].Gap/25.4, 1e-9, "what shows between two tucks")
			})
		}
	}
}

// A growth tuck gives what it took when it is let down.
func TestASampledGrowthTuckIsLetDownByWhatItTook(t *testing.T) {
	piece := sketched(t, "0.375", strings.Replace(strings.Replace(sketch.Bosom, "finished", "flat", 1), "6,0 0,0", "6,0 0,0 | hem = 1", 1)+
		withSample("[tuck.t]\nbeside = \"hem\"\nwidth = \"1/2\"\ncount = 1\nfirst = 4\n", "2", "4", "1 7/8"))
	assert.InDelta(t, (4-1.875)/2, piece.TuckRows[0].LetDown/25.4, 1e-9)
}

func TestSamplesThatCannotBe(t *testing.T) {
	set := "[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 3\nfirst = \"1/2\"\n"
	const between = "flat is measured before the tucks are sewn, sewn after, between the same two marks"
	const again = "count the tucks of the sample again, and measure it once more; " + between
	for _, c := range []struct{ name, tucks, flat, sewn, want string }{
		{"as wide sewn as flat", "10", "6", "6", "the sample measures 6 in flat and 6 in sewn, so its tucks took nothing\nhint: " + between},
		{"the two turned round", "10", "3 9/16", "6", "the sample measures 3 9/16 in flat and 6 in sewn, so its tucks took nothing\nhint: " + between},
		{"less than their width", "10", "6", "4 13/16", "the sample took up 1 3/16 in, and its 10 tucks, 1/8 in wide, should take about 2 1/2 in\nhint: " + again},
		{"more than twice what they should", "10", "8", "2 7/8", "the sample took up 5 1/8 in, and its 10 tucks, 1/8 in wide, should take about 2 1/2 in\nhint: " + again},
		{"one tuck", "1", "3", "1", "the sample took up 2 in, and its 1 tuck, 1/8 in wide, should take about 1/4 in\nhint: " + again},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.375\n" + sketch.Front(sketch.Bosom+withSample(set, c.tucks, c.flat, c.sewn)))
			assert.EqualError(t, err, "pinafore.toml:26: piece.front.tuck.t.sample: "+c.want)
		})
	}
	for _, c := range []struct{ name, sewn string }{
		{"just their width", "4 3/4"},
		{"just twice what they should", "1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.375\n" + sketch.Front(sketch.Bosom+strings.Replace(withSample(set, "10", "6", c.sewn), "first = \"1/2\"", "first = 2", 1)))
			require.NoError(t, err)
		})
	}
}
