package ink

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// A head is 3 mm long and 2 mm wide, less on a line shorter than 9 mm: never
// more than a third of it, and always of the same shape. Its tip is the end of the line.
func TestHeadSize(t *testing.T) {
	for _, c := range []struct {
		name          string
		role          mark.Role
		line          float64
		heads         int
		length, width float64
	}{
		{"a long line", mark.Grain, 60, 2, 3, 2},
		{"a line of 9 mm", mark.Grain, 9, 2, 3, 2},
		{"a line of 6 mm", mark.Grain, 6, 2, 2, 4.0 / 3},
		{"a line of 1.5 mm", mark.Arrow, 1.5, 1, 0.5, 1.0 / 3},
		{"a line without heads", mark.Cut, 60, 0, 0, 0},
	} {
		line := plane.Path{{X: 40, Y: 40}, {X: 40 + c.line, Y: 40}}
		heads := HeadsOf(PenOf(c.role), line)
		require.Len(t, heads, c.heads, c.name)
		for _, h := range heads {
			box := h.triangle().Bounds()
			assert.InDelta(t, c.length, box.Width(), 1e-9, c.name)
			assert.InDelta(t, c.width, box.Height(), 1e-9, c.name)
			assert.Contains(t, line, h.Tip, c.name)
			assert.GreaterOrEqual(t, box.Min.X, 40-1e-9, "%s: past its line", c.name)
			assert.LessOrEqual(t, box.Max.X, 40+c.line+1e-9, "%s: past its line", c.name)
		}
		if c.heads > 0 {
			assert.Equal(t, line[1], heads[len(heads)-1].Tip, "%s: the last is at the end", c.name)
		}
	}
	assert.Empty(t, HeadsOf(PenOf(mark.Grain), plane.Path{{X: 1}}), "a point has none")
}
