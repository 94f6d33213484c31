package main

import (
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: what the first page says is to be typed where its rules are off is taken
// from the page, completed as it says, and typed.

// The command of a first page has the lengths of the rules on that page, and those options that
// the lengths hang on.
func TestFirstPageTellsTheCommand(t *testing.T) {
	examples, err := filepath.Abs("examples")
	require.NoError(t, err)
	for _, c := range []struct {
		name, typed, shown, answer string
	}{
		{"sheets", "sheet FILE.toml", `tuckmark scale FILE.toml --of "7 in x 10 in" --across ... --down ...`, "printed at 97.3 % across"},
		{"sheets on other paper", "sheet --paper a4 --margin 3/4in FILE.toml", `tuckmark scale --paper a4 --margin 3/4in FILE.toml --of "6 in x 10 in" --across ... --down ...`, "printed at 96.9 % across"},
		{"sheets on one page", "sheet --paper single --no-figures FILE.toml", `tuckmark scale --paper single --no-figures FILE.toml --of "`, "printed at "},
		{"gauges", "gauge FILE.toml", `tuckmark gauge FILE.toml --of "7 in x 10 in" --across ... --down ...`, "print on the paper and with the settings of the page that was measured"},
		{"a grid", "grid --unit cm --wide 30", `tuckmark grid --unit cm --wide 30 --of "19 cm x 25 cm" --across ... --down ...`, "print on the paper and with the settings of the page that was measured"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Chdir(t.TempDir())
			file, err := os.ReadFile(filepath.Join(examples, "pinafore.toml"))
			require.NoError(t, err)
			require.NoError(t, os.WriteFile("FILE.toml", file, 0o644))
			require.Zero(t, run(typed("tuckmark "+c.typed+" -o page.pdf"), io.Discard, io.Discard))
			page, err := os.ReadFile("page.pdf")
			require.NoError(t, err)
			words := strings.Join(seen.Read(t, page, paper.Scale{}).Pages[0].Words(), " ")
			command := regexp.MustCompile(`tuckmark (scale|gauge|grid) .* --down \.\.\.`).FindString(words)
			assert.True(t, strings.HasPrefix(command, c.shown), "%s", command)
			of := regexp.MustCompile(`--of "(\S+(?: \d+/\d+)?) (in|cm) x (\S+(?: \d+/\d+)?) `).FindStringSubmatch(command)
			require.NotNil(t, of, command)
			assert.Contains(t, words, "This rule is "+of[1]+" "+of[2]+" long")
			assert.Contains(t, words, "This rule is "+of[3]+" "+of[2]+" long")
			off := map[string]string{"7": "6 13/16", "6": "5 13/16", "19": "18.5"}
			across, known := off[of[1]]
			if !known { // as long as the page is: it is true
				across = of[1]
			}
			command = strings.Replace(command, "--across ...", `--across "`+across+`"`, 1)
			command = strings.Replace(command, "--down ...", `--down "`+of[3]+`"`, 1)
			var said strings.Builder
			require.Zero(t, run(typed(command), &said, &said), "%s\n%s", command, said.String())
			assert.Contains(t, said.String(), c.answer)
		})
	}
}

// What is not printed on paper has no such command.
func TestSVGTellsNoCommand(t *testing.T) {
	out := filepath.Join(t.TempDir(), "page.svg")
	require.Zero(t, run([]string{"tuckmark", "sheet", "examples/pinafore.toml", "-o", out}, io.Discard, io.Discard))
	drawn, err := os.ReadFile(out)
	require.NoError(t, err)
	assert.Contains(t, string(drawn), "Should one be off, turn off every scaling")
	assert.NotContains(t, string(drawn), "tuckmark scale")
}
