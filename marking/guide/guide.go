package guide

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"

	"tuckmark/marking/source"
	"tuckmark/marking/terminal"
)

// Rules of this file: the guide is what lies in pages of Markdown, and help prints from the same
// text. A section ends at the next heading, of whatever depth. A table of keys says in its first
// heading cell under which table of the file they stand, `[piece.front.tuck.yoke]`, or that they
// stand at the top of the file; each row has one key or several, in backquotes. A table of words
// of the trade says of words that are none of the file how what they name is written. A paragraph,
// or a part of a list, is about what stands in bold letters in it.

// atTheTop is the first heading cell of a table of the keys at the top of the file.
const atTheTop = "at the top of the file"

// ofTheTrade is the first heading cell of a table of words of the trade.
const ofTheTrade = "word of the trade"

// Guide are the sections of the guide in their order.
type Guide []section

// section is a part of the guide.
type section struct {
	heading string
	depth   int      // of the heading: 1 of that of a page
	text    []string // its lines, as they are printed below the heading
	spoken  []string // of those the lines that are no example
	keys    []keyTable
	trade   []keyRow // words of the trade, where keys would be
	about   []term
}

// term is a paragraph, or a part of a list, and what it is about.
type term struct {
	words []string
	lines []string // as they are printed, indented
}

// keyTable is a table of keys.
type keyTable struct {
	under string // the table of the file, as source calls it; "" at the top
	shown string // as the guide has it: "under [piece.front.tuck.yoke]"
	rows  []keyRow
}

// keyRow is what is said of some keys.
type keyRow struct {
	keys []string
	says string
}

// Read returns the guide whose pages lie in a folder, one after the other by their names; without
// pages it is empty.
func Read(pages fs.FS) Guide {
	names, err := fs.Glob(pages, "*.md")
	if err != nil {
		return nil // the pattern is none, which it is
	}
	var all Guide
	for _, name := range names {
		data, err := fs.ReadFile(pages, name)
		if err != nil {
			continue // what is built in can be read
		}
		all = append(all, readPage(data)...)
	}
	return all
}

// readPage returns the sections of one page.
func readPage(data []byte) Guide {
	page := parsedMarkdown(data)
	var all Guide
	for node := page.FirstChild(); node != nil; node = node.NextSibling() {
		if heading, is := node.(*ast.Heading); is {
			all = append(all, section{heading: inline(heading, data), depth: heading.Level})
			continue
		}
		if len(all) == 0 {
			continue // it stands above all headings
		}
		s := &all[len(all)-1]
		lines := blockLines(node, data, Width)
		if len(lines) > 0 && len(s.text) > 0 {
			lines = slices.Insert(lines, 0, "")
		}
		s.text = append(s.text, lines...)
		s.readBlock(node, data, lines)
	}
	return all
}

// readBlock takes from a block, of these lines, what help looks for.
func (s *section) readBlock(node ast.Node, data []byte, lines []string) {
	switch {
	case isTableOfPage(node, data):
		cells := tableCells(node, data)
		if keys, ofKeys := readKeys(cells); ofKeys {
			s.keys = append(s.keys, keys)
		} else if cells[0][0] == ofTheTrade {
			for _, row := range cells[1:] {
				s.trade = append(s.trade, keyRow{strings.Split(row[0], ", "), row[1]})
			}
		}
	case node.Kind() == ast.KindList:
		for item := node.FirstChild(); item != nil; item = item.NextSibling() {
			s.readTerm(item, data, itemLines(item, data, Width-2))
		}
	case node.Kind() == ast.KindParagraph:
		s.readTerm(node, data, blockLines(node, data, Width-2))
	default:
		return
	}
	s.spoken = append(s.spoken, lines...)
}

// readTerm takes what a block is about, if it says so.
func (s *section) readTerm(node ast.Node, data []byte, lines []string) {
	if words := stressed(node, data); len(words) > 0 {
		for i := range lines {
			lines[i] = "  " + lines[i]
		}
		s.about = append(s.about, term{words, lines})
	}
}

// readKeys returns a table as one of keys, and whether it is one.
func readKeys(cells [][]string) (keyTable, bool) {
	k := keyTable{shown: PlainKeys(cells[0][0])}
	if k.shown != atTheTop {
		where, key, _ := strings.Cut(cells[0][0], "`")
		if where != "under " && where != "in " {
			return keyTable{}, false // of another kind of data than the file
		}
		key, _, named := strings.Cut(key, "`")
		under, known := source.TableNamed(strings.Trim(key, "[]"))
		if !named || !known || under == "" {
			return keyTable{}, false
		}
		k.under = under
	}
	for _, row := range cells[1:] {
		var keys []string
		for i, part := range strings.Split(row[0], "`") {
			if i%2 == 1 {
				keys = append(keys, part)
			}
		}
		k.rows = append(k.rows, keyRow{keys, row[1]})
	}
	return k, true
}

// whole is a section under its heading.
func (s section) whole() []string {
	return append([]string{s.heading, strings.Repeat("-", utf8.RuneCountInString(s.heading)), ""}, s.text...)
}

// lines are some rows of a table of keys, under where they stand.
func (k keyTable) lines(heading string, rows []keyRow) []string {
	cells := [][]string{{fmt.Sprintf("%s, %s", heading, k.shown), ""}}
	for _, row := range rows {
		cells = append(cells, []string{strings.Join(row.keys, ", "), row.says})
	}
	return Table(cells, Width)
}

// Explained lists what help explains: the pages, and their sections with the keys, or the words of
// the trade, that these have.
func (guide Guide) Explained() []string {
	var lines []string
	for _, s := range guide {
		if s.depth == 1 {
			lines = append(lines, "", strings.ToUpper(s.heading)+":")
			continue
		}
		said := strings.ToLower(s.heading)
		if keys := slices.Concat(s.keyNames(), s.tradeWords()); len(keys) > 0 {
			said += ": " + strings.Join(keys, ", ")
		}
		begin := "   "
		for _, line := range terminal.Wrapped(said, Width-6) {
			lines = append(lines, begin+line)
			begin = "      "
		}
	}
	return lines
}

// Words are the single words of the file that the guide explains, each once: kinds of tables and
// keys.
func (guide Guide) Words() []string {
	var words []string
	for _, s := range guide {
		for _, word := range slices.Concat(s.kinds(), s.keyNames()) {
			if !slices.Contains(words, word) {
				words = append(words, word)
			}
		}
	}
	return words
}

// Names are the other words that find a section: its heading, in small letters, and the words of
// the trade that it has rows for.
func (guide Guide) Names() []string {
	var names []string
	for _, s := range guide {
		names = append(append(names, strings.ToLower(s.heading)), s.tradeWords()...)
	}
	return names
}

// tradeWords are the words of the trade that a section has rows for.
func (s section) tradeWords() []string {
	var words []string
	for _, row := range s.trade {
		words = append(words, row.keys...)
	}
	return words
}

// keyNames are the keys that a section has rows for.
func (s section) keyNames() []string {
	var keys []string
	for _, k := range s.keys {
		for _, row := range k.rows {
			keys = append(keys, row.keys...)
		}
	}
	return keys
}
