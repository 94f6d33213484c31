package plane

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// A 3-4-5 triangle, and on: points that lie in one place lie equally far along.
func TestHowFarAlongPointsLie(t *testing.T) {
	tree := NewTree(Path{{}, {X: 3}, {X: 3, Y: 4}, {X: 3, Y: 4}, {}})
	for i, want := range []float64{0, 3, 7, 7, 12} {
		assert.InDelta(t, want, tree.Along(i), 1e-12, "point %d", i)
	}
	assert.Zero(t, NewTree(Path{{X: 5}}).Along(0), "of one point")
}

// pathOnGrid is a closed path on a grid of whole mm, where places often lie level with its
// points.
func pathOnGrid(t *rapid.T) Path {
	coordinate := rapid.Map(rapid.IntRange(0, 12), func(n int) float64 { return float64(n) })
	path := make(Path, rapid.IntRange(2, 60).Draw(t, "points"))
	for i := range path {
		path[i] = Point{coordinate.Draw(t, "x"), coordinate.Draw(t, "y")}
	}
	return append(path, path[0])
}

// What a tree says without looking at every segment is what all of them say.
func TestTreeAgainstEverySegment(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		path := pathOnGrid(t)
		half := rapid.Map(rapid.IntRange(-2, 26), func(n int) float64 { return float64(n) / 2 })
		q := Point{half.Draw(t, "at x"), half.Draw(t, "at y")}
		box := EmptyBox().With(q).With(Point{half.Draw(t, "to x"), half.Draw(t, "to y")})
		limit := half.Draw(t, "limit") + 2
		crossed, nearest := false, limit
		var met, found []int
		for i := range len(path) - 1 {
			a, c := path[i], path[i+1]
			if (a.Y > q.Y) != (c.Y > q.Y) && q.X < a.X+(c.X-a.X)*(q.Y-a.Y)/(c.Y-a.Y) {
				crossed = !crossed
			}
			if EmptyBox().With(a).With(c).Meets(box) {
				met = append(met, i)
			}
			foot, _ := nearestOnSegment(a, c, q)
			nearest = min(nearest, foot.Distance(q))
		}
		tree := NewTree(path)
		tree.Within(box, func(i int) bool {
			found = append(found, i)
			return true
		})
		assert.Equal(t, crossed, tree.Holds(q), "%v holds %v", path, q)
		assert.Equal(t, nearest, tree.Distance(q, limit), "from %v to %v", q, path)
		assert.Equal(t, met, found, "segments of %v in %v", path, box)
	})
}
