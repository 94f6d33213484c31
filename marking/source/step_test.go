package source

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// edgePoints reads the points of the one edge of a file, in inches.
func edgePoints(t require.TestingT, points string) Points {
	spec, err := Read("f.toml", []byte("[piece.front.edge.all]\npoints = "+points+"\n"), sketch.HasLetter)
	require.NoError(t, err, points)
	return spec.Pieces[0].Edges[0].Points
}

func TestSteps(t *testing.T) {
	tests := []struct {
		name, points string
		want         [][2]float64 // in inches
	}{
		{"one way", `[[1, 2], "up 10"]`, [][2]float64{{1, 2}, {1, 12}}},
		{"each way", `[[0, 0], "up 1", "right 2", "down 3", "left 4"]`, [][2]float64{{0, 0}, {0, 1}, {2, 1}, {2, -2}, {-2, -2}}},
		{"two ways at once", `[[0, 0], "right 3 1/2, down 1/4"]`, [][2]float64{{0, 0}, {3.5, -0.25}}},
		{"in the other order", `[[0, 0], "down ¼, right 3½"]`, [][2]float64{{0, 0}, {3.5, -0.25}}},
		{"with units", `[[0, 0], "left 2.54 cm, up 2\""]`, [][2]float64{{0, 0}, {-1, 2}}},
		{"pairs between", `[[0, 0], "up 1", [5, 5], "up 1"]`, [][2]float64{{0, 0}, {0, 1}, {5, 5}, {5, 6}}},
		{"close together", `[[0, 0], "up1,right2"]`, [][2]float64{{0, 0}, {2, 1}}},
		{"by nothing one way", `[[0, 0], "up 0, right 2"]`, [][2]float64{{0, 0}, {2, 0}}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			p := edgePoints(t, tt.points)
			require.Len(t, p.V, len(tt.want))
			for i, want := range tt.want {
				assert.InDelta(t, want[0]*25.4, p.V[i].X, 1e-9, "point %d", i+1)
				assert.InDelta(t, want[1]*25.4, p.V[i].Y, 1e-9, "point %d", i+1)
			}
		})
	}
}

// Steps are read wherever points are.
func TestStepsOfLinesAndGrain(t *testing.T) {
	spec, err := Read("f.toml", []byte(`unit = "mm"
[piece.front]
grain = [[1, 2], "up 50"]
[piece.front.edge.all]
points = [[0, 0],
  "up 9",
  "right 9"]
[piece.front.line.l]
points = [[3, 4], "right 5, down 6"]
`), sketch.HasLetter)
	require.NoError(t, err)
	front := spec.Pieces[0]
	assert.Equal(t, []plane.Point{{X: 1, Y: 2}, {X: 1, Y: 52}}, front.GrainPoints.V)
	assert.Equal(t, []plane.Point{{X: 3, Y: 4}, {X: 8, Y: -2}}, front.Lines[0].Points.V)
	assert.Equal(t, []int{5, 6, 7}, front.Edges[0].Points.lines, "each step has its line")
}

func TestFaultsOfSteps(t *testing.T) {
	const form = "\nhint: a step says which way and how far: \"up 10\", or \"right 3 1/2, down 1/4\""
	tests := []struct{ name, points, want string }{
		{"first", `["up 10", [0, 0]]`, `point 1: "up 10" is a step, and there is no point before it` + "\nhint: begin with a point: [[0, 0], \"up 10\"]"},
		{"mistyped", `[[0, 0], "rigth 3"]`, `point 2: "rigth 3" has the word "rigth", which is no way to go` + "\nhint: did you mean \"right\"?"},
		{"a capital", `[[0, 0], "Up 3"]`, `point 2: "Up 3" has the word "Up", which is no way to go` + "\nhint: did you mean \"up\"?"},
		{"another word", `[[0, 0], "across 3"]`, `point 2: "across 3" has the word "across", which is no way to go` + "\nhint: the words are up, down, left and right"},
		{"no length", `[[0, 0], "up"]`, `point 2: "up" does not say how far up it goes` + form},
		{"no length in the second part", `[[0, 0], "up 3, left"]`, `point 2: "up 3, left" does not say how far left it goes` + form},
		{"no word", `[[0, 0], "up 3, 1/2"]`, `point 2: "up 3, 1/2" does not say which way "1/2" goes` + form},
		{"one way twice", `[[0, 0], "up 3, up 2"]`, `point 2: "up 3, up 2" goes up twice` + "\nhint: write how far it goes in all"},
		{"there and back", `[[0, 0], "left 3, right 2"]`, `point 2: "left 3, right 2" goes left and right` + "\nhint: write what remains of the two, or make it two steps"},
		{"three parts", `[[0, 0], "left 3, up 1, right 2"]`, `point 2: "left 3, up 1, right 2" goes left and right` + "\nhint: write what remains of the two, or make it two steps"},
		{"no comma", `[[0, 0], "up 1/4 right 2"]`, `point 2: "up 1/4 right 2" has no comma between its two parts` + "\nhint: write \"up 1/4, right 2\""},
		{"and", `[[0, 0], "up 1/4 and right 2"]`, `point 2: "up 1/4 and right 2" has no comma between its two parts` + "\nhint: write \"up 1/4, right 2\""},
		{"negative", `[[0, 0], "up -3"]`, `point 2: "up -3" goes up by less than 0` + "\nhint: write \"down 3\""},
		{"word behind", `[[0, 0], "10 up"]`, `point 2: "10 up" has the word behind the length` + "\nhint: write \"up 10\""},
		{"decimal comma", `[[0, 0], "right 3,5"]`, `point 2: "right 3,5" is written with a comma` + "\nhint: write a decimal with a point: \"right 3.5\""},
		{"comma too many", `[[0, 0], "right 3,"]`, `point 2: "right 3," has nothing beside a comma` + "\nhint: take the comma away, or add a length: \"right 3, up 1\""},
		{"no fraction", `[[0, 0], "up 3/0"]`, `point 2: "3/0" has 0 under the stroke` + "\nhint: a fraction divides by the number under its stroke, as in \"3/8\""},
		{"another unit", `[[0, 0], "up 3 yd"]`, `point 2: "3 yd" is given in yards` + "\nhint: write it in inches, 36 to the yard"},
		{"beyond all cloth", `[["99 m", 0], "up 3"]`, `point 1: "99 m" is given in metres` + "\nhint: write it in centimetres, 100 to the metre"},
		{"step by step beyond all cloth", `[["9000 cm", 0], "right 1001 cm"]`, `point 2: the distance across is more than 100 m` + "\nhint: check the number and its unit"},
		{"a number alone", `[[0, 0], 3]`, `point 2 must be two numbers in brackets, but is 3` + "\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"},
		{"text without a word", `[[0, 0], "3, 4"]`, `point 2 must be two numbers in brackets, but is "3, 4"` + "\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("f.toml", []byte("[piece.front.edge.all]\npoints = "+tt.points+"\n"), sketch.HasLetter)
			require.Error(t, err)
			assert.Equal(t, "f.toml:2: piece.front.edge.all.points: "+tt.want, err.Error())
		})
	}
}

