package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// tuckmark runs a command line in a folder of its own that holds the given
// files, and returns the status and what it printed. The name of the folder is
// written as DIR.
func tuckmark(t *testing.T, files map[string]string, args ...string) (status int, stdout, stderr, dir string) {
	t.Helper()
	dir = t.TempDir()
	for name, text := range files {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	for i, a := range args {
		args[i] = strings.ReplaceAll(a, "DIR", dir)
	}
	var out, errs bytes.Buffer
	status = run(append([]string{"tuckmark"}, args...), &out, &errs)
	clean := func(b bytes.Buffer) string { return strings.ReplaceAll(b.String(), dir, "DIR") }
	return status, clean(out), clean(errs), dir
}

// left lists the files of a folder.
func left(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

const bib = `unit = "in"
allowance = "1/4"
[piece.bib]
[piece.bib.edge.top]
points = [[0, 6], [4, 6]]
[piece.bib.edge.rest]
points = [[0, 6], [0, 0], [4, 0], [4, 6]]
`

func TestSheetsAreMade(t *testing.T) {
	for _, c := range []struct {
		name string
		args []string
		out  string
	}{
		{"under the name asked for", []string{"sheet", "DIR/bib.toml", "-o", "DIR/out.pdf"}, "out.pdf"},
		{"beside the file without one", []string{"sheet", "DIR/bib.toml"}, "bib.pdf"},
		{"options before the file", []string{"sheet", "--paper", "a4", "--output", "DIR/out.pdf", "DIR/bib.toml"}, "out.pdf"},
		{"a paper in capitals", []string{"sheet", "--paper", "A4", "DIR/bib.toml"}, "bib.pdf"},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, stdout, stderr, dir := tuckmark(t, map[string]string{"bib.toml": bib}, c.args...)
			assert.Equal(t, statusDone, status)
			assert.Empty(t, stderr)
			assert.Equal(t, "DIR/"+c.out+": 3 pages: the first proves the scale, page 2 has the figures, page 3 holds the pieces\n"+
				"print page 1 at 100 % and measure its check square before you print the rest\n", stdout)
			assert.ElementsMatch(t, []string{"bib.toml", c.out}, left(t, dir), "nothing else is left behind")
			pdf, err := os.ReadFile(filepath.Join(dir, c.out))
			require.NoError(t, err)
			assert.True(t, bytes.HasPrefix(pdf, []byte("%PDF-")), "it is a PDF")
		})
	}
}

// What is there already keeps its rights; a device or a pipe is left alone.
func TestSheetsKeepWhatIsThere(t *testing.T) {
	dir := t.TempDir()
	old := filepath.Join(dir, "old.pdf")
	require.NoError(t, os.WriteFile(old, []byte("old"), 0o600))
	status, _, stderr, _ := tuckmark(t, map[string]string{"bib.toml": bib}, "sheet", "DIR/bib.toml", "-o", old)
	require.Equal(t, statusDone, status, stderr)
	info, err := os.Stat(old)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode().Perm(), "the rights of the file that was replaced")

	null := filepath.Join(dir, "null.pdf")
	if err := os.Symlink(os.DevNull, null); err != nil {
		t.Skipf("no links here: %v", err)
	}
	status, _, stderr, _ = tuckmark(t, map[string]string{"bib.toml": bib}, "sheet", "DIR/bib.toml", "-o", null)
	assert.Equal(t, statusFault, status)
	assert.Equal(t, null+": this is no ordinary file\nhint: give -o another name\n", stderr)
}

func TestSheetsThroughALink(t *testing.T) {
	dir := t.TempDir()
	real, link := filepath.Join(dir, "real.pdf"), filepath.Join(dir, "link.pdf")
	require.NoError(t, os.WriteFile(real, []byte("old"), 0o644))
	if err := os.Symlink(real, link); err != nil {
		t.Skipf("no links here: %v", err)
	}
	status, _, stderr, _ := tuckmark(t, map[string]string{"bib.toml": bib}, "sheet", "DIR/bib.toml", "-o", link)
	require.Equal(t, statusDone, status, stderr)
	to, err := os.Readlink(link)
	require.NoError(t, err, "the link is still one")
	pdf, err := os.ReadFile(to)
	require.NoError(t, err)
	assert.True(t, bytes.HasPrefix(pdf, []byte("%PDF-")), "what it points to is replaced")
}

// A file that names no unit is drawn in inches, and one without allowances
// without stitch lines; both are said.
func TestRemarks(t *testing.T) {
	without := strings.NewReplacer("unit = \"in\"\n", "", "allowance = \"1/4\"\n", "").Replace(bib)
	status, stdout, _, _ := tuckmark(t, map[string]string{"bib.toml": without}, "sheet", "DIR/bib.toml")
	assert.Equal(t, statusDone, status)
	assert.Contains(t, stdout, "DIR/bib.toml: no unit is given, so bare numbers were taken for inches; unit = \"in\", \"cm\" or \"mm\" says it\n")
	assert.Contains(t, stdout, "DIR/bib.toml: no edge has an allowance or a hem, so there are no stitch lines; allowance = \"3/8\" at the top gives one to every edge\n")
}

