package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// A check square lies in the larger of two pieces that leave no room beside them, even
// where the other has a corner of the page, and stays 2 mm from their lines.
func TestCheckSquareLiesInTheLargestPiece(t *testing.T) {
	on := paper.All()[0]
	window := PageOf(on).Window
	small := NewPiece(sample.Ruled("s", "Small", 60, window.Y))
	large := NewPiece(sample.Ruled("l", "Large", window.X-60, window.Y)).Moved(plane.Point{X: 60})
	s := NewSheet([]Piece{small, large}, PageOf(on), []Cell{{}})
	places := newSquares(30, on)
	var all []squarePlace
	for p := range places.free(&s, s.Field, Cell{}, places.corners(places.open(&s, Cell{}))) {
		all = append(all, p)
	}
	require.NotEmpty(t, all)
	assert.True(t, large.Inside(all[0].room.Centre), "the first place is in the larger piece")
	assert.True(t, small.Inside(all[len(all)-1].room.Centre), "the last is in the smaller")
	assert.InDelta(t, 34, 2*all[0].room.Half.X, 1e-9, "what is kept clear")
	assert.Equal(t, all[0].corner, places.find(&s, s.Field, Cell{}), "it takes the first")
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
		found := tenderOf([]Line{NewLine(mark.Cut, "", plane.Path{{}, c.to})})
		assert.Len(t, found.up, c.up, c.name)
		assert.Len(t, found.across, c.across, c.name)
	}
}
