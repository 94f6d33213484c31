package source

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"tuckmark/marking/fault"
)

// Rules of this file: the TOML library says on which line a syntax error is,
// but not on which line a key stands, so the text is gone through once more
// for that alone. What is read here is trusted only as far as the library has
// accepted the text: the scan is lenient, takes whatever could be TOML, and
// gives up without a word where nothing could. It comes before the library
// all the same, because it bounds what would exhaust the library: how deep
// values nest, and how much room the full names of the keys take.

const (
	// maxNesting is how many brackets may stand inside each other, and how
	// many parts a dotted key may have. It bounds the recursion of the TOML
	// library and of the scan; a pattern needs five.
	maxNesting = 64
	// maxText is how many letters a name or any other text may have. It
	// bounds what is printed and what a message repeats.
	maxText = 200
	// maxKeyBytes is how many bytes the dotted keys of a file may have
	// together, each written out in full. It bounds the memory of the TOML
	// library, which keeps every one of them.
	maxKeyBytes = 64 << 20
)

// spot is a key, a table or an element of an array, with where it stands. A
// spot that is nil stands nowhere and has nothing in it.
type spot struct {
	name    string // of a key or table; "" of an element
	line    int
	own     bool    // has a [header] or a "=" of its own
	within  []*spot // in the order of the file
	byName  map[string]*spot
	pathLen int // bytes of the dotted key
}

// manyWithin is from how many keys on a table is looked up in a map instead
// of one by one. It bounds nothing.
const manyWithin = 12

// child returns the key of that name in a table, or nil.
func (n *spot) child(name string) *spot {
	if n == nil {
		return nil
	}
	if n.byName != nil {
		return n.byName[name]
	}
	for _, c := range n.within {
		if c.name == name {
			return c
		}
	}
	return nil
}

// element returns the element of an array, counted from 0, or nil.
func (n *spot) element(i int) *spot {
	if n == nil || i < 0 || i >= len(n.within) {
		return nil
	}
	return n.within[i]
}

// lineOf returns the line, 0 where it is not known.
func (n *spot) lineOf() int {
	if n == nil {
		return 0
	}
	return n.line
}

func (n *spot) add(name string, line int) *spot {
	c := &spot{name: name, line: line, pathLen: n.pathLen + len(name) + 1}
	n.within = append(n.within, c)
	if n.byName != nil {
		n.byName[name] = c
	} else if len(n.within) > manyWithin {
		n.byName = make(map[string]*spot, 2*manyWithin)
		for _, c := range n.within {
			if _, twice := n.byName[c.name]; !twice {
				n.byName[c.name] = c
			}
		}
	}
	return c
}

// stand notes where a spot stands itself, and not only something within it.
// The first time counts.
func (n *spot) stand(line int) {
	if !n.own {
		n.own, n.line = true, line
	}
}

// isBare reports whether a letter may stand in a key without quotes.
func isBare(r rune) bool {
	return r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '_' || r == '-'
}

// findSpots goes through the text of a TOML file and returns the root of all
// its keys, tables and elements. A table is where its header stands or, when
// it has none, where it is first spoken of. Tables of one name in [[ ]] are
// laid over one another. Of text that is not TOML it returns what it met as
// far as it could follow. The problem is a text that the TOML library must
// not be given.
func findSpots(text string) (*spot, *fault.Fault) {
	s := &spotScan{text: text, line: 1}
	root := &spot{}
	table := root
	for s.skipBlank(); s.more(); s.skipBlank() {
		if s.text[s.at] == '[' {
			table = s.header(root)
		} else {
			s.keyValue(table)
		}
		s.skipLine()
	}
	return root, s.stop
}

type spotScan struct {
	text     string
	at       int // the byte to be looked at next
	line     int
	depth    int // of brackets
	keyBytes int
	lost     bool  // the text is no TOML
	single   *spot // of the last element that was no array or table
	stop     *fault.Fault
}

