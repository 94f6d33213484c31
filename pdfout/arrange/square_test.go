package arrange

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
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

// On a page full of lines the check square crosses as few as it can.
func TestCheckSquareOnAFullPage(t *testing.T) {
	m := sample.Rectangle("p", "P", 180, 240)
	for x := 10.0; x < 180; x += 10 {
		if x != 120 && x != 130 { // one gap, 30 mm wide: too narrow to be free
			m.Marks = append(m.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 240}))
		}
	}
	sheets := Arrange(Set{Pieces: []mark.Marking{m}}, paper.All()[0]).Sheets
	s := &sheets[0]
	s.Letter(length.Inch)
	require.Len(t, s.Squares, 1)
	low := s.Squares[Cell{}].Sub(paper.All()[0].Window().Min)
	room := text.Upright(plane.Box{Min: low, Max: low.Add(plane.Point{X: 25.4, Y: 25.4})})
	assert.LessOrEqual(t, NewField(s.Pieces).Crossings(room, 100), 1)
	for _, v := range []float64{s.Squares[Cell{}].X, s.Squares[Cell{}].Y} {
		steps := v / (6 * 25.4 / 72)
		assert.InDelta(t, math.Round(steps), steps, 1e-9, "on whole dots of a printer")
	}
}

// Where a page is so full that the check square crosses lines, it still keeps
// off text.
func TestCheckSquareKeepsOffText(t *testing.T) {
	m := sample.Rectangle("p", "P", 180, 240)
	for x := 10.0; x < 180; x += 10 {
		if x != 120 && x != 130 { // the one gap, which text lies in
			m.Marks = append(m.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 240}))
		}
	}
	s := &Arrange(Set{Pieces: []mark.Marking{m}}, paper.All()[0]).Sheets[0]
	low := s.Pieces[0].Bounds.Min
	words := text.Upright(plane.Box{Min: low.Add(plane.Point{X: 111}), Max: low.Add(plane.Point{X: 139, Y: 240})})
	s.Field.Take(words)
	s.Letter(length.Inch)
	corner := s.Squares[Cell{}].Sub(paper.All()[0].Window().Min)
	assert.False(t, text.Upright(plane.Box{Min: corner, Max: corner.Add(plane.Point{X: 25.4, Y: 25.4})}).Meets(words))
}
