package garment_test

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// swapped returns a seam with its sides the other way round.
func swapped(s garment.Seam) garment.Seam {
	s.Sides[0], s.Sides[1] = s.Sides[1], s.Sides[0]
	s.Difference, s.CutDifference = s.Difference.Times(-1), s.CutDifference.Times(-1)
	s.Ends = slices.Clone(s.Ends)
	for i := range s.Ends {
		names := &s.Ends[i].Neighbours
		names[0], names[1] = names[1], names[0]
	}
	return s
}

// sameSeam looks whether two seams have the same lengths, verdict and ends.
func sameSeam(t *rapid.T, a, b garment.Seam, text string) {
	const near = 1e-3 // mm and degrees: curves are drawn by chords
	for i := range a.Sides {
		require.InDelta(t, a.Sides[i].Sewn.MM, b.Sides[i].Sewn.MM, near, "sewn, side %d\n%s", i+1, text)
		require.InDelta(t, a.Sides[i].Cut.MM, b.Sides[i].Cut.MM, near, "cut, side %d\n%s", i+1, text)
	}
	require.InDelta(t, a.Difference.MM, b.Difference.MM, near, text)
	require.Equal(t, a.Matches(), b.Matches(), text)
	require.Equal(t, a.CutMatches(), b.CutMatches(), text)
	require.Equal(t, len(a.Ends), len(b.Ends), text)
	require.Equal(t, a.ToldBy, b.ToldBy, text)
	for i, end := range a.Ends {
		other := b.Ends[i]
		require.Equal(t, end.Neighbours, other.Neighbours, text)
		require.InDelta(t, end.Jog.MM, other.Jog.MM, near, "jog at %v\n%s", end.Neighbours, text)
		require.InDelta(t, end.CutJog.MM, other.CutJog.MM, near, "cut jog at %v\n%s", end.Neighbours, text)
		require.Equal(t, end.CutJogKnown, other.CutJogKnown, "cut jog at %v\n%s", end.Neighbours, text)
		require.InDelta(t, end.Bend, other.Bend, 0.01, "bend at %v\n%s", end.Neighbours, text)
	}
}

// somewhere draws a place for a piece, and whether it is turned over.
func somewhere(t *rapid.T) func(plane.Point) plane.Point {
	angle, over := rapid.Float64Range(-3, 3).Draw(t, "angle"), rapid.Bool().Draw(t, "turned over")
	by := plane.Point{X: rapid.Float64Range(-30, 30).Draw(t, "by x"), Y: rapid.Float64Range(-30, 30).Draw(t, "by y")}
	return func(q plane.Point) plane.Point {
		if over {
			q.X = -q.X
		}
		return sketch.Turned(q, angle).Add(by)
	}
}

// The figures of a seam do not depend on where its pieces are drawn, how they are turned,
// and which is named first.
func TestSeamsOfPiecesDrawnAnywhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		front, back := sketch.Bodice(t), sketch.Bodice(t)
		seam := fmt.Sprintf("join = [\"front.%[1]s\", \"back.%[1]s\"]", rapid.SampledFrom([]string{"shoulder", "side", "armhole", "neck"}).Draw(t, "edge"))
		unequal := seam // ease is given to one of the two
		if rapid.Bool().Draw(t, "ease") {
			seam += "\nease = 2"
		}
		if _, err := made.Pattern(sketch.Joined("0.5", front, back, seam)); err != nil {
			require.ErrorContains(t, err, "its line does not come out at that edge")
			t.Skip("an allowance passes a bare armhole by, and so cannot be sewn")
		}
		first := made.Seam(t, sketch.Joined("0.5", front, back, seam))
		frontAnew, backAnew := setDown(front, somewhere(t)), setDown(back, somewhere(t))
		text := sketch.Joined("0.5", frontAnew, back, seam)
		sameSeam(t, first, made.Seam(t, text), text)
		text = sketch.Joined("0.5", front, backAnew, seam)
		sameSeam(t, first, made.Seam(t, text), text)
		text = sketch.Joined("0.5", frontAnew, backAnew, regexp.MustCompile(`\[(".*"), (".*")\]`).ReplaceAllString(unequal, "[$2, $1]"))
		sameSeam(t, made.Seam(t, sketch.Joined("0.5", front, back, unequal)), swapped(made.Seam(t, text)), text)
	})
}

