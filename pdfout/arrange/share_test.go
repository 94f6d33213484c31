package arrange

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// someSet is large pieces and small ones.
func someSet(t *rapid.T) Set {
	s := Set{Title: "Set", Unit: length.Unit(rapid.IntRange(0, 2).Draw(t, "unit"))}
	for i := range rapid.IntRange(1, 3).Draw(t, "large") {
		top := rapid.Float64Range(20, 400).Draw(t, "top")
		s.Pieces = append(s.Pieces, sample.Flared(fmt.Sprint("large ", i), top, top+rapid.Float64Range(0, 300).Draw(t, "flare"), rapid.Float64Range(300, 700).Draw(t, "height")))
	}
	for i := range rapid.IntRange(0, 8).Draw(t, "small") {
		s.Pieces = append(s.Pieces, sample.Rectangle(fmt.Sprint("small ", i), fmt.Sprint("Small ", i),
			rapid.Float64Range(13, 190).Draw(t, "w"), rapid.Float64Range(13, 200).Draw(t, "h"), "cut 2"))
	}
	return s
}

// alone is how many pages the sheets have when nothing is put beside large
// pieces.
func alone(set Set, on paper.Paper) int {
	all := 0
	for _, m := range set.Pieces {
		p := NewPiece(m)
		if w := PageOf(on).Window; p.Fits(w) || p.QuarterTurned().Fits(w) {
			continue
		}
		s := spread(p, on, rasterOne)
		all += len(s.Cells)
	}
	var pieces []Piece
	for _, m := range set.Pieces {
		p := NewPiece(m)
		if !p.Fits(PageOf(on).Window) {
			p = p.QuarterTurned()
		}
		if p.Fits(PageOf(on).Window) {
			pieces = append(pieces, p)
		}
	}
	sheets, _ := packedSheets(pieces, PageOf(on))
	return all + len(sheets)
}

// checkShared checks all that shares the pages of a large piece.
func checkShared(t require.TestingT, s Sheet) {
	for i, p := range s.Pieces {
		small := p.Fits(s.Grid.Window)
		if small {
			checkWhole(t, s, p)
		}
		cells := s.Grid.crossed(p.Lines, mostOfPlacing)
		for _, c := range cells {
			require.True(t, s.printed[c], "%s lies on a page that is left out", p.Name)
		}
		for _, o := range s.Pieces[i+1:] {
			switch otherSmall := o.Fits(s.Grid.Window); {
			case small && otherSmall:
				require.False(t, p.Bounds.Grown(6).Meets(o.Bounds), "%s is too near to %s", p.Name, o.Name)
			case small:
				require.True(t, clearOfLines(p, o), "%s is too near to a line of %s", p.Name, o.Name)
			case otherSmall:
				require.True(t, clearOfLines(o, p), "%s is too near to a line of %s", o.Name, p.Name)
			default:
				require.True(t, clearOfLines(o, p) || clearOfLines(p, o), "%s is too near to a line of %s", o.Name, p.Name)
			}
		}
	}
}

// clearOfLines reports whether the box round a piece lies outside another, 6 mm from its
// lines.
func clearOfLines(p, other Piece) bool {
	near := text.Upright(p.Bounds.Grown(6 - 0.02))
	for _, l := range append(slices.Clip(other.Lines), NewLine(mark.Cut, "", other.Outline.Path())) {
		path := l.Path()
		for k := 1; k < len(path); k++ {
			if near.MeetsSegment(path[k-1], path[k]) {
				return false
			}
		}
	}
	return !other.Inside(p.Bounds.Centre())
}

// checkWhole checks that a small piece is whole within one page that is printed, clear of
// what is joined.
func checkWhole(t require.TestingT, s Sheet, p Piece) {
	in := slices.IndexFunc(s.Cells, func(c Cell) bool {
		core := s.Grid.CoreOf(c)
		room := p.Bounds.Grown(2 - rounding)
		return core.Holds(room.Min) && core.Holds(room.Max)
	})
	require.GreaterOrEqual(t, in, 0, "%s is not whole within the joins of a page", p.Name)
	strip := s.Grid.within(s.Cells[in], s.Grid.WindowOf(s.Cells[in]), s.Grid.Overlap).Grown(rounding)
	require.True(t, strip.Holds(p.Bounds.Min) && strip.Holds(p.Bounds.Max), "%s lies under paste", p.Name)
}

// What is put beside a large piece is clear of it, and a small one is whole on one page; it
// is put there only where that saves a page.
func TestSmallPiecesBesideLarge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { checkBeside(t, someSet(t)) })
	assert.Positive(t, checkBeside(t, mixed()), "nothing is put beside a large piece")
}

