package plane

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestPathArea(t *testing.T) {
	for _, c := range []struct {
		name, path string
		want       float64
	}{
		{"counter-clockwise is positive", "0,0 4,0 4,3 0,3 0,0", 12},
		{"clockwise is negative", "0,0 0,3 4,3 4,0 0,0", -12},
		{"an open path closes straight", "0,0 4,0 4,3", 6},
		{"far from the origin", "1000000,1000000 1000004,1000000 1000004,1000003 1000000,1000003", 12},
		{"a line", "0,0 5,5", 0},
		{"nothing", "", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDelta(t, c.want, path(t, c.path).Area(), 1e-9)
		})
	}
}

func TestPathAt(t *testing.T) {
	p := path(t, "0,0 10,0 10,10")
	for _, c := range []struct {
		name      string
		d         float64
		want      Point
		direction Point
	}{
		{"before the start", -5, Point{0, 0}, Point{1, 0}},
		{"the start", 0, Point{0, 0}, Point{1, 0}},
		{"on the way", 4, Point{4, 0}, Point{1, 0}},
		{"on a corner it looks ahead", 10, Point{10, 0}, Point{0, 1}},
		{"the end", 20, Point{10, 10}, Point{0, 1}},
		{"beyond the end", 99, Point{10, 10}, Point{0, 1}},
	} {
		t.Run(c.name, func(t *testing.T) {
			at, direction := p.At(c.d)
			assert.Equal(t, c.want, at)
			assert.Equal(t, c.direction, direction)
		})
	}
}

func TestPathBetween(t *testing.T) {
	p := path(t, "0,0 10,0 10,10")
	for _, c := range []struct {
		name     string
		from, to float64
		want     string
	}{
		{"the whole", 0, 20, "0,0 10,0 10,10"},
		{"more than the whole", -3, 30, "0,0 10,0 10,10"},
		{"within one segment", 2, 5, "2,0 5,0"},
		{"round the corner", 8, 13, "8,0 10,0 10,3"},
		{"from the corner", 10, 13, "10,0 10,3"},
		{"to the corner", 8, 10, "8,0 10,0"},
		{"nothing", 5, 5, ""},
		{"backwards", 6, 5, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, text(p.Between(c.from, c.to)))
		})
	}
}

func TestTreeHolds(t *testing.T) {
	notched := NewTree(path(t, "0,0 10,0 10,10 5,4 0,10 0,0"))
	assert.True(t, notched.Holds(Point{2, 2}), "a place well inside")
	assert.False(t, notched.Holds(Point{5, 6}), "a place in the notch")
	assert.True(t, notched.Holds(Point{1, 8}), "a place beside the notch")
	assert.False(t, notched.Holds(Point{-1, 4}), "a place level with a corner, outside")
}

func TestStraightness(t *testing.T) {
	for _, c := range []struct {
		name, path string
		want       float64
	}{
		{"two points", "0,0 7,3", 0},
		{"three on a line", "0,0 2,2 5,5", 0},
		{"one off it", "0,0 5,3 10,0", 3},
		{"both ends in one place", "0,0 3,4 0,0", 5},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDelta(t, c.want, path(t, c.path).Straightness(), 1e-12)
		})
	}
}

// anyPath draws a path of different points within a hand's breadth.
func anyPath(least int) *rapid.Generator[Path] {
	return rapid.Custom(func(t *rapid.T) Path {
		n := rapid.IntRange(least, 40).Draw(t, "points")
		var p Path
		for len(p) < n {
			p = append(p, Point{
				rapid.Float64Range(-100, 100).Draw(t, "x"),
				rapid.Float64Range(-100, 100).Draw(t, "y"),
			})
		}
		return p
	})
}

func TestBetweenPartsMakeTheWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyPath(2).Draw(t, "path")
		cut := rapid.Float64Range(0, 1).Draw(t, "cut") * p.Length()
		parts := p.Between(0, cut).Length() + p.Between(cut, p.Length()).Length()
		assert.InDelta(t, p.Length(), parts, 1e-6, "the two parts are as long as the whole")
	})
}

func TestTreeFindsWhatLookingAtAllFinds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyPath(1).Draw(t, "path")
		tree := NewTree(p)
		q := Point{rapid.Float64Range(-150, 150).Draw(t, "qx"), rapid.Float64Range(-150, 150).Draw(t, "qy")}
		_, _, want := p.Nearest(q)
		assert.InDelta(t, want, tree.Distance(q, math.Inf(1)), 1e-9)
		assert.InDelta(t, math.Min(want, 10), tree.Distance(q, 10), 1e-9, "no farther than the limit")
		at, along := tree.Nearest(q)
		assert.InDelta(t, want, at.Distance(q), 1e-9)
		assert.InDelta(t, 0, at.Distance(tree.At(along)), 1e-6, "it says how far along the place lies")
		assert.True(t, tree.Nearer(q, want+1e-6))
		assert.False(t, tree.Nearer(q, want-1e-6))

		b := EmptyBox().With(q).Grown(rapid.Float64Range(0, 60).Draw(t, "half"))
		var found, all []int
		tree.Within(b, func(i int) bool { found = append(found, i); return true })
		for i := 0; i+1 < len(p); i++ {
			if EmptyBox().With(p[i]).With(p[i+1]).Meets(b) {
				all = append(all, i)
			}
		}
		assert.Equal(t, all, found, "the segments in the box, in path order")
	})
}

// Whatever the path, every function comes back from it, and with numbers.
func TestDegeneratePaths(t *testing.T) {
	for name, p := range map[string]Path{
		"nothing":                nil,
		"a point":                {{3, 4}},
		"a point repeated":       {{3, 4}, {3, 4}, {3, 4}},
		"there and back":         {{0, 0}, {5, 0}, {0, 0}},
		"over itself":            {{0, 0}, {5, 0}, {2, 0}, {7, 0}},
		"with a point repeated":  {{0, 0}, {5, 0}, {5, 0}, {5, 5}},
		"shorter than a touch":   {{0, 0}, {1e-10, 0}},
		"a loop next to nothing": {{0, 0}, {1e-7, 0}, {1e-7, 1e-7}, {0, 0}},
	} {
		t.Run(name, func(t *testing.T) {
			given := fmt.Sprint(p)
			tree, line := NewTree(p), NewTree(path(t, "0,-9 0,9"))
			var out []any
			for _, d := range []float64{0, 1e-8, 2} {
				offset, _ := Offset(p, d, 1)
				at, direction := p.At(d)
				out = append(out, offset, at, direction, p.Between(d, 3), tree.At(d), tree.Nearer(Point{}, d))
			}
			crossing, _, _, _ := SelfCrossing(tree)
			onPath, along := tree.Nearest(Point{9, 9})
			out = append(out, p.Area(), p.Length(), p.Straightness(), p.StartDirection(), p.EndDirection(), p.Reversed(),
				p.Mirrored(Point{}, Point{1, 0}), p.WithoutStraightPoints(), Curve(p, Point{}, Point{}), Curve(p, Point{1, 0}, Point{0, 1}),
				Crossings(tree, line), Crossings(line, tree), crossing, tree.Clip(Box{Max: Point{4, 4}}), tree.Holds(Point{1, 1}), onPath, along,
				HalfPlane(p, make([]int, max(0, len(p)-1)), Point{1, 0}, Point{1, 0}))
			f := over(t, "1+1 4-1:0")
			out = append(out, f.Unfolded(p), f.Shown(p), f.DrawnInPath(p), f.Spread(p))
			assert.NotContains(t, fmt.Sprint(out...), "NaN")
			assert.Equal(t, given, fmt.Sprint(p), "the path is as it was")
		})
	}
}