func (s *spotScan) more() bool { return s.at < len(s.text) && !s.lost && s.stop == nil }

func (s *spotScan) refuse(cause, hint string) {
	s.stop = &fault.Fault{Place: fault.Place{Line: s.line}, Cause: cause, Hint: hint}
}

// skipBlank goes to the next letter that is no space, line end or comment.
func (s *spotScan) skipBlank() {
	for s.more() {
		switch s.text[s.at] {
		case '\n':
			s.line++
			s.at++
		case ' ', '\t', '\r':
			s.at++
		case '#':
			s.skipLine()
		default:
			return
		}
	}
}

// skipSpaces goes to the next letter that is no space.
func (s *spotScan) skipSpaces() {
	for s.at < len(s.text) && (s.text[s.at] == ' ' || s.text[s.at] == '\t') {
		s.at++
	}
}

// skipLine goes to the end of the line.
func (s *spotScan) skipLine() { s.skipTo("\n") }

// skipTo goes to the next of these letters, or to the end of the text.
func (s *spotScan) skipTo(any string) {
	if i := strings.IndexAny(s.text[s.at:], any); i >= 0 {
		s.at += i
	} else {
		s.at = len(s.text)
	}
}

// header reads [a.b] or [[a.b]] and returns its table.
func (s *spotScan) header(root *spot) *spot {
	s.at++
	if strings.HasPrefix(s.text[s.at:], "[") {
		s.at++
	}
	table := s.walk(root, s.key())
	table.stand(s.line)
	return table
}

// keyValue reads a key, "=" and a value into a table.
func (s *spotScan) keyValue(table *spot) {
	key := s.walk(table, s.key())
	if !s.more() || s.text[s.at] != '=' {
		s.lost = true
		return
	}
	key.stand(s.line)
	s.at++
	s.skipSpaces()
	s.value(key)
}

// walk goes from a table along the parts of a key, adding what is new.
func (s *spotScan) walk(table *spot, parts []string) *spot {
	for _, part := range parts {
		next := table.child(part)
		if next == nil {
			next = table.add(part, s.line)
		}
		table = next
		if s.keyBytes += table.pathLen; s.keyBytes > maxKeyBytes {
			s.refuse("there are too many keys in this file", "no pattern needs as many; look for a part that was pasted in by mistake")
		}
	}
	return table
}

// key reads the parts of a dotted key and the spaces after it.
func (s *spotScan) key() []string {
	var parts []string
	for {
		s.skipSpaces()
		if !s.more() {
			s.lost = true
			return parts
		}
		var part string
		switch quote := s.text[s.at]; quote {
		case '"', '\'':
			start := s.at + 1
			s.skipQuoted(quote)
			if s.lost {
				return parts
			}
			part = s.text[start : s.at-1]
			if quote == '"' {
				part = unescaped(part)
			}
		default:
			start := s.at
			for s.at < len(s.text) && isBare(rune(s.text[s.at])) {
				s.at++
			}
			part = s.text[start:s.at]
			if part == "" {
				s.lost = true
				return parts
			}
		}
		if n := utf8.RuneCountInString(part); n > maxText {
			s.refuse(fmt.Sprintf("a name here has %d letters", n), fmt.Sprintf("a name has at most %d letters", maxText))
			return parts
		}
		parts = append(parts, part)
		if len(parts) > maxNesting {
			s.refuse(fmt.Sprintf("a key here has more than %d parts", maxNesting), "no key of a pattern has more than five")
			return parts
		}
		s.skipSpaces()
		if !s.more() || s.text[s.at] != '.' {
			return parts
		}
		s.at++
	}
}

