package figures

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// toldOf writes what the figures say under a seam, a warning with "! " before it.
func toldOf(lines mark.Lines) []string {
	var all []string
	for _, l := range lines {
		mark := ""
		if l.Warning {
			mark = "! "
		}
		if l.Entry != "" {
			mark += "in the file: "
		}
		all = append(all, mark+l.Text+l.Entry)
	}
	return all
}

// Squares and trapezoids with seams of 1/2 in, worked by hand.
func TestSeamsMatch(t *testing.T) {
	const waist = "waist: W,8 0,8\ncentre: 0,8 0,0\nhem: 0,0 W,0\nside: W,0 W,8"
	// A skirt against a front on the fold, 5 1/2 in wide, and a back of 5 in cut twice.
	waists := func(skirt string) string {
		return sketch.Sewn("0.5", `join = ["skirt.waist", ["front.waist", "back.waist"]]`, sketch.Piece("skirt", skirt),
			sketch.Piece("front", "fold = \"centre\"\n"+sketch.Swap(waist, "W", "5.5")), sketch.Piece("back", "cut = 2\n"+sketch.Swap(waist, "W", "5")))
	}
	for _, c := range []struct {
		name, text string
		sewn       string
		told       []string // before what is said of the ends
	}{
		// 10 - 1/2 - 1/2.
		{"squares", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops), "9 9", []string{"sewn, they match within 1/16 in"}},
		{"trapezoids of unequal cut", sketch.Joined("0.5", sketch.Outward, sketch.Inward45, sketch.Tops), "9.2929 9.2929",
			[]string{"sewn, they match within 1/16 in", "the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines"}},
		// By the same corners: 10 - 1/2 - 0.2071 and 10 - 1/2 - 1.2071.
		{"trapezoids of equal cut", sketch.Joined("0.5", sketch.Outward, sketch.Swap(sketch.Inward45, "3,0", "2,0", "11,8", "10,8"), sketch.Tops), "9.2929 8.2929",
			[]string{"! sewn, the top of front is 1 in longer than the top of back",
				`the corners take 1 3/16 in of back and 3/16 in of front at "right"; take 1 in off front at "left", or add it to back`}},

		{"just under the tolerance", sketch.Joined("0.5", sketch.Rect("10.062"), sketch.Rect("10"), sketch.Tops), "9.062 9", []string{"sewn, they match within 1/16 in"}},
		{"exactly the tolerance", sketch.Joined("0.5", sketch.Rect("10.0625"), sketch.Rect("10"), sketch.Tops), "9.0625 9", []string{"sewn, they match within 1/16 in"}},
		{"just over the tolerance", sketch.Joined("0.5", sketch.Rect("10.063"), sketch.Rect("10"), sketch.Tops), "9.063 9",
			[]string{"! sewn, the top of front is just over 1/16 in longer than the top of back; as it is cut, the top of front is just over 1/16 in longer than the top of back",
				`take 1/16 in off front at "left", or add it to back; or allow an ease of 1/16 in`}},
		{"the second is longer", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10.125"), sketch.Tops), "9 9.125",
			[]string{"! sewn, the top of back is 1/8 in longer than the top of front; as it is cut, the top of back is 1/8 in longer than the top of front",
				`take 1/8 in off back at "left", or add it to front; or allow an ease of 1/8 in, back named first`}},
		{"within what is asked for", sketch.Joined("0.5", sketch.Rect("10.25"), sketch.Rect("10"), sketch.Tops+"\nwithin = \"1/4\""), "9.25 9", []string{"sewn, they match within 1/4 in"}},
		{"not within what is asked for", sketch.Joined("0.5", sketch.Rect("10.05"), sketch.Rect("10"), sketch.Tops+"\nwithin = \"1/32\""), "9.05 9",
			[]string{"! sewn, the top of front is 1/16 in longer than the top of back; as it is cut, the top of front is 1/16 in longer than the top of back",
				`take 1/16 in off front at "left", or add it to back; or allow an ease of 1/16 in`}},
		{"to be exact, and it is", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops+"\nwithin = 0"), "9 9", []string{"sewn, they match within 0 in"}},
		{"to be exact, and it is not", sketch.Joined("0.5", sketch.Rect("10.02"), sketch.Rect("10"), sketch.Tops+"\nwithin = 0"), "9.02 9",
			[]string{"! sewn, the top of front is less than 1/16 in longer than the top of back; as it is cut, the top of front is less than 1/16 in longer than the top of back"}},

		{"allowances that differ", sketch.Joined("0.5", sketch.Rect("10"), sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 0,8 | allowance = 0.25"), sketch.Tops), "9 9", []string{
			"sewn, they match within 1/16 in", "! the allowances of its two sides differ, 1/2 in and 1/4 in: the cut edges do not lie on each other when it is sewn"}},

		{"no ease", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops+"\nease = 0"), "9 9", []string{"sewn, they match within 1/16 in"}},
		{"ease that is not needed", sketch.Joined("0.5", sketch.Rect("10.0625"), sketch.Rect("10"), sketch.Tops+"\nease = \"1/2\""), "9.0625 9", []string{"sewn, they match within 1/16 in"}},
		{"the first is eased in", sketch.Joined("0.5", sketch.Rect("10.5"), sketch.Rect("10"), sketch.Tops+"\nease = \"1/2\""), "9.5 9", []string{"ease the top of front in: by 1/2 in, and the ease allowed is 1/2 in"}},
		{"the second is longer, and ease is the first one's", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10.25"), sketch.Tops+"\nease = \"1/2\""), "9 9.25", []string{
			"! sewn, the top of back is 1/4 in longer than the top of front; as it is cut, the top of back is 1/4 in longer than the top of front; the ease allowed is 1/2 in, of the side that is named first",
			`to have back eased in, name it first`}},
		// 1/2 in of ease and 1/16 in beyond it.
		{"exactly the ease and the tolerance", sketch.Joined("0.5", sketch.Rect("10.5625"), sketch.Rect("10"), sketch.Tops+"\nease = \"1/2\""), "9.5625 9",
			[]string{"ease the top of front in: by 9/16 in, and the ease allowed is 1/2 in"}},
		{"over the ease", sketch.Joined("0.5", sketch.Rect("10.563"), sketch.Rect("10"), sketch.Tops+"\nease = \"1/2\""), "9.563 9",
			[]string{"! sewn, the top of front is just over 9/16 in longer than the top of back; as it is cut, the top of front is just over 9/16 in longer than the top of back; the ease allowed is 1/2 in, of the side that is named first",
				`take 1/16 in off front at "left", or add it to back; or allow an ease of 9/16 in`}},

		// 13 1/2 to 9.
		{"gathered", sketch.Joined("0.5", sketch.Rect("14.5"), sketch.Rect("10"), sketch.Tops+"\ngathered = true"), "13.5 9", []string{"gather the top of front, 1 1/2 times as long, into the top of back",
			"mark both in four equal parts and match the marks: every 3 3/8 in on the top of front, every 2 1/4 in on the top of back"}},
		// From the fold on, 14 - 1/2 and 9 1/2 - 1/2, half of the whole.
		{"gathered, on the fold", sketch.Joined("0.5", "fold = \"left\"\n"+sketch.Rect("14"), "fold = \"left\"\n"+sketch.Rect("9.5"), sketch.Tops+"\ngathered = true"), "13.5 9", []string{"gather the top of front, 1 1/2 times as long, into the top of back",
			"mark each half of both in four equal parts and match the marks: every 3 3/8 in on the top of front, every 2 1/4 in on the top of back"}},
		// The whole wrist of each sleeve, 2 x (7 1/4 - 1/2), into a band of its own.
		{"gathered, both halves from the fold", sketch.Joined("0.5", "cut = 2\nfold = \"left\"\n"+sketch.Rect("7.25"), "cut = 2\n"+sketch.Rect("10"), sketch.Tops+"\ngathered = true"), "13.5 9", []string{"gather the top of front (2 times), 1 1/2 times as long, into the top of back",
			"mark both in four equal parts and match the marks: every 3 3/8 in on the top of front (2 times), every 2 1/4 in on the top of back"}},
		{"gathered, two of each off the fold", sketch.Joined("0.5", "cut = 2\n"+sketch.Rect("14.5"), "cut = 2\n"+sketch.Rect("10"), sketch.Tops+"\ngathered = true"), "13.5 9", []string{"gather the top of front, 1 1/2 times as long, into the top of back",
			"mark both in four equal parts and match the marks: every 3 3/8 in on the top of front, every 2 1/4 in on the top of back"}},
		{"gathered, the second longer", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("19"), sketch.Tops+"\ngathered = true"), "9 18", []string{"gather the top of back, 2 times as long, into the top of front",
			"mark both in four equal parts and match the marks: every 4 1/2 in on the top of back, every 2 1/4 in on the top of front"}},
		{"scant for gathers", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10.9"), sketch.Tops+"\ngathered = true"), "9 9.9", []string{"! the top of back is only 1.1 times as long as the top of front, scant for gathers",
			"mark both in four equal parts and match the marks: every 2 1/2 in on the top of back, every 2 1/4 in on the top of front"}},
		// A cap of 13 1/2 in into 9 in: 4 1/2 in longer.
		{"gathered and eased", sketch.Joined("0.5", sketch.Rect("14.5"), sketch.Rect("10"), sketch.Tops+"\ngathered = true\nease = \"1/2\""), "13.5 9",
			[]string{"ease and gathers in one seam: of the 4 1/2 in by which the top of front is longer, 1/2 in are eased in and 4 in drawn up; notches on both sides show where the gathers begin and end"}},
		{"gathered and eased, the second longer", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("14.5"), sketch.Tops+"\ngathered = true\nease = \"1/2\""), "9 13.5",
			[]string{"ease and gathers in one seam: of the 4 1/2 in by which the top of back is longer, 1/2 in are eased in and 4 in drawn up; notches on both sides show where the gathers begin and end"}},
		{"gathered, though ease takes all", sketch.Joined("0.5", sketch.Rect("10.5"), sketch.Rect("10"), sketch.Tops+"\ngathered = true\nease = \"1/2\""), "9.5 9",
			[]string{"ease and gathers in one seam: the top of front is no more than 1/2 in longer than the top of back, which the ease takes; leave gathered out"}},
		// 11 1/4 in are 1 1/4 times 9 in, and just less are not.
		{"an ease as full as gathers", sketch.Joined("0.5", sketch.Rect("12.25"), sketch.Rect("10"), sketch.Tops+"\nease = 3"), "11.25 9", []string{
			"! the top of front is 1 1/4 times as long as the top of back: as full as gathers, and too full to be eased in; gathered = true in place of ease draws it up",
			"ease the top of front in: by 2 1/4 in, and the ease allowed is 3 in"}},
		{"an ease not as full", sketch.Joined("0.5", sketch.Rect("12.2"), sketch.Rect("10"), sketch.Tops+"\nease = 3"), "11.2 9", []string{"ease the top of front in: by 2 3/16 in, and the ease allowed is 3 in"}},
		{"not gathered after all", sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops+"\ngathered = false"), "9 9", []string{"sewn, they match within 1/16 in"}},

		// 4 - 1/2 and 6 - 1/2, the edges going straight on into each other.
		{"a side of two edges", sketch.Joined("0.5", sketch.Rect("10"), sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top 1: 10,8 6,8\ntop 2: 6,8 0,8"), `join = ["front.top", ["back.top 1", "back.top 2"]]`),
			"9 9", []string{"sewn, they match within 1/16 in"}},
		{"a side of two edges, too long", sketch.Joined("0.5", sketch.Rect("10"), sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top 1: 10,8 6,8\ntop 2: 6,8 0,8"), `join = ["front.right", ["back.top 1", "back.top 2"]]`),
			"7 9", []string{"! sewn, the top 1 of back and the top 2 of back are together 2 in longer than the right of front",
				`if the longer side is to be gathered, 1.29 times as long, make the seam a gathered one; else take 2 in off the longer side, or add it to front`}},

		// The whole skirt is 19 - 1 = 18. Half the front is 5 1/2 - 1/2, since it begins
		// on the fold, and the back 5 - 1: twice 5 and twice 4 make 18 too.
		{"a whole skirt on a front and two backs", waists(sketch.Swap(waist, "W", "19")), "18 18", []string{"sewn, they match within 1/16 in"}},
		{"a whole skirt that is too narrow", waists(sketch.Swap(waist, "W", "18.5")), "17.5 18",
			[]string{"! sewn, the waist of front (2 times) and the waist of back (2 times) are together 1/2 in longer than the waist of skirt",
				`take 1/2 in off the longer side, or add it to skirt; or allow an ease of 1/2 in, the longer side named first`}},
		// Half the skirt, on the fold, is 9 1/2 - 1/2. All come twice, and count once.
		{"half a skirt on the fold", waists("fold = \"centre\"\n" + sketch.Swap(waist, "W", "9.5")), "9 9", []string{"sewn, they match within 1/16 in"}},
		// 2 x (9 - 1/2) = 17; twice 9 1/2 - 1 is as much.
		{"two sleeves, half of each drawn", sketch.Sewn("0.5", `join = ["sleeve.top", ["front.top", "back.top"]]`, sketch.Piece("sleeve", "cut = 2\nfold = \"left\"\n"+sketch.Rect("9")),
			sketch.Piece("front", "cut = 2\n"+sketch.Rect("9.5")), sketch.Piece("back", "cut = 2\n"+sketch.Rect("9.5"))), "17 17", []string{"sewn, they match within 1/16 in"}},
		{"pieces cut two", sketch.Joined("0.5", "cut = 2\n"+sketch.Rect("10"), "cut = 2\n"+sketch.Rect("10"), sketch.Tops), "9 9", []string{"sewn, they match within 1/16 in"}},
		{"a piece cut four and one", sketch.Joined("0.5", "cut = 4\n"+sketch.Rect("10"), sketch.Rect("37"), sketch.Tops), "36 36",
			[]string{"sewn, they match within 1/16 in", "the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines"}},
		{"in centimetres", strings.Replace(sketch.Joined("1", sketch.Rect("20.5"), sketch.Rect("20"), sketch.Tops+"\nease = 1"), `"in"`, `"cm"`, 1), "7.2835 7.0866", []string{"ease the top of front in: by 0.5 cm, and the ease allowed is 1 cm"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := made.Seam(t, c.text)
			assert.Equal(t, c.sewn, made.SewnLengths(s))
			assert.Equal(t, c.told, toldOf(seamVerdict(s, inches)))
		})
	}
}