// A piece fits its own copy, wherever that is drawn: at every end the line bends by what
// two corners lack of two right angles.
func TestSeamWithItsOwnCopy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := func(name string, x, y float64) plane.Point {
			off := func(axis string) float64 { return rapid.Float64Range(-2, 2).Draw(t, name+" "+axis) }
			return plane.Point{X: x + off("x"), Y: y + off("y")}
		}
		corners := []plane.Point{at("a", 0, 0), at("b", 10, 0), at("c", 10, 10), at("d", 0, 10)}
		text := ""
		for i, q := range corners {
			text += fmt.Sprintf("side %d: %s | allowance = %v\n", i+1, sketch.TurnedPoints(0, q, corners[(i+1)%4]),
				rapid.SampledFrom([]float64{0, 0.25, 0.5}).Draw(t, "allowance"))
		}
		edge := rapid.IntRange(0, 3).Draw(t, "edge")
		file := sketch.Joined("0", text, setDown(text, somewhere(t)), fmt.Sprintf("join = [\"front.side %[1]d\", \"back.side %[1]d\"]", edge+1))
		if rapid.Bool().Draw(t, "cut twice") {
			file = sketch.Joined("0", "cut = 2\n"+text, text, fmt.Sprintf("join = [\"front.side %[1]d\", \"front.side %[1]d\"]", edge+1))
		}
		s := made.Seam(t, file)
		require.True(t, s.Matches() && s.CutMatches(), file)
		require.InDelta(t, 0, s.Difference.MM, 1e-6, file)
		require.Len(t, s.Ends, 2, file)
		for _, end := range s.Ends {
			require.True(t, end.Alike(), file)
			require.InDelta(t, 0, end.Jog.MM, 1e-6, file)
			require.InDelta(t, 0, end.CutJog.MM, 1e-5, file)
			at := corners[edge] // the corner with the side before
			before, after := corners[(edge+3)%4], corners[(edge+1)%4]
			if end.Neighbours[0] == fmt.Sprintf("side %d", (edge+1)%4+1) {
				at, before, after = corners[(edge+1)%4], corners[edge], corners[(edge+2)%4]
			}
			cos := before.Sub(at).Unit().Dot(after.Sub(at).Unit())
			require.InDelta(t, 180-2*math.Acos(cos)*180/math.Pi, end.Bend, 1e-4, "at %v\n%s", end.Neighbours, file)
		}
	})
}

// What pleats and tucks take of a seam does not depend on where the piece is drawn.
func TestFoldsInASeamDrawnAnywhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		depth := float64(rapid.IntRange(1000, 5000).Draw(t, "depth")) / 1e4
		count := rapid.IntRange(1, 3).Draw(t, "count")
		rise := rapid.Float64Range(-3, 3).Draw(t, "rise")
		text := setDown(fmt.Sprintf("left: 0,0 0,10\ntop: 0,10 20,%[1]f\nright: 20,%[1]f 20,0\nbottom: 20,0 0,0", 10+rise), somewhere(t)) + "\n---\n" +
			sketch.Rows(fmt.Sprintf(`tuck t left %.4f %d 3`, depth, count)) +
			fmt.Sprintf("\n[pleat.p]\nedge = \"top\"\nfrom = \"right\"\nat = 4\ndepth = %.4f\ntoward = \"right\"\nlength = 1\ncount = %d\nspacing = 2\n", depth, count)
		plain, _, _ := strings.Cut(text, "---\n")
		s := made.Seam(t, sketch.Joined("0.5", text, plain, sketch.Tops))
		slant := math.Hypot(20, rise) / 20
		taken := 2 * depth * float64(count)
		require.InDelta(t, -taken-taken*slant, s.Difference.MM/25.4, 1e-5, text)
		for _, end := range s.Ends {
			require.True(t, end.Straight() == (math.Abs(180-2*degrees(rise, end.Neighbours[0])) < 8), text)
		}
	})
}
