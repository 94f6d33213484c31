package arrange

import (
	"fmt"
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

// lettered is the sheet of a set that needs only one, with its text.
func lettered(t require.TestingT, set Set) *Sheet {
	sheets := Arrange(set, paper.All()[0]).Sheets
	require.Len(t, sheets, 1)
	sheets[0].FindJoins(1)
	sheets[0].Letter()
	return &sheets[0]
}

// labelOf is the first label of a sheet that begins with some words.
func labelOf(t require.TestingT, s *Sheet, words string) text.Label {
	found := slices.DeleteFunc(slices.Clone(s.Labels), func(l text.Label) bool { return !strings.HasPrefix(l.Text, words) })
	require.NotEmpty(t, found, words)
	return found[0]
}

// A narrow piece has its sign in it, along it where no upright one would go in.
func TestSignsOfNarrowPieces(t *testing.T) {
	for _, m := range sample.NarrowPieces() {
		t.Run(m.Name, func(t *testing.T) {
			laid := Arrange(Set{Title: "Sunday pinafore", Size: "18 months", Pieces: []mark.Marking{m}}, paper.All()[0])
			s := &laid.Sheets[0]
			s.FindJoins(1)
			s.Letter()
			assert.Empty(t, s.Apart)
			name := labelOf(t, s, strings.Fields(m.Name)[0])
			assert.Equal(t, m.Key != "piping", s.Pieces[0].Inside(name.Room.Centre), "inside")
			assert.GreaterOrEqual(t, name.Style.Size, 9.0)
		})
	}
}

// Pieces too small for a sign bring room for it along, however full the page is: each has it
// right under itself, and its number inside.
func TestTinyPiecesBringRoom(t *testing.T) {
	t.Parallel()
	set := Set{Title: "Inlay"}
	for i := range 60 {
		m := sample.Rectangle(fmt.Sprint(i), fmt.Sprint("Diamond ", i+1), 20, 20, "Inlay", "cut 12, of three cloths, and turn each to the left")
		m.Part = i + 1
		set.Pieces = append(set.Pieces, m)
	}
	sheets := Arrange(set, paper.All()[0]).Sheets
	require.Greater(t, len(sheets), 1, "the first page is full")
	for i := range sheets {
		s := &sheets[i]
		s.Letter()
		assert.Empty(t, s.Apart)
		for _, p := range s.Pieces {
			var named, numbered []text.Label
			for _, l := range s.Labels {
				if l.Text == p.Name {
					named = append(named, l)
				}
				if l.Text == fmt.Sprint("part ", p.Part) && p.Inside(l.Room.Centre) {
					numbered = append(numbered, l)
				}
			}
			require.Len(t, named, 1, "labels with the whole name %q", p.Name)
			assert.Len(t, numbered, 1, "numbers in %q", p.Name)
			room := named[0].Room.Bounds()
			assert.InDelta(t, 1.5, p.Bounds.Min.Y-room.Max.Y, 1, p.Name)
			assert.InDelta(t, p.Bounds.Min.X, room.Min.X, 0.01, "%s: it begins where the piece does", p.Name)
		}
	}
}

// What stands beside its piece never stands in another; where there is no room for it on the
// sheet it is kept for a page of its own.
func TestNothingStandsInAnotherPiece(t *testing.T) {
	around := NewPiece(sample.Sail(150))
	tiny := NewPiece(sample.Rectangle("t", "Tiny", 8, 8, "cut 2")).Moved(plane.Point{X: 70, Y: 70})
	window := plane.Point{X: 190, Y: 240}
	s := NewSheet([]Piece{around, tiny}, Grid{Rows: 1, Columns: 1, Window: window}, []Cell{{}})
	s.tell(tiny)
	require.NotEmpty(t, s.Labels)
	for _, l := range s.Labels {
		for _, q := range l.Room.Bounds().Outline() {
			assert.False(t, around.Inside(q), l.Text)
		}
	}
	assert.NotEmpty(t, s.Thin, "a leader says which piece it belongs to")

	full := NewSheet([]Piece{around, tiny}, Grid{Rows: 1, Columns: 1, Window: window}, []Cell{{}})
	full.Paper = paper.All()[0]
	full.Field.Take(text.Upright(plane.Box{Max: window}))
	full.tell(tiny)
	assert.Empty(t, full.Labels)
	require.Len(t, full.Apart, 1)
	pages := full.PanelPages()
	require.Len(t, pages, 1)
	assert.Equal(t, "Tiny", pages[0].Labels[0].Text)
}

// Notes stand in the piece where they have room there, under it if not, and on a page of
// their own where the page ends: at 9 pt, from the left.
func TestPanels(t *testing.T) {
	t.Parallel()
	notes := sample.LongNotes()
	low := sample.Ruled("low", "Low tuck sheet", 7*sample.Inch, 2*sample.Inch, notes...)
	for x := 3.0; x < 7*sample.Inch; x += 3 {
		low.Marks = append(low.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 2 * sample.Inch}))
	}
	const inside, under, apart = "inside", "under it", "on a page of its own"
	for _, c := range []struct {
		name  string
		m     mark.Marking
		where string
	}{
		{"a thin strip", sample.TuckRuler(notes...), under},
		{"a sheet of tucks", sample.TuckSheet(6, notes...), under},
		{"a low sheet", low, under},
		{"a sheet as high as the page", sample.TuckSheet(9, notes...), apart},
		{"a large piece", sample.Ruled("panel", "Panel", 150, 150, notes...), inside},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := lettered(t, Set{Pieces: []mark.Marking{c.m}, Unit: length.Inch})
			labels, p := s.Labels, s.Pieces[0]
			if c.where == apart {
				require.Len(t, s.Apart, 1)
				labels = s.PanelPages()[0].Labels
			}
			first := slices.IndexFunc(labels, func(l text.Label) bool { return strings.HasPrefix(l.Text, notes[0][:12]) })
			require.GreaterOrEqual(t, first, 0)
			var all []string
			for _, l := range labels[first:] {
				all = append(all, l.Text)
				assert.Equal(t, 9.0, l.Style.Size, l.Text)
				assert.InDelta(t, labels[first].At.X, l.At.X, 1e-9, "from the left: %s", l.Text)
				assert.True(t, s.Whole(l.Room.Bounds()), l.Text)
				if c.where != apart {
					assert.Equal(t, c.where == inside, p.Inside(l.Room.Centre), l.Text)
				}
			}
			assert.Equal(t, strings.Join(notes, " "), strings.Join(all, " "))
		})
	}
}

