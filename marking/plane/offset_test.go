package plane

import (
	"fmt"
	"math"
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestOffset(t *testing.T) {
	for _, c := range []struct {
		name, path string
		d, run     float64
		want       string // "" where nothing is left
	}{
		{"a straight edge of two points", "0,0 10,0", 2, 0, "0,2 10,2"},
		{"its ends run out", "0,0 10,0", 2, 3, "-3,2 13,2"},
		// Its ends run out over each other: that does not touch what lies beside it.
		{"a horseshoe with its ends run out", "-2,-3 -3,0 0,3 3,0 2,-3", 1, 9, "-0.103,-11.854 -4.144,0.27 0,4.414 4.144,0.27 0.103,-11.854"},
		{"at distance nought, the path run out", "0,0 10,0 10,10", 0, 1, "-1,0 0,0 10,0 10,10 10,11"},
		{"a corner that turns toward the line", "0,0 10,0 10,10", 2, 0, "0,2 8,2 8,10"},
		{"a square neck keeps its corners", "0,10 0,0 10,0 10,10", 2, 0, "2,10 2,2 8,2 8,10"},
		{"so it does from outside", "10,10 10,0 0,0 0,10", 2, 0, "12,10 12,-2 -2,-2 -2,10"},
		// Its half angle has the sine 5/13, so the point lies 2·13/5 below.
		{"a V neck keeps its point", "5,12 0,0 -5,12", 2, 0, "6.846,11.231 0,-5.2 -6.846,11.231"},
		{"a step lower than the distance", "0,0 10,0 10,1 20,1", 3, 0, "0,3 7,3 7,4 20,4"},
		{"points on a straight line go", "0,0 3,0 5,0 10,0", 2, 0, "0,2 10,2"},
		{"a bump narrower than twice the distance is passed by", "0,0 10,0 10,-1 13,-1 13,0 23,0", 2, 0, "0,2 23,2"},
		{"so is a spike", "0,0 10,0 10.5,-9 11,0 20,0", 2, 0, "0,2 20,2"},
		{"a strip narrower than the distance", "0,0 20,0 20,3 0,3", 4, 0, ""},
		{"a point repeated", "0,0 5,0 5,0 10,0", 2, 0, "0,2 10,2"},
		{"one point", "5,5", 2, 0, ""},
		{"nothing", "", 2, 0, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			line, ok := Offset(path(t, c.path), c.d, c.run)
			require.Equal(t, c.want != "", ok, "whether anything is left: %s", text(line.Path))
			assert.Equal(t, c.want, text(line.Path))
			assert.False(t, line.Pinched)
		})
	}
}

// A tongue that the line passes by is a corner where it comes to a point, and a tab,
// too narrow for a line of its own, where it keeps its width; both are 10 long here.
func TestOffsetPassesNoTabBy(t *testing.T) {
	for _, c := range []struct {
		name, path string
		tab        bool
	}{
		{"a tab with straight sides", "0,0 10,0 10,-10 13,-10 13,0 23,0", true},
		{"a tab that narrows by a sixth", "0,0 10,0 10.25,-10 12.75,-10 13,0 23,0", true},
		{"a round end", "0,0 10,0 10,-8 10.4,-9.4 11.5,-10 12.6,-9.4 13,-8 13,0 23,0", true},
		{"a point", "0,0 10,0 11.5,-10 13,0 23,0", false},
		{"a point cut off", "0,0 10,0 11.2,-10 11.8,-10 13,0 23,0", false},
		{"a point to one side", "0,0 10,0 10,-10 13,0 23,0", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			line, ok := Offset(path(t, c.path), 2, 0)
			require.True(t, ok)
			assert.Equal(t, c.tab, line.Pinched)
			if c.tab {
				assert.InDelta(t, 2, line.At.Y, 0.01, "at its mouth")
				assert.InDelta(t, 11.5, line.At.X, 1.5, "at its mouth")
			}
		})
	}
}

// A slit too sharp to keep its point is passed round at the distance.
func TestOffsetRoundsASlit(t *testing.T) {
	slit := path(t, "0,0 10,0 10.1,9 10.2,0 20,0")
	line, ok := Offset(slit, 2, 0)
	require.True(t, ok)
	assert.InDelta(t, 11, line.Path.Bounds().Max.Y, 0.005, "it passes 2 mm above the end of the slit")
}

