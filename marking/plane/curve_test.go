package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// onCircle returns the places at the given angles on a circle about (0, 0).
func onCircle(radius float64, degrees ...float64) Path {
	var p Path
	for _, d := range degrees {
		sin, cos := math.Sincos(d * math.Pi / 180)
		p = append(p, Point{radius * cos, radius * sin})
	}
	return p
}

// A round line measured off at a few places must come back round.
func TestCurveFollowsACircle(t *testing.T) {
	for _, c := range []struct {
		name    string
		degrees []float64
		within  float64 // mm, of a circle of 100 mm
	}{
		{"even points", []float64{0, 30, 60, 90}, 0.2},
		{"five points", []float64{0, 22, 45, 68, 90}, 0.05},
		{"uneven points", []float64{0, 10, 50, 90}, 0.5},
		{"a half circle", []float64{0, 30, 60, 90, 120, 150, 180}, 0.2},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, q := range Curve(onCircle(100, c.degrees...), Point{}, Point{}) {
				assert.InDelta(t, 100, q.Length(), c.within)
			}
		})
	}
}

func TestCurveKeepsGivenDirections(t *testing.T) {
	p := Curve(path(t, "0,0 30,4 50,30"), Point{2, 0}, Point{0, 5})
	assert.InDelta(t, 0, p.StartDirection().Y, 0.05, "it sets out to the right, but for the first short piece")
	assert.InDelta(t, 0, p.EndDirection().X, 0.05, "it arrives upward, but for the last short piece")
}

func TestCurveDegenerate(t *testing.T) {
	for _, c := range []struct{ name, points, want string }{
		{"nothing", "", ""},
		{"one point", "3,4", "3,4"},
		{"two points", "0,0 10,5", "0,0 10,5"},
		{"a point repeated", "0,0 0,0 10,5 10,5", "0,0 10,5"},
		{"points on a line", "0,0 5,0 20,0", "0,0 5,0 20,0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, text(Curve(path(t, c.points), Point{}, Point{})))
		})
	}
}

func TestCurvePassesThroughItsPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := anyPath(3).Draw(t, "points")
		p := Curve(points, Point{}, Point{})
		next := 0
		for _, q := range p {
			if next < len(points) && q == points[next] {
				next++
			}
			require.False(t, math.IsNaN(q.X) || math.IsNaN(q.Y), "a curve has no holes")
		}
		assert.Equal(t, len(points), next, "points passed through, in order and exactly")
	})
}

// A piece of length l beside which the line turns by an angle a lies l·a/8 off
// the round line it stands for, since both its ends take half the turn.
func TestCurveIsFlatEnough(t *testing.T) {
	p := Curve(onCircle(80, 0, 25, 60, 100, 170), Point{}, Point{})
	for i := 2; i < len(p); i++ {
		in, out := p[i-1].Sub(p[i-2]), p[i].Sub(p[i-1])
		turn := math.Atan2(in.Cross(out), in.Dot(out))
		off := math.Max(in.Length(), out.Length()) * math.Abs(turn) / 8
		assert.Less(t, off, 1.1*flatness, "piece %d of %d", i, len(p)-1)
	}
}
