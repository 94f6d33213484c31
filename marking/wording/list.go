package wording

import (
	"fmt"
	"slices"
	"strings"
)

// Listed joins words as a sentence does, with "and" or "or" before the last: a, b or c.
// It gives "" for none.
func Listed(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return strings.Join(words[:n], ", ") + " " + last + " " + words[n]
}

// mostNamed is how many things a message lists.
const mostNamed = 12

// Few gives the first dozen of more than a dozen words, and how many more there are; fewer as they
// are.
func Few(words []string) []string { return FirstOf(words, mostNamed) }

// FirstOf gives the first of more than so many words, and how many more there are; fewer as they
// are.
func FirstOf(words []string, most int) []string {
	if more := len(words) - most; more > 0 {
		return append(slices.Clone(words[:most]), fmt.Sprintf("%d more", more))
	}
	return words
}

// QuotedFew gives few of some names, each as Quoted does.
func QuotedFew(names []string) []string {
	var quoted []string
	for _, name := range names {
		quoted = append(quoted, Quoted(name))
	}
	return Few(quoted)
}

// Counted counts things: no point, 1 point, 2 points.
func Counted(n int, thing string) string {
	switch n {
	case 0:
		return "no " + thing
	case 1:
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

// Thousands is a whole number, not negative, with its thousands set apart.
func Thousands(n int) string {
	s := fmt.Sprint(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}
