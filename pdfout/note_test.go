package pdfout

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// cautioned is a set of one large piece with so many steps of work and cautions of about so many
// words, each of which begins and ends with its letter.
func cautioned(steps, cautions, words int) arrange.Set {
	set := arrange.Set{Title: "Wardrobe", Pieces: []mark.Marking{sample.Rectangle("skirt", "Skirt", 400, 300)}}
	for i := range steps {
		set.Work = append(set.Work, mark.Task{Do: fmt.Sprintf("Do no. %d", i), Keys: []string{"skirt"}})
	}
	for i := range cautions {
		set.Cautions = append(set.Cautions, letterOf(i)+"begins "+strings.Repeat("heed ", words)+letterOf(i)+"ends")
	}
	return set
}

// frontOf returns the pages in front of a set, as they are drawn on letter paper.
func frontOf(t *testing.T, set arrange.Set) []seen.Page {
	t.Helper()
	var out bytes.Buffer
	s, err := Draw(&out, set, seen.Paper(t, "letter"))
	require.NoError(t, err)
	return seen.Read(t, out.Bytes(), paper.Scale{}).Pages[:s.Front]
}

func letterOf(i int) string { return string(rune('A' + i)) }

// A caution is never parted between two pages or columns, and those that go on on another page
// stand there under their heading.
func TestCautionsStayWhole(t *testing.T) {
	goneOn := 0
	for steps := 2; steps < 40; steps += 3 {
		for _, words := range []int{4, 20, 60} {
			set := cautioned(steps, 9, words)
			pages := frontOf(t, set)
			for i := range set.Cautions {
				first, last := pageWith(pages, letterOf(i)+"begins"), pageWith(pages, letterOf(i)+"ends")
				require.GreaterOrEqual(t, first, 0)
				require.Equal(t, first, last, "%d steps: caution %d", steps, i)
				if i > 0 && first != pageWith(pages, letterOf(i-1)+"begins") {
					goneOn++
					require.Contains(t, pages[first].Words(), "Take care, continued", "%d steps: caution %d", steps, i)
				}
			}
		}
	}
	assert.Positive(t, goneOn)
}

// The cautions are not alone on a page while there are pictures of the pages to stand with them.
func TestCautionsAreNotAlone(t *testing.T) {
	behind := 0
	for steps := 2; steps < 40; steps++ {
		pages := frontOf(t, cautioned(steps, 6, 20))
		heads := pages[pageWith(pages, "Take care")].Words()
		if slices.Contains(heads, "The order of work") || slices.Contains(heads, "Lines") {
			continue
		}
		behind++
		require.Contains(t, heads, "How the pages lie", "%d steps", steps)
	}
	assert.Positive(t, behind)
}

// pageWith is the number, from 0, of the first page on which something is said; -1 where none
// says it.
func pageWith(pages []seen.Page, words string) int {
	return slices.IndexFunc(pages, func(p seen.Page) bool {
		return strings.Contains(seen.Squeezed(strings.Join(p.Words(), "")), seen.Squeezed(words))
	})
}

// Rows are set for numbers as wide as those of the last page, and no wider.
func TestNumbersAsWideAsAnyPage(t *testing.T) {
	for _, c := range []struct{ pages, page, want int }{
		{7, 5, 7}, {9, 9, 9}, {10, 3, 92}, {14, 14, 99}, {100, 20, 919},
	} {
		b := &Book{pages: c.pages}
		assert.Equal(t, c.want, c.page+b.asWide(), "page %d of %d", c.page, c.pages)
	}
}
