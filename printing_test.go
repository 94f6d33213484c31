package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// bibs are two pieces, of 4 by 6 in and of 4 by 20 in.
const bibs = bib + `[piece.strap]
[piece.strap.edge.top]
points = [[0, 20], [4, 20]]
[piece.strap.edge.rest]
points = [[0, 20], [0, 0], [4, 0], [4, 20]]
`

func TestWhatIsPrinted(t *testing.T) {
	const prove = "print page 1 at 100 % and measure its check square before you print the rest"
	for _, c := range []struct {
		name string
		args []string
		out  string
		said string
	}{
		{"on letter", nil, "bib.pdf", "5 pages: the first proves the scale, page 2 has the figures, pages 3 to 5 hold the pieces\n" + prove},
		{"the first page", []string{"--first-page-only"}, "bib-first-page.pdf",
			"page 1 of 5, which proves the scale\n" + prove + "; then `tuckmark sheet DIR/bib.toml` makes them all"},
		{"the first page of others", []string{"--first-page-only", "--paper", "8.5 x 14in", "--landscape", "--pieces", "bib,strap"}, "bib-first-page.pdf",
			"page 1 of 3, which proves the scale\n" + prove + "; then `tuckmark sheet --landscape --paper \"8.5 x 14in\" --pieces bib,strap DIR/bib.toml` makes them all"},
		{"the first page, corrected, of much", []string{"--first-page-only", "--across", "3 15/16", "--down", "4", "--gauges", "--no-figures", "--paper", "a4"}, "bib-first-page.pdf",
			"page 1 of 5, which proves the scale\nprint on the paper and with the settings of the page that was measured; measure the check square again before you mark cloth; " +
				"then `tuckmark sheet --across \"3 15/16\" --down 4 --paper a4 --no-figures --gauges DIR/bib.toml` makes them all"},
		{"some pieces", []string{"--pieces", "Bib"}, "bib.pdf", "2 pages: the first proves the scale, page 2 holds the pieces\n" + prove},
		{"either", []string{"--paper", "either"}, "bib.pdf", "5 pages: the first proves the scale, page 2 has the figures, pages 3 to 5 hold the pieces\n" + prove},
		{"one page", []string{"--paper", "single", "--no-figures"}, "bib.pdf",
			"1 page, 13 in wide and 22 15/16 in high, with the check square and the pieces\nmeasure the check square on paper, at 100 %, before you mark cloth"},
		{"a roll", []string{"--paper", "roll:24in", "--no-figures"}, "bib.pdf",
			"1 page, 24 in wide and 21 7/16 in high, with the check square and the pieces\nmeasure the check square on paper, at 100 %, before you mark cloth"},
		{"corrected", []string{"--across", "3 15/16", "--down", "4"}, "bib.pdf",
			"5 pages: the first proves the scale, page 2 has the figures, pages 3 to 5 hold the pieces\n" +
				"print on the paper and with the settings of the page that was measured; measure the check square again before you mark cloth"},
		{"margin and overlap in the file's unit", []string{"--margin", "1/4", "--overlap", "25mm"}, "bib.pdf",
			"5 pages: the first proves the scale, page 2 has the figures, pages 3 to 5 hold the pieces\n" + prove},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, stdout, stderr, dir := tuckmark(t, map[string]string{"bib.toml": bibs}, append([]string{"sheet", "DIR/bib.toml"}, c.args...)...)
			require.Equal(t, statusDone, status, stderr)
			assert.Equal(t, "DIR/"+c.out+": "+c.said+"\n", stdout)
			assert.ElementsMatch(t, []string{"bib.toml", c.out}, left(t, dir))
		})
	}
}

