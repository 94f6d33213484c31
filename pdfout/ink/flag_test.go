package ink

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

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
		heads := SolidsOf(PenOf(c.role), line)
		require.Len(t, heads, c.heads, c.name)
		for _, h := range heads {
			box := h.Shape.Bounds()
			assert.InDelta(t, c.length, box.Width(), 1e-9, c.name)
			assert.InDelta(t, c.width, box.Height(), 1e-9, c.name)
			assert.Contains(t, line, h.Shape[0], c.name)
			assert.GreaterOrEqual(t, box.Min.X, 40-1e-9, "%s: past its line", c.name)
			assert.LessOrEqual(t, box.Max.X, 40+c.line+1e-9, "%s: past its line", c.name)
		}
		if c.heads > 0 {
			assert.Equal(t, line[1], heads[len(heads)-1].Shape[0], "%s: the last is at the end", c.name)
		}
	}
	assert.Empty(t, SolidsOf(PenOf(mark.Grain), plane.Path{{X: 1}}), "a point has none")
	assert.Empty(t, SolidsOf(PenOf(mark.Notch), plane.Path{{X: 1}, {X: 1}}), "a line without length has none")
}

// However a thin mark lies, its flag stands beside it: clear of the line itself by more
// than that is wide, not beyond its ends, and no farther away than 1.9 mm, which is less
// than what lies between two pieces. The middle of a cross is clear of all four flags.
func TestFlagsStandBesideTheirLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		role := rapid.SampledFrom([]mark.Role{mark.Notch, mark.Cross, mark.Match}).Draw(t, "role")
		long := rapid.Float64Range(1, 20).Draw(t, "long")
		angle := rapid.Float64Range(-math.Pi, math.Pi).Draw(t, "angle")
		from := plane.Point{X: rapid.Float64Range(-50, 50).Draw(t, "x"), Y: rapid.Float64Range(-50, 50).Draw(t, "y")}
		u := plane.Point{X: math.Cos(angle), Y: math.Sin(angle)}
		line := plane.Path{from, from.Add(u.Mul(long))}
		middle := from.Add(u.Mul(long / 2))
		flags := SolidsOf(PenOf(role), line)
		require.NotEmpty(t, flags)
		for _, f := range flags {
			require.Greater(t, math.Abs(f.Shape.Area()), 0.0)
			for _, q := range f.Shape {
				_, _, away := line.Nearest(q)
				require.Greater(t, away, 0.18, "it lies on the line")
				require.Less(t, away, 1.9)
				along := q.Sub(from).Dot(u)
				require.True(t, along > -1e-9 && along < long+1e-9, "beyond the line")
				if role == mark.Cross {
					require.Greater(t, q.Distance(middle), 0.09*long, "over the middle")
				}
			}
		}
	})
}
