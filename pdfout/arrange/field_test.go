package arrange

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// Whether a segment meets a slab is found here by walking along it.
// Two slabs meet when a side of one meets the other or one lies in the other.
func TestFieldIsFree(t *testing.T) {
	p := NewPiece(sample.Rectangle("p", "P", 100, 80))
	f := NewField([]Piece{p, p.Moved(plane.Point{X: 300, Y: 300})})
	at := func(x, y, half float64) text.Slab {
		return text.Level(plane.Point{X: x, Y: y}, plane.Point{X: half, Y: half})
	}
	assert.True(t, f.Free(at(50, 40, 10)), "inside the piece")
	assert.False(t, f.Free(at(50, 40, 40)), "reaches its seam line")
	assert.True(t, f.Free(at(200, 200, 50)), "between the pieces: what leads from one to the next is no line")
	assert.Equal(t, 2, f.Crossings(at(50, 4, 6), 100), "lower edge and seam line")
	assert.Equal(t, 1, f.Crossings(at(50, 4, 6), 1), "not more than asked for")
	f.Take(at(50, 40, 5))
	assert.False(t, f.Free(at(58, 40, 5)), "reaches what was taken")
	assert.True(t, f.Free(at(62, 40, 5)))
	f.Take(at(-59, -59, 3))
	assert.False(t, f.Free(at(-62, -62, 3)), "across the corner of a bucket")
}

// windsRound reports whether a closed path goes round a place, found here by
// adding up the angles under which the place sees the path's steps.
func windsRound(p plane.Path, q plane.Point) bool {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		a, b := p[i-1].Sub(q), p[i].Sub(q)
		sum += math.Atan2(a.Cross(b), a.Dot(b))
	}
	return math.Abs(sum) > math.Pi
}

func TestInside(t *testing.T) {
	path := sample.Quarter(plane.Point{}, 80, 50, 0, 360, 90)
	path[len(path)-1] = path[0]
	// A bay, so that a ray may cross more than twice.
	path = append(plane.Path{{X: 20, Y: 0}}, path...)
	path = append(path, plane.Point{X: 20, Y: 0})
	p := NewPiece(mark.Marking{Outline: path})
	rapid.Check(t, func(t *rapid.T) {
		q := plane.Point{X: rapid.Float64Range(-90, 90).Draw(t, "x"), Y: rapid.Float64Range(-60, 60).Draw(t, "y")}
		require.Equal(t, windsRound(path, q), p.Inside(q))
	})
	assert.False(t, NewPiece(mark.Marking{}).Inside(plane.Point{}), "no outline, no inside")
}

// On a page full of lines the check square crosses as few as it can.
func TestCheckSquareOnAFullPage(t *testing.T) {
	m := sample.Rectangle("p", "P", 180, 240)
	for x := 10.0; x < 180; x += 10 {
		if x != 120 && x != 130 { // one gap, 30 mm wide: too narrow to be free
			m.Marks = append(m.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 240}))
		}
	}
	sheets := Arrange(Set{Pieces: []mark.Marking{m}}, paper.All()[0]).Sheets
	s := &sheets[0]
	s.Letter(length.Inch)
	require.Len(t, s.Squares, 1)
	low := s.Squares[Cell{}].Sub(paper.All()[0].Window().Min)
	room := text.Upright(plane.Box{Min: low, Max: low.Add(plane.Point{X: 25.4, Y: 25.4})})
	assert.LessOrEqual(t, NewField(s.Pieces).Crossings(room, 100), 1)
	for _, v := range []float64{s.Squares[Cell{}].X, s.Squares[Cell{}].Y} {
		steps := v / (6 * 25.4 / 72)
		assert.InDelta(t, math.Round(steps), steps, 1e-9, "on whole dots of a printer")
	}
}

// Where a page is so full that the check square crosses lines, it still keeps
// off text.
func TestCheckSquareKeepsOffText(t *testing.T) {
	m := sample.Rectangle("p", "P", 180, 240)
	for x := 10.0; x < 180; x += 10 {
		if x != 120 && x != 130 { // the one gap, which text lies in
			m.Marks = append(m.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 240}))
		}
	}
	s := &Arrange(Set{Pieces: []mark.Marking{m}}, paper.All()[0]).Sheets[0]
	low := s.Pieces[0].Bounds.Min
	words := text.Upright(plane.Box{Min: low.Add(plane.Point{X: 111}), Max: low.Add(plane.Point{X: 139, Y: 240})})
	s.Field.Take(words)
	s.Letter(length.Inch)
	corner := s.Squares[Cell{}].Sub(paper.All()[0].Window().Min)
	assert.False(t, text.Upright(plane.Box{Min: corner, Max: corner.Add(plane.Point{X: 25.4, Y: 25.4})}).Meets(words))
}
