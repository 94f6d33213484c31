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
	assert.Equal(t, `\\"no\xffletter`, Brief("\\\\\"no\xffletter"))
	assert.Equal(t, strings.Repeat("é", 40)+"...", Brief(strings.Repeat("é", 41)))
}

// A name is said as it is while all of it can be seen, in whatever script.
func TestFileName(t *testing.T) {
	for name, want := range map[string]string{
		"": "", "bib.toml": "bib.toml", "my bib.toml": "my bib.toml", "it's \"b\"\\c.toml": "it's \"b\"\\c.toml", "lätzchen.toml": "lätzchen.toml", "よだれ掛け.toml": "よだれ掛け.toml",
		"red\x1b[31m.toml": `"red\x1b[31m.toml"`, "two\nlines": `"two\nlines"`, "no-break\u00a0space": `"no-break\u00a0space"`,
		"back\u202ewards": `"back\u202ewards"`, "zero\u200bwidth": `"zero\u200bwidth"`, "no\xffletter": `"no\xffletter"`, "\u0085": `"\u0085"`,
	} {
		assert.Equal(t, want, FileName(name))
	}
}
