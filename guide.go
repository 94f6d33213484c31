package main

import (
	"embed"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"

	"tuckmark/marking/source"
	"tuckmark/marking/terminal"
)

// Rules of this file: the guide is what lies in examples/guide, and help prints from the same
// text. A section ends at the next heading, of whatever depth. A table of keys says in its first
// heading cell under which table of the file they stand, `[piece.front.tuck.yoke]`, or that they
// stand at the top of the file; each row has one key or several, in backquotes.

//go:embed examples/guide/*.md
var guideFiles embed.FS

// guideFolder is where the pages of the guide lie.
const guideFolder = "examples/guide"

// atTheTop is the first heading cell of a table of the keys at the top of the file.
const atTheTop = "at the top of the file"

// guideSection is a part of the guide.
type guideSection struct {
	heading string
	depth   int      // of the heading: 1 of that of a page
	text    []string // its lines, as they are printed below the heading
	keys    []guideKeys
}

// guideKeys is a table of keys.
type guideKeys struct {
	under string // the table of the file, as source calls it; "" at the top
	shown string // as the guide has it: "under [piece.front.tuck.yoke]"
	rows  []guideRow
}

// guideRow is what is said of some keys.
type guideRow struct {
	keys []string
	says string
}

// readGuide returns the sections of the guide in their order, the page on the file first.
func readGuide() []guideSection {
	names, err := fs.Glob(guideFiles, guideFolder+"/*.md")
	if err != nil {
		return nil // the pattern is none, which it is
	}
	var all []guideSection
	for _, name := range names {
		data, err := guideFiles.ReadFile(name)
		if err != nil {
			continue // what is built in can be read
		}
		all = append(all, readPage(data)...)
	}
	return all
}

// readPage returns the sections of one page.
func readPage(data []byte) []guideSection {
	page := parsedMarkdown(data)
	var all []guideSection
	for node := page.FirstChild(); node != nil; node = node.NextSibling() {
		if heading, is := node.(*ast.Heading); is {
			all = append(all, guideSection{heading: inline(heading, data), depth: heading.Level})
			continue
		}
		if len(all) == 0 {
			continue // it stands above all headings
		}
		s := &all[len(all)-1]
		lines := blockLines(node, data, guideWidth)
		if len(lines) > 0 && len(s.text) > 0 {
			lines = slices.Insert(lines, 0, "")
		}
		s.text = append(s.text, lines...)
		if isTableOfPage(node, data) {
			if keys, ofKeys := readKeys(tableCells(node, data)); ofKeys {
				s.keys = append(s.keys, keys)
			}
		}
	}
	return all
}

// readKeys returns a table as one of keys, and whether it is one.
func readKeys(cells [][]string) (guideKeys, bool) {
	k := guideKeys{shown: plainKeys(cells[0][0])}
	if k.shown != atTheTop {
		where, key, _ := strings.Cut(cells[0][0], "`")
		if where != "under " && where != "in " {
			return guideKeys{}, false // of another kind of data than the file
		}
		key, _, named := strings.Cut(key, "`")
		under, known := source.TableNamed(strings.Trim(key, "[]"))
		if !named || !known || under == "" {
			return guideKeys{}, false
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
		k.rows = append(k.rows, guideRow{keys, row[1]})
	}
	return k, true
}

// whole is a section under its heading.
func (s guideSection) whole() []string {
	return append([]string{s.heading, strings.Repeat("-", utf8.RuneCountInString(s.heading)), ""}, s.text...)
}

// lines are some rows of a table of keys, under where they stand.
func (k guideKeys) lines(heading string, rows []guideRow) []string {
	cells := [][]string{{fmt.Sprintf("%s, %s", heading, k.shown), ""}}
	for _, row := range rows {
		cells = append(cells, []string{strings.Join(row.keys, ", "), row.says})
	}
	return tableLines(cells, guideWidth)
}

// explained lists what help explains: the pages, and their sections with the keys that these have.
func explained(guide []guideSection) []string {
	var lines []string
	for _, s := range guide {
		if s.depth == 1 {
			lines = append(lines, "", strings.ToUpper(s.heading)+":")
			continue
		}
		said := strings.ToLower(s.heading)
		if keys := s.keyNames(); len(keys) > 0 {
			said += ": " + strings.Join(keys, ", ")
		}
		begin := "   "
		for _, line := range terminal.Wrapped(said, guideWidth-6) {
			lines = append(lines, begin+line)
			begin = "      "
		}
	}
	return lines
}

// keyNames are the keys that a section has rows for.
func (s guideSection) keyNames() []string {
	var keys []string
	for _, k := range s.keys {
		for _, row := range k.rows {
			keys = append(keys, row.keys...)
		}
	}
	return keys
}
