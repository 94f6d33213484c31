package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/text"
)

// A line that goes on to the next page is written well past the window's side,
// so that the clip cuts it and no end of it shows.
func TestLinesRunPastTheWindow(t *testing.T) {
	m := sample.Sail(600)
	d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{m}}, "letter")
	window := s.Paper.Window()
	past := 0
	for _, p := range d.Pages[inFront(s):] {
		for _, q := range p.Drawn(mark.Cut.String()) {
			for _, part := range q.Parts {
				for _, end := range []plane.Point{part[0], part[len(part)-1]} {
					if window.Grown(-0.5).Holds(end) {
						continue // a corner of the piece
					}
					assert.GreaterOrEqual(t, window.Distance(end), 1.0, "an end at %v", end)
					past++
				}
			}
		}
	}
	assert.Positive(t, past)
}

// A piece alone on its page lies in the middle of it.
func TestSmallPieceIsCentred(t *testing.T) {
	for _, p := range paper.All() {
		d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{sample.Sail(80)}}, p.Name)
		shown := plane.EmptyBox()
		for _, q := range d.Pages[s.Front].Drawn(mark.Cut.String()) {
			for _, part := range q.Parts {
				shown = shown.Union(part.Bounds())
			}
		}
		require.InDelta(t, 80, shown.Width(), 4*seen.Written)
		assert.InDelta(t, p.Width/2, shown.Centre().X, 0.01, p.Name)
	}
}

// A label over a join line is on the two pages that meet there, and not on a
// third whose window it only reaches into.
func TestLabelOverAJoin(t *testing.T) {
	g := arrange.Grid{Rows: 2, Columns: 2, Window: plane.Point{X: 190, Y: 250}, Overlap: 10}
	s := arrange.NewSheet(nil, g, []arrange.Cell{{Row: 0, Column: 0}, {Row: 0, Column: 1}, {Row: 1, Column: 0}, {Row: 1, Column: 1}})
	join := g.CoreOf(arrange.Cell{}).Max.X
	low := g.CoreOf(arrange.Cell{}).Min.Y
	l := text.Label{Room: text.Upright(plane.Box{Min: plane.Point{X: join - 20, Y: low + 1}, Max: plane.Point{X: join + 20, Y: low + 4}})}
	for c, want := range map[arrange.Cell]bool{{Row: 0, Column: 0}: true, {Row: 0, Column: 1}: true, {Row: 1, Column: 0}: false, {Row: 1, Column: 1}: false} {
		assert.Equal(t, want, s.Shows(l, c), "%v", c)
	}
}
