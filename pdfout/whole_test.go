package pdfout

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
	"tuckmark/pdfout/text"
)

// wholePapers are the papers that have everything whole.
func wholePapers(t require.TestingT) map[string]paper.Paper {
	all := map[string]paper.Paper{}
	for _, name := range []string{"single", "roll:36in"} {
		all[name] = seen.Paper(t, name)
	}
	small := seen.Paper(t, "roll:610mm")
	small.Printed = paper.Scale{Across: 0.97, Down: 0.985}
	all["a roll printed too small"] = small
	large := seen.Paper(t, "single")
	large.Printed = paper.Scale{Across: 1.02, Down: 1.01}
	all["a page printed too large"] = large
	return all
}

// panelFrames are the frames of the panels of a page: rectangles drawn with the
// finest pen. The cells of title blocks are smaller.
func panelFrames(p seen.Page) []plane.Box {
	const least = 100.0
	var all []plane.Box
	for _, q := range p.Paths {
		if q.Painted == seen.Stroked && q.Layer == "" && len(q.Boxes) == 1 && len(q.Parts) == 0 && q.Boxes[0].Height() > least {
			all = append(all, q.Boxes[0])
		}
	}
	return all
}

// On one page, or on a roll, every piece is there, true and whole, beside all else
// and not over it.
func TestWhole(t *testing.T) {
	all := sets.Examples(t, "../examples")
	for _, name := range []string{"skirt and bodice", "fifty small pieces", "a sample sewn first", "nothing but a sample", "figures", "long titles"} {
		all[name] = sets.All()[name]
	}
	for name, set := range all {
		for what, paper := range wholePapers(t) {
			t.Run(name+" on "+what, func(t *testing.T) {
				t.Parallel()
				d, s := drawnOn(t, set, paper)
				checkWhole(t, set, d, s)
			})
		}
	}
}

func checkWhole(t *testing.T, set arrange.Set, d seen.Document, s Summary) {
	require.Len(t, d.Pages, s.Pages)
	require.Len(t, d.Pages, 1)
	for _, form := range s.Forms {
		assert.Equal(t, 1, form.Page, "the form of %s", form.Piece)
	}
	page := d.Pages[0]
	size := plane.Point{X: page.Width, Y: page.Height}
	may := plane.Box{Max: size}.Grown(-10)
	panels := panelFrames(page)
	front := len(panels) - s.Figures - len(s.Forms)
	require.Contains(t, []int{1, 2, 3}, front, "a frame round each panel")
	for i, a := range panels {
		assert.True(t, may.Grown(0.01).Holds(a.Min) && may.Grown(0.01).Holds(a.Max), "panel %d at %v", i, a)
		for _, b := range panels[i+1:] {
			assert.False(t, a.Meets(b), "panels %v and %v", a, b)
		}
	}
	checkOneSquareBeside(t, page, panels, len(s.Forms))
	for _, r := range page.Texts {
		for i, panel := range panels {
			box := r.Box()
			assert.True(t, panel.Holds(box.Min) && panel.Holds(box.Max) || !panel.Meets(box), "%q on the frame of panel %d", r.Text, i)
		}
	}
	for _, q := range page.Paths {
		for i, panel := range panels {
			if q.Painted == seen.Stroked && q.Layer == "" && len(q.Boxes) == 1 && q.Boxes[0].Height() < 30 {
				cell := q.Boxes[0]
				assert.True(t, panel.Holds(cell.Min) && panel.Holds(cell.Max) || !panel.Meets(cell), "a cell of a title block on the frame of panel %d", i)
			}
		}
	}
	words := strings.Join(page.Words(), "\n")
	assert.NotRegexp(t, `row [0-9]`, words, "nothing is joined")
	assert.NotContains(t, words, "No line falls on this page")
	assert.NotContains(t, words, "page 1 of 1", "there is no other")

	boxes := boxesOfPieces(t, page, set)
	forms := map[string]bool{}
	for _, m := range set.Pieces {
		forms[m.Key] = m.Form != nil
	}
	for a, box := range boxes {
		assert.True(t, may.Holds(box.Min) && may.Holds(box.Max), "%s at %v", a, box)
		for b, other := range boxes {
			assert.True(t, a == b || !box.Meets(other), "%s and %s", a, b)
		}
		for i, panel := range panels {
			if own := forms[a] && i >= front+s.Figures; !own {
				assert.False(t, box.Meets(panel), "%s and panel %d", a, i)
			}
		}
	}
}

