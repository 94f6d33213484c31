package main

import (
	"bytes"
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
)

// full is somewhere that nothing can be written to any more.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no space left on device") }

func TestWhatCannotBeWrittenIsNamed(t *testing.T) {
	for what, want := range map[string]string{
		"the figures": "tuckmark: the figures cannot be written: no space left on device",
		"the answer":  "tuckmark: the answer cannot be written: no space left on device",
	} {
		assert.EqualError(t, writeOut(full{}, what, []byte("1/2 in")), want)
	}
}

// What the parser prints by itself is no more lost than an answer.
func TestHelpThatCannotBeWrittenIsTold(t *testing.T) {
	for _, words := range [][]string{{"help"}, {"--help"}, {"help", "sheet"}, {"sheet", "--help"}, {"help", "tuck"}} {
		var errs bytes.Buffer
		assert.Equal(t, 1, run(append([]string{"tuckmark"}, words...), full{}, &errs), "%q", words)
		assert.Equal(t, "tuckmark: the answer cannot be written: no space left on device\n", errs.String(), "%q", words)
	}
}

func TestFileInShell(t *testing.T) {
	for name, want := range map[string]string{
		"bib.toml": "bib.toml", "my bib.toml": `"my bib.toml"`, "-x.toml": "./-x.toml", "-": "-",
	} {
		assert.Equal(t, want, fileInShell(name), "%s", name)
	}
}
