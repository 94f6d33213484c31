package wording

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// InWords returns a name as words are looked for in it: in small letters, and with a space
// for every underscore, which a regular expression takes for a letter of the word.
func InWords(name string) string { return strings.ReplaceAll(strings.ToLower(name), "_", " ") }

// Capital is a name with a capital at its beginning.
func Capital(name string) string {
	first, size := utf8.DecodeRuneInString(name)
	if size == 0 {
		return name
	}
	return string(unicode.ToUpper(first)) + name[size:]
}

// OfSize says a size: "size 18 months"; one that is written so, as "size 4", is said once.
func OfSize(size string) string {
	if strings.HasPrefix(strings.ToLower(size), "size ") {
		return size
	}
	return "size " + size
}
