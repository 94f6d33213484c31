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
	"tuckmark/pdfout/sets"
)

// A line that goes on to the next page is written well past the window's side,
// so that the clip cuts it and no end of it shows.
func TestLinesRunPastTheWindow(t *testing.T) {
	m := sample.Sail(600)
	d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{m}}, "letter")
	past := 0
	for _, p := range d.Pages[inFront(s):] {
		window := p.On(s.Paper).Window()
		for _, q := range p.Drawn(mark.Cut.String()) {
			for _, part := range q.Parts {
				for _, end := range []plane.Point{part[0], part[len(part)-1]} {
					if window.Grown(-0.5).Holds(end) {
						continue // a corner of the piece
					}
					assert.GreaterOrEqual(t, window.Distance(end), 1.0, "an end at %v", end)
					past++
				}
			}
		}
	}
	assert.Positive(t, past)
}

// A piece alone on its page lies in the middle of it.
func TestSmallPieceIsCentred(t *testing.T) {
	for _, p := range paper.All() {
		d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{sample.Sail(80)}}, p.Name)
		shown := plane.EmptyBox()
		for _, q := range d.Pages[s.Front].Drawn(mark.Cut.String()) {
			for _, part := range q.Parts {
				shown = shown.Union(part.Bounds())
			}
		}
		require.InDelta(t, 80, shown.Width(), 4*seen.Written)
		assert.InDelta(t, p.Width/2, shown.Centre().X, 0.01, p.Name)
	}
}

// checkHeads holds for every head of any set: its tip is on the page, so that
// no page shows a base alone.
func checkHeads(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages[inFront(s):] {
		window := p.On(s.Paper).Window().Grown(2 * seen.Written)
		for _, role := range mark.Roles() {
			for _, h := range p.Heads(role) {
				assert.True(t, window.Holds(h[0]), "page %d: the tip of a head of a %v is at %v", inFront(s)+i+1, role, h[0])
			}
		}
	}
}

// A grain line that ends just beyond the window of the first page has its head
// on the second alone.
func TestHeadOnOnePage(t *testing.T) {
	m := sample.Sail(300)
	m.Marks = append(m.Marks, sample.Edge(mark.Grain, "", plane.Point{X: 30, Y: 150}, plane.Point{X: 100, Y: 150}))
	laid := arrange.Arrange(arrange.Set{Pieces: []mark.Marking{m}}, paper.All()[0])
	g := laid.Sheets[0].Grid
	first := g.WindowOf(arrange.Cell{})
	// The piece lies as it was given; the window of the first column ends here.
	end := first.Max.X
	m.Marks[len(m.Marks)-1].Path[1].X = end + 1
	d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{m}}, "letter")
	total := 0
	for _, p := range d.Pages[inFront(s):] {
		total += len(p.Heads(mark.Grain))
	}
	require.Len(t, laid.Sheets[0].Cells, 4)
	// One at the left on the first column; one at the right on the second;
	// each as often as windows of two rows hold it.
	rows := 0
	for row := range 2 {
		if w := g.WindowOf(arrange.Cell{Row: row, Column: 0}); w.Min.Y <= 150 && w.Max.Y >= 150 {
			rows++
		}
	}
	assert.Equal(t, 2*rows, total)
	checkHeads(t, arrange.Set{}, d, s)
}

// What is printed at m/N of the length drawn and is to come out true is drawn at
// N/m: on the page itself the square is as much larger as the printer makes it
// smaller, and on the printed sheet it is 4 in.
func TestCorrectedSquare(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		on := seen.Paper(t, rapid.SampledFrom([]string{"letter", "a4", "either"}).Draw(t, "paper"))
		on.Printed = paper.Scale{Across: rapid.Float64Range(0.94, 1.05).Draw(t, "across"), Down: rapid.Float64Range(0.94, 1.05).Draw(t, "down")}
		if math.Max(math.Abs(on.Printed.Across-1), math.Abs(on.Printed.Down-1)) <= 0.0005 {
			t.Skip("too little to be corrected")
		}
		set := sets.Many(1)
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
			paper := seen.Paper(t, "letter")
			paper.Printed = c.printed
			d, _ := drawnOn(t, sets.Few(), paper)
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