// Steps are numbered, with their words one under the other.
func TestStepsAreNumbered(t *testing.T) {
	m := sample.Ruled("p", "P", 150, 150)
	m.Steps = []string{"lay the centre on the centre of the tucked block, and its tucks under their lines", "cut one layer at a time"}
	s := sheetOf(m)
	s.tell(s.Pieces[0])
	one, two := labelOf(t, s, "1."), labelOf(t, s, "2.")
	assert.Equal(t, one.At.X, two.At.X)
	for _, words := range []string{"lay the", "cut one"} {
		assert.InDelta(t, one.At.X+5.5, labelOf(t, s, words).At.X, 1e-9)
	}
	assert.Equal(t, two.At.Y, labelOf(t, s, "cut one").At.Y)
}

// A sign is as large as looks well in its piece, and upright.
func TestSignFitsThePiece(t *testing.T) {
	for _, c := range []struct {
		name string
		w, h float64
		size float64 // of the name, in points
		in   bool
	}{
		{"large", 150, 120, 22, true},
		{"small", 45, 30, 22, true},
		{"smaller", 40, 22, 11, true},
		{"too small: beside it", 20, 6, 9, false},
	} {
		m := sample.Rectangle("p", "Pocket", c.w, c.h)
		m.Cut, m.Part = "cut 2", 3
		s := lettered(t, Set{Pieces: []mark.Marking{m}})
		name, cut := labelOf(t, s, "Pocket"), labelOf(t, s, "part 3, cut 2")
		assert.Equal(t, c.size, name.Style.Size, c.name)
		assert.Equal(t, 9.0, cut.Style.Size, c.name)
		assert.Equal(t, text.Across(), name.U, c.name)
		assert.Equal(t, c.in, s.Pieces[0].Inside(name.Room.Centre), c.name)
	}
}

