package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/marking/terminal"
)

const threeViews = `
unit = "mm"
allowance = 5
[piece.front]
rectangle = [100, 200]
[piece.front.tuck.pin]
beside = "left"
width = 3
count = 3
first = 20
spacing = 12
[piece.cape]
rectangle = [60, 80]
[seam.side]
join = ["front.right", "cape.left"]
[trim.lace]
along = ["front.top"]
[view.plain]
without = ["piece.cape", "seam.side"]
[view.plain.piece.front.tuck.pin]
count = 2
[view.wide.piece.front]
rectangle = [110, 200]
[view.wide.piece.cape]
rectangle = [60, 90]
`

// viewsInPrint sets the views of a text side by side, spaces made one.
func viewsInPrint(t *testing.T, text string, views ...string) string {
	t.Helper()
	var patterns []*garment.Pattern
	for _, view := range views {
		spec, err := source.Reader{Printable: sketch.HasLetter, View: view}.Read("f.toml", []byte(text))
		require.NoError(t, err)
		pattern, err := garment.Check(spec)
		require.NoError(t, err)
		patterns = append(patterns, pattern)
	}
	var lines []string
	for line := range strings.Lines(terminal.Text(Views(patterns, OwnUnit), 200)) {
		lines = append(lines, strings.Join(strings.Fields(line), " "))
	}
	return strings.Join(lines, "\n")
}

func TestViewsSideBySide(t *testing.T) {
	said := viewsInPrint(t, threeViews, "", "plain", "wide")
	for what, lines := range map[string]string{
		"a table that one view does not have is compared among the others": "cape: cut\nas it\nstands wide\nright 80 90\nleft 80 90\n",
		"and which have it is said in one line":                            "\ncape: only as it stands, wide\n",
		"of tables that one view has only that is said":                    "\nside: only as it stands, wide\n",
		"a set of tucks is one, of however many it is":                     "\nfront, pin: fold\nas it\nstands plain wide\ntuck 3 44 – 44\n",
		"how many is said under it":                                        "\nas it stands, wide: 3 tucks, each 3 mm wide\n",
		"of each":                                                          "\nplain: 2 tucks, each 3 mm wide\n",
	} {
		assert.Contains(t, said, lines, what)
	}
}

// A sum has no number in some columns: there is nothing to compare.
func TestSumsOfOneView(t *testing.T) {
	said := viewsInPrint(t, threeViews+"[view.frill.trim.lace]\nfullness = 2\n", "", "frill")
	assert.Contains(t, said, "lace: together\nas it\nstands frill\n")
	assert.Contains(t, said, "2 times that, gathered – 1", "only the one has it")
	assert.NotContains(t, said, "lace: each", "where neither has a number")
	assert.NotContains(t, said, "lace: times")
}

func TestViewsThatDoNotDiffer(t *testing.T) {
	assert.Contains(t, viewsInPrint(t, threeViews, "", ""), "\nNo number differs.")
}

// A tuck is stitched along two lines, and both are told. Derived by arithmetic: a fold at 20 with a
// tuck 3 wide is stitched at 17 and 23, one 5 wide at 15 and 25.
func TestViewsOfColumnsThatAreAlike(t *testing.T) {
	text := strings.Replace(threeViews, "count = 3\n", "count = 1\n", 1) + "[view.deep.piece.front.tuck.pin]\nwidth = 5\n"
	said := viewsInPrint(t, text, "", "deep")
	assert.Contains(t, said, "stitch, 1 of 2\nas it\nstands deep\ntuck 1 17 15\n")
	assert.Contains(t, said, "stitch, 2 of 2\nas it\nstands deep\ntuck 1 23 25\n")
}
