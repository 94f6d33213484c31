package arrange

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// Names along the outline stand inside the piece, whatever way its edges run
// on the paper.
func TestNamesStandInside(t *testing.T) {
	set := Set{Title: "Linden pinafore", Unit: length.Inch, Pieces: []mark.Marking{sample.Skirt(), sample.Bodice()}}
	sheets := Arrange(set, paper.All()[0]).Sheets
	looked := 0
	for i := range sheets {
		s := &sheets[i]
		s.FindJoins(1)
		s.Letter(length.Inch)
		outline := s.Pieces[0].Outline.Path()
		all := slices.Clone(s.Labels)
		for _, name := range s.Captions {
			all = append(all, name.Label)
		}
		for _, l := range all {
			assert.True(t, windsRound(outline, l.Room.Centre), "%q of %v", l.Text, s.Pieces[0].Name)
			looked++
		}
	}
	assert.Greater(t, looked, 15)
}
