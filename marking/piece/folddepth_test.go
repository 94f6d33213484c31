package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
)

// depths lists how deep the folds of the first row of a piece end, in inches: the edge they
// begin at, then below its stitch line, its cut edge and, of a block, the torn edge.
func depths(p *piece.Piece) string {
	var all []string
	for _, d := range p.Depths(p.FoldRows()[0]) {
		one := fmt.Sprintf("%s %s %s", p.Edges[d.Edge].Key, sketch.Number(d.Sewn/25.4), sketch.Number(d.Cut/25.4))
		if p.Block != nil {
			one += " " + sketch.Number(d.Torn/25.4)
		}
		all = append(all, one)
	}
	return strings.Join(all, " | ")
}

// The neck of "rising" goes up by three for every four across and has 1/2 in allowed: its
// stitch line lies 5/8 in straight below it, at the centre at 9 3/8 in. A block of it is
// torn at 13 1/2 in. All derived.
func TestHowDeepFoldsEnd(t *testing.T) {
	const quarter = "tuck a centre 1/4 3 1 | spacing = 1; below = \"neck\"; length = 2; press = \"away\"; "
	const flat, finished = "drawn = \"flat\"\n" + rising, "drawn = \"finished\"\n" + rising
	const block = "\n[block]\n"
	for _, c := range []struct{ name, front, rows, want string }{
		// The end line lies at 7 3/8 in; the folds 1, 2 and 3 in out begin 3/4 in higher each.
		{"level", flat, sketch.Rows(quarter), "neck 2.75 3.375 | neck 3.5 4.125 | neck 4.25 4.875"},
		// 2 in square to the slope is 2 1/2 in straight down.
		{"following", flat, sketch.Rows(quarter + `end = "follow"`), "neck 2.5 3.125 | neck 2.5 3.125 | neck 2.5 3.125"},
		{"stepped, each shorter", flat, sketch.Rows(quarter + `end = "stepped"; step = -0.25`), "neck 2.75 3.375 | neck 3.25 3.875 | neck 3.75 4.375"},
		{"pleats", flat, sketch.Rows(strings.Replace(quarter, "tuck", "pleat", 1)), "neck 2.75 3.375 | neck 3.5 4.125 | neck 4.25 4.875"},
		// Finished, the folds lie 1, 1 1/2 and 2 in out: stitched at 3/4, 1 1/4 and 1 3/4 in.
		{"level, drawn finished", finished, sketch.Rows(quarter), "neck 2.75 3.375 | neck 3.125 3.75 | neck 3.5 4.125"},
		// Pressed toward the centre they lie 1/2, 1 and 1 1/2 in out.
		{"pressed toward", finished, strings.Replace(sketch.Rows(quarter), "away", "toward", 1), "neck 2.375 3 | neck 2.75 3.375 | neck 3.125 3.75"},
		// A pleat is laid where its fold is seen: 1, 1 1/2 and 2 in out.
		{"pleats, drawn finished", finished, sketch.Rows(strings.Replace(quarter, "tuck", "pleat", 1)), "neck 2.75 3.375 | neck 3.125 3.75 | neck 3.5 4.125"},
		{"a block, level", finished, sketch.Rows(quarter) + block, "neck 2.75 3.375 6.125 | neck 3.125 3.75 6.125 | neck 3.5 4.125 6.125"},
		// Stitched 1, 1.6 and 2.2 in out, to 2 1/2 in below the neck there; the folds lie 0.2 in
		// beyond, under 0.15 in more.
		{"a block, following", finished, strings.NewReplacer(`"1/4"`, `"0.2"`, `"1"`, `"1.2"`).Replace(sketch.Rows(quarter+`end = "follow"`)) + block,
			"neck 2.65 3.275 5.875 | neck 2.65 3.275 5.425 | neck 2.65 3.275 4.975"},
		{"a block, stepped", finished, sketch.Rows(quarter+`end = "stepped"; step = 0.5`) + block, "neck 2.75 3.375 6.125 | neck 3.625 4.25 6.625 | neck 4.5 5.125 7.125"},
		// The stitch lines of neck and shoulder meet 4 5/6 in out: the second is cut at the
		// shoulder and begins at the neck, the third begins at the shoulder.
		{"beyond the neck", flat, strings.NewReplacer("\"1\"", "\"3\"", "spacing = 1", "spacing = 1.5").Replace(sketch.Rows(quarter)), "neck 4.25 4.875 | neck 5.375 5.625 | shoulder 5.625 5.625"},
		// Each 2 1/4 in shorter: the second ends at 11 1/8 in, and the stitch line is at 10 7/8.
		{"above the stitch line", flat, strings.NewReplacer("= 3", "= 2", "length = 2", "length = 0.5").Replace(sketch.Rows(quarter + `end = "stepped"; step = -2.25`)), "neck 1.25 1.875 | neck -0.25 0.375"},
		// Beside a line 2 in out, where the stitch line is at 10 7/8 in.
		{"beside a line", flat, "\n[line.rule]\nalong = \"centre\"\ndistance = 2\n" + strings.NewReplacer("centre", "rule", "= 3", "= 1").Replace(sketch.Rows(quarter)), "neck 2.75 3.375"},
		// Of 0.2 in, one on the centre has its fold as far out on either half; the other is
		// stitched 0.6 in out.
		{"on the centre, drawn finished", finished, strings.NewReplacer(`"1/4"`, `"0.2"`, `"1"`, `"0"`, "= 3", "= 2").Replace(sketch.Rows(quarter)), "neck 2.15 2.775 | neck 2.6 3.225"},
		{"up from the hem", flat, strings.Replace(sketch.Rows(quarter), "neck", "hem", 1), "hem 2 2 | hem 2 2 | hem 2 2"},
		{"from edge to edge", flat, sketch.Rows("tuck a centre 1/4 3 1 | spacing = 1"), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, depths(sketched(t, "0", c.front+c.rows)))
		})
	}
}

// What a ruler finds along the fold lines on the flat cloth, whichever way the front is
// drawn: as far as they are drawn there.
func TestDepthsAreThoseOfTheLinesDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := randomFront(t)
		p := c.piece(t, "finished", c.text)
		for _, r := range p.FoldRows() {
			for k, d := range p.Depths(r) {
				lines := r.Folds[k].Lines[0].Flat
				if len(lines) != 1 {
					continue
				}
				want := d.Cut
				if d.Long > 0 {
					want = d.Long
				}
				if drawn := lines[0].Length(); math.Abs(drawn-want) > 0.01 {
					t.Fatalf("%s %d of %s ends %v below the cut edge, and its line is %v long\n%s", r.Makes, k, r.Key, want, drawn, c.text+c.rows)
				}
			}
		}
	})
}
