package sheet

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
)

// blockOf checks a sketch and returns its piece, which has a block.
func blockOf(t *testing.T, text string) (*piece.Piece, *garment.Pattern) {
	t.Helper()
	pattern, err := check("allowance = 0.375\n" + sketch.Front(text))
	require.NoError(t, err)
	piece := &pattern.Pieces[0]
	require.NotNil(t, piece.Block, "the piece has a block")
	return piece, pattern
}

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
		pattern, err := check("allowance = 0\n" + sketch.Front(sketch.Swap(sketch.Bosom, change...)+fmt.Sprintf(
			"[tuck.t]\nbeside = \"cf\"\nwidth = %g\ncount = %d\nfirst = %g\ngap = %g\n%s\n[block]\nsides = %g\n", width, count, first, gap, sample, sides)))
		require.NoError(t, err)
		p := &pattern.Pieces[0]
		b := p.Block

		folds := 2 * count
		if centred {
			folds--
		}
		require.Equal(t, folds, b.FoldCount)
		require.InDelta(t, float64(folds)*takes, b.TakeUp/25.4, 1e-6)
		sum, torn := 12+2*sides+float64(folds)*takes, b.Width/25.4
		require.True(t, torn > sum-1e-6 && torn < sum+1.0/16, "%g in is torn %g in wide: as wide, and less than 1/16 in more", sum, torn)
		require.InDelta(t, math.Round(16*torn), 16*torn, 1e-6, "%g in can be read on a ruler", torn)
		require.InDelta(t, torn-float64(folds)*takes, b.Top/25.4, 1e-6, "the top edge, stitched")

		sheet, ruler, cutting := tuckSheet(p, pattern), tuckRuler(p, pattern), cuttingSheet(p, pattern, nil)
		places := func(m mark.Marking, role mark.Role) []float64 {
			var all []float64
			for _, one := range m.Marks {
				if one.Role == role && one.Path[0].X > piece.SamePoint {
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

// undercut is half a front whose armhole is hollowed out to 5 in from the centre, so
// that the tip of its shoulder, at 6 in, overhangs it.
const undercut = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
neck: 0,10 3,10 3,12
shoulder: 3,12 6,12
armhole: 6,12 5,10 8,9
side: 8,9 8,0
hem: 8,0 0,0
---

`

// Touching tucks of 1/2 in have their stitching at 1/4, 3/4, ... in. The flap of the
// ninth reaches to 4 3/4 in; that of the tenth to 5 1/4 in, past the inmost point of the
// armhole at 5 in: laid flat, both its layers are hollowed out there, and the piece would
// have a hole. From a tucked block such a front can be cut.
func TestTucksUpIntoTheArmhole(t *testing.T) {
	set := func(count int) string { return undercut + sketch.Tucked("cf", "1/2", count, "3/4", "") }
	const head = "allowance = 0\n"
	_, err := check(head + sketch.Front(set(9)))
	require.NoError(t, err)
	for _, count := range []int{10, 14} {
		_, err = check(head + sketch.Front(set(count)))
		assert.EqualError(t, err, fmt.Sprintf("linden.toml:24: piece.front.tuck.t: the outline cuts into tuck 10 of %d from the side: laid flat, the piece would have a hole or come apart beside its stitching, 4 3/4 in from \"cf\" finished\n"+
			"hint: the first 9 fit; a piece that is cut from a tucked block may have more of them: give it a table for its block", count))
	}
	pattern, err := check(head + sketch.Front(set(14)+"\n[block]\n"))
	require.NoError(t, err)
	piece := &pattern.Pieces[0]
	assert.InDelta(t, 16+28, piece.Block.Width/25.4, 1e-9, "28 tucks take up 1 in each")
	require.Len(t, piece.TuckRows[0].Each, 14)
	for k, one := range piece.TuckRows[0].Each {
		assert.InDelta(t, 0.25+0.5*float64(k), one.Stitching/25.4, 1e-9, "stitching of tuck %d", k+1)
		assert.Empty(t, one.Fold, "tuck %d is never drawn on the flat piece", k+1)
		assert.Empty(t, one.Sewn, "tuck %d is never drawn on the flat piece", k+1)
	}
	// The twelfth crosses the tip from 11 1/2 in, and what lies under the armhole.
	assert.Contains(t, drawnAs(cuttingSheet(piece, pattern, nil), mark.TuckStitch), "5.75,11.5 5.75,12")
	assert.Contains(t, drawnAs(cuttingSheet(piece, pattern, nil), mark.TuckStitch), "5.75,0 5.75,9.75")
}
