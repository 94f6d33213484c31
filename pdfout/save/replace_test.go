package save

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const elsewhere = "write it elsewhere"

// large is a file of so many bytes that it is written in several parts.
var large = bytes.Repeat([]byte("new line\n"), 3*mostUnasked/9)

// held by a folder: the names in it, with what is in each.
func inFolder(t require.TestingT, folder string) map[string]string {
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	holds := map[string]string{}
	for _, entry := range entries {
		text, err := os.ReadFile(filepath.Join(folder, entry.Name()))
		require.NoError(t, err)
		holds[entry.Name()] = string(text)
	}
	return holds
}

// A program that is to end, at whatever question it learns of it, leaves what was there, or
// nothing.
func TestEndedAtEveryQuestion(t *testing.T) {
	for name, before := range map[string]map[string]string{
		"nothing there": {}, "one there": {"out.pdf": "old"},
	} {
		t.Run(name, func(t *testing.T) {
			folder := t.TempDir()
			for name, text := range before {
				require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644))
			}
			asked, all := 0, false
			for n := 1; !all; n++ {
				p, err := At(filepath.Join(folder, "out.pdf"), elsewhere)
				require.NoError(t, err)
				asked, all = 0, true
				require.NoError(t, p.put(large, func() bool {
					asked++
					all = all && asked < n
					return asked >= n
				}))
				if !all {
					require.Equal(t, before, inFolder(t, folder), "ended at question %d", n)
				}
			}
			assert.Greater(t, asked, 4, "it was asked between the parts")
			assert.Equal(t, map[string]string{"out.pdf": string(large)}, inFolder(t, folder))
		})
	}
}

func TestPut(t *testing.T) {
	t.Chdir(t.TempDir())
	for _, text := range []string{"one", "", "another"} {
		p, err := At("out.pdf", elsewhere)
		require.NoError(t, err)
		require.NoError(t, p.Put([]byte(text)))
		assert.Equal(t, map[string]string{"out.pdf": text}, inFolder(t, "."))
	}
}

func TestNew(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, New("bib.toml", elsewhere, []byte("one")))
	require.ErrorIs(t, New("bib.toml", elsewhere, []byte("other")), os.ErrExist)
	assert.EqualError(t, New("none/bib.toml", elsewhere, nil), "none/bib.toml: there is no folder \"none\"\nhint: make the folder first, or write it elsewhere")
	assert.Equal(t, map[string]string{"bib.toml": "one"}, inFolder(t, "."))
}

// A place that stands for others, found before anything is done, is left as it was.
func TestAtLeavesNothing(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("old.pdf", []byte("old"), 0o644))
	for _, name := range []string{"old.pdf", "new.pdf"} {
		_, err := At(name, elsewhere)
		require.NoError(t, err)
	}
	assert.Equal(t, map[string]string{"old.pdf": "old"}, inFolder(t, "."))
}
