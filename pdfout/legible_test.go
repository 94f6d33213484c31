package pdfout

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/figures"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: what is read back out of a PDF is as fine as it may be and no finer.
// The widths are of the series of ISO 128-2 (second hand, from a drafting course that states
// it); that 9 pt is the smallest type read with ease at arm's length is common practice.

// checkWidths holds every line against the three widths, those of ruled paper against their own, and the white ones, which cover
// others, against none.
func checkWidths(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages {
		for _, q := range p.Paths {
			widths := []float64{0.7, 0.35, 0.18}
			if q.Stroke == ink.PenOf(mark.RuledWhole).Colour {
				widths = []float64{0.6, 0.3, 0.1}
			}
			known := slices.ContainsFunc(widths, func(w float64) bool { return math.Abs(q.Width-w) < 2*seen.Written })
			assert.True(t, known || q.Painted != seen.Stroked || q.Stroke == ink.White(), "page %d: a line of %q is %.3f mm wide", i+1, q.Layer, q.Width)
		}
	}
}

// checkType holds every text against the smallest size; numbers at the ticks of a ruler, which
// are nothing but a whole number, may be smaller.
func checkType(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages {
		for _, r := range p.Texts {
			_, err := parseNumber(r.Text)
			assert.True(t, r.Size >= 9 || err == nil && r.Size == 6.5, "page %d: %q is set in %.1f pt", i+1, r.Text, r.Size)
		}
	}
}

// wholeExamples are the examples, their lines brought onto the cloth in a way; those that are
// traced come with all else that can be printed of them.
func wholeExamples(t *testing.T, way source.Transfer) map[string]arrange.Set {
	const folder = "../examples"
	all := sets.Examples(t, folder, way)
	if way != source.Trace {
		return all
	}
	for name, p := range sets.Patterns(t, folder) {
		set, report := all[name], figures.Report(p, figures.OwnUnit)
		set.Report, set.Pieces = &report, append(set.Pieces, gauge.Of(p)...)
		all[name] = set
	}
	return all
}

// All that is true of any set is true of every example in every way in which its lines come onto
// the cloth: of the traced with figures and gauges on every paper, of the others on narrow and
// wide. On a roll they are as legible. Words of a form may stand in the figures, too; circles
// and hatched windows are held against the pieces where pages are rendered.
func TestExamplesInEveryWay(t *testing.T) {
	for _, way := range []source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick} {
		but := []string{"pages join to the marking"}
		switch way {
		case source.Trace:
			but = []string{"forms"}
		case source.Mirror:
			but = nil
		}
		for name, set := range wholeExamples(t, way) {
			papers := []paper.Paper{seen.Paper(t, "letter"), seen.Paper(t, "a4"), seen.Paper(t, "tabloid")}
			if way == source.Trace {
				papers = append(paper.All(), seen.Paper(t, "roll:36in"))
			}
			for _, on := range papers {
				t.Run(fmt.Sprint(name, " ", way, " ", on.ShortTitle()), func(t *testing.T) {
					t.Parallel()
					d, s := drawnOn(t, set, on)
					if on.WhollyOnOne() {
						checkWidths(t, set, d, s)
						checkType(t, set, d, s)
						return
					}
					checkAll(t, set, d, s, but...)
					assert.Greater(t, s.Pages, 1)
				})
			}
		}
	}
}
