package pdfout

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// figuresHeading heads the pages of figures, to which a step of the work leads.
const (
	figuresHeading = "Figures for the cutting table"
	figuresStep    = "Read the figures for the cutting table"
)

// checkFigures: the pages of figures come right after those in front, and say what
// they are. What stands on them is held against the report in the room that lays it.
func checkFigures(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	said := pagesOfStep(d, s, figuresStep)
	if set.Report == nil {
		assert.Zero(t, s.Figures)
		assert.Empty(t, said)
		return
	}
	named := fmt.Sprintf("pages %d to %d", s.Front+1, inFront(s))
	if s.Figures == 1 {
		named = fmt.Sprintf("page %d", s.Front+1)
	}
	assert.Equal(t, named, said)
	first := strings.Join(d.Pages[0].Words(), "")
	assert.Contains(t, seen.Squeezed(first), seen.Squeezed("Every full-size page has a square"))
	for i, p := range d.Pages[s.Front:inFront(s)] {
		assert.True(t, strings.HasPrefix(p.Texts[0].Text, figuresHeading), "page %d is headed %q", s.Front+i+1, p.Texts[0].Text)
		assert.Equal(t, fmt.Sprintf("page %d of %d", s.Front+i+1, s.Pages), p.Texts[1].Text)
	}
	words := d.Pages[s.Front].Words()
	for _, note := range set.Report.Notes {
		assert.Contains(t, seen.Squeezed(strings.Join(words, "")), seen.Squeezed(note), "a note of the report")
	}
}

// The number that stands on a page is that of the page, and so are those of the order of
// work, however many pages in front their lists fill: half of the pieces are named in each
// of some tasks.
func TestPagesInFrontCountTheirOwnNumbers(t *testing.T) {
	for tasks := 10; tasks <= 13; tasks++ {
		set := arrange.Set{Title: "Wardrobe"}
		var keys, odd []string
		for i := range 24 {
			key := fmt.Sprintf("p%d", i)
			keys = append(keys, key)
			set.Pieces = append(set.Pieces, sample.Rectangle(key, "Panel "+key, 150, 200))
			if i%2 == 0 {
				odd = append(odd, key)
			}
		}
		for i := range tasks {
			set.Work = append(set.Work, mark.Task{Do: fmt.Sprintf("Do no. %d", i), Keys: odd})
		}
		d, s := drawn(t, set, "letter")
		require.Equal(t, s.Pages, len(d.Pages))
		require.Equal(t, s.Front+len(keys), s.Pages)
		for i, p := range d.Pages {
			require.Contains(t, p.Words(), fmt.Sprintf("page %d of %d", i+1, s.Pages), "%d tasks", tasks)
		}
	}
}

// What is longer than a page goes on on the next, between two lines; nothing is lost and
// nothing stands beyond the page's edge.
func TestLongTextsInFrontGoOn(t *testing.T) {
	caution := "Wash the cloth before it is cut, and press it along the threads, not across them. "
	cautions := arrange.Set{Title: "Wardrobe", Pieces: sets.Many(2).Pieces}
	for i := range 80 {
		cautions.Cautions = append(cautions.Cautions, fmt.Sprintf("no. %d: %s", i, caution))
	}
	step := arrange.Set{Title: "Wardrobe", Pieces: sets.Many(2).Pieces, Work: []mark.Task{{Do: strings.Repeat(caution, 80)}}}
	for name, set := range map[string]arrange.Set{"cautions": cautions, "a step": step} {
		var out bytes.Buffer
		s, err := Draw(&out, set, seen.Paper(t, "letter"))
		require.NoError(t, err)
		d := seen.Read(t, out.Bytes(), paper.Scale{})
		told := 0
		for i, p := range d.Pages[:s.Front] {
			told += strings.Count(strings.Join(p.Words(), " "), "threads")
			for _, text := range p.Texts {
				require.GreaterOrEqual(t, text.Box().Min.Y, 10.0, "%s: page %d: %q", name, i+1, text.Text)
			}
		}
		assert.Equal(t, 80, told, name)
	}
}

// A report that says nothing has no pages.
func TestEmptyReport(t *testing.T) {
	for name, r := range map[string]*mark.Report{
		"none":            nil,
		"a title alone":   {Title: "Sunday pinafore"},
		"a heading alone": {Sections: []mark.Section{{Title: "Tucks"}}},
	} {
		d, s := drawn(t, sets.WithFigures(sets.Many(1), r), "a4")
		assert.Zero(t, s.Figures, name)
		assert.Len(t, d.Pages, s.Front+1, name)
		assert.Empty(t, pagesOfStep(d, s, figuresStep), name)
	}
}

func TestFiguresAreHeaded(t *testing.T) {
	for _, c := range []struct {
		name, title string
		want        []string
	}{
		{"with a title", "Sunday pinafore, size 2", []string{"Figures for the cutting table", "Figures for the cutting table: Sunday pinafore, size 2"}},
		{"without", "", []string{"Figures for the cutting table: Small things, size 12 in doll", "Figures for the cutting table: Small things, size 12 in doll"}},
	} {
		r := sample.LongFigures()
		r.Title = c.title
		set := sets.WithFigures(sets.Many(1), r)
		set.Title = "Small things"
		d, s := drawn(t, set, "letter")
		for i, want := range c.want {
			assert.Equal(t, want, d.Pages[s.Front+i].Texts[0].Text, c.name)
		}
	}
}

func TestFiguresCountAsPages(t *testing.T) {
	t.Parallel()
	section := mark.Section{Title: "Tucks"}
	for i := range 8_000 {
		section.Lines = append(section.Lines, mark.Sentence{Text: fmt.Sprint("Look at tuck ", i)})
	}
	set := arrange.Set{Pieces: []mark.Marking{sample.Sail(94_000)}}
	b, err := plan(set, paper.All()[0])
	require.NoError(t, err)
	require.InDelta(t, 1_980, b.pages, 19, "without figures it is nearly as much as can be drawn")
	var out bytes.Buffer
	_, err = Draw(&out, sets.WithFigures(set, &mark.Report{Sections: []mark.Section{section}}), paper.All()[0])
	require.ErrorContains(t, err, "the pieces and the figures need 2,")
	require.ErrorContains(t, err, " pages of letter paper; 2,000 is the most\nhint: see whether")
	assert.Zero(t, out.Len())
}
