package figures

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/terminal"
)

const tucksAndPleats = "Tucks and pleats, on the flat cloth"

// strip is a plain length of cloth, 30 in long and 10 in wide, whose raw edge
// lies at x = 0: flat places of tucks are their x.
const strip = "raw: 0,10 0,0\nbottom: 0,0 30,0\nfar: 30,0 30,10\ntop: 30,10 0,10\n---\n"

// foldsInPrint checks a sketch and returns what the figures say of its folds.
func foldsInPrint(t *testing.T, text string) string {
	return printedSection(garmentOf(t, text, ""), tucksAndPleats)
}

// The places and sums of published tucks, as a maker reads them. Sources as beside the
// same tucks in the tests of package piece (tuckrow_test.go).
func TestPublishedTucksInPrint(t *testing.T) {
	for _, c := range []struct {
		name, tucks string
		want        []string // lines of the tables, spaces made one
	}{
		// Kinne and Cooley, Clothing and Health, 1916, p. 101, problem 2; the answer is derived.
		{"three tucks of 1/2 in", sketch.Tuck("a", "1/2", 3, "3", `gap = "1/2"`), []string{"each takes up 1 in, all 3 together 3 in"}},
		// A school arithmetic's problem (the copy read shows no author); the answer is derived.
		{"32 quarter-inch tucks", strings.NewReplacer("30,", "40,").Replace(sketch.Tuck("a", "1/4", 32, "1", "")), []string{"each takes up 1/2 in, all 32 together 16 in"}},
		// Krolik, Hand Sewing Lessons, about 1901, Model 6; derived. Stitched w on either side; finished
		// at 1, 1 1/2, 2: w apart, for they touch.
		{"touching tucks of 1/2 in", sketch.Tuck("a", "1/2", 3, "1 1/2", ""), []string{
			"tuck 1 1 1 1/2 2 1", "tuck 2 2 1/2 3 3 1/2 1 1/2", "tuck 3 4 4 1/2 5 2"}},
		// McGlauflin, Handicraft for Girls, 1910, pp. 51-52; derived: creases 2 1/4, 3 5/8, 4 1/8, 4 5/8;
		// the hem tuck has taken 2 in where the others are sewn.
		{"a hem tuck and three of 1/8 in", sketch.Tuck("hem", "1", 1, "2 1/4", "") + sketch.Tuck("three", "1/8", 3, "3 5/8", `gap = "1/8"`), []string{
			"tuck 1 1 1/4 2 1/4 3 1/4 1 1/4", "it takes up 2 in",
			"tuck 1 3 1/2 3 5/8 3 3/4 1 1/2", "tuck 2 4 4 1/8 4 1/4 1 3/4", "tuck 3 4 1/2 4 5/8 4 3/4 2", "each takes up 1/4 in, all 3 together 3/4 in"}},
		// Klickmann (ed.), The Little Girl's Sewing Book, about 1915, pp. 17-19;
		// derived: creases 3 1/2, 4 3/4, 8, 9, stitched finished at 3 1/4, 4, 6 3/4, 7 1/4.
		{"tucks of 1/4 in with three gaps", sketch.Tuck("a", "1/4", 2, "3 1/2", `gap = "1/2"`) + sketch.Tuck("b", "1/4", 2, "8", `gap = "1/4"`), []string{
			"tuck 1 3 1/4 3 1/2 3 3/4 3 1/4", "tuck 2 4 1/2 4 3/4 5 4", "tuck 1 7 3/4 8 8 1/4 6 3/4", "tuck 2 8 3/4 9 9 1/4 7 1/4",
			"each takes up 1/2 in, both together 1 in"}},
		// Klickmann (ed.), Needlework Economies, about 1919, p. 12; derived.
		{"six 1/2 in tucks each way", sketch.Tuck("one", "1/2", 6, "1", `press = "toward"`) + sketch.Tuck("other", "1/2", 6, "15", ""), []string{"each takes up 1 in, all 6 together 6 in", "pressed toward raw"}},
		// Common practice.
		{"1/8 in tucks 3/8 in apart", sketch.Tuck("a", "1/8", 6, "3/8", `spacing = "3/8"`), []string{"tuck 6 2 1/8 2 1/4 2 3/8 7/8", "each takes up 1/4 in, all 6 together 1 1/2 in"}},
		// Woolman, A Sewing Course for Teachers, about 1893: the narrowest and the widest.
		{"the narrowest", sketch.Tuck("a", "1/16", 2, "1", ""), []string{"tuck 1 15/16 1 1 1/16 15/16", "stitch each 1/16 in from its fold", "each takes up 1/8 in, both together 1/4 in"}},
		{"the widest", sketch.Tuck("a", "2", 2, "2", ""), []string{"tuck 1 0 2 4 0", "tuck 2 6 8 10 2", "each takes up 4 in, both together 8 in"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var lines []string
			for _, line := range strings.Split(foldsInPrint(t, strip+c.tucks), "\n") {
				lines = append(lines, strings.Join(strings.Fields(line), " "))
			}
			for _, want := range c.want {
				assert.Contains(t, lines, want)
			}
		})
	}
}

