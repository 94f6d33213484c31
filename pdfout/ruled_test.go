package pdfout

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/grid"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// paperNamed finds a paper, one that lies with a word more.
func paperNamed(t *testing.T, name string) paper.Paper {
	t.Helper()
	if bare, lies := strings.CutSuffix(name, ", lying"); lies {
		p, err := seen.Paper(t, bare).Lying()
		require.NoError(t, err)
		return p
	}
	return seen.Paper(t, name)
}

// Ruled sheets on every paper, in every unit: how many pages they take, that every page has the
// numbers of its lines, true, and that nothing that is written touches anything else.
func TestRuledSheets(t *testing.T) {
	for _, c := range []struct {
		on    string
		unit  length.Unit
		pages int // of the grid
	}{
		{"letter", length.Inch, 6}, {"letter", length.Centimetre, 6}, {"letter, lying", length.Inch, 8},
		{"a4", length.Inch, 6}, {"a4", length.Millimetre, 6}, {"a4, lying", length.Centimetre, 8},
		{"either", length.Inch, 6}, {"either", length.Centimetre, 6},
		{"legal", length.Inch, 4}, {"legal", length.Millimetre, 4},
		{"a3", length.Inch, 4}, {"a3", length.Centimetre, 4}, {"tabloid", length.Inch, 4},
		{"single", length.Inch, 1}, {"roll:36in", length.Centimetre, 1},
	} {
		t.Run(fmt.Sprintf("%s in %v", c.on, c.unit), func(t *testing.T) {
			d, s := drawnOn(t, sets.Ruled(c.unit), paperNamed(t, c.on))
			sheet := s.Sheets[len(s.Sheets)-1]
			assert.Equal(t, c.pages, sheet.Last-sheet.First+1)
			assert.Empty(t, sheet.Turned, "it is read as it lies")
			whole := d.Pages[0].Whole()
			laid, apart := []seen.LaidPage{{Page: d.Pages[0], Number: 1, Core: whole, Window: whole}}, []seen.LaidPage(nil)
			if s.Pages > 1 {
				laid, apart = d.JoinUp(t, sheet.First, sheet.Last)
			}
			require.Empty(t, apart)
			checkRuledNumbers(t, laid, c.unit)
			for _, p := range d.Pages {
				checkNumbersApart(t, p)
			}
		})
	}
}

// All that is true of any set is true of ruled sheets: every line is on every page that shows
// its place, the pages join, and the pages in front tell them. Text stands on the lines.
func TestAllOfRuledSheets(t *testing.T) {
	for on, unit := range map[string]length.Unit{"letter": length.Inch, "a4": length.Centimetre} {
		t.Run(on, func(t *testing.T) {
			set := sets.Ruled(unit)
			d, s := drawn(t, set, on)
			checkAll(t, set, d, s, "labels lie free of all lines", "no blank page", "names and notes", "words in drawings")
		})
	}
}

// wholeStep is from one whole line to the next, in mm, and wholeCount what is counted in it.
func wholeStep(unit length.Unit) (step, count float64) {
	switch unit {
	case length.Centimetre:
		return 10, 1
	case length.Millimetre:
		return 10, 10
	}
	return 25.4, 1
}

// wholeExample is more than the grid of the example reaches, in mm.
const wholeExample = 150.0

// offLine bounds how far the middle of a number may lie off its line, in mm: the middle of a
// line of text is not quite that of its figures.
const offLine = 0.4

