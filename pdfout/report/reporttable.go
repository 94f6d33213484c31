package report

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a table is as wide as its columns need, so that a number
// stands near the words it belongs to. The first column is words, set in lines;
// the others are numbers, which end at one right end and are never broken. A
// table too wide is set smaller. In one of two columns of a page it is set a little
// smaller at most, and says all it would say on the whole page. On the whole page,
// in the smallest size, its first column may become narrow, and the words of heads
// may be broken; words that would take too many lines are shortened. One whose
// numbers alone are wider than the page is refused: a number that is cut short is a
// wrong one.

const (
	leastFigures = 6.0  // the least size of a table, in points
	leastHalf    = 8.0  // the same in one of two columns of a page
	figureStep   = 0.5  // from one size to the next
	smallHead    = 0.84 // the size of heads, in sizes of the table
	columnGap    = 4.5  // between two columns, in mm
	rowGap       = 0.5  // free under each row, in mm
	headGap      = 0.8  // free under the heads
	totalRoom    = 1.4  // what the line over a total takes up above it, in mm
	totalDown    = 0.5  // how far that line lies below the row above it
	mostWords    = 85.0 // the most the first column is wide, in mm
	leastWords   = 45.0 // the least it is narrowed to before the table is set smaller
	shortWords   = 18.0 // the least it is narrowed to in the smallest size
	halfWords    = 24.0 // the least it is narrowed to in one of two columns of a page
	wordLines    = 6    // the most lines its words take in a row
	halfLines    = 3    // the same in one of two columns of a page
	headLines    = 4    // the most lines of a head
	headMeasure  = 18.0 // a head is not broken between words to be shorter than this, in mm
	mostHead     = 30.0 // a longer word of a head is broken
	brokenHead   = 10.0 // the same in the smallest size
)

// columns are the columns of a table as they are set.
type columns struct {
	size  float64 // in points
	words float64 // width of the first column, in mm
	heads [][]string
	// ends are the right ends of the columns, and widths how wide they are.
	ends, widths []float64
}

// style is that of the cells, and headStyle that of the heads.
func (set columns) style() ink.Style { return ink.Plain(set.size) }

func (set columns) headStyle() ink.Style { return ink.Plain(set.size * smallHead).In(ink.Grey()) }

// table sets a table that stands under a heading.
func (s Setter) table(t mark.Table, over string) ([]band, error) {
	var bands []band
	if len(t.Rows) > 0 {
		set, err := s.columns(t)
		if err != nil {
			return nil, err
		}
		bands = s.tableHead(t.Title, "", set)
		if over != "" && t.Title == "" {
			t.Title = over
		}
		again := s.tableHead(t.Title, continuedWords, set)
		for i, row := range t.Rows {
			b := set.row(row)
			last := len(t.Rows) - 1
			nextTotal := i < last && t.Rows[i+1].Total && !row.Total
			b.keep = i == 0 && last > 0 || i == last-1 || nextTotal || i == last && len(t.Lines) > 0
			if i > 0 {
				b.again = again
			}
			bands = append(bands, b)
		}
	} else if t.Title != "" && len(t.Lines) > 0 {
		bands = []band{s.tableTitle(t.Title, "")}
	}
	for _, line := range t.Lines {
		said := s.sentence(line)
		if len(said) > 0 && len(bands) > 0 && t.Title != "" {
			said[0].again = []band{s.tableTitle(t.Title, continuedWords)}
		}
		bands = append(bands, said...)
	}
	if len(bands) > 0 {
		bands[0].above, bands[0].whole = tableAbove, len(bands)
	}
	return bands, nil
}

// inHalf finds the largest size in which the table fits one of two columns of a
// page, and reports whether there is any.
func (s Setter) inHalf(t mark.Table) (columns, bool) {
	for size := figureSize; size >= leastHalf; size -= figureStep {
		set, natural := newColumns(t, size, mostHead)
		if len(set.widths) == 0 {
			return set, true
		}
		least := math.Min(natural, math.Max(halfWords, text.LongestWord(wordsOf(t), ink.Plain(size))))
		left := s.width - set.numbers()
		if left < least {
			continue
		}
		set.words = math.Min(natural, left)
		set = set.placed(t)
		if set.saysAll(t) {
			return set, true
		}
	}
	return columns{}, false
}

// wordsOf are the words of the first column of a table.
func wordsOf(t mark.Table) []string {
	var words []string
	for _, row := range t.Rows {
		if len(row.Cells) > 0 {
			words = append(words, length.Words(row.Cells[0])...)
		}
	}
	return words
}

// saysAll reports whether the words of all rows take few lines, and the head over
// them is not shortened.
func (set columns) saysAll(t mark.Table) bool {
	for _, row := range t.Rows {
		if len(row.Cells) > 0 && len(text.WrapMeasures(row.Cells[0], set.style(), set.words)) > halfLines {
			return false
		}
	}
	return len(t.Heads) == 0 || len(text.WrapMeasures(t.Heads[0], set.headStyle(), set.words)) <= headLines
}

