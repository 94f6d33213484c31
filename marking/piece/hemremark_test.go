package piece_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/sketch"
)

// A skirt, 14 in across and 20 in long, half of it drawn; its side is a placket where a
// case gives it a hem. DRAWN, HEM and SIDE stand for what a case has there.
const hemmedSkirt = `fold = "centre"
drawn = "DRAWN"
centre: 0,0 0,20
waist: 0,20 14,20
side: 14,20 14,0 | SIDE
hem: 14,0 0,0 | HEM
---

[line.level]
points = [[0, 2], [14, 2]]
`

// skirtRemarks returns what is said of the skirt with a hem and with what else stands in
// its file.
func skirtRemarks(t *testing.T, drawn, hem, side, rest string) []string {
	t.Helper()
	text := sketch.Swap(hemmedSkirt, "DRAWN", drawn, "HEM", hem, "SIDE", side)
	return remarksOf(t, "allowance = 0.375\n"+sketch.Front(text+rest))
}

const threeDeep, sixDeep, placket = "hem = 3; turn = 0.25", "hem = 6; turn = 0.25", "hem = 1; turn = 0.25"

func growth(beside, width, first, more string) string {
	return "[tuck.growth]\nbeside = \"" + beside + "\"\nwidth = " + width + "\ncount = 1\nfirst = " + first + "\n" + more
}

