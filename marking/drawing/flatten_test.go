package drawing

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// onCubic is a place of a cubic by its polynomial.
func onCubic(g leg, t float64) plane.Point {
	u := 1 - t
	return g.a.Mul(u * u * u).Add(g.b.Mul(3 * u * u * t)).Add(g.c.Mul(3 * u * t * t)).Add(g.d.Mul(t * t * t))
}

// strayed is how far places of a curve lie from the line at most; what lies further along it
// is looked for near where the last one was.
func strayed(p plane.Path, g leg) float64 {
	most := 0.0
	for i := range 401 {
		q := onCubic(g, float64(i)/400)
		_, _, away := p.Nearest(q)
		most = max(most, away)
	}
	return most
}

// An outline that is drawn under any transform keeps its place within 0.01 mm: it is as far from
// the curve whose control points were moved by hand, also where that is large, or loops, or
// comes to a point.
func TestCurvesKeepTheirPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(most float64) float64 {
			return math.Round(rapid.Float64Range(-most, most).Draw(t, "n")*1000) / 1000
		}
		point := func() plane.Point { return plane.Point{X: number(100), Y: number(100)} }
		g := cubic(point(), point(), point(), point())
		turned, size, skew := number(360), 0.2+math.Abs(number(20)), number(60)
		x, y := number(1000), number(1000)
		d, err := Read("f.svg", []byte(fmt.Sprintf(
			`<svg width="100mm" height="100mm" viewBox="0 0 100 100"><g transform="translate(%g %g)rotate(%g)"><path transform="skewX(%g) scale(%g -%g)" d="M%g,%gC%g,%g %g,%g %g,%g"/></g></svg>`,
			x, y, turned, skew, size, size/2, g.a.X, g.a.Y, g.b.X, g.b.Y, g.c.X, g.c.Y, g.d.X, g.d.Y)))
		if err != nil {
			t.Fatal(err)
		}
		move := func(p plane.Point) plane.Point {
			p = plane.Point{X: p.X * size, Y: -p.Y * size / 2}
			p.X += math.Tan(skew*math.Pi/180) * p.Y
			sin, cos := math.Sincos(turned * math.Pi / 180)
			p = plane.Point{X: cos*p.X - sin*p.Y + x, Y: sin*p.X + cos*p.Y + y}
			return plane.Point{X: p.X, Y: 100 - p.Y}
		}
		want := cubic(move(g.a), move(g.b), move(g.c), move(g.d))
		if longest(want) < 0.01 {
			return
		}
		if len(d.Shapes) != 1 {
			t.Fatalf("%d shapes", len(d.Shapes))
		}
		p := d.Shapes[0].Path
		if away := strayed(p, want); away > 0.01 {
			t.Fatalf("strays by %g mm", away)
		}
		for i, q := range p {
			if i > 0 && q.Distance(p[i-1]) <= 0.001 {
				t.Fatalf("points %d and %d are the same", i-1, i)
			}
		}
	})
}

// A circle is known: all its points lie on it, all its chords within 0.01 mm, and none turns so
// much that it looks like a corner.
func TestCircles(t *testing.T) {
	for _, radius := range []float64{0.5, 5, 50, 500, 5000, 50_000} {
		d, err := Read("f.svg", []byte(fmt.Sprintf(`<svg width="1mm" height="1mm" viewBox="0 0 1 1"><circle r="%g"/></svg>`, radius)))
		require.NoError(t, err)
		p := d.Shapes[0].Path
		assert.True(t, p.Closed())
		for i := 1; i < len(p); i++ {
			assert.InDelta(t, radius, p[i].Distance(plane.Point{Y: 1}), 0.004+radius*1e-9)
			assert.InDelta(t, radius, p[i].Toward(p[i-1], 0.5).Distance(plane.Point{Y: 1}), 0.01)
		}
		assert.Empty(t, d.Shapes[0].Corners(5), "corners of a circle of %g mm", radius)
		assert.Less(t, len(p), 300+int(80*math.Sqrt(radius)), "points of a circle of %g mm", radius)
	}
}

func TestWhatIsClosed(t *testing.T) {
	for _, c := range []struct {
		name, data string
		closed     bool
	}{
		{"by a Z", "M0 0h10v10z", true},
		{"drawn to its beginning", "M0 0h10v10L0 0", true},
		{"nearly", "M0 0h10v10L0.03 0.02", true},
		{"not quite", "M0 0h10v10L0.05 0.05", false},
		{"a line there and back", "M0 0h10h-10", true},
		{"a dot", "M0 0h0.02", false},
		{"open", "M0 0h10v10", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := drawnIn(t, svg(`<path d="`+c.data+`"/>`)).Shapes[0].Path
			assert.Equal(t, c.closed, p.Closed())
		})
	}
}
