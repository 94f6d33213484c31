package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Who listens may go away, as head does. What is written in a file is there all the same; what
// only is said ends as it does with other programs, without a word.
func TestNobodyListens(t *testing.T) {
	for _, c := range []struct {
		command string
		made    string // "" where it fails
	}{
		{"sheet bib.toml", "bib.pdf"}, {"gauge bib.toml", "bib-gauges.pdf"}, {"grid", "grid.pdf"}, {"start new.toml --pieces bib", "new.toml"},
		{"figures bib.toml", ""}, {"figures --json bib.toml", ""}, {"scale --across 4 --down 4 bib.toml", ""},
	} {
		t.Run(c.command, func(t *testing.T) {
			folder := t.TempDir()
			require.NoError(t, os.WriteFile(filepath.Join(folder, "bib.toml"), []byte(bib), 0o644))
			gone, out, err := os.Pipe()
			require.NoError(t, err)
			require.NoError(t, gone.Close())
			var said bytes.Buffer
			command := exec.Command("tuckmark", strings.Fields(c.command)...)
			command.Dir, command.Stdout, command.Stderr = folder, out, &said
			command.Run()
			out.Close()
			status := command.ProcessState.Sys().(syscall.WaitStatus)
			assert.Empty(t, said.String())
			if c.made == "" {
				assert.True(t, status.Signaled() && status.Signal() == syscall.SIGPIPE, "it ends with status %d", status.ExitStatus())
				return
			}
			assert.True(t, status.Exited() && status.ExitStatus() == 0, "it ends with %v", command.ProcessState)
			assert.FileExists(t, filepath.Join(folder, c.made))
		})
	}
}

// Ctrl-\ at a terminal leaves no trace of the program's inside, and does nothing.
func TestNoTraceOnQuit(t *testing.T) {
	in, out, err := os.Pipe()
	require.NoError(t, err)
	defer out.Close()
	var said bytes.Buffer
	name := filepath.Join(t.TempDir(), "pipe.toml")
	require.NoError(t, syscall.Mkfifo(name, 0o600))
	command := exec.Command("tuckmark", "figures", name)
	command.Stdin, command.Stderr = in, &said
	require.NoError(t, command.Start())
	pipe, err := os.OpenFile(name, os.O_WRONLY, 0) // waits until it is read: the program is at work
	require.NoError(t, err)
	require.NoError(t, command.Process.Signal(syscall.SIGQUIT))
	_, err = pipe.WriteString(bib)
	require.NoError(t, err)
	require.NoError(t, pipe.Close())
	require.NoError(t, command.Wait())
	assert.Empty(t, said.String())
}
