package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

func TestMeasure(t *testing.T) {
	for _, c := range []struct {
		text  string
		bare  marking.Unit
		scale float64
		frame string
		shown string
	}{
		{"4", marking.Inch, 1, "4 in", "4 in"},
		{"3 15/16", marking.Inch, 0.984375, "4 in", "3 15/16 in"},
		{"3⅞", marking.Inch, 0.96875, "4 in", "3 7/8 in"},
		{`4 1/32"`, marking.Millimetre, 1.0078125, "4 in", "4 1/32 in"},
		{"98.5 mm", marking.Inch, 0.985, "100 mm", "98.5 mm"},
		{"9.85cm", marking.Inch, 0.985, "100 mm", "9.85 cm"},
		{"97", marking.Millimetre, 0.97, "100 mm", "97 mm"},
		{"9.7", marking.Centimetre, 0.97, "100 mm", "9.7 cm"},
	} {
		t.Run(c.text, func(t *testing.T) {
			m, err := Measure(c.text, c.bare)
			require.NoError(t, err)
			assert.InDelta(t, c.scale, m.Scale, 1e-12)
			assert.Equal(t, c.frame, m.Frame())
			assert.Equal(t, c.shown, m.Text)
		})
	}
}

func TestMeasureThatIsNone(t *testing.T) {
	const hint = "\nhint: measure the outer frame in inches, which is to be 4 in, or the inner one in mm, which is to be 100 mm; "
	for _, c := range []struct {
		text string
		bare marking.Unit
		want string
	}{
		{"98", marking.Inch, "a side of 98 in is no printer's doing" + hint + `"98" counts in in`},
		{"4", marking.Millimetre, "a side of 4 mm is no printer's doing" + hint + `"4" counts in mm`},
		{"0", marking.Inch, "a side of 0 in is no printer's doing" + hint + `"0" counts in in`},
		{"-4", marking.Inch, "a side of -4 in is no printer's doing" + hint + `"-4" counts in in`},
		{"3,9", marking.Inch, "\"3,9\" is written with a comma\nhint: write a decimal with a point: \"3.9\""},
	} {
		_, err := Measure(c.text, c.bare)
		assert.EqualError(t, err, c.want)
	}
}

func TestScaleInWords(t *testing.T) {
	for want, s := range map[string]Scale{
		"98.4 % across and 100 % down": {0.984375, 1},
		"97 % both ways":               {0.97, 0.97},
		"100 % both ways":              {},
		"97.3 % both ways":             {210 / 215.9, 210 / 215.9},
		"99.9 % both ways":             {0.9994, 0.9994},
		"101.6 % across and 99 % down": {1.016, 0.99},
	} {
		assert.Equal(t, want, s.String())
	}
}

// What is printed at m/N of the length drawn and is to come out true is drawn at
// N/m: on the page itself the square is as much larger as the printer makes it
// smaller, and on the printed sheet it is 4 in.
func TestCorrectedSquare(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		paper := found(t, rapid.SampledFrom([]string{"letter", "a4", "either"}).Draw(t, "paper"))
		paper.Printed = Scale{rapid.Float64Range(0.94, 1.05).Draw(t, "across"), rapid.Float64Range(0.94, 1.05).Draw(t, "down")}
		if math.Max(math.Abs(paper.Printed.Across-1), math.Abs(paper.Printed.Down-1)) <= 0.0005 {
			t.Skip("too little to be corrected")
		}
		set := many(2)
		set.Unit = marking.Inch
		d, s := drawnOn(t, set, paper)
		for i, p := range d.pages {
			for k, f := range p.frames() {
				want := []float64{4 * 25.4, 100}[k]
				if i >= s.Front {
					want = 25.4
				}
				require.InDelta(t, want, f.Width(), 4*written, "page %d, across", i+1)
				require.InDelta(t, want, f.Height(), 4*written, "page %d, up", i+1)
			}
		}
		drawn := d.pages[0].frames()[0].Width() / paper.Printed.Across
		require.InDelta(t, 101.6/paper.Printed.Across, drawn, 4*written, "4 in divided by m/4")
		require.InDelta(t, paper.Width/25.4*72*paper.Printed.Across, d.pages[0].width, 0.01, "the sheet itself has the size of the paper")
	})
}

