package drawing

import (
	"fmt"
	"math"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// cornersIn gives the corners of the one line of a drawing: where they are, and by how much the
// line turns there.
func cornersIn(t *testing.T, data string, degrees float64) string {
	t.Helper()
	d := drawnIn(t, svg(`<path d="`+data+`"/>`))
	require.Len(t, d.Shapes, 1)
	var all []string
	for _, c := range d.Shapes[0].Corners(degrees) {
		all = append(all, fmt.Sprintf("%.0f,%.0f by %.0f", c.Place.X+0, 300-c.Place.Y, c.Degrees))
	}
	return strings.Join(all, "; ")
}

func TestCorners(t *testing.T) {
	for _, c := range []struct {
		name, data string
		degrees    float64
		want       string
	}{
		{"a square", "M0 0h10v10h-10z", 20, "0,0 by 90; 10,0 by 90; 10,10 by 90; 0,10 by 90"},
		{"a square that begins in the middle of a side", "M5 0h5v10h-10v-10z", 20, "10,0 by 90; 10,10 by 90; 0,10 by 90; 0,0 by 90"},
		{"an open line", "M0 0h10v10h-10", 20, "10,0 by 90; 10,10 by 90"},
		{"straight on", "M0 0h10h10v10h-20z", 20, "0,0 by 90; 20,0 by 90; 20,10 by 90; 0,10 by 90"},
		{"just enough", "M0 0h100l100 36.5", 20, "100,0 by 20"},
		{"not enough", "M0 0h100l100 36", 20, ""},
		{"two curves by their tangents", "M0 0C0 30 70 50 100 50C100 20 70 0 40 0", 20, "100,50 by 90"},
		{"a smooth join", "M0 0C0 30 70 50 100 50S170 70 190 90", 5, ""},
		{"a curve into a line", "M0 0C0 30 70 50 100 50H150", 5, ""},
		{"a tight round", "M0 0H50A3 3 0 0 1 53 3V50", 5, ""},
		{"a curve with its handles drawn in", "M0 0C0 0 70 50 100 50C100 50 100 20 70 20", 20, "100,50 by 90"},
		{"a scrap of a line at a corner", "M0 0H50v0.02l0.02 0V50H0z", 20, "0,0 by 90; 50,0 by 90; 50,50 by 90; 0,50 by 90"},
		{"closed by a scrap", "M0 0H50V50H0V0.01z", 20, "0,0 by 90; 50,0 by 90; 50,50 by 90; 0,50 by 90"},
		{"a short step between long lines", "M0 0H50v3H100", 20, "50,0 by 90; 50,3 by 90"},
		{"back the way it came", "M0 0H50H20", 20, "50,0 by 180"},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, cornersIn(t, c.data, c.degrees)) })
	}
}

// traced is a line in steps of 1 mm, each point of which strays by up to 0.1 mm either way.
func traced(p plane.Path, seed int64) string {
	r := rand.New(rand.NewSource(seed))
	var all []string
	long := p.Length()
	for along := 0.0; along < long-0.5; along++ {
		q, _ := p.At(along)
		all = append(all, fmt.Sprintf("%.3f,%.3f", q.X+r.Float64()*0.2-0.1, 300-q.Y+r.Float64()*0.2-0.1))
	}
	return "M" + strings.Join(all, " ") + "z"
}

// The front of a bodice, its armhole a curve of 40 mm radius and its neck one of 25, has six
// corners, however it was traced: each within two steps of where it is.
func TestCornersOfWhatWasTraced(t *testing.T) {
	front := drawnIn(t, svg(`<path d="M20 250V90A25 25 0 0 0 45 65L95 75A40 40 0 0 0 125 115V250z"/>`)).Shapes[0]
	want := front.ordered(20)
	require.Len(t, want, 6, "corners of the front as it was drawn")
	for seed := range int64(40) {
		d := drawnIn(t, svg(`<path d="`+traced(front.Path, seed)+`"/>`))
		got := d.Shapes[0].ordered(20)
		require.Len(t, got, len(want), "corners of tracing %d: %v", seed, got)
		for i, c := range got {
			assert.InDelta(t, 0, c.Place.Distance(want[i].Place), 2, "tracing %d, corner %d", seed, i)
			assert.InDelta(t, want[i].Degrees, c.Degrees, 20, "tracing %d, corner %d", seed, i)
		}
	}
}

// Curves that were flattened before, in steps of any length, have no corners inside.
func TestCornersOfFlattenedCurves(t *testing.T) {
	for _, step := range []float64{0.2, 0.5, 1, 2, 3, 5} {
		var points []string
		n := int(math.Ceil(2 * math.Pi * 30 / step))
		for i := range n {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			points = append(points, fmt.Sprintf("%.3f,%.3f", 100+30*cos, 100+30*sin))
		}
		assert.Empty(t, cornersIn(t, "M"+strings.Join(points, " ")+"z", 20), "steps of %g mm", step)
	}
}

// The same corners are found whichever way and from wherever an outline was drawn, and in the
// same order.
func TestOrderedCorners(t *testing.T) {
	want := []plane.Point{{X: 10, Y: 210}, {X: 12, Y: 290}, {X: 60, Y: 280}, {X: 50, Y: 205}}
	for _, data := range []string{
		"M10 90L12 10 60 20 50 95z", "M50 95L10 90 12 10 60 20z", "M10 90L50 95 60 20 12 10z", "M60 20L12 10 10 90 50 95 60 20", "M11 50L12 10 60 20 50 95 10 90z",
	} {
		var got []plane.Point
		for _, c := range drawnIn(t, svg(`<path d="`+data+`"/>`)).Shapes[0].ordered(20) {
			got = append(got, plane.Point{X: math.Round(c.Place.X), Y: math.Round(c.Place.Y)})
		}
		assert.Equal(t, want, got, data)
	}
	// Of two that are equally near, the lower one.
	diamond := drawnIn(t, svg(`<path d="M0 50L50 0 100 50 50 100z"/>`)).Shapes[0].ordered(20)
	assert.Equal(t, "(50, 200)", fmt.Sprintf("(%.0f, %.0f)", diamond[0].Place.X, diamond[0].Place.Y))
}
