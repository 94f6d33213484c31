package browser

import (
	"bufio"
	"io/fs"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/proof"
)

// Rules of this file: the program is the real one, started as a maker starts it, in a folder
// of its own.

// program is tuckmark, which is built for the first test that wants it.
var program struct {
	sync.Once
	folder, path string
	err          error
}

func removeProgram() {
	if program.folder != "" {
		os.RemoveAll(program.folder)
	}
}

// built is the path of the program.
func built(t testing.TB) string {
	t.Helper()
	program.Do(func() {
		if program.folder, program.err = os.MkdirTemp("", "tuckmark-look"); program.err != nil {
			return
		}
		program.path = filepath.Join(program.folder, "tuckmark")
		if program.err = seeAll(sources); program.err != nil {
			return
		}
		build := exec.Command("go", "build", "-o", program.path, ".")
		build.Dir = sources
		var said []byte
		if said, program.err = build.CombinedOutput(); program.err != nil {
			os.Stderr.Write(said)
		}
	})
	require.NoError(t, program.err, "the program must be built")
	return program.path
}

// sources is the folder of the program.
var sources = filepath.Join("..", "..", "..")

// seeAll reads all folders below one. go test keeps a result while nothing has changed that the
// test itself has read, and does not know what it has another program build.
func seeAll(folder string) error {
	return filepath.WalkDir(folder, func(path string, entry fs.DirEntry, err error) error {
		if err == nil && entry.IsDir() && path != folder && strings.HasPrefix(entry.Name(), ".") {
			return filepath.SkipDir
		}
		return err
	})
}

// looking is the program that shows a file.
type looking struct {
	t       testing.TB
	file    string // that is shown
	address string
	command *exec.Cmd
	ended   chan error
}

// address is as it stands in what the program says first.
var addressSaid = regexp.MustCompile(`http://\S+`)

// look starts the program on a file, and ends it with the test.
func look(t testing.TB, file string, flags ...string) *looking {
	t.Helper()
	proof.Tool(t, "chromium") // without one nobody looks, and nothing need be built
	l := &looking{t: t, file: file, ended: make(chan error, 1)}
	l.command = exec.Command(built(t), append([]string{"look", "--no-browser", filepath.Base(file)}, flags...)...)
	l.command.Dir = filepath.Dir(file)
	said, err := l.command.StdoutPipe()
	require.NoError(t, err)
	var wrong strings.Builder
	l.command.Stderr = &wrong
	require.NoError(t, l.command.Start())
	lines := bufio.NewScanner(said)
	for l.address == "" && lines.Scan() {
		l.address = addressSaid.FindString(lines.Text())
	}
	go func() {
		for lines.Scan() { // what it says later is nobody's, but must not hold it up
		}
		l.ended <- l.command.Wait()
	}()
	if l.address == "" {
		require.NoError(t, <-l.ended, "%s", wrong.String())
		require.Fail(t, "the program names no address", "%s", wrong.String())
	}
	t.Cleanup(l.end)
	return l
}

// port is the number of the port that the program is reached at.
func (l *looking) port() string {
	at, err := url.Parse(l.address)
	require.NoError(l.t, err)
	return at.Port()
}

// end ends the program as Ctrl-C does; once is enough.
func (l *looking) end() {
	if l.ended == nil {
		return
	}
	l.t.Helper()
	require.NoError(l.t, l.command.Process.Signal(syscall.SIGINT))
	require.NoError(l.t, <-l.ended, "Ctrl-C is no failure")
	l.ended = nil
}

// copied copies a file to a folder of its own, and is the path of the copy.
func copied(t testing.TB, file string) string {
	t.Helper()
	to := filepath.Join(t.TempDir(), filepath.Base(file))
	require.NoError(t, os.WriteFile(to, []byte(text(t, file)), 0o644))
	return to
}

// frock is a garment of straight lines, whose lengths can be reckoned in the head.
var frock = filepath.Join("testdata", "frock.toml")

// text is what a file says.
func text(t testing.TB, file string) string {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	return string(data)
}

// changed is what a file says with one of its places changed, which must be there.
func changed(t testing.TB, says, old, new string) string {
	t.Helper()
	require.Contains(t, says, old, "the file has the place that is changed")
	return strings.Replace(says, old, new, 1)
}

// A save is how an editor writes a file.
type save func(file, says string) error

// saves are the ways that editors have.
var saves = []struct {
	name string
	save save
}{
	{"in place", func(file, says string) error { return os.WriteFile(file, []byte(says), 0o644) }},
	{"renamed over it", func(file, says string) error {
		beside := file + "~new"
		if err := os.WriteFile(beside, []byte(says), 0o644); err != nil {
			return err
		}
		return os.Rename(beside, file)
	}},
	{"the old one moved away", func(file, says string) error {
		if err := os.Rename(file, file+"~"); err != nil {
			return err
		}
		return os.WriteFile(file, []byte(says), 0o644)
	}},
	{"in two strokes", func(file, says string) error {
		f, err := os.OpenFile(file, os.O_WRONLY|os.O_TRUNC, 0o644)
		if err != nil {
			return err
		}
		half := len(says) / 2
		if _, err := f.WriteString(says[:half]); err != nil {
			return err
		}
		if _, err := f.WriteString(says[half:]); err != nil {
			return err
		}
		return f.Close()
	}},
}
