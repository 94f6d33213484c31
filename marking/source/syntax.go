package source

import (
	"errors"
	"fmt"
	"regexp"
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
// without quotes, a decimal comma, a quote or a bracket left open.

// valuesOf returns the values of a text that findSpots has let pass. root is what
// findSpots found in it.
func valuesOf(text string, root *spot) (values map[string]any, f *fault.Fault) {
	_, err := toml.Decode(text, &values)
	var syntax toml.ParseError
	switch {
	case err == nil:
		return values, nil
	case errors.As(err, &syntax):
		return nil, syntaxFault(text, syntax, root)
	}
	return nil, &fault.Fault{Cause: err.Error()}
}

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
}

// syntaxFault says what a maker most likely did where the library stopped.
func syntaxFault(text string, e toml.ParseError, root *spot) *fault.Fault {
	start := max(0, min(e.Position.Start, len(text)))
	end := max(start, min(start+e.Position.Len, len(text)))
	s := slip{message: e.Message, text: text, item: text[start:end]}
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
	lineStart := strings.LastIndexByte(text[:last], '\n') + 1
	s.line, _, _ = strings.Cut(text[lineStart:], "\n")
	s.line = strings.TrimSuffix(s.line, "\r")
	s.column = min(last-lineStart, len(s.line))
	s.open, s.outer = openedBefore(text[:last]), openedBefore(text[:lineStart])

	p := &fault.Fault{Place: fault.Place{Line: s.lineNo}}
	if s.repeated(p, root) {
		return p
	}
	for _, explain := range []func(slip) (string, string){
		slip.curlyQuote, slip.openQuote, slip.escape, slip.lengthWithoutQuotes, slip.decimalComma,
		slip.openArray, slip.badName, slip.badNumber, slip.badValue, slip.afterValue,
	} {
		if p.Cause, p.Hint = explain(s); p.Cause != "" {
			return p
		}
	}
	p.Cause = "this is not TOML: " + s.message
	return p
}

// says reports whether the library's message has one of these parts.
func (s slip) says(parts ...string) bool {
	for _, part := range parts {
		if strings.Contains(s.message, part) {
			return true
		}
	}
	return false
}

var repeatedForm = regexp.MustCompile(`(?s)^Key '(.*)' (?:has already|was already)`)

