package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// hollow is a front with a curved neck and a curved armhole.
const hollow = `centre: 0,0 0,10
neck: 0,10 1,10.125 2.125,10.75 2.75,12 | smooth = true
shoulder: 2.75,12 5,11.375
armhole: 5,11.375 4.625,9.75 4.875,8.5 5.75,7.5 7,7.125 | smooth = true
side: 7,7.125 7.5,0
hem: 7.5,0 0,0
---

`

// ruled returns the piece of a sketch with one line, and that line.
func ruled(t require.TestingT, text, line string) (*piece.Piece, plane.Path) {
	p, _ := made.Front(t, "0.25", text+"[line.rule]\n"+line)
	return p, p.Line("rule").Path
}

// inInches writes points of a line.
func inInches(all ...plane.Point) string {
	var words []string
	for _, q := range all {
		words = append(words, fmt.Sprintf("[%.9f, %.9f]", q.X/25.4, q.Y/25.4))
	}
	return "points = [" + strings.Join(words, ", ") + "]\n"
}

// staysOn fails where a place of a line lies outside a piece by more than rounding and the
// chord of a curve: a twentieth of a millimetre, which no pen draws.
func staysOn(t require.TestingT, p *piece.Piece, line plane.Path) {
	for _, q := range sketch.Places(line, 0.2) {
		require.True(t, p.Tree.Holds(q) || p.Tree.Nearer(q, 0.05), "the line leaves the piece at %v", q)
	}
}

// A point that lies no farther outside than a ruler is read lies on the edge.
func TestPointsNearAnEdge(t *testing.T) {
	plain := sketched(t, "0.25", hollow)
	neck := plain.Edges[plain.EdgeNumber("neck")].Path
	armhole := plain.Edges[plain.EdgeNumber("armhole")].Path
	beyond := func(edge plane.Path, along, mm float64) plane.Point {
		at, way := edge.At(along)
		return at.Sub(way.Left().Mul(mm)) // the piece lies to the left
	}
	below := plane.Point{X: 25.4, Y: 100}

	t.Run("0.2 mm outside a curved neck", func(t *testing.T) {
		end := beyond(neck, neck.Length()/2, 0.2)
		p, line := ruled(t, hollow, inInches(below, end))
		require.Len(t, line, 2)
		assert.InDelta(t, 0, line[0].Distance(below), 1e-6)
		assert.True(t, p.Tree.Nearer(line[1], 1e-6), "it ends at the cutting line")
		assert.InDelta(t, 0, end.Sub(below).Unit().Cross(line[1].Sub(below)), 1e-6, "and runs where it was drawn")
		assert.Less(t, line[1].Distance(end), 0.5)
		staysOn(t, p, line)
	})
	t.Run("both ends, and a curve", func(t *testing.T) {
		p, line := ruled(t, hollow, inInches(beyond(neck, 30, 0.7), plane.Point{X: 60, Y: 180}, beyond(armhole, 40, 0.7))+"smooth = true\n")
		assert.True(t, p.Tree.Nearer(line[0], 1e-6))
		assert.True(t, p.Tree.Nearer(line[len(line)-1], 1e-6))
		staysOn(t, p, line)
	})
	t.Run("0.4 mm outside an armhole all along", func(t *testing.T) {
		var all []plane.Point
		for along := 10.0; along < armhole.Length()-10; along += 12 {
			all = append(all, beyond(armhole, along, 0.4))
		}
		p, line := ruled(t, hollow, inInches(all...)+"smooth = true\n")
		staysOn(t, p, line)
		for _, q := range line {
			assert.True(t, p.Tree.Nearer(q, 0.02), "the line runs along the edge")
		}
		assert.InDelta(t, armhole.Length()-20, line.Length(), 13)
	})
	t.Run("on the edge it stays as it is drawn", func(t *testing.T) {
		_, line := ruled(t, hollow, "points = [[0, 2], [3, 2], [3, 0]]\n")
		assert.Equal(t, "0,2 3,2 3,0", sketch.Inches(line))
	})
	t.Run("a grain line", func(t *testing.T) {
		p := sketched(t, "0.25", "grain = [[3, \"-0.5 mm\"], [3, 5]]\n"+hollow)
		for _, m := range p.AsDrawn.Marks {
			staysOn(t, p, m.Path)
		}
	})
	t.Run("over a corner, both ends 0.7 mm outside", func(t *testing.T) {
		over := inInches(plane.Point{X: -0.7, Y: 0.7}, plane.Point{X: 0.7, Y: -0.7})
		p, line := ruled(t, "grain = "+strings.TrimPrefix(over, "points = ")+hollow, over)
		assert.InDelta(t, 1.4, line.Length(), 1e-6, "it runs along both edges")
		staysOn(t, p, line)
		for _, m := range p.AsDrawn.Marks {
			staysOn(t, p, m.Path)
		}
	})
	t.Run("a point between its ends, 0.07 mm outside", func(t *testing.T) {
		p, line := ruled(t, hollow, inInches(below, plane.Point{X: -0.07, Y: 80}, plane.Point{X: 50, Y: 60}))
		staysOn(t, p, line)
		assert.InDelta(t, 0, line.Bounds().Min.X, 1e-9)
	})
	for _, c := range []struct{ name, text, line, want string }{
		{"a line and a grain line that only touch a corner", "grain = [[\"-0.5 mm\", \"-0.5 mm\"], [0, 0]]\n" + hollow, "points = [[\"-0.5 mm\", \"-0.5 mm\"], [0, 0]]\n",
			`piece.front.grain: nothing of the grain line lies on the piece between its points
hint: draw it on the piece
piece.front.line.rule: the line has no length`},
		{"0.9 mm outside", hollow, inInches(below, beyond(neck, neck.Length()/2, 0.9)),
			`piece.front.line.rule.points: point 2, (1 3/4 in, 10 1/2 in), lies outside the piece by 1/16 in
hint: is a number wrong? x comes first, then y; a line that is to end at that edge has to = "neck"`},
		{"1/8 in below the hem, and a middle point in the neck", hollow, "points = [[2, \"-1/8\"], [1, 11], [1, 5]]\n",
			`piece.front.line.rule.points: point 1, (2 in, -1/8 in), lies outside the piece by 1/8 in
hint: is a number wrong? x comes first, then y; a line that is to begin at that edge has from = "hem"
piece.front.line.rule.points: point 2, (1 in, 11 in), lies outside the piece by 13/16 in
hint: is a number wrong? x comes first, then y`},
		{"a grain line over the armhole", "grain = [[4.5, 11], [6.5, 7]]\n" + hollow, "along = \"hem\"\ndistance = 1\n",
			`piece.front.grain: the grain line leaves the piece between its points, by 13/16 in
hint: draw it where the piece has no gap`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.25\n" + sketch.Front(c.text+"[line.rule]\n"+c.line))
			assert.Equal(t, c.want, withoutLines(err))
		})
	}
}

