package pdfout

import (
	"bytes"
	"fmt"
	"math"
	"math/rand/v2"
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
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
	"tuckmark/pdfout/text"
)

// formsAsSheets are the pages of forms as sheets of one page each.
func formsAsSheets(s Summary) []SheetSummary {
	var sheets []SheetSummary
	for _, form := range s.Forms {
		sheet := SheetSummary{Pieces: []string{form.Piece}, Rows: 1, Columns: 1, First: form.Page, Last: form.Page}
		if form.Turned {
			sheet.Turned = sheet.Pieces
		}
		sheets = append(sheets, sheet)
	}
	return sheets
}

// pagesWith counts the pages on which a text stands, however it is broken.
func pagesWith(d seen.Document, text string) []int {
	var numbers []int
	for i, p := range d.Pages {
		if strings.Contains(seen.Squeezed(strings.Join(p.Words(), "")), seen.Squeezed(text)) {
			numbers = append(numbers, i+1)
		}
	}
	return numbers
}

// checkForms: forms come right after the pages in front, in their order, with
// all that is to be read and written, and nothing overlaps. That their lines
// are true to scale is checked with those of all pieces.
func checkForms(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	var forms []mark.Marking
	for _, m := range set.Pieces {
		if m.Form != nil {
			forms = append(forms, m)
		}
	}
	require.Len(t, s.Forms, len(forms))
	said := pagesOfStep(d, s, "Sew and fill in what has steps to follow")
	if len(forms) == 0 {
		assert.Empty(t, said)
		return
	}
	pages := "page " + fmt.Sprint(inFront(s)+1)
	if len(forms) > 1 {
		pages = fmt.Sprintf("pages %d to %d", inFront(s)+1, inFront(s)+len(forms))
	}
	if len(set.Work) == 0 {
		assert.Equal(t, pages, said)
	}
	for i, m := range forms {
		at := s.Forms[i]
		require.Equal(t, inFront(s)+1+i, at.Page)
		page := d.Pages[at.Page-1]
		name := m.Name
		if name == "" {
			name = m.Key
		}
		assert.Equal(t, name, at.Piece)
		assert.Contains(t, page.Words(), fmt.Sprintf("page %d of %d", at.Page, s.Pages))
		spaces := 0
		for k, step := range m.Steps {
			assert.Equal(t, []int{at.Page}, pagesWith(d, step), "step %q", step)
			assert.Contains(t, page.Words(), fmt.Sprintf("%d.", k+1))
		}
		for _, blank := range m.Form.Blanks {
			if blank != "" {
				assert.Equal(t, []int{at.Page}, pagesWith(d, blank), "blank %q", blank)
			}
		}
		for _, line := range m.Form.Sum {
			words := strings.Split(line, "____")
			spaces += len(words) - 1
			// What stands between two spaces may stand in other lines, too.
			assert.Contains(t, pagesWith(d, strings.Join(words, "")), at.Page, "sum %q", line)
		}
		for _, line := range slices.Concat(m.Form.Listing, m.Form.Columns) {
			assert.Contains(t, pagesWith(d, line), at.Page, "%q", line)
		}
		if len(m.Form.Columns) == 0 { // that of a table is looked at by itself
			checkFormPage(t, page, s.Paper, len(m.Form.Blanks), spaces)
		}
	}
}

// checkFormPage looks at the lines to write on, and at what lies near them.
func checkFormPage(t require.TestingT, page seen.Page, p paper.Paper, blanks, spaces int) {
	// Far enough from the edge for any printer: 1/4 in by common practice.
	may := plane.Box{Max: p.Size()}.Grown(2*seen.Written - min(p.Margin, 10))
	rules := page.ToWriteOn()
	require.Len(t, rules, blanks+spaces)
	short := 0
	for i, r := range rules {
		require.Len(t, r, 2)
		assert.InDelta(t, r[0].Y, r[1].Y, 2*seen.Written, "a line to write on that slants")
		assert.True(t, may.Holds(r[0]) && may.Holds(r[1]), "a line to write on at %v", r)
		if length := r.Length(); length < 45 {
			// "10 1/16 in" by hand: 10 signs of 3 mm (common practice).
			assert.GreaterOrEqual(t, length, 30.0, "a space for a number")
			short++
		}
		// Handwriting of 6 mm stands on the line and meets nothing.
		hand := plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: 6})}.Grown(-2 * seen.Written)
		for k, o := range rules {
			assert.True(t, k == i || !text.Upright(hand).MeetsSegment(o[0], o[1]), "lines to write on at %v and %v", r, o)
		}
		for _, s := range page.Texts {
			assert.False(t, text.Upright(hand).Meets(slabOf(s)), "%q stands where is written: %v", s.Text, r)
		}
		for _, f := range page.Frames() {
			assert.False(t, hand.Meets(f), "a check square stands where is written: %v", r)
		}
		for _, q := range page.Paths {
			for _, part := range q.Parts {
				for n := 1; n < len(part) && q.Layer != ""; n++ {
					assert.False(t, text.Upright(hand).MeetsSegment(part[n-1], part[n]), "a %s lies where is written: %v", q.Layer, r)
				}
			}
		}
	}
	assert.Equal(t, spaces, short, "spaces for numbers")
	frames := page.Frames()
	require.Len(t, frames, 1)
	checkFrameIsFree(t, page, 0)
	for k, s := range page.Texts {
		box := s.Box()
		inBlock := box.Min.Y > page.Window().Max.Y
		assert.True(t, inBlock || may.Holds(box.Min) && may.Holds(box.Max), "%q at %v", s.Text, box)
		if !frames[0].Holds(box.Centre()) {
			assert.False(t, text.Upright(frames[0]).Meets(slabOf(s)), "%q on the check square", s.Text)
		}
		for _, o := range page.Texts[k+1:] {
			assert.False(t, slabOf(s).Meets(slabOf(o)), "%q and %q", s.Text, o.Text)
		}
	}
}

