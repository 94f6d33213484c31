package piece_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// A strip 9 1/2 in long with pleats of 1/2 in, folds at 1, 2 1/2, 4, 5 1/2, 7
// and 8 1/2: six pleats take 6 in and leave 3 1/2 in (Hapgood, School
// Needlework, about 1892, Plaiting; sums derived).
func TestPublishedPleats(t *testing.T) {
	piece := sketched(t, "0", `edge: 9.5,4 0,4
start: 0,4 0,0
bottom: 0,0 9.5,0
end: 9.5,0 9.5,4
---

[pleat.side]
edge = "edge"
from = "start"
at = 1
depth = "1/2"
toward = "start"
length = 3
count = 6
spacing = "1 1/2"
`)
	require.Len(t, piece.EdgePleats, 6)
	sum := 0.0
	for _, p := range piece.EdgePleats {
		sum += p.TakeUp() / 25.4
	}
	assert.Equal(t, "1 2.5 4 5.5 7 8.5", across(piece.AsDrawn.Marks, mark.PleatFold))
	assert.Equal(t, "0 1.5 3 4.5 6 7.5", across(piece.AsDrawn.Marks, mark.Placement), "each is laid 1 in back")
	assert.InDelta(t, 6, sum, 1e-9, "taken up")
	assert.InDelta(t, 3.5, 9.5-sum, 1e-9, "left when pleated")
	// Touching side pleats use three times their finished width (the same):
	// of each 1 1/2 in, 1/2 in is left.
	assert.InDelta(t, 3, 1.5/(1.5-piece.EdgePleats[0].TakeUp()/25.4), 1e-9)
}

func TestPleatLines(t *testing.T) {
	for _, c := range []struct {
		name               string
		change             []string
		fold, place, arrow string // in inches
	}{
		{"square to a straight edge", nil, "4.875,6 4.875,4.5", "5.625,6 5.625,4.5", "4.875,5.1 5.625,5.1"},
		{"turned the other way", []string{"at = \"1 1/8\"", "at = \"1/2\"", `toward = "side"`, `toward = "shoulder"`},
			"5.5,6 5.5,4.5", "4.75,6 4.75,4.5", "5.5,5.1 4.75,5.1"},
		{"measured from the other corner", []string{`from = "side"`, `from = "shoulder"`, "at = \"1 1/8\"", "at = 2.43655", "length = \"1 1/2\"", "length = 1"},
			"4.875,6 4.875,5", "5.625,6 5.625,5", "4.875,5.4 5.625,5.4"},
		{"along the grain", []string{"length = \"1 1/2\"", "length = 1\nrun = \"grain\""},
			"4.875,6 4.875,5", "5.625,6 5.625,5", "4.875,5.4 5.625,5.4"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", sketch.Pleated(c.change...))
			assert.Equal(t, []string{"fold here " + c.fold}, drawnMarks(piece, mark.PleatFold), "fold line")
			assert.Equal(t, []string{"lay to here " + c.place}, drawnMarks(piece, mark.Placement), "placement line")
			assert.Equal(t, []string{c.arrow}, drawnMarks(piece, mark.Arrow), "from the fold to the placement line")
		})
	}
}

// pathOf returns the first mark of a role.
func pathOf(marks []mark.Mark, role mark.Role) plane.Path {
	for _, m := range marks {
		if m.Role == role {
			return m.Path
		}
	}
	return nil
}

// On a curve the two lines stay parallel and exactly two depths apart, square
// to each other's ends or along the grain.
func TestPleatOnACurve(t *testing.T) {
	for _, run := range []string{"square", "grain"} {
		t.Run(run, func(t *testing.T) {
			piece := sketched(t, "0", sketch.Pleated("armhole: 6,6 4.5,6 4,8", "armhole: 6,6 5,6.3 4.3,7 4,8 | smooth = true",
				"length = \"1 1/2\"", "length = 1\nrun = \""+run+"\""))
			fold, placement := pathOf(piece.AsDrawn.Marks, mark.PleatFold), pathOf(piece.AsDrawn.Marks, mark.Placement)
			along := fold[1].Sub(fold[0]).Unit()
			assert.InDelta(t, 0, along.Cross(placement[1].Sub(placement[0]).Unit()), 1e-9, "parallel")
			apart := placement[0].Sub(fold[0]).Cross(along) / 25.4
			assert.InDelta(t, 0.75, math.Abs(apart), 1e-6, "two depths apart")
			if run == "square" {
				assert.InDelta(t, 0, along.Dot(placement[0].Sub(fold[0]).Unit()), 1e-9, "square to the line between their ends")
			} else {
				assert.InDelta(t, 0, along.X, 1e-9, "along the grain, which is the longest straight edge")
			}
		})
	}
}
