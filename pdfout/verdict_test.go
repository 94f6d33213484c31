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
			v, err := Judge(arrange.Set{Pieces: []mark.Marking{long}}, seen.Paper(t, "letter"), c.printed, paper.Scale{})
			require.NoError(t, err)
			assert.InDelta(t, c.off, v.Off, 1e-9)
			assert.InDelta(t, c.length, v.Worst.Length, 1e-9)
			assert.Equal(t, "Panel", v.Worst.Piece)
			assert.Equal(t, math.Abs(c.off) <= 0.79375, v.SeemsTrue(UsualWithin(length.Inch)))
			assert.Equal(t, math.Abs(c.off) <= 0.79375, v.IsTrue(UsualWithin(length.Inch)), "without a doubt that is the same")
		})
	}
	// Of lines as long and as much off as each other one is named, whatever is rounded.
	beside := long
	beside.Marks = append([]mark.Mark{}, long.Marks...)
	beside.Marks = append(beside.Marks, sample.Edge(mark.Fold, "turn in", plane.Point{Y: 20}, plane.Point{X: 228.6 + 1e-10, Y: 20}))
	one, err := Judge(arrange.Set{Pieces: []mark.Marking{beside}}, seen.Paper(t, "letter"), paper.Scale{Across: 1, Down: 1}, paper.Scale{Across: 0.01, Down: 0.01})
	require.NoError(t, err)
	assert.Equal(t, mark.Cut, one.Worst.Role)
	assert.Equal(t, one.Worst, one.Unsure)
	// The panel lies turned on its page, its long sides run down: what the printer
	// does across falls on its 5 in.
	v, err := Judge(arrange.Set{Pieces: []mark.Marking{long}}, seen.Paper(t, "letter"), paper.Scale{Across: 0.984375, Down: 1}, paper.Scale{})
	require.NoError(t, err)
	assert.InDelta(t, -127*0.015625, v.Off, 1e-9)
	assert.InDelta(t, 127, v.Worst.Length, 1e-9)
	// And whatever paper it will be drawn on, it is judged as drawn true.
	corrected := seen.Paper(t, "letter")
	corrected.Printed = paper.Scale{Across: 0.984375, Down: 1}
	same, err := Judge(arrange.Set{Pieces: []mark.Marking{long}}, corrected, paper.Scale{Across: 0.984375, Down: 1}, paper.Scale{})
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
	v, err = Judge(arrange.Set{Pieces: []mark.Marking{fan}}, seen.Paper(t, "a3"), paper.Scale{Across: 1.0025, Down: 1}, paper.Scale{})
	require.NoError(t, err)
	assert.InDelta(t, 1, math.Abs(v.Off), 0.01, "400 mm times 0.0025")
	_, err = Judge(arrange.Set{}, seen.Paper(t, "letter"), paper.Scale{Across: 1, Down: 1}, paper.Scale{})
	assert.EqualError(t, err, "there is no line to draw\nhint: give the file at least one piece with an outline")
}

// A page as long as it needs to be comes out of the printer one way, whether it is higher
// than wide or not: a strip of 800 by 100 mm at 102 % across is 16 mm too long.
func TestJudgeOnPaperThatHasAllWhole(t *testing.T) {
	for name, printed := range map[string]paper.Scale{"roll:36in": {Across: 1.02, Down: 1}, "single": {Across: 1.02, Down: 1}} {
		strip := sample.Ruled("s", "Strip", 800, 100)
		v, err := Judge(arrange.Set{Pieces: []mark.Marking{strip}}, seen.Paper(t, name), printed, paper.Scale{})
		require.NoError(t, err)
		assert.InDelta(t, 16, v.Off, 1e-9, name)
		assert.InDelta(t, 800, v.Worst.Length, 1e-9, name)
		assert.True(t, v.straights.across.haveNear(800, 0.1), "%s: the strip can be measured across", name)
		assert.True(t, v.straights.down.haveNear(100, 0.1), "%s: and down", name)
	}
}

