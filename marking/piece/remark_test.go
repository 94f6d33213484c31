package piece_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// remarksOf checks a text and returns what is said of it, each with its line, but
// for what is said of a file that names no unit.
func remarksOf(t *testing.T, text string) []string {
	t.Helper()
	pattern, err := made.Pattern("unit = \"in\"\n" + text)
	require.NoError(t, err)
	var all []string
	for _, r := range pattern.Remarks {
		all = append(all, fmt.Sprintf("%d: %s: %s", r.Line, r.Key, r.Text))
	}
	return all
}

// plainBodice is half a front whose neck reaches 3 in from the centre, whose shoulder 6 in,
// and whose armhole 8 in. Its seams are 3/8 in: the stitch line of the neck meets the
// centre at 9 5/8 in.
const plainBodice = `fold = "cf"
drawn = "DRAWN"
cf: 0,0 0,10
neck: 0,10 3,10 3,12
shoulder: 3,12 6,12
armhole: 6,12 6,9 8,9
side: 8,9 8,0
hem: 8,0 0,0
---

[tuck.t]
beside = "cf"
width = "WIDTH"
count = COUNT
first = "FIRST"
spacing = "SPACING"
press = "away"
below = "neck"
length = 2
`

// frontOf writes a bodice with a set of tucks of 1/4 in whose gap is 1/4 in, but for
// what is changed. The set's line is 25.
func frontOf(drawn string, change ...string) string {
	text := sketch.Swap(plainBodice, append(change, "DRAWN", drawn, "WIDTH", "1/4", "COUNT", "5", "FIRST", "1/2", "SPACING", "1")...)
	return "allowance = 0.375\n" + sketch.Front(text)
}

// A set of five tucks of 1/4 in, 1 in from fold to fold, lies finished at 1/4, 3/4,
// 1 1/4, 1 3/4 and 2 1/4 in, and reaches 2 1/2 in: as far as the neck, nearly.
func TestNoWarning(t *testing.T) {
	for _, drawn := range []string{"flat", "finished"} {
		t.Run(drawn, func(t *testing.T) {
			text := frontOf(drawn)
			if drawn == "flat" { // with room for what the tucks take up, 2 1/2 in
				text = frontOf(drawn, "3,", "5.5,", "6,", "8.5,", "8,", "10.5,")
			}
			assert.Empty(t, remarksOf(t, text))
		})
	}
}

