package ink

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// setAs is a text as it is set: a fraction in raised and lowered figures.
func setAs(text string) string {
	parts, _ := faces()[Regular].partsOf(text)
	var b strings.Builder
	for _, p := range parts {
		b.WriteString(p.text)
	}
	return b.String()
}

func TestWhatIsSetAsAFraction(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"an eighth", "1/8", "¹⁄₈"},
		{"a sixteenth", "13/16 in", "¹³⁄₁₆ in"},
		{"a thirty-second", "1/32 in", "¹⁄₃₂ in"},
		{"a sixty-fourth", "63/64", "⁶³⁄₆₄"},
		{"a third", "2/3 of it", "²⁄₃ of it"},
		{"behind a whole number", "fold 2 1/8 in over", "fold 2¹⁄₈ in over"},
		{"behind a larger one", "17 11/16 in", "17¹¹⁄₁₆ in"},
		{"behind a space that does not break", "2\u00a01/8", "2¹⁄₈"},
		{"two", "2 1/8 x 13/16 in", "2¹⁄₈ x ¹³⁄₁₆ in"},
		{"from one to the other", "1/4–3/8 in", "¹⁄₄–³⁄₈ in"},
		{"in brackets and before a sign", "(1/2), 3/4.", "(¹⁄₂), ³⁄₄."},
		{"with a mark of inches", "3/8\" or 1/8″", "³⁄₈\" or ¹⁄₈″"},
		{"with a hyphen", "a 1/4-in turn", "a ¹⁄₄-in turn"},
		{"of one letter", "⅛ or 2⅝ or 2 ¾ in", "¹⁄₈ or 2⁵⁄₈ or 2³⁄₄ in"},

		{"nothing", "", ""},
		{"no fraction", "fold 2 in over", "fold 2 in over"},
		{"a date", "1/2/2026", "1/2/2026"},
		{"three numbers", "1/2/3", "1/2/3"},
		{"a day and a month", "24/12", "24/12"},
		{"a page of pages", "page 3/4", "page 3/4"},
		{"a page behind others", "Pages 1/2 and 3/8", "Pages 1/2 and ³⁄₈"},
		{"a size", "size 2/3", "size 2/3"},
		{"one or the other", "and/or 1/x, x/2", "and/or 1/x, x/2"},
		{"not in lowest terms", "2/4, 6/16", "2/4, 6/16"},
		{"larger than 1", "9/8, 33/32", "9/8, 33/32"},
		{"no part of a ruler", "3/5, 1/7, 1/12, 1/128", "3/5, 1/7, 1/12, 1/128"},
		{"a part of a number", "2.1/8, 3,1/2, 1/8.5, 1/2,5", "2.1/8, 3,1/2, 1/8.5, 1/2,5"},
		{"with a hyphen before it", "no 2-1/8", "no 2-1/8"},
		{"with nought in front", "0/8, 01/8", "0/8, 01/8"},
	} {
		assert.Equal(t, c.want, setAs(c.text), c.name)
	}
}

// Where a fraction stands does not hang on which one it is, and the text behind it begins
// where it ends. Sizes from the font, in ems of 1000: figures 455 high, a small x 530, a
// capital 723, the lowest letter 212 under the line.
func TestHowAFractionIsSet(t *testing.T) {
	parts, ems := faces()[Regular].partsOf("2 13/16 in")
	require.Len(t, parts, 7, "2, two figures, a stroke, two figures, the rest")
	assert.InDelta(t, faces()[Regular].ems("2")+0.1, parts[1].right, 0.05, "close behind the whole number")
	last := parts[len(parts)-1]
	assert.Equal(t, " in", last.text)
	assert.InDelta(t, ems-faces()[Regular].ems(" in"), last.right, 1e-9)
	for _, p := range parts[1:6] {
		if p.text != "⁄" {
			assert.InDelta(t, 0.530, 0.455*p.size, 0.03, "a figure is as high as a small x")
		}
	}
	// Heads of raised figures lie 783 high, feet of lowered ones at -161.
	assert.InDelta(t, 0.78, 0.783*parts[1].size+parts[1].up, 0.03, "no higher than tall letters")
	assert.InDelta(t, -0.06, -0.161*parts[5].size+parts[5].up, 0.03, "no lower than round ones")
	for i, p := range parts[1:] {
		assert.Greater(t, p.right, parts[i].right, "one behind the other")
	}
	for _, s := range []Style{Text(), StrongText(), Title()} {
		a, b := s.Width("1/16 in"), s.Width("3/32 in")
		assert.InDelta(t, a, b, 1e-9, "as wide as another")
		assert.InDelta(t, s.Width("2 1/8"), s.Width("2⅛"), 1e-9)
		assert.InDelta(t, s.Ems(0.1), s.Width("2 1/8")-s.Width("2")-s.Width("1/8"), 1e-9, "a thin space")
	}
}

// No letter is lost, whatever the text is.
func TestFractionsLoseNothing(t *testing.T) {
	plain := strings.NewReplacer("⁰", "0", "¹", "1", "²", "2", "³", "3", "⁴", "4", "⁵", "5", "⁶", "6", "⁷", "7", "⁸", "8", "⁹", "9",
		"₀", "0", "₁", "1", "₂", "2", "₃", "3", "₄", "4", "₅", "5", "₆", "6", "₇", "7", "₈", "8", "₉", "9", "⁄", "/",
		"½", "1/2", "⅛", "1/8", " ", "", "\u00a0", "")
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("123468 //½⅛.,(p\u00a0")), 0, 24, -1).Draw(t, "text")
		require.Equal(t, plain.Replace(text), plain.Replace(setAs(text)))
	})
}
