package board

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/sets"
)

// Whatever there is, each part with a name is on one of the boards, in its order and as large as
// it was; keys are on all of them; and none has more than a hundred parts with names.
func TestLots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var parts []Part
		for i := range rapid.IntRange(0, 450).Draw(t, "parts") {
			parts = append(parts, oblong(fmt.Sprint("part ", i+1), float64(20+i%7), float64(30+i%5)))
		}
		keys := rapid.IntRange(0, 2).Draw(t, "keys")
		for range keys {
			parts = append(parts, oblong("", 15, 10))
		}
		whole := flow(parts)
		sizes := map[string]plane.Point{}
		for _, p := range whole.Parts {
			sizes[p.Name] = p.Box.Max.Sub(p.Box.Min)
		}
		number := 0
		for _, b := range whole.Lots() {
			first, last := b.Span()
			named := 0
			for _, p := range b.Parts {
				size := p.Box.Max.Sub(p.Box.Min)
				require.LessOrEqual(t, size.Distance(sizes[p.Name]), 1e-6, "the size of %q", p.Name)
				assert.True(t, p.Box.Min.X >= 0 && p.Box.Max.X <= b.Size.X && p.Box.Max.Y <= b.Size.Y, "%q lies on its board", p.Name)
				if p.Name == "" {
					continue
				}
				number, named = number+1, named+1
				assert.Equal(t, fmt.Sprint("part ", number), p.Name)
				assert.Equal(t, number, p.Number)
			}
			assert.LessOrEqual(t, named, 100)
			assert.Len(t, b.Parts, named+keys, "with the keys")
			if named > 0 {
				assert.Equal(t, [2]int{number - named + 1, number}, [2]int{first, last})
			}
		}
		assert.Equal(t, len(whole.Parts)-keys, number, "all of them")
	})
}

// A book of many pages is sent a hundred at a time: under two megabytes each.
func TestABookOfManyPages(t *testing.T) {
	book := planned(t, sets.ManySkirts(24), "letter")
	pages := Pages(book).Lots()
	require.Greater(t, len(pages), 2, "boards of %d pages", len(book.Pages()))
	for i, b := range pages {
		first, last := b.Span()
		assert.Equal(t, 100*i+1, first)
		assert.Equal(t, min(100*i+100, len(book.Pages())), last)
		assert.Less(t, len(b.Elements()), 2_000_000, "bytes of the pages %d to %d", first, last)
	}
	assert.Len(t, Pages(planned(t, sets.Many(3), "letter")).Lots(), 1)
}
