package garment_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// endsOf writes how a seam ends, such as "neck: jog 0, cut 0.25, bend 90"; lengths in
// inches, "cut none" where the cut edges cannot be compared, "no line" where none goes over
// the seam.
func endsOf(s garment.Seam) []string {
	var all []string
	for _, e := range s.Ends {
		where, cut, bend := e.Neighbours[0], "none", "no line"
		if !e.Alike() {
			where += "+" + e.Neighbours[1]
		}
		if e.CutJogKnown {
			cut = sketch.Number(e.CutJog.MM / 25.4)
		}
		if e.GoesOver {
			bend = "bend " + sketch.Number(e.Bend)
		}
		all = append(all, fmt.Sprintf("%s: jog %s, cut %s, %s", where, sketch.Number(e.Jog.MM/25.4), cut, bend))
	}
	return all
}

// Where a seam ends. The stitch lines of a corner of 135 degrees, with 1/2 in and a beside
// them, meet (a + cos 135°/2)/sin 135° beside it, and from there the stitch line goes on
// for a/sin 135° to the cut edge.
func TestSeamEnds(t *testing.T) {
	other := func(text string) string { // with neighbours of other names
		return sketch.Swap(text, "right:", "r:", "left:", "l:")
	}
	mirror := func(text string) string {
		return setDown(text, func(q plane.Point) plane.Point { return plane.Point{X: -q.X, Y: q.Y} })
	}
	for _, c := range []struct {
		name, front, back, seam string
		want                    []string
	}{
		{"squares", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops, []string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut 0, bend 0"}},
		{"the longer one sticks out at the last end", sketch.Rect("10.05"), sketch.Rect("10"), sketch.Tops, []string{"right: jog 0, cut 0, bend 0", "left: jog 0.05, cut 0.05, bend 0"}},
		{"the longer one is eased in", sketch.Rect("10.5"), sketch.Rect("10"), sketch.Tops + "\nease = \"1/2\"", []string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut 0, bend 0"}},
		{"the longer one is gathered", sketch.Rect("20"), sketch.Rect("10"), sketch.Tops + "\ngathered = true", []string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut 0, bend 0"}},
		{"more than the ease sticks out", sketch.Rect("11"), sketch.Rect("10"), sketch.Tops + "\nease = \"1/2\"", []string{"right: jog 0, cut 0, bend 0", "left: jog 1, cut 1, bend 0"}},

		// 135 and 45 degrees are two right angles.
		{"one that goes on smoothly", sketch.Outward, sketch.Inward45, sketch.Tops, []string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut 0, bend 0"}},
		{"a point", sketch.Inward45, sketch.Inward45, sketch.Tops, []string{"right: jog 0, cut 0, bend 90", "left: jog 0, cut 0, bend 0"}},
		{"a dip", sketch.Outward, sketch.Outward, sketch.Tops, []string{"right: jog 0, cut 0, bend -90", "left: jog 0, cut 0, bend 0"}},
		// At slopes of 3 to 4 and 4 to 3: 180 - 36.870 - 53.130 = 90. The cut edges are
		// 0.5/sin from the stitch lines, 0.8333 and 0.625 in.
		{"a point of unequal angles", "bottom: 0,0 4,0\nright: 4,0 12,6\ntop: 12,6 0,6\nleft: 0,6 0,0", "bottom: 0,0 6,0\nright: 6,0 11.5,7.333333\ntop: 11.5,7.333333 0,7.333333\nleft: 0,7.333333 0,0", sketch.Tops,
			[]string{"right: jog 0, cut 0.208, bend 90", "left: jog 0, cut 0, bend 0"}},

		{"allowances of neighbours that differ", sketch.Rect("10"), sketch.Swap(sketch.Rect("9.75"), "right: 9.75,0 9.75,8", "right: 9.75,0 9.75,8 | allowance = 0.25"), sketch.Tops,
			[]string{"right: jog 0, cut 0.25, bend 0", "left: jog 0, cut 0, bend 0"}},
		// (0.25 + 0.3536)/0.7071 = 0.8536 in, so that 10.6464 in leave 9.2929 in; and
		// 0.25/0.7071 = 0.3536 in.
		{"allowances that differ, at a slant", sketch.Outward, sketch.Swap(sketch.Inward45, "0,0 3,0", "0,0 2.646447,0", "11,8 0,8", "10.646447,8 0,8", "3,0 11,8", "2.646447,0 10.646447,8 | allowance = 0.25"), sketch.Tops,
			[]string{"right: jog 0, cut 0.354, bend 0", "left: jog 0, cut 0, bend 0"}},
		// The second is cut 1/4 in beyond the first at its right, and 0.05 in at its left.
		{"allowances and lengths that differ", sketch.Swap(sketch.Rect("9.75"), "right: 9.75,0 9.75,8", "right: 9.75,0 9.75,8 | allowance = 0.25"), sketch.Rect("10.05"), sketch.Tops,
			[]string{"right: jog 0, cut 0.25, bend 0", "left: jog 0.05, cut 0.05, bend 0"}},
		{"hems of two depths", sketch.Swap(sketch.Rect("10"), "right: 10,0 10,8", "right: 10,0 10,8 | hem = 1; turn = 0.25"), sketch.Swap(sketch.Rect("11"), "right: 11,0 11,8", "right: 11,0 11,8 | hem = 2; turn = 0.25"), sketch.Tops,
			[]string{"right: jog 0, cut 1, bend 0", "left: jog 0, cut 0, bend 0"}},
		{"an edge without allowance", sketch.Swap(sketch.Rect("9.5"), "right: 9.5,0 9.5,8", "right: 9.5,0 9.5,8 | allowance = 0"), sketch.Rect("10"), sketch.Tops,
			[]string{"right: jog 0, cut 0.5, bend 0", "left: jog 0, cut 0, bend 0"}},

		{"neighbours on the fold", "fold = \"left\"\n" + sketch.Rect("10"), "fold = \"left\"\n" + sketch.Rect("10"), sketch.Tops,
			[]string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut none, no line"}},
		// A skirt with a seam at the centre, under a bodice that has none.
		{"one neighbour on the fold", "fold = \"left\"\n" + sketch.Rect("9.5"), "cut = 2\n" + sketch.Rect("10"), sketch.Tops,
			[]string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut none, no line"}},
		// A neighbour that the edge goes on into has no cut edge ahead of the seam.
		{"a neighbour straight on", sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 4,8\nyoke: 4,8 0,8"), sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 4,8\nyoke: 4,8 0,8"), sketch.Tops,
			[]string{"right: jog 0, cut 0, bend 0", "yoke: jog 0, cut none, no line"}},

		// Which end lies on which.
		{"drawn mirrored, told by names", sketch.Outward, mirror(sketch.Inward45), sketch.Tops, []string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut 0, bend 0"}},
		{"names outweigh bends", sketch.Outward, sketch.Swap(sketch.Inward45, "right:", "left:", "left:", "right:"), sketch.Tops,
			[]string{"right: jog 0, cut 0.207, bend -45", "left: jog 0, cut 0.207, bend 45"}},
		{"one name is enough", sketch.Outward, sketch.Swap(sketch.Inward45, "left:", "right:", "right:", "r:"), sketch.Tops,
			[]string{"right: jog 0, cut 0.207, bend -45", "left+r: jog 0, cut none, no line"}},
		{"no names, the least bend", sketch.Outward, other(sketch.Inward45), sketch.Tops, []string{"right+r: jog 0, cut none, no line", "left+l: jog 0, cut none, no line"}},
		{"no names, the least bend, drawn mirrored", sketch.Outward, other(mirror(sketch.Inward45)), sketch.Tops, []string{"right+r: jog 0, cut none, no line", "left+l: jog 0, cut none, no line"}},
		{"no names, no bends, the least jog", sketch.Swap(sketch.Rect("10.25"), "right: 10.25,0 10.25,8", "right: 10.25,0 10.25,8 | allowance = 0.75"), other(sketch.Swap(sketch.Rect("10.25"), "right: 10.25,0 10.25,8", "right: 10.25,0 10.25,8 | allowance = 0.75")), sketch.Tops,
			[]string{"right+r: jog 0, cut none, no line", "left+l: jog 0, cut none, no line"}},
		// Nothing tells: the back stands above the front, as the two are sewn.
		{"as they are drawn, one above the other", sketch.Rect("10"), other(sketch.Rect("10")), `join = ["front.top", "back.bottom"]`,
			[]string{"right+r: jog 0, cut none, no line", "left+l: jog 0, cut none, no line"}},
		{"as they are drawn, side by side", sketch.Rect("10"), sketch.Swap(sketch.Rect("10"), "top:", "t:", "bottom:", "b:"), `join = ["front.right", "back.left"]`,
			[]string{"bottom+b: jog 0, cut none, no line", "top+t: jog 0, cut none, no line"}},

		// The underarm of a sleeve: 180 - 2 x 63.435 at the cap, 180 - 2 x 116.565 at the
		// hem.
		{"one piece on both sides", "cap: 12,8 0,8\nunderarm 1: 0,8 4,0\nhem: 4,0 8,0\nunderarm 2: 8,0 12,8", sketch.Rect("10"), `join = ["front.underarm 1", "front.underarm 2"]`,
			[]string{"cap: jog 0, cut 0, bend 53.13", "hem: jog 0, cut 0, bend -53.13"}},
		{"an edge joined with itself, the centre of two backs", "cut = 2\n" + sketch.Outward, sketch.Rect("10"), `join = ["front.right", "front.right"]`,
			[]string{"bottom: jog 0, cut 0, bend 90", "top: jog 0, cut 0, bend -90"}},
		{"an edge joined with itself, on a piece of two edges", "cut = 2\na: 0,0 10,0 10,8\nb: 10,8 0,0", sketch.Rect("10"), `join = ["front.b", "front.b"]`,
			[]string{"a: jog 0, cut 0, bend 77.32", "a: jog 0, cut 0, bend 102.68"}},
		{"the two sides of a whole piece that is drawn as half", "fold = \"left\"\n" + sketch.Rect("10"), sketch.Rect("10"), `join = ["front.right", "front.right"]`,
			[]string{"bottom: jog 0, cut 0, bend 0", "top: jog 0, cut 0, bend 0"}},

		{"a side of two edges has no ends", sketch.Rect("10"), sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 4,8\nyoke: 4,8 0,8"), `join = ["front.top", ["back.top", "back.yoke"]]`, nil},
		{"edges that do not come equally often have none", sketch.Rect("19"), "cut = 2\n" + sketch.Rect("10"), sketch.Tops, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, endsOf(made.Seam(t, sketch.Joined("0.5", c.front, c.back, c.seam))))
		})
	}
}

// setDown returns a sketch with every point put somewhere else.
func setDown(text string, to func(plane.Point) plane.Point) string {
	return regexp.MustCompile(` (-?[\d.]+),(-?[\d.]+)`).ReplaceAllStringFunc(text, func(point string) string {
		x, y, _ := strings.Cut(point[1:], ",")
		var q plane.Point
		q.X, _ = strconv.ParseFloat(x, 64)
		q.Y, _ = strconv.ParseFloat(y, 64)
		q = to(q)
		return fmt.Sprintf(" %.9f,%.9f", q.X, q.Y)
	})
}

// A fold in the allowance of a neighbour is folded when that is sewn too: the pleat takes
// its half of the inch from the 1/2 in that the cut edge lies beyond the seam.
func TestFoldInTheAllowanceOfTheNeighbour(t *testing.T) {
	for name, fold := range map[string]string{
		"pleat": "\n[pleat.p]\nedge = \"top\"\nfrom = \"left\"\nat = 1\ndepth = 0.5\ntoward = \"left\"\nlength = 2\n",
		"tuck":  sketch.Rows(`tuck t left 1/2 1 1/2`),
	} {
		t.Run(name, func(t *testing.T) {
			s := made.Seam(t, sketch.Joined("0.5", sketch.Rect("10.5")+"\n---\n"+fold, sketch.Rect("10"), sketch.Tops))
			assert.Equal(t, "9 9", made.SewnLengths(s))
			assert.Equal(t, []string{"right: jog 0, cut 0, bend 0", "left: jog 0, cut 0.5, bend 0"}, endsOf(s))
		})
	}
}

// degrees is the corner of a piece 20 in wide whose top rises to the right.
func degrees(rise float64, side string) float64 {
	slope := math.Atan2(rise, 20) * 180 / math.Pi
	if side == "left" {
		return 90 + slope
	}
	return 90 - slope
}
