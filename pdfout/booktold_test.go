package pdfout

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
	"tuckmark/pdfout/text"
)

// checkTold holds that all names of lines, all words at places of pieces, all words of
// dimensions and all pale words are on the pages.
func checkTold(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	var all strings.Builder
	for _, p := range d.Pages {
		all.WriteString(strings.Join(p.Words(), " ") + "\n")
	}
	said := seen.Squeezed(all.String())
	for _, m := range set.Pieces {
		for _, one := range m.Marks {
			if one.Path.Length() > 0 {
				assert.Contains(t, said, seen.Squeezed(one.Name), "a line of %s", m.Name)
			}
		}
		for _, w := range m.Words {
			assert.Contains(t, said, seen.Squeezed(w.Text), m.Name)
		}
		for _, dim := range m.Dimensions {
			assert.Contains(t, said, seen.Squeezed(dim.Text), m.Name)
		}
		for _, pale := range m.Pale {
			assert.Contains(t, said, seen.Squeezed(pale), m.Name)
		}
	}
}

// Every page that shows some of a piece shows its pale words, whole and in the piece or
// right beside its corner.
func TestPaleWordsOnEveryPage(t *testing.T) {
	t.Parallel()
	for _, paper := range []string{"letter", "a4", "tabloid"} {
		d, s := drawn(t, sets.Told(), paper)
		for _, sheet := range s.Sheets {
			for n := sheet.First; n <= sheet.Last; n++ {
				p := d.Pages[n-1]
				var words []string
				for _, r := range p.Texts {
					if r.Faint() {
						words = append(words, r.Text)
						assert.True(t, p.Whole().Holds(r.Box().Min) && p.Whole().Holds(r.Box().Max), "page %d: %q is cut", n, r.Text)
						assert.GreaterOrEqual(t, r.Size, 22.0, "page %d: %q is no ground for others", n, r.Text)
					}
				}
				assert.NotEmpty(t, words, "page %d of %s has no pale words", n, paper)
			}
		}
	}
}

// No sign and no panel of an example runs up the page: only names along lines do, and text
// in a piece narrower than any sign.
func TestSignsOfExamplesAreUpright(t *testing.T) {
	t.Parallel()
	for name, set := range sets.Examples(t, "../examples") {
		book, err := plan(set, seen.Paper(t, "letter"))
		require.NoError(t, err)
		book.letter()
		for _, s := range book.sheets {
			for _, l := range s.Labels {
				assert.Equal(t, text.Across(), l.U, "%s: %q", name, l.Text)
			}
		}
	}
}
