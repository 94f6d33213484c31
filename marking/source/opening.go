package source

import (
	"strings"
)

// Rules of this file: it goes through text that may be no TOML, or too deeply nested to be
// given to a library, and takes whatever could be meant.

// opening is the bracket or the long text that stands open somewhere.
type opening struct {
	bracket byte // '[' or '{'; 0 in a text, or where nothing is open
	line    int
}

// openedBefore returns what stands open at the end of a text that is TOML so
// far: the last of several brackets, and nothing in a table's header.
func openedBefore(text string) opening {
	open := opened(text)
	if len(open) == 0 {
		return opening{}
	}
	return open[len(open)-1]
}

// opened returns the brackets that stand open at the end of a text, the outermost first,
// or the one long text. Where brackets nest too deeply it ends at the first of those.
func opened(text string) (open []opening) {
	line := 1
	keyed := false // a "=" has come before on this line
	for i := 0; i < len(text); i++ {
		switch c := text[i]; c {
		case '\n':
			line++
			keyed = false
		case '=':
			keyed = true
		case '#':
			end := strings.IndexByte(text[i:], '\n')
			if end < 0 {
				return open
			}
			i += end - 1
		case '"', '\'':
			size := quotedSize(text[i:])
			if size == 0 {
				return []opening{{line: line}}
			}
			line += strings.Count(text[i:i+size], "\n")
			i += size - 1
		case '[', '{':
			if keyed || len(open) > 0 {
				open = append(open, opening{c, line})
			}
			if len(open) > maxNesting {
				return open
			}
		case ']', '}':
			open = open[:max(0, len(open)-1)]
		}
	}
	return open
}

// quotedSize returns how many bytes a quoted text takes that another text begins with, 0
// where it is not closed. Before the three marks that end a long one up to two may stand
// that belong to it.
func quotedSize(text string) int {
	mark, end := text[0], text[:1]
	long := strings.HasPrefix(text, strings.Repeat(end, 3))
	if long {
		end = text[:3]
	}
	for i := len(end); i < len(text); i++ {
		switch {
		case strings.HasPrefix(text[i:], end):
			i += len(end)
			for n := 0; long && n < 2 && i < len(text) && text[i] == mark; n++ {
				i++
			}
			return i
		case text[i] == '\n' && !long:
			return 0
		case text[i] == '\\' && mark == '"':
			i++
		}
	}
	return 0
}
