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
// the round line it stands for, since both its ends take half the turn. None lies off it
// by more than 0.01 mm or turns by more than 4 degrees, and a curve is not halved more
// often than that takes: some piece comes within a quarter of the one or half of the
// other.
func TestCurveIsFlatEnough(t *testing.T) {
	for _, radius := range []float64{0.5, 2, 8, 30, 80, 300, 1000, 3000} {
		p := Curve(onCircle(radius, 0, 25, 60, 100, 170), Point{}, Point{})
		mostOff, mostTurn := 0.0, 0.0
		for i := 2; i < len(p); i++ {
			in, out := p[i-1].Sub(p[i-2]), p[i].Sub(p[i-1])
			turn := math.Abs(math.Atan2(in.Cross(out), in.Dot(out)))
			mostOff = math.Max(mostOff, math.Max(in.Length(), out.Length())*turn/8)
			mostTurn = math.Max(mostTurn, turn*180/math.Pi)
		}
		assert.LessOrEqual(t, mostOff, 0.011, "how far a piece lies off a circle of %g mm", radius)
		assert.LessOrEqual(t, mostTurn, 4.1, "how many degrees a circle of %g mm turns from piece to piece", radius)
		assert.True(t, mostOff > 0.01*3/4/4 || mostTurn > 2, "a circle of %g mm lies %g off and turns by %g: needlessly fine", radius, mostOff, mostTurn)
	}
}

// A curve that comes to a point is never flat enough there. Each of its steps is halved
// twelve times and no more, which leaves one more piece each time.
func TestCurveAtAPoint(t *testing.T) {
	p := Curve(path(t, "0,0 10,0 9,0 10,0"), Point{X: 1}, Point{X: -1})
	assert.LessOrEqual(t, len(p)-1, 3*(1+12), "pieces of three steps that turn back on themselves")
}

// A curve that runs to and fro over 100 m at each of 20,000 points would have millions.
func TestCurveComesToAnEnd(t *testing.T) {
	var points []Point
	for i := range 20_000 {
		points = append(points, Point{float64(i), 100_000 * float64(i%2)}, Point{float64(i) + 0.5, 50_000})
	}
	curve := Curve(points, Point{}, Point{})
	assert.LessOrEqual(t, len(curve), 400_000+40_000)
	assert.Greater(t, len(curve), 399_999, "as many as there may be are made")
	for _, q := range []Point{points[0], points[len(points)-1]} {
		assert.Contains(t, []Point{curve[0], curve[len(curve)-1]}, q)
	}
}
