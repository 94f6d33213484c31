package main

import (
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The program is ended at moments drawn at random: when somebody has looked into the folder so
// many times. It leaves the old sheets or the new ones, and nothing else.
func TestEndedAtAnyMoment(t *testing.T) {
	folder := t.TempDir()
	in, out := filepath.Join(folder, "bib.toml"), filepath.Join(folder, "bib.pdf")
	require.NoError(t, os.WriteFile(in, []byte(bib), 0o644))
	require.NoError(t, exec.Command("tuckmark", "sheet", in).Run())
	whole, err := os.ReadFile(out)
	require.NoError(t, err)
	random, signals := rand.New(rand.NewPCG(7, 11)), []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP}
	for n := range 30 {
		before := []string{"", "old"}[random.IntN(2)]
		os.Remove(out)
		if before != "" {
			require.NoError(t, os.WriteFile(out, []byte(before), 0o644))
		}
		by := signals[n%len(signals)]
		command := exec.Command("tuckmark", "sheet", in)
		require.NoError(t, command.Start())
		untilSeen := random.IntN(2) == 0 // the file beside, which is there for a moment alone
		for looks := random.IntN(3000); looks > 0; looks-- {
			beside, err := filepath.Glob(filepath.Join(folder, ".tuckmark*"))
			require.NoError(t, err)
			if untilSeen && len(beside) > 0 {
				break
			}
		}
		require.NoError(t, command.Process.Signal(by))
		command.Wait()
		status := command.ProcessState.Sys().(syscall.WaitStatus)
		assert.True(t, status.Signaled() && status.Signal() == by || status.ExitStatus() == 0, "run %d ends with %v", n, command.ProcessState)
		entries, err := os.ReadDir(folder)
		require.NoError(t, err)
		now, err := os.ReadFile(out)
		if before == "" && err != nil {
			assert.Len(t, entries, 1, "run %d", n)
			continue
		}
		require.NoError(t, err)
		assert.Len(t, entries, 2, "run %d", n)
		assert.Contains(t, []string{before, string(whole)}, string(now), "run %d", n)
	}
}
