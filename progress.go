package main

import (
	"cmp"
	"io"
	"os"
	"strings"
	"sync"
	"time"

	"golang.org/x/term"

	"tuckmark/marking/terminal"
	"tuckmark/marking/wording"
)

// Rules of this file: whoever waits at a terminal for longer than a moment is told for what, in one
// line that goes away again. Into a file or another program nothing of it is ever written.

// aMoment is for how long nobody asks what a program is at.
const aMoment = time.Second

// progress tells at a terminal what a command is at. The methods of nil do nothing.
type progress struct {
	terminal io.Writer  // nil where there is none
	width    func() int // of its lines, in letters

	mutex sync.Mutex
	stage string      // what it is at; "" for nothing
	shown int         // how many letters of that stand in the line
	wait  *time.Timer // until the moment is over; nil before it has begun
	over  bool        // the moment is
}

// progressOn tells it where the messages go, where that is a terminal.
func progressOn(messages io.Writer) *progress {
	if !isTerminal(messages) {
		return nil
	}
	file := messages.(*os.File)
	return &progress{terminal: messages, width: func() int {
		width, _, err := term.GetSize(int(file.Fd()))
		if err != nil || width <= 0 {
			width = terminal.Width
		}
		return width
	}}
}

// at says what the command is at from now on, such as "reading bib.toml".
func (p *progress) at(stage string) {
	if p == nil {
		return
	}
	p.mutex.Lock()
	defer p.mutex.Unlock()
	if p.wait == nil {
		p.wait = time.AfterFunc(aMoment, func() {
			p.mutex.Lock()
			defer p.mutex.Unlock()
			p.over = true
			p.show()
		})
	}
	p.stage = stage
	if p.over {
		p.show()
	}
}

// reading is what a command is at that reads a file.
func reading(in string) string {
	return "reading " + wording.FileName(called(in)) + " and working out its pieces"
}

// end takes the line away.
func (p *progress) end() {
	if p == nil {
		return
	}
	p.mutex.Lock()
	defer p.mutex.Unlock()
	p.stage = ""
	p.show()
}

// show has the line say what the command is at. It is written over, for not every terminal knows
// how a line is cleared.
func (p *progress) show() {
	line := []rune(p.stage)
	if len(line) > 0 {
		line = append(line, []rune(" ...")...)
		line = line[:min(len(line), max(p.width()-1, 0))] // in its last place it would begin another line
	}
	if p.shown > 0 {
		io.WriteString(p.terminal, "\r"+strings.Repeat(" ", p.shown)+"\r")
	}
	p.shown = len(line)
	io.WriteString(p.terminal, string(line))
}

// before is a writer that takes the line away before it writes.
func (p *progress) before(w io.Writer) io.Writer { return &clearing{progress: p, Writer: w} }

// clearing is a writer before which the line goes away. It keeps the first error in writing, for
// those who do not ask.
type clearing struct {
	progress *progress
	io.Writer

	mutex sync.Mutex
	err   error
}

func (c *clearing) Write(text []byte) (int, error) {
	c.progress.end()
	n, err := c.Writer.Write(text)
	if err != nil {
		c.mutex.Lock()
		defer c.mutex.Unlock()
		c.err = cmp.Or(c.err, err)
	}
	return n, err
}

// failed is the first error in writing; nil where there was none.
func (c *clearing) failed() error {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	return c.err
}

// isTerminal reports whether somebody sits there, to be asked or to read.
func isTerminal(end any) bool {
	if covered, ok := end.(*clearing); ok {
		end = covered.Writer
	}
	f, isFile := end.(*os.File)
	return isFile && term.IsTerminal(int(f.Fd()))
}
