package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// A label over a join line is on the two pages that meet there, and not on a
// third whose window it only reaches into.
func TestLabelOverAJoin(t *testing.T) {
	g := Grid{Rows: 2, Columns: 2, Window: plane.Point{X: 190, Y: 250}, Overlap: 10}
	s := NewSheet(nil, g, []Cell{{Row: 0, Column: 0}, {Row: 0, Column: 1}, {Row: 1, Column: 0}, {Row: 1, Column: 1}})
	join := g.CoreOf(Cell{}).Max.X
	low := g.CoreOf(Cell{}).Min.Y
	l := text.Label{Room: text.Upright(plane.Box{Min: plane.Point{X: join - 20, Y: low + 1}, Max: plane.Point{X: join + 20, Y: low + 4}})}
	for c, want := range map[Cell]bool{{Row: 0, Column: 0}: true, {Row: 0, Column: 1}: true, {Row: 1, Column: 0}: false, {Row: 1, Column: 1}: false} {
		assert.Equal(t, want, s.Shows(l, c), "%v", c)
	}
}
