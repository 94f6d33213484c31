package source

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: the TOML library stops at the first letter it cannot
// place and speaks of it as a programmer would. Here that letter is looked at
// together with its line, and said is what a maker most likely did: a fraction
// without quotes, a decimal comma, a quote or a bracket left open. Where there is no
// doubt what was meant, the text is put right as well.

// slip is where and how the library stumbled over a text.
type slip struct {
	message string
	text    string
	item    string // what it was reading, the letter it stumbled over last
	lineNo  int
	line    string
	column  int     // the byte of line at which that last letter starts
	letter  string  // that letter; "" at the end of a line or of the text
	open    opening // what stands open before that letter
	outer   opening // what stands open before the line
	start   int     // the byte of text at which the line starts
	mended  string  // the text as it was meant; "" where that is not certain
}

// put puts something else in place of bytes of the line.
func (s *slip) put(from, to int, instead string) {
	s.mended = s.text[:s.start+from] + instead + s.text[s.start+to:]
}

// syntaxFault says what a maker most likely did where the library stopped, and how the
// text was meant where that is certain.
func syntaxFault(text string, e toml.ParseError, root *spot) (f *fault.Fault, mended string) {
	s := slipAt(text, e)
	f = &fault.Fault{Place: fault.Place{Line: s.lineNo}}
	if s.repeated(f, root) {
		return f, ""
	}
	f.Place.Column = 1 + utf8.RuneCountInString(s.line[:s.column])
	for _, explain := range []func(*slip) (string, string){
		(*slip).strangeSpace, (*slip).curlyQuote, (*slip).openQuote, (*slip).escape, (*slip).mistyped, (*slip).lengthWithoutQuotes, (*slip).decimalComma,
		(*slip).openArray, (*slip).badName, (*slip).badNumber, (*slip).badValue, (*slip).afterValue,
	} {
		if f.Cause, f.Hint = explain(s); f.Cause != "" {
			return f, s.mended
		}
	}
	f.Cause = "this is not TOML: " + s.message
	return f, ""
}

// slipAt looks at the place where the library stopped.
func slipAt(text string, e toml.ParseError) *slip {
	start := max(0, min(e.Position.Start, len(text)))
	end := max(start, min(start+e.Position.Len, len(text)))
	s := &slip{message: e.Message, text: text, item: text[start:end]}
	last := start
	if c, size := utf8.DecodeLastRuneInString(s.item); size > 0 {
		last = end - size
		if c != '\n' && c != '\r' {
			s.letter = string(c)
		}
	}
	if s.says("end of file", "unexpected EOF", `got '\x00'`) {
		s.letter = ""
	}
	s.lineNo = 1 + strings.Count(text[:last], "\n")
	s.start = strings.LastIndexByte(text[:last], '\n') + 1
	s.line, _, _ = strings.Cut(text[s.start:], "\n")
	s.line = strings.TrimSuffix(s.line, "\r")
	s.column = min(last-s.start, len(s.line))
	s.open, s.outer = openedBefore(text[:last]), openedBefore(text[:s.start])
	return s
}

// says reports whether the library's message has one of these parts.
func (s *slip) says(parts ...string) bool {
	for _, part := range parts {
		if strings.Contains(s.message, part) {
			return true
		}
	}
	return false
}

const (
	curlyQuotes  = "“”„‟‘’‚‛«»"
	curlyDoubles = "“”„‟" // not those that are apostrophes as well
)

// closedBy returns the marks that may close a text which a curly one opens.
func closedBy(mark string) string {
	if strings.Contains(curlyDoubles, mark) {
		return curlyDoubles
	}
	return curlyQuotes
}

// curlyQuote explains quotation marks that a word processor has bent.
func (s *slip) curlyQuote() (cause, hint string) {
	mark := s.letter
	if s.says("strings cannot contain newlines", "unexpected EOF; expected") {
		// A straight mark opens the text and a bent one was to close it.
		mark = ""
		if i := strings.IndexAny(s.line, curlyDoubles); i >= 0 {
			c, _ := utf8.DecodeRuneInString(s.line[i:])
			mark = string(c)
		}
	}
	if mark == "" || !strings.Contains(curlyQuotes, mark) {
		return "", ""
	}
	if m, _ := s.around(unitForm); m != "" {
		return "", ""
	}
	if s.letter == mark {
		begin := s.column + len(mark)
		within, _, _ := strings.Cut(s.line[begin:], `"`)
		if end := strings.IndexAny(within, closedBy(mark)); end >= 0 && !strings.HasPrefix(within[end:], mark) {
			_, size := utf8.DecodeRuneInString(within[end:])
			s.put(s.column, begin+end+size, `"`+within[:end]+`"`)
		}
	}
	return fmt.Sprintf("the quotation mark %s is a curly one", mark), `type straight ones, in an editor for plain text: "`
}

