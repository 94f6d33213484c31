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
