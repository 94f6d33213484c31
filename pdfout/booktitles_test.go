package pdfout

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// titleOf matches a name with all notes right after it, in order, as one title
// or header has them.
func titleOf(m mark.Marking) *regexp.Regexp {
	name := m.Name
	if name == "" {
		name = m.Key
	}
	expr := regexp.QuoteMeta(seen.Squeezed(name)) + ":?"
	notes := m.Told()
	if m.Form != nil { // whose name is in the title block, and whose steps have headings
		notes = m.Notes
		expr += ".*"
	}
	for _, note := range notes {
		expr += "[,;]?" + regexp.QuoteMeta(seen.Squeezed(note))
	}
	return regexp.MustCompile(expr)
}

// The name and every note of every piece stand on a page of its sheet, whole.
func checkNotes(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	on := map[string][]string{} // the texts of the pages of each piece
	for _, sheet := range append(formsAsSheets(s), s.Sheets...) {
		for n := sheet.First; n <= sheet.Last; n++ {
			text := seen.Squeezed(strings.Join(d.Pages[n-1].Words(), ""))
			for _, name := range sheet.Pieces {
				on[name] = append(on[name], text)
			}
		}
	}
	for _, m := range set.Pieces {
		name, want := m.Name, titleOf(m)
		if name == "" {
			name = m.Key
		}
		found := false
		for _, text := range on[name] {
			found = found || want.MatchString(text)
		}
		assert.True(t, found, "no page says %q and all of %q", name, m.Told())
	}
}

// Where a title has no place at all, the title block of the page says it.
func TestTitleInTheHeader(t *testing.T) {
	t.Parallel()
	full := sample.Rectangle("p", "Panel", 186, 230, "cut 2")
	for y := 2.0; y < 230; y += 2 {
		full.Marks = append(full.Marks, sample.Edge(mark.TuckFold, "", full.Outline[0].Toward(full.Outline[3], y/230), full.Outline[1].Toward(full.Outline[2], y/230)))
	}
	d, s := drawn(t, arrange.Set{Title: "Pinafore", Pieces: []mark.Marking{full}}, "letter")
	assert.Contains(t, d.Pages[s.Front].Words(), "Panel: cut 2")
}
