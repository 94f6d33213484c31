package wording

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// maxRepeated is how many letters of a value a message repeats.
const maxRepeated = 40

// Quoted gives a text as a message repeats it: in quotes, cut off where it is long, what cannot
// be printed spelled out.
func Quoted(s string) string { return strconv.Quote(cut(s)) }

// Brief is Quoted without the quotes, for what a file has without them.
func Brief(s string) string {
	var b strings.Builder
	for _, c := range cut(s) {
		if strconv.IsPrint(c) {
			b.WriteRune(c)
		} else {
			b.WriteString(strings.Trim(strconv.QuoteRune(c), "'"))
		}
	}
	return b.String()
}

// cut cuts off a text that is too long to be repeated: behind its first 40 letters come three
// dots.
func cut(s string) string {
	if utf8.RuneCountInString(s) > maxRepeated {
		return string([]rune(s)[:maxRepeated]) + "..."
	}
	return s
}
