package main

import (
	"errors"
	"io"
	"os"
	"os/signal"
	"path/filepath"
	"slices"
	"syscall"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/pdfout/save"
)

// Rules of this file: what cannot be written is found before the work, and nothing is written
// before everything is known to be right. Sheets go into a file, or out to another program, and
// what is said then goes where messages go.

// What may be done where something cannot be written.
const (
	sheetsElsewhere = "write the sheets elsewhere with -o"
	fileElsewhere   = "name a file elsewhere"
)

// output is where sheets go.
type output struct {
	name string
	put  func([]byte) error
}

// outputTo is where sheets go that are to be called so, where they can. In are the files they are made from,
// none of which they may replace.
func (p printing) outputTo(out string, in ...string) (output, error) {
	switch {
	case out == standard:
		return standardOutput(p.stdout)
	case save.IsFolder(out):
		return output{}, fileFault(out, "this is a folder, not a file", "give -o the name of a file in it, such as "+fileInShell(filepath.Join(out, "sheets.pdf")))
	case slices.ContainsFunc(in, func(in string) bool { return same(in, out) }):
		return output{}, fileFault(out, "this would write the sheets over what they are made from", "give -o another name, that ends in .pdf or .svg")
	case formatOf(out) == noFormat:
		return output{}, fileFault(out, "the sheets are a PDF or an SVG, and this is no name for one", endings)
	}
	place, err := save.At(out, sheetsElsewhere)
	return output{name: out, put: place.Put}, err
}

// standardOutput is what goes out to another program.
func standardOutput(to io.Writer) (output, error) {
	if isTerminal(to) {
		return output{}, misuse("a PDF cannot be read at a terminal", "lead it into a file or to another program, or give -o a name that ends in .pdf")
	}
	return output{name: "standard output", put: func(data []byte) error { return writeOut(to, "the sheets", data) }}, nil
}

// same reports whether both names are one file.
func same(a, b string) bool {
	ia, errA := os.Stat(a)
	ib, errB := os.Stat(b)
	return errA == nil && errB == nil && os.SameFile(ia, ib)
}

// listener is who is told of what was made: whoever reads messages, where the sheets themselves
// go to the standard output.
func listener(c *cli.Context) io.Writer {
	if c.String("output") == standard {
		return c.App.ErrWriter
	}
	return c.App.Writer
}

// sayDone says what was made. It is made, and that nobody listens any more is no failure.
func sayDone(w io.Writer, text string) {
	signal.Ignore(syscall.SIGPIPE) // which would end the program as if it had failed
	io.WriteString(w, text)
}

// writeOut writes what was asked for, such as "the figures", to the screen, or to where it
// is led. A standard output that is closed is not told from one that leads nowhere: Go itself
// opens the null device in its place, before anything of ours runs.
func writeOut(w io.Writer, what string, data []byte) error {
	if _, err := w.Write(data); err != nil {
		return unwritten(what, err)
	}
	return nil
}

// unwritten says of something that is printed that it could not be.
func unwritten(what string, err error) error {
	return fileFault(program, what+" cannot be written: "+fault.Innermost(err), "")
}

// unheard is how a run ended, with what went wrong when something was written that the parser
// writes itself: it tells nobody. That nobody listens any more, as behind head, is no failure.
func unheard(to io.Writer, err error) error {
	out, covered := to.(*clearing)
	if !covered || err != nil {
		return err
	}
	if failed := out.failed(); failed != nil && !errors.Is(failed, syscall.EPIPE) {
		return unwritten("the answer", failed)
	}
	return nil
}