// What is off by half a per mille or less both ways, 1/100 in over 20 in, is drawn as
// for a printer that prints true; what is off by more one way, is corrected both ways.
func TestTooLittleToBeCorrected(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name      string
		printed   Scale
		corrected bool
	}{
		{"a little too large", Scale{1.00047, 1.00047}, false},
		{"a little too small", Scale{0.99953, 0.9996}, false},
		{"a little one way", Scale{1, 1.00047}, false},
		{"more one way", Scale{1.00053, 1.00047}, true},
		{"more the other way", Scale{1, 0.99947}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			paper := found(t, "letter")
			paper.Printed = c.printed
			d, _ := drawnOn(t, few(), paper)
			f := d.pages[0].frames()[0]
			want := plane.Point{X: 4 * 25.4, Y: 4 * 25.4}
			if !c.corrected {
				want = plane.Point{X: want.X * c.printed.Across, Y: want.Y * c.printed.Down}
			}
			assert.InDelta(t, want.X, f.Width(), 4*written, "across")
			assert.InDelta(t, want.Y, f.Height(), 4*written, "up")
		})
	}
}

// A line of 9 in of which 3 15/16 of 4 parts are printed lacks 1/64 of its length.
func TestJudge(t *testing.T) {
	long := rectangle("p", "Panel", 228.6, 127)
	long.Marks = long.Marks[:4] // its edges
	for _, c := range []struct {
		name    string
		printed Scale
		off     float64
		length  float64
	}{
		{"true", Scale{1, 1}, 0, 228.6},
		{"not measured", Scale{}, 0, 228.6},
		{"both ways", Scale{0.984375, 0.984375}, -228.6 * 0.015625, 228.6},
		{"larger", Scale{1.0078125, 1.0078125}, 228.6 * 0.0078125, 228.6},
	} {
		t.Run(c.name, func(t *testing.T) {
			v, err := Judge(Set{Pieces: []marking.Marking{long}}, found(t, "letter"), c.printed)
			require.NoError(t, err)
			assert.InDelta(t, c.off, v.Off, 1e-9)
			assert.InDelta(t, c.length, v.Worst.Length, 1e-9)
			assert.Equal(t, "Panel", v.Worst.Piece)
			assert.Equal(t, math.Abs(c.off) <= 0.79375, v.True(UsualWithin(marking.Inch)))
		})
	}
	// The panel lies turned on its page, its long sides run down: what the printer
	// does across falls on its 5 in.
	v, err := Judge(Set{Pieces: []marking.Marking{long}}, found(t, "letter"), Scale{0.984375, 1})
	require.NoError(t, err)
	assert.InDelta(t, -127*0.015625, v.Off, 1e-9)
	assert.InDelta(t, 127, v.Worst.Length, 1e-9)
	// And whatever paper it will be drawn on, it is judged as drawn true.
	corrected := found(t, "letter")
	corrected.Printed = Scale{0.984375, 1}
	same, err := Judge(Set{Pieces: []marking.Marking{long}}, corrected, Scale{0.984375, 1})
	require.NoError(t, err)
	assert.Equal(t, v, same)
	// Lines that are less and less off, and longer and longer: the worst is still the
	// first, not one to which it leads step by step.
	var fan marking.Marking
	for i := range 200 {
		sin, cos := math.Sincos(math.Pi / 2 * float64(i) / 200)
		fan.Marks = append(fan.Marks, edge(marking.Stitch, "", plane.Point{}, plane.Point{X: cos, Y: sin}.Mul(400+0.01*float64(i))))
	}
	fan.Outline = outlineOf(fan.Marks)
	v, err = Judge(Set{Pieces: []marking.Marking{fan}}, found(t, "a3"), Scale{1.0025, 1})
	require.NoError(t, err)
	assert.InDelta(t, 1, math.Abs(v.Off), 0.01, "400 mm times 0.0025")
	_, err = Judge(Set{}, found(t, "letter"), Scale{1, 1})
	assert.EqualError(t, err, "there is no line to draw\nhint: give the file at least one piece with an outline")
	assert.InDelta(t, 254.0/128, Verdict{Worst: Line{Length: 254}}.Unseen(marking.Inch), 1e-9, "1/32 of 4 in is 1/128")
}

