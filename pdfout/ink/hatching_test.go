package ink

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// The lines that hatch an area are as long together as the area is large, for the width
// from one line to the next (derived: each stands for a strip of that width).
func TestHatchingCoversItsArea(t *testing.T) {
	l := plane.Path{{}, {X: 60}, {X: 60, Y: 20}, {X: 20, Y: 20}, {X: 20, Y: 70}, {Y: 70}, {}}
	for name, area := range map[string]plane.Path{
		"a square":                {{}, {X: 40}, {X: 40, Y: 40}, {Y: 40}, {}},
		"a square of four points": {{}, {X: 40}, {X: 40, Y: 40}, {Y: 40}},
		"with a hollow":           l,
		"clockwise":               l.Reversed(),
	} {
		sum := 0.0
		for _, line := range Hatching(area) {
			sum += line.Length()
			assert.InDelta(t, line[1].X-line[0].X, line[1].Y-line[0].Y, 1e-9, "%s: rises by 45 degrees", name)
		}
		bare := area.Area()
		assert.InEpsilon(t, max(bare, -bare), sum*1.5, 0.01, name)
	}
	assert.Empty(t, Hatching(plane.Path{{}, {X: 40}, {}}), "no area")
	assert.Empty(t, Hatching(nil))
}

// No line leaves its area, and an area that is moved is hatched as it was.
func TestHatchingStaysInItsArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := rapid.Float64Range(-80, 80)
		var area plane.Path
		for range rapid.IntRange(3, 7).Draw(t, "points") {
			area = append(area, plane.Point{X: number.Draw(t, "x"), Y: number.Draw(t, "y")})
		}
		area = append(area, area[0])
		tree := plane.NewTree(area)
		step := plane.Point{X: number.Draw(t, "step x"), Y: number.Draw(t, "step y")}
		moved := Hatching(area.Moved(step))
		require.Len(t, moved, len(Hatching(area)))
		for i, line := range Hatching(area) {
			at := line[0].Toward(line[1], 0.5)
			require.True(t, tree.Holds(at) || tree.Distance(at, 1) < 1e-6, "%v", line)
			for _, end := range line {
				require.Less(t, tree.Distance(end, 1), 1e-6, "a line that ends elsewhere")
			}
			require.Less(t, moved[i][0].Distance(line[0].Add(step)), 1e-6)
		}
	})
}

// However large an area is, it has no more lines than can be drawn.
func TestHatchingOfWhatNoSheetHolds(t *testing.T) {
	for _, side := range []float64{1e4, 1e6, 1e9} {
		lines := Hatching(plane.Path{{}, {X: side}, {X: side, Y: side}, {Y: side}, {}})
		assert.LessOrEqual(t, len(lines), 10_001, "%g mm", side)
		assert.Greater(t, len(lines), 5_000, "%g mm", side)
	}
}
