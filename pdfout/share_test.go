package pdfout

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// flared is a large piece with slanting sides: a skirt panel.
func flared(key string, top, bottom, h float64) marking.Marking {
	in := (bottom - top) / 2
	p := plane.Path{{}, {X: bottom}, {X: bottom - in, Y: h}, {X: in, Y: h}, {}}
	m := marking.Marking{Key: key, Name: "Panel " + key, Notes: []string{"cut 2"}, Outline: p}
	for i := 1; i < len(p); i++ {
		m.Marks = append(m.Marks, edge(marking.Cut, "", p[i-1], p[i]))
	}
	return m
}

// someSet is large pieces and small ones.
func someSet(t *rapid.T) Set {
	s := Set{Title: "Set", Unit: marking.Unit(rapid.IntRange(0, 2).Draw(t, "unit"))}
	for i := range rapid.IntRange(1, 3).Draw(t, "large") {
		top := rapid.Float64Range(20, 400).Draw(t, "top")
		s.Pieces = append(s.Pieces, flared(fmt.Sprint("large ", i), top, top+rapid.Float64Range(0, 300).Draw(t, "flare"), rapid.Float64Range(300, 700).Draw(t, "height")))
	}
	for i := range rapid.IntRange(0, 8).Draw(t, "small") {
		s.Pieces = append(s.Pieces, rectangle(fmt.Sprint("small ", i), fmt.Sprint("Small ", i),
			rapid.Float64Range(13, 190).Draw(t, "w"), rapid.Float64Range(13, 200).Draw(t, "h"), "cut 2"))
	}
	return s
}

// alone is how many pages the sheets have when nothing is put beside large
// pieces.
func alone(set Set, paper Paper) int {
	all := 0
	for _, m := range set.Pieces {
		p := newPiece(m)
		if w := pageOf(paper).window; p.fits(w) || p.quarterTurned().fits(w) {
			continue
		}
		s, _ := spread(p, pageOf(paper))
		all += len(s.cells)
	}
	var pieces []piece
	for _, m := range set.Pieces {
		p := newPiece(m)
		if !p.fits(pageOf(paper).window) {
			p = p.quarterTurned()
		}
		if p.fits(pageOf(paper).window) {
			pieces = append(pieces, p)
		}
	}
	sheets, _ := packedSheets(pieces, pageOf(paper), squareSize(set.Unit))
	return all + len(sheets)
}

// checkShared checks all that is put beside a large piece.
func checkShared(t require.TestingT, s sheet) {
	large := s.pieces[0]
	for i, p := range s.pieces[1:] {
		// Whole within one page that is printed, clear of what is joined.
		in := slices.IndexFunc(s.cells, func(c cell) bool {
			core := s.grid.coreOf(c)
			room := p.bounds.Grown(2 - rounding)
			return core.Holds(room.Min) && core.Holds(room.Max)
		})
		require.GreaterOrEqual(t, in, 0, "%s is not whole within the joins of a page", p.name)
		strip := s.grid.within(s.cells[in], s.grid.windowOf(s.cells[in]), s.grid.overlap).Grown(rounding)
		require.True(t, strip.Holds(p.bounds.Min) && strip.Holds(p.bounds.Max), "%s lies under paste", p.name)

		near := upright(p.bounds.Grown(6 - 0.02))
		for _, l := range append(large.lines, newLine(marking.Cut, "", large.outline.Path())) {
			path := l.clip.Path()
			for k := 1; k < len(path); k++ {
				require.False(t, near.meetsSegment(path[k-1], path[k]), "%s is too near to a line of %s", p.name, large.name)
			}
		}
		require.False(t, large.inside(p.bounds.Centre()), "%s lies inside %s", p.name, large.name)
		for _, o := range s.pieces[i+2:] {
			require.False(t, p.bounds.Grown(6).Meets(o.bounds), "%s is too near to %s", p.name, o.name)
		}
	}
}

