package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestLongWay(t *testing.T) {
	for _, c := range []struct {
		name   string
		path   Path
		middle Point
		long   Point // either way round; zero where there is none
	}{
		{"a rectangle", Path{{0, 0}, {6, 0}, {6, 2}, {0, 2}, {0, 0}}, Point{3, 1}, Point{X: 1}},
		{"left open, and clockwise", Path{{0, 0}, {0, 6}, {2, 6}, {2, 0}}, Point{1, 3}, Point{Y: 1}},
		// Its variances are 3²/18 and 9²/18, its covariance -3 × 9/36 (derived).
		{"a right triangle balances a third of the way up", Path{{0, 0}, {3, 0}, {0, 9}, {0, 0}}, Point{1, 3}, Point{-0.1784, 0.9840}},
		{"far from the origin", Path{{1e6, 1e6}, {1e6 + 4, 1e6}, {1e6 + 4, 1e6 + 1}, {1e6, 1e6 + 1}, {1e6, 1e6}}, Point{1e6 + 2, 1e6 + 0.5}, Point{X: 1}},
		{"a square", Path{{0, 0}, {2, 0}, {2, 2}, {0, 2}, {0, 0}}, Point{1, 1}, Point{}},
		{"a line", Path{{1, 2}, {3, 4}}, Point{1, 2}, Point{}},
		{"nothing", nil, Point{}, Point{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			long, ok := c.path.LongWay()
			assert.InDelta(t, 0, c.path.Middle().Distance(c.middle), 1e-6, "the middle")
			require.Equal(t, c.long != Point{}, ok)
			assert.InDelta(t, c.long.Length(), math.Abs(long.Dot(c.long)), 1e-4, "the long way is %v", long)
		})
	}
}

// The area of a shape is summed up by small squares: their middle is that of the shape, and
// there is no direction in which they lie farther from it.
func TestLongWayIsTheWidestSpread(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 8).Draw(t, "points")
		var p Path
		for k := range n {
			sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(n))
			r := rapid.Float64Range(20, 60).Draw(t, "radius")
			p = append(p, Point{X: r * cos, Y: r * sin})
		}
		p = append(p, p[0])
		var squares []Point
		var sum Point
		tree := NewTree(p)
		for x := -60.25; x < 60; x++ {
			for y := -60.25; y < 60; y++ {
				if q := (Point{X: x, Y: y}); tree.Holds(q) {
					squares, sum = append(squares, q), sum.Add(q)
				}
			}
		}
		middle := sum.Mul(1 / float64(len(squares)))
		require.Less(t, middle.Distance(p.Middle()), 0.5, "the middle")
		spread := func(direction Point) float64 {
			most := 0.0
			for _, q := range squares {
				most += math.Pow(q.Sub(middle).Dot(direction), 2)
			}
			return most
		}
		long, ok := p.LongWay()
		if !ok {
			return
		}
		for k := range 36 {
			sin, cos := math.Sincos(math.Pi * float64(k) / 36)
			require.Less(t, spread(Point{X: cos, Y: sin}), 1.03*spread(long), "%d degrees lie farther than %v", 5*k, long)
		}
	})
}
