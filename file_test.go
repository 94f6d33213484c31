package main

import (
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What the system says when a file cannot be written, in our own words: what POSIX calls
// ENOSPC, EDQUOT and so on.
func TestUnwritable(t *testing.T) {
	folder := t.TempDir()
	out := filepath.Join(folder, "out.pdf")
	const elsewhere = "\nhint: make room, or write the sheets elsewhere with -o"
	for _, c := range []struct {
		name string
		err  error
		want string
	}{
		{"a full disk", syscall.ENOSPC, "the disk is full; nothing was written" + elsewhere},
		{"a quota that is used up", syscall.EDQUOT, "the disk is full; nothing was written" + elsewhere},
		{"a file too long for the disk", syscall.EFBIG, "the disk takes no more of it; nothing was written" + elsewhere},
		{"a disk that cannot be written", syscall.EROFS, fmt.Sprintf("nothing may be written in the folder %q\nhint: write the sheets elsewhere with -o", folder)},
		{"a disk that is broken", syscall.EIO, "the file cannot be written: " + syscall.EIO.Error()},
	} {
		t.Run(c.name, func(t *testing.T) {
			err := unwritable(out, folder, sheetsElsewhere, &fs.PathError{Op: "write", Path: filepath.Join(folder, ".tuckmark-1-0.pdf"), Err: c.err})
			assert.EqualError(t, err, out+": "+c.want)
		})
	}
}

// Sheets that fail while they are drawn leave the folder as it was.
func TestNothingHalfWritten(t *testing.T) {
	folder := t.TempDir()
	out := filepath.Join(folder, "out.pdf")
	require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
	err := writeFile([]string{"in.toml"}, out, func(w io.Writer) error {
		_, err := w.Write([]byte("%PDF-1.6 half of it"))
		require.NoError(t, err)
		return io.ErrUnexpectedEOF
	})
	require.ErrorIs(t, err, io.ErrUnexpectedEOF)
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Len(t, entries, 1, "not even a part of a file is left")
	kept, err := os.ReadFile(out)
	require.NoError(t, err)
	assert.Equal(t, "old", string(kept))
}
