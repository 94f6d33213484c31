package report

import (
	"fmt"
	"slices"

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

// continued stands behind the title of a table that goes on.
const continued = " (continued)"

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
func (s setter) table(t mark.Table, over string) ([]band, error) {
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
		again := s.tableHead(t.Title, continued, set)
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
			said[0].again = []band{s.tableTitle(t.Title, continued)}
		}
		bands = append(bands, said...)
	}
	if len(bands) > 0 {
		bands[0].above, bands[0].whole = tableAbove, len(bands)
	}
	return bands, nil
}

// trial is a way to set the columns of a table.
type trial struct {
	size  float64 // in points
	head  float64 // a longer word of a head may be broken, in mm
	least float64 // the least the first column may be narrowed to, in mm
	most  float64 // the most it is wide
}

// try sets the columns of a table in one way, and reports whether there is room.
func (s setter) try(t mark.Table, as trial) (columns, bool) {
	set, natural := newColumns(t, as)
	left := s.width - set.numbers()
	if left < min(natural, as.least) {
		return columns{}, false
	}
	set.words = min(natural, left, as.most)
	return set.placed(t), true
}

// columns finds the largest size in which a table fits its page.
func (s setter) columns(t mark.Table) (columns, error) {
	if s.count > 1 {
		if set, ok := s.inHalf(t); ok {
			return set, nil
		}
	}
	most := mostWords
	if t.Columns() < 2 {
		most = s.width
	}
	for size := figureSize; size >= leastFigures; size -= figureStep {
		if set, ok := s.try(t, trial{size, mostHead, leastWords, most}); ok {
			return set, nil
		}
	}
	if set, ok := s.try(t, trial{leastFigures, brokenHead, shortWords, s.width}); ok {
		return set, nil
	}
	return columns{}, &fault.Fault{
		Cause: fmt.Sprintf("the figures have a table whose numbers alone are wider than %s", s.paper.ShortTitle()),
		Hint:  "choose larger paper",
	}
}

// inHalf finds the largest size in which the table fits one of two columns of a
// page, and reports whether there is any.
func (s setter) inHalf(t mark.Table) (columns, bool) {
	for size := figureSize; size >= leastHalf; size -= figureStep {
		least := max(halfWords, text.LongestWord(wordsOf(t), ink.Plain(size)))
		if set, ok := s.try(t, trial{size, mostHead, least, s.width}); ok && set.saysAll(t) {
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

// newColumns measures the columns of a table, and returns how wide the first would
// have to be for its words to stand in one line each.
func newColumns(t mark.Table, as trial) (set columns, natural float64) {
	n := t.Columns()
	set = columns{size: as.size, widths: make([]float64, n), heads: make([][]string, n)}
	for _, row := range t.Rows {
		for i, words := range row.Cells {
			set.widths[i] = max(set.widths[i], set.style().Width(words))
		}
	}
	style := set.headStyle()
	for i, head := range t.Heads {
		if i == 0 {
			set.widths[0] = max(set.widths[0], style.Width(head))
			continue
		}
		limit := max(set.widths[i], min(as.head, max(headMeasure, text.LongestWord(length.Words(head), style))))
		set.heads[i] = text.WithinLines(head, style, limit, headLines)
		set.widths[i] = max(set.widths[i], text.LongestWord(set.heads[i], style))
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
func (s setter) tableTitle(title, more string) band {
	style := ink.Strong(figureSize)
	lines := text.WithinLines(title, style, s.width-style.Width(more), headingLines)
	lines[len(lines)-1] += more
	return headingOf(lines, style)
}

// tableHead sets what stands over a table: what it is called, and its heads, of which
// the last lines stand side by side.
func (s setter) tableHead(title, more string, set columns) []band {
	var bands []band
	if title != "" {
		b := s.tableTitle(title, more)
		b.Space(rowGap)
		bands = append(bands, b)
	}
	b := band{keep: true}
	var heads []text.Lines
	for i, lines := range set.heads {
		heads = append(heads, set.cell(i, lines, set.headStyle()))
		b.Height = max(b.Height, heads[i].Height)
	}
	for _, head := range heads {
		b.With(head, plane.Point{Y: head.Height - b.Height})
	}
	b.Space(headGap)
	if slices.ContainsFunc(b.Labels, func(l text.Label) bool { return l.Text != "" }) {
		bands = append(bands, b)
	}
	return bands
}

// row sets a row. Its numbers stand beside the first line of its words.
func (set columns) row(row mark.Row) band {
	var b band
	if row.Total {
		b.Space(totalRoom)
	}
	top, style := plane.Point{Y: -b.Height}, set.style()
	height := style.Step()
	for i, words := range row.Cells {
		lines := []string{words}
		if i == 0 {
			lines = text.WithinLines(words, style, set.words, wordLines)
		} else if row.Total && words != "" {
			from := plane.Point{X: set.ends[i] - set.widths[i], Y: -totalDown}
			b.totals = append(b.totals, plane.Path{from, {X: set.ends[i], Y: -totalDown}})
		}
		cell := set.cell(i, lines, style)
		b.With(cell, top)
		height = max(height, cell.Height)
	}
	b.Space(height + rowGap)
	return b
}

// cell sets lines in a column: the first begins at its left, the others end at their
// right ends.
func (set columns) cell(i int, lines []string, s ink.Style) text.Lines {
	if i == 0 {
		return text.LinesOf(lines, s)
	}
	var cell text.Lines
	for _, line := range lines {
		cell.AddAt([]string{line}, s, set.ends[i]-s.Width(line), s.Foot())
	}
	return cell
}
