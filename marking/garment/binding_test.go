package garment_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Squares are given in halves: of an inch, and of a centimetre also where a file is in
// mm. 500 mm of hem and 17 mm of a join (2 x 6 x 1.414 = 16.97), 24 mm wide:
// d - 48 >= 517, s >= 399.5.
func TestSquaresOfAFileInMillimetres(t *testing.T) {
	p, err := made.Pattern("unit = \"mm\"\nallowance = 0\n" + sketch.Front(sketch.Skirt(250)) + "\n[binding.hem]\nalong = \"front.hem\"\nwidth = 6\n")
	require.NoError(t, err)
	b := p.Bindings[0]
	assert.Equal(t, "517 mm", b.Length.String())
	assert.Equal(t, "400 mm", b.Square.String())
}

func TestBindingsThatCannotBe(t *testing.T) {
	for _, c := range []struct{ name, beside, want string }{
		// d = 8 x 1.414 = 11.31: 9.31, then 9.31 - 0.707, 7.31 - 0.707, ...; a strip 1 in
		// wide, and 400 in of it
		{"a square too small", "width = \"1/4\"\nsquare = 8", "pinafore.toml:21: binding.r.square: a square of 8 in does not give the 400 3/4 in of bias strip, 1 in wide, that this binding takes\nhint: take a larger square"},
		{"a square smaller than the strip", "width = 1\nsquare = 2", "pinafore.toml:21: binding.r.square: a square of 2 in does not give the 400 3/4 in of bias strip, 4 in wide, that this binding takes\nhint: take a larger square"},
		{"a square wider than the cloth", "width = \"1/4\"\nsquare = 45\n[cloth]\nwidth = 44", "pinafore.toml:21: binding.r.square: a square of 45 in is wider than the cloth, which is 44 in between the selvages\nhint: take a smaller square, or leave it out"},
		{"wider than any cloth", "width = 20", "pinafore.toml:18: binding.r: the binding takes 400 3/4 in of bias strip, 80 in wide: more than is cut from one cloth\nhint: see whether its width and the lengths of its edges are in the units meant, or divide it"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(sketch.Skirt(200)) + "\n[binding.r]\nalong = \"front.hem\"\n" + c.beside + "\n")
			assert.EqualError(t, err, c.want)
		})
	}
}

// bias draws the cuts of a square of bias strips, and returns how long each strip is
// along its shorter side, those to one side of the diagonal and those to the other in
// turn, in the unit of the square.
func bias(side, width float64) []float64 {
	square := plane.NewTree(plane.Path{{}, {X: side}, {X: side, Y: side}, {Y: side}, {}})
	var strips []float64
	for k := 1; ; k++ {
		// A step of the width, square to the diagonal, is sqrt 2 as long along a side.
		off := float64(k) * width * math.Sqrt2
		var ends []plane.Point
		for _, crossing := range plane.Crossings(plane.NewTree(plane.Path{{X: off - side, Y: -side}, {X: off + 2*side, Y: 2 * side}}), square) {
			ends = append(ends, crossing.At)
		}
		if off >= side || len(ends) < 2 {
			return strips
		}
		long := 0.0
		for _, a := range ends {
			for _, b := range ends {
				long = max(long, a.Distance(b))
			}
		}
		strips = append(strips, long, long)
	}
}

// endToEnd returns how long n strips are, joined along a thread: each join takes sqrt 2
// times two allowances.
func endToEnd(strips []float64, n int, allowance float64) float64 {
	sum := -2 * allowance * math.Sqrt2 * float64(n-1)
	for _, s := range strips[:n] {
		sum += s
	}
	return sum
}

// Whatever the binding, so many strips drawn on its square give the length that is told,
// one fewer would not do, and neither would so many of the next smaller square.
func TestStripsOfASquareGiveTheBinding(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		half := float64(rapid.IntRange(16, 16*80).Draw(t, "half the hem")) / 16
		width := float64(rapid.IntRange(2, 12).Draw(t, "width")) / 16
		joining := float64(rapid.IntRange(0, 8).Draw(t, "joining")) / 16
		joins := rapid.IntRange(1, 3).Draw(t, "joins")
		fold, cut := "single", 4*width
		if rapid.Bool().Draw(t, "double") {
			fold, cut = "double", 6*width
		}
		text := fmt.Sprintf("[cloth]\nwidth = 45\n[binding.r]\nalong = \"front.hem\"\nwidth = %g\nfold = %q\njoins = %d\njoining = %g\n", width, fold, joins, joining)
		given := rapid.Bool().Draw(t, "given")
		if given {
			text += fmt.Sprintf("square = %g\n", float64(rapid.IntRange(10, 90).Draw(t, "square"))/2)
		}
		p, err := made.Pattern("allowance = 0\n" + sketch.Front(sketch.Skirt(half)) + "\n" + text)
		if err != nil {
			require.True(t, given, "without a square that is given one is found: %v", err)
			return
		}
		b := p.Bindings[0]
		// Two edges and what the joins take, rounded up each.
		takes := math.Ceil(2*joining*math.Sqrt2*16-0.01) / 16
		long := 2*half + float64(joins)*takes
		require.InDelta(t, long, printed(t, b.Length), 1e-9)
		require.InDelta(t, cut, b.CutWidth.MM/25.4, 1e-9)
		if b.Square.MM == 0 {
			return
		}
		side := b.Square.MM / 25.4
		strips := bias(side, cut)
		require.GreaterOrEqual(t, len(strips), b.Strips, "strips on the square")
		require.GreaterOrEqual(t, endToEnd(strips, b.Strips, joining), long-1e-6, "%d strips of a square of %g in, %g in wide", b.Strips, side, cut)
		if b.Strips > 1 {
			require.Less(t, endToEnd(strips, b.Strips-1, joining), long, "one strip fewer")
		}
		if given {
			return
		}
		require.LessOrEqual(t, side, 45.0, "the square fits the cloth")
		require.InDelta(t, math.Round(side*2), side*2, 1e-9, "halves of an inch")
		if next := bias(side-0.5, cut); len(next) >= b.Strips {
			require.Less(t, endToEnd(next, b.Strips, joining), long, "the next smaller square")
		}
	})
}
