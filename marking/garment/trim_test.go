package garment_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// garmentOf checks the sketch of a front without allowances, and what stands beside the
// pieces.
func garmentOf(t require.TestingT, text, beside string) *garment.Pattern {
	return made.Of(t, "allowance = 0\n"+sketch.Front(text)+"\n"+beside)
}

// Lace round a square outside corner takes 2 widths more, where it lies flat (Hapgood,
// School Needlework, about 1892) and at any fullness: gathered half as full again it has
// 2 1/2 widths on each width of edge beside the corner (McGlauflin, Handicraft for Girls,
// 1910, p. 88), 5 on 2, of which 3 are the fullness (derived).
func TestLaceRoundACorner(t *testing.T) {
	for _, c := range []struct {
		name, piece, trim string
		corners           string // turn x times: widths each
		total             string
	}{
		// 5 + 6 + 5 = 16, and 2 x 2 x 1 in, and a join of 1/2 in
		{"flat, round two square corners", sketch.SquareCollar, `along = "front.outer"; width = 1`, "90 x 2: 2", "20 1/2 in"},
		// 24, and 2 x 2 x 1 in, and 1/2 in
		{"gathered half as full again", sketch.SquareCollar, `along = "front.outer"; width = 1; fullness = 1.5`, "90 x 2: 2", "28 1/2 in"},
		// 48, and 2 x 2 x 1 in, and 1/2 in
		{"gathered three times", sketch.SquareCollar, `along = "front.outer"; width = 1; fullness = 3`, "90 x 2: 2", "52 1/2 in"},
		{"narrower lace takes less", sketch.SquareCollar, `along = "front.outer"; width = "1/4"`, "90 x 2: 0.5", "17 1/2 in"},
		// All round the collar two corners more: 22 + 4 x 2 + 1/2
		{"all round", sketch.SquareCollar, `along = ["front.outer", "front.neck"]; width = 1`, "90 x 4: 2", "30 1/2 in"},
		// 14 in; 2 x 1 in x tan 60 = 3.464 -> 3 1/2; 2 x tan 30 = 1.155 -> 1 3/16
		{"other angles, as long as a mitre there", sketch.PointedCollar, `along = "front.outer"; width = 1; join-takes = 0`, "60 x 1: 1.155, 120 x 1: 3.464", "18 11/16 in"},
		// A point of 2 x atan(0.5 / 5) = 11.4 degrees, reckoned as one of 30: tan 75 = 3.732.
		// Its two sides are 2 x 5.025.
		{"no mitre is longer than that of 30 degrees", "neck: 0,5 1,5\nouter: 0,5 0.5,0 1,5\n", `along = "front.outer"; width = 1; join-takes = 0`, "168.58 x 1: 7.464", "17 9/16 in"},
		{"on the collar every corner is an inner one", sketch.SquareCollar, `along = "front.outer"; width = 1; lies = "on"`, "", "16 1/2 in"},
		// (2 + 2) x 2 = 8, and 1/2 in
		{"inside a square neck", sketch.SquareNeck, `along = "front.neck"; width = 1`, "", "8 1/2 in"},
		// The band lies on the front, outside the neck; it is drawn on one half and
		// comes on both.
		{"on the front, round a square neck", sketch.SquareNeck, `along = "front.neck"; width = 1; lies = "on"`, "90 x 2: 2", "12 1/2 in"},
		// 2 x 2.5 = 5; the point turns by 2 x 53.13 = 106.26, and takes 2 x tan 53.13 =
		// 2 2/3 -> 2 11/16
		{"on the front, round the point of a V", sketch.VNeck, `along = "front.neck"; width = 1; lies = "on"; kind = "braid"`, "106.26 x 1: 2.667", "8 3/16 in"},
		{"inside a V", sketch.VNeck, `along = "front.neck"; width = 1`, "", "5 1/2 in"},
		// A level hem goes over the fold straight: 10, and 1/2 in
		{"over a fold without a corner", sketch.VNeck, `along = "front.hem"; width = 1`, "", "10 1/2 in"},
		// The hem and both sides, on both halves: 10 + 20, 2 corners, 1/2 in
		{"round the corner between two edges", sketch.VNeck, `along = ["front.hem", "front.side"]; width = 1`, "90 x 2: 2", "34 1/2 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			trim := garmentOf(t, c.piece, "[trim.x]\n"+strings.ReplaceAll(c.trim, "; ", "\n")+"\n").Trims[0]
			var corners []string
			for _, corner := range trim.Corners {
				corners = append(corners, number2(corner.Turn)+" x "+sketch.Number(float64(corner.Times))+": "+sketch.Number(corner.Takes.MM/25.4))
			}
			assert.Equal(t, c.corners, strings.Join(corners, ", "))
			assert.Equal(t, c.total, trim.Total.String())
		})
	}
}

// number2 writes a number to two decimals.
func number2(v float64) string { return sketch.Number(length.Hundredth(v)) }

