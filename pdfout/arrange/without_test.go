package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// Of the free boxes, after any others are taken out of them one after the other, none lies in
// another, and every place is in one that is in none of those.
func TestWithoutLeavesTheLargest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.IntRange(0, 12)
		free := []plane.Box{{Max: plane.Point{X: 12, Y: 12}}}
		var taken []plane.Box
		for range rapid.IntRange(1, 8).Draw(t, "taken") {
			low := plane.Point{X: float64(at.Draw(t, "x")), Y: float64(at.Draw(t, "y"))}
			b := plane.Box{Min: low, Max: low.Add(plane.Point{X: 1 + float64(at.Draw(t, "wide")), Y: 1 + float64(at.Draw(t, "high"))})}
			free, taken = without(free, b), append(taken, b)
		}
		in := func(boxes []plane.Box, q plane.Point) bool {
			for _, b := range boxes {
				if b.Holds(q) {
					return true
				}
			}
			return false
		}
		for x := range 12 {
			for y := range 12 {
				q := plane.Point{X: float64(x) + 0.5, Y: float64(y) + 0.5}
				assert.NotEqual(t, in(taken, q), in(free, q), "%v", q)
			}
		}
		for i, a := range free {
			for j, b := range free {
				assert.False(t, i != j && b.Holds(a.Min) && b.Holds(a.Max), "%v lies in %v", a, b)
			}
		}
	})
}
