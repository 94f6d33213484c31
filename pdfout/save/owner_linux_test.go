package save

import (
	"os"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Root may give a file to anybody: so it can be seen whose it is afterwards, and that the rights
// of another owner, which giving takes away, are there again.
func TestOwnerIsKept(t *testing.T) {
	if os.Geteuid() != 0 {
		t.Skip("only root may give files away")
	}
	t.Chdir(t.TempDir())
	const mode = 0o750 | os.ModeSetuid | os.ModeSetgid
	require.NoError(t, os.WriteFile("out.pdf", []byte("old"), 0o600))
	require.NoError(t, os.Chown("out.pdf", 1234, 4321))
	require.NoError(t, os.Chmod("out.pdf", mode))
	p, err := At("out.pdf", elsewhere)
	require.NoError(t, err)
	require.NoError(t, p.Put([]byte("new")))
	info, err := os.Stat("out.pdf")
	require.NoError(t, err)
	assert.Equal(t, mode, info.Mode())
	now := info.Sys().(*syscall.Stat_t)
	assert.Equal(t, [2]uint32{1234, 4321}, [2]uint32{now.Uid, now.Gid})
	assert.Equal(t, map[string]string{"out.pdf": "new"}, inFolder(t, "."))
}
