package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Programs that stand for those that open a browser: they leave a note of what they were
// given, and of the session they run in.
func TestOpenBrowser(t *testing.T) {
	const address = "http://127.0.0.1:8000/"
	opens := "#!/bin/sh\necho noise; echo noise >&2; echo \"$0 $*\" >> \"$NOTE\"; read -r line < /proc/self/stat; echo \"$line\" | cut -d' ' -f6 >> \"$NOTE\"\n"
	fails := "#!/bin/sh\necho \"$0 failed\" >> \"$NOTE\"; exit 3\n"
	for _, tt := range []struct {
		name    string
		display string
		there   map[string]string
		want    []string // in the note, "session" for another than ours
		fails   bool
	}{
		{"no screen", "", map[string]string{"xdg-open": opens}, nil, true},
		{"no browser", ":0", nil, nil, true},
		{"the one that was chosen", ":0", map[string]string{"xdg-open": opens, "x-www-browser": opens}, []string{"xdg-open " + address, "session"}, false},
		{"the next where that fails", ":0", map[string]string{"xdg-open": fails, "x-www-browser": opens}, []string{"xdg-open failed", "x-www-browser " + address, "session"}, false},
		{"all fail", ":0", map[string]string{"xdg-open": fails, "x-www-browser": fails}, []string{"xdg-open failed", "x-www-browser failed"}, true},
		{"inside Windows", "", map[string]string{"wslview": opens}, []string{"wslview " + address, "session"}, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			programs := t.TempDir()
			for name, words := range tt.there {
				require.NoError(t, os.WriteFile(filepath.Join(programs, name), []byte(words), 0o755))
			}
			cut, err := filepath.EvalSymlinks("/usr/bin/cut")
			require.NoError(t, err)
			require.NoError(t, os.Symlink(cut, filepath.Join(programs, "cut")))
			note := filepath.Join(t.TempDir(), "note")
			t.Setenv("NOTE", note)
			t.Setenv("PATH", programs)
			t.Setenv("DISPLAY", tt.display)
			t.Setenv("WAYLAND_DISPLAY", "")
			assert.Equal(t, tt.fails, openBrowser(address) != nil, "whether it fails")

			ours, err := os.ReadFile("/proc/self/stat")
			require.NoError(t, err)
			session := strings.Fields(string(ours))[5]
			written, _ := os.ReadFile(note)
			var told []string
			for line := range strings.Lines(string(written)) {
				line = strings.TrimPrefix(strings.TrimSpace(line), programs+"/")
				if strings.Trim(line, "0123456789") == "" {
					assert.NotEqual(t, session, line, "Ctrl-C would end the browser too")
					line = "session"
				}
				told = append(told, line)
			}
			assert.Equal(t, tt.want, told)
		})
	}
}