// checkOneSquareBeside checks that one check square lies beside the panels, and that
// no line of a piece runs over it. A form has one in its panel.
func checkOneSquareBeside(t *testing.T, p seen.Page, panels []plane.Box, forms int) {
	frames := p.Frames()
	require.Len(t, frames, 3+forms, "the two of the large square, one of the page, one in each form")
	free := 0
	for _, f := range frames {
		if slices.ContainsFunc(panels, func(b plane.Box) bool { return b.Holds(f.Centre()) }) {
			continue
		}
		free++
		for _, q := range p.Paths {
			for _, part := range q.Parts {
				for n := 1; n < len(part) && q.Layer != ""; n++ {
					assert.False(t, text.Upright(f).MeetsSegment(part[n-1], part[n]), "a %s runs over the check square", q.Layer)
				}
			}
		}
	}
	assert.Equal(t, 1, free, "a check square beside the panels")
}

// printed is a line as the page has it.
type printed struct {
	path plane.Path
	used bool // it is found to be one of a piece
}

// boxesOfPieces checks that every line of every piece is on the page once, moved and
// perhaps turned, and no other. It returns the box round each piece, by its key.
func boxesOfPieces(t *testing.T, p seen.Page, set arrange.Set) map[string]plane.Box {
	byRole := map[string][]*printed{}
	for _, q := range p.Paths {
		for _, part := range q.Parts {
			if q.Layer != "" && q.Painted == seen.Stroked {
				byRole[q.Layer] = append(byRole[q.Layer], &printed{path: part})
			}
		}
	}
	boxes := map[string]plane.Box{}
	for _, m := range set.Pieces {
		box, found := boxOnPage(m, byRole)
		assert.True(t, found, "%s is not whole on the page", m.Name)
		boxes[m.Key] = box
	}
	for layer, all := range byRole {
		for _, p := range all {
			assert.True(t, p.used, "a %s from %v that is of no piece", layer, p.path[0])
		}
	}
	return boxes
}

// boxOnPage finds the lines of a marking among those that are not used yet, and uses
// them.
func boxOnPage(m mark.Marking, byRole map[string][]*printed) (plane.Box, bool) {
	for _, turn := range []seen.Turn{seen.AsGiven, seen.Quarter} {
		first := seen.Moved(m.Marks[0].Path, turn, plane.Point{})
		for _, start := range byRole[m.Marks[0].Role.String()] {
			if start.used {
				continue
			}
			step := start.path[0].Sub(first[0])
			box := plane.EmptyBox()
			var taken []*printed
			lines := 0
			for _, mark := range m.Marks {
				for _, line := range ink.LinesOf(mark) {
					lines++
					want := seen.Moved(line, turn, step)
					all := byRole[mark.Role.String()]
					if i := slices.IndexFunc(all, func(p *printed) bool { return !p.used && samePath(p.path, want) }); i >= 0 {
						all[i].used = true
						taken = append(taken, all[i])
						box = box.Union(all[i].path.Bounds())
					}
				}
			}
			if len(taken) == lines {
				return box, true
			}
			for _, p := range taken {
				p.used = false
			}
		}
	}
	return plane.Box{}, false
}

// samePath reports whether a printed path is the one meant.
func samePath(a, b plane.Path) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Distance(b[i]) > seen.OffLine {
			return false
		}
	}
	return true
}

