package piece_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// readOff returns points of a line as they are read off a grid, so far apart and to the nearest
// line of it, in mm; its ends are corners, and true.
func readOff(line plane.Path, apart, to float64) []plane.Point {
	tree := plane.NewTree(line)
	steps := math.Ceil(tree.Length() / apart)
	points := []plane.Point{line[0]}
	for k := 1.0; k < steps; k++ {
		q := tree.At(tree.Length() * k / steps)
		points = append(points, plane.Point{X: math.Round(q.X/to) * to, Y: math.Round(q.Y/to) * to})
	}
	return append(points, line[len(line)-1])
}

// wavy returns what is said of curves that bend to and fro.
func wavy(p *garment.Pattern) []string {
	var all []string
	for _, r := range p.Remarks {
		if strings.Contains(r.Text, "to and fro") {
			all = append(all, r.String())
		}
	}
	return all
}

// An armhole is a quarter of an ellipse 3 in wide and 4 in high.
func armhole(apart, to float64) []plane.Point {
	var line plane.Path
	for k := range 91 {
		sin, cos := math.Sincos(float64(k) * math.Pi / 180)
		line = append(line, plane.Point{X: 3 * (1 - sin) * 25.4, Y: (4 - 4*cos) * 25.4})
	}
	return readOff(line, apart*25.4, to*25.4)
}

// under is the text of a piece below a curve and to both sides of it; going round, the curve is
// walked from its last point to its first.
func under(curve plane.Path) string {
	first, last := curve[0], curve[len(curve)-1]
	left, right, low := last.X-3*25.4, first.X+3*25.4, -20*25.4
	rest := plane.Path{first, {X: right, Y: first.Y}, {X: right, Y: low}, {X: left, Y: low}, {X: left, Y: last.Y}, last}
	return "allowance = 0\n" + sketch.Front("rest: "+sketch.Inches(rest)+"\ncurve: "+sketch.Inches(curve)+" | smooth = true")
}

func TestCurvesThatBendToAndFro(t *testing.T) {
	moved := func(points []plane.Point, i int, x, y float64) []plane.Point {
		points[i] = points[i].Add(plane.Point{X: x * 25.4, Y: y * 25.4})
		return points
	}
	inInches := func(text string) []plane.Point {
		points, err := sketch.FromInches(text)
		require.NoError(t, err)
		return points
	}
	const said = "pinafore.toml:7: piece.front.edge.curve: the curve bends to and fro between points "
	for _, c := range []struct {
		name   string
		points []plane.Point
		smooth bool
		want   []string
	}{
		{"read to 1/16 in", armhole(0.5, 1./16), true, nil},
		{"read to 1/8 in", armhole(0.5, 1./8), true, []string{said + "8 and 12; point 10 may be misread by about 3/16 in"}},
		{"read to 1/4 in", armhole(0.5, 1./4), true, []string{said + "8 and 12; point 10 may be misread by about 3/16 in"}},
		{"a point an inch off", moved(armhole(0.5, 1./16), 5, 1, 0), true, []string{said + "4 and 8; point 6 may be misread by about 11/16 in"}},
		{"a point an inch off to the other side", moved(armhole(0.5, 1./16), 5, -1, 0), true, []string{said + "4 and 8; point 6 may be misread by about 13/16 in"}},
		{"points an inch apart, one 1/2 in off", moved(armhole(1, 1./16), 3, 0, 0.5), true, []string{said + "2 and 6; point 4 may be misread by about 1/4 in"}},
		{"from point to point", moved(armhole(0.5, 1./16), 5, 1, 0), false, nil},
		{"an S", inInches("8,6 7,6 6,5.75 5.25,5 4.75,4 4,3.25 3,3 2,3"), true, nil},
		{"too few points to tell", inInches("8,6 6,5.5 4,6.5 2,5.5 0,6"), true, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := under(c.points)
			if !c.smooth {
				text = strings.Replace(text, "smooth = true", "", 1)
			}
			assert.Equal(t, c.want, wavy(made.Of(t, text)))
		})
	}
}

