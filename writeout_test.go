package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// full is somewhere that nothing can be written to any more.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no space left on device") }

func TestWhatCannotBeWrittenIsNamed(t *testing.T) {
	for what, want := range map[string]string{
		"the figures": "tuckmark: the figures cannot be written: no space left on device",
		"the answer":  "tuckmark: the answer cannot be written: no space left on device",
	} {
		assert.EqualError(t, writeOut(full{}, what, []byte("1/2 in")), want)
	}
}

// A folder that is there, and takes no file all the same, as /proc does, is not said to be
// missing.
func TestFoldersThatTakeNoFile(t *testing.T) {
	folder := t.TempDir()
	out, missing := filepath.Join(folder, "out.pdf"), filepath.Join(folder, "none")
	for _, c := range []struct{ folder, want string }{
		{folder, fmt.Sprintf("%s: the folder %q takes no files\nhint: write the sheets elsewhere with -o", out, folder)},
		{".", out + ": the folder you are in takes no files\nhint: write the sheets elsewhere with -o"},
		{missing, fmt.Sprintf("%s: there is no folder %q\nhint: make the folder first, or write the sheets elsewhere with -o", out, missing)},
	} {
		assert.EqualError(t, unwritable(out, c.folder, sheetsElsewhere, fs.ErrNotExist), c.want)
	}
	file := filepath.Join(folder, "file")
	require.NoError(t, os.WriteFile(file, nil, 0o644))
	assert.EqualError(t, unwritable(out, file, sheetsElsewhere, syscall.ENOTDIR), fmt.Sprintf("%s: there is no folder %q\nhint: make the folder first, or write the sheets elsewhere with -o", out, file))
}

func TestFileInShell(t *testing.T) {
	for name, want := range map[string]string{
		"bib.toml": "bib.toml", "my bib.toml": `"my bib.toml"`, "-x.toml": "./-x.toml", "-": "./-",
	} {
		assert.Equal(t, want, fileInShell(name), "%s", name)
	}
}