// repeated explains a key or table that is given twice.
func (s slip) repeated(p *fault.Fault, root *spot) bool {
	m := repeatedForm.FindStringSubmatch(s.message)
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

const (
	curlyQuotes  = "“”„‟‘’‚‛«»"
	curlyDoubles = "“”„‟" // not those that are apostrophes as well
)

// curlyQuote explains quotation marks that a word processor has bent.
func (s slip) curlyQuote() (cause, hint string) {
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
	if m := s.around(unitForm); m != "" {
		return "", ""
	}
	return fmt.Sprintf("the quotation mark %s is a curly one", mark), `type straight ones, in an editor for plain text: "`
}

// openQuote explains a quotation mark without its partner.
func (s slip) openQuote() (cause, hint string) {
	switch {
	case s.says("strings cannot contain newlines", `expected '"'`, `expected "'"`):
		return "a quotation mark is opened on this line and not closed", `put " at both ends of a text`
	case s.inValue() && s.letter != `"` && strings.Count(s.line, `"`)%2 == 1 && strings.Count(s.line[:s.column], `"`) >= 2:
		// The mark that was to open this text closed an earlier one.
		return "a quotation mark is missing on this line", `put " at both ends of each text`
	case s.says(`expected '"""'`, `expected "'''"`):
		return fmt.Sprintf("the text that begins in line %d is not closed", s.open.line), "put its three quotation marks at its end too"
	}
	return "", ""
}

// escape explains a backslash.
func (s slip) escape() (cause, hint string) {
	if s.says("invalid escape", "hexadecimal digits", "Escaped character") {
		return `a text here has a \ that means nothing`, `write \\ for a single \`
	}
	return "", ""
}

const numberPart = `[-+−]?(?:[0-9]+(?:[.,][0-9]+)?[ \t]*(?:[-‐–][ \t]*)?)?`

var (
	fractionPart = regexp.MustCompile(numberPart + `(?:[0-9]+[ \t]*[/⁄][ \t]*[0-9]+|[¼-¾⅐-⅞])(?:[ \t]*(?:in|cm|mm)\b|[ \t]*["″”])?`)
	unitForm     = regexp.MustCompile(`[-+−]?[0-9][0-9.]*[ \t]*(?:(?:in|inch|inches|cm|mm)\b|["″”])`)
	commaPart    = regexp.MustCompile(`[-+−]?[0-9]+,[0-9]+`)
	minusPart    = regexp.MustCompile(`−[0-9.]+`)
)

// around returns the part of the line that has this form and the letter the
// library stumbled over within it.
func (s slip) around(form *regexp.Regexp) string {
	for _, m := range form.FindAllStringIndex(s.line, -1) {
		if m[0] <= s.column && s.column < m[1] {
			return s.line[m[0]:m[1]]
		}
	}
	return ""
}

// inValue reports whether the library stumbled in a value or just behind it.
func (s slip) inValue() bool {
	return s.letter != "" && s.says("expected a top-level item to end", "expected a comma", "invalid datetime",
		"expected value", "Invalid float", "invalid float", "Invalid integer", "expected a digit")
}

// lengthWithoutQuotes explains a length that TOML does not take for a number.
func (s slip) lengthWithoutQuotes() (cause, hint string) {
	if !s.inValue() {
		return "", ""
	}
	if m := s.around(fractionPart); m != "" {
		return wording.Brief(m) + " is not in quotes", "write lengths with a fraction in quotes: " + quotedLength(m)
	}
	if m := s.around(unitForm); m != "" {
		return wording.Brief(m) + " is not in quotes", "write lengths with a unit in quotes: " + quotedLength(m)
	}
	if m := s.around(minusPart); m != "" {
		return wording.Brief(m) + " has a minus sign that is not on the keyboard", "write -" + wording.Brief(strings.TrimPrefix(m, "−")) + ", or put it in quotes"
	}
	return "", ""
}

// quotedLength writes a length as ParseLength reads it.
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
func (s slip) decimalComma() (cause, hint string) {
	if m := s.around(commaPart); m != "" && s.letter == "," {
		return wording.Brief(m) + " is written with a comma", "write a decimal with a point: " + wording.Brief(strings.Replace(m, ",", ".", 1))
	}
	return "", ""
}

// newLineForm is a line that begins something new: [piece.front] or cut = 1.
var newLineForm = regexp.MustCompile(`^\s*(?:\[\[?\s*["'A-Za-z_][^,\[\]]*\]|["'A-Za-z_][^,\[\]{}]*=)`)

// openArray explains a list without its closing bracket or without a comma.
func (s slip) openArray() (cause, hint string) {
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
		return "there is a comma too many", "put one comma between two values"
	case s.says("expected a comma") && strings.ContainsAny(s.letter, "])}"):
		return fmt.Sprintf("there is a %q where a %q belongs", s.letter, closing), "close brackets in the order in which they are nested"
	case s.letter == `"` && s.column > 0 && s.line[s.column-1] == '"':
		return tooManyQuotes, inchMarkHint
	case s.says("expected a comma"):
		return "a comma is missing between two values", pointsHint
	}
	return "", ""
}

// badName explains the names before "=" and in [ ].
func (s slip) badName() (cause, hint string) {
	inHeader := s.says("to end table name", "end of table array name", "table names cannot be empty")
	switch {
	case s.says("end of table array name"):
		return `a "]" is missing`, "write [piece.front], with one pair of brackets"
	case s.says("cannot be empty", "appears blank", "cannot start with a '.'", "unexpected '='", "unexpected '.'"):
		return "a name is missing here", `write name = value, or [piece.front]`
	case inHeader && (s.letter == "" || s.letter == "#"):
		return `a "]" is missing`, "write [piece.front]"
	case inHeader:
		return "a name here is not in quotes", `write a name with a space or an accent in quotes: [piece.front.edge."centre front"]`
	case !s.says("expected '.' or '='", "expected key separator"):
		return "", ""
	case s.letter == ":":
		return `there is a ":" where "=" belongs`, "write name = value"
	case strings.Contains(s.line, "="):
		return `the name before "=" is not in quotes`, `write a name with a space or an accent in quotes: "centre front" = ...`
	}
	return `there is no "=" on this line`, "write name = value, or put # before a remark"
}

// badNumber explains what begins as a number and is none.
func (s slip) badNumber() (cause, hint string) {
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

var bareWord = regexp.MustCompile(`[^\s,\[\]{}"'=#]+`)

// word returns the whole word around the letter that the library stumbled over.
func (s slip) word() string {
	if m := s.around(bareWord); m != "" {
		return m
	}
	return s.letter
}

// badValue explains what stands in place of a value.
func (s slip) badValue() (cause, hint string) {
	if !s.says("expected value") {
		return "", ""
	}
	if s.letter == "" {
		return `there is no value after "="`, `write a number, or text in quotes`
	}
	if s.letter == "(" {
		return `there is a "(" where a "[" belongs`, pointsHint
	}
	word := s.word()
	switch strings.ToLower(word) {
	case "true", "false", "yes", "no", "on", "off":
		return word + " is not known here", "write true or false, in small letters and without quotes"
	}
	return wording.Brief(word) + " is not in quotes", `write text in quotes, such as title = "Linden"`
}

const (
	tooManyQuotes = "there is a quotation mark too many"
	inchMarkHint  = `inside quotes write in instead of the inch mark: "2 1/8 in"`
)

// afterValue explains what stands between a value and the end of its line.
func (s slip) afterValue() (cause, hint string) {
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
	return "there is something behind the end of the value", "put text in quotes, and # before a remark"
}
