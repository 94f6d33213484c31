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

// What is written along a join has room in half the narrowest overlap that paper takes, and
// does not touch the join.
func TestWordsFitTheNarrowestOverlap(t *testing.T) {
	_, err := paper.All()[0].WithOverlap(8.9)
	require.Error(t, err)
	for _, style := range []ink.Style{numberStyle(), ink.Caption()} {
		half := style.Half("page 8 joins here").Y
		assert.GreaterOrEqual(t, 9.0/2, besideJoin+half)
		assert.Greater(t, besideJoin-half, 0.5)
	}
}

// Which page is joined stands in the middle of a join; where lines run there, beside them,
// and off the marks.
func TestNamesOfPagesKeepOffLines(t *testing.T) {
	const pageSide, overlap = 200.0, 10.0
	for _, c := range []struct {
		name     string
		across   []float64 // where up the join lines cross it
		from, to float64   // where up it the name may lie
	}{
		{"no line", nil, 99, 101},
		{"a line in the middle", []float64{100}, 82, 84},
		{"nothing free but above", []float64{10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160}, 176, 184},
	} {
		p := NewPiece(sample.Rectangle("p", "P", 2*pageSide, pageSide))
		p.Lines = nil
		for _, y := range c.across {
			p.Lines = append(p.Lines, NewLine(mark.Cut, "", plane.Path{{X: 0, Y: y}, {X: 2 * pageSide, Y: y}}))
		}
		s := NewSheet([]Piece{p}, Grid{Rows: 1, Columns: 2, Window: plane.Point{X: pageSide, Y: pageSide}, Overlap: overlap}, []Cell{{0, 0}, {0, 1}})
		s.FindJoins(1)
		assert.True(t, s.Joins[0].named.Y >= c.from && s.Joins[0].named.Y <= c.to, "%s: %v", c.name, s.Joins[0].named)
	}
}
