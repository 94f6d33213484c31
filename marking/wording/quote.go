package wording

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Rules of this file: a message repeats what somebody wrote so that all of it is seen. Letters that
// cannot be, and those that a terminal would take for an order, are spelled out as Go spells them.

// maxRepeated is how many letters of a value a message repeats.
const maxRepeated = 40

// Quoted gives a text as a message repeats it: in quotes, cut off where it is long.
func Quoted(s string) string { return strconv.Quote(Cut(s, maxRepeated)) }

// Brief is Quoted without the quotes, for what a file has without them.
func Brief(s string) string {
	quoted := Quoted(s)
	return strings.NewReplacer(`\"`, `"`, `\\`, `\`).Replace(quoted[1 : len(quoted)-1])
}

// FileName is the name of a file as it is said: as it is, and in quotes where something of it is
// spelled out.
func FileName(name string) string {
	if strings.IndexFunc(name, func(c rune) bool { return !strconv.IsPrint(c) || c == utf8.RuneError }) < 0 {
		return name
	}
	return strconv.Quote(name)
}

// Cut gives no more than most letters of a text: behind the first of a longer one come three dots.
func Cut(s string, most int) string {
	if utf8.RuneCountInString(s) > most {
		return string([]rune(s)[:most]) + "..."
	}
	return s
}
