package report

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the first column of a table is words, set in lines; the others are
// numbers, which end at stops of the grid and are never broken. A table that the grid has
// no room for stands across a whole page, its columns as close together as may be; its
// words are shortened where they would take too many lines. One whose numbers alone are
// wider than the page is refused: a number that is cut short is a wrong one. Every table
// is kept whole, with what is said under it, as long as it is no longer than a column.

const (
	rowGap    = 0.5 // free under each row, in mm
	headGap   = 0.8 // free under the heads
	totalRoom = 1.4 // what the line over a total takes up above it, in mm
	totalDown = 0.5 // how far that line lies below the row above it
)

// continued stands behind the title of a section or a table that goes on.
const continued = ", continued"

// cellStyle is that of the cells of a table, headStyle that of its heads, and titleStyle
// that of what it is called.
func cellStyle() ink.Style { return ink.Text() }

func headStyle() ink.Style { return ink.Caption() }

func titleStyle() ink.Style { return ink.StrongText() }

// columns are the columns of a table as they are set.
type columns struct {
	words float64 // width of the first column, in mm
	// ends are the right ends of the columns, and widths how wide they are.
	ends, widths []float64
}

// columns finds the places of the columns of a table among those of its section.
func (s setter) columns(t mark.Table, among sectionGrid) (columns, error) {
	if t.Columns() < 2 {
		return columns{s.width, []float64{s.width}, []float64{s.width}}, nil
	}
	if s.count == 1 && !among.holds(t) {
		return s.closeColumns(t)
	}
	at := min(among.room(t), max(among.begin, among.wanted(t)))
	set := columns{words: float64(at)*among.step - leastGap}
	set.add(set.words, set.words)
	for _, n := range among.numbers(t) {
		at += n
		set.add(float64(at)*among.step, float64(n)*among.step-leastGap)
	}
	return set, nil
}

// closeColumns sets the columns of a table as close together as may be, its words in
// what they leave.
func (s setter) closeColumns(t mark.Table) (columns, error) {
	widths := numberWidths(t, brokenHead)
	left := s.width
	for _, width := range widths {
		left -= leastGap + width
	}
	natural := text.LongestWord(firstCells(t), cellStyle())
	if left < min(natural, leastWords) {
		return columns{}, &fault.Fault{
			Cause: fmt.Sprintf("the figures have a table whose numbers alone are wider than %s", s.paper.ShortTitle()),
			Hint:  "choose larger paper",
		}
	}
	set := columns{words: min(natural, left)}
	set.add(set.words, set.words)
	end := set.words
	for _, width := range widths {
		end += leastGap + width
		set.add(end, width)
	}
	return set, nil
}

// add adds a column.
func (set *columns) add(end, width float64) {
	set.ends, set.widths = append(set.ends, end), append(set.widths, width)
}

// table sets a table among those of its section.
func (s setter) table(t mark.Table, among sectionGrid) ([]band, error) {
	var bands []band
	if len(t.Rows) > 0 {
		set, err := s.columns(t, among)
		if err != nil {
			return nil, err
		}
		bands = s.tableHead(t, "", set)
		bands = append(bands, set.rows(t, s.tableHead(t, continued, set))...)
	} else if t.Title != "" && len(t.Lines) > 0 {
		bands = []band{s.tableTitle(t.Title, "")}
	}
	withoutLines := len(bands)
	for _, line := range t.Lines {
		said := s.sentence(line)
		if len(said) > 0 && len(bands) > 0 && t.Title != "" {
			said[0].again = []band{s.tableTitle(t.Title, continued)}
		}
		bands = append(bands, said...)
	}
	if len(bands) > 0 {
		bands[0].above = tableAbove
	}
	s.keepWhole(bands[:withoutLines])
	s.keepWhole(bands)
	return bands, nil
}

// rows sets the rows of a table, which begin a column under what comes again there.
func (set columns) rows(t mark.Table, again []band) []band {
	var bands []band
	last := len(t.Rows) - 1
	for i, row := range t.Rows {
		b := set.row(row)
		nextTotal := i < last && t.Rows[i+1].Total && !row.Total
		b.keep = i == 0 && last > 0 || i == last-1 || nextTotal || i == last && len(t.Lines) > 0
		if i > 0 {
			b.again = again
		}
		bands = append(bands, b)
	}
	return bands
}

// tableTitle sets what a table is called, and that it goes on.
func (s setter) tableTitle(title, more string) band {
	style := titleStyle()
	lines := text.WithinLines(title, style, s.width-style.Width(more), headingLines)
	lines[len(lines)-1] += more
	return headingOf(lines, style)
}

// tableHead sets what stands over a table: what it is called, and its heads, of which
// the last lines stand side by side.
func (s setter) tableHead(t mark.Table, more string, set columns) []band {
	var bands []band
	if t.Title != "" {
		b := s.tableTitle(t.Title, more)
		b.Space(rowGap)
		bands = append(bands, b)
	}
	b := band{keep: true}
	var heads []text.Lines
	for i, words := range t.Heads {
		lines := text.WithinLines(words, headStyle(), set.widths[i]+roundingOff, headLines)
		heads = append(heads, set.cell(i, lines, headStyle()))
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
	top, style := plane.Point{Y: -b.Height}, cellStyle()
	height := style.Step()
	for i, words := range row.Cells {
		lines := []string{words}
		if i == 0 {
			lines = text.WithinLines(words, style, set.words+roundingOff, wordLines)
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