// A tuck stitched 4 and 6 in from the cut edge. With a hem of 3 in and a turn of 1/4 in
// the fold of the hem lies at 3 1/4 in and the hem, folded back, reaches 6 1/4 in: the
// tuck is stitched 3/4 in above that fold, and being 1 in wide it hangs 1/4 in below.
// With a hem of 6 in the fold of the hem lies at 6 1/4 in: all of the tuck is folded
// back, its second stitching 1/4 in from the fold, over which it hangs 3/4 in. (Derived.)
func TestTucksAlongAHem(t *testing.T) {
	const under = `: the tuck lies where the hem of "hem" is folded back: finished, its stitching is 3/4 in from the fold of the hem, and that is 3 in deep; sewn before the hem, the stitching is covered by it inside; sewn after, it goes through both layers`
	const in = `: the tuck lies in the hem of "hem": its stitching is 4 in and 6 in from the cut edge, and hem and turn take 6 1/4 in`
	for _, c := range []struct {
		name, drawn, hem, tuck string
		want                   []string
	}{
		{"under the hem", "flat", threeDeep, growth("hem", "1", "5", ""),
			[]string{"22: piece.front.tuck.growth" + under + "; pressed toward the finished edge, its fold hangs 1/4 in over it"}},
		{"pressed down", "flat", threeDeep, growth("hem", "1", "5", `press = "toward"`),
			[]string{"22: piece.front.tuck.growth" + under + "; its fold hangs 1/4 in over the finished edge"}},
		{"pressed up", "flat", threeDeep, growth("hem", "1", "5", `press = "away"`), []string{"22: piece.front.tuck.growth" + under}},
		{"drawn finished", "finished", threeDeep, growth("hem", "1", "5", `press = "toward"`),
			[]string{"22: piece.front.tuck.growth" + under + "; its fold hangs 1/4 in over the finished edge"}},
		{"beside a line", "flat", threeDeep, growth("level", "1", "3", "side = \"waist\""),
			[]string{"22: piece.front.tuck.growth" + under + "; pressed toward the finished edge, its fold hangs 1/4 in over it"}},
		{"beside the waist, pressed away from it", "flat", threeDeep, growth("waist", "1", "15", `press = "away"`),
			[]string{"22: piece.front.tuck.growth" + under + "; its fold hangs 1/4 in over the finished edge"}},
		{"in the hem", "flat", sixDeep, growth("hem", "1", "5", ""),
			[]string{"22: piece.front.tuck.growth" + in + "; pressed toward the finished edge, its fold hangs 3/4 in over it"}},
		{"in the hem, beside a line", "flat", sixDeep, growth("level", "1", "3", "side = \"waist\""),
			[]string{"22: piece.front.tuck.growth" + in + "; pressed toward the finished edge, its fold hangs 3/4 in over it"}},
		{"in the hem, pressed toward the cut edge", "flat", sixDeep, growth("hem", "1", "5", `press = "toward"`), []string{"22: piece.front.tuck.growth" + in}},
		{"across the fold of the hem", "flat", threeDeep, growth("hem", "1", "4", ""),
			[]string{`22: piece.front.tuck.growth: the tuck lies across the fold of the hem of "hem": its stitching is 3 in and 5 in from the cut edge, and hem and turn take 3 1/4 in`}},
		{"stitched on the fold of the hem", "flat", "hem = 3", growth("hem", "1", "4", `press = "away"`),
			[]string{`21: piece.front.tuck.growth: the tuck lies where the hem of "hem" is folded back: finished, its stitching is on the fold of the hem, and that is 3 in deep; sewn before the hem, the stitching is covered by it inside; sewn after, it goes through both layers`}},
		// 3 1/4 + 3 + 1 = 7 1/4 in: stitched where the hem ends, it covers the hem's stitching.
		{"above the hem", "flat", threeDeep, growth("hem", "1", "7.25", ""), nil},
		{"a sixteenth lower", "flat", threeDeep, growth("hem", "1", "7.1875", ""),
			[]string{`22: piece.front.tuck.growth: the tuck lies where the hem of "hem" is folded back: finished, its stitching is 2 15/16 in from the fold of the hem, and that is 3 in deep; sewn before the hem, the stitching is covered by it inside; sewn after, it goes through both layers`}},
		{"wider than it is high above a narrow hem", "flat", "hem = 0.25; turn = 0.25", growth("hem", "1", "2", ""),
			[]string{`22: piece.front.tuck.growth: the tuck lies close to the finished edge of "hem": finished, its stitching is 1/2 in from the fold of the hem, and the tuck is 1 in wide; pressed toward the finished edge, its fold hangs 1/2 in over it`}},
		{"an edge with a seam", "flat", "allowance = 1", growth("hem", "1", "2", ""), nil},
		// Tucks of 1/2 in, touching: stitched at 4, 5 1/2 and 7 in, finished 3/4, 1 1/4 and
		// 1 3/4 in above the fold of the hem.
		{"three in a row", "flat", "hem = 1.5; turn = 0.25", "[tuck.growth]\nbeside = \"hem\"\nwidth = 0.5\ncount = 3\nfirst = 3\ngap = 0\npress = \"toward\"",
			[]string{`22: piece.front.tuck.growth: tucks 1 to 2 of 3 lie where the hem of "hem" is folded back: finished, the nearest stitching is 3/4 in from the fold of the hem, and that is 1 1/2 in deep; sewn before the hem, the stitching is covered by it inside; sewn after, it goes through both layers`}},
		{"two in the hem", "flat", sixDeep, "[tuck.growth]\nbeside = \"hem\"\nwidth = 0.5\ncount = 2\nfirst = 1\ngap = 0\npress = \"toward\"",
			[]string{`22: piece.front.tuck.growth: tucks 1 to 2 of 2 lie in the hem of "hem": of the nearest, the stitching is 1/2 in and 1 1/2 in from the cut edge, and hem and turn take 6 1/4 in`}},
		// Tucks of 1 in, touching: 3/4 and 1 3/4 in above the fold of the hem; only the first hangs.
		{"two in a row, of which one hangs", "flat", threeDeep, "[tuck.growth]\nbeside = \"hem\"\nwidth = 1\ncount = 2\nfirst = 5\ngap = 0\npress = \"toward\"",
			[]string{`22: piece.front.tuck.growth: tucks 1 to 2 of 2 lie where the hem of "hem" is folded back: finished, the nearest stitching is 3/4 in from the fold of the hem, and that is 3 in deep; sewn before the hem, the stitching is covered by it inside; sewn after, it goes through both layers; the fold of tuck 1 of 2 hangs 1/4 in over the finished edge`}},
		// Stitched 1 and 3 in, and 4 and 6 in from the cut edge: the second is nearer the fold.
		{"two in the hem, of which the second hangs", "flat", sixDeep, "[tuck.growth]\nbeside = \"hem\"\nwidth = 1\ncount = 2\nfirst = 2\ngap = 0\npress = \"away\"",
			[]string{`22: piece.front.tuck.growth: tucks 1 to 2 of 2 lie in the hem of "hem": of the nearest, the stitching is 1 in and 3 in from the cut edge, and hem and turn take 6 1/4 in; the fold of tuck 2 of 2 hangs 3/4 in over the finished edge`}},
		{"across the hem, from edge to edge", "flat", threeDeep, growth("centre", "1", "5", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, skirtRemarks(t, c.drawn, c.hem, "", c.tuck)) })
	}
}

