package text

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/pdfout/ink"
)

func TestWrap(t *testing.T) {
	for _, c := range []struct {
		name, text string
		limit      float64
		want       []string
	}{
		{"nothing", "", 50, []string{""}},
		{"fits", "cut 2", 50, []string{"cut 2"}},
		{"two lines", "gathered to 11 inches", 20, []string{"gathered to", "11 inches"}},
		{"spaces run together", "  cut   2 ", 50, []string{"cut 2"}},
		{"a long word", "Unterkleidchen", 13, []string{"Unterkl", "eidchen"}},
		{"room for less than a letter", "abc", 0.1, []string{"a", "b", "c"}},
	} {
		assert.Equal(t, c.want, Wrap(c.text, ink.Plain(10), c.limit), c.name)
	}
}

func TestWrapLosesNothing(t *testing.T) {
	style := ink.Plain(8)
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("aiW é½")), 0, 60, -1).Draw(t, "text")
		limit := rapid.Float64Range(4, 60).Draw(t, "limit")
		lines := Wrap(text, style, limit)
		require.NotEmpty(t, lines)
		for _, line := range lines {
			require.LessOrEqual(t, style.Width(line), limit)
		}
		bare := strings.ReplaceAll(text, " ", "")
		require.Equal(t, bare, strings.ReplaceAll(strings.Join(lines, ""), " ", ""), "no letter is lost")
		short := Shorten(text, style, limit)
		require.LessOrEqual(t, style.Width(short), limit)
		if short != text {
			require.True(t, strings.HasSuffix(short, "…"))
			require.True(t, strings.HasPrefix(text, strings.TrimSuffix(short, "…")))
		}
	})
}
