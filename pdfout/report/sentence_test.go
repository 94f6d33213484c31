package report

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/text"
)

func TestSentences(t *testing.T) {
	long := "it takes up " + strings.Repeat("more and more ", 8)
	said := mark.Section{Lines: []mark.Sentence{
		{Text: "Plain."},
		{Text: "The seam catches tuck 6.", Warning: true},
		{Text: "measured by:", Blank: true},
		{Blank: true},
		{Text: long, Blank: true},
		{Text: "not sewn yet:", Blank: true, Warning: true},
		{},
	}}
	_, half := columnsOf(paper.All()[0])
	t.Run("in a column", func(t *testing.T) { checkSentences(t, said, long, half) })
	said.Tables = []mark.Table{sample.WideTable()}
	t.Run("across the page", func(t *testing.T) { checkSentences(t, said, long, 160.0) })
}

// checkSentences holds the sentences of TestSentences against what they are to look
// like in some measure.
func checkSentences(t *testing.T, section mark.Section, long string, measure float64) {
	pages, _ := reported(t, &mark.Report{Sections: []mark.Section{section}}, "letter")
	require.Len(t, pages, 1)
	page := pages[0]

	plain, _ := only(t, pages, "Plain.")
	assert.False(t, plain.Bold)
	var flags []plane.Path
	for _, q := range page.Paths {
		if q.Painted == seen.Filled {
			flags = append(flags, q.Parts...)
		}
	}
	require.Len(t, flags, 2, "bars of warnings of one line each")
	for i, text := range []string{"The seam catches tuck 6.", "not sewn yet:"} {
		warning, _ := only(t, pages, text)
		assert.True(t, warning.Bold, text)
		b := flags[i].Bounds()
		assert.Less(t, b.Max.X, warning.At.X, "the mark stands in front of %q", text)
		assert.True(t, b.Min.Y < warning.At.Y && warning.At.Y < b.Max.Y, "the bar stands beside %q", text)
		sign, _ := only(t, []seen.Page{{Texts: []seen.Text{page.Texts[slices.IndexFunc(page.Texts, func(r seen.Text) bool { return r.Text == "!" && b.Holds(r.At) })]}}}, "!")
		assert.True(t, b.Holds(sign.Box().Min) && b.Holds(sign.Box().Max), "the sign of %q stands in its bar", text)
	}

	lines := page.ToWriteOn()
	require.Len(t, lines, 4)
	behind, _ := only(t, pages, "measured by:")
	assert.InDelta(t, rightEnd(behind)+1.5, lines[0][0].X, 4*seen.Written, "behind its words")
	assert.InDelta(t, behind.At.Y, lines[0][0].Y, 1)
	assert.InDelta(t, plain.At.X, lines[1][0].X, 2*seen.Written, "a whole line where nothing is said")
	assert.InDelta(t, measure, lines[1].Length(), 4*seen.Written)
	assert.Contains(t, said(page), seen.Squeezed(long))
	for i, r := range lines {
		assert.GreaterOrEqual(t, r.Length(), 45-4*seen.Written, "room for a hand to write in")
		// Handwriting of 6 mm stands on the line and meets nothing.
		hand := plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: 6})}.Grown(-2 * seen.Written)
		for _, text := range page.Texts {
			assert.False(t, hand.Meets(text.Box()), "%q stands where is written: line %d", text.Text, i)
		}
		for k, o := range lines {
			assert.True(t, k == i || !text.Upright(hand).MeetsSegment(o[0], o[1]), "lines %d and %d", i, k)
		}
	}
}

// A warning of several lines has its bar beside all of them.
func TestBarsOfWarnings(t *testing.T) {
	said := strings.Repeat("the seam catches the last of the tucks, and ", 6) + "so on"
	pages, _ := reported(t, &mark.Report{Sections: []mark.Section{{Lines: []mark.Sentence{{Text: said, Warning: true}}}}}, "letter")
	bar, lines := plane.EmptyBox(), plane.EmptyBox()
	for _, q := range pages[0].Paths {
		if q.Painted == seen.Filled {
			for _, part := range q.Parts {
				bar = bar.Union(part.Bounds())
			}
		}
	}
	n := 0
	for _, r := range pages[0].Texts {
		if r.Text != "!" {
			lines = lines.Union(r.Box())
			n++
			assert.True(t, r.Bold)
		}
	}
	require.Greater(t, n, 3)
	assert.Less(t, bar.Min.Y, lines.Min.Y)
	assert.Greater(t, bar.Max.Y, lines.Max.Y)
	assert.Less(t, bar.Max.X, lines.Min.X)
}