func TestPrintingThatIsRefused(t *testing.T) {
	for _, c := range []struct {
		name   string
		args   []string
		status int
		stderr string
	}{
		{"across without down", []string{"--across", "4"}, statusUsage, "tuckmark: --across was given without --down\nhint: measure the check square both ways: a printer may be off one way only\n"},
		{"down without across", []string{"--down", "4"}, statusUsage, "tuckmark: --down was given without --across\nhint: measure the check square both ways: a printer may be off one way only\n"},
		{"nothing across", []string{"--across", "", "--down", "4"}, statusUsage, "tuckmark: --across: the length is empty\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\"\n"},
		{"a margin of a single page", []string{"--paper", "single", "--margin", "110in"}, statusUsage, "tuckmark: --margin: a margin of 110 in leaves too little of one single page for the first page\nhint: most printers need 1/4 in; without a margin given it is a little over 10 mm\n"},
		{"an overlap of a roll", []string{"--paper", "roll:36in", "--overlap", "1"}, statusUsage, "tuckmark: --overlap: on a roll of paper 36 in wide no pages are joined\nhint: leave the overlap out\n"},
		{"no way to bring lines onto cloth", []string{"--transfer", "carbon"}, statusUsage, "tuckmark: --transfer: \"carbon\" is no way to bring lines onto cloth\nhint: write trace, template, mirror or prick; more than one where more than one is wanted\n"},
		{"dots too close", []string{"--dots", "1mm"}, statusUsage, "tuckmark: --dots: these dots are too close together or too far apart\nhint: they may be from 2 mm to 50 mm apart; 1/4 in serves most cloth\n"},
		{"no length", []string{"--across", "four", "--down", "4"}, statusUsage, "tuckmark: --across: \"four\" is not a length\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\"\n"},
		{"no printer", []string{"--across", "4", "--down", "40"}, statusUsage, "tuckmark: --down: a side of 40 in is no printer's doing\nhint: measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; \"40\" counts in in\n"},
		{"a margin too wide", []string{"--margin", "2"}, statusUsage, "tuckmark: --margin: a margin of 2 in leaves too little of letter paper for the first page\nhint: most printers need 1/4 in; without a margin given it is a little over 10 mm\n"},
		{"a margin that is none", []string{"--margin", "wide"}, statusUsage, "tuckmark: --margin: \"wide\" is not a length\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\"\n"},
		{"an overlap too narrow", []string{"--overlap", "0"}, statusUsage, "tuckmark: --overlap: an overlap of 0 in is too narrow or too wide\nhint: it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50 mm\n"},
		{"a single page lying", []string{"--paper", "single", "--landscape"}, statusUsage, "tuckmark: --landscape: single cannot be turned\nhint: leave the turning out: its pages are as large as they need to be\n"},
		{"no such piece", []string{"--pieces", "bib,strep"}, statusUsage, "tuckmark: --pieces: no piece is called \"strep\"\nhint: did you mean \"strap\"?\n"},
		{"a page of 17 ft", []string{"--paper", "204x36in"}, statusUsage, "tuckmark: --paper: paper of 204 in x 36 in has a side of more than 200 in\nhint: that is 14,400 units of 1/72 in, and no reader of a PDF has to show a page with a longer side; print on pages that are joined, such as --paper letter\n"},
		{"the first page of one", []string{"--paper", "single", "--first-page-only"}, statusFault, "DIR/bib.toml: on one single page there is no first page to be printed by itself\nhint: its check square is on the page with the pieces\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, stdout, stderr, dir := tuckmark(t, map[string]string{"bib.toml": bibs}, append([]string{"sheet", "DIR/bib.toml"}, c.args...)...)
			assert.Equal(t, c.status, status)
			assert.Empty(t, stdout)
			assert.Equal(t, c.stderr, stderr)
			assert.Equal(t, []string{"bib.toml"}, left(t, dir), "nothing is left behind")
		})
	}
}