// What is printed is rounded first and added then: 4 times 8.969 in reads as 36 in, and is
// 35 7/8 in. No difference and no verdict follows from that.
func TestRoundingDoesNotDecide(t *testing.T) {
	six := func(front, back string) string {
		return sketch.Joined("0.5", "cut = 4\n"+sketch.Rect(front), sketch.Rect(back), sketch.Tops)
	}
	const exact = "the difference is that of the exact lengths; each of those above is to the nearest 1/16 in by itself"
	for _, c := range []struct {
		name, text string
		row        string // of the difference, as it is read
		told       []string
	}{
		// 4 x 9.03 = 36.12 reads as 4 x 9; 36.13 as 36 1/8: 0.01 in apart.
		{"read as unequal", six("10.03", "37.13"), "0", []string{exact, "sewn, they match within 1/16 in"}},
		// 4 x 8.969 = 35.876 reads as 4 x 9; 35.96 as 35 15/16, and is longer by 0.084 in.
		{"read the wrong way round", six("9.969", "36.96"), "1/16",
			[]string{exact, "! sewn, the top of back is just over 1/16 in longer than the top of front (4 times); as it is cut, the top of front (4 times) is 2 15/16 in longer than the top of back"}},
		// 4 x 8.97 = 35.88 reads as 4 x 9, 35.97 as 36: 0.09 in apart.
		{"read as equal", six("9.97", "36.97"), "1/16",
			[]string{exact, "! sewn, the top of back is just over 1/16 in longer than the top of front (4 times); as it is cut, the top of front (4 times) is 2 15/16 in longer than the top of back"}},
		// 9.031 in reads as 9 in and 9.0945 in as 9 1/8; 9.032 in and 9.0935 in read as 9 1/16 both.
		{"read as farther apart", sketch.Joined("0.5", sketch.Rect("10.031"), sketch.Rect("10.0945"), sketch.Tops), "1/16",
			[]string{exact, "! sewn, the top of back is just over 1/16 in longer than the top of front; as it is cut, the top of back is just over 1/16 in longer than the top of front",
				`take 1/16 in off back at "left", or add it to front; or allow an ease of 1/16 in, back named first`}},
		{"read as one", sketch.Joined("0.5", sketch.Rect("10.032"), sketch.Rect("10.0935"), sketch.Tops), "1/16", []string{exact, "sewn, they match within 1/16 in"}},
		{"less apart than it is read", sketch.Joined("0.5", sketch.Rect("10.0465"), sketch.Rect("10"), sketch.Tops+"\nwithin = \"3/64\""), "1/16", []string{"sewn, they match within 3/64 in: more than that is only rounding"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, c.text)
			table := seamSection(pattern, inches).Tables[0]
			rows := table.Rows
			assert.Equal(t, c.row, rows[len(rows)-1].Cells[2], "the difference in the table")
			assert.Equal(t, c.told, toldOf(table.Lines[:len(c.told)]))
		})
	}
}

