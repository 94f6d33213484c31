package plane

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// oneFold is a fold of width 2 on the strip from 4 to 8, over v from 0 to 5.
func oneFold(back bool) *Folding {
	return NewFolding(Point{}, Point{X: 1}, []Fold{{At: 4, Width: 2, Back: back, From: 0, To: 5}})
}

func TestCellsOfAFold(t *testing.T) {
	field := Box{Min: Point{X: 1, Y: -3}, Max: Point{X: 12, Y: 10}}.Outline()
	line := Path{{1, 1}, {12, 1}}
	for _, c := range []struct {
		name  string
		back  bool
		boxes []Box // of what lies in each cell of the field, folded
		lines []Path
	}{
		{"toward greater u", false,
			[]Box{{Point{1, -3}, Point{4, 10}}, {Point{4, 0}, Point{6, 5}}, {Point{4, 0}, Point{6, 5}}, {Point{4, -3}, Point{8, 10}}},
			[]Path{{{1, 1}, {4, 1}}, {{4, 1}, {6, 1}}, {{6, 1}, {4, 1}}, {{4, 1}, {8, 1}}}},
		{"toward less", true,
			[]Box{{Point{1, -3}, Point{4, 10}}, {Point{2, 0}, Point{4, 5}}, {Point{2, 0}, Point{4, 5}}, {Point{4, -3}, Point{8, 10}}},
			[]Path{{{1, 1}, {4, 1}}, {{4, 1}, {2, 1}}, {{2, 1}, {4, 1}}, {{4, 1}, {8, 1}}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := oneFold(c.back)
			for i, cell := range f.Cells() {
				assert.Equal(t, c.boxes[i], cell.Area(field).Bounds(), "cell %d", i)
				assert.Equal(t, []Path{c.lines[i]}, cell.Lines(line), "a line in cell %d", i)
				assert.Equal(t, c.back == (i == 1) && (i == 1 || i == 2), cell.Mirrored, "cell %d", i)
			}
		})
	}
}

// What runs along the side of a cell lies in one cell, that at greater u.
func TestLineAlongTheSideOfACell(t *testing.T) {
	cells := oneFold(false).Cells()
	along := Path{{4, 1}, {4, 4}}
	assert.Empty(t, cells[0].Lines(along))
	assert.Equal(t, []Path{along}, cells[1].Lines(along))
}

func TestChords(t *testing.T) {
	// A square with a gap in its upper side.
	p := Path{{0, 0}, {6, 0}, {6, 9}, {4, 9}, {4, 3}, {2, 3}, {2, 9}, {0, 9}, {0, 0}}
	f := NewFolding(Point{}, Point{X: 1}, []Fold{{At: 1, Width: 0.5, From: 2, To: 4}})
	assert.Equal(t, []Path{{{1, 0}, {1, 9}}}, f.Chords(p, 1))
	assert.Equal(t, []Path{{{3, 0}, {3, 3}}}, f.Chords(p, 3))
	assert.Empty(t, f.Chords(p, 7))
	assert.Equal(t, []Path{{{1, 2}, {1, 4}}}, f.Across(p, 1, 0), "where it is folded")
	g := NewFolding(Point{}, Point{Y: 1}, nil)
	assert.Equal(t, []Path{{{6, 5}, {4, 5}}, {{2, 5}, {0, 5}}}, g.Chords(p, 5), "in the order of v, which grows to the left")
}

// Both sides of a line together are the whole, however the path bends.
func TestSides(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var p Path
		n := rapid.IntRange(3, 12).Draw(t, "corners")
		for i := range n { // a star about the origin
			angle := 2 * math.Pi * float64(i) / float64(n)
			p = append(p, Point{math.Cos(angle), math.Sin(angle)}.Mul(rapid.Float64Range(1, 50).Draw(t, "radius")))
		}
		p = append(p, p[0])
		way := rapid.Float64Range(-3, 3).Draw(t, "way")
		out := Point{math.Cos(way), math.Sin(way)}
		origin := Point{rapid.Float64Range(-60, 60).Draw(t, "x"), rapid.Float64Range(-60, 60).Draw(t, "y")}
		one, other := p.Side(origin, out), p.Side(origin, out.Mul(-1))
		assert.InDelta(t, p.Area(), one.Area()+other.Area(), 1e-6)
		for _, q := range one {
			assert.GreaterOrEqual(t, q.Sub(origin).Dot(out), -1e-9)
		}
	})
}
