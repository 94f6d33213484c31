package source

import (
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What cannot be seen in a text that is printed is named by its code and by what stands before it,
// not as a letter that the font lacks.
func TestTextWithWhatCannotBeSeen(t *testing.T) {
	for text, want := range map[string]string{
		"Fr\u200bont": `the text has a sign that cannot be seen (U+200B) behind "Fr"`,
		"\u2060Front": "the text has a sign that cannot be seen (U+2060) at its beginning",
		"Fr\u0085ont": `the text has a line end of another kind (U+0085) behind "Fr"`,
	} {
		_, err := Read("f.toml", []byte("[piece.a]\nname = \""+text+"\"\nrectangle = [1, 2]\n"), unicode.IsPrint)
		require.Error(t, err)
		assert.Equal(t, "f.toml:2: piece.a.name: "+want+"\nhint: take it out, and type what is meant with the space bar", err.Error())
	}
}