func TestWarnings(t *testing.T) {
	flat := []string{"3,", "5.5,", "6,", "8.5,", "8,", "10.5,"} // with room for 2 1/2 in
	const hem, hemmed = "hem: 8,0 0,0", "hem: 8,0 0,0 | hem = 1; turn = 0.25"
	type change = []string
	for _, c := range []struct {
		name  string
		drawn string
		sizes change
		set   change
		want  []string
	}{
		// The stitch lines of neck and shoulder meet at 3 3/8 in, and those of shoulder
		// and armhole at 5 5/8 in. The sixth tuck is stitched 2 1/2 in beyond the first.
		{"the last in the neck, finished", "finished", nil, change{"COUNT", "6", "FIRST", "1 1/16"}, nil},
		{"the last beyond the cut corner, not the sewn one", "finished", nil, change{"COUNT", "6", "FIRST", "15/16"}, nil},
		{"the last in the shoulder, finished", "finished", nil, change{"COUNT", "6", "FIRST", "1 3/16"},
			change{`25: piece.front.tuck.t: tuck 6 of 6 runs into "shoulder" instead of "neck": finished, its stitching lies 3 7/16 in from "cf"`}},
		{"three in the shoulder, finished", "finished", nil, change{"COUNT", "8", "FIRST", "1 3/16"},
			change{`25: piece.front.tuck.t: tucks 6 to 8 of 8 run into "shoulder" instead of "neck": finished, the stitching of tuck 6 lies 3 7/16 in from "cf"`}},
		// 5/16, 13/16, ...: the seventh at 3 5/16, the eleventh at 5 5/16 in
		{"in the shoulder and in the armhole, finished", "finished", nil, change{"COUNT", "13", "FIRST", "9/16", "length = 2", "length = 3"},
			change{
				`25: piece.front.tuck.t: tucks 8 to 11 of 13 run into "shoulder" instead of "neck": finished, the stitching of tuck 8 lies 3 13/16 in from "cf"`,
				`25: piece.front.tuck.t: tucks 12 to 13 of 13 run into "armhole" instead of "neck": finished, the stitching of tuck 12 lies 5 13/16 in from "cf"`}},
		// Flat, the stitch lines meet at 5 7/8 in, and the sixth has its fold 5 in beyond
		// the first.
		{"the last in the neck, flat", "flat", flat, change{"COUNT", "6", "FIRST", "13/16"}, nil},
		{"the last in the shoulder, flat", "flat", flat, change{"COUNT", "6", "FIRST", "15/16"},
			change{`25: piece.front.tuck.t: tuck 6 of 6 runs into "shoulder" instead of "neck": finished, its stitching lies 3 3/16 in from "cf"`}},
		{"from edge to edge, all as the first", "finished", nil, change{"COUNT", "6", "FIRST", "1 1/16", "below = \"neck\"\nlength = 2", ""}, nil},
		{"from edge to edge, by the first", "finished", nil, change{"COUNT", "6", "FIRST", "1 3/16", "below = \"neck\"\nlength = 2", ""},
			change{`25: piece.front.tuck.t: tuck 6 of 6 runs into "shoulder" where the first runs into "neck": finished, its stitching lies 3 7/16 in from "cf"`}},
		{"across the piece, from edge to edge", "finished", nil, change{"\"cf\"\nwidth", "\"hem\"\nwidth", "COUNT", "9", "FIRST", "1", "below = \"neck\"\nlength = 2", ""}, nil},

		{"a gap just below nought, finished", "finished", nil, change{"COUNT", "7", "SPACING", "0.741"}, nil},
		{"a gap below nought, finished", "finished", nil, change{"COUNT", "9", "SPACING", "11/16"},
			change{`25: piece.front.tuck.t: the gap is below nought: each tuck covers the next stitching by 1/16 in; with no gap in place of the spacing they just touch, and their fold lines lie 3/4 in apart`}},
		{"a gap that is worth a word", "finished", nil, change{"COUNT", "8", "SPACING", "47/64"},
			change{`25: piece.front.tuck.t: the gap is below nought: each tuck covers the next stitching by 1/64 in; with no gap in place of the spacing they just touch, and their fold lines lie 3/4 in apart`}},
		// 19.05 mm - 18 mm = 1.05 mm.
		{"a gap between lengths in two units", "finished", nil, change{"COUNT", "8", "SPACING", "18 mm"},
			change{`25: piece.front.tuck.t: the gap is below nought: each tuck covers the next stitching by 1/16 in; with no gap in place of the spacing they just touch, and their fold lines lie 3/4 in apart`}},
		// 10 - 4 13/16 = 5 3/16 in over ten: 0.519 in each, 0.082 in more than there is room for.
		{"a gap that the sample has far below nought", "finished", nil, change{"COUNT", "8", "SPACING", "11/16", "length = 2", "length = 2\nsample = {tucks = 10, flat = 10, sewn = \"4 13/16\"}"},
			change{`25: piece.front.tuck.t: the gap is below nought: each tuck covers the next stitching by 1/16 in; with no gap in place of the spacing they just touch, and their fold lines lie 3/4 in apart`}},
		{"a gap below nought, flat", "flat", flat, change{"COUNT", "7", "SPACING", "5/8"},
			change{`25: piece.front.tuck.t: the gap is below nought: each tuck covers the next stitching by 1/8 in; with no gap in place of the spacing they just touch, and their fold lines lie 3/4 in apart`}},
		{"a gap that only the sample has below nought", "finished", nil, change{"COUNT", "9", "SPACING", "3/4", "length = 2", "length = 2\nsample = {tucks = 10, flat = 10, sewn = \"4 15/16\"}"}, nil},

		// Woolman, A Sewing Course for Teachers, about 1893: from 1/16 in on.
		{"tucks of 1/16 in", "finished", nil, change{"WIDTH", "1/16", "COUNT", "15", "SPACING", "5/16", "FIRST", "1/4"}, nil},
		{"tucks of 1.5 mm", "finished", nil, change{"WIDTH", "1.5 mm", "COUNT", "15", "SPACING", "5/16", "FIRST", "1/4"},
			change{`25: piece.front.tuck.t: tucks of 1.5 mm are narrower than 1/16 in, and hard to keep even; a twin needle or a corded foot makes them easier`}},
		{"tucks of 1/32 in", "finished", nil, change{"WIDTH", "1/32", "COUNT", "14", "SPACING", "1/4", "FIRST", "1/4"},
			change{`25: piece.front.tuck.t: tucks of 1/32 in are narrower than 1/16 in, and hard to keep even; a twin needle or a corded foot makes them easier`,
				`25: piece.front.tuck.t: fold line and stitching lie 1/32 in apart, finer than a marking pen draws; mark the fold lines only`}},
		{"tucks of 1/32 in, flat", "flat", flat, change{"WIDTH", "1/32", "COUNT", "22", "SPACING", "1/4", "FIRST", "1/4"},
			change{`25: piece.front.tuck.t: tucks of 1/32 in are narrower than 1/16 in, and hard to keep even; a twin needle or a corded foot makes them easier`,
				`25: piece.front.tuck.t: fold line and stitching lie 1/32 in apart, finer than a marking pen draws; mark the fold lines only`}},
		{"a twin needle's tucks of 1/32 in", "finished", nil, change{"WIDTH", "1/32", "COUNT", "14", "SPACING", "1/4", "FIRST", "1/4", "length = 2", "length = 2\nsewn = \"twin needle\""}, nil},
		{"a twin needle's tucks that lie close", "finished", nil, change{"WIDTH", "1/64", "COUNT", "100", "SPACING", "0.055", "FIRST", "1/4", "length = 2", "length = 2\nsewn = \"twin needle\""},
			change{`25: piece.front.tuck.t: fold lines lie 0.055 in apart, finer than a marking pen draws; mark every other one`}},
		{"stitching that lies close", "finished", nil, change{"COUNT", "11", "SPACING", "35/64"},
			change{`25: piece.front.tuck.t: stitching lines of neighbouring tucks lie 3/64 in apart, finer than a marking pen draws; mark the fold lines only`,
				`25: piece.front.tuck.t: the gap is below nought: each tuck covers the next stitching by 13/64 in; with no gap in place of the spacing they just touch, and their fold lines lie 3/4 in apart`}},

		// Hem and turn take 1 1/4 in of the cloth. The neck's stitch line is at 9 5/8 in.
		{"the first tuck beside an edge without a hem", "finished", nil, change{"length = 2", "length = 2\n[tuck.growth]\nbeside = \"hem\"\nwidth = \"1/2\"\ncount = 1\nfirst = \"1 11/16\""}, nil},
		{"tucks that end where the hem begins", "finished", change{hem, hemmed}, change{"length = 2", "length = \"8 3/8\""}, nil},
		{"tucks that end in the hem by less than a ruler shows", "finished", change{hem, hemmed}, change{"length = 2", "length = \"8 25/64\""}, nil},
		{"tucks that end in the hem", "finished", change{hem, hemmed}, change{"length = 2", "length = \"8 7/16\""},
			change{`34: piece.front.tuck.t.length: tuck 1 of 5 ends in the hem, 1 3/16 in from the cut edge of "hem"`}},
		{"the last ends in the hem", "finished", change{hem, hemmed}, change{"length = 2", "length = \"7 15/16\"\nend = \"stepped\"\nstep = \"1/8\""},
			change{`36: piece.front.tuck.t.step: tuck 5 of 5 ends in the hem, 1 3/16 in from the cut edge of "hem"`}},

		// 9 5/8 in is the neck's stitch line: a tuck of 1/2 in, each 1/8 in shorter.
		{"the last ends at the stitch line", "finished", nil, change{"length = 2", "length = \"1/2\"\nend = \"stepped\"\nstep = \"-1/8\""}, nil},
		{"the last ends above it by less than a ruler shows", "finished", nil, change{"length = 2", "length = \"31/64\"\nend = \"stepped\"\nstep = \"-1/8\""}, nil},
		// Growth tucks move everything above them on the flat cloth, the neck as well.
		{"with growth tucks below", "finished", nil, change{"length = 2", "length = \"5/8\"\n[tuck.growth]\nbeside = \"hem\"\nwidth = \"1/2\"\ncount = 2\nfirst = 2"}, nil},
		{"the last ends above the stitch line, finished", "finished", nil, change{"length = 2", "length = \"7/16\"\nend = \"stepped\"\nstep = \"-1/8\""},
			change{`35: piece.front.tuck.t.step: tuck 5 of 5 ends 1/16 in above the stitch line of "neck", within the seam allowance: make it longer`}},
		{"the last two end above the stitch line, flat", "flat", flat, change{"length = 2", "length = \"5/16\"\nend = \"stepped\"\nstep = \"-1/8\""},
			change{`35: piece.front.tuck.t.step: tuck 4 of 5 ends 1/16 in above the stitch line of "neck", within the seam allowance: make it longer`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := frontOf(c.drawn, append(append(change{}, c.sizes...), c.set...)...)
			assert.Equal(t, c.want, remarksOf(t, text))
		})
	}
}