// What is put beside a large piece is clear of it and whole on one page, and it
// is put there only where that saves a page. Every check square has a free place,
// and no title is lost that would have one.
func TestSmallPiecesBesideLarge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { checkBeside(t, someSet(t)) })
	assert.Positive(t, checkBeside(t, mixed()), "nothing is put beside a large piece")
}

// checkBeside checks how the pieces of a set share pages, and returns how many are put
// beside large ones.
func checkBeside(t require.TestingT, set Set) int {
	paper := papers()[0]
	laid := arrange(set, paper)
	require.True(t, laid.exact)
	again := arrange(set, paper)
	pages := alone(set, paper)
	require.LessOrEqual(t, laid.pages(), pages)
	beside, names := 0, map[string]int{}
	for i := range laid.sheets {
		s := &laid.sheets[i]
		require.Equal(t, s.names(), again.sheets[i].names(), "it is the same every time")
		for k, p := range s.pieces {
			names[p.name]++
			require.Equal(t, p.bounds, again.sheets[i].pieces[k].bounds, "it is the same every time")
		}
		if len(s.cells) == 1 {
			continue
		}
		checkShared(t, *s)
		beside += len(s.pieces) - 1
		s.findJoins(1)
		s.paper = paper
		s.letter(set.Unit)
		if beside > 0 {
			checkSquaresFree(t, s, paper, squareSize(set.Unit))
		}
	}
	require.Len(t, names, len(set.Pieces), "all pieces are there")
	for name, n := range names {
		require.Equal(t, 1, n, name)
	}
	if beside > 0 {
		require.Less(t, laid.pages(), pages, "pieces are scattered for nothing")
	} else {
		require.Equal(t, pages, laid.pages())
	}
	return beside
}

// checkSquaresFree checks that no check square of a shared page lies on a line.
func checkSquaresFree(t require.TestingT, s *sheet, paper Paper, side float64) {
	places := squares{side: side, paper: paper}
	for i, c := range s.cells {
		window := s.grid.windowOf(c)
		if !slices.ContainsFunc(s.pieces[1:], func(p piece) bool { return window.Holds(p.bounds.Centre()) }) {
			continue
		}
		room := places.roomAt(s, c, s.squares[i])
		require.Zero(t, s.field.crossings(room, 1), "the check square of %v lies on a line", c)
	}
}