// A roughness much finer than the distance must not grow spikes.
func TestOffsetOfARoughEdge(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	var rough Path
	for i := range 2000 {
		rough = append(rough, Point{float64(i) * 0.05, r.Float64() * 0.05})
	}
	line, ok := Offset(rough, 9.5, 0)
	require.True(t, ok)
	// Not at its ends, where the first and the last roughness set the direction.
	b := line.Path.Between(20, line.Path.Length()-20).Bounds()
	assert.Greater(t, b.Min.Y, 9.5, "no nearer than the distance")
	assert.Less(t, b.Max.Y, 9.5+0.05+0.005, "no farther than the roughness itself")
}

// A belly behind a narrow place would be cut off: that must be told.
func TestOffsetIsPinched(t *testing.T) {
	bottle := path(t, "0,0 30,0 30,-20 10,-20 10,-60 60,-60 60,-20 34,-20 34,0 70,0")
	line, ok := Offset(bottle, 3, 0)
	require.True(t, ok)
	assert.True(t, line.Pinched)
	assert.InDelta(t, 32, line.At.X, 2, "it names the neck of the bottle")
	tongue := path(t, "0,0 30,0 30,-40 34,-40 34,0 70,0")
	line, ok = Offset(tongue, 3, 0)
	require.True(t, ok)
	assert.True(t, line.Pinched, "a tongue of cloth 4 mm wide and 40 mm long is lost")
	for name, open := range map[string]string{
		"begins": "30,0 30,-40 34,-40 34,0 70,0",
		"ends":   "0,0 30,0 30,-40 34,-40 34,0",
	} {
		line, ok = Offset(path(t, open), 3, 0)
		require.True(t, ok)
		assert.True(t, line.Pinched, "so it is where the path %s beside the tongue", name)
	}
	wide, ok := Offset(bottle, 1.5, 0)
	require.True(t, ok)
	assert.False(t, wide.Pinched, "a narrower distance passes the neck")
}

// corners is how a path turns from step to step.
type corners int

const (
	smooth   corners = iota // as a curve does
	cornered                // at any angle: there the line may lie farther off
)

// flaws says what is wrong with an offset by looking at every place of it and
// of its path, or "".
func flaws(p, line Path, d float64, turns corners) string {
	source, offset := NewTree(p), NewTree(line)
	near := 1e-6
	if turns == cornered {
		near = 0.005 // two rounded corners may meet
	}
	for i := 1; i < len(line); i++ {
		for _, share := range []float64{0, 0.5} {
			q := line[i-1].Toward(line[i], share)
			away := source.Distance(q, math.Inf(1))
			if away < d-near {
				return fmt.Sprintf("%v lies %.9f from the path, nearer than %g", q, away, d)
			}
			if turns == smooth && away > d*1.005+0.005 {
				return fmt.Sprintf("%v lies %.9f from the path, farther than %g", q, away, d)
			}
			if away > d*6+1e-6 {
				return fmt.Sprintf("%v lies %.9f from the path, beyond every corner", q, away)
			}
		}
	}
	// Whatever lies beside the path at the distance, with nothing nearer, is
	// on the line or behind a corner that the line passes outside.
	for i := 1; i < len(p); i++ {
		step := p[i].Sub(p[i-1])
		if step.Length() < 1e-6 {
			continue
		}
		q := p[i-1].Toward(p[i], 0.5).Add(step.Unit().Left().Mul(d))
		if source.Distance(q, math.Inf(1)) < d-1e-6 {
			continue
		}
		if away := offset.Distance(q, math.Inf(1)); turns == smooth && away > 0.01 {
			return fmt.Sprintf("%v keeps the distance and lies %.6f off the line", q, away)
		}
	}
	return ""
}

func TestOffsetKeepsItsDistance(t *testing.T) {
	t.Run("straight pieces", func(t *testing.T) {
		rapid.Check(t, func(t *rapid.T) {
			p := star(t, 30, 40, 100)
			d := rapid.Float64Range(0.5, 12).Draw(t, "distance")
			if line, ok := Offset(p, d, 0); ok {
				assert.Empty(t, flaws(p, line.Path, d, cornered))
			}
		})
	})
	t.Run("smooth curves", func(t *testing.T) {
		rapid.Check(t, func(t *rapid.T) {
			p := Curve(star(t, 8, 60, 75), Point{}, Point{})
			d := rapid.Float64Range(0.5, 12).Draw(t, "distance")
			if _, _, _, crosses := SelfCrossing(NewTree(p)); crosses {
				return
			}
			if line, ok := Offset(p, d, 0); ok && !line.Pinched {
				assert.Empty(t, flaws(p, line.Path, d, smooth))
			}
		})
	})
	t.Run("any path that keeps clear of itself", func(t *testing.T) {
		rapid.Check(t, func(t *rapid.T) {
			p := clearPath(t)
			d := rapid.Float64Range(0.2, 50).Draw(t, "distance")
			if line, ok := Offset(p, d, 0); ok {
				require.Empty(t, flaws(p, line.Path, d, cornered))
			}
		})
	})
}

