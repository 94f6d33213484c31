package arrange

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// What lies on a sheet is its lines, and what was taken; not the way from one line to the
// next.
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

// However lines run, as many are counted as are when each is asked.
func TestFieldCountsEveryLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const w, h = 700.0, 500.0
		at := func() plane.Point {
			return plane.Point{X: rapid.Float64Range(0, w).Draw(t, "x"), Y: rapid.Float64Range(0, h).Draw(t, "y")}
		}
		m := sample.Ruled("p", "P", w, h)
		for range rapid.IntRange(1, 12).Draw(t, "lines") {
			from, to := at(), at()
			switch rapid.IntRange(0, 2).Draw(t, "runs") {
			case 0:
				to.Y = from.Y
			case 1:
				to = from.Toward(to, 0.03)
			}
			m.Marks = append(m.Marks, sample.Edge(mark.Stitch, "", from, to, at()))
		}
		p := NewPiece(m)
		f := NewField([]Piece{p})
		turn := rapid.Float64Range(0, 2*math.Pi).Draw(t, "turn")
		s := text.Slab{Centre: at(), Half: at().Mul(0.2).Add(plane.Point{X: 1, Y: 1}), U: plane.Point{X: math.Cos(turn), Y: math.Sin(turn)}}
		if rapid.Bool().Draw(t, "level") {
			s.U = text.Across()
		}
		n := 0
		for _, l := range p.Lines {
			path := l.Path()
			for i := 1; i < len(path); i++ {
				if s.MeetsSegment(path[i-1], path[i]) {
					n++
				}
			}
		}
		assert.Equal(t, n, f.Crossings(s, math.MaxInt))
		assert.Equal(t, min(n, 2), f.Crossings(s, 2), "not more than asked for")
	})
}

// Lines that cross do not lie in the way of what is beside them: of 900 across one place, few are
// asked at another.
func TestSlantingLinesAreAskedWhereTheyRun(t *testing.T) {
	const size, lines = 1000.0, 900
	m := sample.Ruled("p", "P", size, size)
	for k := range lines {
		x := 20 + float64(k)
		m.Marks = append(m.Marks, sample.Edge(mark.Stitch, "", plane.Point{X: x, Y: 20}, plane.Point{X: size - x, Y: size - 20}))
	}
	f := NewField([]Piece{NewPiece(m)})
	asked := func(x, y float64) int {
		n := 0
		f.under(plane.Box{Min: plane.Point{X: x, Y: y}, Max: plane.Point{X: x, Y: y}}, func(at int) bool {
			n += len(f.slanting[at])
			return true
		})
		return n
	}
	assert.Greater(t, asked(size/2, size/2), 800, "where all cross, but those that stand upright")
	assert.Zero(t, asked(50, size/2), "beside them")
	assert.Less(t, asked(size/2, 70), lines/8, "where they spread")
}
