package pdfout

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// blockOf returns the texts over the window of a page.
func blockOf(p seen.Page, on paper.Paper) []seen.Text {
	var all []seen.Text
	for _, r := range p.Texts {
		if r.Box().Centre().Y > on.Window().Max.Y {
			all = append(all, r)
		}
	}
	return all
}

// squareAt is where the check square of every page stands, worked out from the paper: its
// right side at the margin, its upper side 1/4 in from the edge, or as much further in as
// lets its lower left corner lie on whole dots: on 6 units.
func squareAt(on paper.Paper, unit length.Unit) plane.Box {
	const grid = 6 * 25.4 / 72
	down := func(v float64) float64 { return math.Floor(v/grid+1e-6) * grid }
	side := map[length.Unit]float64{length.Inch: 25.4, length.Centimetre: 25, length.Millimetre: 25}[unit]
	right := math.Min(on.Width-on.Margin, on.Margin+260)
	low := plane.Point{X: down(right - side), Y: down(on.Height-math.Min(on.Margin, 6.35)) - 25.4}
	return plane.Box{Min: low, Max: low.Add(plane.Point{X: side, Y: side})}
}

// checkBlocks: over the window of every page of a sheet stands its title block, with nothing
// smaller than 9 pt in it and no text on another; the check square is where it always is,
// and no line of a piece comes near it.
func checkBlocks(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages {
		if i < s.Front+s.Figures {
			continue
		}
		on := p.On(s.Paper)
		texts := blockOf(p, on)
		frames := p.Frames()
		require.Len(t, frames, 1, "page %d", i+1)
		if s.Paper.Printed.IsTrue() {
			want := squareAt(on, set.Unit)
			assert.InDelta(t, 0, want.Min.Distance(frames[0].Min)+want.Max.Distance(frames[0].Max), 8*seen.Written, "page %d: the square", i+1)
		}
		for _, q := range p.Paths {
			if q.Layer != "" {
				assert.Less(t, q.Clip.Max.Y, frames[0].Min.Y-0.9, "page %d: a %s may reach the square", i+1, q.Layer)
			}
		}
		for k, a := range texts {
			box := a.Box()
			assert.GreaterOrEqual(t, a.Size, 9.0, "page %d: %q", i+1, a.Text)
			in := frames[0].Grown(-0.3)
			assert.True(t, in.Holds(box.Min) && in.Holds(box.Max) || !box.Meets(frames[0]), "page %d: %q on the square's frame", i+1, a.Text)
			assert.GreaterOrEqual(t, box.Min.X, math.Min(s.Paper.Margin, 10)-2*seen.Written, "page %d: %q", i+1, a.Text)
			assert.LessOrEqual(t, box.Max.X, frames[0].Max.X, "page %d: %q", i+1, a.Text)
			for _, b := range texts[k+1:] {
				assert.False(t, box.Grown(-0.05).Meets(b.Box()), "page %d: %q and %q", i+1, a.Text, b.Text)
			}
		}
	}
}

// blockWords is all that the title block of a page says, in one text.
func blockWords(p seen.Page, on paper.Paper) string {
	var words []string
	for _, r := range blockOf(p, on) {
		words = append(words, r.Text)
	}
	return strings.Join(words, " ")
}

// What the block says of one piece, of a few, and of many.
func TestTitleBlock(t *testing.T) {
	many := func(n int, name string) []mark.Marking {
		var all []mark.Marking
		for range n {
			m := sample.Rectangle(string(rune('a'+len(all))), name, 30, 20)
			m.Cut, m.Side = "cut 2", mark.RightSideUp
			all = append(all, m)
		}
		return all
	}
	mirrored := many(2, "Cuff")
	mirrored[1].Side = mark.WrongSideUp
	for _, c := range []struct {
		name   string
		pieces []mark.Marking
		says   []string
		not    []string
	}{
		{"one piece", many(1, "Cuff"), []string{"Cuff", "part 1 of 1", "cut 2", "right side up", "Pinafore", "size 3", "1 : 1, print at 100 %", "page 2 of 2"}, []string{"row", "column"}},
		{"two pieces", many(2, "Cuff"), []string{"parts 1 to 2 of 2", "1  Cuff, cut 2", "2  Cuff, cut 2", "right side up"}, nil},
		{"two that lie differently", mirrored, []string{"each piece says which side is up"}, []string{"right side up"}},
		{"six pieces", many(6, "Cuff"), []string{"parts 1 to 6 of 6", "6  Cuff, cut 2"}, nil},
		{"names too long for their columns", many(3, "Cuff that is turned up over the wrist"), []string{"parts 1 to 3 of 3", "1 Cuff that is turned up over the wrist, 2 Cuff"}, []string{"cut 2"}},
		{"more than can be named", many(8, "Cuff that is turned up over the wrist"), []string{"parts 1 to 8 of 8", "Each has its name in it, or beside it."}, []string{"Cuff that is turned up over the wrist, 2"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			set := arrange.Set{Title: "Pinafore", Size: "3", Pieces: mark.Numbered(c.pieces)}
			d, s := drawn(t, set, "letter")
			require.Len(t, d.Pages, s.Front+1)
			words := blockWords(d.Pages[s.Front], s.Paper)
			for _, want := range c.says {
				assert.Contains(t, words, want)
			}
			for _, not := range c.not {
				assert.NotContains(t, words, not)
			}
			checkBlocks(t, set, d, s)
		})
	}
}

