package garment_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// The full-size draft of a child's underwaist, McGlauflin, Handicraft for Girls, 1910,
// p. 53; derived from its corner points: shoulders 2.6926 in front and 2.5739 in back,
// 0.119 in apart; side seams 5.0249 in both. The stitch lines follow from curves that are
// ours as well.
func TestUnderwaistSeams(t *testing.T) {
	pattern := made.Example(t, "underwaist.toml")
	require.Len(t, pattern.Seams, 2)
	shoulder, side := pattern.Seams[0], pattern.Seams[1]
	for _, c := range []struct {
		name        string
		seam        garment.Seam
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
	assert.Contains(t, shoulder.Mismatch(length.Amount.String), "cut, the shoulder of Front is 1/8 in longer than the shoulder of Back")
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
		{"shoulder", []string{"sewn, the shoulder of front is 1/8 in longer than the shoulder of back; as it is cut, the shoulder of front is 1/8 in longer than the shoulder of back; take 1/8 in off front at \"armhole\", or add it to back; or allow an ease of 1/8 in"}},
		{"side", nil},
	} {
		t.Run(c.edge, func(t *testing.T) {
			pattern, err := made.Pattern(sketch.Joined("0", front, back, sketch.Swap(`join = ["front.E", "back.E"]`, "E", c.edge)))
			require.NoError(t, err)
			var got []string
			for _, r := range pattern.Remarks {
				if r.Key == "seam.s" {
					got = append(got, r.Text)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

func TestSeamsWhoseAllowancesDiffer(t *testing.T) {
	back := sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 4,8 | allowance = 0.25\nyoke: 4,8 0,8 | allowance = 0.25")
	for _, c := range []struct {
		name, back, seam string
		want             []string
	}{
		{"the same", sketch.Rect("10"), sketch.Tops, nil},
		{"they differ", sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 0,8 | allowance = \"3/8\""), sketch.Tops,
			[]string{"the allowances of its two sides differ, 1/2 in and 3/8 in: the cut edges do not lie on each other when it is sewn"}},
		{"a side of two edges that differs", back, `join = ["front.top", ["back.top", "back.yoke"]]`,
			[]string{"the allowances of its two sides differ, 1/2 in and 1/4 in: the cut edges do not lie on each other when it is sewn"}},
		{"a side that has no one allowance", sketch.Swap(back, "yoke: 4,8 0,8 | allowance = 0.25", "yoke: 4,8 0,8"), `join = ["front.top", ["back.top", "back.yoke"]]`, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := made.Pattern(sketch.Joined("0.5", sketch.Rect("10"), c.back, c.seam+"\nease = 2"))
			require.NoError(t, err)
			var got []string
			for _, r := range pattern.Remarks {
				assert.Equal(t, "seam.s", r.Key)
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
		{"none", sketch.Rect("10"), "", 0, true},
		{"a pleat", sketch.Rect("10"), pleat("5", "0.5", "left", ""), 1, false},
		{"turned the other way", sketch.Rect("10"), pleat("5", "0.5", "right", ""), 1, false},
		{"three pleats", sketch.Rect("10"), pleat("3", "0.5", "left", "count = 3\nspacing = 1.5"), 3, false},
		{"a pleat along the grain of a straight edge", "grain = \"left\"\n" + sketch.Rect("10"), pleat("5", "0.5", "left", "run = \"grain\""), 1, false},
		{"a pleat square to a rising edge", rising, pleat("12", "0.5", "left", ""), 1, false},
		{"a pleat at a slant", rising, pleat("12", "0.5", "left", "run = \"grain\""), 1.25, false},
		{"two pleats at a slant, laid upward", rising, pleat("8", "0.25", "right", "run = \"grain\"\ncount = 2\nspacing = 6"), 1.25, false},
		// Of the inch before its fold, half lies in the seam allowance of the side.
		{"a pleat half in the allowance", sketch.Rect("10"), pleat("1", "0.5", "left", ""), 0.5, false},
		{"a pleat in the allowance", sketch.Rect("10"), pleat("0.5", "0.25", "left", ""), 0, false},
		{"a pleat that touches the allowance", sketch.Rect("10"), pleat("1.5", "0.5", "left", ""), 1, false},
		// The lines of the pleat reach far into the piece, nearly to the other side, whose
		// seam is the same edge's.
		{"a pleat across a pouch", pouch, "\n[pleat.p]\nedge = \"round\"\nfrom = \"top\"\nat = 4\ndepth = 0.5\ntoward = \"top\"\nlength = 9\n", 1, false},
		// The seam turns down the placement line of the pleat, at 6 1/2 in.
		{"a pleat beside a step", step, "\n[pleat.p]\nedge = \"top\"\nfrom = \"right\"\nat = 4.5\ndepth = 0.5\ntoward = \"left\"\nlength = 1\n", 1, false},

		{"two tucks", sketch.Rect("10"), sketch.Rows(`tuck t left 1/4 2 3`), 1, false},
		{"a tuck at a slant", rising, sketch.Rows(`tuck t left 1/2 1 9`), 1.25, false},
		{"tucks that end above the edge", sketch.Rect("10"), sketch.Rows(`tuck t left 1/4 2 3 | below = "bottom"; length = 3`), 0, true},
		{"tucks that end below it", sketch.Rect("10"), sketch.Rows(`tuck t left 1/4 2 3 | below = "top"; length = 3`), 1, false},
		{"tucks along the edge", sketch.Rect("10"), sketch.Rows(`tuck t bottom 1/4 2 3`), 0, true},
		{"a tuck half in the allowance", sketch.Rect("10"), sketch.Rows(`tuck t left 1/2 1 1/2`), 0.5, false},
		// One above the other, they leave the piece without a finished shape.
		{"tucks at the top and at the bottom of the same cloth", sketch.Rect("10"), sketch.Rows(`tuck a left 1/4 2 3 | below = "top"; length = 2`, `tuck b left 1/4 3 3 | below = "bottom"; length = 2`), 1, false},
		{"the same, measured from two sides", sketch.Rect("10"), sketch.Rows(`tuck a left 1/4 2 3 | below = "top"; length = 2`, `tuck b right 1/4 3 4 | below = "bottom"; length = 2`), 1, false},
		{"the same, with tucks along the edge", sketch.Rect("10"), sketch.Rows(`tuck a left 1/4 2 3 | below = "top"; length = 2`, `tuck b left 1/4 3 3 | below = "bottom"; length = 2`, `tuck c bottom 1/8 1 4`), 1, false},
		{"pleats across the piece", sketch.Rect("10"), sketch.Rows(`pleat p left 1/2 2 3`), 2, false},
		{"a pleat and tucks", sketch.Rect("10"), sketch.Rows(`tuck t left 1/4 2 6`) + pleat("3", "0.5", "left", ""), 2, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			edge := "top"
			if c.piece == pouch {
				edge = "round"
			}
			s := made.Seam(t, sketch.Joined("0.5", c.piece+"\n---\n"+c.folds, c.piece, sketch.Swap(`join = ["front.E", "back.E"]`, "E", edge)))
			assert.InDelta(t, -c.want, s.Difference.MM/25.4, 1e-6, "the folds take")
			assert.Equal(t, c.plain, s.Plain, "whether nothing is folded")
		})
	}
}

// The edges of a tucked block are cut when it is tucked.
func TestSeamOfATuckedBlock(t *testing.T) {
	tucks := sketch.Rows(`tuck t left 1/4 2 3 | below = "top"; length = 3`)
	s := made.Seam(t, sketch.Joined("0.5", "drawn = \"finished\"\n"+sketch.Rect("10")+"\n---\n"+tucks+"\n[block]\nends = 0.5\n", sketch.Rect("10"), sketch.Tops))
	assert.Equal(t, "9 9", made.SewnLengths(s))
	assert.InDelta(t, 10, s.Sides[0].Cut.MM/25.4, 1e-6)
	assert.True(t, s.Plain, "the cut edges may be compared")
}

func TestMistakesInSeams(t *testing.T) {
	two := func(seam string) string { return sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10"), seam) }
	const pleated = "\n---\n\n[pleat.p]\nedge = \"top\"\nfrom = \"left\"\nat = 1\ndepth = 0.5\ntoward = \"left\"\nlength = 1\ncount = 10\nspacing = 1\n"
	for _, c := range []struct{ name, text, want string }{
		{"an edge on the fold", sketch.Joined("0.5", "fold = \"left\"\n"+sketch.Rect("10"), sketch.Rect("10"), `join = ["front.left", "back.left"]`),
			`33: seam.s.join: "front.left" lies on the fold of the cloth, where nothing is sewn
hint: name another edge; for a seam there, leave fold out of the piece and write cut = 2`},
		{"an edge on the fold, on both sides", sketch.Joined("0.5", "fold = \"left\"\n"+sketch.Rect("10"), sketch.Rect("10"), `join = ["front.left", "front.left"]`),
			`33: seam.s.join: "front.left" lies on the fold of the cloth, where nothing is sewn
hint: name another edge; for a seam there, leave fold out of the piece and write cut = 2`},
		{"an edge joined with itself that is there once", two(`join = ["front.left", "front.left"]`),
			`32: seam.s.join: "front.left" is joined with itself, but there is only one of it
hint: name the edge that it is sewn to, or write cut = 2 for the piece`},
		{"the same, among others", two(`join = [["front.left", "front.top"], ["back.left", "front.left"]]`),
			`32: seam.s.join: "front.left" is joined with itself, but there is only one of it
hint: name the edge that it is sewn to, or write cut = 2 for the piece`},
		{"an edge that is all pleats", sketch.Joined("0", sketch.Rect("10")+pleated, sketch.Rect("10"), sketch.Tops+"\ngathered = true"),
			`42: seam.s.join: the tucks and pleats of "front.top" leave nothing of it to be sewn
hint: make them fewer or smaller`},
		{"an edge that lies within a tuck", sketch.Joined("0.5", sketch.Rect("10")+"\n---\n"+sketch.Rows("tuck t top 1/4 1 1/2"), sketch.Rect("10"), sketch.Tops),
			`39: seam.s.join: the tucks and pleats of "front.top" leave nothing of it to be sewn
hint: make them fewer or smaller`},
		// A piece with a mistake of its own is there all the same.
		{"a seam of a piece that has a mistake", sketch.Joined("0.5", sketch.Swap(sketch.Rect("10"), "right: 10,0 10,8", "right: 10,0.5 10,8"), sketch.Rect("10"), sketch.Tops),
			`5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and, in line 8, (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"a mistake in a piece and one in the seam", sketch.Joined("0.5", sketch.Swap(sketch.Rect("10"), "right: 10,0 10,8", "right: 10,0.5 10,8"), sketch.Rect("10"), `join = ["front.top", "back.tpo"]`),
			`5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and, in line 8, (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them
32: seam.s.join: there is no edge "tpo" in the piece "back"
hint: did you mean "top"?`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(c.text)
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
