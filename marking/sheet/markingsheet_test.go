package sheet

import (
	"fmt"
	"strings"
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

// A piece that is marked flat says how far down its fold lines run: in the figures' words
// and numbers (depthtable_test.go of package figures), to the cut edge.
func TestHowFarDownFoldsEndOnAMarkingSheet(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"level below a slanting neck", sketch.Yoke(), "the yoke tucks end, measured from the cut edge, first to last: 2 1/2, 2 1/2, 2 1/2, 2 1/2, 2 7/8, 3 1/4 in"},
		{"below a level one", sketch.Yoke("count = 6", "count = 4"), "the yoke tucks end 2 1/2 in from the cut edge"},
		{"from edge to edge", sketch.Yoke("below = \"neck\"\nlength = \"2 1/8\"\n", ""), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Front(t, "0.375\nunit = \"in\"", c.text)
			said := ""
			for _, note := range markingSheet(piece, pattern, nil).Notes {
				if strings.Contains(note, "tucks end") {
					said += note
				}
			}
			assert.Equal(t, c.want, said)
		})
	}
}
