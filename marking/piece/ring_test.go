package piece

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// sidedSquare is a square of 10 mm whose right side, edge 1, is in two segments.
var sidedSquare = Ring{
	Path:  plane.Path{{}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {Y: 10}, {}},
	Edges: []int{0, 1, 1, 2, 3},
}

// Where a ring is cut, led on, closed or opened out, every segment keeps its edge.
func TestRingKeepsItsEdges(t *testing.T) {
	rest := func(group ...int) Ring {
		r, ok := sidedSquare.Without(group)
		require.True(t, ok)
		return r
	}
	begun := func(lead func(*Ring)) Ring {
		r := Ring{plane.Path{{}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}}, []int{0, 1, 1}}
		lead(&r)
		return r
	}
	for _, c := range []struct {
		name string
		got  Ring
		want Ring
	}{
		{"without the right side", rest(1), Ring{plane.Path{{X: 10, Y: 10}, {Y: 10}, {}, {X: 10}}, []int{2, 3, 0}}},
		{"without the side it begins with", rest(0), Ring{plane.Path{{X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {Y: 10}, {}}, []int{1, 1, 2, 3}}},
		{"without two that meet where it begins", rest(3, 0), Ring{plane.Path{{X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {Y: 10}}, []int{1, 1, 2}}},
		{"a part", sidedSquare.Between(5, 22), Ring{plane.Path{{X: 5}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {X: 8, Y: 10}}, []int{0, 1, 1, 2}}},
		{"a part of one segment", sidedSquare.Between(2, 3), Ring{plane.Path{{X: 2}, {X: 3}}, []int{0}}},
		{"led on", begun(func(r *Ring) { r.Add(plane.Point{Y: 10}, 7) }), Ring{plane.Path{{}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {Y: 10}}, []int{0, 1, 1, 7}}},
		{"led on to where it is", begun(func(r *Ring) { r.Add(plane.Point{X: 10, Y: 10.0005}, 7) }), begun(func(*Ring) {})},
		{"closed by a segment", begun(func(r *Ring) { r.Close(7) }), Ring{plane.Path{{}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {}}, []int{0, 1, 1, 7}}},
		{"turned to a corner", Ring{plane.Path{{X: 10, Y: 4}, {X: 10, Y: 10}, {Y: 10}, {}, {X: 10}, {X: 10, Y: 4}}, []int{1, 2, 3, 0, 1}}.toCorner(),
			Ring{plane.Path{{X: 10, Y: 10}, {Y: 10}, {}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}}, []int{2, 3, 0, 1, 1}}},
		{"opened out at its left", sidedSquare.opened(3, plane.Point{}, plane.Point{X: 1}),
			Ring{plane.Path{{}, {X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}, {Y: 10}, {X: -10, Y: 10}, {X: -10, Y: 4}, {X: -10}, {}}, []int{0, 1, 1, 2, 2, 1, 1, 0}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want.Edges, c.got.Edges)
			require.Len(t, c.got.Path, len(c.want.Path))
			for i, q := range c.want.Path {
				assert.InDelta(t, 0, q.Distance(c.got.Path[i]), 1e-9, "point %d is %v, not %v", i, c.got.Path[i], q)
			}
		})
	}
	_, ok := sidedSquare.Without([]int{0, 2})
	assert.False(t, ok, "what is left would come in two")
	_, ok = sidedSquare.Without([]int{0, 1, 2, 3})
	assert.False(t, ok, "nothing would be left")
}

// Runs are the edges as a maker walks round them.
func TestRunsOfARing(t *testing.T) {
	assert.Equal(t, []EdgeRun{
		{0, plane.Path{{}, {X: 10}}},
		{1, plane.Path{{X: 10}, {X: 10, Y: 4}, {X: 10, Y: 10}}},
		{2, plane.Path{{X: 10, Y: 10}, {Y: 10}}},
		{3, plane.Path{{Y: 10}, {}}},
	}, sidedSquare.Runs())
}

// Without folds a line is as long as it is drawn, also on a piece that nobody folded.
func TestLengthWithoutFolds(t *testing.T) {
	line := plane.Path{{}, {X: 3, Y: 4}, {X: 3, Y: 16}}
	assert.InDelta(t, 17, finishedLengths{}.length(line, (*plane.Folding).Lying), 1e-12)
	assert.InDelta(t, 17, new(Piece).FinishedLength(line), 1e-12)
}
