package terminal

import (
	"slices"
	"strings"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"unicode/utf8"
)

// tableLines sets a table in columns: words at the left, numbers at the right.
func tableLines(t mark.Table, width int) []string {
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
	widths[0] = min(widths[0], max(leastFirstOf(t), width-numbers))

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

// leastFirstOf is how wide the first column is at least: as its longest word.
func leastFirstOf(t mark.Table) int {
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
