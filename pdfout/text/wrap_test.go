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

func TestNamesWithin(t *testing.T) {
	names, style := []string{"Front", "Back", "Collar", "Cuff"}, ink.Strong(8)
	wide := style.Width("Front, Back and 2 more")
	assert.Equal(t, "Front, Back and 2 more", NamesWithin(names, style, wide+0.01))
	assert.Equal(t, "Front and 3 more", NamesWithin(names, style, wide-0.01))
}

func TestWithinLines(t *testing.T) {
	style := ink.Plain(8)
	const text = "a tuck of 17 11/16 in, and one more"
	assert.Equal(t, []string{text}, WithinLines(text, style, 200, 1))
	for _, limit := range []float64{18, 20, 22, 24, 26, 28, 30, 32} {
		for most := 1; most < 4; most++ {
			lines := WithinLines(text, style, limit, most)
			assert.LessOrEqual(t, len(lines), most)
			for _, line := range lines {
				assert.LessOrEqual(t, style.Width(line), limit, line)
				assert.NotRegexp(t, `17( 11/16)?( …)?$`, line, "a measure is cut")
			}
			assert.Equal(t, strings.Join(lines, " ") != text, strings.HasSuffix(lines[len(lines)-1], " …"), lines)
		}
	}
	assert.Equal(t, []string{"Donaudampf…"}, WithinLines("Donaudampfschiff", style, style.Width("Donaudampf…")+0.01, 1), "a word alone is cut where it must be")
}
