package arrange

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// A narrow piece has its title along it, in it.
func TestTitlesOfNarrowPieces(t *testing.T) {
	for _, m := range sample.NarrowPieces() {
		t.Run(m.Name, func(t *testing.T) {
			laid := Arrange(Set{Title: "Linden pinafore", Size: "18 months", Pieces: []mark.Marking{m}}, paper.All()[0])
			s := &laid.Sheets[0]
			s.FindJoins(1)
			s.Letter()
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
		s.Letter()
		assert.Empty(t, s.Untitled)
		for _, p := range s.Pieces {
			var named []text.Label
			for _, l := range s.Labels {
				if l.Text == p.Name {
					named = append(named, l)
				}
			}
			require.Len(t, named, 1, "labels with the whole name %q", p.Name)
			room := named[0].Room
			assert.InDelta(t, 1.5, p.Bounds.Min.Y-room.Bounds().Max.Y, 1, p.Name)
			assert.Less(t, math.Abs(room.Centre.X-p.Bounds.Centre().X), 30.0, p.Name)
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

// lettered is the sheet of a set that needs only one, with its text.
func lettered(t require.TestingT, set Set) *Sheet {
	sheets := Arrange(set, paper.All()[0]).Sheets
	require.Len(t, sheets, 1)
	sheets[0].FindJoins(1)
	sheets[0].Letter()
	return &sheets[0]
}

// Long notes stand in the piece if they have room there, under it if not, and
// in a strip of it where the page ends; on the page whole in any case.
func TestLongNotes(t *testing.T) {
	t.Parallel()
	notes := sample.LongNotes()
	low := sample.Ruled("low", "Low tuck sheet", 7*sample.Inch, 2*sample.Inch, notes...)
	for x := 3.0; x < 7*sample.Inch; x += 3 {
		low.Marks = append(low.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 2 * sample.Inch}))
	}
	for _, c := range []struct {
		name   string
		m      mark.Marking
		inside bool
		lines  int // of the title
	}{
		{"in a thin strip", sample.TuckRuler(notes...), true, 4},
		{"under a sheet of tucks", sample.TuckSheet(6, notes...), false, 7},
		{"under a low sheet", low, false, 7},
		{"in a sheet as high as the page", sample.TuckSheet(9, notes...), true, 4},
		{"in a large piece", sample.Ruled("panel", "Panel", 150, 150, notes...), true, 7},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := lettered(t, Set{Pieces: []mark.Marking{c.m}, Unit: length.Inch})
			assert.Empty(t, s.Untitled)
			assert.Len(t, s.Labels, c.lines)
			for _, l := range s.Labels {
				assert.GreaterOrEqual(t, l.Style.Size, 6.0, l.Text)
				assert.Equal(t, c.inside, s.Pieces[0].Inside(l.Room.Centre), l.Text)
				assert.True(t, s.Whole(l.Room.Bounds()), l.Text)
			}
		})
	}
}

// A title is as large as looks well in its piece.
func TestTitleFitsThePiece(t *testing.T) {
	for _, c := range []struct {
		name  string
		w, h  float64
		notes []string
		least float64 // size of the name, in points
		most  float64
	}{
		{"large", 150, 120, []string{"cut 2"}, 18, 18},
		{"small", 45, 30, []string{"cut 2"}, 15, 15},
		{"narrow: in one line", 30, 12, []string{"cut 2"}, 9, 9},
		{"too small: beside it", 20, 8, []string{"cut 2"}, 8, 8},
		{"many notes", 60, 60, []string{"18 months", "cut 2 of cloth and 1 of lining", "gathered to 4 in at the upper edge"}, 12, 15},
	} {
		s := lettered(t, Set{Pieces: []mark.Marking{sample.Rectangle("p", "Pocket", c.w, c.h, c.notes...)}})
		name := slices.IndexFunc(s.Labels, func(l text.Label) bool { return strings.HasPrefix(l.Text, "Pocket") })
		require.GreaterOrEqual(t, name, 0, "%s: the title is missing", c.name)
		assert.GreaterOrEqual(t, s.Labels[name].Style.Size, c.least, c.name)
		assert.LessOrEqual(t, s.Labels[name].Style.Size, c.most, c.name)
	}
}
