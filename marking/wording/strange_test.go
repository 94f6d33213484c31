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
	} {
		assert.Equal(t, c.want != "", IsStrange(c.letter), "%U", c.letter)
		if c.want != "" {
			assert.Equal(t, c.want, StrangeLetter(c.letter))
		}
	}
}