// openQuote explains a quotation mark without its partner.
func (s *slip) openQuote() (cause, hint string) {
	atNewline := s.says("strings cannot contain newlines")
	if number, end := unclosedLength(s.line); number != "" && (atNewline || s.inValue()) {
		s.put(end, end, `"`)
		return fmt.Sprintf("a quotation mark is missing behind %s", number), fmt.Sprintf(`put " at both ends: "%s"`, number)
	}
	switch {
	case atNewline || s.says(`expected '"'`, `expected "'"`):
		return "a quotation mark is opened on this line and not closed", `put " at both ends of a text`
	case s.inValue() && s.letter != `"` && strings.Count(s.line, `"`)%2 == 1 && strings.Count(s.line[:s.column], `"`) >= 2:
		// The mark that was to open this text closed an earlier one.
		return "a quotation mark is missing on this line", `put " at both ends of each text`
	case s.says(`expected '"""'`, `expected "'''"`):
		return fmt.Sprintf("the text that begins in line %d is not closed", s.open.line), "put its three quotation marks at its end too"
	}
	return "", ""
}

// unclosedLength returns the first length in a list of points whose closing quotation mark
// is missing, and the byte of the line at which it ends. What goes on to the next mark
// holds a bracket then, or ends in a comma.
func unclosedLength(line string) (number string, end int) {
	for begin := 0; ; {
		opens := strings.IndexByte(line[begin:], '"')
		if opens < 0 {
			return "", 0
		}
		begin += opens + 1
		within, _, _ := strings.Cut(line[begin:], `"`)
		stop := strings.IndexAny(within, ",]")
		goesOn := strings.ContainsAny(within, "[]") || strings.HasSuffix(strings.TrimSpace(within), ",")
		if stop > 0 && goesOn && strings.Contains(line[:begin], "[") {
			number = strings.TrimRight(within[:stop], " \t")
			if _, err := length.Parse(number, length.Inch); err == nil {
				return number, begin + len(number)
			}
		}
		begin += len(within)
		if begin == len(line) {
			return "", 0
		}
		begin++
	}
}

// escape explains a backslash.
func (s *slip) escape() (cause, hint string) {
	if s.says("invalid escape", "hexadecimal digits", "Escaped character") {
		if text, from := s.around(quotedText); text != "" {
			way, written := wayBefore(strings.Trim(text, `"`))
			if m, ok := length.FindMistyped(written); ok {
				meant := strconv.Quote(way + m.Meant)
				s.putValue(from, text, meant)
				return wording.Brief(text) + " " + m.Slip, "write " + meant
			}
		}
		return `a text here has a \ that means nothing`, `write \\ for a single \`
	}
	return "", ""
}

var (
	quotedText = wording.FormOf(`"[^"]*"`)
	bareValue  = wording.FormOf(`[^\s,\[\]{}"'=#](?:[^,\[\]{}"'=#]*[^\s,\[\]{}"'=#])?`)
	bareNumber = wording.FormOf(`^-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?$`)
)

// mistyped explains a length with a letter that looks like a figure, and other slips of the
// hand.
func (s *slip) mistyped() (cause, hint string) {
	if !s.inValue() {
		return "", ""
	}
	part, from := s.around(bareValue)
	m, ok := length.FindMistyped(part)
	isWord := s.open.bracket == 0 && !strings.ContainsAny(part, "0123456789/\\ \t")
	if !ok || isWord && len(part) > 1 {
		return "", ""
	}
	meant := m.Meant
	if !bareNumber.MatchString(meant) {
		meant = quotedLength(meant)
	}
	s.putValue(from, part, meant)
	hint = "write " + meant
	if isWord {
		hint += fmt.Sprintf(", or %q where text is meant", part)
	}
	return wording.Brief(part) + " " + m.Slip, hint
}

const numberPart = `[-+−]?(?:[0-9]+(?:[.,][0-9]+)?[ \t]*(?:[-‐–—][ \t]*)?)?`

var (
	fractionPart = wording.FormOf(numberPart + `(?:[0-9]+[ \t]*[/⁄][ \t]*[0-9]+|[¼-¾⅐-⅞])(?:[ \t]*(?:in|inch|inches|cm|mm)\b|[ \t]*["″”])?`)
	unitForm     = wording.FormOf(`[-+−]?[0-9][0-9.]*[ \t]*(?:(?:in|inch|inches|cm|mm)\b|["″”])`)
	commaPart    = wording.FormOf(`[-+−]?[0-9]+,[0-9]+`)
	minusPart    = wording.FormOf(`[−–—‒][0-9.]+`)
)

