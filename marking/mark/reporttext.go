package mark

import (
	"slices"
	"strings"
	"unicode/utf8"

	"tuckmark/marking/length"
)

// Rules of this file: a report as plain text, for a screen that is so many letters
// wide. Words wrap; a number is never parted. What has to be looked at begins with "!".

const (
	textIndent = 2  // letters before everything under a heading
	textGap    = 2  // letters between two columns
	leastFirst = 16 // letters that a word in the first column keeps, whatever the others need
	headWidth  = 11 // letters of a head over numbers, before it wraps
	writeRule  = 30 // letters of a line to write on
)

// pictureNote stands for a picture, which a screen of letters cannot show.
const pictureNote = "How it lies is drawn in the PDF that `tuckmark sheet` makes."

// Text gives the report as plain text of at most so many letters in a line, or a few
// more where the numbers of a table need them.
func (r Report) Text(width int) string {
	var b strings.Builder
	paragraph := func(first, rest, text string) {
		for i, line := range wrapped(text, width-utf8.RuneCountInString(first)) {
			if i > 0 {
				first = rest
			}
			b.WriteString(first + line + "\n")
		}
	}
	if r.Title != "" {
		paragraph("", "", r.Title)
	}
	for _, note := range r.Notes {
		paragraph("", "", note)
	}
	indent := strings.Repeat(" ", textIndent)
	say := func(all []Sentence) {
		for _, s := range all {
			first := indent
			if s.Warning {
				first = "! "
			}
			text := s.Text
			if s.Blank {
				text += " " + strings.Repeat("_", writeRule)
			}
			paragraph(first, indent, text)
		}
	}
	for _, s := range r.Sections {
		b.WriteString("\n")
		paragraph("", "", s.Title)
		b.WriteString(strings.Repeat("-", min(width, utf8.RuneCountInString(s.Title))) + "\n")
		for i, t := range s.Tables {
			if i > 0 {
				b.WriteString("\n")
			}
			if t.Title != "" {
				paragraph(indent, indent, t.Title)
			}
			for _, line := range t.text(width - textIndent) {
				b.WriteString(strings.TrimRight(indent+line, " ") + "\n")
			}
			say(t.Lines)
		}
		if len(s.Tables) > 0 && len(s.Lines) > 0 {
			b.WriteString("\n")
		}
		say(s.Lines)
		if s.Picture != nil {
			paragraph(indent, indent, pictureNote)
		}
	}
	return b.String()
}

// text sets a table in columns: words at the left, numbers at the right.
func (t Table) text(width int) []string {
	columns := len(t.Heads)
	for _, r := range t.Rows {
		columns = max(columns, len(r.Cells))
	}
	if columns == 0 {
		return nil
	}
	widths := make([]int, columns)
	for _, r := range t.Rows {
		for i, cell := range r.Cells {
			widths[i] = max(widths[i], utf8.RuneCountInString(cell))
		}
	}
	for i, head := range t.Heads {
		if i > 0 {
			widths[i] = max(widths[i], min(headWidth, utf8.RuneCountInString(head)))
			for _, word := range strings.Fields(head) {
				widths[i] = max(widths[i], utf8.RuneCountInString(word))
			}
		} else {
			widths[0] = max(widths[0], utf8.RuneCountInString(head))
		}
	}
	numbers := 0
	for _, w := range widths[1:] {
		numbers += textGap + w
	}
	widths[0] = min(widths[0], max(t.leastFirst(), width-numbers))

	var lines []string
	row := func(cells []string) {
		lines = append(lines, columnLines(cells, widths)...)
	}
	if t.Heads != nil {
		row(t.Heads)
	}
	for _, r := range t.Rows {
		if r.Total {
			rules := make([]string, columns)
			for i, cell := range r.Cells {
				if i > 0 && cell != "" {
					rules[i] = strings.Repeat("-", widths[i])
				}
			}
			row(rules)
		}
		row(r.Cells)
	}
	return lines
}

// leastFirst is how wide the first column is at least: as its longest word.
func (t Table) leastFirst() int {
	cells := slices.Clone(t.Heads[:min(1, len(t.Heads))])
	for _, r := range t.Rows {
		cells = append(cells, r.Cells[0])
	}
	longest := 1
	for _, word := range length.Words(strings.Join(cells, " ")) {
		longest = max(longest, utf8.RuneCountInString(word))
	}
	return min(longest, leastFirst)
}

// columnLines sets the cells of one row, each wrapped in its column; what is shorter
// stands at the foot, so that heads stand on their numbers.
func columnLines(cells []string, widths []int) []string {
	parts := make([][]string, len(cells))
	high := 1
	for i, cell := range cells {
		parts[i] = wrapped(cell, widths[i])
		high = max(high, len(parts[i]))
	}
	lines := make([]string, high)
	for i, w := range widths {
		for k := range lines {
			cell := ""
			if i < len(parts) {
				if at := k - (high - len(parts[i])); at >= 0 {
					cell = parts[i][at]
				}
			}
			pad := strings.Repeat(" ", max(0, w-utf8.RuneCountInString(cell)))
			if i == 0 {
				lines[k] += cell + pad
			} else {
				lines[k] += strings.Repeat(" ", textGap) + pad + cell
			}
		}
	}
	return lines
}

// wrapped parts a text into lines of at most limit letters, between words; a word that
// is longer has a line of its own. A length with its unit is one word.
func wrapped(text string, limit int) []string {
	lines := []string{""}
	for _, word := range length.Words(text) {
		last := &lines[len(lines)-1]
		switch {
		case *last == "":
			*last = word
		case utf8.RuneCountInString(*last)+1+utf8.RuneCountInString(word) <= limit:
			*last += " " + word
		default:
			lines = append(lines, word)
		}
	}
	return lines
}
