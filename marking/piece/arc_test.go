package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/sketch/made"
)

// quarter is a quarter of a circular cape: its hem 12 in from the centre, its neck 3 in.
const quarter = "front: 3,0 12,0\nhem: 12,0 0,12 | centre = [0, 0]\nback: 0,12 0,3\nneck: 0,3 3,0 | centre = [0, 0]; allowance = 0.5"

// The lines of a quarter circle are as long as radius and angle say: derived.
func TestArcs(t *testing.T) {
	p := sketched(t, "0.25", quarter)
	const inch = 25.4
	hem, neck := p.Edges[p.EdgeNumber("hem")], p.Edges[p.EdgeNumber("neck")]
	assert.InDelta(t, 12*math.Pi/2*inch, hem.Path.Length(), 0.01)
	assert.InDelta(t, 3*math.Pi/2*inch, neck.Path.Length(), 0.01)
	assert.InDelta(t, (144-9)*math.Pi/4*inch*inch, p.Outline.Area(), 4)
	// A seam 1/4 in inside the two straight edges takes their share of either arc.
	assert.InDelta(t, 11.75*inch*(math.Pi/2-2*math.Asin(0.25/11.75)), hem.Sewn.Length(), 0.02)
	assert.InDelta(t, 3.5*inch*(math.Pi/2-2*math.Asin(0.25/3.5)), neck.Sewn.Length(), 0.02)
	for _, q := range neck.Sewn {
		require.InDelta(t, 3.5*inch, q.Length(), 0.012)
	}
}

// The arcs of SVG 2, 9.5.1, arcs01: a quarter of a circle of 150, and three quarters, which a
// third point tells; in millimetres here.
func TestPublishedArcs(t *testing.T) {
	for _, c := range []struct {
		name, points string
		length, area float64
	}{
		{"a quarter", "[275, 25], [125, 175]", 235.619, 17671.46},
		{"three quarters", `[275, 25], [381.066, 281.066], [125, 175]`, 706.858, 53014.38},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := made.Pattern("unit = \"mm\"\nallowance = 0\n[piece.front.edge.arc]\npoints = [" + c.points + "]\ncentre = [275, 175]\n" +
				"[piece.front.edge.rest]\npoints = [[275, 25], [275, 175], [125, 175]]\n")
			require.NoError(t, err)
			p := pattern.Pieces[0]
			assert.InDelta(t, c.length, p.Edges[p.EdgeNumber("arc")].Path.Length(), 0.02)
			assert.InDelta(t, c.area, p.Outline.Area(), 6)
		})
	}
}

// An arc meets points that are rounded to a ruler's sixteenths, and lies on its circle but for
// that; it is the same whichever way its edge runs.
func TestRoundedArcs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		radius := float64(rapid.IntRange(16, 480).Draw(t, "radius")) / 16
		sixteenth := func(v float64) float64 { return math.Round(v*16) / 16 }
		angle := rapid.Float64Range(0.3, 1.5).Draw(t, "angle")
		x, y := sixteenth(radius*math.Cos(angle)), sixteenth(radius*math.Sin(angle))
		way := []string{fmt.Sprintf("%g,0 %g,%g", radius, x, y), fmt.Sprintf("%g,%g %g,0", x, y, radius)}
		var lengths []float64
		for _, points := range way {
			p, _ := made.Front(t, "0", fmt.Sprintf("arc: %s | centre = [0, 0]\none: 0,0 %g,0\nother: 0,0 %g,%g", points, radius, x, y))
			arc := p.Edges[p.EdgeNumber("arc")].Path
			far := math.Hypot(x, y)
			for _, q := range arc {
				require.InDelta(t, (radius+far)/2*25.4, q.Length(), math.Abs(radius-far)/2*25.4+1e-6)
			}
			lengths = append(lengths, arc.Length())
		}
		assert.InDelta(t, (radius+math.Hypot(x, y))/2*math.Atan2(y, x)*25.4, lengths[0], 0.1)
		assert.InDelta(t, lengths[0], lengths[1], 1e-6)
	})
}

