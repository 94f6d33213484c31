package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: a straight line that was traced strays to both sides of itself, and is
// meant straight, from corner to corner. One that bends one way is meant as it is, however
// slightly.

const (
	// penOff bounds how far, in mm, places of a straight line may lie off it that was led
	// along with a pen and read to a tenth of a millimetre.
	penOff = 0.25
	// penCorner is by how much, in radians (45 degrees), a line turns at a point that is a
	// corner: more than it does where two that are a millimetre apart stray to either side.
	penCorner = math.Pi / 4
)

// penStraight returns points without what lies between corners that were meant to be joined
// straight.
func penStraight(points plane.Path) plane.Path {
	if len(points) < 3 {
		return points
	}
	straight := plane.Path{points[0]}
	first := 0
	for i := 1; i < len(points); i++ {
		if i < len(points)-1 && math.Abs(plane.Turn(points[i].Sub(points[i-1]), points[i+1].Sub(points[i]))) < penCorner {
			continue
		}
		leg := points[first : i+1]
		if leg.Straightness() <= penOff {
			if ends := leg.WithoutRoughness(penOff); len(ends) == 2 {
				leg = ends
			}
		}
		straight = append(straight, leg[1:]...)
		first = i
	}
	return straight
}
