package screen

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/wording"
)

// Rules of this file: figures stand on the page with the words and numbers of the report, in
// its order, and in tables that say to whom a number belongs. Numbers end at the right; where all
// of a column are numbers, their wholes end, and their fractions begin, under one another. What
// widths that takes is said in classes, for the page has no style of its own. How it looks is
// in figures.css, and how it is put together in figures.html.

// figureReport is a report as it stands on the page.
type figureReport struct {
	Units    []choices
	Title    string
	Notes    []string
	Sections []figureSection
}

// figureSection is a section of it.
type figureSection struct {
	Title  string
	Tables []figureTable
	Lines  mark.Lines
	Lay    *lay // nil for most
}

// figureTable is a table.
type figureTable struct {
	ID      string
	Caption string
	// Silent is the caption of a table that has none of its own: only read aloud.
	Silent string
	// Scrolls marks one that a narrow window does not hold: it is moved by itself, so it can
	// have the focus.
	Scrolls bool
	Heads   []string // none where the table has none
	Rows    []figureRow
	Lines   mark.Lines
}

// figureRow is a row: a heading and what stands behind it.
type figureRow struct {
	Total bool
	Name  string
	Cells []figureCell
}

// figureCell is a number, or words among numbers.
type figureCell struct {
	Before string // what ends where the fractions of the column begin, with the space behind it
	// Part is the fraction, and Behind what follows it, such as the other system in brackets.
	// Of each the class says how much room the column keeps for it; "" keeps none.
	Part, PartRoom     string
	Behind, BehindRoom string
	Words              bool // it is no number, or stands among words
}

// newFigures puts a report on the page.
func newFigures(r mark.Report) *figureReport {
	f := &figureReport{Title: r.Title}
	for _, note := range r.Notes {
		f.Notes = append(f.Notes, unbroken(note))
	}
	for i, section := range r.Sections {
		s := figureSection{Title: section.Title, Lines: figureLines(section.Lines)}
		for k, t := range section.Tables {
			s.Tables = append(s.Tables, newFigureTable(fmt.Sprintf("table-%d-%d", i+1, k+1), section.Title, t))
		}
		if section.Picture != nil {
			s.Lay = newLay(fmt.Sprintf("lay-%d", i+1), *section.Picture)
		}
		f.Sections = append(f.Sections, s)
	}
	return f
}

// figureLines puts sentences on the page.
func figureLines(said mark.Lines) mark.Lines {
	lines := slices.Clone(said)
	for i := range lines {
		lines[i].Text = unbroken(lines[i].Text)
	}
	return lines
}

// unbroken keeps every measure of a text in one line.
func unbroken(text string) string {
	words := length.Words(text)
	for i, word := range words {
		words[i] = strings.ReplaceAll(word, " ", "\u00a0")
	}
	return strings.Join(words, " ")
}

// newFigureTable puts a table of a section on the page.
func newFigureTable(id, section string, t mark.Table) figureTable {
	f := figureTable{ID: id, Caption: t.Title, Lines: figureLines(t.Lines)}
	if t.Title == "" {
		f.Silent = section
		if len(t.Heads) > 0 && t.Heads[0] != "" {
			f.Silent = strings.TrimPrefix(section+": "+t.Heads[0], ": ")
		}
	}
	columns := t.Columns()
	if len(t.Heads) > 0 {
		f.Heads = slices.Concat(t.Heads, make([]string, columns-len(t.Heads)))
	}
	cells := make([][]figureCell, columns)
	for i := 1; i < columns; i++ {
		cells[i] = column(t, i)
	}
	f.Scrolls = lettersAcross(t, cells) > narrowLetters
	for k, row := range t.Rows {
		r := figureRow{Total: row.Total, Name: unbroken(cellAt(row, 0))}
		for i := 1; i < columns; i++ {
			r.Cells = append(r.Cells, cells[i][k])
		}
		f.Rows = append(f.Rows, r)
	}
	return f
}

// cellAt is a cell of a row; "" where it has none.
func cellAt(row mark.Row, i int) string {
	if i < len(row.Cells) {
		return row.Cells[i]
	}
	return ""
}

// narrowLetters is how many letters of numbers a window has room for beside names that wrap, where
// it is as narrow as a small telephone: 320 px, at 9 px to a figure.
const narrowLetters = 23

// lettersAcross is how many letters the columns of a table take, each with the gap before it, but
// for the first, which is words, that wrap.
func lettersAcross(t mark.Table, columns [][]figureCell) int {
	sum := 0
	for i := 1; i < len(columns); i++ {
		head, before, part, behind := 0, 0, 0, 0
		if len(t.Heads) > i {
			head = longestWord(t.Heads[i])
		}
		for _, c := range columns[i] {
			before, part, behind = max(before, longestWord(c.Before)), max(part, letters(c.Part)), max(behind, letters(c.Behind))
		}
		sum += max(head, before+part+behind) + 1
	}
	return sum
}

// longestWord is how many letters the longest part of a text has that is not broken.
func longestWord(text string) int {
	longest := 0
	for _, word := range length.Words(text) {
		longest = max(longest, letters(word))
	}
	return longest
}

// letters is how many letters a text has.
func letters(text string) int { return utf8.RuneCountInString(text) }

// aNumber is a number as a report has it, that of a whole with a fraction or of one with
// decimals, and what stands behind it: a unit, and the other system in brackets. A dash stands
// where there is none.
var aNumber = wording.FormOf(`^(?:(?:([-−]?\d+) )?([-−]?\d+/\d+)|([-−]?\d+|–)(\.\d+)?)(?: ((?:(?:in|cm|mm|m|yd|%)(?: |$))?(?:\([^()]*\))?))?$`)

// column puts the cells of a column on the page.
func column(t mark.Table, i int) []figureCell {
	cells := make([]figureCell, len(t.Rows))
	part, behind, space := 0, 0, ""
	for k, row := range t.Rows {
		text := cellAt(row, i)
		found := aNumber().FindStringSubmatch(text)
		switch {
		case text == "":
			continue
		case found == nil:
			return columnOfWords(t, i)
		case found[2] != "":
			space = " "
		}
		cells[k] = figureCell{Before: found[1] + found[3], Part: found[2] + found[4], Behind: found[5]}
		part, behind = max(part, letters(cells[k].Part)), max(behind, letters(found[5]))
	}
	for k := range cells {
		c := &cells[k]
		if cellAt(t.Rows[k], i) == "" {
			continue
		}
		if space != "" && strings.HasPrefix(c.Part, ".") { // one in another unit than the others
			c.Before, c.Part = c.Before+c.Part, ""
		}
		if c.Before != "" {
			c.Before += space
		}
		c.PartRoom, c.BehindRoom = roomFor(part), roomFor(behind)
	}
	return cells
}

// columnOfWords puts the cells of a column on the page of which one at least is no number.
func columnOfWords(t mark.Table, i int) []figureCell {
	cells := make([]figureCell, len(t.Rows))
	for k, row := range t.Rows {
		cells[k] = figureCell{Before: unbroken(cellAt(row, i)), Words: true}
	}
	return cells
}

// mostRoom is for how many letters there is a class that keeps room for them.
const mostRoom = 12

// roomFor is the class of what keeps room for so many letters; "" for none.
func roomFor(letters int) string {
	if letters == 0 {
		return ""
	}
	return fmt.Sprintf("w%d", min(letters, mostRoom))
}