// No sign and no panel stands in what is folded under along an edge.
func TestNothingStandsInAHem(t *testing.T) {
	m := sample.Ruled("p", "P", 150, 120)
	m.Marks = append(m.Marks, sample.Edge(mark.Fold, "hem", plane.Point{Y: 55}, plane.Point{X: 150, Y: 55}))
	m.Steps = []string{"lay it on the block"}
	p := NewPiece(m)
	for _, c := range []struct {
		y    float64
		want bool
	}{{20, true}, {54, true}, {56, false}, {100, false}} {
		assert.Equal(t, c.want, p.hemmed(plane.Point{X: 70, Y: c.y}), "%v mm up", c.y)
	}
	s := sheetOf(m)
	s.tell(s.Pieces[0])
	require.NotEmpty(t, s.Labels)
	for _, l := range s.Labels {
		assert.Greater(t, l.Room.Bounds().Min.Y, 55.0, l.Text)
	}
}

// What lies turned has room kept for its panel as it lies (derived: a strip 170 by 42 mm has room
// for its steps inside as it was drawn; turned it has not).
func TestTurnedPiecesBringRoom(t *testing.T) {
	t.Parallel()
	strip := sample.Ruled("strip", "Strip", 170, 42)
	strip.Steps = []string{"lay it on the cloth, the grain along it", "turn it over for the second"}
	window := plane.Point{X: 194, Y: 237}
	drawn := KeptParcel(NewPiece(strip), window)
	turned := drawn.QuarterTurned()
	assert.InDelta(t, 42+4, drawn.Size.Y, 1e-6, "nothing is kept under it")
	assert.Greater(t, turned.Size.Y, 170+4+10.0, "its steps come under it")
	assert.Same(t, drawn.Piece, turned.QuarterTurned().Piece, "turned back it lies as it was drawn")

	k := EmptyPage(window)
	require.True(t, k.Put(turned))
	s := k.sheet(Grid{Rows: 1, Columns: 1, Window: window})
	s.Letter()
	assert.Empty(t, s.Apart)
}

// A panel that lies inside an outline which is not drawn, but beyond the lines of its piece, has
// its room kept there; where the page has none, it comes under the piece.
func TestPanelsBeyondTheLines(t *testing.T) {
	t.Parallel()
	block := sample.Ruled("block", "Tuck sheet", 190, 150)
	block.Steps = []string{"tear a block", "rule the lines of the tucks", "fold the tucks and stitch them"}
	block.Marks = []mark.Mark{sample.Edge(mark.BlockEdge, "", plane.Point{Y: 150}, plane.Point{X: 110, Y: 150})}
	for x := 0.0; x <= 60; x += 4 {
		block.Marks = append(block.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 150}))
	}
	p := NewPiece(block)
	require.InDelta(t, 110, p.Bounds.Width(), 1e-6)
	wide := p.kept(plane.Point{X: 194, Y: 237})[0]
	assert.Zero(t, wide.Foot)
	assert.Greater(t, wide.Room().X, 110+4+2.0, "room beside its lines")
	narrow := p.kept(plane.Point{X: 110 + 4 + 2, Y: 237})[0]
	assert.Greater(t, narrow.Foot.Y, 15.0, "its steps come under it")
	assert.InDelta(t, 110+4, narrow.Room().X, 1e-6)
}

// What has no room by its piece may lie in it where its outline goes beyond its lines, and needs
// no page of its own.
func TestPanelsInWhatIsNotDrawn(t *testing.T) {
	t.Parallel()
	block := sample.Ruled("block", "Tuck sheet", 300, 300)
	block.Steps = sample.LongNotes()
	block.Marks = nil
	for x := 0.0; x <= 100; x += 4 {
		block.Marks = append(block.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 225}))
	}
	s := lettered(t, Set{Pieces: []mark.Marking{block}})
	assert.Empty(t, s.Apart)
	step := labelOf(t, s, "1.")
	assert.Greater(t, step.Room.Bounds().Min.X, s.Pieces[0].Bounds.Max.X, "it stands beside the lines")
	assert.True(t, s.Pieces[0].Inside(step.Room.Centre))
}
