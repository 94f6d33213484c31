package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/source"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// As the PDF's fonts have it, nothing is smaller than 9 points, on any example and in any
// transfer, but the numbers at the ticks of a ruler. Figures of a
// fraction are of the size of their fraction.
func TestNothingIsSmall(t *testing.T) {
	t.Parallel()
	for _, ways := range [][]source.Transfer{nil, {source.Template}, {source.Mirror}, {source.Prick}} {
		for name, set := range sets.Examples(t, "../examples", ways...) {
			for _, on := range []string{"letter", "a4", "tabloid"} {
				d, _ := drawn(t, set, on)
				for i, page := range d.Pages {
					for _, text := range page.Texts {
						if !isTick(text) {
							assert.GreaterOrEqual(t, text.Size, 9.0, "%s %v on %s, page %d: %q", name, ways, on, i+1, text.Text)
						}
					}
				}
			}
		}
	}
}

// isTick reports whether a text is a number at a tick.
func isTick(r seen.Text) bool { return r.Size == 6.5 && len(r.Text) <= 3 }
