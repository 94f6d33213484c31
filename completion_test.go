package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// Whatever stands on a line, what is offered goes on from what is begun, and nothing is carried out.
func TestWhatIsOfferedGoesOnFromWhatIsBegun(t *testing.T) {
	t.Chdir(t.TempDir())
	words := rapid.OneOf(rapid.SampledFrom([]string{
		"sheet", "start", "grid", "look", "help", "completion", "scale", "--", "-", "=", "", "-o", "--paper", "--paper=a", "--pieces", "--view", "--unit=", "--landscape", "--none", "bib.toml", "-h", "--transfer", "trace,", "--version",
	}), rapid.String())
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.SliceOfN(words, 0, 5).Draw(t, "before")
		begun := words.Draw(t, "begun")
		line = append(append(append([]string{"tuckmark"}, line...), finishOption+begun), rapid.SliceOfN(words, 0, 3).Draw(t, "after")...)
		var out, errs bytes.Buffer
		assert.Equal(t, statusDone, run(line, &out, &errs))
		assert.Empty(t, errs.String())
		if begun == "=" {
			begun = ""
		}
		for offered := range strings.Lines(out.String()) {
			assert.True(t, strings.HasPrefix(offered, begun) || strings.HasPrefix(offered, "*"), "%q behind %q", offered, begun)
		}
	})
}
