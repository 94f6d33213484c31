package main

import (
	"io"
	"os"
	"sync"

	"golang.org/x/term"

	"tuckmark/marking/source"
)

// Rules of this file: a dash alone stands for what comes in from another program, where a file is
// read, and for what goes out to one, where the sheets are written. What is said then goes where
// messages go.

// standard is that dash.
const standard = "-"

// called is what messages call a file that is read.
func called(in string) string {
	if in == standard {
		return "standard input"
	}
	return in
}

// standardInput is what comes in from another program, which can be read only once.
var standardInput = sync.OnceValues(func() ([]byte, error) {
	if isTerminal(os.Stdin) {
		return nil, misuse("no file comes in: the standard input is a terminal", "lead a file into it, or name the file")
	}
	data, err := io.ReadAll(io.LimitReader(os.Stdin, source.MaxFileSize+1))
	if err != nil {
		return nil, unreadable(called(standard), err)
	}
	return data, nil
})

// standardOutput is what goes out to another program.
func standardOutput(to io.Writer) (output, error) {
	if isTerminal(to) {
		return output{}, misuse("a PDF cannot be read at a terminal", "lead it into a file or to another program, or give -o a name that ends in .pdf")
	}
	return output{name: "standard output", put: func(data []byte) error { return writeOut(to, "the sheets", data) }}, nil
}

// isTerminal reports whether somebody sits there, to be asked or to read.
func isTerminal(end any) bool {
	if covered, ok := end.(*clearing); ok {
		end = covered.Writer
	}
	f, isFile := end.(*os.File)
	return isFile && term.IsTerminal(int(f.Fd()))
}