// A name longer than the block goes on in a second line, and where it is longer than that, a
// sign says that it is cut short. So with the title of the garment; its size is never lost.
func TestLongNamesInTheBlock(t *testing.T) {
	long := strings.Repeat("a very long name that goes on, ", 12)
	set := arrange.Set{Title: "T " + long, Size: "4 years", Pieces: []mark.Marking{sample.Rectangle("p", "P "+long, 60, 60)}}
	for _, name := range []string{"letter", "a4", "either"} {
		d, s := drawn(t, set, name)
		words := blockWords(d.Pages[len(d.Pages)-1], s.Paper)
		assert.Contains(t, words, "P a very long name that goes on, a very long name", name)
		assert.Contains(t, words, "T a very long name", name)
		assert.Contains(t, words, "size 4 years", name)
		assert.Equal(t, 2, strings.Count(words, "…"), name)
		checkBlocks(t, set, d, s)
	}
}

// A title too long for one line of a heading is smaller, and loses nothing of it.
func TestTitleOfAPageInFront(t *testing.T) {
	const long = "How to work: Ten small pieces for a sailor suit of heavy linen, size 3 years"
	for title, want := range map[string][]string{
		"How to work: Pinafore": {"How to work: Pinafore"},
		long:                    {"How to work: Ten small pieces for a sailor suit of heavy linen,", "size 3 years"},
	} {
		var words []string
		for _, l := range frontName(title, 100).Labels {
			words = append(words, l.Text)
		}
		assert.Equal(t, want, words)
	}
}

// Who has a page read aloud, or copies its text, hears first what it is: its title, or the names
// on it. The number of a step comes before its words, and what is to be measured last.
func TestPagesAreReadInOrder(t *testing.T) {
	set := sets.SampleFirst()
	d, summary := drawn(t, set, "letter")
	first := d.Pages[0].Words()
	assert.Equal(t, set.Title, first[0])
	rule := slices.IndexFunc(first, func(words string) bool { return strings.HasPrefix(words, "This rule is ") })
	assert.Greater(t, rule, slices.Index(first, "Measure before you mark any cloth"))
	var names []string
	for _, piece := range set.Pieces {
		names = append(names, piece.Name)
	}
	for _, p := range d.Pages[inFront(summary):] {
		assert.Contains(t, names, p.Words()[0])
	}
	form := d.Pages[summary.Forms[0].Page-1].Words()
	for i, step := range set.Pieces[len(set.Pieces)-1].Steps {
		number := slices.Index(form, fmt.Sprintf("%d.", i+1))
		require.GreaterOrEqual(t, number, 0)
		assert.True(t, strings.HasPrefix(step, form[number+1]), "behind %q stands %q, of %q", form[number], form[number+1], step)
	}
}

// However many pieces share a page, their names and what stands over them keep clear of the lines
// of the cell that they are in (16.2 mm: two lines of a heading and one of text).
func TestSharedNamesHaveRoom(t *testing.T) {
	b := &Book{}
	for n := 2; n <= 30; n++ {
		var pieces []arrange.Piece
		for i := range n {
			pieces = append(pieces, arrange.Piece{Name: fmt.Sprintf("Back armhole: gauge %d of 2", i), Part: i + 1})
		}
		for _, width := range []float64{60, 90, 125, 180} {
			words := b.sharedNames(pieces, width)
			assert.Less(t, words.Height, 16.2, "%d names in %g mm", n, width)
			for _, l := range words.Labels {
				assert.GreaterOrEqual(t, words.Height+l.At.Y, l.Style.Down(), "%q", l.Text)
			}
		}
	}
}

// More names than one column has lines for stand in two of about one height.
func TestColumnsOfNames(t *testing.T) {
	for count, lines := range map[int]int{1: 1, 3: 3, 4: 2, 5: 3, 6: 3} {
		var pieces []arrange.Piece
		for i := range count {
			pieces = append(pieces, arrange.NewPiece(sample.Rectangle(string(rune('a'+i)), "Cuff", 30, 20)))
		}
		assert.InDelta(t, float64(lines)*ink.Text().Step(), namesOf(pieces, 150).Height, 1e-9, "%d names", count)
	}
}
