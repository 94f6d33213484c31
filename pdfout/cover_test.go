package pdfout

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// The cautions of a set stand under their heading on the first page; without any there
// is no heading.
func TestCautionsOnTheFirstPage(t *testing.T) {
	for _, name := range paper.Names() {
		t.Run(name, func(t *testing.T) {
			set := sets.Few()
			d, s := drawn(t, set, name)
			said := ""
			for _, p := range d.Pages[:s.Front] {
				said += seen.Squeezed(strings.Join(p.Words(), ""))
			}
			assert.Contains(t, said, seen.Squeezed("Take care"))
			for _, text := range sample.Cautions() {
				assert.Contains(t, said, seen.Squeezed(text))
			}
		})
	}
	p := seen.Paper(t, "letter")
	b, err := plan(sets.Few(), p)
	require.NoError(t, err)
	for _, p := range b.front {
		for _, l := range p.Labels {
			assert.NotEqual(t, "Take care", l.Text)
		}
	}
}

// On paper that stands, the key is beside the check square, at its height, and the pieces are
// under both.
func TestTheKeyIsBesideTheSquare(t *testing.T) {
	for _, name := range []string{"letter", "a4", "either", "legal", "a3", "tabloid"} {
		t.Run(name, func(t *testing.T) {
			d, _ := drawn(t, sets.Few(), name)
			at := map[string]seen.Text{}
			for _, r := range d.Pages[0].Texts {
				at[strings.Split(r.Text, ",")[0]] = r
			}
			key, square, pieces := at["Lines"], at["100 mm"], at["The pieces"]
			assert.Greater(t, key.At.X, square.At.X)
			assert.InDelta(t, square.At.Y, key.At.Y, 12)
			assert.Less(t, pieces.At.Y, square.At.Y-100)
		})
	}
}
