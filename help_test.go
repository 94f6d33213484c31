package main

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A command is found in capitals, and in the plural where the guide has no section called so.
func TestHelpOfACommandHoweverWritten(t *testing.T) {
	said := func(word string) string {
		var out bytes.Buffer
		require.Zero(t, run([]string{"tuckmark", "help", word}, &out, &out), word)
		return out.String()
	}
	for _, word := range []string{"SHEET", "Sheet", "sheets"} {
		assert.Equal(t, said("sheet"), said(word), word)
	}
	assert.Contains(t, said("gauges"), "\nGauges are cut out of card once")
}

// Whatever is asked, help answers it or says that it does not know it.
func TestHelpOfAnyWord(t *testing.T) {
	words := rapid.OneOf(rapid.String(), rapid.StringMatching(`[a-z."\[\]# -]{0,30}`), rapid.SampledFrom([]string{"", ".", "..", `"`, `piece."`, "piece.", "view.a.piece.b", "[", "]]", "-", "\x00", "tuck.", ".tuck"}))
	rapid.Check(t, func(t *rapid.T) {
		word := words.Draw(t, "word")
		var out, errs bytes.Buffer
		switch status := run([]string{"tuckmark", "help", word}, &out, &errs); status {
		case statusDone:
			assert.NotEmpty(t, out.String())
			assert.Empty(t, errs.String())
		case statusUsage:
			assert.Empty(t, out.String())
			assert.NotEmpty(t, errs.String())
		default:
			t.Fatalf("status %d", status)
		}
	})
}
