package guide

import (
	"strings"
	"unicode"
)

// timesIn is how many times a text has words, but for capitals, signs and the s of several.
func timesIn(text, words string) int {
	words = plainWords(words)
	if words == "" {
		return 0
	}
	// A space that ends one of them may begin the next.
	return strings.Count(" "+strings.ReplaceAll(plainWords(text), " ", "  ")+" ", " "+strings.ReplaceAll(words, " ", "  ")+" ")
}

// hasWords reports whether a text has words in it, but for capitals, signs and the s of several.
func hasWords(text, words string) bool { return timesIn(text, words) > 0 }

// Alike tells words that are the same as this one, but for capitals and for one or several.
func Alike(word string) func(string) bool {
	word = plainWords(word)
	return func(other string) bool { return other != "" && plainWords(other) == word }
}

// plainWords are the words of a text without capitals, signs and the s of several.
func plainWords(text string) string {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	for i, word := range words {
		if len(word) > 2 {
			words[i] = strings.TrimSuffix(word, "s")
		}
	}
	return strings.Join(words, " ")
}

// Apart puts a blank line between two parts of an answer.
func Apart(before, part []string) []string {
	if len(before) > 0 && len(part) > 0 {
		before = append(before, "")
	}
	return append(before, part...)
}