// Knife pleats 1/2 in deep take up 1 in each; set 1 in apart, nothing shows between
// them, and laid, every fold lies on the one before.
func TestPleatsThatLieOnEachOther(t *testing.T) {
	for _, c := range []struct {
		name, pleat string
		want        []string
	}{
		{"on one line", "count = 3\nspacing = 1", []string{"22: piece.front.pleat.p: the pleats lie on each other: laid, their folds fall on one line; with no gap each shows 1/2 in of cloth"}},
		{"a little apart", "count = 3\nspacing = \"1 1/32\"", nil},
		{"with a gap of nought", "count = 2\ngap = 0", nil},
		{"a single one", "count = 1", nil},
		{"box pleats", "kind = \"box\"\ncount = 2\ngap = 0", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, remarksOf(t, "allowance = 0.375\n"+sketch.Front(sketch.Bosom+"[pleat.p]\nbeside = \"cf\"\ndepth = \"1/2\"\nfirst = 2\n"+c.pleat+"\n")))
		})
	}
}

// The end line keeps half an inch from the lines of a pleat in an edge (common
// practice). Flat, it lies at 4 5/8 in and ends at 4 3/4 in from the centre; the pleat
// lies beside it and reaches from the side, at 10 1/2 in, to its length from there.
func TestTucksThatEndNearAPleat(t *testing.T) {
	for _, c := range []struct {
		name, length string
		want         []string
	}{
		{"half an inch away", "5 1/4", nil},
		{"nearer by less than a ruler shows", "5 17/64", nil},
		{"nearer", "5 1/2", []string{`33: piece.front.tuck.t.length: the tucks end 1/4 in from the pleat "p"; 1/2 in or more keeps the two apart`}},
	} {
		for _, drawn := range []string{"finished", "flat"} {
			t.Run(c.name+", "+drawn, func(t *testing.T) {
				change := []string{"length = 2", "length = 5\n[pleat.p]\nedge = \"side\"\nfrom = \"armhole\"\nat = \"4 1/8\"\ndepth = \"1/4\"\ntoward = \"hem\"\nlength = \"" + c.length + "\""}
				if drawn == "flat" {
					change = append(change, "3,", "5.5,", "6,", "8.5,", "8,", "10.5,")
				}
				assert.Equal(t, c.want, remarksOf(t, frontOf(drawn, change...)))
			})
		}
	}
}

