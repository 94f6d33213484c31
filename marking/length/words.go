package length

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Rules of this file: where a sentence of a report may be broken, on a screen and on paper
// alike.

// Words takes a text apart at its spaces, but never inside a measure, nor between "page" and its
// number: "17 11/16 in" is one word, so that no line ends in it.
func Words(text string) []string {
	all := strings.Fields(text)
	words := all[:0]
	for _, word := range all {
		if last := len(words) - 1; last >= 0 && (endsInNumber(words[last]) && (isFraction(word) || isUnit(word)) || countsPages(words[last]) && beginsInNumber(word)) {
			words[last] += " " + word
		} else {
			words = append(words, word)
		}
	}
	return words
}

// endsInNumber reports whether the last sign of a word is a digit, or a fraction
// of one letter.
func endsInNumber(word string) bool {
	r, _ := utf8.DecodeLastRuneInString(word)
	return unicode.IsNumber(r)
}

// beginsInNumber reports whether the first sign of a word is a digit.
func beginsInNumber(word string) bool {
	r, _ := utf8.DecodeRuneInString(word)
	return unicode.IsDigit(r)
}

// countsPages reports whether the number of a page stands behind a word.
func countsPages(word string) bool { return word == "page" || word == "pages" }

// isFraction reports whether a word begins as "11/16" does, or with a fraction of
// one letter.
func isFraction(word string) bool {
	r, _ := utf8.DecodeRuneInString(word)
	return unicode.IsDigit(r) && strings.Contains(word, "/") || unicode.Is(unicode.No, r)
}

// isUnit reports whether a word is what follows the number of a measure, with or
// without the sign that ends a clause.
func isUnit(word string) bool {
	switch strings.TrimRight(word, ".,;:!?)}]”\"'") {
	case "in", "cm", "mm", "m", "yd", "%":
		return true
	}
	return false
}