// A line may be an arc too, and runs on straight to an edge.
func TestArcOfALine(t *testing.T) {
	p := sketched(t, "0.25", quarter+"\n---\n\n[line.band]\npoints = [[8, 1], [1, 8]]\ncentre = [0, 0]\nfrom = \"front\"\nto = \"back\"")
	line := p.Line("band").Path
	for _, q := range line[1 : len(line)-1] {
		require.InDelta(t, math.Hypot(8, 1)*25.4, q.Length(), 0.01)
	}
	assert.InDelta(t, 0, line[0].Y, 1e-6, "it begins at the front")
	assert.InDelta(t, 0, line[len(line)-1].X, 1e-6, "and ends at the back")
}

func TestFaultsOfArcs(t *testing.T) {
	arc := func(points, centre string) string {
		return "unit = \"in\"\nallowance = 0\n[piece.front.edge.arc]\npoints = " + points + "\ncentre = " + centre + "\n[piece.front.edge.rest]\npoints = [[0, 6], [0, 0], [6, 0]]\n"
	}
	const place = "pinafore.toml:5: piece.front.edge.arc.centre: "
	for _, c := range []struct{ name, text, want string }{
		{"unequal radii", arc(`[[6, 0], [0, 6]]`, `["1/4", 0]`), place + "points 1 and 2 are 5 3/4 in and 6 in from the centre, and an arc is equally far from it all the way\nhint: is a number wrong? x comes first, then y"},
		{"rounded points of a draft that is enlarged", strings.Replace(arc(`[["6 1/16", 0], [0, 6]]`, `[0, 0]`), "[piece.front.edge.arc]", "[piece.front]\nenlarge = 4\n[piece.front.edge.arc]", 1),
			"pinafore.toml:7: piece.front.edge.arc.centre: points 1 and 2 are 24 1/4 in and 24 in from the centre at full size, and an arc is equally far from it all the way\nhint: is a number wrong? x comes first, then y"},
		{"a third point off", arc(`[[6, 0], [5, 5], [0, 6]]`, `[0, 0]`), place + "points 1 and 2 are 6 in and 7 1/16 in from the centre, and an arc is equally far from it all the way\nhint: is a number wrong? x comes first, then y"},
		{"half a circle", arc(`[[6, 0], [0, 6]]`, `[3, 3]`), place + "the arc is half a circle, and may run round either side of the centre\nhint: make it two edges, or give a third point, on the arc between the two"},
		{"the centre is an end", arc(`[[6, 0], [0, 6]]`, `[6, 0]`), place + "the centre is point 1 itself\nhint: the centre is the middle of the circle, as far from one point as from the other"},
		{"four points", arc(`[[6, 0], [5, 3], [3, 5], [0, 6]]`, `[0, 0]`), place + "has 4 points beside it\nhint: an arc has its two ends, and a third point on it where they alone do not tell which way round it runs"},
		{"beside smooth", strings.Replace(arc(`[[6, 0], [0, 6]]`, `[0, 0]`), "centre =", "smooth = true\ncentre =", 1), "pinafore.toml:5: piece.front.edge.arc.smooth: cannot stand beside \"centre\"\nhint: an arc is round by itself: leave smooth out"},
		{"a number", arc(`[[6, 0], [0, 6]]`, `3`), place + "must be two numbers in brackets, but is 3\nhint: write centre = [0, 0]: the middle of the circle"},
		{"three numbers", arc(`[[6, 0], [0, 6]]`, `[1,5, 3]`), place + "has 3 numbers, and needs two\nhint: write centre = [0, 0]: the middle of the circle"},
		{"spelt otherwise", strings.Replace(arc(`[[6, 0], [0, 6]]`, `[0, 0]`), "centre =", "center =", 1), "pinafore.toml:5: piece.front.edge.arc.center: this key is not known\nhint: did you mean \"centre\"?"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(c.text)
			require.Error(t, err)
			assert.Equal(t, c.want, err.Error())
		})
	}
	t.Run("a half circle that a third point tells", func(t *testing.T) {
		p := sketched(t, "0", "arc: 6,0 3,3 0,0 | centre = [3, 0]\nrest: 0,0 6,0")
		assert.InDelta(t, 3*math.Pi*25.4, p.Edges[p.EdgeNumber("arc")].Path.Length(), 0.02)
	})
}
