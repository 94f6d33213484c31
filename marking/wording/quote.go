package wording

import (
	"strconv"
	"unicode/utf8"
)

// maxRepeated is how many letters of a value a message repeats.
const maxRepeated = 40

// Quoted gives a text as a message repeats it: in quotes, cut off where it is long,
// control characters spelled out.
func Quoted(s string) string { return strconv.Quote(Brief(s)) }

// Brief cuts off a text that is too long to be repeated: behind its first 40 letters
// come three dots.
func Brief(s string) string {
	if utf8.RuneCountInString(s) > maxRepeated {
		return string([]rune(s)[:maxRepeated]) + "..."
	}
	return s
}
