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