// A cap is a wave from underarm to underarm, 7 to 12 in wide and 1/2 to 5 in high (common
// practice), by 4 to 24 points.
func TestCapsBendAsTheyAreMeant(t *testing.T) {
	for wide := 7.0; wide <= 12; wide++ {
		for high := 0.5; high <= 5; high += 0.5 {
			for steps := 3; steps <= 23; steps++ {
				var points plane.Path
				for k := range steps + 1 {
					share := float64(k) / float64(steps)
					points = append(points, plane.Point{X: wide * (1 - share), Y: 5 + high*(1-math.Cos(2*math.Pi*share))/2}.Mul(25.4))
				}
				text := fmt.Sprintf("hem: 0,0 %g,0\nright: %g,0 %g,5\ncap: %s | smooth = true\nleft: 0,5 0,0", wide, wide, wide, sketch.Inches(points))
				assert.Empty(t, wavy(made.Of(t, "allowance = 0\n"+sketch.Front(text))), text)
			}
		}
	}
}

// reread returns a draft with its curves read off.
func reread(spec *source.Spec, clean *garment.Pattern, apart, to float64) *source.Spec {
	again := *spec
	again.Pieces = slices.Clone(spec.Pieces)
	ps, p := &again.Pieces[0], clean.Pieces[0]
	ps.Edges = slices.Clone(ps.Edges)
	for k := range ps.Edges {
		if e := &ps.Edges[k]; e.Smooth {
			e.Points = source.Points{Value: source.Given(readOff(p.Edges[p.EdgeNumber(e.Key)].Path, apart, to))}
		}
	}
	return &again
}

// Careful reading of any draft is not remarked on, and careless reading mostly.
func TestDraftsThatAreReadOff(t *testing.T) {
	drafts := []func(*rapid.T) string{sketch.Bodice, sketch.Sleeve, sketch.Collar, sketch.Raglan, sketch.Gore}
	const careless = 4 // of which the curves are not nearly straight
	read, remarked := map[string]float64{}, map[string]float64{}
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, len(drafts)-1).Draw(t, "draft")
		text := sketch.Front(drafts[n](t))
		spec, err := source.Read("f.toml", []byte(text), sketch.HasLetter)
		require.NoError(t, err)
		clean, err := garment.Check(spec)
		if err != nil {
			t.Skip("the draft is refused as it is")
		}
		require.Empty(t, wavy(clean), text)
		try := func(as string, apart, to float64) {
			p, err := garment.Check(reread(spec, clean, apart*25.4, to*25.4))
			if err != nil {
				return // two points, or edges, have come to lie on each other
			}
			read[as]++
			if len(wavy(p)) > 0 {
				remarked[as]++
			}
		}
		try("to 1/16 in", rapid.Float64Range(0.25, 2).Draw(t, "apart"), 1./16)
		if n < careless {
			try("to 1/4 in", 0.5, 1./4)
		}
	})
	t.Logf("remarked on: %v of %v", remarked, read)
	if read["to 1/4 in"] < 10 {
		return // too few to tell
	}
	assert.LessOrEqual(t, remarked["to 1/16 in"], max(1, read["to 1/16 in"]/100))
	assert.Greater(t, remarked["to 1/4 in"], read["to 1/4 in"]/2)
}

// A point that is read a whole inch off is named, but beside an end of the curve, where it may
// be meant.
func TestThePointThatIsAnInchOff(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := armhole(rapid.Float64Range(0.375, 0.75).Draw(t, "apart"), 1./16)
		i := rapid.IntRange(2, len(points)-3).Draw(t, "point")
		across := points[i+1].Sub(points[i-1]).Unit().Left().Mul(25.4)
		if rapid.Bool().Draw(t, "inward") {
			across = across.Mul(-1)
		}
		points[i] = points[i].Add(across)
		spec, err := source.Read("f.toml", []byte(under(points)), sketch.HasLetter)
		require.NoError(t, err)
		p, err := garment.Check(spec)
		if err != nil {
			t.Skip("the curve crosses itself")
		}
		said := wavy(p)
		require.Len(t, said, 1)
		require.Contains(t, said[0], fmt.Sprintf("; point %d may be misread", i+1))
	})
}
