package ink

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A line that grows is as long, to the last bit, as its text measured at once: whoever makes a
// column as wide as a text finds that the text fits.
func TestLineThatGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts := rapid.SliceOf(rapid.SampledFrom([]string{"", "a", " ", "Wide words", "3/8", "⅛", "2", " 1/8 in", "1", "/", "8", "ä", "\u00a0"})).Draw(t, "parts")
		style := rapid.SampledFrom(Names()).Draw(t, "style")
		text, line := "", style.Line("")
		for _, part := range parts {
			text += part
			line = line.Grown(text)
			require.Equal(t, text, line.Text())
			require.Equal(t, style.Width(text), line.Width(), "%q", text)
		}
	})
}