func TestWholePages(t *testing.T) {
	t.Parallel()
	// A roll is as wide as it is asked for, whatever lies on it.
	d, s := drawnOn(t, sets.Large(), seen.Paper(t, "roll:36in"))
	assert.InDelta(t, 36*25.4, d.Pages[0].Width, 0.004)
	assert.Equal(t, fmt.Sprintf("1 page, 36 in wide and %s high, with the check square and the pieces", length.Inch.OnRuler(s.Paper.Height)), s.String())
	// A single page is no larger than what is on it needs.
	d, s = drawnOn(t, sets.Many(1), seen.Paper(t, "single"))
	assert.Less(t, d.Pages[0].Width, 16*25.4)
	assert.Less(t, d.Pages[0].Height, 18*25.4, "14 in of what is in front, the strip, and the piece")
	assert.InDelta(t, d.Pages[0].Width, s.Paper.Width, 0.01)

	// A roll longer than a page can be goes on, on a page with a square of its own.
	var strips []mark.Marking
	for i := range 3 {
		strips = append(strips, sample.Rectangle(fmt.Sprint(i), fmt.Sprint("Strip ", i), 500, 4000))
	}
	d, s = drawnOn(t, arrange.Set{Pieces: strips}, seen.Paper(t, "roll:24in"))
	require.Len(t, d.Pages, 3)
	for i, p := range d.Pages {
		assert.LessOrEqual(t, p.Height, 200*25.4)
		assert.Contains(t, p.Words(), fmt.Sprintf("page %d of 3", i+1))
		assert.NotEmpty(t, p.Frames())
	}
	assert.Equal(t, "3 pages, 24 in wide, with the check square and the pieces", s.String())

	// What is too wide for a roll is turned.
	d, _ = drawnOn(t, arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Panel", 900, 300)}}, seen.Paper(t, "roll:24in"))
	box := plane.EmptyBox()
	for _, q := range d.Pages[0].Drawn(mark.Cut.String()) {
		for _, part := range q.Parts {
			box = box.Union(part.Bounds())
		}
	}
	assert.InDelta(t, 300, box.Width(), 0.01)
	assert.InDelta(t, 900, box.Height(), 0.01)
}

func TestWholePagesThatCannotBe(t *testing.T) {
	const longer = "\nhint: choose a wider roll, or pages that are joined, such as --paper letter; not every program shows a page that is longer than 200 in"
	for _, c := range []struct {
		name, paper string
		set         arrange.Set
		want        string
	}{
		{"too wide both ways", "roll:24in", arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Cape", 900, 900)}},
			"piece \"Cape\", 35 7/16 in by 35 7/16 in, does not fit on a roll of paper 24 in wide" + longer},
		{"longer than a page can be", "single", arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Curtain", 300, 5100)}},
			"piece \"Curtain\", 11 13/16 in by 200 13/16 in, does not fit on one single page" + longer},
		{"no room for the title block over it", "roll:36in", arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Curtain", 34*25.4, 198.5*25.4)}},
			"piece \"Curtain\", 34 in by 198 1/2 in, does not fit on a roll of paper 36 in wide" + longer},
		{"too much for one page", "single", arrange.Set{Pieces: []mark.Marking{sample.Rectangle("a", "A", 4000, 3000), sample.Rectangle("b", "B", 4000, 3000), sample.Rectangle("c", "C", 4000, 3000)}},
			"the pieces need a page of more than 200 in on a side, and not every program shows one that is longer\nhint: print some of the pieces at a time, with --pieces, or choose a roll or pages"},
		{"too much as they lie", "single", arrange.Set{Pieces: []mark.Marking{sample.Rectangle("a", "A", 4000, 3000), sample.Rectangle("b", "B", 4000, 3000)}},
			"the pieces need a page of more than 200 in on a side, and not every program shows one that is longer\nhint: print some of the pieces at a time, with --pieces, or choose a roll or pages"},
		{"too much, and one too long", "single", arrange.Set{Pieces: []mark.Marking{sample.Rectangle("a", "A", 5000, 5000), sample.Rectangle("b", "B", 5000, 5000), sample.Rectangle("p", "Curtain", 300, 5100)}},
			"piece \"Curtain\", 11 13/16 in by 200 13/16 in, does not fit on one single page" + longer},
		{"nothing", "single", arrange.Set{}, "there is no line to draw\nhint: give the file at least one piece with an outline"},
		{"only the first page", "single", sets.Many(1), "on one single page there is no first page to be printed by itself\nhint: its check square is on the page with the pieces"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out bytes.Buffer
			draw := Draw
			if c.name == "only the first page" {
				draw = DrawFirst
			}
			_, err := draw(&out, c.set, seen.Paper(t, c.paper))
			require.EqualError(t, err, c.want)
			assert.IsType(t, &fault.Fault{}, err)
			assert.Zero(t, out.Len())
		})
	}
}

// The first page alone is the first page of all.
func TestFirstPageOnly(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"skirt and bodice", "nothing but a sample", "as large as a house", "figures", "a picture across"} {
		set := sets.All()[name]
		p := seen.Paper(t, "letter")
		whole, s := drawnOn(t, set, p)
		set.Cautions = sample.Cautions()
		var out bytes.Buffer
		summary, err := DrawFirst(&out, set, p)
		require.NoError(t, err)
		first := seen.Read(t, out.Bytes(), paper.Scale{})
		require.Len(t, first.Pages, 1, name)
		assert.Equal(t, whole.Pages[0], first.Pages[0], name)
		assert.Equal(t, s, summary, name)
	}
}
