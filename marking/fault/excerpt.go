package fault

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"tuckmark/marking/wording"
)

// Rules of this file: a place is shown as the lines of its file around it, as they were read. What
// cannot be shown is shown as that, whatever it would do to a screen; a long line is shown in
// part; and on the line itself is told where to look.

const (
	linesBeside = 2        // are shown on either side of a line
	mostApart   = 8        // lines from one place to another, for the lines between to be shown
	excerptWide = 100      // letters of a line that are shown at most
	beforeCaret = 30       // of them that stand before the caret, where there are more
	tabWide     = 4        // letters from one stop of a tab to the next
	unshown     = '\ufffd' // stands for a letter that cannot be shown
	leftOutSign = '…'      // stands for letters that are left out
)

const (
	// mostSearched is how many bytes of a line are looked through for a key. It bounds the time.
	mostSearched = 10_000
	// mostBytes is how much of a line is looked at on either side of the caret: more letters than
	// are shown, however long each is.
	mostBytes = 2 * excerptWide * utf8.UTFMax
)

// ExcerptLine is a line of a file as it is shown.
type ExcerptLine struct {
	Number int    // in the file, from 1
	Text   string // in letters that can be shown, without tabs; in part where it is long
	Caret  Caret  // on a line that the excerpt is of; the zero Caret on its neighbours
}

// Caret tells where to look in the text of a line: at its letters from From up to, and without,
// To, counted from 0. It has at least one letter; behind the end of a line that is a space.
type Caret struct{ From, To int }

// Parts are the text before the caret, what it stands at, and the text behind it; all of it is
// before the zero Caret.
func (l ExcerptLine) Parts() (before, at, behind string) {
	if l.Caret == (Caret{}) {
		return l.Text, "", ""
	}
	letters := []rune(l.Text)
	return string(letters[:l.Caret.From]), string(letters[l.Caret.From:l.Caret.To]), string(letters[l.Caret.To:])
}

// Excerpt returns the line of a text at a place and as many as two on either side of it. The
// caret stands at the word at the column of the place or, without one, at what the last part of its key
// names on the line: the key, with its value where that is short; else at the first word. None
// where the line is not known or not one of the text.
func Excerpt(text []byte, at Place) []ExcerptLine { return ExcerptOfBoth(text, at, Place{}) }

// ExcerptOfBoth is an excerpt at one place that goes on to another, and has a caret there too,
// where that is in the same file and at most eight lines away.
func ExcerptOfBoth(text []byte, at, other Place) []ExcerptLine {
	if at.Line < 1 {
		return nil
	}
	if apart := max(at.Line-other.Line, other.Line-at.Line); other.Line < 1 || other.File != at.File || apart > mostApart {
		other = at
	}
	first, last := min(at.Line, other.Line)-linesBeside, max(at.Line, other.Line)+linesBeside
	marked := map[int]Place{other.Line: other, at.Line: at}
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	var all []ExcerptLine
	found := false
	for number, more := 1, true; more && number <= last; number++ {
		var line []byte
		line, text, more = bytes.Cut(text, []byte("\n"))
		line = bytes.TrimSuffix(line, []byte("\r"))
		found = found || number == at.Line
		switch place, ok := marked[number]; {
		case ok:
			from, to := caretIn(line, place)
			all = append(all, shownLine(number, line, from, to))
		// What follows the last line end is a line only where a place is on it.
		case number >= first && (more || len(line) > 0):
			all = append(all, shownLine(number, line, 0, 0))
		}
	}
	if !found {
		return nil
	}
	return all
}

// caretIn returns the bytes of a line that a caret stands at. At the end of it they are none, or
// lie behind it.
func caretIn(line []byte, at Place) (from, to int) {
	if at.Column > 0 {
		for letter := 1; letter < at.Column && from < len(line); letter++ {
			_, size := utf8.DecodeRune(line[from:])
			from += size
		}
		return wordAt(line, from)
	}
	if from, to, found := namedIn(line, at.Last()); found {
		return from, to
	}
	from = len(line) - len(bytes.TrimLeft(line, " \t"))
	to = len(line)
	if long := bytes.IndexAny(line[from:], " \t"); long >= 0 {
		to = from + long
	}
	return from, max(to, from+1)
}

