package garment

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
)

// blockOf checks a sketch and returns its piece, which has a block.
func blockOf(t *testing.T, text string) (*piece.Piece, *Pattern) {
	t.Helper()
	pattern, err := check("allowance = 0.375\n" + sketch.Front(text))
	require.NoError(t, err)
	piece := &pattern.Pieces[0]
	require.NotNil(t, piece.Block, "the piece has a block")
	return piece, pattern
}

// What is missing at the sides comes off the seam that runs along the tucks there,
// however the other edge at that corner is cut.
func TestTheAllowanceAtTheWidestPlace(t *testing.T) {
	const corner = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
top: 0,10 3,10
armhole: 3,10 4,7 %s6,6 | allowance = "1/8"
side: 6,6 5,0 | allowance = "1/2"
hem: 5,0 0,0 | allowance = "1/4"
---

`
	for _, c := range []struct {
		name, text string
		want       float64 // inches
	}{
		{"a side that slopes in from the armhole", fmt.Sprintf(corner, ""), 1.0 / 2},
		{"an armhole of short pieces", fmt.Sprintf(corner, "5.9,6.01 5.99,6.001 "), 1.0 / 2},
		{"a side that slopes out to the hem", strings.NewReplacer("6,6 5,0", "6,6 7,0", "5,0 0,0", "7,0 0,0").Replace(fmt.Sprintf(corner, "")), 1.0 / 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := blockOf(t, c.text+sketch.Tucked("cf", "1/8", 2, "3/8", "")+"\n[block]\n")
			assert.InDelta(t, c.want, piece.Block.SideAllowance(piece)/25.4, 1e-9)
		})
	}
	t.Run("the narrower of two sides", func(t *testing.T) {
		text := strings.Replace(sketch.Bib, "left: -6,12 -6,0", "left: -6,12 -6,0 | allowance = \"1/4\"", 1)
		piece, _ := blockOf(t, text+sketch.Tucked("middle", "1/4", 4, "1", "side = \"right\"")+"\n[block]\n")
		assert.InDelta(t, 0.25, piece.Block.SideAllowance(piece)/25.4, 1e-9)
	})
}
