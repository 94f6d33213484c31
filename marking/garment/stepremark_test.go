package garment_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// What a tuck takes of a slanting edge, 2 widths, times its slope: derived. A side that goes
// in by 1 in in 8, under tucks of 1/2 in, has steps of 1/8 in.
func TestStepsThatFoldsLeaveInSeams(t *testing.T) {
	const (
		flared  = "hem: 0,0 12,0\nside: 12,0 10,16\ntop: 10,16 0,16\ncentre: 0,16 0,0"
		square  = "hem: 0,0 10,0\nside: 10,0 10,16\ntop: 10,16 0,16\ncentre: 0,16 0,0"
		sloping = "hem: 0,0 12,0\nside: 12,0 12,12\nshoulder: 12,12 4,16\nneck: 4,16 0,16\ncentre: 0,16 0,0"
		bent    = "hem: 0,0 12,0\nside: 12,0 12,16\ntop: 12,16 8,14 4,13 0,13\ncentre: 0,13 0,0"
		trued   = ": true that edge before it is sewn; or draw the piece as it is with its folds in, and write drawn = \"finished\": then the edge is trued through them"
	)
	for _, c := range []struct {
		name, piece, folds string
		seam               string
		want               []string
	}{
		{"growth tucks across a flared side", flared, "tuck t hem 1/2 3 4", "", []string{`sewn as it is drawn, each of the 3 tucks leaves a step of 1/8 in in "side", which they cross at a slant` + trued}},
		{"one of them", flared, "tuck t hem 1/2 1 4", "", []string{`sewn as it is drawn, the tuck leaves a step of 1/8 in in "side", which it crosses at a slant` + trued}},
		{"a deep pleat", flared, "pleat p hem 1 1 4", "", []string{`sewn as it is drawn, the pleat leaves a step of 1/4 in in "side", which it crosses at a slant` + trued}},
		{"a straight side, square to the tucks", square, "tuck t hem 1/2 3 4", "", nil},
		{"fine tucks", flared, "tuck t hem 1/8 3 4", "", nil},
		{"just under 3/32 in", flared, "tuck t hem 0.374 3 4", "", nil},
		{"just over 3/32 in", flared, "tuck t hem 0.376 3 4", "", []string{`sewn as it is drawn, each of the 3 tucks leaves a step of 1/8 in in "side", which they cross at a slant` + trued}},
		{"drawn finished", "drawn = \"finished\"\n" + flared, "tuck t hem 1/2 3 4", "", nil},
		// The shoulder falls by 1 in 2; 1/4 in wide, each tuck takes 1/2 in.
		{"tucks into a shoulder", sloping, `tuck t centre 1/4 2 6`, "", []string{`sewn as it is drawn, each of the 2 tucks leaves a step of 1/4 in in "shoulder", which they cross at a slant` + trued}},
		{"tucks that end below the shoulder", sloping, `tuck t centre 1/4 2 6 | below = "hem"; length = 3`, "", nil},
		{"tucks that hang from it", sloping, `tuck t centre 1/4 2 6 | below = "neck"; length = 6`, "", []string{`sewn as it is drawn, each of the 2 tucks leaves a step of 1/4 in in "shoulder", which they cross at a slant` + trued}},
		{"a tuck whose half is in the allowance of the side", sloping, `tuck t centre 1/4 1 11.5`, "", nil},
		{"one tuck of three on the shoulder", sloping, `tuck t centre 1/4 3 2 | gap = 1`, "",
			[]string{`sewn as it is drawn, one of the 3 tucks leaves a step of 1/4 in in "shoulder", which it crosses at a slant` + trued}},
		{"a bent edge that nothing is sewn to", bent, `tuck t centre 1/4 4 5 | gap = 0.5`, "", nil},
		// It rises by 1 in 4, from 8 in on by 1 in 2.
		{"the same, sewn to another piece", bent, `tuck t centre 1/4 4 5 | gap = 0.5`, `join = ["front.top", "back.top"]`,
			[]string{`sewn as it is drawn, each of the 4 tucks leaves a step of 1/8 in to 1/4 in in "top", which they cross at a slant` + trued}},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := "unit = \"in\"\nallowance = 0.375\n" + sketch.Piece("front", c.piece+"\n---\n"+sketch.Rows(c.folds))
			if c.seam != "" {
				text += sketch.Piece("back", sketch.Rect("10")) + "[seam.s]\n" + c.seam + "\nwithin = 9\n"
			}
			var got []string
			for _, r := range made.Of(t, text).Remarks {
				if strings.Contains(r.Text, "step") {
					got = append(got, r.Text)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}
