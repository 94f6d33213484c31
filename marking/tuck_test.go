package marking

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// strip is a plain length of cloth, 30 in long and 10 in wide, whose raw edge
// lies at x = 0: flat places of tucks are their x.
const strip = "raw: 0,10 0,0\nbottom: 0,0 30,0\nfar: 30,0 30,10\ntop: 30,10 0,10\n---\n"

// creases lists the flat places of all fold lines of a piece, in inches, and
// of their stitching.
func creases(p *Piece) (folds, stitching string) {
	var f, s []string
	for _, t := range p.Tucks {
		for _, one := range t.Each {
			for _, line := range one.Fold {
				f = append(f, number(line[0].X/25.4))
			}
			for _, line := range one.Sewn {
				s = append(s, number(line[0].X/25.4))
			}
		}
	}
	return strings.Join(f, " "), strings.Join(s, " ")
}

func tookUp(p *Piece) float64 {
	sum := 0.0
	for _, t := range p.Tucks {
		sum += t.TakeUp() / 25.4
	}
	return sum
}

func tuck(key, width string, count int, first, rest string) string {
	return fmt.Sprintf("\n[tuck.%s]\nbeside = \"raw\"\nwidth = %q\ncount = %d\nfirst = %q\n%s\n", key, width, count, first, rest)
}

