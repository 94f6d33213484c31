package plane

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// teeth is an edge whose points stand so far apart, by turns on the line and up to a
// depth below it.
func teeth(points int, apart float64, depth func() float64) Path {
	var p Path
	for i := range points {
		q := Point{float64(i) * apart, 0}
		if i%2 == 1 {
			q.Y = -depth()
		}
		p = append(p, q)
	}
	return p
}

func even(depth float64) func() float64 { return func() float64 { return depth } }

// A piece of a bridge for a line at 8 mm is √(8·0.005·8) = 0.566 mm long: what lies a
// 200th of a millimetre within a disc. A hollow is crowded when more than six points
// come to one.
func TestWithoutHollows(t *testing.T) {
	for _, c := range []struct {
		name string
		path Path
		want string // "" where it is left as it is
	}{
		{"a smooth line", path(t, "0,0 1,0 2,0.1 3,0.3 4,0.6"), ""},
		{"teeth 0.2 mm apart", teeth(7, 0.1, even(1)), ""},
		{"teeth 0.18 mm apart", teeth(7, 0.09, even(1)), "0,0 0.54,0"},
		{"a bridge no longer than a piece", teeth(25, 0.04, even(1)), "0,0 0.56,0 0.96,0"},
		{"however deep they are", teeth(7, 0.05, even(30)), "0,0 0.3,0"},
		{"a tooth that stands out is touched", append(teeth(5, 0.05, even(1)), path(t, "0.22,0.1 0.24,-1 0.26,0 0.28,-1 0.3,0")...), "0,0 0.22,0.1 0.3,0"},
		{"what hangs over is not hidden", path(t, "0,0 0.01,-1 0.02,0.5 -0.3,0.6 -0.3,0.61 0.02,0.62 0.03,0"), ""},
		{"nothing", nil, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, straps := withoutHollows(c.path, 8)
			want := c.want
			if want == "" {
				want = text(c.path)
			}
			assert.Equal(t, want, text(got))
			assert.Empty(t, straps, "30 mm below is no strap")
		})
	}
}

// A hollow is bridged by the disc that rests on its two rims; one wider than half the
// distance is not.
func TestBridgesAreArcsOfTheDisc(t *testing.T) {
	for width, bridged := range map[float64]bool{1: true, 3.9: true, 4.1: false} {
		hollow := Path{{-5, 0}, {0, 0}}
		for k := range 201 {
			hollow = append(hollow, Point{width * float64(k) / 200, -1})
		}
		hollow = append(hollow, Point{width, 0}, Point{width + 5, 0})
		got, _ := withoutHollows(hollow, 8)
		assert.Equal(t, bridged, got.Bounds().Min.Y > -1, "a hollow %g mm wide", width)
		if !bridged {
			continue
		}
		centre := Point{width / 2, math.Sqrt(64 - width*width/4)}
		disc := NewTree(got)
		assert.InDelta(t, 8-0.0025, disc.Distance(centre, 9), 0.0026, "the bridge over %g mm lies on the disc", width)
		assert.InDelta(t, math.Ceil(width/0.566), float64(len(got)-3), 0, "pieces over %g mm", width)
	}
}

// A noise far below what is seen takes nothing off the bridging, also where the path bends
// toward the line, so that straight bridges would hide what longer arcs rest on.
func TestFineNoiseIsBridgedInABend(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for bend, radius := range map[string]float64{"toward the line": 120, "away from it": -120} {
		var p Path
		for i := range 20_001 { // 100 mm of it, 0.005 mm from point to point
			sin, cos := math.Sincos(100 / radius * (float64(i)/20_000 - 0.5))
			away := math.Abs(radius) + 0.006*(r.Float64()-0.5)
			p = append(p, Point{away * sin * radius / math.Abs(radius), -away * cos * radius / math.Abs(radius)})
		}
		bridged, straps := withoutHollows(p, 50)
		assert.Less(t, len(bridged), 1_000, "points of a path that bends %s", bend)
		assert.Empty(t, straps)
		source := NewTree(p)
		for _, q := range bridged {
			assert.Less(t, source.Distance(q, 1), 0.0061, "a bridge at %v", q)
		}
	}
}

// Rough edges of every fineness and depth: the line keeps its distance, is no farther
// than the teeth that stand out most let it be, and does not take more work than
// their length asks for.
func TestOffsetOfRoughEdges(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	for _, c := range []struct {
		name  string
		apart float64
		depth func() float64
	}{
		{"noise", 0.004, func() float64 { return 0.006 * r.Float64() }},
		{"coarser noise", 0.02, func() float64 { return 0.02 * r.Float64() }},
		{"a zigzag", 0.02, even(1)},
		{"a deep zigzag", 0.005, even(20)},
		{"teeth of all depths", 0.01, r.Float64},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := teeth(6_001, c.apart, c.depth)
			line, ok := Offset(p, 9.5, 0)
			require.True(t, ok)
			assert.False(t, line.Pinched)
			assert.Empty(t, flaws(p, line.Path, 9.5, cornered))
			assert.LessOrEqual(t, line.Path.Bounds().Max.Y, 9.5+0.005+1e-9, "every other point lies on the line y = 0")
			// Counted rather than timed: 30 for each of the pieces that its bridges
			// could have, 0.617 mm long.
			allocations := testing.AllocsPerRun(1, func() { Offset(p, 9.5, 0) })
			assert.Less(t, allocations, 200+30*p[len(p)-1].X/0.617, "allocations")
		})
	}
}

// What is not crowded is left to the bit: straight pieces, and curves as round as those
// of a garment, from within and from without.
func TestOrdinaryPathsHaveNoHollows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := star(t, 30, 40, 100)
		if rapid.Bool().Draw(t, "round") {
			p = Curve(onCircle(rapid.Float64Range(8, 400).Draw(t, "radius"), 0, 30, 55, 90, 120), Point{}, Point{})
		}
		if rapid.Bool().Draw(t, "from without") {
			p = p.Reversed()
		}
		got, straps := withoutHollows(p, rapid.Float64Range(1, 60).Draw(t, "distance"))
		require.True(t, len(got) == len(p) && &got[0] == &p[0], "%d points of %d are left", len(got), len(p))
		require.Empty(t, straps)
	})
}

// Crowded stars, a hundred points to a side and all of them off it: as they are seen
// from the one side and from the other.
func TestOffsetOfRoughStars(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var p Path
		depth := rapid.Float64Range(0.001, 0.05).Draw(t, "depth")
		r := rand.New(rand.NewSource(rapid.Int64().Draw(t, "seed")))
		corners := star(t, 8, 20, 30)
		for i := 1; i < len(corners); i++ {
			for k := range 300 {
				at := corners[i-1].Toward(corners[i], float64(k)/300)
				p = append(p, at.Add(corners[i].Sub(corners[i-1]).Unit().Left().Mul(depth*r.Float64())))
			}
		}
		d := rapid.Float64Range(2, 12).Draw(t, "distance")
		if line, ok := Offset(p, d, 0); ok {
			assert.Empty(t, flaws(p, line.Path, d, cornered))
		}
	})
}
