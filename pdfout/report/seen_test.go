package report

import (
	"math"
	"strings"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: the tests look at pages as they are drawn, without their headers.

// fineLine is how wide the lines over totals are, and the frames in pictures, in mm.
const fineLine = 0.18

// apart is what is free between two columns of a page, in mm.
const apart = 8.0

// columnsOf is how many columns of 80 mm and more a page has room for, and how wide each is,
// in mm.
func columnsOf(on paper.Paper) (count int, width float64) {
	room := on.UnderHeader().Width() + apart
	count = int(room / (80 + apart))
	return count, room/float64(count) - apart
}

// leastPapers are the smallest papers the pages in front fit on: upright, and lying.
func leastPapers(t require.TestingT) []paper.Paper {
	return []paper.Paper{seen.Paper(t, "199.634x269.634mm"), seen.Paper(t, "274.634x209.634mm")}
}

// reported lays a report on a paper, which must have room for it, and draws it.
func reported(t require.TestingT, r *mark.Report, name string) ([]seen.Page, paper.Paper) {
	on := seen.Paper(t, name)
	pages, err := Lay(r, on)
	require.NoError(t, err)
	checkRoom(t, pages, on)
	var c seen.Canvas
	for _, page := range pages {
		c.NewPage(on)
		page.Draw(&c)
	}
	checkPages(t, c.Pages())
	return c.Pages(), on
}

// checkPages: everything stays 10 mm and more from the edge of the paper, and no text
// overlaps another.
func checkPages(t require.TestingT, pages []seen.Page) {
	for i, p := range pages {
		may := p.Whole().Grown(2*seen.Written - 10)
		for k, r := range p.Texts {
			b := r.Box()
			assert.True(t, may.Holds(b.Min) && may.Holds(b.Max), "page %d: %q at %v", i+1, r.Text, b)
			for _, other := range p.Texts[k+1:] {
				// A box that only touches does no harm.
				assert.False(t, b.Grown(-0.05).Meets(other.Box()), "page %d: %q and %q", i+1, r.Text, other.Text)
			}
		}
		for _, q := range p.Paths {
			shown := plane.EmptyBox()
			for _, part := range q.Parts {
				shown = shown.Union(part.Bounds())
			}
			if q.Clip != p.Whole() {
				shown = q.Clip
			}
			assert.True(t, shown.Empty() || may.Holds(shown.Min) && may.Holds(shown.Max), "page %d: %v", i+1, shown)
		}
	}
}

// checkRoom: nothing reaches below the room that a page has.
func checkRoom(t require.TestingT, pages []Page, p paper.Paper) {
	for i, page := range pages {
		for _, b := range page {
			require.GreaterOrEqual(t, b.at.Y-b.Height, p.UnderHeader().Min.Y-seen.Written, "page %d of %v", i+1, p)
		}
	}
}

// said is all that stands on a page of figures, in its order, without spaces,
// without the signs in the bars of warnings.
func said(p seen.Page) string {
	var all []string
	for _, r := range p.Texts {
		if r.Text != "!" {
			all = append(all, r.Text)
		}
	}
	return seen.Squeezed(strings.Join(all, ""))
}

// rightEnd is where a text that reads across ends.
func rightEnd(r seen.Text) float64 { return r.Box().Max.X }

// only returns the one text of some pages that has these words, and its page.
func only(t require.TestingT, pages []seen.Page, text string) (seen.Text, int) {
	var found []seen.Text
	at := -1
	for i, p := range pages {
		for _, r := range p.Texts {
			if r.Text == text {
				found, at = append(found, r), i
			}
		}
	}
	require.Len(t, found, 1, "%q stands in one place", text)
	return found[0], at
}

// placedTexts are the texts of some pages by their first word, for tables in
// which that is enough to know one.
type placedTexts map[string][]placedText

type placedText struct {
	seen.Text
	page int
}

func placesOfTexts(pages []seen.Page) placedTexts {
	all := placedTexts{}
	for i, p := range pages {
		for _, r := range p.Texts {
			first, _, _ := strings.Cut(r.Text, " ")
			all[first] = append(all[first], placedText{r, i})
		}
	}
	return all
}

// only is the one text that begins with a word.
func (p placedTexts) only(t require.TestingT, word string) (seen.Text, int) {
	require.Len(t, p[word], 1, "%q stands in one place", word)
	return p[word][0].Text, p[word][0].page
}

// totalLines returns the lines over totals of a page.
func totalLines(p seen.Page) []plane.Path {
	var all []plane.Path
	for _, q := range p.Paths {
		if q.Painted == seen.Stroked && q.Stroke == ink.Black() && math.Abs(q.Width-fineLine) < 2*seen.Written && len(q.Dashes) == 0 {
			all = append(all, q.Parts...)
		}
	}
	return all
}