// With ease and in both systems.
func TestVerdictInBothSystems(t *testing.T) {
	s := made.Seam(t, sketch.Joined("0.5", sketch.Rect("10.5"), sketch.Rect("10"), sketch.Tops+"\nease = \"1/2\""))
	assert.Equal(t, []string{"ease the top of front in: by 1/2 in (13 mm), and the ease allowed is 1/2 in (13 mm)"}, toldOf(seamVerdict(s, writer{unit: length.Inch, units: AllUnits})))
}

// A piece drawn finished is sewn as it is drawn; it is cut with what the tucks take up.
func TestTucksInASeamOfAPieceDrawnFinished(t *testing.T) {
	for _, c := range []struct {
		name, tucks string
		sewn, cut   float64 // inches
		plain       bool
	}{
		{"tucks across the edge", sketch.Rows(`tuck t left 1/4 2 3`), 9, 11, false},
		// Below their end the cloth is open, and has all its width.
		{"tucks that end above it", sketch.Rows(`tuck t left 1/4 2 3 | below = "bottom"; length = 3`), 10, 11, true},
		{"tucks along it", sketch.Rows(`tuck t bottom 1/4 2 3`), 9, 10, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, sketch.Joined("0.5", "drawn = \"finished\"\n"+sketch.Rect("10")+"\n---\n"+c.tucks, sketch.Rect("10"), sketch.Tops))
			s := pattern.Seams[0]
			assert.InDelta(t, c.sewn, s.Sides[0].Sewn.MM/25.4, 1e-6, "sewn")
			assert.InDelta(t, c.cut, s.Sides[0].Cut.MM/25.4, 1e-6, "cut")
			assert.Equal(t, c.plain, s.Plain, "whether the cut edges may be compared")
			edges := edgeSection(pattern, inches).Tables[0]
			for _, row := range edges.Rows {
				if row.Cells[0] == "top" {
					assert.Equal(t, row.Cells[1:3], seamSection(pattern, inches).Tables[0].Rows[0].Cells[1:], "the edge and the seam say the same")
				}
			}
		})
	}
}