// checkBeside checks how the pieces of a set share pages, and returns how many are put
// beside large ones.
func checkBeside(t require.TestingT, set Set) int {
	on := paper.All()[0]
	laid := Arrange(set, on)
	require.Equal(t, laid.Pages(), laid.Least)
	again := Arrange(set, on)
	pages := alone(set, on)
	require.LessOrEqual(t, laid.Pages(), pages)
	beside, names := 0, map[string]int{}
	for i := range laid.Sheets {
		s := &laid.Sheets[i]
		require.Equal(t, s.Names(), again.Sheets[i].Names(), "it is the same every time")
		for k, p := range s.Pieces {
			names[p.Name]++
			require.Equal(t, p.Bounds, again.Sheets[i].Pieces[k].Bounds, "it is the same every time")
		}
		if len(s.Cells) == 1 {
			continue
		}
		checkShared(t, *s)
		beside += len(s.Pieces) - 1
		s.FindJoins(1)
		s.Letter()
	}
	require.Len(t, names, len(set.Pieces), "all pieces are there")
	for name, n := range names {
		require.Equal(t, 1, n, name)
	}
	if beside > 0 {
		require.Less(t, laid.Pages(), pages, "pieces are scattered for nothing")
	} else {
		require.Equal(t, pages, laid.Pages())
	}
	return beside
}

func TestSharing(t *testing.T) {
	p := paper.All()[0] // of letter paper the window is 194.7 by 237.1 mm
	// A piece that leaves 60 mm free over it.
	full := sample.Ruled("f", "Full", 185, 400)
	for y := 8.0; y < 400; y += 8 {
		full.Marks = append(full.Marks, sample.Edge(mark.Stitch, "", plane.Point{Y: y}, plane.Point{X: 185, Y: y}))
	}
	form := sample.TuckSample()
	for _, c := range []struct {
		name   string
		pieces []mark.Marking
		want   [][]string
		pages  int
	}{
		{"a pocket beside a skirt", []mark.Marking{sample.Rectangle("s", "Skirt", 250, 400), sample.Rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt", "Pocket"}}, 4},
		{"a pocket that finds no room", []mark.Marking{sample.Rectangle("s", "Skirt", 370, 455), sample.Rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt"}, {"Pocket"}}, 5},
		{"a pocket that saves nothing, since the yoke finds no room", []mark.Marking{sample.Rectangle("s", "Skirt", 250, 400), sample.Rectangle("y", "Yoke", 185, 150), sample.Rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt"}, {"Yoke", "Pocket"}}, 5},
		{"a pocket that the yoke leaves no room", []mark.Marking{sample.Rectangle("s", "Skirt", 250, 400), sample.Rectangle("y", "Yoke", 185, 228), sample.Rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt", "Pocket"}, {"Yoke"}}, 5},
		{"a band as wide as the piece under it", []mark.Marking{full, sample.Rectangle("b", "Band", 185, 45)},
			[][]string{{"Full", "Band"}}, 2},
		{"no page with a form is shared", []mark.Marking{form, sample.Rectangle("p", "Pocket", 20, 20)},
			[][]string{{"Pocket"}}, 1},
		{"one with a form beside a skirt is not shared either", []mark.Marking{sample.Rectangle("s", "Skirt", 370, 455), form, sample.Rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt"}, {"Pocket"}}, 5},
	} {
		laid := Arrange(Set{Pieces: c.pieces}, p)
		var got [][]string
		for i := range laid.Sheets {
			got = append(got, laid.Sheets[i].Names())
		}
		assert.Equal(t, c.want, got, c.name)
		assert.Equal(t, c.pages, laid.Pages(), c.name)
	}
}

// mixed is the set of pieces of all sizes.
func mixed() Set { return Set{Unit: length.Centimetre, Pieces: sample.MixedPieces()} }

func BenchmarkArrangeMixed50(b *testing.B) {
	set := mixed()
	pages := 0
	for b.Loop() {
		laid := Arrange(set, paper.All()[0])
		pages = laid.Pages()
	}
	before := alone(set, paper.All()[0])
	b.ReportMetric(float64(pages), "pages")
	b.ReportMetric(float64(before-pages), "shared")
}

// What the tallest first leaves without room beside large pieces finds some in another order
// (derived: of two rooms of 100 by 100 and 50 by 90 mm a parcel of 50 by 90 takes the first, in
// which the other, 100 by 80, has no room beside it; and neither fits turned).
func TestOtherGuestsFirst(t *testing.T) {
	t.Parallel()
	host := NewPiece(sample.Rectangle("large", "Large", 400, 400))
	sheets := []Sheet{NewSheet([]Piece{host}, Grid{Rows: 2, Columns: 2, Window: plane.Point{X: 210, Y: 210}}, []Cell{{}})}
	room := func(w, h float64) *opening {
		return &opening{Packing: EmptyPage(plane.Point{X: w, Y: h})}
	}
	parcels := rooms([2]float64{50, 90}, [2]float64{100, 80})
	free := []*opening{room(100, 100), room(50, 90)}
	_, tallest := invited(parcels, free, sheets)
	assert.Len(t, uninvited(tallest), 1)
	all, guests := invitedMost(parcels, free, sheets, plane.Point{X: 210, Y: 210})
	assert.Empty(t, uninvited(guests))
	for i, o := range all {
		assert.Len(t, o.Parcels, 1)
		assert.Empty(t, free[i].Parcels, "those that were given stay empty")
	}
}