// A skirt drawn flat, with room for its tucks, and the same drawn finished are one skirt:
// the same is said of tucks above the fold of its hem.
func TestTucksAlongAHemHoweverItIsDrawn(t *testing.T) {
	told := 0
	rapid.Check(t, func(r *rapid.T) {
		eighths := func(name string, least, most int) float64 {
			return float64(rapid.IntRange(least, most).Draw(r, name)) / 8
		}
		hem, turn, count := eighths("hem", 4, 32), eighths("turn", 0, 4), rapid.IntRange(1, 4).Draw(r, "count")
		width := eighths("width", 1, min(8, int(8*(hem+turn)))) // no tuck hangs beyond the cut edge, which is refused
		first := hem + turn + width + eighths("above the fold of the hem", 0, 24)
		press := rapid.SampledFrom([]string{"away", "toward"}).Draw(r, "press")
		tucks := fmt.Sprintf("[tuck.growth]\nbeside = \"hem\"\nwidth = %g\ncount = %d\nfirst = %g\ngap = %g\npress = %q\n", width, count, first, eighths("gap", 0, 8), press)
		said := func(drawn string, high float64) []string {
			text := sketch.Swap(hemmedSkirt, "DRAWN", drawn, "HEM", fmt.Sprintf("hem = %g; turn = %g", hem, turn), "SIDE", "", ",20", fmt.Sprintf(",%g", high))
			return remarksOf(t, "allowance = 0.375\n"+sketch.Front(text+tucks))
		}
		finished := said("finished", 30)
		require.Equal(r, said("flat", 30+2*width*float64(count)), finished, "%s", tucks)
		told += len(finished)
	})
	assert.Positive(t, told, "something was said")
}

// A placket is a hem: its fold lies 1 1/4 in from the side, at 12 3/4 in, and folded back
// it reaches 11 3/4 in. Of pleats the lines are told, not the stitching.
func TestWhatLiesInAPlacket(t *testing.T) {
	const back = "which is folded back: it"
	for _, c := range []struct {
		name, rest string
		want       []string
	}{
		{"a tuck from edge to edge", growth("side", "0.25", "0.75", ""),
			[]string{`22: piece.front.tuck.growth: the tuck lies in the hem of "side": its stitching is 1/2 in and 1 in from the cut edge, and hem and turn take 1 1/4 in`}},
		{"a tuck beside the centre", growth("centre", "0.25", "13.25", ""),
			[]string{`22: piece.front.tuck.growth: the tuck lies in the hem of "side": its stitching is 1/2 in and 1 in from the cut edge, and hem and turn take 1 1/4 in`}},
		{"a tuck below the waist", growth("side", "0.25", "0.75", "below = \"waist\"\nlength = 2"),
			[]string{`22: piece.front.tuck.growth: the tuck lies in the hem of "side": its stitching is 1/2 in and 1 in from the cut edge, and hem and turn take 1 1/4 in`}},
		{"a pleat", "[pleat.knife]\nbeside = \"side\"\ndepth = 0.25\nfirst = 0.5",
			[]string{`22: piece.front.pleat.knife: the pleat lies in the hem of "side": its lines are 1/2 in and 1 in from the cut edge, and hem and turn take 1 1/4 in`}},
		{"pleats", "[pleat.knife]\nbeside = \"side\"\ndepth = 0.125\ncount = 2\nspacing = 0.5\nfirst = 0.25",
			[]string{`22: piece.front.pleat.knife: pleats 1 to 2 of 2 lie in the hem of "side": of the nearest, the lines are 1/4 in and 1/2 in from the cut edge, and hem and turn take 1 1/4 in`}},
		{"tucks up from the hem, through it", growth("hem", "0.25", "5", ""), nil},
		{"a pleat in the waist", "[pleat.p]\nedge = \"waist\"\nfrom = \"side\"\nat = 1\ndepth = 0.25\ntoward = \"centre\"\nlength = 2",
			[]string{`22: piece.front.pleat.p: the pleat lies in the hem of "side": it comes within 1 in of the cut edge, and hem and turn take 1 1/4 in`}},
		{"a pleat beside it", "[pleat.p]\nedge = \"waist\"\nfrom = \"side\"\nat = 1.25\ndepth = 0.25\ntoward = \"centre\"\nlength = 2", nil},
		{"a pleat in the hem, through its end", "[pleat.p]\nedge = \"hem\"\nfrom = \"side\"\nat = 5\ndepth = 0.25\ntoward = \"centre\"\nlength = 2", nil},
		{"a short pleat in its edge", "[pleat.p]\nedge = \"side\"\nfrom = \"waist\"\nat = 5\ndepth = 0.25\ntoward = \"hem\"\nlength = \"1 1/4\"",
			[]string{`22: piece.front.pleat.p: the pleat lies in the hem of "side": it is 1 1/4 in long, and hem and turn take 1 1/4 in`}},
		{"a longer pleat in its edge", "[pleat.p]\nedge = \"side\"\nfrom = \"waist\"\nat = 5\ndepth = 0.25\ntoward = \"hem\"\nlength = \"1 1/2\"", nil},

		{"a notch in the waist", "[notch.n]\nedge = \"waist\"\nfrom = \"side\"\nat = \"3/4\"",
			[]string{`22: piece.front.notch.n: the notch lies in the hem of "side", ` + back + ` is 3/4 in from the cut edge, and hem and turn take 1 1/4 in`}},
		{"a notch at the fold", "[notch.n]\nedge = \"waist\"\nfrom = \"side\"\nat = \"1 1/4\"", nil},
		{"a notch at the turn", "[notch.n]\nedge = \"waist\"\nfrom = \"side\"\nat = \"1/4\"", nil},
		{"a notch in the side", "[notch.n]\nedge = \"side\"\nfrom = \"waist\"\nat = 4",
			[]string{`22: piece.front.notch.n: the notch lies in the cut edge of the hem of "side", which is folded back: nothing is matched there`}},
		{"a centre line", "[line.middle]\nalong = \"side\"\ndistance = 1\nkind = \"centre\"",
			[]string{`22: piece.front.line.middle: the line lies in the hem of "side", ` + back + ` comes within 1 in of the cut edge, and hem and turn take 1 1/4 in`}},
		{"buttons on a slant", "[line.buttons]\npoints = [[13, 19], [13.5, 12]]\nkind = \"placement\"",
			[]string{`22: piece.front.line.buttons: the line lies in the hem of "side", ` + back + ` comes within 1/2 in of the cut edge, and hem and turn take 1 1/4 in`}},
		{"a line that runs out of it", "[line.buttons]\npoints = [[12, 19], [13.5, 12]]\nkind = \"placement\"", nil},
		{"a line on the fold", "[line.middle]\nalong = \"side\"\ndistance = \"1 1/4\"\nkind = \"centre\"", nil},
		{"another fold", "[line.middle]\nalong = \"side\"\ndistance = 1", nil},
		{"the stitching of the hem", "[line.middle]\nalong = \"side\"\ndistance = \"5/16\"\nkind = \"stitch\"", nil},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, skirtRemarks(t, "flat", "", placket, c.rest)) })
	}
}

