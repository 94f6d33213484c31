package source

import (
	"bytes"
	"fmt"
	"unicode/utf8"

	"github.com/pelletier/go-toml/v2/unstable"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: the library that reads the values says on which line a syntax error
// is, but not on which line a key stands, so the text is gone through once more for that
// alone, by the parser of another library. It comes first, because what would exhaust
// the one that reads the values is bounded here: how deep values nest, and how much room
// the full names of the keys take. What is no TOML ends it without a word; the other
// library will say why.

const (
	// maxNesting is how many brackets may stand inside each other, and how
	// many parts a dotted key may have. It bounds the recursion of the TOML
	// library and of the scan; a pattern needs five.
	maxNesting = 64
	// maxKeyBytes is how many bytes the dotted keys of a file may have
	// together, each written out in full. It bounds the memory of the TOML
	// library, which keeps every one of them.
	maxKeyBytes = 64 << 20
	// maxBeside is how many names a table may have in it, twice as many as of any kind are drawn. It
	// bounds the time of laying tables over each other.
	maxBeside = 2000
	// maxValues is how many keys and their parts, tables, lists, and values in lists a file may
	// have. It bounds the memory of both libraries, and the time of all that reads them: a
	// thousand pieces of a dozen edges have fewer than half as many.
	maxValues = 400_000
)

const tooMuchHint = "look for a part that was pasted in by mistake, or divide the file"

// spot is a key, a table or an element of an array, with where it stands. A
// spot that is nil stands nowhere and has nothing in it.
type spot struct {
	name    string // of a key or table; "" of an element
	file    string // "" where there is one file only
	line    int
	over    bool    // its value takes the place of one in what it is like, or in its file
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
	} else {
		n.lookUp()
	}
	return c
}

// lookUp makes the map of what is within, once that is much.
func (n *spot) lookUp() {
	if len(n.within) <= manyWithin {
		return
	}
	n.byName = make(map[string]*spot, 2*manyWithin)
	for _, c := range n.within {
		if _, twice := n.byName[c.name]; !twice {
			n.byName[c.name] = c
		}
	}
}

// stand notes where a spot stands itself, and not only something within it.
// The first time counts.
func (n *spot) stand(line int) {
	if !n.own {
		n.own, n.line = true, line
	}
}

// standIn says of all that stands at or within a spot in which file it is.
func (n *spot) standIn(file string) {
	n.file = file
	for _, c := range n.within {
		c.standIn(file)
	}
}

// laidOver returns the spot of a value that takes the place of another.
func (n *spot) laidOver() *spot {
	if n == nil {
		return nil
	}
	other := *n
	other.over = true
	return &other
}

// isOver reports whether the value there takes the place of another.
func (n *spot) isOver() bool { return n != nil && n.over }

// holding returns the spot with other keys within it; one that is nowhere stays so.
func (n *spot) holding(within []*spot) *spot {
	if n == nil {
		return nil
	}
	other := &spot{name: n.name, file: n.file, line: n.line, own: n.own, pathLen: n.pathLen, within: within}
	other.lookUp()
	return other
}

// findSpots returns the root of all the keys, tables and elements of a TOML file. A table
// is where its header stands or, when it has none, where it is first spoken of. Tables of
// one name in [[ ]] are laid over one another. Of text that is not TOML it returns what
// comes before. The fault is a text that the library that reads the values must not be
// given.
func findSpots(text string) (*spot, *fault.Fault) {
	s := &spotter{text: []byte(text), line: 1}
	switch c := goneThrough(text); {
	case len(c.open) > maxNesting:
		s.line = c.line
		s.refuse(fmt.Sprintf("more than %d brackets stand inside each other", maxNesting), `a list of points has two: [[0, 0], [3, "4 1/2"]]`)
		return nil, s.stop
	case c.values > maxValues:
		s.line = c.line
		s.refuse("here the file has more than "+wording.Thousands(maxValues)+" values", ThinnedPoints+"; "+tooMuchHint)
		return nil, s.stop
	}
	root := &spot{}
	table := root
	var parser unstable.Parser
	for parser.Reset(s.text); s.stop == nil && parser.NextExpression(); {
		if e := parser.Expression(); e.Kind == unstable.KeyValue {
			s.keyValue(table, e)
		} else {
			table = s.walk(root, e.Key())
			table.stand(s.line)
		}
	}
	return root, s.stop
}

