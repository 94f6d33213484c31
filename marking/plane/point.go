package plane

import (
	"math"
)

// Point is a place in the plane, or the step from one place to another, in mm.
type Point struct{ X, Y float64 }

// Add returns p moved by the step q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns the step from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Mul returns the step p made m times as long.
func (p Point) Mul(m float64) Point { return Point{p.X * m, p.Y * m} }

// Dot returns the scalar product of two steps.
func (p Point) Dot(q Point) float64 { return p.X*q.X + p.Y*q.Y }

// Cross returns the cross product of two steps: positive where q turns left
// of p.
func (p Point) Cross(q Point) float64 { return p.X*q.Y - p.Y*q.X }

// Length returns the length of the step, in mm.
func (p Point) Length() float64 { return math.Hypot(p.X, p.Y) }

// Distance returns how far apart two places are, in mm.
func (p Point) Distance(q Point) float64 { return p.Sub(q).Length() }

// Unit returns the step of length 1 in p's direction. The zero step has no
// direction and is returned as it is.
func (p Point) Unit() Point {
	l := p.Length()
	if l == 0 {
		return p
	}
	return Point{p.X / l, p.Y / l}
}

// Left returns the step turned a quarter turn to the left.
func (p Point) Left() Point { return Point{-p.Y, p.X} }

// Toward returns the place a share t of the way from p to q: p at 0, q at 1.
func (p Point) Toward(q Point, t float64) Point {
	return Point{p.X + (q.X-p.X)*t, p.Y + (q.Y-p.Y)*t}
}

// Turn returns by how many radians the way of a step turns to the way of another, the
// shorter way round: more than 0 to the left, and a half turn at most. Steps of no length
// have no way; the turn is 0.
func Turn(from, to Point) float64 { return math.Atan2(from.Cross(to), from.Dot(to)) }

// TurnLeft is that turn to the left, from 0 to less than a full turn.
func TurnLeft(from, to Point) float64 {
	turn := Turn(from, to)
	if turn < 0 {
		turn += 2 * math.Pi
	}
	return turn
}
