package marking

import (
	"fmt"
	"strings"
)

// Rules of this file: a problem says the cause first, in lower case and
// without a full stop; what to do about it goes into the hint. The place is
// the file, the line, and the dotted key a reader can search for.

// Place is where in a file something stands.
type Place struct {
	Path string // dotted key, such as piece.front.edge.neck; "" is the file as a whole
	Line int    // counted from 1; 0 when it is not known
}

// Problem is one mistake in a file.
type Problem struct {
	Place
	Cause string
	Hint  string // "" when there is nothing to advise
}

// Problems are all the mistakes found in one file, in the order of its lines.
type Problems struct {
	File string
	List []Problem
}

// Error gives every problem on a line of its own, its hint under it.
func (p *Problems) Error() string {
	var b strings.Builder
	for i, one := range p.List {
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(p.File)
		if one.Line > 0 {
			fmt.Fprintf(&b, ":%d", one.Line)
		}
		b.WriteString(": ")
		if one.Path != "" {
			b.WriteString(one.Path + ": ")
		}
		b.WriteString(one.Cause)
		if one.Hint != "" {
			b.WriteString("\nhint: " + one.Hint)
		}
	}
	return b.String()
}
