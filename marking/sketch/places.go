package sketch

import (
	"math"

	"tuckmark/marking/plane"
)

// Away returns how far a place lies from a path, looking at every segment.
func Away(q plane.Point, p plane.Path) float64 {
	nearest := math.Inf(1)
	for i := 1; i < len(p); i++ {
		step := p[i].Sub(p[i-1])
		share := max(0, min(1, q.Sub(p[i-1]).Dot(step)/step.Dot(step)))
		nearest = min(nearest, p[i-1].Add(step.Mul(share)).Distance(q))
	}
	return nearest
}

// Within reports whether an outline winds round a place, by the angles under
// which its segments are seen.
func Within(q plane.Point, outline plane.Path) bool {
	sum := 0.0
	for i := 1; i < len(outline); i++ {
		a, b := outline[i-1].Sub(q), outline[i].Sub(q)
		sum += math.Atan2(a.Cross(b), a.Dot(b))
	}
	return math.Abs(sum) > math.Pi
}

func Turned(q plane.Point, angle float64) plane.Point {
	sin, cos := math.Sincos(angle)
	return plane.Point{X: q.X*cos - q.Y*sin, Y: q.X*sin + q.Y*cos}
}

// Ordered returns a line from its lower or left end.
func Ordered(p plane.Path) plane.Path {
	if p[0].Y > p[1].Y || p[0].Y == p[1].Y && p[0].X > p[1].X {
		return plane.Path{p[1], p[0]}
	}
	return p
}