// around returns the part of the line that has this form and the letter the
// library stumbled over within it.
func (s *slip) around(form wording.Form) (part string, from int) {
	for _, m := range form().FindAllStringIndex(s.line, -1) {
		if m[0] <= s.column && s.column < m[1] {
			return s.line[m[0]:m[1]], m[0]
		}
	}
	return "", 0
}

// endsValue is what may follow a value on its line.
var endsValue = wording.FormOf(`^[ \t]*(?:[],}#]|$)`)

// putValue puts a value in place of a part of the line that is one as well: what was meant
// is not certain where something else follows.
func (s *slip) putValue(from int, part, instead string) {
	if to := from + len(part); endsValue.MatchString(s.line[to:]) {
		s.put(from, to, instead)
	}
}

// inValue reports whether the library stumbled in a value or just behind it.
func (s *slip) inValue() bool {
	return s.letter != "" && s.says("expected a top-level item to end", "expected a comma", "invalid datetime",
		"expected value", "Invalid float", "invalid float", "Invalid integer", "expected a digit")
}

// lengthWithoutQuotes explains a length that TOML does not take for a number.
func (s *slip) lengthWithoutQuotes() (cause, hint string) {
	if !s.inValue() {
		return "", ""
	}
	for _, of := range []struct {
		form wording.Form
		with string
	}{{fractionPart, "fraction"}, {unitForm, "unit"}} {
		m, from := s.around(of.form)
		if m == "" || s.opensText(from+len(m)) {
			continue
		}
		s.putValue(from, m, quotedLength(m))
		hint = "write lengths with a " + of.with + " in quotes: " + quotedLength(m)
		if bare, marked := strings.CutSuffix(m, `"`); marked {
			hint += ", or " + quotedLength(strings.TrimSpace(bare)) + " where the mark was only to close the quotes"
		}
		return wording.Brief(m) + " is not in quotes", hint
	}
	if m, from := s.around(minusPart); m != "" {
		_, size := utf8.DecodeRuneInString(m)
		s.putValue(from, m, "-"+m[size:])
		return wording.Brief(m) + " has a minus sign that is not on the keyboard", "write -" + wording.Brief(m[size:]) + ", or put it in quotes"
	}
	return "", ""
}

// textInList is a text behind a space in a list, of which the first mark is no inch mark.
var textInList = wording.FormOf(`^[ \t]"[^",\[\]{}]+"[ \t]*(?:[,\]]|$)`)

// opensText reports whether what ends at the column ends with the quotation mark of the next
// text, where the library stumbled over it.
func (s *slip) opensText(end int) bool {
	return s.letter == `"` && end == s.column+1 && end > 1 && textInList.MatchString(s.line[end-2:])
}

// quotedLength writes a length as length.Parse reads it.
func quotedLength(s string) string {
	for _, mark := range []string{`"`, "″", "”", "inches", "inch"} {
		if n, ok := strings.CutSuffix(s, mark); ok {
			s = strings.TrimSpace(n) + " in"
			break
		}
	}
	return `"` + wording.Brief(length.WithoutHyphen(strings.TrimPrefix(s, "+"))) + `"`
}

// decimalComma explains 1,5. In a list that is two numbers, and no slip yet.
func (s *slip) decimalComma() (cause, hint string) {
	if m, from := s.around(commaPart); m != "" && s.letter == "," {
		s.putValue(from, m, strings.Replace(m, ",", ".", 1))
		return wording.Brief(m) + " is written with a comma", "write a decimal with a point: " + wording.Brief(strings.Replace(m, ",", ".", 1))
	}
	return "", ""
}

// newLineForm is a line that begins something new: [piece.front] or cut = 1.
var newLineForm = wording.FormOf(`^\s*(?:\[\[?\s*["'A-Za-z_][^,\[\]]*\]|["'A-Za-z_][^,\[\]{}]*=)`)

// openArray explains a list without its closing bracket or without a comma.
func (s *slip) openArray() (cause, hint string) {
	if !s.says("expected a comma", "expected value", "unexpected comma", "unexpected EOF", "unexpected '='", "expected '.' or '='") {
		return "", ""
	}
	open := s.open
	if s.outer.bracket != 0 && newLineForm.MatchString(s.line) {
		open, s.letter = s.outer, ""
	}
	if open.bracket == 0 {
		return "", ""
	}
	closing := "]"
	if open.bracket == '{' {
		closing = "}"
	}
	switch {
	case s.letter == "" || s.letter == "=":
		begins := "on this line"
		if open.line != s.lineNo {
			begins = fmt.Sprintf("in line %d", open.line)
		}
		return fmt.Sprintf("the %q that is opened %s is not closed", string(open.bracket), begins),
			fmt.Sprintf("put %q where it ends: every opening bracket needs its own", closing)
	case s.says("unexpected comma"):
		return "there is a comma too many", commaHint
	case s.says("expected a comma") && strings.ContainsAny(s.letter, "])}"):
		return fmt.Sprintf("there is a %q where a %q belongs", s.letter, closing), "close brackets in the order in which they are nested"
	case s.letter == `"` && s.column > 0 && s.line[s.column-1] == '"':
		return tooManyQuotes, inchMarkHint
	case s.says("expected a comma"):
		return s.missingComma()
	}
	return "", ""
}

