package main

import (
	"fmt"
	"hash/crc32"
	"path/filepath"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Rules of this file: a PDF lies beside its file, under its name. What is made of a part
// has the part in its name, so that it replaces nothing that was made of all, or of another
// part: no two parts of a file have one name, also where capitals do not count.

const (
	// mostPartName is how long the names of pieces may be together, in bytes, to stand in
	// the name of a file. A longer list is cut there, and told apart by a sum of it.
	mostPartName = 60
	// betweenPieces stands between the names of two pieces, and in none of them.
	betweenPieces = "+"
)

// behindFile are what stands behind the name of a file in that of what is made of it: a
// piece that is called so is called something more.
var behindFile = []string{firstPageFile, gaugesFile, viewFile}

// viewFile is what a view is called behind its name.
const viewFile = "-view"

// outName is the name of the PDF that is made of a file, or of the pieces with some keys of
// all that it has, in one of its views, with what it is behind it.
func outName(in string, all, part, views []string, view, behind string) string {
	name := strings.TrimSuffix(in, filepath.Ext(in))
	words := fileWords(all, part)
	if view != "" {
		words = append(words, fileWords(views, []string{view})...)
		behind = viewFile + behind
	}
	if len(words) > 0 {
		behind = "-" + together(words) + behind
	}
	if behind == "" {
		return name + ".pdf"
	}
	name += behind
	for exists(name + ".toml") { // a file of its own, whose PDF this would be
		name += "--part" // no name of a piece has two hyphens together
	}
	return name + ".pdf"
}

// fileWords are what some keys are called in the name of a file; no two of all are called
// alike.
func fileWords(all, some []string) (words []string) {
	taken := map[string]bool{}
	for _, key := range all {
		word, plain := fileWord(key), fileWord(key)
		for n := 2; taken[strings.ToLower(word)]; n++ {
			word = fmt.Sprintf("%s-%d", plain, n)
		}
		taken[strings.ToLower(word)] = true
		if slices.Contains(some, key) {
			words = append(words, word)
		}
	}
	return words
}

// together is what several words are in the name of a file.
func together(words []string) string {
	name := strings.Join(words, betweenPieces)
	if len(name) <= mostPartName {
		return name
	}
	cut := name[:mostPartName]
	for !utf8.ValidString(cut) {
		cut = cut[:len(cut)-1]
	}
	return fmt.Sprintf("%s-%08x", strings.TrimRight(cut, "-"+betweenPieces), crc32.ChecksumIEEE([]byte(name)))
}

// fileWord writes a key with letters, digits and hyphens alone.
func fileWord(key string) string {
	apart := func(r rune) bool { return !unicode.In(r, unicode.Letter, unicode.Mark, unicode.Digit) }
	word := strings.Join(strings.FieldsFunc(key, apart), "-")
	if word == "" {
		word = "piece"
	}
	if slices.ContainsFunc(behindFile, func(behind string) bool { return strings.HasSuffix("-"+strings.ToLower(word), behind) }) {
		word += "-piece"
	}
	return word
}