// What a step may be meant as moves every step after it.
func TestStepsInWhichASpaceMayBeMissing(t *testing.T) {
	p := edgePoints(t, `[[0, 0], "up 37/8, right 1", "right 2", "down 21/4"]`)
	assert.Nil(t, p.Others(0))
	for i, want := range []plane.Point{{X: 1, Y: 3.875}, {X: 3, Y: 3.875}} {
		require.Len(t, p.Others(i+1), 1)
		assert.Equal(t, `"3 7/8" for 37/8`, p.Others(i + 1)[0].By)
		assert.InDelta(t, 0, want.Mul(25.4).Distance(p.Others(i + 1)[0].V), 1e-9)
	}
	require.Len(t, p.Others(3), 2)
	assert.Equal(t, `"2 1/4" for 21/4`, p.Others(3)[0].By)
	assert.InDelta(t, 0, plane.Point{X: 3, Y: 4.625 - 2.25}.Mul(25.4).Distance(p.Others(3)[0].V), 1e-9)
	assert.Equal(t, `"3 7/8" for 37/8`, p.Others(3)[1].By)
	assert.InDelta(t, 0, plane.Point{X: 3, Y: 3.875 - 5.25}.Mul(25.4).Distance(p.Others(3)[1].V), 1e-9)
	many := edgePoints(t, "[[0, 0]"+strings.Repeat(`, "up 37/8"`, 100)+"]")
	assert.Len(t, many.Others(100), 16, "of many such steps some are remembered")
}

// A path told in steps is the path told in pairs.
func TestStepsComeToWherePairsAre(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		eighths := rapid.IntRange(-400, 400)
		x, y := eighths.Draw(t, "x"), eighths.Draw(t, "y")
		fraction := func(v int) string { return fmt.Sprintf("%d %d/8", v/8, v%8) }
		points := []string{fmt.Sprintf("[%g, %g]", float64(x)/8, float64(y)/8)}
		want := []plane.Point{{X: float64(x) / 8, Y: float64(y) / 8}}
		for range rapid.IntRange(1, 30).Draw(t, "steps") {
			dx, dy := eighths.Draw(t, "dx"), eighths.Draw(t, "dy")
			across, up := "right "+fraction(max(dx, -dx)), "up "+fraction(max(dy, -dy))
			if dx < 0 {
				across = "left" + across[len("right"):]
			}
			if dy < 0 {
				up = "down" + up[len("up"):]
			}
			parts := []string{across, up}
			if rapid.Bool().Draw(t, "up first") {
				parts = []string{up, across}
			}
			points = append(points, `"`+strings.Join(parts, ", ")+`"`)
			x, y = x+dx, y+dy
			want = append(want, plane.Point{X: float64(x) / 8, Y: float64(y) / 8})
		}
		got := edgePoints(t, "["+strings.Join(points, ", ")+"]").V
		require.Len(t, got, len(want))
		for i := range want {
			assert.InDelta(t, 0, want[i].Mul(25.4).Distance(got[i]), 1e-6, "point %d of %v", i+1, points)
		}
	})
}