func TestPublishedTucks(t *testing.T) {
	for _, c := range []struct {
		name, tucks string
		folds       string // inches from the raw edge; "" where the source gives none
		takeUp      float64
	}{
		// Kinne and Cooley, Clothing and Health, 1916, p. 101, problem 2;
		// the answer is derived.
		{"three tucks of 1/2 in with 1/2 in spaces", tuck("a", "1/2", 3, "3", `gap = "1/2"`), "", 3},
		// A school arithmetic's problem; the answer is derived.
		{"32 quarter-inch tucks", tuck("a", "1/4", 32, "1", ""), "", 16},
		// Krolik, Hand Sewing Lessons, about 1901, Model 6; derived.
		{"touching tucks of 1/2 in", tuck("a", "1/2", 3, "1 1/2", ""), "1.5 3 4.5", 3},
		// McGlauflin, Handicraft for Girls, 1910, pp. 51-52; derived: a hem
		// tuck of 1 in with a 1/4 in seam, then three of 1/8 in, 1/8 in
		// apart. What leads from the first set to the second is the input.
		{"a hem tuck and three of 1/8 in", tuck("hem", "1", 1, "2 1/4", "") + tuck("three", "1/8", 3, "3 5/8", `gap = "1/8"`),
			"2.25 3.625 4.125 4.625", 2.75},
		// Klickmann (ed.), The Little Girl's Sewing Book, about 1915,
		// pp. 17-19; derived: gaps of 1/2, 2 1/2 and 1/4 in.
		{"tucks of 1/4 in with three gaps", tuck("a", "1/4", 2, "3 1/2", `gap = "1/2"`) + tuck("b", "1/4", 2, "8", `gap = "1/4"`),
			"3.5 4.75 8 9", 2},
		// Klickmann (ed.), Needlework Economies, about 1919, p. 12; derived.
		{"twelve 1/2 in tucks, six each way", tuck("one", "1/2", 6, "1", `press = "toward"`) + tuck("other", "1/2", 6, "15", `press = "away"`), "", 12},
		// Common practice: fold lines 3/8 in apart from 3/8 in on make 1/8 in
		// tucks that just touch.
		{"1/8 in tucks by spacing", tuck("a", "1/8", 6, "3/8", `spacing = "3/8"`), "0.375 0.75 1.125 1.5 1.875 2.25", 1.5},
		{"the same by gap", tuck("a", "1/8", 6, "3/8", `gap = 0`), "0.375 0.75 1.125 1.5 1.875 2.25", 1.5},
		// Woolman, A Sewing Course for Teachers, about 1893: widths from
		// 1/16 in to about 2 in.
		{"the narrowest", tuck("a", "1/16", 2, "1", ""), "1 1.188", 0.25},
		{"the widest", tuck("a", "2", 2, "2", ""), "2 8", 8},
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
	piece := sketched(t, "0", strip+tuck("a", "1/2", 2, "1", `gap = "1/4"`))
	folds, stitching := creases(piece)
	assert.Equal(t, "1 2.75", folds)
	assert.Equal(t, "0.5 1.5 2.25 3.25", stitching)
	set := piece.Tucks[0]
	lastStitching := set.Each[0].Sewn[1][0].X
	nextFold := set.Each[1].Fold[0][0].X
	assert.InDelta(t, 2*0.5+0.25, (nextFold-lastStitching)/25.4, 1e-9, "2w + g")
}

// yoke is a front on the fold with a tucked yoke, as a maker writes it.
func yoke(change ...string) string {
	text := `fold = "centre front"
centre front: 0,0 0,10
neck: 0,10 1.5,10 2.5,11 2.5,12
shoulder: 2.5,12 5,11.5
side: 5,11.5 6,0
hem: 6,0 0,0
---

[tuck.yoke]
beside = "centre front"
width = "1/8"
count = 6
first = "3/8"
spacing = "3/8"
below = "neck"
length = "2 1/8"
`
	return strings.NewReplacer(change...).Replace(text)
}

func TestTucksOfAYoke(t *testing.T) {
	piece := sketched(t, "0.375", yoke())
	require.Len(t, piece.Tucks, 1)
	set := piece.Tucks[0]
	require.Len(t, set.Each, 6)
	// The neck's stitch line meets the centre 3/8 in below 10, and 2 1/8 in
	// below that the tucks end.
	assert.Equal(t, "0.375,7.5 0.375,10", inches(ordered(set.Each[0].Fold[0])), "the first fold line, from the cut neck down")
	assert.Equal(t, "2.25,7.5 2.25,10.75", inches(ordered(set.Each[5].Fold[0])), "the last, from the slant of the neck down")
	assert.Equal(t, "0.25,7.5 2.375,7.5", inches(set.End), "the end line lies across them all")
	for k, one := range set.Each {
		require.Len(t, one.Sewn, 2, "tuck %d is stitched on both sides of its fold", k+1)
	}
	twin := sketched(t, "0.375", yoke(`length = "2 1/8"`, "length = \"2 1/8\"\nsewn = \"twin needle\""))
	assert.Empty(t, twin.Tucks[0].Each[0].Sewn, "a twin needle follows the fold line")
}

// ordered returns a line from its lower or left end.
func ordered(p plane.Path) plane.Path {
	if p[0].Y > p[1].Y || p[0].Y == p[1].Y && p[0].X > p[1].X {
		return plane.Path{p[1], p[0]}
	}
	return p
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
			outline, _, _ := strings.Cut(yoke(), "---\n")
			piece := sketched(t, "0.375", outline+"---\n\n"+c.tuck+"\n")
			assert.Equal(t, c.want, inches(ordered(piece.Tucks[0].Each[0].Fold[0])))
		})
	}
}

// A notch in the outline parts the fold line that runs over it.
func TestTuckInTwoParts(t *testing.T) {
	piece := sketched(t, "0", "raw: 0,0 0,10\ntop: 0,10 4,10 2,5 6,5 8,10\nfar: 8,10 8,0\nhem: 8,0 0,0\n---\n"+
		"\n[tuck.across]\nbeside = \"hem\"\nwidth = 0.25\ncount = 1\nfirst = 6\n")
	var parts []string
	for _, f := range piece.Tucks[0].Each[0].Fold {
		parts = append(parts, inches(ordered(f)))
	}
	assert.ElementsMatch(t, []string{"0,6 2.4,6", "6.4,6 8,6"}, parts)
}
