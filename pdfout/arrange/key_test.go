package arrange

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
)

// saidOn is all that stands on a sheet, and in its panels that have no room there.
func saidOn(s *Sheet) string {
	var all []string
	for _, l := range s.Labels {
		all = append(all, l.Text)
	}
	for _, c := range s.Captions {
		all = append(all, c.Text)
	}
	for _, panel := range s.Apart {
		for _, l := range panel.Labels {
			all = append(all, l.Text)
		}
	}
	return strings.Join(all, " ")
}

// crowded is a piece of some width and height with ten lines across it, ten words and ten
// distances, each told in a text of its own that is as long as is asked.
func crowded(wide, high float64, letters int) (m mark.Marking, told []string) {
	say := func(what string, i int) string {
		text := fmt.Sprintf("%s %d of", what, i)
		for len(text) < letters {
			text += " seams"
		}
		told = append(told, text)
		return text
	}
	m = sample.Ruled("p", "P", wide, high)
	for i := range 10 {
		x := wide * (float64(i) + 0.5) / 10
		from, to := plane.Point{X: x, Y: 0.1 * high}, plane.Point{X: x, Y: 0.9 * high}
		m.Add(mark.Stitch, say("line", i), plane.Path{from, to})
		m.Words = append(m.Words, mark.Word{Role: mark.TuckFold, Text: say("word", i), At: to, Out: plane.Point{Y: 1}})
		m.Dimensions = append(m.Dimensions, mark.Dimension{From: from, To: from.Toward(to, 0.5), Text: say("distance", i)})
	}
	return m, told
}

// Whatever is told at a place of a piece is on the sheet, as long as it may be and as small as
// the piece is: by its place, or in the key. Every number by a place is in the key once, and
// every number in the key stands by a place.
func TestNothingToldIsLost(t *testing.T) {
	for _, c := range []struct {
		name       string
		wide, high float64
		letters    int
	}{
		{"short words in a large piece", 150, 200, 8},
		{"60 letters in a large piece", 150, 200, 60},
		{"60 letters in 1 in", 25.4, 25.4, 60},
		{"200 letters in a strip", 180, 12, 200},
		{"short words in 10 mm", 10, 10, 8},
	} {
		t.Run(c.name, func(t *testing.T) {
			m, told := crowded(c.wide, c.high, c.letters)
			s := sheetOf(m)
			s.Letter()
			said := saidOn(s)
			for _, words := range told {
				assert.Contains(t, said, words)
			}
			k := s.keys[s.Pieces[0].Key]
			if c.letters >= 60 {
				require.NotNil(t, k, "not all has room by its place")
			}
			if k == nil {
				return
			}
			for n := range k.numbers {
				assert.Equal(t, 2, strings.Count(said, fmt.Sprintf("(%d)", n+1)), "number %d: by its place and in the key", n+1)
			}
			assert.NotContains(t, said, fmt.Sprintf("(%d)", k.numbers+1), "and no other number")
		})
	}
}

// A leader is no longer than 30 mm, and no two cross each other.
func TestLeadersAreShort(t *testing.T) {
	m, _ := crowded(150, 200, 30)
	m.Dimensions = nil // what leads to these is no leader
	s := sheetOf(m)
	s.words()
	s.captionLines()
	require.NotEmpty(t, s.Thin)
	for i, l := range s.Thin {
		assert.LessOrEqual(t, l.Length(), 30.0, "%v", l)
		for _, other := range s.Thin[:i] {
			assert.False(t, strip(l[0], l[1], 0.01).MeetsSegment(other[0], other[1]), "%v crosses %v", l, other)
		}
	}
}

// What is told of a piece is inside of it, or nearer to it than to a neighbour, from end to end.
func TestWordsKeepToTheirPiece(t *testing.T) {
	left, right := sample.Ruled("a", "A", 40, 80), sample.Ruled("b", "B", 40, 80)
	at := plane.Point{X: 39, Y: 40}
	left.Words = []mark.Word{{Role: mark.TuckFold, Text: "the right edge of the left piece", At: at, Out: plane.Point{X: 1}}}
	for _, gap := range []float64{4, 20, 40, 90} {
		s := NewSheet([]Piece{NewPiece(left), NewPiece(right).Moved(plane.Point{X: 40 + gap})},
			Grid{Rows: 1, Columns: 1, Window: plane.Point{X: 190, Y: 240}}, []Cell{{}})
		s.words()
		require.NotEmpty(t, s.Labels, "%v mm apart", gap)
		for _, l := range s.Labels {
			box := l.Room.Bounds()
			inside := box.Max.X < 40
			nearer := box.Min.X > 40 && box.Max.X-40 < gap && box.Min.X-40 < 40+gap-box.Max.X
			assert.True(t, inside || nearer, "%v mm apart: %v", gap, box)
		}
	}
}