const valueForm = `(?:\[[^\[\]]*\]|"[^"]*"|'[^']*'|[^\s,;\[\]{}"'#]+)`

var (
	valueBefore = wording.FormOf(valueForm + `[ \t]*$`)
	valueBehind = wording.FormOf(`^` + valueForm)
)

// missingComma says between which values no comma stands.
func (s *slip) missingComma() (cause, hint string) {
	if s.letter == ";" {
		s.put(s.column, s.column+1, ",")
		return `there is a ";" where a comma belongs`, pointsHint
	}
	before := strings.TrimSpace(valueBefore().FindString(s.line[:s.column]))
	behind := valueBehind().FindString(s.line[s.column:])
	if behind == "" {
		return "a comma is missing between two values", pointsHint
	}
	s.put(len(strings.TrimRight(s.line[:s.column], " \t")), s.column, ", ")
	hint = pointsHint
	if isName(before) || isName(behind) {
		hint = commaHint
	}
	if before == "" {
		return "a comma is missing before " + wording.Brief(behind), hint
	}
	return "a comma is missing between " + wording.Brief(before) + " and " + wording.Brief(behind), hint
}

const commaHint = "put one comma between two values"

// isName reports whether a value is a text that is no length, as no point has one.
func isName(value string) bool {
	if value == "" || !strings.ContainsAny(value[:1], `"'`) {
		return false
	}
	_, err := length.Parse(strings.Trim(value, `"'`), length.Inch)
	return err != nil
}

// badNumber explains what begins as a number and is none.
func (s *slip) badNumber() (cause, hint string) {
	switch {
	case s.says("out of range"):
		return wording.Brief(strings.TrimSpace(s.item)) + " is too large", "check the number"
	case s.says("floats must start with a digit"):
		return "a number begins with its decimal point", "write a 0 before it, as in 0.375"
	case s.says("Invalid float", "invalid float", "Invalid integer", "invalid datetime", "not a binary number", "not an octal number", "not a hexadecimal number", "expected a digit", "cannot use sign"):
		return wording.Brief(strings.TrimSpace(s.item)) + " is not a number", "write 2 or 2.5, without zeros in front, or a fraction in quotes"
	}
	return "", ""
}

var bareWord = wording.FormOf(`[^\s,\[\]{}"'=#]+`)

// word returns the whole word around the letter that the library stumbled over, and the
// byte of the line at which it begins.
func (s *slip) word() (word string, from int) {
	if m, from := s.around(bareWord); m != "" {
		return m, from
	}
	return s.letter, s.column
}

// truth is what words were meant for that stand in place of true and false.
var truth = map[string]string{"true": "true", "yes": "true", "on": "true", "false": "false", "no": "false", "off": "false"}

// badValue explains what stands in place of a value.
func (s *slip) badValue() (cause, hint string) {
	if !s.says("expected value") {
		return "", ""
	}
	if s.letter == "" {
		return `there is no value after "="`, `write a number, or text in quotes`
	}
	if s.letter == "(" {
		return `there is a "(" where a "[" belongs`, pointsHint
	}
	word, from := s.word()
	if meant := truth[strings.ToLower(word)]; meant != "" {
		s.putValue(from, word, meant)
		return word + " is not known here", "write true or false, in small letters and without quotes"
	}
	s.putValue(from, word, `"`+word+`"`)
	return wording.Brief(word) + " is not in quotes", `write text in quotes, such as title = "Sunday"`
}

const (
	tooManyQuotes = "there is a quotation mark too many"
	inchMarkHint  = `inside quotes write in instead of the inch mark: "2 1/8 in"`
)

// afterValue explains what stands between a value and the end of its line.
func (s *slip) afterValue() (cause, hint string) {
	if !s.says("expected a top-level item to end") {
		return "", ""
	}
	switch s.letter {
	case "]", "}":
		return fmt.Sprintf("there is a %q too many", s.letter), "every closing bracket needs an opening one"
	case `"`, "'":
		return tooManyQuotes, inchMarkHint
	}
	if s.letter == "," && strings.Contains(s.line[:s.column], "]") {
		return "there is a comma behind the end of the value", "a list of points begins with two brackets: " + pointsForm
	}
	if word, from := s.word(); from < s.column {
		return wording.Brief(word) + " is not a number", "write it with digits alone, such as 2 or 2.5, or put text in quotes"
	}
	return "there is something behind the end of the value", "put text in quotes, and # before a remark"
}