// What is said of a file in millimetres is said in millimetres.
func TestWarningsInMillimetres(t *testing.T) {
	pattern, err := made.Pattern("unit = \"mm\"\nallowance = 0\n" + sketch.Front(`left: 0,0 0,200
top: 0,200 200,200
side: 200,200 200,0
hem: 200,0 0,0
---

[tuck.t]
beside = "left"
width = 1
count = 2
first = 20
spacing = 2.5
`))
	require.NoError(t, err)
	var got []string
	for _, r := range pattern.Remarks {
		got = append(got, r.Text)
	}
	assert.Equal(t, []string{
		`no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`,
		`tucks of 1 mm are narrower than 1/16 in, and hard to keep even; a twin needle or a corded foot makes them easier`,
		`stitching lines of neighbouring tucks lie 0.5 mm apart, finer than a marking pen draws; mark the fold lines only`,
		`the gap is below nought: each tuck covers the next stitching by 0.5 mm; with no gap in place of the spacing they just touch, and their fold lines lie 3 mm apart`,
	}, got)
}

// What a ruler in mm shows is half a mm: a hem takes 50 mm of 300, and tucks begin 10 mm down, so
// those of 240 mm end where the hem begins (derived).
func TestWarningsFromHalfAMillimetreOn(t *testing.T) {
	for _, c := range []struct {
		length string
		want   []string
	}{
		{"240", nil},
		{"240.4", nil},
		{"240.6", []string{`tuck 1 of 2 ends in the hem, 49 mm from the cut edge of "foot"`}},
		{"241.2", []string{`tuck 1 of 2 ends in the hem, 49 mm from the cut edge of "foot"`}},
	} {
		for _, unit := range []string{"mm", "cm"} {
			text := strings.NewReplacer("LENGTH", c.length).Replace(`allowance = "10 mm"
[piece.bib]
name = "Bib"
grain = "side"
[piece.bib.edge.left]
points = [["0 mm", "0 mm"], ["0 mm", "300 mm"]]
[piece.bib.edge.top]
points = [["0 mm", "300 mm"], ["200 mm", "300 mm"]]
[piece.bib.edge.side]
points = [["200 mm", "300 mm"], ["200 mm", "0 mm"]]
[piece.bib.edge.foot]
points = [["200 mm", "0 mm"], ["0 mm", "0 mm"]]
hem = "40 mm"
turn = "10 mm"
[piece.bib.tuck.t]
beside = "left"
width = "5 mm"
count = 2
first = "40 mm"
spacing = "20 mm"
below = "top"
length = "LENGTH mm"
`)
			pattern, err := made.Pattern("unit = \"" + unit + "\"\n" + text)
			require.NoError(t, err)
			var got []string
			for _, r := range pattern.Remarks {
				got = append(got, r.Text)
			}
			want := slices.Clone(c.want)
			if unit == "cm" {
				for i := range want {
					want[i] = strings.ReplaceAll(want[i], "49 mm", "4.9 cm")
				}
			}
			assert.Equal(t, want, got, "tucks of %s mm in a file in %s", c.length, unit)
		}
	}
}

