package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"

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