// Half a yoke of 6 in and its tucks, measured from the centre.
const half = "fold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 12,10\nside: 12,10 12,0\nhem: 12,0 0,0\n---\n"

func TestTuckTables(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		// f, f -+ 1/8, finished f - 1/8 - k/4; 6 x 1/4
		{"in sixteenths", half + sketch.Rows(`tuck yoke centre 1/8 3 7/16 | gap = "1/16"; press = "away"`), `
  front, yoke: 6 tucks, 3 on each side, each 1/8 in wide
  from centre  stitch    fold  stitch  when sewn
  tuck 1         5/16    7/16    9/16       5/16
  tuck 2          3/4     7/8       1        1/2
  tuck 3       1 3/16  1 5/16  1 7/16      11/16
  stitch each 1/8 in from its fold
  each takes up 1/4 in, all 6 together 1 1/2 in
  cloth that shows between tucks when sewn: 1/16 in
  pressed away from centre
`},
		// 9/64 = 2/16 + 1/64; the fold at 1/2 in: 23/64 = 6/16 - 1/64 to 41/64 =
		// 10/16 + 1/64. Take-up 2 x 9/64 = 4.5/16, two of them 9/16. Finished 23/64 ->
		// 5.75/16 -> 6/16.
		{"off the ruler by 1/64", half + sketch.Rows(`tuck yoke centre 9/64 1 1/2`), `
  front, yoke: 2 tucks, 1 on each side, each 9/64 in wide
  from centre      stitch  fold      stitch  when sewn
  tuck 1       3/8 - 1/64   1/2  5/8 + 1/64        3/8
  + or -: the line lies that much farther or nearer than the mark
  stitch each 9/64 in from its fold
  2 tucks together take up 9/16 in
`},
		// Half of the first lies on the other half of the piece: five in all. The second
		// is 3/4 + 1/4 from the centre; the first takes 1/4 of this half.
		{"one on the centre", half + sketch.Rows(`tuck yoke centre 1/4 3 0 | gap = "1/4"`), `
  front, yoke: 5 tucks, 1 on the centre and 2 on each side, each 1/4 in wide
  from centre      stitch  fold  stitch  when sewn
  tuck 1       1/4 beyond     0     1/4          0
  tuck 2              3/4     1   1 1/4        1/2
  tuck 3            1 3/4     2   2 1/4          1
  stitch each 1/4 in from its fold
  each takes up 1/2 in, all 5 together 2 1/2 in
  cloth that shows between tucks when sewn: 1/4 in
`},
		// From fold to fold 3/8 + 1/16, from group to group 3/8 + 3/16; sewn, a tuck more lies
		// 1/8 + 1/16 on, a group 1/8 + 3/16.
		{"in groups", half + sketch.Rows(`tuck yoke centre 1/8 2 1/2 | gap = "1/16"; groups = 2; between = "3/16"`), `
  front, yoke: 8 tucks, 2 in each of 2 groups on each side, each 1/8 in wide
  from centre       stitch     fold  stitch  when sewn
  group 1: tuck 1      3/8      1/2     5/8        3/8
  tuck 2             13/16    15/16  1 1/16       9/16
  group 2: tuck 3    1 3/8    1 1/2   1 5/8        7/8
  tuck 4           1 13/16  1 15/16  2 1/16     1 1/16
  stitch each 1/8 in from its fold
  each takes up 1/4 in, all 8 together 2 in
  cloth that shows between tucks when sewn: 1/16 in
  from the last fold line of a group to the first of the next: 9/16 in
  cloth that shows between groups when sewn: 3/16 in
`},
		{"in groups about the centre", half + sketch.Rows(`tuck yoke centre 1/8 2 0 | gap = "1/16"; betweens = ["3/16", "5/16"]`), `
  front, yoke: 11 tucks, 3 about the centre and 2 in each of 2 groups on each
  side, each 1/8 in wide
  from centre          stitch    fold   stitch  when sewn
  group 1: tuck 1  1/8 beyond       0      1/8          0
  tuck 2                 5/16    7/16     9/16       3/16
  group 2: tuck 3         7/8       1    1 1/8        1/2
  tuck 4               1 5/16  1 7/16   1 9/16      11/16
  group 3: tuck 5           2   2 1/8    2 1/4      1 1/8
  tuck 6               2 7/16  2 9/16  2 11/16     1 5/16
  stitch each 1/8 in from its fold
  each takes up 1/4 in, all 11 together 2 3/4 in
  cloth that shows between tucks when sewn: 1/16 in
  from the last fold line of a group to the first of the next, in their order:
  9/16 in, 11/16 in
  cloth that shows between groups when sewn, in their order: 3/16 in, 5/16 in
`},
		{"single tucks with spaces of their own", half + sketch.Rows(`tuck yoke centre 1/8 1 1/2 | betweens = ["3/16", "5/16"]`), `
  front, yoke: 6 tucks, 3 on each side, each 1/8 in wide
  from centre  stitch    fold  stitch  when sewn
  tuck 1          3/8     1/2     5/8        3/8
  tuck 2        15/16  1 1/16  1 3/16      11/16
  tuck 3        1 5/8   1 3/4   1 7/8      1 1/8
  stitch each 1/8 in from its fold
  each takes up 1/4 in, all 6 together 1 1/2 in
  from fold line to fold line, in their order: 9/16 in, 11/16 in
  cloth that shows between tucks when sewn, in their order: 3/16 in, 5/16 in
`},
		// A sample took 2.7/10 in for each: fold lines lie off the ruler, what shows does not.
		{"in groups, with a sample", half + sketch.Rows(`tuck yoke centre 1/8 1 1/2 | groups = 2; between = "1/4"; sample = {tucks = 10, flat = 10, sewn = "7.3"}`), `
  front, yoke: 4 tucks, 2 on each side, each 1/8 in wide
  from centre    stitch          fold        stitch  when sewn
  tuck 1            3/8           1/2           5/8        3/8
  tuck 2       1 + 1/64  1 1/8 + 1/64  1 1/4 + 1/64        3/4
  + or -: the line lies that much farther or nearer than the mark
  stitch each 1/8 in from its fold
  4 tucks together take up 1 1/16 in
  cloth that shows between tucks when sewn: 1/4 in
`},
		{"a twin needle", half + sketch.Rows(`tuck yoke centre 1/8 2 1/2 | sewn = "twin needle"`), `
  front, yoke: 4 tucks, 2 on each side, each 1/8 in wide, twin needle
  from centre  fold  when sewn
  tuck 1        1/2        3/8
  tuck 2        7/8        1/2
  stitch each along its fold line with a twin needle
  each takes up 1/4 in, all 4 together 1 in
  no cloth shows between tucks when sewn: they touch
`},
		// A growth tuck across the whole piece, beside a hem of 2 in
		{"one growth tuck", strings.Replace(half, "12,0 0,0", "12,0 0,0 | hem = 2", 1) + sketch.Rows(`tuck growth hem 1/2 1 4`), `
  front, growth: 1 tuck, 1/2 in wide
  from hem  stitch  fold  stitch  when sewn
  tuck 1     3 1/2     4   4 1/2      3 1/2
  stitch it 1/2 in from its fold
  it takes up 1 in
  gives 1 in let down
`},
		// Three of them: each gives 1 in.
		{"three growth tucks", strings.Replace(half, "12,0 0,0", "12,0 0,0 | hem = 2", 1) + sketch.Rows(`tuck growth hem 1/2 3 4 | gap = "1/2"`), `
  front, growth: 3 tucks, each 1/2 in wide
  from hem  stitch  fold  stitch  when sewn
  tuck 1     3 1/2     4   4 1/2      3 1/2
  tuck 2     5 1/2     6   6 1/2      4 1/2
  tuck 3     7 1/2     8   8 1/2      5 1/2
  stitch each 1/2 in from its fold
  each takes up 1 in, all 3 together 3 in
  cloth that shows between tucks when sewn: 1/2 in
  each tuck that is let down makes the piece 1 in longer, all 3 together 3 in
`},
		// Ten took up 2 5/8 in (see tucksample_test.go of package piece): one 0.2625 in, and four 1.05 in =
		// 16.8/16; finished 0.36875 = 5.9/16, 0.48125 = 7.7/16.
		{"sampled", half + sketch.Rows(`tuck yoke centre 1/8 2 1/2 | spacing = "3/8"; sample = {tucks = 10, flat = "10", sewn = "7 3/8"}`), `
  front, yoke: 4 tucks, 2 on each side, each 1/8 in wide
  from centre  stitch  fold  stitch  when sewn
  tuck 1          3/8   1/2     5/8        3/8
  tuck 2          3/4   7/8       1        1/2
  stitch each 1/8 in from its fold
  4 tucks together take up 1 1/16 in
  no cloth shows between tucks when sewn: they touch
`},
		// The same beside the hem: let down, one gives what one took, 1 1/16 in.
		{"a sampled growth tuck", strings.Replace(half, "12,0 0,0", "12,0 0,0 | hem = 1", 1) + sketch.Rows(`tuck growth hem 1/2 1 4 | sample = {tucks = 2, flat = "4", sewn = "1 7/8"}`), `
  front, growth: 1 tuck, 1/2 in wide
  from hem  stitch  fold  stitch  when sewn
  tuck 1     3 1/2     4   4 1/2      3 1/2
  stitch it 1/2 in from its fold
  it takes up 1 1/16 in
  gives about 1 1/16 in let down
`},
		// 1/7 in is on no ruler: 2.29/16
		{"a width on no ruler", half + sketch.Rows(`tuck yoke centre 1/7 1 1`), `
  front, yoke: 2 tucks, 1 on each side, each 1/8 in wide
  from centre      stitch  fold        stitch  when sewn
  tuck 1       7/8 - 1/64     1  1 1/8 + 1/64        7/8
  + or -: the line lies that much farther or nearer than the mark
  stitch each 1/8 in from its fold
  2 tucks together take up 9/16 in
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), foldsInPrint(t, c.text))
		})
	}
}

// 2.5 mm wide, 12 mm to the first fold, touching: 3 x 2.5 = 7.5 mm apart.
func TestTuckTablesInMillimetres(t *testing.T) {
	const tens = "fold = \"centre\"\ncentre: 0,0 0,100\ntop: 0,100 120,100\nside: 120,100 120,0\nhem: 120,0 0,0\n---\n"
	for _, c := range []struct{ unit, text, want string }{
		{"cm", half + sketch.Rows(`tuck yoke centre 0.25 2 1.2`), `  front, yoke: 4 tucks, 2 on each side, each 0.25 cm wide
  from centre    stitch      fold      stitch  when sewn
  tuck 1       1 - 0.05       1.2  1.5 - 0.05          1
  tuck 2            1.7  2 - 0.05         2.2        1.2
  + or -: the line lies that much farther or nearer than the mark
  stitch each 0.25 cm from its fold
  each takes up 0.5 cm, all 4 together 2 cm
  no cloth shows between tucks when sewn: they touch
`},
		{"mm", tens + sketch.Rows(`tuck yoke centre 2.5 2 12`), `  front, yoke: 4 tucks, 2 on each side, each 2.5 mm wide
  from centre    stitch      fold    stitch  when sewn
  tuck 1       10 - 0.5        12  15 - 0.5         10
  tuck 2             17  20 - 0.5        22         12
  + or -: the line lies that much farther or nearer than the mark
  stitch each 2.5 mm from its fold
  each takes up 5 mm, all 4 together 20 mm
  no cloth shows between tucks when sewn: they touch
`},
	} {
		p := made.Of(t, "unit = \""+c.unit+"\"\nallowance = 0\n"+sketch.Front(c.text))
		assert.Equal(t, c.want, printedSection(p, tucksAndPleats))
	}
}

// Fourteen tucks 3.1 mm wide take 86.8 mm, 3 7/16 in. One takes 6.2 mm, which a ruler
// cannot tell from 1/4 in; but fourteen times 1/4 in would be 3 1/2 in.
func TestTakeUpsThatDoNotAddUpOnARuler(t *testing.T) {
	p := garmentOf(t, half+sketch.Rows(`tuck yoke centre 1/8 7 1/2`), "")
	assert.Contains(t, printedSection(p, tucksAndPleats), "each takes up 1/4 in, all 14 together 3 1/2 in\n")
	p = garmentOf(t, half+strings.Replace(sketch.Rows(`tuck yoke centre W 7 1/2`), "W", "3.1 mm", 1), "")
	assert.Contains(t, printedSection(p, tucksAndPleats), "\n  14 tucks together take up 3 7/16 in\n")
	assert.Equal(t, "3 7/16 in", asData(t, p).each("pieces")[0].each("tucks")[0].printed("take_up_in_all"), "the data say the same")
}

// A strip of 9 1/2 in with six pleats of 1/2 in takes 6 in (Hapgood, School Needlework,
// about 1892, Plaiting; sums derived): each is laid 1 in back, and 1/2 in from it the
// next comes to lie.
func TestPublishedPleatsInPrint(t *testing.T) {
	assert.Equal(t, `  front, side: 6 knife pleats, each 1/2 in deep
  from start   fold  laid to  when laid
  pleat 1         1        0          0
  pleat 2     2 1/2    1 1/2        1/2
  pleat 3         4        3          1
  pleat 4     5 1/2    4 1/2      1 1/2
  pleat 5         7        6          2
  pleat 6     8 1/2    7 1/2      2 1/2
  each takes up 1 in, all 6 together 6 in
  laid toward start
`, foldsInPrint(t, "start: 0,4 0,0\nbottom: 0,0 9.5,0\nend: 9.5,0 9.5,4\nedge: 9.5,4 0,4\n---\n"+sketch.Rows(`pleat side start 1/2 6 1 | press = "toward"`)))
}

func TestPleatTables(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		// Knife pleats laid away, from 1 to 1 + 2 x 1/2; as many on the other half
		{"knife", half + sketch.Rows(`pleat a centre 1/2 2 1 | gap = "1/2"; press = "away"`), `
  front, a: 4 knife pleats, 2 on each side, each 1/2 in deep
  from centre  fold  laid to  when laid
  pleat 1         1        2          1
  pleat 2         3        4          2
  each takes up 1 in, all 4 together 4 in
  laid away from centre
`},
		// A box about 3 in: folds 1/2 in to either side, laid 1 in outward. 4 x 1/2 in,
		// and another one on the other half
		{"box", half + sketch.Rows(`pleat a centre 1/2 1 3 | kind = "box"`), `
  front, a: 2 box pleats, 1 on each side, each 1/2 in deep
  from centre   fold  laid to  when laid
  pleat 1      2 1/2    1 1/2      1 1/2
  pleat 1      3 1/2    4 1/2      2 1/2
  each takes up 2 in, both together 4 in
`},
		// An inverted one about 4 in: folds 1 in to either side, and both laid to its
		// middle. It takes 4 x 1/2 in.
		{"inverted", half + sketch.Rows(`pleat a centre 1/2 1 4 | kind = "inverted"`), `
  front, a: 2 inverted pleats, 1 on each side, each 1/2 in deep
  from centre  fold  laid to  when laid
  pleat 1         3        4          3
  pleat 1         5        4          3
  each takes up 2 in, both together 4 in
`},
		// On the centre: one fold of it, 2 in out, laid to the centre; the other half has
		// the other. 4 x 1 in.
		{"inverted on the centre", half + sketch.Rows(`pleat a centre 1 1 0 | kind = "inverted"`), `
  front, a: 1 inverted pleat, 1 in deep
  from centre  fold  laid to  when laid
  pleat 1         2        0          0
  it takes up 4 in
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), foldsInPrint(t, c.text))
		})
	}
}

