package pdfout

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// cardOf is a small card to be cut out.
func cardOf(name string) mark.Marking {
	card := sample.Rectangle(name, name, 40, 60)
	card.Kind = mark.Gauge
	return card
}

// Sheets come in the order of use, whatever their sizes, and their parts are numbered in
// that order; what shares a page is in the order of its numbers there.
func TestPagesInOrderOfUse(t *testing.T) {
	t.Parallel()
	for _, ways := range [][]source.Transfer{nil, {source.Trace}, {source.Template}, {source.Mirror}, {source.Prick}, {source.Template, source.Trace}} {
		for name, set := range sets.Examples(t, "../examples", ways...) {
			set.Pieces = append([]mark.Marking{cardOf("card")}, set.Pieces...)
			for _, on := range []string{"letter", "tabloid"} {
				checkOrder(t, set, seen.Paper(t, on), name+" on "+on)
			}
		}
	}
}

// checkOrder checks the order of pages of a set.
func checkOrder(t *testing.T, set arrange.Set, on paper.Paper, name string) {
	b, err := plan(set, on)
	require.NoError(t, err)
	parts := map[int]string{}
	page := b.sheets[0].first
	before := arrange.Piece{}
	for i, s := range b.all() {
		first := s.Pieces[slices.IndexFunc(s.Pieces, func(p arrange.Piece) bool { return p.Part == s.Part })]
		if i >= len(b.forms) {
			require.Equal(t, page, s.first, name)
			page += len(s.Cells)
		}
		assert.GreaterOrEqual(t, first.Kind, before.Kind, "%s: %s behind %s", name, first.Name, before.Name)
		assert.Greater(t, first.Part, before.Part, "%s: %s behind %s", name, first.Name, before.Name)
		before = first
		for k, p := range s.Pieces {
			parts[p.Part] = p.Name
			assert.Equal(t, first.Kind.OfCard(), p.Kind.OfCard(), "%s: card shares a page with card: %v", name, s.Names())
			if k > 0 {
				assert.Greater(t, p.Part, s.Pieces[k-1].Part, "%s: %v", name, s.Names())
			}
		}
	}
	require.Len(t, parts, len(set.Pieces), name)
	for i := range len(parts) {
		assert.Contains(t, parts, i+1, name)
	}
}

// What is given in any order is printed in that of use.
func TestKindsAreBroughtIntoOrder(t *testing.T) {
	var set arrange.Set
	kinds := []mark.Kind{mark.Gauge, mark.Template, mark.Piece, mark.CuttingSheet, mark.TuckRuler, mark.TuckSheet}
	for i, kind := range kinds {
		// Large and small by turns; no two small ones fit on one page.
		m := sample.Rectangle(string(rune('a'+i)), string(rune('A'+i)), 150, []float64{400, 180}[i%2])
		m.Kind = kind
		set.Pieces = append(set.Pieces, m)
	}
	b, err := plan(set, paper.All()[0])
	require.NoError(t, err)
	var names []string
	for _, s := range b.sheets {
		names = append(names, s.Names()...)
	}
	assert.Equal(t, []string{"F", "E", "D", "C", "B", "A"}, names)
}