// A path that crosses itself has no side on which the distance could be kept: its offset is a
// line of two points at least, within reach of the path, or none.
func TestOffsetOfAPathThatCrossesItself(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line, ok := Offset(anyPath(2).Draw(t, "path"), rapid.Float64Range(0.5, 50).Draw(t, "distance"), 0)
		require.Equal(t, ok, len(line.Path) > 1)
		for _, q := range line.Path {
			require.Less(t, q.Length(), 100*math.Sqrt2+6*50+1, "no farther than its farthest corner may run out")
		}
	})
}

// clearPath draws a path of any shape, with slits and tongues as they come, whose steps keep
// 0.01 mm clear of all but their neighbours: places at random, and for as long as two steps
// cross, what lies between them gone along the other way, which is shorter.
func clearPath(t *rapid.T) Path {
	tenths := rapid.IntRange(-1000, 1000)
	var p Path
	for range rapid.IntRange(2, 40).Draw(t, "points") {
		p = append(p, Point{float64(tenths.Draw(t, "x")) / 10, float64(tenths.Draw(t, "y")) / 10})
	}
	if p = withoutRepeats(p); len(p) < 2 {
		t.Skip("one place")
	}
	for tangled := true; tangled; {
		tangled = false
		for i := 0; i+1 < len(p); i++ {
			for j := i + 2; j+1 < len(p); j++ {
				straight := p[i].Distance(p[i+1]) + p[j].Distance(p[j+1])
				if swapped := p[i].Distance(p[j]) + p[i+1].Distance(p[j+1]); swapped < straight-touch && len(crossSegments(p[i], p[i+1], p[j], p[j+1])) > 0 {
					slices.Reverse(p[i+1 : j+1])
					tangled = true
				}
			}
		}
	}
	clear := func(q, a, b Point) bool {
		foot, _ := nearestOnSegment(a, b, q)
		return foot.Distance(q) > 0.01
	}
	for i := 0; i+1 < len(p); i++ {
		for j := i + 2; j < len(p); j++ {
			if !clear(p[j], p[i], p[i+1]) || !clear(p[i], p[j-1], p[j]) {
				t.Skip("it touches itself")
			}
		}
		for j := i + 2; j+1 < len(p); j++ {
			if len(crossSegments(p[i], p[i+1], p[j], p[j+1])) > 0 {
				t.Skip("it crosses itself")
			}
		}
	}
	return p
}

// star draws part of a simple outline: up to most points that go round a
// middle, between near and far from it, over up to five sixths of a turn.
func star(t *rapid.T, most int, near, far float64) Path {
	n := rapid.IntRange(3, most).Draw(t, "points")
	sweep := rapid.Float64Range(1, 5.2).Draw(t, "sweep")
	if rapid.Bool().Draw(t, "from outside") {
		sweep = -sweep
	}
	var p Path
	for i := range n {
		radius := rapid.Float64Range(near, far).Draw(t, "radius")
		sin, cos := math.Sincos(sweep * float64(i) / float64(n-1))
		p = append(p, Point{radius * cos, radius * sin})
	}
	return p
}

// wavy is an edge that bends both ways, tighter than the allowance in places.
func wavy(points int) Path {
	var p Path
	for i := range points {
		a := math.Pi * float64(i) / float64(points-1)
		sin, cos := math.Sincos(a)
		r := 150 * (1 + 0.3*math.Sin(9*a))
		p = append(p, Point{r * cos, r * sin})
	}
	return p
}

func TestOffsetOfManyPoints(t *testing.T) {
	p := wavy(20_000)
	line, ok := Offset(p, 9.5, 0)
	require.True(t, ok)
	assert.Empty(t, flaws(p, line.Path, 9.5, smooth))
}
