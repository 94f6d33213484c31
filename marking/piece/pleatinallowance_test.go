package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
)

// A pleat of 1/4 in takes 1/2 in: folded toward the left, its placement line is 1/2 in nearer to
// it than its fold line. Seams are 1/4 in.
func TestPleatsInAllowances(t *testing.T) {
	const square = "left: 0,6 0,0\nbottom: 0,0 8,0\nright: 8,0 8,6\ntop: 8,6 0,6\n---\n"
	// The top turns away from the left by 45 degrees.
	const slant = "left: 0,5 0,0\nbottom: 0,0 8,0\nright: 8,0 8,8\nhigh: 8,8 3,8\ntop: 3,8 0,5\n---\n"
	pleat := func(at, toward string) string {
		return "\n[pleat.p]\nedge = \"top\"\nfrom = \"left\"\nat = " + at + "\ndepth = \"1/4\"\ntoward = \"" + toward + "\"\nlength = 1\n"
	}
	in := func(edge, line, away string) string {
		return `the pleat lies in the allowance of "` + edge + `": its ` + line + " line begins " + away + " from the cut edge, and the seam takes 1/4 in"
	}
	for _, c := range []struct{ name, text, want string }{
		{"placed in the allowance", square + pleat("0.625", "left"), in("left", "placement", "1/8 in")},
		{"folded in it", square + pleat("0.125", "right"), in("left", "fold", "1/8 in")},
		{"at the other corner", square + pleat("7.375", "right"), in("right", "placement", "1/8 in")},
		{"on the stitch line", square + pleat("0.75", "left"), ""},
		{"clear of it", square + pleat("2", "left"), ""},
		{"beside an edge that slants", slant + pleat("0.625", "left"), in("left", "placement", "1/8 in")},
		{"beside a hem", sketch.Swap(square, "0,6 0,0", "0,6 0,0 | hem = 1") + pleat("0.625", "left"), ""},
		{"beside the fold", "fold = \"left\"\n" + square + pleat("0.625", "left"), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			var told []string
			for _, r := range sketched(t, "0.25", c.text).Remarks(length.Inch) {
				if strings.Contains(r.Text, "in the allowance") {
					told = append(told, r.Text)
				}
			}
			assert.Equal(t, c.want, strings.Join(told, "; "))
		})
	}
}
