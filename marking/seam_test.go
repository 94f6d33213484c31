package marking

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pieceOf writes a piece of that key from a sketch.
func pieceOf(key, text string) string {
	return strings.ReplaceAll(sketch(text), "piece.front", "piece."+key) + "\n"
}

// sewnOf writes a file with an allowance for every edge, pieces, and one seam, whose keys
// stand in a text.
func sewnOf(allowance, seam string, pieces ...string) string {
	return "unit = \"in\"\nallowance = " + allowance + "\n" + strings.Join(pieces, "") + "[seam.s]\n" + seam + "\n"
}

// joined writes a file with two sketches, "front" and "back", and one seam.
func joined(allowance, front, back, seam string) string {
	return sewnOf(allowance, seam, pieceOf("front", front), pieceOf("back", back))
}

// rect is a piece so many inches wide and 8 in high.
func rect(wide string) string {
	return swap("bottom: 0,0 W,0\nright: W,0 W,8\ntop: W,8 0,8\nleft: 0,8 0,0", "W", wide)
}

const tops = `join = ["front.top", "back.top"]`

// Right-angled trapezoids whose right side leaves the top at an angle of 135 and of 45
// degrees. With 1/2 in all round, the stitch lines of the corner meet cot(67.5°)/2 =
// 0.2071 in and cot(22.5°)/2 = 1.2071 in beside it: sewn, 10 in leave 9.2929 in, and 11 in
// leave as much.
const (
	outward  = "bottom: 0,0 18,0\nright: 18,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0"
	inward45 = "bottom: 0,0 3,0\nright: 3,0 11,8\ntop: 11,8 0,8\nleft: 0,8 0,0"
)

// theSeam checks a file and returns its only seam.
func theSeam(t require.TestingT, text string) Seam {
	pattern, err := check(text)
	require.NoError(t, err, "%s", text)
	require.Len(t, pattern.Seams, 1)
	return pattern.Seams[0]
}

// sewnLengths writes how long the two sides are sewn, in inches, to four decimals.
func sewnLengths(s Seam) string {
	length := func(side SeamSide) string {
		return strconv.FormatFloat(math.Round(side.Sewn.MM/25.4*1e4)/1e4, 'f', -1, 64)
	}
	return length(s.Sides[0]) + " " + length(s.Sides[1])
}

// toldOf writes what the figures say under a seam, a warning with "! " before it.
func toldOf(lines []Sentence) []string {
	var all []string
	for _, l := range lines {
		mark := ""
		if l.Warning {
			mark = "! "
		}
		all = append(all, mark+l.Text)
	}
	return all
}

// The full-size draft of a child's underwaist, McGlauflin, Handicraft for Girls, 1910,
// p. 53; derived from its corner points: shoulders 2.6926 in front and 2.5739 in back,
// 0.119 in apart; side seams 5.0249 in both. The stitch lines follow from curves that are
// ours as well.
func TestUnderwaistSeams(t *testing.T) {
	pattern := example(t, "underwaist.toml")
	require.Len(t, pattern.Seams, 2)
	shoulder, side := pattern.Seams[0], pattern.Seams[1]
	for _, c := range []struct {
		name        string
		seam        Seam
		front, back float64 // cut, in inches
		cutMatches  bool
	}{
		{"shoulder", shoulder, 2.6926, 2.5739, false},
		{"side", side, 5.0249, 5.0249, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.name, c.seam.Key)
			assert.InDelta(t, c.front, c.seam.Sides[0].Cut.MM/25.4, 0.00005, "front, as cut")
			assert.InDelta(t, c.back, c.seam.Sides[1].Cut.MM/25.4, 0.00005, "back, as cut")
			assert.InDelta(t, c.front-c.back, c.seam.CutDifference.MM/25.4, 0.0001)
			assert.Equal(t, c.cutMatches, c.seam.CutMatches())
			assert.True(t, c.seam.Plain, "no folds in either")
		})
	}
	assert.InDelta(t, 0.119, shoulder.CutDifference.MM/25.4, 0.0005, "the front shoulder is longer")
	assert.Contains(t, shoulder.mismatch(Amount.String), "cut, the shoulder of Front is 1/8 in longer than the shoulder of Back")
}

