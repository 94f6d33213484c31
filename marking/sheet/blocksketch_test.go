package sheet

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Six tucks of 1/8 in take 1 1/2 in: stitched, the block is 12 in wide at its top and 13 1/2 in
// where they are open. Derived: twice the width of each tuck (Baldt, Clothing for Women, 1916,
// Self-Trimmings).
func TestTheSketchOfABlockIsTrueToItsWidths(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 3, "3/8", tuckLength)+"\n[block]\n")
	s := cuttingSheet(piece, pattern, nil).Sketch
	require.NotNil(t, s)
	var texts []string
	for _, l := range s.Labels {
		texts = append(texts, l.Text)
	}
	assert.Equal(t, []string{"12 in", "draw in", "as it lies 13 1/2 in"}, texts)
	top, foot := s.Lines[0], s.Lines[1]
	assert.InDelta(t, 12/13.5, top.Length()/foot.Length(), 1e-9)
	assert.Greater(t, top[0].Y, foot[0].Y)
	box := plane.EmptyBox()
	for _, l := range s.Lines {
		box = box.Union(l.Bounds())
	}
	assert.True(t, box.Min.X > -1e-9 && box.Max.X < s.Width+1e-9 && box.Min.Y > 0 && box.Max.Y < s.Height, "it lies in its room")
	piece, pattern = made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 3, "3/8", "")+"\n[block]\n")
	assert.Nil(t, cuttingSheet(piece, pattern, nil).Sketch, "they run on to the bottom")
}
