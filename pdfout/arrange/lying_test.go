package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// A sheet lies where the others stand only where that saves pages: a piece 240 mm long is
// whole across letter paper, 279.4 mm long, and not up it, under the title block.
func TestSheetsThatLie(t *testing.T) {
	letter := paper.All()[0]
	require.Equal(t, "letter", letter.Name)
	lying, err := letter.Lying()
	require.NoError(t, err)
	for _, c := range []struct {
		name  string
		on    paper.Paper
		w, h  float64
		lying bool
		pages int
	}{
		{"whole on a page that stands", letter, 150, 200, false, 1},
		{"whole on one that lies", letter, 150, 240, true, 1},
		{"given lying", letter, 240, 150, true, 1},
		{"as many pages either way", letter, 400, 400, false, 6},
		{"whole on one that stands, of paper that lies", lying, 180, 200, false, 1},
		{"too long for either", letter, 150, 300, false, 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			laid := Arrange(Set{Pieces: []mark.Marking{sample.Rectangle("p", "P", c.w, c.h)}}, c.on)
			require.Len(t, laid.Sheets, 1)
			s := laid.Sheets[0]
			assert.Equal(t, c.lying, s.Paper.IsLying())
			assert.Len(t, s.Cells, c.pages)
			assert.Equal(t, plane.Point{X: s.Paper.Window().Width(), Y: s.Paper.Window().Height()}, s.Grid.Window)
		})
	}
}
