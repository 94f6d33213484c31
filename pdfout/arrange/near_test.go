package arrange

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/sample"
)

// sheetOf is a sheet of one page, 190 by 240 mm, with a piece as it was drawn.
func sheetOf(m mark.Marking) *Sheet {
	s := NewSheet([]Piece{NewPiece(m)}, Grid{Rows: 1, Columns: 1, Window: plane.Point{X: 190, Y: 240}}, []Cell{{}})
	return &s
}

// A word stands right by its place, on its side of it; where that is taken it moves on, and
// a leader runs from it to the place.
func TestWordsStandByTheirPlaces(t *testing.T) {
	m := sample.Ruled("p", "P", 150, 200)
	at, up := plane.Point{X: 75, Y: 100}, plane.Point{Y: 1}
	s := sheetOf(m)
	word := InLines([]string{"12"}, ink.Text())
	for i := range 4 {
		s.near(s.Pieces[0], "12", ink.Text(), nearAway, []Anchor{{At: at, Out: up}})
		room := s.Labels[i].Room.Bounds()
		away := room.Distance(at)
		if i == 0 {
			assert.InDelta(t, 0.9, away, 0.01)
			assert.Greater(t, room.Min.Y, at.Y, "on its side")
			assert.Empty(t, s.Thin)
			continue
		}
		for _, other := range s.Labels[:i] {
			assert.False(t, other.Room.Meets(s.Labels[i].Room), "%d: on another", i)
		}
	}
	require.NotEmpty(t, s.Thin, "the last have leaders")
	for i, l := range s.Thin {
		assert.Equal(t, at, l[1], "it ends at the place")
		assert.Equal(t, at, s.Heads[i].Shape[0])
		for _, word := range s.Labels {
			assert.False(t, word.Room.MeetsSegment(l[0], l[1]), "it runs through no text")
		}
	}
	_, ok := s.nearest(s.Pieces[0], word, nearAway, []Anchor{{At: plane.Point{X: -500}, Out: up}}, math.Inf(1))
	assert.False(t, ok, "a place on no page")
}

// The heads of a distance stand between its places where there is room, else outside of
// them, pointing inward; its line lies along no other, and its words by it.
func TestDimensions(t *testing.T) {
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	for _, c := range []struct {
		name     string
		from, to plane.Point
		lines    int         // of the distance and what leads there
		long     float64     // of the line between the heads, in mm
		points   plane.Point // where the head at the end points
	}{
		{"long", p(20, 60), p(80, 60), 1, 60, p(1, 0)},
		{"1/4 in", p(60, 50), p(60, 56.35), 1, 6.35 + 2*6.6, p(0, -1)},
		{"along an edge", p(0, 40), p(0, 90), 3, 50, p(0, 1)},
		{"of no length", p(60, 50), p(60, 50), 1, 2 * 6.6, p(0, -1)},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := sample.Ruled("p", "P", 150, 200)
			m.Dimensions = []mark.Dimension{{From: c.from, To: c.to, Text: "hem 2 in"}}
			s := sheetOf(m)
			s.words()
			require.Len(t, s.Thin, c.lines+2)
			line, heads := s.Thin[c.lines-1], s.Thin[c.lines:]
			assert.InDelta(t, c.long, line.Length(), 1e-9)
			for i, place := range []plane.Point{c.from, c.to} {
				require.Len(t, heads[i], 3, "open")
				assert.LessOrEqual(t, heads[i][1].Distance(place), 5.0)
			}
			assert.InDelta(t, c.from.Distance(c.to), heads[0][1].Distance(heads[1][1]), 1e-9)
			points := heads[1][1].Sub(heads[1][0].Toward(heads[1][2], 0.5)).Unit()
			assert.Less(t, points.Distance(c.points), 1e-9, fmt.Sprint(points))
			require.Len(t, s.Labels, 1)
			assert.True(t, s.Labels[0].Room.Grown(2).MeetsSegment(line[0], line[1]), "the words stand right by it")
			assert.False(t, s.Labels[0].Room.MeetsSegment(line[0], line[1]))
		})
	}
}

// Distances at one place keep apart: the words of each stand right by its own line, and at
// least 4 mm from the words and the line of any other.
func TestDimensionsKeepApart(t *testing.T) {
	m := sample.Ruled("p", "P", 150, 200)
	for _, up := range []float64{60, 62, 78} {
		m.Dimensions = append(m.Dimensions, mark.Dimension{
			From: plane.Point{X: 75, Y: 50}, To: plane.Point{X: 75, Y: up},
			Text: "fold 2 1/4 in from the cut edge: hem 2 in, turn 1/4 in",
		})
	}
	s := sheetOf(m)
	s.words()
	require.Len(t, s.measured, 2*len(m.Dimensions), "all have their words right by them")
	for i := 1; i < len(s.measured); i += 2 {
		line, words := s.measured[i-1], s.measured[i]
		assert.True(t, words.Grown(2).Meets(line), "%d", i)
		for k, other := range s.measured {
			if k != i && k != i-1 {
				assert.False(t, words.Grown(3.9).Meets(other), "%d by %d", i, k)
			}
		}
	}
}

