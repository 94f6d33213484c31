package source

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"tuckmark/marking/fault"
)

// Rules of this file: whoever hands over a picture, or a text that an editor saved in
// its own way, is told that, and not which letter of it is no TOML.

const utf8Hint = `save the file again as plain text in UTF-8 (in most editors: "Save as", encoding UTF-8)`

// otherKinds are files that somebody may hand over in place of a description,
// and how they begin (each as its format defines it, from memory).
var otherKinds = []struct{ begins, what, hint string }{
	{"%PDF-", "a PDF", meantHint},
	{"\x89PNG", "a picture", meantHint},
	{"\xff\xd8\xff", "a picture", meantHint},
	{"GIF8", "a picture", meantHint},
	{"PK\x03\x04", "a document of a word processor or a packed folder", plainHint},
	{"{\\rtf", "a document of a word processor", plainHint},
	{"\xd0\xcf\x11\xe0", "a document of a word processor", plainHint},
}

const (
	meantHint = "name the file that ends in .toml"
	plainHint = "write the description in an editor for plain text, and save it under a name that ends in .toml"
)

// isUTF32 reports whether bytes begin as a text does whose letters have four bytes each, three of
// which are 0 in most: with its mark, or with a letter. Of UTF-16 no letter has two bytes that are 0.
func isUTF32(data []byte) bool {
	if len(data) < 4 {
		return false
	}
	begins := [4]byte(data)
	switch {
	case begins == [4]byte{0xff, 0xfe, 0, 0}, begins == [4]byte{0, 0, 0xfe, 0xff}:
		return true
	case begins[1] == 0 && begins[2] == 0:
		return (begins[0] == 0) != (begins[3] == 0)
	}
	return false
}

// plainText returns the bytes of a file as text, without a byte order mark, or
// says why they are none.
func plainText(data []byte) (string, *fault.Fault) {
	for _, k := range otherKinds {
		if strings.HasPrefix(string(data), k.begins) {
			return "", &fault.Fault{Cause: "this is " + k.what + ", not the description of a pattern", Hint: k.hint}
		}
	}
	if isUTF32(data) {
		return "", &fault.Fault{Cause: "the file is saved as UTF-32", Hint: utf8Hint}
	}
	text := strings.TrimPrefix(string(data), "\ufeff")
	if strings.HasPrefix(text, "\xff\xfe") || strings.HasPrefix(text, "\xfe\xff") ||
		len(text) > 1 && (text[0] == 0) != (text[1] == 0) {
		return "", &fault.Fault{Cause: "the file is saved as UTF-16", Hint: utf8Hint}
	}
	line := 1
	for i := 0; i < len(text); {
		c, size := utf8.DecodeRuneInString(text[i:])
		rest := text[i+size:]
		cause, hint := "", ""
		switch {
		case c == '\n':
			line++
		case c == utf8.RuneError && size == 1:
			cause, hint = "there is a letter that is not UTF-8", utf8Hint
		case c == '\r' && !strings.HasPrefix(rest, "\n"):
			cause, hint = "a line ends in a way that is not known here", `save the file again with "Unix" or "Windows" line ends`
		case c < ' ' && c != '\t' && c != '\r' || c == 0x7f:
			cause, hint = fmt.Sprintf("there is a character that cannot be seen (U+%04X)", c), "type the line again; is this a plain text file?"
		}
		if cause != "" {
			return "", &fault.Fault{Place: fault.Place{Line: line}, Cause: cause, Hint: hint}
		}
		i += size
	}
	return text, nil
}
