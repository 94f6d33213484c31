package gauge

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// notchPoints returns how far the points of the notches lie from the square end, read
// off the outline: the corners of it that are neither at its top nor at its bottom, nor
// at the end that is held.
func notchPoints(m mark.Marking) []float64 {
	box := m.Outline.Bounds()
	var all []float64
	for _, q := range m.Outline[1:] {
		if q.Y > box.Min.Y && q.Y < box.Max.Y && q.X < box.Max.X {
			all = append([]float64{q.X - box.Min.X}, all...)
		}
	}
	return all
}

// Where the next fold lies on the cloth follows here from the flat fold lines and from
// what a tuck takes up, not from the gap.
func TestNotchesAreWhereTheTucksAre(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := math.Round(rapid.Float64Range(1, 60).Draw(t, "width")*4) / 4
		gap := math.Round(rapid.Float64Range(0, 30).Draw(t, "gap")*4) / 4
		sample := ""
		if took := rapid.Float64Range(1.8, 2.4).Draw(t, "takes") * width; rapid.Bool().Draw(t, "sampled") {
			sample = fmt.Sprintf("sample = {tucks = 10, flat = 3000, sewn = %f}\n", 3000-10*took)
		}
		pattern := made.Of(t, "unit = \"mm\"\nallowance = 0\n"+sketch.Front("a: 0,0 900,0\nb: 900,0 900,300\nc: 900,300 0,300\nd: 0,300 0,0\n---\n\n"+
			fmt.Sprintf("[tuck.t]\nbeside = \"d\"\nwidth = %v\ncount = 2\nfirst = 200\ngap = %v\n", width, gap)+sample))
		tuck := pattern.Pieces[0].TuckRows[0]
		all := tuckGauges(pattern)
		require.Len(t, all, 1)
		requireCard(t, all[0])
		fold := tuck.Folds[0].At              // of the sewn tuck, laid over toward the next: half of what it takes before it, half behind
		next := tuck.Folds[1].At - tuck.Takes // the next fold line, with one tuck sewn
		at := notchPoints(all[0])
		if gap == 0 {
			require.Len(t, at, 1)
			require.InDelta(t, width, next-fold, 1e-6, "the next fold")
		} else {
			require.Len(t, at, 2)
			require.InDelta(t, next-fold, at[1], 1e-6, "the next fold")
			require.InDelta(t, width+gap, at[1], 1e-6, "the pitch when sewn (Patton, Home and School Sewing, about 1901)")
		}
		require.InDelta(t, width, at[0], 1e-9, "the stitching")
		box := all[0].Outline.Bounds()
		require.GreaterOrEqual(t, box.Width(), 76.2-1e-9, "too short to hold")
		require.InDelta(t, 19.05, box.Height(), 1e-9)
		require.Less(t, at[len(at)-1], box.Width()/2+1e-9, "the notches are nearer to the other end")
	})
}

func TestNotchesOfNarrowAndWideTucks(t *testing.T) {
	for _, c := range []struct {
		name string
		at   []float64
		want string // the side with the notches, in inches, from the right
	}{
		{"one, with room on both sides", []float64{25.4}, "2.75,0.75 1.125,0.75 1,0.5 0.875,0.75 0,0.75"},
		{"one near the end", []float64{25.4 / 8}, "2.75,0.75 0.25,0.75 0.125,0.5 0.125,0.75 0,0.75"},
		{"two near each other", []float64{25.4 / 16, 25.4 / 8}, "2.75,0.75 0.25,0.75 0.125,0.5 0.125,0.75 0.094,0.75 0.062,0.5 0.062,0.75 0,0.75"},
		{"two with room", []float64{25.4 / 2, 25.4}, "2.75,0.75 1.125,0.75 1,0.5 0.875,0.75 0.625,0.75 0.5,0.5 0.375,0.75 0,0.75"},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := tuckCard(c.at)
			requireCard(t, m)
			assert.Equal(t, c.want, sketch.Inches(m.Outline[4:len(m.Outline)-1]))
			for i, x := range c.at {
				assert.InDelta(t, x, notchPoints(m)[i], 1e-9)
			}
			assert.InDelta(t, 12.7, pathsOf(m, mark.TuckStitch)[0].Length(), 1e-9, "the line reaches the point of the notch: of 3/4 in, 1/4 in is cut")
		})
	}
}

func TestNotesOfATuckGauge(t *testing.T) {
	row := func(rest string) string {
		return "allowance = 0\n" + sketch.Front(dipped+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/4\"\nfirst = 1\n"+rest)
	}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"a gap", row("count = 3\ngap = \"1/8\"\n"), []string{
			"for the yoke tucks of Front",
			"lay the square end on the fold of a tuck: stitch at the first notch, 1/4 in from it",
			"then lay the tuck over toward the next one, and the end on its fold: fold the next tuck at the second notch, 3/8 in from the end, which leaves 1/8 in between them",
		}},
		{"touching", row("count = 3\ngap = 0\n"), []string{
			"for the yoke tucks of Front",
			"lay the square end on the fold of a tuck: stitch at the notch, 1/4 in from it",
			"then lay the tuck over toward the next one, and the end on its fold: fold the next tuck at the same notch, for the tucks touch",
		}},
		{"lying over each other", row("count = 3\nspacing = \"5/8\"\n"), []string{
			"for the yoke tucks of Front",
			"lay the square end on the fold of a tuck: stitch at the notch, 1/4 in from it",
			"each tuck lies 1/8 in over the stitching of the next: take the folds from the sheet",
		}},
		{"one, with a row like it", row("count = 1\n") + "[piece.front.tuck.hem]\nbeside = \"right\"\nwidth = \"1/4\"\nfirst = 1\ncount = 2\ngap = 0.013\n", []string{
			"for the hem tucks of Front and the yoke tuck of Front",
			"lay the square end on the fold of a tuck: stitch at the first notch, 1/4 in from it",
			"then lay the tuck over toward the next one, and the end on its fold: fold the next tuck at the second notch, about 1/4 in from the end, which leaves less than 1/16 in between them",
		}},
		{"one", row("count = 1\n"), []string{
			"for the yoke tuck of Front",
			"lay the square end on the fold of a tuck: stitch at the notch, 1/4 in from it",
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, c.text)
			all := tuckGauges(pattern)
			require.Len(t, all, 1)
			requireCard(t, all[0])
			assert.Equal(t, c.want, all[0].Told())
		})
	}
}
