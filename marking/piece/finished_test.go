package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A tuck about the centre has its crease on the fold of the cloth, which is as long as it
// was: 8 in less 1/2 in at either end, however the piece is drawn.
func TestFoldUnderATuckAboutIt(t *testing.T) {
	for _, drawn := range []string{"flat", "finished"} {
		piece, _ := made.Front(t, "0.5", "fold = \"left\"\ndrawn = \""+drawn+"\"\n"+sketch.Rect("10")+"\n---\n"+sketch.Rows("tuck a left 1/4 2 0 | gap = 0.25"))
		assert.InDelta(t, 7, piece.Edges[piece.EdgeNumber("left")].FinishedLength/25.4, 1e-6, drawn)
	}
}

// An edge that lies within a tuck is as long as it lies there. Derived: with allowances of
// 1/2 in the left is 8 in less one at either end, wherever the tuck about it ends; the hem
// line, 2 in from the edge, goes from the fold to the seam, 10 in less one.
func TestEdgeWithinATuck(t *testing.T) {
	for _, c := range []struct {
		name, text, edge string
		want             float64 // inches
	}{
		{"the fold, down to the end of a tuck", "fold = \"left\"\n" + sketch.Rect("10") + "\n---\n" +
			sketch.Rows("tuck a left 1/4 1 0 | below = \"top\"; length = 3"), "left", 7},
		{"the same, drawn finished", "fold = \"left\"\ndrawn = \"finished\"\n" + sketch.Rect("10") + "\n---\n" +
			sketch.Rows("tuck a left 1/4 1 0 | below = \"top\"; length = 3"), "left", 7},
		{"a hem on the crease", "fold = \"left\"\nleft: 0,0 0,8\ntop: 0,8 10,8\nright: 10,8 10,0\nhem: 10,0 0,0 | hem = 1.5; turn = 0.5\n---\n" +
			sketch.Rows("tuck a hem 1/2 1 2"), "hem", 9.5},
		{"a hem beside it", "fold = \"left\"\nleft: 0,0 0,8\ntop: 0,8 10,8\nright: 10,8 10,0\nhem: 10,0 0,0 | hem = 1.5; turn = 0.5\n---\n" +
			sketch.Rows("tuck a hem 1/2 1 2.25"), "hem", 9.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := made.Front(t, "0.5", c.text)
			assert.InDelta(t, c.want, piece.Edges[piece.EdgeNumber(c.edge)].FinishedLength/25.4, 1e-6)
		})
	}
}
