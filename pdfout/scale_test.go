package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// What is printed at m/N of the length drawn and is to come out true is drawn at
// N/m: on the page itself the square is as much larger as the printer makes it
// smaller, and on the printed sheet it is 4 in.
func TestCorrectedSquare(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		on := found(t, rapid.SampledFrom([]string{"letter", "a4", "either"}).Draw(t, "paper"))
		on.Printed = paper.Scale{Across: rapid.Float64Range(0.94, 1.05).Draw(t, "across"), Down: rapid.Float64Range(0.94, 1.05).Draw(t, "down")}
		if math.Max(math.Abs(on.Printed.Across-1), math.Abs(on.Printed.Down-1)) <= 0.0005 {
			t.Skip("too little to be corrected")
		}
		set := many(2)
		set.Unit = length.Inch
		d, s := drawnOn(t, set, on)
		for i, p := range d.Pages {
			for k, f := range p.Frames() {
				want := []float64{4 * 25.4, 100}[k]
				if i >= s.Front {
					want = 25.4
				}
				require.InDelta(t, want, f.Width(), 4*seen.Written, "page %d, across", i+1)
				require.InDelta(t, want, f.Height(), 4*seen.Written, "page %d, up", i+1)
			}
		}
		drawn := d.Pages[0].Frames()[0].Width() / on.Printed.Across
		require.InDelta(t, 101.6/on.Printed.Across, drawn, 4*seen.Written, "4 in divided by m/4")
		require.InDelta(t, on.Width*on.Printed.Across, d.Pages[0].Width, 0.004, "the sheet itself has the size of the paper")
	})
}

// What is off by half a per mille or less both ways, 1/100 in over 20 in, is drawn as
// for a printer that prints true; what is off by more one way, is corrected both ways.
func TestTooLittleToBeCorrected(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name      string
		printed   paper.Scale
		corrected bool
	}{
		{"a little too large", paper.Scale{Across: 1.00047, Down: 1.00047}, false},
		{"a little too small", paper.Scale{Across: 0.99953, Down: 0.9996}, false},
		{"a little one way", paper.Scale{Across: 1, Down: 1.00047}, false},
		{"more one way", paper.Scale{Across: 1.00053, Down: 1.00047}, true},
		{"more the other way", paper.Scale{Across: 1, Down: 0.99947}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			paper := found(t, "letter")
			paper.Printed = c.printed
			d, _ := drawnOn(t, few(), paper)
			f := d.Pages[0].Frames()[0]
			want := plane.Point{X: 4 * 25.4, Y: 4 * 25.4}
			if !c.corrected {
				want = plane.Point{X: want.X * c.printed.Across, Y: want.Y * c.printed.Down}
			}
			assert.InDelta(t, want.X, f.Width(), 4*seen.Written, "across")
			assert.InDelta(t, want.Y, f.Height(), 4*seen.Written, "up")
		})
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
