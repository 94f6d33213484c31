package source

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: a space that is not that of the space bar, and a sign without width,
// look like nothing and come in with what is copied from elsewhere. They are named by what
// they are and by what stands before them.

// strangeSpace explains such a letter outside of quotes, and the wide form of another. All of a
// text are told at once.
func (s *slip) strangeSpace() (cause, hint string) {
	c, _ := utf8.DecodeRuneInString(s.letter)
	narrow, wide := wording.Narrow(c)
	if s.letter == "" || !wide && !wording.IsStrange(c) {
		return "", ""
	}
	cause = "there is " + wording.StrangeLetter(c) + " at the beginning of this line"
	if before := strings.Fields(s.line[:s.column]); len(before) > 0 {
		cause = "there is " + wording.StrangeLetter(c) + " behind " + wording.Quoted(before[len(before)-1])
	}
	if wide {
		if narrow == '=' {
			s.put(s.column, s.column+len(s.letter), "=")
		}
		return cause, wording.WideHint
	}
	mended, lines := withoutStrange(s.text)
	if unicode.In(c, unicode.Zs, unicode.Cf) { // what is left out of the others may be a line end
		s.mended = mended
	}
	lines = slices.DeleteFunc(lines, func(line int) bool { return line == s.lineNo })
	if len(lines) > 0 {
		cause += ", and the like in " + wording.Counted(len(lines), "other line")
	}
	return cause, wording.StrangeHint
}

// withoutStrange returns a text without strange spaces outside of quotes and remarks, and
// the lines that had some.
func withoutStrange(text string) (plain string, lines []int) {
	var b strings.Builder
	line := 1
	for i := 0; i < len(text); {
		c, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case c == '"' || c == '\'':
			if size = quotedSize(text[i:]); size == 0 {
				size = len(text) - i
			}
		case c == '#':
			if size = strings.IndexByte(text[i:], '\n'); size < 0 {
				size = len(text) - i
			}
		}
		part := text[i : i+size]
		if wording.IsStrange(c) {
			part = ""
			if unicode.Is(unicode.Zs, c) {
				part = " "
			}
			if len(lines) == 0 || lines[len(lines)-1] != line {
				lines = append(lines, line)
			}
		}
		b.WriteString(part)
		line += strings.Count(text[i:i+size], "\n")
		i += size
	}
	return b.String(), lines
}

// checkSpaces refuses a strange space in a name: with one it is not the same name as with
// an ordinary one, and nobody sees why.
func checkSpaces(name string) error {
	if i := strings.IndexFunc(name, wording.IsStrange); i >= 0 {
		return strangeIn("name", name, i)
	}
	return nil
}

// strangeIn says that a text has a strange letter at one of its bytes; what is what the text is.
func strangeIn(what, text string, at int) error {
	c, _ := utf8.DecodeRuneInString(text[at:])
	where := "at its beginning"
	if at > 0 {
		where = "behind " + wording.Quoted(text[:at])
	}
	return &fault.Fault{Cause: fmt.Sprintf("the %s has %s %s", what, wording.StrangeLetter(c), where), Hint: wording.StrangeHint}
}
