package sketch

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/plane"
)

// Inches writes a path in inches, to a thousandth, as the sketches are
// written.
func Inches(p plane.Path) string {
	var words []string
	for _, q := range p {
		words = append(words, Number(q.X/25.4)+","+Number(q.Y/25.4))
	}
	return strings.Join(words, " ")
}

// Number writes a number to a thousandth, without noughts at its end.
func Number(v float64) string {
	s := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}

// TurnedPoints writes points of an edge, turned about the origin by radians
// counter-clockwise.
func TurnedPoints(angle float64, all ...plane.Point) string {
	var words []string
	for _, q := range all {
		q = Turned(q, angle)
		words = append(words, fmt.Sprintf("%.9f,%.9f", q.X, q.Y))
	}
	return strings.Join(words, " ")
}

// FromInches reads points that are written in inches, such as "0,0 4,2.5".
func FromInches(text string) (plane.Path, error) {
	var p plane.Path
	for _, word := range strings.Fields(text) {
		var q plane.Point
		if _, err := fmt.Sscanf(word, "%g,%g", &q.X, &q.Y); err != nil {
			return nil, fmt.Errorf("point %q: %w", word, err)
		}
		p = append(p, q.Mul(25.4))
	}
	return p, nil
}

// Places returns places along a path, no farther apart than step mm, its points among
// them.
func Places(p plane.Path, step float64) plane.Path {
	var all plane.Path
	for i := 1; i < len(p); i++ {
		n := math.Ceil(p[i].Distance(p[i-1]) / step)
		for k := range int(n) {
			all = append(all, p[i-1].Toward(p[i], float64(k)/n))
		}
	}
	return append(all, p[len(p)-1])
}

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

// Turned returns a place turned about the origin, by radians counter-clockwise.
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