// columns finds the largest size in which the table fits its page.
func (s Setter) columns(t mark.Table) (columns, error) {
	if s.half {
		if set, ok := s.inHalf(t); ok {
			return set, nil
		}
	}
	for size := figureSize; size >= leastFigures; size -= figureStep {
		set, natural := newColumns(t, size, mostHead)
		if left := s.width - set.numbers(); left >= math.Min(natural, leastWords) {
			set.words = math.Min(natural, left)
			if len(set.widths) > 1 {
				set.words = math.Min(set.words, mostWords)
			}
			return set.placed(t), nil
		}
	}
	set, natural := newColumns(t, leastFigures, brokenHead)
	left := s.width - set.numbers()
	if left < math.Min(natural, shortWords) {
		return columns{}, &fault.Fault{
			Cause: fmt.Sprintf("the figures have a table whose numbers alone are wider than %s", s.Paper.ShortTitle()),
			Hint:  "choose larger paper",
		}
	}
	set.words = math.Min(natural, left)
	return set.placed(t), nil
}

// newColumns measures the columns of a table in a size, and returns how wide the
// first would have to be for its words to stand in one line each. Words of heads
// longer than longest mm may be broken.
func newColumns(t mark.Table, size, longest float64) (set columns, natural float64) {
	set.size = size
	n := t.Columns()
	set.widths, set.heads = make([]float64, n), make([][]string, n)
	for _, row := range t.Rows {
		for i, text := range row.Cells {
			set.widths[i] = math.Max(set.widths[i], set.style().Width(text))
		}
	}
	style := set.headStyle()
	for i, head := range t.Heads {
		if i == 0 {
			set.widths[0] = math.Max(set.widths[0], style.Width(head))
			continue
		}
		limit := math.Max(set.widths[i], math.Min(longest, headMeasure))
		limit = math.Max(limit, math.Min(longest, text.LongestWord(length.Words(head), style)))
		set.heads[i] = text.WithinLines(head, style, limit, headLines)
		set.widths[i] = math.Max(set.widths[i], text.LongestWord(set.heads[i], style))
	}
	if n > 0 {
		natural = set.widths[0]
	}
	return set, natural
}

// numbers is how wide all columns but the first are, with the gaps before them.
func (set columns) numbers() float64 {
	sum := 0.0
	for i, width := range set.widths {
		if i > 0 {
			sum += columnGap + width
		}
	}
	return sum
}

// placed is the columns with their places and the head of the first, once that is
// as wide as it will be.
func (set columns) placed(t mark.Table) columns {
	x := set.words
	for i := range set.widths {
		if i > 0 {
			x += columnGap + set.widths[i]
		}
		set.ends = append(set.ends, x)
	}
	if len(t.Heads) > 0 {
		set.heads[0] = text.WithinLines(t.Heads[0], set.headStyle(), set.words, headLines)
	}
	return set
}

// tableTitle sets what a table is called, and that it goes on.
func (s Setter) tableTitle(title, more string) band {
	style := ink.Strong(figureSize)
	lines := text.WithinLines(title, style, s.width-style.Width(more), headingLines)
	lines[len(lines)-1] += more
	return headingOf(lines, style)
}

// tableHead sets what stands over a table: what it is called, and its heads.
func (s Setter) tableHead(title, more string, set columns) []band {
	var bands []band
	if title != "" {
		b := s.tableTitle(title, more)
		b.Height += rowGap
		bands = append(bands, b)
	}
	style := set.headStyle()
	b := band{keep: true}
	for _, lines := range set.heads {
		b.Height = math.Max(b.Height, float64(len(lines))*style.Step())
	}
	for i, lines := range set.heads {
		for k, line := range lines {
			at := plane.Point{Y: -b.Height + float64(len(lines)-1-k)*style.Step() + style.Foot()}
			if i > 0 {
				at.X = set.ends[i] - style.Width(line)
			}
			if line != "" {
				b.Say(line, style, at)
			}
		}
	}
	b.Height += headGap
	if len(b.Labels) > 0 {
		bands = append(bands, b)
	}
	return bands
}

// row sets a row. Its numbers stand beside the first line of its words.
func (set columns) row(row mark.Row) band {
	var b band
	if row.Total {
		b.Height = totalRoom
	}
	style := set.style()
	base := -b.Height - style.Step() + style.Foot()
	lines := 1
	for i, s := range row.Cells {
		if i > 0 {
			b.Say(s, style, plane.Point{X: set.ends[i] - style.Width(s), Y: base})
			if row.Total && s != "" {
				from := plane.Point{X: set.ends[i] - set.widths[i], Y: -totalDown}
				b.totals = append(b.totals, plane.Path{from, {X: set.ends[i], Y: -totalDown}})
			}
			continue
		}
		words := text.WithinLines(s, style, set.words, wordLines)
		lines = len(words)
		for k, line := range words {
			b.Say(line, style, plane.Point{Y: base - float64(k)*style.Step()})
		}
	}
	b.Height += float64(lines)*style.Step() + rowGap
	return b
}
