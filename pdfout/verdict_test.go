package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// A line of 9 in of which 3 15/16 of 4 parts are printed lacks 1/64 of its length.
func TestJudge(t *testing.T) {
	long := sample.Rectangle("p", "Panel", 228.6, 127)
	long.Marks = long.Marks[:4] // its edges
	for _, c := range []struct {
		name    string
		printed paper.Scale
		off     float64
		length  float64
	}{
		{"true", paper.Scale{Across: 1, Down: 1}, 0, 228.6},
		{"not measured", paper.Scale{}, 0, 228.6},
		{"both ways", paper.Scale{Across: 0.984375, Down: 0.984375}, -228.6 * 0.015625, 228.6},
		{"larger", paper.Scale{Across: 1.0078125, Down: 1.0078125}, 228.6 * 0.0078125, 228.6},
	} {
		t.Run(c.name, func(t *testing.T) {
			v, err := Judge(arrange.Set{Pieces: []mark.Marking{long}}, seen.Paper(t, "letter"), c.printed)
			require.NoError(t, err)
			assert.InDelta(t, c.off, v.Off, 1e-9)
			assert.InDelta(t, c.length, v.Worst.Length, 1e-9)
			assert.Equal(t, "Panel", v.Worst.Piece)
			assert.Equal(t, math.Abs(c.off) <= 0.79375, v.True(UsualWithin(length.Inch)))
		})
	}
	// The panel lies turned on its page, its long sides run down: what the printer
	// does across falls on its 5 in.
	v, err := Judge(arrange.Set{Pieces: []mark.Marking{long}}, seen.Paper(t, "letter"), paper.Scale{Across: 0.984375, Down: 1})
	require.NoError(t, err)
	assert.InDelta(t, -127*0.015625, v.Off, 1e-9)
	assert.InDelta(t, 127, v.Worst.Length, 1e-9)
	// And whatever paper it will be drawn on, it is judged as drawn true.
	corrected := seen.Paper(t, "letter")
	corrected.Printed = paper.Scale{Across: 0.984375, Down: 1}
	same, err := Judge(arrange.Set{Pieces: []mark.Marking{long}}, corrected, paper.Scale{Across: 0.984375, Down: 1})
	require.NoError(t, err)
	assert.Equal(t, v, same)
	// Lines that are less and less off, and longer and longer: the worst is still the
	// first, not one to which it leads step by step.
	var fan mark.Marking
	for i := range 200 {
		sin, cos := math.Sincos(math.Pi / 2 * float64(i) / 200)
		fan.Marks = append(fan.Marks, sample.Edge(mark.Stitch, "", plane.Point{}, plane.Point{X: cos, Y: sin}.Mul(400+0.01*float64(i))))
	}
	fan.Outline = sample.OutlineOf(fan.Marks)
	v, err = Judge(arrange.Set{Pieces: []mark.Marking{fan}}, seen.Paper(t, "a3"), paper.Scale{Across: 1.0025, Down: 1})
	require.NoError(t, err)
	assert.InDelta(t, 1, math.Abs(v.Off), 0.01, "400 mm times 0.0025")
	_, err = Judge(arrange.Set{}, seen.Paper(t, "letter"), paper.Scale{Across: 1, Down: 1})
	assert.EqualError(t, err, "there is no line to draw\nhint: give the file at least one piece with an outline")
	assert.InDelta(t, 254.0/128, Verdict{Worst: Line{Length: 254}}.Unseen(length.Inch), 1e-9, "1/32 of 4 in is 1/128")
}

// However a line lies, it comes out no more off than its length times the worse of
// the two scales.
func TestLengthAsPrinted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := paper.Scale{Across: rapid.Float64Range(0.9, 1.1).Draw(t, "across"), Down: rapid.Float64Range(0.9, 1.1).Draw(t, "down")}
		var p plane.Path
		for range rapid.IntRange(2, 9).Draw(t, "points") {
			p = append(p, plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")})
		}
		got := printedLength(p, s)
		require.GreaterOrEqual(t, got, min(s.Across, s.Down)*p.Length()-1e-9)
		require.LessOrEqual(t, got, max(s.Across, s.Down)*p.Length()+1e-9)
	})
}
