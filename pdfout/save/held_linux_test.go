package save

import (
	"bufio"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: a program is ended by the system while it writes. It tells when it asks
// whether it is to end, and waits to be answered, so that nothing hangs on a clock.

// writer is in the environment of a test that is the program that writes; it is the name of the file.
const writer = "TUCKMARK_TEST_WRITES"

// TestWriter is that program.
func TestWriter(t *testing.T) {
	name := os.Getenv(writer)
	if name == "" {
		t.Skip("it is for the tests below")
	}
	p, err := At(name, elsewhere)
	require.NoError(t, err)
	answers := bufio.NewReader(os.Stdin)
	require.NoError(t, held(func(ending func() bool) error {
		return p.put(large, func() bool {
			fmt.Println("asked")
			answers.ReadByte()
			return ending()
		})
	}))
	fmt.Println("written")
	answers.ReadByte()
}

// ended runs the writer, signals it at its nth word, and returns how it ended.
func ended(t *testing.T, name string, by syscall.Signal, n int, wrapper ...string) syscall.WaitStatus {
	words := append(wrapper, os.Args[0], "-test.run=^TestWriter$")
	command := exec.Command(words[0], words[1:]...)
	command.Env = append(os.Environ(), writer+"="+name)
	in, err := command.StdinPipe()
	require.NoError(t, err)
	out, err := command.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, command.Start())
	said := bufio.NewScanner(out)
	for k := 1; said.Scan(); k++ {
		if k == n {
			require.NoError(t, command.Process.Signal(by))
			if said.Text() == "written" {
				continue // it is at nothing that it must not leave, and ends at once
			}
		}
		io.WriteString(in, "\n") // a program that has ended does not read it
	}
	command.Wait()
	return command.ProcessState.Sys().(syscall.WaitStatus)
}

// heard lets programs that are begun here hear what would end them, where this one was itself begun
// to ignore it, as behind nohup or in the background of a script.
func heard() {
	for _, one := range []os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP} {
		if signal.Ignored(one) {
			signal.Notify(make(chan os.Signal, 1), one)
		}
	}
}

// words is how often the writer of a large file says something before it is done.
const words = 6

func TestEndedBySignals(t *testing.T) {
	heard()
	random := rand.New(rand.NewPCG(1, 2))
	for _, by := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP} {
		for n := 1; n <= words; n++ {
			folder := t.TempDir()
			before := map[string]string{}
			out := filepath.Join(folder, "out.pdf")
			if random.IntN(2) == 0 {
				before["out.pdf"] = "old"
				require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
			}
			status := ended(t, out, by, n)
			assert.True(t, status.Signaled() && status.Signal() == by, "%s at word %d: it ends by %v, status %d", by, n, status.Signal(), status.ExitStatus())
			if left := inFolder(t, folder); left["out.pdf"] == string(large) {
				assert.Len(t, left, 1, "%s at word %d", by, n)
			} else {
				assert.Equal(t, before, left, "%s at word %d", by, n)
				assert.Less(t, n, words, "what was written is there")
			}
		}
	}
}

// A program that was begun so that it outlives its terminal does.
func TestHangingUpIsIgnoredWhereItWas(t *testing.T) {
	nohup, err := exec.LookPath("nohup")
	if err != nil {
		t.Skip(err)
	}
	out := filepath.Join(t.TempDir(), "out.pdf")
	status := ended(t, out, syscall.SIGHUP, 2, nohup)
	assert.Equal(t, 0, status.ExitStatus())
	text, err := os.ReadFile(out)
	require.NoError(t, err)
	assert.Equal(t, len(large), len(text))
}
