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
