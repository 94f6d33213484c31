package wording

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestStrangeLetter(t *testing.T) {
	for _, c := range []struct {
		letter rune
		want   string // "" where it is none
	}{
		{' ', ""},
		{'a', ""},
		{'\u00a0', "a no-break space (U+00A0)"},
		{'\u2009', "a space of another kind (U+2009)"},
		{'\u200b', "a sign that cannot be seen (U+200B)"},
		{'\u3164', "a sign that cannot be seen (U+3164)"},
		{'\u0085', "a line end of another kind (U+0085)"},
		{'\u2028', "a line end of another kind (U+2028)"},
		{'한', ""},
	} {
		assert.Equal(t, c.want != "", IsStrange(c.letter), "%U", c.letter)
		if c.want != "" {
			assert.Equal(t, c.want, StrangeLetter(c.letter))
		}
	}
}

// Wide signs are those of the keyboard, one for one.
func TestNarrow(t *testing.T) {
	for wide, narrow := range map[rune]rune{'！': '!', '＝': '=', '［': '[', '０': '0', 'ｚ': 'z', '～': '~'} {
		c, ok := Narrow(wide)
		assert.True(t, ok)
		assert.Equal(t, string(narrow), string(c))
		assert.False(t, IsStrange(wide), "it can be seen")
	}
	for _, other := range "=a ｟\uff00한" {
		c, ok := Narrow(other)
		assert.False(t, ok, string(other))
		assert.Equal(t, other, c)
	}
	assert.Equal(t, "a wide = (U+FF1D)", StrangeLetter('＝'))
}
