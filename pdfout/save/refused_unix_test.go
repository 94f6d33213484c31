//go:build unix

package save

import (
	"fmt"
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
	file := filepath.Join(folder, "file")
	require.NoError(t, os.WriteFile(file, nil, 0o644))
	missing := filepath.Join(folder, "none")
	const room = "\nhint: make room, or write it elsewhere"
	for _, c := range []struct {
		name, folder string
		err          error
		want         string
	}{
		{"a full disk", folder, syscall.ENOSPC, "the disk is full; nothing was written" + room},
		{"a quota that is used up", folder, syscall.EDQUOT, "the disk is full; nothing was written" + room},
		{"a file too long for the disk", folder, syscall.EFBIG, "the disk takes no more of it; nothing was written" + room},
		{"a disk that cannot be written", folder, syscall.EROFS, fmt.Sprintf("nothing may be written in the folder %q\nhint: write it elsewhere", folder)},
		{"a disk that is broken", folder, syscall.EIO, "the file cannot be written: " + syscall.EIO.Error() + "\nhint: write it elsewhere"},
		// A folder that is there, and takes no file all the same, as /proc does, is not said to
		// be missing.
		{"a folder of the system", folder, fs.ErrNotExist, fmt.Sprintf("the folder %q takes no files\nhint: write it elsewhere", folder)},
		{"the folder one is in", "", fs.ErrNotExist, "the folder you are in takes no files\nhint: write it elsewhere"},
		{"no folder", missing, fs.ErrNotExist, fmt.Sprintf("there is no folder %q\nhint: make the folder first, or write it elsewhere", missing)},
		{"a file for a folder", file, syscall.ENOTDIR, fmt.Sprintf("%q is a file, not a folder\nhint: write it elsewhere", file)},
		{"a folder in a file", filepath.Join(file, "none"), syscall.ENOTDIR, fmt.Sprintf("%q is a file, not a folder\nhint: write it elsewhere", file)},
	} {
		t.Run(c.name, func(t *testing.T) {
			out := filepath.Join(c.folder, "out.pdf")
			p := Place{given: out, elsewhere: elsewhere, file: out}
			err := p.unwritable(&fs.PathError{Op: "write", Path: filepath.Join(c.folder, ".tuckmark-1-0.pdf"), Err: c.err})
			assert.EqualError(t, err, out+": "+c.want)
		})
	}
}
