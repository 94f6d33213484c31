package gauge

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// stepsAt returns how far from the end the steps of a tuck gauge lie, the upper first, read
// off its outline: the upright sides that are neither its end nor at the end that is held.
func stepsAt(m mark.Marking) (upper, lower float64) {
	box := m.Outline.Bounds()
	for i := 1; i < len(m.Outline); i++ {
		a, b := m.Outline[i-1], m.Outline[i]
		switch {
		case a.X != b.X || a.X == box.Min.X || a.X == box.Max.X:
		case a.Y == box.Max.Y || b.Y == box.Max.Y:
			upper = a.X - box.Min.X
		default:
			lower = a.X - box.Min.X
		}
	}
	return upper, lower
}

// Where the next fold lies on the cloth follows here from the flat fold lines and from
// what a tuck takes up, not from the gap.
func TestStepsAreWhereTheTucksAre(t *testing.T) {
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
		upper, lower := stepsAt(all[0])
		if gap == 0 {
			require.Zero(t, lower, "the tucks touch")
			require.InDelta(t, width, next-fold, 1e-6, "the next fold")
		} else {
			require.InDelta(t, next-fold, lower, 1e-6, "the next fold")
			require.InDelta(t, width+gap, lower, 1e-6, "the pitch when sewn (Patton, Home and School Sewing, about 1901)")
		}
		require.InDelta(t, width, upper, 1e-9, "the stitching")
		box := all[0].Outline.Bounds()
		require.GreaterOrEqual(t, box.Width(), 76.2-1e-9, "too short to hold")
		require.InDelta(t, 31.75, box.Height(), 1e-9)
		require.Less(t, max(upper, lower), box.Width()/2+1e-9, "the steps are nearer to the other end")
	})
}

// However narrow the tucks are, no part of the card is: the tongue between two steps is 1/2 in
// high, each step 3/8 in deep.
func TestStepsOfNarrowAndWideTucks(t *testing.T) {
	for _, c := range []struct {
		name         string
		stitch, next float64
		want         string // the outline from the end at the foot of the lower step, in inches
	}{
		{"one", 25.4, 0, "0,0 3.25,0 3.5,0.25 3.5,1 3.25,1.25 1,1.25 1,0.875 0,0.875"},
		{"one near the end", 25.4 / 16, 0, "0,0 2.75,0 3,0.25 3,1 2.75,1.25 0.062,1.25 0.062,0.875 0,0.875"},
		{"two near each other", 25.4 / 16, 25.4 / 8, "0.125,0 2.75,0 3,0.25 3,1 2.75,1.25 0.062,1.25 0.062,0.875 0,0.875 0,0.375 0.125,0.375"},
		{"two with room", 25.4, 2 * 25.4, "2,0 4.25,0 4.5,0.25 4.5,1 4.25,1.25 1,1.25 1,0.875 0,0.875 0,0.375 2,0.375"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var nexts []nextStep
			if c.next > 0 {
				nexts = []nextStep{{c.next, "next fold"}}
			}
			m := tuckCard(c.stitch, nexts)
			requireCard(t, m)
			assert.Equal(t, c.want, sketch.Inches(m.Outline[:len(m.Outline)-1]))
			var words []string
			for _, w := range m.Words {
				words = append(words, fmt.Sprintf("%s at %s", w.Text, sketch.Inches(plane.Path{w.At})))
				assert.True(t, plane.NewTree(m.Outline).Holds(w.At.Add(w.Out)), "%s stands inside the card", w.Text)
			}
			want := []string{"stitch at " + sketch.Inches(plane.Path{{X: c.stitch, Y: 25.4 * 17 / 16}})}
			if c.next > 0 {
				want = append(want, "fold at 0,0.625", "next fold at "+sketch.Inches(plane.Path{{X: c.next, Y: 25.4 * 3 / 16}}))
			} else {
				want = append(want, "fold at 0,0.438")
			}
			assert.Equal(t, want, words)
		})
	}
}

