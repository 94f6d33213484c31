package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// screenOf are the lines that stand on a terminal on which something was written, one line over
// another where it goes back; spaces at their ends cannot be seen.
func screenOf(written string) []string {
	lines, at := [][]rune{nil}, 0
	for _, c := range written {
		last := len(lines) - 1
		switch {
		case c == '\r':
			at = 0
		case c == '\n':
			lines, at = append(lines, nil), 0
		case at < len(lines[last]):
			lines[last][at] = c
			at++
		default:
			lines[last] = append(lines[last], c)
			at++
		}
	}
	var seen []string
	for _, line := range lines {
		seen = append(seen, strings.TrimRight(string(line), " "))
	}
	return seen
}

// shared is what a command and its clock both write to.
type shared struct {
	mutex sync.Mutex
	text  bytes.Buffer
}

func (s *shared) Write(text []byte) (int, error) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.text.Write(text)
}

func (s *shared) String() string {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.text.String()
}

// In a time that the test sets: what stands on the terminal after so long.
func TestProgress(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var on shared
		p := &progress{terminal: &on, width: func() int { return 20 }}
		said := p.before(&on)
		seen := func(after time.Duration, want ...string) {
			t.Helper()
			time.Sleep(after)
			synctest.Wait()
			assert.Equal(t, want, screenOf(on.String()))
		}
		p.at("reading")
		seen(900*time.Millisecond, "")
		assert.Empty(t, on.String(), "nothing is written before a second is over")
		p.at("placing")
		seen(90*time.Millisecond, "")
		seen(20*time.Millisecond, "placing ...")
		p.at("drawing")
		seen(0, "drawing ...")
		p.at("reading a name that is long")
		seen(0, "reading a name that") // and no letter in the last place
		p.at("é")
		seen(time.Hour, "é ...")
		said.Write([]byte("bib.pdf: 3 pages\n"))
		seen(time.Hour, "bib.pdf: 3 pages", "")
		p.at("writing")
		seen(0, "bib.pdf: 3 pages", "writing ...")
		p.end()
		p.end()
		seen(0, "bib.pdf: 3 pages", "")
	})
}

// What is over within a second leaves no trace, and what is said comes as it is.
func TestNoProgressWithinAMoment(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var on shared
		p := &progress{terminal: &on, width: func() int { return 80 }}
		p.at("reading")
		time.Sleep(999 * time.Millisecond)
		p.before(&on).Write([]byte("done\n"))
		time.Sleep(time.Hour)
		p.end()
		synctest.Wait()
		assert.Equal(t, "done\n", on.String())
	})
}

// Only a terminal is told.
func TestProgressIsForTerminals(t *testing.T) {
	file, err := os.Create(filepath.Join(t.TempDir(), "said.txt"))
	require.NoError(t, err)
	defer file.Close()
	in, out, err := os.Pipe()
	require.NoError(t, err)
	defer in.Close()
	defer out.Close()
	null, err := os.OpenFile(os.DevNull, os.O_WRONLY, 0)
	require.NoError(t, err)
	defer null.Close()
	for _, f := range []*os.File{file, out, null} {
		assert.Nil(t, progressOn(f), "%s", f.Name())
	}
	p := progressOn(new(bytes.Buffer))
	p.at("reading") // and nothing comes of it
	p.end()
	assert.False(t, isTerminal(p.before(file)))
	_, err = p.before(file).Write([]byte("a line\n"))
	require.NoError(t, err)
	written, err := os.ReadFile(file.Name())
	require.NoError(t, err)
	assert.Equal(t, "a line\n", string(written), "as it is")
}