func TestSharing(t *testing.T) {
	paper := papers()[0] // of letter paper the window is 195.6 by 249.1 mm
	// A piece that leaves 84 mm free over it, and no room for a square inside.
	full := ruled("f", "Full", 185, 400)
	for y := 8.0; y < 400; y += 8 {
		full.Marks = append(full.Marks, edge(marking.Stitch, "", plane.Point{Y: y}, plane.Point{X: 185, Y: y}))
	}
	form := sampleSheet()
	for _, c := range []struct {
		name   string
		pieces []marking.Marking
		want   [][]string
		pages  int
	}{
		{"a pocket beside a skirt", []marking.Marking{rectangle("s", "Skirt", 250, 400), rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt", "Pocket"}}, 4},
		{"a pocket that finds no room", []marking.Marking{rectangle("s", "Skirt", 370, 470), rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt"}, {"Pocket"}}, 5},
		{"a pocket that saves nothing, since the yoke finds no room", []marking.Marking{rectangle("s", "Skirt", 250, 400), rectangle("y", "Yoke", 185, 150), rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt"}, {"Yoke", "Pocket"}}, 5},
		{"a pocket that the yoke leaves no room", []marking.Marking{rectangle("s", "Skirt", 250, 400), rectangle("y", "Yoke", 185, 235), rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt", "Pocket"}, {"Yoke"}}, 5},
		{"a band that leaves the check square a place", []marking.Marking{full, rectangle("b", "Band", 120, 60)},
			[][]string{{"Full", "Band"}}, 2},
		{"a band that would leave it none", []marking.Marking{full, rectangle("b", "Band", 185, 60)},
			[][]string{{"Full"}, {"Band"}}, 3},
		{"no page with a form is shared", []marking.Marking{form, rectangle("p", "Pocket", 20, 20)},
			[][]string{{"Pocket"}}, 1},
		{"one with a form beside a skirt is not shared either", []marking.Marking{rectangle("s", "Skirt", 370, 470), form, rectangle("p", "Pocket", 60, 70)},
			[][]string{{"Skirt"}, {"Pocket"}}, 5},
	} {
		laid := arrange(Set{Pieces: c.pieces}, paper)
		var got [][]string
		for i := range laid.sheets {
			got = append(got, laid.sheets[i].names())
		}
		assert.Equal(t, c.want, got, c.name)
		assert.Equal(t, c.pages, laid.pages(), c.name)
	}
}

// A free box lies in free bins only, and each free bin in one of them.
func TestLargestFreeBoxes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := newBins(plane.Box{Max: plane.Point{X: 30, Y: 24}})
		for i := range b.taken {
			b.taken[i] = rapid.IntRange(0, 3).Draw(t, "taken") == 0
		}
		all := b.largest()
		for row := b.around; row < b.grid.rows-b.around; row++ {
			for column := b.around; column < b.grid.columns-b.around; column++ {
				in := slices.ContainsFunc(all, func(o plane.Box) bool { return o.Holds(b.middle(column, row)) })
				require.Equal(t, !b.taken[row*b.grid.columns+column], in, "column %d, row %d", column, row)
			}
		}
		for i, o := range all {
			for k, p := range all {
				require.False(t, i != k && o.Grown(rounding).Holds(p.Min) && o.Grown(rounding).Holds(p.Max), "%v holds %v", o, p)
			}
		}
	})
}

// mixed is 50 pieces: some larger than a page, the others of all sizes that fit
// one.
func mixed() Set {
	r := rand.New(rand.NewPCG(7, 7))
	s := Set{Title: "Wardrobe", Unit: marking.Centimetre}
	for i := range 50 {
		key := fmt.Sprint(i)
		switch {
		case i%5 == 0:
			top := 100 + 200*r.Float64()
			s.Pieces = append(s.Pieces, flared(key, top, top+200*r.Float64(), 300+300*r.Float64()))
		case i%5 == 1:
			s.Pieces = append(s.Pieces, wave(key, 60+100*r.Float64(), 60+120*r.Float64(), 2000))
		default:
			s.Pieces = append(s.Pieces, rectangle(key, "Piece "+key, 20+120*r.Float64(), 20+100*r.Float64(), "cut 2"))
		}
	}
	return s
}

func BenchmarkArrangeMixed50(b *testing.B) {
	set := mixed()
	pages := 0
	for b.Loop() {
		laid := arrange(set, papers()[0])
		pages = laid.pages()
	}
	before := alone(set, papers()[0])
	b.ReportMetric(float64(pages), "pages")
	b.ReportMetric(float64(before-pages), "shared")
}

// All that is true of any set is true of one whose large pieces have small ones
// beside them: a panel, and a tie with its title beside it.
func TestSharedPages(t *testing.T) {
	wardrobe := mixed()
	tie := Set{Title: "Ties", Unit: marking.Inch, Pieces: []marking.Marking{
		strip("tie", "Tie", 30*inch, inch, 0.375*inch, "stitch line, 3/8 in", longNotes()...),
		flared("p", 220, 300, 420), wave("w", 70, 60, 400), tiny("t", 90), tuckRuler("cut 2"), rectangle("c", "Collar", 120, 50, "cut 2"),
	}}
	for name, set := range map[string]Set{"wardrobe": wardrobe, "ties": tie} {
		for _, paper := range []string{"letter", "a4"} {
			t.Run(name+" on "+paper, func(t *testing.T) {
				t.Parallel()
				d, s := drawn(t, set, paper)
				assert.True(t, slices.ContainsFunc(s.Sheets, func(s SheetSummary) bool { return s.Last > s.First && len(s.Pieces) > 1 }), "no page is shared")
				checkAll(t, set, d, s)
			})
		}
	}
}
