package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

func somePoint(t *rapid.T, label string) plane.Point {
	return plane.Point{X: rapid.Float64Range(-20, 20).Draw(t, label+" x"), Y: rapid.Float64Range(-20, 20).Draw(t, label+" y")}
}

func someSlab(t *rapid.T, label string) slab {
	a := rapid.Float64Range(-math.Pi, math.Pi).Draw(t, label+" angle")
	return slab{
		somePoint(t, label),
		plane.Point{X: rapid.Float64Range(0.1, 12).Draw(t, label+" w"), Y: rapid.Float64Range(0.1, 6).Draw(t, label+" h")},
		plane.Point{X: math.Cos(a), Y: math.Sin(a)},
	}
}

func slabHolds(s slab, p plane.Point) bool {
	q := p.Sub(s.centre)
	return math.Abs(q.Dot(s.u)) <= s.half.X && math.Abs(q.Dot(s.u.Left())) <= s.half.Y
}

func slabCorners(s slab) plane.Path {
	x, y := s.u.Mul(s.half.X), s.u.Left().Mul(s.half.Y)
	c := s.centre
	return plane.Path{c.Add(x).Add(y), c.Sub(x).Add(y), c.Sub(x).Sub(y), c.Add(x).Sub(y), c.Add(x).Add(y)}
}

func TestSlabMeetsSegment(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, a, b := someSlab(t, "slab"), somePoint(t, "a"), somePoint(t, "b")
		met, near := false, false
		for i := range 401 {
			at := a.Toward(b, float64(i)/400)
			met = met || slabHolds(s, at)
			near = near || slabHolds(s.grown(0.2), at)
		}
		if met {
			require.True(t, s.meetsSegment(a, b))
		}
		if !near {
			require.False(t, s.meetsSegment(a, b))
		}
		for _, q := range slabCorners(s) {
			require.True(t, s.bounds().Grown(1e-9).Holds(q))
		}
	})
}

func TestSlabsMeet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := someSlab(t, "a"), someSlab(t, "b")
		want := slabHolds(a, b.centre) || slabHolds(b, a.centre)
		for i := range 4 {
			want = want || b.meetsSegment(slabCorners(a)[i], slabCorners(a)[i+1])
		}
		require.Equal(t, want, a.meets(b))
		require.Equal(t, want, b.meets(a))
	})
}
