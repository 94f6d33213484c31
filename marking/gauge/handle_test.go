package gauge

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// The handle of an edge gauge is 35 to 55 mm wide and reaches 22 mm beyond the cutting line at
// least, so that a name of 9 pt stands in it; at least half of the cutting line is left beside
// it, and only its feet come nearer than 4 mm to the strip.
func TestHandlesOfTheExamples(t *testing.T) {
	handles := 0
	for _, example := range []string{"pinafore.toml", "shirt.toml", "nightgown.toml", "underwaist.toml"} {
		for _, m := range edgeGauges(made.Example(t, example)) {
			across := pathsOf(m, mark.Placement)
			if len(across) == 0 {
				continue
			}
			handles++
			line := across[0]
			wide := line[len(line)-1].X - line[0].X
			assert.GreaterOrEqual(t, wide, 35-1e-6, m.Key)
			assert.LessOrEqual(t, wide, 55+1e-6, m.Key)
			assert.LessOrEqual(t, line.Length(), 0.5*cutLength(m)+1e-6, "%s: what is left to be laid on the edge", m.Key)
			foot := math.Inf(1)
			for _, side := range m.Marks {
				if side.Role == mark.Cut && side.Path[0] == line[0] {
					foot = side.Path[1].Y
				}
			}
			assert.GreaterOrEqual(t, line.Bounds().Min.Y-foot, 22-1e-6, m.Key)
			assert.True(t, plane.NewTree(m.Outline).Holds(plane.Point{X: (line[0].X + line[len(line)-1].X) / 2, Y: foot + 1}), "%s: the handle is of card", m.Key)
		}
	}
	assert.GreaterOrEqual(t, handles, 15, "of the gauges of all examples")
}

// What is hatched lies in the card, along the whole side that is laid on the cut edge: 2 mm
// wide, or a third of a narrow strip, with strokes of one length at 45 degrees to the side,
// also where it is bent, no more than 3 mm apart.
func TestTheSideOnTheCutEdgeIsHatched(t *testing.T) {
	for allowance, wide := range map[string]float64{"3/8": 2, "1/8": 25.4 / 8 * 0.3} {
		pattern := made.Of(t, "allowance = \""+allowance+"\"\n"+sketch.Front(dipped))
		all := Of(pattern)
		require.Len(t, all, 3)
		for _, m := range all {
			checkStrokes(t, m, wide)
		}
	}
	for _, example := range []string{"pinafore.toml", "shirt.toml"} { // curved inward
		for _, m := range edgeGauges(made.Example(t, example)) {
			checkStrokes(t, m, 2)
		}
	}
}

func checkStrokes(t *testing.T, m mark.Marking, wide float64) {
	t.Helper()
	strokes := pathsOf(m, mark.Laid)
	require.NotEmpty(t, strokes, m.Key)
	assert.GreaterOrEqual(t, float64(len(strokes)), cutLength(m)/3, m.Key)
	card := plane.NewTree(m.Outline)
	var side plane.Path // that they stand on, as a line from foot to foot
	for _, stroke := range strokes {
		side = append(side, stroke[0])
	}
	for i, stroke := range strokes {
		assert.InDelta(t, wide*math.Sqrt2, stroke.Length(), 1e-6, m.Key)
		middle := stroke[0].Toward(stroke[1], 0.5)
		assert.True(t, card.Holds(middle) && card.Holds(stroke[1]), "%s: hatched outside at %v", m.Key, stroke)
		if i > 0 && i+1 < len(side) && side[i-1].Distance(side[i+1]) < 3.1 && side[i-1].Distance(side[i+1]) > 2.95 {
			along := side[i+1].Sub(side[i-1]).Unit()
			assert.InDelta(t, math.Sqrt2/2, along.Dot(stroke[1].Sub(stroke[0]).Unit()), 0.1, "%s: slant at %v", m.Key, stroke[0])
		}
	}
}

// Both ends of a gauge are named on the side that is drawn along: after the edges beside it,
// or the gauge that goes on from there.
func TestNamesOfTheEnds(t *testing.T) {
	want := map[string]string{
		"Front neck: gauge":           "centre front end; stitch line; shoulder end",
		"Front armhole: gauge 1 of 2": "to gauge 2; stitch line; side end",
		"Front armhole: gauge 2 of 2": "shoulder end; stitch line; to gauge 1",
	}
	seen := 0
	for _, m := range edgeGauges(made.Example(t, "pinafore.toml")) {
		var names []string
		for _, one := range m.Marks {
			if one.Role == mark.Cut && one.Name != "" {
				names = append(names, one.Name)
			}
		}
		if w, ok := want[m.Name]; ok {
			seen++
			assert.Equal(t, w, strings.Join(names, "; "), m.Name)
		}
	}
	assert.Len(t, want, seen)
}
