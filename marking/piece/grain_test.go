package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

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
			line := piece.PlaceGrain(outline, plane.Point{Y: 1}, marks, func(plane.Point) bool { return false })
			assert.InDelta(t, c.from, line[0].Y, 1e-9)
			assert.InDelta(t, c.to, line[1].Y, 1e-9)
		})
	}
}

// The grain line keeps 1.5 mm from stitch lines and from allowances, at least, in every piece
// however narrow; it is 10 mm long at least, or there is none.
func TestTheGrainLineKeepsOutOfAllowances(t *testing.T) {
	for _, c := range []struct {
		name      string
		wide, up  float64
		allowance float64
		drawn     bool
	}{
		{"a skirt", 300, 400, 10, true},
		{"a tie", 30, 400, 10, true},
		{"a tab", 40, 45, 10, true},
		{"a strip that is all allowance", 20, 300, 9.5, false},
		{"a tiny tab", 30, 30, 10, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := c.allowance
			at := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
			outline := plane.Path{at(0, 0), at(c.wide, 0), at(c.wide, c.up), at(0, c.up), at(0, 0)}
			p := &piece.Piece{Flat: &piece.Shape{}}
			var marks []mark.Mark
			for i := 1; i < len(outline); i++ {
				from, to := outline[i-1], outline[i]
				in := to.Sub(from).Unit().Left().Mul(a)
				p.Edges = append(p.Edges, piece.Edge{Allowance: a, Path: plane.Path{from, to}})
				p.Flat.Outline.Add(from, i-1)
				marks = append(marks, mark.Mark{Role: mark.Cut, Path: plane.Path{from, to}}, mark.Mark{Role: mark.Stitch, Path: plane.Path{from.Add(in), to.Add(in)}})
			}
			p.Flat.Outline.Close(3)
			line := piece.PlaceGrain(plane.NewTree(outline), at(0, 1), marks, p.InAllowance())
			require.Equal(t, c.drawn, line != nil, "%v", line)
			if line == nil {
				return
			}
			assert.GreaterOrEqual(t, line.Length(), 10.0, "mm")
			for _, q := range line {
				assert.GreaterOrEqual(t, min(q.X, c.wide-q.X, q.Y, c.up-q.Y), a+1.5-1e-6, "mm from the cut edge, of which %v are allowance", a)
			}
		})
	}
}
