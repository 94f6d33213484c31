package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/fault"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Whatever the outline and its allowances, a stitch line that is given keeps
// its own allowance, lies on the piece, and meets its neighbours' lines where
// the sewn part ends.
func TestStitchLinesOfAnyPiece(t *testing.T) {
	sewable := 0
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 9).Draw(t, "edges")
		corner := make([]string, n)
		for k := range n {
			radius := rapid.Float64Range(2, 8).Draw(t, "radius")
			sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(n))
			corner[k] = fmt.Sprintf("%.4f,%.4f", radius*cos, radius*sin)
		}
		var b strings.Builder
		for k := range n {
			allowance := rapid.SampledFrom([]float64{0, 0.25, 0.375, 0.5, 1}).Draw(t, "allowance")
			fmt.Fprintf(&b, "edge %d: %s %s | allowance = %g\n", k, corner[k], corner[(k+1)%n], allowance)
		}
		pattern, err := made.Pattern(sketch.Front(b.String()))
		if err != nil {
			require.IsType(t, fault.List{}, err)
			return
		}
		sewable++
		p := pattern.Pieces[0]
		for _, e := range p.Edges {
			edge := plane.NewTree(e.Path)
			for i := 1; i < len(e.Line); i++ {
				q := e.Line[i-1].Toward(e.Line[i], 0.5)
				require.Greater(t, edge.Distance(q, math.Inf(1)), e.Allowance-1e-6, "%s keeps its allowance", e.Key)
				require.True(t, piece.Keeps(&p, e.Line), "%s stays on the piece", e.Key)
			}
			require.Positive(t, e.Sewn.Length(), "%s is sewn", e.Key)
		}
		for i, e := range p.Edges {
			_, after := p.Neighbours(i)
			next := p.Edges[after]
			// Lines of unequal allowances may run past each other at a corner
			// that hardly turns.
			if e.Allowance > 0 && e.Allowance == next.Allowance {
				gap := e.Sewn[len(e.Sewn)-1].Distance(next.Sewn[0])
				require.Less(t, gap, 0.05, "the seams of %s and %s meet", e.Key, next.Key)
			}
		}
	})
	t.Logf("%d pieces could be sewn", sewable)
	assert.Positive(t, sewable, "some of the pieces can be sewn")
}
