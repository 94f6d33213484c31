package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// apron has a curved neck, so that there are a curved gauge and a straight one.
const apron = `title = "Apron"
unit = "in"
allowance = "1/4"
[piece.apron]
[piece.apron.edge.neck]
points = [[0, 9], [2, 8], [4, 9]]
smooth = true
[piece.apron.edge.rest]
points = [[0, 9], [0, 0], [4, 0], [4, 9]]
`

func TestGaugesAreMade(t *testing.T) {
	const prove = "print page 1 at 100 % and measure its check square before you print the rest\n"
	for _, c := range []struct {
		name string
		args []string
		out  string
		said string
	}{
		{"beside the file", []string{"gauge", "DIR/apron.toml"}, "apron-gauges.pdf", "2 pages: the first proves the scale, page 2 holds the gauges\n" + prove},
		{"under another name", []string{"gauge", "-o", "DIR/g.pdf", "--paper", "a4", "DIR/apron.toml"}, "g.pdf", "2 pages: the first proves the scale, page 2 holds the gauges\n" + prove},
		{"for a printer that is off", []string{"gauge", "--across", "3 7/8", "--down", "3 7/8", "DIR/apron.toml"}, "apron-gauges.pdf",
			"2 pages: the first proves the scale, page 2 holds the gauges\nprint on the paper and with the settings of the page that was measured; measure the check square again before you mark cloth\n"},
		{"with the sheets", []string{"sheet", "DIR/apron.toml", "--gauges", "--no-figures"}, "apron.pdf", "3 pages: the first proves the scale, pages 2 to 3 hold the pieces\n" + prove},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, stdout, stderr, dir := tuckmark(t, map[string]string{"apron.toml": apron}, c.args...)
			require.Equal(t, statusDone, status, stderr)
			assert.Equal(t, "DIR/"+c.out+": "+c.said, stdout)
			assert.ElementsMatch(t, []string{"apron.toml", c.out}, left(t, dir))
		})
	}
}

func TestGaugesThatCannotBe(t *testing.T) {
	for _, c := range []struct {
		name, file string
		args       []string
		status     int
		stderr     string
	}{
		{"nothing sewn", strings.Replace(apron, `allowance = "1/4"`, "allowance = 0", 1), nil, statusFault,
			"DIR/apron.toml: there is nothing to make a gauge for\nhint: a gauge is made for a curved edge with an allowance, for every allowance, and for tucks\n"},
		{"no such piece", apron, []string{"--pieces", "bib"}, statusUsage, "tuckmark: --pieces: no piece is called \"bib\"\nhint: the pieces are apron\n"},
		{"a mistake in the file", strings.Replace(apron, "smooth", "smoth", 1), nil, statusFault, "DIR/apron.toml:7: piece.apron.edge.neck.smoth: this key is not known\nhint: did you mean \"smooth\"?\n"},
		{"no figures in it", apron, []string{"--no-figures"}, statusUsage, "tuckmark: there is no option \"no-figures\"\nhint: `tuckmark gauge --help` shows what it takes\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, stdout, stderr, dir := tuckmark(t, map[string]string{"apron.toml": c.file}, append([]string{"gauge", "DIR/apron.toml"}, c.args...)...)
			assert.Equal(t, c.status, status)
			assert.Empty(t, stdout)
			assert.Equal(t, c.stderr, stderr)
			assert.Equal(t, []string{"apron.toml"}, left(t, dir), "nothing is left behind")
		})
	}
}