func TestEdgePleatTables(t *testing.T) {
	pleat := func(key, at, depth, rest string) string {
		return fmt.Sprintf("\n[pleat.%s]\nedge = \"side\"\nfrom = \"hem\"\nat = %q\ndepth = %q\ntoward = \"hem\"\nlength = 1\n%s\n", key, at, depth, rest)
	}
	// Along the side, from the hem: 3, 3 + 2, 3 + 4; 2 x 3/8. Another one by itself, at
	// 8 1/64 in.
	assert.Equal(t, `  front, darts: in side, from hem
  along the edge  fold  takes up
  pleat 1            3       3/4
  pleat 2            5       3/4
  pleat 3            7       3/4
  bring each fold 3/4 in along the edge: each pleat is then 3/8 in deep

  front, last: in side, from hem
  along the edge      fold  takes up
  pleat 1         8 + 1/64         1
  + or -: the line lies that much farther or nearer than the mark
  bring its fold 1 in along the edge: the pleat is then 1/2 in deep
`, foldsInPrint(t, half+pleat("darts", "3", "3/8", "count = 3\nspacing = 2")+pleat("last", "8 1/64", "1/2", "")))
}

// With both systems the widths in the headings have both, too.
func TestFoldTablesInBothSystems(t *testing.T) {
	var text strings.Builder
	for _, s := range Report(garmentOf(t, half+sketch.Rows(`tuck yoke centre 1/8 1 1/2`), ""), AllUnits).Sections {
		if s.Title == tucksAndPleats {
			text.WriteString(terminal.Text(mark.Report{Sections: []mark.Section{s}}, 80))
		}
	}
	assert.Equal(t, tucksAndPleats+`
-----------------------------------
  front, yoke: 2 tucks, 1 on each side, each 1/8 in (3 mm) wide
  from centre    stitch      fold    stitch  when sewn
  tuck 1       3/8 (10)  1/2 (13)  5/8 (16)   3/8 (10)
  stitch each 1/8 in (3 mm) from its fold
  each takes up 1/4 in (6 mm), both together 1/2 in (13 mm)
`, strings.TrimPrefix(text.String(), "\n"))
}

