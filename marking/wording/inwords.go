package wording

import "strings"

// InWords returns a name as words are looked for in it: in small letters, and with a space
// for every underscore, which a regular expression takes for a letter of the word.
func InWords(name string) string { return strings.ReplaceAll(strings.ToLower(name), "_", " ") }
