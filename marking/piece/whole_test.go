package piece

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// The outline of a whole piece is that of its half and the mirror image: twice the
// area, closed, counter-clockwise, wherever the half begins and the fold lies.
func TestOutlineOfAWholePiece(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := rapid.Float64Range(-math.Pi, math.Pi).Draw(t, "angle")
		origin := plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")}
		out := plane.Point{X: math.Cos(angle), Y: math.Sin(angle)}
		n := rapid.IntRange(1, 8).Draw(t, "corners off the fold")
		at := func(r, phi float64) plane.Point {
			return origin.Add(out.Mul(r * math.Cos(phi))).Add(out.Left().Mul(r * math.Sin(phi)))
		}
		ring := plane.Path{at(rapid.Float64Range(50, 300).Draw(t, "lower end"), -math.Pi/2)}
		for k := range n {
			ring = append(ring, at(rapid.Float64Range(50, 300).Draw(t, "radius"), math.Pi*(float64(k+1)/float64(n+1)-0.5)))
		}
		ring = append(ring, at(rapid.Float64Range(50, 300).Draw(t, "upper end"), math.Pi/2))
		if rapid.Bool().Draw(t, "a point within the fold") {
			ring = append(ring, origin)
		}
		first := rapid.IntRange(0, len(ring)-1).Draw(t, "first")
		half := append(append(plane.Path{}, ring[first:]...), ring[:first]...)
		half = append(half, half[0])

		whole := WholeOutline(half, origin, out)
		require.Equal(t, whole[0], whole[len(whole)-1], "closed")
		require.InDelta(t, 2*half.Area(), whole.Area(), 1e-6*half.Area(), "twice the half, counter-clockwise")
		for _, q := range whole {
			image := q.Sub(out.Mul(2 * q.Sub(origin).Dot(out)))
			_, _, away := whole.Nearest(image)
			require.InDelta(t, 0, away, 1e-6, "it is its own mirror image")
		}
		for i := 1; i < len(whole); i++ {
			middle := whole[i-1].Toward(whole[i], 0.5).Sub(origin).Dot(out)
			require.Greater(t, math.Abs(middle), 1e-6, "no side lies on the fold")
		}
	})
}
