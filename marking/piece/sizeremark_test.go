package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A bib 10 in high and 9 in wide. Common practice: a seam takes 2 in at most. A hem of
// 5 in with a turn of 1/4 in, folded back, reaches 10 1/4 in.
func TestAllowancesOutOfTheCommon(t *testing.T) {
	const bib = "top: 9,10 0,10 | TOP\nleft: 0,10 0,0 | LEFT\nhem: 0,0 9,0 | HEM\nright: 9,0 9,10"
	const most = "and a seam takes 2 in at most; is the unit right, or was hem meant?"
	for _, c := range []struct {
		name, top, left, hem string
		want                 []string
	}{
		{"as usual", "", "", "hem = 4; turn = 0.25", nil},
		{"one of 5 in", "allowance = 5", "", "", []string{`4: piece.front.edge.top: "top" has an allowance of 5 in, ` + most}},
		{"one of 2 in", "allowance = 2", "", "", nil},
		{"two of 2 1/4 in", "allowance = 2.25", "allowance = 2.25", "", []string{`4: piece.front.edge.top: "top" and "left" have allowances of 2 1/4 in, ` + most}},
		{"two unlike", "allowance = 2.25", "allowance = 2.5", "", []string{
			`4: piece.front.edge.top: "top" has an allowance of 2 1/4 in, ` + most, `7: piece.front.edge.left: "left" has an allowance of 2 1/2 in, ` + most}},
		{"a deep hem", "", "", "hem = 5; turn = 0.25",
			[]string{`10: piece.front.edge.hem: the hem is deeper than there is room for: folded back, it reaches 10 1/4 in from the cut edge, and the piece ends at 10 in`}},
		{"one that just has room", "", "", "hem = 5", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, remarksOf(t, "allowance = 0.25\n"+sketch.Front(sketch.Swap(bib, "TOP", c.top, "LEFT", c.left, "HEM", c.hem))))
		})
	}
	// Half of a cape, 4 in and 8 in whole: its front is folded back over the middle, its foot
	// cannot be folded beyond the neck.
	const cape = "fold = \"middle\"\nmiddle: 0,3 0,0\nfoot: 0,0 4,0 | FOOT\nfront: 4,0 4,3 | FRONT\nneck: 4,3 0,3"
	assert.Empty(t, remarksOf(t, "allowance = 0.25\n"+sketch.Front(sketch.Swap(cape, "FOOT", "", "FRONT", "hem = 3"))))
	assert.Equal(t, []string{`8: piece.front.edge.foot: the hem is deeper than there is room for: folded back, it reaches 4 in from the cut edge, and the piece ends at 3 in`},
		remarksOf(t, "allowance = 0.25\n"+sketch.Front(sketch.Swap(cape, "FOOT", "hem = 2", "FRONT", ""))))
	assert.Equal(t, []string{`4: piece.front.edge.bottom: "bottom", "right" and 2 more have allowances of 2 1/2 in, ` + most},
		remarksOf(t, "allowance = 2.5\n"+sketch.Front(sketch.Rect("10"))))
}

// The size of a whole piece, both halves of one on the fold, however it is turned.
func TestSize(t *testing.T) {
	for _, c := range []struct {
		name, text    string
		across, along float64 // in inches
	}{
		{"a whole piece", sketch.Rect("10"), 10, 8},
		{"a half, the fold upright", "fold = \"a\"\na: 0,0 0,8\nb: 0,8 5,8\nc: 5,8 5,0\nd: 5,0 0,0", 10, 8},
		{"a half, the fold level", "fold = \"d\"\na: 0,0 0,8\nb: 0,8 5,8\nc: 5,8 5,0\nd: 5,0 0,0", 16, 5},
		{"a half, the fold at the right, away from the origin", "fold = \"c\"\na: 20,0 20,8\nb: 20,8 25,8\nc: 25,8 25,0\nd: 25,0 20,0", 10, 8},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, _ := made.Front(t, "0", c.text)
			across, along := p.Size()
			assert.InDelta(t, c.across*25.4, across, 1e-9)
			assert.InDelta(t, c.along*25.4, along, 1e-9)
		})
	}
}
