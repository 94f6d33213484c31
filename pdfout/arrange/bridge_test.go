package arrange

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// windowAlong are the marks of a window, 2 mm wide, at the left of a straight or an arc.
func windowAlong(side plane.Path) []mark.Mark {
	beside, _ := plane.Offset(side, 2, 0)
	ring := append(side.Reversed(), beside.Path...)
	ring = append(ring, ring[0])
	at, along := side.At(side.Length() / 2)
	return []mark.Mark{
		{Role: mark.Window, Path: ring}, {Role: mark.Waste, Path: ring},
		{Role: mark.DrawHere, Path: plane.Path{at.Sub(along.Left().Mul(6)), at}},
	}
}

// ofRole are the lines of a role.
func ofRole(p Piece, role mark.Role) (all []Line) {
	for _, l := range p.Lines {
		if l.Role == role {
			all = append(all, l)
		}
	}
	return all
}

// A window across a join of two pages ends square 8 mm before it and begins 8 mm behind it,
// 6 mm of paper and its own width; one that runs along a join keeps off it alone.
func TestWindowsAcrossAJoin(t *testing.T) {
	join := plane.Box{Min: plane.Point{X: 100, Y: 0}, Max: plane.Point{X: 100, Y: 300}}
	for _, c := range []struct {
		name  string
		side  plane.Path
		parts []float64 // how long each is, in mm
	}{
		{"square across, in the middle", plane.Path{{X: 75, Y: 50}, {X: 125, Y: 50}}, []float64{17, 17}},
		{"the other way", plane.Path{{X: 125, Y: 50}, {X: 75, Y: 50}}, []float64{17, 17}},
		{"near its end", plane.Path{{X: 54, Y: 50}, {X: 103, Y: 50}}, []float64{38}},
		{"ending before it", plane.Path{{X: 54, Y: 50}, {X: 97, Y: 50}}, []float64{38}},
		{"clear of it", plane.Path{{X: 54, Y: 50}, {X: 91, Y: 50}}, []float64{37}},
		{"all of it in the bridge", plane.Path{{X: 94, Y: 50}, {X: 106, Y: 50}}, nil},
		{"beside it", plane.Path{{X: 96, Y: 50}, {X: 96, Y: 100}}, []float64{50}},
		{"on it", plane.Path{{X: 100, Y: 50}, {X: 100, Y: 100}}, []float64{50}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := NewPiece(mark.Marking{Marks: windowAlong(c.side), Outline: plane.Path{{}, {X: 200}, {X: 200, Y: 300}, {Y: 300}, {}}})
			hatched := len(ofRole(p, mark.Waste))
			p = p.bridged([]plane.Box{join})
			var long []float64
			for _, w := range ofRole(p, mark.Window) {
				long = append(long, w.Length()/2-2)
			}
			assert.InDeltaSlice(t, c.parts, append([]float64{}, long...), 0.01)
			assert.Len(t, ofRole(p, mark.DrawHere), len(c.parts), "an arrow for each")
			if len(c.parts) == 2 {
				assert.InDelta(t, 34.0/50, float64(len(ofRole(p, mark.Waste)))/float64(hatched), 0.1, "hatched as much as is left")
			}
		})
	}
}

// Whatever a window and the joins, no point of it lies nearer to a join that it crosses than
// the bridge, and every place of it lies in a part, or by a join, or in what is too short to
// be cut.
func TestWindowsAndBridges(t *testing.T) {
	cut := 0
	rapid.Check(t, func(t *rapid.T) {
		// Joins of pages 180 mm wide and 240 mm high.
		var joins []plane.Box
		for x := range 2 {
			for y := range 3 {
				q := plane.Point{X: 180 * float64(x+1), Y: 240 * float64(y)}
				joins = append(joins, plane.EmptyBox().With(q).With(q.Add(plane.Point{Y: 240})))
				q = plane.Point{X: 180 * float64(y), Y: 240 * float64(x+1)}
				joins = append(joins, plane.EmptyBox().With(q).With(q.Add(plane.Point{X: 180})))
			}
		}
		from := plane.Point{X: 180 + rapid.Float64Range(-50, 50).Draw(t, "x"), Y: 240 + rapid.Float64Range(-50, 50).Draw(t, "y")}
		turn := rapid.Float64Range(0, 2*math.Pi).Draw(t, "turn")
		bend := rapid.Float64Range(-0.01, 0.01).Draw(t, "bend") // for each mm
		side := plane.Path{from}
		for range rapid.IntRange(12, 50).Draw(t, "long") {
			sin, cos := math.Sincos(turn)
			side = append(side, side[len(side)-1].Add(plane.Point{X: cos, Y: sin}))
			turn += bend
		}
		whole := NewPiece(mark.Marking{Marks: windowAlong(side), Outline: plane.Path{{}, {X: 540}, {X: 540, Y: 720}, {Y: 720}, {}}})
		p := whole.bridged(joins)
		parts := ofRole(p, mark.Window)
		require.Len(t, ofRole(p, mark.DrawHere), len(parts))
		nearest := func(q plane.Point) float64 {
			least := math.Inf(1)
			for _, join := range joins {
				on := plane.Point{X: min(max(q.X, join.Min.X), join.Max.X), Y: min(max(q.Y, join.Min.Y), join.Max.Y)}
				least = min(least, q.Distance(on))
			}
			return least
		}
		along := false // a join, at less than 30 degrees
		tree := plane.NewTree(side)
		for _, join := range joins {
			for _, run := range tree.Clip(join.Grown(8)) {
				along = along || run.Path.Length() > 2*2*8
			}
		}
		free := 0
		for _, q := range side {
			if free++; nearest(q) <= 8 {
				free = 0
			}
			if free > 4 {
				break
			}
		}
		along = along || free <= 4 // nothing would be left
		if len(parts) != 1 || parts[0].Length() < ofRole(whole, mark.Window)[0].Length()-1 {
			cut++
		}
		for _, part := range parts {
			for _, q := range part.Path() {
				_, _, off := ofRole(whole, mark.Window)[0].Path().Nearest(q)
				require.True(t, off < 0.05 || ofRole(whole, mark.Window)[0].Holds(q), "it lies in the window: %v", q)
				require.True(t, along || nearest(q) >= 6-1e-6, "%v is %.2f mm from a join", q, nearest(q))
			}
		}
		shown := make([]bool, len(side))
		for i, q := range side {
			for _, part := range parts {
				shown[i] = shown[i] || part.Nearer(q, 1e-6)
			}
		}
		for i := 0; i < len(side); i++ {
			first, free := i, 0
			for ; i < len(side) && !shown[i]; i++ {
				if nearest(side[i]) > 8*math.Sqrt2+1e-6 { // at a corner of four pages it is as far
					free++
				}
			}
			require.LessOrEqual(t, free, 5, "places in vain left out from %d mm on, mm", first)
		}
	})
	assert.Greater(t, cut, 5)
}