// The tables of the figures, whole.
func TestSeamTable(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"edge to edge", sketch.Joined("0.5", "name = \"Front\"\n"+sketch.Rect("10.25"), sketch.Rect("10"), sketch.Tops),
			"Front, top | 10 1/4 | 9 1/4\nback, top | 10 | 9\ndifference | 1/4 | 1/4"},
		{"with folds the cut edges are not compared", sketch.Joined("0.5", sketch.Rect("11")+"\n---\n"+sketch.Rows(`tuck t left 1/4 2 3`), sketch.Rect("10.125"), sketch.Tops),
			"front, top | 11 | 9\nback, top | 10 1/8 | 9 1/8\ndifference |  | 1/8"},
		{"two edges on two", sketch.Joined("0.5", sketch.Rect("10"), "cut = 2\n"+sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 4,8\nyoke: 4,8 0,8"), `join = ["front.top", ["back.top", "back.yoke"]]`),
			"front, top | 10 | 9\nback, top (2 times) | 12 | 11\nback, yoke (2 times) | 8 | 7\ntogether | 20 | 18\ndifference |  | 9"},
		{"gathered", sketch.Joined("0.5", sketch.Rect("20"), sketch.Rect("10"), sketch.Tops+"\ngathered = true"),
			"front, top | 20 | 19\nback, top | 10 | 9"},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, c.text)
			section := seamSection(pattern, inches)
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

