package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/proof"
)

// Every example, on all kinds of paper, must pass without a word from a
// checker of structure and two renderers of content.
func TestExamplesRender(t *testing.T) {
	for _, file := range examples(t) {
		for _, paper := range []string{"letter", "a4", "either", "single"} {
			t.Run(filepath.Base(file)+" on "+paper, func(t *testing.T) {
				pdf := filepath.Join(t.TempDir(), "sheets.pdf")
				var out, errs bytes.Buffer
				require.Equal(t, 0, run([]string{"tuckmark", "sheet", file, "-o", pdf, "--paper", paper}, &out, &errs), errs.String())
				for _, line := range [][]string{
					{"qpdf", "--check", pdf},
					{"mutool", "draw", "-q", "-N", "-r", "72", "-o", filepath.Join(t.TempDir(), "%d.png"), pdf},
					{"pdftoppm", "-r", "72", "-png", pdf, filepath.Join(t.TempDir(), "page")},
				} {
					cmd := exec.Command(proof.Tool(t, line[0]), line[1:]...)
					var said bytes.Buffer
					cmd.Stderr = &said
					assert.NoError(t, cmd.Run(), "%v", line)
					assert.Empty(t, said.String(), "%v says nothing is wrong", line)
				}
			})
		}
	}
}

// inAnotherStep leaves a test of many files out where TUCKMARK_MANY=0, as it is under the race
// detector: one of them after the other is no race, and takes a dozen times as long there.
func inAnotherStep(t testing.TB) {
	t.Helper()
	if os.Getenv("TUCKMARK_MANY") == "0" {
		t.Skip("TUCKMARK_MANY=0 leaves out many files, one after the other")
	}
}
