package wording

import (
	"fmt"
	"unicode"
)

// Rules of this file: a letter that looks like another one, like a space or like nothing, is never
// shown as a number of its own kind alone: it is called by what it is.

const (
	nextLine = '\u0085' // ends a line in the files of some old machines
	wideFrom = '\uff01' // the wide form of the first sign behind the space, !,
	wideTo   = '\uff5e' // to that of the last, ~
)

// fillers are letters of which nothing is seen, in writing that puts letters together.
var fillers = &unicode.RangeTable{R16: []unicode.Range16{{Lo: 0x115f, Hi: 0x1160, Stride: 1}, {Lo: 0x3164, Hi: 0x3164, Stride: 1}, {Lo: 0xffa0, Hi: 0xffa0, Stride: 1}}}

// IsStrange reports whether a letter looks like an ordinary space, or like none at all.
func IsStrange(c rune) bool {
	return c == nextLine || c != ' ' && unicode.In(c, unicode.Zs, unicode.Zl, unicode.Zp, unicode.Cf, fillers)
}

// Narrow returns the sign of the keyboard that another one is the wide form of, and whether it is
// one: they come in from writing that is as wide as high, where a sign of the file stood.
func Narrow(c rune) (rune, bool) {
	if c < wideFrom || c > wideTo {
		return c, false
	}
	return c - wideFrom + '!', true
}

// StrangeLetter says what such a letter is.
func StrangeLetter(c rune) string {
	narrow, wide := Narrow(c)
	switch {
	case wide:
		return fmt.Sprintf("a wide %c (U+%04X)", narrow, c)
	case c == '\u00a0':
		return "a no-break space (U+00A0)"
	case unicode.Is(unicode.Zs, c):
		return fmt.Sprintf("a space of another kind (U+%04X)", c)
	case c == nextLine || unicode.In(c, unicode.Zl, unicode.Zp):
		return fmt.Sprintf("a line end of another kind (U+%04X)", c)
	}
	return fmt.Sprintf("a sign that cannot be seen (U+%04X)", c)
}

const (
	// StrangeHint is what to do about one that looks like a space, or like nothing.
	StrangeHint = "take it out, and type what is meant with the space bar"
	// WideHint is what to do about a wide one.
	WideHint = "type it again, with the keyboard set to narrow letters"
)
