package report

import (
	"math"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/pdfout/text"
)

// Rules of this file: the numbers of all tables of a report end at stops, which are
// equally far apart, so that the numbers of one table stand under those of another. A
// column takes two steps, or as many as it needs. The first number of a table stands as
// near to its words as they allow, but no nearer than in the other tables of its section;
// tables of a section that have the same heads have the same columns.

const (
	usualStep  = 7.25 // about how far apart two stops are, in mm
	leastSteps = 2    // the least that a column takes
	leastGap   = 2.0  // the least between two columns, in mm
	usualWords = 4    // how many steps the words of a table take where nothing asks for another
	wordLines  = 6    // the most lines they take in a row
	fewLines   = 3    // the same in one of several columns of a page
	headLines  = 4    // the most lines of a head
	mostHead   = 30.0 // a longer word of a head is broken, in mm
	brokenHead = 10.0 // the same in a table too wide for the grid
	leastWords = 18.0 // the least the words of such a table have, in mm
)

// grid is the stops of a column of a page.
type grid struct {
	steps int
	step  float64 // from one stop to the next, in mm
}

// gridOf shares a width out.
func gridOf(width float64) grid {
	n := max(1, leastSteps*math.Round(width/usualStep/leastSteps))
	return grid{int(n), width / n}
}

// stepsFor is how many steps something as wide as this takes, with the gap beside it.
func (g grid) stepsFor(width float64) int {
	return max(leastSteps, int(math.Ceil((width+leastGap)/g.step-roundingOff)))
}

// wanted is how many steps the words of a table want to stand in one line each: so many
// that the numbers of most tables stand under each other.
func (g grid) wanted(t mark.Table) int {
	n := g.stepsFor(text.LongestWord(firstCells(t), cellStyle()))
	return (n + leastSteps - 1) / leastSteps * leastSteps
}

// sectionGrid is how the tables of a section stand on the grid.
type sectionGrid struct {
	grid
	tables []mark.Table
	begin  int                  // how many steps their words take, if they want no more
	widths map[string][]float64 // of columns of numbers, by the heads over them
}

// of shares the grid out among the tables of a section.
func (g grid) of(tables []mark.Table) sectionGrid {
	s := sectionGrid{g, tables, usualWords, map[string][]float64{}}
	for _, t := range tables {
		s.widths[headsOf(t)] = widened(s.widths[headsOf(t)], numberWidths(t, mostHead))
	}
	room := g.steps
	for _, t := range tables {
		room = min(room, s.room(t))
	}
	for _, t := range tables {
		if n := g.wanted(t); t.Columns() > 1 && n <= room {
			s.begin = max(s.begin, n)
		}
	}
	return s
}

// headsOf are the heads over the numbers of a table.
func headsOf(t mark.Table) string {
	return strings.Join(t.Heads[min(1, len(t.Heads)):], "\n")
}

// widened are widths of columns, each as wide as the wider of two.
func widened(a, b []float64) []float64 {
	if len(a) < len(b) {
		a, b = b, a
	}
	a = slices.Clone(a)
	for i, width := range b {
		a[i] = max(a[i], width)
	}
	return a
}

// numbers is how many steps each column of numbers of a table takes.
func (s sectionGrid) numbers(t mark.Table) []int {
	var all []int
	for _, width := range s.widths[headsOf(t)][:max(0, t.Columns()-1)] {
		all = append(all, s.stepsFor(width))
	}
	return all
}

// room is how many steps the numbers of a table leave to its words.
func (s sectionGrid) room(t mark.Table) int {
	left := s.steps
	for _, n := range s.numbers(t) {
		left -= n
	}
	return left
}

// holds reports whether a table has room on the grid for all that it says: its words in
// few lines, and none of them broken.
func (s sectionGrid) holds(t mark.Table) bool {
	words := float64(s.room(t)) * s.step
	if t.Columns() > 1 {
		words -= leastGap
	}
	for _, cell := range firstCells(t) {
		if text.LongestWord(length.Words(cell), cellStyle()) > words ||
			len(text.WrapMeasures(cell, cellStyle(), words)) > fewLines {
			return false
		}
	}
	return words > 0
}

// firstCells are the words of a table: the first cell of each row, and the head over them.
func firstCells(t mark.Table) []string {
	var words []string
	if len(t.Heads) > 0 {
		words = append(words, t.Heads[0])
	}
	for _, row := range t.Rows {
		if len(row.Cells) > 0 {
			words = append(words, row.Cells[0])
		}
	}
	return words
}

// numberWidths is how wide the columns of a table are, but for the first. A word of a
// head that is longer than most mm is broken.
func numberWidths(t mark.Table, most float64) []float64 {
	widths := make([]float64, max(0, t.Columns()-1))
	for _, row := range t.Rows {
		for i, words := range row.Cells[min(1, len(row.Cells)):] {
			widths[i] = max(widths[i], cellStyle().Width(words))
		}
	}
	for i, head := range t.Heads[min(1, len(t.Heads)):] {
		widths[i] = max(widths[i], min(most, text.LongestWord(length.Words(head), headStyle())))
	}
	return widths
}
