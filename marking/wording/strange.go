package wording

import (
	"fmt"
	"unicode"
)

// Rules of this file: a letter that looks like a space, or like nothing, is never shown as a
// number of its own kind alone: it is called by what it is.

// IsStrange reports whether a letter looks like an ordinary space, or like none at all.
func IsStrange(c rune) bool {
	return c != ' ' && unicode.In(c, unicode.Zs, unicode.Cf)
}

// StrangeLetter says what such a letter is.
func StrangeLetter(c rune) string {
	switch {
	case c == '\u00a0':
		return "a no-break space (U+00A0)"
	case unicode.Is(unicode.Zs, c):
		return fmt.Sprintf("a space of another kind (U+%04X)", c)
	}
	return fmt.Sprintf("a sign that cannot be seen (U+%04X)", c)
}

// StrangeHint is what to do about one.
const StrangeHint = "take it out, and type what is meant with the space bar"