// spotter goes through a text from one thing that the parser has found to the next.
type spotter struct {
	text     []byte
	at       int // the byte behind what was found last
	line     int
	keyBytes int
	single   *spot // of the last element that was no array or table
	stop     *fault.Fault
}

func (s *spotter) refuse(cause, hint string) {
	s.stop = &fault.Fault{Place: fault.Place{Line: s.line}, Cause: cause, Hint: hint}
}

// goTo goes on to a byte of the text.
func (s *spotter) goTo(at uint32) {
	s.line += bytes.Count(s.text[s.at:at], []byte("\n"))
	s.at = int(at)
}

// pass goes behind something and returns the line on which it begins.
func (s *spotter) pass(found unstable.Range) (line int) {
	s.goTo(found.Offset)
	line = s.line
	s.goTo(found.Offset + found.Length)
	return line
}

// passBracket goes behind the next opening bracket, since the parser does not say where an
// array begins. Before it can stand signs and remarks only.
func (s *spotter) passBracket() {
	for ; s.at < len(s.text); s.at++ {
		switch s.text[s.at] {
		case '[', '{':
			s.at++
			return
		case '\n':
			s.line++
		case '#':
			s.at += max(0, bytes.IndexByte(s.text[s.at:], '\n')-1)
		}
	}
}

// keyValue adds a key to a table, and what is within its value.
func (s *spotter) keyValue(table *spot, e *unstable.Node) {
	key := s.walk(table, e.Key())
	key.stand(s.line)
	s.value(key, e.Value())
}

// walk goes from a table along the parts of a key, adding what is new.
func (s *spotter) walk(table *spot, key unstable.Iterator) *spot {
	for parts := 1; key.Next(); parts++ {
		line, name := s.pass(key.Node().Raw), string(key.Node().Data)
		next := table.child(name)
		if next == nil {
			next = table.add(name, line)
		}
		crowded := len(table.within) > maxBeside
		table = next
		s.keyBytes += table.pathLen
		switch letters := utf8.RuneCountInString(name); {
		case letters > maxText:
			s.refuse(fmt.Sprintf("a name here has %d letters", letters), fmt.Sprintf("a name has at most %d letters", maxText))
		case parts > maxNesting:
			s.refuse(fmt.Sprintf("a key here has more than %d parts", maxNesting), "no key of a pattern has more than five")
		case crowded:
			s.refuse("more than "+wording.Thousands(maxBeside)+" names stand here beside each other", "divide the file")
		case s.keyBytes > maxKeyBytes:
			s.refuse("there are too many keys in this file", tooMuchHint)
		}
		if s.stop != nil {
			break
		}
	}
	return table
}

// value goes behind a value, adding to n what is within it.
func (s *spotter) value(n *spot, v *unstable.Node) {
	if !hasWithin(v) {
		s.pass(v.Raw)
		return
	}
	s.passBracket()
	if n.line == 0 {
		n.line = s.line
	}
	for inner := v.Children(); inner.Next(); {
		if v.Kind == unstable.Array {
			n.within = append(n.within, s.element(n, inner.Node()))
		} else {
			s.keyValue(n, inner.Node())
		}
	}
}

func hasWithin(v *unstable.Node) bool {
	return v.Kind == unstable.Array || v.Kind == unstable.InlineTable
}

// element returns the spot of an element of an array. Elements that can have nothing
// within share one, as long as the line is the same.
func (s *spotter) element(array *spot, v *unstable.Node) *spot {
	if hasWithin(v) {
		e := &spot{pathLen: array.pathLen}
		s.value(e, v)
		return e
	}
	if line := s.pass(v.Raw); s.single == nil || s.single.line != line {
		s.single = &spot{line: line}
	}
	return s.single
}

// keyParts returns the parts of a key as the library writes it in a message.
func keyParts(key string) (parts []string) {
	var parser unstable.Parser
	if parser.Reset([]byte(key + "=0")); parser.NextExpression() {
		for part := parser.Expression().Key(); part.Next(); {
			parts = append(parts, string(part.Node().Data))
		}
	}
	return parts
}
