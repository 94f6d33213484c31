package sheet

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// namesAndCuts are the names of markings with how often they are cut.
func namesAndCuts(all []mark.Marking) []string {
	var told []string
	for _, m := range all {
		told = append(told, m.Name+" / "+m.Cut)
	}
	return told
}

// Pieces that are alike, wherever they lie, have one sheet with both their names; of those
// that differ in a line or a word each has its own. Coordinates are in inches.
func TestOneSheetForPiecesAlike(t *testing.T) {
	const shape = "cut = 2\nfoot: 0,0 4,0\nside: 4,0 3,5\ntop: 3,5 0,5\nfront: 0,5 0,0\n---\n\n[notch.a]\nedge = \"side\"\nfrom = \"foot\"\nat = 2\n"
	for _, c := range []struct {
		name, other string
		want        []string
	}{
		{"the same", shape, []string{"Cuff and Band / cut 2 for each"}},
		{"moved", sketch.Swap(shape, "0,0 4,0", "7,3 11,3", "4,0 3,5", "11,3 10,8", "3,5 0,5", "10,8 7,8", "0,5 0,0", "7,8 7,3"), []string{"Cuff and Band / cut 2 for each"}},
		{"from another corner", "cut = 2\ntop: 3,5 0,5\nfront: 0,5 0,0\nfoot: 0,0 4,0\nside: 4,0 3,5\n---\n\n[notch.a]\nedge = \"side\"\nfrom = \"foot\"\nat = 2\n", []string{"Cuff and Band / cut 2 for each"}},
		{"cut more often", sketch.Swap(shape, "cut = 2", "cut = 4"), []string{"Cuff: cut 2; Band: cut 4"}},
		{"turned by a half", "cut = 2\nfoot: 4,5 0,5\nside: 0,5 1,0\ntop: 1,0 4,0\nfront: 4,0 4,5\n---\n\n[notch.a]\nedge = \"side\"\nfrom = \"foot\"\nat = 2\n", nil},
		{"turned by a quarter", "cut = 2\nfoot: 5,0 5,4\nside: 5,4 0,3\ntop: 0,3 0,0\nfront: 0,0 5,0\n---\n\n[notch.a]\nedge = \"side\"\nfrom = \"foot\"\nat = 2\n", nil},
		{"mirrored", "cut = 2\nfoot: 4,0 0,0\nside: 0,0 1,5\ntop: 1,5 4,5\nfront: 4,5 4,0\n---\n\n[notch.a]\nedge = \"side\"\nfrom = \"foot\"\nat = 2\n", nil},
		{"a notch elsewhere", sketch.Swap(shape, "at = 2", "at = 2.01"), nil},
		{"no notch", sketch.Swap(shape, "[notch.a]\nedge = \"side\"\nfrom = \"foot\"\nat = 2\n", ""), nil},
		{"a notch more", shape + "\n[notch.b]\nedge = \"side\"\nfrom = \"foot\"\nat = 3\n", nil},
		{"an edge of another name", sketch.Swap(shape, "foot:", "hem:", "\"foot\"", "\"hem\""), nil},
		{"an edge as wide as a hair longer", sketch.Swap(shape, "4,0", "4.001,0"), []string{"Cuff and Band / cut 2 for each"}}, // 0.025 mm
		{"an edge longer by more than that", sketch.Swap(shape, "4,0", "4.003,0"), nil},                                        // 0.076 mm
		{"on the fold", sketch.Swap(shape, "cut = 2", "cut = 2\nfold = \"front\""), nil},
		{"with a tuck", sketch.Swap(shape, "[notch", "[tuck.t]\nbeside = \"front\"\nwidth = 0.125\ncount = 1\nfirst = 1\n[notch"), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, "unit = \"in\"\nallowance = 0.25\n"+
				sketch.Piece("cuff", "name = \"Cuff\"\n"+shape)+sketch.Piece("band", "name = \"Band\"\n"+c.other))
			got := Of(pattern)
			if c.want == nil {
				require.Len(t, got, 2)
				assert.Equal(t, []string{"Cuff", "Band"}, []string{got[0].Name, got[1].Name})
				assert.True(t, got[1].IsOf("Band") && !got[0].IsOf("Band"))
				return
			}
			require.Len(t, got, 1, "%v", namesAndCuts(got))
			assert.Equal(t, "cuff", got[0].Key)
			assert.Equal(t, "Cuff and Band", got[0].Piece)
			assert.True(t, got[0].IsOf("Cuff") && got[0].IsOf("Band") && !got[0].IsOf("Collar"))
			if c.name == "cut more often" {
				assert.Equal(t, c.want[0], got[0].Cut)
			} else {
				assert.Equal(t, c.want, namesAndCuts(got))
			}
		})
	}
}

// Every kind of sheet comes once for pieces that are alike, and one for each side of a
// piece even where it is its own mirror image.
func TestSheetsAlikeByKind(t *testing.T) {
	three := sketch.Piece("a", "name = \"A\"\n"+sketch.Box) + sketch.Piece("b", "name = \"B\"\n"+sketch.Box) + sketch.Piece("c", "name = \"C\"\n"+sketch.Box)
	pattern := made.Of(t, "unit = \"in\"\nallowance = 0.25\n"+three)
	assert.Equal(t, []string{"A, B and C / cut 1 for each"}, namesAndCuts(Of(pattern)))
	assert.Equal(t, []string{"A, B and C: mirrored / cut 1 for each"}, namesAndCuts(Of(Transferred(pattern, []source.Transfer{source.Mirror}))))
	pattern = made.Of(t, "unit = \"in\"\nallowance = 0.25\n"+sketch.Piece("a", "name = \"A\"\ncut = 2\n"+sketch.Box))
	assert.Len(t, Of(Transferred(pattern, []source.Transfer{source.Mirror})), 2)

	skirts := made.Example(t, "nightgown.toml")
	assert.Equal(t, []string{"Yoke front / cut 1 on the fold", "Yoke back / cut 2", "Skirt front and Skirt back / cut 1 on the fold for each", "Pocket / cut 1"}, namesAndCuts(Of(skirts)))
	templates := namesAndCuts(Of(Transferred(skirts, []source.Transfer{source.Template})))
	assert.Contains(t, templates, "Skirt front and Skirt back: template / ")
}

// Two paths are the same whatever their points are.
func TestSamePath(t *testing.T) {
	p := func(at ...float64) plane.Path {
		var path plane.Path
		for i := 0; i < len(at); i += 2 {
			path = append(path, plane.Point{X: at[i], Y: at[i+1]})
		}
		return path
	}
	for _, c := range []struct {
		name string
		a, b plane.Path
		want bool
	}{
		{"a point more", p(0, 0, 10, 0), p(0, 0, 4, 0, 10, 0), true},
		{"the other way", p(0, 0, 10, 0), p(10, 0, 0, 0), false},
		{"closed, from another corner", p(0, 0, 9, 0, 0, 9, 0, 0), p(9, 0, 0, 9, 0, 0, 9, 0), true},
		{"another way between the same ends", p(0, 0, 5, 5, 10, 0), p(0, 0, 2, 5, 10, 0), false},
		{"a part of it", p(0, 0, 10, 0), p(0, 0, 9.9, 0), false},
		{"nothing", nil, nil, true},
		{"nothing, and something", nil, p(0, 0, 1, 0), false},
		{"one point", p(1, 1), p(1, 1), true},
	} {
		assert.Equal(t, c.want, samePath(c.a, c.b), c.name)
		assert.Equal(t, c.want, samePath(c.b, c.a), c.name)
	}
}
