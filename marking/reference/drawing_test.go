package reference

import (
	"fmt"
	"math"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/tdewolff/canvas"

	"tuckmark/marking/drawing"
	"tuckmark/marking/plane"
)

const (
	// drawnApart is how far, in mm, ours may lie from where canvas has the line: the 0.01 mm
	// within which a drawing is followed, and what canvas is off by, which is more than it is
	// told where a curve turns sharply.
	drawnApart = 0.01 + 5*canvasFlat

	// canvasFlat is how closely canvas is told to follow a curve, in the units of the path.
	canvasFlat = 0.0002

	// canvasEllipses is how far canvas may follow an ellipse, other than a circle, from where
	// it is, as a share of its longer radius; its own points miss the equation by that. Ours
	// are held against the equation in marking/drawing.
	canvasEllipses = 1.5e-3
)

// ours reads the data of one path, in mm, y up from the top.
func ours(t *testing.T, data, transform string) []plane.Path {
	t.Helper()
	d, err := drawing.Read("f.svg", []byte(`<svg width="1mm" height="1mm" viewBox="0 0 1 1"><path transform="`+transform+`" d="`+data+`"/></svg>`))
	require.NoError(t, err, data)
	var all []plane.Path
	for _, s := range d.Shapes {
		all = append(all, s.Path.Moved(plane.Point{Y: -1}))
	}
	return all
}

// theirs follows the same path by canvas, and then moves its points.
func theirs(t *testing.T, data string, m canvas.Matrix) []plane.Path {
	t.Helper()
	p, err := canvas.ParseSVGPath(data)
	require.NoError(t, err, data)
	var all []plane.Path
	for _, sub := range p.Flatten(canvasFlat).Split() {
		var line plane.Path
		for _, q := range sub.Coords() {
			q = m.Dot(q)
			if at := (plane.Point{X: q.X, Y: -q.Y}); len(line) == 0 || at != line[len(line)-1] {
				line = append(line, at)
			}
		}
		if len(line) > 1 {
			all = append(all, line)
		}
	}
	return all
}

// apart is how far points of one path lie from another at most; what is farther than looked
// for is without end.
func apart(a, b plane.Path) float64 {
	const looked = 0.5 // mm
	most, tree := 0.0, plane.NewTree(b)
	for _, q := range a {
		best := math.Inf(1)
		tree.Within(plane.Box{Min: q, Max: q}.Grown(looked), func(i int) bool {
			_, _, away := plane.Path{b[i], b[i+1]}.Nearest(q)
			best = min(best, away)
			return true
		})
		most = max(most, best)
	}
	return most
}

// same holds two readings of a path against each other, both ways.
func same(t *testing.T, what string, got, want []plane.Path, allowed float64) {
	t.Helper()
	require.Len(t, got, len(want), what)
	for i := range want {
		assert.InDelta(t, 0, max(apart(got[i], want[i]), apart(want[i], got[i])), allowed, "%s, line %d", what, i+1)
		assert.InDelta(t, 0, got[i][0].Distance(want[i][0]), allowed, "%s, where line %d begins", what, i+1)
		assert.InDelta(t, 0, got[i][len(got[i])-1].Distance(want[i][len(want[i])-1]), allowed, "%s, where line %d ends", what, i+1)
	}
}

// The examples of SVG 2, chapter 9, by their names, and of section 9.3.1 and 9.3.9; and the
// longest radius of an ellipse in them.
var examples = []struct {
	name, data string
	ellipse    float64
}{
	{"9.3.1, lines", "M 100 100 L 200 200", 0},
	{"9.3.1, in fewer letters", "M100 100L200 200", 0},
	{"9.3.1, repeated", "M 100 200 L 200 100 -100 -200", 0},
	{"9.3.4, triangle01", "M 100 100 L 300 100 L 200 300 z", 0},
	{"9.3.6, cubic01", "M100,200 C100,100 250,100 250,200 S400,300 400,200", 0},
	{"9.3.6, cubic02", "M100,200 C100,100 400,100 400,200", 0},
	{"9.3.6, cubic02, 2", "M100,500 C25,400 475,400 400,500", 0},
	{"9.3.6, cubic02, 3", "M100,800 C175,700 325,700 400,800", 0},
	{"9.3.6, cubic02, 4", "M600,200 C675,100 975,100 900,200", 0},
	{"9.3.6, cubic02, 5", "M600,500 C600,350 900,650 900,500", 0},
	{"9.3.6, cubic02, 6", "M600,800 C625,700 725,700 750,800 S875,900 900,800", 0},
	{"9.3.7, quad01", "M200,300 Q400,50 600,300 T1000,300", 0},
	{"9.3.8, arcs01", "M300,200 h-150 a150,150 0 1,0 150,-150 z", 0},
	{"9.3.8, arcs01, the other part", "M275,175 v-150 a150,150 0 0,0 -150,150 z", 0},
	{"9.3.8, arcs01, the line", "M600,350 l 50,-25 a25,25 -30 0,1 50,-25 l 50,-25 a25,50 -30 0,1 50,-25 l 50,-25 a25,75 -30 0,1 50,-25 l 50,-25 a25,100 -30 0,1 50,-25 l 50,-25", 100},
	{"9.3.8, arcs02", "M 125,75 a100,50 0 0,0 100,50", 100},
	{"9.3.8, arcs02, the other way", "M 125,75 a100,50 0 0,1 100,50", 100},
	{"9.3.8, arcs02, the longer way", "M 125,75 a100,50 0 1,0 100,50", 100},
	{"9.3.8, arcs02, the longer other way", "M 125,75 a100,50 0 1,1 100,50", 100},
	{"9.3.9, signs and points", "M 100-200 L 0.6.5", 0},
}