// However a line lies, it comes out no more off than its length times the worse of
// the two scales.
func TestLengthAsPrinted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Scale{rapid.Float64Range(0.9, 1.1).Draw(t, "across"), rapid.Float64Range(0.9, 1.1).Draw(t, "down")}
		var p plane.Path
		for range rapid.IntRange(2, 9).Draw(t, "points") {
			p = append(p, plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")})
		}
		got := printedLength(p, s)
		require.GreaterOrEqual(t, got, min(s.Across, s.Down)*p.Length()-1e-9)
		require.LessOrEqual(t, got, max(s.Across, s.Down)*p.Length()+1e-9)
	})
}

// ISO 216 and ANSI/ASME Y14.1: letter 215.9 x 279.4 mm on A4 210 x 297 mm is held by
// its width, 210/215.9; A4 on letter by its height, 279.4/297. Paper of 210 x
// 279.4 mm fits on both as it is.
func TestFitToPage(t *testing.T) {
	for _, c := range []struct {
		paper string
		on    string
		scale float64
		text  string
	}{
		{"letter", "A4 paper", 210 / 215.9, "97.3 %"},
		{"a4", "letter paper", 279.4 / 297, "94.1 %"},
		{"legal", "letter paper", 279.4 / 355.6, "78.6 %"},
	} {
		f, differs := found(t, c.paper).OtherFit()
		assert.True(t, differs, c.paper)
		assert.InDelta(t, c.scale, f.Scale, 1e-12, c.paper)
		assert.Equal(t, c.text, Percent(f.Scale))
		assert.Equal(t, c.on, f.On)
	}
	for _, name := range []string{"letter", "a4", "either"} {
		upright, lying := found(t, name), found(t, name)
		lying, err := lying.Lying()
		require.NoError(t, err)
		one, _ := upright.OtherFit()
		other, _ := lying.OtherFit()
		assert.Equal(t, one, other, "%s: it is turned in the printer as well", name)
	}
	for _, name := range []string{"single", "roll:36in"} {
		_, differs := found(t, name).OtherFit()
		assert.False(t, differs, name)
		assert.Empty(t, found(t, name).Recognised(Scale{0.9727, 0.9727}), name)
	}
	_, differs := found(t, "either").OtherFit()
	assert.False(t, differs, "either fits on both")
}

func TestWhatAScaleIsRecognisedAs(t *testing.T) {
	for _, c := range []struct {
		name, paper string
		printed     Scale
		want        []Fit
	}{
		{"letter on A4", "letter", Scale{0.97266, 0.97266}, []Fit{{210 / 215.9, "A4 paper", false}}},
		{"as a ruler in sixteenths shows it", "letter", Scale{0.96875, 0.9765625}, []Fit{{210 / 215.9, "A4 paper", false}}},
		{"A4 on letter, or inside the margins of A4", "a4", Scale{0.9375, 0.9375}, []Fit{{279.4 / 297, "letter paper", false}, {(210 - 12.7) / 210, "A4 paper", true}}},
		{"letter inside its margins", "letter", Scale{0.9412, 0.9412}, []Fit{{(215.9 - 12.7) / 215.9, "letter paper", true}}},
		{"letter on tabloid", "letter", Scale{1.294, 1.294}, []Fit{{279.4 / 215.9, "tabloid paper", false}}},
		{"nothing known", "letter", Scale{0.99, 0.99}, nil},
		{"true", "letter", Scale{1, 1}, nil},
		{"one way only", "letter", Scale{0.9727, 1}, nil},
		{"a sheet for either, on either", "either", Scale{0.9727, 0.9727}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := found(t, c.paper).Recognised(c.printed)
			require.Len(t, got, len(c.want))
			for i, f := range got {
				assert.InDelta(t, c.want[i].Scale, f.Scale, 1e-12)
				assert.Equal(t, c.want[i].On, f.On)
				assert.Equal(t, c.want[i].Inside, f.Inside)
			}
		})
	}
}
