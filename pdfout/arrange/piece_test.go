package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/pdfout/sample"
)

func TestInside(t *testing.T) {
	path := sample.Quarter(plane.Point{}, 80, 50, 0, 360, 90)
	path[len(path)-1] = path[0]
	// A bay, so that a ray may cross more than twice.
	path = append(plane.Path{{X: 20, Y: 0}}, path...)
	path = append(path, plane.Point{X: 20, Y: 0})
	p := NewPiece(mark.Marking{Outline: path})
	rapid.Check(t, func(t *rapid.T) {
		q := plane.Point{X: rapid.Float64Range(-90, 90).Draw(t, "x"), Y: rapid.Float64Range(-60, 60).Draw(t, "y")}
		require.Equal(t, sketch.Within(q, path), p.Inside(q))
	})
	assert.False(t, NewPiece(mark.Marking{}).Inside(plane.Point{}), "no outline, no inside")
}
