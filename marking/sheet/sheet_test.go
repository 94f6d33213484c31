package sheet

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Whatever tucks a front has, its three sheets say one thing: the block is wider than
// the piece by what they take; every line of the tuck sheet has its tick; and folded
// where the tuck sheet has them, the tucks are stitched where the cutting sheet says.
func TestTheSheetsOfABlockAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := float64(rapid.IntRange(4, 32).Draw(t, "width")) / 64 // inches
		takes := 2 * width
		sample := ""
		if rapid.Bool().Draw(t, "sampled") {
			takes *= float64(rapid.IntRange(90, 110).Draw(t, "percent")) / 100
			sample = fmt.Sprintf("sample = {tucks = 1, flat = 6, sewn = %g}\n", 6-takes)
		}
		gap := float64(rapid.IntRange(0, 16).Draw(t, "gap")) / 64
		count := rapid.IntRange(1, 6).Draw(t, "count")
		first, centred := 0.0, rapid.Bool().Draw(t, "a tuck on the centre")
		if !centred {
			first = max(width, takes/2) + float64(rapid.IntRange(0, 32).Draw(t, "first"))/64
		}
		whole := rapid.Bool().Draw(t, "whole")
		change := []string{}
		if whole {
			change = []string{"fold =", "print = \"whole\"\nfold ="}
		}
		sides := float64(rapid.IntRange(0, 8).Draw(t, "sides")) / 8
		pattern, err := made.Pattern("allowance = 0\n" + sketch.Front(sketch.Swap(sketch.Bosom, change...)+fmt.Sprintf(
			"[tuck.t]\nbeside = \"cf\"\nwidth = %g\ncount = %d\nfirst = %g\ngap = %g\n%s\n[block]\nsides = %g\n", width, count, first, gap, sample, sides)))
		require.NoError(t, err)
		p := &pattern.Pieces[0]
		b := p.Block

		folds := 2 * count
		if centred {
			folds--
		}
		require.Equal(t, folds, len(b.Group.Folding.Folds()))
		require.InDelta(t, float64(folds)*takes, b.TakeUp/25.4, 1e-6)
		sum, torn := 12+2*sides+float64(folds)*takes, b.Width/25.4
		require.True(t, torn > sum-1e-6 && torn < sum+1.0/16, "%g in is torn %g in wide: as wide, and less than 1/16 in more", sum, torn)
		require.InDelta(t, math.Round(16*torn), 16*torn, 1e-6, "%g in can be read on a ruler", torn)
		require.InDelta(t, torn-float64(folds)*takes, b.TopMeasures/25.4, 1e-6, "the top edge, stitched")

		sheet, ruler, cutting := tuckSheet(p, pattern), tuckRuler(p, pattern), cuttingSheet(p, pattern, nil)
		places := func(m mark.Marking, role mark.Role) []float64 {
			var all []float64
			for _, one := range m.Marks {
				if one.Role == role && one.Path[0].X > 0.001 {
					all = append(all, one.Path[0].X/25.4)
				}
			}
			slices.Sort(all)
			return slices.CompactFunc(all, func(a, b float64) bool { return math.Abs(b-a) < 1e-6 })
		}
		var flat, seams []float64
		for k := range count {
			at := first + float64(k)*(takes+width+gap)
			seam := at - takes/2 - float64(k)*takes
			if centred {
				seam += takes / 2 // half of the first lies on the other side
			}
			if at > 1e-6 {
				flat = append(flat, at)
			}
			if seam > 1e-6 && (!centred || k > 0) {
				seams = append(seams, seam)
			}
		}
		requireSame := func(want, got []float64, what string) {
			t.Helper()
			require.Len(t, got, len(want), what)
			for i := range want {
				require.InDelta(t, want[i], got[i], 1e-6, what)
			}
		}
		requireSame(flat, places(sheet, mark.TuckFold), "fold lines of the tuck sheet")
		requireSame(flat, places(ruler, mark.TuckFold), "ticks of the fold lines")
		requireSame(places(sheet, mark.TuckStitch), places(ruler, mark.TuckStitch), "ticks of the stitching")
		requireSame(seams, places(cutting, mark.TuckStitch), "stitching of the cutting sheet")
	})
}

// orderedLinesOf lists the lines of one role, in inches, each from its lower or left end.
func orderedLinesOf(m mark.Marking, role mark.Role) []string {
	var all []string
	for _, one := range m.Marks {
		if one.Role == role {
			all = append(all, sketch.Inches(sketch.Ordered(one.Path)))
		}
	}
	return all
}

// linesOf lists the lines of one role, in inches, as they run.
func linesOf(m mark.Marking, role mark.Role) []string {
	var all []string
	for _, one := range m.Marks {
		if one.Role == role {
			all = append(all, sketch.Inches(one.Path))
		}
	}
	return all
}

// A piece with a block has three sheets and no other; the rest of the pattern has
// its own.
func TestSheetsOfAPieceWithABlock(t *testing.T) {
	pattern := made.Of(t, "allowance = 0.375\n"+sketch.Front(sketch.Bosom+sketch.Tucked("cf", "1/8", 3, "3/8", "")+"\n[block]\n")+sketch.Swap(sketch.Front(sketch.Box), "front", "back"))
	var names []string
	for _, m := range Of(pattern) {
		names = append(names, m.Name)
	}
	assert.Equal(t, []string{"front: sample of the t tucks", "front: tuck sheet", "front: tuck ruler", "front: cutting sheet", "back"}, names)
}
