package pdfout

import (
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
)

// checkWidths: a line thinner than 0.25 pt may not come out of a printer (common
// practice).
func checkWidths(t require.TestingT, set arrange.Set, d readDocument, s Summary) {
	for i, p := range d.pages {
		for _, q := range p.paths {
			if q.painted == "S" {
				assert.GreaterOrEqual(t, q.width, 0.25*paper.Pt, "page %d: a line of %s", i+1, q.layer)
			}
		}
	}
}
