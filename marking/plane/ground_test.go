package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// spiral is a path of so many turns, each a mm farther out, with so many points to a turn.
func spiral(turns, points int) Path {
	var p Path
	for i := range turns*points + 1 {
		turn := float64(i) / float64(points)
		sin, cos := math.Sincos(2 * math.Pi * turn)
		p = append(p, Point{cos, sin}.Mul(1+turn))
	}
	return p
}

// lookedInto is how many boxes of some levels a look at a place goes into, at most.
func lookedInto(levels [][]Box, q Point) int {
	n := 0
	for _, boxes := range levels {
		for _, b := range boxes {
			if b.Grown(0.1).Holds(q) {
				n++
			}
		}
	}
	return n
}

// In path order a look at one place of a spiral goes into a box of every turn around it.
func TestSpiralIsLookedAtWhereItLies(t *testing.T) {
	tree := NewTree(spiral(400, 100))
	require.NotNil(t, tree.ground, "a spiral is laid out as it lies")
	most, before := 0, 0
	for _, q := range []Point{{}, {X: 10.5}, {X: -200}, {X: 150, Y: 150}, {Y: 400}} {
		most = max(most, lookedInto(tree.ground.levels, q))
		before = max(before, lookedInto(tree.levels, q))
	}
	assert.Greater(t, before, 400, "boxes in path order")
	assert.Less(t, most, 100, "boxes as they lie")
}

// What is drawn once is looked for along itself.
func TestPathOrderServesLinesThatAreDrawnOnce(t *testing.T) {
	circle, wave := Path{}, Path{}
	for i := range 20_001 {
		turn := 2 * math.Pi * float64(i) / 20_000
		circle = append(circle, Point{math.Cos(turn), math.Sin(turn)}.Mul(300))
		wave = append(wave, Point{float64(i) / 10, math.Sin(float64(i))})
	}
	for name, p := range map[string]Path{"circle": circle, "wave": wave, "straight": {{}, {X: 5}}, "box": {{}, {X: 5}, {X: 5, Y: 5}, {Y: 5}, {}}} {
		assert.Nil(t, NewTree(p).ground, name)
	}
}

// In no order the same is found, wherever the path runs.
func TestMeetingFindsWhatIsWithin(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		path := spiral(rapid.IntRange(1, 30).Draw(t, "turns"), rapid.IntRange(8, 60).Draw(t, "points"))
		tree := NewTree(path)
		place := rapid.Float64Range(-40, 40)
		q := Point{place.Draw(t, "x"), place.Draw(t, "y")}
		box := EmptyBox().With(q).With(q.Add(Point{place.Draw(t, "wide"), place.Draw(t, "high")}))
		limit := rapid.IntRange(1, 2000).Draw(t, "limit")
		var within, meeting []int
		tree.Within(box, func(i int) bool {
			within = append(within, i)
			return true
		})
		tree.Meeting(box, func(i int) bool {
			meeting = append(meeting, i)
			return len(meeting) < limit
		})
		if len(within) <= limit {
			assert.ElementsMatch(t, within, meeting)
			return
		}
		assert.Len(t, meeting, limit, "it stops where it is told to")
		assert.Subset(t, within, meeting)
	})
}

// Both orders find the same, to the bit.
func TestGroundFindsWhatPathOrderFinds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		path := spiral(rapid.IntRange(8, 30).Draw(t, "turns"), rapid.IntRange(8, 60).Draw(t, "points"))
		tree, plain := NewTree(path), NewTree(path)
		plain.ground = nil
		if tree.ground == nil {
			t.Skip("it overlaps too little")
		}
		place := rapid.Float64Range(-40, 40)
		q := Point{place.Draw(t, "x"), place.Draw(t, "y")}
		box := EmptyBox().With(q).With(q.Add(Point{place.Draw(t, "wide"), place.Draw(t, "high")}))
		limit := rapid.Float64Range(0, 20).Draw(t, "limit")
		within := func(tree *Tree) (found []int) {
			tree.Within(box, func(i int) bool {
				found = append(found, i)
				return len(found) < 50
			})
			return found
		}
		assert.Equal(t, within(plain), within(tree), "segments in %v", box)
		assert.Equal(t, plain.Distance(q, limit), tree.Distance(q, limit), "distance from %v", q)
		assert.Equal(t, plain.Nearer(q, limit), tree.Nearer(q, limit), "anything nearer to %v than %v", q, limit)
	})
}
