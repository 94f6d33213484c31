package arrange

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// A free box lies in free bins only, and each free bin in one of them.
func TestLargestFreeBoxes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := newBins(plane.Box{Max: plane.Point{X: 30, Y: 24}})
		for i := range b.taken {
			b.taken[i] = rapid.IntRange(0, 3).Draw(t, "taken") == 0
		}
		all := b.largest()
		for row := b.around; row < b.grid.Rows-b.around; row++ {
			for column := b.around; column < b.grid.Columns-b.around; column++ {
				in := slices.ContainsFunc(all, func(o plane.Box) bool { return o.Holds(b.middle(column, row)) })
				require.Equal(t, !b.taken[row*b.grid.Columns+column], in, "column %d, row %d", column, row)
			}
		}
		for i, o := range all {
			for k, p := range all {
				require.False(t, i != k && o.Grown(rounding).Holds(p.Min) && o.Grown(rounding).Holds(p.Max), "%v holds %v", o, p)
			}
		}
	})
}