// What shows between tucks that are sewn: fold lines of tucks of 1/8 in that touch lie 3/8 in
// apart. One is alone, and of those that cover each other the remark tells.
func TestWhatShowsBetweenTucks(t *testing.T) {
	for _, c := range []struct{ name, row, want string }{
		{"they touch", "tuck t left 1/8 3 1/2 | spacing = \"3/8\"", "no cloth shows between tucks when sewn: they touch"},
		{"a gap", "tuck t left 1/8 3 1/2 | gap = \"1/4\"", "cloth that shows between tucks when sewn: 1/4 in"},
		{"a spacing", "tuck t left 1/8 3 1/2 | spacing = \"1/2\"", "cloth that shows between tucks when sewn: 1/8 in"},
		{"in groups", "tuck t left 1/8 3 1/2 | gap = \"1/16\"; groups = 2; between = 1", "cloth that shows between tucks when sewn: 1/16 in"},
		// Ten take 2.3 in in place of 2.5: of 1/2 in 1/2 - 1/8 - 0.23 are left, 0.145 in.
		{"sampled", "tuck t left 1/8 3 1/2 | spacing = \"1/2\"; sample = {tucks = 10, flat = 6, sewn = 3.7}", "cloth that shows between tucks when sewn: about 1/8 in"},
		{"they cover each other", "tuck t left 1/8 3 1/2 | spacing = \"5/16\"", ""},
		{"one", "tuck t left 1/8 1 1/2", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			told := ""
			for _, line := range strings.Split(printedSection(made.Of(t, sketch.Front(sketch.Rect("10")+"\n---\n"+sketch.Rows(c.row))), tucksAndPleats), "\n") {
				if strings.Contains(line, "between tucks") {
					told += strings.TrimSpace(line)
				}
			}
			assert.Equal(t, c.want, told)
		})
	}
}

