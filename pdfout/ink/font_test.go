package ink

import (
	"testing"

	"github.com/stretchr/testify/assert"
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
