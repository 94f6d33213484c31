package fault

import (
	"fmt"
	"strconv"

	"tuckmark/marking/wording"
)

// Rules of this file: a place is the file, the line, and the dotted key, which can be
// searched for in the file.

// Place is where something stands that somebody wrote. The zero Place is nowhere.
type Place struct {
	File string // as it was named; "" where it is not known, or there is none
	Key  string // dotted key, such as piece.front.edge.neck; "" is the file as a whole
	Line int    // counted from 1; 0 when it is not known
	// Column is the letter of the line, counted from 1, where no key says what is meant; else 0.
	Column int
}

// bareKey is a key that stands without quotes.
var bareKey = wording.FormOf(`^[A-Za-z0-9_-]+$`)

// Under returns the place of a key under this one, on the same line. A key that could not
// stand bare in the file is put in quotes.
func (p Place) Under(key string) Place {
	if !bareKey.MatchString(key) {
		key = strconv.Quote(key)
	}
	if p.Key != "" {
		key = p.Key + "." + key
	}
	p.Key = key
	return p
}

// Last returns the last part of the key, in quotes where it stands so.
func (p Place) Last() string { return lastPart().FindString(p.Key) }

// lastPart is the end of a dotted key, from behind the last point that parts it.
var lastPart = wording.FormOf(`(?:"(?:[^"\\]|\\.)*"|[^.]*)$`)

// Parts returns the parts of the key, without the quotes that some stand in; none of no key.
func (p Place) Parts() []string {
	parts := keyPart().FindAllString(p.Key, -1)
	for i, part := range parts {
		parts[i] = unquoted(part)
	}
	return parts
}

// keyPart is a part of a dotted key, in quotes or bare.
var keyPart = wording.FormOf(`"(?:[^"\\]|\\.)*"|[^."]+`)

// On returns the place on another line, at no column of it.
func (p Place) On(line int) Place {
	p.Line, p.Column = line, 0
	return p
}

// InFile is the file and the line, as far as they are known: "pinafore.toml:31".
func (p Place) InFile() string {
	if p.File == "" || p.Line == 0 {
		return wording.FileName(p.File)
	}
	return fmt.Sprintf("%s:%d", wording.FileName(p.File), p.Line)
}

// mostShown is how many letters of a key a message shows: more than any has that a pattern may
// have, with names of 200 letters.
const mostShown = 500

// Before begins a message with the place, as far as it is known:
// "pinafore.toml:31: piece.front: ...". Of a key of more than 500 letters three dots stand for the
// rest.
func (p Place) Before(message string) string {
	if p.Key != "" {
		message = wording.Cut(p.Key, mostShown) + ": " + message
	}
	if p.File == "" {
		return message
	}
	return p.InFile() + ": " + message
}
