package pdfout

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Under the drawing of every piece stand the number of its part, its name, and how often
// it is cut.
func TestEveryPieceHasASmallDrawing(t *testing.T) {
	all := sets.Examples(t, "../examples")
	all["fifty"] = sets.Many(50)
	for name, set := range all {
		t.Run(name, func(t *testing.T) {
			set.Pieces = mark.Numbered(set.Pieces)
			d, s := drawn(t, set, "letter")
			said := saidInFront(d, s)
			for _, m := range set.Pieces {
				made := m.Form == nil && (m.Kind == mark.Piece || m.Kind == mark.CuttingSheet)
				if !made {
					continue
				}
				want := fmt.Sprint(m.Part) + m.Piece + m.Cut
				assert.Contains(t, said, seen.Squeezed(want))
			}
			assert.Contains(t, strings.Join(d.Pages[0].Words(), "\n"), "The pieces, all at 1 : ")
		})
	}
}