// checkRuledNumbers holds the numbers on pages that are laid together against the lines that
// they stand in: each has its middle on its own, says how many steps that lies from the first
// one, and covers no crossing; and every whole line has its own within two steps of either end of what a page shows of it, and between these no
// further apart than a hand is wide. Beside a join, whose marks need room, they may be.
func checkRuledNumbers(t *testing.T, laid []seen.LaidPage, unit length.Unit) {
	t.Helper()
	step, count := wholeStep(unit)
	upper, right := 0.0, math.Inf(-1) // how far the lines reach
	corner := plane.Point{X: math.Inf(1), Y: math.Inf(1)}
	whole := seen.Lines(laid, mark.RuledWhole.String())
	for _, l := range whole {
		if box := l.Bounds; box.Height() > wholeExample || box.Width() > wholeExample || len(laid) > 1 {
			corner = plane.Point{X: min(corner.X, box.Min.X), Y: min(corner.Y, box.Min.Y)}
			upper, right = max(upper, box.Max.Y), max(right, box.Max.X)
		}
	}
	require.Positive(t, upper-corner.Y)
	for _, p := range laid {
		at := map[string][]plane.Point{} // the places of the numbers of each line on the page
		for _, r := range p.Texts {
			n, err := strconv.Atoi(r.Text)
			if r.Layer != mark.RuledWhole.String() || err != nil {
				continue
			}
			middle := r.Box().Centre().Add(p.Step).Sub(corner)
			if middle.X < -step || middle.Y < -step || middle.X > right-corner.X+step/2 || middle.Y > upper-corner.Y+step/2 {
				continue // of the example, on paper that has all on one page
			}
			half := r.Style().Half(r.Text)
			place := float64(n) / count * step
			// Before the line, or short of where others cross it.
			inGap := func(along, half float64) bool {
				return along < -half || min(math.Mod(along, step), step-math.Mod(along, step)) > half
			}
			inUp := math.Abs(middle.X-place) < offLine && inGap(middle.Y, half.Y)
			inLevel := math.Abs(middle.Y-place) < offLine && inGap(middle.X, half.X)
			assert.True(t, inUp != inLevel, "page %d: %d stands at %v", p.Number, n, middle)
			if inUp {
				at["up "+r.Text] = append(at["up "+r.Text], middle)
			}
			if inLevel {
				at["level "+r.Text] = append(at["level "+r.Text], middle)
			}
		}
		shown := plane.Box{
			Min: plane.Point{X: max(0, p.Core.Min.X-corner.X), Y: max(0, p.Core.Min.Y-corner.Y)},
			Max: plane.Point{X: min(right, p.Core.Max.X) - corner.X, Y: min(upper, p.Core.Max.Y) - corner.Y},
		}
		const strip = 8.0 // beside a join the marks of that stand in the way
		const least = 1.0 // a line nearer to a join is that of the next page
		for n := math.Ceil((shown.Min.X + least) / step); n*step < shown.Max.X-least; n++ {
			checkReach(t, p.Number, "up "+strconv.Itoa(int(n*count)), at, func(q plane.Point) float64 { return q.Y }, shown.Min.Y, shown.Max.Y, step, min(n*step-shown.Min.X, shown.Max.X-n*step) < strip)
		}
		for n := math.Ceil((shown.Min.Y + least) / step); n*step < shown.Max.Y-least; n++ {
			checkReach(t, p.Number, "level "+strconv.Itoa(int(n*count)), at, func(q plane.Point) float64 { return q.X }, shown.Min.X, shown.Max.X, step, min(n*step-shown.Min.Y, shown.Max.Y-n*step) < strip)
		}
	}
}

// checkReach holds the numbers of a line on a page against the ends of what it shows.
func checkReach(t *testing.T, page int, line string, at map[string][]plane.Point, along func(plane.Point) float64, from, to, step float64, byJoin bool) {
	t.Helper()
	if to-from < 2*step {
		return // hardly any of the line
	}
	if !assert.NotEmpty(t, at[line], "page %d has no number of line %s", page, line) {
		return
	}
	var all []float64
	for _, q := range at[line] {
		all = append(all, along(q))
	}
	slices.Sort(all)
	most, between := max(2*step, 40), 60+step
	if byJoin {
		most, between = 80, 90
	}
	assert.Less(t, all[0]-from, most, "page %d: the first number of line %s", page, line)
	assert.Less(t, to-all[len(all)-1], most, "page %d: the last number of line %s", page, line)
	for i := 1; i < len(all); i++ {
		assert.Less(t, all[i]-all[i-1], between, "page %d: between numbers of line %s", page, line)
	}
}

// checkNumbersApart holds the numbers and words on the ruled lines of a page against each other
// and against all that belongs to its joins.
func checkNumbersApart(t *testing.T, p seen.Page) {
	t.Helper()
	var rings []plane.Box
	for _, q := range p.Paths {
		if q.Curves == 4 && q.Layer == "" {
			rings = append(rings, q.Parts[0].Bounds())
		}
	}
	window := p.Window()
	for i, r := range p.Texts {
		if r.Layer == "" {
			continue
		}
		require.True(t, p.Whole().Holds(r.Box().Min) && p.Whole().Holds(r.Box().Max), "%q", r.Text)
		for _, ring := range rings {
			assert.False(t, ring.Meets(r.Box()), "%q meets a join mark", r.Text)
		}
		for k, other := range p.Texts {
			if k != i && window.Meets(other.Box()) {
				assert.False(t, other.Box().Meets(r.Box()), "%q and %q", r.Text, other.Text)
			}
		}
	}
}

// A grid that is too wide for a roll is refused, and not turned to fit on it.
func TestRuledSheetsOnANarrowRoll(t *testing.T) {
	set := arrange.Set{Pieces: grid.Of(grid.Size{Wide: 20 * 25.4, High: 10 * 25.4}, length.Inch)}
	_, err := Draw(&bytes.Buffer{}, set, seen.Paper(t, "roll:15in"))
	assert.EqualError(t, err, `piece "Grid, 20 in across and 10 in up", 20 in by 10 in, does not fit on a roll of paper 15 in wide`+
		"\nhint: choose a wider roll, or pages that are joined, such as --paper letter; not every program shows a page that is longer than 200 in")
}
