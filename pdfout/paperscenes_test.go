package pdfout

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// onAnyPaper are the scenes that are drawn on every paper; the others are drawn
// on the two that most homes have.
func onAnyPaper() []string {
	return []string{"skirt and bodice", "fifty small pieces", "as large as a house", "a sample sewn first", "nothing but a sample", "forms of many sizes", "tucks close together", "figures", "figures in columns", "a picture across"}
}

// unusualPapers are papers that are asked for with more than a name.
func unusualPapers(t require.TestingT) map[string]Paper {
	lying, err := found(t, "letter").Lying()
	require.NoError(t, err)
	own, err := found(t, "11x14in").WithMargin(7)
	require.NoError(t, err)
	own, err = own.WithOverlap(25.4)
	require.NoError(t, err)
	small, large := found(t, "a4"), found(t, "letter")
	small.Printed = Scale{0.97, 0.985}
	large.Printed = Scale{1.02, 1}
	return map[string]Paper{"letter, lying": lying, "own size, margin and overlap": own, "a4, printed too small": small, "letter, printed too wide": large}
}

// A sheet keeps all that is promised of it when it lies on its side, when paper,
// margin and overlap are others, and, as it comes out of the printer, when it is
// drawn for one that does not print true.
func TestScenesOnUnusualPaper(t *testing.T) {
	sets := examples(t)
	for _, name := range onAnyPaper() {
		sets[name] = scenes()[name]
	}
	for name, set := range sets {
		for what, paper := range unusualPapers(t) {
			if name == "forms of many sizes" && paper.Width > paper.Height {
				continue // the largest of them is too high for it, and refused
			}
			t.Run(name+" on "+what, func(t *testing.T) {
				t.Parallel()
				d, s := drawnOn(t, set, paper)
				for what, check := range checks() {
					t.Run(what, func(t *testing.T) { check(t, set, d, s) })
				}
			})
		}
	}
}