// The strip is 6 1/2 x 3 in, and its placement lines lie 6 in apart: inch =
// 25.4 mm exactly (international inch, 1959).
func TestSampleIsTrueToScale(t *testing.T) {
	t.Parallel()
	for _, p := range paper.Names() {
		d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{sample.TuckSample()}}, p)
		page := d.Pages[s.Forms[0].Page-1]
		assert.False(t, s.Forms[0].Turned, p)
		outline := page.BoundsOf(mark.Cut)
		assert.InDelta(t, 6.5*25.4, outline.Width(), 4*seen.Written, p)
		assert.InDelta(t, 3*25.4, outline.Height(), 4*seen.Written, p)
		placement := page.BoundsOf(mark.Placement)
		assert.InDelta(t, 6*25.4, placement.Width(), 4*seen.Written, p)
		assert.Len(t, page.Drawn(mark.TuckFold.String()), 10, p)
		assert.Len(t, page.Drawn(mark.TuckStitch.String()), 20, p)
		for _, name := range []string{"measure from here", "to here"} {
			assert.Contains(t, page.Words(), name, p)
		}
		for _, heading := range []string{"What to do", "Write down", "Work out"} {
			assert.Contains(t, page.Words(), heading, p)
		}
	}
}

// What the words of a sum keep between them: the spaces in their order.
func TestSumInOrder(t *testing.T) {
	d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{sample.TuckSample()}}, "letter")
	page := d.Pages[s.Forms[0].Page-1]
	var base float64
	var words []string
	for _, r := range page.Texts {
		if strings.HasPrefix(r.Text, "(flat less sewn)") {
			base = r.At.Y
		}
	}
	x := 0.0
	for _, r := range page.Texts {
		if base > 0 && math.Abs(r.At.Y-base) < 0.01 {
			for _, rule := range page.ToWriteOn() {
				if math.Abs(rule[0].Y-base) < 2 && rule[0].X > x && rule[0].X < r.At.X {
					words = append(words, "____")
				}
			}
			words = append(words, r.Text)
			x = r.At.X
		}
	}
	assert.Equal(t, []string{"(flat less sewn) over 10 tucks: ( 6 in -", "____", ") / 10 =", "____", "for each tuck"}, words)
}

func TestFormTurns(t *testing.T) {
	for _, c := range []struct {
		name   string
		w, h   float64
		paper  string
		turned bool
	}{
		{"fits upright", 150, 60, "letter", false},
		{"wider than the page", 200, 60, "letter", true},
		{"not wider than a larger page", 200, 60, "tabloid", false},
		{"high, text to the right", 60, 200, "a4", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			set := arrange.Set{Pieces: []mark.Marking{sets.FormOf(c.w, c.h, 3, 3, 1)}}
			d, s := drawn(t, set, c.paper)
			assert.Equal(t, c.turned, s.Forms[0].Turned)
			b := d.Pages[s.Forms[0].Page-1].BoundsOf(mark.Cut)
			if c.turned {
				c.w, c.h = c.h, c.w
			}
			assert.InDelta(t, c.w, b.Width(), 4*seen.Written)
			assert.InDelta(t, c.h, b.Height(), 4*seen.Written)
			checkForms(t, set, d, s)
		})
	}
}

// A part that is empty has no heading.
func TestFormWithoutParts(t *testing.T) {
	m := sets.FormOf(100, 40, 0, 0, 0)
	set := arrange.Set{Pieces: []mark.Marking{m}}
	d, s := drawn(t, set, "letter")
	words := d.Pages[s.Forms[0].Page-1].Words()
	for _, heading := range []string{"What to do", "Write down", "Work out"} {
		assert.NotContains(t, words, heading)
	}
	checkForms(t, set, d, s)
}