func TestPathsOfTheSpecification(t *testing.T) {
	for _, e := range examples {
		t.Run(e.name, func(t *testing.T) {
			same(t, e.data, ours(t, e.data, ""), theirs(t, e.data, canvas.Identity), drawnApart+e.ellipse*canvasEllipses)
		})
	}
}

// randomPath writes a path of all commands, big and small, with numbers run together where
// they can be.
func randomPath(r *rand.Rand) string {
	var b strings.Builder
	number := func(most float64) {
		n := fmt.Sprintf("%.3g", (r.Float64()*2-1)*most)
		if r.Intn(2) == 0 {
			n = strings.Replace(n, "0.", ".", 1)
		}
		if n[0] != '-' {
			b.WriteByte(" ,"[r.Intn(2)])
		}
		b.WriteString(n)
	}
	fmt.Fprintf(&b, "M%d %d", r.Intn(100), r.Intn(100))
	last := byte('M')
	for range 3 + r.Intn(12) {
		command := "LlHhVvCcSsQqTtAaZzMm"[r.Intn(20)]
		across := strings.IndexByte("HhVv", command) >= 0
		if across && strings.IndexByte("HhVv", last) >= 0 || command|0x20 == 'z' && strings.IndexByte("MmZz", last) >= 0 {
			continue // canvas draws a way there and back as what is left of it, and closes nothing
		}
		if command|0x20 == 't' && strings.IndexByte("QqTt", last) < 0 {
			continue // a line, which may go there and back
		}
		last = command
		count := map[byte]int{'L': 2, 'H': 1, 'V': 1, 'C': 6, 'S': 4, 'Q': 4, 'T': 2, 'M': 2}[command&^0x20]
		b.WriteByte(command)
		for k := range 2 {
			if k > 0 && (across || r.Intn(2) == 0) {
				break
			}
			if command|0x20 == 'a' {
				if k > 0 {
					b.WriteByte(' ')
				}
				radius := 5 + r.Intn(60)
				fmt.Fprintf(&b, "%d %d %d %d%d%d %d", radius, radius, r.Intn(360)-180, r.Intn(2), r.Intn(2), r.Intn(100), r.Intn(100))
			}
			for i := range count {
				if i == 0 && k == 0 {
					fmt.Fprintf(&b, "%d", r.Intn(100)-50)
				} else {
					number(60)
				}
			}
		}
	}
	return b.String()
}

// Paths as nobody draws them, moved, turned and drawn out.
func TestRandomPaths(t *testing.T) {
	r := rand.New(rand.NewSource(1)) // others may have a cusp, which canvas passes by
	for i := range 1000 {
		data := randomPath(r)
		angle, sx, sy, x, y := float64(r.Intn(360)), 0.2+3*r.Float64(), 0.2+3*r.Float64(), float64(r.Intn(100)), float64(r.Intn(100))
		transform := fmt.Sprintf("translate(%g,%g) rotate(%g)scale(%g %g)", x, y, angle, sx, sy)
		m := canvas.Identity.Translate(x, y).Rotate(angle).Scale(sx, sy)
		same(t, fmt.Sprintf("path %d, %s: %s", i, transform, data), ours(t, data, transform), theirs(t, data, m), drawnApart)
		if t.Failed() {
			break
		}
	}
}

// The plain shapes, which canvas draws by functions of its own.
func TestPlainShapes(t *testing.T) {
	for _, c := range []struct {
		name, shape string
		want        *canvas.Path
	}{
		{"rect", `<rect x="10" y="20" width="50" height="30"/>`, canvas.Rectangle(50, 30).Translate(10, 20)},
		{"a round rect", `<rect x="10" y="20" width="50" height="30" rx="7"/>`, canvas.RoundedRectangle(50, 30, 7).Translate(10, 20)},
		{"circle", `<circle cx="30" cy="40" r="25"/>`, canvas.Circle(25).Translate(30, 40)},
		{"ellipse", `<ellipse cx="30" cy="40" rx="25" ry="10"/>`, canvas.Ellipse(25, 10).Translate(30, 40)},
	} {
		t.Run(c.name, func(t *testing.T) {
			d, err := drawing.Read("f.svg", []byte(`<svg width="100mm" height="100mm" viewBox="0 0 100 100"><g transform="matrix(1 0 0 -1 0 100)">`+c.shape+`</g></svg>`))
			require.NoError(t, err)
			require.Len(t, d.Shapes, 1)
			var want plane.Path
			for _, q := range c.want.Flatten(canvasFlat).Coords() {
				want = append(want, plane.Point{X: q.X, Y: q.Y})
			}
			got := d.Shapes[0].Path
			assert.InDelta(t, 0, max(apart(got, want), apart(want, got)), drawnApart+25*canvasEllipses)
			assert.InDelta(t, math.Abs(want.Area()), math.Abs(got.Area()), 0.02*got.Length())
		})
	}
}
