package pdfout

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// The name, how often it is cut, every note and every step of every piece stand on a page of
// its sheet, or on one of panels right behind, each whole.
func checkNotes(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	on := map[string]string{} // the texts of the pages of each piece
	sheets := append(formsAsSheets(s), s.Sheets...)
	for i, sheet := range sheets {
		last := sheet.Last
		for next := i + 1; next < len(sheets) && len(sheets[next].Pieces) == 0; next++ {
			last = sheets[next].Last
		}
		for n := sheet.First; n <= last; n++ {
			text := seen.Squeezed(strings.Join(d.Pages[n-1].Words(), ""))
			for _, name := range sheet.Pieces {
				on[name] += text + "\n"
			}
		}
	}
	for _, m := range set.Pieces {
		name := m.Name
		if name == "" {
			name = m.Key
		}
		for _, told := range append([]string{name}, m.Told()...) {
			assert.Contains(t, on[name], seen.Squeezed(told), "of %q", name)
		}
	}
}

// Where a panel has no place at all, it is on a page of its own, right behind.
func TestPanelOnAPageOfItsOwn(t *testing.T) {
	t.Parallel()
	full := sample.Rectangle("p", "Panel", 186, 228, "cut 2")
	for y := 2.0; y < 228; y += 2 {
		full.Marks = append(full.Marks, sample.Edge(mark.TuckFold, "", full.Outline[0].Toward(full.Outline[3], y/228), full.Outline[1].Toward(full.Outline[2], y/228)))
	}
	d, s := drawn(t, arrange.Set{Title: "Pinafore", Pieces: []mark.Marking{full}}, "letter")
	require.Equal(t, s.Front+2, len(d.Pages))
	assert.Equal(t, 2, len(s.Sheets))
	assert.NotContains(t, d.Pages[s.Front].Words(), "cut 2")
	words := d.Pages[s.Front+1].Words()
	assert.Contains(t, words, "Notes and steps: Panel")
	assert.Contains(t, words, "cut 2")
	assert.Contains(t, d.Pages[s.Front].Words(), fmt.Sprintf("notes: page %d", s.Front+2), "its piece says where")
}

// Paper that has everything on one page stays one page, and grows by what has no room by its
// piece: nothing of that is lost, and nothing lies on anything else.
func TestOnePageGrowsForPanels(t *testing.T) {
	t.Parallel()
	full := sample.Rectangle("p", "Panel", 186, 228, "cut 2")
	for i := range 60 {
		x := 186 * (float64(i) + 0.5) / 60
		full.Dimensions = append(full.Dimensions, mark.Dimension{
			From: plane.Point{X: x, Y: 20}, To: plane.Point{X: x, Y: 40}, Text: fmt.Sprintf("distance %d, from the lower edge to where the trimming begins", i+1)})
	}
	set := arrange.Set{Title: "Pinafore", Pieces: []mark.Marking{full}}
	for _, paper := range []string{"single", "roll:24in"} {
		d, s := drawn(t, set, paper)
		require.Len(t, d.Pages, 1, paper)
		assert.NotEmpty(t, s.Sheets)
		checkTold(t, set, d, s)
		assert.Contains(t, d.Pages[0].Words(), "Panel: key")
		checkLabels(t, set, d, s)
	}
}
