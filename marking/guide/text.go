package guide

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"

	"tuckmark/marking/terminal"
)

// Rules of this file: the guide as plain text in lines of at most Width letters, but for
// examples, which stay as they are. Pictures are left out; of a link its words are left. What
// stands in backquotes keeps them, but for the keys of a table, which stand by themselves, and what
// has quotes of its own.

const (
	// Width is how many letters a line has at most.
	Width = terminal.Width
	// exampleIndent stands before the lines of an example.
	exampleIndent = "    "
	// widestKey is how wide the first column of a table is at most; a longer key has a line of
	// its own.
	widestKey = 18
)

// parsedMarkdown returns the blocks of a text.
func parsedMarkdown(data []byte) ast.Node {
	return parser.NewParser(
		parser.WithBlockParsers(parser.DefaultBlockParsers()...),
		parser.WithInlineParsers(parser.DefaultInlineParsers()...),
		parser.WithParagraphTransformers(parser.DefaultParagraphTransformers()...),
	).Parse(text.NewReader(data))
}

// blockLines are the lines of a block of the guide.
func blockLines(node ast.Node, data []byte, width int) []string {
	switch node := node.(type) {
	case *ast.FencedCodeBlock, *ast.CodeBlock:
		var lines []string
		for _, line := range node.Lines().Sliced(0, node.Lines().Len()) {
			lines = append(lines, strings.TrimRight(exampleIndent+string(line.Value(data)), " \n"))
		}
		return lines
	case *ast.List:
		return listLines(node, data, width)
	case *ast.Paragraph, *ast.TextBlock, *ast.Heading:
		if isTableOfPage(node, data) {
			return Table(tableCells(node, data), width)
		}
		if said := inline(node, data); said != "" {
			return terminal.Wrapped(said, width)
		}
	}
	return nil
}

// listLines are the lines of a list, numbered or not.
func listLines(list *ast.List, data []byte, width int) []string {
	var lines []string
	number := list.Start
	for item := list.FirstChild(); item != nil; item = item.NextSibling() {
		begin := "- "
		if list.IsOrdered() {
			begin = strconv.Itoa(number) + ". "
			number++
		}
		indent := strings.Repeat(" ", len(begin))
		for i, line := range itemLines(item, data, width-len(begin)) {
			if i > 0 {
				begin = indent
			}
			lines = append(lines, strings.TrimRight(begin+line, " "))
		}
	}
	return lines
}

// itemLines are the lines of one part of a list.
func itemLines(item ast.Node, data []byte, width int) []string {
	var lines []string
	for block := item.FirstChild(); block != nil; block = block.NextSibling() {
		lines = append(lines, blockLines(block, data, width)...)
	}
	return lines
}

// isTableOfPage reports whether a block is a table. The library has tables apart, with much that
// would have to be made ready at every start of the program; without it they are paragraphs.
func isTableOfPage(node ast.Node, data []byte) bool {
	return node.Kind() == ast.KindParagraph && bytes.HasPrefix(node.Lines().Value(data), []byte("|"))
}

// tableCells are the cells of a table, row by row, the heading first. No cell has a stroke in it.
func tableCells(table ast.Node, data []byte) [][]string {
	var rows [][]string
	for line := range bytes.Lines(table.Lines().Value(data)) {
		if len(bytes.Trim(line, "|-: \n")) == 0 {
			continue // it parts the heading from the rows
		}
		row := strings.Split(strings.Trim(inline(parsedMarkdown(line).FirstChild(), line), "|"), "|")
		for i := range row {
			row[i] = strings.TrimSpace(row[i])
		}
		rows = append(rows, row)
	}
	return rows
}

// Table are the lines of a table: the first column by itself, and behind it what the
// others say.
func Table(rows [][]string, width int) []string {
	column := 0
	for _, row := range rows[1:] {
		if n := utf8.RuneCountInString(PlainKeys(row[0])); n <= widestKey {
			column = max(column, n)
		}
	}
	lines := terminal.Wrapped(PlainKeys(rows[0][0])+":", width)
	for _, row := range rows[1:] {
		lines = append(lines, rowLines(row, column, width)...)
	}
	return lines
}

// rowLines are the lines of a row whose first column is so many letters wide.
func rowLines(row []string, column, width int) []string {
	first := terminal.Wrapped(PlainKeys(row[0]), width-2)
	indent := strings.Repeat(" ", column+4)
	says := strings.Join(slices.DeleteFunc(slices.Clone(row[1:]), func(cell string) bool { return cell == "" }), "; ")
	lines := terminal.Wrapped(says, width-len(indent))
	for i := range lines {
		lines[i] = indent + lines[i]
	}
	if n := utf8.RuneCountInString(first[0]); len(first) == 1 && n <= column {
		lines[0] = "  " + first[0] + lines[0][n+2:]
		return lines
	}
	for i := range first {
		first[i] = "  " + first[i]
	}
	return append(first, lines...)
}

// marked puts backquotes round an example in a sentence, where it has no quotes of its own.
func marked(example string) string {
	if strings.HasPrefix(example, `"`) && strings.HasSuffix(example, `"`) {
		return example
	}
	return "`" + example + "`"
}

// PlainKeys is a cell of keys without its backquotes.
func PlainKeys(cell string) string { return strings.ReplaceAll(cell, "`", "") }

// stressed are the words of a block that stand in bold letters.
func stressed(block ast.Node, data []byte) []string {
	var all []string
	for child := block.FirstChild(); child != nil; child = child.NextSibling() {
		if stress, is := child.(*ast.Emphasis); is && stress.Level == 2 {
			all = append(all, inline(stress, data))
		} else {
			all = append(all, stressed(child, data)...)
		}
	}
	return all
}

// inline is what a block says, on one line.
func inline(node ast.Node, data []byte) string {
	var b strings.Builder
	for child := node.FirstChild(); child != nil; child = child.NextSibling() {
		switch child := child.(type) {
		case *ast.Text:
			b.Write(child.Value(data))
			if child.SoftLineBreak() || child.HardLineBreak() {
				b.WriteByte(' ')
			}
		case *ast.String:
			b.Write(child.Value)
		case *ast.CodeSpan:
			b.WriteString(marked(inline(child, data)))
		case *ast.AutoLink:
			b.Write(child.Label(data))
		case *ast.Image, *ast.RawHTML:
			// A screen of letters has no pictures.
		default:
			b.WriteString(inline(child, data))
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}
