package wording

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// More than 40 letters are not repeated, whatever they take in bytes.
func TestQuoted(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"nothing", "", `""`},
		{"a word", "neck", `"neck"`},
		{"signs that cannot be seen", "a\n\"b", `"a\n\"b"`},
		{"40 letters", strings.Repeat("ä", 40), `"` + strings.Repeat("ä", 40) + `"`},
		{"41 letters", strings.Repeat("ä", 41), `"` + strings.Repeat("ä", 40) + `..."`},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, Quoted(c.in)) })
	}
}

// What a file has without quotes is repeated without them, and does nothing to a screen.
func TestBrief(t *testing.T) {
	assert.Equal(t, `a"b\`, Brief(`a"b\`))
	assert.Equal(t, `é\u200b\x1b[31m\uf574`, Brief("é\u200b\x1b[31m\uf574"))
	assert.Equal(t, strings.Repeat("é", 40)+"...", Brief(strings.Repeat("é", 41)))
}
