package wording

import (
	"fmt"
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

// mostNamed is how many names a message lists.
const mostNamed = 12

// QuotedFew gives names as Quoted does; of more than a dozen the first dozen, and how many more
// there are.
func QuotedFew(names []string) []string {
	few := make([]string, 0, mostNamed+1)
	for i, name := range names {
		if i == mostNamed {
			return append(few, fmt.Sprintf("%d more", len(names)-i))
		}
		few = append(few, Quoted(name))
	}
	return few
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