// Whole answers. The strap is 20 in long and lies along its pages: 1/64 of it is
// 5/16 in.
func TestScaleAnswers(t *testing.T) {
	const todo = `what to do:
  1. where you print, choose 100 % or actual size, turn off “fit to page” and every other scaling,
     print the first page once more, and measure its square again:
     tuckmark sheet --first-page-only DIR/bib.toml
  2. should it measure the same again, print sheets that make up for it, on the same paper and with the same settings;
     on them, as they come out of the printer, the square measures what it should:
     tuckmark sheet --across A --down B DIR/bib.toml
     read the square as finely as you can: 1/32 in misread on it is 3/8 in on that line
`
	for _, c := range []struct {
		name         string
		across, down string
		options      []string
		want         string
	}{
		{"too narrow both ways", "3 15/16", "3 15/16", nil, `DIR/bib.toml: printed at 98.4 % both ways (3 15/16 in of 4 in across, 3 15/16 in of 4 in down)
over the longest line of these sheets, "rest", a cutting line of strap, 44 in, that is 11/16 in too short
that is more than 1/32 in, beyond which a line cannot be ruled where it belongs: mark no cloth with these sheets
for comparison: “fit to page” on A4 paper would print these sheets at 97.3 % both ways, and the square would measure 3 7/8 in
` + todo},
		{"fit to page", "97.3 mm", "97.3 mm", nil, `DIR/bib.toml: printed at 97.3 % both ways (97.3 mm of 100 mm across, 97.3 mm of 100 mm down)
over the longest line of these sheets, "rest", a cutting line of strap, 44 in, that is 1 3/16 in too short
that is more than 1/32 in, beyond which a line cannot be ruled where it belongs: mark no cloth with these sheets
“fit to page” does this to sheets for letter paper, printed on A4 paper: 97.3 % both ways
` + todo},
		{"true", "4", "4", nil, `DIR/bib.toml: printed at 100 % both ways (4 in of 4 in across, 4 in of 4 in down)
over the longest line of these sheets, "rest", a cutting line of strap, 44 in, that is nothing
that is no more than 1/32 in: the sheets are true; print the other pages with the same settings
a ruler may miss up to 3/8 in of that line on the small length of the square: when the pages are joined, lay it along that line too
`},
		{"true enough for her", "4", "4 1/64", []string{"--within", "1/4"}, `DIR/bib.toml: printed at 100 % across and 100.4 % down (4 in of 4 in across, 4 1/64 in of 4 in down)
over the line that takes it worst, "rest", a cutting line of strap, 44 in, that is 3/16 in too long
that is no more than 1/4 in: the sheets are true; print the other pages with the same settings
a ruler may miss up to 3/8 in of that line on the small length of the square: when the pages are joined, lay it along that line too
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			args := append([]string{"scale", "--across", c.across, "--down", c.down, "DIR/bib.toml"}, c.options...)
			status, stdout, stderr, dir := tuckmark(t, map[string]string{"bib.toml": bibs}, args...)
			require.Equal(t, statusDone, status, stderr)
			want := strings.NewReplacer("--across A", "--across "+inShell(c.across), "--down B", "--down "+inShell(c.down)).Replace(c.want)
			assert.Equal(t, want, stdout)
			assert.Equal(t, []string{"bib.toml"}, left(t, dir))
		})
	}
	// On a single page nothing is joined, nor is there a first one to print again.
	_, stdout, _, _ := tuckmark(t, map[string]string{"bib.toml": bibs}, "scale", "--paper", "single", "--across", "99mm", "--down", "99mm", "DIR/bib.toml")
	assert.Contains(t, stdout, "and measure the square of the next print before it is used\n")
	assert.NotContains(t, stdout, "fit to page” does this")
	assert.NotContains(t, stdout, "for comparison")
	status, _, stderr, _ := tuckmark(t, map[string]string{"bib.toml": bibs}, "scale", "--across", "4", "--down", "4", "--within=-1", "DIR/bib.toml")
	assert.Equal(t, statusUsage, status)
	assert.Equal(t, "tuckmark: --within: a line cannot be off by less than nothing\nhint: leave it out for half the smallest step of a ruler\n", stderr)
	status, _, stderr, _ = tuckmark(t, map[string]string{"bib.toml": bibs}, "scale", "DIR/bib.toml")
	assert.Equal(t, statusUsage, status)
	assert.Equal(t, "tuckmark: scale needs what the check square measures\nhint: measure it on the printed first page, from outside edge to outside edge, and write it like `tuckmark scale --across \"3 15/16\" --down 4 DIR/bib.toml`\n", stderr)
}

// What is advised can be typed as it stands.
func TestInShell(t *testing.T) {
	for value, want := range map[string]string{
		"linden.toml": "linden.toml", "3 15/16": `"3 15/16"`, `4"`: `'4"'`, "": `""`, "my dress.toml": `"my dress.toml"`, "2⅛": `"2⅛"`,
		"a$HOME.toml": "'a$HOME.toml'", `a"it's.toml`: `'a"it'\''s.toml'`, "it's.toml": `"it's.toml"`,
	} {
		assert.Equal(t, want, inShell(value))
	}
}

// The first page alone is small: no pieces are in it.
func TestFirstPageIsSmall(t *testing.T) {
	_, _, _, dir := tuckmark(t, map[string]string{"bib.toml": bibs}, "sheet", "DIR/bib.toml", "--first-page-only")
	info, err := os.Stat(filepath.Join(dir, "bib-first-page.pdf"))
	require.NoError(t, err)
	assert.Less(t, info.Size(), int64(60_000))
}
