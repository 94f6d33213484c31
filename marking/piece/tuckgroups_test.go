package piece_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Sewn, a tuck lies over its own width, and spaces between tucks take up nothing (Kinne and
// Cooley, Clothing and Health, 1916, p. 99). So from the first stitching to the last fold it
// is the widths of all tucks, all gaps and all that shows between groups, whatever a tuck
// really takes; and that, times all tucks, is what all take. Derived for groups.
func TestAFieldOfGroupsIsTheSumOfWhatShows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		each, groups := rapid.IntRange(1, 5).Draw(t, "tucks"), rapid.IntRange(2, 8).Draw(t, "groups")
		width := float64(rapid.IntRange(4, 40).Draw(t, "width")) / 4
		gap := float64(rapid.IntRange(0, 20).Draw(t, "gap")) / 4
		shows := float64((each-1)*groups) * gap
		var betweens []string
		for range groups - 1 {
			between := float64(rapid.IntRange(0, 90).Draw(t, "between")) / 4
			betweens = append(betweens, fmt.Sprint(between))
			shows += between
		}
		takes, sample := 2*width, ""
		if rapid.Bool().Draw(t, "sampled") {
			takes = width * rapid.Float64Range(1.8, 2.4).Draw(t, "takes")
			sample = fmt.Sprintf("sample = {tucks = 10, flat = 3000, sewn = %.9f}\n", 3000-10*takes)
		}
		drawn := rapid.SampledFrom([]string{"flat", "finished"}).Draw(t, "drawn")
		pattern, err := made.Pattern("unit = \"mm\"\nallowance = 0\n" + sketch.Front(fmt.Sprintf("drawn = %q\n", drawn)+
			"a: 0,0 5000,0\nb: 5000,0 5000,300\nc: 5000,300 0,300\nd: 0,300 0,0\n---\n\n"+
			fmt.Sprintf("[tuck.t]\nbeside = \"d\"\nwidth = %v\ncount = %d\nfirst = 60\ngap = %v\nbetweens = [%s]\n", width, each, gap, strings.Join(betweens, ", "))+sample))
		require.NoError(t, err)
		tucks := pattern.Pieces[0].TuckRows[0]
		n := each * groups
		require.Len(t, tucks.Folds, n)
		require.Equal(t, groups, tucks.Groups())
		require.Equal(t, each, tucks.Together())
		require.InDelta(t, float64(n)*width+shows, tucks.Folds[n-1].Stitching+width-tucks.Folds[0].Stitching, 1e-4, "sewn")
		require.InDelta(t, float64(n)*takes, tucks.Taken(), 1e-4, "taken")
		require.InDelta(t, float64(n)*takes, tucks.Folds[n-1].At-tucks.Folds[0].At-(tucks.Folds[n-1].Stitching-tucks.Folds[0].Stitching)+takes, 1e-4, "flat less sewn")
	})
}

// The front of frontOf with 2 tucks of 1/8 in to a group, gap 1/8 in and 1/2 in between groups:
// sewn, each more group reaches 2/8 + 1/8 + 1/2 in farther. From the first stitching at 3/8 in
// one group reaches 3/4 in, and two 1 5/8; to the neck's end at 3 3/8 in there is room for two
// more of those 7/8 in each. All derived.
func TestGroupsThatFillTheNeck(t *testing.T) {
	groups := func(text string) string {
		return frontOf("finished", "WIDTH", "1/8", "COUNT", "2", "spacing = \"SPACING\"", "gap = \"1/8\"\n"+text)
	}
	p := &made.Of(t, "unit = \"in\"\n"+groups(`groups = 2`+"\n"+`between = "1/2"`)).Pieces[0]
	field, short := p.Field(p.TuckRows[0], length.Inch)
	require.True(t, short)
	assert.InDelta(t, 1.625, field.Tucks/25.4, 1e-6)
	assert.Equal(t, 8, field.Fill, "four groups")
	assert.InDelta(t, 1, field.Wider/25.4, 1e-6, "four tucks take 1/4 in each")
	p = &made.Of(t, "unit = \"in\"\n"+groups(`betweens = ["1/2", "1/4"]`)).Pieces[0]
	_, short = p.Field(p.TuckRows[0], length.Inch)
	assert.False(t, short, "nothing says what a third space would be")
}

func TestWhatIsSaidOfGroups(t *testing.T) {
	groups := func(text string) string {
		return frontOf("finished", "WIDTH", "1/8", "COUNT", "3", "spacing = \"SPACING\"", text)
	}
	for _, c := range []struct{ name, text, want string }{
		{"they stand apart", "gap = \"1/16\"\ngroups = 3\nbetween = \"1/4\"", ""},
		{"they do not", "gap = \"1/8\"\ngroups = 3\nbetween = \"1/8\"", "25: piece.front.tuck.t: the groups do not stand apart: between two of them 1/8 in shows, and 1/8 in between two tucks of one"},
		// Lines of neighbouring tucks lie 2 x 1/8 + g apart within a group, nearer than between: a
		// single tuck of each group has no gap.
		{"single ones have no gap", "betweens = [\"1/16\", 0]", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := groups(c.text)
			if c.name == "single ones have no gap" {
				text = sketch.Swap(text, "count = 3", "count = 1")
			}
			assert.Equal(t, c.want, strings.Join(remarksOf(t, text), "\n"))
		})
	}
}

// In a message a tuck has its number in the set and in its group; and of what fits, the whole
// groups are told.
func TestTucksOfGroupsThatLeaveThePiece(t *testing.T) {
	// Folded at 1 + 3 1/2 g + 3/4 k in, and the strip ends at 30 in: group 9 begins at 29 in.
	_, err := made.Pattern("unit = \"in\"\nallowance = 0\n" + sketch.Front(strip+sketch.Tuck("a", "1/4", 3, "1", "groups = 12\nbetween = \"1 1/4\"")))
	require.Error(t, err)
	assert.Equal(t, "pinafore.toml:17: piece.front.tuck.a: tuck 27 of 36 (tuck 3 of group 9) leaves the piece: it takes up the cloth from 30 1/4 in to 30 3/4 in from \"raw\", and the piece ends at 30 in\n"+
		"hint: the first 26 fit: 8 whole groups", err.Error())
}