// A form that has no line is left out as other pieces are.
func TestFormWithoutLines(t *testing.T) {
	ghost := mark.Marking{Key: "g", Name: "Ghost", Steps: []string{"sew"}, Form: &mark.Form{}}
	_, s := drawn(t, arrange.Set{Pieces: []mark.Marking{ghost, sample.Rectangle("tie", "Tie", 200, 40)}}, "a4")
	assert.Empty(t, s.Forms)
	assert.Equal(t, []string{"Ghost"}, s.Left)
}

func TestFormRefusals(t *testing.T) {
	for _, c := range []struct {
		name  string
		m     mark.Marking
		paper string
		want  string
	}{
		{"lines too long", sets.FormOf(20*sample.Inch, 2*sample.Inch, 1, 1, 1), "letter",
			"piece \"form\" must be whole on one page, and its lines, 20 in by 2 in, do not fit on letter paper\nhint: choose larger paper, or make the piece smaller"},
		{"too long for tabloid as well", sets.FormOf(20*sample.Inch, 2*sample.Inch, 1, 1, 1), "tabloid",
			"piece \"form\" must be whole on one page, and its lines, 20 in by 2 in, do not fit on tabloid paper\nhint: choose larger paper, or make the piece smaller"},
		{"too many steps", sets.FormOf(6*sample.Inch, 3*sample.Inch, 200, 1, 1), "a4",
			"piece \"form\" must be whole on one page, and what is to be read and written beside its lines does not fit on A4 paper\nhint: choose larger paper, make the piece smaller, or let it say less"},
		{"no room beside", sets.FormOf(180, 225, 1, 1, 1), "letter",
			"piece \"form\" must be whole on one page, and what is to be read and written beside its lines does not fit on letter paper\nhint: choose larger paper, make the piece smaller, or let it say less"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, err := paper.Find(c.paper)
			require.NoError(t, err)
			var out bytes.Buffer
			_, err = Draw(&out, arrange.Set{Pieces: []mark.Marking{sample.Rectangle("tie", "Tie", 200, 40), c.m}}, p)
			require.EqualError(t, err, c.want)
			assert.IsType(t, &fault.Fault{}, err)
			assert.Zero(t, out.Len(), "nothing is written")
		})
	}
}

func TestTooManyForms(t *testing.T) {
	var set arrange.Set
	for range 2001 {
		set.Pieces = append(set.Pieces, sets.FormOf(60, 40, 1, 1, 1))
	}
	_, err := Draw(&bytes.Buffer{}, set, paper.All()[0])
	assert.EqualError(t, err, "the pieces need at least 2,001 pages of letter paper; 2,000 is the most\nhint: see whether the file's unit is the one meant, print fewer pieces, or choose larger paper")
}

// TestAnyForm draws forms no maker would; every seed is another. A form is
// either refused or has nothing wrong with it.
func TestAnyForm(t *testing.T) {
	t.Parallel()
	words := []string{"needle", "a", "thread", "1/16 in", "(", "=", "dampness of the cloth", "Donaudampfschifffahrtsgesellschaftskapitänsmütze", "½"}
	met := 0
	for seed := range uint64(60) {
		r := rand.New(rand.NewPCG(seed, 2))
		text := func(i, most int) string {
			all := []string{fmt.Sprintf("no. %d:", i+1)}
			for range r.IntN(most) {
				all = append(all, words[r.IntN(len(words))])
			}
			return strings.Join(all, " ")
		}
		m := sample.Ruled("form", "Form", 20+200*r.Float64(), 20+200*r.Float64(), words[:r.IntN(4)]...)
		for range r.IntN(8) {
			at := func() plane.Point {
				return plane.Point{X: m.Outline[2].X * r.Float64(), Y: m.Outline[2].Y * r.Float64()}
			}
			m.Marks = append(m.Marks, sample.Edge(openRoles()[r.IntN(len(openRoles()))], words[r.IntN(len(words))], at(), at()))
		}
		m.Form = &mark.Form{}
		for i := range r.IntN(9) {
			m.Steps = append(m.Steps, "step "+text(i, 25))
		}
		for i := range r.IntN(9) {
			m.Form.Blanks = append(m.Form.Blanks, "blank "+text(i, 8))
		}
		for i := range r.IntN(5) {
			m.Form.Sum = append(m.Form.Sum, "sum "+text(i, 5)+" ____ "+text(i, 5)+"____")
		}
		set := arrange.Set{Title: "Forms", Unit: length.Unit(r.IntN(3)), Pieces: []mark.Marking{m}}
		p := paper.All()[r.IntN(5)]
		var out bytes.Buffer
		s, err := Draw(&out, set, p)
		if err != nil {
			require.IsType(t, &fault.Fault{}, err)
			continue
		}
		met++
		t.Run(fmt.Sprint("seed ", seed), func(t *testing.T) {
			d := seen.Read(t, out.Bytes(), paper.Scale{})
			checkAll(t, set, d, s)
		})
	}
	assert.Greater(t, met, 30, "forms that were drawn")
}
