package figures

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
)

// patterns are the examples, the file that the README builds up, and one with
// everything in it.
func patterns(t *testing.T) map[string]*garment.Pattern {
	t.Helper()
	all := map[string]*garment.Pattern{}
	files, err := filepath.Glob(filepath.Join("..", "..", "examples", "*.toml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		all[filepath.Base(file)] = example(t, filepath.Base(file))
	}
	readme, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	require.NoError(t, err)
	text := ""
	for _, block := range regexp.MustCompile("(?s)```toml\n(.*?)```").FindAllStringSubmatch(string(readme), -1) {
		text += block[1]
	}
	require.NotEmpty(t, text)
	for name, text := range map[string]string{"README": text, "everything": sketch.Frock, "everything for a doll": strings.Replace(sketch.Frock, `unit = "in"`, `unit = "cm"`, 1)} {
		p, err := check(text)
		require.NoError(t, err, name)
		all[name] = p
	}
	return all
}
