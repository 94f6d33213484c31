package paper

import (
	"fmt"
	"strings"
)

// Rules of this file: counts and lists, as a sentence says them.

// ListOf joins names as a sentence does: "a, b and c".
func ListOf(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	last := len(names) - 1
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// SomeNames joins the first names and counts the others.
func SomeNames(names []string, shown int) string {
	text := strings.Join(names[:shown], ", ")
	if rest := len(names) - shown; rest > 0 {
		text += fmt.Sprintf(" and %d more", rest)
	}
	return text
}

// Counted is a number and its noun: "1 page", "18,432 pages".
func Counted(n int, noun string) string {
	if n != 1 {
		noun += "s"
	}
	return Thousands(n) + " " + noun
}

// Thousands is a whole number, not negative, with its thousands set apart.
func Thousands(n int) string {
	s := fmt.Sprint(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}