func TestWarningsOfTheExamples(t *testing.T) {
	for name, want := range map[string][]string{
		// The draft's shoulders differ, cut, by 0.119 in (derived from McGlauflin,
		// Handicraft for Girls, 1910, page 53: 2.6926 in front, 2.5739 back). What is
		// sewn follows from curves that are ours.
		"underwaist.toml": {
			"sewn, the shoulder of Back is 1/8 in longer than the shoulder of Front; as it is cut, the shoulder of Front is 1/8 in longer than the shoulder of Back; the corners take 5/16 in of Front and 1/4 in of Back at \"neck\", 3/8 in of Front and 1/4 in of Back at \"armhole\"; take 1/8 in off Back at \"armhole\", or add it to Front; or allow an ease of 1/8 in, Back named first",
			"sewn, the side of Back is 1/8 in longer than the side of Front; the corners take 3/8 in of Front and 1/4 in of Back at \"armhole\"; take 1/8 in off Back at \"hem\", or add it to Front; or allow an ease of 1/8 in, Back named first",
		},
		"shirt.toml":    nil,
		"pinafore.toml": nil,
	} {
		t.Run(name, func(t *testing.T) {
			var got []string
			for _, r := range made.Example(t, name).Remarks {
				got = append(got, r.Text)
			}
			assert.Equal(t, want, got)
		})
	}
}
