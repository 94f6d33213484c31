package watch

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// write puts words into a file, in steps of what lies between.
func write(t *testing.T, file, words string) {
	t.Helper()
	require.NoError(t, os.WriteFile(file, []byte(words), 0o644))
}

// must ends a test where a step of its own fails.
func must(t *testing.T, err error) {
	t.Helper()
	require.NoError(t, err)
}

// read returns what a file holds, "" if it is not there.
func read(file string) string {
	words, _ := os.ReadFile(file)
	return string(words)
}

// until waits for a word after which the file holds what is wanted.
func until(w *Watch, file, want string) {
	for range w.Changes() {
		if read(file) == want {
			return
		}
	}
}

// savings are the ways in which editors save, and what else makes a file another one. Each
// begins with a folder that holds pinafore.toml, and ends with "new" in it.
var savings = []struct {
	name string
	file string // "" is pinafore.toml
	made func(t *testing.T, folder string)
	save func(t *testing.T, folder, file string)
}{
	{name: "written over", save: func(t *testing.T, _, file string) { write(t, file, "new") }},
	{name: "written to as it is", save: func(t *testing.T, _, file string) {
		f, err := os.OpenFile(file, os.O_WRONLY, 0)
		must(t, err)
		_, err = f.WriteString("new")
		must(t, err)
		must(t, f.Close())
	}},
	{name: "emptied and written in three steps", save: func(t *testing.T, _, file string) {
		f, err := os.Create(file)
		must(t, err)
		for _, part := range []string{"n", "e", "w"} {
			_, err = f.WriteString(part)
			must(t, err)
			must(t, f.Sync())
		}
		must(t, f.Close())
	}},
	{name: "another put in its place", save: func(t *testing.T, folder, file string) {
		beside := filepath.Join(folder, ".pinafore.toml.swp")
		write(t, beside, "new")
		must(t, os.Rename(beside, file))
	}},
	{name: "put aside and written anew", save: func(t *testing.T, _, file string) {
		must(t, os.Rename(file, file+"~"))
		write(t, file, "new")
		must(t, os.Remove(file+"~"))
	}},
	{name: "removed and written anew", save: func(t *testing.T, _, file string) {
		must(t, os.Remove(file))
		write(t, file, "new")
	}},
	{name: "linked in from beside", save: func(t *testing.T, folder, file string) {
		beside := filepath.Join(folder, "4913")
		write(t, beside, "new")
		must(t, os.Remove(file))
		must(t, os.Link(beside, file))
	}},
	{name: "another put in its place from another folder", save: func(t *testing.T, folder, file string) {
		beside := filepath.Join(folder, "elsewhere", "pinafore.toml")
		must(t, os.Mkdir(filepath.Dir(beside), 0o755))
		write(t, beside, "new")
		must(t, os.Rename(beside, file))
	}},
	{name: "made where there was none", file: "mispelt.toml", save: func(t *testing.T, _, file string) { write(t, file, "new") }},
	{name: "made in a folder that was not there", file: "sub/below/pinafore.toml", save: func(t *testing.T, _, file string) {
		must(t, os.MkdirAll(filepath.Dir(file), 0o755))
		write(t, file, "new")
	}},
	{name: "its folder removed and made anew", file: "sub/pinafore.toml",
		made: func(t *testing.T, folder string) {
			must(t, os.Mkdir(filepath.Join(folder, "sub"), 0o755))
			write(t, filepath.Join(folder, "sub/pinafore.toml"), "old")
		},
		save: func(t *testing.T, folder, file string) {
			must(t, os.RemoveAll(filepath.Join(folder, "sub")))
			must(t, os.Mkdir(filepath.Join(folder, "sub"), 0o755))
			write(t, file, "new")
		}},
	{name: "another folder put in the place of its folder", file: "sub/pinafore.toml",
		made: func(t *testing.T, folder string) {
			for _, sub := range []string{"sub", "next"} {
				must(t, os.Mkdir(filepath.Join(folder, sub), 0o755))
			}
			write(t, filepath.Join(folder, "sub/pinafore.toml"), "old")
			write(t, filepath.Join(folder, "next/pinafore.toml"), "new")
		},
		save: func(t *testing.T, folder, _ string) {
			must(t, os.Rename(filepath.Join(folder, "sub"), filepath.Join(folder, "last")))
			must(t, os.Rename(filepath.Join(folder, "next"), filepath.Join(folder, "sub")))
		}},
	{name: "where a link leads", file: "link.toml",
		made: func(t *testing.T, folder string) {
			must(t, os.Mkdir(filepath.Join(folder, "true"), 0o755))
			write(t, filepath.Join(folder, "true/pinafore.toml"), "old")
			must(t, os.Symlink("true/pinafore.toml", filepath.Join(folder, "link.toml")))
		},
		save: func(t *testing.T, folder, _ string) { write(t, filepath.Join(folder, "true/pinafore.toml"), "new") }},
	{name: "a link that leads to another", file: "link.toml",
		made: func(t *testing.T, folder string) {
			write(t, filepath.Join(folder, "next.toml"), "new")
			must(t, os.Symlink("pinafore.toml", filepath.Join(folder, "link.toml")))
		},
		save: func(t *testing.T, folder, file string) {
			must(t, os.Symlink("next.toml", filepath.Join(folder, "link")))
			must(t, os.Rename(filepath.Join(folder, "link"), file))
		}},
	{name: "a folder's link that leads to another", file: "now/pinafore.toml",
		made: func(t *testing.T, folder string) {
			for sub, words := range map[string]string{"first": "old", "second": "new"} {
				must(t, os.Mkdir(filepath.Join(folder, sub), 0o755))
				write(t, filepath.Join(folder, sub, "pinafore.toml"), words)
			}
			must(t, os.Symlink(filepath.Join(folder, "first"), filepath.Join(folder, "now")))
		},
		save: func(t *testing.T, folder, _ string) {
			must(t, os.Symlink("second", filepath.Join(folder, "link")))
			must(t, os.Rename(filepath.Join(folder, "link"), filepath.Join(folder, "now")))
		}},
	{name: "in a folder that a link leads to", file: "now/pinafore.toml",
		made: func(t *testing.T, folder string) {
			must(t, os.Mkdir(filepath.Join(folder, "first"), 0o755))
			write(t, filepath.Join(folder, "first/pinafore.toml"), "old")
			must(t, os.Symlink("first", filepath.Join(folder, "now")))
		},
		save: func(t *testing.T, folder, file string) {
			write(t, filepath.Join(folder, "beside"), "new")
			must(t, os.Rename(filepath.Join(folder, "beside"), file))
		}},
}

