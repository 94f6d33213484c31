package board

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// planned is a set on paper.
func planned(t testing.TB, set arrange.Set, on string) *pdfout.Book {
	b, err := pdfout.Plan(set, seen.Paper(t, on))
	require.NoError(t, err)
	return b
}

// looked are the sets that are looked at here: of every kind, and every example.
func looked(t testing.TB) map[string]arrange.Set {
	all := sets.All()
	for name, set := range sets.Examples(t, "../../examples") {
		all[name] = set
	}
	return all
}

func TestBoards(t *testing.T) {
	t.Parallel()
	for name, set := range looked(t) {
		t.Run(name, func(t *testing.T) {
			book := planned(t, set, "letter")
			checkPages(t, book)
			checkStandsInAPage(t, "sheets", Sheets(book), strings.HasSuffix(name, ".toml"))
			checkStandsInAPage(t, "pages", Pages(book), strings.HasSuffix(name, ".toml"))
		})
	}
}

// checkPages: the pages on their board are those of the PDF, in its order: what is drawn on each
// is what a canvas takes down that the PDF is drawn on as well.
func checkPages(t *testing.T, book *pdfout.Book) {
	pages := Pages(book)
	require.Len(t, pages.Parts, len(book.Pages()))
	for i, part := range pages.Parts {
		var drawn seen.Canvas
		book.DrawPage(&drawn, i+1)
		want := drawn.Pages()[0]
		assert.Equal(t, i+1, part.Number)
		assert.True(t, strings.HasPrefix(part.Name, fmt.Sprintf("%d  ", i+1)), part.Name)
		assert.InDelta(t, want.Width, part.Box.Width(), 1e-6)
		checkSamePage(t, want, seen.ReadPicture(t, part.Elements(), part.Box.Max.Sub(part.Box.Min)))
	}
}

// onPaper are a page's shapes by layer, way of painting and colour: how many there are, how long
// they are together, and their texts.
type onPaper struct {
	parts, points int
	long          float64
}

// checkSamePage holds a picture of a page against what was drawn: text by text, where each
// begins, and the shapes of each layer and kind all together. The paper itself is white.
func checkSamePage(t *testing.T, want seen.Page, got seen.Picture) {
	t.Helper()
	kinds := func(p seen.Page) map[string]onPaper {
		all := map[string]onPaper{}
		for _, q := range p.Paths {
			colour := q.Stroke
			if q.Painted != seen.Stroked {
				colour = q.Fill
			}
			key := fmt.Sprintf("%s %d %.2f %.2f %.2f", q.Layer, q.Painted, colour[0], colour[1], colour[2])
			one := all[key]
			for _, box := range q.Boxes {
				q.Parts = append(q.Parts, box.Outline())
			}
			for _, part := range q.Parts {
				one.parts++
				one.points += len(part)
				one.long += part.Length()
				if q.Painted != seen.Stroked && !part.Closed() {
					one.long += part[0].Distance(part[len(part)-1]) // filling closes it
				}
			}
			all[key] = one
		}
		return all
	}
	got.Paths = got.Paths[1:]
	drawn, found := kinds(want), kinds(got.Page)
	require.Len(t, found, len(drawn))
	for key, one := range drawn {
		assert.Equal(t, one.parts, found[key].parts, key)
		assert.InDelta(t, one.long, found[key].long, 0.02*float64(one.points), key)
	}
	require.Len(t, got.Texts, len(want.Texts))
	for i, said := range want.Texts {
		read := got.Texts[i]
		assert.Equal(t, unbuilt(said.Text), unbuilt(read.Text))
		assert.LessOrEqual(t, said.At.Distance(read.At), 0.001, said.Text)
		assert.LessOrEqual(t, said.U.Distance(read.U), 1e-5, said.Text)
		assert.Equal(t, [2]any{said.Bold, said.Layer}, [2]any{read.Bold, read.Layer}, said.Text)
		assert.InDelta(t, said.Size, read.Size, 0.005, said.Text)
	}
}

// unbuilt is a text with its fractions as they are typed, and without spaces.
func unbuilt(text string) string {
	return seen.Squeezed(strings.NewReplacer(
		"½", "1/2", "¼", "1/4", "¾", "3/4", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8", "⁄", "/",
		"⁰", "0", "¹", "1", "²", "2", "³", "3", "⁴", "4", "⁵", "5", "⁶", "6", "⁷", "7", "⁸", "8", "⁹", "9",
		"₀", "0", "₁", "1", "₂", "2", "₃", "3", "₄", "4", "₅", "5", "₆", "6", "₇", "7", "₈", "8", "₉", "9",
	).Replace(text))
}

