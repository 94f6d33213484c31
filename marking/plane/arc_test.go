package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestTurn(t *testing.T) {
	for _, c := range []struct {
		name     string
		from, to Point
		degrees  float64
	}{
		{"a quarter to the left", Point{1, 0}, Point{0, 5}, 90},
		{"a quarter to the right", Point{0, 5}, Point{1, 0}, -90},
		{"the shorter way", Point{-1, 0.1}, Point{-1, -0.1}, 11.42118627},
		{"none", Point{2, 2}, Point{1, 1}, 0},
		{"no way", Point{}, Point{1, 1}, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDelta(t, c.degrees*math.Pi/180, Turn(c.from, c.to), 1e-9)
			assert.InDelta(t, math.Mod(c.degrees+360, 360)*math.Pi/180, TurnLeft(c.from, c.to), 1e-9)
		})
	}
}

// An arc keeps its distance from the centre, and is as long as radius and angle say.
func TestArc(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(name string, least, most float64) float64 { return rapid.Float64Range(least, most).Draw(t, name) }
		centre := Point{number("x", -500, 500), number("y", -500, 500)}
		radius, start, turn := number("radius", 0.5, 2000), number("start", -math.Pi, math.Pi), number("turn", -2*math.Pi, 2*math.Pi)
		at := func(angle float64) Point { return centre.Add(Point{math.Cos(angle), math.Sin(angle)}.Mul(radius)) }
		arc := Arc(at(start), at(start+turn), centre, turn)
		require.Equal(t, at(start), arc[0])
		require.Equal(t, at(start+turn), arc[len(arc)-1])
		length := radius * math.Abs(turn) // derived: a circle's arc
		assert.InDelta(t, length, arc.Length(), 0.01+length*1e-3)
		for i := 1; i < len(arc); i++ {
			middle := arc[i-1].Toward(arc[i], 0.5)
			require.InDelta(t, radius, arc[i].Distance(centre), 1e-6, "a corner of the path lies on the circle")
			require.InDelta(t, radius, middle.Distance(centre), 0.0101, "between two it is no farther off")
		}
	})
}

// Between ends at unequal radii no piece leaves the curve that goes evenly from one to the
// other.
func TestArcBetweenUnequalRadii(t *testing.T) {
	for _, c := range []struct{ from, to, turn float64 }{{100, 102, 1.5}, {102, 100, -0.2}, {20, 22, 0.01}} {
		sin, cos := math.Sincos(c.turn)
		arc := Arc(Point{c.from, 0}, Point{c.to * cos, c.to * sin}, Point{}, c.turn)
		for i := 1; i < len(arc); i++ {
			for _, share := range []float64{0.25, 0.5, 0.75} {
				q := arc[i-1].Toward(arc[i], share)
				nearest := math.Inf(1)
				for k := range 20001 {
					part := float64(k) / 20000
					sin, cos := math.Sincos(c.turn * part)
					nearest = min(nearest, q.Distance(Point{cos, sin}.Mul(c.from+(c.to-c.from)*part)))
				}
				require.Less(t, nearest, 0.0102, "from %g to %g", c.from, c.to)
			}
		}
	}
}
