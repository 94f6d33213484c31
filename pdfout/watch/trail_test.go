package watch

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTrail(t *testing.T) {
	folder, err := filepath.EvalSymlinks(t.TempDir())
	must(t, err)
	in := func(name string) string { return filepath.Join(folder, name) }
	must(t, os.MkdirAll(in("true/below"), 0o755))
	write(t, in("true/below/pinafore.toml"), "x")
	write(t, in("file"), "x")
	for link, to := range map[string]string{
		"short":       "true/below",
		"long":        in("true") + "//./below/../below/pinafore.toml",
		"true/up":     "../short/../below/pinafore.toml", // up from where short leads
		"round":       "round",
		"into":        "away/pinafore.toml",
		"below-short": "short/pinafore.toml",
	} {
		must(t, os.Symlink(to, in(link)))
	}
	for file, want := range map[string][]string{
		"true/below/pinafore.toml": {"true/below/pinafore.toml"},
		"true/below/none.toml":     {"true/below/none.toml"},
		"away/and/none.toml":       {"away"},
		"short/pinafore.toml":      {"short", "true/below/pinafore.toml"},
		"long":                     {"long", "true/below/pinafore.toml"},
		"true/up":                  {"true/up", "short", "true/below/pinafore.toml"},
		"below-short":              {"below-short", "short", "true/below/pinafore.toml"},
		"into":                     {"into", "away"},
		"file/pinafore.toml":       {"file/pinafore.toml"},
	} {
		var full []string
		for _, name := range want {
			full = append(full, in(name))
		}
		assert.Equal(t, full, trail(in(file)), "the way to %s", file)
	}
	assert.NotEmpty(t, trail(in("round")), "links that lead in a circle")
	assert.Less(t, len(trail(in("round"))), 100)
}