// Sheets stand in the order of their pages, under their names and the numbers of these.
func TestSheetsAreNamed(t *testing.T) {
	sheets := Sheets(planned(t, sets.SampleFirst(), "letter"))
	var names []string
	for _, p := range sheets.Parts {
		names = append(names, p.Name)
	}
	assert.Equal(t, []string{"Tuck sample, page 3", "Skirt panel, pages 4 to 11", "Front, pages 12 to 13"}, names)
	assert.Equal(t, []string{"skirt"}, sheets.Parts[1].Keys)
}

// A sheet of several pages has a grid with the number of each, under its lines; one of one page
// has none. Pages that are not printed are blank.
func TestGridOfASheet(t *testing.T) {
	book := planned(t, sets.All()["lines far from others"], "letter")
	plan := book.Sheets()[0]
	require.NotEmpty(t, plan.Blank)
	elements := Sheets(book).Parts[0].Elements()
	grid := elements[strings.Index(elements, `<g class="grid">`):strings.Index(elements, `<g fill="none"`)]
	for _, p := range plan.Pages {
		assert.Equal(t, 1, strings.Count(grid, fmt.Sprintf(">%d</text>", p.Number)))
	}
	assert.Less(t, strings.Index(elements, `class="grid"`), strings.Index(elements, "data-role"), "under the lines")
	read := seen.ReadPicture(t, elements, plan.Size)
	blank := read.Paths[0]
	require.Len(t, blank.Parts, len(plan.Blank))
	for i, b := range plan.Blank {
		assert.InDelta(t, b.Min.X, blank.Parts[i].Bounds().Min.X, 0.01)
		assert.InDelta(t, b.Max.Y, blank.Parts[i].Bounds().Max.Y, 0.01)
	}
	papers := read.Paths[1].Parts
	require.Len(t, papers, len(plan.Pages), "the paper")
	part := Sheets(book).Parts[0].Box
	for i, p := range plan.Pages {
		assert.GreaterOrEqual(t, p.Window.Min.X-papers[i].Bounds().Min.X, 5.0, "paper lies beside what is printed")
		assert.GreaterOrEqual(t, papers[i].Bounds().Max.Y-p.Window.Max.Y, 5.0)
		assert.LessOrEqual(t, papers[i].Bounds().Width(), part.Width()+0.01, "on the part")
	}
	assert.NotContains(t, Sheets(planned(t, sets.Many(1), "letter")).Parts[0].Elements(), "grid")
}

// checkStandsInAPage: a board is well-formed elements without any style of its own, in which no
// id is there twice; it is small, since it is sent at each save, above all that of an example.
func checkStandsInAPage(t *testing.T, what string, b Board, example bool) {
	text := string(b.Elements())
	read := seen.ReadPicture(t, text, b.Size)
	assert.NotContains(t, read.Names, "style")
	ids := slices.Clone(read.IDs)
	slices.Sort(ids)
	assert.Len(t, slices.Compact(ids), len(read.IDs), "ids of %s", what)
	points := 0
	for _, p := range read.Paths {
		for _, part := range p.Parts {
			points += len(part)
		}
	}
	assert.Less(t, len(text), 1000*len(b.Parts)+130*len(read.Paths)+14*points+600*len(read.Texts), "bytes of %s", what)
	if example {
		assert.Less(t, len(text), map[string]int{"sheets": 120_000, "pages": 240_000}[what], "bytes of %s", what)
	}
}

// Parts may be drawn at the same time, and come out as if each were drawn alone.
func TestPartsAreDrawnAtTheSameTime(t *testing.T) {
	set := sets.All()["figures"]
	var alone []string
	for _, p := range Pages(planned(t, set, "letter")).Parts {
		alone = append(alone, p.Elements())
	}
	pages := Pages(planned(t, set, "letter")).Parts
	var all sync.WaitGroup
	for range 2 {
		for i, p := range pages {
			all.Add(1)
			go func() {
				defer all.Done()
				assert.Equal(t, alone[i], p.Elements())
			}()
		}
	}
	all.Wait()
}

// BenchmarkSheets writes all sheets of an example, which is done at each save.
func BenchmarkSheets(b *testing.B) {
	for name, set := range sets.Examples(b, "../../examples") {
		book := planned(b, set, "letter")
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				Sheets(book).Elements()
			}
		})
	}
}