// The words of a distance stand by its line where no other line is close, though another runs right
// by the middle of it, where they would stand before; where all is close, between lines.
func TestWordsOfADistanceKeepOffOtherLines(t *testing.T) {
	for _, c := range []struct {
		name  string
		lines []float64 // how high other lines lie, in mm
		free  float64   // what lies between these and the words
	}{
		{"none", nil, 4},
		{"right by the middle", []float64{97}, 4},
		{"all along it, 10 mm apart", []float64{60, 70, 80, 90, 100, 110, 120, 130, 140}, 0.8},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := sample.Ruled("p", "P", 150, 200)
			for _, y := range c.lines {
				m.Add(mark.Stitch, "", plane.Path{{X: 20, Y: y}, {X: 130, Y: y}})
			}
			m.Dimensions = []mark.Dimension{{From: plane.Point{X: 75, Y: 50}, To: plane.Point{X: 75, Y: 150}, Text: "hem 2 in"}}
			s := sheetOf(m)
			s.words()
			require.Len(t, s.Labels, 1)
			room := s.Labels[0].Room
			assert.True(t, room.Grown(2).MeetsSegment(s.Thin[0][0], s.Thin[0][1]), "right by its own line")
			for _, l := range s.Pieces[0].Lines {
				assert.Zero(t, segmentsIn(l.Tree, room.Grown(c.free-0.01)), "%v", l.Path())
			}
		})
	}
}

// What is told in a piece lies with it when it is turned by a quarter.
func TestWordsAreTurnedWithTheirPiece(t *testing.T) {
	m := sample.Ruled("p", "P", 150, 200)
	m.Words = []mark.Word{{Text: "1", At: plane.Point{X: 10, Y: 20}, Out: plane.Point{Y: 1}}}
	m.Dimensions = []mark.Dimension{{From: plane.Point{X: 1}, To: plane.Point{X: 5}, Text: "4"}}
	p := NewPiece(m).QuarterTurned().Moved(plane.Point{X: 100})
	assert.Equal(t, plane.Point{X: 80, Y: 10}, p.words[0].At)
	assert.Equal(t, plane.Point{X: -1}, p.words[0].Out)
	assert.Equal(t, plane.Point{X: 100, Y: 1}, p.dimensions[0].From)
	assert.Equal(t, plane.Point{X: 100, Y: 5}, p.dimensions[0].To)
}

// A text stays under the strip over the window, on a page of its own as well.
func TestTextStaysUnderTheStrip(t *testing.T) {
	s := sheetOf(sample.Ruled("p", "P", 150, 200))
	box := func(top float64) plane.Box {
		return plane.Box{Min: plane.Point{X: 20, Y: top - 5}, Max: plane.Point{X: 40, Y: top}}
	}
	assert.True(t, s.Whole(box(238.4)))
	assert.False(t, s.Whole(box(238.6)))
}

// Pale words give way to what is told of the piece, in a smaller size if need be.
func TestPaleWordsLieUnderNoText(t *testing.T) {
	m := sample.Ruled("p", "P", 150, 200)
	m.Pale, m.Steps = []string{"RIGHT", "WRONG SIDE UP"}, []string{"lay it on the cloth", "follow the lines with a wheel"}
	s := sheetOf(m)
	s.Letter()
	require.Len(t, s.Pale, 2)
	require.NotEmpty(t, s.Labels)
	for _, pale := range s.Pale {
		for _, l := range s.Labels {
			assert.False(t, pale.Room.Meets(l.Room), "%s on %s", l.Text, pale.Text)
		}
	}
}

// By a piece that has its sign inside the panel does not name it again; further off it does.
func TestPanelNamesItsPieceOnce(t *testing.T) {
	m := sample.Ruled("p", "Yoke", 150, 200)
	m.Part, m.Steps = 3, []string{"cut it out"}
	p := NewPiece(m)
	words := func(r remainder, width float64) (by, off string) {
		for _, t := range r.by(width) {
			for _, l := range t.Labels {
				by += l.Text + "\n"
			}
		}
		for _, t := range r.off(width) {
			for _, l := range t.Labels {
				off += l.Text + "\n"
			}
		}
		return by, off
	}
	by, off := words(remainder{p, true, false}, 80)
	assert.Equal(t, "1.\ncut it out\n", by)
	assert.Equal(t, "Yoke\npart 3\n1.\ncut it out\n", off)
	by, _ = words(remainder{p, false, false}, 80)
	assert.Contains(t, by, "Yoke", "it stands nowhere else")
}

// No words stand right before an end of an arrow, wherever they would find their place.
func TestNoWordsBeforeAnArrow(t *testing.T) {
	m := sample.Rectangle("p", "P", 150, 200)
	from, to := plane.Point{X: 40, Y: 100}, plane.Point{X: 56, Y: 100}
	m.Marks = append(m.Marks, mark.Mark{Role: mark.Arrow, Path: plane.Path{from, to}})
	for _, end := range []struct{ at, out plane.Point }{{from, plane.Point{X: -1}}, {to, plane.Point{X: 1}}} {
		// As close by as a word stands to its place.
		m.Words = append(m.Words, mark.Word{Role: mark.TuckEnd, Text: "end here", At: end.at.Add(end.out.Mul(1.5)), Out: end.out})
	}
	s := sheetOf(m)
	s.Letter()
	arrow := s.Pieces[0].Lines[len(s.Pieces[0].Lines)-1]
	require.Equal(t, mark.Arrow, arrow.Role)
	path := arrow.Path()
	u := path[1].Sub(path[0]).Unit()
	told := 0
	for _, l := range s.Labels {
		if !strings.HasPrefix(l.Text, "end here") { // it may stand in the key
			continue
		}
		told++
		for _, end := range []plane.Path{{path[0], path[0].Sub(u.Mul(4))}, {path[1], path[1].Add(u.Mul(4))}} {
			assert.False(t, l.Room.MeetsSegment(end[0], end[1]), "%v", l.Room.Bounds())
		}
	}
	assert.Equal(t, 2, told)
}
