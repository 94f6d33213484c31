package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// What was decided at a corner holds for both edges: the seams end at one place or at
// the two ends of a step, and seams and steps go round in one ring.
func TestSeamsGoRound(t *testing.T) {
	for _, text := range []string{sketch.RaglanSleeve, sketch.KimonoBack, sketch.Slashed, sketch.GussetDiamond, sketch.BareBib, sketch.FlatSetCollar, slit, apron, sketch.Swap(sketch.PlacketAboveSeam, "X", "1.28")} {
		p := sketched(t, "0.375", text)
		seams := piece.SeamsOf(p)
		ring := seams.Path()
		require.True(t, ring.Closed(), "%s", text)
		_, _, _, crosses := plane.SelfCrossing(seams)
		assert.False(t, crosses, "%s", text)
		assert.Positive(t, ring.Area(), "%s", text)
		for i, e := range p.Edges {
			_, after := p.Neighbours(i)
			gap := e.Sewn[len(e.Sewn)-1].Distance(p.Edges[after].Sewn[0])
			if p.Corners[i].Kind == piece.CornerMet {
				assert.Less(t, gap, 1e-6, "%s and %s\n%s", e.Key, p.Edges[after].Key, text)
			} else {
				assert.Greater(t, gap, 0.05, "%s and %s\n%s", e.Key, p.Edges[after].Key, text)
			}
		}
	}
}
