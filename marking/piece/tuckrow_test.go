package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// strip is a plain length of cloth, 30 in long and 10 in wide, whose raw edge
// lies at x = 0: flat places of tucks are their x.
const strip = "raw: 0,10 0,0\nbottom: 0,0 30,0\nfar: 30,0 30,10\ntop: 30,10 0,10\n---\n"

// creases lists the flat places of all fold lines of a piece, in inches, and
// of their stitching.
func creases(p *piece.Piece) (folds, stitching string) {
	var f, s []string
	for _, t := range p.TuckRows {
		for _, one := range t.Folds {
			for _, line := range linesOf(one, mark.TuckFold) {
				f = append(f, sketch.Number(line[0].X/25.4))
			}
			for _, line := range linesOf(one, mark.TuckStitch) {
				s = append(s, sketch.Number(line[0].X/25.4))
			}
		}
	}
	return strings.Join(f, " "), strings.Join(s, " ")
}

// linesOf returns the lines of a fold on the flat cloth that have one role.
func linesOf(f piece.Fold, role mark.Role) []plane.Path {
	var all []plane.Path
	for _, line := range f.Lines {
		if line.Role == role {
			all = append(all, line.Flat...)
		}
	}
	return all
}

// tookUp is what all tucks of a piece take, both halves of it, in inches.
func tookUp(p *piece.Piece) float64 {
	sum := 0.0
	for _, t := range p.TuckRows {
		sum += t.Taken() / 25.4
	}
	return sum
}

func TestPublishedTucks(t *testing.T) {
	for _, c := range []struct {
		name, tucks string
		folds       string // inches from the raw edge; "" where the source gives none
		takeUp      float64
	}{
		// Kinne and Cooley, Clothing and Health, 1916, p. 101, problem 2;
		// the answer is derived.
		{"three tucks of 1/2 in with 1/2 in spaces", sketch.Tuck("a", "1/2", 3, "3", `gap = "1/2"`), "", 3},
		// A school arithmetic's problem (the copy read shows no author); the answer is derived.
		{"32 quarter-inch tucks", sketch.Tuck("a", "1/4", 32, "1", ""), "", 16},
		// Krolik, Hand Sewing Lessons, about 1901, Model 6; derived.
		{"touching tucks of 1/2 in", sketch.Tuck("a", "1/2", 3, "1 1/2", ""), "1.5 3 4.5", 3},
		// McGlauflin, Handicraft for Girls, 1910, pp. 51-52; derived: a hem
		// tuck of 1 in with a 1/4 in seam, then three of 1/8 in, 1/8 in
		// apart. What leads from the first set to the second is the input.
		{"a hem tuck and three of 1/8 in", sketch.Tuck("hem", "1", 1, "2 1/4", "") + sketch.Tuck("three", "1/8", 3, "3 5/8", `gap = "1/8"`),
			"2.25 3.625 4.125 4.625", 2.75},
		// Klickmann (ed.), The Little Girl's Sewing Book, about 1915,
		// pp. 17-19; derived: gaps of 1/2, 2 1/2 and 1/4 in.
		{"tucks of 1/4 in with three gaps", sketch.Tuck("a", "1/4", 2, "3 1/2", `gap = "1/2"`) + sketch.Tuck("b", "1/4", 2, "8", `gap = "1/4"`),
			"3.5 4.75 8 9", 2},
		{"the same in one set", sketch.Tuck("a", "1/4", 1, "3 1/2", `betweens = ["1/2", "2 1/2", "1/4"]`), "3.5 4.75 8 9", 2},
		{"two groups of two", sketch.Tuck("a", "1/4", 2, "3 1/2", "gap = \"1/2\"\ngroups = 2\nbetween = \"2 1/2\""), "3.5 4.75 8 9.25", 2},
		// Derived: within a group 3w + g = 7/16, from group to group 3w + b = 3/4.
		{"three groups of three", sketch.Tuck("a", "1/8", 3, "3/8", "gap = \"1/16\"\ngroups = 3\nbetween = \"3/8\""),
			"0.375 0.812 1.25 2 2.438 2.875 3.625 4.062 4.5", 2.25},
		// Klickmann (ed.), Needlework Economies, about 1919, p. 12; derived.
		{"twelve 1/2 in tucks, six each way", sketch.Tuck("one", "1/2", 6, "1", `press = "toward"`) + sketch.Tuck("other", "1/2", 6, "15", `press = "away"`), "", 12},
		// Common practice: fold lines 3/8 in apart from 3/8 in on make 1/8 in
		// tucks that just touch.
		{"1/8 in tucks by spacing", sketch.Tuck("a", "1/8", 6, "3/8", `spacing = "3/8"`), "0.375 0.75 1.125 1.5 1.875 2.25", 1.5},
		{"the same by gap", sketch.Tuck("a", "1/8", 6, "3/8", `gap = 0`), "0.375 0.75 1.125 1.5 1.875 2.25", 1.5},
		// Woolman, A Sewing Course for Teachers, about 1893: widths from
		// 1/16 in to about 2 in.
		{"the narrowest", sketch.Tuck("a", "1/16", 2, "1", ""), "1 1.188", 0.25},
		{"the widest", sketch.Tuck("a", "2", 2, "2", ""), "2 8", 8},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", strip+c.tucks)
			if folds, _ := creases(piece); c.folds != "" {
				assert.Equal(t, c.folds, folds, "flat fold lines")
			}
			assert.InDelta(t, c.takeUp, tookUp(piece), 1e-9, "take-up")
		})
	}
}

