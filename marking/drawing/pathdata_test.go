package drawing

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// told writes what was drawn of a path in commands that are all capital and whole.
func told(t *testing.T, data string) string {
	t.Helper()
	strokes, err := readPath(data, 1000)
	require.NoError(t, err, data)
	var all []string
	at := func(p plane.Point) string { return fmt.Sprintf("%.4g,%.4g", p.X+0, p.Y+0) }
	for _, s := range strokes {
		for i, g := range s.legs {
			if i == 0 {
				all = append(all, "M"+at(g.a))
			}
			if g.curve {
				all = append(all, "C"+at(g.b)+" "+at(g.c)+" "+at(g.d))
			} else {
				all = append(all, "L"+at(g.d))
			}
		}
		if s.closed {
			all = append(all, "Z")
		}
	}
	return strings.Join(all, " ")
}

func TestPathData(t *testing.T) {
	for _, c := range []struct{ name, data, want string }{
		// SVG 2, section 9.3.1, "General information about path data".
		{"needless letters and spaces left out", "M 100 100 L 200 200", "M100,100 L200,200"},
		{"the same in fewer letters", "M100 100L200 200", "M100,100 L200,200"},
		{"a command once for several", "M 100 200 L 200 100 -100 -200", "M100,200 L200,100 L-100,-200"},
		{"the same with two", "M 100 200 L 200 100 L -100 -200", "M100,200 L200,100 L-100,-200"},
		// Section 9.3.9, "The grammar for path data".
		{"a sign begins a number", "M 100-200h1", "M100,-200 L101,-200"},
		{"a point begins a number", "M 0.6.5h1", "M0.6,0.5 L1.6,0.5"},
		// Section 9.3.3, "The moveto commands": pairs behind an M are lines; a first m is an M.
		{"pairs behind a move", "m 1 2 3 4 5 6M 1 1 2 2", "M1,2 L4,6 L9,12 M1,1 L2,2"},
		// Section 9.3.4, "The closepath command", and figure triangle01.
		{"triangle01", "M 100 100 L 300 100 L 200 300 z", "M100,100 L300,100 L200,300 Z"},
		{"on behind a Z", "M1 1h2v2zh-1l1 1", "M1,1 L3,1 L3,3 Z M1,1 L0,1 L1,2"},
		{"a move behind a Z", "M1 1h2v2zm5 5h1z", "M1,1 L3,1 L3,3 Z M6,6 L7,6 Z"},
		{"lines across and up, repeated", "M1 1H5 6h-1-1V4 5v-1.5.5", "M1,1 L5,1 L6,1 L5,1 L4,1 L4,4 L4,5 L4,3.5 L4,4"},
		// Section 9.3.6, figure cubic01, and the table of cubic02.
		{"cubic01", "M100,200 C100,100 250,100 250,200 S400,300 400,200", "M100,200 C100,100 250,100 250,200 C250,300 400,300 400,200"},
		{"relative curves, repeated", "M10 10c1 2 3 4 5 6 1 2 3 4 5 6s1 1 2 2", "M10,10 C11,12 13,14 15,16 C16,18 18,20 20,22 C22,24 21,23 22,24"},
		{"smooth behind a line", "M10 10L20 20S30 30 40 20", "M10,10 L20,20 C20,20 30,30 40,20"},
		{"smooth behind a quadratic", "M0 0Q3 3 6 0S9 9 12 0", "M0,0 C2,2 4,2 6,0 C6,0 9,9 12,0"},
		// Section 9.3.7, figure quad01: control points at 400,50 and, mirrored, 800,550.
		{"quad01", "M200,300 Q400,50 600,300 T1000,300", "M200,300 C333.3,133.3 466.7,133.3 600,300 C733.3,466.7 866.7,466.7 1000,300"},
		{"smooth quadratics, repeated", "M0 0q3 3 6 0t6 0 6 0", "M0,0 C2,2 4,2 6,0 C8,-2 10,-2 12,0 C14,2 16,2 18,0"},
		{"smooth behind a cubic", "M0 0C1 1 2 2 3 0T6 0", "M0,0 C1,1 2,2 3,0 C3,0 4,0 6,0"},
		{"numbers run together", "M1.5.5-3e2+4E+1.5e-1-.25", "M1.5,0.5 L-300,40 L0.05,-0.25"},
		{"a point behind a number", "M1. 2.h1.", "M1,2 L2,2"},
		{"commas, tabs and lines", "M\t1,2\n3 ,4\r5\f,\f6", "M1,2 L3,4 L5,6"},
		{"arcs whose centre cannot be reckoned are lines", "M0 0A1e308 1e308 0 0 0 10 10A1e-320 1 0 0 1 20 10", "M0,0 L10,10 L20,10"},
		{"arcs without a radius are lines", "M0 0A0 5 0 0 1 10 10a5 5 0 1 1 0 0", "M0,0 L10,10 L10,10"},
		{"nothing", "", ""},
		{"moves alone", "M1 1M2 2m3 3", ""},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, told(t, c.data)) })
	}
}

// arcOf draws one arc and returns the points of its cubics, and of its middles.
func arcOf(t *testing.T, data string) plane.Path {
	t.Helper()
	strokes, err := readPath(data, 1000)
	require.NoError(t, err, data)
	var p plane.Path
	for _, g := range strokes[0].legs {
		p = append(p, g.a, g.a.Add(g.b.Mul(3)).Add(g.c.Mul(3)).Add(g.d).Mul(1.0/8), g.d)
	}
	return p
}

