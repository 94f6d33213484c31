package arrange

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// A narrow piece has its title along it, in it.
func TestTitlesOfNarrowPieces(t *testing.T) {
	for _, m := range sample.NarrowPieces() {
		t.Run(m.Name, func(t *testing.T) {
			laid := Arrange(Set{Title: "Linden pinafore", Size: "18 months", Pieces: []mark.Marking{m}}, paper.All()[0])
			s := &laid.Sheets[0]
			s.FindJoins(1)
			s.Letter(length.Inch)
			assert.Empty(t, s.Untitled)
			in := false
			for _, l := range s.Labels {
				if l.Text == m.Name {
					in = s.Pieces[0].Inside(l.Room.Centre)
				}
			}
			assert.Equal(t, m.Key != "piping", in, "inside")
		})
	}
}

// Pieces too small for a title bring room for it along, however full the page
// is: each has it right under itself.
func TestTinyPiecesBringRoom(t *testing.T) {
	t.Parallel()
	set := Set{Title: "Inlay"}
	for i := range 60 {
		m := sample.Rectangle(fmt.Sprint(i), fmt.Sprint("Diamond ", i+1), 12, 12, "Inlay", "cut 12, of three cloths, and turn each to the left")
		set.Pieces = append(set.Pieces, m)
	}
	sheets := Arrange(set, paper.All()[0]).Sheets
	require.Greater(t, len(sheets), 1, "the first page is full")
	for i := range sheets {
		s := &sheets[i]
		s.Letter(length.Inch)
		assert.Empty(t, s.Untitled)
		for _, p := range s.Pieces {
			for _, l := range s.Labels {
				if l.Text == p.Name {
					assert.InDelta(t, besideAway, p.Bounds.Min.Y-l.Room.Bounds().Max.Y, 1, p.Name)
					assert.Less(t, math.Abs(l.Room.Centre.X-p.Bounds.Centre().X), besideWidth/2, p.Name)
				}
			}
		}
	}
}

// A title beside its piece never stands in another piece.
func TestTitleStandsInNoOtherPiece(t *testing.T) {
	around := NewPiece(sample.Sail(150))
	tiny := NewPiece(sample.Rectangle("t", "Tiny", 8, 8, "cut 2")).Moved(plane.Point{X: 70, Y: 70})
	window := plane.Point{X: 190, Y: 240}
	s := NewSheet([]Piece{around, tiny}, Grid{Rows: 1, Columns: 1, Window: window}, []Cell{{}})
	s.title(tiny, s.Field)
	assert.Empty(t, s.Labels)
	assert.Len(t, s.Untitled, 1)
	alone := NewSheet([]Piece{tiny}, Grid{Rows: 1, Columns: 1, Window: window}, []Cell{{}})
	alone.title(tiny, alone.Field)
	assert.NotEmpty(t, alone.Labels)
}