// Each step more makes the card 3/8 in higher, and stands off farther than the one above it.
// Where the first tuck of the next group lies follows from the flat fold lines, as for the next
// tuck.
func TestStepsToTheNextGroup(t *testing.T) {
	p := made.Of(t, "allowance = 0\n"+sketch.Front(dipped+"[tuck.t]\nbeside = \"left\"\nwidth = \"1/8\"\nfirst = 1\ncount = 2\ngap = \"1/16\"\nbetweens = [\"1/2\", \"1/4\"]\n"))
	all := tuckGauges(p)
	require.Len(t, all, 1)
	m := all[0]
	requireCard(t, m)
	assert.Equal(t, "Tuck gauge: 1/8 in wide, 1/16 in between, in groups", m.Name)
	assert.Equal(t, "0.625,0 2.875,0 3.125,0.25 3.125,1.75 2.875,2 0.125,2 0.125,1.625 0,1.625 0,1.125 0.187,1.125 0.187,0.75 0.375,0.75 0.375,0.375 0.625,0.375",
		sketch.Inches(m.Outline[:len(m.Outline)-1]))
	folds := p.Pieces[0].TuckRows[0].Folds
	for _, c := range []struct {
		name string
		next int // counted from 0
	}{{"next fold", 1}, {"next group (1/2 in)", 2}, {"next group (1/4 in)", 4}} {
		i := slices.IndexFunc(m.Words, func(w mark.Word) bool { return w.Text == c.name })
		require.GreaterOrEqual(t, i, 0, c.name)
		assert.InDelta(t, folds[c.next].At-folds[c.next-1].At-p.Pieces[0].TuckRows[0].Takes, m.Words[i].At.X, 1e-9, c.name)
	}
}

func TestNotesOfATuckGauge(t *testing.T) {
	const lay, stitch = "lay the end called fold on the fold of a tuck", "stitch along the step called stitch, 1/4 in from the fold"
	const over = "lay the tuck over toward the next one, and the end on its fold again"
	row := func(rest string) string {
		return "allowance = 0\n" + sketch.Front(dipped+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/4\"\nfirst = 1\n"+rest)
	}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"a gap", row("count = 3\ngap = \"1/8\"\n"), []string{
			"for the yoke tucks of Front", lay, stitch, over,
			"fold the next tuck along the step called next fold, 3/8 in from the end, which leaves 1/8 in between them",
		}},
		{"touching", row("count = 3\ngap = 0\n"), []string{
			"for the yoke tucks of Front", lay, stitch, over,
			"fold the next tuck along the same step, for the tucks touch",
		}},
		{"lying over each other", row("count = 3\nspacing = \"5/8\"\n"), []string{
			"for the yoke tucks of Front", lay, stitch,
			"take the next fold from the sheet: each tuck lies 1/8 in over the stitching of the next",
		}},
		{"one, with a row like it", row("count = 1\n") + "[piece.front.tuck.hem]\nbeside = \"right\"\nwidth = \"1/4\"\nfirst = 1\ncount = 2\ngap = 0.013\n", []string{
			"for the hem tucks of Front and the yoke tuck of Front", lay, stitch, over,
			"fold the next tuck along the step called next fold, about 1/4 in from the end, which leaves less than 1/16 in between them",
		}},
		{"groups", row("count = 3\ngap = \"1/8\"\ngroups = 2\nbetween = \"1/2\"\n"), []string{
			"for the yoke tucks of Front", lay, stitch, over,
			"fold the next tuck along the step called next fold, 3/8 in from the end, which leaves 1/8 in between them",
			"after the last tuck of a group fold the first of the next along the step called next group, 3/4 in from the end, which leaves 1/2 in between them",
		}},
		{"groups that are not the same apart", row("count = 2\ngap = 0\nbetweens = [\"1/2\", \"1/4\", \"1/2\"]\n"), []string{
			"for the yoke tucks of Front", lay, stitch, over,
			"fold the next tuck along the same step, for the tucks touch",
			"after the last tuck of a group fold the first of the next along the step called next group (1/4 in), 1/2 in from the end, which leaves 1/4 in between them",
			"after the last tuck of a group fold the first of the next along the step called next group (1/2 in), 3/4 in from the end, which leaves 1/2 in between them",
			"the sheet says which of them comes next",
		}},
		{"groups all of their own", row("count = 2\ngap = 0\nbetweens = [\"1/16\", \"1/8\", \"3/16\", \"5/16\"]\n"), []string{
			"for the yoke tucks of Front", lay, stitch, over,
			"fold the next tuck along the same step, for the tucks touch",
			"after the last tuck of a group fold the first of the next by the sheet, for what shows between is not the same",
		}},
		{"single tucks apart", row("count = 1\nbetweens = [\"1/2\", \"1/2\"]\n"), []string{
			"for the yoke tucks of Front", lay, stitch,
			"lay the tuck over toward the next one, and the end on its fold again; fold the next tuck along the step called next fold, 3/4 in from the end, which leaves 1/2 in between them",
		}},
		{"one", row("count = 1\n"), []string{"for the yoke tuck of Front", lay, stitch}},
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