// withoutLines is the text of a mistake without the lines of the file.
func withoutLines(err error) string {
	var lines []string
	for _, l := range strings.Split(fmt.Sprint(err), "\n") {
		if _, rest, ok := strings.Cut(l, ": "); ok && !strings.HasPrefix(l, "hint") {
			l = rest
		}
		lines = append(lines, l)
	}
	return strings.Join(lines, "\n")
}

// Wherever a line ends less than 1/32 in outside, it is drawn, and nothing of it leaves the
// piece.
func TestLinesEndOnThePiece(t *testing.T) {
	plain := sketched(t, "0.25", hollow)
	rapid.Check(t, func(t *rapid.T) {
		from := plane.Point{X: rapid.Float64Range(5, 120).Draw(t, "x"), Y: rapid.Float64Range(5, 150).Draw(t, "y")}
		along := rapid.Float64Range(0, plain.Outline.Length()).Draw(t, "along")
		at, way := plain.Outline.At(along)
		end := at.Sub(way.Left().Mul(rapid.Float64Range(0, 0.79).Draw(t, "outside")))
		if at.Distance(from) < 5 || !piece.Keeps(plain, plane.Path{from, at.Toward(from, 1/at.Distance(from))}) {
			t.Skip("the line crosses an edge before it ends")
		}
		p, line := ruled(t, hollow, inInches(from, end))
		staysOn(t, p, line)
		last := line[len(line)-1]
		require.Less(t, last.Distance(end), 4.0)
		require.True(t, p.Tree.Holds(last) || p.Tree.Nearer(last, 0.05))
	})
}

