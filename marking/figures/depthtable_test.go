package figures

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// rising is half a front, on the fold, whose neck goes up by three for every four across,
// 1/2 in allowed there: its stitch line lies 5/8 in straight below it. Its shoulder and all
// else are sewn at the edge.
const rising = "fold = \"centre\"\ncentre: 0,0 0,10\nneck: 0,10 4,13 | allowance = \"1/2\"\nshoulder: 4,13 8,13\nside: 8,13 8,0\nhem: 8,0 0,0\n---\n"

// ends finds the sentence about what is the same for all folds.
var ends = regexp.MustCompile(`(each|it) ends .* (cut edge|edge of the block)`)

// depthsInPrint returns what the figures say of how deep folds end, without what they say
// of their places.
func depthsInPrint(t *testing.T, text string) string {
	printed := printedSection(made.Of(t, "unit = \"in\"\nallowance = 0\n"+sketch.Front(text)), tucksAndPleats)
	var told []string
	for _, part := range strings.Split(printed, "\n\n") {
		if strings.Contains(part, "how deep") {
			told = append(told, strings.TrimSuffix(part, "\n"))
			continue
		}
		if sentence := ends.FindString(strings.Join(strings.Fields(part), " ")); sentence != "" {
			told = append(told, sentence)
		}
	}
	return strings.Join(told, "\n")
}

// The sums are those of folddepth_test.go in package piece. All derived.
func TestDepthsInPrint(t *testing.T) {
	const finished = "drawn = \"finished\"\n" + rising
	quarter := func(end string) string {
		return sketch.Rows(`tuck a centre 1/4 3 1 | spacing = 1; below = "neck"; length = 2; press = "away"; ` + end)
	}
	const block = "\n[block]\n"
	for _, c := range []struct{ name, text, want string }{
		{"level", rising + quarter(""), `
  front, a: how deep the tucks end
  down each fold line, below  stitch line  cut edge
  tuck 1, neck                      2 3/4     3 3/8
  tuck 2, neck                      3 1/2     4 1/8
  tuck 3, neck                      4 1/4     4 7/8`},
		{"the same for all", rising + quarter(`end = "follow"`), `
each ends 2 1/2 in below the stitch line of neck and 3 1/8 in below the cut edge`},
		{"a single one", rising + strings.Replace(quarter(""), "= 3", "= 1", 1), `
each ends 2 3/4 in below the stitch line of neck and 3 3/8 in below the cut edge`},
		{"level in a block: one number from the torn edge", finished + quarter("") + block, `
each ends 6 1/8 in below the torn edge of the block
  front, a: how deep the tucks end
  down each fold line, below  stitch line  cut edge
  tuck 1, neck                      2 3/4     3 3/8
  tuck 2, neck                      3 1/8     3 3/4
  tuck 3, neck                      3 1/2     4 1/8`},
		{"stepped in a block", finished + quarter(`end = "stepped"; step = 0.5`) + block, `
  front, a: how deep the tucks end
  down each fold line, below  stitch line  cut edge  torn edge
  tuck 1, neck                      2 3/4     3 3/8      6 1/8
  tuck 2, neck                      3 5/8     4 1/4      6 5/8
  tuck 3, neck                      4 1/2     5 1/8      7 1/8`},
		{"into the shoulder", rising + strings.NewReplacer("\"1\"", "\"3\"", "spacing = 1", "spacing = 1.5").Replace(quarter("")), `
  front, a: how deep the tucks end
  down each fold line, below  stitch line  cut edge
  tuck 1, neck                      4 1/4     4 7/8
  tuck 2, neck                      5 3/8     5 5/8
  tuck 3, shoulder                  5 5/8     5 5/8
  each tuck is told at the edge that its fold line runs into; near a corner its
  stitching may run into the other`},
		{"within the allowance", rising + strings.NewReplacer("= 3", "= 2", "length = 2", "length = 0.5").Replace(quarter(`end = "stepped"; step = -2.25`)), `
  front, a: how deep the tucks end
  down each fold line, below  stitch line  cut edge
  tuck 1, neck                      1 1/4     1 7/8
  tuck 2, neck                  1/4 above       3/8`},
		{"pleats", rising + strings.NewReplacer("tuck", "pleat", "width", "depth").Replace(quarter("")), `
  front, a: how deep the pleats end
  down each fold line, below  stitch line  cut edge
  pleat 1, neck                     2 3/4     3 3/8
  pleat 2, neck                     3 1/2     4 1/8
  pleat 3, neck                     4 1/4     4 7/8`},
		{"from edge to edge", rising + sketch.Rows("tuck a centre 1/4 3 1 | spacing = 1"), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), depthsInPrint(t, c.text))
		})
	}
}