// What a reading leaves open grows with the line: half a step of the ruler on what was
// measured, as many times as the line is longer than that.
func TestJudgeWithADoubt(t *testing.T) {
	for _, c := range []struct {
		name          string
		long          float64 // of the longest line, mm
		across, of    string  // what was measured; of the check square where of is ""
		unit          length.Unit
		open, within  float64 // mm
		seems, proven bool
	}{
		{"the square to 1/16 in, over 12 1/2 in: 1/128 of it", 317.5, "4", "", length.Inch, 317.5 / 128, 0.79375, true, false},
		{"the square to 1/32 in", 317.5, "4 0/32", "", length.Inch, 317.5 / 256, 0.79375, true, false},
		{"the line itself to 1/16 in: half of that", 317.5, "12 1/2", "12 1/2", length.Inch, 0.79375, 0.79375, true, true},
		{"the line itself, off by no more than it may be", 317.5, "12 17/32", "12 1/2", length.Inch, 0.396875, 0.8, true, false},
		{"and more", 317.5, "12 7/16", "12 1/2", length.Inch, 0.79375, 0.79375, false, false},
		{"a line no longer than the square", 101.6, "4", "", length.Inch, 0.79375, 0.79375, true, true},
		{"the square to 1 mm, over 600 mm", 600, "100", "", length.Millimetre, 3, 0.5, true, false},
		{"and to half of one", 600, "100.5", "", length.Millimetre, 1.5, 5, true, true},
		{"240 mm of it to 1 mm", 600, "240", "240", length.Millimetre, 1.25, 0.5, true, false},
		{"all of it to 1 mm", 600, "600", "600", length.Millimetre, 0.5, 0.5, true, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			m, err := paper.Measure(c.across, c.unit)
			if c.of != "" {
				whole, bad := length.Parse(c.of, c.unit)
				require.NoError(t, bad)
				m, err = paper.MeasureOf(c.across, whole, c.unit)
			}
			require.NoError(t, err)
			r := paper.Reading{Across: m, Down: m}
			piece := mark.Marking{Name: "Band", Marks: []mark.Mark{sample.Edge(mark.Cut, "edge", plane.Point{}, plane.Point{X: c.long})}}
			piece.Outline = sample.OutlineOf(piece.Marks)
			v, err := Judge(arrange.Set{Pieces: []mark.Marking{piece}}, seen.Paper(t, "letter"), r.Scale(), r.Doubt())
			require.NoError(t, err)
			assert.InDelta(t, c.open, v.Open, 1e-9)
			assert.Equal(t, v.Worst, v.Unsure)
			assert.InDelta(t, c.open+math.Abs(v.Off), v.Most, 1e-9)
			assert.Equal(t, c.seems, v.SeemsTrue(c.within), "it seems so")
			assert.Equal(t, c.proven, v.IsTrue(c.within), "it is so")
		})
	}
	// What is off by as much as it may be is true, however it was worked out.
	for _, off := range []float64{0.5, -0.5 - 1e-9, 0.5 + 1e-9} {
		v := Verdict{Off: off, Most: math.Abs(off)}
		assert.True(t, v.SeemsTrue(0.5), "%v", off)
		assert.True(t, v.IsTrue(0.5), "%v", off)
	}
	// What is off most and what is open most may be two lines: of one across, 5 in, the
	// scale is known, of one down, 9 in, it is not.
	panel := sample.Rectangle("p", "Panel", 228.6, 127)
	panel.Marks = panel.Marks[:4]
	v, err := Judge(arrange.Set{Pieces: []mark.Marking{panel}}, seen.Paper(t, "letter"), paper.Scale{Across: 0.99, Down: 1}, paper.Scale{Down: 0.01})
	require.NoError(t, err)
	assert.InDelta(t, -1.27, v.Off, 1e-9)
	assert.InDelta(t, 127, v.Worst.Length, 1e-9)
	assert.InDelta(t, 2.286, v.Open, 1e-9)
	assert.InDelta(t, 228.6, v.Unsure.Length, 1e-9)
}

// Of lines that are told in the same numbers the one that can be measured is named, so that
// nobody measures as long a line twice: of a centre line beside a cutting line, both 12 1/2 in, the
// first that is measured, and of one 1/8 in longer not.
func TestJudgeNamesTheLineThatIsMeasured(t *testing.T) {
	for _, c := range []struct {
		long  float64 // of the centre line, mm
		worst string
	}{{317.6, "edge"}, {317.5, "edge"}, {320.675, "middle"}} {
		edge := sample.Edge(mark.Cut, "edge", plane.Point{}, plane.Point{X: 317.5})
		middle := sample.Edge(mark.Centre, "middle", plane.Point{Y: 50}, plane.Point{X: c.long, Y: 50})
		for _, marks := range [][]mark.Mark{{edge, middle}, {middle, edge}} {
			band := mark.Marking{Name: "Band", Marks: marks}
			band.Outline = sample.OutlineOf(band.Marks)
			v, err := Judge(arrange.Set{Pieces: []mark.Marking{band}, Unit: length.Inch}, seen.Paper(t, "letter"),
				paper.Scale{Across: 0.99, Down: 1}, paper.Scale{Across: 0.01, Down: 0.01})
			require.NoError(t, err)
			if c.worst == "edge" {
				assert.Equal(t, v.Longer.Across.Name, v.Worst.Name, "a centre line of %g mm", c.long)
			} else {
				assert.Equal(t, c.worst, v.Worst.Name, "a centre line of %g mm", c.long)
			}
			assert.Equal(t, v.Worst, v.Unsure)
		}
	}
}

// A line that comes out too long is never told as one that comes out too short, though a ruler shows
// both as less than 1 mm: derived, 700.2 mm across at 99.95 % is 0.3501 mm too short, 700 mm down at
// 100.05 % is 0.35 mm too long.
func TestJudgeTellsTooLongFromTooShort(t *testing.T) {
	down := sample.Edge(mark.Cut, "downward", plane.Point{}, plane.Point{Y: 700})
	across := sample.Edge(mark.Centre, "middle", plane.Point{Y: 350}, plane.Point{X: 700.2, Y: 350})
	for _, c := range []struct {
		name    string
		printed paper.Scale
		worst   string
		off     float64
	}{
		{"short across, long down", paper.Scale{Across: 0.9995, Down: 1.0005}, "middle", -0.3501},
		{"long across, short down", paper.Scale{Across: 1.0005, Down: 0.9995}, "middle", 0.3501},
	} {
		for _, marks := range [][]mark.Mark{{down, across}, {across, down}} {
			band := mark.Marking{Name: "Band", Marks: marks}
			band.Outline = sample.OutlineOf(band.Marks)
			v, err := Judge(arrange.Set{Pieces: []mark.Marking{band}, Unit: length.Millimetre}, seen.Paper(t, "a4"), c.printed, paper.Scale{})
			require.NoError(t, err)
			assert.InDelta(t, c.off, v.Off, 1e-9, c.name)
			assert.Contains(t, v.Worst.Name, c.worst, c.name)
		}
	}
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
