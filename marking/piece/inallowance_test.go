package piece_test

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// beside writes a piece 6 in wide and 10 in high whose stitch lines lie 1/2 in inside it, with
// tucks of 1/8 in along its left edge, whose file's line is 18; there are as many as folds says,
// and they lie as it says.
func beside(drawn, side, folds string) string {
	return sketch.Front("drawn = \"" + drawn + "\"\nleft: 0,0 0,10 | allowance = 0.5\ntop: 0,10 6,10 | allowance = 0.5\n" +
		side + "\nfoot: 6,0 0,0 | allowance = 0.5\n---\n\n[tuck.t]\nbeside = \"left\"\nwidth = \"1/8\"\n" + strings.ReplaceAll(folds, "; ", "\n") + "\n")
}

const besideSide = "side: 6,10 6,0 | allowance = 0.5"

// The stitch line of the side is 5 1/2 in from the left edge, that of the left edge 1/2 in. Of
// a piece drawn flat, a tuck of 1/8 in with its fold line at f is stitched at f - 1/8 and f + 1/8,
// which come together, and the seam of the side lies as far from the second as the cloth between
// has it. Derived.
func TestTucksInSeams(t *testing.T) {
	const hem = "side: 6,10 6,0 | hem = 0.5"
	for _, c := range []struct{ name, drawn, side, folds, want string }{
		{"clear of it, flat", "flat", besideSide, `count = 1; first = "5 1/4"; press = "away"`, ""},
		{"its fold on the seam, flat", "flat", besideSide, `count = 1; first = "5 1/4"; press = "away"`, ""},
		{"its fold past it, flat", "flat", besideSide, `count = 1; first = "5 5/16"; press = "away"`,
			`the tuck is caught in the seam of "side": finished, its stitching lies 5 3/16 in from "left", and its fold 1/16 in past the stitch line of that edge`},
		{"pressed the other way, flat", "flat", besideSide, `count = 1; first = "5 5/16"; press = "toward"`, ""},
		{"pressed no way, flat", "flat", besideSide, `count = 1; first = "5 5/16"`, ""},
		{"stitched on it, flat", "flat", besideSide, `count = 1; first = "5 3/8"`, ""},
		{"stitched on it and pressed over it, flat", "flat", besideSide, `count = 1; first = "5 3/8"; press = "away"`,
			`the tuck is caught in the seam of "side": finished, its stitching lies 5 1/4 in from "left", and its fold 1/8 in past the stitch line of that edge`},
		{"stitched past it by half a step of the ruler", "finished", besideSide, `count = 1; first = "5 21/32"; press = "toward"`, ""},
		{"stitched past it, flat", "flat", besideSide, `count = 1; first = "5 1/2"; press = "away"`,
			`the tuck is stitched in the allowance of "side": finished, its stitching lies 5 3/8 in from "left", 1/8 in past the stitch line of that edge, and the seam takes it in`},
		{"the stitching 5 5/8, the stitch line 5 1/2, finished", "finished", besideSide, `count = 1; first = "5 3/4"; press = "away"`,
			`the tuck is stitched in the allowance of "side": finished, its stitching lies 5 5/8 in from "left", 1/8 in past the stitch line of that edge, and the seam takes it in`},
		{"its fold past it, finished", "finished", besideSide, `count = 1; first = "5 9/16"; press = "away"`,
			`the tuck is caught in the seam of "side": finished, its stitching lies 5 7/16 in from "left", and its fold 1/16 in past the stitch line of that edge`},
		{"one of six caught and two stitched in it, finished", "finished", besideSide, `count = 6; first = "5 3/16"; spacing = "3/8"; press = "away"`,
			`tuck 4 of 6 is caught in the seam of "side": finished, its stitching lies 5 7/16 in from "left", and its fold 1/16 in past the stitch line of that edge
tucks 5 to 6 of 6 are stitched in the allowance of "side": finished, the stitching of tuck 5 lies 5 9/16 in from "left", 1/16 in past the stitch line of that edge, and the seam takes them in`},
		{"the first, by the edge that all lie beside", "flat", besideSide, `count = 3; first = "1/4"; spacing = "1/2"; press = "away"`,
			`tuck 1 of 3 is stitched in the allowance of "left": finished, its stitching lies 1/8 in from "left", 3/8 in past the stitch line of that edge, and the seam takes it in`},
		{"in a hem, where it is told as that", "finished", hem, `count = 1; first = "5 3/4"; press = "away"`, ""},
		{"where nothing is seamed", "finished", "side: 6,10 6,0 | allowance = 0", `count = 1; first = "5 3/4"; press = "away"`, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := strings.Join(seamRemarks(t, beside(c.drawn, c.side, c.folds)), "\n")
			assert.Equal(t, c.want, got)
		})
	}
}

var fit = regexp.MustCompile(`the first (\d+) fit`)

// Of a row that goes on past the piece, as many fit as the seam leaves: with them nothing is to
// be said, and one more is in it.
func TestAsManyFitAsNoSeamTakesIn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		drawn := rapid.SampledFrom([]string{"flat", "finished"}).Draw(t, "drawn")
		press := rapid.SampledFrom([]string{"away", "toward"}).Draw(t, "press")
		space := float64(rapid.IntRange(12, 40).Draw(t, "spacing, in 32nds")) / 32
		rows := func(count int) string {
			return beside(drawn, besideSide, fmt.Sprintf("count = %d; first = 1; spacing = %g; press = %q", count, space, press))
		}
		_, err := made.Pattern("unit = \"in\"\n" + rows(100))
		require.Error(t, err)
		hint := fit.FindStringSubmatch(err.Error())
		if hint == nil { // that it hangs over the cut edge
			t.Skip(err.Error())
		}
		count, _ := strconv.Atoi(hint[1])
		assert.Empty(t, seamRemarks(t, rows(count)), "the %d that fit", count)
	})
}

func seamRemarks(t require.TestingT, text string) []string {
	pattern, err := made.Pattern("unit = \"in\"\n" + text)
	require.NoError(t, err)
	var all []string
	for _, r := range pattern.Remarks {
		if regexp.MustCompile("stitched in the allowance|caught in the seam").MatchString(r.Text) {
			all = append(all, r.Text)
		}
	}
	return all
}