// The placket of this back ends 9 in up, where a seam goes on: a tuck stitched 8 1/2 and
// 9 1/2 in from the hem takes that place up. So does one on the end of a slit's fold line.
func TestTucksOnTheEndOfAPlacket(t *testing.T) {
	const ends = `lies on the end of the hem of "placket": it takes up the cloth from 8 1/2 in to 9 1/2 in from "hem", and the end lies at 9 in`
	for _, c := range []struct {
		name, drawn, first, more string
		want                     []string
	}{
		{"on it", "flat", "9", "", []string{"22: piece.front.tuck.growth: the tuck " + ends}},
		{"stitched on it", "flat", "9.5", "", nil},
		{"stitched just beyond it", "flat", "9.4375", "",
			[]string{`22: piece.front.tuck.growth: the tuck lies on the end of the hem of "placket": it takes up the cloth from 8 15/16 in to 9 15/16 in from "hem", and the end lies at 9 in`}},
		{"a finished drawing has it beside it", "finished", "9", "", nil},
		{"on the end of a line", "flat", "7", "[line.slit]\npoints = [[4, 15], [4, 7.25]]",
			[]string{`22: piece.front.tuck.growth: the tuck lies on the end of the line "slit": it takes up the cloth from 6 1/2 in to 7 1/2 in from "hem", and the end lies at 7 1/4 in`}},
		{"a line that runs through", "flat", "7", "[line.slit]\npoints = [[4, 15], [4, 2]]", nil},
		{"a line that runs along it", "flat", "7", "[line.slit]\npoints = [[4, 7.25], [6, 7.25]]", nil},
		{"a line that is no fold", "flat", "7", "[line.slit]\npoints = [[4, 15], [4, 7.25]]\nkind = \"centre\"", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := "drawn = \"" + c.drawn + "\"\n" + sketch.Swap(sketch.PlacketAboveSeam, "X", "0") + "\n---\n\n" + growth("hem", "0.5", c.first, c.more)
			assert.Equal(t, c.want, remarksOf(t, "allowance = 0.375\n"+sketch.Front(text)))
		})
	}
}
