package pdfout

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
)

// All that is true of any set is true of one whose large pieces have small ones
// beside them: a panel, and a tie with its title beside it.
func TestSharedPages(t *testing.T) {
	wardrobe := arrange.Set{Title: "Wardrobe", Unit: length.Centimetre, Pieces: sample.MixedPieces()}
	tie := arrange.Set{Title: "Ties", Unit: length.Inch, Pieces: []mark.Marking{
		sample.Strip("tie", "Tie", 30*sample.Inch, sample.Inch, 0.375*sample.Inch, "stitch line, 3/8 in", sample.LongNotes()...),
		sample.Flared("p", 220, 300, 420), sample.Wave("w", 70, 60, 400), sample.Tiny("t", 90), sample.TuckRuler("cut 2"), sample.Rectangle("c", "Collar", 120, 50, "cut 2"),
	}}
	for name, set := range map[string]arrange.Set{"wardrobe": wardrobe, "ties": tie} {
		for _, paper := range []string{"letter", "a4"} {
			t.Run(name+" on "+paper, func(t *testing.T) {
				t.Parallel()
				d, s := drawn(t, set, paper)
				assert.True(t, slices.ContainsFunc(s.Sheets, func(s SheetSummary) bool { return s.Last > s.First && len(s.Pieces) > 1 }), "no page is shared")
				checkAll(t, set, d, s)
			})
		}
	}
}
