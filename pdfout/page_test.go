package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// A line that goes on to the next page is written well past the window's side,
// so that the clip cuts it and no end of it shows.
func TestLinesRunPastTheWindow(t *testing.T) {
	m := sail(600)
	d, s := drawn(t, Set{Pieces: []marking.Marking{m}}, "letter")
	window := s.Paper.window()
	past := 0
	for _, p := range d.pages[inFront(s):] {
		for _, q := range p.drawn(marking.Cut.String()) {
			for _, part := range q.parts {
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
	for _, paper := range papers() {
		d, s := drawn(t, Set{Pieces: []marking.Marking{sail(80)}}, paper.Name)
		seen := plane.EmptyBox()
		for _, q := range d.pages[s.Front].drawn(marking.Cut.String()) {
			for _, part := range q.parts {
				seen = seen.Union(part.Bounds())
			}
		}
		require.InDelta(t, 80, seen.Width(), 4*written)
		assert.InDelta(t, paper.Width/2, seen.Centre().X, 0.01, paper.Name)
	}
}

// A label over a join line is on the two pages that meet there, and not on a
// third whose window it only reaches into.
func TestLabelOverAJoin(t *testing.T) {
	g := grid{rows: 2, columns: 2, window: plane.Point{X: 190, Y: 250}, overlap: usualOverlap}
	s := newSheet(nil, g, []cell{{0, 0}, {0, 1}, {1, 0}, {1, 1}})
	join := g.coreOf(cell{}).Max.X
	low := g.coreOf(cell{}).Min.Y
	l := label{room: upright(plane.Box{Min: plane.Point{X: join - 20, Y: low + 1}, Max: plane.Point{X: join + 20, Y: low + 4}})}
	for c, want := range map[cell]bool{{0, 0}: true, {0, 1}: true, {1, 0}: false, {1, 1}: false} {
		assert.Equal(t, want, s.shows(l, c), "%v", c)
	}
}