// A line runs on to the edge it is asked to run to, straight, or is cut off there.
func TestLinesRunToEdges(t *testing.T) {
	for _, c := range []struct{ name, line, want string }{
		{"from short of both", "points = [[3, 2], [3, 4]]\nfrom = \"hem\"\nto = \"shoulder\"\n", "3,0 3,11.931"},
		{"from past both", "points = [[3, -2], [3, 14]]\nfrom = \"hem\"\nto = \"shoulder\"\n", "3,0 3,11.931"},
		{"only its end", "points = [[1, 5], [2, 5]]\nto = \"side\"\n", "1,5 7.149,5"},
		{"only its beginning", "points = [[2, 5], [5, 6]]\nfrom = \"centre\"\n", "0,4.333 5,6"},
		{"the other way", "points = [[3, 4], [3, 2]]\nfrom = \"shoulder\"\nto = \"hem\"\n", "3,11.931 3,0"},
		{"from an edge to the same", "points = [[1, 1], [2, 2], [3, 1]]\nfrom = \"hem\"\nto = \"hem\"\n", "0,0 2,2 4,0"},
		{"along an edge", "points = [[0, 3], [0, 6]]\nfrom = \"hem\"\nto = \"neck\"\nkind = \"centre\"\n", "0,0 0,10"},
		{"more than one point past it", "points = [[2, 5], [4, 5], [9, 5], [12, 7]]\nto = \"side\"\n", "2,5 7.149,5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, line := ruled(t, hollow, c.line)
			assert.Equal(t, c.want, sketch.Inches(line.WithoutStraightPoints()))
			staysOn(t, p, line)
		})
	}
	p, line := ruled(t, hollow, "points = [[1, 3], [3, \"3 1/2\"], [5, 3]]\nsmooth = true\nfrom = \"centre\"\nto = \"side\"\n")
	assert.InDelta(t, 0, line[0].X, 1e-6, "a curve goes on straight")
	assert.True(t, plane.NewTree(p.Edges[p.EdgeNumber("side")].Path).Nearer(line[len(line)-1], 1e-6))

	for _, c := range []struct{ name, line, want string }{
		{"no such edge", "points = [[3, 2], [3, 4]]\nto = \"nekc\"\n",
			`piece.front.line.rule.to: there is no edge "nekc" in this piece
hint: did you mean "neck"?`},
		{"another edge comes first", "points = [[3, 2], [3, 4]]\nto = \"neck\"\n",
			`piece.front.line.rule.to: the line does not come to "neck": it comes to "shoulder" first, at (3 in, 11 15/16 in), 1/4 in from "neck"
hint: name the edge that it is to end at, or move its points`},
		{"and at the beginning", "points = [[3, 2], [4, 2]]\nfrom = \"hem\"\nto = \"side\"\n",
			`piece.front.line.rule.from: the line does not come to "hem": it comes to "centre" first, at (0 in, 2 in), 2 in from "hem"
hint: name the edge that it is to end at, or move its points`},
		{"nothing of it on the piece", "points = [[10, 2], [10, 4]]\nfrom = \"hem\"\nto = \"neck\"\n",
			`piece.front.line.rule: nothing of the line lies on the piece between its points
hint: a line has two points on the piece, or one on each side of it`},
		{"over the armhole", "points = [[4.8, 11], [6.5, 7]]\nto = \"hem\"\n",
			`piece.front.line.rule: the line leaves the piece between its points, by 15/16 in
hint: let it run round the gap, or make it two lines`},
		{"the other end outside", "points = [[3, -1], [3, 4]]\nto = \"shoulder\"\n",
			`piece.front.line.rule.points: point 1, (3 in, -1 in), lies outside the piece by 1 in
hint: is a number wrong? x comes first, then y; a line that is to begin at that edge has from = "hem"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.25\n" + sketch.Front(hollow+"[line.rule]\n"+c.line))
			assert.Equal(t, c.want, withoutLines(err))
		})
	}
}

// Of all edges, a line that is asked to run to one comes to the one it meets first.
func TestLinesComeToOneEdge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := plane.Point{X: rapid.Float64Range(5, 120).Draw(t, "x"), Y: rapid.Float64Range(5, 150).Draw(t, "y")}
		sin, cos := math.Sincos(rapid.Float64Range(-3.1, 3.1).Draw(t, "way"))
		way := plane.Point{X: cos, Y: sin}
		came := 0
		for _, edge := range []string{"centre", "neck", "shoulder", "armhole", "side", "hem"} {
			text := sketch.Front(hollow + "[line.rule]\n" + inInches(from, from.Add(way.Mul(3))) + "to = \"" + edge + "\"\n")
			pattern, err := made.Pattern("allowance = 0.25\n" + text)
			if err != nil {
				require.ErrorContains(t, err, "does not come to")
				continue
			}
			came++
			p := &pattern.Pieces[0]
			line := p.Line("rule").Path
			last := line[len(line)-1]
			require.True(t, plane.NewTree(p.Edges[p.EdgeNumber(edge)].Path).Nearer(last, 0.05))
			require.InDelta(t, 0, way.Cross(last.Sub(from)), 1e-5, "it runs straight on")
			staysOn(t, p, line)
		}
		require.GreaterOrEqual(t, came, 1)
		require.LessOrEqual(t, came, 2, "two where it comes to their corner")
	})
}