// A line drawn with many points turns where it turns within 2 mm.
func TestCornersDrawnWithManyPoints(t *testing.T) {
	for _, c := range []struct{ name, piece, want string }{
		// 0.03 in from each side of the corner, 1.08 mm along the chamfer
		{"a corner that is clipped", "neck: 0,5 6,5\nouter: 6,5 6,0.03 5.97,0 0,0 0,5\n", "90"},
		// 1/4 in from each side, 9 mm along the chamfer: two corners of 45 degrees
		{"a bevel", "neck: 0,5 6,5\nouter: 6,5 6,0.25 5.75,0 0,0 0,5\n", "90 45"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var turns []string
			for _, corner := range garmentOf(t, c.piece, "[trim.x]\nalong = \"front.outer\"\nwidth = 1\n").Trims[0].Corners {
				turns = append(turns, sketch.Number(corner.Turn))
			}
			assert.Equal(t, c.want, strings.Join(turns, " "))
		})
	}
}

// A line inside a piece takes trim as well, and counts on both halves of it: 2 x 5 in,
// with a pleat of 1 in across it 2 x 3 in.
func TestTrimOnALineInsideThePiece(t *testing.T) {
	const line = "---\n\n[line.band]\nalong = \"hem\"\ndistance = 2\n"
	trim := garmentOf(t, sketch.VNeck+line, "[trim.x]\nalong = \"front.band\"\n").Trims[0]
	assert.Equal(t, "10 in", trim.LineLength.String())
	pleated := garmentOf(t, sketch.VNeck+line+sketch.Rows("pleat a centre 1 1 3"), "[trim.x]\nalong = \"front.band\"\n").Trims[0]
	assert.Equal(t, "6 in", pleated.LineLength.String())
}

// Lace down the centre meets the lace at the neck in a T, not in a corner.
func TestNoCornerAtTheFold(t *testing.T) {
	p := garmentOf(t, "fold = \"left\"\n"+sketch.Rect("10"), "[trim.x]\nalong = [\"front.left\", \"front.top\"]\nwidth = 1\n")
	assert.Empty(t, p.Trims[0].Corners)
}

// Half a front of 10 in by 10 in on the fold, three tucks of 1/4 in beside it: finished, they are
// stitched at 1, 1 1/2 and 2 in and pressed away, so their flaps lie from there 1/4 in on. Beyond a
// line beside the fold lies the fold.
func TestLaceOverTucks(t *testing.T) {
	const square = "fold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 W,10\nside: W,10 W,0\nhem: W,0 0,0\n---\n"
	const over = "1/4 in wide, the lace lies over "
	tucks := sketch.Rows(`tuck t centre 1/4 3 1 1/4 | press = "away"`)
	tucks = sketch.Swap(tucks, "first = \"1\"", "first = \"1 1/4\"\nspacing = 1")
	line := func(at string) string { return "\n[line.l]\nbeside = \"centre\"\nat = " + at + "\n" }
	short := sketch.Swap(tucks, "press = \"away\"", "press = \"away\"\nbelow = \"top\"\nlength = 2")
	for _, c := range []struct{ name, drawn, text, line, trim, want string }{
		{"over one", "finished", tucks, "1.5", `lies = "on"`, over + `tuck 2 of "t" of front; lies = "beyond" lays it on the other side of its line, clear of them`},
		{"either way over one", "finished", tucks, "1.6", `lies = "beyond"`, over + `tuck 2 of "t" of front`},
		{"over several", "finished", tucks, "1.1", `lies = "on"; width = 1`, `1 in wide, the lace lies over tucks 1 to 3 of "t" of front`},
		{"between two", "finished", tucks, "1.25", `lies = "on"`, ""},
		{"of no width", "finished", tucks, "1.6", `width = ""`, ""},
		{"below their end", "finished", short, "1.6\nfrom = \"hem\"\nlength = 5", `lies = "on"`, ""},
		{"as far down as they are sewn", "finished", short, "1.6\nfrom = \"top\"\nlength = 5", `lies = "on"`, over + `tuck 2 of "t" of front`},
		{"at the edge they run into", "finished", tucks, "", `along = "front.top"; lies = "on"`, ""},
		// On the flat cloth they are stitched at 1 and 1 1/2 in, 2 and 2 1/2, 3 and 3 1/2.
		{"drawn flat", "flat", tucks, "2.5", `lies = "on"`, over + `tuck 2 of "t" of front; lies = "beyond" lays it on the other side of its line, clear of them`},
		{"drawn flat, between two", "flat", tucks, "1.75", `lies = "on"`, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := "drawn = \"" + c.drawn + "\"\n" + sketch.Swap(square, "W", "10") + c.text
			trim := "[trim.lace]\nalong = [\"front.l\"]\nwidth = 0.25\n"
			if c.line != "" {
				text += line(c.line)
			}
			for _, key := range strings.Split(c.trim, "; ") {
				name, value, _ := strings.Cut(key, " = ")
				switch {
				case name == "along":
					trim = sketch.Swap(trim, `"front.l"`, value)
				case name == "width" && value == `""`:
					trim = sketch.Swap(trim, "width = 0.25\n", "")
				case name == "width":
					trim = sketch.Swap(trim, "0.25", value)
				default:
					trim += key + "\n"
				}
			}
			var told []string
			for _, r := range garmentOf(t, text, trim).Remarks {
				if strings.Contains(r.Text, "lies over") {
					told = append(told, r.Text)
				}
			}
			assert.Equal(t, c.want, strings.Join(told, "; "))
		})
	}
}
