package pdfout

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// squeezed is a text without its spaces: titles are broken into lines, and
// very long words within.
func squeezed(text string) string { return strings.Join(strings.Fields(text), "") }

// titleOf matches a name with all notes right after it, in order, as one title
// or header has them. Notes that the header says on every page may be missing.
func titleOf(set Set, m marking.Marking) *regexp.Regexp {
	name := m.Name
	if name == "" {
		name = m.Key
	}
	expr := regexp.QuoteMeta(squeezed(name)) + ":?"
	for _, note := range m.Notes {
		one := "([,;]?" + regexp.QuoteMeta(squeezed(note)) + ")"
		if note == set.Title || note == "size "+set.Size {
			one += "?"
		}
		expr += one
	}
	return regexp.MustCompile(expr)
}

// The name and every note of every piece stand on a page of its sheet, whole.
func checkNotes(t require.TestingT, set Set, d readDocument, s Summary) {
	on := map[string][]string{} // the texts of the pages of each piece
	for _, sheet := range append(formsAsSheets(s), s.Sheets...) {
		for n := sheet.First; n <= sheet.Last; n++ {
			text := squeezed(strings.Join(d.pages[n-1].words(), ""))
			for _, name := range sheet.Pieces {
				on[name] = append(on[name], text)
			}
		}
	}
	for _, m := range set.Pieces {
		name, want := m.Name, titleOf(set, m)
		if name == "" {
			name = m.Key
		}
		found := false
		for _, text := range on[name] {
			found = found || want.MatchString(text)
		}
		assert.True(t, found, "no page says %q and all of %q", name, m.Notes)
	}
}

// A narrow piece has its title along it, in it.
func TestTitlesOfNarrowPieces(t *testing.T) {
	set := narrowPieces()
	for i := range set.Pieces {
		m := set.Pieces[i]
		t.Run(m.Name, func(t *testing.T) {
			laid := arrange(Set{Title: set.Title, Size: set.Size, Pieces: []marking.Marking{m}}, papers()[0])
			s := &laid.sheets[0]
			s.findJoins(1)
			s.paper = papers()[0]
			s.letter(marking.Inch)
			assert.Empty(t, s.untitled)
			in := false
			for _, l := range s.labels {
				if l.text == m.Name {
					in = s.pieces[0].inside(l.room.centre)
				}
			}
			assert.Equal(t, m.Key != "piping", in, "inside")
		})
	}
}

// Long notes stand in the piece if they have room there, under it if not, and
// in a strip of it where the page ends; on the page whole in any case.
func TestLongNotes(t *testing.T) {
	t.Parallel()
	low := ruled("low", "Low tuck sheet", 7*inch, 2*inch, longNotes()...)
	for x := 3.0; x < 7*inch; x += 3 {
		low.Marks = append(low.Marks, edge(marking.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 2 * inch}))
	}
	for _, c := range []struct {
		name   string
		m      marking.Marking
		inside bool
		lines  int // of the title
	}{
		{"in a thin strip", tuckRuler(longNotes()...), true, 4},
		{"under a sheet of tucks", tuckSheet(6, longNotes()...), false, 7},
		{"under a low sheet", low, false, 7},
		{"in a sheet as high as the page", tuckSheet(9, longNotes()...), true, 4},
		{"in a large piece", ruled("panel", "Panel", 150, 150, longNotes()...), true, 7},
	} {
		t.Run(c.name, func(t *testing.T) {
			set := Set{Pieces: []marking.Marking{c.m}}
			s := &arrange(set, papers()[0]).sheets[0]
			s.paper = papers()[0]
			s.letter(marking.Inch)
			assert.Empty(t, s.untitled)
			lines := 0
			for _, l := range s.labels {
				lines++
				assert.GreaterOrEqual(t, l.style.size, smallest, l.text)
				assert.Equal(t, c.inside, s.pieces[0].inside(l.room.centre), l.text)
			}
			assert.Equal(t, c.lines, lines)
			d, summary := drawn(t, set, "letter")
			checkNotes(t, set, d, summary)
			checkLabels(t, set, d, summary)
		})
	}
}

// Where a title has no place at all, the header of the page says it.
func TestTitleInTheHeader(t *testing.T) {
	t.Parallel()
	full := rectangle("p", "Panel", 186, 240, "cut 2", "Pinafore")
	for y := 2.0; y < 240; y += 2 {
		full.Marks = append(full.Marks, edge(marking.TuckFold, "", full.Outline[0].Toward(full.Outline[3], y/240), full.Outline[1].Toward(full.Outline[2], y/240)))
	}
	d, s := drawn(t, Set{Title: "Pinafore", Pieces: []marking.Marking{full}}, "letter")
	assert.Contains(t, d.pages[s.Front].words(), "Panel: cut 2")
}

// Pieces too small for a title bring room for it along, however full the page
// is: each has it right under itself.
func TestTinyPiecesBringRoom(t *testing.T) {
	t.Parallel()
	set := Set{Title: "Inlay"}
	for i := range 60 {
		m := rectangle(fmt.Sprint(i), fmt.Sprint("Diamond ", i+1), 12, 12, "Inlay", "cut 12, of three cloths, and turn each to the left")
		set.Pieces = append(set.Pieces, m)
	}
	sheets := arrange(set, papers()[0]).sheets
	require.Greater(t, len(sheets), 1, "the first page is full")
	for i := range sheets {
		s := &sheets[i]
		s.paper = papers()[0]
		s.letter(marking.Inch)
		assert.Empty(t, s.untitled)
		for _, p := range s.pieces {
			for _, l := range s.labels {
				if l.text == p.name {
					assert.InDelta(t, besideAway, p.bounds.Min.Y-l.room.bounds().Max.Y, 1, p.name)
					assert.Less(t, math.Abs(l.room.centre.X-p.bounds.Centre().X), besideWidth/2, p.name)
				}
			}
		}
	}
}

// A title beside its piece never stands in another piece.
func TestTitleStandsInNoOtherPiece(t *testing.T) {
	around := newPiece(sail(150))
	tiny := newPiece(rectangle("t", "Tiny", 8, 8, "cut 2")).moved(plane.Point{X: 70, Y: 70})
	window := plane.Point{X: 190, Y: 240}
	s := newSheet([]piece{around, tiny}, grid{rows: 1, columns: 1, window: window}, []cell{{}})
	s.title(tiny, s.field)
	assert.Empty(t, s.labels)
	assert.Len(t, s.untitled, 1)
	alone := newSheet([]piece{tiny}, grid{rows: 1, columns: 1, window: window}, []cell{{}})
	alone.title(tiny, alone.field)
	assert.NotEmpty(t, alone.labels)
}
