package main

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A disk with room for less than a PDF must be left empty.
func TestDiskFull(t *testing.T) {
	disk := t.TempDir()
	if err := syscall.Mount("tmpfs", disk, "tmpfs", 0, "size=16k"); err != nil {
		t.Skipf("a small disk takes the right to mount one: %v", err)
	}
	t.Cleanup(func() { assert.NoError(t, syscall.Unmount(disk, 0)) })
	file, err := filepath.Abs(filepath.Join("examples", "linden.toml"))
	require.NoError(t, err)
	out := filepath.Join(disk, "out.pdf")

	status, _, stderr, _ := tuckmark(t, nil, "sheet", file, "-o", out)
	assert.Equal(t, statusFault, status)
	assert.Equal(t, out+": the disk is full; nothing was written\nhint: make room, or write the sheets elsewhere with -o\n", stderr)
	entries, err := os.ReadDir(disk)
	require.NoError(t, err)
	assert.Empty(t, entries, "not even a part of a file is left")
}
