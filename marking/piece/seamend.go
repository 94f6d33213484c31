package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// TurnLeft returns the angle from one direction to another, turning left: from 0 to
// a full turn.
func TurnLeft(from, to plane.Point) float64 {
	angle := math.Atan2(from.Cross(to), from.Dot(to))
	if angle < 0 {
		angle += 2 * math.Pi
	}
	return angle
}
