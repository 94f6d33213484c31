package source

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: of the slips of syntax.go those in a name, before "=" or in the brackets of a
// header.

var repeatedForm = wording.FormOf(`(?s)^Key '(.*)' (?:has already|was already)`)

// repeated explains a key or table that is given twice.
func (s *slip) repeated(p *fault.Fault, root *spot) bool {
	m := repeatedForm().FindStringSubmatch(s.message)
	if m == nil {
		return false
	}
	first := root
	for _, part := range keyParts(m[1]) {
		first = first.child(part)
		p.Place = p.Place.Under(part)
	}
	p.Cause = "is given twice"
	if line := first.lineOf(); line > 0 && line < s.lineNo {
		p.Cause = fmt.Sprintf("is given twice, the first time in line %d", line)
	}
	p.Hint = "give each a name of its own, or put both together"
	return true
}

// badName explains the names before "=" and in [ ].
func (s *slip) badName() (cause, hint string) {
	inHeader := s.says("to end table name", "end of table array name", "table names cannot be empty")
	switch {
	case s.says("end of table array name"):
		return `a "]" is missing`, "write [piece.front], with one pair of brackets"
	case s.says("cannot be empty", "appears blank", "cannot start with a '.'", "unexpected '='", "unexpected '.'"):
		return "a name is missing here", `write name = value, or [piece.front]`
	case inHeader && (s.letter == "" || s.letter == "#"):
		header, _, _ := strings.Cut(s.line, "#")
		header = strings.TrimRight(header, " \t\r")
		s.put(len(header), len(header), "]")
		return `a "]" is missing`, "write " + wording.Brief(strings.TrimLeft(header, " \t")+"]")
	case inHeader:
		return "a name here is not in quotes", `write a name with a space or an accent in quotes: ` + s.quotedHeader()
	case !s.says("expected '.' or '='", "expected key separator"):
		return "", ""
	case remarkForm.MatchString(s.line):
		s.put(0, len(s.line), "")
		return "a remark begins with another sign than #", "write # before a remark"
	case s.letter == ":":
		return `there is a ":" where "=" belongs`, "write name = value"
	case strings.Contains(s.line, "="):
		if key := s.keyInWords(); key != "" {
			return `there is a space in the name before "="`, key
		}
		return `the name before "=" is not in quotes`, `write a name with a space or an accent in quotes: "centre front" = ...`
	}
	return `there is no "=" on this line`, "write name = value, or put # before a remark"
}

// keyInWords is the hint for a key that is written with spaces: "drawn to" for drawn-to, or a word of
// the trade that is no key; "" for any other name.
func (s *slip) keyInWords() string {
	name, value, _ := strings.Cut(s.line, "=")
	words := strings.ToLower(strings.Join(strings.Fields(name), " "))
	for _, table := range tables {
		if key := strings.ReplaceAll(words, " ", "-"); slices.Contains(table.Keys, key) {
			value, _, _ = strings.Cut(value, "#")
			if value = strings.TrimSpace(value); strings.ContainsAny(value, "/ ") && !strings.ContainsAny(value[:1], "\"'[{") {
				value = `"` + value + `"`
			}
			return "it is written with a hyphen: " + wording.Brief(strings.TrimSpace(key+" = "+value))
		}
	}
	return writtenOtherwise(fault.Place{}, words, fileKeys)
}

// remarkForm is a line that stands behind the sign for a remark in other kinds of files.
var remarkForm = wording.FormOf(`^\s*(?://|--|;|%|/\*)`)

// headerForm is the header of one table without any quotes.
var headerForm = wording.FormOf(`^[ \t]*\[([^\[\]"'#]+)\][ \t]*(?:#.*)?$`)

// quotedHeader returns the header of the line with quotes round the names that need them,
// or an example of one where it cannot be told which do.
func (s *slip) quotedHeader() string {
	m := headerForm().FindStringSubmatchIndex(s.line)
	if m == nil {
		return `[piece.front.edge."centre front"]`
	}
	var place fault.Place
	for name := range strings.SplitSeq(s.line[m[2]:m[3]], ".") {
		place = place.Under(strings.TrimSpace(name))
	}
	s.put(m[2], m[3], place.Key)
	return "[" + place.Key + "]"
}
