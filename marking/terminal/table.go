package terminal

import (
	"fmt"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
)

// Rules of this file. Words stand at the left, numbers at the right. A column is as wide
// as its widest cell, but that of words, which wrap to leave the numbers room.

const (
	columnGap  = 2  // letters between two columns
	leastFirst = 16 // letters that a word in the first column keeps, whatever the others need
	headWidth  = 11 // letters of a head over numbers, before it wraps
)

// tableLines sets a table in columns.
func tableLines(t mark.Table, width int) []string {
	widths := columnWidths(t)
	if len(widths) == 0 {
		return nil
	}
	for _, w := range widths[1:] {
		width -= columnGap + w
	}
	widths[0] = min(widths[0], max(longestWord(t), width))

	var lines []string
	if t.Heads != nil {
		lines = rowLines(t.Heads, widths)
	}
	for _, r := range t.Rows {
		if r.Total {
			rules := make([]string, len(widths))
			for i, cell := range r.Cells {
				if i > 0 && cell != "" {
					rules[i] = strings.Repeat("-", widths[i])
				}
			}
			lines = append(lines, rowLines(rules, widths)...)
		}
		lines = append(lines, rowLines(r.Cells, widths)...)
	}
	return lines
}

// columnWidths is how wide each column is where nothing of it wraps but heads over numbers.
func columnWidths(t mark.Table) []int {
	widths := make([]int, t.Columns())
	for i, head := range t.Heads {
		widths[i] = letters(head)
		if i > 0 {
			widths[i] = max(min(headWidth, widths[i]), longest(strings.Fields(head)))
		}
	}
	for _, r := range t.Rows {
		for i, cell := range r.Cells {
			widths[i] = max(widths[i], letters(cell))
		}
	}
	return widths
}

// longestWord is how wide the first column is at least.
func longestWord(t mark.Table) int {
	var words []string
	if len(t.Heads) > 0 {
		words = length.Words(t.Heads[0])
	}
	for _, r := range t.Rows {
		if len(r.Cells) > 0 {
			words = append(words, length.Words(r.Cells[0])...)
		}
	}
	return max(1, min(longest(words), leastFirst))
}

// longest is how wide the longest of some words is; 0 for none.
func longest(words []string) int {
	most := 0
	for _, word := range words {
		most = max(most, letters(word))
	}
	return most
}

// rowLines sets the cells of one row, each wrapped in its column; what is shorter
// stands at the foot, so that heads stand on their numbers.
func rowLines(cells []string, widths []int) []string {
	parts := make([][]string, len(widths))
	high := 1
	for i, cell := range cells {
		parts[i] = Wrapped(cell, widths[i])
		high = max(high, len(parts[i]))
	}
	lines := make([]string, high)
	for i, w := range widths {
		for k := range lines {
			cell := ""
			if at := k - (high - len(parts[i])); at >= 0 {
				cell = parts[i][at]
			}
			if i == 0 {
				lines[k] = fmt.Sprintf("%-*s", w, cell)
			} else {
				lines[k] += fmt.Sprintf("%*s", columnGap+w, cell)
			}
		}
	}
	return lines
}
