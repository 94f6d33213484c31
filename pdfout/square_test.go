package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// A check square lies in the larger of two pieces that leave no room beside them, even
// where the other has a corner of the page, and stays 2 mm from their lines.
func TestCheckSquareLiesInTheLargestPiece(t *testing.T) {
	paper := papers()[0]
	window := pageOf(paper).window
	small := newPiece(ruled("s", "Small", 60, window.Y))
	large := newPiece(ruled("l", "Large", window.X-60, window.Y)).moved(plane.Point{X: 60})
	s := newSheet([]piece{small, large}, pageOf(paper), []cell{{}})
	places := squares{30, paper, map[plane.Box][]plane.Point{}}
	var all []squarePlace
	for p := range places.free(&s, s.field, cell{}, places.corners(places.open(&s, cell{}))) {
		all = append(all, p)
	}
	require.NotEmpty(t, all)
	assert.True(t, large.inside(all[0].room.centre), "the first place is in the larger piece")
	assert.True(t, small.inside(all[len(all)-1].room.centre), "the last is in the smaller")
	assert.InDelta(t, 34, 2*all[0].room.half.X, 1e-9, "what is kept clear")
	assert.Equal(t, all[0].corner, places.find(&s, s.field, cell{}), "it takes the first")
}

// A line that rises by 1 in 60, or runs by that, counts as running along a join; one
// of 1 in 40 does not.
func TestWhatRunsAlongAJoin(t *testing.T) {
	for _, c := range []struct {
		name       string
		to         plane.Point
		up, across int
	}{
		{"straight up", plane.Point{Y: 120}, 1, 0},
		{"nearly up", plane.Point{X: 2, Y: 120}, 1, 0},
		{"less nearly up", plane.Point{X: 3, Y: 120}, 0, 0},
		{"nearly across", plane.Point{X: 120, Y: -2}, 0, 1},
		{"less nearly across", plane.Point{X: 120, Y: -3}, 0, 0},
	} {
		found := tenderOf([]line{newLine(marking.Cut, "", plane.Path{{}, c.to})})
		assert.Len(t, found.up, c.up, c.name)
		assert.Len(t, found.across, c.across, c.name)
	}
}
