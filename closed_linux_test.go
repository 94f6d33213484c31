package main

import (
	"bytes"
	"os"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: what cannot be written as a session, for it takes the lack of rights,
// which a thread alone can give up on Linux.

const bib = `unit = "in"
allowance = "1/4"
[piece.bib]
[piece.bib.edge.top]
points = [[0, 6], [4, 6]]
[piece.bib.edge.rest]
points = [[0, 6], [0, 0], [4, 0], [4, 6]]
`

// Folders and files closed to writing, as somebody meets them who is not root.
func TestClosedToWriting(t *testing.T) {
	dir, err := os.MkdirTemp("", "closed")
	require.NoError(t, err)
	t.Cleanup(func() { os.RemoveAll(dir) })
	require.NoError(t, os.Chmod(dir, 0o755))
	file := filepath.Join(dir, "bib.toml")
	require.NoError(t, os.WriteFile(file, []byte(bib), 0o644))
	closed, open := filepath.Join(dir, "closed"), filepath.Join(dir, "open")
	require.NoError(t, os.Mkdir(closed, 0o555))
	require.NoError(t, os.Mkdir(open, 0o777))
	require.NoError(t, os.Chmod(open, 0o777))
	kept := filepath.Join(open, "kept.pdf")
	require.NoError(t, os.WriteFile(kept, []byte("old"), 0o444))
	hers := filepath.Join(open, "hers.pdf")
	require.NoError(t, os.WriteFile(hers, []byte("old"), 0o666))
	require.NoError(t, os.Chmod(hers, 0o666))
	secret := filepath.Join(dir, "secret.toml")
	require.NoError(t, os.WriteFile(secret, []byte(bib), 0o000))

	t.Chdir(closed)
	if os.Geteuid() == 0 {
		// Root may read and write anything; its thread can go without that.
		const nobody = 65534
		runtime.LockOSThread()
		defer runtime.UnlockOSThread()
		require.NoError(t, syscall.Setfsuid(nobody))
		defer func() { require.NoError(t, syscall.Setfsuid(0)) }()
	}
	type refusal struct{ name, in, out, want string }
	refused := []refusal{
		{"a folder", file, filepath.Join(closed, "out.pdf"),
			closed + "/out.pdf: nothing may be written in the folder \"" + closed + "\"\nhint: write the sheets elsewhere with -o\n"},
		{"the folder one is in", file, "out.pdf",
			"out.pdf: nothing may be written in the folder you are in\nhint: write the sheets elsewhere with -o\n"},
		{"sheets of before", file, kept,
			kept + ": the file is there already and may not be written\nhint: look at its permissions, or write the sheets elsewhere with -o\n"},
		{"a description closed to reading", secret, filepath.Join(open, "out.pdf"),
			secret + ": the file may not be read\nhint: look at its permissions\n"},
	}
	if os.Geteuid() == 0 {
		refused = append(refused, refusal{"sheets of somebody else, which may be written", file, hers,
			hers + ": the file belongs to another person or group, and a new one could not be given to them\nhint: write the sheets elsewhere with -o\n"})
	}
	for _, c := range refused {
		// Not in tests of their own: those would run on other threads.
		var out, errs bytes.Buffer
		status := run([]string{"tuckmark", "sheet", c.in, "-o", c.out}, &out, &errs)
		assert.Equal(t, 1, status, c.name)
		assert.Equal(t, c.want, errs.String(), c.name)
	}
	for _, name := range []string{kept, hers} {
		old, err := os.ReadFile(name)
		require.NoError(t, err)
		assert.Equal(t, "old", string(old), "%s is as it was", name)
	}
}
