package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// Join marks lie at a quarter and at three quarters of a join; where a line runs there,
// beside it.
func TestJoinMarksKeepOffLines(t *testing.T) {
	const pageSide, overlap = 200.0, 10.0
	join := pageSide - overlap/2
	for _, c := range []struct {
		name   string
		across []float64 // where up the join lines cross it
		want   []float64 // where up it the marks lie
	}{
		{"no line", nil, []float64{50, 150}},
		{"a line at a quarter", []float64{50}, []float64{44, 150}},
		{"lines at a quarter and under it", []float64{44, 50}, []float64{56, 150}},
		{"a line at three quarters", []float64{151}, []float64{50, 144}},
	} {
		p := NewPiece(sample.Rectangle("p", "P", 2*pageSide, pageSide))
		p.Lines = nil
		for _, y := range c.across {
			p.Lines = append(p.Lines, NewLine(mark.Cut, "", plane.Path{{X: 0, Y: y}, {X: 2 * pageSide, Y: y}}))
		}
		s := NewSheet([]Piece{p}, Grid{Rows: 1, Columns: 2, Window: plane.Point{X: pageSide, Y: pageSide}, Overlap: overlap}, []Cell{{0, 0}, {0, 1}})
		s.FindJoins(1)
		require.Len(t, s.Joins, 1, c.name)
		for i, m := range s.Joins[0].marks {
			assert.InDelta(t, join, m.X, 1e-9, c.name)
			assert.InDelta(t, c.want[i], m.Y, 1e-9, c.name)
		}
	}
}

// A join mark with its number has room in half the narrowest overlap that paper takes.
func TestJoinMarkFitsTheNarrowestOverlap(t *testing.T) {
	_, err := paper.All()[0].WithOverlap(8.9)
	require.Error(t, err)
	assert.GreaterOrEqual(t, 9.0/2, markAway+ink.Strong(markNumber).Up()/2)
}
