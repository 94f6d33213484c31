package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// What bends to and fro within the distance is straight, and nothing else.
func TestRoughness(t *testing.T) {
	for _, c := range []struct{ name, line, want string }{
		{"to and fro", "0,0 1,0.1 2,-0.1 3,0.1 4,0", "0,0 4,0"},
		{"a corner stays, and both its sides are straight", "0,0 1,0.1 2,-0.1 3,0.1 4,0 4.1,1 3.9,2 4.1,3 4,4", "0,0 4,0 4,4"},
		{"a bend one way, however slight", "0,0 1,0.1 2,0.15 3,0.1 4,0", "0,0 1,0.1 2,0.15 3,0.1 4,0"},
		{"from one bend to the other", "0,0 1,-0.1 2,0 3,0.1 4,0", "0,0 1,-0.1 2,0 3,0.1 4,0"},
		{"to and fro, farther than that", "0,0 1,1 2,-1 3,1 4,0", "0,0 1,1 2,-1 3,1 4,0"},
		{"points that stand twice", "0,0 0,0 1,1 1,1", "0,0 1,1"},
		{"a point", "3,4", "3,4"},
		{"one place", "3,4 3,4", "3,4"},
		{"nothing", "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, text(path(t, c.line).WithoutRoughness(0.25)))
		})
	}
}

// Whatever the line, no point of it lies farther from what is left than the roughness; what
// is left are points of the line, in its order, its ends among them.
func TestRoughnessStaysNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		within := rapid.Float64Range(0, 3).Draw(t, "within")
		var p Path
		for range rapid.IntRange(2, 40).Draw(t, "points") {
			step := Point{rapid.Float64Range(-3, 3).Draw(t, "across"), rapid.Float64Range(-3, 3).Draw(t, "up")}
			if len(p) > 0 {
				step = p[len(p)-1].Add(step).Add(Point{X: 1})
			}
			p = append(p, step)
		}
		q := p.WithoutRoughness(within)
		require.Equal(t, p[0], q[0])
		require.InDelta(t, 0, p[len(p)-1].Distance(q[len(q)-1]), touch)
		at := 0
		for i, from := range p {
			if at < len(q) && q[at].Distance(from) <= touch {
				at++
			}
			_, _, away := q.Nearest(from)
			require.LessOrEqual(t, away, within+rounding, "point %d, %s, of %s; what is left: %s", i, text(Path{from}), text(p), text(q))
		}
		require.Equal(t, len(q), at, "points in the order of the line")
	})
}

// A path that is split at its next point each time takes no longer than its splits allow,
// and what is left of it stays.
func TestRoughnessOfAPathThatIsNeverHalved(t *testing.T) {
	var p Path
	for i := range 20000 { // a zigzag that gets lower all the way
		p = append(p, Point{float64(i), math.Pow(-1, float64(i)) * (30000 - float64(i))})
	}
	assert.Equal(t, len(p), len(p.WithoutRoughness(1)))
}
