package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestFindPaper(t *testing.T) {
	for _, name := range []string{"letter", "a4", "legal", "tabloid", "a3"} {
		p, err := FindPaper(name)
		require.NoError(t, err)
		assert.Equal(t, name, p.Name)
		assert.Less(t, p.Width, p.Height, "upright")
	}
	p, err := FindPaper("  A4 ")
	require.NoError(t, err)
	assert.Equal(t, "a4", p.Name)
	assert.Equal(t, "A4 paper", p.shortTitle())
	for _, name := range []string{"", "a5", "Letter paper"} {
		_, err := FindPaper(name)
		var refusal *Refusal
		require.ErrorAs(t, err, &refusal)
		assert.Equal(t, "the papers are letter, a4, legal, tabloid and a3", refusal.Hint)
	}
	_, err = FindPaper("a5")
	assert.EqualError(t, err, "no paper is called \"a5\"\nhint: the papers are letter, a4, legal, tabloid and a3")
	assert.EqualError(t, &Refusal{Cause: "a cause"}, "a cause")
}

// Printers cannot print the outer 1/4 in (common practice); 10 mm are more.
func TestWindowsKeepTheMargin(t *testing.T) {
	for _, p := range papers() {
		w := p.window()
		assert.GreaterOrEqual(t, w.Min.X, 10.0)
		assert.GreaterOrEqual(t, w.Min.Y, 10.0)
		assert.LessOrEqual(t, w.Max.X, p.Width-10)
		assert.LessOrEqual(t, w.Max.Y, p.Height-10)
	}
}
