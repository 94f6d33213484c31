package sheet

import (
	"strings"
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

// Of a back that opens the two sheets are left and right, as they are worn; of pieces whose
// names do not tell it they are one side and the other.
func TestPaleWords(t *testing.T) {
	const wrong = "WRONG SIDE UP"
	for _, c := range []struct {
		name, back string
		way        source.Transfer
		pale       [][]string
		side       mark.Side
	}{
		// The centre back is at the left: seen from behind, the piece as drawn is the right one.
		{"mirrored, known", "cut = 2\nEDGES centre back|neck", source.Mirror, [][]string{{"RIGHT", wrong}, {"LEFT", wrong}}, mark.WrongSideUp},
		{"mirrored, unknown", "cut = 2\nEDGES left|top", source.Mirror, [][]string{{"ONE SIDE", wrong}, {"OTHER SIDE", wrong}}, mark.WrongSideUp},
		{"mirrored, one", "cut = 1\nEDGES left|top", source.Mirror, [][]string{{wrong}}, mark.WrongSideUp},
		{"a pair to trace, known", "cut = 2\nprint = \"left and right\"\nEDGES centre back|neck", source.Trace, [][]string{{"RIGHT"}, {"LEFT"}}, mark.RightSideUp},
		{"a pair to trace, unknown", "cut = 2\nprint = \"left and right\"\nEDGES left|top", source.Trace, [][]string{{"ONE SIDE"}, {"OTHER SIDE"}}, mark.RightSideUp},
		{"one to trace", "cut = 2\nEDGES left|top", source.Trace, [][]string{nil}, mark.RightSideUp},
	} {
		t.Run(c.name, func(t *testing.T) {
			head, names, _ := strings.Cut(c.back, "EDGES ")
			centre, neck, _ := strings.Cut(names, "|")
			text := "[piece.back]\nname = \"Back\"\n" + head + "\n" +
				"[piece.back.edge.\"" + centre + "\"]\npoints = [[0, 10], [0, 0]]\n[piece.back.edge.hem]\npoints = [[0, 0], [8, 0]]\n" +
				"[piece.back.edge.side]\npoints = [[8, 0], [8, 10]]\n[piece.back.edge.\"" + neck + "\"]\npoints = [[8, 10], [0, 10]]\n"
			pattern, err := made.Pattern(text)
			require.NoError(t, err)
			var pale [][]string
			for _, m := range Of(Transferred(pattern, []source.Transfer{c.way})) {
				pale = append(pale, m.Pale)
				assert.Equal(t, c.side, m.Side)
			}
			assert.Equal(t, c.pale, pale)
		})
	}
}
