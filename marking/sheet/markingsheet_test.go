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
		assert.Contains(t, markingSheet(piece, &garment.Pattern{}, nil).Told(), want)
	}
}

// A piece that is marked flat says how far down its fold lines run, at them and once: in one
// measure, or in one for each.
func TestHowFarDownFoldsEndOnAMarkingSheet(t *testing.T) {
	for _, c := range []struct{ name, text, measure, row string }{
		{"level below a slanting neck", sketch.Yoke(), "", "2 1/2 2 1/2 2 1/2 2 1/2 2 7/8 3 1/4"},
		{"below a level one", sketch.Yoke("count = 6", "count = 4"), "yoke tucks end 2 1/2 in below the cut edge", ""},
		{"from edge to edge", sketch.Yoke("below = \"neck\"\nlength = \"2 1/8\"\n", ""), "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Front(t, "0.375\nunit = \"in\"", c.text)
			m := markingSheet(piece, pattern, nil)
			assert.NotContains(t, strings.Join(m.Told(), " "), "tucks end")
			measure := ""
			for _, d := range m.Dimensions {
				if strings.Contains(d.Text, "tucks end") {
					measure += d.Text
				}
			}
			var words []string
			for _, w := range m.Words {
				words = append(words, w.Text)
			}
			assert.Equal(t, c.measure, measure)
			assert.Contains(t, strings.Join(words, " "), c.row)
		})
	}
}

// What a piece measures with its folds in is told where it is true: a yoke whose tucks end
// above a hem of 9 in is narrower at their end, and 9 in at the hem. All derived: six tucks of
// 1/8 in take 1 1/2 in of each half.
func TestSizesWithFoldsIn(t *testing.T) {
	const square = "fold = \"centre\"\ncentre: 0,0 0,12\ntop: 0,12 9,12\nside: 9,12 9,0\nhem: 9,0 0,0\n---\n"
	const whole = "left: -6,12 -6,0\nhem: -6,0 6,0\nright: 6,0 6,12\ntop: 6,12 -6,12\n---\n\n[line.middle]\npoints = [[0, 0], [0, 12]]\n"
	yoke := func(end string) string {
		return sketch.Rows(`tuck yoke centre 1/8 6 3/8 | below = "top"; length = 4; press = "away"; ` + end)
	}
	for _, c := range []struct{ name, text, want string }{
		{"tucks that end above the hem", square + yoke(""), "with the tucks sewn, this half is 7 1/2 in wide at their end; this half is 9 in wide at the hem, where they are open"},
		{"drawn finished", "drawn = \"finished\"\n" + square + yoke(""), "with the tucks sewn, this half is 9 in wide at their end; this half is 10 1/2 in wide at the hem, where they are open"},
		// Where the first of them ends all are in.
		{"stepped", square + yoke(`end = "stepped"; step = -0.25`), "with the tucks sewn, this half is 7 1/2 in wide at their end; this half is 9 in wide at the hem, where they are open"},
		// Where the tucks end, at 7 7/8 in, the side lies 5.315 in out.
		{"a side that slants", sketch.Yoke(), "with the tucks sewn, this half is 3 13/16 in wide at their end; this half is 6 in wide at the hem, where they are open"},
		{"pleats let go below the waist", square + sketch.Rows(`pleat front centre 1/2 2 1 | below = "top"; length = 4; press = "away"`),
			"with the pleats laid, this half is 7 in wide at their end; this half is 9 in wide at the hem, where they are open"},
		{"from edge to edge", square + sketch.Rows("tuck yoke centre 1/8 6 3/8"), "with the tucks sewn, this half is 7 1/2 in wide"},
		{"with growth tucks of 1/2 in", square + yoke("") + sketch.Rows("tuck growth hem 1/2 1 4"), "with the tucks sewn, this half is 7 1/2 in wide at the end of the yoke tucks; this half is 9 in wide at the hem, where the yoke tucks are open; with the tucks sewn, this half is 11 in long"},
		// Four on the one side of the middle and two on the other, to one level.
		{"two sets to one level", whole + sketch.Rows(`tuck a middle 1/4 4 1 | side = "right"; below = "top"; length = 4`, `tuck b middle 1/4 2 1 | side = "left"; below = "top"; length = 4`),
			"with the tucks sewn, the piece is 9 in wide at the end of the a tucks and the b tucks; the piece is 12 in wide at the hem, where the a tucks and the b tucks are open"},
		// The second ends 2 in above the first: there both are in, and lower down only one.
		{"two sets to two levels", whole + sketch.Rows(`tuck a middle 1/4 4 1 | side = "right"; below = "top"; length = 6`, `tuck b middle 1/4 2 1 | side = "left"; below = "top"; length = 4`),
			"with the tucks sewn, the piece is 10 in wide at the end of the a tucks; with the tucks sewn, the piece is 9 in wide at the end of the b tucks; the piece is 12 in wide at the hem, where the a tucks and the b tucks are open"},
		// Hung from the left they lie across, and take up of the height.
		// At the hem those are stitched that hang from it, and at the top the others.
		{"tucks from the top and tucks from the hem", whole + sketch.Rows(`tuck a middle 1/4 4 1 | side = "right"; below = "top"; length = 4`, `tuck b middle 1/4 2 1 | side = "left"; below = "hem"; length = 4`),
			"with the tucks sewn, the piece is 10 in wide at the end of the a tucks; with the tucks sewn, the piece is 11 in wide at the end of the b tucks; the piece is 11 in wide at the hem, where the a tucks are open; the piece is 10 in wide at the top, where the b tucks are open"},
		{"tucks that run across", whole + sketch.Rows(`tuck a hem 1/2 2 4 | below = "left"; length = 3`),
			"with the tucks sewn, the piece is 10 in long at their end; the piece is 12 in long at the right, where they are open"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Front(t, "0\nunit = \"in\"", c.text)
			var sizes []string
			for _, note := range markingSheet(piece, pattern, nil).Notes {
				if strings.Contains(note, " is ") {
					sizes = append(sizes, note)
				}
			}
			assert.Equal(t, c.want, strings.Join(sizes, "; "))
		})
	}
}
