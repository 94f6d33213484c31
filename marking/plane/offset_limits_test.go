package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Tests of where an offset changes its ways. Each holds a path a little to either side
// of a limit; what is expected follows from the geometry.

// farthest returns how far the points of the line beside a path lie from it at most.
func farthest(t *testing.T, p Path, d float64) float64 {
	t.Helper()
	line, ok := Offset(p, d, 0)
	require.True(t, ok, "something is left beside %s", text(p))
	source, most := NewTree(p), 0.0
	for _, q := range line.Path {
		most = math.Max(most, source.Distance(q, math.Inf(1)))
	}
	return most
}

// turning returns two long sides that meet in a corner which turns right by so many
// degrees.
func turning(degrees float64) Path {
	sin, cos := math.Sincos(-degrees * math.Pi / 180)
	return Path{{-500, 0}, {0, 0}, {500 * cos, 500 * sin}}
}

// A corner whose sharp point would lie farther out than six distances is round.
func TestOffsetKeepsCornersSharpUpToALimit(t *testing.T) {
	for distances, sharp := range map[float64]bool{1.5: true, 5.9: true, 6.1: false, 12: false} {
		// The point lies d / cos(turn/2) out.
		turn := 2 * math.Acos(1/distances) * 180 / math.Pi
		most := farthest(t, turning(turn), 10)
		if sharp {
			assert.InDelta(t, 10*distances, most, 1e-6, "a point %g distances out", distances)
		} else {
			assert.InDelta(t, 10.0025, most, 0.0026, "a corner with its point %g distances out is round", distances)
		}
	}
}

// The arc round a corner is as fine as it must be to lie 0.005 mm beside the true one,
// and no finer.
func TestOffsetArcsAreRoundEnough(t *testing.T) {
	for _, d := range []float64{1, 10, 100} {
		line, ok := Offset(turning(179), d, 0)
		require.True(t, ok)
		most := farthest(t, turning(179), d)
		assert.LessOrEqual(t, most, d+0.005+1e-9, "beside an arc of %g", d)
		// A side that touches an arc of n sides lies (179°/n)²·d/8 outside it.
		turn := 179 * math.Pi / 180
		sides := math.Ceil(turn / math.Sqrt(8*0.005/d))
		assert.InDelta(t, sides, float64(len(line.Path)-3), 1, "sides of an arc of %g", d)
	}
}

// A step down of two gentle turns close together is no corner; what lies beside its
// first point is sharp up to 4 degrees and round beyond.
func TestOffsetTakesGentleTurnsAsTheyAre(t *testing.T) {
	step := func(degrees float64) Path {
		sin, cos := math.Sincos(-degrees * math.Pi / 180)
		return Path{{-50, 0}, {0, 0}, {0.1 * cos, 0.1 * sin}, {50, 0.1 * sin}}
	}
	sharp := 10 / math.Cos(1.95*math.Pi/180)
	assert.InDelta(t, sharp, farthest(t, step(3.9), 10), 1e-5, "a turn of 3.9 degrees keeps its point")
	assert.Less(t, farthest(t, step(4.1), 10), 10.005, "a turn of 4.1 degrees is rounded")
}

// A step down of 60 degrees is a corner when it is longer than an eighth of the
// distance: a quarter of the distance away half of its turn is left.
func TestOffsetTellsCornersFromRoughness(t *testing.T) {
	step := func(length float64) Path {
		sin, cos := math.Sincos(-math.Pi / 3)
		return Path{{-50, 0}, {0, 0}, {length * cos, length * sin}, {50, length * sin}}
	}
	assert.InDelta(t, 8+1.05*math.Sin(math.Pi/3), farthest(t, step(1.05), 8), 1e-6, "a step of 1.05 mm beside a line at 8 mm")
	assert.Less(t, farthest(t, step(0.95), 8), 8.0051, "a step of 0.95 mm")
}

// Beside a zigzag the line is straight, also beside its first and its last tooth, where
// there is no path behind the tooth to tell it from a corner.
func TestOffsetOfAZigzagKeepsNoPoint(t *testing.T) {
	for _, apart := range []float64{0.05, 0.2, 0.5, 1} {
		var p Path
		for i := 0.0; i*apart < 60; i++ {
			p = append(p, Point{i * apart, math.Mod(i, 2)})
		}
		assert.Less(t, farthest(t, p, 9.5), 9.5051, "teeth %g mm apart", apart)
	}
}

// The path comes back and ends above its own beginning. Where the end comes nearer to
// the line than the distance, by more than rounding, the line begins beyond it.
func TestOffsetKeepsItsDistanceToRounding(t *testing.T) {
	for missing, begin := range map[float64]string{-1e-4: "0,10", 5e-7: "0,10", 1e-4: "30.045,10", 1: "34.359,10"} {
		line, ok := Offset(Path{{0, 0}, {60, 0}, {60, 90}, {30, 90}, {30, 20 - missing}}, 10, 0)
		require.True(t, ok)
		// A chord that lies h within a circle of 10 is 2·√(20h - h²) long.
		assert.Equal(t, begin, text(line.Path[:1]), "where the line begins when the end comes %g too near", missing)
	}
}

// What lies behind a neck too narrow for the line is a region of its own when the line
// round it would be longer than twice the distance.
func TestOffsetTellsIslandsFromCrumbs(t *testing.T) {
	// A chamber as wide as high, behind a neck that is next to nothing at the bottom of a
	// valley: the line at 4 round it goes round a square of 8 mm less.
	chamber := func(size float64) Path {
		left, right, bottom := -size/2, size/2, -1-size
		return Path{{-60, 30}, {-0.05, 0}, {-0.05, -1}, {left, -1}, {left, bottom}, {right, bottom}, {right, -1}, {0.05, -1}, {0.05, 0}, {60, 30}}
	}
	for around, pinched := range map[float64]bool{1: false, 1.5: false, 2.5: true, 3: true} {
		line, ok := Offset(chamber(8+around*4/4), 4, 0) // four sides of it
		require.True(t, ok)
		assert.Equal(t, pinched, line.Pinched, "a chamber with a line %g distances long", around)
	}
}

// A tongue without a line of its own may reach as far behind the line as the slit of
// a corner with the sharpest point does, and a fifth farther: 7.2 distances.
func TestOffsetPassesByShortTonguesOnly(t *testing.T) {
	// Crowded or not makes no difference.
	for name, points := range map[string]int{"plain": 1, "of many points": 3_000} {
		for reach, pinched := range map[float64]bool{6.5: false, 7.1: false, 7.3: true, 10: true} {
			// Its mouth is 0.2 mm wide, the line passes a distance above.
			bottom := 4 - reach*4
			p := Path{{-60, 0}}
			for k := range points {
				p = append(p, Point{0, bottom * float64(k) / float64(points)})
			}
			p = append(p, Point{0.1, bottom})
			for k := range points {
				p = append(p, Point{0.2, bottom * float64(points-1-k) / float64(points)})
			}
			line, ok := Offset(append(p, Point{60, 0}), 4, 0)
			require.True(t, ok)
			assert.Equal(t, pinched, line.Pinched, "a tongue %s that reaches %g distances behind the line", name, reach)
			assert.Equal(t, "-60,4 60,4", text(line.Path), "the line passes a tongue %s", name)
		}
	}
}
