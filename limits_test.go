package main

import (
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/wording"
	"tuckmark/pdfout/paper"
)

// Rules of this file: each limit that the guide's table names has a case, which writes a file with
// as many, and with one more. The number is that of the guide. The one is not refused for it, the
// other is, with the number in the message.

// repeated is a text n times, with the number of each, from 1 on, in place of %d.
func repeated(n int, text string) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.ReplaceAll(text, "%d", strconv.Itoa(i+1)))
	}
	return b.String()
}

// listed is a list of n names.
func listed(n int, name string) string {
	return "[" + strings.TrimSuffix(repeated(n, `"`+name+`", `), ", ") + "]"
}

const (
	bandPiece = "[piece.band]\nrectangle = [\"200 cm\", \"100 cm\"]\n"
	tuckOfSet = "[piece.band.tuck.a]\nbeside = \"left\"\nwidth = \"1 mm\"\nfirst = \"1 mm\"\n"
)

// square is a drawing, with some bytes more than it needs.
func square(more int) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" width="2in" height="2in" viewBox="0 0 2 2"><path d="M 0 0 H 2 V 2 H 0 Z"/></svg>` + strings.Repeat("\n", more)
}

// limit is a limit of the guide.
type limit struct {
	of   string           // what the guide says of it, in its row
	file func(int) string // with so many; what it names lies beside it
	says string           // of what is more
}

var limits = []limit{
	{"a file, with those it is like", func(n int) string { return bandPiece + strings.Repeat("\n", n<<20-len(bandPiece)) }, "a pattern is at most %s MB"},
	{"a drawing", func(n int) string {
		if err := os.WriteFile("large.svg", []byte(square(n<<20-len(square(0)))), 0o644); err != nil {
			panic(err)
		}
		return "[piece.a]\n[piece.a.outline]\nfrom = \"large.svg\"\nedges = [\"left\", \"top\", \"right\", \"bottom\"]\n"
	}, "more than %s MB"},
	{"files that are like each other in a row", func(n int) string { return fmt.Sprintf("like = \"like%d.toml\"\n", n-1) }, "more than %s files are like each other"},
	{"what a length is written with", func(n int) string { return "[cloth]\nwidth = \"" + strings.Repeat("0", n) + "\"\n" + bandPiece }, "at most %s"},
	{"a name, or any other text", func(n int) string { return "title = \"" + strings.Repeat("a", n) + "\"\n" + bandPiece }, "at most %s letters"},
	{"a length", func(n int) string { return fmt.Sprintf("[cloth]\nwidth = \"%d cm\"\n", 100*n) + bandPiece }, "more than %s m"},
	{"pieces of a file", func(n int) string { return repeated(n, "[piece.a%d]\nrectangle = [1, 1]\n") }, "at most %s are drawn"},
	{"edges of a piece", func(n int) string {
		return "[piece.a]\n" + repeated(n, "[piece.a.edge.e%d]\npoints = [[%d, 0], [1, %d]]\n")
	}, "at most %s are drawn"},
	{"sets of tucks, or of pleats, of a piece", func(n int) string {
		return bandPiece + repeated(n, "[piece.band.pleat.a%d]\nbeside = \"left\"\ndepth = 0.01\nfirst = %d\n") + repeated(n, "[piece.band.tuck.a%d]\nbeside = \"left\"\nwidth = 0.01\ncount = 1\nfirst = %d\n")
	}, "at most %s are drawn"},
	{"lines or notches of a piece", func(n int) string {
		return bandPiece + repeated(n, "[piece.band.notch.a%d]\nedge = \"top\"\nfrom = \"left\"\nat = 1\n")
	}, "at most %s are drawn"},
	{"seams", func(n int) string {
		return bandPiece + repeated(n, "[seam.a%d]\njoin = [\"band.top\", \"band.bottom\"]\n")
	}, "at most %s are drawn"},
	{"trims, ruffles, or bindings", func(n int) string {
		return bandPiece + repeated(n, "[trim.a%d]\nalong = [\"band.top\"]\n") + repeated(n, "[ruffle.a%d]\nalong = [\"band.top\"]\nfullness = 2\ndepth = 1\n") + repeated(n, "[binding.a%d]\nalong = [\"band.top\"]\nwidth = 0.1\n")
	}, "at most %s are drawn"},
	{"tucks, or pleats, of one set", func(n int) string { return bandPiece + tuckOfSet + fmt.Sprintf("count = %d\n", n) }, "from 1 to %s"},
	{"edges that a seam's side, a trim, a ruffle or a binding runs along", func(n int) string {
		return repeated(n, "[piece.a%d]\nrectangle = [1, 1]\n") + "[trim.a]\nalong = " + listed(n, "a%d.top") + "\n"
	}, "at most %s are measured"},
	{"names in one `without`", func(n int) string {
		return bandPiece + repeated(n, "[piece.band.line.a%d]\nalong = \"top\"\ndistance = 1\n") + "[piece.other]\nlike = \"band\"\nwithout = " + listed(n, "line.a%d") + "\n"
	}, "at most %s are left out"},
	{"drawings of a file", func(n int) string {
		return repeated(n, "[piece.a%d]\n[piece.a%d.outline]\nfrom = \"a%d.svg\"\nedges = [\"left\", \"top\", \"right\", \"bottom\"]\n")
	}, "more than %s drawings"},
	{"pieces cut from one outline", func(n int) string { return bandPiece + fmt.Sprintf("cut = %d\n", n) }, "from 1 to %s"},
	{"views of a file", func(n int) string { return bandPiece + repeated(n, "[view.a%d]\ntitle = \"a\"\n") }, "at most %s are made"},
}