// From one stitching to the next fold line it is 2w + g on the flat cloth
// (McGlauflin, Handicraft for Girls, 1910, p. 89).
func TestStitchingToTheNextFold(t *testing.T) {
	piece := sketched(t, "0", strip+sketch.Tuck("a", "1/2", 2, "1", `gap = "1/4"`))
	folds, stitching := creases(piece)
	assert.Equal(t, "1 2.75", folds)
	assert.Equal(t, "0.5 1.5 2.25 3.25", stitching)
	set := piece.TuckRows[0]
	lastStitching := linesOf(set.Folds[0], mark.TuckStitch)[1][0].X
	nextFold := linesOf(set.Folds[1], mark.TuckFold)[0][0].X
	assert.InDelta(t, 2*0.5+0.25, (nextFold-lastStitching)/25.4, 1e-9, "2w + g")
}

func TestTucksOfAYoke(t *testing.T) {
	piece := sketched(t, "0.375", sketch.Yoke())
	require.Len(t, piece.TuckRows, 1)
	set := piece.TuckRows[0]
	require.Len(t, set.Folds, 6)
	// The neck's stitch line meets the centre 3/8 in below 10, and 2 1/8 in
	// below that the tucks end.
	assert.Equal(t, "0.375,7.5 0.375,10", sketch.Inches(sketch.Ordered(linesOf(set.Folds[0], mark.TuckFold)[0])), "the first fold line, from the cut neck down")
	assert.Equal(t, "2.25,7.5 2.25,10.75", sketch.Inches(sketch.Ordered(linesOf(set.Folds[5], mark.TuckFold)[0])), "the last, from the slant of the neck down")
	assert.Equal(t, "0.25,7.5 2.375,7.5", sketch.Inches(set.FlatEnds[0]), "the end line lies across them all")
	for k, one := range set.Folds {
		require.Len(t, linesOf(one, mark.TuckStitch), 2, "tuck %d is stitched on both sides of its fold", k+1)
	}
	twin := sketched(t, "0.375", sketch.Yoke(`length = "2 1/8"`, "length = \"2 1/8\"\nsewn = \"twin needle\""))
	assert.Empty(t, linesOf(twin.TuckRows[0].Folds[0], mark.TuckStitch), "a twin needle follows the fold line")
}

func TestWhereTucksLie(t *testing.T) {
	for _, c := range []struct{ name, tuck, want string }{
		{"beside the hem, across the piece", "[tuck.growth]\nbeside = \"hem\"\nwidth = 0.5\ncount = 1\nfirst = 2",
			"0,2 5.826,2"},
		{"on the far side of a parallel line", "[line.rule]\nalong = \"centre front\"\ndistance = 3\n[tuck.a]\nbeside = \"rule\"\nwidth = 0.25\ncount = 1\nfirst = 1",
			"4,0 4,11.7"},
		{"on the side asked for", "[line.rule]\nalong = \"centre front\"\ndistance = 3\n[tuck.a]\nbeside = \"rule\"\nside = \"centre front\"\nwidth = 0.25\ncount = 1\nfirst = 1",
			"2,0 2,10.5"},
		{"beside a line through points", "[line.rule]\npoints = [[1, 1], [1, 9]]\n[tuck.a]\nbeside = \"rule\"\nside = \"side\"\nwidth = 0.25\ncount = 1\nfirst = 0.5",
			"1.5,0 1.5,10"},
		{"the stitching on the fold itself", "[tuck.a]\nbeside = \"centre front\"\nwidth = 0.25\ncount = 1\nfirst = 0.25",
			"0.25,0 0.25,10"},
	} {
		t.Run(c.name, func(t *testing.T) {
			outline, _, _ := strings.Cut(sketch.Yoke(), "---\n")
			piece := sketched(t, "0.375", outline+"---\n\n"+c.tuck+"\n")
			assert.Equal(t, c.want, sketch.Inches(sketch.Ordered(linesOf(piece.TuckRows[0].Folds[0], mark.TuckFold)[0])))
		})
	}
}

// A notch in the outline parts the fold line that runs over it.
func TestTuckInTwoParts(t *testing.T) {
	piece := sketched(t, "0", "raw: 0,0 0,10\ntop: 0,10 4,10 2,5 6,5 8,10\nfar: 8,10 8,0\nhem: 8,0 0,0\n---\n"+
		"\n[tuck.across]\nbeside = \"hem\"\nwidth = 0.25\ncount = 1\nfirst = 6\n")
	var parts []string
	for _, f := range linesOf(piece.TuckRows[0].Folds[0], mark.TuckFold) {
		parts = append(parts, sketch.Inches(sketch.Ordered(f)))
	}
	assert.ElementsMatch(t, []string{"0,6 2.4,6", "6.4,6 8,6"}, parts)
}