// What the figures say of the ends, and of what is worth a warning: a jog of more than the
// tolerance, or a corner, in a line that goes over the seam under one name.
func TestWhatIsSaidOfEnds(t *testing.T) {
	// Corners of 90 and t degrees.
	slant := func(t float64) string {
		return fmt.Sprintf("bottom: 0,0 %.9[1]f,0\nright: %.9[1]f,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0", 10-8/math.Tan(t*math.Pi/180))
	}
	// Corners of 70 and 90 degrees, 8 and 7 in high: 0.364 in out for every inch down.
	const (
		leaning = "bottom: 0,0 10,0\nright: 10,0 7.0883,8 | allowance = 0\ntop: 7.0883,8 0,8\nleft: 0,8 0,0 | allowance = 0"
		lower   = "bottom: 0,0 9.6361,0\nr: 9.6361,0 7.0883,7 | allowance = 0\ntop: 7.0883,7 0,7\nl: 0,7 0,0 | allowance = 0"
	)
	for _, c := range []struct {
		name, front, back, seam string
		want                    []string
	}{
		{"nothing amiss", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops, []string{"at right: even, smooth", "at left: even, smooth"}},
		{"a jog that is too small to read", sketch.Rect("10.03"), sketch.Rect("10"), sketch.Tops, []string{"at right: even, smooth", "at left: even, smooth"}},
		{"a jog within the tolerance", sketch.Rect("10.0625"), sketch.Rect("10"), sketch.Tops,
			[]string{"at right: even, smooth", "at left: front runs 1/16 in past back, smooth"}},
		{"a jog beyond it", sketch.Rect("10.125"), sketch.Rect("10"), sketch.Tops,
			[]string{"at right: even, smooth", "! at left: front runs 1/8 in past back, smooth"}},
		// 9 - 1/2 less 0.5525 in, and 8 - 1/2 less 0.4525 in, for the seam along the slanted
		// bottom, whose rise is 1 in 10: 7 15/16 and 7 1/16.
		{"two edges of one piece", "bottom: 0,0 10,-1\nright: 10,-1 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0", sketch.Rect("10"), `join = ["front.right", "front.left"]`,
			[]string{"at bottom: even, smooth", "! at top: right runs 7/8 in past left, smooth"}},
		{"a jog of the cut edges", sketch.Rect("10"), sketch.Swap(sketch.Rect("9.75"), "right: 9.75,0 9.75,8", "right: 9.75,0 9.75,8 | allowance = 0.25"), sketch.Tops,
			[]string{"! at right: the cut edge of front runs 1/4 in past back, smooth", "at left: even, smooth"}},
		{"a point", slant(80), slant(80), sketch.Tops, []string{"! at right: even, a point of 20 degrees", "at left: even, smooth"}},
		{"a dip", slant(100), slant(100), sketch.Tops, []string{"! at right: even, a dip of 20 degrees", "at left: even, smooth"}},
		// A corner of 8 degrees is one that is seen.
		{"a point of 7.8 degrees", slant(86.1), slant(86.1), sketch.Tops, []string{"at right: even, smooth", "at left: even, smooth"}},
		{"a point of 8.2 degrees", slant(85.9), slant(85.9), sketch.Tops, []string{"! at right: even, a point of 8 degrees", "at left: even, smooth"}},
		{"a dip of 8.2 degrees", slant(94.1), slant(94.1), sketch.Tops, []string{"! at right: even, a dip of 8 degrees", "at left: even, smooth"}},
		{"a guess", sketch.Outward, sketch.Swap(sketch.Inward45, "right:", "r:", "left:", "l:", "18,0", "17,0"), sketch.Tops,
			[]string{"at right of front and r of back: even", "at left of front and l of back: even",
				"which ends meet is hardly more than a guess, by the lengths: look at them before you sew", `in the file: if it is the others, meet = ["right", "l"] says it`}},
		// Both ends bend by 20 degrees, or the one by 40 and the other by none.
		{"nothing tells", leaning, lower, sketch.Tops,
			[]string{"at right of front and l of back: even", "at left of front and r of back: even",
				`! which ends meet could not be told: "right" was laid on "l"`, `in the file: if it lies on "r", write meet = ["right", "r"]`}},
		{"notches from two ends", sketch.Rect("10") + "\n---\n\n[notch.n]\nedge = \"top\"\nfrom = \"right\"\nat = 2\n",
			sketch.Rect("10") + "\n---\n\n[notch.n]\nedge = \"top\"\nfrom = \"left\"\nat = 2\n", sketch.Tops, []string{"at right: even, smooth", "at left: even, smooth",
				"! the notches miss each other by 6 in, and would meet if those of one side were measured from its other end"}},
		{"under two names a corner is meant", slant(60), sketch.Swap(slant(60), "right:", "r:"), sketch.Tops, []string{"at right of front and r of back: even", "at left: even, smooth"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := made.Seam(t, sketch.Joined("0.5", c.front, c.back, c.seam))
			assert.Equal(t, c.want, toldOf(seamEndLines(s, inches)))
		})
	}
}