// value reads over a value, adding to n what is within it.
func (s *spotScan) value(n *spot) {
	if !s.more() {
		return
	}
	switch c := s.text[s.at]; c {
	case '[', '{':
		s.depth++
		if s.depth > maxNesting {
			s.refuse(fmt.Sprintf("more than %d brackets stand inside each other", maxNesting), `a list of points has two: [[0, 0], [3, "4 1/2"]]`)
			return
		}
		s.at++
		if c == '[' {
			s.array(n)
		} else {
			s.inlineTable(n)
		}
		s.depth--
	case '"', '\'':
		if three := strings.Repeat(string(c), 3); strings.HasPrefix(s.text[s.at:], three) {
			s.skipLong(three)
		} else {
			s.skipQuoted(c)
		}
	default:
		s.skipTo(",]}#\n")
	}
}

// array reads over the elements of an array and its closing bracket.
func (s *spotScan) array(n *spot) {
	for s.skipBlank(); s.more(); s.skipBlank() {
		switch s.text[s.at] {
		case ']':
			s.at++
			return
		case ',':
			s.at++
		case '}':
			s.lost = true
		default:
			e := s.newElement(n)
			n.within = append(n.within, e)
			s.value(e)
		}
	}
}

// newElement returns the spot of the next element of an array. Elements that
// can have nothing within share one, as long as the line is the same.
func (s *spotScan) newElement(array *spot) *spot {
	if c := s.text[s.at]; c == '[' || c == '{' {
		return &spot{line: s.line, pathLen: array.pathLen}
	}
	if s.single == nil || s.single.line != s.line {
		s.single = &spot{line: s.line}
	}
	return s.single
}

// inlineTable reads over the keys of an inline table and its closing bracket.
func (s *spotScan) inlineTable(n *spot) {
	for s.skipBlank(); s.more(); s.skipBlank() {
		switch s.text[s.at] {
		case '}':
			s.at++
			return
		case ',':
			s.at++
		default:
			s.keyValue(n)
		}
	}
}

// skipQuoted reads over a string of one line.
func (s *spotScan) skipQuoted(quote byte) {
	for s.at++; s.at < len(s.text); s.at++ {
		switch c := s.text[s.at]; {
		case c == quote:
			s.at++
			return
		case c == '\n':
			s.lost = true
			return
		case c == '\\' && quote == '"':
			s.at++
		}
	}
	s.at, s.lost = len(s.text), true
}

// skipLong reads over a string of many lines. Up to two quotes may stand
// before the three that end it.
func (s *spotScan) skipLong(three string) {
	for s.at += len(three); s.at < len(s.text); s.at++ {
		switch c := s.text[s.at]; {
		case strings.HasPrefix(s.text[s.at:], three):
			s.at += len(three)
			for range 2 {
				if s.at < len(s.text) && s.text[s.at] == three[0] {
					s.at++
				}
			}
			return
		case c == '\n':
			s.line++
		case c == '\\' && three[0] == '"' && s.at+1 < len(s.text) && s.text[s.at+1] != '\n':
			s.at++
		}
	}
	s.lost = true
}

// unescaped resolves the escapes of a quoted key. What it makes of an escape
// that TOML does not know is of no account: the library refuses it.
func unescaped(s string) string {
	var b strings.Builder
	for {
		i := strings.IndexByte(s, '\\')
		if i < 0 || i+1 >= len(s) {
			return b.String() + s
		}
		b.WriteString(s[:i])
		c := s[i+1]
		s = s[i+2:]
		switch c {
		case 'b':
			b.WriteByte('\b')
		case 't':
			b.WriteByte('\t')
		case 'n':
			b.WriteByte('\n')
		case 'f':
			b.WriteByte('\f')
		case 'r':
			b.WriteByte('\r')
		case 'e':
			b.WriteByte(0x1b)
		case 'x', 'u', 'U':
			n := map[byte]int{'x': 2, 'u': 4, 'U': 8}[c]
			if len(s) < n {
				return b.String() + s
			}
			code, err := strconv.ParseUint(s[:n], 16, 32)
			if err == nil {
				b.WriteRune(rune(code))
			}
			s = s[n:]
		default:
			b.WriteByte(c)
		}
	}
}
