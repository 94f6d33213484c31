package sheet

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

func TestMirroredTwice(t *testing.T) {
	for _, name := range []string{"linden.toml", "hazel.toml", "rowan.toml"} {
		for _, m := range Of(Transferred(made.Example(t, name), []source.Transfer{source.Trace, source.Template, source.Prick})) {
			twice := fromBehind(fromBehind(m))
			require.Len(t, twice.Marks, len(m.Marks))
			for i, mark := range m.Marks {
				assert.Equal(t, mark.Role, twice.Marks[i].Role)
				for k, q := range mark.Path {
					require.InDelta(t, 0, q.Distance(twice.Marks[i].Path[k]), 1e-9, "%s: %v", m.Key, mark.Role)
				}
			}
			once := fromBehind(m)
			assert.InDelta(t, m.Outline.Area(), once.Outline.Area(), 1e-6, "counter-clockwise as well")
			for i, line := range m.Marks {
				assert.InDelta(t, line.Path.Length(), once.Marks[i].Path.Length(), 1e-9)
				if line.Role == mark.Arrow {
					middle := m.Outline.Bounds().Centre().X
					assert.InDelta(t, 2*middle-line.Path[0].X, once.Marks[i].Path[0].X, 1e-9, "it points the way it did")
				}
			}
		}
	}
}
