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
	open := goneThrough(text).open
	if len(open) == 0 {
		return opening{}
	}
	return open[len(open)-1]
}

// content is what a text has in it, as far as its brackets do not nest too deeply and its values
// are not too many.
type content struct {
	open   []opening // the brackets that stand open at its end, the outermost first, or the one long text
	values int       // at most so many: keys and their parts, tables, lists, and what stands in these
	line   int       // the last
}

// goneThrough returns what a text has in it.
func goneThrough(text string) content {
	c := content{line: 1}
	keyed := false // a "=" has come before on this line
	for i := 0; i < len(text) && len(c.open) <= maxNesting && c.values <= maxValues; i++ {
		switch sign := text[i]; sign {
		case '\n':
			c.line++
			keyed = false
		case '=':
			keyed = true
			c.values++
		case '.':
			if n := len(c.open); n > 0 && c.open[n-1].bracket == '{' || n == 0 && !keyed {
				c.values++
			}
		case ',':
			c.values++
		case '#':
			end := strings.IndexByte(text[i:], '\n')
			if end < 0 {
				return c
			}
			i += end - 1
		case '"', '\'':
			size := quotedSize(text[i:])
			if size == 0 {
				c.open = []opening{{line: c.line}}
				return c
			}
			c.line += strings.Count(text[i:i+size], "\n")
			i += size - 1
		case '[', '{':
			c.values++
			if keyed || len(c.open) > 0 {
				c.open = append(c.open, opening{sign, c.line})
			}
		case ']', '}':
			c.open = c.open[:max(0, len(c.open)-1)]
		}
	}
	return c
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