// mostWord is how many bytes a word may have that is shown as a whole where one letter of it is
// meant.
const mostWord = 40

// wordAt returns the bytes of the word around a letter, which begins at a byte: up to spaces and to
// the signs that stand between values. Of a long word, and of such a sign, it is the letter alone; behind
// the end of a line what would be the next.
func wordAt(line []byte, at int) (from, to int) {
	const between = " \t,=#[]{}\"'"
	_, size := utf8.DecodeRune(line[at:])
	if size == 0 {
		return at, at + 1
	}
	from, to = bytes.LastIndexAny(line[:at], between)+1, len(line)
	if end := bytes.IndexAny(line[at:], between); end >= 0 {
		to = at + end
	}
	if to <= at || to-from > mostWord {
		return at, at + size
	}
	return from, to
}

// word is a part of a line that is a key, or a value: in quotes of either kind, or bare; or a
// remark, which goes on to its end.
var word = wording.FormOf(`"(?:[^"\\]|\\.)*"|'[^']*'|[A-Za-z0-9_-]+|#.*`)

// What follows a key: an equals sign and perhaps a value that is no list or table, or the sign that
// ends it among others.
var (
	valueBehind = wording.FormOf(`^[ \t]*=[ \t]*(?:"(?:[^"\\]|\\.)*"|'[^']*'|[^\s,#\[\]{}"']+)?`)
	endBehind   = wording.FormOf(`^[ \t]*[].]`)
)

// namedIn returns the bytes of a line at which a key stands whose name, in quotes or bare, is given,
// with its value: where it has one, else where it ends a header, else where it stands among
// others in one.
func namedIn(line []byte, name string) (from, to int, found bool) {
	line = line[:min(len(line), mostSearched)]
	if name = unquoted(name); name == "" {
		return 0, 0, false
	}
	for _, m := range word().FindAllIndex(line, -1) {
		if unquoted(string(line[m[0]:m[1]])) != name {
			continue
		}
		behind := line[m[1]:]
		if value := valueBehind().Find(behind); value != nil {
			value = bytes.TrimRight(value, " \t=")
			return m[0], m[1] + len(value), true
		}
		if endBehind().Match(behind) { // the last of a header is the one that is meant
			from, to, found = m[0], m[1], true
		}
	}
	return from, to, found
}

// unquoted is a part of a key without the quotes it may stand in.
func unquoted(part string) string {
	if long := len(part); long > 1 && part[0] == '\'' && part[long-1] == '\'' {
		return part[1 : long-1]
	}
	if bare, err := strconv.Unquote(part); err == nil {
		return bare
	}
	return part
}

// shownLine is a line as it is shown, with a caret from one byte of it to another; without where
// that is the same.
func shownLine(number int, line []byte, from, to int) ExcerptLine {
	from, end := min(from, len(line)), min(to, len(line))
	before := letters(line[max(0, from-mostBytes):from], 0)
	at := letters(line[from:min(end, from+mostBytes)], len(before))
	if to > from && len(at) == 0 {
		at = []rune{' '} // behind the end
	}
	behind := letters(line[end:min(len(line), end+mostBytes)], len(before)+len(at))
	if most := excerptWide - min(len(before), beforeCaret); len(at) > most {
		at, behind = at[:most], slices.Concat(at[most:], behind)
	}
	room := excerptWide - len(at)
	left := len(before) // what is shown of it
	if left > room {
		left = min(room, max(beforeCaret, room-len(behind)))
	}
	l := ExcerptLine{Number: number}
	if left < len(before) {
		before = append([]rune{leftOutSign}, before[len(before)-left:]...)
	}
	if len(at) > 0 {
		l.Caret = Caret{len(before), len(before) + len(at)}
	}
	if room -= left; room < len(behind) {
		behind = append(behind[:room:room], leftOutSign)
	}
	l.Text = string(before) + string(at) + string(behind)
	return l
}

// letters are a part of a line as it is shown, where so many letters stand before it.
func letters(part []byte, before int) []rune {
	var all []rune
	for _, c := range string(part) {
		switch {
		case c == '\t':
			all = append(all, []rune(strings.Repeat(" ", tabWide-(before+len(all))%tabWide))...)
		case unicode.IsGraphic(c):
			all = append(all, c)
		default:
			all = append(all, unshown)
		}
	}
	return all
}
