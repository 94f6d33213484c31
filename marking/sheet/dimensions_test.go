package sheet

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// inInches finds the first length of a text.
var inInches = regexp.MustCompile(`(\d[\d /]*) in\b`)

// Whatever tucks and pleats a piece has, and on whichever of its sheets a distance is told: a
// ruler shows there what is told, from the edge or the fold that is named to the line that is.
func TestDistancesAreWhatARulerShows(t *testing.T) {
	found := map[mark.Kind]int{}
	rapid.Check(t, func(t *rapid.T) {
		text := measuredDraft(t)
		pattern, err := made.Pattern(text)
		if err != nil {
			t.Skip("no such piece can be made: ", err)
		}
		way := rapid.SampledFrom([]source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick}).Draw(t, "transfer")
		for _, m := range Of(Transferred(pattern, []source.Transfer{way})) {
			for _, d := range m.Dimensions {
				found[m.Kind]++
				told, err := length.Parse(inInches.FindString(d.Text), length.Inch)
				require.NoError(t, err, d.Text)
				require.InDelta(t, told, d.From.Distance(d.To), length.Inch.Ruler()/2+piece.Straightness, "%s of %s, in mm, in\n%s", d.Text, m.Key, text)
				if line, _, isLine := strings.Cut(d.Text, ": "); isLine && !strings.HasSuffix(d.Text, " long") {
					lies := func(at plane.Point, on mark.Mark) bool { return sketch.Away(at, on.Path) < piece.Straightness }
					// A line that folds part has its name at one of its parts.
					is := m.Marks[slices.IndexFunc(m.Marks, func(one mark.Mark) bool { return one.Name == line })]
					require.True(t, slices.ContainsFunc(m.Marks, func(one mark.Mark) bool { return one.Key == is.Key && lies(d.To, one) }),
						"%s of %s ends on its line, in\n%s", d.Text, m.Key, text)
					require.True(t, slices.ContainsFunc(m.Marks, func(one mark.Mark) bool {
						return lies(d.From, one) && (one.Role == mark.Cut || one.Role == mark.FoldEdge || one.Role == mark.Centre || strings.Contains(d.Text, one.Name))
					}), "%s of %s begins on its edge, in\n%s", d.Text, m.Key, text)
				}
			}
		}
	})
	for _, kind := range []mark.Kind{mark.Piece, mark.CuttingSheet} {
		assert.NotZero(t, found[kind], "distances on a %v", kind)
	}
}

// measuredDraft draws a front with tucks and pleats this way and that, and with lines beside its
// edges and along them, in inches.
func measuredDraft(t *rapid.T) string {
	is := func(what string) bool { return rapid.Bool().Draw(t, what) }
	eighths := func(what string, least, most int) string {
		return fmt.Sprintf("%d/8", rapid.IntRange(least, most).Draw(t, what))
	}
	head := ""
	if is("finished") {
		head += "drawn = \"finished\"\n"
	}
	block := is("block")
	if is("on the fold") {
		head += "fold = \"centre\"\n"
		if is("whole") {
			head += "print = \"whole\"\n"
		}
	}
	slant := float64(rapid.IntRange(-4, 8).Draw(t, "slant")) / 4
	text := head + fmt.Sprintf("centre: 0,0 0,12\nneck: 0,12 2,12.25 3,13.5 | smooth = true\nshoulder: 3,13.5 7,%g\nside: 7,%g %g,0\nhem: %g,0 0,0", 13.5-slant, 13.5-slant, 9+slant, 9+slant)
	if is("hem") {
		text += " | hem = 2; turn = 0.25"
	}
	text += "\n---\n"
	for _, row := range []string{
		`tuck yoke centre 1/8 %d %s | press = "away"; below = "neck"; length = 4`,
		"tuck long centre 1/4 %d %s",
		"pleat middle centre 1/2 %d %s",
		"pleat first centre 1/2 %d 0 | kind = \"inverted\"",
		"tuck growth hem 1/4 %d %s",
		"pleat low hem 3/8 %d %s",
	} {
		if is(row) && !(block && strings.Contains(row, "hem")) {
			args := []any{rapid.IntRange(1, 4).Draw(t, "count"), eighths("first", 0, 40)}
			text += sketch.Rows(fmt.Sprintf(row, args[:strings.Count(row, "%")]...))
		}
	}
	for _, edge := range []string{"centre", "neck", "shoulder", "side", "hem"} {
		if is("along " + edge) {
			text += fmt.Sprintf("\n[line.\"by %s\"]\nalong = %q\ndistance = %q\n", edge, edge, eighths("distance", 1, 56))
		}
	}
	for _, edge := range []string{"centre", "side", "hem"} {
		if is("beside " + edge) {
			text += fmt.Sprintf("\n[line.\"beside %s\"]\nbeside = %q\nat = %q\nkind = \"stitch\"\n", edge, edge, eighths("at", 1, 56))
		}
	}
	if block {
		text += "\n[block]\nends = 1\n"
	}
	return "unit = \"in\"\nallowance = 0.25\n" + sketch.Front(text)
}
