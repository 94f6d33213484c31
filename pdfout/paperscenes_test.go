package pdfout

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// onAnyPaper are the scenes that are drawn on wide and on common paper as well; the others
// are drawn on the two that most homes have, and the examples on every one.
func onAnyPaper() []string {
	return []string{"skirt and bodice", "fifty small pieces", "as large as a house", "a sample sewn first", "nothing but a sample", "forms of many sizes", "tucks close together", "figures", "figures in columns", "a picture across"}
}

// unusualPapers are papers that are asked for with more than a name.
func unusualPapers(t require.TestingT) map[string]paper.Paper {
	lying, err := seen.Paper(t, "letter").Lying()
	require.NoError(t, err)
	own, err := seen.Paper(t, "11x14in").WithMargin(7)
	require.NoError(t, err)
	own, err = own.WithOverlap(25.4)
	require.NoError(t, err)
	lying.Printed = paper.Scale{Across: 1.02, Down: 1}
	small := seen.Paper(t, "a4")
	small.Printed = paper.Scale{Across: 0.97, Down: 0.985}
	return map[string]paper.Paper{"letter, lying, printed too wide": lying, "own size, margin and overlap": own, "a4, printed too small": small}
}

// A sheet keeps all that is promised of it when it lies on its side, when paper,
// margin and overlap are others, and, as it comes out of the printer, when it is
// drawn for one that does not print true.
func TestScenesOnUnusualPaper(t *testing.T) {
	all := sets.Examples(t, "../examples")
	for _, name := range onAnyPaper() {
		all[name] = sets.All()[name]
	}
	for name, set := range all {
		for what, paper := range unusualPapers(t) {
			if name == "forms of many sizes" && paper.Width > paper.Height {
				continue // the largest of them is too high for it, and refused
			}
			t.Run(name+" on "+what, func(t *testing.T) {
				t.Parallel()
				d, s := drawnOn(t, set, paper)
				checkAll(t, set, d, s)
			})
		}
	}
}

func TestPageSizes(t *testing.T) {
	// ISO 216: A4 210 x 297 mm, A3 297 x 420 mm. ANSI/ASME Y14.1: Letter
	// 8 1/2 x 11 in, Tabloid 11 x 17 in. Legal, 8 1/2 x 14 in, is common
	// practice. Inch = 25.4 mm exactly (international inch, 1959); ISO 32000-1,
	// 8.3.2.3: user space unit 1/72 in.
	for paper, want := range map[string][2]float64{
		"letter":  {8.5 * 72, 11 * 72},
		"legal":   {8.5 * 72, 14 * 72},
		"tabloid": {11 * 72, 17 * 72},
		"a4":      {210 / 25.4 * 72, 297 / 25.4 * 72},
		"a3":      {297 / 25.4 * 72, 420 / 25.4 * 72},
	} {
		d, s := drawn(t, sets.Large(), paper)
		require.Len(t, d.Pages, s.Pages)
		for i, p := range d.Pages {
			assert.InDelta(t, want[0]/72*25.4, p.Width, 0.002, "%s, width of page %d", paper, i+1)
			assert.InDelta(t, want[1]/72*25.4, p.Height, 0.002, "%s, height of page %d", paper, i+1)
		}
	}
}

// Nothing is written for paper that is refused.
func TestPaperMustFit(t *testing.T) {
	var out bytes.Buffer
	_, err := Draw(&out, sets.Few(), paper.Paper{Width: 148, Height: 210})
	var refusal *fault.Fault
	assert.ErrorAs(t, err, &refusal)
	assert.Zero(t, out.Len())
	_, err = Draw(&out, sets.Few(), seen.Paper(t, "914x1200mm"))
	assert.NoError(t, err)
}
