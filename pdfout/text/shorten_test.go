package text

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

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
