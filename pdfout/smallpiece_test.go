package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// A small drawing has the lines of its piece, but no arrow: without its head it would be a
// stray stroke.
func TestSmallDrawingsHaveNoArrows(t *testing.T) {
	box := plane.Box{Max: plane.Point{X: 100, Y: 100}}
	m := mark.Marking{Key: "one", Outline: box.Outline()}
	m.Add(mark.Cut, "", box.Outline())
	m.Add(mark.Grain, "", plane.Path{{X: 50, Y: 10}, {X: 50, Y: 90}})
	m.Add(mark.Arrow, "", plane.Path{{X: 20, Y: 50}, {X: 30, Y: 50}})
	var c seen.Canvas
	c.NewPage(paper.Paper{Width: 300, Height: 300})
	drawSmall(&c, arrange.NewPiece(m), box, 1)
	assert.Len(t, c.Pages()[0].Paths, 2, "the outline and the grain line")
}
