package arrange

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// What a piece needs at least is never more than the pages that are made of it, on whatever paper;
// what has no page of its own needs none.
func TestLeastPagesAreNoMoreThanAreMade(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		on := rapid.SampledFrom(slices.DeleteFunc(paper.All(), paper.Paper.WhollyOnOne)).Draw(t, "paper")
		if rapid.Bool().Draw(t, "lying") {
			var err error
			on, err = on.Lying()
			require.NoError(t, err)
		}
		on, err := on.WithOverlap(rapid.Float64Range(9, 50).Draw(t, "overlap"))
		require.NoError(t, err)
		p := drawnAnyhow(t)
		least := leastPagesOf(p, on)
		if window := PageOf(on).Window; p.fitsEitherWay(window) {
			require.Zero(t, least)
			return
		}
		s := spread(p, on, rasterOne)
		require.LessOrEqual(t, least, len(s.Cells), "%.2f by %.2f mm on %s", p.Bounds.Width(), p.Bounds.Height(), on.Name)
	})
}

// drawnAnyhow is a piece of a few lines, upright ones and lying ones among them, on which its
// pages hang together or not; some of it ends where a page does, or a sliver beyond.
func drawnAnyhow(t *rapid.T) Piece {
	page := PageOf(paper.All()[0])
	long := func(what string, window, pitch float64) float64 {
		if rapid.Bool().Draw(t, what+" by pages") {
			return window - 2*Spare + float64(rapid.IntRange(0, 6).Draw(t, what))*pitch + rapid.SampledFrom([]float64{-0.02, 0, 0.005, 0.02, 0.03, 3}).Draw(t, "more")
		}
		return rapid.Float64Range(5, 1500).Draw(t, what)
	}
	w, h := long("w", page.Window.X, page.Pitch().X), long("h", page.Window.Y, page.Pitch().Y)
	corners := []plane.Point{{}, {X: w}, {X: w, Y: h}, {Y: h}, {X: w / 2}, {X: w / 2, Y: h}, {Y: h / 2}, {X: w, Y: h / 2}}
	m := mark.Marking{Key: "p", Name: "P", Outline: sample.Ruled("", "", w, h).Outline}
	if rapid.Bool().Draw(t, "ruled") {
		m.Kind = mark.Grid
	}
	for range rapid.IntRange(1, 6).Draw(t, "lines") {
		m.Marks = append(m.Marks, sample.Edge(mark.Cut, "", rapid.SampledFrom(corners).Draw(t, "a"), rapid.SampledFrom(corners).Draw(t, "b")))
	}
	m.Marks = append(m.Marks, sample.Edge(mark.Notch, "", plane.Point{}, plane.Point{X: 1}), sample.Edge(mark.Notch, "", plane.Point{X: w, Y: h}, plane.Point{X: w, Y: h - 1}))
	return NewPiece(m)
}

func TestLeastPages(t *testing.T) {
	letter := paper.All()[0] // 194.7 by 237.1 mm, of which 10 mm are shared
	for _, c := range []struct {
		name  string
		w, h  float64
		least int
	}{
		{"on one page", 180, 230, 0},
		{"on one page turned", 230, 180, 0},
		// 3 by 3, of which an L needs five.
		{"three columns and rows", 500, 600, 5},
		{"a band", 150, 2000, 9},
		{"the same band turned", 2000, 150, 9},
	} {
		assert.Equal(t, c.least, leastPagesOf(NewPiece(sample.Rectangle("p", "P", c.w, c.h)), letter), c.name)
	}
}

// Where pieces need too many pages at least, none is laid; where it shows only as they are, no
// more of them than that.
func TestTooManyAreNotLaid(t *testing.T) {
	set := func(n int, w, h float64) (s Set) {
		for i := range n {
			s.Pieces = append(s.Pieces, sample.Rectangle(fmt.Sprint(i), "P", w, h))
		}
		return s
	}
	letter := paper.All()[0]
	for _, c := range []struct {
		name  string
		set   Set
		least int
	}{
		{"at once", set(500, 500, 600), 2500},
		// Each needs five at least, and eight are made of it, round the middle one: 399 of them
		// and three more by three for each.
		{"as they are laid", set(399, 500, 600), 2001},
		{"small ones", set(2100, 180, 230), 2001},
	} {
		laid := Arrange(c.set, letter)
		assert.Empty(t, laid.Sheets, c.name)
		assert.Equal(t, c.least, laid.Least, c.name)
	}
}
