package pdfout

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
	"tuckmark/pdfout/text"
)

// readStep is a step of the order of work as it stands on a page in front.
type readStep struct{ number, do, to, pages string }

// readSteps reads the steps off the pages in front: what stands in the column of one is of
// the step whose number stands at its left.
func readSteps(d seen.Document, front int) []readStep {
	var steps []readStep
	for _, p := range d.Pages[:front] {
		heading := slices.IndexFunc(p.Texts, func(r seen.Text) bool { return r.Text == "The order of work" })
		if heading < 0 {
			continue
		}
		left := p.Texts[heading].At.X
		for _, r := range p.Texts[heading+1:] {
			at := r.At.X - left
			if _, err := strconv.Atoi(r.Text); err == nil && r.Bold && math.Abs(at) < 0.01 {
				if len(steps) > 0 && r.Text == "1" {
					break
				}
				steps = append(steps, readStep{number: r.Text})
				continue
			}
			if len(steps) == 0 || at < 1 || math.Abs(r.Size-9) > 0.1 {
				break // the steps are at an end
			}
			last := &steps[len(steps)-1]
			switch {
			case r.Bold:
				last.to = joined(last.to, r.Text)
			case strings.HasPrefix(r.Text, "page") || last.pages != "":
				last.pages = joined(last.pages, r.Text)
			default:
				last.do = joined(last.do, r.Text)
			}
		}
	}
	return steps
}

func joined(a, b string) string { return strings.TrimSpace(a + " " + b) }

// pagesOfStep are the pages told beside a step; "" where there is none such.
func pagesOfStep(d seen.Document, s Summary, do string) string {
	for _, step := range readSteps(d, s.Front) {
		if step.do == do {
			return step.pages
		}
	}
	return ""
}

// checkSteps: steps are numbered from 1, and those of a set come last, each with its
// number and the pages on which its markings lie; those that are done with forms alone stand
// before the pages are joined.
func checkSteps(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	steps := readSteps(d, s.Front)
	for i, step := range steps {
		assert.Equal(t, strconv.Itoa(i+1), step.number)
	}
	if len(set.Work) == 0 {
		return
	}
	require.Greater(t, len(steps), len(set.Work), "the steps of paper and of the set")
	forms := 0
	for forms < len(set.Work) && len(set.Work[forms].Keys) > 0 && !slices.ContainsFunc(set.Pieces, func(m mark.Marking) bool {
		return slices.Contains(set.Work[forms].Keys, m.Key) && m.Form == nil
	}) {
		forms++
	}
	if join := slices.IndexFunc(steps, func(s readStep) bool { return s.do == "Join the pages of "+cmp.Or(set.What, "each piece") }); join >= 0 {
		assert.Equal(t, len(steps)-len(set.Work)+forms-1, join)
		steps = slices.Delete(steps, join, join+1)
	}
	for i, task := range set.Work {
		step := steps[len(steps)-len(set.Work)+i]
		assert.Equal(t, strings.Join(strings.Fields(task.Do), ""), seen.Squeezed(step.do))
		assert.Equal(t, task.Number, step.to)
		assert.Equal(t, pagesOfKeys(t, set, s, task.Keys), step.pages, task.Do)
	}
}

// pagesOfKeys names the pages on which markings lie: all those of their sheets.
func pagesOfKeys(t require.TestingT, set arrange.Set, s Summary, keys []string) string {
	var pages []int
	for _, m := range set.Pieces {
		if !slices.Contains(keys, m.Key) {
			continue
		}
		for _, sheet := range s.Sheets {
			if slices.Contains(sheet.Pieces, m.Name) {
				for n := sheet.First; n <= sheet.Last; n++ {
					pages = append(pages, n)
				}
			}
		}
		for _, form := range s.Forms {
			if form.Piece == m.Name {
				pages = append(pages, form.Page)
			}
		}
	}
	slices.Sort(pages)
	if pages = slices.Compact(pages); len(pages) == 0 {
		return ""
	}
	return text.Numbers("page", pages)
}

func TestTheOrderOfWorkIsPrinted(t *testing.T) {
	work := []mark.Task{
		{Do: "Sew the sample", Number: "flat 4 in", Keys: []string{"sample"}},
		{Do: "Mark the skirt", Keys: []string{"skirt"}},
		{Do: "Mark the front, and all that is written here at such a length that it takes more lines than one, whatever the paper is", Number: "3/8 in from fold to fold, and then some more", Keys: []string{"front"}},
		{Do: "Sew", Number: "3/8 in"},
	}
	set := sets.SampleFirst()
	work[0].Keys[0] = set.Pieces[2].Key
	work[1].Keys[0] = set.Pieces[0].Key
	work[2].Keys[0] = set.Pieces[1].Key
	set.Work = work
	for _, name := range []string{"letter", "a3"} {
		for _, figures := range []*mark.Report{nil, sample.LongFigures()} {
			set.Report = figures
			d, s := drawn(t, set, name)
			checkSteps(t, set, d, s)
			steps := readSteps(d, s.Front)
			assert.Equal(t, readStep{"1", "Print page 1, and measure it", "4 in both ways", "page 1"}, steps[0])
			assert.NotContains(t, strings.Join(d.Pages[0].Words(), "\n"), "Sew and fill in what", "its own step says it")
		}
	}
}

// On the pages of a sheet that pieces share, each step names those with its own lines.
func TestStepsNameThePagesOfTheirLines(t *testing.T) {
	set := arrange.Set{Title: "Shares", Pieces: []mark.Marking{sample.Sail(400), sample.Rectangle("small", "Small", 60, 60)}}
	set.Work = []mark.Task{{Do: "Mark small", Keys: []string{"small"}}}
	d, s := drawn(t, set, "letter")
	steps := readSteps(d, s.Front)
	last := steps[len(steps)-1]
	require.Equal(t, "Mark small", last.do)
	for i, p := range d.Pages {
		named := slices.ContainsFunc(p.Words(), func(w string) bool { return w == "Small" }) && i >= s.Front
		assert.Equal(t, named, last.pages == "page "+strconv.Itoa(i+1), "page %d", i+1)
	}
}

// A set with steps but no more than the first has none printed.
func TestNoOrderOfWorkOfOneStep(t *testing.T) {
	d, s := drawn(t, sets.Many(1), "letter")
	assert.Empty(t, readSteps(d, s.Front))
}
