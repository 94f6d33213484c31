//go:build unix

package save

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A link stays one, and what it leads to is written, be it there or not. In the table a, b and c
// are folders; c lies in b.
func TestLinks(t *testing.T) {
	for _, c := range []struct {
		name        string
		links       map[string]string // what is to be a link, and to what
		there, file string            // the one that is there already, and the one that is written
	}{
		{"to a file", map[string]string{"out.pdf": "a/real.pdf"}, "a/real.pdf", "a/real.pdf"},
		{"to nothing yet", map[string]string{"out.pdf": "a/real.pdf"}, "", "a/real.pdf"},
		{"to a link to nothing yet", map[string]string{"out.pdf": "a/next.pdf", "a/next.pdf": "../b/real.pdf"}, "", "b/real.pdf"},
		{"up from behind a linked folder", map[string]string{"in": "b/c", "out.pdf": "in/../real.pdf"}, "", "b/real.pdf"},
		{"in a linked folder, and up", map[string]string{"in": "b/c", "b/c/out.pdf": "../real.pdf"}, "", "b/real.pdf"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Chdir(t.TempDir())
			require.NoError(t, os.Mkdir("a", 0o755))
			require.NoError(t, os.MkdirAll("b/c", 0o755))
			for name, to := range c.links {
				require.NoError(t, os.Symlink(to, name))
			}
			if c.there != "" {
				require.NoError(t, os.WriteFile(c.there, []byte("old"), 0o644))
			}
			out := "out.pdf"
			if _, err := os.Lstat(out); err != nil {
				out = "in/out.pdf"
			}
			p, err := At(out, elsewhere)
			require.NoError(t, err)
			require.NoError(t, p.Put([]byte("new")))
			text, err := os.ReadFile(c.file)
			require.NoError(t, err)
			assert.Equal(t, "new", string(text))
			for name, to := range c.links {
				now, err := os.Readlink(name)
				require.NoError(t, err)
				assert.Equal(t, to, now, "where %s leads", name)
			}
			left, err := filepath.Glob("*/.tuckmark*")
			require.NoError(t, err)
			assert.Empty(t, left)
		})
	}
}

func TestLinksThatLeadNowhere(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.Symlink("circle.pdf", "circle.pdf"))
	require.NoError(t, os.Symlink("none/real.pdf", "far.pdf"))
	require.NoError(t, os.Symlink("/dev/null", "null.pdf"))
	require.NoError(t, syscall.Mkfifo("pipe.pdf", 0o644))
	for name, want := range map[string]string{
		"circle.pdf": "the file cannot be written: " + syscall.ELOOP.Error(),
		"far.pdf":    "there is no folder \"none\"\nhint: make the folder first, or " + elsewhere,
		"null.pdf":   "this is no ordinary file\nhint: " + elsewhere,
		"pipe.pdf":   "this is no ordinary file\nhint: " + elsewhere,
	} {
		_, err := At(name, elsewhere)
		assert.ErrorContains(t, err, name+": "+want)
		_, err = os.Lstat(name)
		assert.NoError(t, err, "%s is left", name)
	}
}

// Of a file with two names the one is written, and the other keeps what it had.
func TestTwoNames(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("out.pdf", []byte("old"), 0o644))
	require.NoError(t, os.Link("out.pdf", "kept.pdf"))
	p, err := At("out.pdf", elsewhere)
	require.NoError(t, err)
	require.NoError(t, p.Put([]byte("new")))
	assert.Equal(t, map[string]string{"out.pdf": "new", "kept.pdf": "old"}, inFolder(t, "."))
}

// All that may be done with a file may be done with the next one, whatever new files have.
func TestRightsAreKept(t *testing.T) {
	t.Chdir(t.TempDir())
	for _, mode := range []os.FileMode{0o600, 0o644, 0o664, 0o666, 0o777, 0o640 | os.ModeSetgid, 0o755 | os.ModeSetuid | os.ModeSticky} {
		require.NoError(t, os.WriteFile("out.pdf", []byte("old"), 0o644))
		require.NoError(t, os.Chmod("out.pdf", mode))
		p, err := At("out.pdf", elsewhere)
		require.NoError(t, err)
		require.NoError(t, p.Put([]byte("new")))
		info, err := os.Stat("out.pdf")
		require.NoError(t, err)
		assert.Equal(t, mode, info.Mode(), "%s", mode)
		require.NoError(t, os.Remove("out.pdf"))
	}
}
