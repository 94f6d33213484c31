package sheet

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

func TestMirroredTwice(t *testing.T) {
	for _, name := range []string{"pinafore.toml", "nightgown.toml", "shirt.toml"} {
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
					assert.InDelta(t, -line.Path[0].X, once.Marks[i].Path[0].X, 1e-9, "it points the way it did")
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

// Two sheets of a piece that is cut twice are for one each, of four for two; a single sheet
// is turned over for the second.
func TestHowOftenEachSheetOfAPairIsCut(t *testing.T) {
	const turn = "where one is for the left and one for the right, turn it over for the second"
	for _, c := range []struct {
		name, head string
		way        source.Transfer
		cuts       []string
		turned     bool
	}{
		{"two, mirrored", "cut = 2", source.Mirror, []string{"cut 1", "cut 1"}, false},
		{"four, mirrored", "cut = 4\nlayers = 2", source.Mirror, []string{"cut 2", "cut 2"}, false},
		{"three, mirrored", "cut = 3", source.Mirror, []string{"cut 2", "cut 1"}, false},
		{"a pair to trace", "cut = 2\nprint = \"left and right\"", source.Trace, []string{"cut 1", "cut 1"}, false},
		{"two to trace", "cut = 2", source.Trace, []string{"cut 2"}, true},
		{"one to trace", "cut = 1", source.Trace, []string{"cut 1"}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, pattern := made.Front(t, "0", c.head+"\n"+apron)
			var cuts []string
			for _, m := range Of(Transferred(pattern, []source.Transfer{c.way})) {
				cuts = append(cuts, m.Cut)
				assert.Equal(t, c.turned, slices.Contains(m.Steps, turn))
			}
			assert.Equal(t, c.cuts, cuts)
		})
	}
}

// By the sheet beside a template cloth is cut that nothing shows through.
func TestNothingIsTracedBesideATemplate(t *testing.T) {
	_, pattern := made.Front(t, "0.375", sketch.Bosom+"[line.rule]\nalong = \"cf\"\ndistance = 3\n")
	for _, m := range Of(Transferred(pattern, []source.Transfer{source.Trace, source.Template})) {
		assert.NotContains(t, m.Steps, throughFolded, m.Key)
	}
}

// How the other half comes onto the cloth, by a sheet for the flat cloth that has one half of it.
func TestTheOtherHalf(t *testing.T) {
	const (
		turn   = "turn it over for the other half"
		single = "lay it on the wrong side of the cloth, over tracing paper; follow the lines with a wheel"
		double = "fold the cloth at cf, right side in, and lay it between two sheets of tracing paper, their colour to the cloth; " +
			"lay this sheet on them, cf on the fold of the cloth; follow the lines with a wheel, through both layers: that marks the other half too"
	)
	block := sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n"
	across := sketch.Bosom + sketch.Tucked("hem", "1/8", 3, "2", "") + "\n[block]\n"
	for _, c := range []struct {
		name, text string
		way        source.Transfer
		want       string // of those above, which its steps have
	}{
		{"traced", sketch.Bosom, source.Trace, throughFolded},
		{"traced whole", "print = \"whole\"\n" + sketch.Bosom, source.Trace, ""},
		{"traced as left and right", "print = \"left and right\"\n" + sketch.Bosom, source.Trace, ""},
		{"a block traced", block, source.Trace, turn},
		{"a block traced whole", "print = \"whole\"\n" + block, source.Trace, ""},
		{"a block with tucks across traced", across, source.Trace, ""},
		{"pricked", sketch.Bosom, source.Prick, turn},
		{"a block with tucks across pricked", across, source.Prick, ""},
		{"mirrored", sketch.Bosom, source.Mirror, double},
		{"mirrored whole", "print = \"whole\"\n" + sketch.Bosom, source.Mirror, single},
		{"mirrored as left and right", "print = \"left and right\"\n" + sketch.Bosom, source.Mirror, single},
		{"a block mirrored", block, source.Mirror, double},
		{"a block mirrored whole", "print = \"whole\"\n" + block, source.Mirror, single},
		{"a block with tucks across mirrored", across, source.Mirror, single},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, pattern := made.Front(t, "0.375", c.text)
			for _, m := range Of(Transferred(pattern, []source.Transfer{c.way})) {
				if m.Kind != mark.Piece && m.Kind != mark.TuckSheet {
					continue
				}
				steps := strings.Join(m.Steps, "; ")
				for _, one := range []string{throughFolded, turn, single, double} {
					assert.Equal(t, one == c.want, strings.Contains(steps, one), "%s: %q", m.Key, one)
				}
			}
		})
	}
}
