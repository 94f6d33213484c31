package board

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

// Whatever the sizes: parts keep them, stand in their order, in rows, apart from each other, with
// room for their captions, and on the board.
func TestFlow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var parts []Part
		side := rapid.Float64Range(1, 5000)
		for range rapid.IntRange(1, 30).Draw(t, "parts") {
			parts = append(parts, oblong("", side.Draw(t, "wide"), side.Draw(t, "high")))
		}
		sizes := make([]plane.Point, len(parts))
		for i, p := range parts {
			sizes[i] = p.Box.Max
		}
		b := flow(parts)
		require.Len(t, b.Parts, len(sizes))
		free := plane.Box{Max: b.Size}.Grown(-b.Caption)
		for i, p := range b.Parts {
			assert.Equal(t, i+1, p.Number)
			assert.InDelta(t, sizes[i].X, p.Box.Width(), 1e-6)
			assert.InDelta(t, sizes[i].Y, p.Box.Height(), 1e-6)
			with := p.Box // and its caption
			with.Min.Y -= captionRoom * b.Caption
			assert.True(t, free.Holds(with.Min) && free.Holds(with.Max), "%v on %v", with, b.Size)
			if i == 0 {
				continue
			}
			before := b.Parts[i-1].Box
			if p.Box.Min.Y == before.Min.Y {
				assert.GreaterOrEqual(t, with.Min.X, before.Max.X+b.Caption, "beside the one before")
			} else {
				for _, other := range b.Parts[:i] {
					assert.GreaterOrEqual(t, with.Min.Y, other.Box.Max.Y+b.Caption, "under all before")
				}
			}
		}
	})
}

// Rows are as long as a screen is wide for its height: many pages of one size have about its
// proportion, and neither few wide parts nor few high ones are wrapped for nothing.
func TestFlowIsAboutAScreen(t *testing.T) {
	for _, c := range []struct {
		name string
		part Part
		n    int
		rows int
	}{
		{"pages", oblong("", 216, 279), 40, 5},
		{"one page", oblong("", 216, 279), 1, 1},
		{"two pages", oblong("", 216, 279), 2, 1},
		{"two long skirts", oblong("", 1500, 300), 2, 2},
		{"three long skirts", oblong("", 300, 1500), 3, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			var parts []Part
			for range c.n {
				parts = append(parts, c.part)
			}
			rows := map[float64]bool{}
			for _, p := range flow(parts).Parts {
				rows[p.Box.Min.Y] = true
			}
			assert.Len(t, rows, c.rows)
		})
	}
}