func TestSheetsReplaceOlderOnes(t *testing.T) {
	status, _, _, dir := tuckmark(t, map[string]string{"bib.toml": bib, "bib.pdf": "old"}, "sheet", "DIR/bib.toml")
	assert.Equal(t, statusDone, status)
	pdf, err := os.ReadFile(filepath.Join(dir, "bib.pdf"))
	require.NoError(t, err)
	assert.NotEqual(t, "old", string(pdf))
}

func TestFailuresLeaveNothing(t *testing.T) {
	wrong := strings.Replace(bib, "points = [[0, 6], [4, 6]]", "pionts = [[0, 6], [4, 6]]", 1)
	far := strings.Replace(bib, "[4, 6]]", "[1e300, 6]]", 1)
	acre := strings.NewReplacer("4, ", "2500, ", ", 6", ", 2500").Replace(bib)
	acres := acre + strings.ReplaceAll(strings.Join(strings.SplitAfter(acre, "\n")[2:], ""), "bib", "bob")
	for _, c := range []struct {
		name   string
		files  map[string]string
		args   []string
		status int
		stderr string
	}{
		{"a mistake in the file", map[string]string{"bib.toml": wrong}, []string{"sheet", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml:5: piece.bib.edge.top.pionts: this key is not known\nhint: did you mean \"points\"?\n"},
		{"no such file", nil, []string{"sheet", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml: there is no such file\nhint: look at its name, and at the folder you are in\n"},
		{"a folder", nil, []string{"sheet", "DIR"}, statusFault,
			"DIR: this is a folder, not a file\nhint: name the .toml file in it\n"},
		{"an empty file", map[string]string{"bib.toml": ""}, []string{"sheet", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml: the file is empty\nhint: describe each piece under a line such as [piece.front], and each of its edges under [piece.front.edge.neck]\n"},
		{"a file of 50 MB", map[string]string{"bib.toml": strings.Repeat("# much too much\n", 50<<20/16)}, []string{"sheet", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml: the file is 50 MB; a pattern is at most 10 MB\nhint: is this the file you meant?\n"},
		{"no folder for the sheets", map[string]string{"bib.toml": bib}, []string{"sheet", "DIR/bib.toml", "-o", "DIR/none/out.pdf"}, statusFault,
			"DIR/none/out.pdf: there is no folder \"DIR/none\"\nhint: make the folder first, or write the sheets elsewhere with -o\n"},
		{"a file where the folder should be", map[string]string{"bib.toml": bib}, []string{"sheet", "DIR/bib.toml", "-o", "DIR/bib.toml/out.pdf"}, statusFault,
			"DIR/bib.toml/out.pdf: there is no folder \"DIR/bib.toml\"\nhint: make the folder first, or write the sheets elsewhere with -o\n"},
		{"a folder in place of the sheets", map[string]string{"bib.toml": bib}, []string{"sheet", "DIR/bib.toml", "-o", "DIR"}, statusFault,
			"DIR: this is a folder, not a file\nhint: give -o the name of a file in it, such as DIR/sheets.pdf\n"},
		{"the sheets over the file", map[string]string{"bib.toml": bib}, []string{"sheet", "DIR/bib.toml", "-o", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml: this would write the sheets over the description\nhint: give -o another name, that ends in .pdf\n"},
		{"a name that is none for a PDF", map[string]string{"bib.toml": bib}, []string{"sheet", "DIR/bib.toml", "-o", "DIR/bib.png"}, statusFault,
			"DIR/bib.png: the sheets are a PDF, and this is no name for one\nhint: give -o a name that ends in .pdf\n"},
		{"a number out of all measure", map[string]string{"bib.toml": far}, []string{"sheet", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml:5: piece.bib.edge.top.points: point 2: 1e+300 is more than 100 m\nhint: check the number and its unit\n"},
		{"more pages than 2,000", map[string]string{"bib.toml": acres}, []string{"sheet", "DIR/bib.toml"}, statusFault,
			"DIR/bib.toml: the pieces and the figures need 2,820 pages of letter paper; 2,000 is the most\nhint: see whether the file's unit is the one meant, print fewer pieces, or choose larger paper\n"},
		{"no command", nil, nil, statusUsage,
			"tuckmark: no command was given\nhint: `tuckmark sheet FILE.toml` makes the sheets, `tuckmark figures FILE.toml` prints the numbers; `tuckmark --help` shows every command\n"},
		{"an unknown command", nil, []string{"shet"}, statusUsage,
			"tuckmark: there is no command \"shet\"\nhint: `tuckmark sheet FILE.toml` makes the sheets, `tuckmark figures FILE.toml` prints the numbers; `tuckmark --help` shows every command\n"},
		{"an unknown option", nil, []string{"sheet", "--papr", "a4", "x.toml"}, statusUsage,
			"tuckmark: there is no option \"papr\"\nhint: `tuckmark sheet --help` shows what it takes\n"},
		{"an option without its value", nil, []string{"sheet", "x.toml", "-o"}, statusUsage,
			"tuckmark: the option \"o\" needs a value\nhint: `tuckmark sheet --help` shows what it takes\n"},
		{"an unknown paper", nil, []string{"sheet", "--paper", "folio", "x.toml"}, statusUsage,
			"tuckmark: --paper: no paper is called \"folio\"\nhint: the papers are letter, a4, legal, tabloid, a3 and either; or write roll:36in, single, or a size such as 210x297mm\n"},
		{"no file", nil, []string{"sheet"}, statusUsage,
			"tuckmark: sheet takes the name of one file\nhint: write it like `tuckmark sheet linden.toml -o linden.pdf`\n"},
		{"an empty name", nil, []string{"sheet", ""}, statusUsage,
			"tuckmark: sheet takes the name of one file\nhint: write it like `tuckmark sheet linden.toml -o linden.pdf`\n"},
		{"help with a value", nil, []string{"sheet", "--help=3"}, statusUsage,
			"tuckmark: the option \"help\" does not take \"3\"\nhint: `tuckmark sheet --help` shows what it takes\n"},
		{"help as a command", nil, []string{"help", "shet"}, statusUsage,
			"tuckmark: there is no command \"help\"\nhint: `tuckmark sheet FILE.toml` makes the sheets, `tuckmark figures FILE.toml` prints the numbers; `tuckmark --help` shows every command\n"},
		{"a length without quotes", nil, []string{"scale", "--across", "3", "15/16", "--down", "4", "a.toml"}, statusUsage,
			"tuckmark: scale takes the name of one file\nhint: a length with a space in it stands in quotes, such as \"3 15/16\"\n"},
		{"two files", nil, []string{"sheet", "a.toml", "b.toml"}, statusUsage,
			"tuckmark: sheet takes the name of one file\nhint: write it like `tuckmark sheet linden.toml -o linden.pdf`\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, stdout, stderr, dir := tuckmark(t, c.files, c.args...)
			assert.Equal(t, c.status, status)
			assert.Empty(t, stdout)
			assert.Equal(t, c.stderr, stderr)
			assert.Len(t, left(t, dir), len(c.files), "nothing is left behind")
		})
	}
}

func TestHelp(t *testing.T) {
	status, stdout, stderr, _ := tuckmark(t, nil, "--help")
	assert.Equal(t, statusDone, status)
	assert.Empty(t, stderr)
	assert.Contains(t, stdout, "sheet")
	status, stdout, _, _ = tuckmark(t, nil, "sheet", "--help")
	assert.Equal(t, statusDone, status)
	for _, want := range []string{"--output", "--paper", "letter, a4"} {
		assert.Contains(t, stdout, want)
	}
}

// A block piece: what to tear is said on the screen, and so is what is no mistake
// but ought to be looked at, with its place in the file.
func TestWhatIsSaidOfABlock(t *testing.T) {
	block := `unit = "in"
allowance = "3/8"
[piece.bib]
name = "Bib"
fold = "centre"
drawn = "finished"
[piece.bib.edge.centre]
points = [[0, 0], [0, 6]]
[piece.bib.edge.top]
points = [[0, 6], [4, 6]]
[piece.bib.edge.side]
points = [[4, 6], [4, 0]]
[piece.bib.edge.foot]
points = [[4, 0], [0, 0]]
[piece.bib.tuck.narrow]
beside = "centre"
width = "1/8"
count = 3
first = "1/2"
spacing = "1/4"
sample = {tucks = 6, flat = 4, sewn = "2 1/2"}
[piece.bib.block]
sides = "1/2"
`
	status, stdout, stderr, _ := tuckmark(t, map[string]string{"bib.toml": block}, "sheet", "DIR/bib.toml")
	assert.Equal(t, statusDone, status, stderr)
	// 8 in finished, six tucks of 1/4 in, 1/2 in at each side; 6 in and 1/2 in at
	// either end. Fold lines 1/4 in apart leave 1/4 - 1/4 - 1/8 in between tucks.
	assert.Equal(t, `DIR/bib.toml:15: piece.bib.tuck.narrow: the gap is below nought: each tuck covers the next stitching by 1/8 in; with gap = 0 in place of spacing they just touch, and their fold lines lie 3/8 in apart
Bib: tear a block 10 1/2 in wide and 7 in long
DIR/bib.pdf: 3 pages: the first proves the scale, page 2 has the figures, page 3 holds the pieces
print page 1 at 100 % and measure its check square before you print the rest
`, stdout)
}