// Figure arcs01 of SVG 2, section 9.3.8: three quarters of a circle about 300,200, and a
// quarter of one about 275,175.
func TestArcsOfTheSpecification(t *testing.T) {
	for _, q := range arcOf(t, "M150,200 a150,150 0 1,0 150,-150") {
		assert.InDelta(t, 150, q.Distance(plane.Point{X: 300, Y: 200}), 1e-6)
		assert.False(t, q.X < 299.999 && q.Y < 199.999, "the quarter at the upper left is left out, but for %v", q)
	}
	for _, q := range arcOf(t, "M275,25 a150,150 0 0,0 -150,150") {
		assert.InDelta(t, 150, q.Distance(plane.Point{X: 275, Y: 175}), 1e-6)
		assert.True(t, q.X < 275.001 && q.Y < 175.001, "%v", q)
	}
	// The four of arcs02, from 125,75 to 225,25 on an ellipse of 100 by 50 whose axes are not
	// turned: all centres lie at 125,25 or 225,75.
	for _, c := range []struct {
		flags  string
		centre plane.Point
		length float64 // a quarter, or three, of an ellipse of 100 by 50: derived
	}{
		{"0,0", plane.Point{X: 125, Y: 25}, 121.1056},
		{"0,1", plane.Point{X: 225, Y: 75}, 121.1056},
		{"1,0", plane.Point{X: 225, Y: 75}, 363.3168},
		{"1,1", plane.Point{X: 125, Y: 25}, 363.3168},
	} {
		p := arcOf(t, "M 125,75 a100,50 0 "+c.flags+" 100,-50")
		for _, q := range p {
			off := q.Sub(c.centre)
			assert.InDelta(t, 1, math.Hypot(off.X/100, off.Y/50), 1e-8, "%s: %v", c.flags, q)
		}
		assert.InDelta(t, c.length, p.Length(), 0.2, c.flags)
	}
}

// SVG 2, section 9.5.1 and appendix B.2.5: out-of-range radii. Too small a radius is scaled up
// until the arc just reaches; a negative one counts without its sign; flags run together.
func TestArcsOutOfRange(t *testing.T) {
	for _, data := range []string{"M0 0A1 1 0 0 1 20 0", "M0 0A-1-1 0 0 1 20 0", "M0 0a10 10 30 0120 0", "M0 0a10,10,0,0,1,20,0", "M0 0a10 10 0 1120.0"} {
		if strings.HasSuffix(data, ".0") {
			data += " 0"
		}
		p := arcOf(t, data)
		for _, q := range p {
			assert.InDelta(t, 10, q.Distance(plane.Point{X: 10}), 1e-7, "%s: %v", data, q)
			assert.LessOrEqual(t, q.Y, 1e-9, "%s goes by way of rising angles, y down: %v", data, q)
		}
		assert.Equal(t, plane.Point{X: 20}, p[len(p)-1], data)
	}
}

// An arc is all on the ellipse of its radii, made larger where they are too small, that goes
// through both ends; it turns by more than a half where the longer way was asked for, and as
// the sweep says.
func TestArcsLieOnTheirEllipse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		within := func(name string, least, most float64) float64 { return rapid.Float64Range(least, most).Draw(t, name) }
		point := func(name string) plane.Point {
			return plane.Point{X: within(name+" x", -100, 100), Y: within(name+" y", -100, 100)}
		}
		from, to := point("from"), point("to")
		rx, ry, turned := within("rx", 1, 300), within("ry", 1, 300), within("turned", -400, 400)
		long := rapid.SampledFrom([]arcLength{shorterArc, longerArc}).Draw(t, "long")
		sense := rapid.SampledFrom([]arcSense{fallingAngles, risingAngles}).Draw(t, "sense")
		large, sweep := long == longerArc, sense == risingAngles
		if from.Distance(to) < 1 {
			return
		}
		sin, cos := math.Sincos(turned * math.Pi / 180)
		unit := func(p plane.Point) plane.Point { // where the ellipse is a circle of radius 1
			return plane.Point{X: (cos*p.X + sin*p.Y) / rx, Y: (cos*p.Y - sin*p.X) / ry}
		}
		a, d := unit(from), unit(to)
		radius := max(1, a.Distance(d)/2)
		rises := math.Sqrt(max(0, radius*radius-a.Sub(d).Dot(a.Sub(d))/4))
		if large == sweep {
			rises = -rises // the centre lies to the right of the way from end to end
		}
		centre := a.Toward(d, 0.5).Add(d.Sub(a).Unit().Left().Mul(rises))
		legs := arc(from, to, rx, ry, turned, long, sense)
		at, swept := from, 0.0
		for _, g := range legs {
			if g.a.Distance(at) > 1e-6 {
				t.Fatalf("torn at %v, %v", g.a, at)
			}
			at = g.d
			for _, share := range []float64{0, 0.25, 0.5, 0.75, 1} {
				if off := unit(onCubic(g, share)).Distance(centre) - radius; math.Abs(off) > 1e-6*radius {
					t.Fatalf("%g of the radius off the ellipse", off/radius)
				}
			}
			x, y := unit(g.a).Sub(centre), unit(g.d).Sub(centre)
			swept += math.Atan2(x.Cross(y), x.Dot(y))
		}
		if at != to {
			t.Fatalf("ends at %v instead of %v", at, to)
		}
		if (swept > 0) != sweep || math.Abs(swept) > math.Pi+1e-3 != large && math.Abs(math.Abs(swept)-math.Pi) > 1e-3 {
			t.Fatalf("turns by %g", swept)
		}
	})
}
