package sheet

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Whole or half, the sheet says what is cut; only the half is laid on a fold.
func TestHowManyToCutOfAWholePiece(t *testing.T) {
	for print, want := range map[string]string{"half": "cut 1 on the fold", "whole": "cut 1"} {
		piece, _ := made.Front(t, "0", fmt.Sprintf("print = %q\n", print)+sketch.Bosom[:len(sketch.Bosom)-len("---\n\n")])
		assert.Equal(t, print == "whole", piece.Whole)
		assert.Contains(t, markingSheet(piece, &garment.Pattern{}, nil).Notes, want)
	}
}