// How far tucks reach along the neck of a yoke, and how many have room: each of 1/8 in
// that touches the one before reaches 1/8 in farther. Its stitch line ends 2 7/8 in out, of
// which six take 1 1/2 in and the four beside one on the centre 1 1/8. All derived; see
// tuckfield_test.go of package piece.
func TestFieldsInPrint(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"drawn flat", sketch.Yoke(), "sewn, the tucks reach 1 in from centre front, and the neck 1 3/8 in: 9 on each side have room, on a piece drawn 3/4 in wider"},
		{"drawn finished", sketch.Yoke("---", "---", "fold =", "drawn = \"finished\"\nfold =", "spacing", "press = \"away\"\nspacing"),
			"sewn, the tucks reach 1 in from centre front, and the neck 2 7/8 in: 21 on each side have room"},
		// The first is stitched on the centre, and the others at 1/8, 1/4, 3/8 and 1/2 in.
		{"one on the centre", sketch.Yoke("count = 6", "count = 5", "first = \"3/8\"", "first = 0"),
			"sewn, the tucks reach 5/8 in from centre front, and the neck 1 3/4 in: 1 on the centre and 13 on each side have room, on a piece drawn 2 1/4 in wider"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "unit = \"in\"\nallowance = 0.375\n"+sketch.Front(c.text))
			assert.Contains(t, strings.Join(strings.Fields(printedSection(p, tucksAndPleats)), " "), c.want)
		})
	}
}
