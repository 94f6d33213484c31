package text

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/pdfout/ink"
)

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

// Names are left over only where they do not fit, and no more of them than that.
func TestNameLinesShowAllThatFit(t *testing.T) {
	name := rapid.SampledFrom([]string{"a", "Front", "Back  yoke", "Sleeve 1/8", "⅛", strings.Repeat("w", 60), strings.Repeat("left and right ", 12)})
	rapid.Check(t, func(t *rapid.T) {
		names := rapid.SliceOfN(name, 1, 12).Draw(t, "names")
		limit, most := rapid.Float64Range(10, 120).Draw(t, "limit"), rapid.IntRange(1, 4).Draw(t, "most")
		style := ink.Text()
		want := WrapShortened(someNames(names, 1), style, limit, most)
		for shown := 2; shown <= len(names); shown++ {
			if lines := Wrap(someNames(names, shown), style, limit); len(lines) <= most {
				want = lines
			}
		}
		require.Equal(t, want, NameLines(names, style, limit, most))
	})
}

// However many names there are, no more are gone through than fit.
func TestNameLinesTakeNoRoom(t *testing.T) {
	taken := func(n int) float64 {
		names := slices.Repeat([]string{strings.Repeat("w", 200)}, n)
		return testing.AllocsPerRun(5, func() { NameLines(names, ink.Text(), 100, 3) })
	}
	assert.InDelta(t, taken(300), taken(3000), 10, "one each of 2,700 more names would be many more; the race detector takes one or two of its own")
}
