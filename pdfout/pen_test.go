package pdfout

import (
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// checkWidths: a line thinner than 0.25 pt may not come out of a printer (common
// practice).
func checkWidths(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages {
		for _, q := range p.Paths {
			if q.Painted == seen.Stroked {
				assert.GreaterOrEqual(t, q.Width, 0.25*paper.Pt, "page %d: a line of %s", i+1, q.Layer)
			}
		}
	}
}
