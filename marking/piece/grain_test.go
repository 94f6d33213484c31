package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// On a piece 100 mm wide and 200 mm high, the grain line lies in the widest gap that the
// lines across leave, and takes up 0.6 of it: derived.
func TestWhereTheGrainLineIsPut(t *testing.T) {
	outline := plane.NewTree(plane.Path{{}, {X: 100}, {X: 100, Y: 200}, {Y: 200}, {}})
	for _, c := range []struct {
		name     string
		across   []float64 // how high the lines lie
		from, to float64
	}{
		{"no line", nil, 40, 160},
		{"three lines", []float64{40, 50, 130}, 66, 114},
		{"written in another order", []float64{130, 40, 50}, 66, 114},
		{"the widest is the last", []float64{20, 60, 80}, 104, 176},
	} {
		t.Run(c.name, func(t *testing.T) {
			var marks []mark.Mark
			for _, y := range c.across {
				marks = append(marks, mark.Mark{Role: mark.Fold, Path: plane.Path{{X: -1, Y: y}, {X: 101, Y: y}}})
			}
			line := piece.PlaceGrain(outline, plane.Point{Y: 1}, marks)
			assert.InDelta(t, c.from, line[0].Y, 1e-9)
			assert.InDelta(t, c.to, line[1].Y, 1e-9)
		})
	}
}