// A yoke whose tucks are stitched 2 1/8 in below its neck, at the centre and along a level
// neck, 1 1/2 in out; beyond that the neck rises by its slope. Its seams are 3/8 in, and 45
// degrees of slope have them 0.530 in straight below. All derived: the end line is at
// 7 1/2 in, and at the fold of tuck 6, 2 1/4 in out, the cut neck at 10 3/4 and its stitch
// line at 10.220.
func TestHowDeepTheTucksOfAYokeEnd(t *testing.T) {
	p := made.Of(t, "unit = \"in\"\nallowance = 0.375\n"+sketch.Front(sketch.Yoke()))
	assert.Contains(t, printedSection(p, tucksAndPleats), `
  front, yoke: how deep the tucks end
  down each fold line, below  stitch line  cut edge
  tuck 1, neck                      2 1/8     2 1/2
  tuck 2, neck                      2 1/8     2 1/2
  tuck 3, neck                      2 1/8     2 1/2
  tuck 4, neck                      2 1/8     2 1/2
  tuck 5, neck                      2 3/8     2 7/8
  tuck 6, neck                      2 3/4     3 1/4
`)
	ends := asData(t, p).each("pieces")[0].each("tucks")[0].each("ends")
	assert.Equal(t, []string{"2 1/8 in", "2 1/2 in"}, []string{ends[0].printed("below_stitch_line"), ends[0].printed("below_cut_edge")})
	assert.Equal(t, "3 1/4 in", ends[5].printed("below_cut_edge"))
	assert.Equal(t, "neck", ends[5]["edge"])
	assert.Nil(t, ends[5]["below_torn_edge"], "it is not cut from a block")
}

// A piece 10 in high whose tucks of 1/4 in begin 8 in up and end 3 in up, or on a line that rises
// by a fifth: drawn flat, at their fold lines 2 in and 3 in out, 3.4 and 3.6 in up.
func TestWhereTucksBetweenLinesBeginAndEnd(t *testing.T) {
	const text = "left: 0,10 0,0\nbottom: 0,0 10,0\nright: 10,0 10,10\ntop: 10,10 0,10\n---\n\n[line.yoke]\npoints = [[0, 8], [10, 8]]\n[line.waist]\npoints = [[0, 3], [10, 3]]\n[line.slant]\npoints = [[0, 3], [10, 5]]\n"
	const row = `tuck a left 1/4 2 2 | spacing = 1; from = "yoke"; to = `
	p := made.Of(t, "unit = \"in\"\nallowance = 0\n"+sketch.Front(text+sketch.Rows(row+`"waist"`)))
	told := printedSection(p, tucksAndPleats)
	assert.Contains(t, told, "\n  stitched from yoke to waist\n")
	assert.Contains(t, told, "\n  each begins 2 in and ends 7 in below the cut edge, and is 5 in long\n")
	p = made.Of(t, "unit = \"in\"\nallowance = 0\n"+sketch.Front(text+sketch.Rows(row+`"slant"`)))
	assert.Contains(t, printedSection(p, tucksAndPleats), `
  front, a: where the tucks begin and end
  below the cut edge  begins   ends   long
  tuck 1                   2  6 5/8  4 5/8
  tuck 2                   2  6 3/8  4 3/8
`)
	ends := asData(t, p).each("pieces")[0].each("tucks")[0].each("ends")
	assert.Equal(t, []string{"6 5/8 in", "4 5/8 in"}, []string{ends[0].printed("below_cut_edge"), ends[0].printed("long")})
}

// In the data every fold has its depth below the torn edge, whether it is the same or not.
func TestDepthsOfABlockAsData(t *testing.T) {
	p := made.Of(t, "unit = \"in\"\nallowance = 0\n"+sketch.Front("drawn = \"finished\"\n"+rising+sketch.Rows(`tuck a centre 1/4 3 1 | spacing = 1; below = "neck"; length = 2; press = "away"`)+"\n[block]\n"))
	var torn []string
	for _, e := range asData(t, p).each("pieces")[0].each("tucks")[0].each("ends") {
		torn = append(torn, e.printed("below_torn_edge"))
	}
	assert.Equal(t, []string{"6 1/8 in", "6 1/8 in", "6 1/8 in"}, torn)
}
