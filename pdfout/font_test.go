package pdfout

import (
	"strings"
	"testing"

	"github.com/go-pdf/fpdf"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestCanPrint(t *testing.T) {
	for _, c := range []struct {
		name  string
		signs string
		want  bool
	}{
		{"letters and digits", "AZaz09 ,.-/()&'\"%", true},
		{"letters of Europe", "ÄöüßéñåłČžΩαЖя", true},
		{"eighths and quarters", "⅛⅜⅝⅞¼½¾", true},
		{"primes, arrows, dashes, quotes", "′″←→–—“”…×", true},
		{"a space that does not break", "\u00a0", true},
		{"thirds", "⅓⅔", false},
		{"scissors", "✂", false},
		{"signs beyond the first plane", "😀𝟙", false},
		{"moves along a line or ends it", "\t\n\r\x00\x7f\u0085", false},
		{"no sign at all", "\ufffd", false},
		{"letters of Asia", "布裁", false},
	} {
		for _, r := range c.signs {
			assert.Equal(t, c.want, CanPrint(r), "%s: %q", c.name, r)
		}
	}
	assert.False(t, CanPrint(-1))
}

// The writer of the PDF reads the widths of letters for itself.
func TestWidths(t *testing.T) {
	pdf := fpdf.New("P", "mm", "A4", "")
	for _, f := range []*face{regular(), bold()} {
		pdf.AddUTF8FontFromBytes("go", f.name, f.data)
		pdf.SetFont("go", f.name, 10)
		for r := rune(' '); r < 0x2300; r++ {
			if CanPrint(r) {
				// It rounds each to a thousandth of the size.
				require.InDelta(t, pdf.GetStringWidth(string(r)), f.width(string(r), 10), 10*point/1000, "%q in face %q", r, f.name)
			}
		}
	}
	assert.Zero(t, regular().width("", 10))
}

func TestWrap(t *testing.T) {
	f := regular()
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
		assert.Equal(t, c.want, f.wrap(c.text, 10, c.limit), c.name)
	}
}

func TestWrapLosesNothing(t *testing.T) {
	f := regular()
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("aiW é½")), 0, 60, -1).Draw(t, "text")
		limit := rapid.Float64Range(4, 60).Draw(t, "limit")
		lines := f.wrap(text, 8, limit)
		require.NotEmpty(t, lines)
		for _, line := range lines {
			require.LessOrEqual(t, f.width(line, 8), limit)
		}
		bare := strings.ReplaceAll(text, " ", "")
		require.Equal(t, bare, strings.ReplaceAll(strings.Join(lines, ""), " ", ""), "no letter is lost")
		short := f.shorten(text, 8, limit)
		require.LessOrEqual(t, f.width(short, 8), limit)
		if short != text {
			require.True(t, strings.HasSuffix(short, "…"))
			require.True(t, strings.HasPrefix(text, strings.TrimSuffix(short, "…")))
		}
	})
}