// Each way is noticed by what the system tells, without asking, a second time as the first;
// and by asking, where the system tells nothing.
func TestWaysOfSaving(t *testing.T) {
	hour := make(chan time.Time) // nobody asks
	for _, told := range []struct {
		by   string
		with func() *Watch
	}{
		{"told by the system", func() *Watch { return with(newNotices(), hour) }},
		{"asked", func() *Watch { return with(&notices{come: make(chan struct{})}, time.NewTicker(time.Millisecond).C) }},
	} {
		for _, tt := range savings {
			t.Run(told.by+"/"+tt.name, func(t *testing.T) {
				folder := t.TempDir()
				pinafore := filepath.Join(folder, "pinafore.toml")
				write(t, pinafore, "old")
				if tt.made != nil {
					tt.made(t, folder)
				}
				file := pinafore
				if tt.file != "" {
					file = filepath.Join(folder, tt.file)
				}
				w := told.with()
				defer w.Close()
				before := read(file)
				w.On([]string{file})
				until(w, file, before) // a file new in the list is told of
				tt.save(t, folder, file)
				until(w, file, "new")

				write(t, file, "and then newer")
				until(w, file, "and then newer")
			})
		}
	}
}

func TestListOfFilesThatChanges(t *testing.T) {
	folder := t.TempDir()
	front, back := filepath.Join(folder, "front.toml"), filepath.Join(folder, "sub", "back.svg")
	must(t, os.Mkdir(filepath.Dir(back), 0o755))
	write(t, front, "old")
	write(t, back, "old")
	w := with(newNotices(), nil)
	defer w.Close()
	w.On([]string{front})
	until(w, front, "old")
	w.On([]string{front, back})
	until(w, back, "old")
	write(t, back, "new")
	until(w, back, "new")
	w.On([]string{front})
	write(t, front, "new")
	until(w, front, "new")
}

// Names are taken as they are, from the folder in which the program was started.
func TestNameWithoutFolder(t *testing.T) {
	t.Chdir(t.TempDir())
	write(t, "pinafore.toml", "old")
	w := with(newNotices(), nil)
	defer w.Close()
	w.On([]string{"pinafore.toml"})
	until(w, "pinafore.toml", "old")
	write(t, "pinafore.toml", "new")
	until(w, "pinafore.toml", "new")
}

func TestClose(t *testing.T) {
	w := New()
	w.On([]string{filepath.Join(t.TempDir(), "pinafore.toml")})
	w.Close()
	w.Close()
	w.On(nil)
	for range w.Changes() { // what was told before, and then the end
	}
	_, more := <-w.Changes()
	assert.False(t, more)
}
