package text

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

func someSlab(t *rapid.T, label string) Slab {
	a := rapid.Float64Range(-math.Pi, math.Pi).Draw(t, label+" angle")
	return Slab{
		somePoint(t, label),
		plane.Point{X: rapid.Float64Range(0.1, 12).Draw(t, label+" w"), Y: rapid.Float64Range(0.1, 6).Draw(t, label+" h")},
		plane.Point{X: math.Cos(a), Y: math.Sin(a)},
	}
}

func slabHolds(s Slab, p plane.Point) bool {
	q := p.Sub(s.Centre)
	return math.Abs(q.Dot(s.U)) <= s.Half.X && math.Abs(q.Dot(s.U.Left())) <= s.Half.Y
}

func slabCorners(s Slab) plane.Path {
	x, y := s.U.Mul(s.Half.X), s.U.Left().Mul(s.Half.Y)
	c := s.Centre
	return plane.Path{c.Add(x).Add(y), c.Sub(x).Add(y), c.Sub(x).Sub(y), c.Add(x).Sub(y), c.Add(x).Add(y)}
}

func TestSlabMeetsSegment(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, a, b := someSlab(t, "slab"), somePoint(t, "a"), somePoint(t, "b")
		met, near := false, false
		for i := range 401 {
			at := a.Toward(b, float64(i)/400)
			met = met || slabHolds(s, at)
			near = near || slabHolds(s.Grown(0.2), at)
		}
		if met {
			require.True(t, s.MeetsSegment(a, b))
		}
		if !near {
			require.False(t, s.MeetsSegment(a, b))
		}
		for _, q := range slabCorners(s) {
			require.True(t, s.Bounds().Grown(1e-9).Holds(q))
		}
	})
}

func TestSlabsMeet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := someSlab(t, "a"), someSlab(t, "b")
		want := slabHolds(a, b.Centre) || slabHolds(b, a.Centre)
		for i := range 4 {
			want = want || b.MeetsSegment(slabCorners(a)[i], slabCorners(a)[i+1])
		}
		require.Equal(t, want, a.Meets(b))
		require.Equal(t, want, b.Meets(a))
	})
}
