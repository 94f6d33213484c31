package sketch

import "strings"

// Rules of this file: it finds in the text of a file what says something, so that a test may
// say it otherwise. It goes by lines, brackets and quotation marks alone, and makes of any
// text what it can: a text that is no TOML has values, too.

// Span is a part of a text: the bytes from From up to To.
type Span struct{ From, To int }

// In is the part of the text.
func (s Span) In(text string) string { return text[s.From:s.To] }

// Put is the text with something else in the place of the part.
func (s Span) Put(text, other string) string { return text[:s.From] + other + text[s.To:] }

// Said is one value of a file.
type Said struct {
	Table, Key string // as they are written: `piece.front.edge."centre front"`, `points`
	Line       Span   // from the key up to the end of the value
	Value      Span
}

// Table is a table of a file, but for those in braces.
type Table struct {
	Name   string
	Whole  Span // from its bracket up to the bracket of the next
	Header Span // its name with the brackets
}

// Values finds the values of a file, in their order.
func Values(text string) []Said {
	_, values := found(text)
	return values
}

// Tables finds the tables of a file that stand under a name in brackets, in their order.
func Tables(text string) []Table {
	tables, _ := found(text)
	return tables
}

func found(text string) (tables []Table, values []Said) {
	table := ""
	for at := 0; at < len(text); at++ {
		switch c := text[at]; {
		case c == ' ' || c == '\t' || c == '\r' || c == '\n':
		case c == '#':
			at = lineEnd(text, at)
		case c == '[':
			header := Span{at, valueEnd(text, at)}
			if n := len(tables); n > 0 {
				tables[n-1].Whole.To = at
			}
			table = strings.Trim(header.In(text), "[] \t\r\n")
			tables = append(tables, Table{table, Span{at, len(text)}, header})
			at = header.To
		default:
			end := lineEnd(text, at)
			equals := at + indexOutside(text[at:end], '=')
			if equals < at {
				at = end
				continue
			}
			from := equals + 1
			for from < end && (text[from] == ' ' || text[from] == '\t') {
				from++
			}
			to := valueEnd(text, from)
			values = append(values, Said{table, strings.TrimSpace(text[at:equals]), Span{at, to}, Span{from, to}})
			at = to
		}
	}
	return tables, values
}

// lineEnd is where the line ends that a place is on.
func lineEnd(text string, at int) int {
	if n := strings.IndexByte(text[at:], '\n'); n >= 0 {
		return at + n
	}
	return len(text)
}

// indexOutside is where a letter stands first outside quotation marks; -1 where it does not.
func indexOutside(text string, letter byte) int {
	for at := 0; at < len(text); at++ {
		switch c := text[at]; c {
		case letter:
			return at
		case '"', '\'':
			at = quoteEnd(text, at) - 1
		}
	}
	return -1
}

// quoteEnd is where the text in quotation marks ends that begins at a place: behind the
// second, or at the end of the line.
func quoteEnd(text string, at int) int {
	mark, end := text[at], lineEnd(text, at)
	for at++; at < end; at++ {
		switch {
		case text[at] == mark:
			return at + 1
		case text[at] == '\\' && mark == '"':
			at++
		}
	}
	return end
}

// valueEnd is where the value ends that begins at a place: at the end of its line, or of the
// line on which its brackets are closed; remarks and spaces behind it do not belong to it.
func valueEnd(text string, at int) int {
	depth, end := 0, at
	for at < len(text) {
		switch c := text[at]; c {
		case '\n', '#':
			if depth <= 0 {
				return end
			}
			at = max(lineEnd(text, at), at+1)
			continue
		case '"', '\'':
			at = quoteEnd(text, at)
			end = at
			continue
		case '[', '{':
			depth++
		case ']', '}':
			depth--
		case ' ', '\t', '\r':
			at++
			continue
		}
		at++
		end = at
	}
	return min(end, len(text))
}

// Atoms are the numbers, words and texts in quotation marks of which a value is made.
func Atoms(text string, value Span) []Span {
	var all []Span
	for at := value.From; at < value.To; {
		switch c := text[at]; {
		case c == '"' || c == '\'':
			end := min(quoteEnd(text, at), value.To)
			all = append(all, Span{at, end})
			at = end
		case c == '#':
			at = min(lineEnd(text, at), value.To)
		case strings.IndexByte(" \t\r\n[]{},=", c) >= 0:
			at++
		default:
			end := at
			for end < value.To && strings.IndexByte(" \t\r\n[]{},=\"'#", text[end]) < 0 {
				end++
			}
			all = append(all, Span{at, end})
			at = end
		}
	}
	return all
}