// The same draft by its corner points alone, with straight lines between them and without
// seams: what is sewn is what is cut. The centre of the back is left out of account.
func TestUnderwaistDraftWithoutCurves(t *testing.T) {
	front := "neck: 0,7 2.5,9.5\nshoulder: 2.5,9.5 5,8.5\narmhole: 5,8.5 4,6.1 6,5\nside: 6,5 5.5,0\nhem: 5.5,0 0,0\ncentre: 0,0 0,7"
	back := "neck: 0,8.5 1,8.5 2.5,9.5\nshoulder: 2.5,9.5 4.75,8.25\narmhole: 4.75,8.25 6,5.5\nside: 6,5.5 5.5,0.5\nhem: 5.5,0.5 1,0 0,0\ncentre: 0,0 0,8.5"
	for _, c := range []struct {
		edge string
		want []string
	}{
		{"shoulder", []string{"sewn, the shoulder of front is 1/8 in longer than the shoulder of back; as it is cut, the shoulder of front is 1/8 in longer than the shoulder of back"}},
		{"side", nil},
	} {
		t.Run(c.edge, func(t *testing.T) {
			pattern, err := check(joined("0", front, back, swap(`join = ["front.E", "back.E"]`, "E", c.edge)))
			require.NoError(t, err)
			var got []string
			for _, r := range pattern.Remarks {
				if r.Path == "seam.s" {
					got = append(got, r.Text)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// Squares and trapezoids with seams of 1/2 in, worked by hand.
func TestSeamsMatch(t *testing.T) {
	const waist = "waist: W,8 0,8\ncentre: 0,8 0,0\nhem: 0,0 W,0\nside: W,0 W,8"
	// A skirt against a front on the fold, 5 1/2 in wide, and a back of 5 in cut twice.
	waists := func(skirt string) string {
		return sewnOf("0.5", `join = ["skirt.waist", ["front.waist", "back.waist"]]`, pieceOf("skirt", skirt),
			pieceOf("front", "fold = \"centre\"\n"+swap(waist, "W", "5.5")), pieceOf("back", "cut = 2\n"+swap(waist, "W", "5")))
	}
	for _, c := range []struct {
		name, text string
		sewn       string
		told       []string // before what is said of the ends
	}{
		// 10 - 1/2 - 1/2.
		{"squares", joined("0.5", rect("10"), rect("10"), tops), "9 9", []string{"sewn, they match within 1/16 in"}},
		{"trapezoids of unequal cut", joined("0.5", outward, inward45, tops), "9.2929 9.2929",
			[]string{"sewn, they match within 1/16 in", "the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines"}},
		// By the same corners: 10 - 1/2 - 0.2071 and 10 - 1/2 - 1.2071.
		{"trapezoids of equal cut", joined("0.5", outward, swap(inward45, "3,0", "2,0", "11,8", "10,8"), tops), "9.2929 8.2929",
			[]string{"! sewn, the top of front is 1 in longer than the top of back"}},

		{"just under the tolerance", joined("0.5", rect("10.062"), rect("10"), tops), "9.062 9", []string{"sewn, they match within 1/16 in"}},
		{"exactly the tolerance", joined("0.5", rect("10.0625"), rect("10"), tops), "9.0625 9", []string{"sewn, they match within 1/16 in"}},
		{"just over the tolerance", joined("0.5", rect("10.063"), rect("10"), tops), "9.063 9",
			[]string{"! sewn, the top of front is just over 1/16 in longer than the top of back; as it is cut, the top of front is just over 1/16 in longer than the top of back"}},
		{"the second is longer", joined("0.5", rect("10"), rect("10.125"), tops), "9 9.125",
			[]string{"! sewn, the top of back is 1/8 in longer than the top of front; as it is cut, the top of back is 1/8 in longer than the top of front"}},
		{"within what is asked for", joined("0.5", rect("10.25"), rect("10"), tops+"\nwithin = \"1/4\""), "9.25 9", []string{"sewn, they match within 1/4 in"}},
		{"not within what is asked for", joined("0.5", rect("10.05"), rect("10"), tops+"\nwithin = \"1/32\""), "9.05 9",
			[]string{"! sewn, the top of front is 1/16 in longer than the top of back; as it is cut, the top of front is 1/16 in longer than the top of back"}},
		{"to be exact, and it is", joined("0.5", rect("10"), rect("10"), tops+"\nwithin = 0"), "9 9", []string{"sewn, they match within 0 in"}},
		{"to be exact, and it is not", joined("0.5", rect("10.02"), rect("10"), tops+"\nwithin = 0"), "9.02 9",
			[]string{"! sewn, the top of front is less than 1/16 in longer than the top of back; as it is cut, the top of front is less than 1/16 in longer than the top of back"}},

		{"no ease", joined("0.5", rect("10"), rect("10"), tops+"\nease = 0"), "9 9", []string{"sewn, they match within 1/16 in"}},
		{"ease that is not needed", joined("0.5", rect("10.0625"), rect("10"), tops+"\nease = \"1/2\""), "9.0625 9", []string{"sewn, they match within 1/16 in"}},
		{"the first is eased in", joined("0.5", rect("10.5"), rect("10"), tops+"\nease = \"1/2\""), "9.5 9", []string{"ease the top of front in: by 1/2 in, and the ease allowed is 1/2 in"}},
		{"the second is longer, and ease is the first one's", joined("0.5", rect("10"), rect("10.25"), tops+"\nease = \"1/2\""), "9 9.25", []string{
			"! sewn, the top of back is 1/4 in longer than the top of front; as it is cut, the top of back is 1/4 in longer than the top of front; the ease allowed is 1/2 in, of the side that is named first"}},
		// 1/2 in of ease and 1/16 in beyond it.
		{"exactly the ease and the tolerance", joined("0.5", rect("10.5625"), rect("10"), tops+"\nease = \"1/2\""), "9.5625 9",
			[]string{"ease the top of front in: by 9/16 in, and the ease allowed is 1/2 in"}},
		{"over the ease", joined("0.5", rect("10.563"), rect("10"), tops+"\nease = \"1/2\""), "9.563 9",
			[]string{"! sewn, the top of front is just over 9/16 in longer than the top of back; as it is cut, the top of front is just over 9/16 in longer than the top of back; the ease allowed is 1/2 in, of the side that is named first"}},

		// 13 1/2 to 9.
		{"gathered", joined("0.5", rect("14.5"), rect("10"), tops+"\ngathered = true"), "13.5 9", []string{"gather the top of front, 1 1/2 times as long, into the top of back",
			"mark both in four equal parts and match the marks: every 3 3/8 in on the top of front, every 2 1/4 in on the top of back"}},
		{"gathered, the second longer", joined("0.5", rect("10"), rect("19"), tops+"\ngathered = true"), "9 18", []string{"gather the top of back, 2 times as long, into the top of front",
			"mark both in four equal parts and match the marks: every 4 1/2 in on the top of back, every 2 1/4 in on the top of front"}},
		{"scant for gathers", joined("0.5", rect("10"), rect("10.9"), tops+"\ngathered = true"), "9 9.9", []string{"! the top of back is only 1.1 times as long as the top of front, scant for gathers",
			"mark both in four equal parts and match the marks: every 2 1/2 in on the top of back, every 2 1/4 in on the top of front"}},
		{"not gathered after all", joined("0.5", rect("10"), rect("10"), tops+"\ngathered = false"), "9 9", []string{"sewn, they match within 1/16 in"}},

		// 4 - 1/2 and 6 - 1/2, the edges going straight on into each other.
		{"a side of two edges", joined("0.5", rect("10"), swap(rect("10"), "top: 10,8 0,8", "top 1: 10,8 6,8\ntop 2: 6,8 0,8"), `join = ["front.top", ["back.top 1", "back.top 2"]]`),
			"9 9", []string{"sewn, they match within 1/16 in"}},
		{"a side of two edges, too long", joined("0.5", rect("10"), swap(rect("10"), "top: 10,8 0,8", "top 1: 10,8 6,8\ntop 2: 6,8 0,8"), `join = ["front.right", ["back.top 1", "back.top 2"]]`),
			"7 9", []string{"! sewn, the top 1 of back and the top 2 of back are together 2 in longer than the right of front"}},

		// The whole skirt is 19 - 1 = 18. Half the front is 5 1/2 - 1/2, since it begins
		// on the fold, and the back 5 - 1: twice 5 and twice 4 make 18 too.
		{"a whole skirt on a front and two backs", waists(swap(waist, "W", "19")), "18 18", []string{"sewn, they match within 1/16 in"}},
		{"a whole skirt that is too narrow", waists(swap(waist, "W", "18.5")), "17.5 18",
			[]string{"! sewn, the waist of front (2 times) and the waist of back (2 times) are together 1/2 in longer than the waist of skirt"}},
		// Half the skirt, on the fold, is 9 1/2 - 1/2. All come twice, and count once.
		{"half a skirt on the fold", waists("fold = \"centre\"\n" + swap(waist, "W", "9.5")), "9 9", []string{"sewn, they match within 1/16 in"}},
		// 2 x (9 - 1/2) = 17; twice 9 1/2 - 1 is as much.
		{"two sleeves, half of each drawn", sewnOf("0.5", `join = ["sleeve.top", ["front.top", "back.top"]]`, pieceOf("sleeve", "cut = 2\nfold = \"left\"\n"+rect("9")),
			pieceOf("front", "cut = 2\n"+rect("9.5")), pieceOf("back", "cut = 2\n"+rect("9.5"))), "17 17", []string{"sewn, they match within 1/16 in"}},
		{"pieces cut two", joined("0.5", "cut = 2\n"+rect("10"), "cut = 2\n"+rect("10"), tops), "9 9", []string{"sewn, they match within 1/16 in"}},
		{"a piece cut four and one", joined("0.5", "cut = 4\n"+rect("10"), rect("37"), tops), "36 36",
			[]string{"sewn, they match within 1/16 in", "the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines"}},
		{"in centimetres", strings.Replace(joined("1", rect("20.5"), rect("20"), tops+"\nease = 1"), `"in"`, `"cm"`, 1), "7.2835 7.0866", []string{"ease the top of front in: by 0.5 cm, and the ease allowed is 1 cm"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := theSeam(t, c.text)
			assert.Equal(t, c.sewn, sewnLengths(s))
			assert.Equal(t, c.told, toldOf(seamVerdict(s, OwnUnit)))
		})
	}
}

// What is printed is rounded first and added then: 4 times 8.969 in reads as 36 in, and is
// 35 7/8 in. No verdict follows from that.
func TestRoundingDoesNotDecide(t *testing.T) {
	six := func(front, back string) string { return joined("0.5", "cut = 4\n"+rect(front), rect(back), tops) }
	for _, c := range []struct {
		name, text string
		row        string // of the difference, as it is read
		told       []string
	}{
		// 4 x 9.03 = 36.12 reads as 4 x 9; 36.13 as 36 1/8: 0.01 in apart.
		{"read as unequal", six("10.03", "37.13"), "1/8", []string{"sewn, they match within 1/16 in: more than that is only the rounding of each length"}},
		// 4 x 8.969 = 35.876 reads as 4 x 9; 35.96 as 35 15/16, and is longer by 0.084 in.
		{"read the wrong way round", six("9.969", "36.96"), "1/16",
			[]string{"! sewn, the top of back is just over 1/16 in longer than the top of front (4 times), by their exact lengths; as it is cut, the top of front (4 times) is 3 1/16 in longer than the top of back"}},
		// 4 x 8.97 = 35.88 reads as 4 x 9, 35.97 as 36: 0.09 in apart.
		{"read as equal", six("9.97", "36.97"), "0",
			[]string{"! sewn, the top of back is just over 1/16 in longer than the top of front (4 times), by their exact lengths; as it is cut, the top of front (4 times) is 3 in longer than the top of back"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := check(c.text)
			require.NoError(t, err)
			s := pattern.Seams[0]
			rows := seamSection(pattern, OwnUnit).Tables[0].Rows
			assert.Equal(t, c.row, rows[len(rows)-1].Cells[2], "the difference in the table")
			assert.Equal(t, c.told, toldOf(seamVerdict(s, OwnUnit)[:1]))
		})
	}
}

// With ease and in both systems.
func TestVerdictInBothSystems(t *testing.T) {
	s := theSeam(t, joined("0.5", rect("10.5"), rect("10"), tops+"\nease = \"1/2\""))
	assert.Equal(t, []string{"ease the top of front in: by 1/2 in (13 mm), and the ease allowed is 1/2 in (13 mm)"}, toldOf(seamVerdict(s, AllUnits)))
}

func TestSeamsWhoseAllowancesDiffer(t *testing.T) {
	back := swap(rect("10"), "top: 10,8 0,8", "top: 10,8 4,8 | allowance = 0.25\nyoke: 4,8 0,8 | allowance = 0.25")
	for _, c := range []struct {
		name, back, seam string
		want             []string
	}{
		{"the same", rect("10"), tops, nil},
		{"they differ", swap(rect("10"), "top: 10,8 0,8", "top: 10,8 0,8 | allowance = \"3/8\""), tops,
			[]string{"the allowances of its two sides differ, 1/2 in and 3/8 in: the cut edges do not lie on each other when it is sewn"}},
		{"a side of two edges that differs", back, `join = ["front.top", ["back.top", "back.yoke"]]`,
			[]string{"the allowances of its two sides differ, 1/2 in and 1/4 in: the cut edges do not lie on each other when it is sewn"}},
		{"a side that has no one allowance", swap(back, "yoke: 4,8 0,8 | allowance = 0.25", "yoke: 4,8 0,8"), `join = ["front.top", ["back.top", "back.yoke"]]`, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := check(joined("0.5", rect("10"), c.back, c.seam+"\nease = 2"))
			require.NoError(t, err)
			var got []string
			for _, r := range pattern.Remarks {
				assert.Equal(t, "seam.s", r.Path)
				got = append(got, r.Text)
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// How much of an edge its folds take when it is sewn: what it is sewn without them, less
// what it is with them. Pleats take 2 depths square to a straight edge, tucks 2 widths;
// across an edge that rises by 3 to 4, which they meet at a slant, 5/4 of that.
func TestFoldsInASeam(t *testing.T) {
	const (
		rising = "grain = [[1, 1], [1, 5]]\nbottom: 0,0 20,0\nright: 20,0 20,25\ntop: 20,25 0,10\nleft: 0,10 0,0"
		pouch  = "top: 10,8 0,8\nround: 0,8 0,0 10,0 10,8"
		step   = "top: 12,8 6,8 6,6 0,6\nleft: 0,6 0,0\nbottom: 0,0 12,0\nright: 12,0 12,8"
	)
	pleat := func(at, depth, toward, more string) string {
		return fmt.Sprintf("\n[pleat.p]\nedge = \"top\"\nfrom = \"left\"\nat = %s\ndepth = %s\ntoward = %q\nlength = 2\n%s\n", at, depth, toward, more)
	}
	for _, c := range []struct {
		name, piece, folds string
		want               float64 // inches
		plain              bool
	}{
		{"none", rect("10"), "", 0, true},
		{"a pleat", rect("10"), pleat("5", "0.5", "left", ""), 1, false},
		{"turned the other way", rect("10"), pleat("5", "0.5", "right", ""), 1, false},
		{"three pleats", rect("10"), pleat("3", "0.5", "left", "count = 3\nspacing = 1.5"), 3, false},
		{"a pleat along the grain of a straight edge", "grain = \"left\"\n" + rect("10"), pleat("5", "0.5", "left", "run = \"grain\""), 1, false},
		{"a pleat square to a rising edge", rising, pleat("12", "0.5", "left", ""), 1, false},
		{"a pleat at a slant", rising, pleat("12", "0.5", "left", "run = \"grain\""), 1.25, false},
		{"two pleats at a slant, laid upward", rising, pleat("8", "0.25", "right", "run = \"grain\"\ncount = 2\nspacing = 6"), 1.25, false},
		// Of the inch before its fold, half lies in the seam allowance of the side.
		{"a pleat half in the allowance", rect("10"), pleat("1", "0.5", "left", ""), 0.5, false},
		{"a pleat in the allowance", rect("10"), pleat("0.5", "0.25", "left", ""), 0, false},
		{"a pleat that touches the allowance", rect("10"), pleat("1.5", "0.5", "left", ""), 1, false},
		// The lines of the pleat reach far into the piece, nearly to the other side, whose
		// seam is the same edge's.
		{"a pleat across a pouch", pouch, "\n[pleat.p]\nedge = \"round\"\nfrom = \"top\"\nat = 4\ndepth = 0.5\ntoward = \"top\"\nlength = 9\n", 1, false},
		// The seam turns down the placement line of the pleat, at 6 1/2 in.
		{"a pleat beside a step", step, "\n[pleat.p]\nedge = \"top\"\nfrom = \"right\"\nat = 4.5\ndepth = 0.5\ntoward = \"left\"\nlength = 1\n", 1, false},

		{"two tucks", rect("10"), rows(`tuck t left 1/4 2 3`), 1, false},
		{"a tuck at a slant", rising, rows(`tuck t left 1/2 1 9`), 1.25, false},
		{"tucks that end above the edge", rect("10"), rows(`tuck t left 1/4 2 3 | below = "bottom"; length = 3`), 0, true},
		{"tucks that end below it", rect("10"), rows(`tuck t left 1/4 2 3 | below = "top"; length = 3`), 1, false},
		{"tucks along the edge", rect("10"), rows(`tuck t bottom 1/4 2 3`), 0, true},
		{"a tuck half in the allowance", rect("10"), rows(`tuck t left 1/2 1 1/2`), 0.5, false},
		// One above the other, they leave the piece without a finished shape.
		{"tucks at the top and at the bottom of the same cloth", rect("10"), rows(`tuck a left 1/4 2 3 | below = "top"; length = 2`, `tuck b left 1/4 3 3 | below = "bottom"; length = 2`), 1, false},
		{"the same, measured from two sides", rect("10"), rows(`tuck a left 1/4 2 3 | below = "top"; length = 2`, `tuck b right 1/4 3 4 | below = "bottom"; length = 2`), 1, false},
		{"the same, with tucks along the edge", rect("10"), rows(`tuck a left 1/4 2 3 | below = "top"; length = 2`, `tuck b left 1/4 3 3 | below = "bottom"; length = 2`, `tuck c bottom 1/8 1 4`), 1, false},
		{"pleats across the piece", rect("10"), rows(`pleat p left 1/2 2 3`), 2, false},
		{"a pleat and tucks", rect("10"), rows(`tuck t left 1/4 2 6`) + pleat("3", "0.5", "left", ""), 2, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			edge := "top"
			if c.piece == pouch {
				edge = "round"
			}
			s := theSeam(t, joined("0.5", c.piece+"\n---\n"+c.folds, c.piece, swap(`join = ["front.E", "back.E"]`, "E", edge)))
			assert.InDelta(t, -c.want, s.Difference.MM/25.4, 1e-6, "the folds take")
			assert.Equal(t, c.plain, s.Plain, "whether nothing is folded")
		})
	}
}

// A piece drawn finished is sewn as it is drawn; it is cut with what the tucks take up.
func TestTucksInASeamOfAPieceDrawnFinished(t *testing.T) {
	for _, c := range []struct {
		name, tucks string
		sewn, cut   float64 // inches
		plain       bool
	}{
		{"tucks across the edge", rows(`tuck t left 1/4 2 3`), 9, 11, false},
		// Below their end the cloth is open, and has all its width.
		{"tucks that end above it", rows(`tuck t left 1/4 2 3 | below = "bottom"; length = 3`), 10, 11, true},
		{"tucks along it", rows(`tuck t bottom 1/4 2 3`), 9, 10, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := check(joined("0.5", "drawn = \"finished\"\n"+rect("10")+"\n---\n"+c.tucks, rect("10"), tops))
			require.NoError(t, err)
			s := pattern.Seams[0]
			assert.InDelta(t, c.sewn, s.Sides[0].Sewn.MM/25.4, 1e-6, "sewn")
			assert.InDelta(t, c.cut, s.Sides[0].Cut.MM/25.4, 1e-6, "cut")
			assert.Equal(t, c.plain, s.Plain, "whether the cut edges may be compared")
			edges := edgeSection(pattern, OwnUnit).Tables[0]
			for _, row := range edges.Rows {
				if row.Cells[0] == "top" {
					assert.Equal(t, row.Cells[1:3], seamSection(pattern, OwnUnit).Tables[0].Rows[0].Cells[1:], "the edge and the seam say the same")
				}
			}
		})
	}
}

// The edges of a tucked block are cut when it is tucked.
func TestSeamOfATuckedBlock(t *testing.T) {
	tucks := rows(`tuck t left 1/4 2 3 | below = "top"; length = 3`)
	s := theSeam(t, joined("0.5", "drawn = \"finished\"\n"+rect("10")+"\n---\n"+tucks+"\n[block]\nends = 0.5\n", rect("10"), tops))
	assert.Equal(t, "9 9", sewnLengths(s))
	assert.InDelta(t, 10, s.Sides[0].Cut.MM/25.4, 1e-6)
	assert.True(t, s.Plain, "the cut edges may be compared")
}

// The tables of the figures, whole.
func TestSeamTable(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"edge to edge", joined("0.5", "name = \"Front\"\n"+rect("10.25"), rect("10"), tops),
			"Front, top | 10 1/4 | 9 1/4\nback, top | 10 | 9\ndifference | 1/4 | 1/4"},
		{"with folds the cut edges are not compared", joined("0.5", rect("11")+"\n---\n"+rows(`tuck t left 1/4 2 3`), rect("10.125"), tops),
			"front, top | 11 | 9\nback, top | 10 1/8 | 9 1/8\ndifference |  | 1/8"},
		{"two edges on two", joined("0.5", rect("10"), "cut = 2\n"+swap(rect("10"), "top: 10,8 0,8", "top: 10,8 4,8\nyoke: 4,8 0,8"), `join = ["front.top", ["back.top", "back.yoke"]]`),
			"front, top | 10 | 9\nback, top (2 times) | 12 | 11\nback, yoke (2 times) | 8 | 7\ntogether | 20 | 18\ndifference |  | 9"},
		{"gathered", joined("0.5", rect("20"), rect("10"), tops+"\ngathered = true"),
			"front, top | 20 | 19\nback, top | 10 | 9"},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := check(c.text)
			require.NoError(t, err)
			section := seamSection(pattern, OwnUnit)
			require.Len(t, section.Tables, 1)
			assert.Equal(t, "s", section.Tables[0].Title)
			var got []string
			for _, row := range section.Tables[0].Rows {
				got = append(got, strings.Join(row.Cells, " | "))
			}
			assert.Equal(t, c.want, strings.Join(got, "\n"))
		})
	}
}

func TestMistakesInSeams(t *testing.T) {
	two := func(seam string) string { return joined("0.5", rect("10"), rect("10"), seam) }
	const pleated = "\n---\n\n[pleat.p]\nedge = \"top\"\nfrom = \"left\"\nat = 1\ndepth = 0.5\ntoward = \"left\"\nlength = 1\ncount = 10\nspacing = 1\n"
	for _, c := range []struct{ name, text, want string }{
		{"an edge on the fold", joined("0.5", "fold = \"left\"\n"+rect("10"), rect("10"), `join = ["front.left", "back.left"]`),
			`33: seam.s.join: "front.left" lies on the fold of the cloth, where nothing is sewn
hint: name another edge; for a seam there, leave fold out of the piece and write cut = 2`},
		{"an edge on the fold, on both sides", joined("0.5", "fold = \"left\"\n"+rect("10"), rect("10"), `join = ["front.left", "front.left"]`),
			`33: seam.s.join: "front.left" lies on the fold of the cloth, where nothing is sewn
hint: name another edge; for a seam there, leave fold out of the piece and write cut = 2`},
		{"an edge joined with itself that is there once", two(`join = ["front.left", "front.left"]`),
			`32: seam.s.join: "front.left" is joined with itself, but there is only one of it
hint: name the edge that it is sewn to, or write cut = 2 for the piece`},
		{"the same, among others", two(`join = [["front.left", "front.top"], ["back.left", "front.left"]]`),
			`32: seam.s.join: "front.left" is joined with itself, but there is only one of it
hint: name the edge that it is sewn to, or write cut = 2 for the piece`},
		{"an edge that is all pleats", joined("0", rect("10")+pleated, rect("10"), tops+"\ngathered = true"),
			`42: seam.s.join: the tucks and pleats of "front.top" leave nothing of it to be sewn
hint: make them fewer or smaller`},
		// A piece with a mistake of its own is there all the same.
		{"a seam of a piece that has a mistake", joined("0.5", swap(rect("10"), "right: 10,0 10,8", "right: 10,0.5 10,8"), rect("10"), tops),
			`5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"a mistake in a piece and one in the seam", joined("0.5", swap(rect("10"), "right: 10,0 10,8", "right: 10,0.5 10,8"), rect("10"), `join = ["front.top", "back.tpo"]`),
			`5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them
32: seam.s.join: there is no edge "tpo" in the piece "back"
hint: did you mean "top"?`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := check(c.text)
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "linden.toml:", ""))
		})
	}
}