// limitsOfGuide are the numbers of the guide's table of limits, by what each is of.
func limitsOfGuide(t *testing.T) map[string]string {
	t.Helper()
	page, err := os.ReadFile(filePage)
	require.NoError(t, err)
	_, table, _ := strings.Cut(string(page), "\n## Limits\n")
	all := map[string]string{}
	for line := range strings.Lines(table) {
		if cells := strings.Split(line, "|"); len(cells) == 4 && strings.ContainsAny(cells[1], "0123456789") {
			for _, of := range strings.Split(cells[2], "; ") {
				all[strings.TrimSpace(of)] = strings.TrimSpace(cells[1])
			}
		}
	}
	require.NotEmpty(t, all, "the guide has a table of limits")
	return all
}

func TestLimits(t *testing.T) {
	inAnotherStep(t)
	said := limitsOfGuide(t)
	t.Chdir(t.TempDir())
	for i := range 101 {
		require.NoError(t, os.WriteFile(fmt.Sprintf("a%d.svg", i+1), []byte(square(0)), 0o644))
	}
	require.NoError(t, os.WriteFile("like1.toml", []byte(bandPiece), 0o644))
	for i := 2; i <= 12; i++ {
		require.NoError(t, os.WriteFile(fmt.Sprintf("like%d.toml", i), fmt.Appendf(nil, "like = \"like%d.toml\"\n", i-1), 0o644))
	}
	limits := slices.Concat(limits, limitsInAll)
	for _, limit := range limits {
		t.Run(limit.of, func(t *testing.T) {
			number, _, _ := strings.Cut(said[limit.of], " ")
			most, err := strconv.Atoi(strings.ReplaceAll(number, ",", ""))
			require.NoError(t, err, "the guide's limit of %q: %q", limit.of, said[limit.of])
			refused := fmt.Sprintf(limit.says, strconv.Itoa(most))
			assert.NotContains(t, readAs(t, limit.file(most)), refused)
			assert.Contains(t, readAs(t, limit.file(most+1)), refused)
		})
	}
	for of := range said {
		found := limitsHeldElsewhere[of] != ""
		for _, limit := range limits {
			found = found || limit.of == of
		}
		assert.True(t, found, "the guide's limit of %q has no case", of)
	}
}

// readAs is what is wrong with a file of this text; "" where nothing is.
func readAs(t *testing.T, text string) string {
	t.Helper()
	require.NoError(t, os.WriteFile("f.toml", []byte(text), 0o644))
	if _, err := readPattern("f.toml", ""); err != nil {
		return strings.NewReplacer(",0", "0").Replace(err.Error()) // the thousands of numbers
	}
	return ""
}

// What one page has no room for comes on others, with figures and steps on the first: that it is one
// page for all counts on nowhere.
func TestWhatOnePageHasNoRoomFor(t *testing.T) {
	t.Chdir(t.TempDir())
	pieces := repeated(800, "[piece.p%d]\nname = \"Piece %d "+strings.Repeat("W", 180)+"\"\nrectangle = [200, 100]\n")
	require.NoError(t, os.WriteFile("f.toml", []byte("unit = \"mm\"\n"+pieces), 0o644))
	var said strings.Builder
	status := run([]string{"tuckmark", "sheet", "--paper", "single", "f.toml"}, &said, &said)
	assert.Equal(t, statusDone, status, said.String())
	assert.Regexp(t, `f\.pdf: [0-9]+ pages, `, said.String())
}

// How many pages sheets may have hangs on the paper, and stands under the table.
func TestMostPagesOfTheGuide(t *testing.T) {
	text, err := os.ReadFile("examples/guide/file.md")
	require.NoError(t, err)
	assert.Contains(t, string(text), "more than "+wording.Thousands(paper.MaxPages)+" pages are refused")
}
